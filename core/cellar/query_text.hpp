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
    "b.filled_precision, b.tastings, b.next_step, b.due_ms, b.emptied_ms, b.last_taste_ms, " \
    "b.verdict, b.order_key FROM state_barrel_now AS b "

#define SPILE_FACT_COLUMNS                                                       \
    "f.entry, f.at_ms, " SPILE_NAME("state_person", "f.person") ", " SPILE_NAME( \
        "state_device", "f.device") ", f.device, f.note, f.amended, f.two_values "
#define SPILE_OF_BARREL "WHERE f.subject = ? AND f.voided = 0 ORDER BY f.when_ms, f.device, f.seq"

inline constexpr std::string_view barrelsInOrder = SPILE_BARREL_COLUMNS
    "WHERE (b.order_key, b.subject) > (?, ?) ORDER BY b.order_key, b.subject LIMIT ?";
inline constexpr std::string_view barrelsByDue = SPILE_BARREL_COLUMNS
    "WHERE b.due_ms IS NOT NULL AND b.due_ms <= ? AND (b.due_ms, b.subject) > (?, ?) "
    "ORDER BY b.due_ms, b.subject LIMIT ?";
inline constexpr std::string_view barrelByCode =
    SPILE_BARREL_COLUMNS "WHERE b.code = ? ORDER BY b.subject";
inline constexpr std::string_view barrelById = SPILE_BARREL_COLUMNS "WHERE b.subject = ?";
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
    "SELECT " SPILE_FACT_COLUMNS ", f.verdict FROM state_verdict AS f " SPILE_OF_BARREL;
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
    "SELECT attribute FROM state_target_windows WHERE entry = (SELECT entry FROM state_target AS t "
    "WHERE t.subject = ? AND t.voided = 0 ORDER BY t.when_ms, t.device, t.seq LIMIT 1) "
    "ORDER BY row";
inline constexpr std::string_view scoredSinceFill =
    "SELECT DISTINCT s.attribute FROM state_taste AS t JOIN state_taste_scores AS s "
    "ON s.entry = t.entry WHERE t.subject = ? AND t.voided = 0 AND t.when_ms >= "
    "(SELECT when_ms FROM state_fill WHERE entry = ?) ORDER BY s.attribute";

// For the journal: this device's entries by its chain.
#define SPILE_OWN_CHAIN                                                   \
    "(SELECT d FROM device_chain WHERE device = (SELECT value FROM meta " \
    "WHERE key = 'device'))"

inline constexpr std::string_view ownActs =
    "SELECT e.id, e.seq, e.kind, e.at_ms, e.subject, e.core, e.body, "
    "(SELECT v.entry FROM state_void AS v WHERE v.target = e.id AND v.voided = 0 LIMIT 1), "
    "b.code, b.mark FROM entry AS e LEFT JOIN state_barrel_now AS b ON b.subject = e.subject "
    "WHERE e.d = " SPILE_OWN_CHAIN
    " AND e.seq < ? AND e.kind NOT IN ('genesis', 'device', 'grant', 'revoke', 'clock_observe', "
    "'amend', 'void') ORDER BY e.seq DESC LIMIT ?";
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
    "SELECT coalesce(max(e.seq), 0) FROM peer_head AS p JOIN entry AS e ON e.id = p.id "
    "WHERE p.peer = ? AND p.device = (SELECT value FROM meta WHERE key = 'device')";
inline constexpr std::string_view ownCountAfter =
    "SELECT count(*) FROM entry WHERE d = " SPILE_OWN_CHAIN " AND seq > ?";

#undef SPILE_NAME
#undef SPILE_BARREL_COLUMNS
#undef SPILE_FACT_COLUMNS
#undef SPILE_OF_BARREL
#undef SPILE_OWN_CHAIN

inline constexpr std::array all = {
    barrelsInOrder, barrelsByDue, barrelByCode,   barrelById,      placeById,        fills,
    gauges,         draws,        tastings,       readings,        lastReading,      photos,
    topUps,         doses,        repairs,        unusualSteps,    measuresOfBarrel, climates,
    checks,         moves,        verdictsGiven,  emptyings,       scoresOf,         faultsOf,
    attachedTo,     namedPeople,  namedPlaces,    namedTargets,    namedBatches,     namedDevices,
    nameOfPerson,   nameOfBatch,  targetOfBarrel, windowsOfTarget, scoredSinceFill,  ownActs,
    lastHandedOut,  coveredSeq,   ownKindsAfter,  ownPhotosAfter,  lastTakenIn,      heldByPeer,
    ownCountAfter};

}  // namespace spile::cellar::query_text
