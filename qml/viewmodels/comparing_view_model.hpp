#pragma once

#include "core/cellar/acts/tasting.hpp"
#include "core/cellar/queries.hpp"
#include "qml/viewmodels/context.hpp"
#include "qml/viewmodels/rows.hpp"

#include <QObject>
#include <QtQml/qqmlregistration.h>

namespace spile::viewmodels {

/// One attribute of a sheet that has just been closed, beside what was said of it before.
struct ComparedLine {
    QString attribute;
    QString name;
    QString now;        // "7"
    QString before;     // "5 on 3 Sep, 6 Kim today"
    int direction = 2;  // as ComparingViewModel::Direction

    [[nodiscard]] QString key() const { return attribute; }
    friend bool operator==(const ComparedLine&, const ComparedLine&) = default;
};

class ComparedRows : public Rows<ComparedLine> {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")

public:
    enum Role { Name = Qt::UserRole, Now, Before, Direction };

    using Rows<ComparedLine>::Rows;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
};

/// After a sheet is closed: how it compares with earlier ones, and in which direction the brewer
/// would have each attribute go. A direction is durable before it is shown.
class ComparingViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")
    Q_PROPERTY(QString barrelName READ barrelName NOTIFY changed FINAL)
    Q_PROPERTY(bool loaded READ isLoaded NOTIFY changed FINAL)
    Q_PROPERTY(QString summary READ summary NOTIFY changed FINAL)
    Q_PROPERTY(spile::viewmodels::ComparedRows* attributes READ attributes CONSTANT FINAL)

public:
    enum Direction { TooMuch = -1, Right = 0, More = 1, NotSaid = 2 };
    Q_ENUM(Direction)

    explicit ComparingViewModel(Context& context, QObject* parent = nullptr);

    void show(const SubjectId& barrel, const EntryId& taste);
    Q_INVOKABLE void say(int index, Direction direction);

    [[nodiscard]] QString barrelName() const { return barrelName_; }
    [[nodiscard]] bool isLoaded() const { return loaded_; }
    [[nodiscard]] QString summary() const { return summary_; }
    [[nodiscard]] ComparedRows* attributes() { return &rows_; }

signals:
    void changed();

private:
    void compare(const cellar::BarrelHistory& history);
    [[nodiscard]] QString beforeText(const std::vector<cellar::TasteRow>& earlier,
                                     const std::string& attribute) const;
    void readAgain();

    Context& context_;
    ComparedRows rows_;
    SubjectId barrel_;
    EntryId taste_;
    std::optional<SubjectId> person_;
    std::optional<EntryId> recorded_;  // the entry of the directions, once there is one
    std::map<std::string, cellar::Direction> said_;
    bool saying_ = false;
    QString barrelName_, summary_;
    bool loaded_ = false;
};

}  // namespace spile::viewmodels
