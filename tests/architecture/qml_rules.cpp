#include "tests/architecture/rules.hpp"

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

static void checkQml(const SourceFile& file, Findings& findings)
{
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
