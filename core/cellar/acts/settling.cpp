#include "core/cellar/acts/settling.hpp"

#include "core/cellar/acts/correcting.hpp"
#include "core/cellar/acts/registering.hpp"
#include "core/cellar/acts/trusting.hpp"
#include "core/cellar/set_aside.hpp"
#include "core/cellar/settle_query_text.hpp"

#include <algorithm>

namespace spile::cellar {

namespace {

// In one commit: other work waits no longer. Each commit looks through all that is set aside, so
// where that is much they are few.
constexpr std::uint64_t adoptedAtOnce = 200;
constexpr std::uint64_t commitsMost = 20;

Result<void> nothing(const Result<EntryId>& done)
{
    return done ? Result<void>() : Result<void>(tl::unexpected(done.error()));
}

// Takes back every record by which it was taken back.
Result<void> bringBack(Cellar& cellar, const EntryId& entry)
{
    std::vector<EntryId> voids;
    SPILE_TRY(cellar.database().each(
        [&](const ledger::Row& row) {
            voids.push_back(row.id<EntryId>(0));
            return Result<void>();
        },
        query_text::liveVoids, entry));
    for (const EntryId& one : voids) {
        SPILE_TRY(voidEntry(cellar, one));
    }
    return {};
}

Result<void> admitNamed(Cellar& cellar, const DeviceId& device, const std::string& name)
{
    SPILE_TRY(checkValue(specOf(Field::Name), ledger::Value(name)));
    SPILE_TRY(ledger::admit(cellar.ledger(), device, name, ledger::DeviceRole::Phone));
    return {};
}

Result<void> needUnsettled(Cellar& cellar, const UnsettledRow& row, const Choice& choice)
{
    if (row.what == Unsettled::SameCode) {  // the one kind whose choice does not change with it
        SPILE_ASSIGN(open,
                     cellar.database().integer(0, query_text::isUnsettled,
                                               static_cast<std::int64_t>(row.what), row.subject));
        if (open == 0) {
            return fail(ErrorCode::Conflict, "to settle", row.key, "it is settled by now");
        }
    }
    SPILE_ASSIGN(choices, choicesFor(cellar.database(), row));
    const bool there = std::any_of(choices.begin(), choices.end(), [&](const Choice& open) {
        return open.does == choice.does && open.entry == choice.entry &&
               open.field == choice.field && open.value == choice.value;
    });
    return there ? Result<void>()
                 : fail(ErrorCode::Conflict, "to settle", row.key, "it is settled by now");
}

}  // namespace

Result<void> settle(Cellar& cellar, const UnsettledRow& row, const Choice& choice,
                    const std::optional<SubjectId>& person, const std::string& name)
{
    SPILE_TRY(needUnsettled(cellar, row, choice));
    switch (choice.does) {
        case Settling::SetValue:
        case Settling::KeepBoth:
            return nothing(amend(cellar, choice.entry, {{choice.field, choice.value}}));
        case Settling::KeepVoided:
        case Settling::TakeBack:
            return nothing(voidEntry(cellar, choice.entry));
        case Settling::BringBack:
            return bringBack(cellar, choice.entry);
        case Settling::NewCode:
            return nothing(giveNewCode(cellar, choice.subject));
        case Settling::CutOff:
            return nothing(cutOff(cellar, {.device = row.device, .person = person}));
        case Settling::Adopt: {
            SPILE_TRY(adopt(cellar, {choice.entry}, person));
            return {};
        }
        case Settling::Admit:
            return admitNamed(cellar, row.device, name);
    }
    return {};
}

Result<std::uint64_t> adoptAll(Cellar& cellar, const DeviceId& device,
                               const std::optional<SubjectId>& person, const Job& job)
{
    SPILE_ASSIGN(all, countSetAside(cellar.database(), device));
    const std::uint64_t atOnce = std::max(adoptedAtOnce, all / commitsMost);
    std::uint64_t done = 0;
    while (done < all) {
        SPILE_ASSIGN(records, setAsideOf(cellar.database(), device, static_cast<int>(atOnce)));
        std::vector<EntryId> some;
        std::transform(records.begin(), records.end(), std::back_inserter(some),
                       [](const SetAsideRow& record) { return record.entry; });
        if (some.empty()) {  // another act has let the others count meanwhile
            break;
        }
        SPILE_TRY(adopt(cellar, some, person));
        done += some.size();
        if (!job.advance(done, all)) {
            return fail(ErrorCode::Cancelled, "adopt", std::to_string(done),
                        std::to_string(all) + " in all");
        }
    }
    return done;
}

}  // namespace spile::cellar
