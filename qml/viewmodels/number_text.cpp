#include "qml/viewmodels/number_text.hpp"

#include "qml/viewmodels/words.hpp"

#include <cmath>

namespace spile::viewmodels {

namespace {

class NumberText {
    Q_DECLARE_TR_FUNCTIONS(NumberText)

public:
    static QString one(plan::Form form, double value, const Formats& formats)
    {
        const bool us = formats.units == Formats::Units::Us;
        const auto said = [&](double number, int decimals) {
            return formats.locale.toString(number, 'f', decimals);
        };
        constexpr double wholeFrom = 500;  // kg
        switch (form) {
            case plan::Form::Volume:
                return formats.volume(cubicMetres(value));
            case plan::Form::Mass:
                return us ? tr("%1 lb").arg(said(inPounds(kilograms(value)), 1))
                          : tr("%1 kg").arg(said(value, value < wholeFrom ? 1 : 0));
            case plan::Form::Duration:
                return duration(value, formats);
            case plan::Form::Pressure:
                return us ? tr("%1 psi").arg(said(inPsi(pascals(value)), 1))
                          : tr("%1 bar").arg(said(inBars(pascals(value)), 2));
            case plan::Form::Length:
                return us ? tr("%1 in").arg(said(inInches(metres(value)), 1))
                          : tr("%1 cm").arg(said(value * 1e2, 1));
            case plan::Form::StrengthRise:
                return tr("%1 points of % vol").arg(said(value * 1e2, 2));
            case plan::Form::Gravity:
                return formats.locale.toString(value, 'f', 4);
            case plan::Form::Share:
                return tr("%1 %").arg(said(value * 1e2, value < 0.01 ? 3 : 1));
            case plan::Form::Parts:
                return tr("%1 ppm").arg(said(std::round(value * 1e6 / 100) * 100, 0));
            case plan::Form::Oxygen:
                return tr("%1 mg").arg(said(value * 1e6, 0));
            case plan::Form::Dose:
                return dose(value, formats);
            case plan::Form::Force:
                return us ? tr("%1 lbf").arg(said(std::round(value / newtonsPerPound / 10) * 10, 0))
                          : tr("%1 kN").arg(said(value / 1e3, 2));
            case plan::Form::Count:
                return said(value, 0);
            case plan::Form::Co2:
                return tr("%1 volumes").arg(said(value, 2));
            case plan::Form::Word:
            case plan::Form::Words:
            case plan::Form::None:
                return {};
        }
        return {};
    }

    static QString missing(const QString& name) { return tr("not known: %1").arg(name); }
    static QString range(const QString& value, const QString& low, const QString& high)
    {
        return tr("%1 (%2 to %3)", "a value with its range").arg(value, low, high);
    }

private:
    static constexpr double newtonsPerPound = factor::pound * factor::standardGravity;

    static QString dose(double kilograms, const Formats& formats)
    {
        constexpr double gramsPerOunce = factor::pound * 1e3 / 16;
        const double grams = kilograms * 1e3;
        const auto said = [&](double number, int decimals) {
            return formats.locale.toString(number, 'f', decimals);
        };
        if (formats.units == Formats::Units::Us && grams >= gramsPerOunce) {
            return tr("%1 oz").arg(said(grams / gramsPerOunce, 1));
        }
        return grams < 1e3 ? tr("%1 g").arg(said(grams, grams < 10 ? 1 : 0))
                           : tr("%1 kg").arg(said(kilograms, 2));
    }
    static QString duration(double seconds, const Formats& formats)
    {
        constexpr double minute = 60;
        constexpr double hour = 3600;
        constexpr double day = 86400;
        if (seconds < 90) {
            return tr("%n second(s)", "", static_cast<int>(std::lround(seconds)));
        }
        if (seconds < 2 * hour) {
            return tr("%1 min").arg(formats.locale.toString(seconds / minute, 'f', 1));
        }
        if (seconds < 2 * day) {
            return tr("%n hour(s)", "", static_cast<int>(std::lround(seconds / hour)));
        }
        return tr("%n day(s)", "", static_cast<int>(std::lround(seconds / day)));
    }
};

}  // namespace

QString textOf(const plan::SheetNumber& number, const Formats& formats,
               const std::function<QString(const std::string&)>& label)
{
    if (number.form == plan::Form::None) {
        return NumberText::missing(label(number.word));
    }
    if (number.form == plan::Form::Word) {
        return word(number.word);
    }
    if (number.form == plan::Form::Words) {
        QStringList all;
        for (const QString& one : QString::fromStdString(number.word).split(QLatin1Char('\n'))) {
            all << word(one.toStdString());
        }
        return all.join(QStringLiteral(", "));
    }
    const QString value = NumberText::one(number.form, number.value, formats);
    return number.low && number.high
               ? NumberText::range(value, NumberText::one(number.form, *number.low, formats),
                                   NumberText::one(number.form, *number.high, formats))
               : value;
}

}  // namespace spile::viewmodels
