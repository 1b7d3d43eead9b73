#include "demo/cellar/growing.hpp"

#include "core/base/simulated.hpp"
#include "core/cellar/acts/registering.hpp"
#include "core/cellar/acts/tasting.hpp"
#include "core/cellar/queries.hpp"
#include "core/scan/barrel_code.hpp"
#include "demo/cellar/invented.hpp"

#include <algorithm>
#include <cmath>

namespace spile::demo {

namespace {

using std::chrono::days;

constexpr std::size_t barrelsAtOnce = 250;
constexpr std::size_t firstNumber = 101;  // in the marks, after those of the invented history
constexpr int firstTastingDay = 150;
constexpr int tastingEveryDays = 35;
constexpr int tastingsMost = 6;

class Growing {
public:
    Growing(cellar::Cellar& cellar, std::uint64_t seed)
        : cellar_(cellar), chance_(seed), now_(cellar.outside().clock.now())
    {
    }

    Result<void> begin()
    {
        SPILE_ASSIGN(person, cellar::registerPerson(cellar_, "Ilse"));
        SPILE_ASSIGN(hall, cellar::registerPlace(cellar_, "Long hall"));
        person_ = person;
        hall_ = hall;
        for (const InventedBeer& beer : beers) {
            SPILE_ASSIGN(batch, cellar::registerBatch(cellar_, {std::string(beer.name)}));
            batches_.push_back(batch);
        }
        return {};
    }

    Result<void> grow(std::size_t from, std::size_t to)
    {
        SPILE_ASSIGN(change, cellar_.ledger().change());
        for (std::size_t number = from; number < to; ++number) {
            SPILE_TRY(addBarrel(change, number));
        }
        return change.commit();
    }

private:
    static Result<EntryId> record(ledger::Change& change, Result<ledger::NewEntry> entry)
    {
        SPILE_TRY(entry);
        return change.record(std::move(*entry));
    }

    [[nodiscard]] ledger::EventTime daysAgo(int count) const { return {now_ - days(count), 0}; }

    Result<void> addBarrel(ledger::Change& change, std::size_t number)
    {
        const InventedSpirit& spirit = spirits.at(number % spirits.size());
        const SubjectId barrel = cellar_.outside().ids.next();
        cellar::FieldSet fields;
        fields.set(cellar::Field::Code,
                   scan::randomCode(cellar_.identity().mark, cellar_.outside().random));
        fields.setText(cellar::Field::Mark,
                       std::string(spirit.shortName) + " " +
                           std::to_string(firstNumber + number / spirits.size()));
        fields.setText(cellar::Field::Spirit, std::string(spirit.spirit));
        fields.setText(cellar::Field::Wood, std::string(spirit.wood));
        fields.set(cellar::Field::Place, hall_);
        fields.set(cellar::Field::FillsBefore, std::int64_t{0});
        SPILE_TRY(fields.setVolume(cellar::Field::SizeMl, litres(spirit.sizeLitres)));
        SPILE_TRY(record(
            change, cellar::newEntry("barrel", barrel, std::move(fields), daysAgo(demo::days))));
        constexpr std::size_t emptyEvery = 6;
        return number % emptyEvery == 0 ? Result<void>() : fill(change, barrel, spirit);
    }

    Result<void> fill(ledger::Change& change, const SubjectId& barrel, const InventedSpirit& spirit)
    {
        const int age = 1 + static_cast<int>(chance_.below(demo::days - 1));
        cellar::FieldSet fields({{}, person_, {}});
        fields.set(cellar::Field::Batch, batches_.at(chance_.below(beers.size())));
        SPILE_TRY(fields.setVolume(cellar::Field::VolumeMl, litres(0.97 * spirit.sizeLitres)));
        SPILE_TRY(
            record(change, cellar::newEntry("fill", barrel, std::move(fields), daysAgo(age))));
        cellar::FieldSet gauge({{}, person_, {}});
        SPILE_TRY(gauge.setVolume(cellar::Field::VolumeMl,
                                  litres(spirit.sizeLitres * (0.97 - 0.0001 * age))));
        gauge.setText(cellar::Field::GaugeMethod, "dip");
        SPILE_TRY(
            record(change, cellar::newEntry("gauge", barrel, std::move(gauge), daysAgo(age / 2))));
        for (int day = firstTastingDay, count = 0; day < age && count < tastingsMost;
             day += tastingEveryDays, ++count) {
            SPILE_TRY(taste(change, barrel, day, age));
        }
        return {};
    }

    Result<void> taste(ledger::Change& change, const SubjectId& barrel, int day, int age)
    {
        constexpr double daysPerMonth = 30.44;
        cellar::NewTaste taste;
        taste.barrel = barrel;
        taste.circumstance = {daysAgo(age - day), person_, {}};
        for (const InventedCourse& course : courses) {
            const double level = course.end + (course.start - course.end) *
                                                  std::exp(-day / daysPerMonth / course.months);
            const long score = std::lround(level + chance_.normal(0, 0.7));
            taste.scores[std::string(course.attribute)] =
                static_cast<int>(std::clamp(score, 1L, 9L));
        }
        SPILE_TRY(record(change, cellar::tasteEntry(taste)));
        return {};
    }

    cellar::Cellar& cellar_;
    SeededRandom chance_;
    Instant now_;
    SubjectId person_, hall_;
    std::vector<SubjectId> batches_;
};

}  // namespace

Result<void> growCellar(cellar::Cellar& cellar, std::size_t barrels, std::uint64_t seed)
{
    Growing growing(cellar, seed);
    SPILE_TRY(growing.begin());
    for (std::size_t done = 0; done < barrels; done += barrelsAtOnce) {
        SPILE_TRY(growing.grow(done, std::min(done + barrelsAtOnce, barrels)));
    }
    return {};
}

}  // namespace spile::demo
