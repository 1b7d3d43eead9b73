#include "tests/support/temp_folder.hpp"

#include <cstdlib>
#include <string>
#include <system_error>

namespace spile::support {

TempFolder::TempFolder()
{
    std::string name = std::filesystem::temp_directory_path() / "spile-test-XXXXXX";
    if (::mkdtemp(name.data()) == nullptr) {
        std::abort();  // without a disk no test of the disk means anything
    }
    path_ = name;
}

TempFolder::~TempFolder()
{
    std::error_code ignored;
    std::filesystem::remove_all(path_, ignored);
}

}  // namespace spile::support
