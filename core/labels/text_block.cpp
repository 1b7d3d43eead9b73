#include "core/labels/text_block.hpp"

#include "core/scan/barrel_code.hpp"

#include <algorithm>

namespace spile::labels {

namespace {

constexpr double codeShare = 0.55;       // of the height, where there is a mark
constexpr double markToCode = 0.75;      // a mark's em is at most this of the code's
constexpr double lineHeight = 1.2;       // of a mark, in ems
constexpr double gapToCode = 0.25;       // in ems of the mark
constexpr double smallestWholeWord = 3;  // mm; below it words are broken
constexpr double shrink = 0.96;

// The words between spaces, and between control characters, which have no place on a label.
std::vector<std::string> wordsOf(const std::string& text)
{
    std::vector<std::string> words(1);
    for (const char c : text) {
        if (static_cast<unsigned char>(c) > ' ') {
            words.back() += c;
        } else if (!words.back().empty()) {
            words.emplace_back();
        }
    }
    if (words.back().empty()) {
        words.pop_back();
    }
    return words;
}

double widthOf(const std::string& text) { return shape(Face::Words, text).width; }

// Take the longest beginning of `word` that is at most `most` ems wide, but at least one of its
// glyphs, off the word and return it.
std::string takeBeginning(std::string& word, double most)
{
    std::string taken;
    for (const Glyph& glyph : shape(Face::Words, word).glyphs) {
        if (!taken.empty() && widthOf(taken + glyph.text) > most) {
            break;
        }
        taken += glyph.text;
    }
    word.erase(0, taken.size());
    return taken;
}

// The lines of at most `most` ems; none if a word is wider, unless words may be broken.
std::optional<std::vector<std::string>> wrapped(const std::vector<std::string>& words, double most,
                                                bool mayBreak)
{
    std::vector<std::string> lines;
    for (std::string word : words) {
        if (!lines.empty() && widthOf(lines.back() + " " + word) <= most) {
            lines.back() += " " + word;
            continue;
        }
        while (widthOf(word) > most) {
            std::string beginning = mayBreak ? takeBeginning(word, most) : std::string();
            if (word.empty() || beginning.empty() || widthOf(beginning) > most) {
                return std::nullopt;
            }
            lines.push_back(std::move(beginning));
        }
        lines.push_back(std::move(word));
    }
    return lines;
}

struct Mark {
    double size = 0;
    std::vector<std::string> lines;
};

// The largest size of at least `smallest` at which the mark goes into that width and height; none
// if there is none.
std::optional<Mark> fitMark(const std::vector<std::string>& words, const Box& box, double largest,
                            double smallest, bool mayBreak)
{
    double size = largest;
    while (size >= smallest) {
        auto lines = wrapped(words, box.width / size, mayBreak);
        if (lines &&
            (static_cast<double>(lines->size()) * lineHeight + gapToCode) * size <= box.height) {
            return Mark{size, std::move(*lines)};
        }
        size *= shrink;
    }
    return std::nullopt;
}

// Whole words if they can be read, else broken ones as large as goes.
Mark fitMark(const std::vector<std::string>& words, const Box& box, double largest)
{
    constexpr double smallestAtAll = 1e-3;
    if (const auto whole = fitMark(words, box, largest, smallestWholeWord, false)) {
        return *whole;
    }
    return fitMark(words, box, largest, smallestAtAll, true).value_or(Mark{});
}

}  // namespace

TextLine lineOf(Face face, std::string text, double left, double baseline, double size)
{
    Shaped shaped = shape(face, text);
    return {face, std::move(text), left, baseline, size, std::move(shaped)};
}

std::vector<std::string> linesOf(const std::string& words, double ems)
{
    return wrapped(wordsOf(words), ems, true).value_or(std::vector<std::string>());
}

std::optional<std::vector<TextLine>> fitText(const std::string& code, const std::string& mark,
                                             const Box& box)
{
    const std::vector<std::string> words = wordsOf(mark);
    TextLine head = lineOf(Face::Code, code, 0, 0, 0);
    // As high as any code may be, so that those of one sheet stand alike.
    static const Shaped highest = shape(Face::Code, scan::codeAlphabet);
    const double inkHeight = highest.inkTop - highest.inkBottom;
    const double share = words.empty() ? 1.0 : codeShare;
    head.size = std::min(box.width / head.shaped.width, box.height * share / inkHeight);
    if (!(head.size >= smallestCode)) {
        return std::nullopt;
    }
    const double codeHeight = inkHeight * head.size;
    const Box rest{0, 0, box.width, box.height - codeHeight};
    const Mark fitted = words.empty() ? Mark{} : fitMark(words, rest, head.size * markToCode);
    const auto markLines = static_cast<double>(fitted.lines.size());
    const double gap = fitted.lines.empty() ? 0 : gapToCode * fitted.size;
    const double used = codeHeight + gap + markLines * lineHeight * fitted.size;

    std::vector<TextLine> lines;
    double top = box.top + (box.height - used) / 2;
    const auto centre = [&box](TextLine& line) {
        line.left = box.left + (box.width - line.shaped.width * line.size) / 2;
    };
    head.baseline = top + highest.inkTop * head.size;
    centre(head);
    lines.push_back(std::move(head));
    top += codeHeight + gap;
    const FaceFacts facts = factsOf(Face::Words);
    const double ascent = facts.ascent / 1000.0;
    const double descent = -facts.descent / 1000.0;
    for (const std::string& text : fitted.lines) {
        const double leading = (lineHeight - ascent - descent) / 2;
        lines.push_back(
            lineOf(Face::Words, text, 0, top + (leading + ascent) * fitted.size, fitted.size));
        centre(lines.back());
        top += lineHeight * fitted.size;
    }
    return lines;
}

}  // namespace spile::labels
