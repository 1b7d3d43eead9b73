#include "core/cellar/former_name.hpp"

#include "core/cellar/settle_query_text.hpp"
#include "core/cellar/settling.hpp"
#include "core/ledger/chains.hpp"
#include "core/ledger/entry.hpp"
#include "core/ledger/fields.hpp"
#include "core/ledger/trust.hpp"

namespace spile::cellar {

namespace {

std::optional<DeviceId> beforeRenewal(const ledger::Row& row)
{
    const auto core = ledger::decodeCore(row.blob(0));
    const auto fields = ledger::decodeFields(row.blob(1));
    if (!core || !fields || core->kind != ledger::renewKind) {
        return std::nullopt;
    }
    const auto before = fields->find(ledger::trust_field::before);
    const auto* bytes = before == fields->end() ? nullptr : before->second.as<Bytes>();
    return bytes == nullptr ? std::nullopt : DeviceId::fromBytes(*bytes);
}

}  // namespace

Result<std::string> formerNameOf(ledger::Database& database, const DeviceId& device)
{
    constexpr int keysMost = 8;  // one that was renewed and never let in may be renewed again
    DeviceId at = device;
    for (int i = 0; i < keysMost; ++i) {
        SPILE_ASSIGN(before, database.first(beforeRenewal, query_text::firstWaiting, at));
        if (!before || !*before) {
            return std::string();
        }
        at = **before;
        SPILE_ASSIGN(name, nameOfDevice(database, at));
        if (!name.empty()) {
            return std::move(name);
        }
    }
    return std::string();
}

}  // namespace spile::cellar
