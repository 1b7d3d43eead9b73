#include "qml/viewmodels/tasters_view_model.hpp"

#include "qml/viewmodels/error_text.hpp"
#include "qml/viewmodels/taster_text.hpp"
#include "qml/viewmodels/words.hpp"

namespace spile::viewmodels {

namespace {

const std::string& attributeOf(const plan::TastersOfCellar& told, int number)
{
    return told.attributes[static_cast<std::size_t>(number)];
}

}  // namespace

TastersViewModel::TastersViewModel(Context& context, QObject* parent)
    : QObject(parent), context_(context)
{
    connect(&context_.workers, &Workers::changed, this, &TastersViewModel::refresh);
}

void TastersViewModel::setShown(bool shown)
{
    if (std::exchange(shown_, shown) != shown) {
        refresh();
    }
}

void TastersViewModel::refresh()
{
    if (!shown_) {
        return;
    }
    if (std::exchange(running_, true)) {
        again_ = true;
        return;
    }
    context_.workers.study(
        this,
        [](ledger::Database& database, const Job& job) { return plan::tastersOf(database, job); },
        [this](const Result<plan::TastersOfCellar>& told) {
            running_ = false;
            problem_ = told ? QString() : textOf(told.error());
            if (told) {
                take(*told);
            }
            emit changed();
            if (std::exchange(again_, false)) {
                refresh();
            }
        });
}

void TastersViewModel::take(const plan::TastersOfCellar& told)
{
    std::vector<SaidLine> tasters;
    for (const panel::TasterReport& taster : told.report.tasters) {
        const auto& person = told.people[static_cast<std::size_t>(taster.taster)];
        QStringList sentences;
        for (const panel::Advice& advice : taster.advice) {
            const QString about =
                advice.attribute ? word(attributeOf(told, *advice.attribute)) : QString();
            sentences << TasterText::advice(advice, about, context_.formats);
        }
        tasters.push_back({textOf(person.person), QString::fromStdString(person.name),
                           sentences.join(QLatin1Char('\n'))});
    }
    std::vector<SaidLine> attributes;
    for (const panel::PanelOnAttribute& attribute : told.report.attributes) {
        const std::string& name = attributeOf(told, attribute.attribute);
        attributes.push_back({QString::fromStdString(name), capitalised(word(name)),
                              TasterText::agreement(attribute)});
    }
    tasters_.replace(std::move(tasters));
    attributes_.replace(std::move(attributes));
    loaded_ = true;
}

}  // namespace spile::viewmodels
