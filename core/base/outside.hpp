#pragma once

#include "core/base/clock.hpp"
#include "core/base/file_system.hpp"
#include "core/base/id_source.hpp"
#include "core/base/key_store.hpp"
#include "core/base/random.hpp"

namespace spile::inline base {

/// Everything core asks of the machine it runs on. Holds nothing: all must outlive its users.
struct Outside {
    const Clock& clock;
    FileSystem& files;
    Random& random;
    IdSource& ids;
    KeyStore& keys;
};

}  // namespace spile::inline base
