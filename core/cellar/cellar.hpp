#pragma once

#include "core/cellar/state.hpp"
#include "core/ledger/ledger.hpp"
#include "core/ledger/take_in.hpp"

#include <memory>

namespace spile::cellar {

/// One cellar on this device, open: its ledger and the state folded from it. What people do with
/// it are the functions in acts/; what they look at are those in queries.hpp.
///
/// Threads   one at a time.
class Cellar {
public:
    /// Make a new cellar. An empty `mark` asks for a random one.
    ///
    /// Errors    those of Ledger::create.
    [[nodiscard]] static Result<std::unique_ptr<Cellar>> create(const Path& folder,
                                                                const Outside& outside,
                                                                ledger::NewCellar cellar,
                                                                const std::string& vfs = {});
    /// Errors    those of Ledger::open.
    [[nodiscard]] static Result<std::unique_ptr<Cellar>> open(const Path& folder,
                                                              const Outside& outside,
                                                              const std::string& vfs = {},
                                                              const Job& job = {});
    /// Make a replica of the cellar that `dayFile` belongs to, with a device key of its own.
    ///
    /// Errors    those of ledger::join.
    [[nodiscard]] static Result<std::unique_ptr<Cellar>> join(const Path& folder,
                                                              const Outside& outside,
                                                              const Path& dayFile, const Job& job,
                                                              const std::string& vfs = {},
                                                              const std::string& passphrase = {});

    [[nodiscard]] ledger::Ledger& ledger() { return *ledger_; }
    [[nodiscard]] ledger::Database& database() { return ledger_->database(); }
    [[nodiscard]] State& state() { return *state_; }
    [[nodiscard]] const ledger::CellarIdentity& identity() const { return ledger_->cellar(); }
    [[nodiscard]] const Outside& outside() const { return ledger_->outside(); }

private:
    Cellar(std::unique_ptr<State> state, std::unique_ptr<ledger::Ledger> ledger)
        : state_(std::move(state)), ledger_(std::move(ledger))
    {
    }

    std::unique_ptr<State> state_;  // before the ledger, which uses it to the end
    std::unique_ptr<ledger::Ledger> ledger_;
};

}  // namespace spile::cellar
