#pragma once

#include <array>
#include <string_view>

/// The SQL of the list queries, in one place so that a test can look at how each is run: by an
/// index, never by reading a whole table.
namespace spile::cellar::query_text {

#define SPILE_BARREL_COLUMNS                                                                 \
    "SELECT b.subject, b.code, b.mark, b.spirit, batch.name, b.place, b.filled, b.size_ml, " \
    "b.volume_ml, "                                                                          \
    "b.fill_number, b.filled_ms, b.filled_precision, b.tastings, b.next_step, b.due_ms "     \
    "FROM state_barrel_now AS b "                                                            \
    "LEFT JOIN state_batch AS batch ON batch.subject = b.batch AND batch.voided = 0 "

#define SPILE_FACT_COLUMNS \
    "f.entry, f.at_ms, person.name, device.name, f.device, f.note, f.amended, f.two_values "
#define SPILE_FACT_JOINS                                                                   \
    "LEFT JOIN state_person AS person ON person.subject = f.person AND person.voided = 0 " \
    "LEFT JOIN state_device AS device ON device.subject = f.device AND device.voided = 0 " \
    "WHERE f.subject = ? AND f.voided = 0 ORDER BY f.at_ms, f.device, f.seq"

inline constexpr std::string_view barrelsByCode =
    SPILE_BARREL_COLUMNS "WHERE (b.code, b.subject) > (?, ?) ORDER BY b.code, b.subject LIMIT ?";
inline constexpr std::string_view barrelsByDue = SPILE_BARREL_COLUMNS
    "WHERE b.due_ms IS NOT NULL AND b.due_ms <= ? AND (b.due_ms, b.subject) > (?, ?) "
    "ORDER BY b.due_ms, b.subject LIMIT ?";
inline constexpr std::string_view barrelByCode =
    SPILE_BARREL_COLUMNS "WHERE b.code = ? ORDER BY b.subject";
inline constexpr std::string_view placeById =
    "SELECT name, parent FROM state_place WHERE subject = ? AND voided = 0 ORDER BY at_ms, device, "
    "seq LIMIT 1";

inline constexpr std::string_view fills =
    "SELECT " SPILE_FACT_COLUMNS
    ", batch.name, f.volume_ml, f.date_precision FROM state_fill AS f "
    "LEFT JOIN state_batch AS batch ON batch.subject = f.batch AND batch.voided = "
    "0 " SPILE_FACT_JOINS;
inline constexpr std::string_view gauges =
    "SELECT " SPILE_FACT_COLUMNS
    ", f.volume_ml, f.gauge_method FROM state_gauge AS f " SPILE_FACT_JOINS;
inline constexpr std::string_view draws =
    "SELECT " SPILE_FACT_COLUMNS
    ", f.volume_ml, f.draw_method FROM state_draw AS f " SPILE_FACT_JOINS;
inline constexpr std::string_view tastings =
    "SELECT " SPILE_FACT_COLUMNS ", f.liking FROM state_taste AS f " SPILE_FACT_JOINS;
inline constexpr std::string_view readings =
    "SELECT " SPILE_FACT_COLUMNS
    ", f.sg_e4, f.ph_e2, f.abv_e2, f.temp_mc FROM state_reading AS f " SPILE_FACT_JOINS;
inline constexpr std::string_view photos =
    "SELECT " SPILE_FACT_COLUMNS ", f.purpose FROM state_photo AS f " SPILE_FACT_JOINS;
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
    "SELECT subject, name FROM state_device WHERE subject > ? AND voided = 0 ORDER BY subject "
    "LIMIT ?";

#undef SPILE_BARREL_COLUMNS
#undef SPILE_FACT_COLUMNS
#undef SPILE_FACT_JOINS

inline constexpr std::array all = {
    barrelsByCode, barrelsByDue, barrelByCode, placeById,    fills,        gauges,
    draws,         tastings,     readings,     photos,       scoresOf,     faultsOf,
    attachedTo,    namedPeople,  namedPlaces,  namedTargets, namedBatches, namedDevices};

}  // namespace spile::cellar::query_text
