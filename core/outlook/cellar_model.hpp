#pragma once

#include "core/base/ids.hpp"
#include "core/base/job.hpp"
#include "core/base/time.hpp"
#include "core/cellar/queries.hpp"
#include "core/outlook/course.hpp"

#include <map>
#include <memory>
#include <string>
#include <vector>

/// What a whole cellar teaches: its tasters' biases, and what is usual of an attribute in barrels
/// of a kind. Made once for all barrels; a plain value, to be kept while the records change little.
namespace spile::outlook {

/// What the tasters of a cellar are like in one attribute, from all barrels together.
struct TasterGlobal {
    std::vector<double> mean, covariance;  // of their house-wide biases
};

class CellarModel {
public:
    /// Learn from all the records. Empty records give the assumed values.
    ///
    /// Errors    Cancelled; those of ledger::Database.
    [[nodiscard]] static Result<CellarModel> learn(ledger::Database& database, Instant now,
                                                   const Job& job);
    CellarModel();

    struct Learned;
    [[nodiscard]] const Learned& learned() const { return *learned_; }

private:
    std::shared_ptr<const Learned> learned_;
};

}  // namespace spile::outlook
