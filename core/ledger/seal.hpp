#pragma once

#include "core/base/file_system.hpp"
#include "core/base/job.hpp"
#include "core/base/random.hpp"
#include "core/base/result.hpp"

#include <string>

/// A day file under a passphrase, for a way that others can read along: a mailbox, a shared folder.
///
/// What is sealed is the whole file, its own signature inside. FORMAT.md has the form: Argon2id
/// makes the key, XChaCha20-Poly1305 in pieces of 64 KiB seals (libsodium's secretstream); a piece
/// that is missing, changed or in another place is found, the last one too.
namespace spile::ledger {

/// Return a passphrase that nobody guesses: five groups of four letters and digits, 100 bits.
[[nodiscard]] std::string newPassphrase(Random& random);

/// Whether a file begins as a sealed one.
///
/// Errors    those of FileSystem.
[[nodiscard]] Result<bool> isSealed(FileSystem& files, const Path& file);

/// Seal `from` as `to`, which must not exist. After any loss of power there is the whole file or
/// none.
///
/// Errors    OutOfRange for an empty passphrase; Cancelled; those of FileSystem. Nothing is left.
[[nodiscard]] Result<void> seal(FileSystem& files, const Path& from, const Path& to,
                                const std::string& passphrase, Random& random, const Job& job);

/// The other way round. Small letters and large, spaces and hyphens are alike in a passphrase that
/// was made by newPassphrase(); any other counts letter by letter.
///
/// Errors    besides: Conflict ("passphrase") if it is not the one; Damaged if the file is cut
///           short, longer or changed; Unsupported for a later form; TooLarge if its key asks for
///           more work than 256 MiB and ten rounds, refused before any of it. Nothing is left.
[[nodiscard]] Result<void> unseal(FileSystem& files, const Path& from, const Path& to,
                                  const std::string& passphrase, const Job& job);

}  // namespace spile::ledger
