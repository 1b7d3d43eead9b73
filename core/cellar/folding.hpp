#pragma once

#include <string>
#include <string_view>

/// How words are compared when people look for something: by their letters alone.
namespace spile::cellar {

/// Return `text` in lower case and without accents, for UTF-8 in ASCII, Latin-1 and Latin
/// Extended-A; "ß" is "ss", "æ" is "ae". Combining accents are left out. All else stays as it is.
///
/// Source    Unicode 15.0, blocks Latin-1 Supplement and Latin Extended-A: the base letters of the
///           names of the characters.
[[nodiscard]] std::string folded(std::string_view text);

/// Return a key that sorts barrels as brewers do, by its bytes: by the mark, in which numbers count
/// as numbers ("Rum 3" before "Rum 12", "Rum 03" beside "Rum 3") and letters are folded; then by
/// the code. A barrel without a mark comes first.
[[nodiscard]] std::string naturalKey(std::string_view mark, std::string_view code);

}  // namespace spile::cellar
