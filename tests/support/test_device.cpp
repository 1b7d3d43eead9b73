#include "tests/support/test_device.hpp"

#include <stdexcept>

namespace spile::support {

namespace {

std::unique_ptr<cellar::Cellar> orThrow(Result<std::unique_ptr<cellar::Cellar>> made)
{
    if (!made) {
        throw std::runtime_error(made.error().subject + ": " + made.error().value + " " +
                                 made.error().limit);
    }
    return std::move(*made);
}

}  // namespace

std::unique_ptr<cellar::Cellar> TestDevice::newCellar()
{
    return orThrow(
        cellar::Cellar::create(cellarFolder(), outside(), {"Test cellar", "7K2Q", "Desk"}, vfs));
}

std::unique_ptr<cellar::Cellar> TestDevice::reopen()
{
    return orThrow(cellar::Cellar::open(cellarFolder(), outside(), vfs));
}

std::unique_ptr<cellar::Cellar> TestDevice::join(const Path& dayFile)
{
    return orThrow(cellar::Cellar::join(cellarFolder(), outside(), dayFile, {}, vfs));
}

}  // namespace spile::support
