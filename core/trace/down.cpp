// Downwards: what holds some of a beer or of what was put into it.
#include "core/trace/trace.hpp"

#include <algorithm>
#include <set>

namespace spile::trace {

using cellar::WayKind;
using cellar::WayOut;

namespace {

class Descending {
public:
    explicit Descending(ledger::Database& database) : database_(database) {}

    // A fill or a top-up.
    void addStay(const EntryId& stay)
    {
        if (stays_.insert(stay).second) {
            open_.push_back({true, stay});
        }
    }
    // A transfer or a finish.
    void addIn(const EntryId& in)
    {
        if (ins_.insert(in).second) {
            open_.push_back({false, in});
        }
    }

    Result<Downward> all()
    {
        while (!open_.empty()) {
            const Open next = open_.back();
            open_.pop_back();
            SPILE_TRY(next.stay ? leaveBarrel(next.entry) : leaveLot(next.entry));
        }
        std::stable_sort(
            found_.packages.begin(), found_.packages.end(),
            [](const Reached& a, const Reached& b) { return a.package.at < b.package.at; });
        return std::move(found_);
    }

private:
    struct Open {
        bool stay;
        EntryId entry;
    };

    Result<void> leaveBarrel(const EntryId& stay)
    {
        SPILE_TRY(tellBarrel(stay));
        SPILE_ASSIGN(transfers, cellar::transfersOf(database_, stay));
        std::for_each(transfers.begin(), transfers.end(),
                      [&](const EntryId& transfer) { addIn(transfer); });
        return {};
    }

    Result<void> leaveLot(const EntryId& in)
    {
        SPILE_ASSIGN(lot, cellar::lotOf(database_, in));
        if (lot && lots_.insert(*lot).second) {
            SPILE_ASSIGN(name, cellar::nameOf(database_, "lot", *lot));
            found_.lots.push_back({*lot, name, 0});
        }
        SPILE_ASSIGN(mixes, cellar::mixesWith(database_, in));
        for (const EntryId& mix : mixes) {
            if (!mixes_.insert(mix).second) {
                continue;
            }
            SPILE_ASSIGN(taken, cellar::takenOf(database_, mix));
            for (const WayOut& out : taken) {
                SPILE_TRY(follow(out));
            }
        }
        return {};
    }

    Result<void> follow(const WayOut& out)
    {
        switch (out.kind) {
            case WayKind::Package:
                return tellPackage(out);
            case WayKind::Fill:
            case WayKind::TopUp:
                addStay(out.entry);
                return {};
            case WayKind::Transfer:
                addIn(out.entry);
                return {};
            case WayKind::Discard:
                return {};
        }
        return {};
    }

    Result<void> tellPackage(const WayOut& out)
    {
        SPILE_ASSIGN(package, cellar::packagedBy(database_, out.entry));
        if (package) {
            SPILE_ASSIGN(releases, cellar::releasesOf(database_, out.entry));
            SPILE_ASSIGN(name, cellar::nameOf(database_, "lot", package->lot));
            found_.packages.push_back({std::move(*package), name, std::move(releases)});
        }
        return {};
    }

    Result<void> tellBarrel(const EntryId& stay)
    {
        SPILE_ASSIGN(direct, cellar::wayFill(database_, stay));
        std::optional<cellar::WayFill> fill = direct;
        if (!fill) {
            SPILE_ASSIGN(under, cellar::stayOfTopUp(database_, stay));
            if (under) {
                SPILE_ASSIGN(found, cellar::wayFill(database_, *under));
                fill = found;
            }
        }
        if (!fill || !barrels_.insert(fill->entry).second) {
            return {};
        }
        SPILE_ASSIGN(past, cellar::pastOf(database_, *fill));
        found_.barrels.push_back(
            {fill->barrel, past.mark.empty() ? past.code : past.mark, !past.emptied});
        return {};
    }

    ledger::Database& database_;
    Downward found_;
    std::vector<Open> open_;
    std::set<EntryId> stays_, ins_, mixes_, barrels_;
    std::set<SubjectId> lots_;
};

}  // namespace

Result<Downward> down(ledger::Database& database, const Start& start)
{
    Descending descending(database);
    const auto addStays = [&](const Result<std::vector<EntryId>>& stays) -> Result<void> {
        if (!stays) {
            return tl::unexpected(stays.error());
        }
        std::for_each(stays->begin(), stays->end(),
                      [&](const EntryId& stay) { descending.addStay(stay); });
        return {};
    };
    switch (start.what) {
        case Start::What::Barrel:
            SPILE_TRY(addStays(cellar::fillsOfBarrel(database, start.subject)));
            break;
        case Start::What::Batch:
            SPILE_TRY(addStays(cellar::fillsOfBatch(database, start.subject)));
            SPILE_TRY(addStays(cellar::topUpsOfBatch(database, start.subject)));
            break;
        case Start::What::Fill:
            descending.addStay(start.fill);
            break;
        case Start::What::Lot: {
            SPILE_ASSIGN(ins, cellar::waysInto(database, start.subject));
            for (const cellar::WayIn& in : ins) {
                descending.addIn(in.entry);
            }
            break;
        }
        case Start::What::Substance: {
            SPILE_ASSIGN(finishes, cellar::finishesOf(database, start.substance));
            std::for_each(finishes.begin(), finishes.end(),
                          [&](const EntryId& finish) { descending.addIn(finish); });
            break;
        }
    }
    return descending.all();
}

}  // namespace spile::trace
