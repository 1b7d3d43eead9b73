#pragma once

#include "core/base/id_source.hpp"
#include "core/base/outside.hpp"
#include "core/base/simulated.hpp"
#include "core/cellar/cellar.hpp"
#include "platform/system/disk_file_system.hpp"
#include "tests/support/memory_key_store.hpp"
#include "tests/support/temp_folder.hpp"

#include <memory>
#include <string>

namespace spile::support {

/// A phone or desk of a test: its own clock, randomness, keys and folder, all from one seed.
struct TestDevice {
    explicit TestDevice(std::uint64_t seed) : random(seed) {}

    TempFolder folder;
    SimulatedClock clock{*fromIso("2025-09-01T08:00Z")};
    SeededRandom random;
    Uuid7Source ids{clock, random};
    system::DiskFileSystem files;
    MemoryKeyStore keys;
    std::string vfs;  // empty: the system's

    [[nodiscard]] Outside outside() { return {clock, files, random, ids, keys}; }
    [[nodiscard]] Path cellarFolder() const { return folder.path() / "test.cellar"; }

    /// Make a new cellar in this device's folder; the test fails if it cannot be made.
    std::unique_ptr<cellar::Cellar> newCellar();
    /// Open it again.
    std::unique_ptr<cellar::Cellar> reopen();
    /// Join with a day file.
    std::unique_ptr<cellar::Cellar> join(const Path& dayFile);
};

}  // namespace spile::support
