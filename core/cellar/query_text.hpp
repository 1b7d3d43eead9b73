#pragma once

#include <array>
#include <string_view>

/// The SQL of the list queries, in one place so that a test can look at how each is run: by an
/// index, never by reading a whole table.
namespace spile::cellar::query_text {

// The name that the earliest record gives a subject: two desks may have admitted one device.
#define SPILE_NAME(table, subject)                                        \
    "(SELECT name FROM " table " AS named WHERE named.subject = " subject \
    " AND named.voided = 0 ORDER BY named.when_ms, named.device, named.seq LIMIT 1)"

#define SPILE_BARREL_COLUMNS \
    "SELECT b.subject, b.code, b.mark, b.spirit, " SPILE_NAME("state_batch", "b.batch")      \
    ", b.place, b.filled, b.size_ml, b.volume_ml, b.fill_number, b.filled_ms, "              \
    "b.filled_precision, b.tastings, b.next_step, b.due_ms FROM state_barrel_now AS b "

#define SPILE_FACT_COLUMNS                                                       \
    "f.entry, f.at_ms, " SPILE_NAME("state_person", "f.person") ", " SPILE_NAME( \
        "state_device", "f.device") ", f.device, f.note, f.amended, f.two_values "
#define SPILE_OF_BARREL "WHERE f.subject = ? AND f.voided = 0 ORDER BY f.when_ms, f.device, f.seq"

inline constexpr std::string_view barrelsByCode =
    SPILE_BARREL_COLUMNS "WHERE (b.code, b.subject) > (?, ?) ORDER BY b.code, b.subject LIMIT ?";
inline constexpr std::string_view barrelsByDue = SPILE_BARREL_COLUMNS
    "WHERE b.due_ms IS NOT NULL AND b.due_ms <= ? AND (b.due_ms, b.subject) > (?, ?) "
    "ORDER BY b.due_ms, b.subject LIMIT ?";
inline constexpr std::string_view barrelByCode =
    SPILE_BARREL_COLUMNS "WHERE b.code = ? ORDER BY b.subject";
inline constexpr std::string_view placeById =
    "SELECT name, parent FROM state_place WHERE subject = ? AND voided = 0 ORDER BY when_ms, "
    "device, "
    "seq LIMIT 1";

inline constexpr std::string_view fills = "SELECT " SPILE_FACT_COLUMNS ", " SPILE_NAME(
    "state_batch",
    "f.batch") ", f.volume_ml, f.date_precision FROM state_fill AS f " SPILE_OF_BARREL;
inline constexpr std::string_view gauges =
    "SELECT " SPILE_FACT_COLUMNS
    ", f.volume_ml, f.gauge_method FROM state_gauge AS f " SPILE_OF_BARREL;
inline constexpr std::string_view draws =
    "SELECT " SPILE_FACT_COLUMNS
    ", f.volume_ml, f.draw_method FROM state_draw AS f " SPILE_OF_BARREL;
inline constexpr std::string_view tastings =
    "SELECT " SPILE_FACT_COLUMNS ", f.liking FROM state_taste AS f " SPILE_OF_BARREL;
inline constexpr std::string_view readings =
    "SELECT " SPILE_FACT_COLUMNS
    ", f.sg_e4, f.ph_e2, f.abv_e2, f.temp_mc FROM state_reading AS f " SPILE_OF_BARREL;
inline constexpr std::string_view photos =
    "SELECT " SPILE_FACT_COLUMNS ", f.purpose FROM state_photo AS f " SPILE_OF_BARREL;
inline constexpr std::string_view scoresOf =
    "SELECT attribute, score FROM state_taste_scores WHERE entry = ?";
inline constexpr std::string_view faultsOf =
    "SELECT fault, strength FROM state_taste_faults WHERE entry = ?";
inline constexpr std::string_view attachedTo =
    "SELECT a.sha256, a.bytes, coalesce(p.present, 0) FROM state_attached AS a LEFT JOIN photo AS "
    "p USING(sha256) "
    "WHERE a.entry = ? ORDER BY a.row";

inline constexpr std::string_view namedPeople =
    "SELECT subject, name FROM state_person WHERE subject > ? AND voided = 0 ORDER BY subject "
    "LIMIT ?";
inline constexpr std::string_view namedPlaces =
    "SELECT subject, name FROM state_place WHERE subject > ? AND voided = 0 ORDER BY subject LIMIT "
    "?";
inline constexpr std::string_view namedTargets =
    "SELECT subject, name FROM state_target WHERE subject > ? AND voided = 0 ORDER BY subject "
    "LIMIT ?";
inline constexpr std::string_view namedBatches =
    "SELECT subject, name FROM state_batch WHERE subject > ? AND voided = 0 ORDER BY subject LIMIT "
    "?";
inline constexpr std::string_view namedDevices =
    "SELECT subject, " SPILE_NAME("state_device", "d.subject")
    " FROM state_device AS d WHERE subject > ? AND voided = 0 GROUP BY subject ORDER BY subject "
    "LIMIT ?";

#undef SPILE_NAME
#undef SPILE_BARREL_COLUMNS
#undef SPILE_FACT_COLUMNS
#undef SPILE_OF_BARREL

inline constexpr std::array all = {
    barrelsByCode, barrelsByDue, barrelByCode, placeById,    fills,        gauges,
    draws,         tastings,     readings,     photos,       scoresOf,     faultsOf,
    attachedTo,    namedPeople,  namedPlaces,  namedTargets, namedBatches, namedDevices};

}  // namespace spile::cellar::query_text
