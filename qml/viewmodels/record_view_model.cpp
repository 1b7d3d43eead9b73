#include "qml/viewmodels/record_view_model.hpp"

#include "core/cellar/acts/filling.hpp"
#include "core/cellar/acts/foreseeing.hpp"
#include "core/cellar/vocabulary.hpp"
#include "qml/viewmodels/barrel_rows.hpp"
#include "qml/viewmodels/error_text.hpp"
#include "qml/viewmodels/names.hpp"
#include "qml/viewmodels/notice.hpp"
#include "qml/viewmodels/taking_back.hpp"
#include "qml/viewmodels/words.hpp"

#include <algorithm>
#include <cmath>

namespace spile::viewmodels {

namespace {

const Volume usualSize = litres(200);
const Volume largest = litres(1000);

// The stored words of a kind's choices.
std::vector<std::string_view> storedChoices(RecordViewModel::Kind kind)
{
    const auto listed = [](const auto& words) {
        return std::vector<std::string_view>(words.begin(), words.end());
    };
    switch (kind) {
        case RecordViewModel::Check:
            return listed(cellar::checkFindings());
        case RecordViewModel::Gauge:
            return listed(cellar::gaugeMethods());
        case RecordViewModel::Verdict:
            return listed(cellar::verdicts());
        case RecordViewModel::Empty:
            return listed(cellar::nextUses());
        case RecordViewModel::Fill:
        case RecordViewModel::Move:
            return {};
    }
    return {};
}

}  // namespace

RecordViewModel::RecordViewModel(Context& context, PeopleViewModel& people, QObject* parent)
    : QObject(parent), context_(context), people_(people)
{
    connect(&people_, &PeopleViewModel::changed, this, &RecordViewModel::changed);
}

void RecordViewModel::begin(Kind kind, const cellar::BarrelRow& barrel)
{
    kind_ = kind;
    barrel_ = barrel;
    named_.clear();
    choice_ = -1;
    newChoice_.clear();
    note_.clear();
    error_.clear();
    volume_.reset();
    busy_ = false;
    readNames();
    emit changed();
}

void RecordViewModel::readNames()
{
    if (kind_ != Fill && kind_ != Move) {
        return;
    }
    context_.workers.look(
        this,
        [kind = kind_ == Fill ? "batch" : "place"](ledger::Database& database) {
            return cellar::named(database, kind, {}, namesMost);
        },
        [this, kind = kind_](Result<std::vector<cellar::NamedRow>> names) {
            if (names && kind == kind_) {
                named_ = std::move(*names);
                emit changed();
            }
        });
}

QString RecordViewModel::title() const
{
    switch (kind_) {
        case Fill:
            return tr("Fill");
        case Check:
            return tr("Look it over");
        case Gauge:
            return tr("Gauge the level");
        case Move:
            return tr("Move it");
        case Verdict:
            return tr("Decide");
        case Empty:
            return tr("Empty");
    }
    return {};
}

QString RecordViewModel::question() const
{
    switch (kind_) {
        case Fill:
            return tr("Which beer goes in?");
        case Check:
            return tr("What do you see?");
        case Gauge:
            return tr("How was it gauged?");
        case Move:
            return tr("Where does it lie now?");
        case Verdict:
            return tr("What next for this barrel?");
        case Empty:
            return tr("What is the barrel for next?");
    }
    return {};
}

QString RecordViewModel::caution() const
{
    switch (kind_) {
        case Fill:
            return tr(
                "Ventilate the room before gas is let in or out: carbon dioxide collects low "
                "and gives no warning. No flame near spirit-wet wood. Local rules come first.");
        case Empty:
            return tr(
                "Ease the pressure first. Heads and hoses can burst under pressure: stay "
                "well below what the barrel and local rules allow. Ventilate the room.");
        case Move:
            return tr(
                "A full barrel of 200 L weighs about 250 kg. Use a lift or enough hands, and "
                "wedge it before you let go. Local rules come first.");
        case Gauge:
            return tr(
                "Ease the pressure before you pull the bung, and keep your face away from it. "
                "No flame near the barrel. Local rules come first.");
        case Check:
        case Verdict:
            return {};
    }
    return {};
}

QString RecordViewModel::barrelName() const { return nameOf(barrel_); }

QStringList RecordViewModel::choices() const
{
    return kind_ == Fill || kind_ == Move ? namesOf(named_) : padWords(storedChoices(kind_));
}

void RecordViewModel::setChoice(int choice)
{
    choice_ = choice == choice_ ? -1 : choice;
    error_.clear();
    emit changed();
}

QString RecordViewModel::newChoiceLabel() const
{
    if (kind_ == Fill) {
        return named_.empty() ? tr("The beer") : tr("Another beer");
    }
    if (kind_ == Move) {
        return named_.empty() ? tr("The place") : tr("Another place");
    }
    return {};
}

void RecordViewModel::setNewChoice(const QString& text)
{
    if (text != newChoice_) {
        newChoice_ = text;
        choice_ = text.trimmed().isEmpty() ? choice_ : -1;
        error_.clear();
        emit changed();
    }
}

void RecordViewModel::setNote(const QString& note)
{
    if (note != note_) {
        note_ = note;
        emit changed();
    }
}

bool RecordViewModel::asksVolume() const
{
    return kind_ == Fill || kind_ == Gauge || kind_ == Empty;
}

QString RecordViewModel::volume() const
{
    return volume_ ? context_.formats.volume(*volume_) : QString();
}

Volume RecordViewModel::stepSize() const
{
    return context_.formats.units == Formats::Units::Us ? usGallons(0.25) : litres(1);
}

QString RecordViewModel::smallStep() const { return context_.formats.volume(stepSize()); }
QString RecordViewModel::bigStep() const { return context_.formats.volume(10.0 * stepSize()); }

void RecordViewModel::step(int count)
{
    if (!volume_) {
        volume_ = barrel_.volume.value_or(barrel_.size.value_or(usualSize));
    } else {
        const double steps = std::round(*volume_ / stepSize()) + count;
        volume_ = std::clamp(steps * stepSize(), stepSize(), barrel_.size.value_or(largest));
    }
    error_.clear();
    emit changed();
}

void RecordViewModel::forgetVolume()
{
    volume_.reset();
    emit changed();
}

QString RecordViewModel::missing() const
{
    if (!people_.who()) {
        return tr("Say who you are first.");
    }
    const bool chosen = choice_ >= 0 || !newChoice_.trimmed().isEmpty();
    if (kind_ == Gauge && !volume_) {
        return tr("Step to the volume first.");
    }
    // A fill of an unknown beer is a fact too.
    return chosen || kind_ == Fill ? QString() : tr("Choose one first.");
}

std::string RecordViewModel::chosen() const
{
    const auto stored = storedChoices(kind_);
    return choice_ >= 0 && choice_ < static_cast<int>(stored.size())
               ? std::string(stored[static_cast<std::size_t>(choice_)])
               : std::string();
}

std::function<Result<EntryId>(cellar::Cellar&)> RecordViewModel::act() const
{
    cellar::Circumstance by;
    by.person = people_.who();
    by.note = note_.trimmed().toStdString();
    by.at = Formats::eventTime(context_.formats.now());
    const SubjectId barrel = barrel_.barrel;
    const std::string word = chosen();
    const auto subject = subjectAt(named_, choice_);
    const std::string fresh = newChoice_.trimmed().toStdString();
    switch (kind_) {
        case Fill:
            return [=, volume = volume_](cellar::Cellar& cellar) -> Result<EntryId> {
                cellar::NewFill fill{barrel, subject, volume, {}, {}, by};
                if (!fresh.empty()) {
                    SPILE_ASSIGN(batch, cellar::batchNamed(cellar, fresh));
                    fill.batch = batch;
                }
                return cellar::recordFill(cellar, fill);
            };
        case Check:
            return [=](cellar::Cellar& cellar) {
                return cellar::recordCheck(cellar, {barrel, word, cellar::isSound(word), by});
            };
        case Gauge:
            return [=, volume = *volume_](cellar::Cellar& cellar) {
                return cellar::recordGauge(cellar, {barrel, volume, word, {}, {}, {}, by});
            };
        case Move:
            return [=](cellar::Cellar& cellar) -> Result<EntryId> {
                if (fresh.empty()) {
                    return cellar::recordMove(cellar, barrel, *subject, by);
                }
                SPILE_ASSIGN(place, cellar::placeNamed(cellar, fresh));
                return cellar::recordMove(cellar, barrel, place, by);
            };
        case Verdict:
            return [=](cellar::Cellar& cellar) -> Result<EntryId> {
                cellar::NewVerdict verdict{barrel, word, {}, by};
                // With what the outlook says today, so that the two can be compared later.
                SPILE_ASSIGN(known, cellar::keptOutlook(cellar.database(), barrel));
                if (known && known->best) {
                    verdict.chance = known->best->chanceNow;
                    verdict.best = known->best->at;
                }
                return cellar::recordVerdict(cellar, verdict);
            };
        case Empty:
            return [=, volume = volume_](cellar::Cellar& cellar) {
                return cellar::recordEmpty(cellar, {barrel, volume, word, by});
            };
    }
    return {};
}

void RecordViewModel::record()
{
    if (!canRecord()) {
        return;
    }
    busy_ = true;
    emit changed();
    context_.workers.act(this, act(), [this](Result<EntryId> entry) {
        busy_ = false;
        if (!entry) {
            error_ = textOf(entry.error());
            emit changed();
            return;
        }
        emit changed();
        emit recorded();
        context_.notice.tell(
            tr("%1, %2: kept.", "Gauge the level, Rum 3").arg(title(), barrelName()),
            takeBack(context_, *entry));
    });
}

}  // namespace spile::viewmodels
