#pragma once

#include "core/base/outside.hpp"
#include "core/ledger/keys.hpp"

namespace spile::ledger {

/// Return the key of that name; make it if there is none.
[[nodiscard]] Result<SigningKey> loadOrMakeKey(const Outside& outside, KeyName name);

}  // namespace spile::ledger
