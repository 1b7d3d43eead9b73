#pragma once

#include "core/ledger/entry_number.hpp"

#include <array>
#include <string_view>

/// The SQL of settling.cpp.
namespace spile::cellar::query_text {

inline constexpr std::string_view unsettledRecords =
    "SELECT u.what, u.entry, e.kind, e.subject, c.device FROM state_unsettled AS u "
    "JOIN entry AS e ON e.n = " SPILE_ENTRY_NUMBER("u.entry") " JOIN device_chain AS c ON c.d = e.d "
    "WHERE (u.what, u.entry) > (?, x'') AND u.what <= ? ORDER BY u.what, u.entry LIMIT ?";
inline constexpr std::string_view unsettledBarrels =
    "SELECT what, entry FROM state_unsettled WHERE (what, entry) > (?, x'') AND what <= ? "
    "ORDER BY what, entry LIMIT ?";
inline constexpr std::string_view copiedDevices =
    "SELECT c.device, (SELECT min(seq) FROM head WHERE head.d = c.d) FROM device_chain AS c "
    "INDEXED BY device_branched WHERE c.branches > 1 AND c.d > 0 ORDER BY c.d LIMIT ?";
inline constexpr std::string_view limitedDevices =
    "SELECT c.device, (SELECT count(*) FROM set_aside WHERE set_aside.d = c.d) FROM device_chain "
    "AS c INDEXED BY device_limited WHERE c.limited = 1 AND c.d > 0 ORDER BY c.d LIMIT ?";
inline constexpr std::string_view nextWaitingDevice =
    "SELECT min(device) FROM waiting WHERE device > ?";
inline constexpr std::string_view waitingOfDevice = "SELECT count(*) FROM waiting WHERE device = ?";
inline constexpr std::string_view firstWaiting =
    "SELECT core, body FROM waiting WHERE device = ? AND seq = 1 ORDER BY n LIMIT 1";
inline constexpr std::string_view isTrusted = "SELECT trusted FROM device_chain WHERE device = ?";
inline constexpr std::string_view newerRecords =
    "SELECT count(*) FROM state_unknown WHERE entry > x''";
inline constexpr std::string_view isCutOff =
    "SELECT 1 FROM state_cut_off WHERE subject = ? AND voided = 0 LIMIT 1";
inline constexpr std::string_view isUnsettled =
    "SELECT 1 FROM state_unsettled WHERE what = ? AND entry = ?";
inline constexpr std::string_view isOwner = "SELECT 1 FROM meta WHERE key = 'cellar' AND value = ?";
inline constexpr std::string_view setAsideOf =
    "SELECT e.id, e.kind, e.subject, e.core FROM device_chain AS c JOIN set_aside AS s ON s.d = "
    "c.d JOIN entry AS e ON e.n = s.n WHERE c.device = ? AND s.n > ? ORDER BY s.n DESC LIMIT ?";
inline constexpr std::string_view countSetAsideOf =
    "SELECT count(*) FROM device_chain AS c JOIN set_aside AS s ON s.d = c.d WHERE c.device = ?";
inline constexpr std::string_view barrelName =
    "SELECT coalesce(mark, code) FROM state_barrel_now WHERE subject = ?";
inline constexpr std::string_view lotName =
    "SELECT name FROM state_lot WHERE subject = ? AND voided = 0 ORDER BY when_ms, device, seq "
    "LIMIT 1";
inline constexpr std::string_view deviceName =
    "SELECT name FROM state_device WHERE subject = ? AND voided = 0 ORDER BY when_ms, device, seq "
    "LIMIT 1";
inline constexpr std::string_view liveVoids =
    "SELECT entry FROM state_void WHERE target = ? AND voided = 0 ORDER BY entry";
inline constexpr std::string_view liveFills =
    "SELECT entry, when_ms, device, volume_ml FROM state_fill WHERE subject = ? AND voided = 0 "
    "ORDER BY "
    "when_ms DESC, device DESC, seq DESC LIMIT ?";

// What was recorded of the beer in a barrel since it was filled: kind, entry, when_ms, device,
// volume_ml, amended.
inline constexpr std::string_view filledSince =
    "SELECT (SELECT when_ms FROM state_fill AS f WHERE f.entry = b.fill) FROM state_barrel_now AS "
    "b "
    "WHERE b.subject = ? AND b.filled = 1";
inline constexpr std::string_view gaugesSince =
    "SELECT 'gauge', entry, when_ms, device, volume_ml, amended FROM state_gauge WHERE subject = ? "
    "AND voided = 0 AND when_ms >= ? AND coalesce(bound, 0) = 0 "
    "ORDER BY when_ms, device, seq, entry";
inline constexpr std::string_view largestVolumes =
    "SELECT 'fill', entry, when_ms, device, volume_ml, amended FROM state_fill WHERE subject = ?1 "
    "AND voided = 0 AND when_ms >= ?2 UNION ALL SELECT 'gauge', entry, when_ms, device, volume_ml, "
    "amended FROM state_gauge WHERE subject = ?1 AND voided = 0 AND when_ms >= ?2 AND "
    "coalesce(bound, 0) = 0 ORDER BY 5 DESC, 3 DESC, 2 LIMIT 10";
inline constexpr std::string_view largestDraws =
    "SELECT 'draw', entry, when_ms, device, volume_ml, amended FROM state_draw WHERE subject = ?1 "
    "AND voided = 0 AND when_ms >= ?2 ORDER BY 5 DESC, 3 DESC, 2 LIMIT 10";

inline constexpr std::array settling = {
    unsettledRecords, unsettledBarrels, copiedDevices, limitedDevices,  nextWaitingDevice,
    waitingOfDevice,  firstWaiting,     isTrusted,     newerRecords,    isCutOff,
    isOwner,          isUnsettled,      setAsideOf,    countSetAsideOf, barrelName,
    lotName,          deviceName,       liveVoids,     liveFills,       filledSince,
    gaugesSince,      largestVolumes,   largestDraws};

}  // namespace spile::cellar::query_text
