#include "qml/viewmodels/calculating_texts.hpp"

#include "core/units/units.hpp"
#include "qml/viewmodels/words.hpp"

#include <QCoreApplication>
#include <algorithm>
#include <array>
#include <cmath>

namespace spile::viewmodels {

namespace {

struct Calculating {
    Q_DECLARE_TR_FUNCTIONS(Calculating)
};

QString qString(std::string_view text)
{
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

// As it is typed at the desk, and as it is written.
QString unitText(std::string_view symbol)
{
    struct Written {
        std::string_view symbol;
        const char* text;
    };
    constexpr std::array written = {Written{"C", "°C"},        Written{"F", "°F"},
                                    Written{"P", "°P"},        Written{"m3", "m³"},
                                    Written{"m2", "m²"},       Written{"cm2", "cm²"},
                                    Written{"ft2", "ft²"},     Written{"in2", "in²"},
                                    Written{"kg/m3", "kg/m³"}, Written{"floz", "fl oz"}};
    for (const Written& one : written) {
        if (one.symbol == symbol) {
            return QString::fromUtf8(one.text);
        }
    }
    if (symbol == "d") {
        return Calculating::tr("days");
    }
    if (symbol == "/h") {
        return Calculating::tr("an hour");
    }
    if (symbol == "vol") {
        return Calculating::tr("vol", "volumes of carbon dioxide per volume of beer");
    }
    return qString(symbol);
}

UnitSpec specOf(Measurand measurand, std::string_view symbol)
{
    const auto units = unitsOf(measurand);
    const auto found = std::find_if(units.begin(), units.end(),
                                    [&](const UnitSpec& unit) { return unit.symbol == symbol; });
    return found == units.end() ? UnitSpec{symbol, measurand, 1, 0, true} : *found;
}

int decimalsOf(double step)
{
    int decimals = 0;
    for (double scaled = step; decimals < 6 && std::abs(scaled - std::round(scaled)) > 1e-9;
         scaled *= 10) {
        ++decimals;
    }
    return decimals;
}

}  // namespace

QString calculatorText(std::string_view text)
{
    return text.empty() ? QString()
                        : QCoreApplication::translate("Calculators", std::string(text).c_str());
}

InputScale scaleOf(const plan::CalculatorInput& input, Formats::Units units)
{
    const bool us = units == Formats::Units::Us;
    const UnitSpec spec = specOf(input.measurand, us ? input.usUnit : input.metricUnit);
    const double step = us ? input.usStep : input.metricStep;
    return {unitText(spec.symbol), spec.factor, spec.offset, step, decimalsOf(step)};
}

QString readoutOf(double si, const InputScale& scale, const QLocale& locale)
{
    const double number = (si - scale.offset) / scale.factor;
    const double steps = number / scale.step;
    const bool isBetween = std::abs(steps - std::round(steps)) > 0.05;
    return locale.toString(number, 'f', scale.decimals + (isBetween ? 1 : 0));
}

double stepped(double si, int count, const plan::CalculatorInput& input, const InputScale& scale)
{
    const double steps = std::round((si - scale.offset) / scale.factor / scale.step) + count;
    return std::clamp(steps * scale.step * scale.factor + scale.offset, input.least, input.most);
}

double beginningOf(const plan::CalculatorInput& input)
{
    if (input.usual) {
        return *input.usual;
    }
    // Of what a brewer measures: a spirit barrel's, a strong beer's. No source.
    double begin = input.least;
    switch (input.measurand) {
        case Measurand::Volume:
            begin = input.metricUnit == "m3" ? 100 : 0.2;
            break;
        case Measurand::Mass:
            begin = 50;
            break;
        case Measurand::Length:
            begin = 0.5;
            break;
        case Measurand::Pressure:
            begin = factor::bar;
            break;
        case Measurand::Temperature:
            begin = celsius(15).si();
            break;
        case Measurand::SpecificGravity:
            begin = 1.02;
            break;
        case Measurand::DegreesPlato:
            begin = 5;
            break;
        case Measurand::AlcoholByVolume:
            begin = input.most > 0.5 ? 0.45 : 0.1;
            break;
        case Measurand::AlcoholByMass:
            begin = 0.4;
            break;
        case Measurand::UsProof:
            begin = 100;
            break;
        case Measurand::Share:
            begin = 0.1;
            break;
        case Measurand::Duration:
            begin = input.metricUnit == "d" ? 30 * factor::day : 10 * factor::minute;
            break;
        case Measurand::Density:
            begin = 950;
            break;
        case Measurand::CarbonDioxideVolumes:
        case Measurand::Area:
            begin = 2;
            break;
        case Measurand::MassFlow:
            begin = 0.1 / factor::minute;
            break;
        case Measurand::Count:
            begin = 1;
            break;
        case Measurand::TemperatureDifference:
        case Measurand::Concentration:
        case Measurand::AirChanges:
        case Measurand::VolumeFlow:
        case Measurand::Force:
            break;
    }
    return std::clamp(begin, input.least, input.most);
}

namespace {

// How a number is written with its significant digits: what it is rounded to, and its decimals.
struct Precision {
    double roundTo = 0;  // 0: as its decimals say
    int decimals = 0;
};

Precision precisionOf(double largest, int digits)
{
    constexpr int decimalsMost = 9;
    if (largest == 0) {
        return {};
    }
    const int places = digits - 1 - static_cast<int>(std::floor(std::log10(largest)));
    return places < 0 ? Precision{std::pow(10.0, -places), 0}
                      : Precision{0, std::min(places, decimalsMost)};
}

QString written(double number, const Precision& precision, const QLocale& locale)
{
    const double rounded =
        precision.roundTo > 0 ? std::round(number / precision.roundTo) * precision.roundTo : number;
    return locale.toString(rounded, 'f', precision.decimals);
}

}  // namespace

QString answerText(const plan::Answer& answer, const Formats& formats)
{
    if (!answer.text.empty()) {
        return calculatorText(answer.text);
    }
    const bool us = formats.units == Formats::Units::Us;
    const UnitSpec spec = specOf(answer.measurand, us ? answer.usUnit : answer.metricUnit);
    const auto inUnit = [&](double si) { return (si - spec.offset) / spec.factor; };
    const double value = inUnit(answer.value);
    const double low = inUnit(answer.low.value_or(answer.value));
    const double high = inUnit(answer.high.value_or(answer.value));
    const bool isWhole = answer.measurand == Measurand::Count && value == std::round(value);
    const Precision precision =
        isWhole ? Precision{}
                : precisionOf(std::max({std::abs(value), std::abs(low), std::abs(high)}),
                              answer.digits);
    const auto said = [&](double number) { return written(number, precision, formats.locale); };
    const QString unit = unitText(spec.symbol);
    const QString number =
        unit.isEmpty() ? said(value)
                       : Calculating::tr("%1 %2", "a number and its unit").arg(said(value), unit);
    return answer.low && answer.high
               ? Calculating::tr("%1 (%2 to %3)", "a number with its unit, and its range")
                     .arg(number, said(low), said(high))
               : number;
}

namespace {

constexpr std::string_view oneOf = "exactly one of ";

QString labelOf(const plan::CalculatorInput& input) { return calculatorText(input.label); }

// needOneOf() names them: "exactly one of dip, gross".
QStringList labelsOf(const plan::Calculator& calculator, const std::string& limit)
{
    QStringList labels;
    for (const QString& name :
         qString(std::string_view(limit).substr(oneOf.size())).split(QStringLiteral(", "))) {
        if (const auto* input = plan::findInput(calculator, name.toStdString())) {
            labels << labelOf(*input);
        }
    }
    return labels;
}

// The formulas name a quantity with the unit of what they say of it: "dip_mm".
struct Suffix {
    std::string_view text;
    Measurand measurand;
    std::string_view unit;
};
constexpr std::array suffixes = {Suffix{"_mm", Measurand::Length, "mm"},
                                 Suffix{"_m3", Measurand::Volume, "m3"},
                                 Suffix{"_m2", Measurand::Area, "m2"},
                                 Suffix{"_bar", Measurand::Pressure, "bar"},
                                 Suffix{"_kg", Measurand::Mass, "kg"},
                                 Suffix{"_volumes", Measurand::CarbonDioxideVolumes, "vol"},
                                 Suffix{"_m", Measurand::Length, "m"},
                                 Suffix{"_l", Measurand::Volume, "L"},
                                 Suffix{"_c", Measurand::Temperature, "C"},
                                 Suffix{"_s", Measurand::Duration, "s"},
                                 Suffix{"_d", Measurand::Duration, "d"},
                                 Suffix{"_p", Measurand::DegreesPlato, "P"},
                                 Suffix{"_by_volume", Measurand::AlcoholByVolume, {}},
                                 Suffix{"_by_mass", Measurand::AlcoholByMass, {}},
                                 Suffix{"gravity", Measurand::SpecificGravity, {}},
                                 Suffix{"reading", Measurand::SpecificGravity, {}},
                                 Suffix{"_proof", Measurand::UsProof, {}},
                                 Suffix{"_oxygen", Measurand::Share, {}},
                                 Suffix{"humidity", Measurand::Share, {}}};

struct Culprit {
    const plan::CalculatorInput* input = nullptr;
    double factor = 1, offset = 0;  // SI = what the error says * factor + offset
};

// The input that a formula refused: the one of its measurand with that value, best by its name too.
Culprit culpritOf(const plan::Calculator& calculator, const plan::Given& given, const Error& error)
{
    const auto* const suffix =
        std::find_if(suffixes.begin(), suffixes.end(),
                     [&](const Suffix& one) { return error.subject.ends_with(one.text); });
    bool isNumber = false;
    const double said = qString(error.value).toDouble(&isNumber);
    if (suffix == suffixes.end() || !isNumber) {
        return {};
    }
    UnitSpec spec{"", suffix->measurand, 1, 0, true};  // fractions as they are
    if (!suffix->unit.empty()) {
        spec = specOf(suffix->measurand, suffix->unit);
    }
    const double si = said * spec.factor + spec.offset;
    Culprit culprit{nullptr, spec.factor, spec.offset};
    for (const plan::CalculatorInput& input : calculator.inputs) {
        const Result<plan::Given> filled = plan::filledIn(calculator, given);
        const auto value = filled ? filled->number(input.name) : std::nullopt;
        const bool isSame = value && input.measurand == suffix->measurand &&
                            std::abs(*value - si) <= 1e-6 + 1e-5 * std::abs(si);
        std::string name(input.name);
        std::replace(name.begin(), name.end(), '-', '_');
        if (isSame && (culprit.input == nullptr || error.subject.starts_with(name))) {
            culprit.input = &input;
        }
    }
    return culprit;
}

// "0 to 660.000000", "at least 3", "at most 5", in the unit of the page.
QString limitText(const std::string& limit, const Culprit& culprit, const InputScale& scale,
                  const QLocale& locale)
{
    const auto shown = [&](const QString& number) {
        bool isNumber = false;
        const double si = number.toDouble(&isNumber) * culprit.factor + culprit.offset;
        return isNumber ? readoutOf(si, scale, locale) : QString();
    };
    const QString text = qString(limit);
    const QStringList ends = text.split(QStringLiteral(" to "));
    QString said;
    if (ends.size() == 2 && !shown(ends[0]).isEmpty() && !shown(ends[1]).isEmpty()) {
        said = Calculating::tr("%1 to %2", "a range").arg(shown(ends[0]), shown(ends[1]));
    } else if (text.startsWith(QLatin1String("at least ")) && !shown(text.mid(9)).isEmpty()) {
        said = Calculating::tr("%1 or more").arg(shown(text.mid(9)));
    } else if (text.startsWith(QLatin1String("at most ")) && !shown(text.mid(8)).isEmpty()) {
        said = Calculating::tr("%1 or less").arg(shown(text.mid(8)));
    }
    return said.isEmpty() || scale.unit.isEmpty() ? said : said + QLatin1Char(' ') + scale.unit;
}

QString outOfRangeText(const plan::Calculator& calculator, const plan::Given& given,
                       const Error& error, const Formats& formats)
{
    const Culprit culprit = culpritOf(calculator, given, error);
    if (culprit.input == nullptr) {
        return Calculating::tr("It cannot be worked out with these numbers. Change one of them.");
    }
    const InputScale scale = scaleOf(*culprit.input, formats.units);
    const double si = qString(error.value).toDouble() * culprit.factor + culprit.offset;
    QString value = readoutOf(si, scale, formats.locale);
    if (!scale.unit.isEmpty()) {
        value += QLatin1Char(' ') + scale.unit;
    }
    const QString limit = limitText(error.limit, culprit, scale, formats.locale);
    return limit.isEmpty() ? Calculating::tr("%1: %2 does not go with the rest. Change it.")
                                 .arg(labelOf(*culprit.input), value)
                           : Calculating::tr("%1: %2 does not go with the rest. It can be %3.")
                                 .arg(labelOf(*culprit.input), value, limit);
}

}  // namespace

bool isMissing(const plan::Calculator& calculator, const plan::Given& given, const Error& error)
{
    return error.code == ErrorCode::Malformed && error.value.empty() &&
           plan::findInput(calculator, error.subject) != nullptr && !given.has(error.subject);
}

QString calculatorErrorText(const plan::Calculator& calculator, const plan::Given& given,
                            const Error& error, const Formats& formats)
{
    const plan::CalculatorInput* input = plan::findInput(calculator, error.subject);
    if (error.code == ErrorCode::Malformed && error.limit.starts_with(oneOf)) {
        const QString labels = labelsOf(calculator, error.limit).join(QStringLiteral("; "));
        return error.value.empty() ? Calculating::tr("Give one of these: %1.").arg(labels)
                                   : Calculating::tr("Give only one of these: %1.").arg(labels);
    }
    if (isMissing(calculator, given, error)) {
        return Calculating::tr("Still to be given: %1.").arg(labelOf(*input));
    }
    if (error.code == ErrorCode::Malformed && error.limit.ends_with("all three or none")) {
        return Calculating::tr("Length, bilge and heads: give all three or none of them.");
    }
    if (error.code == ErrorCode::OutOfRange && input == nullptr) {
        return outOfRangeText(calculator, given, error, formats);
    }
    return input == nullptr
               ? Calculating::tr("It cannot be worked out with these numbers. Change one of them.")
               : Calculating::tr("%1 does not go with the rest. Change it or leave it out.")
                     .arg(labelOf(*input));
}

}  // namespace spile::viewmodels
