// A disk that says it has synced and has not. Nothing prevents that it forgets what was
// acknowledged; but nothing is forgotten in silence, and what others hold comes back.
#include "core/cellar/acts/exchanging.hpp"
#include "core/cellar/checking.hpp"
#include "tests/fault/recorded_cellar.hpp"

namespace spile::cellar {

namespace {

// A phone on a disk that lies, and a desk that has taken in all that the phone recorded.
struct LyingPhone {
    Recorded phone{401};
    support::TestDevice deskDevice{402};
    std::unique_ptr<Cellar> desk = deskDevice.newCellar();
    Path ofDesk = deskDevice.folder.path() / "desk.spile";

    LyingPhone()
    {
        static_cast<void>(support::fillSmallCellar(*desk));
        EXPECT_TRUE(handOut(*desk, ofDesk, {}));
        {
            auto joined = phone.device.join(ofDesk);
            support::admitDevice(*desk, *joined);
            support::carry(*desk, *joined, ofDesk);
        }
        phone.record();
        auto opened = phone.open();
        EXPECT_TRUE(opened) << support::textOf(opened.error());
        recordMuch(phone, **opened, 6);
        support::TempFolder carried;  // its calls are none of the recorded folder's
        const Path ofPhone = carried.path() / "phone.spile";
        EXPECT_TRUE(handOut(**opened, ofPhone, {}));
        EXPECT_TRUE(takeIn(*desk, ofPhone));
        EXPECT_TRUE(handOut(*desk, ofDesk, {}));
    }
};

LyingPhone& lyingPhone()
{
    static LyingPhone one;
    return one;
}

// How the crashes ended, over all of them.
struct Outcomes {
    int whole = 0, shorter = 0, damaged = 0;
} outcomes;

// The phone cannot be used any more: it joins anew, from the desk.
std::string wrongAfterJoining()
{
    support::TestDevice fresh(403);
    auto joined = Cellar::join(fresh.cellarFolder(), fresh.outside(), lyingPhone().ofDesk, {});
    if (!joined) {
        return "it cannot join anew: " + support::textOf(joined.error());
    }
    return *stateRoot(**joined) == *stateRoot(*lyingPhone().desk) ? "" : "joined, it lacks records";
}

std::string wrongAfterLie(const Recorded& recorded, const Crash& crash, const Path& folder)
{
    support::TestDevice device(crash.seed + 7);
    device.keys = recorded.device.keys;
    auto opened = Cellar::open(folder / "test.cellar", device.outside());
    if (!opened || !support::problemsOf(**opened).empty()) {
        ++outcomes.damaged;
        return wrongAfterJoining();
    }
    Cellar& cellar = **opened;
    const std::set<EntryId> said = acknowledged(recorded.disk->calls(), crash.after);
    const std::set<EntryId> left = entriesIn(cellar);
    const bool lost = !std::includes(left.begin(), left.end(), said.begin(), said.end());
    ++(lost ? outcomes.shorter : outcomes.whole);

    const auto back = takeIn(cellar, lyingPhone().ofDesk);
    if (!back) {
        return "the desk's file is refused: " + support::textOf(back.error());
    }
    if (lost && !back->renewed) {
        return "records are lost, and nothing says so";
    }
    const std::set<EntryId> here = entriesIn(cellar);
    if (!std::includes(here.begin(), here.end(), said.begin(), said.end())) {
        return "acknowledged records do not come back";
    }
    // A phone that has lost what it signed goes on under a new key, and says so by one record.
    const std::size_t more = back->renewed ? 1 : 0;
    if (here.size() != entriesIn(*lyingPhone().desk).size() + more) {
        return "it has not what the desk has";
    }
    if (more == 0 && *stateRoot(cellar) != *stateRoot(*lyingPhone().desk)) {
        return "it comes to another state than the desk's";
    }
    return support::problemsOf(cellar);
}

}  // namespace

TEST(Fault07_DiskThatLies, IsFoundOutAndWhatItForgotComesBack)
{
    outcomes = {};
    expectNothingWrong(lookAt(lyingPhone().phone, wrongAfterLie, true));
    RecordProperty("whole", outcomes.whole);
    RecordProperty("shorter", outcomes.shorter);
    RecordProperty("damaged", outcomes.damaged);
    EXPECT_GT(outcomes.shorter + outcomes.damaged, 0) << "the disk did not lie";
}

}  // namespace spile::cellar
