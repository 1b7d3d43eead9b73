#pragma once

#include "core/cellar/acts/act.hpp"

#include <string>
#include <vector>

/// Acts that let a lot go: into packages, and out of the house. While a hold is open, neither is
/// done.
namespace spile::cellar {

struct PackageCount {
    std::string package;  // "bottle 330 mL"
    Volume content;
    std::int64_t count = 0;

    friend bool operator==(const PackageCount&, const PackageCount&) = default;
};

/// The content of all packages together.
[[nodiscard]] Volume contentOf(const std::vector<PackageCount>& packages);

struct NewPackage {
    SubjectId lot;
    std::string lotCode;  // as it is printed on the packages
    std::vector<PackageCount> packages;
    std::optional<Volume> lost = {};             // in hoses, foam and breakage
    std::optional<double> alcoholByVolume = {};  // measured, as a fraction
    std::optional<double> labelStrength = {};
    std::string law = {};  // whose rules the label follows: "US", "EU"
    std::optional<double> co2Volumes = {};
    std::optional<Instant> bestBefore = {};
    Circumstance circumstance = {};
};
/// Errors    besides those of every act: Conflict if the lot is held ("hold", with its reason), if
///           nothing has come into it, or if its code is on other packages already.
[[nodiscard]] Result<ledger::NewEntry> packageEntry(Cellar& cellar, const NewPackage& package);
[[nodiscard]] Result<EntryId> recordPackage(Cellar& cellar, const NewPackage& package);

[[nodiscard]] Result<EntryId> recordHold(Cellar& cellar, const SubjectId& lot,
                                         const std::string& reason,
                                         const Circumstance& circumstance = {});
/// What a hold waited for has come.
///
/// Errors    NotFound if there is no such hold; Conflict if it is cleared already.
[[nodiscard]] Result<EntryId> recordClear(Cellar& cellar, const EntryId& hold,
                                          const std::string& outcome,
                                          const Circumstance& circumstance = {});

struct NewRelease {
    EntryId package;  // the entry of the packages
    std::string to;
    std::vector<PackageCount> packages;
    Circumstance circumstance = {};
};
/// Errors    besides: Conflict if the lot is held; OutOfRange if more would leave than is left.
[[nodiscard]] Result<EntryId> recordRelease(Cellar& cellar, const NewRelease& release);

}  // namespace spile::cellar
