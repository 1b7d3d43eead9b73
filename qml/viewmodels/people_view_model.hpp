#pragma once

#include "core/cellar/queries.hpp"
#include "qml/viewmodels/context.hpp"

#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace spile::viewmodels {

/// Who holds the phone: it is passed round, so every sheet begins with this.
class PeopleViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")
    Q_PROPERTY(QList<QString> names READ names NOTIFY changed FINAL)
    /// The place in `names` of who it is now; -1: nobody yet.
    Q_PROPERTY(int current READ current NOTIFY changed FINAL)
    Q_PROPERTY(QString name READ name NOTIFY changed FINAL)
    Q_PROPERTY(QString newName READ newName WRITE setNewName NOTIFY newNameChanged FINAL)
    Q_PROPERTY(QString error READ error NOTIFY newNameChanged FINAL)

public:
    explicit PeopleViewModel(Context& context, QObject* parent = nullptr);

    [[nodiscard]] QStringList names() const;
    [[nodiscard]] int current() const;
    [[nodiscard]] QString name() const;
    [[nodiscard]] QString newName() const { return newName_; }
    void setNewName(const QString& name);
    [[nodiscard]] QString error() const { return error_; }
    /// None: nobody has said who they are.
    [[nodiscard]] std::optional<SubjectId> who() const;
    [[nodiscard]] const std::vector<cellar::NamedRow>& people() const { return people_; }
    /// The name of a person; empty if it is not known.
    [[nodiscard]] QString nameOf(const SubjectId& person) const;

    void refresh();
    Q_INVOKABLE void choose(int index);
    /// Make the new name known and choose it.
    Q_INVOKABLE void add();

signals:
    void changed();
    void newNameChanged();
    /// Somebody was chosen or added: the page has done its work.
    void chosen();

private:
    void use(const SubjectId& person);

    Context& context_;
    std::vector<cellar::NamedRow> people_;
    QString newName_, error_;
};

}  // namespace spile::viewmodels
