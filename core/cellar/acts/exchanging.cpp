#include "core/cellar/acts/exchanging.hpp"

#include "core/cellar/join_code.hpp"
#include "core/cellar/owner_key_text.hpp"

namespace spile::cellar {

Result<DayFileOut> handOut(Cellar& cellar, const Path& file, const std::optional<DeviceId>& to,
                           const Job& job, const std::string& passphrase)
{
    DayFileOut out;
    SPILE_ASSIGN(sheets, openSheets(cellar));
    out.openSheets = std::move(sheets);
    SPILE_ASSIGN(handed,
                 ledger::handOut(cellar.ledger(), file, to, programVersion, job, passphrase));
    out.file = handed;
    return out;
}

Result<ledger::TakenIn> takeIn(Cellar& cellar, const Path& file, const Job& job,
                               const std::string& passphrase)
{
    return ledger::takeIn(cellar.ledger(), file, ledger::SignatureCheck::EveryEntry, job,
                          passphrase);
}

Result<DeviceId> deviceOfSymbol(Cellar& cellar, std::string_view text)
{
    const auto symbol = parseJoinSymbol(text);
    if (!symbol) {
        return fail(ErrorCode::Malformed, "join symbol",
                    isOwnerSymbol(text) ? "it is the owner's key" : std::string(text),
                    "the symbol that the device shows");
    }
    if (symbol->cellarMark != cellar.identity().mark) {
        return fail(ErrorCode::Conflict, "device",
                    "it has joined another cellar, " + symbol->cellarMark,
                    "join it with a day file of this one, " + cellar.identity().mark);
    }
    return symbol->device;
}

Result<ledger::Admitted> admit(Cellar& cellar, std::string_view code, const std::string& name,
                               ledger::DeviceRole role,
                               const std::optional<ledger::SigningKey>& owner)
{
    SPILE_ASSIGN(device, parseJoinCode(code));
    SPILE_TRY(checkValue(specOf(Field::Name), ledger::Value(name)));
    return ledger::admit(cellar.ledger(), device, name, role, owner);
}

}  // namespace spile::cellar
