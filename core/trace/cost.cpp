#include "core/cellar/lots.hpp"
#include "core/cellar/ways.hpp"
#include "core/trace/reports.hpp"

#include <map>
#include <set>

namespace spile::trace {

using cellar::CostRow;
using cellar::WayFill;
using cellar::WayIn;

namespace {

double sumOf(const std::vector<CostRow>& costs)
{
    double sum = 0;
    for (const CostRow& cost : costs) {
        sum += cost.cost;
    }
    return sum;
}

// Adds up what beer cost, lot by lot.
class Costing {
public:
    explicit Costing(ledger::Database& database) : database_(database) {}

    Result<LotCost> of(const SubjectId& lot)
    {
        LotCost cost;
        cost.lot = lot;
        SPILE_ASSIGN(row, cellar::lotById(database_, lot));
        if (!row) {
            return fail(ErrorCode::NotFound, "lot", lot.hex(), "one that is registered");
        }
        cost.name = row->name;
        open_.insert(lot);
        SPILE_ASSIGN(ins, cellar::waysInto(database_, lot));
        for (const WayIn& in : ins) {
            if (!in.finish) {
                SPILE_TRY(comeIn(in, cost));
            }
        }
        SPILE_ASSIGN(own, cellar::costsOf(database_, lot));
        cost.own = sumOf(own);
        cost.whole = cost.own + cost.passedOn;
        for (const StayCost& stay : cost.stays) {
            cost.whole += stay.beerCost + stay.barrelCost;
        }
        SPILE_ASSIGN(outs, cellar::waysOutOf(database_, lot));
        for (const cellar::WayOut& out : outs) {
            if (out.kind == cellar::WayKind::Package) {
                cost.packaged = cost.packaged + (out.volume - out.lost);
            }
        }
        const Volume base = cost.packaged > Volume{} ? cost.packaged : cost.in;
        if (base > Volume{}) {
            cost.perLitre = cost.whole / inLitres(base);
        }
        open_.erase(lot);
        return cost;
    }

private:
    Result<void> comeIn(const WayIn& in, LotCost& cost)
    {
        const Volume volume = in.volume.value_or(Volume{});
        cost.in = cost.in + volume;
        if (!in.source) {
            cost.complete = false;
            return {};
        }
        SPILE_ASSIGN(fill, cellar::wayFill(database_, *in.source));
        if (!fill) {
            SPILE_ASSIGN(price, lotPrice(in.from, cost));
            cost.passedOn += price * inLitres(volume);
            return {};
        }
        SPILE_ASSIGN(stay, stayCost(*fill, in, cost));
        cost.stays.push_back(std::move(stay));
        return {};
    }

    Result<StayCost> stayCost(const WayFill& fill, const WayIn& in, LotCost& cost)
    {
        StayCost stay;
        stay.into = in.volume.value_or(Volume{});
        SPILE_ASSIGN(past, cellar::pastOf(database_, fill));
        stay.barrelName = past.mark.empty() ? past.code : past.mark;
        SPILE_ASSIGN(out, cellar::outOf(database_, fill.entry));
        const double share = out > Volume{} ? stay.into / out : 1;
        SPILE_ASSIGN(beer, beerCost(fill.batch, fill.lot, fill.volume.value_or(stay.into), cost));
        SPILE_ASSIGN(topUps, cellar::topUpsOf(database_, in.entry));
        double topped = 0;
        for (const cellar::WayTopUp& topUp : topUps) {
            SPILE_ASSIGN(one, beerCost(topUp.batch, topUp.lot, topUp.volume, cost));
            topped += one;
        }
        SPILE_ASSIGN(barrel, barrelCost(fill.barrel, cost));
        stay.beerCost = share * (beer + topped);
        stay.barrelCost = share * barrel;
        if (stay.into > Volume{}) {
            stay.perLitre = (stay.beerCost + stay.barrelCost) / inLitres(stay.into);
        }
        if (fill.batch) {
            SPILE_ASSIGN(name, cellar::nameOf(database_, "batch", *fill.batch));
            stay.beer = name;
        }
        SPILE_ASSIGN(ended, cellar::stayEnded(database_, fill.entry));
        if (ended) {
            stay.evaporated = unexplainedLoss(*ended);
        }
        return stay;
    }

    Result<double> beerCost(const std::optional<SubjectId>& batch,
                            const std::optional<SubjectId>& lot, Volume volume, LotCost& cost)
    {
        if (lot) {
            SPILE_ASSIGN(price, lotPrice(*lot, cost));
            return price * inLitres(volume);
        }
        if (!batch) {
            cost.complete = false;
            return 0.0;
        }
        SPILE_ASSIGN(rows, cellar::costsOf(database_, *batch));
        cost.complete &= !rows.empty();
        double price = 0;
        for (const CostRow& row : rows) {
            SPILE_ASSIGN(filled, cellar::filledOf(database_, *batch));
            const Volume paid = row.forVolume.value_or(filled);
            price += paid > Volume{} ? row.cost / inLitres(paid) : 0;
        }
        return price * inLitres(volume);
    }

    Result<double> barrelCost(const SubjectId& barrel, LotCost& cost)
    {
        SPILE_ASSIGN(rows, cellar::costsOf(database_, barrel));
        SPILE_ASSIGN(fills, cellar::fillsIn(database_, barrel));
        cost.complete &= !rows.empty();
        double sum = 0;
        for (const CostRow& row : rows) {
            sum += row.cost / static_cast<double>(
                                  std::max<std::int64_t>(1, row.fillsExpected.value_or(fills)));
        }
        return sum;
    }

    // Per litre that came into it. Beer that was pumped to and fro costs there what it cost before.
    Result<double> lotPrice(const SubjectId& lot, LotCost& asking)
    {
        if (open_.contains(lot)) {
            asking.complete = false;
            return 0.0;
        }
        auto known = prices_.find(lot);
        if (known == prices_.end()) {
            SPILE_ASSIGN(cost, of(lot));
            known = prices_
                        .emplace(lot, Price{cost.in > Volume{} ? cost.whole / inLitres(cost.in) : 0,
                                            cost.complete})
                        .first;
        }
        asking.complete &= known->second.complete;
        return known->second.perLitre;
    }

    struct Price {
        double perLitre = 0;
        bool complete = true;
    };
    ledger::Database& database_;
    std::set<SubjectId> open_;
    std::map<SubjectId, Price> prices_;
};

}  // namespace

Result<LotCost> costOfLot(ledger::Database& database, const SubjectId& lot)
{
    return Costing(database).of(lot);
}

}  // namespace spile::trace
