#pragma once

#include "core/cellar/queries.hpp"
#include "qml/viewmodels/context.hpp"
#include "qml/viewmodels/file_places.hpp"

#include <QObject>
#include <QStringList>
#include <QTemporaryDir>
#include <QUrl>
#include <QtQml/qqmlregistration.h>
#include <memory>

namespace spile::viewmodels {

/// A photo of a barrel, or of the sample on an open sheet: taken, made durable, shown, taken back.
class PhotoViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")
    Q_PROPERTY(QString barrelName READ barrelName NOTIFY changed FINAL)
    Q_PROPERTY(bool ofSheet READ isOfSheet NOTIFY changed FINAL)
    /// What it can show; empty on a sheet, whose photos are of the colour.
    Q_PROPERTY(QList<QString> purposes READ purposes NOTIFY changed FINAL)
    Q_PROPERTY(int purpose READ purpose WRITE setPurpose NOTIFY changed FINAL)
    Q_PROPERTY(bool canTake READ canTake NOTIFY changed FINAL)
    Q_PROPERTY(bool busy READ isBusy NOTIFY changed FINAL)
    Q_PROPERTY(bool kept READ isKept NOTIFY changed FINAL)
    Q_PROPERTY(QUrl pictureUrl READ pictureUrl NOTIFY changed FINAL)
    Q_PROPERTY(QString errorText READ errorText NOTIFY changed FINAL)

public:
    /// With less than this free, photos are refused, so that scores still have room.
    static constexpr std::uint64_t leastFreeBytes = 50'000'000;

    PhotoViewModel(Context& context, FilePlaces& places, QObject* parent = nullptr);

    void beginForBarrel(const cellar::BarrelRow& barrel, std::optional<SubjectId> person);
    void beginForSheet(const cellar::BarrelRow& barrel, const SubjectId& sheet);

    /// Begin to take one: the folder in which the camera shall put it; empty if there is no room.
    Q_INVOKABLE QString take();
    /// Keep what the camera has put there; the file is removed once that is done, or failed.
    Q_INVOKABLE void keep(const QString& file);
    /// The camera gave none.
    Q_INVOKABLE void takingFailed();
    /// Take the kept photo back.
    Q_INVOKABLE void undo();
    /// Leave the kept photo and take another.
    Q_INVOKABLE void another();

    [[nodiscard]] QString barrelName() const;
    [[nodiscard]] bool isOfSheet() const { return !sheet_.isZero(); }
    [[nodiscard]] QStringList purposes() const;
    [[nodiscard]] int purpose() const { return purpose_; }
    void setPurpose(int purpose);
    [[nodiscard]] bool canTake() const { return !busy_ && !isKept(); }
    [[nodiscard]] bool isBusy() const { return busy_; }
    [[nodiscard]] bool isKept() const { return !picture_.isEmpty(); }
    [[nodiscard]] QUrl pictureUrl() const { return picture_; }
    [[nodiscard]] QString errorText() const { return error_; }

signals:
    void changed();
    /// A photo was added to the open sheet, or taken back.
    void keptOnSheet();

private:
    struct Kept {
        EntryId entry;  // of a barrel's photo
        Sha256 hash;
        Path file;
    };
    struct Wanted;
    static Result<Kept> record(cellar::Cellar& cellar, const Wanted& wanted);

    void begin();
    void taken(const Result<Kept>& kept);
    void fail(const QString& text);
    void failForRoom();
    [[nodiscard]] std::string purposeWord() const;

    Context& context_;
    FilePlaces& places_;
    std::unique_ptr<QTemporaryDir> folder_;
    cellar::BarrelRow barrel_;
    SubjectId sheet_;
    std::optional<SubjectId> person_;
    int purpose_ = 0;
    Kept kept_;
    QUrl picture_;
    QString error_;
    bool busy_ = false;
    int begun_ = 0;  // a photo that becomes durable after another page was begun is not shown there
};

}  // namespace spile::viewmodels
