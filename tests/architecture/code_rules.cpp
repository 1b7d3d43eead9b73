#include "tests/architecture/rules.hpp"

#include <algorithm>
#include <map>
#include <regex>

namespace spile::architecture {

using Folders = std::vector<std::string_view>;

// What each folder of core may include of core, besides itself. A path that ends in .hpp is that
// header alone.
static const std::map<std::string, Folders, std::less<>>& arrows()
{
    static const Folders science{"base", "units"};
    static const Folders senses{"base", "units", "liquor", "gas", "vessel", "colour"};
    static const Folders views{"base",   "units", "cellar", "panel", "wood",
                               "liquor", "gas",   "vessel", "colour"};
    static const Folders plans{"base", "units",  "cellar", "panel",   "wood", "liquor",
                               "gas",  "vessel", "colour", "outlook", "blend"};
    static const std::map<std::string, Folders, std::less<>> table{
        {"base", {}},
        {"units", {"base"}},
        {"liquor", science},
        {"gas", science},
        {"vessel", science},
        {"colour", science},
        {"picture", science},
        {"scan", {"base", "units", "picture/image.hpp"}},
        {"labels", {"base", "units", "scan"}},
        {"ledger", science},
        {"panel", senses},
        {"wood", senses},
        {"cellar", {"base", "units", "ledger", "scan", "picture"}},
        {"outlook", views},
        {"blend", views},
        {"plan", plans},
        {"trace", plans}};
    return table;
}

// The path of an #include in quotes or brackets; empty if the line has none.
static std::string includedPath(const std::string& line)
{
    static const std::regex include(R"(^\s*#\s*include\s*[<"]([^">]+)[">])");
    std::smatch match;
    return std::regex_search(line, match, include) ? match[1].str() : std::string();
}

static bool mayInclude(std::string_view folder, std::string_view included)
{
    const SourceFile target{std::string(included), ""};
    if (isIn(target, "core/" + std::string(folder))) {
        return true;
    }
    const Folders& allowed = arrows().find(folder)->second;
    return std::any_of(allowed.begin(), allowed.end(), [&](std::string_view name) {
        return isIn(target, "core/" + std::string(name));
    });
}

// Calls check(line index, included path) for each #include of `file`.
template <class Check>
static void forEachInclude(const SourceFile& file, Check check)
{
    const std::vector<std::string> lines = linesOf(file.text);
    for (std::size_t i = 0; i < lines.size(); ++i) {
        if (const std::string path = includedPath(lines[i]); !path.empty()) {
            check(i, path);
        }
    }
}

Findings includesAgainstTheArrows(const Tree& tree)
{
    static const std::regex ours("^(core|platform|qml|tests|demo)/.*");
    Findings findings;
    for (const SourceFile& file : tree) {
        if (!isCpp(file)) {
            continue;
        }
        const bool isCore = isIn(file, "core");
        const std::string folder = isCore ? file.path.substr(5, file.path.find('/', 5) - 5) : "";
        if (isCore && !arrows().contains(folder)) {
            findings.push_back(finding(file, 0, "a folder of core that has no arrows"));
            continue;
        }
        forEachInclude(file, [&](std::size_t line, const std::string& path) {
            const bool isOurs = std::regex_match(path, ours);
            const bool isWrong = isCore ? !mayInclude(folder, path) : path.starts_with("tests/");
            if (isOurs && isWrong && !isIn(file, "tests")) {
                findings.push_back(finding(file, line, path));
            }
        });
    }
    return findings;
}

Findings qtWhereItMustNotBe(const Tree& tree)
{
    static const std::regex qt("^(Q[A-Z]|Qt).*|.*/q[a-z]+\\.h$");
    Findings findings;
    for (const SourceFile& file : tree) {
        if (isInAny(file, {"core", "platform/system", "platform/desk"})) {
            forEachInclude(file, [&](std::size_t line, const std::string& path) {
                if (std::regex_match(path, qt)) {
                    findings.push_back(finding(file, line, path));
                }
            });
        }
    }
    return findings;
}

Findings librariesOutOfPlace(const Tree& tree)
{
    struct Library {
        std::string_view start;  // of the included path
        Folders places;          // besides tests/
        bool sourcesOnly;
    };
    static const std::vector<Library> libraries{{"sqlite3", {"core/ledger", "core/cellar"}, true},
                                                {"ZXing/", {"core/scan"}, false},
                                                {"openssl/", {"core/base/sha256.cpp"}, true},
                                                {"sodium", {"core/ledger"}, true},
                                                {"jpeglib", {"core/picture"}, false},
                                                {"png.h", {"core/picture"}, false},
                                                {"hb", {"core/labels"}, true},
                                                {"nlohmann/", {"platform/desk", "demo"}, false},
                                                {"CLI/", {"platform/desk", "demo"}, false},
                                                {"QCamera", {"platform/camera"}, false},
                                                {"QMedia", {"platform/camera"}, false},
                                                {"QVideo", {"platform/camera"}, false},
                                                {"QSql", {}, false},
                                                {"zip.h", {}, false},
                                                {"gtest/", {}, false},
                                                {"rapidcheck", {}, false}};
    Findings findings;
    for (const SourceFile& file : tree) {
        if (!isCpp(file) || isIn(file, "tests")) {
            continue;
        }
        forEachInclude(file, [&](std::size_t line, const std::string& path) {
            for (const Library& library : libraries) {
                const bool isFit = isInAny(file, library.places) &&
                                   !(library.sourcesOnly && file.path.ends_with(".hpp"));
                if (path.starts_with(library.start) && !isFit) {
                    findings.push_back(finding(file, line, path));
                }
            }
        });
    }
    return findings;
}

// Lists the lines of `text`, a version of the file's own, in which `wrong` is found.
static void searchLines(const SourceFile& file, std::string_view text, const std::regex& wrong,
                        Findings& findings)
{
    const std::vector<std::string> lines = linesOf(text);
    for (std::size_t i = 0; i < lines.size(); ++i) {
        std::smatch match;
        if (std::regex_search(lines[i], match, wrong)) {
            findings.push_back(finding(file, i, match.str()));
        }
    }
}

Findings sqlOutOfPlace(const Tree& tree)
{
    static const std::regex sql("SELECT |INSERT INTO|UPDATE .* SET|DELETE FROM|CREATE TABLE");
    Findings findings;
    for (const SourceFile& file : tree) {
        const bool isFree = isInAny(file, {"core/ledger", "core/cellar", "tests"});
        if ((isCpp(file) || isQml(file)) && !isFree) {
            searchLines(file, stringsOnly(file.text), sql, findings);
        }
    }
    return findings;
}

Findings exceptionsOutOfPlace(const Tree& tree)
{
    // ZXing, CLI11 and JSON throw; the encoder is called back by C, which nothing may pass through;
    // and a main() lets nothing escape.
    static const Folders places{"core/scan", "core/picture/encode.cpp", "platform/desk",
                                "demo/main_job.cpp", "tests"};
    static const std::regex words(R"(\b(try|catch)\b)");
    Findings findings;
    for (const SourceFile& file : tree) {
        if (isCpp(file) && !isInAny(file, places)) {
            searchLines(file, codeOnly(file.text), words, findings);
        }
    }
    return findings;
}

Findings alternativesWithoutParentheses(const Tree& tree)
{
    static const std::regex bare(R"(\bRC_(ASSERT|PRE)\((?!\()[^;|]*\|\|)");
    Findings findings;
    for (const SourceFile& file : tree) {
        const std::string code = isCpp(file) ? codeOnly(file.text) : std::string();
        const std::sregex_iterator end;
        for (std::sregex_iterator match(code.begin(), code.end(), bare); match != end; ++match) {
            const auto line = std::count(code.begin(), code.begin() + match->position(), '\n');
            findings.push_back(
                finding(file, static_cast<std::size_t>(line), "|| without parentheses"));
        }
    }
    return findings;
}

}  // namespace spile::architecture
