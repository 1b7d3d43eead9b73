#include "platform/app/scratch_cellar.hpp"

#include <QCoreApplication>
#include <QDir>
#include <QDirIterator>
#include <QFile>

namespace spile::app {

ScratchCellar::ScratchCellar(const QString& folder)
{
    const QDir from(folder);
    QDirIterator files(folder, QDir::Files | QDir::Hidden, QDirIterator::Subdirectories);
    while (files.hasNext()) {
        const QString file = files.next();
        const QString to = QDir(this->folder()).filePath(from.relativeFilePath(file));
        QDir().mkpath(QFileInfo(to).absolutePath());
        if (!QFile::copy(file, to)) {
            problem_ = QStringLiteral("%1 cannot be copied").arg(file);
            return;
        }
    }
}

}  // namespace spile::app
