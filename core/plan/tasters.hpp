#pragma once

#include "core/base/job.hpp"
#include "core/cellar/queries.hpp"
#include "core/panel/tasters.hpp"

#include <string>
#include <vector>

/// What the tasters of this cellar are like, from all its records.
namespace spile::plan {

/// A report whose numbers have names: `report.tasters[i].taster` is a place in `people`, an
/// attribute's number one in `attributes`.
struct TastersOfCellar {
    struct Person {
        SubjectId person;
        std::string name;
    };
    std::vector<Person> people;
    std::vector<std::string> attributes;
    panel::PanelReport report;
};

/// Read all scores and report on them; empty lists if there are none.
///
/// Errors    Cancelled; those of ledger::Database.
[[nodiscard]] Result<TastersOfCellar> tastersOf(ledger::Database& database, const Job& job);

}  // namespace spile::plan
