#include "demo/cellar/world.hpp"

#include "core/cellar/acts/exchanging.hpp"
#include "core/cellar/checking.hpp"
#include "core/cellar/join_code.hpp"
#include "core/picture/encode.hpp"
#include "core/scan/barrel_code.hpp"
#include "demo/cellar/history.hpp"
#include "demo/cellar/invented.hpp"
#include "demo/pictures/head.hpp"
#include "demo/pictures/sample.hpp"

#include <algorithm>
#include <cmath>

namespace spile::demo {

namespace {

constexpr int jpegQuality = 82;
constexpr double daysPerMonth = 30.44;

}  // namespace

World::World(FileSystem& files, const Path& deskFolder, const Path& phonesFolder,
             std::uint64_t seed)
    : files_(files),
      phonesFolder_(phonesFolder),
      desk_(files, deskFolder, "Desk", seed * 8 + 1, *fromIso(start)),
      ada_(files, phonesFolder / "ada.cellar", "Ada's phone", seed * 8 + 2, *fromIso(start)),
      kim_(files, phonesFolder / "kim.cellar", "Kim's phone", seed * 8 + 3, *fromIso(start)),
      chance_(seed * 8 + 4)
{
}

void World::pass(Milliseconds time)
{
    for (Device* device : {&desk_, &ada_, &kim_}) {
        device->clock.pass(time);
    }
}

void World::moveTo(int day, Milliseconds timeOfDay)
{
    const Instant midnight = std::chrono::floor<std::chrono::days>(*fromIso(start));
    const Instant wanted = midnight + std::chrono::days(day) + timeOfDay;
    const Milliseconds ahead = wanted - desk_.clock.now();
    if (ahead > Milliseconds(0)) {
        pass(ahead);
    }
}

Result<Sha256> World::stateRoot() const { return cellar::stateRoot(*desk_.cellar); }

Result<Bytes> World::samplePicture(const InventedBarrel& barrel, int width, int height)
{
    SampleScene scene;
    scene.seed = chance_.next();
    scene.colour_ebc = barrel.beer ? beers.at(*barrel.beer).colourEbc : 60.0;
    scene.width = width;
    scene.height = height;
    return picture::encodeJpeg(renderSample(scene), jpegQuality);
}

Result<Bytes> World::headPicture(const InventedBarrel& barrel, int width, int height)
{
    HeadScene scene;
    scene.labelText = scan::labelText({desk_.cellar->identity().mark, barrel.code});
    scene.shownCode = scan::shown(barrel.code);
    scene.mark = barrel.mark;
    scene.seed = chance_.next();
    scene.width = width;
    scene.height = height;
    return picture::encodeJpeg(renderHead(scene), jpegQuality);
}

int World::scoreOf(const InventedBarrel& barrel, std::size_t course, std::size_t taster, int day)
{
    const InventedCourse& c = courses.at(course);
    const double months = barrel.strength * (day - barrel.filledOnDay.value_or(0)) / daysPerMonth;
    const double level = c.end + (c.start - c.end) * std::exp(-months / c.months);
    const double bias = 0.4 * (static_cast<double>(taster) - 1.0);
    return static_cast<int>(std::clamp(std::lround(level + bias + chance_.normal(0, 0.7)), 1L, 9L));
}

Result<void> World::letJoin(Device& phone)
{
    const Path file = phonesFolder_ / "start.spile";
    SPILE_TRY(cellar::handOut(*desk_.cellar, file, std::nullopt));
    SPILE_ASSIGN(joined, cellar::Cellar::join(phone.folder, phone.outside(), file, {}));
    phone.cellar = std::move(joined);
    const std::string code = cellar::joinCode(phone.cellar->ledger().device());
    SPILE_TRY(cellar::admit(*desk_.cellar, code, phone.name, ledger::DeviceRole::Phone));
    return files_.remove(file);
}

Result<void> World::exchange()
{
    const Path file = phonesFolder_ / "exchange.spile";
    const DeviceId desk = desk_.cellar->ledger().device();
    for (Device* phone : {&ada_, &kim_}) {
        SPILE_TRY(cellar::handOut(*phone->cellar, file, desk));
        SPILE_TRY(cellar::takeIn(*desk_.cellar, file));
        SPILE_TRY(files_.remove(file));
    }
    for (Device* phone : {&ada_, &kim_}) {
        SPILE_TRY(cellar::handOut(*desk_.cellar, file, phone->cellar->ledger().device()));
        SPILE_TRY(cellar::takeIn(*phone->cellar, file));
        SPILE_TRY(files_.remove(file));
    }
    return {};
}

Result<void> World::begin()
{
    SPILE_ASSIGN(made, cellar::Cellar::create(
                           desk_.folder, desk_.outside(),
                           {std::string(cellarName), std::string(cellarMark), desk_.name}));
    desk_.cellar = std::move(made);
    SPILE_TRY(files_.makeFolder(phonesFolder_));
    for (const std::string_view name : demo::people) {
        SPILE_ASSIGN(person, cellar::registerPerson(*desk_.cellar, std::string(name)));
        people_.push_back(person);
    }
    SPILE_ASSIGN(vault, cellar::registerPlace(*desk_.cellar, "Vault"));
    vault_ = vault;
    for (const char* rack : {"Rack 1", "Rack 2", "Rack 3", "Rack 4"}) {
        SPILE_ASSIGN(place, cellar::registerPlace(*desk_.cellar, rack, vault));
        places_.push_back(place);
    }
    for (const InventedBeer& beer : beers) {
        SPILE_ASSIGN(target,
                     cellar::registerTarget(*desk_.cellar, std::string(beer.name) + ", ready",
                                            {{"vanilla", 5, 7}, {"oak", 4, 6}, {"acidity", 1, 3}}));
        targets_.push_back(target);
    }
    batches_.resize(beers.size());
    SPILE_TRY(letJoin(ada_));
    return letJoin(kim_);
}

Result<void> World::live(const Job& job)
{
    SPILE_TRY(begin());
    History history(*this);
    for (int day = 0; day < days; ++day) {
        SPILE_TRY(history.live(day));
        if (!job.advance(static_cast<std::uint64_t>(day), days)) {
            return fail(ErrorCode::Cancelled, "demo");
        }
    }
    return exchange();
}

Result<std::unique_ptr<World>> makeWorld(FileSystem& files, const Path& deskFolder,
                                         const Path& phonesFolder, std::uint64_t seed,
                                         const Job& job)
{
    auto world = std::make_unique<World>(files, deskFolder, phonesFolder, seed);
    SPILE_TRY(world->live(job));
    return world;
}

}  // namespace spile::demo
