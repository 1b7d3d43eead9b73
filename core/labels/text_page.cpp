#include "core/labels/text_page.hpp"

#include <algorithm>
#include <utility>

namespace spile::labels {

namespace {

constexpr double margin = 20;         // mm, of the page
constexpr double titleSize = 6.5;     // mm, an em
constexpr double wordSize = 3.8;      //
constexpr double codeSize = 6;        //
constexpr double leading = 1.4;       // from one line to the next, in ems
constexpr double paragraphGap = 2.5;  // mm
constexpr double partGap = 4;

struct Size {
    double width, height;
};

// ISO 216; ANSI/ASME Y14.1.
Size sizeOf(Paper paper) { return paper == Paper::A4 ? Size{210, 297} : Size{215.9, 279.4}; }

// Fills a page from its top.
class Filling {
public:
    explicit Filling(Size size) : size_(size) {}

    void addWords(const std::string& paragraph, double size)
    {
        for (std::string& line : linesOf(paragraph, (size_.width - 2 * margin) / size)) {
            addLine(std::move(line), Face::Words, size);
        }
        top_ += paragraphGap;
    }
    void addCode(std::string code)
    {
        addLine(std::move(code), Face::Code, codeSize);
        TextLine& line = page_.lines.back();
        line.left = (size_.width - line.shaped.width * line.size) / 2;
    }
    void addSymbol(scan::ModuleGrid grid)
    {
        const double side = (grid.size + 2 * quietModules) * textPageModule;
        const Box cell{(size_.width - side) / 2, top_, side, side};
        PlacedSymbol symbol{cell, textPageModule, std::move(grid)};
        page_.labels.push_back({{}, cell, {std::move(symbol)}, {}});
        top_ += side;
    }
    void leave(double gap) { top_ += gap; }

    [[nodiscard]] bool isOverfull() const { return top_ > size_.height - margin; }
    [[nodiscard]] bool isComplete() const
    {
        return std::all_of(page_.lines.begin(), page_.lines.end(),
                           [](const TextLine& line) { return line.shaped.complete; });
    }
    [[nodiscard]] Page take() { return std::move(page_); }

private:
    void addLine(std::string text, Face face, double size)
    {
        top_ += size * leading;
        const double baseline = top_ - size * (leading - 1);
        page_.lines.push_back(lineOf(face, std::move(text), margin, baseline, size));
    }

    Size size_;
    double top_ = margin;
    Page page_;
};

}  // namespace

Result<Sheets> layOut(const TextPage& page)
{
    auto grid = scan::encodeQr(page.symbol, scan::QrLevel::H);
    if (page.symbol.empty() || !grid) {
        return fail(ErrorCode::Malformed, "symbol", std::to_string(page.symbol.size()) + " bytes",
                    "a text that a QR symbol can hold");
    }
    const Size size = sizeOf(page.paper);
    Filling filling(size);
    filling.addWords(page.title, titleSize);
    for (const std::string& paragraph : page.above) {
        filling.addWords(paragraph, wordSize);
    }
    filling.addSymbol(std::move(*grid));
    for (const std::string& code : page.codes) {
        filling.addCode(code);
    }
    filling.leave(partGap);
    for (const std::string& paragraph : page.below) {
        filling.addWords(paragraph, wordSize);
    }
    if (filling.isOverfull()) {
        return fail(ErrorCode::TooLarge, "page", page.title, "shorter words");
    }
    Sheets sheets{size.width, size.height, textPageModule, {}, {}};
    if (!filling.isComplete()) {
        sheets.incomplete.push_back(page.title);
    }
    sheets.pages.push_back(filling.take());
    return sheets;
}

}  // namespace spile::labels
