#include "qml/viewmodels/names.hpp"

namespace spile::viewmodels {

QStringList namesOf(const std::vector<cellar::NamedRow>& rows)
{
    QStringList names;
    for (const cellar::NamedRow& row : rows) {
        names << QString::fromStdString(row.name);
    }
    return names;
}

std::optional<SubjectId> subjectAt(const std::vector<cellar::NamedRow>& rows, int index)
{
    return index < 0 || index >= static_cast<int>(rows.size())
               ? std::nullopt
               : std::optional(rows[static_cast<std::size_t>(index)].subject);
}

}  // namespace spile::viewmodels
