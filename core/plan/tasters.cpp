#include "core/plan/tasters.hpp"

#include "core/cellar/queries.hpp"
#include "core/cellar/stays.hpp"
#include "core/wood/effective_age.hpp"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

namespace spile::plan {

namespace {

constexpr int pageRows = 200;
constexpr std::int64_t dayMs = 86'400'000;

// Gives each thing that it is asked for a number, in the order of asking.
template <class Key>
class Numbers {
public:
    int of(const Key& key)
    {
        return numbers_.emplace(key, static_cast<int>(numbers_.size())).first->second;
    }

private:
    std::map<Key, int> numbers_;
};

class Collector {
public:
    void add(const cellar::BarrelStays& barrel)
    {
        for (const cellar::Stay& stay : barrel.stays) {
            for (const cellar::StayScore& score : stay.scores) {
                add(barrel.barrel, score);
            }
        }
    }

    Result<TastersOfCellar> report(ledger::Database& database)
    {
        for (const SubjectId& person : people_) {
            SPILE_ASSIGN(name, cellar::nameOfPerson(database, person));
            made_.people.push_back({person, name});
        }
        SPILE_ASSIGN(report, panel::panelReportOf(std::move(scores_)));
        made_.report = std::move(report);
        return std::move(made_);
    }

private:
    // A sitting is a day: who tastes before and after midnight is rare and loses little.
    void add(const SubjectId& barrel, const cellar::StayScore& given)
    {
        const std::int64_t day = toMs(given.at) / dayMs;
        panel::Score score;
        score.taster = personNumbers_.of(given.person);
        score.attribute = attributeNumbers_.of(given.attribute);
        score.barrel = barrelNumbers_.of(barrel);
        score.session = static_cast<int>(day);
        score.repeat = given.glass;
        score.months = static_cast<double>(day) / wood::daysOfMonth;
        score.line = panel::lineOf(given.score);
        // A second sheet of the same glass counts as another glass.
        while (
            !seen_.emplace(score.taster, score.attribute, score.barrel, score.session, score.repeat)
                 .second) {
            ++score.repeat;
        }
        if (score.taster == static_cast<int>(people_.size())) {
            people_.push_back(given.person);
        }
        if (score.attribute == static_cast<int>(made_.attributes.size())) {
            made_.attributes.push_back(given.attribute);
        }
        scores_.push_back(score);
    }

    Numbers<SubjectId> personNumbers_, barrelNumbers_;
    Numbers<std::string> attributeNumbers_;
    std::set<std::tuple<int, int, int, int, int>> seen_;
    std::vector<SubjectId> people_;
    std::vector<panel::Score> scores_;
    TastersOfCellar made_;
};

}  // namespace

Result<TastersOfCellar> tastersOf(ledger::Database& database, const Job& job)
{
    Collector collector;
    cellar::AfterBarrel after;
    std::uint64_t done = 0;
    for (;;) {
        SPILE_ASSIGN(page, cellar::barrels(database, after, pageRows));
        for (const cellar::BarrelRow& row : page) {
            SPILE_ASSIGN(stays, cellar::staysOf(database, row.barrel));
            collector.add(stays);
            ++done;
            if (!job.advance(done, done + 1)) {
                return fail(ErrorCode::Cancelled, "tasters");
            }
        }
        if (page.size() < pageRows) {
            return collector.report(database);
        }
        after = cellar::afterBarrel(page.back());
    }
}

}  // namespace spile::plan
