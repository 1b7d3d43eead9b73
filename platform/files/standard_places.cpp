#include "platform/files/standard_places.hpp"

#include <QCoreApplication>
#include <QDateTime>
#include <QDir>
#include <QStandardPaths>
#include <QStorageInfo>
#include <algorithm>

namespace spile::files {

namespace {

struct StandardPlacesText {
    Q_DECLARE_TR_FUNCTIONS(StandardPlaces)
};

constexpr std::size_t filesMost = 20;

// Where removable media are mounted, by the Filesystem Hierarchy Standard 3.0 and by desktops.
bool isRemovable(const QStorageInfo& volume)
{
    const QString root = volume.rootPath();
    return volume.isValid() && volume.isReady() && !volume.isReadOnly() && !volume.isRoot() &&
           (root.startsWith(QLatin1String("/media/")) || root.startsWith(QLatin1String("/mnt/")) ||
            root.startsWith(QLatin1String("/run/media/")) ||
            root.startsWith(QLatin1String("/Volumes/")));
}

QStringList folders()
{
    QStringList folders;
    for (const QStorageInfo& volume : QStorageInfo::mountedVolumes()) {
        if (isRemovable(volume)) {
            folders << volume.rootPath();
        }
    }
    for (const auto where : {QStandardPaths::DownloadLocation, QStandardPaths::DocumentsLocation,
                             QStandardPaths::DesktopLocation, QStandardPaths::HomeLocation}) {
        const QString folder = QStandardPaths::writableLocation(where);
        if (!folder.isEmpty() && !folders.contains(folder) && QDir(folder).exists()) {
            folders << folder;
        }
    }
    return folders;
}

}  // namespace

std::vector<StandardPlaces::Place> StandardPlaces::targets()
{
    std::vector<Place> places;
    for (const QString& folder : folders()) {
        const QStorageInfo volume(folder);
        const QString name =
            isRemovable(volume) && volume.rootPath() == folder
                ? StandardPlacesText::tr("Memory stick %1").arg(volume.displayName())
            : folder == QDir::homePath() ? StandardPlacesText::tr("Home folder")
                                         : QDir(folder).dirName();
        places.push_back({name, folder.toStdString()});
    }
    return places;
}

std::vector<StandardPlaces::Found> StandardPlaces::dayFiles()
{
    std::vector<Found> found;
    for (const QString& folder : folders()) {
        const QFileInfoList files =
            QDir(folder).entryInfoList({QStringLiteral("*.spile")}, QDir::Files | QDir::Readable);
        for (const QFileInfo& file : files) {
            found.push_back({file.absoluteFilePath().toStdString(), file.fileName(),
                             instantFromMs(file.lastModified().toMSecsSinceEpoch()),
                             static_cast<std::uint64_t>(file.size())});
        }
    }
    std::sort(found.begin(), found.end(),
              [](const Found& a, const Found& b) { return a.changed > b.changed; });
    found.resize(std::min(found.size(), filesMost));
    return found;
}

std::uint64_t StandardPlaces::freeBytes()
{
    const qint64 free =
        QStorageInfo(QString::fromStdString(cellarFolder_.string())).bytesAvailable();
    return static_cast<std::uint64_t>(std::max<qint64>(free, 0));
}

}  // namespace spile::files
