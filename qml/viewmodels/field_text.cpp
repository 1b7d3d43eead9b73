#include "qml/viewmodels/field_text.hpp"

#include "core/units/scaled.hpp"
#include "qml/viewmodels/number_text.hpp"
#include "qml/viewmodels/words.hpp"

#include <algorithm>
#include <array>

namespace spile::viewmodels {

namespace {

using cellar::Field;
using cellar::FieldSpec;

// A quantity's unit is at the end of its field's name.
struct Unit {
    std::string_view end;
    plan::Form form;
    double scale;  // of the integer, to SI
};
constexpr std::array units = {
    Unit{"_ml", plan::Form::Volume, 1e-6}, Unit{"_mg", plan::Form::Dose, 1e-6},
    Unit{"_g", plan::Form::Mass, 1e-3},    Unit{"_mm", plan::Form::Length, 1e-3},
    Unit{"_pa", plan::Form::Pressure, 1},  Unit{"_s", plan::Form::Duration, 1},
    Unit{"co2_e2", plan::Form::Co2, 1e-2}, Unit{"humidity_e1", plan::Form::Share, 1e-3}};

constexpr std::int64_t wordChars = 32;  // what is longer is in somebody's own words

class FieldText {
    Q_DECLARE_TR_FUNCTIONS(FieldText)

public:
    FieldText(const FieldSpec& field, const Formats& formats,
              const std::function<QString(const SubjectId&)>& nameOf)
        : field_(field), formats_(formats), nameOf_(nameOf)
    {
    }

    [[nodiscard]] QString value(const ledger::Value& value) const
    {
        if (const auto* number = value.as<std::int64_t>()) {
            return quantity(*number);
        }
        if (const auto* rows = value.as<ledger::List>()) {
            return list(*rows);
        }
        return value.isNull() ? tr("left out", "the value of a field") : single(value);
    }

    [[nodiscard]] QString whole(const ledger::Value& value) const
    {
        return tr("%1: %2", "the volume: 70 mL")
            .arg(capitalised(word(field_.name)), this->value(value));
    }

private:
    [[nodiscard]] QString quantity(std::int64_t number) const
    {
        const auto scaled = static_cast<double>(number);
        switch (field_.field) {
            case Field::SgE4:
                return formats_.gravity(scaled * 1e-4);
            case Field::PhE2:
                return formats_.ph(scaled * 1e-2);
            case Field::AbvE2:
            case Field::LabelAbvE2:
                return formats_.strength(scaled * 1e-4);
            case Field::TempMc:
            case Field::SgRefMc:
            case Field::SgTempMc:
                return formats_.temperature(temperatureFromMilliCelsius(number));
            case Field::CostE2:
                return formats_.locale.toString(scaled * 1e-2, 'f', 2);
            case Field::ChanceE3:
                return formats_.chance(scaled * 1e-3);
            case Field::DatePrecision:
                return precision(number);
            case Field::Bound:
                return number < 0   ? tr("at most the volume")
                       : number > 0 ? tr("at least the volume")
                                    : tr("the volume itself");
            default:
                return withUnit(number);
        }
    }

    [[nodiscard]] QString withUnit(std::int64_t number) const
    {
        if (field_.name.ends_with("_ms")) {
            return formats_.date(instantFromMs(number));
        }
        const auto* const unit = std::find_if(units.begin(), units.end(), [&](const Unit& one) {
            return field_.name.ends_with(one.end);
        });
        return unit == units.end()
                   ? formats_.locale.toString(static_cast<qlonglong>(number))
                   : textOf(
                         plan::SheetNumber{unit->form, static_cast<double>(number) * unit->scale},
                         formats_, [](const std::string&) { return QString(); });
    }

    static QString precision(std::int64_t number)
    {
        switch (static_cast<cellar::DatePrecision>(number)) {
            case cellar::DatePrecision::Month:
                return tr("to the month");
            case cellar::DatePrecision::Year:
                return tr("to the year");
            case cellar::DatePrecision::Day:
                break;
        }
        return tr("to the day");
    }

    [[nodiscard]] QString single(const ledger::Value& value) const
    {
        if (const auto* flag = value.as<bool>()) {
            return word(*flag ? "yes" : "no");
        }
        if (const auto* text = value.as<std::string>()) {
            return field_.most > wordChars ? QString::fromStdString(*text) : word(*text);
        }
        const auto* bytes = value.as<Bytes>();
        const auto id = bytes != nullptr ? SubjectId::fromBytes(*bytes) : std::nullopt;
        const QString name = id ? nameOf_(*id) : QString();
        return name.isEmpty() ? tr("something that is not in the records of this device") : name;
    }

    // Rows of words and numbers: "vanilla 4, oak 5".
    [[nodiscard]] QString list(const ledger::List& rows) const
    {
        QStringList all;
        for (const ledger::Value& row : rows) {
            if (const auto* columns = row.as<ledger::List>()) {
                all << columnsOf(*columns);
            }
        }
        return all.isEmpty() ? word("none") : all.join(QStringLiteral(", "));
    }
    [[nodiscard]] QString columnsOf(const ledger::List& columns) const
    {
        QStringList all;
        for (const ledger::Value& column : columns) {
            if (const auto* number = column.as<std::int64_t>()) {
                all << formats_.locale.toString(static_cast<qlonglong>(*number));
            } else {
                all << (column.isNull() ? tr("not judged") : single(column));
            }
        }
        return all.join(QLatin1Char(' '));
    }

    const FieldSpec& field_;
    const Formats& formats_;
    const std::function<QString(const SubjectId&)>& nameOf_;
};

}  // namespace

QString textOf(const cellar::FieldSpec& field, const ledger::Value& value, const Formats& formats,
               const std::function<QString(const SubjectId&)>& nameOf)
{
    return FieldText(field, formats, nameOf).whole(value);
}

}  // namespace spile::viewmodels
