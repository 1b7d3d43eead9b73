#pragma once

#include <array>
#include <string_view>

/// The SQL of the queries about lots and the ways of beer, like query_text.hpp.
namespace spile::cellar::query_text {

#define SPILE_FIRST_NAME(table, subject)                                  \
    "(SELECT name FROM " table " AS named WHERE named.subject = " subject \
    " AND named.voided = 0 ORDER BY named.when_ms, named.device, named.seq LIMIT 1)"
#define SPILE_LOT_FACT                                                                       \
    "f.entry, f.at_ms, " SPILE_FIRST_NAME("state_person", "f.person") ", " SPILE_FIRST_NAME( \
        "state_device", "f.device") ", f.device, f.note, f.amended, f.two_values, f.clock_ms "
#define SPILE_OF_LOT "WHERE f.subject = ? AND f.voided = 0 ORDER BY f.when_ms, f.device, f.seq"
// The mark of a barrel, or its code where it has none.
#define SPILE_BARREL_NAME(subject) \
    "(SELECT coalesce(b.mark, b.code) FROM state_barrel_now AS b WHERE b.subject = " subject ")"

// What came into a lot: beer and finishes.
inline constexpr std::string_view insOfLot =
    "SELECT entry FROM state_transfer WHERE subject = ?1 AND voided = 0 UNION ALL "
    "SELECT entry FROM state_finish WHERE subject = ?1 AND voided = 0";
inline constexpr std::string_view topUpsOfStay =
    "SELECT u.entry FROM state_fill AS i CROSS JOIN state_top_up AS u WHERE u.subject = ?1 AND "
    "u.voided = 0 AND u.when_ms >= i.when_ms AND i.entry = ?2 ORDER BY u.when_ms, u.device, u.seq";
inline constexpr std::string_view lastMixOfLot =
    "SELECT entry FROM state_mix WHERE subject = ? AND voided = 0 ORDER BY when_ms DESC, device "
    "DESC, seq DESC LIMIT 1";
inline constexpr std::string_view sourcesOfMix =
    "SELECT source FROM state_mix_sources WHERE entry = ? ORDER BY row";
inline constexpr std::string_view isTakenOut =
    "SELECT 1 FROM state_take_out WHERE answers = ? AND voided = 0 LIMIT 1";
inline constexpr std::string_view isLotCodeTaken =
    "SELECT 1 FROM state_package WHERE lot_code = ? AND voided = 0 LIMIT 1";

#define SPILE_LOT_COLUMNS                                                                         \
    "SELECT l.subject, l.name, l.when_ms, "                                                       \
    "coalesce((SELECT sum(volume_ml) FROM state_transfer AS t WHERE t.subject = l.subject AND "   \
    "t.voided = 0), 0) + coalesce((SELECT sum(volume_ml) FROM state_finish AS f WHERE "           \
    "f.subject = l.subject AND f.voided = 0), 0), "                                               \
    "coalesce((SELECT sum(volume_ml + coalesce(lost_ml, 0)) FROM state_package AS p WHERE "       \
    "p.subject = l.subject AND p.voided = 0), 0) + coalesce((SELECT sum(volume_ml) FROM "         \
    "state_discard AS d WHERE d.subject = l.subject AND d.voided = 0), 0) + coalesce((SELECT "    \
    "sum((SELECT coalesce(sum(volume_ml), 0) FROM state_transfer AS t WHERE t.answers = m.entry " \
    "AND t.voided = 0) + (SELECT coalesce(sum(volume_ml), 0) FROM state_fill AS i WHERE "         \
    "i.answers = m.entry AND i.voided = 0) + (SELECT coalesce(sum(volume_ml), 0) FROM "           \
    "state_top_up AS u WHERE u.answers = m.entry AND u.voided = 0)) FROM state_mix AS m WHERE "   \
    "m.subject = l.subject AND m.voided = 0), 0), "                                               \
    "EXISTS(SELECT 1 FROM state_hold AS h WHERE h.subject = l.subject AND h.voided = 0 AND NOT "  \
    "EXISTS(SELECT 1 FROM state_clear AS c WHERE c.answers = h.entry AND c.voided = 0)), "        \
    "(SELECT count(*) FROM state_package AS p WHERE p.subject = l.subject AND p.voided = 0) "     \
    "FROM state_lot AS l "
inline constexpr std::string_view lotsByTime = SPILE_LOT_COLUMNS
    "WHERE l.voided = 0 AND (l.when_ms, l.subject) < (?, ?) ORDER BY l.when_ms DESC, l.subject "
    "DESC LIMIT ?";
inline constexpr std::string_view lotById =
    SPILE_LOT_COLUMNS "WHERE l.subject = ? AND l.voided = 0 ORDER BY l.when_ms LIMIT 1";
#undef SPILE_LOT_COLUMNS

inline constexpr std::string_view lotRegistered =
    "SELECT name, at_ms, target FROM state_lot WHERE subject = ? AND voided = 0 ORDER BY when_ms, "
    "device, seq LIMIT 1";
inline constexpr std::string_view transfersOfLot =
    "SELECT " SPILE_LOT_FACT
    ", f.from_subject, coalesce(" SPILE_BARREL_NAME("f.from_subject") ", " SPILE_FIRST_NAME(
        "state_lot",
        "f.from_subject") "), EXISTS(SELECT 1 FROM state_mix AS m WHERE m.entry = f.answers), "
                          "(SELECT " SPILE_FIRST_NAME(
                              "state_batch",
                              "i.batch") " FROM state_fill AS i WHERE i.entry = f.answers), "
                                         "f.volume_ml, f.abv_e2, f.sg_e4, f.method FROM "
                                         "state_transfer AS f " SPILE_OF_LOT;
inline constexpr std::string_view finishesOfLot =
    "SELECT " SPILE_LOT_FACT
    ", f.substance, f.dose_mg, f.volume_ml, f.abv_e2, f.allergen, f.until_ms, (SELECT min(o.at_ms) "
    "FROM state_take_out AS o WHERE o.answers = f.entry AND o.voided = 0) FROM state_finish AS "
    "f " SPILE_OF_LOT;
inline constexpr std::string_view treatmentsOfLot =
    "SELECT " SPILE_LOT_FACT
    ", f.method, f.temp_mc, f.elapsed_s FROM state_treat AS f " SPILE_OF_LOT;
inline constexpr std::string_view carbonationsOfLot =
    "SELECT " SPILE_LOT_FACT
    ", f.method, f.co2_e2, f.pressure_pa, f.temp_mc, f.dose_mg FROM state_carbonate AS "
    "f " SPILE_OF_LOT;
#define SPILE_PACKAGE_COLUMNS                                                                      \
    "SELECT " SPILE_LOT_FACT                                                                       \
    ", f.subject, f.lot_code, f.volume_ml, f.lost_ml, f.abv_e2, f.label_abv_e2, f.law, f.co2_e2, " \
    "f.best_before_ms, EXISTS(SELECT 1 FROM state_hold AS h WHERE h.subject = f.subject AND "      \
    "h.voided = 0 AND h.when_ms <= f.when_ms AND NOT EXISTS(SELECT 1 FROM state_clear AS c WHERE " \
    "c.answers = h.entry AND c.voided = 0 AND c.when_ms <= f.when_ms)) FROM state_package AS f "
inline constexpr std::string_view packagesOfLot = SPILE_PACKAGE_COLUMNS SPILE_OF_LOT;
inline constexpr std::string_view packageByEntry =
    SPILE_PACKAGE_COLUMNS "WHERE f.entry = ? AND f.voided = 0";
inline constexpr std::string_view packagesByCode =
    SPILE_PACKAGE_COLUMNS "WHERE f.lot_code = ? AND f.voided = 0 ORDER BY f.lot_code, f.entry";
#undef SPILE_PACKAGE_COLUMNS
inline constexpr std::string_view packageCounts =
    "SELECT package, content_ml, count FROM state_package_packages WHERE entry = ? ORDER BY row";
inline constexpr std::string_view releaseCounts =
    "SELECT package, content_ml, count FROM state_release_packages WHERE entry = ? ORDER BY row";
inline constexpr std::string_view releasedOf =
    "SELECT p.package, p.content_ml, p.count FROM state_release AS r CROSS JOIN "
    "state_release_packages AS p ON p.entry = r.entry WHERE r.answers = ? AND r.voided = 0";
inline constexpr std::string_view releasesOfLot =
    "SELECT " SPILE_LOT_FACT ", f.answers, f.name FROM state_release AS f " SPILE_OF_LOT;
inline constexpr std::string_view releasesOfPackage =
    "SELECT " SPILE_LOT_FACT
    ", f.answers, f.name FROM state_release AS f WHERE f.answers = ? AND f.voided = 0 ORDER BY "
    "f.when_ms";
inline constexpr std::string_view holdsOfLot =
    "SELECT " SPILE_LOT_FACT
    ", f.reason, (SELECT min(c.at_ms) FROM state_clear AS c WHERE c.answers = f.entry AND "
    "c.voided = 0), (SELECT c.outcome FROM state_clear AS c WHERE c.answers = f.entry AND "
    "c.voided = 0 ORDER BY c.when_ms LIMIT 1) FROM state_hold AS f " SPILE_OF_LOT;
#define SPILE_OUT_OF(table)                 \
    "FROM state_mix AS m CROSS JOIN " table \
    " AS f ON f.answers = m.entry AND f.voided = 0 WHERE m.subject = ?1 AND m.voided = 0"
inline constexpr std::string_view fillsFromLot =
    "SELECT " SPILE_LOT_FACT ", f.volume_ml, " SPILE_BARREL_NAME("f.subject")
        SPILE_OUT_OF(" state_fill");
inline constexpr std::string_view topUpsFromLot =
    "SELECT " SPILE_LOT_FACT ", f.volume_ml, " SPILE_BARREL_NAME("f.subject")
        SPILE_OUT_OF(" state_top_up");
inline constexpr std::string_view transfersFromLot =
    "SELECT " SPILE_LOT_FACT ", f.volume_ml, " SPILE_FIRST_NAME("state_lot", "f.subject")
        SPILE_OUT_OF(" state_transfer");
inline constexpr std::string_view discardsOfLot =
    "SELECT " SPILE_LOT_FACT ", f.volume_ml, f.reason FROM state_discard AS f " SPILE_OF_LOT;
inline constexpr std::string_view finishesByDue =
    "SELECT f.entry, f.subject, " SPILE_FIRST_NAME(
        "state_lot",
        "f.subject") ", f.substance, f.until_ms FROM state_finish AS f WHERE f.voided = 0 AND "
                     "f.until_ms <= ? AND NOT EXISTS(SELECT 1 FROM state_take_out AS o WHERE "
                     "o.answers = f.entry AND o.voided = 0) ORDER BY f.until_ms, f.entry LIMIT ?";

#undef SPILE_FIRST_NAME
#undef SPILE_LOT_FACT
#undef SPILE_OF_LOT
#undef SPILE_BARREL_NAME
#undef SPILE_OUT_OF

inline constexpr std::array ofLots = {
    releasesOfPackage, insOfLot,       topUpsOfStay,    lastMixOfLot,      sourcesOfMix,
    isTakenOut,        isLotCodeTaken, lotsByTime,      lotById,           lotRegistered,
    transfersOfLot,    finishesOfLot,  treatmentsOfLot, carbonationsOfLot, packagesOfLot,
    packageByEntry,    packagesByCode, packageCounts,   releaseCounts,     releasedOf,
    releasesOfLot,     holdsOfLot,     fillsFromLot,    topUpsFromLot,     transfersFromLot,
    discardsOfLot,     finishesByDue};

}  // namespace spile::cellar::query_text
