#pragma once

#include "core/cellar/acts/act.hpp"

#include <string>
#include <vector>

/// Acts on lots: beer that is brought together in a tank, from barrels and other lots.
///
/// What goes in are transfers and finishes. When something is taken out, a `mix` says of what the
/// lot was made until then, and what is taken answers that mix: every record names only earlier
/// ones, by their hashes, so that no beer can descend from itself.
namespace spile::cellar {

struct NewLot {
    std::string name;
    std::optional<SubjectId> target = {};
    std::optional<EntryId> accepted = {};  // of the bench: acts/benching.hpp
    std::optional<SubjectId> place = {};
    Circumstance circumstance = {};
};
[[nodiscard]] Result<SubjectId> registerLot(Cellar& cellar, const NewLot& lot);
/// The newest lot of that name, made known if there is none.
[[nodiscard]] Result<SubjectId> lotNamed(Cellar& cellar, const std::string& name);

/// Beer that comes into a lot, as it was measured there.
struct NewTransfer {
    SubjectId lot;
    SubjectId from;  // a barrel or another lot
    Volume volume;
    std::optional<double> alcoholByVolume = {};  // as a fraction
    std::optional<double> specificGravity = {};
    std::optional<Temperature> temperature = {};
    std::string method = {};  // "pump", "gravity", "CO2 push"
    Circumstance circumstance = {};
};
/// Errors    besides those of every act: NotFound if `from` is neither; Conflict if it is the lot
///           itself, an empty barrel, or a lot that nothing has come into.
[[nodiscard]] Result<ledger::NewEntry> transferEntry(Cellar& cellar, const NewTransfer& transfer);
[[nodiscard]] Result<EntryId> recordTransfer(Cellar& cellar, const NewTransfer& transfer);

/// Return the mix that says of what the lot is made now; a new one if something came in since the
/// last, or was taken back.
///
/// Errors    Conflict if nothing has come in.
[[nodiscard]] Result<EntryId> mixOf(Cellar& cellar, const SubjectId& lot);

/// Something put into a lot that is not beer.
struct NewFinish {
    SubjectId lot;
    std::string substance;
    std::optional<Mass> mass = {};
    std::optional<Volume> volume = {};
    std::optional<double> alcoholByVolume = {};  // of a volume, as a fraction
    std::string allergen = {};                   // as it stands on the label
    std::optional<Instant> until = {};           // when it is to be taken out
    Circumstance circumstance = {};
};
/// Errors    besides: Malformed if there is neither mass nor volume.
[[nodiscard]] Result<ledger::NewEntry> finishEntry(Cellar& cellar, const NewFinish& finish);
[[nodiscard]] Result<EntryId> recordFinish(Cellar& cellar, const NewFinish& finish);
/// It was taken out again.
///
/// Errors    NotFound if it is no finish of the lot; Conflict if it is out already.
[[nodiscard]] Result<ledger::NewEntry> takeOutEntry(Cellar& cellar, const EntryId& finish,
                                                    const Circumstance& circumstance = {});
[[nodiscard]] Result<EntryId> recordTakeOut(Cellar& cellar, const EntryId& finish,
                                            const Circumstance& circumstance = {});

/// The lot was filtered or pasteurised.
struct NewTreatment {
    SubjectId lot;
    std::string method;  // "filtered", "pasteurised"
    std::optional<Temperature> temperature = {};
    std::optional<Milliseconds> held = {};
    Circumstance circumstance = {};
};
[[nodiscard]] Result<ledger::NewEntry> treatmentEntry(Cellar& cellar,
                                                      const NewTreatment& treatment);

struct NewCarbonation {
    SubjectId lot;
    std::string method;  // "forced", "priming"
    double volumes = 0;
    std::optional<Pressure> gauge = {};
    std::optional<Temperature> temperature = {};
    std::optional<Mass> sugar = {};
    Circumstance circumstance = {};
};
[[nodiscard]] Result<ledger::NewEntry> carbonationEntry(Cellar& cellar,
                                                        const NewCarbonation& carbonation);

/// Beer of a lot that was lost or poured away.
struct NewDiscard {
    SubjectId lot;
    Volume volume;
    std::string reason;
    Circumstance circumstance = {};
};
[[nodiscard]] Result<EntryId> recordDiscard(Cellar& cellar, const NewDiscard& discard);

/// What something cost, in the house's own money: a barrel, a batch, or a lot's finish and packing.
struct NewCost {
    SubjectId subject;
    double cost = 0;
    std::string what;
    std::optional<Volume> forVolume = {};   // of a batch: how much beer it paid for
    std::optional<int> fillsExpected = {};  // of a barrel: fills that it is spread over
    Circumstance circumstance = {};
};
[[nodiscard]] Result<EntryId> recordCost(Cellar& cellar, const NewCost& cost);

}  // namespace spile::cellar
