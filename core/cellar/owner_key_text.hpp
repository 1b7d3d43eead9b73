#pragma once

#include "core/base/key_store.hpp"

#include <array>
#include <string>
#include <string_view>

/// The owner's key as its sheet has it, to be typed or read by a camera.
namespace spile::cellar {

/// Return it in two lines of 28 characters, 7 groups of 4 each: 16 bytes and 2 check characters,
/// as a join code has them; the check of the second line is over the first one too. Secret, as
/// all that is made of it: ledger::wipe().
[[nodiscard]] std::array<std::string, 2> ownerKeyLines(const KeySeed& key);

/// Return the text of the symbol on the sheet: "S3" and the 56 characters, so version 5 at level H.
[[nodiscard]] std::string ownerSymbolText(const KeySeed& key);

/// Whether a text that was read is an owner's key, rightly read or not. It is shown nowhere.
[[nodiscard]] bool isOwnerSymbol(std::string_view text);

/// Read the key: the two lines of the sheet, forgiving as for a barrel's code (scan::tidied), the
/// text of its symbol, or the 64 hexadecimal digits of the file owner.key.
///
/// Errors    Malformed if it is none of them; which line is mistyped, and never what was typed.
[[nodiscard]] Result<KeySeed> parseOwnerKey(std::string_view typed);

}  // namespace spile::cellar
