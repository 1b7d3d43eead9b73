// The files of translations: complete, and made from the strings that are in the tree.
#include "core/cellar/vocabulary.hpp"
#include "core/plan/asks.hpp"
#include "platform/app/core_texts.hpp"

#include <QDirIterator>
#include <QFile>
#include <QFileInfo>
#include <QProcess>
#include <QRegularExpression>
#include <QSet>
#include <QTemporaryDir>
#include <QTest>
#include <QXmlStreamReader>
#include <algorithm>

namespace spile {

namespace {

struct Message {
    QString context;
    QString source;
    QString comment;
    QStringList forms;  // one, or as many as the language has plurals
    bool counts = false;
    bool unfinished = false;

    [[nodiscard]] QString name() const
    {
        return QStringLiteral("%1 | %2 | %3").arg(context, source, comment);
    }
};

const QString root = QStringLiteral(SPILE_SOURCE_DIR);

QString fileOf(const QString& language)
{
    return root + QStringLiteral("/assets/i18n/spile_%1.ts").arg(language);
}

void readTranslation(QXmlStreamReader& xml, Message& message)
{
    message.unfinished = xml.attributes().hasAttribute(QLatin1String("type"));
    if (!message.counts) {
        message.forms = QStringList{xml.readElementText()};
        return;
    }
    while (xml.readNextStartElement()) {
        message.forms << xml.readElementText();
    }
}

Message readMessage(QXmlStreamReader& xml, const QString& context)
{
    Message message;
    message.context = context;
    message.counts = xml.attributes().value(QLatin1String("numerus")) == QLatin1String("yes");
    while (xml.readNextStartElement()) {
        if (xml.name() == QLatin1String("source")) {
            message.source = xml.readElementText();
        } else if (xml.name() == QLatin1String("comment")) {
            message.comment = xml.readElementText();
        } else if (xml.name() == QLatin1String("translation")) {
            readTranslation(xml, message);
        } else {
            xml.skipCurrentElement();
        }
    }
    return message;
}

QList<Message> messagesOf(const QString& path)
{
    QFile file(path);
    QList<Message> messages;
    if (!file.open(QIODevice::ReadOnly)) {
        return messages;
    }
    QXmlStreamReader xml(&file);
    QString context;
    while (!xml.atEnd()) {
        if (xml.readNext() != QXmlStreamReader::StartElement) {
            continue;
        }
        if (xml.name() == QLatin1String("name")) {
            context = xml.readElementText();
        } else if (xml.name() == QLatin1String("message")) {
            messages << readMessage(xml, context);
        }
    }
    return xml.hasError() ? QList<Message>() : messages;
}

QStringList placeholders(const QString& text)
{
    static const QRegularExpression placeholder(QStringLiteral("%(?:n|L?[0-9]+)"));
    QStringList found;
    for (auto match = placeholder.globalMatch(text); match.hasNext();) {
        found << match.next().captured();
    }
    found.sort();
    return found;
}

QStringList namesOf(const QList<Message>& messages, bool onlyCounting)
{
    QStringList names;
    for (const Message& message : messages) {
        if (message.counts || !onlyCounting) {
            names << message.name();
        }
    }
    names.sort();
    return names;
}

QByteArray missingFrom(const QStringList& names, const QStringList& wanted)
{
    QStringList missing;
    std::set_difference(wanted.begin(), wanted.end(), names.begin(), names.end(),
                        std::back_inserter(missing));
    return missing.join(QLatin1Char('\n')).toUtf8();
}

}  // namespace

class TranslationFiles : public QObject {
    Q_OBJECT

private slots:
    void areWhole_data()
    {
        QTest::addColumn<QString>("language");
        QTest::newRow("English") << "en";
        QTest::newRow("German") << "de";
    }
    void areWhole()
    {
        QFETCH(const QString, language);
        const QList<Message> messages = messagesOf(fileOf(language));
        QVERIFY(!messages.isEmpty());
        constexpr int pluralForms = 2;  // English and German have as many
        for (const Message& message : messages) {
            const char* name = qUtf8Printable(message.name());
            QVERIFY2(!message.unfinished, name);
            QVERIFY2(message.forms.size() == (message.counts ? pluralForms : 1), name);
            for (const QString& form : message.forms) {
                QVERIFY2(!form.trimmed().isEmpty(), name);
                QVERIFY2(placeholders(form) == placeholders(message.source), name);
            }
        }
    }

    // The words of work sheets and calculators are written out for lupdate.
    void showCoresTextsToLupdate()
    {
        const auto texts = app::coreTexts((root + QStringLiteral("/assets/sheets")).toStdString());
        QVERIFY(texts.has_value());
        QFile file(root + QStringLiteral("/assets/i18n/core_texts.cpp"));
        QVERIFY(file.open(QIODevice::ReadOnly));
        QVERIFY2(file.readAll().toStdString() == *texts, "build the target spile_lupdate");
    }

    // Who adds a string builds the target spile_lupdate and translates it.
    void holdTheStringsOfTheTree()
    {
        const QTemporaryDir folder;
        const QString collected = folder.filePath(QStringLiteral("collected.ts"));
        QProcess lupdate;
        lupdate.setWorkingDirectory(root);
        lupdate.start(QStringLiteral(SPILE_LUPDATE),
                      {QStringLiteral("-silent"), QStringLiteral("@assets/i18n/sources.lst"),
                       QStringLiteral("-target-language"), QStringLiteral("de"),
                       QStringLiteral("-ts"), collected});
        QVERIFY(lupdate.waitForFinished());
        QCOMPARE(lupdate.exitStatus(), QProcess::NormalExit);
        QCOMPARE(lupdate.exitCode(), 0);
        const QList<Message> tree = messagesOf(collected);
        QVERIFY(!tree.isEmpty());
        for (const bool english : {true, false}) {
            const QString file = fileOf(english ? QStringLiteral("en") : QStringLiteral("de"));
            const QStringList wanted = namesOf(tree, english);
            const QStringList held = namesOf(messagesOf(file), false);
            const QByteArray absent = missingFrom(held, wanted);
            QVERIFY2(absent.isEmpty(), absent.constData());
            const QByteArray stale = missingFrom(wanted, held);
            QVERIFY2(stale.isEmpty(), stale.constData());
        }
    }

    // A string is looked for under the name of its class with namespaces, or of its QML file.
    void nameContextsAsTheyAreAtRunTime()
    {
        QSet<QString> plain{"FieldText",      "SettlingText", "JoinText",    "LotText",
                            "ReportText",     "TraceText",    "AlarmText",   "BenchText",
                            "WindowSet",      "Calculating",  "Calculators", "ErrorText",
                            "Formats",        "NumberText",   "OutlookText", "Sheets",
                            "StandardPlaces", "TakeBack",     "TasterText",  "Words"};
        for (QDirIterator files(root + QStringLiteral("/qml"), {QStringLiteral("*.qml")},
                                QDir::Files, QDirIterator::Subdirectories);
             files.hasNext();) {
            plain.insert(QFileInfo(files.next()).baseName());
        }
        for (const Message& message : messagesOf(fileOf(QStringLiteral("de")))) {
            const QString& context = message.context;
            QVERIFY2(plain.contains(context) || context.startsWith(QLatin1String("spile::")),
                     qUtf8Printable(context));
        }
    }

    // They are looked up by what is stored: the compiler does not see them.
    void holdEveryWordThatSheetsOffer()
    {
        QSet<QString> words;
        for (const Message& message : messagesOf(fileOf(QStringLiteral("de")))) {
            if (message.context == QLatin1String("Words")) {
                words.insert(message.source);
            }
        }
        const auto isThere = [&](std::string_view word) {
            return words.contains(
                QString::fromUtf8(word.data(), static_cast<qsizetype>(word.size())));
        };
        for (const cellar::WordList& offered :
             {cellar::usualAttributes(), cellar::usualFaults(), cellar::noteChips(),
              cellar::drawMethods(), cellar::gaugeMethods(), cellar::checkFindings(),
              cellar::verdicts(), cellar::nextUses(), cellar::cutReasons(), cellar::usualSpirits(),
              cellar::usualWoods()}) {
            for (const std::string_view word : offered) {
                QVERIFY2(isThere(word), std::string(word).c_str());
            }
        }
        for (const plan::AskSpec& ask : plan::allAsks()) {
            for (const std::string_view word : ask.words) {
                QVERIFY2(isThere(word), std::string(word).c_str());
            }
        }
        for (const cellar::BarrelSize& size : cellar::barrelSizes()) {
            QVERIFY2(isThere(size.name), std::string(size.name).c_str());
        }
    }
};

}  // namespace spile

QTEST_GUILESS_MAIN(spile::TranslationFiles)
#include "translation_files_test.moc"
