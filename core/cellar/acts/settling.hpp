#pragma once

#include "core/base/job.hpp"
#include "core/cellar/acts/act.hpp"
#include "core/cellar/settling.hpp"

namespace spile::cellar {

/// Do what was chosen about `row`: an ordinary record, which is handed out and can itself be
/// corrected. `name` is what a device that is admitted shall be called.
///
/// Errors    Conflict if it is settled by now or the choice is not one of choicesFor(); those of
///           the act: amend, voidEntry, cutOff, adopt, admit.
[[nodiscard]] Result<void> settle(Cellar& cellar, const UnsettledRow& row, const Choice& choice,
                                  const std::optional<SubjectId>& person = {},
                                  const std::string& name = {});

/// Let all that is set aside of a device count, the newest first; return how many records that are.
/// It is done in parts, each by itself durable: what was adopted before it was stopped counts.
///
/// Errors    Cancelled, with how many count now; those of adopt().
[[nodiscard]] Result<std::uint64_t> adoptAll(Cellar& cellar, const DeviceId& device,
                                             const std::optional<SubjectId>& person = {},
                                             const Job& job = {});

}  // namespace spile::cellar
