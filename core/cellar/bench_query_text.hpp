#pragma once

#include <array>
#include <string_view>

/// The SQL of the queries about benches, like query_text.hpp.
namespace spile::cellar::query_text {

// Glasses are numbered from 1, so that the highest number says how many there are.
#define SPILE_BENCH_COLUMNS                                                                     \
    "SELECT b.subject, b.entry, b.name, b.at_ms, b.when_ms, (SELECT max(glass) FROM "           \
    "state_bench_portions AS p WHERE p.entry = b.entry), EXISTS(SELECT 1 FROM state_accept "    \
    "AS a WHERE a.subject = b.subject AND a.voided = 0), b.target FROM state_bench AS b WHERE " \
    "b.voided = 0 "
inline constexpr std::string_view benchesByTime = SPILE_BENCH_COLUMNS
    "AND (b.when_ms, b.subject) < (?, ?) ORDER BY b.when_ms DESC, b.subject DESC LIMIT ?";
inline constexpr std::string_view benchById =
    SPILE_BENCH_COLUMNS "AND b.subject = ? ORDER BY b.when_ms, b.device, b.seq LIMIT 1";
#undef SPILE_BENCH_COLUMNS

inline constexpr std::string_view portionsOfBench =
    "SELECT p.glass, p.barrel, p.volume_ml, coalesce(b.mark, b.code), b.code FROM "
    "state_bench_portions AS p LEFT JOIN state_barrel_now AS b ON b.subject = p.barrel WHERE "
    "p.entry = ? ORDER BY p.row";
inline constexpr std::string_view tastesOfBench =
    "SELECT t.entry, t.glass, t.person, (SELECT name FROM state_person AS n WHERE n.subject = "
    "t.person AND n.voided = 0 ORDER BY n.when_ms, n.device, n.seq LIMIT 1), t.at_ms, t.liking "
    "FROM state_taste AS t WHERE t.subject = ? AND t.voided = 0 ORDER BY t.when_ms, t.device, "
    "t.seq";
inline constexpr std::string_view acceptOfBench =
    "SELECT a.entry, a.glass, a.at_ms, (SELECT l.subject FROM state_lot AS l WHERE l.answers = "
    "a.entry AND l.voided = 0 LIMIT 1) FROM state_accept AS a WHERE a.subject = ? AND a.voided = "
    "0 ORDER BY a.when_ms, a.device, a.seq LIMIT 1";

inline constexpr std::array ofBenches = {benchesByTime, benchById, portionsOfBench, tastesOfBench,
                                         acceptOfBench};

}  // namespace spile::cellar::query_text
