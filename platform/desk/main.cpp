// spile-desk: the desk command. Reads the command line, opens the cellar, runs one command.
#include "core/blend/bench.hpp"
#include "core/cellar/acts/exchanging.hpp"
#include "platform/desk/command_line.hpp"
#include "platform/desk/nearest.hpp"

#include <CLI/CLI.hpp>
#include <algorithm>
#include <cstdlib>
#include <functional>
#include <iostream>
#include <string_view>

namespace {

using namespace spile::desk;

std::string defaultCellar()
{
    const char* named = std::getenv("SPILE_CELLAR");
    return named != nullptr && *named != '\0' ? named : "spile.cellar";
}

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

// CLI11 does not name a word in the command's place that is none.
int refuseLine(const CLI::App& app, const CLI::RequiredError& error)
{
    const std::vector<std::string> left = app.remaining();
    if (!app.get_subcommands().empty() || left.empty()) {
        return app.exit(error) == 0 ? Done : WrongUse;
    }
    std::vector<std::string> known;
    for (const CLI::App* command : app.get_subcommands({})) {
        known.push_back(command->get_name());
    }
    std::cerr << "spile-desk: there is no command \"" << left.front()
              << "\"; the nearest: " << nearest(left.front(), std::move(known))
              << ". --help lists them.\n";
    return WrongUse;
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
    addClock(app, line);
    addLooking(app, line);
    addLabels(app, line);
    addLots(app, line);
    addWorking(app, line);
    try {
        app.parse(argc, argv);
    } catch (const CLI::RequiredError& error) {
        return refuseLine(app, error);
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
