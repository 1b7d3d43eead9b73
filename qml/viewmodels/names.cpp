#include "qml/viewmodels/names.hpp"

#include "core/cellar/acts/registering.hpp"

#include <algorithm>

namespace spile::viewmodels {

namespace {

template <class Register>
Result<SubjectId> findOrRegister(cellar::Cellar& cellar, const char* kind, const std::string& name,
                                 Register registerIt)
{
    SPILE_ASSIGN(known, cellar::named(cellar.database(), kind, {}, namesMost));
    const auto same =
        std::find_if(known.begin(), known.end(), [&](const auto& row) { return row.name == name; });
    return same == known.end() ? registerIt() : Result<SubjectId>(same->subject);
}

}  // namespace

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

Result<SubjectId> placeNamed(cellar::Cellar& cellar, const std::string& name)
{
    return findOrRegister(cellar, "place", name,
                          [&] { return cellar::registerPlace(cellar, name); });
}

Result<SubjectId> batchNamed(cellar::Cellar& cellar, const std::string& name)
{
    return findOrRegister(cellar, "batch", name, [&] {
        cellar::NewBatch batch;
        batch.name = name;
        return cellar::registerBatch(cellar, batch);
    });
}

}  // namespace spile::viewmodels
