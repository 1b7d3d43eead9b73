#include "qml/viewmodels/words.hpp"

#include <QCoreApplication>
#include <algorithm>
#include <array>

namespace spile::viewmodels {

namespace {

// Words that the records hold and that read well as they are: here for the translators.
[[maybe_unused]] constexpr std::array asStored = {
    // attributes
    QT_TRANSLATE_NOOP("Words", "vanilla"),
    QT_TRANSLATE_NOOP("Words", "oak"),
    QT_TRANSLATE_NOOP("Words", "spirit"),
    QT_TRANSLATE_NOOP("Words", "roast"),
    QT_TRANSLATE_NOOP("Words", "dried fruit"),
    QT_TRANSLATE_NOOP("Words", "sweetness"),
    QT_TRANSLATE_NOOP("Words", "body"),
    QT_TRANSLATE_NOOP("Words", "acidity"),
    QT_TRANSLATE_NOOP("Words", "bitterness"),
    // faults
    QT_TRANSLATE_NOOP("Words", "vinegar"),
    QT_TRANSLATE_NOOP("Words", "wet cardboard"),
    QT_TRANSLATE_NOOP("Words", "mould"),
    QT_TRANSLATE_NOOP("Words", "sulphur"),
    QT_TRANSLATE_NOOP("Words", "butter"),
    QT_TRANSLATE_NOOP("Words", "solvent"),
    QT_TRANSLATE_NOOP("Words", "harsh tannin"),
    QT_TRANSLATE_NOOP("Words", "yeast"),
    // chips of a note
    QT_TRANSLATE_NOOP("Words", "clean"),
    QT_TRANSLATE_NOOP("Words", "soft"),
    QT_TRANSLATE_NOOP("Words", "hot"),
    QT_TRANSLATE_NOOP("Words", "thin"),
    QT_TRANSLATE_NOOP("Words", "harsh"),
    QT_TRANSLATE_NOOP("Words", "flat"),
    QT_TRANSLATE_NOOP("Words", "lively"),
    QT_TRANSLATE_NOOP("Words", "long finish"),
    QT_TRANSLATE_NOOP("Words", "short finish"),
    QT_TRANSLATE_NOOP("Words", "needs time"),
    // where a sample is drawn
    QT_TRANSLATE_NOOP("Words", "sample hole"),
    QT_TRANSLATE_NOOP("Words", "bunghole"),
    QT_TRANSLATE_NOOP("Words", "valve"),
    // how a level is gauged
    QT_TRANSLATE_NOOP("Words", "dip"),
    QT_TRANSLATE_NOOP("Words", "weight"),
    QT_TRANSLATE_NOOP("Words", "meter"),
    QT_TRANSLATE_NOOP("Words", "filled full"),
    // what is found when a barrel is looked over
    QT_TRANSLATE_NOOP("Words", "dry"),
    QT_TRANSLATE_NOOP("Words", "weeping stave"),
    QT_TRANSLATE_NOOP("Words", "weeping head"),
    QT_TRANSLATE_NOOP("Words", "leaking bung"),
    QT_TRANSLATE_NOOP("Words", "loose hoop"),
    QT_TRANSLATE_NOOP("Words", "mould outside"),
    QT_TRANSLATE_NOOP("Words", "off smell"),
    // verdicts
    QT_TRANSLATE_NOOP("Words", "hold"),
    QT_TRANSLATE_NOOP("Words", "ready"),
    QT_TRANSLATE_NOOP("Words", "top up"),
    QT_TRANSLATE_NOOP("Words", "move"),
    QT_TRANSLATE_NOOP("Words", "blend"),
    QT_TRANSLATE_NOOP("Words", "destroy"),
    // next uses of a barrel
    QT_TRANSLATE_NOOP("Words", "refill at once"),
    QT_TRANSLATE_NOOP("Words", "re-wet and store"),
    QT_TRANSLATE_NOOP("Words", "sour beer"),
    QT_TRANSLATE_NOOP("Words", "sell or give away"),
    QT_TRANSLATE_NOOP("Words", "take apart"),
    // spirits
    QT_TRANSLATE_NOOP("Words", "bourbon"),
    QT_TRANSLATE_NOOP("Words", "rye"),
    QT_TRANSLATE_NOOP("Words", "rum"),
    QT_TRANSLATE_NOOP("Words", "malt whisky"),
    QT_TRANSLATE_NOOP("Words", "brandy"),
    QT_TRANSLATE_NOOP("Words", "apple brandy"),
    QT_TRANSLATE_NOOP("Words", "gin"),
    QT_TRANSLATE_NOOP("Words", "tequila"),
    // woods
    QT_TRANSLATE_NOOP("Words", "American oak"),
    QT_TRANSLATE_NOOP("Words", "European oak"),
    QT_TRANSLATE_NOOP("Words", "French oak"),
    QT_TRANSLATE_NOOP("Words", "chestnut"),
    QT_TRANSLATE_NOOP("Words", "acacia"),
    // sizes of barrels
    QT_TRANSLATE_NOOP("Words", "five gallons"),
    QT_TRANSLATE_NOOP("Words", "ten gallons"),
    QT_TRANSLATE_NOOP("Words", "small cask"),
    QT_TRANSLATE_NOOP("Words", "fifteen gallons"),
    QT_TRANSLATE_NOOP("Words", "spirit barrel"),
    QT_TRANSLATE_NOOP("Words", "wine barrel"),
    QT_TRANSLATE_NOOP("Words", "hogshead"),
    QT_TRANSLATE_NOOP("Words", "large wine barrel"),
    QT_TRANSLATE_NOOP("Words", "puncheon"),
    // next steps
    QT_TRANSLATE_NOOP("Words", "fill"),
    QT_TRANSLATE_NOOP("Words", "check for leaks"),
    QT_TRANSLATE_NOOP("Words", "taste"),
    QT_TRANSLATE_NOOP("Words", "empty"),
    // what work sheets offer
    QT_TRANSLATE_NOOP("Words", "hoop driven"),
    QT_TRANSLATE_NOOP("Words", "peg driven"),
    QT_TRANSLATE_NOOP("Words", "waxed"),
    QT_TRANSLATE_NOOP("Words", "bung changed"),
    QT_TRANSLATE_NOOP("Words", "nail hole plugged"),
    QT_TRANSLATE_NOOP("Words", "nothing yet"),
    QT_TRANSLATE_NOOP("Words", "airlock"),
    QT_TRANSLATE_NOOP("Words", "one-way bung"),
    QT_TRANSLATE_NOOP("Words", "solid bung"),
    QT_TRANSLATE_NOOP("Words", "yes"),
    QT_TRANSLATE_NOOP("Words", "no"),
    QT_TRANSLATE_NOOP("Words", "there"),
    QT_TRANSLATE_NOOP("Words", "new"),
    QT_TRANSLATE_NOOP("Words", "nail"),
    QT_TRANSLATE_NOOP("Words", "made for 20 °C"),
    QT_TRANSLATE_NOOP("Words", "made for 60 °F"),
    QT_TRANSLATE_NOOP("Words", "made for 15 °C"),
    QT_TRANSLATE_NOOP("Words", "spirit of the same kind"),
    QT_TRANSLATE_NOOP("Words", "another spirit"),
    QT_TRANSLATE_NOOP("Words", "water"),
    // how a step ended, and why it was skipped
    QT_TRANSLATE_NOOP("Words", "done early"),
    QT_TRANSLATE_NOOP("Words", "skipped"),
    QT_TRANSLATE_NOOP("Words", "not needed today"),
    QT_TRANSLATE_NOOP("Words", "done before"),
    QT_TRANSLATE_NOOP("Words", "no tool at hand"),
    QT_TRANSLATE_NOOP("Words", "not safe here"),
    QT_TRANSLATE_NOOP("Words", "not as it should be"),
    // what a work sheet says of this barrel
    QT_TRANSLATE_NOOP("Words", "Fill it as it is."),
    QT_TRANSLATE_NOOP("Words", "Re-wet it with spirit before it is filled."),
    QT_TRANSLATE_NOOP("Words", "Swell it first, then re-wet it."),
    QT_TRANSLATE_NOOP("Words", "Prove first that it still holds water."),
    QT_TRANSLATE_NOOP("Words", "Too early to tell."),
    QT_TRANSLATE_NOOP("Words", "What it loses is usual for it."),
    QT_TRANSLATE_NOOP("Words", "It loses more than foreseen: gauge again in two weeks."),
    QT_TRANSLATE_NOOP("Words",
                      "It may leak. Measured again? Was it filled full? Drips on the floor?"),
    QT_TRANSLATE_NOOP("Words", "again tomorrow"),
    QT_TRANSLATE_NOOP("Words", "again on the third day"),
    QT_TRANSLATE_NOOP("Words", "again a week after filling"),
    QT_TRANSLATE_NOOP("Words", "whenever you pass by"),
    QT_TRANSLATE_NOOP("Words", "stays below the 8-hour limit, by the model; a monitor decides"),
    QT_TRANSLATE_NOOP("Words", "above the 8-hour limit of 5,000 ppm: air the room"),
    QT_TRANSLATE_NOOP("Words", "would pass 30,000 ppm: do not begin; lead the gas outside"),
    QT_TRANSLATE_NOOP("Words",
                      "would pass 40,000 ppm, danger to life: do not begin; lead the gas outside"),
    // units
    QT_TRANSLATE_NOOP("Words", "L"),
    QT_TRANSLATE_NOOP("Words", "gal"),
    QT_TRANSLATE_NOOP("Words", "mL"),
    QT_TRANSLATE_NOOP("Words", "fl oz"),
    QT_TRANSLATE_NOOP("Words", "kg"),
    QT_TRANSLATE_NOOP("Words", "lb"),
    QT_TRANSLATE_NOOP("Words", "cm"),
    QT_TRANSLATE_NOOP("Words", "in"),
    QT_TRANSLATE_NOOP("Words", "mm"),
    QT_TRANSLATE_NOOP("Words", "°C"),
    QT_TRANSLATE_NOOP("Words", "°F"),
    QT_TRANSLATE_NOOP("Words", "%"),
    QT_TRANSLATE_NOOP("Words", "bar"),
    QT_TRANSLATE_NOOP("Words", "psi"),
    QT_TRANSLATE_NOOP("Words", "m"),
    QT_TRANSLATE_NOOP("Words", "ft"),
    QT_TRANSLATE_NOOP("Words", "m³"),
    QT_TRANSLATE_NOOP("Words", "ft³"),
    QT_TRANSLATE_NOOP("Words", "1/h"),
    QT_TRANSLATE_NOOP("Words", "days"),
    // what a photo is of
    QT_TRANSLATE_NOOP("Words", "colour"),
    QT_TRANSLATE_NOOP("Words", "head"),
    QT_TRANSLATE_NOOP("Words", "place"),
};

struct Said {
    std::string_view stored;
    const char* said;
};
// Names of fields and kinds, which are not for people.
constexpr std::array saidOtherwise = {
    Said{"step liking", QT_TRANSLATE_NOOP("Words", "liking")},
    Said{"step faults", QT_TRANSLATE_NOOP("Words", "faults")},
    Said{"step readings", QT_TRANSLATE_NOOP("Words", "readings")},
    Said{"step note", QT_TRANSLATE_NOOP("Words", "the note to it")},
    Said{"step close", QT_TRANSLATE_NOOP("Words", "closing")},
    Said{"done genesis", QT_TRANSLATE_NOOP("Words", "cellar begun")},
    Said{"done device", QT_TRANSLATE_NOOP("Words", "device let in")},
    Said{"done amend", QT_TRANSLATE_NOOP("Words", "corrected")},
    Said{"done void", QT_TRANSLATE_NOOP("Words", "taken back")},
    Said{"done fill", QT_TRANSLATE_NOOP("Words", "filled")},
    Said{"done check", QT_TRANSLATE_NOOP("Words", "looked over")},
    Said{"done gauge", QT_TRANSLATE_NOOP("Words", "gauged")},
    Said{"done draw", QT_TRANSLATE_NOOP("Words", "drawn")},
    Said{"done taste", QT_TRANSLATE_NOOP("Words", "tasted")},
    Said{"done reading", QT_TRANSLATE_NOOP("Words", "measured")},
    Said{"done direction", QT_TRANSLATE_NOOP("Words", "directions given")},
    Said{"done photo", QT_TRANSLATE_NOOP("Words", "photographed")},
    Said{"done move", QT_TRANSLATE_NOOP("Words", "moved")},
    Said{"done verdict", QT_TRANSLATE_NOOP("Words", "decided")},
    Said{"done empty", QT_TRANSLATE_NOOP("Words", "emptied")},
    Said{"done barrel", QT_TRANSLATE_NOOP("Words", "registered")},
    Said{"done batch", QT_TRANSLATE_NOOP("Words", "beer made known")},
    Said{"done person", QT_TRANSLATE_NOOP("Words", "person made known")},
    Said{"done place", QT_TRANSLATE_NOOP("Words", "place made known")},
    Said{"done target", QT_TRANSLATE_NOOP("Words", "target made known")},
    Said{"done flight", QT_TRANSLATE_NOOP("Words", "flight begun")},
    Said{"done repair", QT_TRANSLATE_NOOP("Words", "mended")},
    Said{"done top_up", QT_TRANSLATE_NOOP("Words", "topped up")},
    Said{"done dose", QT_TRANSLATE_NOOP("Words", "put in")},
    Said{"done climate", QT_TRANSLATE_NOOP("Words", "air measured")},
    Said{"done sheet_step", QT_TRANSLATE_NOOP("Words", "step of a work sheet")},
    Said{"sheet receive", QT_TRANSLATE_NOOP("Words", "receiving")},
    Said{"sheet swell", QT_TRANSLATE_NOOP("Words", "swelling")},
    Said{"sheet purge", QT_TRANSLATE_NOOP("Words", "purging")},
    Said{"sheet fill", QT_TRANSLATE_NOOP("Words", "filling")},
    Said{"sheet leaks", QT_TRANSLATE_NOOP("Words", "leak watch")},
    Said{"sheet gauge", QT_TRANSLATE_NOOP("Words", "gauging")},
    Said{"sheet sample_hole", QT_TRANSLATE_NOOP("Words", "drawing at the sample hole")},
    Said{"sheet syringe", QT_TRANSLATE_NOOP("Words", "drawing at the bunghole")},
    Said{"sheet top_up", QT_TRANSLATE_NOOP("Words", "topping up")},
    Said{"sheet between", QT_TRANSLATE_NOOP("Words", "between fills")},
    Said{"volume_ml", QT_TRANSLATE_NOOP("Words", "the volume")},
    Said{"name", QT_TRANSLATE_NOOP("Words", "the name")},
    Said{"mark", QT_TRANSLATE_NOOP("Words", "the mark")},
    Said{"note", QT_TRANSLATE_NOOP("Words", "the note")},
    Said{"code", QT_TRANSLATE_NOOP("Words", "the code")},
    Said{"barrel", QT_TRANSLATE_NOOP("Words", "the barrel")},
    Said{"person", QT_TRANSLATE_NOOP("Words", "the person")},
    Said{"sheet", QT_TRANSLATE_NOOP("Words", "the sheet")},
    Said{"size_ml", QT_TRANSLATE_NOOP("Words", "the size")},
    Said{"sg_e4", QT_TRANSLATE_NOOP("Words", "the gravity")},
    Said{"ph_e2", QT_TRANSLATE_NOOP("Words", "the pH")},
    Said{"temp_mc", QT_TRANSLATE_NOOP("Words", "the temperature")},
    Said{"day file", QT_TRANSLATE_NOOP("Words", "the day file")},
    Said{"cellar", QT_TRANSLATE_NOOP("Words", "the cellar")},
    Said{"picture", QT_TRANSLATE_NOOP("Words", "the picture")},
    Said{"device", QT_TRANSLATE_NOOP("Words", "the device")},
    Said{"join code", QT_TRANSLATE_NOOP("Words", "the code")},
    Said{"scores", QT_TRANSLATE_NOOP("Words", "the scores")},
    Said{"batch", QT_TRANSLATE_NOOP("Words", "the beer")},
    Said{"flight", QT_TRANSLATE_NOOP("Words", "the flight")},
    Said{"glass", QT_TRANSLATE_NOOP("Words", "the glass")},
    Said{"barrels", QT_TRANSLATE_NOOP("Words", "the barrels")},
};

}  // namespace

QString word(std::string_view stored)
{
    const auto* const other = std::find_if(saidOtherwise.begin(), saidOtherwise.end(),
                                           [&](const Said& one) { return one.stored == stored; });
    const std::string key(other == saidOtherwise.end() ? stored : std::string_view(other->said));
    return QCoreApplication::translate("Words", key.c_str());
}

QString capitalised(const QString& text)
{
    return text.isEmpty() ? text : text.at(0).toUpper() + text.mid(1);
}

}  // namespace spile::viewmodels
