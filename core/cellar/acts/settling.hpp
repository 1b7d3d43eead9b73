#pragma once

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

/// Let all that is set aside of a device count; return how many records that are.
[[nodiscard]] Result<std::uint64_t> adoptAll(Cellar& cellar, const DeviceId& device,
                                             const std::optional<SubjectId>& person = {});

}  // namespace spile::cellar
