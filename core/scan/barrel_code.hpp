#pragma once

#include "core/base/random.hpp"
#include "core/base/result.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// The code on a barrel's head.
///
/// A cellar has a mark of 4 characters; a barrel code has 6: a serial of 5 and a check character,
/// ISO/IEC 7064 MOD 37,36 over mark and serial. None of the ten is I, L, O or U; serials whose
/// check character would be one of these are skipped. The QR on the label holds "S1", the mark
/// and the code: 12 characters. People see "7K2-QFM".
namespace spile::scan {

/// The characters of marks and codes: 0-9 and A-Z without I, L, O, U.
inline constexpr std::string_view codeAlphabet = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";

/// What a label says: which cellar, which barrel. Both valid, upper case, check verified.
struct LabelText {
    std::string cellarMark;  // 4 characters
    std::string code;        // 6 characters

    friend bool operator==(const LabelText&, const LabelText&) = default;
};

/// Return the check character that makes `text` valid: any of 0-9, A-Z.
///
/// Requires  `text` to hold only 0-9, A-Z.
/// Limits    finds every single wrong character, and nearly every swap of two neighbours.
/// Source    ISO/IEC 7064:2003, hybrid system MOD 37,36.
[[nodiscard]] char checkCharacter(std::string_view text);

/// Return a cellar mark of 4 random characters.
[[nodiscard]] std::string randomMark(Random& random);
/// Return a code with a random serial for the cellar `mark`. Requires a valid mark.
[[nodiscard]] std::string randomCode(std::string_view mark, Random& random);

[[nodiscard]] bool isMark(std::string_view text);
/// Whether `code` is 6 characters of the alphabet whose check agrees with `mark`.
[[nodiscard]] bool isCode(std::string_view mark, std::string_view code);

/// Return "7K2-QFM" for "7K2QFM".
[[nodiscard]] std::string shown(std::string_view code);
/// Return the text of the label's QR: "S1", mark, code.
[[nodiscard]] std::string labelText(const LabelText& label);
/// Read the text of a label's QR. None if it is not exactly one, check included.
[[nodiscard]] std::optional<LabelText> parseLabelText(std::string_view text);

/// Bring what a person typed to the form of a code: upper case, without spaces and hyphens,
/// I and L as 1, O as 0, U as V. Not checked.
[[nodiscard]] std::string tidied(std::string_view typed);

/// Read a typed barrel code of the cellar `mark`.
///
/// Errors    Malformed if, tidied, it has not 6 characters of the alphabet or its check fails.
[[nodiscard]] Result<std::string> parseTyped(std::string_view mark, std::string_view typed);

/// Return the valid codes that one slip away from `typed` could have been meant: one character
/// wrong, missing or too many, or two neighbours swapped. Without `typed` itself, sorted; at most a
/// dozen, which the caller narrows to those the cellar has.
[[nodiscard]] std::vector<std::string> nearCodes(std::string_view mark, std::string_view typed);

}  // namespace spile::scan
