#pragma once

#include "core/base/id_source.hpp"
#include "core/base/outside.hpp"
#include "core/base/simulated.hpp"
#include "core/cellar/cellar.hpp"
#include "platform/system/file_key_store.hpp"

#include <memory>
#include <string>

namespace spile::demo {

/// A phone or desk of the invented brewery: a cellar folder of its own on the real disk, with a
/// clock, ids and keys that follow from the seed alone.
struct Device {
    Device(FileSystem& disk, Path cellarFolder, std::string deviceName, std::uint64_t seed,
           Instant beginning)
        : files(disk),
          folder(std::move(cellarFolder)),
          name(std::move(deviceName)),
          clock(beginning),
          random(seed),
          keys(disk, folder)
    {
    }

    FileSystem& files;
    Path folder;
    std::string name;
    SimulatedClock clock;
    SeededRandom random;
    Uuid7Source ids{clock, random};
    system::FileKeyStore keys;
    std::unique_ptr<cellar::Cellar> cellar;

    [[nodiscard]] Outside outside() { return {clock, files, random, ids, keys}; }
};

}  // namespace spile::demo
