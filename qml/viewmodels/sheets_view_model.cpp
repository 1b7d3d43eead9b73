#include "qml/viewmodels/sheets_view_model.hpp"

#include "qml/viewmodels/settings.hpp"

#include <algorithm>
#include <array>

namespace spile::viewmodels {

namespace {

// In the order of the work, not of the alphabet.
constexpr std::array<std::string_view, 11> order = {"receive", "swell", "purge",       "fill",
                                                    "leaks",   "gauge", "sample_hole", "syringe",
                                                    "top_up",  "empty", "between"};

std::ptrdiff_t placeOf(const plan::Sheet* sheet)
{
    return std::find(order.begin(), order.end(), sheet->name) - order.begin();
}

}  // namespace

std::string sheetForStep(std::string_view nextStep)
{
    return nextStep == "fill"              ? "fill"
           : nextStep == "check for leaks" ? "leaks"
           : nextStep == "empty"           ? "empty"
                                           : "";
}

SheetsViewModel::SheetsViewModel(Context& context, BarrelViewModel& barrel, OpenWorkViewModel& open,
                                 const WorkSheets& sheets, QObject* parent)
    : QObject(parent), context_(context), barrel_(barrel), open_(open), sheets_(sheets)
{
    connect(&barrel_, &BarrelViewModel::changed, this, &SheetsViewModel::changed);
    connect(&open_, &OpenWorkViewModel::changed, this, &SheetsViewModel::changed);
    connect(&context_.settings, &Settings::changed, this, &SheetsViewModel::changed);
}

std::vector<const plan::Sheet*> SheetsViewModel::offered() const
{
    const plan::SheetFor state = barrel_.isFilled() ? plan::SheetFor::Full : plan::SheetFor::Empty;
    std::vector<const plan::Sheet*> all;
    for (const plan::Sheet& sheet : sheets_.all()) {
        const bool suits = sheet.barrels == plan::SheetFor::Any || sheet.barrels == state;
        if (suits && (sheet.only.empty() || context_.settings.allowsTopUps())) {
            all.push_back(&sheet);
        }
    }
    std::stable_sort(all.begin(), all.end(), [](const plan::Sheet* a, const plan::Sheet* b) {
        return placeOf(a) < placeOf(b);
    });
    return all;
}

QStringList SheetsViewModel::titles() const
{
    QStringList all;
    for (const plan::Sheet* sheet : offered()) {
        all << WorkSheets::said(sheet->title);
    }
    return all;
}

QStringList SheetsViewModel::hints() const
{
    const QString open = open_.titleFor(barrel_.row().barrel);
    QStringList all;
    for (const plan::Sheet* sheet : offered()) {
        all << (WorkSheets::said(sheet->title) == open
                    ? tr("open: go on")
                    : tr("%n step(s)", "", static_cast<int>(sheet->steps.size())));
    }
    return all;
}

int SheetsViewModel::next() const
{
    const cellar::BarrelRow& row = barrel_.row();  // what is to be destroyed goes into no lot
    const std::string wanted = row.verdict == "destroy" ? "" : sheetForStep(row.nextStep);
    const auto all = offered();
    const auto found = std::find_if(
        all.begin(), all.end(), [&](const plan::Sheet* sheet) { return sheet->name == wanted; });
    return found == all.end() ? -1 : static_cast<int>(found - all.begin());
}

QString SheetsViewModel::openText() const
{
    const QString open = open_.titleFor(barrel_.row().barrel);
    return open.isEmpty() ? QString() : tr("Go on: %1").arg(open);
}

void SheetsViewModel::choose(int index)
{
    const auto all = offered();
    if (index >= 0 && index < static_cast<int>(all.size())) {
        emit chosen(all[static_cast<std::size_t>(index)]->name);
    }
}

}  // namespace spile::viewmodels
