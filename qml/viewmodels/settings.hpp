#pragma once

#include "qml/viewmodels/formats.hpp"

#include <QObject>
#include <QSettings>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace spile::viewmodels {

/// How this device shows things; kept in a small file of its own, no part of the records.
class Settings : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")
    Q_PROPERTY(int palette READ palette WRITE setPalette NOTIFY changed FINAL)
    Q_PROPERTY(int textPercent READ textPercent NOTIFY changed FINAL)
    Q_PROPERTY(qreal textScale READ textScale NOTIFY changed FINAL)
    Q_PROPERTY(bool leftHanded READ isLeftHanded WRITE setLeftHanded NOTIFY changed FINAL)
    Q_PROPERTY(bool usUnits READ usesUsUnits WRITE setUsUnits NOTIFY changed FINAL)
    /// Whether this cellar tops up at all.
    Q_PROPERTY(bool topUps READ allowsTopUps WRITE setTopUps NOTIFY changed FINAL)
    Q_PROPERTY(QString language READ language WRITE setLanguage NOTIFY languageChanged FINAL)
    /// The languages by their own names, the system's first.
    Q_PROPERTY(QList<QString> languages READ languages NOTIFY languageChanged FINAL)
    Q_PROPERTY(
        int languageIndex READ languageIndex WRITE setLanguageIndex NOTIFY languageChanged FINAL)

public:
    static constexpr int textLeast = 100;
    static constexpr int textMost = 200;
    static constexpr int textStep = 10;
    /// The languages that the app speaks, as QLocale names them.
    [[nodiscard]] static QStringList languageCodes()
    {
        return {QStringLiteral("en"), QStringLiteral("de")};
    }

    /// `formats` follows what is set here.
    Settings(const QString& file, Formats& formats, QObject* parent = nullptr);

    [[nodiscard]] int palette() const;  // 0 dark, 1 light, 2 night
    void setPalette(int palette);
    [[nodiscard]] int textPercent() const;
    [[nodiscard]] qreal textScale() const { return textPercent() / 100.0; }
    Q_INVOKABLE void stepText(int steps);
    [[nodiscard]] bool isLeftHanded() const;
    void setLeftHanded(bool left);
    [[nodiscard]] bool usesUsUnits() const;
    void setUsUnits(bool us);
    [[nodiscard]] bool allowsTopUps() const;
    void setTopUps(bool allowed);
    /// "en", "de"; empty: the system's.
    [[nodiscard]] QString language() const;
    void setLanguage(const QString& language);
    [[nodiscard]] QStringList languages() const;
    [[nodiscard]] int languageIndex() const;
    void setLanguageIndex(int index);

    /// The person who last used this device, as an id in hexadecimal; empty: nobody yet.
    [[nodiscard]] QString lastPerson() const;
    void setLastPerson(const QString& id);
    /// What was last drawn, in millilitres.
    [[nodiscard]] int lastDrawMl() const;
    void setLastDrawMl(int millilitres);

    /// What was filled in last on a work sheet under that name; invalid if nothing was.
    [[nodiscard]] QVariant lastAnswer(const QString& name) const;
    void setLastAnswer(const QString& name, const QVariant& value);

    /// Count a tasting sheet that is opened; return how many there were before it.
    int countSheet();

signals:
    void changed();
    void languageChanged();

private:
    void keep(const QString& key, const QVariant& value);
    void apply();

    mutable QSettings file_;
    Formats& formats_;
};

}  // namespace spile::viewmodels
