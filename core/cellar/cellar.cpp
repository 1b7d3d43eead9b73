#include "core/cellar/cellar.hpp"

#include "core/scan/barrel_code.hpp"

namespace spile::cellar {

using ledger::Ledger;

Result<std::unique_ptr<Cellar>> Cellar::create(const Path& folder, const Outside& outside,
                                               ledger::NewCellar cellar, const std::string& vfs)
{
    if (cellar.mark.empty()) {
        cellar.mark = scan::randomMark(outside.random);
    }
    if (!scan::isMark(cellar.mark)) {
        return fail(ErrorCode::Malformed, "mark", cellar.mark,
                    "4 of " + std::string(scan::codeAlphabet));
    }
    SPILE_TRY(checkValue(specOf(Field::Name), ledger::Value(cellar.name)));
    SPILE_TRY(checkValue(specOf(Field::Name), ledger::Value(cellar.deviceName)));
    auto state = std::make_unique<State>();
    SPILE_ASSIGN(made, Ledger::create(folder, outside, *state, cellar, vfs));
    return std::unique_ptr<Cellar>(new Cellar(std::move(state), std::move(made)));
}

Result<std::unique_ptr<Cellar>> Cellar::open(const Path& folder, const Outside& outside,
                                             const std::string& vfs, const Job& job)
{
    auto state = std::make_unique<State>();
    SPILE_ASSIGN(opened, Ledger::open(folder, outside, *state, vfs, job));
    if (opened->cellar().mark.empty()) {
        return fail(ErrorCode::Damaged, folder.string(),
                    "joining was interrupted before it was done",
                    "remove the folder and join again");
    }
    return std::unique_ptr<Cellar>(new Cellar(std::move(state), std::move(opened)));
}

Result<std::unique_ptr<Cellar>> Cellar::join(const Path& folder, const Outside& outside,
                                             const Path& dayFile, const Job& job,
                                             const std::string& vfs, const std::string& passphrase)
{
    auto state = std::make_unique<State>();
    SPILE_ASSIGN(joined, ledger::join(folder, outside, *state, dayFile, job, vfs, passphrase));
    return std::unique_ptr<Cellar>(new Cellar(std::move(state), std::move(joined)));
}

}  // namespace spile::cellar
