#pragma once

#include "core/cellar/acts/working.hpp"
#include "core/cellar/queries.hpp"
#include "qml/viewmodels/context.hpp"
#include "qml/viewmodels/deadline.hpp"
#include "qml/viewmodels/rows.hpp"
#include "qml/viewmodels/work_sheets.hpp"

#include <QObject>
#include <QtQml/qqmlregistration.h>
#include <map>
#include <memory>

namespace spile::viewmodels {

/// A work sheet that is open on this device, as a line.
struct OpenWorkLine {
    QString run;
    QString barrel;  // "Rum 3", or a lot's name
    QString barrelId;
    QString sheet;  // "Fill"
    QString where;  // "step 4 of 9"
    QString when;   // "begun 14:02 by Jo"
    bool stopped = false;

    [[nodiscard]] QString key() const { return run; }
    friend bool operator==(const OpenWorkLine&, const OpenWorkLine&) = default;
};

class OpenWorkRows : public Rows<OpenWorkLine> {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")

public:
    enum Role { Barrel = Qt::UserRole, Sheet, Where, When, Stopped };

    using Rows<OpenWorkLine>::Rows;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
};

/// The work sheets that are open on this device, and their timers, which call when they are over
/// whatever page is shown.
class OpenWorkViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")
    Q_PROPERTY(spile::viewmodels::OpenWorkRows* work READ work CONSTANT FINAL)
    Q_PROPERTY(int count READ count NOTIFY changed FINAL)
    /// What a timer calls: "Sanitise and purge, Rum 3: time is up"; empty: none calls.
    Q_PROPERTY(QString call READ call NOTIFY changed FINAL)

public:
    OpenWorkViewModel(Context& context, const WorkSheets& sheets, QObject* parent = nullptr);

    [[nodiscard]] OpenWorkRows* work() { return &rows_; }
    [[nodiscard]] int count() const { return rows_.rowCount(); }
    [[nodiscard]] QString call() const { return call_; }
    /// The run that is open for that barrel, the newest first; none if there is none.
    [[nodiscard]] std::optional<SubjectId> runFor(const SubjectId& barrel) const;
    /// Whether the worker stopped it.
    [[nodiscard]] bool isStopped(const SubjectId& run) const;
    [[nodiscard]] QString titleFor(const SubjectId& barrel) const;

    void refresh();
    Q_INVOKABLE void goOn(int index);
    /// Go to the work whose timer calls.
    Q_INVOKABLE void answer();
    /// Only put the call away.
    Q_INVOKABLE void hush();

signals:
    void changed();
    void read();
    void chosen(const spile::SubjectId& run);
    void called();

private:
    struct Found {
        cellar::OpenWork work;
        QString name;  // of the barrel or the lot
        std::string person;
    };
    void take(std::vector<Found> found);
    void watch(const Found& found, const QString& name, const plan::Step* step);

    struct Watch {
        cellar::WorkTimer timer;
        std::unique_ptr<Deadline> deadline;
    };
    Context& context_;
    const WorkSheets& sheets_;
    OpenWorkRows rows_;
    std::vector<Found> found_;
    std::map<SubjectId, Watch> watches_;
    QString call_;
    SubjectId caller_;
};

}  // namespace spile::viewmodels
