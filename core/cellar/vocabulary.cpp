#include "core/cellar/vocabulary.hpp"

#include "core/cellar/query_text.hpp"

#include <algorithm>
#include <array>

namespace spile::cellar {

namespace {

using Word = std::string_view;

constexpr std::array<Word, 9> attributeWords = {"vanilla", "oak",         "spirit",
                                                "roast",   "dried fruit", "sweetness",
                                                "body",    "acidity",     "bitterness"};
constexpr std::array<Word, 8> faultWords = {"vinegar", "wet cardboard", "mould",        "sulphur",
                                            "butter",  "solvent",       "harsh tannin", "yeast"};
constexpr std::array<Word, 10> chipWords = {"clean",        "soft",      "hot",    "thin",
                                            "harsh",        "flat",      "lively", "long finish",
                                            "short finish", "needs time"};
constexpr std::array<Word, 3> drawWords = {"sample hole", "bunghole", "valve"};
constexpr std::array<Word, 4> gaugeWords = {"dip", "weight", "meter", "filled full"};
constexpr Word soundFinding = "dry";
constexpr std::array<Word, 7> findingWords = {soundFinding,   "weeping stave", "weeping head",
                                              "leaking bung", "loose hoop",    "mould outside",
                                              "off smell"};
constexpr std::array<Word, 6> repairWords = {"hoop driven",  "peg driven",        "waxed",
                                             "bung changed", "nail hole plugged", "nothing yet"};
constexpr std::array<Word, 3> bungWords = {"airlock", "one-way bung", "solid bung"};
constexpr std::array<Word, 6> verdictWords = {"hold", "ready", "top up",
                                              "move", "blend", "destroy"};
constexpr std::array<Word, 5> nextUseWords = {"refill at once", "re-wet and store", "sour beer",
                                              "sell or give away", "take apart"};
constexpr std::array<Word, 3> cutWords = {"lost", "stolen", "broken"};
constexpr std::array<Word, 8> spiritWords = {"bourbon", "rye",          "rum", "malt whisky",
                                             "brandy",  "apple brandy", "gin", "tequila"};
constexpr std::array<Word, 5> woodWords = {"American oak", "European oak", "French oak", "chestnut",
                                           "acacia"};

constexpr std::array<BarrelSize, 9> sizes = {
    BarrelSize{"five gallons", usGallons(5)}, BarrelSize{"ten gallons", usGallons(10)},
    BarrelSize{"small cask", litres(40)},     BarrelSize{"fifteen gallons", usGallons(15)},
    BarrelSize{"spirit barrel", litres(200)}, BarrelSize{"wine barrel", litres(225)},
    BarrelSize{"hogshead", litres(250)},      BarrelSize{"large wine barrel", litres(300)},
    BarrelSize{"puncheon", litres(500)}};

// Adds the attributes of a query's first column that are not there yet.
template <class... Values>
Result<void> addAttributes(ledger::Database& database, std::vector<std::string>& attributes,
                           std::string_view sql, const Values&... values)
{
    return database.each(
        [&](const ledger::Row& row) {
            if (std::find(attributes.begin(), attributes.end(), row.text(0)) == attributes.end()) {
                attributes.push_back(row.text(0));
            }
            return Result<void>();
        },
        sql, values...);
}

}  // namespace

WordList usualAttributes() { return attributeWords; }
WordList usualFaults() { return faultWords; }
WordList noteChips() { return chipWords; }
WordList drawMethods() { return drawWords; }
WordList gaugeMethods() { return gaugeWords; }
WordList checkFindings() { return findingWords; }
bool isSound(std::string_view finding) { return finding == soundFinding; }
WordList repairs() { return repairWords; }
WordList bungs() { return bungWords; }
WordList verdicts() { return verdictWords; }
WordList nextUses() { return nextUseWords; }
WordList cutReasons() { return cutWords; }
WordList usualSpirits() { return spiritWords; }
WordList usualWoods() { return woodWords; }
std::span<const BarrelSize> barrelSizes() { return sizes; }

Result<std::vector<std::string>> attributesOf(ledger::Database& database, const SubjectId& barrel)
{
    struct Held {
        std::optional<SubjectId> target;
        std::optional<EntryId> fill;
    };
    SPILE_ASSIGN(held, database.first(
                           [](const ledger::Row& row) {
                               return Held{row.idIfAny<SubjectId>(0), row.idIfAny<EntryId>(1)};
                           },
                           query_text::targetOfBarrel, barrel));
    const Held now = held.value_or(Held{});
    std::vector<std::string> attributes;
    SPILE_TRY(addAttributes(database, attributes, query_text::windowsOfTarget, now.target));
    SPILE_TRY(addAttributes(database, attributes, query_text::scoredSinceFill, barrel, now.fill));
    for (const Word usual : attributeWords) {
        if (std::find(attributes.begin(), attributes.end(), usual) == attributes.end()) {
            attributes.emplace_back(usual);
        }
    }
    attributes.resize(std::min(attributes.size(), sheetAttributesMost));
    return attributes;
}

}  // namespace spile::cellar
