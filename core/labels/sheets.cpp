#include "core/labels/sheets.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <utility>

namespace spile::labels {

namespace {

constexpr double plateGap = 6;     // between plates, with a cut mark from each
constexpr double pageMargin = 10;  // of plain paper; printers leave out about 5
constexpr double cutLength = 2;    // of a cut mark,
constexpr double cutDistance = 1;  // beginning that far from the plate's corner
constexpr double ruleInset = 6;    // of the 50 mm line, from the foot of plain paper
constexpr double ruleTick = 2;
constexpr double ruleText = 3;  // mm, an em of "50 mm"

std::string decimals(double value)
{
    std::array<char, 32> text{};
    std::snprintf(text.data(), text.size(), "%.1f", value);
    return text.data();
}

// How many plates go onto the page, and where.
Stock cutInto(const Stock& paper, double pageWidth, double pageHeight, double module)
{
    Stock plates = paper;
    plates.pageWidth = pageWidth;
    plates.pageHeight = pageHeight;
    plates.width = 2 * sideOf(module) + plateMiddle;
    plates.height = sideOf(module);
    plates.pitchX = plates.width + plateGap;
    plates.pitchY = plates.height + plateGap;
    const auto count = [](double page, double pitch) {
        return static_cast<int>((page - 2 * pageMargin + plateGap) / pitch);
    };
    plates.columns = count(pageWidth, plates.pitchX);
    plates.rows = count(pageHeight, plates.pitchY);
    plates.left = (pageWidth - plates.columns * plates.pitchX + plateGap) / 2;
    plates.top = (pageHeight - plates.rows * plates.pitchY + plateGap) / 2;
    return plates;
}

// The page upright or on its side, whichever takes more.
Stock platesOn(const Stock& paper, double module)
{
    const Stock upright = cutInto(paper, paper.pageWidth, paper.pageHeight, module);
    const Stock lying = cutInto(paper, paper.pageHeight, paper.pageWidth, module);
    return lying.positions() > upright.positions() ? lying : upright;
}

Arrangement plateArrangement(double module)
{
    const double side = sideOf(module);
    constexpr double gap = 2;
    return {{{0, 0, side, side}, {side + plateMiddle, 0, side, side}},
            {side + gap, 0, plateMiddle - 2 * gap, side}};
}

// The least width or height, in tenths of a mm, that takes a label whose other side is given.
double leastSide(const auto& takes, double from)
{
    constexpr double most = 400;
    double side = std::ceil(from * 10) / 10;
    while (side < most && !takes(side)) {
        side += 0.1;
    }
    return side;
}

Error tooSmall(const Stock& stock, Length distance, double module)
{
    const double side = sideOf(module);
    const double width =
        leastSide([&](double w) { return arrange(w, side, module).has_value(); }, side);
    const double height =
        leastSide([&](double h) { return arrange(side, h, module).has_value(); }, side);
    const double metresAway = inMillimetres(distance) / 1000;
    std::string needs = "from " + decimals(metresAway) + " m labels of " + decimals(width) + " x " +
                        decimals(side) + " mm or " + decimals(side) + " x " + decimals(height) +
                        " mm are needed";
    if (const auto farthest = farthestOf(stock)) {
        std::array<char, 32> text{};
        std::snprintf(text.data(), text.size(), "%.2f", farthest->si());
        needs += std::string("; these can be read from up to ") + text.data() + " m";
    }
    return {ErrorCode::OutOfRange, "label stock", std::string(stock.says), needs};
}

// Two short lines at each corner, outside.
void addCutMarks(const Box& plate, std::vector<Stroke>& strokes)
{
    for (const bool right : {false, true}) {
        for (const bool lower : {false, true}) {
            const double x = right ? plate.right() : plate.left;
            const double y = lower ? plate.bottom() : plate.top;
            const double outX = right ? 1 : -1;
            const double outY = lower ? 1 : -1;
            strokes.push_back({x + outX * cutDistance, y, x + outX * (cutDistance + cutLength), y});
            strokes.push_back({x, y + outY * cutDistance, x, y + outY * (cutDistance + cutLength)});
        }
    }
}

void addOutline(const Box& box, std::vector<Stroke>& strokes)
{
    strokes.push_back({box.left, box.top, box.right(), box.top});
    strokes.push_back({box.right(), box.top, box.right(), box.bottom()});
    strokes.push_back({box.right(), box.bottom(), box.left, box.bottom()});
    strokes.push_back({box.left, box.bottom(), box.left, box.top});
}

void addRule(double middle, double y, Page& page)
{
    const double left = middle - ruleLength / 2;
    const double right = middle + ruleLength / 2;
    page.strokes.push_back({left, y, right, y});
    page.strokes.push_back({left, y - ruleTick / 2, left, y + ruleTick / 2});
    page.strokes.push_back({right, y - ruleTick / 2, right, y + ruleTick / 2});
    TextLine text = lineOf(Face::Words, "50 mm", 0, y - ruleTick / 2, ruleText);
    text.left = middle - text.shaped.width * text.size / 2;
    page.lines.push_back(std::move(text));
}

Page testPage(const Stock& stock)
{
    Page page;
    for (int position = 0; position < stock.positions(); ++position) {
        addOutline(stock.cell(position), page.strokes);
    }
    const Box first = stock.cell(0);
    addRule(first.left + first.width / 2, first.top + first.height / 2, page);
    return page;
}

Page emptyPage(const Stock& stock)
{
    Page page;
    if (stock.kind == StockKind::Plain) {
        addRule(stock.pageWidth / 2, stock.pageHeight - ruleInset, page);
    }
    return page;
}

Result<void> checkOrder(const Order& order, const Stock& stock)
{
    if (order.labels.empty() || order.labels.size() > mostLabels) {
        return fail(ErrorCode::OutOfRange, "labels", std::to_string(order.labels.size()),
                    "1 to " + std::to_string(mostLabels));
    }
    const int last = stock.kind == StockKind::Sheet ? stock.positions() : 1;
    if (order.from < 1 || order.from > last) {
        return fail(ErrorCode::OutOfRange, "position", std::to_string(order.from),
                    last > 1 ? "1 to " + std::to_string(last) : "1 for rolls and plain paper");
    }
    return {};
}

bool isComplete(const PlacedLabel& label)
{
    return std::all_of(label.lines.begin(), label.lines.end(),
                       [](const TextLine& line) { return line.shaped.complete; });
}

}  // namespace

Result<Fitted> fit(const Stock& stock, Length distance)
{
    SPILE_ASSIGN(module, moduleFor(distance));
    if (stock.kind == StockKind::Plain) {
        return Fitted{platesOn(stock, module), module, plateArrangement(module)};
    }
    auto arrangement = arrange(stock.width, stock.height, module);
    if (!arrangement) {
        return tl::unexpected<Error>(tooSmall(stock, distance, module));
    }
    return Fitted{stock, module, std::move(*arrangement)};
}

std::optional<Length> farthestOf(const Stock& stock)
{
    constexpr int nearest = 40;  // cm
    constexpr int farthest = 150;
    for (int cm = farthest; cm >= nearest; cm -= 5) {
        const auto module = moduleFor(metres(cm / 100.0));
        if (module && (stock.kind == StockKind::Plain ||
                       arrange(stock.width, stock.height, *module).has_value())) {
            return metres(cm / 100.0);
        }
    }
    return std::nullopt;
}

Result<Sheets> layOut(const Order& order)
{
    SPILE_ASSIGN(fitted, fit(order.stock, order.distance));
    const Stock& stock = fitted.stock;
    SPILE_TRY(checkOrder(order, stock));
    Sheets sheets{stock.pageWidth, stock.pageHeight, fitted.module, {}, {}};
    if (order.testPage) {
        sheets.pages.push_back(testPage(stock));
    }
    int position = order.from - 1;
    bool newPage = true;
    for (const LabelWords& words : order.labels) {
        if (std::exchange(newPage, false)) {
            sheets.pages.push_back(emptyPage(stock));
        }
        Page& page = sheets.pages.back();
        SPILE_ASSIGN(label, layOutLabel(words, order.cellarMark, stock.cell(position),
                                        fitted.module, fitted.arrangement));
        if (!isComplete(label)) {
            sheets.incomplete.push_back(words.mark);
        }
        if (stock.kind == StockKind::Plain) {
            addCutMarks(label.cell, page.strokes);
        }
        page.labels.push_back(std::move(label));
        position = (position + 1) % stock.positions();
        newPage = position == 0;
    }
    return sheets;
}

}  // namespace spile::labels
