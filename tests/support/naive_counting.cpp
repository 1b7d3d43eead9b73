#include "tests/support/naive_counting.hpp"

#include <algorithm>
#include <functional>

namespace spile::support {

namespace {

constexpr std::uint32_t roleField = 4, pointsField = 90;
constexpr std::int64_t deskRole = 1;

// Which entries count: chains, admission, cutting off.
class Counting {
public:
    Counting(const NaiveEntries& entries, const CellarId& cellar, DeviceId self)
        : entries_(entries), owner_(*DeviceId::fromBytes(cellar.bytes())), self_(self)
    {
    }

    std::set<EntryId> linked;  // their chain is whole and their device was ever admitted
    std::set<EntryId> counted;

    void run()
    {
        admits_.insert(owner_);
        admitted_ = {owner_, self_};
        untilQuiet([&] { return link() || admit(); });
        belonging_.insert(owner_);
        if (std::none_of(linked.begin(), linked.end(),
                         [&](const EntryId& id) { return admits(id, self_); })) {
            belonging_.insert(self_);
        }
        untilQuiet([&] { return adopt() || belong(); });
        for (const EntryId& id : linked) {
            if (stands(id)) {
                counted.insert(id);
            }
        }
    }

private:
    static void untilQuiet(const std::function<bool()>& step)
    {
        while (step()) {
        }
    }
    [[nodiscard]] const NaiveEntry& at(const EntryId& id) const { return *entries_.at(id); }
    [[nodiscard]] bool isKind(const EntryId& id, std::string_view kind) const
    {
        return at(id).core.kind == kind && at(id).core.kindVersion == 1;
    }
    // Whether it is a `device` entry about `device` by one that may admit.
    [[nodiscard]] bool admits(const EntryId& id, const DeviceId& device) const
    {
        return isKind(id, "device") && subjectDevice(at(id)) == device &&
               admits_.contains(at(id).core.device);
    }

    bool link()
    {
        bool more = false;
        for (const auto& [id, entry] : entries_) {
            const ledger::Entry& core = entry->core;
            if (admitted_.contains(core.device) &&
                (core.seq == 1 || linked.contains(core.previous))) {
                more = linked.insert(id).second || more;
            }
        }
        return more;
    }
    bool admit()
    {
        bool more = false;
        for (const EntryId& id : linked) {
            const DeviceId device = subjectDevice(at(id));
            if (admits(id, device)) {
                more = admitted_.insert(device).second || more;
                if (valueOf<std::int64_t>(fieldsOf(at(id)), roleField) == deskRole) {
                    more = admits_.insert(device).second || more;
                }
            }
        }
        return more;
    }

    [[nodiscard]] bool isLifted(const EntryId& cut) const
    {
        return std::any_of(linked.begin(), linked.end(), [&](const EntryId& id) {
            const auto& lifted = at(id).core.overwrites;
            return isKind(id, "reinstate") && at(id).core.device == owner_ &&
                   at(id).core.subject == at(cut).core.subject &&
                   std::find(lifted.begin(), lifted.end(), cut) != lifted.end();
        });
    }
    [[nodiscard]] bool isOnChain(const EntryId& id, EntryId last) const
    {
        while (last != id && entries_.contains(last)) {
            last = at(last).core.previous;
        }
        return last == id;
    }
    [[nodiscard]] bool isBeyond(const EntryId& id, const EntryId& cut) const
    {
        const auto points = valueOf<ledger::List>(fieldsOf(at(cut)), pointsField);
        return !points || std::none_of(points->begin(), points->end(), [&](const auto& point) {
            const ledger::List& columns = *point.template as<ledger::List>();
            const auto last = *EntryId::fromBytes(*columns.at(1).template as<Bytes>());
            const auto seq = static_cast<std::uint64_t>(*columns.at(0).template as<std::int64_t>());
            return linked.contains(last) ? isOnChain(id, last) : at(id).core.seq <= seq;
        });
    }
    [[nodiscard]] bool isCutOff(const EntryId& id) const
    {
        const DeviceId device = at(id).core.device;
        return device != owner_ &&
               std::any_of(linked.begin(), linked.end(), [&](const EntryId& cut) {
                   return isKind(cut, "cut_off") && admits_.contains(at(cut).core.device) &&
                          subjectDevice(at(cut)) == device && !isLifted(cut) && isBeyond(id, cut);
               });
    }
    [[nodiscard]] bool stands(const EntryId& id) const
    {
        return adopted_.contains(id) || (belonging_.contains(at(id).core.device) && !isCutOff(id));
    }
    bool adopt()
    {
        bool more = false;
        for (const EntryId& id : linked) {
            if (isKind(id, "adopt") && at(id).core.target && admits_.contains(at(id).core.device) &&
                stands(id)) {
                more = adopted_.insert(*at(id).core.target).second || more;
            }
        }
        return more;
    }
    bool belong()
    {
        bool more = false;
        for (const EntryId& id : linked) {
            const DeviceId device = subjectDevice(at(id));
            if (admits(id, device) && stands(id)) {
                more = belonging_.insert(device).second || more;
            }
        }
        return more;
    }

    const NaiveEntries& entries_;
    DeviceId owner_, self_;
    std::set<DeviceId> admitted_, admits_;  // ever
    std::set<DeviceId> belonging_;          // now
    std::set<EntryId> adopted_;
};

}  // namespace

void countNaively(const NaiveEntries& entries, const CellarId& cellar, const DeviceId& self,
                  NaiveCellar& said)
{
    Counting counting(entries, cellar, self);
    counting.run();
    said.linked = counting.linked;
    said.counted = counting.counted;
}

}  // namespace spile::support
