#include "core/labels/pdf_fonts.hpp"

#include "core/base/sha256.hpp"

#include <algorithm>
#include <set>

namespace spile::labels {

namespace {

void use(const std::vector<TextLine>& lines, UsedFaces& used)
{
    for (const TextLine& line : lines) {
        UsedGlyphs& glyphs = used[line.face];
        for (const Glyph& glyph : line.shaped.glyphs) {
            glyphs.try_emplace(glyph.id, glyph.text);
        }
    }
}

// Six letters that differ where the glyphs do, as the standard asks of a part of a font.
std::string tagOf(const Bytes& font)
{
    std::string tag;
    constexpr std::size_t letters = 6;
    const Sha256 hash = sha256(font);
    for (const std::uint8_t byte : hash.bytes().first(letters)) {
        tag += static_cast<char>('A' + byte % 26);
    }
    return tag;
}

// From glyph numbers back to characters, so that the words can be searched and copied.
std::string toUnicode(const UsedGlyphs& glyphs)
{
    std::vector<std::string> lines;
    for (const auto& [id, text] : glyphs) {
        if (id != 0 && !text.empty()) {
            lines.push_back("<" + hex4(id) + "> <" + utf16Hex(text) + ">\n");
        }
    }
    std::string map =
        "/CIDInit /ProcSet findresource begin\n12 dict begin\nbegincmap\n"
        "/CIDSystemInfo << /Registry (Adobe) /Ordering (UCS) /Supplement 0 >> def\n"
        "/CMapName /Adobe-Identity-UCS def\n/CMapType 2 def\n"
        "1 begincodespacerange\n<0000> <ffff>\nendcodespacerange\n";
    constexpr std::size_t most = 100;  // in one section
    for (std::size_t from = 0; from < lines.size(); from += most) {
        const std::size_t count = std::min(most, lines.size() - from);
        map += std::to_string(count) + " beginbfchar\n";
        for (std::size_t i = from; i < from + count; ++i) {
            map += lines[i];
        }
        map += "endbfchar\n";
    }
    return map + "endcmap\nCMapName currentdict /CMap defineresource pop\nend\nend";
}

std::string widths(Face face, const UsedGlyphs& glyphs)
{
    std::string text;
    for (const auto& [id, characters] : glyphs) {
        text += std::to_string(id) + " [" + number(advanceOf(face, id)) + "] ";
    }
    return text;
}

}  // namespace

UsedFaces usedFaces(const Sheets& sheets)
{
    UsedFaces used;
    for (const Page& page : sheets.pages) {
        use(page.lines, used);
        for (const PlacedLabel& label : page.labels) {
            use(label.lines, used);
        }
    }
    return used;
}

std::string fontName(Face face) { return "/F" + std::to_string(static_cast<int>(face)); }

Result<int> writeFont(PdfFile& file, Face face, const UsedGlyphs& glyphs)
{
    std::set<std::uint32_t> ids;
    for (const auto& [id, text] : glyphs) {
        ids.insert(id);
    }
    const Bytes subset = subsetOf(face, ids);
    if (subset.empty()) {
        return fail(ErrorCode::Storage, "font", {}, "memory has run out");
    }
    const FaceFacts facts = factsOf(face);
    const std::string name = "/" + tagOf(subset) + "+" + facts.name;
    const int font = file.reserve();
    const int glyphFont = file.reserve();
    const int descriptor = file.reserve();
    const int program = file.reserve();
    const int unicode = file.reserve();
    file.write(font, "<< /Type /Font /Subtype /Type0 /BaseFont " + name +
                         " /Encoding /Identity-H /DescendantFonts [" + reference(glyphFont) +
                         "] /ToUnicode " + reference(unicode) + " >>");
    file.write(glyphFont,
               "<< /Type /Font /Subtype /CIDFontType0 /BaseFont " + name +
                   " /CIDSystemInfo << /Registry (Adobe) /Ordering (Identity) /Supplement 0 >>"
                   " /FontDescriptor " +
                   reference(descriptor) + " /W [" + widths(face, glyphs) + "] >>");
    const auto text = [](int value) { return std::to_string(value); };
    constexpr int boldStem = 140;  // nobody measures it; the standard wants one
    file.write(descriptor,
               "<< /Type /FontDescriptor /FontName " + name + " /Flags 4 /FontBBox [" +
                   text(facts.left) + " " + text(facts.bottom) + " " + text(facts.right) + " " +
                   text(facts.top) + "] /ItalicAngle 0 /Ascent " + text(facts.ascent) +
                   " /Descent " + text(facts.descent) + " /CapHeight " + text(facts.capHeight) +
                   " /StemV " + text(boldStem) + " /FontFile3 " + reference(program) + " >>");
    file.writeStream(program, "/Subtype /CIDFontType0C", asText(subset));
    file.writeStream(unicode, "", toUnicode(glyphs));
    return font;
}

}  // namespace spile::labels
