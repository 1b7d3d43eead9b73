#pragma once

#include <array>
#include <string_view>

/// The SQL of totals.hpp. Those that read whole tables are not among the list queries.
namespace spile::cellar::query_text {

#define SPILE_IN_TIME "voided = 0 AND when_ms >= ?1 AND when_ms < ?2"
// The numbers are those of Movement::Kind.
inline constexpr std::string_view movements =
    "SELECT 0, when_ms, volume_ml, coalesce(abv_e2, label_abv_e2) FROM state_package "
    "WHERE " SPILE_IN_TIME
    " UNION ALL SELECT 1, when_ms, lost_ml, NULL FROM state_package WHERE lost_ml > 0 "
    "AND " SPILE_IN_TIME
    " UNION ALL SELECT 2, r.when_ms, (SELECT sum(c.content_ml * c.count) FROM "
    "state_release_packages AS c WHERE c.entry = r.entry), (SELECT coalesce(p.abv_e2, "
    "p.label_abv_e2) FROM state_package AS p WHERE p.entry = r.answers) FROM state_release AS r "
    "WHERE r.voided = 0 AND r.when_ms >= ?1 AND r.when_ms < ?2"
    " UNION ALL SELECT 3, when_ms, volume_ml, NULL FROM state_fill WHERE volume_ml > 0 "
    "AND " SPILE_IN_TIME
    " UNION ALL SELECT 4, when_ms, volume_ml, NULL FROM state_top_up WHERE " SPILE_IN_TIME
    " UNION ALL SELECT 5, when_ms, volume_ml, NULL FROM state_draw WHERE draw_method <> "
    "'transfer' AND " SPILE_IN_TIME
    " UNION ALL SELECT 6, when_ms, volume_ml, NULL FROM state_transfer WHERE " SPILE_IN_TIME
    " UNION ALL SELECT 7, when_ms, volume_ml, NULL FROM state_discard WHERE " SPILE_IN_TIME;
#undef SPILE_IN_TIME

// The fill before each emptying, and what happened between them.
#define SPILE_BETWEEN(table)                              \
    "(SELECT sum(x.volume_ml) FROM " table                \
    " AS x WHERE x.subject = e.subject AND x.voided = 0 " \
    "AND x.when_ms >= f.when_ms AND x.when_ms <= e.when_ms)"
#define SPILE_ENDED_STAY \
    "SELECT f.entry, e.subject, b.mark, b.code, (SELECT name FROM state_batch AS n WHERE " \
    "n.subject " \
    "= f.batch AND n.voided = 0 ORDER BY n.when_ms, n.device, n.seq LIMIT 1), f.when_ms, " \
    "e.when_ms, f.volume_ml, " SPILE_BETWEEN("state_top_up") ", (SELECT sum(x.volume_ml) FROM " \
    "state_draw AS x WHERE x.subject = e.subject AND x.voided = 0 AND x.draw_method <> 'transfer' " \
    "AND x.when_ms >= f.when_ms AND x.when_ms <= e.when_ms), coalesce((SELECT sum(t.volume_ml) " \
    "FROM state_transfer AS t WHERE t.answers = f.entry AND t.voided = 0), e.volume_ml), e.heel_ml " \
    "FROM state_empty AS e JOIN state_fill AS f ON f.entry = (SELECT i.entry FROM state_fill AS i " \
    "WHERE i.subject = e.subject AND i.voided = 0 AND (i.when_ms, i.device, i.seq) < (e.when_ms, " \
    "e.device, e.seq) ORDER BY i.when_ms DESC, i.device DESC, i.seq DESC LIMIT 1) LEFT JOIN " \
    "state_barrel_now AS b ON b.subject = e.subject "
inline constexpr std::string_view endedStays = SPILE_ENDED_STAY
    "WHERE e.voided = 0 AND e.when_ms >= ?1 AND e.when_ms < ?2 ORDER BY e.when_ms, e.device, e.seq";
inline constexpr std::string_view endedStay = SPILE_ENDED_STAY
    "WHERE e.voided = 0 AND f.entry = ?1 AND e.subject = (SELECT i.subject FROM state_fill AS i "
    "WHERE i.entry = ?1) ORDER BY e.when_ms LIMIT 1";
#undef SPILE_ENDED_STAY
#undef SPILE_BETWEEN

#define SPILE_NAME_OF(table, subject)                                     \
    "(SELECT name FROM " table " AS named WHERE named.subject = " subject \
    " AND named.voided = 0 ORDER BY named.when_ms, named.device, named.seq LIMIT 1)"
inline constexpr std::string_view costs =
    "SELECT f.entry, f.at_ms, " SPILE_NAME_OF("state_person", "f.person") ", " SPILE_NAME_OF(
        "state_device",
        "f.device") ", f.device, f.note, f.amended, f.two_values, f.clock_ms, f.name, f.cost_e2, "
                    "f.volume_ml, f.fills_expected FROM state_cost AS f WHERE f.subject = ? AND f.voided = 0 "
                    "ORDER BY f.when_ms, f.device, f.seq";
#undef SPILE_NAME_OF
inline constexpr std::string_view filledOfBatch =
    "SELECT coalesce(sum(volume_ml), 0) FROM state_fill WHERE batch = ? AND voided = 0";
inline constexpr std::string_view fillsInBarrel =
    "SELECT count(*) FROM state_fill WHERE subject = ? AND voided = 0";
inline constexpr std::string_view outOfStay =
    "SELECT coalesce(sum(volume_ml), 0) FROM state_transfer WHERE answers = ? AND voided = 0";
inline constexpr std::array ofTotals = {endedStay, costs, filledOfBatch, fillsInBarrel, outOfStay};

}  // namespace spile::cellar::query_text
