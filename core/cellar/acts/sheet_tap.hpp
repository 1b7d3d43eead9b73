#pragma once

#include "core/cellar/acts/sheet.hpp"

/// How the taps of open sheets stand in table draft; for sheet.cpp and sheet_taps.cpp alone.
namespace spile::cellar {

// Column `subject`.
inline constexpr std::string_view scoreTap = "score";
inline constexpr std::string_view faultTap = "fault";
inline constexpr std::string_view likingTap = "liking";
inline constexpr std::string_view tiredTap = "palate_tired";
inline constexpr std::string_view noteTap = "note";
inline constexpr std::string_view orderTap = "order";
inline constexpr std::string_view readingTap = "reading";
inline constexpr std::string_view photoTap = "photo";
inline constexpr char orderSeparator = '\n';

[[nodiscard]] inline std::optional<int> intOf(const std::optional<std::int64_t>& number)
{
    return number ? std::optional(static_cast<int>(*number)) : std::nullopt;
}

/// Errors    NotFound if the sheet is not open.
[[nodiscard]] Result<void> needOpen(ledger::Database& database, const SubjectId& sheet);

/// Let `content` say what the tap said.
void applyTap(SheetContent& content, const LastTap& tap);

}  // namespace spile::cellar
