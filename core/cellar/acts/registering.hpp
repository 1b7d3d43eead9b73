#pragma once

#include "core/cellar/acts/act.hpp"
#include "core/units/units.hpp"

#include <string>
#include <vector>

/// Acts that make something known: people, places, targets, batches, barrels.
namespace spile::cellar {

[[nodiscard]] Result<SubjectId> registerPerson(Cellar& cellar, const std::string& name);
[[nodiscard]] Result<SubjectId> registerPlace(Cellar& cellar, const std::string& name,
                                              const std::optional<SubjectId>& parent = {});

/// The range of scores that a beer should have in one attribute.
struct Window {
    std::string attribute;
    int low = 1;
    int high = 9;

    friend bool operator==(const Window&, const Window&) = default;
};
/// Return the rows of field Windows.
///
/// Errors    OutOfRange if a window goes downwards.
[[nodiscard]] Result<ledger::List> windowRows(const std::vector<Window>& windows);
[[nodiscard]] Result<SubjectId> registerTarget(Cellar& cellar, const std::string& name,
                                               const std::vector<Window>& windows);

struct NewBatch {
    std::string name;  // the beer's
    std::optional<Instant> brewed = {};
    std::optional<SubjectId> target = {};
    std::optional<double> specificGravity = {};  // original, 20 °C over 20 °C
    std::optional<double> alcoholByVolume = {};  // as a fraction, 0.12 for 12 %
    std::string note = {};
};
[[nodiscard]] Result<SubjectId> registerBatch(Cellar& cellar, const NewBatch& batch);

/// The place of that name, made known if it is not yet: trying again makes no second one.
[[nodiscard]] Result<SubjectId> placeNamed(Cellar& cellar, const std::string& name);
/// The same for a batch of that beer.
[[nodiscard]] Result<SubjectId> batchNamed(Cellar& cellar, const std::string& name);

/// How exactly a date is known.
enum class DatePrecision : std::int64_t { Day = 1, Month = 2, Year = 3 };

/// A barrel that was full when it was registered; all but the date may be unknown.
struct FullSince {
    ledger::EventTime since;
    DatePrecision precision = DatePrecision::Month;
    std::optional<SubjectId> batch = {};
    std::optional<Volume> volume = {};
};

struct NewBarrel {
    std::string mark = {};    // the brewer's own, "Rum 3"
    std::string spirit = {};  // what it held before the first beer
    std::string wood = {};
    std::optional<int> charLevel = {};
    std::optional<Volume> size = {};
    std::optional<int> fillsBefore = {};  // beers it held before; none: unknown
    std::optional<Instant> emptied = {};
    std::optional<Mass> tare = {};
    std::optional<SubjectId> place = {};
    std::string note = {};
    std::string code = {};  // on a label that is there already; empty: a new one is made
    std::optional<FullSince> fullSince = {};
};

struct RegisteredBarrel {
    SubjectId barrel;
    std::string code;
};

/// Errors    besides those of every act: Malformed if `code` is not a code of this cellar,
///           Conflict if a barrel has it already.
[[nodiscard]] Result<RegisteredBarrel> registerBarrel(Cellar& cellar, const NewBarrel& barrel,
                                                      const Circumstance& circumstance = {});

/// Give a barrel another code: another one has its, from another device. It needs a new label.
///
/// Errors    NotFound for an unknown barrel.
[[nodiscard]] Result<EntryId> giveNewCode(Cellar& cellar, const SubjectId& barrel);

inline constexpr int mostSpares = 500;

/// Return `count` new codes, all different, for labels whose barrels are registered later.
///
/// Range     1 to mostSpares.
/// Errors    OutOfRange; those of every query.
/// Limits    nothing is recorded: until its barrel is registered, only chance (32^5 codes) keeps
///           another device from making the same code.
[[nodiscard]] Result<std::vector<std::string>> spareCodes(Cellar& cellar, int count);

}  // namespace spile::cellar
