#include "core/outlook/cellar_model.hpp"

#include "core/outlook/learned.hpp"
#include "core/panel/tasters.hpp"

#include <algorithm>
#include <cmath>
#include <set>

namespace spile::outlook {

namespace {

constexpr int firstSweeps = 1;
constexpr int lastSweeps = 3;
constexpr int roundsForAll = 8;
constexpr int roundsForKind = 4;
constexpr int laterFill = 3;
constexpr std::size_t leastSittings = 2;  // of a finished barrel, to teach anything

struct Kept {
    cellar::BarrelStays barrel;
    std::vector<Aging> agings;  // of each stay
};

// One attribute of one stay.
struct Case {
    const Kept* kept = nullptr;
    std::size_t stay = 0;
    CoursePrior usual;
    StayData data;

    [[nodiscard]] const cellar::Stay& of() const { return kept->barrel.stays[stay]; }
    [[nodiscard]] KindKey key() const
    {
        return {std::min(of().number, laterFill), kept->barrel.spirit};
    }
    [[nodiscard]] bool isFinished() const
    {
        return of().ended &&
               data.barrel.data.scores.back().session + 1 >= static_cast<int>(leastSittings);
    }
};

// Counts what is done over all attributes.
struct Progress {
    const Job& job;
    std::uint64_t done = 0, total = 1;

    [[nodiscard]] bool step(std::uint64_t by = 1)
    {
        done += by;
        return job.advance(std::min(done, total), total);
    }
};

tl::unexpected<Error> cancelled() { return fail(ErrorCode::Cancelled, "outlook"); }

Result<std::vector<Kept>> readAll(ledger::Database& database, Instant now)
{
    std::vector<Kept> all;
    PlaceAir air(database);
    cellar::AfterBarrel after;
    for (;;) {
        SPILE_ASSIGN(page, cellar::barrels(database, after, pageRows));
        for (const cellar::BarrelRow& row : page) {
            SPILE_ASSIGN(stays, cellar::staysOf(database, row.barrel));
            Kept kept{std::move(stays), {}};
            for (const cellar::Stay& stay : kept.barrel.stays) {
                const Instant end = stay.ended.value_or(now);
                SPILE_ASSIGN(aging, agingOf(air, kept.barrel, stay.filled, end, end));
                kept.agings.push_back(std::move(aging));
            }
            all.push_back(std::move(kept));
        }
        if (page.size() < pageRows) {
            return all;
        }
        after = cellar::afterBarrel(page.back());
    }
}

std::map<SubjectId, int> sheetsByPerson(const std::vector<Kept>& all)
{
    std::set<std::pair<SubjectId, EntryId>> sheets;
    for (const Kept& kept : all) {
        for (const cellar::Stay& stay : kept.barrel.stays) {
            for (const cellar::StayScore& score : stay.scores) {
                sheets.emplace(score.person, score.taste);
            }
        }
    }
    std::map<SubjectId, int> counts;
    for (const auto& [person, taste] : sheets) {
        ++counts[person];
    }
    return counts;
}

std::set<std::string> attributesIn(const std::vector<Kept>& all)
{
    std::set<std::string> attributes;
    for (const Kept& kept : all) {
        for (const cellar::Stay& stay : kept.barrel.stays) {
            for (const cellar::StayScore& score : stay.scores) {
                attributes.insert(score.attribute);
            }
        }
    }
    return attributes;
}

std::vector<Case> casesOf(const CellarModel::Learned& learned, const std::vector<Kept>& all,
                          const std::string& attribute)
{
    std::vector<Case> cases;
    for (const Kept& kept : all) {
        for (std::size_t i = 0; i < kept.barrel.stays.size(); ++i) {
            const cellar::Stay& stay = kept.barrel.stays[i];
            const CoursePrior usual = usualPrior(attribute, kindOf(kept.barrel, stay));
            StayData data = stayData(learned, stay, attribute, usual, kept.agings[i]);
            if (!data.used.empty()) {
                cases.push_back({&kept, i, usual, std::move(data)});
            }
        }
    }
    return cases;
}

std::vector<SharedBarrel> barrelsOf(const std::vector<Case>& cases)
{
    std::vector<SharedBarrel> barrels;
    barrels.reserve(cases.size());
    for (const Case& one : cases) {
        barrels.push_back(one.data.barrel);
    }
    return barrels;
}

// A few rounds of what the finished barrels show under the lesson, and what that teaches.
Result<Lesson> lessonFrom(const SharedTasters& shared, const std::vector<Case>& cases,
                          const std::vector<std::size_t>& finished, const Lesson& before,
                          int rounds, Progress& progress)
{
    Lesson lesson = before;
    for (int round = 0; round < rounds; ++round) {
        std::vector<Shown> shown;
        for (const std::size_t i : finished) {
            SharedBarrel barrel = cases[i].data.barrel;
            barrel.prior = applied(cases[i].usual, lesson);
            shown.push_back(shownBy(shared.courseOf(barrel, i), cases[i].usual));
            if (!progress.step()) {
                return cancelled();
            }
        }
        lesson = taught(before, shown);
    }
    return lesson;
}

// The finished barrels of each kind: all, by fill, by fill and spirit.
std::map<KindKey, std::vector<std::size_t>> finishedByKind(const std::vector<Case>& cases)
{
    std::map<KindKey, std::vector<std::size_t>> byKind;
    for (std::size_t i = 0; i < cases.size(); ++i) {
        if (!cases[i].isFinished()) {
            continue;
        }
        const KindKey key = cases[i].key();
        for (const KindKey& kind : std::set{KindKey{}, KindKey{key.fill, {}}, key}) {
            if (key.fill > 0 || kind == KindKey{}) {
                byKind[kind].push_back(i);
            }
        }
    }
    return byKind;
}

// What is believed of a kind before its own barrels have taught: what the next wider one taught.
Lesson lessonBefore(const LearnedAttribute& known, const KindKey& key, const CoursePrior& usual)
{
    Lesson before = firstLesson(usual);
    for (const KindKey& wider : {KindKey{}, KindKey{key.fill, {}}}) {
        const auto found = known.lessons.find(wider);
        if (found != known.lessons.end() && wider != key) {
            before = found->second;
        }
    }
    return before;
}

Result<void> learnLessons(LearnedAttribute& known, const std::vector<Case>& cases,
                          Progress& progress)
{
    // In order: the wider kinds come first.
    for (const auto& [key, finished] : finishedByKind(cases)) {
        const Lesson before = lessonBefore(known, key, cases[finished.front()].usual);
        const int rounds = key == KindKey{} ? roundsForAll : roundsForKind;
        SPILE_ASSIGN(lesson, lessonFrom(known.shared, cases, finished, before, rounds, progress));
        known.lessons[key] = lesson;
    }
    return {};
}

Result<void> learnAttribute(CellarModel::Learned& learned, const std::string& attribute,
                            std::vector<Case>& cases, Progress& progress)
{
    LearnedAttribute known{SharedTasters(usualSetting(learned.tasters)), {}, {}};
    for (std::size_t i = 0; i < cases.size(); ++i) {
        known.sites[cases[i].of().fill] = i;
    }
    const auto sweep = [&](int sweeps) -> Result<void> {
        const std::vector<SharedBarrel> barrels = barrelsOf(cases);
        for (int i = 0; i < sweeps; ++i) {
            if (!known.shared.learn(barrels, 1, Job()) || !progress.step(barrels.size())) {
                return cancelled();
            }
        }
        return {};
    };
    SPILE_TRY(sweep(firstSweeps));
    SPILE_TRY(learnLessons(known, cases, progress));
    learned.attributes.insert_or_assign(attribute, std::move(known));
    LearnedAttribute& kept = learned.attributes.at(attribute);
    for (Case& one : cases) {
        one.data.barrel.prior = priorOf(learned, attribute, kindOf(one.kept->barrel, one.of()));
    }
    const std::vector<SharedBarrel> barrels = barrelsOf(cases);
    for (int i = 0; i < lastSweeps; ++i) {
        if (!kept.shared.learn(barrels, 1, Job()) || !progress.step(barrels.size())) {
            return cancelled();
        }
    }
    return {};
}

using Wishes = std::map<std::pair<std::string, std::string>, std::vector<Wished>>;

// What was wished of this attribute, each time with where its level probably was.
void collectWishes(const CellarModel::Learned& learned, const std::string& attribute,
                   const std::vector<Case>& cases, Wishes& wishes)
{
    Mixture level;
    for (const Case& one : cases) {
        const cellar::Stay& stay = one.of();
        const bool any = std::any_of(stay.directions.begin(), stay.directions.end(),
                                     [&](const auto& d) { return d.attribute == attribute; });
        if (!any || stay.beer.empty()) {
            continue;
        }
        const Course course = courseOf(learned, attribute, stay.fill, one.data.barrel);
        for (const cellar::StayDirection& said : stay.directions) {
            if (said.attribute == attribute) {
                course.levelAt(one.kept->agings[one.stay].ageAt(said.at), level);
                wishes[{stay.beer, attribute}].push_back(
                    {static_cast<Wish>(said.direction), level.mean(), std::sqrt(level.variance())});
            }
        }
    }
}

}  // namespace

CellarModel::CellarModel() : learned_(std::make_shared<Learned>()) {}

Result<CellarModel> CellarModel::learn(ledger::Database& database, Instant now, const Job& job)
{
    SPILE_ASSIGN(all, readAll(database, now));
    auto learned = std::make_shared<Learned>();
    learned->tasters = TasterNumbers(sheetsByPerson(all));
    const std::set<std::string> attributes = attributesIn(all);
    std::map<std::string, std::vector<Case>> cases;
    Progress progress{job};
    for (const std::string& attribute : attributes) {
        cases[attribute] = casesOf(*learned, all, attribute);
        const auto finished = static_cast<std::uint64_t>(
            std::count_if(cases[attribute].begin(), cases[attribute].end(),
                          [](const Case& one) { return one.isFinished(); }));
        progress.total += cases[attribute].size() * (firstSweeps + lastSweeps) +
                          finished * (roundsForAll + 2 * roundsForKind);
    }
    Wishes wishes;
    for (const std::string& attribute : attributes) {
        SPILE_TRY(learnAttribute(*learned, attribute, cases[attribute], progress));
        collectWishes(*learned, attribute, cases[attribute], wishes);
    }
    for (const auto& [key, said] : wishes) {
        if (const auto window = windowTaughtBy(said)) {
            learned->windows[key] = *window;
        }
    }
    CellarModel model;
    model.learned_ = std::move(learned);
    return model;
}

}  // namespace spile::outlook
