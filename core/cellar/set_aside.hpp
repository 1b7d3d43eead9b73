#pragma once

#include "core/base/time.hpp"
#include "core/ledger/database.hpp"

#include <optional>
#include <string>
#include <vector>

/// The records of a device that count nowhere: it was cut off, or does not belong.
namespace spile::cellar {

struct SetAsideRow {
    EntryId entry;
    std::string kind;
    SubjectId subject;
    std::optional<Instant> at;  // none if the record is damaged here
};

[[nodiscard]] Result<std::uint64_t> countSetAside(ledger::Database& database,
                                                  const DeviceId& device);
/// At most `limit` of them, those that came last first; a negative limit: all.
[[nodiscard]] Result<std::vector<SetAsideRow>> setAsideOf(ledger::Database& database,
                                                          const DeviceId& device, int limit);

}  // namespace spile::cellar
