#include "core/trace/account.hpp"

#include "core/liquor/extract.hpp"

#include <algorithm>
#include <numeric>

namespace spile::trace {

using liquor::Liquor;

namespace {

constexpr Liquor nothing{};
constexpr double readingError = 1e-9;  // a volume that exceeds by less is a rounding

Liquor sumOf(const Graph& graph, const std::vector<Liquor>& amounts, const EntryId& mix)
{
    const auto sources = graph.mixes.find(mix);
    Liquor sum = nothing;
    if (sources != graph.mixes.end()) {
        for (const std::size_t in : sources->second) {
            sum = sum + amounts[in];
        }
    }
    return sum;
}

class Following {
public:
    explicit Following(const Graph& graph) : graph_(graph)
    {
        const std::size_t count = graph.nodes.size();
        account_.into.resize(count);
        account_.left.resize(count);
        account_.parts.resize(count);
    }

    Result<Account> all()
    {
        for (const std::size_t at : graph_.order) {
            const Node& node = graph_.nodes[at];
            if (node.mix && node.volume) {
                SPILE_TRY(take(at, node));
            }
            if (node.kind == Node::Kind::Transfer || node.kind == Node::Kind::Finish) {
                SPILE_TRY(comeIn(at, node));
            }
        }
        return std::move(account_);
    }

private:
    Result<void> take(std::size_t at, const Node& node)
    {
        const Liquor held = sumOf(graph_, account_.left, *node.mix);
        if (!(held.mass() > Mass{})) {
            odd(Oddity::What::MoreOutThanIn, lotOf(node), *node.volume);
            return {};
        }
        SPILE_ASSIGN(mixed, liquor::describe(held));
        const double wanted = *node.volume / mixed.volume;
        if (wanted > 1 + readingError) {
            odd(Oddity::What::MoreOutThanIn, lotOf(node), *node.volume - mixed.volume);
        }
        const double share = std::min(1.0, wanted);
        for (const std::size_t in : graph_.mixes.at(*node.mix)) {
            const Liquor before = account_.left[in];
            if (before.mass() > Mass{}) {
                const Liquor part = share * before;
                account_.parts[at].push_back({in, part});
                account_.left[in] = share < 1 ? before + (-1.0) * part : nothing;
            }
        }
        return {};
    }

    Result<void> comeIn(std::size_t at, const Node& node)
    {
        Liquor liquor = nothing;
        if (node.mix) {
            liquor = account_.taken(at);
        } else if (node.volume && *node.volume > Volume{}) {
            SPILE_ASSIGN(measured, measuredOf(node));
            liquor = measured;
        }
        account_.into[at] = liquor;
        account_.left[at] = liquor;
        return {};
    }

    // Beer whose strength nobody measured has that of its fill.
    Result<Liquor> measuredOf(const Node& node)
    {
        std::optional<double> strength = node.alcoholByVolume;
        if (!strength && !node.held.empty()) {
            strength = graph_.nodes[node.held.front()].alcoholByVolume;
        }
        if (!strength && node.kind == Node::Kind::Transfer) {
            odd(Oddity::What::StrengthUnknown, node.subject, *node.volume);
        }
        double extract = 0;
        if (node.specificGravity && strength) {
            const auto beer = liquor::strengthByAlcohol(*node.specificGravity, *strength);
            extract = beer ? beer->realExtract : 0;
        }
        return liquor::liquorOf(*node.volume, strength.value_or(0), extract);
    }

    // The lot that something was taken of.
    [[nodiscard]] SubjectId lotOf(const Node& node) const
    {
        const auto sources = graph_.mixes.find(*node.mix);
        return sources == graph_.mixes.end() || sources->second.empty()
                   ? node.subject
                   : graph_.nodes[sources->second.front()].subject;
    }

    void odd(Oddity::What what, const SubjectId& lot, Volume volume)
    {
        account_.oddities.push_back({what, {}, volume});
        account_.oddLots.push_back(lot);
    }

    const Graph& graph_;
    Account account_;
};

}  // namespace

Liquor Account::taken(std::size_t node) const
{
    return std::accumulate(parts[node].begin(), parts[node].end(), nothing,
                           [](const Liquor& sum, const Part& part) { return sum + part.liquor; });
}

Result<Account> accountOf(const Graph& graph) { return Following(graph).all(); }

static void addTaken(const Node& node, const Liquor& liquor, LotBalance& balance)
{
    if (node.kind == Node::Kind::Package) {
        const double lost = node.lost / *node.volume;
        balance.lost = balance.lost + lost * liquor;
        balance.packaged = balance.packaged + (1 - lost) * liquor;
    } else if (node.kind == Node::Kind::Discard) {
        balance.discarded = balance.discarded + liquor;
    } else {
        balance.passedOn = balance.passedOn + liquor;
    }
}

static void addOddities(const Account& account, const SubjectId& lot, LotBalance& balance)
{
    for (std::size_t i = 0; i < account.oddities.size(); ++i) {
        const Oddity& oddity = account.oddities[i];
        if (account.oddLots[i] != lot) {
            continue;
        }
        balance.strengthKnown &= oddity.what != Oddity::What::StrengthUnknown;
        if (oddity.what == Oddity::What::MoreOutThanIn) {
            balance.missing = balance.missing + oddity.volume;
        }
    }
}

Result<LotBalance> balanceOf(ledger::Database& database, const SubjectId& lot)
{
    SPILE_ASSIGN(graph, graphAbove(database, lot));
    SPILE_ASSIGN(account, accountOf(graph));
    LotBalance balance;
    const auto ins = graph.ins.find(lot);
    if (ins == graph.ins.end()) {
        return balance;
    }
    for (const std::size_t in : ins->second) {
        balance.in = balance.in + account.into[in];
        balance.left = balance.left + account.left[in];
    }
    for (std::size_t at = 0; at < graph.nodes.size(); ++at) {
        for (const Part& part : account.parts[at]) {
            if (graph.nodes[part.in].subject == lot) {
                addTaken(graph.nodes[at], part.liquor, balance);
            }
        }
    }
    addOddities(account, lot, balance);
    if (balance.left.mass() > Mass{}) {
        SPILE_ASSIGN(now, liquor::describe(balance.left));
        balance.now = now;
    }
    return balance;
}

}  // namespace spile::trace
