#pragma once

#include "core/base/time.hpp"
#include "core/cellar/queries.hpp"
#include "core/cellar/stays.hpp"

#include <map>
#include <optional>
#include <vector>

/// How old a barrel's beer is for its taste at any time: calendar days, counted by how warm the
/// place was. Days to come are as warm as the same ones of last year, else as the place's mean,
/// else as usual.
namespace spile::outlook {

class Aging {
public:
    /// `dayTemperatures` from the day of `filled` on; later days are as the last.
    Aging(Instant filled, std::vector<Temperature> dayTemperatures);

    /// Effective months since the fill; 0 before it.
    [[nodiscard]] double ageAt(Instant at) const;

private:
    Instant filled_;
    std::vector<double> ages_;  // after each day
};

/// What was read of the air of places, each read once.
class PlaceAir {
public:
    explicit PlaceAir(ledger::Database& database) : database_(&database) {}
    [[nodiscard]] Result<const std::vector<cellar::ClimateRow>*> of(const SubjectId& place);

private:
    ledger::Database* database_;
    std::map<SubjectId, std::vector<cellar::ClimateRow>> known_;
};

/// Return how a stay's beer ages until `horizon`. From `now` on it may be kept at another
/// temperature.
///
/// Errors    those of ledger::Database.
[[nodiscard]] Result<Aging> agingOf(PlaceAir& air, const cellar::BarrelStays& barrel,
                                    Instant filled, Instant now, Instant horizon,
                                    const std::optional<Temperature>& moved = {});

}  // namespace spile::outlook
