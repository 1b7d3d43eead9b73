#pragma once

#include "core/cellar/journal.hpp"
#include "qml/viewmodels/context.hpp"
#include "qml/viewmodels/file_places.hpp"

#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace spile::viewmodels {

/// The day file that this device hands over: what is new, writing it, bringing it somewhere, and
/// what is known to have arrived. It says only what has been proven.
class DayFileViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")
    Q_PROPERTY(bool loaded READ isLoaded NOTIFY changed FINAL)
    /// "14 records on this phone are in no day file yet."
    Q_PROPERTY(QString unsentText READ unsentText NOTIFY changed FINAL)
    /// "14 new": for a pad.
    Q_PROPERTY(QString shortText READ shortText NOTIFY changed FINAL)
    Q_PROPERTY(bool anyUnsent READ hasUnsent NOTIFY changed FINAL)
    /// One line a kind: "6 tastings".
    Q_PROPERTY(QList<QString> unsentKinds READ unsentKinds NOTIFY changed FINAL)
    Q_PROPERTY(QString lastText READ lastText NOTIFY changed FINAL)
    Q_PROPERTY(QList<QString> receipts READ receipts NOTIFY changed FINAL)
    Q_PROPERTY(QList<QString> receivers READ receivers NOTIFY changed FINAL)
    Q_PROPERTY(int receiver READ receiver WRITE setReceiver NOTIFY changed FINAL)
    Q_PROPERTY(int openSheets READ openSheets NOTIFY changed FINAL)
    /// Whether the file is sealed with a passphrase, and the passphrase of the one that was
    /// written.
    Q_PROPERTY(bool sealed READ isSealed WRITE setSealed NOTIFY changed FINAL)
    Q_PROPERTY(QString passphrase READ passphrase NOTIFY changed FINAL)
    Q_PROPERTY(bool writing READ isWriting NOTIFY changed FINAL)
    Q_PROPERTY(qreal progress READ progress NOTIFY progressed FINAL)
    /// The file that was written now: its name, size and what is in it; empty: none yet.
    Q_PROPERTY(QString fileName READ fileName NOTIFY changed FINAL)
    Q_PROPERTY(QString fileText READ fileText NOTIFY changed FINAL)
    /// What is damaged here and not in it; empty: nothing.
    Q_PROPERTY(QString leftOutText READ leftOutText NOTIFY changed FINAL)
    Q_PROPERTY(QString filePath READ filePath NOTIFY changed FINAL)
    Q_PROPERTY(QList<QString> targets READ targets NOTIFY changed FINAL)
    /// "Copied to Downloads at 18:20."
    Q_PROPERTY(QString handedText READ handedText NOTIFY changed FINAL)
    Q_PROPERTY(QString error READ error NOTIFY changed FINAL)

public:
    DayFileViewModel(Context& context, FilePlaces& places, QObject* parent = nullptr);

    void refresh();
    /// Forget the file that was written before; the page is shown anew.
    Q_INVOKABLE void begin();
    Q_INVOKABLE void write();
    Q_INVOKABLE void cancel();
    Q_INVOKABLE void handOver(int target);

    [[nodiscard]] bool isLoaded() const { return loaded_; }
    [[nodiscard]] QString unsentText() const;
    [[nodiscard]] QString shortText() const;
    [[nodiscard]] bool hasUnsent() const { return journal_.unsent.entries > 0; }
    [[nodiscard]] QStringList unsentKinds() const;
    [[nodiscard]] QString lastText() const;
    [[nodiscard]] QStringList receipts() const;
    [[nodiscard]] QStringList receivers() const;
    [[nodiscard]] int receiver() const { return receiver_; }
    void setReceiver(int receiver);
    [[nodiscard]] bool isSealed() const { return sealed_; }
    void setSealed(bool sealed);
    [[nodiscard]] QString passphrase() const { return passphrase_; }
    [[nodiscard]] int openSheets() const { return openSheets_; }
    [[nodiscard]] bool isWriting() const { return writing_; }
    [[nodiscard]] qreal progress() const { return progress_; }
    [[nodiscard]] QString fileName() const;
    [[nodiscard]] QString fileText() const { return fileText_; }
    [[nodiscard]] QString leftOutText() const { return leftOutText_; }
    [[nodiscard]] QString filePath() const { return QString::fromStdString(file_.string()); }
    [[nodiscard]] QStringList targets() const;
    [[nodiscard]] QString handedText() const { return handedText_; }
    [[nodiscard]] QString error() const { return error_; }

signals:
    void changed();
    void progressed();

private:
    struct Journal {
        cellar::Unsent unsent;
        std::vector<cellar::Receipt> receipts;
        int openSheets = 0;
        std::string mark;
    };

    Context& context_;
    FilePlaces& places_;
    Journal journal_;
    std::vector<FilePlaces::Place> targets_;
    int receiver_ = 0;  // 0: everybody, else the receipt before it
    int openSheets_ = 0;
    bool sealed_ = false;
    bool loaded_ = false;
    bool writing_ = false;
    qreal progress_ = 0;
    Path file_;
    QString passphrase_;  // kept nowhere else
    QString fileText_, leftOutText_, handedText_, error_;
};

}  // namespace spile::viewmodels
