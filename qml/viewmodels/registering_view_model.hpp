#pragma once

#include "core/cellar/acts/registering.hpp"
#include "core/cellar/queries.hpp"
#include "qml/viewmodels/context.hpp"

#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace spile::viewmodels {

/// A barrel is made known. Only a tap on "Register" is needed: all else may be unknown.
class RegisteringViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")
    Q_PROPERTY(QString mark READ mark WRITE setMark NOTIFY changed FINAL)
    /// The code of a label that is there already; empty: a new code is made.
    Q_PROPERTY(QString labelCode READ labelCode NOTIFY changed FINAL)
    Q_PROPERTY(QList<QString> sizes READ sizes NOTIFY changed FINAL)
    Q_PROPERTY(int size READ size WRITE setSize NOTIFY changed FINAL)
    Q_PROPERTY(QList<QString> spirits READ spirits CONSTANT FINAL)
    Q_PROPERTY(int spirit READ spirit WRITE setSpirit NOTIFY changed FINAL)
    Q_PROPERTY(QList<QString> woods READ woods CONSTANT FINAL)
    Q_PROPERTY(int wood READ wood WRITE setWood NOTIFY changed FINAL)
    Q_PROPERTY(QList<QString> fillsBefore READ fillsBefore CONSTANT FINAL)
    Q_PROPERTY(int fills READ fills WRITE setFills NOTIFY changed FINAL)
    Q_PROPERTY(QList<QString> places READ places NOTIFY changed FINAL)
    Q_PROPERTY(int place READ place WRITE setPlace NOTIFY changed FINAL)
    Q_PROPERTY(QString newPlace READ newPlace WRITE setNewPlace NOTIFY changed FINAL)
    Q_PROPERTY(bool full READ isFull WRITE setFull NOTIFY changed FINAL)
    Q_PROPERTY(QString since READ since NOTIFY changed FINAL)
    Q_PROPERTY(bool canLater READ canLater NOTIFY changed FINAL)
    Q_PROPERTY(QList<QString> beers READ beers NOTIFY changed FINAL)
    Q_PROPERTY(int beer READ beer WRITE setBeer NOTIFY changed FINAL)
    Q_PROPERTY(QString newBeer READ newBeer WRITE setNewBeer NOTIFY changed FINAL)
    Q_PROPERTY(QString error READ error NOTIFY changed FINAL)
    Q_PROPERTY(bool busy READ isBusy NOTIFY changed FINAL)
    /// Once registered: the code to chalk on or label with, and which barrel it is.
    Q_PROPERTY(QString code READ code NOTIFY changed FINAL)
    Q_PROPERTY(QString barrelId READ barrelId NOTIFY changed FINAL)

public:
    explicit RegisteringViewModel(Context& context, QObject* parent = nullptr);

    /// Begin with an empty form; `labelCode` is that of a label which was scanned, or empty.
    Q_INVOKABLE void begin(const QString& labelCode = {});
    /// Begin the next one like the last: the same size, spirit, wood and place.
    Q_INVOKABLE void another();
    /// Earlier or later by months.
    Q_INVOKABLE void stepSince(int months);
    Q_INVOKABLE void record();

    [[nodiscard]] QString mark() const { return mark_; }
    void setMark(const QString& mark) { set(mark_, mark); }
    [[nodiscard]] QString labelCode() const;
    [[nodiscard]] QStringList sizes() const;
    [[nodiscard]] int size() const { return size_; }
    void setSize(int size) { toggle(size_, size); }
    [[nodiscard]] QStringList spirits() const;
    [[nodiscard]] int spirit() const { return spirit_; }
    void setSpirit(int spirit) { toggle(spirit_, spirit); }
    [[nodiscard]] QStringList woods() const;
    [[nodiscard]] int wood() const { return wood_; }
    void setWood(int wood) { toggle(wood_, wood); }
    [[nodiscard]] QStringList fillsBefore() const;
    [[nodiscard]] int fills() const { return fills_; }
    void setFills(int fills) { toggle(fills_, fills); }
    [[nodiscard]] QStringList places() const;
    [[nodiscard]] int place() const { return place_; }
    void setPlace(int place) { toggle(place_, place); }
    [[nodiscard]] QString newPlace() const { return newPlace_; }
    void setNewPlace(const QString& name) { set(newPlace_, name); }
    [[nodiscard]] bool isFull() const { return full_; }
    void setFull(bool full) { set(full_, full); }
    [[nodiscard]] QString since() const;
    [[nodiscard]] bool canLater() const { return monthsAgo_ > 0; }
    [[nodiscard]] QStringList beers() const;
    [[nodiscard]] int beer() const { return beer_; }
    void setBeer(int beer) { toggle(beer_, beer); }
    [[nodiscard]] QString newBeer() const { return newBeer_; }
    void setNewBeer(const QString& name) { set(newBeer_, name); }
    [[nodiscard]] QString error() const { return error_; }
    [[nodiscard]] bool isBusy() const { return busy_; }
    [[nodiscard]] QString code() const;
    [[nodiscard]] QString barrelId() const { return textOf(registered_.barrel); }

signals:
    void changed();

private:
    struct Form;

    template <class T>
    void set(T& member, const T& value)
    {
        if (member != value) {
            member = value;
            error_.clear();
            emit changed();
        }
    }
    // The same choice again takes it back: not known.
    void toggle(int& member, int value) { set(member, value == member ? -1 : value); }
    void readNames();
    [[nodiscard]] Instant sinceWhen() const;
    [[nodiscard]] Form form() const;

    Context& context_;
    std::vector<cellar::NamedRow> places_, batches_;
    QString mark_, newPlace_, newBeer_, error_;
    std::string labelCode_;
    int size_ = -1, spirit_ = -1, wood_ = -1, fills_ = -1, place_ = -1, beer_ = -1;
    int monthsAgo_ = 0;
    bool full_ = false;
    bool busy_ = false;
    cellar::RegisteredBarrel registered_;
};

}  // namespace spile::viewmodels
