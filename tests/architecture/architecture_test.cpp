// Each rule is first seen to find what breaks it, in a small sample, and then held against the
// tree itself.
#include "tests/architecture/rules.hpp"

#include <filesystem>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace spile::architecture {

using testing::ElementsAre;
using testing::IsEmpty;

static const Tree& ourTree()
{
    static const Tree tree = readTree();
    return tree;
}

TEST(SourceTree, IsFoundAtAll)
{
    const auto has = [](const char* path) {
        return std::any_of(ourTree().begin(), ourTree().end(),
                           [&](const SourceFile& file) { return file.path == path; });
    };
    EXPECT_TRUE(has("CMakeLists.txt"));
    EXPECT_TRUE(has("core/base/result.hpp"));
    EXPECT_TRUE(has("tests/architecture/architecture_test.cpp"));
}

TEST(SourceTree, TellsCodeFromCommentsAndLiterals)
{
    EXPECT_EQ(codeOnly("a // b\nc /* d\n */ e"), "a     \nc     \n    e");
    EXPECT_EQ(codeOnly(R"(f("a\"b", 'c', 1'000))"), "f(      ,    , 1'000)");
    EXPECT_EQ(codeOnly("R\"x(a)\" b)x\" + c"), "             + c");
    EXPECT_EQ(stringsOnly("f(\"a\", 'b') // \"c\""), "  \"a\"             ");
    EXPECT_EQ(stringsOnly("f(\"// a\") b"), "  \"// a\"   ");
}

TEST(Includes, FollowTheArrows)
{
    EXPECT_THAT(includesAgainstTheArrows(
                    {{"core/gas/purge.cpp",
                      "#include \"core/gas/purge.hpp\"\n"
                      "#include \"core/units/units.hpp\"\n"
                      "#include \"core/cellar/state.hpp\"\n"
                      "# include <platform/system/x.hpp>\n"
                      "#include <string>\n"},
                     {"core/scan/reader.hpp",
                      "#include \"core/picture/image.hpp\"\n"
                      "#include \"core/picture/decode.hpp\"\n"},
                     {"core/base/a.hpp", "#include \"core/baseline/a.hpp\"\n"},
                     {"core/newcomer/a.hpp", ""},
                     {"demo/a.cpp",
                      "#include \"core/cellar/state.hpp\"\n"
                      "#include \"tests/support/temp_folder.hpp\"\n"},
                     {"tests/unit/a.cpp", "#include \"tests/support/temp_folder.hpp\"\n"}}),
                ElementsAre("core/gas/purge.cpp:3: core/cellar/state.hpp",
                            "core/gas/purge.cpp:4: platform/system/x.hpp",
                            "core/scan/reader.hpp:2: core/picture/decode.hpp",
                            "core/base/a.hpp:1: core/baseline/a.hpp",
                            "core/newcomer/a.hpp:1: a folder of core that has no arrows",
                            "demo/a.cpp:2: tests/support/temp_folder.hpp"));
    EXPECT_THAT(includesAgainstTheArrows(ourTree()), IsEmpty());
}

TEST(Qt, StaysOutOfCoreAndTheDesk)
{
    const std::string text = "#include <QString>\n#include <QtCore/qglobal.h>\n#include <Quartz>\n";
    EXPECT_THAT(qtWhereItMustNotBe({{"core/base/a.cpp", text},
                                    {"platform/desk/a.cpp", "#include <string>\n#include <QFile>"},
                                    {"qml/viewmodels/a.cpp", text}}),
                ElementsAre("core/base/a.cpp:1: QString", "core/base/a.cpp:2: QtCore/qglobal.h",
                            "platform/desk/a.cpp:2: QFile"));
    EXPECT_THAT(qtWhereItMustNotBe(ourTree()), IsEmpty());
}

TEST(Libraries, StayWhereTheyBelong)
{
    EXPECT_THAT(
        librariesOutOfPlace({{"core/ledger/a.cpp", "#include <sqlite3.h>\n#include <sodium.h>"},
                             {"core/ledger/a.hpp", "#include <sqlite3.h>\n"},
                             {"core/cellar/acts/a.cpp", "#include <sqlite3.h>\n"},
                             {"core/base/sha256.cpp", "#include <openssl/evp.h>\n"},
                             {"core/base/bytes.cpp", "#include <openssl/evp.h>\n"},
                             {"platform/desk/a.cpp", "#include <ZXing/ReadBarcode.h>\n"},
                             {"qml/viewmodels/a.cpp", "#include <QVideoFrame>\n"},
                             {"tests/unit/a.cpp", "#include <zip.h>\n"}}),
        ElementsAre("core/ledger/a.hpp:1: sqlite3.h", "core/base/bytes.cpp:1: openssl/evp.h",
                    "platform/desk/a.cpp:1: ZXing/ReadBarcode.h",
                    "qml/viewmodels/a.cpp:1: QVideoFrame"));
    EXPECT_THAT(librariesOutOfPlace(ourTree()), IsEmpty());
}

TEST(Sql, StaysInLedgerAndCellar)
{
    const std::string text =
        "// SELECT a barrel\nf(\"SELECT x\");\ng(R\"(\nUPDATE t SET x=1)\");\n";
    EXPECT_THAT(sqlOutOfPlace({{"core/plan/a.cpp", text},
                               {"core/cellar/a.cpp", text},
                               {"qml/screens/A.qml", "a: \"DELETE FROM t\""},
                               {"tests/unit/a.cpp", text}}),
                ElementsAre("core/plan/a.cpp:2: SELECT ", "core/plan/a.cpp:4: UPDATE t SET",
                            "qml/screens/A.qml:1: DELETE FROM"));
    EXPECT_THAT(sqlOutOfPlace(ourTree()), IsEmpty());
}

TEST(Exceptions, StopAtTheLibraryThatThrows)
{
    const std::string text = "// try this\nint tryIt = f(\"try\");\ntry {\n} catch (...) {\n}\n";
    EXPECT_THAT(exceptionsOutOfPlace({{"core/gas/a.cpp", text}, {"core/scan/a.cpp", text}}),
                ElementsAre("core/gas/a.cpp:3: try", "core/gas/a.cpp:4: catch"));
    EXPECT_THAT(exceptionsOutOfPlace(ourTree()), IsEmpty());
}

TEST(Properties, PutAlternativesInParentheses)
{
    EXPECT_THAT(alternativesWithoutParentheses(
                    {{"tests/property/a.cpp",
                      "RC_ASSERT((a || b));\nRC_ASSERT(f(a));\nx = a || b;\n"
                      "RC_PRE(i == 0 ||\n  f(i - 1));\nRC_ASSERT(f(a) || b);\n"}}),
                ElementsAre("tests/property/a.cpp:4: || without parentheses",
                            "tests/property/a.cpp:6: || without parentheses"));
    EXPECT_THAT(alternativesWithoutParentheses(ourTree()), IsEmpty());
}

TEST(Files, AreShort)
{
    const auto lines = [](std::size_t count) { return std::string(count, '\n'); };
    EXPECT_THAT(filesThatAreTooLong({{"core/gas/a.cpp", lines(400)},
                                     {"core/gas/b.hpp", lines(400) + "}"},
                                     {"qml/screens/A.qml", lines(200)},
                                     {"qml/screens/B.qml", lines(201)},
                                     {"assets/data/a.csv", lines(999)}}),
                ElementsAre("core/gas/b.hpp:401: too long", "qml/screens/B.qml:201: too long"));
    EXPECT_THAT(filesThatAreTooLong(ourTree()), IsEmpty());
}

static std::vector<std::string> namesInRoot()
{
    std::vector<std::string> names;
    for (const auto& entry : std::filesystem::directory_iterator(SPILE_SOURCE_DIR)) {
        names.push_back(entry.path().filename().string());
    }
    return names;
}

TEST(Root, HoldsWhatItShould)
{
    std::vector<std::string> names{
        ".ci",           ".clang-format", ".clang-tidy",    ".editorconfig",
        ".gitignore",    "CHANGELOG.md",  "CMakeLists.txt", "CMakePresets.json",
        "DEVELOPERS.md", "LICENSE",       "README.md",      "assets",
        "core",          "demo",          "platform",       "qml",
        "tests",         "build"};
    EXPECT_THAT(rootOutOfOrder(names), IsEmpty());
    names[0] = "notes.txt";
    EXPECT_THAT(rootOutOfOrder(names),
                ElementsAre("notes.txt does not belong into the root", ".ci is missing"));
    EXPECT_THAT(rootOutOfOrder(namesInRoot()), IsEmpty());
}

TEST(Tree, LeavesNothingForLater)
{
    EXPECT_THAT(thingsLeftToDo({{"core/gas/a.cpp", std::string("\n// TO") + "DO: later"},
                                {"core/gas/b.cpp", "// to do"}}),
                ElementsAre(std::string("core/gas/a.cpp:2: TO") + "DO"));
    EXPECT_THAT(thingsLeftToDo(ourTree()), IsEmpty());
}

TEST(Tree, KeepsOutWordsAndPlacesThatDoNotBelong)
{
    const std::string first = "Quadru";
    const std::string second = "Barley";
    EXPECT_THAT(
        forbiddenWords({{"a", "a " + first + "pel"},
                        {"b", first + "ple"},
                        {"c", second + "Wine"},
                        {"d", second + "-wine"},
                        {"e", second + "\nwine"},
                        {"f", second + " and wine"},
                        {"assets/" + second + "_wine.txt", ""},
                        {"g", std::string("cd /wo") + "rk/x"},
                        {"h", "work/x"}}),
        ElementsAre("a:1: a forbidden word", "c:1: a forbidden word", "d:1: a forbidden word",
                    "e:1: a forbidden word", "assets/" + second + "_wine.txt:1: a forbidden word",
                    std::string("g:1: /wo") + "rk/"));
    EXPECT_THAT(forbiddenWords(ourTree()), IsEmpty());
}

TEST(Qml, KeepsItsRules)
{
    EXPECT_THAT(qmlAgainstTheRules({{"qml/components/A.qml",
                                     "import Spile.ViewModels\n"
                                     "property var x\n"
                                     "color: \"#fff\"\n"
                                     "delegate: B {}\n"},
                                    {"qml/components/B.qml",
                                     "pragma ComponentBehavior: Bound\n"
                                     "property int x\n"
                                     "  delegate: C {}\n"},
                                    {"qml/theme/Theme.qml", "property color ink: \"#102030\"\n"},
                                    {"qml/screens/S.qml", "import Spile.ViewModels\n"},
                                    {"platform/app/main.cpp",
                                     "qmlRegisterType<A>();\n"
                                     "c->setContextProperty(\"a\", a);\n"}}),
                ElementsAre("qml/components/A.qml:1: import of what lies above",
                            "qml/components/A.qml:2: untyped property",
                            "qml/components/A.qml:3: colour outside the theme",
                            "qml/components/A.qml:1: a delegate without ComponentBehavior: Bound",
                            "platform/app/main.cpp:1: type or object registered by hand",
                            "platform/app/main.cpp:2: type or object registered by hand"));
    EXPECT_THAT(qmlAgainstTheRules(ourTree()), IsEmpty());
}

TEST(Qml, TranslatesItsWords)
{
    const std::string text =
        "text: \"Wood\"\n"
        "    Accessible.name: qsTr(\"Wood\"); title: \"Oak; new\"\n"
        "property string hint: a.b ? qsTr(\"%1 of it\", \"a share\").arg(1) : \"none\"\n"
        "label: empty ? qsTr(\"None\")\n"
        "             : \"Some\"\n"
        "caption: kind === \"rum\" ? qsTr(\"Say \\\"rum\\\"\") : \"\" // \"rum\"\n"
        "objectName: \"wood\"\n"
        "words: [qsTr(\"Full\"), \"Empty\"]\n"
        "text: \"·\" + count\n"
        "file: \"Wood.qml\"\n"
        "// text: \"Wood\"\n";
    EXPECT_THAT(qmlAgainstTheRules({{"qml/screens/A.qml", text},
                                    {"qml/components/A.qml", "Pad { text: \"Wood\" }"},
                                    {"tests/gui/tst_a.qml", text}}),
                ElementsAre("qml/screens/A.qml:1: words that are not translated",
                            "qml/screens/A.qml:2: words that are not translated",
                            "qml/screens/A.qml:3: words that are not translated",
                            "qml/screens/A.qml:4: words that are not translated",
                            "qml/screens/A.qml:8: words that are not translated",
                            "qml/components/A.qml:1: words that are not translated"));
}

}  // namespace spile::architecture
