#include "core/cellar/acts/filling.hpp"
#include "core/cellar/acts/tasting.hpp"
#include "core/cellar/searching.hpp"
#include "tests/support/fleet.hpp"

#include <algorithm>
#include <gtest/gtest.h>
#include <iterator>

namespace spile::cellar {

namespace {

class Searching : public testing::Test {
protected:
    support::Fleet fleet{1};
    Cellar& cellar = fleet.cellar(0);
    SubjectId person = fleet.small().person;

    SubjectId add(const std::string& mark, const std::string& spirit = "rum")
    {
        return registerBarrel(cellar, {.mark = mark, .spirit = spirit})->barrel;
    }
    void fill(const SubjectId& barrel) { ASSERT_TRUE(recordFill(cellar, {.barrel = barrel})); }
    Instant now() { return fleet.at(0).clock.now(); }

    std::vector<std::string> marks(const std::string& text, Which which = Which::All)
    {
        const auto found = searchBarrels(cellar.database(), {text, which, now()}, {}, 1000);
        EXPECT_TRUE(found && found->complete);
        std::vector<std::string> marks;
        for (const BarrelRow& row : found->rows) {
            marks.push_back(row.mark);
        }
        return marks;
    }
    using Marks = std::vector<std::string>;
};

}  // namespace

TEST_F(Searching, FindsByMarkSpiritBeerAndPlace)
{
    const SubjectId cave = *registerPlace(cellar, "Höhle");
    add("Malt 1", "malt whisky");
    ASSERT_TRUE(registerBarrel(cellar, {.mark = "Älteste", .place = cave}));
    EXPECT_EQ(marks(""), (Marks{"Älteste", "Malt 1", "Rum 3"}));
    EXPECT_EQ(marks("altes"), (Marks{"Älteste"}));
    EXPECT_EQ(marks("WHISKY"), (Marks{"Malt 1"}));
    EXPECT_EQ(marks(" night "), (Marks{"Rum 3"}));  // the beer of the small cellar
    EXPECT_EQ(marks("hohle"), (Marks{"Älteste"}));
    EXPECT_EQ(marks("tequila"), Marks{});
}

TEST_F(Searching, FindsByTheCodeHoweverItIsTyped)
{
    const std::string code = fleet.small().code;
    std::string typed = code.substr(0, 3) + "-" + code.substr(3);
    EXPECT_EQ(marks(typed), (Marks{"Rum 3"}));
    EXPECT_EQ(marks(code.substr(0, 3) + " " + code.substr(3)), (Marks{"Rum 3"}));
    std::transform(typed.begin(), typed.end(), typed.begin(),
                   [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
    EXPECT_EQ(marks(typed), (Marks{"Rum 3"}));
    EXPECT_EQ(marks(code.substr(1, 4)), (Marks{"Rum 3"}));
}

TEST_F(Searching, KeepsThoseThatAreAskedFor)
{
    const SubjectId held = add("Held");
    const SubjectId rests = add("Rests");
    add("Empty");
    fill(held);
    fill(rests);
    fleet.at(0).clock.pass(std::chrono::days(8));
    ASSERT_TRUE(recordCheck(cellar, {.barrel = held, .finding = "dry"}));
    ASSERT_TRUE(recordCheck(cellar, {.barrel = rests, .finding = "dry"}));
    ASSERT_TRUE(recordVerdict(cellar, {.barrel = held, .verdict = "hold"}));
    fleet.at(0).clock.pass(std::chrono::days(2));  // "Rum 3" is to be looked at for leaks
    EXPECT_EQ(marks("", Which::Full), (Marks{"Held", "Rests", "Rum 3"}));
    EXPECT_EQ(marks("", Which::Empty), (Marks{"Empty"}));
    EXPECT_EQ(marks("", Which::Held), (Marks{"Held"}));
    EXPECT_EQ(marks("", Which::Resting), (Marks{"Rests"}));
    fleet.at(0).clock.pass(std::chrono::days(200));  // the first tasting is due
    EXPECT_EQ(marks("", Which::Held), Marks{});
    EXPECT_EQ(marks("", Which::Resting), Marks{});
}

TEST_F(Searching, GoesOnWhereThePageBeforeEnded)
{
    constexpr int count = 300;
    for (int i = 0; i < count; ++i) {
        add((i % 3 == 0 ? "Rum " : "Rye ") + std::to_string(100 + i), "brandy");
    }
    Marks found;
    AfterBarrel after;
    int pages = 0;
    for (bool more = true; more; ++pages) {
        const auto page = searchBarrels(cellar.database(), {"rum", Which::All, now()}, after, 17);
        ASSERT_TRUE(page);
        more = !page->complete;
        EXPECT_EQ(page->rows.size() == 17U || page->complete, true);
        after = page->after;
        for (const BarrelRow& row : page->rows) {
            found.push_back(row.mark);
        }
    }
    EXPECT_EQ(pages, 6);
    EXPECT_EQ(found, marks("rum"));
    ASSERT_EQ(found.size(), 101U);
    EXPECT_EQ(found.front(), "Rum 3");
    EXPECT_EQ(found.at(1), "Rum 100");
}

TEST_F(Searching, SaysThatAPageIsTheLastOneWhenItIsJustFull)
{
    add("Rum 4");
    const auto all = searchBarrels(cellar.database(), {"", Which::All, now()}, {}, 2);
    EXPECT_EQ(all->rows.size(), 2U);
    EXPECT_TRUE(all->complete);
    EXPECT_FALSE(searchBarrels(cellar.database(), {"", Which::All, now()}, {}, 1)->complete);
}

TEST_F(Searching, StopsWhenItIsAskedTo)
{
    for (int i = 0; i < 70; ++i) {
        add("Rye " + std::to_string(i));
    }
    CancelToken cancel;
    const Job job({}, &cancel);
    EXPECT_TRUE(searchBarrels(cellar.database(), {"nothing", Which::All, now()}, {}, 5, job));
    cancel.cancel();
    EXPECT_EQ(
        searchBarrels(cellar.database(), {"nothing", Which::All, now()}, {}, 5, job).error().code,
        ErrorCode::Cancelled);
}

TEST_F(Searching, FindsABarrelByItsIdWithWhatItsPageShows)
{
    const SubjectId barrel = fleet.small().barrel;
    const Instant tasted = now();
    NewTaste taste{barrel, {{"oak", 5}}};
    taste.circumstance.person = person;
    ASSERT_TRUE(recordTaste(cellar, taste));
    ASSERT_TRUE(recordVerdict(cellar, {.barrel = barrel, .verdict = "ready"}));
    auto row = barrelById(cellar.database(), barrel);
    ASSERT_TRUE(row && *row);
    EXPECT_EQ((*row)->lastTasted, tasted);
    EXPECT_EQ((*row)->verdict, "ready");
    EXPECT_FALSE((*row)->emptiedAt);
    fleet.at(0).clock.pass(std::chrono::days(1));
    ASSERT_TRUE(recordEmpty(cellar, {.barrel = barrel}));
    row = barrelById(cellar.database(), barrel);
    EXPECT_EQ((*row)->emptiedAt, now());
    EXPECT_FALSE((*row)->lastTasted);  // of the fill that is over
    EXPECT_EQ((*row)->verdict, "");
    EXPECT_FALSE(*barrelById(cellar.database(), person));
    const Instant before = *fromIso("2025-01-02");
    const auto dry = registerBarrel(cellar, {.mark = "Dry", .emptied = before});
    EXPECT_EQ((*barrelById(cellar.database(), dry->barrel))->emptiedAt, before);
}

TEST_F(Searching, FindsTheCodesThatBeginSo)
{
    for (int i = 0; i < 60; ++i) {
        add("Port " + std::to_string(i));
    }
    std::vector<std::string> all;
    const auto rows = barrels(cellar.database(), {}, 1000);
    for (const BarrelRow& row : *rows) {
        all.push_back(row.code);
    }
    std::sort(all.begin(), all.end());
    ASSERT_EQ(all.size(), 61U);
    const std::string& one = all[30];
    const std::vector<std::string> beginnings = {"", one.substr(0, 1), one.substr(0, 2), one,
                                                 one + "0"};
    for (const std::string& beginning : beginnings) {
        std::vector<std::string> expected;
        std::copy_if(all.begin(), all.end(), std::back_inserter(expected),
                     [&](const std::string& code) { return code.starts_with(beginning); });
        for (const int limit : {4, 1000}) {
            const auto found = barrelsWithCodeBeginning(cellar.database(), beginning, limit);
            ASSERT_TRUE(found);
            std::vector<std::string> codes;
            for (const BarrelRow& row : *found) {
                codes.push_back(row.code);
            }
            auto most = expected;
            most.resize(std::min(most.size(), static_cast<std::size_t>(limit)));
            EXPECT_EQ(codes, most) << beginning;
        }
    }
}

}  // namespace spile::cellar
