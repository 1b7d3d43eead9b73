#pragma once

#include "core/trace/reports.hpp"
#include "qml/viewmodels/context.hpp"
#include "qml/viewmodels/part_rows.hpp"

#include <QObject>
#include <QtQml/qqmlregistration.h>

namespace spile::viewmodels {

/// The summary for a duty return, what was lost, and what a litre cost.
class ReportsViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")
    Q_PROPERTY(QList<QString> reports READ reports CONSTANT FINAL)
    Q_PROPERTY(int report READ report NOTIFY changed FINAL)
    /// By month, quarter or year; costs have no periods.
    Q_PROPERTY(QList<QString> periods READ periods NOTIFY changed FINAL)
    Q_PROPERTY(int period READ period NOTIFY changed FINAL)
    Q_PROPERTY(spile::viewmodels::PartRows* parts READ parts CONSTANT FINAL)
    Q_PROPERTY(bool loaded READ isLoaded NOTIFY changed FINAL)
    Q_PROPERTY(bool empty READ isEmpty NOTIFY changed FINAL)
    /// What to bear in mind with these numbers.
    Q_PROPERTY(QString note READ note NOTIFY changed FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY changed FINAL)

public:
    enum Report { Duty, Losses, Costs };
    Q_ENUM(Report)

    explicit ReportsViewModel(Context& context, QObject* parent = nullptr);

    /// While it is shown it follows the records.
    void setShown(bool shown);
    Q_INVOKABLE void chooseReport(int report);
    Q_INVOKABLE void choosePeriod(int period);

    [[nodiscard]] QStringList reports() const;
    [[nodiscard]] int report() const { return report_; }
    [[nodiscard]] QStringList periods() const;
    [[nodiscard]] int period() const { return static_cast<int>(period_); }
    [[nodiscard]] PartRows* parts() { return &parts_; }
    [[nodiscard]] bool isLoaded() const { return loaded_; }
    [[nodiscard]] bool isEmpty() const { return loaded_ && parts_.rowCount() == 0; }
    [[nodiscard]] QString note() const;
    [[nodiscard]] QString problem() const { return problem_; }

signals:
    void changed();

private:
    /// Of what was asked for, only what the report shows.
    struct Read {
        std::vector<trace::DutyRow> rows;
        std::vector<cellar::EndedStay> stays;
        std::vector<trace::LotCost> costs;
    };
    [[nodiscard]] static Result<Read> read(ledger::Database& database, Report report,
                                           trace::Period period, Instant now, const Job& job);
    void refresh();
    void take(const Read& read);

    Context& context_;
    PartRows parts_;
    Report report_ = Duty;
    trace::Period period_ = trace::Period::Month;
    QString problem_;
    int asked_ = 0;  // counts questions, so that an old answer is not shown
    bool shown_ = false;
    bool loaded_ = false;
};

}  // namespace spile::viewmodels
