#include "core/cellar/field.hpp"

#include <algorithm>
#include <array>

namespace spile::cellar {

namespace {

constexpr std::int64_t id = 16;
constexpr std::int64_t hash = 32;
constexpr bool fixed = true;
constexpr std::int64_t nameChars = 80;
constexpr std::int64_t wordChars = 32;
constexpr std::int64_t latestMs = 253402300799999;  // year 9999
constexpr std::int64_t volumeMostMl = 100'000'000;  // 100 m3: no barrel and few tanks hold more
constexpr std::int64_t seqMost = 9'007'199'254'740'992;  // 2^53
constexpr std::int64_t bootId = 8;
constexpr std::int64_t bootMostMs = seqMost;  // as an entry's time since boot
constexpr std::int64_t sourcesMost = 2000;
constexpr std::int64_t longestS = 34'560'000;  // 400 days

constexpr std::array windowItems = {ItemColumn{"attribute", FieldType::Text, 1, wordChars},
                                    ItemColumn{"low", FieldType::Integer, 1, 9},
                                    ItemColumn{"high", FieldType::Integer, 1, 9}};
constexpr std::array glassItems = {ItemColumn{"glass", FieldType::Integer, 1, 999},
                                   ItemColumn{"barrel", FieldType::Bytes, id, id}};
constexpr std::array scoreItems = {
    ItemColumn{"attribute", FieldType::Text, 1, wordChars},
    ItemColumn{"score", FieldType::Integer, 1, 9, true}};  // null: not judged
constexpr std::array faultItems = {ItemColumn{"fault", FieldType::Text, 1, wordChars},
                                   ItemColumn{"strength", FieldType::Integer, 1, 9}};
constexpr std::array orderItems = {ItemColumn{"attribute", FieldType::Text, 1, wordChars}};
constexpr std::array directionItems = {ItemColumn{"attribute", FieldType::Text, 1, wordChars},
                                       // -1: too much, 0: right, 1: more
                                       ItemColumn{"direction", FieldType::Integer, -1, 1}};
// A number that was filled in at a step: the unit is in its name, as in a field's.
constexpr std::array valueItems = {
    ItemColumn{"name", FieldType::Text, 1, wordChars},
    ItemColumn{"number", FieldType::Integer, -9'000'000'000'000, 9'000'000'000'000}};

constexpr std::array sourceItems = {ItemColumn{"source", FieldType::Bytes, hash, hash}};
constexpr std::array packageItems = {ItemColumn{"package", FieldType::Text, 1, wordChars},
                                     ItemColumn{"content_ml", FieldType::Integer, 1, volumeMostMl},
                                     ItemColumn{"count", FieldType::Integer, 1, 100'000'000}};
constexpr std::array portionItems = {ItemColumn{"glass", FieldType::Integer, 1, 99},
                                     ItemColumn{"barrel", FieldType::Bytes, id, id},
                                     ItemColumn{"volume_ml", FieldType::Integer, 1, volumeMostMl}};
constexpr std::array pointItems = {ItemColumn{"seq", FieldType::Integer, 1, seqMost},
                                   ItemColumn{"point", FieldType::Bytes, hash, hash}};
constexpr std::array wordItems = {ItemColumn{"name", FieldType::Text, 1, wordChars},
                                  ItemColumn{"word", FieldType::Text, 1, nameChars}};

// In the order of the numbers; a number is never given to another field.
constexpr std::array specs = {
    FieldSpec{Field::Name, "name", FieldType::Text, 1, nameChars},
    FieldSpec{Field::Mark, "mark", FieldType::Text, 1, 24},
    FieldSpec{Field::PublicKey, "public_key", FieldType::Bytes, 32, 32},
    FieldSpec{Field::Role, "role", FieldType::Integer, 1, 2},
    FieldSpec{Field::Note, "note", FieldType::Text, 1, 4000},
    FieldSpec{Field::Code, "code", FieldType::Text, 6, 6},
    FieldSpec{Field::Spirit, "spirit", FieldType::Text, 1, wordChars},
    FieldSpec{Field::Wood, "wood", FieldType::Text, 1, wordChars},
    FieldSpec{Field::CharLevel, "char_level", FieldType::Integer, 0, 5},
    FieldSpec{Field::SizeMl, "size_ml", FieldType::Integer, 500, volumeMostMl},
    FieldSpec{Field::FillsBefore, "fills_before", FieldType::Integer, 0, 50},
    FieldSpec{Field::EmptiedMs, "emptied_ms", FieldType::Integer, 0, latestMs},
    FieldSpec{Field::TareG, "tare_g", FieldType::Integer, 100, 5'000'000},
    FieldSpec{Field::Place, "place", FieldType::Bytes, id, id},
    FieldSpec{Field::Parent, "parent", FieldType::Bytes, id, id},
    FieldSpec{Field::Windows, "windows", FieldType::List, 0, 40, windowItems},
    FieldSpec{Field::BrewedMs, "brewed_ms", FieldType::Integer, 0, latestMs},
    FieldSpec{Field::Target, "target", FieldType::Bytes, id, id},
    FieldSpec{Field::Batch, "batch", FieldType::Bytes, id, id},
    FieldSpec{Field::VolumeMl, "volume_ml", FieldType::Integer, 1, volumeMostMl},
    FieldSpec{Field::DatePrecision, "date_precision", FieldType::Integer, 1, 3},
    FieldSpec{Field::SgE4, "sg_e4", FieldType::Integer, 9000, 13000},
    FieldSpec{Field::PhE2, "ph_e2", FieldType::Integer, 100, 1000},
    FieldSpec{Field::TempMc, "temp_mc", FieldType::Integer, -20'000, 100'000},
    FieldSpec{Field::AbvE2, "abv_e2", FieldType::Integer, 0, 8000},
    FieldSpec{Field::Sound, "sound", FieldType::Flag},
    FieldSpec{Field::Finding, "finding", FieldType::Text, 1, wordChars},
    FieldSpec{Field::GaugeMethod, "gauge_method", FieldType::Text, 1, wordChars},
    FieldSpec{Field::DipMm, "dip_mm", FieldType::Integer, 0, 5000},
    FieldSpec{Field::MassG, "mass_g", FieldType::Integer, 1, 200'000'000},
    FieldSpec{Field::DrawMethod, "draw_method", FieldType::Text, 1, wordChars},
    FieldSpec{Field::Person, "person", FieldType::Bytes, id, id},
    FieldSpec{Field::Flight, "flight", FieldType::Bytes, id, id},
    FieldSpec{Field::Glass, "glass", FieldType::Integer, 1, 999},
    FieldSpec{Field::Glasses, "glasses", FieldType::List, 1, 60, glassItems},
    FieldSpec{Field::Scores, "scores", FieldType::List, 0, 60, scoreItems},
    FieldSpec{Field::Faults, "faults", FieldType::List, 0, 40, faultItems},
    FieldSpec{Field::Liking, "liking", FieldType::Integer, 1, 9},
    FieldSpec{Field::AttributeOrder, "attribute_order", FieldType::List, 0, 60, orderItems},
    FieldSpec{Field::PalateTired, "palate_tired", FieldType::Flag},
    FieldSpec{Field::Directions, "directions", FieldType::List, 1, 40, directionItems},
    FieldSpec{Field::Purpose, "purpose", FieldType::Text, 1, wordChars},
    FieldSpec{Field::Verdict, "verdict", FieldType::Text, 1, wordChars},
    FieldSpec{Field::UntilMs, "until_ms", FieldType::Integer, 0, latestMs},
    FieldSpec{Field::NextUse, "next_use", FieldType::Text, 1, wordChars},
    FieldSpec{Field::SgRefMc, "sg_ref_mc", FieldType::Integer, 0, 40'000},
    FieldSpec{Field::SgTempMc, "sg_temp_mc", FieldType::Integer, 0, 60'000},
    FieldSpec{Field::HumidityE1, "humidity_e1", FieldType::Integer, 0, 1000},
    FieldSpec{Field::Substance, "substance", FieldType::Text, 1, nameChars},
    FieldSpec{Field::DrainedMl, "drained_ml", FieldType::Integer, 0, volumeMostMl},
    FieldSpec{Field::Repair, "repair", FieldType::Text, 1, wordChars},
    FieldSpec{Field::Sheet, "sheet", FieldType::Text, 1, wordChars},
    FieldSpec{Field::Step, "step", FieldType::Text, 1, wordChars},
    FieldSpec{Field::Run, "run", FieldType::Bytes, id, id},
    FieldSpec{Field::Outcome, "outcome", FieldType::Text, 1, wordChars},
    FieldSpec{Field::Reason, "reason", FieldType::Text, 1, 400},
    FieldSpec{Field::Values, "values", FieldType::List, 1, 60, valueItems},
    FieldSpec{Field::PlannedS, "planned_s", FieldType::Integer, 0, longestS},
    FieldSpec{Field::ElapsedS, "elapsed_s", FieldType::Integer, 0, longestS},
    FieldSpec{Field::FullMl, "full_ml", FieldType::Integer, 500, volumeMostMl},
    FieldSpec{Field::LengthMm, "length_mm", FieldType::Integer, 100, 5000},
    FieldSpec{Field::BilgeMm, "bilge_mm", FieldType::Integer, 100, 5000},
    FieldSpec{Field::HeadMm, "head_mm", FieldType::Integer, 80, 5000},
    FieldSpec{Field::StaveMm, "stave_mm", FieldType::Integer, 5, 200},
    // -1: it holds at most the volume; 1: at least
    FieldSpec{Field::Bound, "bound", FieldType::Integer, -1, 1},
    FieldSpec{Field::Words, "words", FieldType::List, 1, 60, wordItems},
    FieldSpec{Field::ChanceE3, "chance_e3", FieldType::Integer, 0, 1000},
    FieldSpec{Field::BestMs, "best_ms", FieldType::Integer, 0, latestMs},
    FieldSpec{Field::CleanGlasses, "clean_glasses", FieldType::Integer, 0, 60},
    FieldSpec{Field::From, "from_subject", FieldType::Bytes, id, id, {}, fixed},
    FieldSpec{Field::Sources, "sources", FieldType::List, 1, sourcesMost, sourceItems, fixed},
    FieldSpec{Field::Method, "method", FieldType::Text, 1, wordChars},
    FieldSpec{Field::HeelMl, "heel_ml", FieldType::Integer, 0, volumeMostMl},
    FieldSpec{Field::Programme, "programme", FieldType::Text, 1, wordChars},
    FieldSpec{Field::DoseMg, "dose_mg", FieldType::Integer, 1, 1'000'000'000'000},
    FieldSpec{Field::Allergen, "allergen", FieldType::Text, 1, nameChars},
    FieldSpec{Field::LotCode, "lot_code", FieldType::Text, 1, wordChars},
    FieldSpec{Field::Packages, "packages", FieldType::List, 1, 40, packageItems},
    FieldSpec{Field::LostMl, "lost_ml", FieldType::Integer, 0, volumeMostMl},
    FieldSpec{Field::LabelAbvE2, "label_abv_e2", FieldType::Integer, 0, 8000},
    FieldSpec{Field::Law, "law", FieldType::Text, 1, wordChars},
    FieldSpec{Field::Co2E2, "co2_e2", FieldType::Integer, 0, 1000},
    FieldSpec{Field::PressurePa, "pressure_pa", FieldType::Integer, 0, 1'000'000},
    FieldSpec{Field::BestBeforeMs, "best_before_ms", FieldType::Integer, 0, latestMs},
    FieldSpec{Field::CostE2, "cost_e2", FieldType::Integer, 0, 1'000'000'000'000},
    FieldSpec{Field::FillsExpected, "fills_expected", FieldType::Integer, 1, 50},
    FieldSpec{Field::Portions, "portions", FieldType::List, 1, 400, portionItems},
    FieldSpec{Field::TastedCold, "tasted_cold", FieldType::Flag},
    FieldSpec{Field::TastedCarbonated, "tasted_carbonated", FieldType::Flag},
    FieldSpec{Field::ChainPoints, "chain_points", FieldType::List, 0, 64, pointItems, fixed},
    FieldSpec{Field::Before, "before", FieldType::Bytes, id, id, {}, fixed},
    FieldSpec{Field::Boot, "boot", FieldType::Bytes, bootId, bootId, {}, fixed},
    FieldSpec{Field::SinceBootMs, "since_boot_ms", FieldType::Integer, 0, bootMostMs, {}, fixed},
    FieldSpec{Field::ShownMs, "shown_ms", FieldType::Integer, -latestMs, latestMs, {}, fixed},
};

// Characters, not bytes: continuation bytes of UTF-8 are not counted.
std::int64_t characters(const std::string& text)
{
    return std::count_if(text.begin(), text.end(),
                         [](char c) { return (static_cast<unsigned char>(c) & 0xc0U) != 0x80U; });
}

std::string range(std::int64_t least, std::int64_t most)
{
    return least == most ? std::to_string(least)
                         : std::to_string(least) + " to " + std::to_string(most);
}

Result<void> checkText(std::string_view name, const std::string& text, std::int64_t least,
                       std::int64_t most)
{
    const std::int64_t length = characters(text);
    if (!isUtf8(text)) {
        return fail(ErrorCode::Malformed, std::string(name), toHex(asBytes(text)), "text in UTF-8");
    }
    if (length < least || length > most) {
        return fail(ErrorCode::OutOfRange, std::string(name), text,
                    range(least, most) + " characters");
    }
    return {};
}

Result<void> checkOne(std::string_view name, FieldType type, std::int64_t least, std::int64_t most,
                      const ledger::Value& value)
{
    const auto* integer = value.as<std::int64_t>();
    const auto* text = value.as<std::string>();
    const auto* bytes = value.as<Bytes>();
    if (type == FieldType::Integer && integer != nullptr) {
        if (*integer < least || *integer > most) {
            return fail(ErrorCode::OutOfRange, std::string(name), std::to_string(*integer),
                        range(least, most));
        }
        return {};
    }
    if (type == FieldType::Text && text != nullptr) {
        return checkText(name, *text, least, most);
    }
    if (type == FieldType::Bytes && bytes != nullptr &&
        static_cast<std::int64_t>(bytes->size()) == least) {
        return {};
    }
    if (type == FieldType::Flag && value.as<bool>() != nullptr) {
        return {};
    }
    return fail(ErrorCode::Malformed, std::string(name), "a value of another type");
}

Result<void> checkRow(const FieldSpec& spec, const ledger::Value& value)
{
    const auto* row = value.as<ledger::List>();
    if (row == nullptr || row->size() != spec.items.size()) {
        return fail(ErrorCode::Malformed, std::string(spec.name), "a row of another shape");
    }
    for (std::size_t i = 0; i < row->size(); ++i) {
        const ItemColumn& column = spec.items[i];
        if ((*row)[i].isNull() && column.mayBeNull) {
            continue;
        }
        SPILE_TRY(checkOne(column.name, column.type, column.least, column.most, (*row)[i]));
    }
    return {};
}

}  // namespace

const FieldSpec* findField(std::uint32_t number)
{
    return number >= 1 && number <= specs.size() ? &specs[number - 1] : nullptr;
}

const FieldSpec& specOf(Field field) { return *findField(static_cast<std::uint32_t>(field)); }

Result<void> checkValue(const FieldSpec& spec, const ledger::Value& value)
{
    if (spec.type != FieldType::List) {
        return checkOne(spec.name, spec.type, spec.least, spec.most, value);
    }
    const auto* rows = value.as<ledger::List>();
    if (rows == nullptr) {
        return fail(ErrorCode::Malformed, std::string(spec.name), "not a list");
    }
    const auto count = static_cast<std::int64_t>(rows->size());
    if (count < spec.least || count > spec.most) {
        return fail(ErrorCode::OutOfRange, std::string(spec.name), std::to_string(count),
                    range(spec.least, spec.most) + " rows");
    }
    for (const ledger::Value& row : *rows) {
        SPILE_TRY(checkRow(spec, row));
    }
    return {};
}

}  // namespace spile::cellar
