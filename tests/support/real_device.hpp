#pragma once

#include "core/cellar/cellar.hpp"
#include "platform/system/disk_file_system.hpp"
#include "platform/system/file_key_store.hpp"
#include "platform/system/system_clock.hpp"
#include "platform/system/system_random.hpp"

#include <memory>
#include <utility>

namespace spile::support {

/// A device on the real disk with real keys and clock, since a process that is killed must leave
/// them there.
struct RealDevice {
    explicit RealDevice(const Path& folder)
        : keys(files, folder / "keys"), cellarFolder(folder / "a.cellar")
    {
    }

    system::SystemClock clock;
    system::SystemRandom random;
    Uuid7Source ids{clock, random};
    system::DiskFileSystem files;
    system::FileKeyStore keys;
    Path cellarFolder;

    [[nodiscard]] Outside outside() { return {clock, files, random, ids, keys}; }
    [[nodiscard]] Result<std::unique_ptr<cellar::Cellar>> openOrMake();
};

/// Return the full barrel that a killed process works on and its taster; made on the first run that
/// gets so far.
[[nodiscard]] Result<std::pair<SubjectId, SubjectId>> barrelAndPerson(cellar::Cellar& cellar);

}  // namespace spile::support
