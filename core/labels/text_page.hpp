#pragma once

#include "core/labels/sheets.hpp"

#include <string>
#include <vector>

/// One page of words with one symbol, to be put away on paper.
namespace spile::labels {

enum class Paper : std::uint8_t { A4, Letter };

struct TextPage {
    Paper paper = Paper::A4;
    std::string title;
    std::vector<std::string> above;  ///< paragraphs, UTF-8
    std::string symbol;              ///< the text of a QR symbol at level H
    std::vector<std::string> codes;  ///< lines below the symbol, in the face of codes
    std::vector<std::string> below;  ///< paragraphs
};

inline constexpr double textPageModule = 1.5;  ///< mm: a camera reads it from 0.7 m, a scanner too

/// Lay the page out: one Page, its symbol that of a label without words.
///
/// Shape     paragraphs are broken at spaces, and within a word that is wider than the page.
/// Errors    Malformed if the symbol cannot be made; TooLarge if the words do not fit on the page.
///           Neither names the symbol's text, which may be secret.
[[nodiscard]] Result<Sheets> layOut(const TextPage& page);

}  // namespace spile::labels
