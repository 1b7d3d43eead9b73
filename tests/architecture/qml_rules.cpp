#include "tests/architecture/rules.hpp"

#include <algorithm>
#include <regex>

namespace spile::architecture {

namespace {

struct QmlRule {
    std::regex wrong;
    std::vector<std::string_view> places;  // where it holds
    std::vector<std::string_view> except;
    const char* what;
};

}  // namespace

static const std::vector<QmlRule>& lineRules()
{
    static const std::vector<QmlRule> rules{
        {std::regex(R"(\bproperty\s+(var|variant)\b)"),
         {"qml", "platform"},
         {},
         "untyped property"},
        {std::regex(R"re("#([0-9a-fA-F]{3,4}|[0-9a-fA-F]{6}|[0-9a-fA-F]{8})")re"),
         {"qml", "platform"},
         {"qml/theme"},
         "colour outside the theme"},
        {std::regex(R"(\bimport\s+Spile\.(Screens|ViewModels)\b)"),
         {"qml/components", "qml/theme"},
         {},
         "import of what lies above"},
        {std::regex(R"(\bimport\s+Spile\.(Components)\b)"),
         {"qml/theme"},
         {},
         "import of what lies above"},
        {std::regex(R"(\bimport\s+QtMultimedia\b)"),
         {"qml"},
         {},
         "camera outside platform/camera"}};
    return rules;
}

static bool breaks(const QmlRule& rule, const SourceFile& file, const std::string& line)
{
    return isInAny(file, rule.places) && !isInAny(file, rule.except) &&
           std::regex_search(line, rule.wrong);
}

// Code and literals, without comments.
static std::string withoutComments(std::string_view text)
{
    std::string result = codeOnly(text);
    const std::string strings = stringsOnly(text);
    for (std::size_t i = 0; i < result.size(); ++i) {
        if (result[i] == ' ') {
            result[i] = strings[i];
        }
    }
    return result;
}

// A value goes on over lines that begin with an operator. Words that are only compared with are
// not shown, and those in qsTr are translated.
static void checkWords(const SourceFile& file, Findings& findings)
{
    static const std::regex shown(
        R"re(\b(?:text|hint|label|title|subtitle|placeholder|padText|name|description|caption|)re"
        R"re(otherWays|words|value)\s*:((?:"(?:\\.|[^"\\\n])*"|[^;"\n]|\n\s*[?:+&|])*))re");
    static const std::regex harmless(
        R"re(qsTr\s*\(\s*"(?:\\.|[^"\\])*"(?:\s*,\s*"(?:\\.|[^"\\])*")?|[=!]==?\s*"[^"]*")re");
    static const std::regex word(R"re("[^"]*[A-Za-z][^"]*")re");
    const std::string text = withoutComments(file.text);
    for (std::sregex_iterator at(text.begin(), text.end(), shown), end; at != end; ++at) {
        if (std::regex_search(std::regex_replace(at->str(1), harmless, ""), word)) {
            const auto line = std::count(text.begin(), text.begin() + at->position(), '\n');
            findings.push_back(
                finding(file, static_cast<std::size_t>(line), "words that are not translated"));
        }
    }
}

static void checkQml(const SourceFile& file, Findings& findings)
{
    if (isInAny(file, {"qml/components", "qml/screens"})) {
        checkWords(file, findings);
    }
    static const std::regex delegate(R"(^\s*delegate\s*:)");
    const std::vector<std::string> lines = linesOf(file.text);
    bool hasDelegate = false;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        for (const QmlRule& rule : lineRules()) {
            if (breaks(rule, file, lines[i])) {
                findings.push_back(finding(file, i, rule.what));
            }
        }
        hasDelegate = hasDelegate || std::regex_search(lines[i], delegate);
    }
    if (hasDelegate && file.text.find("pragma ComponentBehavior: Bound") == std::string::npos) {
        findings.push_back(finding(file, 0, "a delegate without ComponentBehavior: Bound"));
    }
}

static void checkCpp(const SourceFile& file, Findings& findings)
{
    static const std::regex registration(R"(\b(qmlRegister\w+|setContextProperty)\b)");
    const std::vector<std::string> lines = linesOf(file.text);
    for (std::size_t i = 0; i < lines.size(); ++i) {
        if (std::regex_search(lines[i], registration)) {
            findings.push_back(finding(file, i, "type or object registered by hand"));
        }
    }
}

Findings qmlAgainstTheRules(const Tree& tree)
{
    Findings findings;
    for (const SourceFile& file : tree) {
        if (isQml(file)) {
            checkQml(file, findings);
        } else if (isCpp(file) && isInAny(file, {"qml", "platform", "demo"})) {
            checkCpp(file, findings);
        }
    }
    return findings;
}

}  // namespace spile::architecture
