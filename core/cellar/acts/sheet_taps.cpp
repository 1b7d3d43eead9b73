// The taps of an open sheet: one row of table draft each.
#include "core/cellar/acts/sheet_tap.hpp"
#include "core/picture/metadata.hpp"
#include "core/units/scaled.hpp"

#include <algorithm>
#include <array>

namespace spile::cellar {

using ledger::Database;
using ledger::Row;

namespace {

constexpr std::int64_t photosOnSheetMost = 32;

struct MeasureField {
    Field field;
    double scale;
};
// In the order of Measure.
constexpr std::array<MeasureField, 3> numberFields = {MeasureField{Field::SgE4, 1e4},
                                                      MeasureField{Field::PhE2, 1e2},
                                                      MeasureField{Field::TempMc, 1e3}};

MeasureField fieldOf(Measure measure) { return numberFields.at(static_cast<std::size_t>(measure)); }

// A sheet holds no more attributes, faults or photos than can be recorded of it.
std::optional<std::int64_t> mostOf(std::string_view subject)
{
    if (subject == scoreTap) {
        return specOf(Field::Scores).most;
    }
    if (subject == faultTap) {
        return specOf(Field::Faults).most;
    }
    return subject == photoTap ? std::optional(photosOnSheetMost) : std::nullopt;
}

Result<void> needRoom(Database& database, const SubjectId& sheet, const LastTap& tap)
{
    const auto most = mostOf(tap.subject);
    if (!most) {
        return {};
    }
    SPILE_ASSIGN(others, database.integer(0,
                                          "SELECT count(DISTINCT name) FROM draft WHERE sheet = ? "
                                          "AND subject = ? AND name <> ?",
                                          sheet, tap.subject, tap.name));
    if (others >= *most) {
        return fail(ErrorCode::OutOfRange, tap.subject, tap.name,
                    "at most " + std::to_string(*most) + " on one sheet");
    }
    return {};
}

Result<void> keepTap(Cellar& cellar, const SubjectId& sheet, const LastTap& tap)
{
    SPILE_ASSIGN(change, cellar.ledger().change());
    Database& database = change.database();
    SPILE_TRY(needOpen(database, sheet));
    SPILE_TRY(needRoom(database, sheet, tap));
    SPILE_TRY(database.execute(
        "INSERT INTO draft(sheet, tap, subject, name, number, text, tapped_ms) "
        "SELECT ?, coalesce(max(tap), 0) + 1, ?, ?, ?, ?, ? FROM draft WHERE sheet = ?",
        sheet, tap.subject, tap.name, tap.number, tap.text, toMs(cellar.outside().clock.now()),
        sheet));
    return change.commit();
}

LastTap tapOf(std::string_view subject, std::string name, std::optional<std::int64_t> number = {},
              std::optional<std::string> text = {})
{
    return {std::string(subject), std::move(name), number, std::move(text)};
}

// Checks one row of a list field by the table of fields, so that a tap is refused when it is made.
Result<void> checkItem(Field field, ledger::List row)
{
    return checkValue(specOf(field), ledger::Value(ledger::List{ledger::Value(std::move(row))}));
}

std::vector<std::string> split(const std::string& text)
{
    std::vector<std::string> parts;
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t end = std::min(text.find(orderSeparator, at), text.size());
        parts.push_back(text.substr(at, end - at));
        at = end + 1;
    }
    return parts;
}

void applyReading(NewReading& reading, const LastTap& tap)
{
    const auto scaled = [&](Measure measure) {
        return tap.number ? std::optional(static_cast<double>(*tap.number) / fieldOf(measure).scale)
                          : std::nullopt;
    };
    if (tap.name == specOf(Field::SgE4).name) {
        reading.specificGravity = scaled(Measure::SpecificGravity);
    } else if (tap.name == specOf(Field::PhE2).name) {
        reading.ph = scaled(Measure::Ph);
    } else if (tap.name == specOf(Field::TempMc).name) {
        reading.temperature =
            tap.number ? std::optional(temperatureFromMilliCelsius(*tap.number)) : std::nullopt;
    }
}

void applyPhoto(std::vector<SheetPhoto>& photos, const LastTap& tap)
{
    const auto hash = Sha256::fromHex(tap.name);
    if (!hash || !tap.number) {
        return;
    }
    const SheetPhoto photo{{*hash, static_cast<std::uint64_t>(*tap.number)}, tap.text.value_or("")};
    const auto same = std::find_if(photos.begin(), photos.end(), [&](const SheetPhoto& known) {
        return known.photo == photo.photo;
    });
    if (same == photos.end()) {
        photos.push_back(photo);
    } else {
        *same = photo;
    }
}

}  // namespace

void applyTap(SheetContent& content, const LastTap& tap)
{
    NewTaste& taste = content.taste;
    if (tap.subject == scoreTap) {
        taste.scores[tap.name] = intOf(tap.number);
    } else if (tap.subject == faultTap && tap.number) {
        taste.faults[tap.name] = static_cast<int>(*tap.number);
    } else if (tap.subject == faultTap) {
        taste.faults.erase(tap.name);
    } else if (tap.subject == likingTap) {
        taste.liking = intOf(tap.number);
    } else if (tap.subject == tiredTap) {
        taste.palateTired = tap.number == 1;
    } else if (tap.subject == noteTap) {
        taste.circumstance.note = tap.text.value_or("");
    } else if (tap.subject == orderTap) {
        taste.attributeOrder = split(tap.text.value_or(""));
    } else if (tap.subject == readingTap) {
        applyReading(content.reading, tap);
    } else if (tap.subject == photoTap) {
        applyPhoto(content.photos, tap);
    }
}

Result<void> tapScore(Cellar& cellar, const SubjectId& sheet, const std::string& attribute,
                      Score score)
{
    SPILE_TRY(checkItem(Field::Scores, {attribute, valueOf(score)}));
    return keepTap(
        cellar, sheet,
        tapOf(scoreTap, attribute, score ? std::optional(std::int64_t{*score}) : std::nullopt));
}

Result<void> tapFault(Cellar& cellar, const SubjectId& sheet, const std::string& fault,
                      std::optional<int> strength)
{
    SPILE_TRY(checkItem(Field::Faults, {fault, std::int64_t{strength.value_or(1)}}));
    return keepTap(
        cellar, sheet,
        tapOf(faultTap, fault, strength ? std::optional(std::int64_t{*strength}) : std::nullopt));
}

Result<void> tapLiking(Cellar& cellar, const SubjectId& sheet, int liking)
{
    SPILE_TRY(checkValue(specOf(Field::Liking), std::int64_t{liking}));
    return keepTap(cellar, sheet, tapOf(likingTap, {}, liking));
}

Result<void> tapPalateTired(Cellar& cellar, const SubjectId& sheet, bool tired)
{
    return keepTap(cellar, sheet, tapOf(tiredTap, {}, tired ? 1 : 0));
}

Result<void> writeNote(Cellar& cellar, const SubjectId& sheet, const std::string& note)
{
    if (!note.empty()) {
        SPILE_TRY(checkValue(specOf(Field::Note), note));
    }
    return keepTap(cellar, sheet, tapOf(noteTap, {}, {}, note));
}

Result<void> tapReading(Cellar& cellar, const SubjectId& sheet, Measure measure,
                        std::optional<double> value)
{
    const FieldSpec& spec = specOf(fieldOf(measure).field);
    std::optional<std::int64_t> number;
    if (value) {
        const double shown = measure == Measure::Temperature ? inCelsius(kelvins(*value)) : *value;
        SPILE_ASSIGN(scaled, toScaled(shown * fieldOf(measure).scale, spec.name));
        SPILE_TRY(checkValue(spec, scaled));
        number = scaled;
    }
    return keepTap(cellar, sheet, tapOf(readingTap, std::string(spec.name), number));
}

Result<ledger::PhotoRef> keepPhoto(Cellar& cellar, const SubjectId& sheet, ByteView picture,
                                   const std::string& purpose)
{
    SPILE_TRY(checkValue(specOf(Field::Purpose), purpose));
    SPILE_TRY(needOpen(cellar.database(), sheet));
    SPILE_ASSIGN(bytes, picture::stripMetadata(picture));
    SPILE_ASSIGN(hash, cellar.ledger().photos().add(bytes));
    const ledger::PhotoRef photo{hash, bytes.size()};
    SPILE_TRY(
        keepTap(cellar, sheet,
                tapOf(photoTap, hash.hex(), static_cast<std::int64_t>(bytes.size()), purpose)));
    return photo;
}

Result<void> keepOrder(Cellar& cellar, const SubjectId& sheet,
                       const std::vector<std::string>& attributes)
{
    std::string text;
    for (const std::string& attribute : attributes) {
        SPILE_TRY(checkItem(Field::AttributeOrder, {attribute}));
        if (attribute.find(orderSeparator) != std::string::npos) {
            return fail(ErrorCode::Malformed, "attribute", attribute, "a word without line ends");
        }
        text += (text.empty() ? "" : std::string(1, orderSeparator)) + attribute;
    }
    return keepTap(cellar, sheet, tapOf(orderTap, {}, {}, text));
}

Result<bool> undoTap(Cellar& cellar, const SubjectId& sheet)
{
    SPILE_ASSIGN(change, cellar.ledger().change());
    SPILE_TRY(
        change.database().execute("DELETE FROM draft WHERE sheet = ? AND tap = "
                                  "(SELECT max(tap) FROM draft WHERE sheet = ?)",
                                  sheet, sheet));
    const bool undone = change.database().changes() > 0;
    SPILE_TRY(change.commit());
    return undone;
}

Result<std::optional<LastTap>> lastTap(Cellar& cellar, const SubjectId& sheet)
{
    return cellar.database().first(
        [](const Row& row) {
            return LastTap{row.text(0), row.text(1), row.integerIfAny(2), row.textIfAny(3)};
        },
        "SELECT subject, name, number, text FROM draft WHERE sheet = ? ORDER BY tap DESC LIMIT 1",
        sheet);
}

}  // namespace spile::cellar
