#pragma once

#include "core/cellar/lots.hpp"
#include "core/cellar/searching.hpp"
#include "qml/viewmodels/barrel_rows.hpp"

#include <QObject>
#include <memory>

namespace spile::viewmodels {

/// The barrels whose next step is due, the longest due first.
class DueViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")
    Q_PROPERTY(spile::viewmodels::BarrelRows* barrels READ barrels CONSTANT FINAL)
    Q_PROPERTY(bool loaded READ isLoaded NOTIFY changed FINAL)
    Q_PROPERTY(bool empty READ isEmpty NOTIFY changed FINAL)
    /// Whether the cellar has no barrel at all.
    Q_PROPERTY(bool noBarrels READ hasNoBarrels NOTIFY changed FINAL)
    Q_PROPERTY(QString summary READ summary NOTIFY changed FINAL)
    /// What is to be taken out of a lot, "Take coconut out of Harbour", and since when.
    Q_PROPERTY(QList<QString> takeOuts READ takeOuts NOTIFY changed FINAL)
    Q_PROPERTY(QList<QString> takeOutsDue READ takeOutsDue NOTIFY changed FINAL)

public:
    explicit DueViewModel(Context& context, QObject* parent = nullptr);

    [[nodiscard]] BarrelRows* barrels() { return &rows_; }
    [[nodiscard]] bool isLoaded() const { return loaded_; }
    [[nodiscard]] bool isEmpty() const
    {
        return loaded_ && rows_.rowCount() == 0 && finishes_.empty();
    }
    [[nodiscard]] bool hasNoBarrels() const { return noBarrels_; }
    [[nodiscard]] QString summary() const;
    [[nodiscard]] QStringList takeOuts() const;
    [[nodiscard]] QStringList takeOutsDue() const;
    /// The lot of one of them.
    [[nodiscard]] Q_INVOKABLE QString lotAt(int index) const;
    void refresh();
    Q_INVOKABLE void more();

signals:
    void changed();

private:
    void take(const std::vector<cellar::BarrelRow>& rows, bool any);

    Context& context_;
    BarrelRows rows_;
    std::vector<cellar::BarrelRow> shown_;
    std::vector<cellar::FinishDue> finishes_;
    int wanted_;
    bool loaded_ = false;
    bool noBarrels_ = false;
    bool complete_ = false;
};

/// All barrels: searched by what is seen of them, filtered by how they stand.
class BarrelsViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")
    Q_PROPERTY(spile::viewmodels::BarrelRows* barrels READ barrels CONSTANT FINAL)
    Q_PROPERTY(QString search READ search WRITE setSearch NOTIFY changed FINAL)
    Q_PROPERTY(int filter READ filter WRITE setFilter NOTIFY changed FINAL)
    Q_PROPERTY(QList<QString> filters READ filters CONSTANT FINAL)
    Q_PROPERTY(bool loaded READ isLoaded NOTIFY changed FINAL)
    Q_PROPERTY(bool empty READ isEmpty NOTIFY changed FINAL)

public:
    explicit BarrelsViewModel(Context& context, QObject* parent = nullptr);
    ~BarrelsViewModel() override;
    Q_DISABLE_COPY_MOVE(BarrelsViewModel)

    [[nodiscard]] BarrelRows* barrels() { return &rows_; }
    [[nodiscard]] QString search() const { return search_; }
    void setSearch(const QString& text);
    [[nodiscard]] int filter() const { return filter_; }
    void setFilter(int filter);
    [[nodiscard]] QStringList filters() const;
    [[nodiscard]] bool isLoaded() const { return loaded_; }
    [[nodiscard]] bool isEmpty() const { return loaded_ && rows_.rowCount() == 0; }
    void refresh();
    Q_INVOKABLE void more();

signals:
    void changed();

private:
    void look();

    Context& context_;
    BarrelRows rows_;
    QString search_;
    int filter_ = 0;
    int wanted_;
    bool loaded_ = false;
    bool complete_ = false;
    std::shared_ptr<CancelToken> running_;  // an older search is not waited for
};

}  // namespace spile::viewmodels
