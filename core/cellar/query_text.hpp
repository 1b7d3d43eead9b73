#pragma once

#include "core/ledger/entry_number.hpp"

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
    "b.filled_precision, b.tastings, b.next_step, d.due_ms, b.emptied_ms, b.last_taste_ms, " \
    "b.verdict, b.order_key, d.reason, b.next_use, b.sour "
#define SPILE_ALL_BARRELS \
    SPILE_BARREL_COLUMNS "FROM state_barrel_now AS b LEFT JOIN due_now AS d USING(subject) "

#define SPILE_FACT_COLUMNS                                                       \
    "f.entry, f.at_ms, " SPILE_NAME("state_person", "f.person") ", " SPILE_NAME( \
        "state_device", "f.device") ", f.device, f.note, f.amended, f.two_values, f.clock_ms "
#define SPILE_OF_BARREL "WHERE f.subject = ? AND f.voided = 0 ORDER BY f.when_ms, f.device, f.seq"

inline constexpr std::string_view barrelsInOrder = SPILE_ALL_BARRELS
    "WHERE (b.order_key, b.subject) > (?, ?) ORDER BY b.order_key, b.subject LIMIT ?";
inline constexpr std::string_view barrelsByDue = SPILE_BARREL_COLUMNS
    "FROM due_now AS d CROSS JOIN state_barrel_now AS b USING(subject) "
    "WHERE d.due_ms <= ? AND (d.due_ms, d.subject) > (?, ?) "
    "ORDER BY d.due_ms, d.subject LIMIT ?";
inline constexpr std::string_view barrelByCode =
    SPILE_ALL_BARRELS "WHERE b.code = ? ORDER BY b.subject";
inline constexpr std::string_view barrelsByCodeFrom =
    SPILE_ALL_BARRELS "WHERE b.code >= ? AND b.code < ? ORDER BY b.code, b.subject LIMIT ?";
inline constexpr std::string_view barrelById = SPILE_ALL_BARRELS "WHERE b.subject = ?";
inline constexpr std::string_view placeById =
    "SELECT name, parent FROM state_place WHERE subject = ? AND voided = 0 ORDER BY when_ms, "
    "device, "
    "seq LIMIT 1";

inline constexpr std::string_view fills = "SELECT " SPILE_FACT_COLUMNS ", " SPILE_NAME(
    "state_batch",
    "f.batch") ", f.volume_ml, f.date_precision, f.abv_e2, f.sg_e4 FROM state_fill AS f " SPILE_OF_BARREL;
inline constexpr std::string_view gauges =
    "SELECT " SPILE_FACT_COLUMNS
    ", f.volume_ml, f.gauge_method, f.bound FROM state_gauge AS f " SPILE_OF_BARREL;
inline constexpr std::string_view draws =
    "SELECT " SPILE_FACT_COLUMNS
    ", f.volume_ml, f.draw_method FROM state_draw AS f " SPILE_OF_BARREL;
inline constexpr std::string_view tastings =
    "SELECT " SPILE_FACT_COLUMNS ", f.liking FROM state_taste AS f " SPILE_OF_BARREL;
inline constexpr std::string_view readings =
    "SELECT " SPILE_FACT_COLUMNS
    ", f.sg_e4, f.ph_e2, f.abv_e2, f.temp_mc, f.sg_ref_mc, f.sg_temp_mc FROM state_reading AS "
    "f " SPILE_OF_BARREL;
inline constexpr std::string_view photos =
    "SELECT " SPILE_FACT_COLUMNS ", f.purpose FROM state_photo AS f " SPILE_OF_BARREL;
inline constexpr std::string_view lastReading =
    "SELECT " SPILE_FACT_COLUMNS
    ", f.sg_e4, f.ph_e2, f.abv_e2, f.temp_mc, f.sg_ref_mc, f.sg_temp_mc FROM state_reading AS f "
    "WHERE f.subject = ? AND "
    "f.voided = 0 ORDER BY f.when_ms DESC, f.device DESC, f.seq DESC LIMIT 1";
inline constexpr std::string_view checks =
    "SELECT " SPILE_FACT_COLUMNS ", f.finding FROM state_check AS f " SPILE_OF_BARREL;
inline constexpr std::string_view moves = "SELECT " SPILE_FACT_COLUMNS ", " SPILE_NAME(
    "state_place", "f.place") " FROM state_move AS f " SPILE_OF_BARREL;
inline constexpr std::string_view verdictsGiven =
    "SELECT " SPILE_FACT_COLUMNS
    ", f.verdict, f.chance_e3, f.best_ms FROM state_verdict AS f " SPILE_OF_BARREL;
inline constexpr std::string_view emptyings =
    "SELECT " SPILE_FACT_COLUMNS ", f.next_use FROM state_empty AS f " SPILE_OF_BARREL;
inline constexpr std::string_view topUps = "SELECT " SPILE_FACT_COLUMNS ", " SPILE_NAME(
    "state_batch",
    "f.batch") ", f.volume_ml, f.abv_e2, f.substance FROM state_top_up AS f " SPILE_OF_BARREL;
inline constexpr std::string_view doses = "SELECT " SPILE_FACT_COLUMNS
                                          ", f.substance, f.volume_ml, f.drained_ml, f.mass_g, "
                                          "f.abv_e2 FROM state_dose AS f " SPILE_OF_BARREL;
inline constexpr std::string_view repairs =
    "SELECT " SPILE_FACT_COLUMNS ", f.repair FROM state_repair AS f " SPILE_OF_BARREL;
// Of the steps of work sheets only those that did not go by the sheet.
inline constexpr std::string_view unusualSteps =
    "SELECT " SPILE_FACT_COLUMNS
    ", f.sheet || char(10) || f.outcome || char(10) || coalesce(f.reason, f.step) FROM "
    "state_sheet_step AS f "
    "WHERE f.subject = ? AND f.voided = 0 AND f.outcome <> 'done' "
    "ORDER BY f.when_ms, f.device, f.seq";
inline constexpr std::string_view measuresOfBarrel =
    "SELECT tare_g, full_ml, length_mm, bilge_mm, head_mm, stave_mm FROM state_barrel "
    "WHERE subject = ? AND voided = 0 ORDER BY when_ms, device, seq LIMIT 1";
inline constexpr std::string_view climates =
    "SELECT at_ms, temp_mc, humidity_e1 FROM state_climate WHERE subject = ? AND voided = 0 "
    "ORDER BY when_ms, device, seq";
inline constexpr std::string_view scoresOf =
    "SELECT attribute, score FROM state_taste_scores WHERE subject = ? AND entry = ?";
inline constexpr std::string_view faultsOf =
    "SELECT fault, strength FROM state_taste_faults WHERE subject = ? AND entry = ?";
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

inline constexpr std::string_view nameOfPerson =
    "SELECT name FROM state_person WHERE subject = ? AND voided = 0 ORDER BY when_ms, device, seq "
    "LIMIT 1";
inline constexpr std::string_view nameOfBatch =
    "SELECT name FROM state_batch WHERE subject = ? AND voided = 0 ORDER BY when_ms, device, seq "
    "LIMIT 1";

// For the words of a sheet: the target of the batch that a barrel holds, and what was scored in
// this fill.
inline constexpr std::string_view targetOfBarrel =
    "SELECT (SELECT target FROM state_batch AS made WHERE made.subject = b.batch AND "
    "made.voided = 0 ORDER BY made.when_ms, made.device, made.seq LIMIT 1), b.fill "
    "FROM state_barrel_now AS b WHERE b.subject = ?";
inline constexpr std::string_view windowsOfTarget =
    "SELECT attribute, low, high FROM state_target_windows WHERE entry = (SELECT entry FROM "
    "state_target AS t "
    "WHERE t.subject = ? AND t.voided = 0 ORDER BY t.when_ms, t.device, t.seq LIMIT 1) "
    "ORDER BY row";
inline constexpr std::string_view scoredSinceFill =
    "SELECT DISTINCT s.attribute FROM state_taste AS t JOIN state_taste_scores AS s "
    "ON s.subject = t.subject AND s.entry = t.entry WHERE t.subject = ? AND t.voided = 0 AND "
    "t.when_ms >= "
    "(SELECT when_ms FROM state_fill WHERE entry = ?) ORDER BY s.attribute";

inline constexpr std::string_view batchOfBarrel = "SELECT b.batch, " SPILE_NAME(
    "state_batch",
    "b.batch") " FROM state_barrel_now AS b WHERE b.subject = ? AND b.batch IS NOT NULL";
inline constexpr std::string_view targetOfBatch =
    "SELECT entry, name, target FROM state_batch WHERE subject = ? AND voided = 0 ORDER BY "
    "when_ms, device, seq LIMIT 1";
inline constexpr std::string_view entryOfTarget =
    "SELECT entry FROM state_target WHERE subject = ? AND voided = 0 ORDER BY when_ms, device, seq "
    "LIMIT 1";

// Flights: see flights.hpp.
#define SPILE_FLIGHT_COLUMNS \
    "SELECT f.subject, f.entry, f.name, f.at_ms, f.when_ms, " SPILE_NAME( \
        "state_person", "f.person") ", f.clean_glasses, EXISTS(SELECT 1 FROM flight_over AS o WHERE o.flight = f.subject) FROM state_flight AS f WHERE f.voided = 0 "

inline constexpr std::string_view flightsByTime = SPILE_FLIGHT_COLUMNS
    "AND f.when_ms >= ? AND (f.when_ms, f.subject) < (?, ?) "
    "ORDER BY f.when_ms DESC, f.subject DESC LIMIT ?";
inline constexpr std::string_view flightById =
    SPILE_FLIGHT_COLUMNS "AND f.subject = ? ORDER BY f.when_ms, f.device, f.seq LIMIT 1";
inline constexpr std::string_view glassesOfFlight =
    "SELECT g.glass, g.barrel, EXISTS(SELECT 1 FROM state_draw AS d WHERE d.flight = ? AND "
    "d.glass = g.glass AND d.voided = 0) FROM state_flight_glasses AS g WHERE g.entry = ? "
    "ORDER BY g.row";
inline constexpr std::string_view tastesOfFlight =
    "SELECT glass, person, entry FROM state_taste WHERE flight = ? AND voided = 0";
inline constexpr std::string_view glassOfTaste =
    "SELECT flight, glass FROM state_taste WHERE subject = (SELECT subject FROM entry WHERE n "
    "= " SPILE_ENTRY_NUMBER("?1") ") AND entry = ?1";

// What speaks against a barrel: the look over it that was the latest in this fill, and what its
// last tasting found. A tasting is all sheets of half a day.
#define SPILE_LAST_TASTING                                                                 \
    "FROM state_barrel_now AS b CROSS JOIN state_taste AS t ON t.subject = b.subject AND " \
    "t.voided = 0 AND t.when_ms >= b.last_taste_ms - 43200000 "
inline constexpr std::string_view lastLook =
    "SELECT b.verdict, (SELECT c.sound FROM state_check AS c WHERE c.subject = b.subject AND "
    "c.voided = 0 AND c.when_ms >= b.filled_ms ORDER BY c.when_ms DESC, c.device DESC, c.seq DESC "
    "LIMIT 1) FROM state_barrel_now AS b WHERE b.subject = ?";
inline constexpr std::string_view lastFaults =
    "SELECT f.fault, f.strength " SPILE_LAST_TASTING
    "CROSS JOIN state_taste_faults AS f ON f.subject = t.subject AND f.entry = t.entry WHERE "
    "b.subject = ?";
inline constexpr std::string_view lastAcidity =
    "SELECT max(s.score) " SPILE_LAST_TASTING
    "CROSS JOIN state_taste_scores AS s ON s.subject = t.subject AND s.entry = t.entry AND "
    "s.attribute = 'acidity' "
    "WHERE b.subject = ?";

// Outlooks as they are kept: see acts/foreseeing.hpp.
#define SPILE_OUTLOOK_COLUMNS                                                   \
    "o.barrel, o.fingerprint, o.next_ms, o.reason, o.advice, o.chance_now_e3, " \
    "o.best_chance_e3, o.best_from_ms, o.best_ms, o.best_to_ms, o.horizon_ms, o.made_ms "

inline constexpr std::string_view outlookOfBarrel =
    "SELECT " SPILE_OUTLOOK_COLUMNS
    "FROM outlook_now AS o WHERE o.barrel = ? AND o.fingerprint = "
    "(SELECT fingerprint FROM barrel_fingerprint WHERE subject = o.barrel)";
inline constexpr std::string_view outlooksByBest =
    "SELECT " SPILE_OUTLOOK_COLUMNS ", b.code, b.mark, " SPILE_NAME("state_batch", "b.batch")
    " FROM outlook_now AS o CROSS JOIN state_barrel_now AS b ON b.subject = o.barrel "
    "WHERE (o.order_ms, o.barrel) > (?, ?) AND b.filled = 1 "
    "ORDER BY o.order_ms, o.barrel LIMIT ?";

// For the journal: this device's entries by its chain.
#define SPILE_OWN_CHAIN                                                   \
    "(SELECT d FROM device_chain WHERE device = (SELECT value FROM meta " \
    "WHERE key = 'device'))"

inline constexpr std::string_view ownActs =
    "SELECT e.id, e.seq, e.kind, e.subject, e.core, e.body, "
    "(SELECT v.entry FROM state_void AS v WHERE v.target = e.id AND v.voided = 0 LIMIT 1), "
    "b.code, b.mark FROM entry AS e LEFT JOIN state_barrel_now AS b ON b.subject = e.subject "
    "WHERE e.d = " SPILE_OWN_CHAIN
    " AND e.seq < ? AND e.kind NOT IN ('genesis', 'device', 'grant', 'revoke', 'amend', 'void') "
    "ORDER BY e.seq DESC LIMIT ?";
inline constexpr std::string_view lastHandedOut =
    "SELECT made_ms, n, entries, to_device FROM handed_out WHERE n = (SELECT max(n) FROM "
    "handed_out)";
inline constexpr std::string_view coveredSeq = "SELECT max(own_seq) FROM handed_out";
inline constexpr std::string_view ownKindsAfter =
    "SELECT kind, count(*) FROM entry WHERE d = " SPILE_OWN_CHAIN " AND seq > ? GROUP BY kind";
inline constexpr std::string_view ownPhotosAfter =
    "SELECT count(DISTINCT p.sha256) FROM entry AS e JOIN entry_photo AS p USING(n) "
    "WHERE e.d = " SPILE_OWN_CHAIN " AND e.seq > ?";
inline constexpr std::string_view lastTakenIn = "SELECT taken_ms, " SPILE_NAME(
    "state_device", "from_device") " FROM taken_in WHERE from_device = ? ORDER BY n DESC LIMIT 1";
inline constexpr std::string_view heldByPeer =
    "SELECT coalesce(max(e.seq), 0) FROM peer_head AS p CROSS JOIN entry AS e "
    "ON e.d = " SPILE_OWN_CHAIN
    " AND e.seq = p.seq AND e.id = p.id WHERE p.peer = ? AND p.device = "
    "(SELECT value FROM meta WHERE key = 'device')";
inline constexpr std::string_view ownCountAfter =
    "SELECT count(*) FROM entry WHERE d = " SPILE_OWN_CHAIN " AND seq > ?";

// Clocks: see clocks.hpp.
inline constexpr std::string_view newestRecordOf =
    "SELECT core FROM entry WHERE d = (SELECT d FROM device_chain WHERE device = ?) "
    "ORDER BY seq DESC LIMIT 1";
inline constexpr std::string_view newestRecords =
    "SELECT c.device, " SPILE_NAME("state_device", "c.device") ", c.device = (SELECT value FROM "
    "meta WHERE key = 'device'), e.core FROM device_chain AS c CROSS JOIN head AS h ON h.d = c.d "
    "CROSS JOIN entry AS e ON e.d = h.d AND e.seq = h.seq AND e.id = h.id WHERE c.d > 0 "
    "AND c.device <> (SELECT value FROM meta WHERE key = 'cellar') AND e.n NOT IN (SELECT n FROM "
    "set_aside)";

// Stays: see stays.hpp.
inline constexpr std::string_view stayBarrel =
    "SELECT coalesce(spirit, ''), char_level, size_ml, fills_before, place FROM state_barrel "
    "WHERE subject = ? AND voided = 0 ORDER BY when_ms, device, seq LIMIT 1";
inline constexpr std::string_view stayPlaces =
    "SELECT when_ms, place FROM state_move WHERE subject = ? AND voided = 0 "
    "ORDER BY when_ms, device, seq";
inline constexpr std::string_view stayFills =
    "SELECT f.entry, f.when_ms, coalesce(" SPILE_NAME("state_batch", "f.batch") ", ''), "
    "f.volume_ml FROM state_fill AS f " SPILE_OF_BARREL;
inline constexpr std::string_view stayEnds =
    "SELECT when_ms FROM state_empty WHERE subject = ? AND voided = 0 "
    "ORDER BY when_ms, device, seq";
inline constexpr std::string_view stayScores =
    "SELECT f.entry, f.when_ms, f.person, s.attribute, s.score, f.flight, f.glass FROM "
    "state_taste AS f CROSS JOIN state_taste_scores AS s ON s.subject = f.subject AND s.entry = "
    "f.entry WHERE f.subject = ? "
    "AND f.voided = 0 AND s.score IS NOT NULL ORDER BY f.when_ms, f.device, f.seq, s.row";
inline constexpr std::string_view stayDirections =
    "SELECT f.when_ms, d.attribute, d.direction FROM state_direction AS f CROSS JOIN "
    "state_direction_directions AS d ON d.subject = f.subject AND d.entry = f.entry WHERE "
    "f.subject = ? AND f.voided = 0 "
    "ORDER BY f.when_ms, f.device, f.seq, d.row";
inline constexpr std::string_view stayDraws =
    "SELECT when_ms, volume_ml, draw_method FROM state_draw WHERE subject = ? AND voided = 0 "
    "ORDER BY when_ms, device, seq";
inline constexpr std::string_view stayTopUps =
    "SELECT when_ms, volume_ml FROM state_top_up WHERE subject = ? AND voided = 0 "
    "ORDER BY when_ms, device, seq";

#undef SPILE_NAME
#undef SPILE_BARREL_COLUMNS
#undef SPILE_ALL_BARRELS
#undef SPILE_FLIGHT_COLUMNS
#undef SPILE_LAST_TASTING
#undef SPILE_OUTLOOK_COLUMNS
#undef SPILE_FACT_COLUMNS
#undef SPILE_OF_BARREL
#undef SPILE_OWN_CHAIN

inline constexpr std::array all = {
    barrelsInOrder,  barrelsByDue,     barrelByCode,    barrelsByCodeFrom,
    barrelById,      placeById,        fills,           gauges,
    draws,           tastings,         readings,        lastReading,
    photos,          topUps,           doses,           repairs,
    unusualSteps,    measuresOfBarrel, climates,        checks,
    moves,           verdictsGiven,    emptyings,       scoresOf,
    faultsOf,        attachedTo,       namedPeople,     namedPlaces,
    namedTargets,    namedBatches,     namedDevices,    nameOfPerson,
    nameOfBatch,     targetOfBarrel,   windowsOfTarget, scoredSinceFill,
    ownActs,         lastHandedOut,    coveredSeq,      ownKindsAfter,
    ownPhotosAfter,  lastTakenIn,      heldByPeer,      ownCountAfter,
    outlookOfBarrel, outlooksByBest,   targetOfBatch,   entryOfTarget,
    flightsByTime,   flightById,       glassesOfFlight, batchOfBarrel,
    tastesOfFlight,  glassOfTaste,     lastLook,        lastFaults,
    lastAcidity,     stayBarrel,       stayPlaces,      stayFills,
    stayEnds,        stayScores,       stayDirections,  stayTopUps,
    newestRecordOf,  newestRecords};

}  // namespace spile::cellar::query_text
