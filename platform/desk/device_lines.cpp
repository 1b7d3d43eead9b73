// The command lines of what makes cellars, brings them together, and says who belongs to them.
#include "platform/desk/command_line.hpp"

namespace spile::desk {

namespace {

void addJoining(CLI::App& app, CommandLine& line, const char* name, const char* does,
                const char* file, bool restores)
{
    auto* joining = app.add_subcommand(name, does);
    joining->add_option("file", line.dayFile, file)->required()->check(CLI::ExistingFile);
    joining->add_option("--passphrase", line.passphrase, "Of one that is sealed");
    joining->callback([&line, restores] {
        line.run = [&line, restores](Session& s) {
            return join(s, line.dayFile, line.passphrase, restores);
        };
    });
}

// Two ways to give the owner's key.
void addOwnerKey(CLI::App& command, OwnerKeyOptions& key, const std::string& when)
{
    auto* words = command.add_option(
        "--owner-key", key.words,
        "The owner's key: the file owner.key, or the two lines of its sheet" + when);
    auto* picture = command
                        .add_option("--owner-key-picture", key.picture,
                                    "Or a picture of the symbol on its sheet")
                        ->check(CLI::ExistingFile);
    words->excludes(picture);
}

CLI::App* addHandingOut(CLI::App& app, CommandLine& line, const char* name, const char* does,
                        bool backup)
{
    auto* handing = app.add_subcommand(name, does);
    handing->add_option("file", line.out.dayFile, "Where to; it ends in .spile by custom")
        ->required();
    handing->add_flag("--sealed", line.out.sealed,
                      "Seal it under a new passphrase, which is shown once");
    handing->callback([&line, backup] {
        line.out.backup = backup;
        line.run = [&line](Session& s) { return handOut(s, line.out); };
    });
    return handing;
}

}  // namespace

void addMaking(CLI::App& app, CommandLine& line)
{
    auto* fresh =
        app.add_subcommand("new", "Make a new cellar; this machine becomes its first desk");
    fresh->add_option("--name", line.fresh.name, "The cellar's name")->capture_default_str();
    fresh->add_option("--mark", line.fresh.mark,
                      "The 4 characters in its barrel codes (default: random)");
    fresh->add_option("--device", line.fresh.device, "What this desk is called")
        ->capture_default_str();
    fresh->callback([&] { line.run = [&](Session& s) { return makeNew(s, line.fresh); }; });

    auto* demo = app.add_subcommand("demo", "Make the invented cellar: 36 barrels, 14 months");
    demo->add_option("--seed", line.demo.seed, "The same seed makes the same records")
        ->capture_default_str();
    demo->add_option("--phones", line.demo.phones, "Keep the two phones' cellars in this folder");
    demo->callback([&] { line.run = [&](Session& s) { return makeDemo(s, line.demo); }; });

    addJoining(app, line, "join",
               "Make an empty replica of a day file's cellar and show its join code",
               "A day file that holds the cellar from its beginning", false);

    auto* admission =
        app.add_subcommand("admit", "Let a device that has joined belong to the cellar");
    auto* code =
        admission->add_option("code", line.admission.code, "The join code that the device shows");
    auto* shows = admission
                      ->add_option("--picture", line.admission.picture,
                                   "Or a picture of the symbol that it shows")
                      ->check(CLI::ExistingFile);
    code->excludes(shows);
    admission
        ->add_option("--name", line.admission.name,
                     "What the device is called; it is not renamed afterwards")
        ->required();
    admission->add_flag("--desk", line.admission.desk, "It is a desk and may admit others");
    addOwnerKey(*admission, line.admission.ownerKey, ", where no desk is left to admit it");
    admission->callback([&] {
        if (line.admission.code.empty() && line.admission.picture.empty()) {
            throw CLI::RequiredError("A code or --picture");
        }
        line.run = [&](Session& s) { return admit(s, line.admission); };
    });
}

void addExchange(CLI::App& app, CommandLine& line)
{
    auto* taking = app.add_subcommand("take-in", "Take day files in: verified whole, then added");
    taking->add_option("bundles", line.files, "Day files, in any order")
        ->required()
        ->check(CLI::ExistingFile);
    taking->add_option("--passphrase", line.passphrase, "Of those that are sealed");
    taking->callback(
        [&] { line.run = [&](Session& s) { return takeIn(s, line.files, line.passphrase); }; });

    auto* handing =
        addHandingOut(app, line, "hand-out", "Write a day file with all records and photos", false);
    handing->add_option("--for", line.out.to,
                        "Only what this device is not known to hold (its name or id)");
    addHandingOut(app, line, "backup",
                  "Write everything to a day file, read it back and check it; `restore` makes a "
                  "cellar of it",
                  true);
    addJoining(app, line, "restore",
               "Make the cellar again from a backup, as a new device: its join code is shown",
               "A backup", true);

    auto* plain =
        app.add_subcommand("export", "Write everything to plain files that need no Spile to read");
    plain->add_option("folder", line.dayFile, "A new folder")->required();
    plain->callback([&] { line.run = [&](Session& s) { return exportAll(s, line.dayFile); }; });
}

void addSettling(CLI::App& app, CommandLine& line)
{
    auto* settling = app.add_subcommand(
        "settle",
        "Show what several devices have left to decide; what can be done about one; or "
        "do it");
    settling->add_option("key", line.settling.key, "One of them, by the digits it is listed with");
    settling->add_option("choice", line.settling.choice, "The number of what is to be done");
    settling->add_option("--name", line.settling.name, "What a device that is admitted is called");
    settling->callback([&] { line.run = [&](Session& s) { return settle(s, line.settling); }; });

    const auto addDevice = [&](CLI::App* command) {
        command->add_option("device", line.cut.device, "Its name or id")->required();
        return command;
    };
    auto* cutting = addDevice(app.add_subcommand(
        "cut-off", "Cut a lost device off: what it records from now on is set aside everywhere"));
    cutting->add_option("--reason", line.cut.reason, "Why");
    cutting->add_option("--after", line.cut.lastSeq,
                        "The number of its last record that counts; 0: none (default: all that is "
                        "here)");
    cutting->callback([&] { line.run = [&](Session& s) { return cutOff(s, line.cut); }; });

    auto* printing =
        app.add_subcommand("owner-sheet", "Write the owner's key as a page to print and put away");
    printing->add_option("--pdf", line.sheet.pdf, "A new PDF file, which only you can read")
        ->required();
    printing->add_flag("--letter", line.sheet.letter, "On US Letter instead of A4");
    printing->callback([&] { line.run = [&](Session& s) { return ownerSheet(s, line.sheet); }; });

    auto* adopting = app.add_subcommand(
        "adopt", "Let what is set aside of a device count: without an option it is listed");
    adopting->add_option("device", line.adopting.device, "Its name or id")->required();
    auto* all = adopting->add_flag("--all", line.adopting.all, "All of it");
    adopting->add_option("--record", line.adopting.records, "These records, by their ids")
        ->excludes(all);
    adopting->callback([&] { line.run = [&](Session& s) { return adopt(s, line.adopting); }; });

    auto* reinstating = addDevice(
        app.add_subcommand("reinstate", "Let a device in again that was cut off: the owner's act"));
    addOwnerKey(*reinstating, line.cut.ownerKey, {});
    reinstating->add_option("--reason", line.cut.reason, "Why");
    reinstating->callback([&] { line.run = [&](Session& s) { return reinstate(s, line.cut); }; });
}

void addClock(CLI::App& app, CommandLine& line)
{
    auto* looking = app.add_subcommand(
        "clock",
        "Show what is known of the devices' clocks, or say that one was wrong: what it "
        "recorded since its last start has its true time then");
    looking->add_option("device", line.clock.device,
                        "Its name or id (default: this one; to look, all)");
    auto* shows = looking->add_option("--shows", line.clock.shows,
                                      "What its clock shows now, as \"YYYY-MM-DD HH:MM\" in this "
                                      "machine's zone; this machine's clock is right");
    auto* right = looking->add_option("--right", line.clock.right,
                                      "What the time is now; this machine's clock is wrong");
    auto* back =
        looking->add_flag("--take-back", line.clock.takeBack, "Take back what was said last");
    shows->excludes(right)->excludes(back);
    right->excludes(back);
    looking->callback([&] { line.run = [&](Session& s) { return clock(s, line.clock); }; });
}

}  // namespace spile::desk
