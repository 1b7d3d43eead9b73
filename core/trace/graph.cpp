#include "core/trace/graph.hpp"

#include <algorithm>
#include <array>
#include <span>
#include <tuple>

namespace spile::trace {

using cellar::WayIn;
using cellar::WayOut;
using cellar::WayTopUp;

namespace {

class Reading {
public:
    explicit Reading(ledger::Database& database) : database_(database) {}

    Result<Graph> above(const SubjectId& lot)
    {
        want(lot);
        while (!wanted_.empty()) {
            const SubjectId next = wanted_.back();
            wanted_.pop_back();
            SPILE_TRY(readLot(next));
        }
        return std::move(graph_);
    }

private:
    void want(const SubjectId& lot)
    {
        if (known_.insert(lot).second) {
            wanted_.push_back(lot);
        }
    }

    std::size_t nodeOf(const EntryId& entry, Node::Kind kind)
    {
        const auto [at, fresh] = graph_.byEntry.try_emplace(entry, graph_.nodes.size());
        if (fresh) {
            Node& node = graph_.nodes.emplace_back();
            node.entry = entry;
            node.kind = kind;
        }
        return at->second;
    }

    Result<void> readLot(const SubjectId& lot)
    {
        SPILE_ASSIGN(ins, cellar::waysInto(database_, lot));
        for (const WayIn& in : ins) {
            SPILE_TRY(addIn(lot, in));
        }
        SPILE_ASSIGN(outs, cellar::waysOutOf(database_, lot));
        for (const WayOut& out : outs) {
            addOut(out);
        }
        SPILE_ASSIGN(mixes, cellar::mixesOf(database_, lot));
        for (const cellar::MixSource& row : mixes) {
            std::vector<std::size_t>& sources = graph_.mixes[row.mix];
            const auto found = graph_.byEntry.find(row.source);
            if (found != graph_.byEntry.end()) {
                sources.push_back(found->second);
            } else if (graph_.takenBack.empty() || graph_.takenBack.back() != lot) {
                graph_.takenBack.push_back(lot);
            }
        }
        return {};
    }

    Result<void> addIn(const SubjectId& lot, const WayIn& in)
    {
        const std::size_t at =
            nodeOf(in.entry, in.finish ? Node::Kind::Finish : Node::Kind::Transfer);
        graph_.ins[lot].push_back(at);
        {
            Node& node = graph_.nodes[at];
            node.subject = lot;
            node.order = in.order;
            node.volume = in.volume;
            node.alcoholByVolume = in.alcoholByVolume;
            node.specificGravity = in.specificGravity;
            node.substance = in.substance;
            node.allergen = in.allergen;
            node.mass = in.mass;
            node.person = in.person;
        }
        return in.finish ? Result<void>() : addHeld(at, in);
    }

    // Out of a barrel: what it held. Out of a lot: that lot too.
    Result<void> addHeld(std::size_t at, const WayIn& in)
    {
        if (!in.source) {
            graph_.cutShort.push_back(graph_.nodes[at].subject);
            return {};
        }
        SPILE_ASSIGN(fill, fillOf(*in.source));
        if (!fill) {
            return wantLotOf(at, *in.source);
        }
        std::vector<std::size_t> held = {*fill};
        SPILE_ASSIGN(topUps, cellar::topUpsOf(database_, in.entry));
        for (const WayTopUp& topUp : topUps) {
            held.push_back(addTopUp(topUp));
        }
        graph_.nodes[at].held = std::move(held);
        return {};
    }

    Result<void> wantLotOf(std::size_t at, const EntryId& mix)
    {
        SPILE_ASSIGN(lot, cellar::lotOf(database_, mix));
        if (lot) {
            want(*lot);
        } else {
            graph_.cutShort.push_back(graph_.nodes[at].subject);
        }
        return {};
    }

    Result<std::optional<std::size_t>> fillOf(const EntryId& entry)
    {
        const auto known = graph_.byEntry.find(entry);
        if (known != graph_.byEntry.end() && seen_.contains(known->second)) {
            return std::optional(known->second);
        }
        SPILE_ASSIGN(found, cellar::wayFill(database_, entry));
        if (!found) {
            return std::optional<std::size_t>();
        }
        const std::size_t at = nodeOf(entry, Node::Kind::Fill);
        seen_.insert(at);
        Node& node = graph_.nodes[at];
        node.subject = found->barrel;
        node.order = found->order;
        node.volume = found->volume;
        node.alcoholByVolume = found->alcoholByVolume;
        node.batch = found->batch;
        node.person = found->person;
        if (found->lot) {
            node.mix = found->source;
            want(*found->lot);
        }
        return std::optional(at);
    }

    std::size_t addTopUp(const WayTopUp& topUp)
    {
        const std::size_t at = nodeOf(topUp.entry, Node::Kind::TopUp);
        Node& node = graph_.nodes[at];
        node.subject = topUp.barrel;
        node.order = topUp.order;
        node.volume = topUp.volume;
        node.batch = topUp.batch;
        node.substance = topUp.substance;
        node.person = topUp.person;
        if (topUp.lot) {
            node.mix = topUp.source;
            want(*topUp.lot);
        }
        return at;
    }

    void addOut(const WayOut& out)
    {
        static constexpr std::array kinds = {Node::Kind::Package, Node::Kind::Fill,
                                             Node::Kind::TopUp, Node::Kind::Transfer,
                                             Node::Kind::Discard};
        Node& node = graph_.nodes[nodeOf(out.entry, kinds.at(static_cast<std::size_t>(out.kind)))];
        node.subject = out.subject;
        node.order = out.order;
        node.mix = out.mix;
        node.volume = out.volume;
        node.lost = out.lost;
    }

    ledger::Database& database_;
    Graph graph_;
    std::set<SubjectId> known_;
    std::vector<SubjectId> wanted_;
    std::set<std::size_t> seen_;  // fills that were read whole, not only as what a lot gave
};

// What a record descends from directly.
std::span<const std::size_t> sourcesOf(const Graph& graph, const Node& node)
{
    if (!node.held.empty()) {
        return node.held;
    }
    const auto mix = node.mix ? graph.mixes.find(*node.mix) : graph.mixes.end();
    return mix == graph.mixes.end() ? std::span<const std::size_t>() : mix->second;
}

// Ranks by a walk without recursion: a line of lots may be very long.
class Ranking {
public:
    explicit Ranking(Graph& graph) : graph_(graph), marks_(graph.nodes.size(), Mark::New) {}

    void all()
    {
        for (std::size_t start = 0; start < graph_.nodes.size(); ++start) {
            open_.push_back(start);
            while (!open_.empty()) {
                step();
            }
        }
    }

private:
    enum class Mark : std::uint8_t { New, Open, Done };

    // What a record descends from comes first; then the record.
    void step()
    {
        const std::size_t at = open_.back();
        Node& node = graph_.nodes[at];
        if (marks_[at] == Mark::New) {
            marks_[at] = Mark::Open;
            for (const std::size_t source : sourcesOf(graph_, node)) {
                if (marks_[source] == Mark::New) {
                    open_.push_back(source);
                }
            }
            return;
        }
        open_.pop_back();
        if (marks_[at] == Mark::Open) {
            marks_[at] = Mark::Done;
            for (const std::size_t source : sourcesOf(graph_, node)) {
                node.rank = std::max(node.rank, graph_.nodes[source].rank + 1);
            }
        }
    }

    Graph& graph_;
    std::vector<Mark> marks_;
    std::vector<std::size_t> open_;
};

}  // namespace

const Node* Graph::find(const EntryId& entry) const
{
    const auto found = byEntry.find(entry);
    return found == byEntry.end() ? nullptr : &nodes[found->second];
}

Result<Graph> graphAbove(ledger::Database& database, const SubjectId& lot)
{
    SPILE_ASSIGN(graph, Reading(database).above(lot));
    Ranking(graph).all();
    graph.order.resize(graph.nodes.size());
    for (std::size_t i = 0; i < graph.order.size(); ++i) {
        graph.order[i] = i;
    }
    std::sort(graph.order.begin(), graph.order.end(), [&](std::size_t a, std::size_t b) {
        const Node& left = graph.nodes[a];
        const Node& right = graph.nodes[b];
        return std::tie(left.rank, left.order, left.entry) <
               std::tie(right.rank, right.order, right.entry);
    });
    return std::move(graph);
}

}  // namespace spile::trace
