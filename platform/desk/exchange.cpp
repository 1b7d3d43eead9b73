// new, join, admit, take-in, hand-out: making cellars and bringing them together.
#include "core/cellar/acts/exchanging.hpp"
#include "core/cellar/join_code.hpp"
#include "core/cellar/queries.hpp"
#include "core/cellar/set_aside.hpp"
#include "core/cellar/true_time.hpp"
#include "core/ledger/seal.hpp"
#include "core/ledger/trust.hpp"
#include "platform/desk/commands.hpp"
#include "platform/desk/finding.hpp"
#include "platform/desk/owner_key.hpp"
#include "platform/desk/picture_codes.hpp"

#include <nlohmann/json.hpp>

namespace spile::desk {

using nlohmann::json;

namespace {

// The join code of the device whose symbol is on a picture.
Result<std::string> joinCodeIn(FileSystem& files, const std::string& picture,
                               cellar::Cellar& cellar)
{
    const auto isOne = [](const std::string& text) {
        return cellar::parseJoinSymbol(text).has_value();
    };
    SPILE_ASSIGN(text, symbolIn(files, picture, "join symbol", isOne));
    SPILE_ASSIGN(device, cellar::deviceOfSymbol(cellar, text));
    return cellar::joinCode(device);
}

// What is wrong with a day file, said of that file.
Error ofFile(const Error& error, const std::string& file, const std::string& passphrase)
{
    if (error.subject == "passphrase" && passphrase.empty()) {
        return {error.code, file, "it is sealed", "give its passphrase after --passphrase"};
    }
    if (error.subject == "archive" && error.code == ErrorCode::Damaged) {
        return {error.code, file, error.value, "a whole day file: copy it again"};
    }
    if (error.subject == "day file" && error.code == ErrorCode::NotFound) {  // only a part
        return {ErrorCode::Conflict, file, error.value, error.limit};
    }
    return {error.code, file + ": " + error.subject, error.value, error.limit};
}

// What the file of a device that is cut off brought counts nowhere; and this one may be it.
Result<std::string> standingText(cellar::Cellar& cellar, const ledger::TakenIn& taken)
{
    std::string text;
    SPILE_ASSIGN(aside, cellar::countSetAside(cellar.database(), taken.from));
    if (aside > 0) {
        text += "The device that made it is cut off or not let in: " + counted(aside, "record") +
                " of it " + (aside == 1 ? "counts" : "count") +
                " nowhere. See spile-desk settle.\n";
    }
    SPILE_ASSIGN(own, ledger::membershipOf(cellar.database(), cellar.ledger().device()));
    if (own.cutOff) {
        text +=
            "This device is cut off: what it records is set aside. The owner's key lets it in "
            "again, at a desk (reinstate).\n";
    }
    return text;
}

std::string takenText(const std::string& file, const ledger::TakenIn& taken, Instant now)
{
    std::string text = file + ": " + counted(taken.added, "record") + " added, " +
                       std::to_string(taken.known) + " known, " + counted(taken.photos, "photo") +
                       " new";
    if (taken.waiting > 0) {
        text += "; " + std::to_string(taken.waiting) +
                " wait until their device is admitted or the day file before this one is taken in";
    }
    text += "\n";
    if (taken.mended > 0) {
        text += counted(taken.mended, "record") +
                " that had been damaged on this device are as they were signed again.\n";
    }
    if (cellar::isInFuture(taken.made, now)) {
        text += "It was made at " + toIsoTime(taken.made) +
                ", later than now: the clock of the device that made it is ahead, or this one's "
                "is behind. See spile-desk clock.\n";
    }
    if (taken.renewed) {
        text +=
            "This device was copied or set back to an earlier state. It goes on under a new key";
        text += taken.renewed->admitted
                    ? ".\n"
                    : ", which is to be admitted at a desk:\n  spile-desk admit " +
                          cellar::joinCode(taken.renewed->now) + " --name NAME\n";
    }
    return text;
}

// A backup is restored where a desk is lost, which may have been the only one.
std::string restoredText(const std::string& cellar, const std::string& code)
{
    return "Made the cellar \"" + cellar +
           "\" again, as a new device. Admit it, at a desk that is left:\n  spile-desk admit " +
           code +
           " --desk --name NAME\nor, where none is left, here with the owner's key:\n"
           "  spile-desk admit " +
           code +
           " --desk --name NAME --owner-key KEY\nThen cut off the one that is lost (cut-off), and "
           "take in a day file of each device: what is newer than the backup comes with them.\n";
}

}  // namespace

int makeNew(Session& session, const NewOptions& options)
{
    auto made = cellar::Cellar::create(session.cellarFolder(), session.outside(),
                                       {options.name, options.mark, options.device});
    if (!made) {
        return session.refuse(made.error());
    }
    const ledger::CellarIdentity& identity = (*made)->identity();
    const std::string folder = session.cellarFolder().string();
    session.answer({{"cellar", identity.id.hex()},
                    {"name", identity.name},
                    {"mark", identity.mark},
                    {"device", (*made)->ledger().device().hex()},
                    {"folder", folder}},
                   "Made the cellar \"" + identity.name + "\" with the mark " + identity.mark +
                       " in " + folder +
                       ".\nMove owner.key out of that folder to a safe place offline: it proves "
                       "whose cellar this "
                       "is, and nothing on the floor needs it.\n");
    return Done;
}

int join(Session& session, const std::string& dayFile, const std::string& passphrase, bool restores)
{
    auto joined = cellar::Cellar::join(session.cellarFolder(), session.outside(), dayFile,
                                       session.job("join"), {}, passphrase);
    if (!joined) {
        const Error& error = joined.error();
        const bool isHere = error.subject == session.cellarFolder().string();
        return session.refuse(isHere ? error : ofFile(error, dayFile, passphrase));
    }
    const ledger::CellarIdentity& identity = (*joined)->identity();
    const std::string code = cellar::joinCode((*joined)->ledger().device());
    session.answer({{"cellar", identity.id.hex()},
                    {"name", identity.name},
                    {"mark", identity.mark},
                    {"device", (*joined)->ledger().device().hex()},
                    {"join_code", code}},
                   restores ? restoredText(identity.name, code)
                            : "Joined the cellar \"" + identity.name +
                                  "\". It may record at once; its records count at the desk "
                                  "when it is admitted there:\n  spile-desk admit " +
                                  code + " --name NAME\n");
    return Done;
}

int admit(Session& session, const AdmitOptions& options)
{
    auto cellar = session.open();
    if (!cellar) {
        return session.refuse(cellar.error());
    }
    const auto code = options.picture.empty()
                          ? Result<std::string>(options.code)
                          : joinCodeIn(session.files(), options.picture, **cellar);
    if (!code) {
        return session.refuse(code.error());
    }
    const std::string& name = options.name;
    const auto role = options.desk ? ledger::DeviceRole::Desk : ledger::DeviceRole::Phone;
    auto owner = ownerKey(session.files(), options.ownerKey);
    if (!owner) {
        return session.refuse(owner.error());
    }
    session.doubtClock(**cellar);
    const auto admitted = cellar::admit(**cellar, *code, name, role, *owner);
    if (!admitted) {
        Error error = admitted.error();
        if (error.subject == "admit") {
            error.limit += ", or give the owner's key after --owner-key";
        }
        return session.refuse(error);
    }
    session.answer({{"name", name},
                    {"join_code", *code},
                    {"role", options.desk ? "desk" : "phone"},
                    {"linked", admitted->linked}},
                   "Admitted \"" + name + "\" as a " + (options.desk ? "desk" : "phone") + ". " +
                       (admitted->linked == 0
                            ? std::string()
                            : counted(admitted->linked, "record") + " that had waited for it " +
                                  (admitted->linked == 1 ? "counts" : "count") + " now. ") +
                       "It learns it by the next day file from here.\n");
    return Done;
}

int takeIn(Session& session, const std::vector<std::string>& dayFiles,
           const std::string& passphrase)
{
    auto cellar = session.open();
    if (!cellar) {
        return session.refuse(cellar.error());
    }
    json answers = json::array();
    std::string text;
    int exit = Done;
    for (const std::string& file : dayFiles) {
        const auto taken = cellar::takeIn(**cellar, file, session.job("take-in"), passphrase);
        if (!taken) {
            const Error& error = taken.error();
            const std::string says = worded(ofFile(error, file, passphrase));
            Session::remark("spile-desk: " + says);
            answers.push_back({{"file", file}, {"error", codeName(error.code)}, {"says", says}});
            exit = exitOf(error);
            continue;
        }
        answers.push_back(
            {{"file", file},
             {"from", taken->from.hex()},
             {"number", taken->number},
             {"entries", taken->entries},
             {"added", taken->added},
             {"known", taken->known},
             {"waiting", taken->waiting},
             {"photos", taken->photos},
             {"mended", taken->mended},
             {"made", toIsoTime(taken->made)},
             {"made_in_future", cellar::isInFuture(taken->made, session.clock().now())}});
        text += takenText(file, *taken, session.clock().now());
        const auto standing = standingText(**cellar, *taken);
        if (!standing) {
            return session.refuse(standing.error());
        }
        text += *standing;
    }
    session.answer(answers, text);
    if (exit == Done) {
        session.lookAfter(**cellar);
    }
    return exit;
}

int handOut(Session& session, const HandOutOptions& options)
{
    const std::string& dayFile = options.dayFile;
    auto cellar = session.open();
    if (!cellar) {
        return session.refuse(cellar.error());
    }
    std::optional<DeviceId> receiver;
    if (!options.to.empty()) {
        auto device = findDevice(**cellar, options.to);
        if (!device) {
            return session.refuse(device.error());
        }
        receiver = *device;
    }
    if (const auto there = needFolderOf(session.files(), dayFile); !there) {
        return session.refuse(there.error());
    }
    const std::string passphrase =
        options.sealed ? ledger::newPassphrase(session.outside().random) : std::string();
    const auto out =
        cellar::handOut(**cellar, dayFile, receiver, session.job("hand-out"), passphrase);
    if (!out) {
        return session.refuse(out.error());
    }
    for (const cellar::OpenSheet& sheet : out->openSheets) {
        Session::remark("A tasting sheet is open since " + toIsoTime(sheet.opened) + " with " +
                        counted(static_cast<std::uint64_t>(sheet.taps), "tap") +
                        "; it is not in the day file before it is closed.");
    }
    const std::uint64_t leftOut = out->file.leftOut + out->file.leftOutPhotos;
    if (leftOut > 0) {
        Session::remark(
            "spile-desk: damaged here and not in it: " + counted(out->file.leftOut, "record") +
            ", " + counted(out->file.leftOutPhotos, "photo") +
            ". It asks the others for them; `check` names them.");
    }
    if (out->file.photosLeft > 0) {
        Session::remark("spile-desk: " + photosLeftText(out->file.photosLeft, options.backup));
    }
    session.answer({{"file", dayFile},
                    {"number", out->file.number},
                    {"entries", out->file.entries},
                    {"photos", out->file.photos},
                    {"missing_photos", out->file.missingPhotos},
                    {"left_out", leftOut},
                    {"photos_left", out->file.photosLeft},
                    {"open_sheets", out->openSheets.size()},
                    {"passphrase", passphrase.empty() ? json() : json(passphrase)}},
                   "Wrote " + dayFile + ": " + counted(out->file.entries, "record") + ", " +
                       counted(out->file.photos, "photo") + ".\n" +
                       (passphrase.empty() ? ""
                                           : "It is sealed. Its passphrase, which is kept nowhere "
                                             "and opens it alone:\n  " +
                                                 passphrase + "\n"));
    return exitOfHandingOut(out->file.photosLeft, options.backup);
}

}  // namespace spile::desk
