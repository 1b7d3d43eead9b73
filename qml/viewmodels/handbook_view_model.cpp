#include "qml/viewmodels/handbook_view_model.hpp"

#include <QDir>
#include <QFile>

namespace spile::viewmodels {

namespace {

const QString folder = QStringLiteral(":/handbook");

QString contentOf(const QString& name)
{
    QFile file(QDir(folder).filePath(name));
    return file.open(QIODevice::ReadOnly) ? QString::fromUtf8(file.readAll()) : QString();
}

// The first line of a page is its title: "# Purging".
QString titleOf(const QString& page)
{
    return page.section(QLatin1Char('\n'), 0, 0).remove(QLatin1Char('#')).trimmed();
}

}  // namespace

HandbookViewModel::HandbookViewModel(QObject* parent)
    : QObject(parent), files_(QDir(folder).entryList(QDir::Files, QDir::Name))
{
}

QStringList HandbookViewModel::titles() const
{
    QStringList all;
    for (const QString& file : files_) {
        all << titleOf(contentOf(file));
    }
    return all;
}

void HandbookViewModel::setCurrent(int page)
{
    const int within = page >= 0 && page < files_.size() ? page : -1;
    if (within != current_) {
        current_ = within;
        emit changed();
    }
}

void HandbookViewModel::turnTo(const QString& file)
{
    setCurrent(static_cast<int>(files_.indexOf(file)));
}

QString HandbookViewModel::title() const
{
    return current_ < 0 ? QString() : titleOf(contentOf(files_[current_]));
}

QString HandbookViewModel::text() const
{
    return current_ < 0 ? QString()
                        : contentOf(files_[current_]).section(QLatin1Char('\n'), 1).trimmed();
}

}  // namespace spile::viewmodels
