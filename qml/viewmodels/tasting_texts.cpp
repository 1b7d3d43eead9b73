// What a tasting sheet shows: the second half of tasting_view_model.cpp.
#include "core/cellar/acts/sheet.hpp"
#include "core/cellar/vocabulary.hpp"
#include "core/scan/barrel_code.hpp"
#include "qml/viewmodels/barrel_rows.hpp"
#include "qml/viewmodels/tasting_view_model.hpp"
#include "qml/viewmodels/words.hpp"

#include <algorithm>
#include <array>

namespace spile::viewmodels {

namespace {

// Faults are stored on the same nine steps as scores; three of them are enough here.
QString strengthWord(int strength)
{
    constexpr int clear = 5;
    if (strength < clear) {
        return TastingViewModel::tr("slight");
    }
    return strength == clear ? TastingViewModel::tr("clear") : TastingViewModel::tr("strong");
}

}  // namespace

QString TastingViewModel::barrelName() const { return nameOf(barrel_); }

QString TastingViewModel::code() const
{
    return barrel_.mark.empty() || flight_ ? QString()
                                           : QString::fromStdString(scan::shown(barrel_.code));
}

QString TastingViewModel::taster() const { return people_.nameOf(taster_); }

QString TastingViewModel::title() const
{
    switch (step()) {
        case Attribute:
            return capitalised(word(steps_.attribute()));
        case Liking:
            return tr("Liking");
        case Faults:
            return tr("Anything wrong?");
        case Readings:
            return tr("Readings");
        case Note:
            return tr("A note");
        case Close:
            return tr("Close the sheet");
    }
    return {};
}

QString TastingViewModel::place() const
{
    return tr("%1 of %2", "the third of nine steps").arg(steps_.index() + 1).arg(steps_.count());
}

int TastingViewModel::value() const
{
    if (step() == Liking) {
        return content_.taste.liking.value_or(0);
    }
    const auto found = content_.taste.scores.find(steps_.attribute());
    return found == content_.taste.scores.end() ? 0 : found->second.value_or(0);
}

bool TastingViewModel::isNotJudged() const
{
    const auto found = content_.taste.scores.find(steps_.attribute());
    return found != content_.taste.scores.end() && !found->second;
}

QString TastingViewModel::readout() const
{
    return value() == 0 ? QString() : context_.formats.locale.toString(value());
}

QStringList TastingViewModel::ladderWords() const
{
    return step() == Liking
               ? QStringList{tr("love it"), tr("like it"), tr("it is fine"), tr("do not like it"),
                             tr("would pour it out")}
               : QStringList{tr("dominant"), tr("strong"), tr("clear"), tr("slight"), tr("none")};
}

QString TastingViewModel::nextText() const
{
    return step() == Attribute && value() == 0 ? tr("Not judged") : tr("Next");
}

int TastingViewModel::faultStrength(std::string_view fault) const
{
    const auto found = content_.taste.faults.find(std::string(fault));
    return found == content_.taste.faults.end() ? 0 : found->second;
}

QStringList TastingViewModel::faults() const
{
    QStringList texts;
    for (const std::string_view fault : cellar::usualFaults()) {
        const int strength = faultStrength(fault);
        const QString name = capitalised(word(fault));
        texts << (strength == 0
                      ? name
                      : tr("%1: %2", "fault, its strength").arg(name, strengthWord(strength)));
    }
    return texts;
}

QList<bool> TastingViewModel::faultsChosen() const
{
    QList<bool> chosen;
    for (const std::string_view fault : cellar::usualFaults()) {
        chosen << (faultStrength(fault) != 0);
    }
    return chosen;
}

bool TastingViewModel::isPalateTired() const { return content_.taste.palateTired; }

QString TastingViewModel::note() const
{
    return QString::fromStdString(content_.taste.circumstance.note);
}

QStringList TastingViewModel::phrasesOf(const QString& note)
{
    return note.split(noteSeparator, Qt::SkipEmptyParts);
}

QStringList TastingViewModel::noteChips() const
{
    QStringList chips;
    for (const std::string_view chip : cellar::noteChips()) {
        chips << word(chip);
    }
    return chips;
}

QList<bool> TastingViewModel::noteChipsChosen() const
{
    const QStringList phrases = phrasesOf(note());
    QList<bool> chosen;
    for (const QString& chip : noteChips()) {
        chosen << phrases.contains(chip);
    }
    return chosen;
}

int TastingViewModel::photos() const { return static_cast<int>(content_.photos.size()); }

QString TastingViewModel::summary() const
{
    int scored = 0;
    int notJudged = 0;
    for (const auto& [attribute, score] : content_.taste.scores) {
        (score ? scored : notJudged) += 1;
    }
    const int all = static_cast<int>(steps_.attributes().size());
    QStringList parts{tr("%1 of %n attribute(s) scored", "", all).arg(scored)};
    if (notJudged > 0) {
        parts << tr("%n not judged", "", notJudged);
    }
    if (const auto faults = static_cast<int>(content_.taste.faults.size()); faults > 0) {
        parts << tr("%n fault(s)", "", faults);
    }
    if (photos() > 0) {
        parts << tr("%n photo(s)", "", photos());
    }
    return parts.join(QStringLiteral(", "));
}

bool TastingViewModel::canUndo() const { return last_ && last_->subject != "order"; }

QString TastingViewModel::undoText() const
{
    if (!canUndo()) {
        return {};
    }
    const QString name = capitalised(word(last_->name));
    const QString number =
        last_->number ? context_.formats.locale.toString(*last_->number) : QString();
    if (last_->subject == "score") {
        return last_->number ? tr("%1 %2 kept", "vanilla 7").arg(name, number)
                             : tr("%1 not judged: kept").arg(name);
    }
    if (last_->subject == "liking") {
        return tr("Liking %1 kept").arg(number);
    }
    if (last_->subject == "fault") {
        return last_->number ? tr("%1, %2: kept", "fault, strength")
                                   .arg(name, strengthWord(static_cast<int>(*last_->number)))
                             : tr("%1 taken off: kept").arg(name);
    }
    if (last_->subject == "photo") {
        return tr("Photo kept");
    }
    if (last_->subject == "note") {
        return tr("Note kept");
    }
    if (last_->subject == "reading") {
        return tr("Reading kept");
    }
    return tr("Kept");
}

}  // namespace spile::viewmodels
