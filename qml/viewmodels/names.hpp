#pragma once

#include "core/cellar/queries.hpp"

#include <QStringList>
#include <string>

namespace spile::viewmodels {

/// The most names of one kind that a page offers.
inline constexpr int namesMost = 100;

[[nodiscard]] QStringList namesOf(const std::vector<cellar::NamedRow>& rows);

/// The subject at that place of a list; none if nothing is chosen there.
[[nodiscard]] std::optional<SubjectId> subjectAt(const std::vector<cellar::NamedRow>& rows,
                                                 int index);

}  // namespace spile::viewmodels
