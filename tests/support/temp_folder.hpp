#pragma once

#include "core/base/file_system.hpp"

namespace spile::support {

/// A new empty folder of the real disk, deleted with all that is in it by the destructor.
class TempFolder {
public:
    TempFolder();
    ~TempFolder();
    TempFolder(const TempFolder&) = delete;
    TempFolder& operator=(const TempFolder&) = delete;
    TempFolder(TempFolder&&) = delete;
    TempFolder& operator=(TempFolder&&) = delete;

    [[nodiscard]] const Path& path() const { return path_; }

private:
    Path path_;
};

}  // namespace spile::support
