#pragma once

#include <chrono>
#include <optional>
#include <string>
#include <string_view>

namespace spile::inline base {

using Milliseconds = std::chrono::milliseconds;

/// A moment in UTC, to the millisecond. Leap seconds are not counted, as in POSIX time.
using Instant = std::chrono::sys_time<Milliseconds>;

/// Return the moment `ms` milliseconds after 1970-01-01T00:00:00Z.
[[nodiscard]] constexpr Instant instantFromMs(std::int64_t ms) { return Instant(Milliseconds(ms)); }
[[nodiscard]] constexpr std::int64_t toMs(Instant t) { return t.time_since_epoch().count(); }

/// Return `t` as ISO 8601 in UTC: "2026-03-14T08:05:00Z", milliseconds only if not zero.
[[nodiscard]] std::string toIsoTime(Instant t);
/// Return the UTC day of `t` as ISO 8601: "2026-03-14".
[[nodiscard]] std::string toIsoDate(Instant t);

/// Read "2026-03-14" (midnight UTC), "2026-03-14T08:05Z" or "2026-03-14T08:05:30Z".
/// None for anything else, or a day that no calendar has.
[[nodiscard]] std::optional<Instant> fromIso(std::string_view text);

}  // namespace spile::inline base
