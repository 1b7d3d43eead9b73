#pragma once

#include <string>
#include <utility>
#include <vector>

/// Plausible inputs of each calculator, as they are typed: for tests of the registry, of the desk's
/// command and of the fuzzers.
namespace spile::support {

struct CalculatorSample {
    std::string calculator;
    std::vector<std::pair<std::string, std::string>> inputs;
};

/// Return at least one for each calculator.
[[nodiscard]] inline std::vector<CalculatorSample> calculatorSamples()
{
    return {
        {"strength", {{"abv", "60%"}, {"volume", "53gal"}}},
        {"strength", {{"density", "909kg/m3"}, {"temperature", "68F"}}},
        {"strength", {{"hydrometer", "40%"}, {"temperature", "12C"}}},
        {"strength", {{"abw", "52%"}}},
        {"strength", {{"proof", "120proof"}}},
        {"gravity", {{"reading", "1.020"}, {"temperature", "12C"}, {"reference", "60F"}}},
        {"gravity", {{"reading", "5P"}}},
        {"alcohol", {{"original", "1.105"}, {"final", "1.024"}}},
        {"alcohol", {{"abv", "12.4%"}, {"final", "1.018"}}},
        {"mix",
         {{"first-volume", "190L"},
          {"first-abv", "11%"},
          {"first-gravity", "1.022"},
          {"second-volume", "3L"},
          {"second-abv", "45%"}}},
        {"spirit-to-reach",
         {{"volume", "190L"},
          {"abv", "11%"},
          {"gravity", "1.022"},
          {"spirit-abv", "60%"},
          {"target", "12%"}}},
        {"gauge", {{"size", "53gal"}, {"dip", "450mm"}, {"slope", "2%"}}},
        {"gauge", {{"position", "standing"}, {"dip", "20in"}}},
        {"gauge", {{"gross", "540lb"}, {"tare", "110lb"}, {"gravity", "1.02"}}},
        {"gauge", {{"gross", "400kg"}, {"tare", "50kg"}}},
        {"gauge",
         {{"length", "776mm"},
          {"bilge", "600mm"},
          {"head", "520mm"},
          {"full", "198L"},
          {"dip", "450mm"}}},
        {"dip-table", {{"size", "225L"}, {"step", "10mm"}}},
        {"barrel", {{"bilge-girth", "2070mm"}, {"chime-girth", "1740mm"}, {"length", "890mm"}}},
        {"purge", {{"cylinder", "20kg"}, {"room", "60m3"}, {"air-changes", "2/h"}}},
        {"purge", {{"time", "10min"}, {"hose-bore", "8mm"}, {"cylinder", "0.5kg"}}},
        {"purge-cycles", {{"volume", "20L"}, {"pressure", "15psi"}}},
        {"purge-cycles", {{"cycles", "5"}}},
        {"room-air", {{"mass", "2kg"}, {"time", "10min"}, {"room", "30m3"}}},
        {"room-air", {{"flow", "0.35kg/min"}, {"time", "10min"}}},
        {"push", {{"pressure", "2psi"}, {"volume", "190L"}}},
        {"push", {{"pressure", "3psi"}, {"lift", "-0.8m"}, {"depth", "0.6m"}}},
        {"push", {{"pressure", "8psi"}}},
        {"carbonate", {{"temperature", "38F"}, {"target", "2.2vol"}, {"how", "stone"}}},
        {"carbonate", {{"pressure", "14psi"}, {"how", "shaken"}}},
        {"residual", {{"temperature", "18C"}}},
        {"prime", {{"volume", "180L"}, {"sugar", "glucose"}, {"target", "2.2vol"}}},
        {"flat", {{"now", "0.7vol"}, {"temperature", "20C"}}},
        {"loss", {{"time", "274d"}, {"temperature", "13C"}, {"humidity", "75%"}}},
        {"loss", {{"extract", "7P"}, {"area", "1.8m2"}, {"stave", "24mm"}, {"empty", "30d"}}},
        {"soak", {{"size", "53gal"}, {"empty", "60d"}, {"rewetted", "3d"}}},
        {"explain", {{"full", "53gal"}, {"found", "50gal"}, {"found-by", "weight"}}},
        {"explain", {{"full", "200L"}, {"found", "200L"}}},
        {"wet", {{"empty", "30d"}, {"spirit-abv", "60%"}}},
        {"wet", {{"empty", "3d"}}},
        {"wet", {{"poured", "3L"}, {"drained", "2L"}, {"drained-abv", "40%"}}},
        {"oxygen",
         {{"draws", "6"}, {"method", "bunghole"}, {"openings", "2"}, {"transfer", "once"}}},
        {"package",
         {{"volume", "180L"}, {"first", "keg-20-L"}, {"first-count", "2"}, {"abv", "12.1%"}}},
        {"package",
         {{"volume", "180L"}, {"second", "none"}, {"abv", "5%"}, {"label", "6.5%"}, {"law", "EU"}}},
    };
}

}  // namespace spile::support
