// Source: RFC 8493 (BagIt 1.0), sections 2.1.1 to 2.2.3 (bagit.txt, payload manifest, bag-info,
// tag manifest), from memory; the archive by Info-ZIP's unzip, an independent reader.
#include "core/base/sha256.hpp"
#include "core/cellar/acts/exchanging.hpp"
#include "core/cellar/acts/photographing.hpp"
#include "tests/support/day_file.hpp"
#include "tests/support/libzip_archives.hpp"
#include "tests/support/small_cellar.hpp"

#include <cstdlib>
#include <gtest/gtest-spi.h>
#include <gtest/gtest.h>
#include <map>
#include <set>
#include <sstream>

namespace spile::cellar {

namespace {

using Files = std::map<std::string, std::string>;

// The lines of a tag file as (what stands before ": ", what stands behind).
std::map<std::string, std::string> tagsIn(const std::string& text)
{
    std::map<std::string, std::string> tags;
    std::istringstream lines(text);
    for (std::string line; std::getline(lines, line);) {
        const std::size_t colon = line.find(": ");
        EXPECT_NE(colon, std::string::npos) << line;
        tags[line.substr(0, colon)] = line.substr(colon + 2);
    }
    return tags;
}

// Checks each line "<hash>  <path>" against the file; returns the paths.
std::set<std::string> checkManifest(const Files& bag, const std::string& name)
{
    std::set<std::string> listed;
    std::istringstream lines(bag.at(name));
    for (std::string line; std::getline(lines, line);) {
        const std::size_t space = line.find(' ');
        const std::string path = line.substr(line.find_first_not_of(" *", space));
        EXPECT_TRUE(listed.insert(path).second) << path << " stands twice";
        EXPECT_TRUE(bag.contains(path)) << path << " is listed but missing";
        if (bag.contains(path)) {
            EXPECT_EQ(line.substr(0, space), sha256(asBytes(bag.at(path))).hex()) << path;
        }
    }
    return listed;
}

// A validator of its own, which shares no code with the writer: is `bag` complete and valid?
void expectValidBag(const Files& bag)
{
    ASSERT_EQ(bag.at("bagit.txt"), "BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n");
    std::set<std::string> payload;
    std::size_t bytes = 0;
    for (const auto& [path, content] : bag) {
        if (path.starts_with("data/")) {
            payload.insert(path);
            bytes += content.size();
        }
    }
    EXPECT_EQ(checkManifest(bag, "manifest-sha256.txt"), payload);
    const auto info = tagsIn(bag.at("bag-info.txt"));
    EXPECT_EQ(info.at("Payload-Oxum"),
              std::to_string(bytes) + "." + std::to_string(payload.size()));
    // Every tag file but tag manifests may be listed (2.2.1); ours lists all but its signature.
    EXPECT_EQ(checkManifest(bag, "tagmanifest-sha256.txt"),
              (std::set<std::string>{"bagit.txt", "bag-info.txt", "manifest-sha256.txt"}));
    EXPECT_FALSE(bag.contains("fetch.txt"));
}

class DayFileAsABag : public testing::Test {
protected:
    support::TestDevice device{61};
    std::unique_ptr<Cellar> cellar = device.newCellar();
    Path file = device.folder.path() / "day.spile";
    std::string top;

    void SetUp() override
    {
        const support::SmallCellar small = support::fillSmallCellar(*cellar);
        const Bytes picture = support::smallPicture();
        ASSERT_TRUE(recordPhoto(*cellar,
                                {.barrel = small.barrel, .picture = picture, .purpose = "colour"}));
        ASSERT_TRUE(handOut(*cellar, file, {}));
    }

    // By libzip, not by our own reader.
    Files bag()
    {
        Files files;
        for (const auto& [name, content] : support::libzipContents(support::contentOf(file))) {
            const std::size_t slash = name.find('/');
            top = name.substr(0, slash);
            EXPECT_TRUE(files.emplace(name.substr(slash + 1), content).second) << name;
        }
        return files;
    }
};

}  // namespace

TEST_F(DayFileAsABag, IsCompleteAndValid)
{
    const Files files = bag();
    expectValidBag(files);
    EXPECT_EQ(files.size(), 9U);
    EXPECT_TRUE(files.contains("signature.cbor"));
    EXPECT_EQ(top.substr(0, 5), "7K2Q-");  // of the cellar's mark, without user text
}

TEST_F(DayFileAsABag, CarriesThePhotoUnderItsHash)
{
    int photos = 0;
    for (const auto& [path, content] : bag()) {
        if (path.starts_with("data/photos/")) {
            ++photos;
            EXPECT_EQ(path.substr(12), sha256(asBytes(content)).hex());
        }
    }
    EXPECT_EQ(photos, 1);
}

TEST_F(DayFileAsABag, IsFoundInvalidWhenAByteOfItsPayloadIsOther)
{
    Files files = bag();
    files.at("data/README.txt")[0] = 'X';
    testing::TestPartResultArray failures;
    {
        const testing::ScopedFakeTestPartResultReporter reporter(
            testing::ScopedFakeTestPartResultReporter::INTERCEPT_ONLY_CURRENT_THREAD, &failures);
        expectValidBag(files);
    }
    EXPECT_EQ(failures.size(), 1);
}

TEST_F(DayFileAsABag, IsAcceptedByUnzip)
{
    const std::string quoted = "'" + file.string() + "'";
    EXPECT_EQ(std::system(("unzip -tqq " + quoted).c_str()), 0);  // NOLINT(concurrency-mt-unsafe)
    Bytes damaged = support::contentOf(file);
    damaged[200] ^= 1U;
    support::overwrite(file, damaged);
    EXPECT_NE(std::system(("unzip -tqq " + quoted + " >/dev/null 2>&1").c_str()), 0);
}

}  // namespace spile::cellar
