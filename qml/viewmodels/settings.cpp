#include "qml/viewmodels/settings.hpp"

#include <algorithm>

namespace spile::viewmodels {

namespace {

const QString paletteKey = QStringLiteral("palette");
const QString textKey = QStringLiteral("text_percent");
const QString leftKey = QStringLiteral("left_handed");
const QString usKey = QStringLiteral("us_units");
const QString languageKey = QStringLiteral("language");
const QString personKey = QStringLiteral("last_person");
const QString sheetsKey = QStringLiteral("sheets");
const QString drawKey = QStringLiteral("last_draw_ml");
const QString topUpsKey = QStringLiteral("topUps");
const QString answersKey = QStringLiteral("work/%1");

constexpr int paletteMost = 2;
constexpr int usualDrawMl = 100;

}  // namespace

Settings::Settings(const QString& file, Formats& formats, QObject* parent)
    : QObject(parent), file_(file, QSettings::IniFormat), formats_(formats)
{
    apply();
}

void Settings::keep(const QString& key, const QVariant& value)
{
    if (file_.value(key) == value) {
        return;
    }
    file_.setValue(key, value);
    file_.sync();
    apply();
    emit changed();
}

void Settings::apply()
{
    formats_.units = usesUsUnits() ? Formats::Units::Us : Formats::Units::Metric;
    formats_.locale = language().isEmpty() ? QLocale() : QLocale(language());
    // "1,028" for 1.028 would be read as another number, and digits of a thousand are rare here.
    formats_.locale.setNumberOptions(QLocale::OmitGroupSeparator);
}

int Settings::palette() const
{
    return std::clamp(file_.value(paletteKey, 0).toInt(), 0, paletteMost);
}
void Settings::setPalette(int palette) { keep(paletteKey, std::clamp(palette, 0, paletteMost)); }

int Settings::textPercent() const
{
    return std::clamp(file_.value(textKey, textLeast).toInt(), textLeast, textMost);
}
void Settings::stepText(int steps)
{
    keep(textKey, std::clamp(textPercent() + steps * textStep, textLeast, textMost));
}

bool Settings::isLeftHanded() const { return file_.value(leftKey, false).toBool(); }
void Settings::setLeftHanded(bool left) { keep(leftKey, left); }

bool Settings::usesUsUnits() const
{
    return file_.value(usKey, QLocale().measurementSystem() == QLocale::ImperialUSSystem).toBool();
}
void Settings::setUsUnits(bool us) { keep(usKey, us); }

bool Settings::allowsTopUps() const { return file_.value(topUpsKey, false).toBool(); }
void Settings::setTopUps(bool allowed) { keep(topUpsKey, allowed); }

QString Settings::language() const { return file_.value(languageKey).toString(); }
void Settings::setLanguage(const QString& language)
{
    if (language != this->language()) {
        keep(languageKey, language);
        emit languageChanged();
    }
}

QStringList Settings::languages() const
{
    // By their own names, so that they are found whatever is set.
    return {tr("As the phone"), QStringLiteral("English"), QStringLiteral("Deutsch")};
}

int Settings::languageIndex() const
{
    return static_cast<int>(languageCodes().indexOf(language())) + 1;
}

void Settings::setLanguageIndex(int index)
{
    setLanguage(index <= 0 ? QString() : languageCodes().value(index - 1));
}

QString Settings::lastPerson() const { return file_.value(personKey).toString(); }
void Settings::setLastPerson(const QString& id) { keep(personKey, id); }

int Settings::lastDrawMl() const { return file_.value(drawKey, usualDrawMl).toInt(); }
void Settings::setLastDrawMl(int millilitres) { keep(drawKey, millilitres); }

QVariant Settings::lastAnswer(const QString& name) const
{
    return file_.value(answersKey.arg(name));
}
void Settings::setLastAnswer(const QString& name, const QVariant& value)
{
    keep(answersKey.arg(name), value);
}

int Settings::countSheet()
{
    const int before = file_.value(sheetsKey, 0).toInt();
    keep(sheetsKey, before + 1);
    return before;
}

}  // namespace spile::viewmodels
