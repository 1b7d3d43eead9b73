// labels: a PDF file of labels for barrels, and for barrels to come.
#include "core/cellar/acts/registering.hpp"
#include "core/cellar/folding.hpp"
#include "core/labels/pdf.hpp"
#include "platform/desk/commands.hpp"
#include "platform/desk/finding.hpp"
#include "platform/desk/rows.hpp"

#include <algorithm>
#include <iterator>

namespace spile::desk {

using cellar::BarrelRow;
using labels::LabelWords;
using labels::Stock;
using labels::StockKind;
using nlohmann::json;

namespace {

const char* wordOf(StockKind kind)
{
    switch (kind) {
        case StockKind::Sheet:
            return "sheet";
        case StockKind::Roll:
            return "roll";
        case StockKind::Plain:
            return "plain";
    }
    return "";
}

int listStock(const Session& session)
{
    json rows = json::array();
    std::vector<std::vector<std::string>> lines = {{"name", "stock", "read from up to"}};
    for (const Stock& stock : labels::stocks()) {
        const auto farthest = labels::farthestOf(stock);
        const double metresAway = farthest ? farthest->si() : 0;
        rows.push_back({{"name", stock.name},
                        {"says", stock.says},
                        {"kind", wordOf(stock.kind)},
                        {"labels", stock.positions()},
                        {"width_mm", stock.width},
                        {"height_mm", stock.height},
                        {"page_width_mm", stock.pageWidth},
                        {"page_height_mm", stock.pageHeight},
                        {"farthest_m", metresAway}});
        lines.push_back(
            {std::string(stock.name), std::string(stock.says), fixed(metresAway, 2) + " m"});
    }
    session.answer(rows, table(lines));
    return Done;
}

Result<std::vector<BarrelRow>> allBarrels(cellar::Cellar& cellar)
{
    constexpr int page = 200;
    std::vector<BarrelRow> all;
    for (bool more = true; more;) {
        const cellar::AfterBarrel after =
            all.empty() ? cellar::AfterBarrel{} : cellar::afterBarrel(all.back());
        SPILE_ASSIGN(rows, cellar::barrels(cellar.database(), after, page));
        more = rows.size() == page;
        std::move(rows.begin(), rows.end(), std::back_inserter(all));
    }
    return all;
}

// The barrels that a person names: by their mark, in capitals or not, or by a code.
Result<std::vector<BarrelRow>> barrelsNamed(cellar::Cellar& cellar, const std::string& name)
{
    SPILE_ASSIGN(barrels, allBarrels(cellar));
    std::erase_if(barrels, [&](const BarrelRow& barrel) {
        return barrel.mark.empty() || cellar::folded(barrel.mark) != cellar::folded(name);
    });
    return barrels.empty() ? findBarrel(cellar, name) : Result<std::vector<BarrelRow>>(barrels);
}

void add(const std::vector<BarrelRow>& barrels, std::vector<LabelWords>& words)
{
    for (const BarrelRow& barrel : barrels) {
        words.push_back({barrel.code, barrel.mark});
    }
}

Result<void> addSpares(cellar::Cellar& cellar, int count, std::vector<LabelWords>& words)
{
    SPILE_ASSIGN(codes, cellar::spareCodes(cellar, count));
    for (std::string& code : codes) {
        words.push_back({std::move(code), {}});
    }
    return {};
}

Result<std::vector<LabelWords>> wordsFor(cellar::Cellar& cellar, const LabelOptions& options)
{
    std::vector<LabelWords> words;
    if (options.all) {
        SPILE_ASSIGN(barrels, allBarrels(cellar));
        add(barrels, words);
    }
    for (const std::string& barrel : options.barrels) {
        SPILE_ASSIGN(named, barrelsNamed(cellar, barrel));
        add(named, words);
    }
    if (options.spares) {
        SPILE_TRY(addSpares(cellar, *options.spares, words));
    }
    if (words.empty()) {
        return fail(ErrorCode::OutOfRange, "labels", "none",
                    "name barrels by code or mark, or give --all or --spare N");
    }
    return words;
}

json toJson(const labels::Order& order, const labels::Sheets& sheets)
{
    json codes = json::array();
    for (const LabelWords& label : order.labels) {
        codes.push_back(label.code);
    }
    return {{"stock", order.stock.name},
            {"distance_m", order.distance.si()},
            {"module_mm", sheets.module},
            {"labels", order.labels.size()},
            {"pages", sheets.pages.size()},
            {"codes", codes},
            {"incomplete_marks", sheets.incomplete}};
}

Result<labels::Sheets> writeLabels(Session& session, const LabelOptions& options,
                                   const labels::Order& order)
{
    SPILE_ASSIGN(sheets, labels::layOut(order));
    SPILE_ASSIGN(bytes, labels::pdfOf(sheets, "Barrel labels"));
    SPILE_TRY(writeWhole(session.files(), options.out, bytes));
    return sheets;
}

// The file takes the place of what stands there, so that must be a file, and asked for.
Result<void> checkOut(FileSystem& files, const LabelOptions& options)
{
    if (options.out.empty()) {
        return fail(ErrorCode::Malformed, "--out", {}, "the PDF file to write");
    }
    const Path folder = folderOf(options.out);
    if (!files.exists(folder)) {
        return fail(ErrorCode::Conflict, "folder", folder.string(), "one that is there");
    }
    if (!files.exists(options.out)) {
        return {};
    }
    if (!options.force) {
        return fail(ErrorCode::Conflict, "label file", options.out, "--force writes over it");
    }
    SPILE_ASSIGN(old, files.open(options.out));  // refuses a folder or a device
    (void)old;
    return {};
}

Result<labels::Order> orderOf(Session& session, const LabelOptions& options)
{
    SPILE_TRY(checkOut(session.files(), options));
    SPILE_ASSIGN(stock, labels::findStock(options.stock));
    SPILE_ASSIGN(cellar, session.open());
    SPILE_ASSIGN(words, wordsFor(*cellar, options));
    return labels::Order{.cellarMark = cellar->identity().mark,
                         .labels = std::move(words),
                         .stock = stock,
                         .distance = metres(options.distance),
                         .from = options.from,
                         .testPage = options.testPage};
}

}  // namespace

int makeLabels(Session& session, const LabelOptions& options)
{
    if (options.listStock) {
        return listStock(session);
    }
    const auto order = orderOf(session, options);
    if (!order) {
        return session.refuse(order.error());
    }
    const auto sheets = writeLabels(session, options, *order);
    if (!sheets) {
        return session.refuse(sheets.error());
    }
    for (const std::string& mark : sheets->incomplete) {
        Session::remark("The font lacks characters of \"" + mark + "\": a box stands for them.");
    }
    json answer = toJson(*order, *sheets);
    answer["file"] = options.out;
    session.answer(
        answer, "Wrote " + options.out + ": " + counted(order->labels.size(), "label") + " on " +
                    counted(sheets->pages.size(), "page") + ", " + std::string(order->stock.says) +
                    ", to be read from " + fixed(order->distance.si(), 2) + " m (modules of " +
                    fixed(sheets->module, 1) + " mm).\nPrint it at 100 % (\"actual size\").\n");
    return Done;
}

}  // namespace spile::desk
