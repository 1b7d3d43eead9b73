#pragma once

#include "tests/architecture/source_tree.hpp"

/// The rules of the tree. Each returns what breaks it.
namespace spile::architecture {

/// Folders of core include only those that their arrows point at, and nothing outside core.
[[nodiscard]] Findings includesAgainstTheArrows(const Tree& tree);
/// Qt is neither in core nor in the parts of platform that must do without.
[[nodiscard]] Findings qtWhereItMustNotBe(const Tree& tree);
/// Each library is known to the few files that it was given to.
[[nodiscard]] Findings librariesOutOfPlace(const Tree& tree);
/// SQL is in the ledger and the cellar alone.
[[nodiscard]] Findings sqlOutOfPlace(const Tree& tree);
/// Exceptions are caught only where a library throws them.
[[nodiscard]] Findings exceptionsOutOfPlace(const Tree& tree);

/// RapidCheck evaluates both sides of `RC_ASSERT(a || b)`, so that a guard in front guards nothing:
/// alternatives need parentheses of their own.
[[nodiscard]] Findings alternativesWithoutParentheses(const Tree& tree);

/// No file is longer than one can take in.
[[nodiscard]] Findings filesThatAreTooLong(const Tree& tree);
/// The root holds what it should, and no more. `entries` are the names in it.
[[nodiscard]] Findings rootOutOfOrder(const std::vector<std::string>& entries);
/// Nothing is left for later in a comment.
[[nodiscard]] Findings thingsLeftToDo(const Tree& tree);
/// Words and places that have no business in the project, in files or their names.
[[nodiscard]] Findings forbiddenWords(const Tree& tree);

/// QML has types, takes its looks from the theme, and knows only what lies below it.
[[nodiscard]] Findings qmlAgainstTheRules(const Tree& tree);

}  // namespace spile::architecture
