#include "core/cellar/searching.hpp"

#include "core/cellar/folding.hpp"
#include "core/cellar/standing.hpp"

#include <algorithm>

namespace spile::cellar {

namespace {

bool contains(std::string_view text, std::string_view part)
{
    return text.find(part) != std::string_view::npos;
}

std::string_view trimmed(std::string_view text)
{
    const std::size_t first = text.find_first_not_of(" \t\n");
    return first == std::string_view::npos
               ? std::string_view()
               : text.substr(first, text.find_last_not_of(" \t\n") - first + 1);
}

class Matching {
public:
    explicit Matching(const BarrelSearch& search)
        : which_(search.which), now_(search.now), text_(folded(trimmed(search.text))), code_(text_)
    {
        std::erase_if(code_, [](char c) { return c == '-' || c == ' '; });
    }

    [[nodiscard]] bool fits(const BarrelRow& row) const { return isOneOf(row) && hasText(row); }

private:
    [[nodiscard]] bool isOneOf(const BarrelRow& row) const
    {
        switch (which_) {
            case Which::All:
                return true;
            case Which::Full:
                return row.filled;
            case Which::Empty:
                return !row.filled;
            case Which::Held:
                return standingOf(row, now_) == Standing::Held;
            case Which::Resting:
                break;
        }
        const Standing standing = standingOf(row, now_);
        return row.filled && (standing == Standing::Resting || standing == Standing::Soon);
    }

    [[nodiscard]] bool hasText(const BarrelRow& row) const
    {
        if (text_.empty() || (!code_.empty() && contains(folded(row.code), code_))) {
            return true;
        }
        return contains(folded(row.mark), text_) || contains(folded(row.beer), text_) ||
               contains(folded(row.spirit), text_) || contains(folded(row.place), text_);
    }

    Which which_;
    Instant now_;
    std::string text_;
    std::string code_;  // as the text would be if it is a code
};

}  // namespace

Result<FoundBarrels> searchBarrels(ledger::Database& database, const BarrelSearch& search,
                                   const AfterBarrel& after, int limit, const Job& job)
{
    constexpr int pageRows = 64;
    const Matching matching(search);
    FoundBarrels found;
    found.after = after;
    for (std::uint64_t seen = 0;;) {
        SPILE_ASSIGN(page, barrels(database, found.after, pageRows));
        for (BarrelRow& row : page) {
            if (!matching.fits(row)) {
                found.after = afterBarrel(row);
                continue;
            }
            if (static_cast<int>(found.rows.size()) >= limit) {
                found.complete = false;
                return found;
            }
            found.after = afterBarrel(row);
            found.rows.push_back(std::move(row));
        }
        if (static_cast<int>(page.size()) < pageRows) {
            return found;
        }
        seen += page.size();
        if (!job.advance(seen, 0)) {
            return fail(ErrorCode::Cancelled, "search");
        }
    }
}

}  // namespace spile::cellar
