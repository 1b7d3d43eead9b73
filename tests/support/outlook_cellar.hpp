#pragma once

#include "core/cellar/acts/filling.hpp"
#include "core/cellar/acts/registering.hpp"
#include "core/cellar/acts/tasting.hpp"
#include "tests/support/small_cellar.hpp"

#include <gtest/gtest.h>

/// A cellar whose barrels are tasted month by month, for tests of the outlook.
namespace spile::support {

class OutlookCellar {
public:
    OutlookCellar() : device(7), cellar(device.newCellar()), own(fillSmallCellar(*cellar)) {}

    TestDevice device;
    std::unique_ptr<cellar::Cellar> cellar;
    SmallCellar own;

    [[nodiscard]] Instant now() { return device.clock.now(); }
    void pass(std::chrono::hours time) { device.clock.pass(time); }

    /// A barrel filled now with the batch.
    SubjectId filledBarrel(int fillsBefore = 0)
    {
        cellar::NewBarrel barrel;
        barrel.spirit = "bourbon";
        barrel.size = litres(200);
        barrel.fillsBefore = fillsBefore;
        const auto made = cellar::registerBarrel(*cellar, barrel);
        EXPECT_TRUE(made);
        cellar::NewFill fill;
        fill.barrel = made->barrel;
        fill.batch = own.batch;
        fill.volume = litres(195);
        EXPECT_TRUE(cellar::recordFill(*cellar, fill));
        return made->barrel;
    }

    EntryId taste(const SubjectId& barrel, const std::map<std::string, cellar::Score>& scores,
                  const std::map<std::string, int>& faults = {})
    {
        cellar::NewTaste taste;
        taste.barrel = barrel;
        taste.scores = scores;
        taste.faults = faults;
        taste.circumstance.person = own.person;
        const auto made = cellar::recordTaste(*cellar, taste);
        EXPECT_TRUE(made) << (made ? "" : textOf(made.error()));
        return made.value_or(EntryId());
    }

    void wish(const SubjectId& barrel, const EntryId& taste, const std::string& attribute,
              cellar::Direction direction)
    {
        EXPECT_TRUE(cellar::recordDirections(*cellar, barrel, taste, {{attribute, direction}}));
    }
};

}  // namespace spile::support
