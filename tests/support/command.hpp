#pragma once

#include <nlohmann/json.hpp>
#include <string>
#include <vector>

namespace spile::support {

/// How a program ended and what it said.
struct Ended {
    int exit = -1;  // -1: killed
    std::string out;
    std::string err;

    [[nodiscard]] nlohmann::json json() const { return nlohmann::json::parse(out); }
};

/// Run a program, by path or by name, with these arguments and wait for it.
[[nodiscard]] Ended run(const std::string& program, const std::vector<std::string>& arguments);

}  // namespace spile::support
