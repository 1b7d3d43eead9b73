#include "demo/cellar/history.hpp"

#include "core/cellar/acts/drawing.hpp"
#include "core/cellar/acts/filling.hpp"
#include "core/cellar/acts/photographing.hpp"
#include "core/cellar/acts/tasting.hpp"
#include "core/cellar/acts/tending.hpp"
#include "demo/cellar/invented.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace spile::demo {

using namespace std::chrono_literals;

namespace {

constexpr std::size_t barrelCount = 36;
constexpr std::size_t barrelsADay = 6;
constexpr std::size_t fullOnArrival = 3;  // the last ones: filled by somebody else, long ago
constexpr std::size_t barrelsABatch = 7;
constexpr int fillAfterBrewing = 35;
constexpr int firstTasting = 150;
constexpr int tastingEvery = 35;
constexpr int gaugeEvery = 28;
constexpr int refillMost = 6;
constexpr int barrelsInLot = 2;

}  // namespace

cellar::Circumstance History::by(std::size_t person, std::string note) const
{
    return {std::nullopt, world_.people().at(person), std::move(note)};
}

// Ada and Kim have their own phones; Tomas uses Kim's.
Device& History::phoneOf(std::size_t person) { return person == 0 ? world_.ada_ : world_.kim_; }

Result<void> History::live(int day)
{
    world_.moveTo(day, 8h);
    SPILE_TRY(receiveBarrels(day));
    SPILE_TRY(brew(day));
    SPILE_TRY(readAir(day));
    for (InventedBarrel& barrel : world_.barrels_) {
        SPILE_TRY(look(barrel, day));
    }
    SPILE_TRY(tendLot(day));
    constexpr int exchangeEvery = 14;
    return day % exchangeEvery == exchangeEvery - 1 ? world_.exchange() : Result<void>();
}

// Once in four weeks: warmest and driest in summer.
Result<void> History::readAir(int day)
{
    if (day % gaugeEvery != 0) {
        return {};
    }
    constexpr double daysAYear = 365.25;
    constexpr double beginsOn = 244;  // the first day is the first of September
    const double season = std::cos(2 * std::numbers::pi * (beginsOn + day - 205) / daysAYear);
    const double humidity =
        std::round((0.66 - 0.05 * season + world_.chance_.normal(0, 0.01)) * 100) / 100;
    return cellar::recordClimate(
               *world_.kim_.cellar,
               {world_.vault_, celsius(std::round((15 + 3 * season) * 2) / 2), humidity, by(2)})
        .map([](const EntryId&) {});
}

Result<void> History::receiveBarrels(int day)
{
    for (std::size_t i = 0; i < barrelsADay && world_.barrels_.size() < barrelCount && day % 2 == 0;
         ++i) {
        const std::size_t number = world_.barrels_.size();
        SPILE_TRY(number < barrelCount - fullOnArrival ? receiveBarrel(number)
                                                       : receiveFull(number));
        world_.pass(10min);
    }
    return {};
}

Result<void> History::receiveBarrel(std::size_t number)
{
    const InventedSpirit& spirit = spirits.at(number % spirits.size());
    InventedBarrel made;
    made.spirit = number % spirits.size();
    made.mark = std::string(spirit.shortName) + " " + std::to_string(number / spirits.size() + 1);
    made.sizeLitres = spirit.sizeLitres + std::round(world_.chance_.normal(0, 2));
    made.strength = world_.chance_.normal(1.0, 0.18);
    cellar::NewBarrel barrel;
    barrel.mark = made.mark;
    barrel.spirit = spirit.spirit;
    barrel.wood = spirit.wood;
    barrel.charLevel = spirit.charLevel;
    barrel.size = litres(made.sizeLitres);
    barrel.fillsBefore = number % 4 == 3 ? 1 : 0;
    barrel.emptied = world_.desk_.clock.now() - std::chrono::days(20 + world_.chance_.below(40));
    barrel.tare = kilograms(spirit.tareKg + std::round(world_.chance_.normal(0, 1)));
    barrel.place = world_.places_.at(number % world_.places_.size());
    SPILE_ASSIGN(registered, cellar::registerBarrel(*world_.desk_.cellar, barrel));
    made.barrel = registered.barrel;
    made.code = registered.code;
    if (number % 3 == 0) {
        SPILE_ASSIGN(picture, world_.headPicture(made, 800, 600));
        SPILE_TRY(cellar::recordPhoto(*world_.desk_.cellar,
                                      {made.barrel, picture, "head", {}, by(number % 3)}));
    }
    world_.barrels_.push_back(made);
    return {};
}

// Bought full, with a month chalked on the head and nothing else known.
Result<void> History::receiveFull(std::size_t number)
{
    InventedBarrel made;
    made.mark = "Found " + std::to_string(number - (barrelCount - fullOnArrival) + 1);
    cellar::NewBarrel barrel;
    barrel.mark = made.mark;
    cellar::FullSince since;
    since.since = {*fromIso("2025-03-01"), 0};
    barrel.fullSince = since;
    SPILE_ASSIGN(registered, cellar::registerBarrel(*world_.desk_.cellar, barrel));
    made.barrel = registered.barrel;
    made.code = registered.code;
    world_.barrels_.push_back(made);
    return {};
}

Result<void> History::brew(int day)
{
    for (std::size_t i = 0; i < beers.size(); ++i) {
        const InventedBeer& beer = beers.at(i);
        if (day == beer.brewedOnDay) {
            SPILE_ASSIGN(
                batch, cellar::registerBatch(
                           *world_.desk_.cellar,
                           {std::string(beer.name), world_.desk_.clock.now(), world_.targets_.at(i),
                            beer.specificGravity, beer.alcoholByVolume}));
            world_.batches_.at(i) = batch;
        }
        if (day == beer.brewedOnDay + fillAfterBrewing) {
            SPILE_TRY(fill(i, day));
        }
    }
    return {};
}

Result<void> History::fill(std::size_t beer, int day)
{
    for (std::size_t i = 0; i < barrelsABatch && nextToFill_ < barrelCount - fullOnArrival;
         ++i, ++nextToFill_) {
        InventedBarrel& barrel = world_.barrels_.at(nextToFill_);
        const InventedBeer& what = beers.at(beer);
        SPILE_TRY(cellar::recordFill(*world_.ada_.cellar, {barrel.barrel,
                                                           world_.batches_.at(beer),
                                                           litres(0.97 * barrel.sizeLitres),
                                                           what.alcoholByVolume,
                                                           {},
                                                           by(0)}));
        barrel.beer = beer;
        barrel.filledOnDay = day;
        world_.pass(25min);
    }
    return {};
}

Result<void> History::look(InventedBarrel& barrel, int day)
{
    if (!barrel.filledOnDay) {
        return {};
    }
    const int age = day - *barrel.filledOnDay;
    if (age == 1 || age == 3 || age == 7) {
        const bool weeps = age == 1 && world_.chance_.below(8) == 0;
        SPILE_TRY(cellar::recordCheck(
            *world_.kim_.cellar, {barrel.barrel, weeps ? "weeping stave" : "dry", !weeps, by(1)}));
    }
    if (age > 0 && age % gaugeEvery == 0) {
        SPILE_TRY(gauge(barrel, age));
    }
    if (age >= firstTasting && (age - firstTasting) % tastingEvery == 0) {
        SPILE_TRY(taste(barrel, day, age));
        SPILE_TRY(decide(barrel, day, age));
    }
    return {};
}

Result<void> History::gauge(const InventedBarrel& barrel, int age)
{
    const double lost = 0.004 * age / gaugeEvery;
    const double held =
        barrel.sizeLitres * (0.97 - lost) - 0.2 * std::max(0, (age - firstTasting) / tastingEvery);
    cellar::NewGauge gauge;
    gauge.barrel = barrel.barrel;
    gauge.volume = litres(std::round(held * 10) / 10);
    gauge.method = "weight";
    gauge.temperature = celsius(12.5);
    gauge.circumstance = by(2);
    SPILE_TRY(cellar::recordGauge(*world_.kim_.cellar, gauge));
    world_.pass(4min);
    return {};
}

Result<void> History::taste(const InventedBarrel& barrel, int day, int age)
{
    SPILE_TRY(cellar::recordDraw(*world_.ada_.cellar,
                                 {barrel.barrel, millilitres(200), "sample hole", {}, {}, by(0)}));
    const std::size_t second = 1 + world_.chance_.below(2);
    SPILE_TRY(tasteAs(world_.ada_, barrel, 0, day));
    SPILE_TRY(tasteAs(phoneOf(second), barrel, second, day));
    cellar::NewReading reading;
    reading.barrel = barrel.barrel;
    reading.specificGravity = 1.026 + 0.000004 * age;
    reading.ph = 4.35 - 0.0004 * age;
    reading.temperature = celsius(13.0);
    reading.circumstance = by(0);
    SPILE_TRY(cellar::recordReading(*world_.ada_.cellar, reading));
    world_.pass(12min);
    return {};
}

namespace {

// What the brewers would have of an attribute at that score; none if they have no opinion of it.
std::optional<cellar::Direction> wishOf(const InventedCourse& course, int score)
{
    if (course.wantedFrom == 0) {
        return std::nullopt;
    }
    return score < course.wantedFrom ? cellar::Direction::More
           : score > course.wantedTo ? cellar::Direction::TooMuch
                                     : cellar::Direction::Right;
}

}  // namespace

Result<void> History::tasteAs(Device& phone, const InventedBarrel& barrel, std::size_t person,
                              int day)
{
    cellar::Cellar& cellar = *phone.cellar;
    // A finished sheet: the main job taps one, here months of them are made.
    cellar::NewTaste sheet;
    sheet.barrel = barrel.barrel;
    sheet.circumstance = by(person);
    std::map<std::string, cellar::Direction> directions;
    for (std::size_t i = 0; i < courses.size(); ++i) {
        const std::string attribute(courses.at(i).attribute);
        const bool judged = world_.chance_.below(25) != 0;
        const int score = world_.scoreOf(barrel, i, person, day);
        sheet.scores[attribute] = judged ? cellar::Score(score) : std::nullopt;
        sheet.attributeOrder.push_back(attribute);
        if (const auto wish = wishOf(courses.at(i), score)) {
            directions[attribute] = *wish;
        }
    }
    if (world_.chance_.below(40) == 0) {
        sheet.faults["wet cardboard"] = 3;
    }
    sheet.liking = world_.scoreOf(barrel, 0, person, day);
    SPILE_ASSIGN(taste, cellar::recordTaste(cellar, sheet));
    if (person == 0) {
        SPILE_TRY(cellar::recordDirections(cellar, barrel.barrel, taste, directions, by(person)));
        if (world_.chance_.below(3) == 0) {
            SPILE_ASSIGN(picture, world_.samplePicture(barrel, 480, 640));
            SPILE_TRY(
                cellar::recordPhoto(cellar, {barrel.barrel, picture, "colour", taste, by(person)}));
        }
    }
    return {};
}

Result<void> History::decide(InventedBarrel& barrel, int day, int age)
{
    const bool ready = age > firstTasting + 3 * tastingEvery && emptied_ < refillMost;
    cellar::NewVerdict verdict{barrel.barrel, ready ? "ready" : "hold", {}, by(0)};
    SPILE_TRY(cellar::recordVerdict(*world_.desk_.cellar, verdict));
    if (!ready) {
        return {};
    }
    // Emptied at once and refilled with what there is most of.
    world_.pass(1h);
    if (emptied_ < barrelsInLot) {
        SPILE_TRY(moveIntoLot(barrel, day));
    }
    SPILE_TRY(cellar::recordEmpty(
        *world_.desk_.cellar,
        {barrel.barrel, litres(0.92 * barrel.sizeLitres), "refill at once", by(0)}));
    world_.pass(2h);
    const std::size_t beer = beers.size() - 1;
    SPILE_TRY(cellar::recordFill(*world_.desk_.cellar, {barrel.barrel,
                                                        world_.batches_.at(beer),
                                                        litres(0.97 * barrel.sizeLitres),
                                                        {},
                                                        {},
                                                        by(0)}));
    barrel.beer = beer;
    barrel.filledOnDay = day;
    barrel.strength *= 0.7;
    ++emptied_;
    return {};
}

}  // namespace spile::demo
