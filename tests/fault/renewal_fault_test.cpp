// A device that gets a new key is killed, or loses its power, at every step of that: it comes back
// with the old key or the new one, whole, and the next start goes on from there.
#include "core/cellar/acts/exchanging.hpp"
#include "platform/system/file_key_store.hpp"
#include "tests/fault/recorded_cellar.hpp"

#include <map>

namespace spile::cellar {

namespace {

constexpr auto copyAll = std::filesystem::copy_options::recursive;

// A device whose keys are files beside its cellar, as the platform keeps them.
struct KeyFiles {
    system::FileKeyStore keys;
    Outside outside;

    KeyFiles(support::TestDevice& device, FileSystem& files, const Path& folder)
        : keys(files, folder / "keys"),
          outside{device.clock, files, device.random, device.ids, keys}
    {
    }
};

enum class Which : std::uint8_t { Restored, Cloned, OnlyDesk };

// A device that was set back to an earlier state takes in a file with what it has lost.
struct Renewal {
    Recorded tested;
    support::TestDevice other;
    Path news;
    DeviceId before, after;

    explicit Renewal(Which which)
        : tested(401), other(402), news(other.folder.path() / "news.spile")
    {
        KeyFiles mine(tested.device, tested.device.files, tested.device.folder.path());
        const Path folder = tested.device.cellarFolder();
        const Path file = other.folder.path() / "out.spile";
        std::unique_ptr<Cellar> ours;
        std::unique_ptr<Cellar> theirs;
        if (which == Which::OnlyDesk) {
            ours = *Cellar::create(folder, mine.outside, {"Test cellar", "7K2Q", "Desk"});
            static_cast<void>(support::fillSmallCellar(*ours));
            EXPECT_TRUE(handOut(*ours, file, {}));
            theirs = other.join(file);
            support::admitDevice(*ours, *theirs);
        } else {
            theirs = other.newCellar();
            static_cast<void>(support::fillSmallCellar(*theirs));
            EXPECT_TRUE(handOut(*theirs, file, {}));
            ours = *Cellar::join(folder, mine.outside, file, {});
            support::admitDevice(*theirs, *ours);
        }
        carry(*theirs, *ours);
        carry(*ours, *theirs);
        before = ours->ledger().device();
        const Path kept = other.folder.path() / "kept";
        ours.reset();
        std::filesystem::copy(tested.device.folder.path(), kept, copyAll);
        ours = *Cellar::open(folder, mine.outside);
        draw(*ours);
        carry(*ours, *theirs);
        ours.reset();
        std::filesystem::remove_all(folder);
        std::filesystem::copy(kept / folder.filename(), folder, copyAll);
        if (which == Which::Cloned) {
            ours = *Cellar::open(folder, mine.outside);
            draw(*ours);
            ours.reset();
        }
        EXPECT_TRUE(handOut(*theirs, news, {}));
        record();
    }

    EntryId draw(Cellar& cellar)
    {
        tested.device.clock.pass(std::chrono::minutes(3));
        const auto barrel = barrels(cellar.database(), {}, 1)->at(0).barrel;
        return *recordDraw(cellar,
                           {.barrel = barrel, .volume = millilitres(20), .method = "sample hole"});
    }
    void carry(Cellar& from, Cellar& to) const
    {
        const Path file = other.folder.path() / "carried.spile";
        std::filesystem::remove(file);
        static_cast<void>(support::carry(from, to, file));
    }
    // What happens when nothing goes wrong, call by call.
    void record()
    {
        tested.record();
        KeyFiles mine(tested.device, tested.disk->files(), tested.device.folder.path());
        auto ours = Cellar::open(tested.device.cellarFolder(), mine.outside, tested.disk->vfs());
        ASSERT_TRUE(ours);
        const auto taken = takeIn(**ours, news);
        ASSERT_TRUE(taken);
        ASSERT_TRUE(taken->renewed) << "else nothing is tried here";
        after = taken->renewed->now;
        tested.disk->acknowledge(draw(**ours).bytes());
    }
};

const Renewal* looked = nullptr;

std::string wrongWithKey(Cellar& cellar, system::FileKeyStore& keys)
{
    const auto seed = keys.load(KeyName::Device);
    if (!seed || !*seed) {
        return "the device's key is damaged or gone";
    }
    if (ledger::SigningKey(**seed).deviceId() != cellar.ledger().device()) {
        return "the key is not the one that the records name";
    }
    const auto next = keys.load(KeyName::NextDevice);
    return next && !*next ? "" : "a key that was to come is left over";
}

std::string wrongAfterRenewal(const Recorded& recorded, const Crash& crash, const Path& folder)
{
    support::TestDevice device(crash.seed + 7);
    device.clock.setWall(recorded.device.clock.now());
    KeyFiles mine(device, device.files, folder);
    auto cellar = Cellar::open(folder / "test.cellar", mine.outside);
    if (!cellar) {
        return "it does not open: " + support::textOf(cellar.error());
    }
    const DeviceId now = (*cellar)->ledger().device();
    if (std::string wrong = wrongWithKey(**cellar, mine.keys); !wrong.empty()) {
        return wrong;
    }
    const auto here = entriesIn(**cellar);
    const auto said = acknowledged(recorded.disk->calls(), crash.after);
    if (!std::includes(here.begin(), here.end(), said.begin(), said.end())) {
        return "acknowledged records are lost";
    }
    const auto again = takeIn(**cellar, looked->news);
    if (!again) {
        return "it cannot be taken in again: " + support::textOf(again.error());
    }
    const DeviceId last = (*cellar)->ledger().device();
    if (last == looked->before) {
        return "it goes on under the old key";
    }
    if (now != looked->before && last != now) {
        return "it got a second new key";
    }
    if (std::string wrong = wrongWithKey(**cellar, mine.keys); !wrong.empty()) {
        return wrong;
    }
    const auto first = barrels((*cellar)->database(), {}, 1);
    const auto draw = recordDraw(
        **cellar,
        {.barrel = first->at(0).barrel, .volume = millilitres(1), .method = "sample hole"});
    return draw ? support::problemsOf(**cellar)
                : "it does not go on: " + support::textOf(draw.error());
}

// Killed after each call in turn: what was written is there. Counts the keys it came back with.
void expectWholeAfterEachKill(const Renewal& renewal)
{
    std::map<bool, int> renewed;
    const std::size_t calls = renewal.tested.disk->calls().size();
    ASSERT_GT(calls, 20U);
    for (std::size_t after = 1; after <= calls; ++after) {
        const Crash crash{after, Leaves::All, after};
        const support::TempFolder folder;
        writeCrashed(renewal.tested.disk->calls(), crash, renewal.tested.before->path(),
                     folder.path());
        {
            support::TestDevice device(after);
            KeyFiles mine(device, device.files, folder.path());
            const auto seed = mine.keys.load(KeyName::Device);
            ASSERT_TRUE(seed && *seed) << after;
            const DeviceId key = ledger::SigningKey(**seed).deviceId();
            ASSERT_TRUE(key == renewal.before || key == renewal.after) << after;
            ++renewed[key == renewal.after];
        }
        ASSERT_EQ(wrongAfterRenewal(renewal.tested, crash, folder.path()), "")
            << "killed after call " << after << " of " << calls;
    }
    EXPECT_GT(renewed[false], 0);
    EXPECT_GT(renewed[true], 0) << "both keys were seen";
}

void expectWhole(Which which)
{
    const Renewal renewal(which);
    if (testing::Test::HasFailure()) {
        return;
    }
    looked = &renewal;
    expectWholeAfterEachKill(renewal);
    expectNothingWrong(lookAt(renewal.tested, wrongAfterRenewal));
    looked = nullptr;
}

}  // namespace

TEST(Fault26_ClonedPhone, StoppedAtAnyStepOfItsNewKeyHasTheOldOrTheNewOneWhole)
{
    expectWhole(Which::Cloned);
}

TEST(Fault27_PhoneRestoredToLastWeek, StoppedAtAnyStepOfItsNewKeyHasTheOldOrTheNewOneWhole)
{
    expectWhole(Which::Restored);
}

TEST(Fault27_PhoneRestoredToLastWeek, TheOnlyDeskStoppedWhileItAdmitsItselfHasOneKeyWhole)
{
    expectWhole(Which::OnlyDesk);
}

}  // namespace spile::cellar
