#include "tests/architecture/rules.hpp"

#include <algorithm>
#include <cctype>
#include <set>

namespace spile::architecture {

Findings filesThatAreTooLong(const Tree& tree)
{
    constexpr std::size_t longestCpp = 400;
    constexpr std::size_t longestQml = 200;
    Findings findings;
    for (const SourceFile& file : tree) {
        if (!isInAny(file, {"core", "qml", "platform", "demo", "tests"})) {
            continue;
        }
        const std::size_t lines = linesOf(file.text).size();
        if ((isCpp(file) && lines > longestCpp) || (isQml(file) && lines > longestQml)) {
            findings.push_back(finding(file, lines - 1, "too long"));
        }
    }
    return findings;
}

Findings rootOutOfOrder(const std::vector<std::string>& entries)
{
    static const std::set<std::string> required{
        ".ci",           ".clang-format", ".clang-tidy",    ".editorconfig",
        ".gitignore",    "CHANGELOG.md",  "CMakeLists.txt", "CMakePresets.json",
        "DEVELOPERS.md", "LICENSE",       "README.md",      "assets",
        "core",          "demo",          "platform",       "qml",
        "tests"};
    static const std::set<std::string> ignored{".git", "build", "compile_commands.json"};
    Findings findings;
    for (const std::string& name : entries) {
        if (!required.contains(name) && !ignored.contains(name)) {
            findings.push_back(name + " does not belong into the root");
        }
    }
    for (const std::string& name : required) {
        if (std::find(entries.begin(), entries.end(), name) == entries.end()) {
            findings.push_back(name + " is missing");
        }
    }
    return findings;
}

// The words below are put together here, so that this file itself is free of them.
using Pieces = std::vector<std::string>;

// Whether the pieces follow one another, with at most one space, line, hyphen or '_' in between.
static bool hasJoined(std::string_view text, const Pieces& pieces)
{
    for (std::size_t at = text.find(pieces[0]); at != std::string_view::npos;
         at = text.find(pieces[0], at + 1)) {
        std::string_view rest = text.substr(at + pieces[0].size());
        const bool follow = std::all_of(pieces.begin() + 1, pieces.end(), [&](const auto& piece) {
            if (!rest.empty() &&
                std::string_view(" \n-_").find(rest[0]) != std::string_view::npos) {
                rest.remove_prefix(1);
            }
            const bool found = rest.starts_with(piece);
            rest.remove_prefix(found ? piece.size() : 0);
            return found;
        });
        if (follow) {
            return true;
        }
    }
    return false;
}

static std::string lower(std::string_view text)
{
    std::string result(text);
    std::transform(result.begin(), result.end(), result.begin(),
                   [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
    return result;
}

Findings thingsLeftToDo(const Tree& tree)
{
    static const std::vector<std::string> words{std::string("TO") + "DO",
                                                std::string("FIX") + "ME"};
    Findings findings;
    for (const SourceFile& file : tree) {
        for (const std::string& word : words) {
            if (isIn(file, "assets/fonts")) {
                continue;  // binary, and the words of others
            }
            const std::size_t at = file.text.find(word);
            if (at != std::string::npos) {
                const auto line = std::count(
                    file.text.begin(), file.text.begin() + static_cast<std::ptrdiff_t>(at), '\n');
                findings.push_back(finding(file, static_cast<std::size_t>(line), word));
            }
        }
    }
    return findings;
}

Findings forbiddenWords(const Tree& tree)
{
    static const std::vector<Pieces> words{{"quadru", "pel"}, {"barley", "wine"}};
    static const std::vector<std::string> places{
        std::string("/wo") + "rk/",         std::string("/ro") + "ot/",
        std::string("/ho") + "me/",         std::string("/us") + "ers/",
        std::string("deb.deb") + "ian.org", std::string("pypi.o") + "rg",
        std::string("npm") + "js.org",      std::string("proxy.gol") + "ang"};
    Findings findings;
    for (const SourceFile& file : tree) {
        const std::string text = lower(file.path + '\n' + file.text);
        for (const Pieces& pieces : words) {
            if (hasJoined(text, pieces)) {
                findings.push_back(finding(file, 0, "a forbidden word"));
            }
        }
        for (const std::string& place : places) {
            if (text.find(place) != std::string::npos) {
                findings.push_back(finding(file, 0, place));
            }
        }
    }
    return findings;
}

}  // namespace spile::architecture
