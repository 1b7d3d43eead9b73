#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace spile::architecture {

/// One file of the tree, or of a sample that a test made up.
struct SourceFile {
    std::string path;  ///< from the root of the tree, with '/'
    std::string text;
};

using Tree = std::vector<SourceFile>;
/// What breaks a rule, each as "path:line: what".
using Findings = std::vector<std::string>;

/// Return all files of the project, sorted; without .git and what .gitignore keeps out.
[[nodiscard]] Tree readTree();

/// Return the text of C++ with its comments and literals blanked; lines stay where they are.
[[nodiscard]] std::string codeOnly(std::string_view text);
/// Return the text of C++ with all but its string literals blanked.
[[nodiscard]] std::string stringsOnly(std::string_view text);

[[nodiscard]] std::vector<std::string> linesOf(std::string_view text);
[[nodiscard]] std::string finding(const SourceFile& file, std::size_t lineIndex,
                                  std::string_view what);

/// Whether the path lies in `folder` ("core/scan") or is that file.
[[nodiscard]] bool isIn(const SourceFile& file, std::string_view folder);
[[nodiscard]] bool isInAny(const SourceFile& file, const std::vector<std::string_view>& folders);
[[nodiscard]] bool isCpp(const SourceFile& file);
[[nodiscard]] bool isQml(const SourceFile& file);

}  // namespace spile::architecture
