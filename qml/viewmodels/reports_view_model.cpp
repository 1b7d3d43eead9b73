#include "qml/viewmodels/reports_view_model.hpp"

#include "core/cellar/lots.hpp"
#include "qml/viewmodels/error_text.hpp"
#include "qml/viewmodels/report_text.hpp"

namespace spile::viewmodels {

namespace {

constexpr int lotsMost = 50;

// How far back a page looks: a year of months, two years of quarters, five years.
Instant beginningBefore(Instant now, trace::Period period)
{
    const int months = period == trace::Period::Month     ? 11
                       : period == trace::Period::Quarter ? 21
                                                          : 48;
    const std::chrono::year_month_day day(std::chrono::floor<std::chrono::days>(now));
    const auto first = day.year() / day.month() - std::chrono::months(months);
    return std::chrono::sys_days(first / 1);
}

}  // namespace

ReportsViewModel::ReportsViewModel(Context& context, QObject* parent)
    : QObject(parent), context_(context)
{
    connect(&context_.workers, &Workers::changed, this, &ReportsViewModel::refresh);
}

void ReportsViewModel::setShown(bool shown)
{
    if (std::exchange(shown_, shown) != shown) {
        refresh();
    }
}

QStringList ReportsViewModel::reports() const { return {tr("Duty"), tr("Losses"), tr("Costs")}; }

QStringList ReportsViewModel::periods() const
{
    return report_ == Costs ? QStringList()
                            : QStringList{tr("Months"), tr("Quarters"), tr("Years")};
}

void ReportsViewModel::chooseReport(int report)
{
    if (report != report_) {
        report_ = static_cast<Report>(report);
        loaded_ = false;
        parts_.replace({});
        emit changed();
        refresh();
    }
}

void ReportsViewModel::choosePeriod(int period)
{
    if (period != this->period()) {
        period_ = static_cast<trace::Period>(period);
        loaded_ = false;
        parts_.replace({});
        emit changed();
        refresh();
    }
}

Result<ReportsViewModel::Read> ReportsViewModel::read(ledger::Database& database, Report report,
                                                      trace::Period period, Instant now,
                                                      const Job& job)
{
    Read read;
    if (report == Costs) {
        SPILE_ASSIGN(lots, cellar::lots(database, {}, lotsMost));
        for (const cellar::LotRow& lot : lots) {
            if (!job.advance(read.costs.size(), lots.size())) {
                return fail(ErrorCode::Cancelled, "report");
            }
            SPILE_ASSIGN(cost, trace::costOfLot(database, lot.lot));
            read.costs.push_back(std::move(cost));
        }
        return read;
    }
    const Instant from = beginningBefore(now, period);
    SPILE_ASSIGN(rows, trace::dutySummary(database, from, now + Milliseconds(1), period));
    read.rows = std::move(rows);
    if (report == Losses) {
        SPILE_ASSIGN(stays, cellar::staysEnded(database, from, now + Milliseconds(1)));
        read.stays = std::move(stays);
    }
    return read;
}

void ReportsViewModel::refresh()
{
    if (!shown_) {
        return;
    }
    const int asked = ++asked_;
    context_.workers.study(
        this,
        [report = report_, period = period_, now = context_.formats.now()](
            ledger::Database& database, const Job& job) {
            return read(database, report, period, now, job);
        },
        [this, asked](const Result<Read>& read) {
            if (asked != asked_) {
                return;
            }
            loaded_ = true;
            problem_ = read ? QString() : textOf(read.error());
            if (read) {
                take(*read);
            }
            emit changed();
        });
}

void ReportsViewModel::take(const Read& read)
{
    switch (report_) {
        case Duty:
            parts_.replace(ReportText::duty(read.rows, period_, context_.formats));
            break;
        case Losses:
            parts_.replace(ReportText::losses(read.rows, read.stays, period_, context_.formats));
            break;
        case Costs:
            parts_.replace(ReportText::costs(read.costs, context_.formats));
            break;
    }
}

QString ReportsViewModel::note() const
{
    switch (report_) {
        case Duty:
            return tr(
                "Figures to fill in a return with. What is due, and on what, the authority "
                "says. Litres of alcohol are of pure alcohol at 20 °C; months are those of "
                "UTC.");
        case Losses:
            return tr(
                "What a barrel lost is known when it is emptied and both ends were "
                "measured.");
        case Costs:
            return tr(
                "In the house's own money, as it was recorded. What evaporates makes the "
                "rest dearer.");
    }
    return {};
}

}  // namespace spile::viewmodels
