// The owner's key: read, and on a sheet to print (owner-sheet).
#include "platform/desk/owner_key.hpp"

#include "core/cellar/owner_key_text.hpp"
#include "core/labels/pdf.hpp"
#include "core/labels/text_page.hpp"
#include "platform/desk/finding.hpp"
#include "platform/desk/picture_codes.hpp"

#include <nlohmann/json.hpp>

namespace spile::desk {

namespace {

// Forgets what it holds.
struct Secret {
    std::string text;

    explicit Secret(std::string secret) : text(std::move(secret)) {}
    ~Secret() { ledger::wipe(text); }
    Secret(const Secret&) = delete;
    Secret& operator=(const Secret&) = delete;
};

Result<std::string> textOf(FileSystem& files, const OwnerKeyOptions& options)
{
    if (!options.picture.empty()) {
        return symbolIn(files, options.picture, "owner key", cellar::isOwnerSymbol);
    }
    if (!files.exists(options.words)) {
        // Neither line of a sheet has one of these.
        if (options.words.find_first_of("/.") != std::string::npos) {
            return fail(ErrorCode::NotFound, "file", options.words,
                        "the file owner.key, or what stands on the owner's sheet");
        }
        return options.words;
    }
    constexpr std::uint64_t most = 1000;
    SPILE_ASSIGN(bytes, readWhole(files, options.words, most));
    std::string text(asText(bytes));
    ledger::wipe(bytes);
    return text;
}

std::string day(Instant now) { return toIsoTime(now).substr(0, 10); }

labels::TextPage pageFor(const ledger::CellarIdentity& cellar, const KeySeed& key,
                         const OwnerSheetOptions& options, Instant now)
{
    const auto lines = cellar::ownerKeyLines(key);
    return {
        .paper = options.letter ? labels::Paper::Letter : labels::Paper::A4,
        .title = "Owner's key of the cellar \"" + cellar.name + "\"",
        .above = {"Cellar mark " + cellar.mark + ". Printed " + day(now) + " by Spile.",
                  "Whoever has this sheet owns the cellar: it decides which devices belong to it. "
                  "Store it away from the phones and the desk, dry and locked. Do not photograph "
                  "it, do not send it, and leave no file of it behind."},
        .symbol = cellar::ownerSymbolText(key),
        .codes = {lines[0], lines[1]},
        .below = {
            ("Where it is needed: to admit a first desk where none is left; to let a device in "
             "again that was cut off; to go on with the only desk when it gets a new key."),
            ("Type both lines after --owner-key, in quotes, in small letters or large, with or "
             "without the hyphens; the last two characters of a line find a mistyped one:"),
            "spile-desk admit CODE --desk --name NAME --owner-key \"...\"",
            "spile-desk reinstate DEVICE --owner-key \"...\"",
            ("Or photograph the symbol for that alone, give the picture after --owner-key-picture, "
             "and delete it. 0 is a zero, 1 a one: the letters I, L, O and U do not occur.")}};
}

void wipe(labels::TextPage& page)
{
    ledger::wipe(page.symbol);
    for (std::string& code : page.codes) {
        ledger::wipe(code);
    }
}

Result<labels::Sheets> writeSheet(Session& session, labels::TextPage page, const Path& file)
{
    auto sheets = labels::layOut(page);
    wipe(page);
    SPILE_TRY(sheets);
    SPILE_ASSIGN(bytes, labels::pdfOf(*sheets, "Owner's key"));
    auto done = writeWholePrivate(session.files(), file, bytes);
    ledger::wipe(bytes);
    SPILE_TRY(done);
    return sheets;
}

}  // namespace

Result<std::optional<ledger::SigningKey>> ownerKey(FileSystem& files,
                                                   const OwnerKeyOptions& options)
{
    if (options.words.empty() && options.picture.empty()) {
        return std::optional<ledger::SigningKey>();
    }
    auto found = textOf(files, options);
    SPILE_TRY(found);
    const Secret text(std::move(*found));
    SPILE_ASSIGN(seed, cellar::parseOwnerKey(text.text));
    return std::optional(ledger::SigningKey(seed));
}

int ownerSheet(Session& session, const OwnerSheetOptions& options)
{
    auto cellar = session.open();
    if (!cellar) {
        return session.refuse(cellar.error());
    }
    const auto seed = session.outside().keys.load(KeyName::Owner);
    if (!seed) {
        return session.refuse(seed.error());
    }
    if (!*seed) {
        return session.refuse({ErrorCode::NotFound, "owner.key", session.cellarFolder().string(),
                               "put it back into the cellar's folder for this"});
    }
    if (session.files().exists(options.pdf)) {
        return session.refuse({ErrorCode::Conflict, options.pdf, "it exists", "a new file's name"});
    }
    if (const auto there = needFolderOf(session.files(), options.pdf); !there) {
        return session.refuse(there.error());
    }
    const auto sheets =
        writeSheet(session, pageFor((*cellar)->identity(), **seed, options, session.clock().now()),
                   options.pdf);
    if (!sheets) {
        return session.refuse(sheets.error());
    }
    if (!sheets->incomplete.empty()) {
        Session::remark("The font lacks characters of the cellar's name: a box stands for them.");
    }
    session.answer({{"file", options.pdf}},
                   "Wrote " + options.pdf +
                       ". Print it at 100 %, put it away, and remove the file and owner.key.\n");
    return Done;
}

}  // namespace spile::desk
