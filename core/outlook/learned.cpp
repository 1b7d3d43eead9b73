#include "core/outlook/learned.hpp"

#include "core/panel/line.hpp"

#include <algorithm>

namespace spile::outlook {

namespace {

constexpr std::size_t toldApart = 11;  // tasters; the further ones are taken together
constexpr int regular = 5;             // sheets from which on somebody belongs to the panel
constexpr int laterFill = 3;
constexpr auto sameSitting = std::chrono::hours(12);
constexpr double oneWrong = 0.03;
constexpr double addedSpread = 1.5;  // of the level of beer that was topped up

}  // namespace

TasterNumbers::TasterNumbers(const std::map<SubjectId, int>& sheets)
{
    std::vector<std::pair<int, SubjectId>> byUse;
    byUse.reserve(sheets.size());
    for (const auto& [person, count] : sheets) {
        byUse.emplace_back(-count, person);
    }
    std::sort(byUse.begin(), byUse.end());
    const bool someRegular = !byUse.empty() && -byUse.front().first >= regular;
    for (std::size_t i = 0; i < byUse.size(); ++i) {
        const std::size_t number = std::min(i, toldApart);
        numbers_[byUse[i].second] = static_cast<int>(number);
        if (number == panel_.size()) {
            const bool belongs = !someRegular || -byUse[i].first >= regular;
            panel_.push_back(belongs && number < toldApart ? 1 : 0);
        }
    }
    if (panel_.empty()) {
        panel_.push_back(1);  // whoever comes
    }
    const auto members = std::count(panel_.begin(), panel_.end(), 1.0);
    for (double& weight : panel_) {
        weight /= static_cast<double>(std::max<std::ptrdiff_t>(1, members));
    }
}

int TasterNumbers::of(const SubjectId& person) const
{
    const auto found = numbers_.find(person);
    return found == numbers_.end() ? static_cast<int>(panel_.size()) - 1 : found->second;
}

BarrelKind kindOf(const cellar::BarrelStays& barrel, const cellar::Stay& stay)
{
    return {stay.number, barrel.spirit, barrel.charLevel, barrel.size};
}

CoursePrior priorOf(const CellarModel::Learned& learned, const std::string& attribute,
                    const BarrelKind& kind)
{
    const CoursePrior usual = usualPrior(attribute, kind);
    const auto known = learned.attributes.find(attribute);
    if (known == learned.attributes.end()) {
        return usual;
    }
    const int fill = std::min(kind.fillNumber, laterFill);
    const auto& lessons = known->second.lessons;
    for (const KindKey& key : {KindKey{fill, kind.spirit}, KindKey{fill, {}}, KindKey{}}) {
        const auto lesson = lessons.find(key);
        if (lesson != lessons.end()) {
            return applied(usual, lesson->second);
        }
    }
    return usual;
}

StayData stayData(const CellarModel::Learned& learned, const cellar::Stay& stay,
                  const std::string& attribute, const CoursePrior& prior, const Aging& aging)
{
    StayData made;
    made.barrel.prior = prior;
    int sitting = 0;
    for (const cellar::StayScore& score : stay.scores) {
        if (score.attribute != attribute) {
            continue;
        }
        if (!made.used.empty() && score.at - made.used.back()->at > sameSitting) {
            ++sitting;
        }
        made.used.push_back(&score);
        made.barrel.data.scores.push_back({aging.ageAt(score.at), sitting,
                                           learned.tasters.of(score.person),
                                           panel::lineOf(score.score), true});
    }
    for (const cellar::StayTopUp& topUp : stay.topUps) {
        const Volume held = stay.volume.value_or(topUp.volume + topUp.volume);
        made.barrel.data.replaced.push_back(
            {aging.ageAt(topUp.at), std::min(1.0, topUp.volume / held)});
    }
    made.barrel.data.added = {prior.start.mean, addedSpread};
    return made;
}

SharedSetting usualSetting(const TasterNumbers& tasters)
{
    SharedSetting setting;
    setting.panel = tasters.panel();
    setting.scatter.assign(tasters.size(), 1);
    setting.wrongs.chance = oneWrong;
    return setting;
}

Course courseOf(const CellarModel::Learned& learned, const std::string& attribute,
                const EntryId& fill, const SharedBarrel& barrel)
{
    const auto known = learned.attributes.find(attribute);
    if (known == learned.attributes.end()) {
        return SharedTasters(usualSetting(learned.tasters)).courseOf(barrel, std::nullopt);
    }
    const auto site = known->second.sites.find(fill);
    return known->second.shared.courseOf(
        barrel, site == known->second.sites.end() ? std::nullopt : std::optional(site->second));
}

}  // namespace spile::outlook
