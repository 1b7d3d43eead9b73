#pragma once

#include "core/base/bytes.hpp"

#include <memory>
#include <string>

/// SQLite files in memory that can be put back to an earlier moment under open connections.
namespace spile::support {

/// A database as it was at one moment: its file and its write-ahead log. Shared until one is
/// written, so that taking an image and putting it back copies nothing.
struct DatabaseImage {
    std::shared_ptr<Bytes> file, log;
};

/// The name to open databases with. Registers the file layer at the first call.
///
/// Threads   one.
[[nodiscard]] std::string memoryVfs();

/// Return the database at `path` as it is now; empty if there is none. Requires no transaction on
/// it.
[[nodiscard]] DatabaseImage imageOf(const std::string& path);

/// Make the database at `path` what `image` says. A connection to it that is open goes on: at its
/// next transaction it finds that all may have changed. Requires no transaction on it, and that
/// the tables of both are the same.
void putBack(const std::string& path, const DatabaseImage& image);

}  // namespace spile::support
