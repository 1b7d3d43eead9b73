#pragma once

#include "core/trace/finding.hpp"
#include "qml/viewmodels/context.hpp"
#include "qml/viewmodels/file_places.hpp"
#include "qml/viewmodels/part_rows.hpp"

#include <QObject>
#include <QtQml/qqmlregistration.h>

namespace spile::viewmodels {

/// Where beer came from and where it went; and the recall list of it as a file.
class TraceViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")
    Q_PROPERTY(QString typed READ typed WRITE setTyped NOTIFY changed FINAL)
    /// What is traced; empty: nothing yet.
    Q_PROPERTY(QString name READ name NOTIFY changed FINAL)
    Q_PROPERTY(QString summary READ summary NOTIFY changed FINAL)
    /// "Where it came from", "Where it went"; what has no way up has only the second.
    Q_PROPERTY(QList<QString> ways READ ways NOTIFY changed FINAL)
    Q_PROPERTY(int way READ way NOTIFY changed FINAL)
    /// Others of the same name.
    Q_PROPERTY(QList<QString> others READ others NOTIFY changed FINAL)
    Q_PROPERTY(int other READ other NOTIFY changed FINAL)
    Q_PROPERTY(spile::viewmodels::PartRows* parts READ parts CONSTANT FINAL)
    Q_PROPERTY(bool running READ isRunning NOTIFY changed FINAL)
    Q_PROPERTY(bool canRecall READ canRecall NOTIFY changed FINAL)
    Q_PROPERTY(QString error READ error NOTIFY changed FINAL)
    /// Where the recall list is put, and the one that was written.
    Q_PROPERTY(QList<QString> folders READ folders NOTIFY changed FINAL)
    Q_PROPERTY(int folder READ folder NOTIFY changed FINAL)
    Q_PROPERTY(QString fileName READ fileName NOTIFY changed FINAL)
    Q_PROPERTY(QString filePath READ filePath NOTIFY changed FINAL)
    Q_PROPERTY(QString recallText READ recallText NOTIFY changed FINAL)

public:
    TraceViewModel(Context& context, FilePlaces& places, QObject* parent = nullptr);

    /// Begin with nothing, or with packages, a lot or a barrel.
    void begin();
    void beginWithPackage(const EntryId& package, const SubjectId& lot, const QString& name);
    void beginWith(const trace::Start& start, const QString& name);

    [[nodiscard]] QString typed() const { return typed_; }
    void setTyped(const QString& text);
    Q_INVOKABLE void search();
    Q_INVOKABLE void chooseWay(int way);
    Q_INVOKABLE void chooseOther(int other);
    /// Trace a part down, or open its lot.
    Q_INVOKABLE void act(int index);
    /// Write the recall list of what is traced.
    Q_INVOKABLE void recall();
    Q_INVOKABLE void chooseFolder(int folder);

    [[nodiscard]] QString name() const;
    [[nodiscard]] QString summary() const;
    [[nodiscard]] QStringList ways() const;
    [[nodiscard]] int way() const { return up_ ? way_ : 0; }
    [[nodiscard]] QStringList others() const;
    [[nodiscard]] int other() const { return at_; }
    [[nodiscard]] PartRows* parts() { return &parts_; }
    [[nodiscard]] bool isRunning() const { return running_; }
    [[nodiscard]] bool canRecall() const { return down_.has_value() && !running_ && !writing_; }
    [[nodiscard]] QString error() const { return error_; }
    [[nodiscard]] QStringList folders() const;
    [[nodiscard]] int folder() const { return folder_; }
    [[nodiscard]] QString fileName() const;
    [[nodiscard]] QString filePath() const { return QString::fromStdString(file_.string()); }
    [[nodiscard]] QString recallText() const { return recallText_; }

signals:
    void changed();
    void lotWanted(const spile::SubjectId& lot);

private:
    struct Traced {
        std::optional<trace::Upward> up;
        trace::Downward down;
    };
    [[nodiscard]] static Result<Traced> trace(ledger::Database& database,
                                              const trace::Named& named);
    void set(std::vector<trace::Named> found);
    void look();
    void show();
    void forget();
    [[nodiscard]] const trace::Named* current() const;

    Context& context_;
    FilePlaces& places_;
    QString typed_, error_, recallText_;
    std::vector<trace::Named> found_;
    int at_ = 0;
    std::optional<trace::Upward> up_;
    std::optional<trace::Downward> down_;
    int way_ = 0;
    int asked_ = 0;  // counts questions, so that an old answer is not shown
    PartRows parts_;
    std::vector<FilePlaces::Place> folders_;
    int folder_ = 0;
    Path file_;
    bool running_ = false;
    bool writing_ = false;
};

}  // namespace spile::viewmodels
