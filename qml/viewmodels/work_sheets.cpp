#include "qml/viewmodels/work_sheets.hpp"

#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QLoggingCategory>
#include <algorithm>

namespace spile::viewmodels {

namespace {

const QString folder = QStringLiteral(":/sheets");

std::string textOfFile(const QString& name)
{
    QFile file(QDir(folder).filePath(name));
    return file.open(QIODevice::ReadOnly) ? file.readAll().toStdString() : std::string();
}

// They were read by a test before they came into the app.
void complain(const QString& file, const Error& error)
{
    qWarning("%s: %s: %s", qPrintable(file), error.value.c_str(), error.limit.c_str());
}

}  // namespace

WorkSheets::WorkSheets()
{
    const QStringList files =
        QDir(folder).entryList({QStringLiteral("*.sheet")}, QDir::Files, QDir::Name);
    for (const QString& file : files) {
        if (auto sheet = plan::parseSheet(textOfFile(file))) {
            sheets_.push_back(std::move(*sheet));
        } else {
            complain(file, sheet.error());
        }
    }
    if (const auto labels = plan::parseLabels(textOfFile(QStringLiteral("labels.txt")))) {
        for (const plan::Label& label : *labels) {
            labels_[label.name] = label.words;
        }
    } else {
        complain(QStringLiteral("labels.txt"), labels.error());
    }
    if (const auto cautions = plan::parseCautions(textOfFile(QStringLiteral("cautions.txt")))) {
        for (const plan::Caution& caution : *cautions) {
            cautions_[caution.name] = caution.words;
        }
    } else {
        complain(QStringLiteral("cautions.txt"), cautions.error());
    }
}

const plan::Sheet* WorkSheets::find(std::string_view name) const
{
    const auto found = std::find_if(sheets_.begin(), sheets_.end(),
                                    [&](const plan::Sheet& sheet) { return sheet.name == name; });
    return found == sheets_.end() ? nullptr : &*found;
}

QString WorkSheets::said(const std::string& words)
{
    return QCoreApplication::translate("Sheets", words.c_str());
}

QString WorkSheets::label(const std::string& name) const
{
    const auto found = labels_.find(name);
    return found == labels_.end() ? QString::fromStdString(name) : said(found->second);
}

QString WorkSheets::caution(const std::string& name) const
{
    const auto found = cautions_.find(name);
    return found == cautions_.end() ? QString::fromStdString(name) : said(found->second);
}

std::vector<std::string> WorkSheets::cautionsOf(const plan::Step& step) const
{
    std::vector<std::string> words;
    for (const std::string& name : step.cautions) {
        const auto found = cautions_.find(name);
        words.push_back(found == cautions_.end() ? name : found->second);
    }
    return words;
}

}  // namespace spile::viewmodels
