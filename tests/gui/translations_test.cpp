// The app's words follow the language that is set.
#include "platform/app/translations.hpp"

#include "qml/viewmodels/barrel_rows.hpp"
#include "qml/viewmodels/words.hpp"
#include "tests/support/test_device.hpp"

#include <QGuiApplication>
#include <QQmlComponent>
#include <QQmlEngine>
#include <QTest>
#include <QtQml/qqmlextensionplugin.h>

Q_IMPORT_QML_PLUGIN(Spile_ThemePlugin)
Q_IMPORT_QML_PLUGIN(Spile_ComponentsPlugin)

namespace spile {

using std::chrono::hours;

class TranslationsTest : public QObject {
    Q_OBJECT

private slots:
    void init()
    {
        device_ = std::make_unique<support::TestDevice>(91);
        formats_ = std::make_unique<viewmodels::Formats>(device_->clock);
        settings_ = std::make_unique<viewmodels::Settings>(
            QString::fromStdString((device_->folder.path() / "settings.ini").string()), *formats_);
        settings_->setLanguage(QStringLiteral("en"));
        translations_ = std::make_unique<app::Translations>(*settings_);
    }
    void cleanup()
    {
        translations_.reset();
        settings_.reset();
    }

    void followTheSettings()
    {
        QCOMPARE(settings_->languages().first(), QStringLiteral("As the phone"));
        QCOMPARE(viewmodels::BarrelRows::tr("Resting"), QStringLiteral("Resting"));
        QCOMPARE(viewmodels::word("sample hole"), QStringLiteral("sample hole"));
        settings_->setLanguage(QStringLiteral("de"));
        QCOMPARE(settings_->languages().first(), QStringLiteral("Wie das Telefon"));
        QCOMPARE(viewmodels::BarrelRows::tr("Resting"), QStringLiteral("Ruht"));
        QCOMPARE(viewmodels::word("sample hole"), QStringLiteral("Probeloch"));
        settings_->setLanguage(QStringLiteral("en"));
        QCOMPARE(viewmodels::BarrelRows::tr("Resting"), QStringLiteral("Resting"));
    }

    void countInBothLanguages()
    {
        QCOMPARE(daysAgo(0), QStringLiteral("today"));
        QCOMPARE(daysAgo(1), QStringLiteral("1 day ago"));
        QCOMPARE(daysAgo(5), QStringLiteral("5 days ago"));
        settings_->setLanguage(QStringLiteral("de"));
        QCOMPARE(daysAgo(0), QStringLiteral("heute"));
        QCOMPARE(daysAgo(1), QStringLiteral("vor 1 Tag"));
        QCOMPARE(daysAgo(5), QStringLiteral("vor 5 Tagen"));
    }

    void writeNumbersAndDatesOfTheLanguage()
    {
        const Instant day = instantFromMs(1'760'443'200'000);  // 14 October 2025, noon
        QCOMPARE(formats_->gravity(1.021), QStringLiteral("1.021"));
        QCOMPARE(formats_->date(day, cellar::DatePrecision::Month), QStringLiteral("October 2025"));
        settings_->setLanguage(QStringLiteral("de"));
        QCOMPARE(formats_->gravity(1.021), QStringLiteral("1,021"));
        QCOMPARE(formats_->volume(litres(48.5)), QStringLiteral("48,5 L"));
        QCOMPARE(formats_->date(day, cellar::DatePrecision::Month), QStringLiteral("Oktober 2025"));
    }

    void changeWhatIsShown()
    {
        QQmlEngine engine;
        engine.addImportPath(qEnvironmentVariable("SPILE_QML_MODULES"));
        translations_->follow(engine);
        QQmlComponent component(&engine);
        component.setData("import Spile.Components\nHoldPad { text: \"\" }", QUrl());
        const std::unique_ptr<QObject> pad(component.create());
        QVERIFY2(pad != nullptr, qPrintable(component.errorString()));
        QCOMPARE(pad->property("hint").toString(), QStringLiteral("Hold until it is full"));
        settings_->setLanguage(QStringLiteral("de"));
        QCOMPARE(pad->property("hint").toString(), QStringLiteral("Halten, bis es voll ist"));
        settings_->setLanguage(QStringLiteral("en"));
        QCOMPARE(pad->property("hint").toString(), QStringLiteral("Hold until it is full"));
    }

    // A language without a file is shown in English, with its plurals.
    void fallBackOnEnglish()
    {
        settings_->setLanguage(QStringLiteral("fi"));
        QCOMPARE(daysAgo(1), QStringLiteral("1 day ago"));
    }

private:
    [[nodiscard]] QString daysAgo(int days) const
    {
        return formats_->fromNow(device_->clock.now() - std::chrono::hours(24 * days));
    }

    std::unique_ptr<support::TestDevice> device_;
    std::unique_ptr<viewmodels::Formats> formats_;
    std::unique_ptr<viewmodels::Settings> settings_;
    std::unique_ptr<app::Translations> translations_;
};

}  // namespace spile

QTEST_MAIN(spile::TranslationsTest)
#include "translations_test.moc"
