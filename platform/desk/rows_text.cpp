#include "core/cellar/true_time.hpp"
#include "core/plan/foreseen.hpp"
#include "core/scan/barrel_code.hpp"
#include "platform/desk/rows.hpp"
#include "platform/desk/wording.hpp"

#include <algorithm>

namespace spile::desk {

namespace {

// Characters, not bytes: continuation bytes of UTF-8 take no room.
std::size_t width(const std::string& text)
{
    return static_cast<std::size_t>(std::count_if(text.begin(), text.end(), [](char c) {
        return (static_cast<unsigned char>(c) & 0xc0U) != 0x80U;
    }));
}

std::string filledText(const cellar::BarrelRow& barrel)
{
    return barrel.filledAt ? dateText(*barrel.filledAt, barrel.filledPrecision) : "";
}

std::string scoresText(const cellar::TasteRow& taste)
{
    std::string text;
    for (const auto& [attribute, score] : taste.scores) {
        text += (text.empty() ? "" : ", ") + attribute + " " +
                (score ? std::to_string(*score) : "not judged");
    }
    for (const auto& [fault, strength] : taste.faults) {
        text += "; fault: " + fault + " " + std::to_string(strength);
    }
    return text;
}

}  // namespace

std::string volumeText(const std::optional<Volume>& volume, int decimals)
{
    if (!volume) {
        return "?";
    }
    return fixed(inLitres(*volume), decimals) + " L";
}

std::string timeRemark(const cellar::FactRow& row, Instant now)
{
    const std::string future = cellar::isInFuture(row.at, now) ? "in the future" : "";
    return row.clock ? future + (future.empty() ? "" : "; ") + "its clock said " +
                           toIsoTime(*row.clock) + ", set right"
                     : future;
}

std::string chanceText(double chance)
{
    const int tenths = plan::inTen(chance);
    return tenths == 0    ? "less than 1 in 10"
           : tenths == 10 ? "more than 9 in 10"
                          : std::to_string(tenths) + " in 10";
}

std::string table(const std::vector<std::vector<std::string>>& lines)
{
    std::vector<std::size_t> widths;
    for (const auto& line : lines) {
        widths.resize(std::max(widths.size(), line.size()));
        for (std::size_t i = 0; i < line.size(); ++i) {
            widths[i] = std::max(widths[i], width(line[i]));
        }
    }
    std::string text;
    for (const auto& line : lines) {
        std::string row;
        for (std::size_t i = 0; i < line.size(); ++i) {
            row += line[i] + std::string(widths[i] - width(line[i]) + 2, ' ');
        }
        row.erase(row.find_last_not_of(' ') + 1);
        text += row + "\n";
    }
    return text;
}

std::string barrelTable(const std::vector<cellar::BarrelRow>& barrels)
{
    std::vector<std::vector<std::string>> lines = {
        {"code", "mark", "spirit", "fill", "beer", "place", "holds", "filled", "next step", "due"}};
    for (const cellar::BarrelRow& barrel : barrels) {
        lines.push_back({scan::shown(barrel.code), barrel.mark, barrel.spirit,
                         barrel.fillNumber ? std::to_string(*barrel.fillNumber) : "", barrel.beer,
                         barrel.place, barrel.filled ? volumeText(barrel.volume, 1) : "empty",
                         filledText(barrel), barrel.nextStep,
                         barrel.due ? toIsoDate(*barrel.due) : ""});
    }
    return table(lines);
}

namespace {

// The lines of a barrel's page, one a fact.
class Happenings {
public:
    explicit Happenings(Instant now) : now_(now) {}

    void add(const cellar::FactRow& row, const std::string& what, const std::string& value)
    {
        lines_.push_back(
            {toIsoTime(row.at), what, value, row.person, row.device, timeRemark(row, now_)});
    }
    std::string text()
    {
        std::stable_sort(lines_.begin(), lines_.end());  // ISO times sort as text
        return table(lines_);
    }

private:
    Instant now_;
    std::vector<std::vector<std::string>> lines_;
};

std::string gaugeText(const cellar::GaugeRow& gauge)
{
    const char* const bound = gauge.bound == cellar::Bound::AtLeast  ? "at least "
                              : gauge.bound == cellar::Bound::AtMost ? "at most "
                                                                     : "";
    return bound + volumeText(gauge.volume, 1) + " by " + gauge.method;
}

std::string topUpText(const cellar::TopUpRow& topUp)
{
    return volumeText(topUp.volume, 2) + (topUp.what.empty() ? "" : ", " + topUp.what);
}

std::string doseText(const cellar::DoseRow& dose)
{
    return dose.substance + ", " + volumeText(dose.volume, 2) +
           (dose.drained ? ", drained " + volumeText(dose.drained, 2) : "");
}

void addVolumes(Happenings& all, const cellar::BarrelHistory& history)
{
    for (const auto& fill : history.fills) {
        all.add(
            fill, "fill",
            (fill.beer.empty() ? "unknown beer" : fill.beer) + ", " + volumeText(fill.volume, 1));
    }
    for (const auto& gauge : history.gauges) {
        all.add(gauge, "gauge", gaugeText(gauge));
    }
    for (const auto& topUp : history.topUps) {
        all.add(topUp, "top-up", topUpText(topUp));
    }
    for (const auto& dose : history.doses) {
        all.add(dose, "put in", doseText(dose));
    }
    for (const auto& draw : history.draws) {
        all.add(draw, "draw", volumeText(draw.volume, 2) + " at the " + draw.method);
    }
}

}  // namespace

std::string barrelPage(const cellar::BarrelRow& barrel, const cellar::BarrelHistory& history,
                       Instant now)
{
    Happenings all(now);
    addVolumes(all, history);
    for (const auto& taste : history.tastings) {
        all.add(taste, "taste", scoresText(taste));
    }
    for (const auto& other : history.others) {
        std::string said = other.text;
        std::replace(said.begin(), said.end(), '\n', ' ');
        if (other.chance) {
            said += "; the outlook that day: " + chanceText(*other.chance);
        }
        all.add(other, other.kind == "sheet_step" ? "step" : other.kind, said);
    }
    for (const auto& photo : history.photos) {
        all.add(photo, "photo",
                photo.hash.hex().substr(0, 8) + ", " + std::to_string(photo.bytes) + " bytes" +
                    (photo.here ? "" : ", still on another device"));
    }
    return barrelTable({barrel}) + "\n" + all.text();
}

}  // namespace spile::desk
