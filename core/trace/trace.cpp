#include "core/trace/trace.hpp"

#include "core/trace/account.hpp"

#include <algorithm>
#include <map>
#include <set>

namespace spile::trace {

using cellar::BarrelPast;
using cellar::WayFill;

namespace {

// Goes up from what was taken, the latest records first, and shares out what passes each.
class Climbing {
public:
    Climbing(ledger::Database& database, const Graph& graph, const Account& account)
        : database_(database), graph_(graph), account_(account), flow_(graph.nodes.size(), 0.0)
    {
    }

    void begin(std::size_t node) { flow_[node] = 1; }

    void beginWithLot(const SubjectId& lot)
    {
        const auto ins = graph_.ins.find(lot);
        if (ins == graph_.ins.end()) {
            return;
        }
        lots_[lot] = 1;
        const auto massOf = [&](const std::vector<liquor::Liquor>& amounts) {
            Mass sum{};
            for (const std::size_t in : ins->second) {
                sum = sum + amounts[in].mass();
            }
            return sum;
        };
        const bool some = massOf(account_.left) > Mass{};
        const std::vector<liquor::Liquor>& amounts = some ? account_.left : account_.into;
        const Mass whole = massOf(amounts);
        for (const std::size_t in : ins->second) {
            if (graph_.nodes[in].kind == Node::Kind::Finish) {
                finishes_.insert(in);
            }
            if (whole > Mass{}) {
                flow_[in] += amounts[in].mass() / whole;
            }
        }
    }

    Result<void> climb(Upward& found)
    {
        for (std::size_t left = graph_.order.size(); left > 0; --left) {
            const std::size_t at = graph_.order[left - 1];
            if (flow_[at] > 0) {
                SPILE_TRY(pass(at, found));
            }
        }
        SPILE_TRY(tellLots(found));
        SPILE_TRY(tellAdditions(found));
        tellHands(found);
        const auto greatest = [](const auto& a, const auto& b) { return a.share > b.share; };
        std::stable_sort(found.stays.begin(), found.stays.end(), greatest);
        std::stable_sort(found.beginnings.begin(), found.beginnings.end(), greatest);
        return {};
    }

private:
    Result<void> pass(std::size_t at, Upward& found)
    {
        const Node& node = graph_.nodes[at];
        SPILE_TRY(noteHand(node));
        if (node.mix) {
            passLot(at, node, found);
        }
        switch (node.kind) {
            case Node::Kind::Fill:
                SPILE_TRY(tellStay(at, node, found));
                return node.mix ? Result<void>() : beginWith(at, node, found);
            case Node::Kind::TopUp:
                return node.mix ? Result<void>() : beginWith(at, node, found);
            case Node::Kind::Transfer:
                passBarrel(at, node);
                return {};
            default:
                return {};
        }
    }

    void passLot(std::size_t at, const Node& node, Upward& found)
    {
        if (account_.parts[at].empty()) {  // more was taken than had come in
            addBeginning({std::nullopt, {}, flow_[at]}, found);
        }
        const Mass whole = account_.taken(at).mass();
        for (const Part& part : account_.parts[at]) {
            flow_[part.in] += flow_[at] * (part.liquor.mass() / whole);
        }
        const auto mix = graph_.mixes.find(*node.mix);
        if (mix == graph_.mixes.end() || mix->second.empty()) {
            return;
        }
        lots_[graph_.nodes[mix->second.front()].subject] += flow_[at];
        for (const std::size_t in : mix->second) {
            if (graph_.nodes[in].kind == Node::Kind::Finish) {
                finishes_.insert(in);
            }
        }
    }

    // What came out of a barrel was its fill and its top-ups, by their volumes.
    void passBarrel(std::size_t at, const Node& node)
    {
        if (node.held.empty()) {
            return;
        }
        const auto volumeOf = [&](std::size_t held) {
            return graph_.nodes[held].volume.value_or(node.volume.value_or(Volume{}));
        };
        Volume whole{};
        for (const std::size_t held : node.held) {
            whole = whole + volumeOf(held);
            Instant& until = lastOut_[held];
            until = std::max(until, node.order.at);
        }
        for (const std::size_t held : node.held) {
            flow_[held] += flow_[at] * (whole > Volume{} ? volumeOf(held) / whole : 0);
        }
    }

    Result<void> tellStay(std::size_t at, const Node& node, Upward& found)
    {
        WayFill fill;
        fill.entry = node.entry;
        fill.barrel = node.subject;
        fill.order = node.order;
        SPILE_ASSIGN(past, cellar::pastOf(database_, fill));
        Stay stay;
        stay.fill = node.entry;
        stay.barrel = node.subject;
        stay.barrelName = past.mark.empty() ? past.code : past.mark;
        stay.code = past.code;
        stay.spirit = past.spirit;
        stay.fillNumber = past.fillNumber;
        stay.heldBefore = std::move(past.beers);
        stay.filled = node.order.at;
        stay.emptied = past.emptied;
        stay.share = flow_[at];
        if (node.batch) {
            SPILE_ASSIGN(beer, batchName(*node.batch));
            stay.beer = beer;
        }
        if (past.emptiedBy) {
            SPILE_TRY(noteHand(*past.emptiedBy, "empty"));
        }
        SPILE_ASSIGN(doses, cellar::dosesFor(database_, fill, lastOut_[at]));
        for (const cellar::DoseRow& dose : doses) {
            found.additions.push_back({dose.entry,
                                       dose.substance,
                                       stay.barrelName,
                                       {},
                                       dose.mass,
                                       dose.volume,
                                       dose.at,
                                       0,
                                       true});
        }
        found.stays.push_back(std::move(stay));
        return {};
    }

    Result<void> beginWith(std::size_t at, const Node& node, Upward& found)
    {
        Beginning beginning{node.batch, node.substance, flow_[at]};
        if (node.batch) {
            SPILE_ASSIGN(name, batchName(*node.batch));
            beginning.name = name;
        }
        addBeginning(std::move(beginning), found);
        return {};
    }

    static void addBeginning(Beginning beginning, Upward& found)
    {
        const auto same = std::find_if(
            found.beginnings.begin(), found.beginnings.end(), [&](const Beginning& known) {
                return known.batch == beginning.batch && known.name == beginning.name;
            });
        if (same == found.beginnings.end()) {
            found.beginnings.push_back(std::move(beginning));
        } else {
            same->share += beginning.share;
        }
    }

    Result<void> tellLots(Upward& found)
    {
        for (const auto& [lot, share] : lots_) {
            SPILE_ASSIGN(name, cellar::nameOf(database_, "lot", lot));
            found.lots.push_back({lot, name, share});
        }
        std::stable_sort(found.lots.begin(), found.lots.end(),
                         [&](const LotPassed& a, const LotPassed& b) {
                             const bool first = a.lot == found.lot;
                             const bool second = b.lot == found.lot;
                             return first != second ? first : a.share > b.share;
                         });
        const auto odd = [&](const SubjectId& lot, Oddity oddity) -> Result<void> {
            if (lots_.contains(lot)) {
                SPILE_ASSIGN(name, cellar::nameOf(database_, "lot", lot));
                oddity.subject = name;
                found.oddities.push_back(std::move(oddity));
            }
            return {};
        };
        for (std::size_t i = 0; i < account_.oddities.size(); ++i) {
            SPILE_TRY(odd(account_.oddLots[i], account_.oddities[i]));
        }
        for (const SubjectId& lot : graph_.cutShort) {
            SPILE_TRY(odd(lot, {Oddity::What::FillUnknown, {}, {}}));
        }
        for (const SubjectId& lot : graph_.takenBack) {
            SPILE_TRY(odd(lot, {Oddity::What::TakenBack, {}, {}}));
        }
        return {};
    }

    Result<void> tellAdditions(Upward& found)
    {
        for (const std::size_t at : finishes_) {
            const Node& node = graph_.nodes[at];
            SPILE_TRY(noteHand(node));
            SPILE_ASSIGN(name, cellar::nameOf(database_, "lot", node.subject));
            found.additions.push_back({node.entry, node.substance, name, node.allergen, node.mass,
                                       node.volume, node.order.at, flow_[at]});
        }
        std::stable_sort(found.additions.begin(), found.additions.end(),
                         [](const Addition& a, const Addition& b) { return a.at < b.at; });
        return {};
    }

    void tellHands(Upward& found) const
    {
        for (const auto& [name, hand] : hands_) {
            found.hands.push_back({hand.person, name, {hand.did.begin(), hand.did.end()}});
        }
    }

    Result<void> noteHand(const Node& node)
    {
        static const std::map<Node::Kind, std::string> words = {
            {Node::Kind::Fill, "fill"},         {Node::Kind::TopUp, "top_up"},
            {Node::Kind::Transfer, "transfer"}, {Node::Kind::Finish, "finish"},
            {Node::Kind::Package, "package"},   {Node::Kind::Discard, "discard"}};
        return node.person ? noteHand(*node.person, words.at(node.kind)) : Result<void>();
    }

    Result<void> noteHand(const SubjectId& person, const std::string& did)
    {
        auto known = names_.find(person);
        if (known == names_.end()) {
            SPILE_ASSIGN(name, cellar::nameOf(database_, "person", person));
            known = names_.emplace(person, name).first;
        }
        HandSoFar& hand = hands_[known->second];
        hand.person = person;
        hand.did.insert(did);
        return {};
    }

    Result<std::string> batchName(const SubjectId& batch)
    {
        const auto known = names_.find(batch);
        if (known != names_.end()) {
            return known->second;
        }
        SPILE_ASSIGN(name, cellar::nameOf(database_, "batch", batch));
        names_.emplace(batch, name);
        return name;
    }

    struct HandSoFar {
        std::optional<SubjectId> person;
        std::set<std::string> did;
    };

    ledger::Database& database_;
    const Graph& graph_;
    const Account& account_;
    std::vector<double> flow_;  // of the traced beer, that passed each record
    std::map<SubjectId, double> lots_;
    std::set<std::size_t> finishes_;
    std::map<std::size_t, Instant> lastOut_;  // of what a barrel held
    std::map<SubjectId, std::string> names_;
    std::map<std::string, HandSoFar> hands_;
};

}  // namespace

Result<Upward> upFromPackage(ledger::Database& database, const EntryId& package)
{
    SPILE_ASSIGN(row, cellar::packagedBy(database, package));
    if (!row) {
        return fail(ErrorCode::NotFound, "package", package.hex(), "packages that are recorded");
    }
    SPILE_ASSIGN(graph, graphAbove(database, row->lot));
    SPILE_ASSIGN(account, accountOf(graph));
    Upward found;
    found.lot = row->lot;
    found.lotCode = row->lotCode;
    found.volume = row->volume;
    SPILE_ASSIGN(name, cellar::nameOf(database, "lot", row->lot));
    found.name = name;
    Climbing climbing(database, graph, account);
    const auto at = graph.byEntry.find(package);
    if (at != graph.byEntry.end()) {
        climbing.begin(at->second);
    }
    SPILE_TRY(climbing.climb(found));
    if (!row->person.empty()) {
        const auto known = std::find_if(found.hands.begin(), found.hands.end(),
                                        [&](const Hand& hand) { return hand.name == row->person; });
        if (known == found.hands.end()) {
            found.hands.push_back({std::nullopt, row->person, {"package"}});
        } else {
            known->did.emplace_back("package");
        }
    }
    return found;
}

Result<Upward> upFromLot(ledger::Database& database, const SubjectId& lot)
{
    SPILE_ASSIGN(row, cellar::lotById(database, lot));
    if (!row) {
        return fail(ErrorCode::NotFound, "lot", lot.hex(), "one that is registered");
    }
    SPILE_ASSIGN(graph, graphAbove(database, lot));
    SPILE_ASSIGN(account, accountOf(graph));
    Upward found;
    found.lot = lot;
    found.name = row->name;
    found.volume = row->left() > Volume{} ? row->left() : row->in;
    Climbing climbing(database, graph, account);
    climbing.beginWithLot(lot);
    SPILE_TRY(climbing.climb(found));
    return found;
}

}  // namespace spile::trace
