// The naive cellar by hand-made examples: what it says is worked out beside each.
#include "core/cellar/field.hpp"
#include "tests/support/naive_cellar.hpp"

#include <gtest/gtest.h>

namespace spile::support {

namespace {

constexpr std::int64_t desk = 1, phone = 2;
constexpr std::uint32_t noteField = 5, roleField = 4, pointsField = 90;
constexpr std::uint32_t bootField = 92, sinceBootField = 93, shownField = 94;

// Entries by invented devices; no signatures, since the naive cellar looks at none.
class Naive : public testing::Test {
protected:
    DeviceId owner{{1}}, ann{{2}}, ben{{3}}, cat{{4}};
    CellarId cellar = *CellarId::fromBytes(owner.bytes());
    SubjectId barrel{{9}};
    NaiveEntries entries;

    EntryId add(const DeviceId& device, const std::string& kind, const SubjectId& subject,
                ledger::Fields fields = {}, std::optional<EntryId> target = {},
                std::vector<EntryId> overwrites = {})
    {
        ledger::Entry core;
        core.cellar = cellar;
        core.device = device;
        core.previous = last_[device];
        core.seq = ++seq_[device];
        core.recorded = now;
        core.sinceBoot = sinceBoot;
        core.kind = kind;
        core.subject = subject;
        core.target = target;
        core.overwrites = std::move(overwrites);
        const EntryId id = made(core);
        entries[id] = std::make_shared<NaiveEntry>(NaiveEntry{core, ledger::encodeFields(fields)});
        last_[device] = id;
        return id;
    }
    EntryId note(const DeviceId& device) { return add(device, "person", barrel); }
    EntryId admit(const DeviceId& by, const DeviceId& device, std::int64_t role)
    {
        return add(by, "device", subject(device), {{roleField, role}});
    }
    EntryId cutOff(const DeviceId& by, const DeviceId& device, const EntryId& lastEntry = {})
    {
        const std::int64_t seq = entries.contains(lastEntry)
                                     ? static_cast<std::int64_t>(entries.at(lastEntry)->core.seq)
                                     : 0;
        return cutOffAt(by, device, seq, lastEntry);
    }
    EntryId cutOffAt(const DeviceId& by, const DeviceId& device, std::int64_t seq,
                     const EntryId& last)
    {
        if (seq == 0) {
            return add(by, "cut_off", subject(device));
        }
        const ByteView bytes = last.bytes();
        return add(by, "cut_off", subject(device),
                   {{pointsField,
                     ledger::List{ledger::Value(ledger::List{
                         ledger::Value(seq), ledger::Value(Bytes(bytes.begin(), bytes.end()))})}}});
    }
    EntryId adopt(const DeviceId& by, const EntryId& entry)
    {
        return add(by, "adopt", barrel, {}, entry);
    }
    EntryId amend(const DeviceId& by, const EntryId& entry, const std::string& text,
                  std::vector<EntryId> overwrites = {})
    {
        return add(by, "amend", barrel, {{noteField, text}}, entry, std::move(overwrites));
    }

    [[nodiscard]] NaiveCellar said(const DeviceId& self) const
    {
        return naiveCellar(entries, cellar, self);
    }
    [[nodiscard]] NaiveCellar said() const { return said(owner); }
    [[nodiscard]] bool counts(const EntryId& id) const { return said().counted.contains(id); }
    [[nodiscard]] std::string noteOf(const EntryId& id) const
    {
        return *said().facts.at(id).fields.at(noteField).as<std::string>();
    }

    static SubjectId subject(const DeviceId& device)
    {
        return *SubjectId::fromBytes(device.bytes());
    }
    // Go on from an earlier entry, as a copied device does.
    void goBack(const DeviceId& device, const EntryId& last)
    {
        last_[device] = last;
        seq_[device] = entries.at(last)->core.seq;
    }

    // The clock of `device` is looked at by `by`, `since` its start, when it is `now` by hers.
    EntryId observe(const DeviceId& by, const DeviceId& device, std::int64_t since,
                    std::vector<EntryId> overwrites = {})
    {
        return add(by, "clock_observe", subject(device),
                   {{bootField, Bytes(8)}, {sinceBootField, since}, {shownField, std::int64_t{0}}},
                   {}, std::move(overwrites));
    }
    [[nodiscard]] std::int64_t happened(const EntryId& id) const
    {
        return toMs(said().facts.at(id).at);
    }

    Instant now = instantFromMs(1000);
    Milliseconds sinceBoot{0};

private:
    // Numbered, so that the later made is the greater.
    static EntryId made(const ledger::Entry&)
    {
        static std::uint8_t count = 0;
        return EntryId({1, ++count});
    }
    std::map<DeviceId, EntryId> last_;
    std::map<DeviceId, std::uint64_t> seq_;
};

}  // namespace

TEST_F(Naive, CountsADeviceWhenOneThatMayAdmitsIt)
{
    const EntryId early = note(ann);
    EXPECT_FALSE(counts(early));
    EXPECT_TRUE(said(ann).counted.contains(early));  // in its own ledger
    admit(ben, ann, phone);                          // who is nobody
    EXPECT_FALSE(counts(early));
    admit(owner, ben, phone);  // and a phone may not admit
    EXPECT_FALSE(counts(early));
    admit(owner, ben, desk);
    EXPECT_TRUE(counts(early));
}

TEST_F(Naive, CountsAnEntryWhenTheOneBeforeItCounts)
{
    admit(owner, ann, phone);
    const EntryId first = note(ann);
    const EntryId second = note(ann);
    const EntryId third = note(ann);
    const auto kept = entries.extract(second);
    EXPECT_TRUE(counts(first));
    EXPECT_FALSE(counts(third));
    entries[second] = kept.mapped();
    EXPECT_TRUE(counts(third));
}

TEST_F(Naive, ShowsTheLatestOfCorrectionsThatDidNotKnowOfEachOther)
{
    admit(owner, ann, phone);
    const EntryId fact = note(owner);
    const EntryId one = amend(owner, fact, "one");
    EXPECT_EQ(noteOf(fact), "one");
    const EntryId two = amend(ann, fact, "two");  // at the same time; its device is the greater
    EXPECT_EQ(noteOf(fact), "two");
    EXPECT_TRUE(said().facts.at(fact).twoValues);
    now += std::chrono::hours(1);
    amend(owner, fact, "three", {one});
    EXPECT_EQ(noteOf(fact), "three");
    EXPECT_TRUE(said().facts.at(fact).twoValues);
    now -= std::chrono::hours(2);  // a clock that is behind does not matter to who knows of both
    amend(owner, fact, "four", {two, add(owner, "amend", barrel, {}, fact, {one})});
    EXPECT_EQ(noteOf(fact), "three");
    const EntryId gone = add(owner, "void", barrel, {}, fact);
    EXPECT_TRUE(said().facts.at(fact).voided);
    add(owner, "void", barrel, {}, gone);
    EXPECT_FALSE(said().facts.at(fact).voided);
}

TEST_F(Naive, SetsAsideWhatIsBeyondTheCut)
{
    admit(owner, ann, phone);
    const EntryId one = note(ann);
    const EntryId two = note(ann);
    const EntryId three = note(ann);
    cutOff(owner, ann, two);
    EXPECT_TRUE(counts(one));
    EXPECT_TRUE(counts(two));
    EXPECT_FALSE(counts(three));
    EXPECT_TRUE(said().linked.contains(three));  // it is here all the same
    goBack(ann, one);                            // another branch, although of a low number
    EXPECT_FALSE(counts(note(ann)));
    cutOff(owner, ann, one);  // of several cuts, each sets aside
    EXPECT_FALSE(counts(two));
    cutOff(owner, ann);
    EXPECT_FALSE(counts(one));
}

TEST_F(Naive, CutsByNumberWhileTheLastEntryIsNotHere)
{
    admit(owner, ann, phone);
    const EntryId one = note(ann);
    const EntryId two = note(ann);
    cutOffAt(owner, ann, 1, EntryId({77}));
    EXPECT_TRUE(counts(one));
    EXPECT_FALSE(counts(two));
}

TEST_F(Naive, TakesCorrectionsOfACutOffDeviceOutToo)
{
    admit(owner, ann, phone);
    const EntryId fact = note(owner);
    const EntryId right = amend(owner, fact, "right");
    amend(ann, fact, "wrong", {right});
    add(ann, "void", barrel, {}, fact);
    EXPECT_EQ(noteOf(fact), "wrong");
    cutOff(owner, ann);
    EXPECT_EQ(noteOf(fact), "right");  // nothing replaces it now
    EXPECT_FALSE(said().facts.at(fact).voided);
}

TEST_F(Naive, CutsOnlyByThoseWhoMayAdmitButAlsoByThoseWhoAreCutOff)
{
    admit(owner, ann, desk);
    admit(owner, ben, desk);
    admit(owner, cat, phone);
    const EntryId ofAnn = note(ann);
    const EntryId ofBen = note(ben);
    cutOff(cat, ann);  // a phone
    EXPECT_TRUE(counts(ofAnn));
    cutOff(ann, ben);
    cutOff(ben, ann);  // each the other: both hold
    EXPECT_FALSE(counts(ofAnn));
    EXPECT_FALSE(counts(ofBen));
    const EntryId ofOwner = note(owner);
    cutOff(ann, owner);  // whose key is never cut off
    EXPECT_TRUE(counts(ofOwner));
}

TEST_F(Naive, ReinstatesByTheOwnersKeyAlone)
{
    admit(owner, ann, phone);
    admit(owner, ben, desk);
    const EntryId fact = note(ann);
    const EntryId cut = cutOff(owner, ann);
    const EntryId again = cutOff(ben, ann);
    add(ben, "reinstate", subject(ann), {}, {}, {cut, again});
    EXPECT_FALSE(counts(fact));
    add(owner, "reinstate", subject(ann), {}, {}, {cut});
    EXPECT_FALSE(counts(fact));  // the other cut still holds
    add(owner, "reinstate", subject(ben), {}, {}, {again});
    EXPECT_FALSE(counts(fact));  // about another device
    add(owner, "reinstate", subject(ann), {}, {}, {again});
    EXPECT_TRUE(counts(fact));
}

TEST_F(Naive, AdoptsSingleEntriesByThoseWhoMayAdmitAndBelong)
{
    admit(owner, ann, phone);
    admit(owner, ben, desk);
    const EntryId one = note(ann);
    const EntryId two = note(ann);
    cutOff(owner, ann);
    adopt(ann, two);  // itself
    EXPECT_FALSE(counts(two));
    const EntryId adoption = adopt(ben, two);
    EXPECT_TRUE(counts(two));
    EXPECT_FALSE(counts(one));
    cutOff(owner, ben);  // the adoption is set aside with the rest
    EXPECT_FALSE(counts(two));
    adopt(owner, adoption);
    EXPECT_TRUE(counts(two));
}

TEST_F(Naive, SetsAsideWhomACutOffDeskAdmitted)
{
    admit(owner, ann, desk);
    admit(ann, ben, desk);
    const EntryId admission = admit(ben, cat, phone);
    const EntryId fact = note(cat);
    EXPECT_TRUE(counts(fact));
    cutOff(owner, ann);
    EXPECT_FALSE(counts(admission));
    EXPECT_FALSE(counts(fact));
    EXPECT_TRUE(said().linked.contains(fact));
    EXPECT_FALSE(said(cat).counted.contains(fact));  // also in its own ledger
    admit(owner, cat, phone);
    EXPECT_TRUE(counts(fact));
    EXPECT_FALSE(counts(admission));
    admit(owner, ben, phone);  // belongs again; its right to admit it had before
    EXPECT_TRUE(counts(admission));
}

TEST_F(Naive, DoesNotLetTwoDevicesAdmitEachOtherBack)
{
    admit(owner, ann, desk);
    admit(ann, ben, desk);
    const EntryId fact = note(ben);
    admit(ben, ann, desk);
    admit(ben, ben, desk);
    cutOff(owner, ann);
    EXPECT_FALSE(counts(fact));
}

TEST_F(Naive, LetsADeviceCountItsOwnEntriesUntilItsAdmissionIsSetAside)
{
    const EntryId fact = note(cat);
    admit(owner, ann, desk);
    EXPECT_TRUE(said(cat).counted.contains(fact));
    admit(ann, cat, phone);
    EXPECT_TRUE(said(cat).counted.contains(fact));
    cutOff(owner, ann);
    EXPECT_FALSE(said(cat).counted.contains(fact));
}

TEST_F(Naive, SetsRightWhatAClockThatWasLookedAtRecorded)
{
    constexpr std::int64_t hour = 3'600'000;
    admit(owner, ann, phone);
    admit(owner, ben, phone);
    now = instantFromMs(100 * hour);
    sinceBoot = Milliseconds(2 * hour);
    const EntryId fact = note(ann);
    now = instantFromMs(7 * hour);  // by another's clock, 3 hours later: at 4 hours it was
    const EntryId first = observe(ben, ann, 5 * hour);
    EXPECT_EQ(happened(fact), 4 * hour);
    EXPECT_EQ(said().facts.at(fact).clock, instantFromMs(100 * hour));
    EXPECT_EQ(happened(first), 7 * hour);

    now = instantFromMs(6 * hour);  // earlier, but it knows of the first
    const EntryId second = observe(ben, ann, 5 * hour, {first});
    EXPECT_EQ(happened(fact), 3 * hour);
    add(ben, "void", barrel, {}, second);
    EXPECT_EQ(happened(fact), 4 * hour);
    add(ben, "void", barrel, {}, first);
    EXPECT_EQ(happened(fact), 100 * hour);
    EXPECT_FALSE(said().facts.at(fact).clock);
}

}  // namespace spile::support
