// spile-desk: the desk command. Reads the command line, opens the cellar, runs one command.
#include "core/blend/bench.hpp"
#include "core/cellar/acts/exchanging.hpp"
#include "platform/desk/commands.hpp"

#include <CLI/CLI.hpp>
#include <algorithm>
#include <cstdlib>
#include <functional>
#include <iostream>
#include <string_view>

namespace {

using namespace spile::desk;

using Run = std::function<int(Session&)>;

std::string defaultCellar()
{
    const char* named = std::getenv("SPILE_CELLAR");
    return named != nullptr && *named != '\0' ? named : "spile.cellar";
}

// What all commands fill in, and the one that was named.
struct CommandLine {
    NewOptions fresh;
    DemoOptions demo;
    BenchOptions bench;
    CellarBenchOptions cellarBench;
    AdmitOptions admission;
    LabelOptions labels;
    HandOutOptions out;
    ClearOptions clearing;
    TraceOptions trace;
    ReportOptions report;
    SettleOptions settling;
    CutOptions cut;
    ClockOptions clock;
    std::string dayFile, passphrase, kind, id, on, reason;
    std::vector<std::string> files;
    std::vector<std::string> words;  // all after "work", whose options are the calculator's own
    Run run;
};

// Cut off what stands after "work" and return it.
std::vector<std::string> takeWords(int& argc, char** argv)
{
    int at = 1;
    while (at < argc && *argv[at] == '-') {
        at += std::string_view(argv[at]) == "--cellar" ? 2 : 1;
    }
    if (at >= argc || std::string_view(argv[at]) != "work") {
        return {};
    }
    std::vector<std::string> words(argv + at + 1, argv + argc);
    argc = at + 1;
    return words;
}

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

    auto* joining = app.add_subcommand(
        "join", "Make an empty replica of a day file's cellar and show its join code");
    joining
        ->add_option("bundle", line.dayFile, "A day file that holds the cellar from its beginning")
        ->required()
        ->check(CLI::ExistingFile);
    joining->add_option("--passphrase", line.passphrase, "Of one that is sealed");
    joining->callback(
        [&] { line.run = [&](Session& s) { return join(s, line.dayFile, line.passphrase); }; });

    auto* admission =
        app.add_subcommand("admit", "Let a device that has joined belong to the cellar");
    admission->add_option("code", line.admission.code, "The join code that the device shows")
        ->required();
    admission->add_option("--name", line.admission.name, "What the device is called");
    admission->add_flag("--desk", line.admission.desk, "It is a desk and may admit others");
    admission->add_option("--owner-key", line.admission.ownerKey,
                          "The owner's key, its file or digits, where no desk is left to admit it");
    admission->callback([&] { line.run = [&](Session& s) { return admit(s, line.admission); }; });
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

    auto* handing = app.add_subcommand("hand-out", "Write a day file with all records and photos");
    handing->add_option("file", line.out.dayFile, "Where to; it ends in .spile by custom")
        ->required();
    handing->add_option("--for", line.out.to,
                        "Only what this device is not known to hold (its name or id)");
    handing->add_flag("--sealed", line.out.sealed,
                      "Seal it under a new passphrase, which is shown once");
    handing->callback([&] { line.run = [&](Session& s) { return handOut(s, line.out); }; });

    auto* backing = app.add_subcommand(
        "backup",
        "Write everything to a day file, read it back and check it; `restore` makes a "
        "cellar of it");
    backing->add_option("file", line.out.dayFile, "Where to")->required();
    backing->add_flag("--sealed", line.out.sealed,
                      "Seal it under a new passphrase, which is shown once");
    backing->callback([&] { line.run = [&](Session& s) { return handOut(s, line.out); }; });

    auto* restoring = app.add_subcommand(
        "restore", "Make the cellar again from a backup, as a new device: its join code is shown");
    restoring->add_option("file", line.dayFile, "A backup")->required()->check(CLI::ExistingFile);
    restoring->add_option("--passphrase", line.passphrase, "Of one that is sealed");
    restoring->callback(
        [&] { line.run = [&](Session& s) { return join(s, line.dayFile, line.passphrase); }; });

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
    printing->add_option("file", line.id, "A new text file")->required();
    printing->callback([&] { line.run = [&](Session& s) { return ownerSheet(s, line.id); }; });

    auto* adopting =
        addDevice(app.add_subcommand("adopt", "Let all that is set aside of a device count"));
    adopting->callback([&] { line.run = [&](Session& s) { return adopt(s, line.cut.device); }; });

    auto* reinstating = addDevice(
        app.add_subcommand("reinstate", "Let a device in again that was cut off: the owner's act"));
    reinstating
        ->add_option("--owner-key", line.cut.ownerKey, "The file owner.key, or the digits in it")
        ->required();
    reinstating->add_option("--reason", line.cut.reason, "Why");
    reinstating->callback([&] { line.run = [&](Session& s) { return reinstate(s, line.cut); }; });
}

void addClock(CLI::App& app, ClockOptions& options, Run& run)
{
    auto* looking = app.add_subcommand(
        "clock",
        "Show what is known of the devices' clocks, or say that one was wrong: what it "
        "recorded since its last start has its true time then");
    looking->add_option("device", options.device, "Its name or id (default: this one)");
    auto* shows = looking->add_option("--shows", options.shows,
                                      "What its clock shows now, as \"YYYY-MM-DD HH:MM\" in this "
                                      "machine's zone; this machine's clock is right");
    auto* right = looking->add_option("--right", options.right,
                                      "What the time is now; this machine's clock is wrong");
    auto* back = looking->add_flag("--take-back", options.takeBack, "Take back what was said last");
    shows->excludes(right)->excludes(back);
    right->excludes(back);
    looking->callback([&] { run = [&](Session& s) { return clock(s, options); }; });
}

void addLooking(CLI::App& app, CommandLine& line)
{
    auto* checking =
        app.add_subcommand("check",
                           "Check every record, signature and photo, and the state against "
                           "one made anew");
    checking->callback([&] { line.run = [](Session& s) { return check(s); }; });

    auto* showing = app.add_subcommand("show",
                                       "Show barrels, one barrel, lots, one lot, flights, batches, "
                                       "people, tasters, places, targets, devices");
    showing
        ->add_option("kind", line.kind,
                     "barrels | barrel | lots | lot | flights | batches | people | tasters | "
                     "places | targets | devices")
        ->required();
    showing->add_option(
        "id", line.id, "With barrel: its code, as it stands on the head; with lot: its name or id");
    showing->callback([&] { line.run = [&](Session& s) { return show(s, line.kind, line.id); }; });

    auto* dues =
        app.add_subcommand("due", "Show the barrels whose next step is due, the longest due first");
    dues->add_option("--on", line.on, "By the end of this day (default: now)");
    dues->callback([&] { line.run = [&](Session& s) { return due(s, line.on); }; });

    auto* foreseeing = app.add_subcommand(
        "outlook", "Show when barrels will be ready by their scores: all, or the whole of one");
    foreseeing->add_option("barrel", line.id, "A barrel's code, as it stands on the head");
    foreseeing->callback([&] { line.run = [&](Session& s) { return outlook(s, line.id); }; });

    auto* reading =
        app.add_subcommand("read", "Read the codes in pictures: QR, Data Matrix, Code 128");
    reading->add_option("images", line.files, "JPEG or PNG files")
        ->required()
        ->check(CLI::ExistingFile);
    reading->callback([&] { line.run = [&](Session& s) { return read(s, line.files); }; });
}

void addLots(CLI::App& app, CommandLine& line)
{
    auto* holding = app.add_subcommand(
        "hold", "Hold a lot: until its result is in, nothing is packaged or released");
    holding->add_option("lot", line.id, "Its name or id")->required();
    holding->add_option("--reason", line.reason, "What it waits for")->required();
    holding->callback(
        [&] { line.run = [&](Session& s) { return holdLot(s, line.id, line.reason); }; });

    auto* clearing = app.add_subcommand("clear", "Record the result that a held lot waits for");
    clearing->add_option("lot", line.clearing.lot, "Its name or id")->required();
    clearing->add_option("--result", line.clearing.result, "What came out")->required();
    clearing->add_option("--reason", line.clearing.reason, "Which hold, if there are several");
    clearing->callback([&] { line.run = [&](Session& s) { return clearLot(s, line.clearing); }; });

    auto* tracing = app.add_subcommand(
        "trace", "Trace beer: from packages or a lot up to all that it was made of, or down");
    tracing
        ->add_option("what", line.trace.what, "A lot code, lot, barrel, beer, or what was put in")
        ->required();
    tracing->add_flag("--down", line.trace.down, "To every lot, package and receiver");
    tracing->add_flag("--recall", line.trace.recall, "The recall list: packages, and who has them");
    tracing->callback([&] { line.run = [&](Session& s) { return traceBeer(s, line.trace); }; });

    ReportOptions& options = line.report;
    auto* reporting = app.add_subcommand("report", "Sum up a time: duty, losses, costs, lots");
    reporting->add_option("name", options.name, "duty | losses | costs | lots")->required();
    reporting->add_option("--from", options.from, "The first day (default: 12 months)");
    reporting->add_option("--to", options.to, "The last day (default: today)");
    reporting->add_option("--by", options.by, "month | quarter | year")->capture_default_str();
    reporting->callback([&] { line.run = [&](Session& s) { return report(s, options); }; });
}

void addLabels(CLI::App& app, CommandLine& line)
{
    LabelOptions& options = line.labels;
    auto* printing = app.add_subcommand("labels", "Write labels for barrels as a PDF file");
    printing->add_option("--out", options.out, "The PDF file to write");
    printing->add_option("barrels", options.barrels, "Barrels by their codes or marks");
    printing->add_flag("--all", options.all, "All barrels");
    printing->add_option("--spare", options.spares,
                         "So many labels with new codes, for barrels to be registered later");
    auto* stock = printing->add_option("--stock", options.stock, "What they are printed on")
                      ->capture_default_str();
    auto* plate = printing->add_flag_callback(
        "--plate", [&] { options.stock = spile::labels::usualPlate; },
        "Head plates to cut out of plain paper: the default");
    auto* roll = printing->add_flag_callback(
        "--roll", [&] { options.stock = spile::labels::usualRoll; }, "A roll of 100 x 50 mm");
    stock->excludes(plate)->excludes(roll);
    plate->excludes(roll);
    printing->add_option("--distance", options.distance, "From how far they are read, in m")
        ->capture_default_str();
    printing->add_option("--from", options.from, "The first free label of a sheet that was begun")
        ->capture_default_str();
    printing->add_flag("--test-page", options.testPage,
                       "First a page for plain paper: outlines, and a line of 50 mm");
    printing->add_flag("--force", options.force, "Write over a file that is there");
    printing->add_flag("--list-stock", options.listStock, "List what labels can be printed on");
    printing->callback([&] { line.run = [&](Session& s) { return makeLabels(s, line.labels); }; });
}

void addCellarBench(CLI::App& benching, CLI::Option& spec, CellarBenchOptions& options)
{
    auto* target = benching.add_option("--target", options.target,
                                       "A beer's target, by its name: look among the barrels of "
                                       "the cellar");
    target->excludes(&spec);
    const auto add = [&](const char* name, auto& value, const char* what) {
        return benching.add_option(name, value, what)->needs(target);
    };
    add("--most", options.most, "How many barrels at most")
        ->check(CLI::Range(std::size_t{1}, spile::blend::barrelsAtMost));
    benching.add_flag("--part", options.part, "One of them may be taken in part")->needs(target);
    add("--volume-min", options.volumeMin, "Litres at least");
    add("--volume-max", options.volumeMax, "Litres at most: what the tank holds");
    add("--abv-min", options.abvMin, "Strength at least, in % vol");
    add("--abv-max", options.abvMax, "Strength at most, in % vol");
    add("--keep", options.keep, "Barrels that are kept back, by their codes");
}

void addWorking(CLI::App& app, CommandLine& line)
{
    auto* benching = app.add_subcommand(
        "bench",
        "Find the barrels whose blend comes nearest to a target: of a JSON file, which "
        "needs no cellar, or of the cellar with --target");
    auto* spec = benching
                     ->add_option("spec", line.bench.spec,
                                  "A JSON file: see the handbook's page on the bench")
                     ->check(CLI::ExistingFile);
    benching->add_option("--answers", line.bench.answers, "How many blends of a file to show")
        ->check(CLI::Range(std::size_t{1}, spile::blend::blendsKept))
        ->capture_default_str();
    benching->add_option("--seconds", line.bench.seconds, "How long to look at most")
        ->check(CLI::Range(0.1, 3600.0))
        ->capture_default_str();
    addCellarBench(*benching, *spec, line.cellarBench);
    benching->callback([&, spec] {
        line.cellarBench.seconds = line.bench.seconds;
        if (line.cellarBench.target.empty() && spec->count() == 0) {
            throw CLI::RequiredError("A file or --target");
        }
        line.run = [&](Session& s) {
            return line.cellarBench.target.empty() ? bench(s, line.bench)
                                                   : benchOfCellar(s, line.cellarBench);
        };
    });

    auto* working = app.add_subcommand(
        "work", "Compute: list the trade's calculators, or run one; needs no cellar");
    working->callback([&] { line.run = [&](Session& s) { return work(s, line.words); }; });
}

int runCommand(int argc, char** argv)
{
    CLI::App app("Spile at the desk: the records of beer aged in spirit barrels.", "spile-desk");
    std::string folder = defaultCellar();
    bool json = false;
    app.add_option("--cellar", folder,
                   "The cellar's folder (else $SPILE_CELLAR, else spile.cellar)");
    app.add_flag("--json", json, "Answer in JSON on the standard output");
    app.set_version_flag("--version", spile::cellar::programVersion);
    app.require_subcommand(1);
    app.fallthrough();  // the two options above may also stand after the command
    app.footer(
        "Exit: 0 done; 1 the records do not have it; 2 wrong use; 3 a file is damaged or refused, "
        "nothing "
        "changed.");
    CommandLine line;
    line.words = takeWords(argc, argv);
    addMaking(app, line);
    addExchange(app, line);
    addSettling(app, line);
    addClock(app, line.clock, line.run);
    addLooking(app, line);
    addLabels(app, line);
    addLots(app, line);
    addWorking(app, line);
    try {
        app.parse(argc, argv);
    } catch (const CLI::ParseError& error) {
        return app.exit(error) == 0 ? Done : WrongUse;
    }
    const bool jsonAfterWork =
        std::find(line.words.begin(), line.words.end(), "--json") != line.words.end();
    Session session(folder, json || jsonAfterWork);
    return line.run(session);
}

}  // namespace

int main(int argc, char** argv)
{
    try {
        return runCommand(argc, argv);
    } catch (const std::exception& error) {  // from the libraries: out of memory, a broken locale
        std::cerr << "spile-desk: " << error.what() << '\n';
        return Refused;
    }
}
