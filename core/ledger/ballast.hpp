#pragma once

#include "core/base/file_system.hpp"
#include "core/base/job.hpp"
#include "core/base/random.hpp"

/// Room on the disk that is kept for the day when there is none left: a file in the cellar's folder
/// that is given up when a record finds the disk full, so that it and those after it are saved, and
/// the day file can go out. A photo that finds no room does not take it.
namespace spile::ledger {

inline constexpr std::uint64_t ballastBytes = std::uint64_t{32} << 20U;
/// It is made only while so much is free, so that it does not fill the disk itself.
inline constexpr std::uint64_t freeForBallast = 4 * ballastBytes;

/// Make it, if it is not there and there is room; of random bytes, which no file system packs.
///
/// Errors    Cancelled; those of FileSystem, but no room is no error. Nothing is left of it then.
[[nodiscard]] Result<void> keepBallast(FileSystem& files, Random& random, const Path& folder,
                                       const Job& job = {});

/// Whether it was kept for what `error` tells: records that found the disk full. Photos do not get
/// it, and a file on another disk would not.
[[nodiscard]] bool ballastHelps(const Error& error);

/// Give it up. Return whether that made room.
[[nodiscard]] bool giveUpBallast(FileSystem& files, const Path& folder);

}  // namespace spile::ledger
