#pragma once

#include "core/plan/calculators/calculator.hpp"
#include "core/plan/numbers.hpp"
#include "qml/viewmodels/context.hpp"
#include "qml/viewmodels/work_rows.hpp"

#include <QObject>
#include <QtQml/qqmlregistration.h>

namespace spile::viewmodels {

/// The calculators of the trade: their list, and the one that is chosen, with this barrel's own
/// values filled in as far as they are known.
class CalculatingViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")
    Q_PROPERTY(QList<QString> titles READ titles NOTIFY changed FINAL)
    /// What each of them is for.
    Q_PROPERTY(QList<QString> uses READ uses NOTIFY changed FINAL)
    /// The one that is chosen; -1: the list of them.
    Q_PROPERTY(int current READ current NOTIFY changed FINAL)
    Q_PROPERTY(QString title READ title NOTIFY changed FINAL)
    Q_PROPERTY(QString use READ use NOTIFY changed FINAL)
    Q_PROPERTY(QString caution READ caution NOTIFY changed FINAL)
    /// The barrel whose values are filled in; empty if there is none.
    Q_PROPERTY(QString barrelName READ barrelName NOTIFY changed FINAL)
    Q_PROPERTY(spile::viewmodels::AskRows* inputs READ inputs CONSTANT FINAL)
    Q_PROPERTY(spile::viewmodels::FactRows* answers READ answers CONSTANT FINAL)
    /// The first of them, to be kept in sight; empty if there is none.
    Q_PROPERTY(QString mainLabel READ mainLabel NOTIFY changed FINAL)
    Q_PROPERTY(QString mainValue READ mainValue NOTIFY changed FINAL)
    /// What is still to be filled in; empty if nothing is.
    Q_PROPERTY(QString missing READ missing NOTIFY changed FINAL)
    Q_PROPERTY(QString error READ error NOTIFY changed FINAL)
    /// Each formula with its publication.
    Q_PROPERTY(QList<QString> sources READ sources NOTIFY changed FINAL)
    /// The file of its page in the handbook.
    Q_PROPERTY(QString handbook READ handbook NOTIFY changed FINAL)

public:
    explicit CalculatingViewModel(Context& context, QObject* parent = nullptr);

    /// Begin with the list and nothing filled in by hand; a barrel of no id: without one.
    void begin(const cellar::BarrelRow& barrel);

    [[nodiscard]] static QStringList titles();
    [[nodiscard]] static QStringList uses();
    [[nodiscard]] int current() const;
    [[nodiscard]] QString title() const;
    [[nodiscard]] QString use() const;
    [[nodiscard]] QString caution() const;
    [[nodiscard]] QString barrelName() const { return barrelName_; }
    [[nodiscard]] AskRows* inputs() { return &inputs_; }
    [[nodiscard]] FactRows* answers() { return &answers_; }
    [[nodiscard]] QString mainLabel() const;
    [[nodiscard]] QString mainValue() const;
    [[nodiscard]] QString missing() const { return missing_; }
    [[nodiscard]] QString error() const { return error_; }
    [[nodiscard]] QStringList sources() const;
    [[nodiscard]] QString handbook() const;

    /// Choose the one of that place in the list, or of that name.
    Q_INVOKABLE void choose(int index);
    void choose(const QString& name);
    /// Back to the list. What was filled in stays until the next begin().
    Q_INVOKABLE void leave();
    Q_INVOKABLE void stepInput(const QString& name, int count);
    Q_INVOKABLE void chooseWord(const QString& name, int index);
    /// Take back what was filled in: the usual value holds again, or none.
    Q_INVOKABLE void forget(const QString& name);

signals:
    void changed();

private:
    using Calculated = Result<std::vector<plan::Answer>>;
    struct Filled {
        plan::Given given;
        bool touched = false;  // by hand
    };
    struct Ran {
        plan::Given given;  // with what
        Calculated answers;
    };
    void readBarrel(const SubjectId& barrel);
    [[nodiscard]] plan::Given& given();
    void fill(Filled& filled) const;
    void calculate();
    void show();
    [[nodiscard]] AskLine lineOf(const plan::CalculatorInput& input);

    Context& context_;
    QString barrelName_;
    SubjectId barrel_;
    std::optional<plan::WorkFacts> facts_;
    const plan::Calculator* calculator_ = nullptr;
    std::map<std::string, Filled, std::less<>> filled_;  // by calculator
    AskRows inputs_;
    FactRows answers_;
    std::optional<Ran> last_;  // of the calculator that is chosen
    QString missing_;
    QString error_;
    bool running_ = false;
    bool again_ = false;  // something has changed while it ran
};

}  // namespace spile::viewmodels
