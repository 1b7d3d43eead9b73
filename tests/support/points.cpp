#include "tests/support/points.hpp"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <fstream>
#include <optional>
#include <sstream>
#include <stdexcept>

namespace spile::support {

namespace {

constexpr std::string_view header = "item,input,expected,tolerance,source,tag";

std::vector<std::string> split(std::string_view text, char at)
{
    std::vector<std::string> parts;
    std::size_t start = 0;
    for (std::size_t end = text.find(at); end != std::string_view::npos;
         end = text.find(at, start)) {
        parts.emplace_back(text.substr(start, end - start));
        start = end + 1;
    }
    parts.emplace_back(text.substr(start));
    return parts;
}

std::optional<double> numberOf(std::string_view text)
{
    double value = 0;
    const auto read = std::from_chars(text.data(), text.data() + text.size(), value);
    if (read.ec != std::errc() || read.ptr != text.data() + text.size() || !std::isfinite(value)) {
        return std::nullopt;
    }
    return value;
}

double needNumber(const std::string& text, const std::string& what)
{
    const auto value = numberOf(text);
    if (!value) {
        throw std::runtime_error("the " + what + " is no number: " + text);
    }
    return *value;
}

void readInputs(const std::string& text, Point& point)
{
    for (const std::string& part : split(text, ';')) {
        const auto equals = part.find('=');
        if (equals == std::string::npos || equals == 0) {
            throw std::runtime_error("not name=value: " + part);
        }
        const std::string name = part.substr(0, equals);
        const std::string value = part.substr(equals + 1);
        if (point.input.contains(name) || point.word.contains(name)) {
            throw std::runtime_error("given twice: " + name);
        }
        if (const auto number = numberOf(value)) {
            point.input[name] = *number;
        } else {
            point.word[name] = value;
        }
    }
}

Point pointOf(std::string_view line)
{
    static constexpr std::array<std::string_view, 4> tags{"seen", "memory", "common practice",
                                                          "computed"};
    const std::vector<std::string> field = split(line, ',');
    if (field.size() != 6) {
        throw std::runtime_error(std::to_string(field.size()) + " fields, not 6");
    }
    Point point;
    point.item = field[0];
    if (!field[1].empty()) {
        readInputs(field[1], point);
    }
    point.expected = needNumber(field[2], "expected value");
    point.tolerance = needNumber(field[3], "tolerance");
    point.source = field[4];
    point.tag = field[5];
    if (point.item.empty() || point.source.empty() || point.tolerance < 0) {
        throw std::runtime_error("no item, no source, or a tolerance below 0");
    }
    if (std::find(tags.begin(), tags.end(), point.tag) == tags.end()) {
        throw std::runtime_error("not a tag: " + point.tag);
    }
    return point;
}

}  // namespace

std::vector<Point> pointsOf(std::string_view text, std::string_view name)
{
    std::vector<Point> points;
    std::size_t number = 0;
    for (const std::string& line : split(text, '\n')) {
        ++number;
        if (number == 1 && line != header) {
            throw std::runtime_error(std::string(name) + " does not begin with " +
                                     std::string(header));
        }
        if (number == 1 || line.empty() || line[0] == '#') {
            continue;
        }
        try {
            points.push_back(pointOf(line));
            points.back().line = number;
        } catch (const std::runtime_error& error) {
            throw std::runtime_error(std::string(name) + ":" + std::to_string(number) + ": " +
                                     error.what());
        }
    }
    return points;
}

std::vector<Point> readPoints(std::string_view file)
{
    const std::string path = std::string(SPILE_SOURCE_DIR "/tests/reference/points/").append(file);
    std::ifstream stream(path, std::ios::binary);
    if (!stream) {
        throw std::runtime_error("there is no " + path);
    }
    std::ostringstream text;
    text << stream.rdbuf();
    return pointsOf(text.str(), file);
}

std::string nameOf(const Point& point, std::string_view file)
{
    std::ostringstream text;
    text << file << ':' << point.line << ' ' << point.item;
    for (const auto& [name, value] : point.input) {
        text << ' ' << name << '=' << value;
    }
    for (const auto& [name, value] : point.word) {
        text << ' ' << name << '=' << value;
    }
    return text.str() + " (" + point.source + ", " + point.tag + ")";
}

}  // namespace spile::support
