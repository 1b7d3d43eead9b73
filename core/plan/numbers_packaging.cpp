// A lot into packages: how many, and what stands on them.
#include "core/gas/carbonation.hpp"
#include "core/plan/numbers_parts.hpp"
#include "core/plan/packaging.hpp"

#include <algorithm>
#include <array>
#include <limits>

namespace spile::plan {

namespace {

constexpr double e4 = 1e4;
constexpr double usualLoss = 0.03;
constexpr double strengthError = 0.002;  // of a measured strength: common practice

struct Kind {
    const char *package, *most, *count;
};
constexpr std::array kinds = {Kind{"package_a", "most_a", "count_a"},
                              Kind{"package_b", "most_b", "count_b"},
                              Kind{"package_c", "", "count_c"}};

const Package* packageNamed(const std::string& name)
{
    const auto all = packages();
    const auto found =
        std::find_if(all.begin(), all.end(), [&](const Package& one) { return one.name == name; });
    return found == all.end() ? nullptr : &*found;
}

struct Planned {
    std::array<std::size_t, kinds.size()> counts{};
    Packed all;
};

// What was chosen is filled in its order.
Result<Planned> planOf(const WorkFacts& facts)
{
    SPILE_ASSIGN(lot, needLotFacts(facts));
    std::vector<PackageOrder> orders;
    std::vector<std::size_t> which;
    for (std::size_t i = 0; i < kinds.size(); ++i) {
        if (const Package* package = packageNamed(chosen(facts, kinds[i].package))) {
            const auto most = answered(facts, kinds[i].most);
            orders.push_back({package->content, most ? static_cast<std::size_t>(*most)
                                                     : std::numeric_limits<std::size_t>::max()});
            which.push_back(i);
        }
    }
    if (orders.empty()) {
        return fail(ErrorCode::NotFound, "package_a", "nothing", "into what it goes");
    }
    const auto loss = answered(facts, "loss_e2");
    std::vector<std::size_t> counts(orders.size());
    SPILE_ASSIGN(packed, packOrders(std::max(lot.row.left(), Volume()),
                                    loss ? *loss / e4 : usualLoss, orders, counts));
    Planned planned;
    planned.all = packed;
    for (std::size_t i = 0; i < which.size(); ++i) {
        planned.counts.at(which[i]) = counts[i];
    }
    return planned;
}

SheetNumber planned(const WorkFacts& facts, std::size_t kind)
{
    return numberFrom(planOf(facts), [&](const Planned& plan) {
        return said(Form::Count, static_cast<double>(plan.counts.at(kind)));
    });
}
SheetNumber packsA(const WorkFacts& facts) { return planned(facts, 0); }
SheetNumber packsB(const WorkFacts& facts) { return planned(facts, 1); }
SheetNumber packsC(const WorkFacts& facts) { return planned(facts, 2); }

SheetNumber packRest(const WorkFacts& facts)
{
    return numberFrom(planOf(facts),
                      [](const Planned& plan) { return said(Form::Volume, plan.all.rest.si()); });
}

SheetNumber packLost(const WorkFacts& facts)
{
    const auto found = [&]() -> Result<Volume> {
        SPILE_ASSIGN(lot, needLotFacts(facts));
        return lot.row.left() - cellar::contentOf(packagesOf(facts));
    }();
    return numberFrom(found, [](Volume lost) {
        SheetNumber number = said(Form::Volume, lost.si());
        number.caution = lost < Volume();
        return number;
    });
}

SheetNumber holdState(const WorkFacts& facts)
{
    return numberFrom(needLotFacts(facts), [](const LotFacts& lot) {
        const auto& holds = lot.history.holds;
        const auto open = std::find_if(holds.begin(), holds.end(),
                                       [](const cellar::HoldRow& hold) { return !hold.cleared; });
        if (open == holds.end()) {
            return inWord("nothing is held");
        }
        SheetNumber number = inWord(open->reason);
        number.caution = true;
        number.refuses = true;
        return number;
    });
}

SheetNumber lotCo2(const WorkFacts& facts)
{
    return numberFrom(needLotFacts(facts), [](const LotFacts& lot) {
        if (lot.history.carbonations.empty()) {
            return unknown("volumes_e2");
        }
        SheetNumber number = said(Form::Co2, lot.history.carbonations.back().volumes);
        number.caution = number.value >= gas::bottleVolumesCaution;
        return number;
    });
}

Result<LabelCheck> labelOf(const WorkFacts& facts)
{
    const std::string law = chosen(facts, "law");
    if (law.empty()) {
        return fail(ErrorCode::NotFound, "law", "nothing", "whose rules");
    }
    SPILE_ASSIGN(measured, needAnswer(facts, "abv_e2"));
    SPILE_ASSIGN(rounded, labelStrength(measured / e4));
    const auto label = answered(facts, "label_abv_e2");
    return checkLabel(law == "US" ? LabelLaw::UnitedStates : LabelLaw::EuropeanUnion,
                      label ? *label / e4 : rounded, measured / e4, strengthError);
}

SheetNumber labelTolerance(const WorkFacts& facts)
{
    return numberFrom(labelOf(facts), [](const LabelCheck& label) {
        return said(Form::StrengthRise, label.tolerance);
    });
}

SheetNumber labelVerdict(const WorkFacts& facts)
{
    return numberFrom(labelOf(facts), [](const LabelCheck& label) {
        switch (label.verdict) {
            case LabelVerdict::Within:
                return inWord("within the tolerance");
            case LabelVerdict::Unsure:
            case LabelVerdict::Outside:
                break;
        }
        SheetNumber number =
            inWord(label.verdict == LabelVerdict::Unsure
                       ? "perhaps outside the tolerance: the measurement cannot tell"
                       : "outside the tolerance");
        number.caution = true;
        return number;
    });
}

constexpr std::array specs = {
    NumberSpec{"hold_state", holdState},
    NumberSpec{"lot_co2", lotCo2},
    NumberSpec{"packs_a", packsA},
    NumberSpec{"packs_b", packsB},
    NumberSpec{"packs_c", packsC},
    NumberSpec{"pack_rest", packRest},
    NumberSpec{"pack_lost", packLost},
    NumberSpec{"label_tolerance", labelTolerance},
    NumberSpec{"label_verdict", labelVerdict},
};

}  // namespace

std::span<const NumberSpec> packagingNumbers() { return specs; }

std::vector<cellar::PackageCount> packagesOf(const WorkFacts& facts)
{
    const auto plan = planOf(facts);
    std::vector<cellar::PackageCount> counts;
    for (std::size_t i = 0; i < kinds.size(); ++i) {
        const Package* package = packageNamed(chosen(facts, kinds.at(i).package));
        const auto counted = answered(facts, kinds.at(i).count);
        const double count = counted ? *counted
                             : plan  ? static_cast<double>(plan->counts.at(i))
                                     : 0;
        if (package != nullptr && count > 0) {
            counts.push_back(
                {std::string(package->name), package->content, static_cast<std::int64_t>(count)});
        }
    }
    return counts;
}

std::string lotCodeOf(Instant day, char letter)
{
    using std::chrono::sys_days;
    using std::chrono::year_month_day;
    const auto date = std::chrono::floor<std::chrono::days>(day);
    const year_month_day parts(date);
    const auto ofYear = (date - sys_days(parts.year() / std::chrono::January / 1)).count() + 1;
    std::string number = std::to_string(1000 + ofYear).substr(1);
    constexpr int century = 100;
    return std::to_string(century + static_cast<int>(parts.year()) % century).substr(1) + number +
           letter;
}

}  // namespace spile::plan
