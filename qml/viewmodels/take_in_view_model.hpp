#pragma once

#include "qml/viewmodels/context.hpp"
#include "qml/viewmodels/file_places.hpp"

#include <QObject>
#include <QStringList>
#include <QUrl>
#include <QtQml/qqmlregistration.h>

namespace spile::viewmodels {

/// Day files of other devices are taken in: those that lie in the usual places are offered.
class TakeInViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")
    Q_PROPERTY(QList<QString> files READ files NOTIFY changed FINAL)
    Q_PROPERTY(QString path READ path WRITE setPath NOTIFY changed FINAL)
    /// Where it was looked for day files, for people.
    Q_PROPERTY(QString lookedIn READ lookedIn NOTIFY changed FINAL)
    /// The name of the file that waits for its passphrase.
    Q_PROPERTY(QString sealedName READ sealedName NOTIFY changed FINAL)
    Q_PROPERTY(bool busy READ isBusy NOTIFY changed FINAL)
    Q_PROPERTY(qreal progress READ progress NOTIFY progressed FINAL)
    Q_PROPERTY(QString result READ result NOTIFY changed FINAL)
    Q_PROPERTY(QString error READ error NOTIFY changed FINAL)
    /// The file that was chosen is sealed: its passphrase is asked for.
    Q_PROPERTY(bool asksPassphrase READ asksPassphrase NOTIFY changed FINAL)
    Q_PROPERTY(QString passphrase READ passphrase WRITE setPassphrase NOTIFY changed FINAL)
    /// This device was copied or set back, as the file has shown; empty: it was not.
    Q_PROPERTY(QString renewed READ renewed NOTIFY changed FINAL)
    /// Whether a desk has to let it in again.
    Q_PROPERTY(bool needsLettingIn READ needsLettingIn NOTIFY changed FINAL)
    /// The file was made later than now, by this device's clock: what that means; empty: it was
    /// not.
    Q_PROPERTY(QString ahead READ ahead NOTIFY changed FINAL)
    /// Whether taking in makes this device's cellar: there is none yet.
    Q_PROPERTY(bool joins READ joins NOTIFY changed FINAL)

public:
    TakeInViewModel(Context& context, FilePlaces& places, QObject* parent = nullptr);

    /// Look again where day files lie.
    Q_INVOKABLE void begin();
    Q_INVOKABLE void takeFound(int index);
    Q_INVOKABLE void takePath();
    Q_INVOKABLE void takeUrl(const QUrl& url);
    /// Take the sealed file in with the passphrase that was typed.
    Q_INVOKABLE void unseal();
    Q_INVOKABLE void cancel();
    /// Look at the clock of the device that made the file.
    Q_INVOKABLE void openClock() { emit clockWanted(from_); }

    [[nodiscard]] QStringList files() const;
    [[nodiscard]] QString path() const { return path_; }
    void setPath(const QString& path);
    [[nodiscard]] bool isBusy() const { return busy_; }
    [[nodiscard]] qreal progress() const { return progress_; }
    [[nodiscard]] QString result() const { return result_; }
    [[nodiscard]] QString error() const { return error_; }
    [[nodiscard]] bool asksPassphrase() const { return !sealed_.empty(); }
    [[nodiscard]] QString passphrase() const { return passphrase_; }
    void setPassphrase(const QString& passphrase);
    [[nodiscard]] QString renewed() const { return renewed_; }
    [[nodiscard]] bool needsLettingIn() const { return needsLettingIn_; }
    [[nodiscard]] QString lookedIn() const;
    [[nodiscard]] QString sealedName() const;
    [[nodiscard]] QString ahead() const { return ahead_; }
    [[nodiscard]] bool joins() const { return joins_; }
    void setJoins(bool joins);
    /// How far the joining is that was wanted, and how it ended.
    void report(std::uint64_t done, std::uint64_t total);
    void joined(const Result<void>& joined);

signals:
    void changed();
    void progressed();
    /// There is no cellar yet: it has to be made from this file.
    void joinWanted(const QString& file, const QString& passphrase);
    void clockWanted(const spile::DeviceId& device);

private:
    void choose(const Path& file);
    void take(const Path& file);
    void refused(const Error& error);
    void taken(const ledger::TakenIn& taken, std::uint64_t setAside);

    Context& context_;
    FilePlaces& places_;
    std::vector<FilePlaces::Found> found_;
    std::vector<FilePlaces::Place> looked_;
    Path sealed_;  // the file that is waiting for its passphrase
    Path file_;    // that is being taken in
    QString path_, passphrase_, result_, renewed_, ahead_, error_;
    DeviceId from_;
    bool needsLettingIn_ = false;
    bool busy_ = false;
    bool joins_ = false;
    qreal progress_ = 0;
};

}  // namespace spile::viewmodels
