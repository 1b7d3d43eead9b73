#include "tests/support/real_device.hpp"

#include "core/cellar/acts/filling.hpp"
#include "core/cellar/queries.hpp"

namespace spile::support {

using cellar::Cellar;

Result<std::unique_ptr<Cellar>> RealDevice::openOrMake()
{
    auto made = Cellar::create(cellarFolder, outside(), {"Test cellar", "7K2Q", "Desk"});
    return made ? std::move(made) : Cellar::open(cellarFolder, outside());
}

Result<std::pair<SubjectId, SubjectId>> barrelAndPerson(Cellar& cellar)
{
    SPILE_ASSIGN(people, cellar::named(cellar.database(), "person", {}, 1));
    SPILE_ASSIGN(rows, cellar::barrels(cellar.database(), {}, 1));
    if (people.empty()) {
        SPILE_TRY(cellar::registerPerson(cellar, "Ada"));
        return barrelAndPerson(cellar);
    }
    if (rows.empty()) {
        SPILE_TRY(cellar::registerBarrel(cellar, {.mark = "Rum 3"}));
        return barrelAndPerson(cellar);
    }
    if (!rows.front().filled) {
        SPILE_TRY(
            cellar::recordFill(cellar, {.barrel = rows.front().barrel, .volume = litres(190)}));
    }
    return std::pair(rows.front().barrel, people.front().subject);
}

}  // namespace spile::support
