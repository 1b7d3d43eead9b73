#pragma once

#include <cstdio>
#include <filesystem>
#include <fstream>
#include <map>
#include <stdexcept>
#include <string>

/// Work in a process of its own, so that its peak of memory is its own too. Linux only, as benches
/// are.
namespace spile::bench {

using Numbers = std::map<std::string, double>;

/// What the other process says to the one that started it.
inline void tell(const std::string& name, double number)
{
    std::printf("%s\t%.6f\n", name.c_str(), number);
}

/// Run this program anew with `arguments`, which need no quoting, and return what it told.
inline Numbers inOwnProcess(const std::string& arguments)
{
    const std::string program = std::filesystem::read_symlink("/proc/self/exe").string();
    std::FILE* const output = ::popen(("'" + program + "' " + arguments).c_str(), "r");
    if (output == nullptr) {
        throw std::runtime_error("no process for " + arguments);
    }
    Numbers numbers;
    char name[128] = {};
    double number = 0;
    while (std::fscanf(output, " %127[^\t]\t%lf", name, &number) == 2) {
        numbers[name] = number;
    }
    if (::pclose(output) != 0) {
        throw std::runtime_error("failed: " + arguments);
    }
    return numbers;
}

/// The most memory that this process has held so far, in MB (10^6 bytes).
inline double peakMemoryMb()
{
    std::ifstream status("/proc/self/status");
    for (std::string word; status >> word;) {
        double kibibytes = 0;
        if (word == "VmHWM:" && status >> kibibytes) {
            return kibibytes * 1024 / 1e6;
        }
    }
    throw std::runtime_error("this system does not say how much memory a process has held");
}

}  // namespace spile::bench
