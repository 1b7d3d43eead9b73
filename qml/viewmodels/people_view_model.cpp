#include "qml/viewmodels/people_view_model.hpp"

#include "core/cellar/acts/registering.hpp"
#include "qml/viewmodels/error_text.hpp"
#include "qml/viewmodels/settings.hpp"

#include <algorithm>

namespace spile::viewmodels {

namespace {

constexpr int peopleMost = 200;

}  // namespace

PeopleViewModel::PeopleViewModel(Context& context, QObject* parent)
    : QObject(parent), context_(context)
{
    connect(&context_.workers, &Workers::changed, this, &PeopleViewModel::refresh);
}

void PeopleViewModel::refresh()
{
    context_.workers.look(
        this,
        [](ledger::Database& database) {
            return cellar::named(database, "person", {}, peopleMost);
        },
        [this](Result<std::vector<cellar::NamedRow>> people) {
            if (people) {
                people_ = std::move(*people);
                emit changed();
            }
        });
}

QStringList PeopleViewModel::names() const
{
    QStringList names;
    for (const cellar::NamedRow& person : people_) {
        names << QString::fromStdString(person.name);
    }
    return names;
}

int PeopleViewModel::current() const
{
    const auto last = idOf<SubjectId>(context_.settings.lastPerson());
    const auto found = std::find_if(people_.begin(), people_.end(),
                                    [&](const auto& person) { return person.subject == last; });
    return found == people_.end() ? -1 : static_cast<int>(found - people_.begin());
}

QString PeopleViewModel::name() const
{
    const int index = current();
    return index < 0 ? QString() : names().at(index);
}

std::optional<SubjectId> PeopleViewModel::who() const
{
    const int index = current();
    return index < 0 ? std::nullopt
                     : std::optional(people_[static_cast<std::size_t>(index)].subject);
}

QString PeopleViewModel::nameOf(const SubjectId& person) const
{
    const auto found = std::find_if(people_.begin(), people_.end(),
                                    [&](const auto& known) { return known.subject == person; });
    return found == people_.end() ? QString() : QString::fromStdString(found->name);
}

void PeopleViewModel::setNewName(const QString& name)
{
    if (name != newName_) {
        newName_ = name;
        error_.clear();
        emit newNameChanged();
    }
}

void PeopleViewModel::use(const SubjectId& person)
{
    context_.settings.setLastPerson(textOf(person));
    emit changed();
    emit chosen();
}

void PeopleViewModel::choose(int index)
{
    if (index >= 0 && index < static_cast<int>(people_.size())) {
        use(people_[static_cast<std::size_t>(index)].subject);
    }
}

void PeopleViewModel::add()
{
    const QString name = newName_.trimmed();
    if (name.isEmpty()) {
        error_ = tr("Type a name first.");
        emit newNameChanged();
        return;
    }
    const auto same = static_cast<int>(names().indexOf(name));
    if (same >= 0) {
        setNewName({});
        choose(same);
        return;
    }
    context_.workers.act(
        this,
        [name = name.toStdString()](cellar::Cellar& cellar) {
            return cellar::registerPerson(cellar, name);
        },
        [this, name](Result<SubjectId> person) {
            if (!person) {
                error_ = textOf(person.error());
                emit newNameChanged();
                return;
            }
            people_.push_back({*person, name.toStdString()});
            setNewName({});
            use(*person);
        });
}

}  // namespace spile::viewmodels
