#pragma once

#include "platform/desk/commands.hpp"

#include <CLI/CLI.hpp>
#include <functional>
#include <string>
#include <vector>

namespace spile::desk {

/// What all commands fill in, and the one that was named.
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
    AdoptOptions adopting;
    OwnerSheetOptions sheet;
    std::string dayFile, passphrase, kind, id, on, reason;
    std::vector<std::string> files;
    std::vector<std::string> words;  // all after "work", whose options are the calculator's own
    std::function<int(Session&)> run;
};

/// The commands that make cellars, bring them together, and say who belongs to them.
void addMaking(CLI::App& app, CommandLine& line);
void addExchange(CLI::App& app, CommandLine& line);
void addSettling(CLI::App& app, CommandLine& line);
void addClock(CLI::App& app, CommandLine& line);

}  // namespace spile::desk
