#include "core/outlook/usual_priors.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace spile::outlook {

namespace {

struct Usual {
    std::string_view attribute;
    bool fromWood;
    Belief start, end;
    double rate;  // 1/month
    std::array<double, families> weight;
};

constexpr std::array<double, families> usualWeight = CoursePrior().weight;
constexpr std::array<double, families> peakedWeight = {0.3, 0.1, 0.45, 0.15};
constexpr std::array<double, families> driftingWeight = {0.2, 0.35, 0.05, 0.4};

// What the beer itself brings differs widely, so that its start does too.
constexpr std::array usuals = {Usual{"oak", true, {1, 0.8}, {6.5, 1.7}, 0.12, usualWeight},
                               Usual{"vanilla", true, {1, 0.8}, {5.5, 1.7}, 0.12, usualWeight},
                               Usual{"coconut", true, {0.5, 0.8}, {4, 1.7}, 0.15, usualWeight},
                               Usual{"char", true, {0.5, 0.8}, {3.5, 1.7}, 0.2, usualWeight},
                               Usual{"spirit", true, {3, 2}, {3, 1.7}, 0.1, peakedWeight},
                               Usual{"dried fruit", false, {2, 1.5}, {4.5, 1.7}, 0.1, peakedWeight},
                               Usual{"roast", false, {5, 2}, {5, 2}, 0.08, usualWeight},
                               Usual{"sweetness", false, {5, 2}, {4, 1.7}, 0.08, usualWeight},
                               Usual{"body", false, {6, 2}, {5.5, 1.7}, 0.08, usualWeight},
                               Usual{"bitterness", false, {5, 2}, {3.5, 1.7}, 0.06, usualWeight},
                               Usual{"acidity", false, {1.5, 1}, {2.5, 1.7}, 0.08, driftingWeight}};
constexpr Usual unknown = {"", false, {3, 2.5}, {4.5, 2.5}, 0.1, usualWeight};

const Usual& usualOf(std::string_view attribute)
{
    const auto* const found = std::find_if(usuals.begin(), usuals.end(), [&](const Usual& usual) {
        return usual.attribute == attribute;
    });
    return found == usuals.end() ? unknown : *found;
}

// How fast it gives on a later fill.
double pace(int fillNumber) { return fillNumber <= 1 ? 1 : 0.8; }

// A small barrel has more wood to each litre: as the cube root of its volume.
double woodShare(const std::optional<Volume>& size)
{
    constexpr double spiritBarrel = 0.2;  // m3
    constexpr double most = 3;
    return size ? std::clamp(std::cbrt(spiritBarrel / size->si()), 1 / most, most) : 1;
}

// What the char and the spirit add to the end of an attribute.
struct Shift {
    std::string_view attribute;
    int charFrom, charTo;
    std::string_view spirit;  // empty: any
    double by;
};
constexpr int anyChar = 9;
constexpr std::array shifts = {Shift{"vanilla", 4, anyChar, "", 0.3},
                               Shift{"oak", 4, anyChar, "", -0.3},
                               Shift{"vanilla", 0, 1, "", -0.5},
                               Shift{"oak", 0, 1, "", 0.5},
                               Shift{"dried fruit", -1, anyChar, "rum", 1},
                               Shift{"dried fruit", -1, anyChar, "brandy", 1},
                               Shift{"coconut", -1, anyChar, "bourbon", 0.5}};

double shiftFor(std::string_view attribute, const BarrelKind& kind)
{
    const int charLevel = kind.charLevel.value_or(-1);
    double sum = 0;
    for (const Shift& shift : shifts) {
        const bool ofSpirit = shift.spirit.empty() || shift.spirit == kind.spirit;
        if (shift.attribute == attribute && ofSpirit && charLevel >= shift.charFrom &&
            charLevel <= shift.charTo) {
            sum += shift.by;
        }
    }
    return sum;
}

}  // namespace

double leftToGive(int fillNumber) { return fillNumber <= 1 ? 1 : fillNumber == 2 ? 0.6 : 0.35; }

bool comesFromWood(std::string_view attribute) { return usualOf(attribute).fromWood; }

CoursePrior usualPrior(std::string_view attribute, const BarrelKind& kind)
{
    const Usual& usual = usualOf(attribute);
    double end = usual.end.mean + shiftFor(attribute, kind);
    double rate = usual.rate;
    double start = usual.start.mean;
    if (usual.fromWood) {
        end = start + leftToGive(kind.fillNumber) * (end - start);
        rate *= pace(kind.fillNumber) * woodShare(kind.size);
        if (attribute == "spirit") {  // what the wood held is there soon, and less each time
            start = 1 + leftToGive(kind.fillNumber) * (start - 1);
        }
    }
    CoursePrior prior = priorBetween(start, end, rate);
    prior.start.deviation = usual.start.deviation;
    prior.linearStart.deviation = usual.start.deviation;
    prior.end.deviation = usual.end.deviation;
    prior.height.deviation = usual.end.deviation;
    prior.weight = usual.weight;
    return prior;
}

}  // namespace spile::outlook
