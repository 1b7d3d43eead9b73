#pragma once

#include <array>
#include <string_view>

/// The SQL of ways.hpp, like query_text.hpp.
namespace spile::cellar::query_text {

inline constexpr std::string_view nameOfLot =
    "SELECT name FROM state_lot WHERE subject = ? AND voided = 0 ORDER BY when_ms, device, seq "
    "LIMIT 1";
inline constexpr std::string_view transfersInto =
    "SELECT entry, from_subject, answers, volume_ml, abv_e2, sg_e4, person, when_ms, device, seq "
    "FROM state_transfer WHERE subject = ? AND voided = 0";
inline constexpr std::string_view finishesInto =
    "SELECT entry, substance, allergen, dose_mg, volume_ml, abv_e2, person, when_ms, device, seq "
    "FROM state_finish WHERE subject = ? AND voided = 0";

#define SPILE_WAY_OUT(kind, table, lost)                                                      \
    "SELECT " kind ", f.entry, f.subject, m.entry, coalesce(f.volume_ml, 0) + coalesce(" lost \
    ", 0), coalesce(" lost                                                                    \
    ", 0), f.when_ms, f.device, f.seq FROM state_mix AS m CROSS JOIN "                        \
    "state_" table " AS f ON f.answers = m.entry AND f.voided = 0 WHERE m.voided = 0 AND "
// The numbers are those of WayKind.
#define SPILE_WAYS_OUT(where)                                   \
    SPILE_WAY_OUT("0", "package", "f.lost_ml")                  \
    where " UNION ALL " SPILE_WAY_OUT("1", "fill", "0") where   \
        " UNION ALL " SPILE_WAY_OUT("2", "top_up", "0") where   \
        " UNION ALL " SPILE_WAY_OUT("3", "transfer", "0") where \
        " UNION ALL " SPILE_WAY_OUT("4", "discard", "0") where
inline constexpr std::string_view waysOutOfLot = SPILE_WAYS_OUT("m.subject = ?1");
inline constexpr std::string_view waysOutOfMix = SPILE_WAYS_OUT("m.entry = ?1");
#undef SPILE_WAYS_OUT
#undef SPILE_WAY_OUT

inline constexpr std::string_view sourcesOfMixes =
    "SELECT s.entry, s.source FROM state_mix AS m CROSS JOIN state_mix_sources AS s ON s.entry = "
    "m.entry WHERE m.subject = ? AND m.voided = 0";
inline constexpr std::string_view wayFill =
    "SELECT entry, subject, batch, volume_ml, abv_e2, from_subject, answers, person, when_ms, "
    "device, seq FROM state_fill WHERE entry = ? AND voided = 0";
inline constexpr std::string_view topUpsOfTransfer =
    "SELECT u.entry, u.subject, u.batch, u.substance, u.volume_ml, u.from_subject, u.answers, "
    "u.person, u.when_ms, u.device, u.seq FROM state_transfer_sources AS s CROSS JOIN state_top_up "
    "AS u ON u.entry = s.source AND u.voided = 0 WHERE s.entry = ? ORDER BY s.row";
inline constexpr std::string_view barrelOfPast =
    "SELECT b.code, b.mark, b.spirit, (SELECT fills_before FROM state_barrel AS r WHERE r.subject "
    "= b.subject AND r.voided = 0 ORDER BY r.when_ms, r.device, r.seq LIMIT 1) FROM "
    "state_barrel_now AS b WHERE b.subject = ?";
inline constexpr std::string_view fillsBefore =
    "SELECT (SELECT name FROM state_batch AS n WHERE n.subject = f.batch AND n.voided = 0 ORDER BY "
    "n.when_ms, n.device, n.seq LIMIT 1) FROM state_fill AS f WHERE f.subject = ?1 AND f.voided = "
    "0 AND (f.when_ms, f.device, f.seq) < (?2, ?3, ?4) ORDER BY f.when_ms, f.device, f.seq";
inline constexpr std::string_view emptiedAfter =
    "SELECT when_ms, person FROM state_empty WHERE subject = ?1 AND voided = 0 AND (when_ms, "
    "device, seq) > (?2, ?3, ?4) ORDER BY when_ms, device, seq LIMIT 1";
inline constexpr std::string_view emptiedBefore =
    "SELECT when_ms FROM state_empty WHERE subject = ?1 AND voided = 0 AND (when_ms, device, seq) "
    "< (?2, ?3, ?4) ORDER BY when_ms DESC, device DESC, seq DESC LIMIT 1";
inline constexpr std::string_view fillsByBatch =
    "SELECT entry FROM state_fill WHERE batch = ? AND voided = 0";
inline constexpr std::string_view topUpsByBatch =
    "SELECT entry FROM state_top_up WHERE batch = ? AND voided = 0";
inline constexpr std::string_view fillsByBarrel =
    "SELECT entry FROM state_fill WHERE subject = ? AND voided = 0 ORDER BY when_ms, device, seq";
inline constexpr std::string_view finishesBySubstance =
    "SELECT entry FROM state_finish WHERE substance = ? AND voided = 0";
inline constexpr std::string_view transfersOfStay =
    "SELECT entry FROM state_transfer WHERE answers = ?1 AND voided = 0 UNION SELECT t.entry FROM "
    "state_transfer_sources AS s CROSS JOIN state_transfer AS t ON t.entry = s.entry AND t.voided "
    "= 0 WHERE s.source = ?1";
inline constexpr std::string_view mixesWithSource =
    "SELECT entry FROM state_mix_sources WHERE source = ?";
inline constexpr std::string_view lotOfEntry =
    "SELECT subject FROM state_mix WHERE entry = ?1 UNION ALL SELECT subject FROM state_transfer "
    "WHERE entry = ?1 UNION ALL SELECT subject FROM state_finish WHERE entry = ?1";
inline constexpr std::string_view stayOfTopUp =
    "SELECT f.entry FROM state_top_up AS u CROSS JOIN state_fill AS f WHERE u.entry = ? AND "
    "f.subject = u.subject AND f.voided = 0 AND f.when_ms <= u.when_ms ORDER BY f.when_ms DESC, "
    "f.device DESC, f.seq DESC LIMIT 1";

inline constexpr std::array ofWays = {
    nameOfLot,           transfersInto,   finishesInto,     waysOutOfLot,  waysOutOfMix,
    sourcesOfMixes,      wayFill,         topUpsOfTransfer, barrelOfPast,  fillsBefore,
    emptiedAfter,        emptiedBefore,   fillsByBatch,     topUpsByBatch, fillsByBarrel,
    finishesBySubstance, transfersOfStay, mixesWithSource,  lotOfEntry,    stayOfTopUp};

}  // namespace spile::cellar::query_text
