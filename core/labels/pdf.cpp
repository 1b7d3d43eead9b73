#include "core/labels/pdf.hpp"

#include "core/labels/pdf_file.hpp"
#include "core/labels/pdf_fonts.hpp"

namespace spile::labels {

namespace {

constexpr double pointsPerMm = 72.0 / 25.4;
constexpr double strokeWidth = 0.2;  // mm

// What is drawn on a page, in mm; the file counts up from the foot of the page.
class Content {
public:
    explicit Content(double pageHeight) : pageHeight_(pageHeight)
    {
        // Of all numbers this one is multiplied with the others, so it has more places.
        text_ = "2.83464567 0 0 2.83464567 0 0 cm\n" + number(strokeWidth) + " w\n";
    }

    void add(const PlacedSymbol& symbol)
    {
        const Box modules = symbol.modules();
        text_ += "q " + number(symbol.module) + " 0 0 " + number(symbol.module) + " " +
                 number(modules.left) + " " + up(modules.bottom()) + " cm\n";
        for (const DarkRun& run : darkRuns(symbol.grid)) {
            text_ += std::to_string(run.column) + " " +
                     std::to_string(symbol.grid.size - run.row - run.height) + " " +
                     std::to_string(run.width) + " " + std::to_string(run.height) + " re\n";
        }
        text_ += "f Q\n";
    }
    void add(const TextLine& line)
    {
        text_ += "BT " + fontName(line.face) + " " + number(line.size) + " Tf\n";
        for (const Glyph& glyph : line.shaped.glyphs) {
            const double x = line.left + glyph.x * line.size;
            const double y = line.baseline - glyph.y * line.size;
            text_ += "1 0 0 1 " + number(x) + " " + up(y) + " Tm <" + hex4(glyph.id) + "> Tj\n";
        }
        text_ += "ET\n";
    }
    void add(const Stroke& stroke)
    {
        text_ += number(stroke.x1) + " " + up(stroke.y1) + " m " + number(stroke.x2) + " " +
                 up(stroke.y2) + " l S\n";
    }

    [[nodiscard]] const std::string& text() const { return text_; }

private:
    [[nodiscard]] std::string up(double y) const { return number(pageHeight_ - y); }
    double pageHeight_;
    std::string text_;
};

std::string contentOf(const Page& page, double pageHeight)
{
    Content content(pageHeight);
    for (const Stroke& stroke : page.strokes) {
        content.add(stroke);
    }
    for (const TextLine& line : page.lines) {
        content.add(line);
    }
    for (const PlacedLabel& label : page.labels) {
        for (const PlacedSymbol& symbol : label.symbols) {
            content.add(symbol);
        }
        for (const TextLine& line : label.lines) {
            content.add(line);
        }
    }
    return content.text();
}

std::string boxOf(const Sheets& sheets)
{
    return " /MediaBox [0 0 " + number(sheets.pageWidth * pointsPerMm) + " " +
           number(sheets.pageHeight * pointsPerMm) + "]";
}

// Write a page and return its number; `entries` are those that all pages have.
int writePage(PdfFile& file, const std::string& content, const std::string& entries)
{
    const int stream = file.reserve();
    const int page = file.reserve();
    file.writeStream(stream, "", content);
    file.write(page, "<< /Type /Page " + entries + " /Contents " + reference(stream) + " >>");
    return page;
}

}  // namespace

Result<Bytes> pdfOf(const Sheets& sheets, const std::string& title)
{
    PdfFile file;
    const int catalog = file.reserve();
    const int tree = file.reserve();
    const int info = file.reserve();
    file.write(catalog,
               "<< /Type /Catalog /Pages " + reference(tree) +
                   " /ViewerPreferences << /PrintScaling /None /DisplayDocTitle true >> >>");
    file.write(info, "<< /Title <feff" + utf16Hex(title) + "> >>");

    std::string fonts = " /Resources << /Font << ";
    for (const auto& [face, glyphs] : usedFaces(sheets)) {
        SPILE_ASSIGN(font, writeFont(file, face, glyphs));
        fonts.append(fontName(face)).append(" ").append(reference(font)).append(" ");
    }
    fonts += ">> >>";
    std::string kids;
    for (const Page& page : sheets.pages) {
        const int leaf = writePage(file, contentOf(page, sheets.pageHeight),
                                   "/Parent " + reference(tree) + boxOf(sheets) + fonts);
        kids.append(reference(leaf)).append(" ");
    }
    file.write(tree, "<< /Type /Pages /Count " + std::to_string(sheets.pages.size()) + " /Kids [" +
                         kids + "] >>");
    return file.finish(catalog, info);
}

}  // namespace spile::labels
