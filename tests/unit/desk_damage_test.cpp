// The desk's disk has spoilt a record and a photo: what can still be taken out, and what is said of
// it.
#include "core/cellar/acts/drawing.hpp"
#include "core/cellar/acts/exchanging.hpp"
#include "core/cellar/acts/photographing.hpp"
#include "core/cellar/join_code.hpp"
#include "core/ledger/schema.hpp"
#include "tests/support/command.hpp"
#include "tests/support/day_file.hpp"
#include "tests/support/small_cellar.hpp"

#include <filesystem>
#include <fstream>
#include <gmock/gmock.h>

namespace spile {

using nlohmann::json;
using support::Ended;
using testing::HasSubstr;

namespace {

class DeskDamage : public testing::Test {
protected:
    support::TempFolder folder;
    support::TestDevice phone{31};
    Sha256 photo;

    void SetUp() override
    {
        ASSERT_EQ(desk("house", {"new", "--mark", "7K2Q"}).exit, 0);
        ASSERT_EQ(desk("house", {"hand-out", in("start.spile")}).exit, 0);
        const auto own = phone.join(in("start.spile"));
        const support::SmallCellar small = support::fillSmallCellar(*own);
        ASSERT_TRUE(cellar::recordDraw(
            *own, {.barrel = small.barrel, .volume = millilitres(200), .method = "sample hole"}));
        photo = cellar::recordPhoto(*own, {.barrel = small.barrel,
                                           .picture = support::smallPicture(),
                                           .purpose = "colour"})
                    ->photo.hash;
        ASSERT_TRUE(cellar::handOut(*own, in("phone.spile"), {}));
        const std::string code = cellar::joinCode(own->ledger().device());
        ASSERT_EQ(desk("house", {"admit", code, "--name", "Phone"}).exit, 0);
        ASSERT_EQ(desk("house", {"take-in", in("phone.spile")}).exit, 0);
    }

    [[nodiscard]] std::string in(const std::string& name) const
    {
        return (folder.path() / name).string();
    }
    [[nodiscard]] Ended desk(const std::string& cellar, std::vector<std::string> words) const
    {
        words.insert(words.begin(), {"--json", "--cellar", in(cellar)});
        return support::run(SPILE_DESK, words);
    }
    void spoilTheDraw() const
    {
        auto database =
            ledger::Database::open(in("house/ledger.db"), ledger::Database::Mode::Write);
        ASSERT_TRUE(database);
        ASSERT_TRUE(database->run(std::string("DROP TRIGGER entry_is_never_changed; UPDATE entry "
                                              "SET body = x'a0' WHERE kind = 'draw';") +
                                  ledger::entriesNeverChange));
    }
    void spoilThePhoto() const
    {
        const std::string hash = photo.hex();
        std::ofstream(in("house/photos/" + hash.substr(0, 2) + "/" + hash)) << "no picture";
    }
    [[nodiscard]] std::string lineOf(const std::string& file) const
    {
        std::ifstream lines(in(file));
        std::string line;
        std::getline(lines, line);
        return line;
    }
};

}  // namespace

TEST_F(DeskDamage, AnExportNamesEachPhotoSoThatOthersOpenItAndSaysWhatItIsOf)
{
    ASSERT_EQ(desk("house", {"export", in("plain")}).exit, 0);
    const std::string name = "photos/" + photo.hex() + ".png";
    EXPECT_TRUE(std::filesystem::exists(in("plain/" + name)));
    std::ifstream list(in("plain/photos.csv"));
    std::string line;
    ASSERT_TRUE(std::getline(list, line));
    EXPECT_EQ(line, "photo,entry,kind,subject,recorded\r");
    ASSERT_TRUE(std::getline(list, line));
    EXPECT_THAT(line, testing::StartsWith(name + ","));
    EXPECT_THAT(line, HasSubstr(",\"photo\","));
    EXPECT_FALSE(std::getline(list, line));

    spoilThePhoto();
    ASSERT_EQ(desk("house", {"export", in("again")}).exit, 0);
    std::ifstream without(in("again/photos.csv"));
    std::getline(without, line);
    ASSERT_TRUE(std::getline(without, line));
    EXPECT_THAT(line, testing::StartsWith("not on this device,"));
}

TEST_F(DeskDamage, IsHandedOutAroundAndComesBack)
{
    spoilTheDraw();
    spoilThePhoto();
    const Ended out = desk("house", {"hand-out", in("around.spile")});
    EXPECT_EQ(out.exit, 0) << out.err;
    EXPECT_EQ(out.json().at("left_out"), 2);
    EXPECT_THAT(out.err, HasSubstr("damaged here and not in it: 1 record, 1 photo"));
    EXPECT_EQ(desk("new", {"join", in("around.spile")}).exit, 0);

    ASSERT_EQ(desk("house", {"take-in", in("phone.spile")}).exit, 0);
    const Ended whole = desk("house", {"hand-out", in("whole.spile")});
    EXPECT_EQ(whole.json().at("left_out"), 0);
    EXPECT_EQ(whole.json().at("entries"), out.json().at("entries").get<int>() + 1);
    EXPECT_EQ(whole.json().at("photos"), 1);
    EXPECT_EQ(desk("house", {"check"}).exit, 0);
}

TEST_F(DeskDamage, IsLeftOutOfAnExportAndListed)
{
    const Ended before = desk("house", {"export", in("before")});
    EXPECT_EQ(before.json().at("damaged"), 0);
    EXPECT_FALSE(std::filesystem::exists(in("before/damaged.txt")));

    spoilTheDraw();
    const Ended record = desk("house", {"export", in("record")});
    EXPECT_EQ(record.exit, 0) << record.err;
    EXPECT_EQ(record.json().at("damaged"), 1);
    EXPECT_EQ(record.json().at("records"), before.json().at("records").get<int>() - 1);
    EXPECT_THAT(record.err, HasSubstr("damaged here and left out: 1 thing, listed in damaged.txt"));
    EXPECT_THAT(lineOf("record/damaged.txt"), HasSubstr("its body is not the one"));

    spoilThePhoto();
    const Ended both = desk("house", {"export", in("both")});
    EXPECT_EQ(both.exit, 0) << both.err;
    EXPECT_EQ(both.json().at("damaged"), 2);
    EXPECT_EQ(both.json().at("photos"), 0);
}

}  // namespace spile
