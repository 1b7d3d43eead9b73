// How entries go from device to device in a story, and what is compared.
#include "core/cellar/acts/exchanging.hpp"
#include "core/cellar/checking.hpp"
#include "tests/support/naive_comparison.hpp"
#include "tests/support/story.hpp"

#include <algorithm>
#include <stdexcept>
#include <utility>

namespace spile::support {

namespace {

void need(bool fine, const std::string& what)
{
    if (!fine) {
        throw std::runtime_error(what);
    }
}

template <class T>
void shuffle(std::vector<T>& items, SeededRandom& random)
{
    for (std::size_t i = items.size(); i > 1; --i) {
        std::swap(items[i - 1], items[random.next() % i]);
    }
}

std::set<EntryId> idsIn(ledger::Database& database, std::string_view sql)
{
    std::set<EntryId> ids;
    valueOrThrow(database.each(
        [&](const ledger::Row& row) {
            ids.insert(row.id<EntryId>(0));
            return Result<void>();
        },
        sql));
    return ids;
}

void linkIn(ledger::Change& change)
{
    constexpr std::int64_t atOnce = 7;
    for (std::int64_t inPass = 1; std::exchange(inPass, 0) > 0;) {
        ledger::WaitingPlace place;
        while (valueOrThrow(change.chains().linkWaiting(atOnce, place)) > 0) {
            ++inPass;
        }
    }
}

std::set<EntryId> linkedAt(const MemoryFleet::Member& member)
{
    return idsIn(member.database(), "SELECT id FROM entry");
}

}  // namespace

NaiveEntries Story::entriesOf(const std::set<EntryId>& ids) const
{
    NaiveEntries entries;
    for (const EntryId& id : ids) {
        entries[id] = naive_.at(id);
    }
    return entries;
}

NaiveCellar Story::said(const std::set<EntryId>& has, const DeviceId& self) const
{
    return naiveCellar(entriesOf(has), fleet_.device(0).ledger().cellar().id, self);
}

void Story::exchange(const Step& step)
{
    Holder& from = holder(step.device);
    Holder& to = holder(step.a);
    if (history_.dayFiles) {
        carryDayFile(from, to, step.b % 2 == 0);
    } else {
        carry(from, to);
    }
    compare(to);
}

// Some of the entries in any order, and some that are here already; groups are never torn.
void Story::exchangePart(const Step& step)
{
    Holder& from = holder(step.device);
    Holder& to = holder(step.a);
    const std::set<EntryId> linked = linkedAt(*from.member);
    Ids ids(linked.begin(), linked.end());
    shuffle(ids, random_);
    ids.resize(std::min<std::size_t>(ids.size(), 1 + step.b % 12));
    for (std::size_t i = 0; i < ids.size(); ++i) {
        for (const EntryId& id : besideInGroup(ids[i])) {
            if (std::find(ids.begin(), ids.end(), id) == ids.end()) {
                ids.push_back(id);
            }
        }
    }
    if (step.c % 2 == 0) {
        ids.insert(ids.end(), ids.begin(), ids.end());
    }
    deliver(to, ids);
    compare(to);
}

// The entries next to it that were recorded by the same tap.
Story::Ids Story::besideInGroup(const EntryId& id) const
{
    Ids ids;
    const ledger::Entry& core = naive_.at(id)->core;
    if (core.group && core.group->index > 0) {
        ids.push_back(core.previous);
    }
    for (const EntryId& other : all_) {
        const ledger::Entry& next = naive_.at(other)->core;
        if (next.previous == id && next.group && next.group->index > 0) {
            ids.push_back(other);
        }
    }
    return ids;
}

void Story::carry(Holder& from, Holder& to)
{
    Ids ids;
    for (const EntryId& id : linkedAt(*from.member)) {
        if (!to.has.contains(id) || random_.next() % 8 == 0) {
            ids.push_back(id);
        }
    }
    std::sort(ids.begin(), ids.end(), [&](const EntryId& a, const EntryId& b) {
        return std::pair(naive_.at(a)->core.device, naive_.at(a)->core.seq) <
               std::pair(naive_.at(b)->core.device, naive_.at(b)->core.seq);
    });
    deliver(to, ids);
}

void Story::carryDayFile(Holder& from, Holder& to, bool forOne)
{
    const Path file = "/day" + std::to_string(dayFiles_.size()) + ".spile";
    const auto receiver =
        forOne ? std::optional(to.member->ledger().device()) : std::optional<DeviceId>();
    valueOrThrow(cellar::handOut(*from.member->cellar, file, receiver));
    dayFiles_.push_back(file);
    valueOrThrow(cellar::takeIn(*to.member->cellar, file));
    // A day file for one leaves out what that one said it has.
    std::set<EntryId> may = to.has;
    may.merge(linkedAt(*from.member));
    std::set<EntryId> has =
        idsIn(to.member->database(), "SELECT id FROM entry UNION SELECT id FROM waiting");
    need(std::includes(may.begin(), may.end(), has.begin(), has.end()), "entries from nowhere");
    need(std::includes(has.begin(), has.end(), to.has.begin(), to.has.end()), "entries are lost");
    need(forOne || may == has, "a day file for all does not hold all");
    to.has = std::move(has);
}

void Story::deliver(Holder& to, const Ids& ids)
{
    if (ids.empty()) {
        return;
    }
    const std::set<EntryId> linked = linkedAt(*to.member);
    auto change = valueOrThrow(to.member->ledger().change());
    for (const EntryId& id : ids) {
        const auto arrival = valueOrThrow(change.chains().arrive(verified_.at(id)));
        // One that waited may count when it comes again.
        const bool fits = linked.contains(id)   ? arrival == ledger::Arrival::Known
                          : to.has.contains(id) ? arrival != ledger::Arrival::Waiting
                                                : arrival != ledger::Arrival::Known;
        need(fits, "known or not: " + id.hex());
        to.has.insert(id);
    }
    linkIn(change);
    valueOrThrow(change.commit());
}

// As an admission does: what waited for it counts.
void Story::link(Holder& at)
{
    auto change = valueOrThrow(at.member->ledger().change());
    linkIn(change);
    valueOrThrow(change.commit());
}

void Story::clone(Holder& original)
{
    for (std::size_t i = 0; i < history_.devices; ++i) {
        MemoryFleet::Member& copy = fleet_.copyOf(i);
        const bool used = std::any_of(holders_.begin(), holders_.end(),
                                      [&](const Holder& at) { return at.member == &copy; });
        if (original.member == &fleet_.device(i) && !used) {
            copy.putBack(original.member->image());
            copy.clock = original.member->clock;
            const std::set<EntryId> has = original.has;
            holders_.push_back({&copy, has, {}, {}});
            return;
        }
    }
}

void Story::backUp(Holder& at)
{
    at.backup = at.member->image();
    at.backupHas = at.has;
}

void Story::restore(Holder& at)
{
    if (at.backup) {
        at.member->putBack(*at.backup);
        at.has = at.backupHas;
    }
}

void Story::compare(Holder& at)
{
    const std::set<EntryId> has =
        idsIn(at.member->database(), "SELECT id FROM entry UNION ALL SELECT id FROM waiting");
    need(has == at.has, "what is here is not what was recorded and taken in");
    const std::string different =
        differenceFrom(*at.member->cellar, said(at.has, at.member->ledger().device()));
    need(different.empty(), at.member->folder.string() + ": " + different);
}

void Story::admitAll()
{
    for (std::size_t i = 1; i < history_.devices; ++i) {
        const unsigned device = static_cast<unsigned>(i);
        admit(holders_.front(), {What::Admit, 0, device, 1, 0});
    }
}

// By way of the desk, as most do it.
void Story::exchangeUntilQuiet()
{
    const auto bring = [&](Holder& from, Holder& to) {
        const std::size_t before = linkedAt(*to.member).size();
        if (history_.dayFiles) {
            carryDayFile(from, to, false);
        } else {
            carry(from, to);
        }
        return linkedAt(*to.member).size() > before;
    };
    for (bool quiet = false; !quiet;) {
        quiet = true;
        for (std::size_t i = 1; i < holders_.size(); ++i) {
            quiet = !bring(holders_[i], holders_.front()) && quiet;
        }
        for (std::size_t i = 1; i < holders_.size(); ++i) {
            quiet = !bring(holders_.front(), holders_[i]) && quiet;
        }
    }
}

void Story::finish()
{
    admitAll();
    std::set<EntryId> anywhere;
    for (const Holder& at : holders_) {
        anywhere.insert(at.has.begin(), at.has.end());
    }
    exchangeUntilQuiet();
    const NaiveCellar wanted = said(anywhere, holders_.front().member->ledger().device());
    const Sha256 root = valueOrThrow(cellar::stateRoot(*holders_.front().member->cellar));
    for (Holder& at : holders_) {
        need(linkedAt(*at.member) == wanted.linked, "not all reached everybody");
        need(valueOrThrow(cellar::stateRoot(*at.member->cellar)) == root, "two states");
    }
    Holder& one = holders_[random_.next() % holders_.size()];
    compare(one);
    compareRebuilt(one, root);
    compareShuffled(wanted.linked, root);
}

// The state folded anew, inside a change that is rolled back.
void Story::compareRebuilt(Holder& at, const Sha256& root)
{
    cellar::Cellar& cellar = *at.member->cellar;
    static std::map<std::string, std::string> clear;
    auto change = valueOrThrow(cellar.ledger().change());
    for (const std::string& table : cellar.state().tables()) {
        valueOrThrow(change.database().execute(
            clear.try_emplace(table, "DELETE FROM " + table).first->second));
    }
    valueOrThrow(ledger::replay(change.database(), cellar.state()));
    need(valueOrThrow(cellar.state().root(change.database())) == root,
         "the state made anew is another");
}

// A device that has all at once, in another order, in other parts and partly twice.
void Story::compareShuffled(const std::set<EntryId>& linked, const Sha256& root)
{
    Holder fresh{&fleet_.replica(), linkedAt(fleet_.replica()), {}, {}};
    Ids ids(linked.begin(), linked.end());
    ids.insert(ids.end(), linked.begin(), std::next(linked.begin(), 3));
    shuffle(ids, random_);
    for (auto at = ids.begin(); at != ids.end();) {
        const auto left = static_cast<std::uint64_t>(ids.end() - at);
        const auto end = at + static_cast<std::ptrdiff_t>(1 + random_.next() % left);
        deliver(fresh, Ids(at, end));
        at = end;
    }
    need(linkedAt(*fresh.member) == linked, "not all are there in another order");
    need(valueOrThrow(cellar::stateRoot(*fresh.member->cellar)) == root,
         "another order, another state");
}

}  // namespace spile::support
