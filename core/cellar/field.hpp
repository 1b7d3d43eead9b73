#pragma once

#include "core/ledger/fields.hpp"

#include <cstdint>
#include <string_view>

/// The fields that the bodies of entries are made of. A field has one number, one name, one type
/// and one range for ever, whichever kind uses it; a quantity's unit is in its name.
namespace spile::cellar {

enum class Field : std::uint32_t {
    Name = 1,
    Mark = 2,
    PublicKey = 3,
    Role = 4,
    Note = 5,
    Code = 6,
    Spirit = 7,
    Wood = 8,
    CharLevel = 9,
    SizeMl = 10,
    FillsBefore = 11,
    EmptiedMs = 12,
    TareG = 13,
    Place = 14,
    Parent = 15,
    Windows = 16,
    BrewedMs = 17,
    Target = 18,
    Batch = 19,
    VolumeMl = 20,
    DatePrecision = 21,
    SgE4 = 22,
    PhE2 = 23,
    TempMc = 24,
    AbvE2 = 25,
    Sound = 26,
    Finding = 27,
    GaugeMethod = 28,
    DipMm = 29,
    MassG = 30,
    DrawMethod = 31,
    Person = 32,
    Flight = 33,
    Glass = 34,
    Glasses = 35,
    Scores = 36,
    Faults = 37,
    Liking = 38,
    AttributeOrder = 39,
    PalateTired = 40,
    Directions = 41,
    Purpose = 42,
    Verdict = 43,
    UntilMs = 44,
    NextUse = 45,
    SgRefMc = 46,   // what temperature the hydrometer is made for
    SgTempMc = 47,  // how warm the sample was in it
    HumidityE1 = 48,
    Substance = 49,
    DrainedMl = 50,
    Repair = 51,
    Sheet = 52,
    Step = 53,
    Run = 54,
    Outcome = 55,
    Reason = 56,
    Values = 57,
    PlannedS = 58,
    ElapsedS = 59,
    FullMl = 60,  // what was measured to go in
    LengthMm = 61,
    BilgeMm = 62,
    HeadMm = 63,
    StaveMm = 64,
    Bound = 65,
    Words = 66,
    ChanceE3 = 67,      // that all of the outlook was inside, as it stood when the record was made
    BestMs = 68,        // and when it stood best
    CleanGlasses = 69,  // of a flight: how many of its glasses, from the first, are clean
    From = 70,          // the barrel or lot that beer was taken from
    Sources = 71,       // what a lot was made of when something was taken from it
    Method = 72,
    HeelMl = 73,     // left behind in a barrel
    Programme = 74,  // "clean" or "sour"
    DoseMg = 75,
    Allergen = 76,
    LotCode = 77,
    Packages = 78,
    LostMl = 79,
    LabelAbvE2 = 80,
    Law = 81,
    Co2E2 = 82,  // volumes of carbon dioxide
    PressurePa = 83,
    BestBeforeMs = 84,
    CostE2 = 85,         // in the house's own money
    FillsExpected = 86,  // that a barrel's price is spread over
    Portions = 87,       // what a glass on the bench is mixed of
    TastedCold = 88,
    TastedCarbonated = 89,
    ChainPoints = 90,  // the records up to which a chain is left, one for each branch
    Before = 91,       // the id of a device before it had a new key
    Boot = 92,         // a start of a device, by its id
    SinceBootMs = 93,
    ShownMs = 94,  // what a device's clock showed
};

enum class FieldType : std::uint8_t { Integer, Text, Bytes, Flag, List };

/// One column of a list field's rows.
struct ItemColumn {
    std::string_view name;
    FieldType type;
    std::int64_t least = 0;  // integers: the range; text: the number of characters
    std::int64_t most = 0;
    bool mayBeNull = false;
};

struct FieldSpec {
    Field field;
    std::string_view name;
    FieldType type;
    std::int64_t least = 0;  // integers: the range; text: characters; bytes: length; list: rows
    std::int64_t most = 0;
    std::span<const ItemColumn> items = {};  // list fields: the columns of a row
    bool fixed = false;  // a correction leaves it as it was: what beer came from is void or true
};

/// Return what is fixed about `field`.
[[nodiscard]] const FieldSpec& specOf(Field field);
/// Return the field with that number; none if this version does not know it.
[[nodiscard]] const FieldSpec* findField(std::uint32_t number);

/// Check a value against its field: type and range.
///
/// Errors    OutOfRange or Malformed, naming field, value and range.
[[nodiscard]] Result<void> checkValue(const FieldSpec& spec, const ledger::Value& value);

}  // namespace spile::cellar
