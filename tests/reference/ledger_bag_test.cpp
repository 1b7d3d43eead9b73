// Second opinions on our day files: Info-ZIP's unzip and libzip on the archive, a validator of bags
// that was written for these tests on what comes out of it.
#include "core/base/sha256.hpp"
#include "core/cellar/acts/exchanging.hpp"
#include "core/cellar/acts/photographing.hpp"
#include "tests/reference/bagit.hpp"
#include "tests/support/command.hpp"
#include "tests/support/day_file.hpp"
#include "tests/support/libzip_archives.hpp"
#include "tests/support/small_cellar.hpp"

#include <filesystem>
#include <fstream>
#include <gmock/gmock.h>

namespace spile::cellar {

namespace {

using support::contentOf;
using support::faultsOfBag;
using support::overwrite;
using testing::ElementsAre;
using testing::IsEmpty;
using Faults = std::vector<std::string>;

// A day file of a small cellar with three photos, and what unzip makes of it.
class DayFile : public testing::Test {
protected:
    support::TestDevice device{61};
    std::unique_ptr<Cellar> cellar = device.newCellar();
    Path file = device.folder.path() / "day.spile";
    Path unpacked = device.folder.path() / "unpacked";
    Path bag;

    void SetUp() override
    {
        const support::SmallCellar small = support::fillSmallCellar(*cellar);
        for (std::uint8_t shade = 90; shade < 93; ++shade) {
            const Bytes picture = support::smallPicture(shade);
            ASSERT_TRUE(recordPhoto(
                *cellar, {.barrel = small.barrel, .picture = picture, .purpose = "colour"}));
        }
        ASSERT_TRUE(handOut(*cellar, file, {}));
        const auto unzip = support::run("unzip", {"-q", file.string(), "-d", unpacked.string()});
        ASSERT_EQ(unzip.exit, 0) << unzip.out << unzip.err;
        bag = std::filesystem::directory_iterator(unpacked)->path();
    }

    void append(const std::string& name, const std::string& text) const
    {
        std::ofstream(bag / name, std::ios::binary | std::ios::app) << text;
    }
    std::string firstLineOf(const std::string& name) const
    {
        const Bytes bytes = contentOf(bag / name);
        const std::string text(asText(bytes));
        return text.substr(0, text.find('\n') + 1);
    }
    Path aPhoto() const { return std::filesystem::directory_iterator(bag / "data/photos")->path(); }
};

}  // namespace

TEST_F(DayFile, IsAZipThatUnzipTakes)
{
    EXPECT_EQ(support::run("unzip", {"-tqq", file.string()}).exit, 0);
    Bytes damaged = contentOf(file);
    damaged[200] ^= 1U;
    overwrite(file, damaged);
    EXPECT_NE(support::run("unzip", {"-tqq", file.string()}).exit, 0);
}

TEST_F(DayFile, IsTheSameToUnzipAndToLibzip)
{
    std::vector<std::string> names;
    for (const auto& [name, content] : support::libzipContents(contentOf(file))) {
        names.push_back(name);
        EXPECT_EQ(asText(contentOf(unpacked / name)), content) << name;
    }
    std::sort(names.begin(), names.end());
    EXPECT_EQ(support::filesUnder(unpacked), names);
}

TEST_F(DayFile, IsABagByRfc8493)
{
    EXPECT_THAT(faultsOfBag(bag), IsEmpty());
    EXPECT_EQ(support::filesUnder(bag).size(),
              11U);  // three photos, three more of payload, five tags
    EXPECT_TRUE(std::filesystem::exists(bag / "signature.cbor"));
    EXPECT_EQ(bag.filename().string().substr(0, 5), "7K2Q-");  // the cellar's mark, no user text
}

TEST_F(DayFile, CarriesEachPhotoUnderItsHash)
{
    std::size_t photos = 0;
    for (const auto& photo : std::filesystem::directory_iterator(bag / "data/photos")) {
        ++photos;
        EXPECT_EQ(photo.path().filename().string(), sha256(contentOf(photo.path())).hex());
    }
    EXPECT_EQ(photos, 3U);
}

// The validator itself: each fault that it is there for is found.

TEST_F(DayFile, IsNoBagWithAByteChanged)
{
    const Path photo = aPhoto();
    Bytes bytes = contentOf(photo);
    bytes[20] ^= 1U;
    overwrite(photo, bytes);
    EXPECT_THAT(faultsOfBag(bag),
                ElementsAre("data/photos/" + photo.filename().string() + " has another checksum"));
}

TEST_F(DayFile, IsNoBagWithAFileMissing)
{
    const Path photo = aPhoto();
    std::filesystem::remove(photo);
    const Faults faults = faultsOfBag(bag);
    ASSERT_EQ(faults.size(), 2U);  // and its Oxum
    EXPECT_EQ(faults[0], "data/photos/" + photo.filename().string() + " is missing");
}

TEST_F(DayFile, IsNoBagWithAPayloadFileMoreThanItLists)
{
    append("data/more.txt", "x");
    const Faults faults = faultsOfBag(bag);
    ASSERT_EQ(faults.size(), 2U);
    EXPECT_EQ(faults[0], "data/more.txt is not listed");
}

TEST_F(DayFile, IsNoBagWithAnotherOxum)
{
    const Bytes bytes = contentOf(bag / "bag-info.txt");
    std::string text(asText(bytes));
    text[text.find('\n') - 1] = '7';  // of how many files there are
    overwrite(bag / "bag-info.txt", asBytes(text));
    const Faults faults = faultsOfBag(bag);
    ASSERT_EQ(faults.size(), 2U);
    EXPECT_EQ(faults[0], "bag-info.txt has another checksum");
    EXPECT_THAT(faults[1], testing::StartsWith("bag-info.txt does not say Payload-Oxum: "));
}

TEST_F(DayFile, IsNoBagWithALineOfItsManifestTwice)
{
    append("manifest-sha256.txt", firstLineOf("manifest-sha256.txt"));
    EXPECT_THAT(faultsOfBag(bag), ElementsAre("data/README.txt is listed twice",
                                              "manifest-sha256.txt has another checksum"));
}

TEST_F(DayFile, IsNoBagWithPathsThatLeadElsewhereOrAreNotDecoded)
{
    const std::string hash(64, '0');
    append("manifest-sha256.txt", hash + "  data/../../x\n" + hash + "  data/a%20b\n");
    const Faults faults = faultsOfBag(bag);
    ASSERT_EQ(faults.size(), 3U);
    EXPECT_EQ(faults[0], "manifest-sha256.txt has a bad line: " + hash + "  data/../../x");
    EXPECT_EQ(faults[1], "manifest-sha256.txt has a bad line: " + hash + "  data/a%20b");
}

TEST_F(DayFile, IsABagWithAPathThatIsPercentEncoded)
{
    // A name with a line feed and a percent sign, as section 2.1.3 writes it.
    overwrite(bag / "data/a\n%.txt", asBytes("x"));
    append("manifest-sha256.txt", sha256(asBytes("x")).hex() + "  data/a%0A%25.txt\n");
    const Faults faults = faultsOfBag(bag);
    ASSERT_EQ(faults.size(), 2U);  // the manifest's own checksum and the Oxum
    EXPECT_EQ(faults[0], "manifest-sha256.txt has another checksum");
}

TEST_F(DayFile, IsNoBagWithAnotherDeclarationOrSomethingToFetch)
{
    overwrite(bag / "bagit.txt", asBytes("BagIt-Version: 1.0\n"));
    overwrite(bag / "fetch.txt", asBytes("https://example.org/a 1 data/a\n"));
    EXPECT_THAT(faultsOfBag(bag),
                ElementsAre("bagit.txt does not declare a bag of version 1.0 in UTF-8",
                            "bagit.txt has another checksum", "something has to be fetched"));
}

}  // namespace spile::cellar
