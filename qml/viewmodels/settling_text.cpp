#include "qml/viewmodels/settling_text.hpp"

#include "core/cellar/join_code.hpp"
#include "qml/viewmodels/field_text.hpp"
#include "qml/viewmodels/words.hpp"

namespace spile::viewmodels {

using cellar::Settling;
using cellar::Unsettled;

namespace {

QString doneWord(const std::string& kind) { return capitalised(word("done " + kind)); }

QString nameIn(const ChoiceFacts& facts, const SubjectId& subject)
{
    const auto found = facts.names.find(subject);
    return found == facts.names.end() ? QString() : QString::fromStdString(found->second);
}

}  // namespace

bool needsDesk(Settling does)
{
    return does == Settling::CutOff || does == Settling::Adopt || does == Settling::Admit;
}

QString SettlingText::about(const cellar::UnsettledRow& row)
{
    if (row.what == Unsettled::Newer) {
        return tr("Update Spile");
    }
    if (row.what == Unsettled::Waiting && row.deviceName.empty()) {
        return row.formerName.empty() ? tr("A device without a name")
                                      : tr("%1 with a new key, as it says", "a device's name")
                                            .arg(QString::fromStdString(row.formerName));
    }
    return row.about.empty() ? doneWord(row.kind) : QString::fromStdString(row.about);
}

QString SettlingText::what(const cellar::UnsettledRow& row)
{
    const auto count = static_cast<int>(row.count);
    switch (row.what) {
        case Unsettled::TwoValues:
            return tr("%1: corrected on two devices, and they differ.", "Drawn")
                .arg(doneWord(row.kind));
        case Unsettled::VoidedAndCorrected:
            return tr("%1: taken back on one device, corrected on another.", "Drawn")
                .arg(doneWord(row.kind));
        case Unsettled::SameCode:
            return tr("Another barrel has the same code.");
        case Unsettled::FilledTwice:
            return tr("It was filled twice and not emptied between.");
        case Unsettled::GaugedTwice:
            return tr("Two devices gauged it within ten minutes.");
        case Unsettled::Overfull:
            return tr("A record says more than it holds.");
        case Unsettled::Overdrawn:
            return tr("More was drawn than was in it.");
        case Unsettled::Copied:
            return tr("This device was copied or set back.");
        case Unsettled::SetAside:
            return tr("%n record(s) of this device are set aside.", "", count);
        case Unsettled::Waiting:
            return tr("%n record(s) wait until this device is let in.", "", count);
        case Unsettled::Newer:
            return tr("%n record(s) need a newer version.", "", count);
    }
    return {};
}

QString SettlingText::who(const cellar::UnsettledRow& row, const Formats& formats)
{
    switch (row.what) {
        case Unsettled::TwoValues:
        case Unsettled::VoidedAndCorrected:
            return tr("Recorded by %1, %2", "a device, when")
                .arg(QString::fromStdString(row.deviceName),
                     formats.marked(formats.dateAndTime(row.at), row.at));
        case Unsettled::Waiting:
            return tr("The code that it shows: %1")
                .arg(QString::fromStdString(cellar::joinCode(row.device)));
        default:
            return {};
    }
}

QString SettlingText::consequence(const cellar::UnsettledRow& row)
{
    switch (row.what) {
        case Unsettled::TwoValues:
            return tr(
                "Neither device knew of the other's correction. Until somebody chooses, the later "
                "value counts.");
        case Unsettled::VoidedAndCorrected:
            return tr(
                "Neither device knew of the other's doing. Until somebody chooses, the record does "
                "not count.");
        case Unsettled::SameCode:
            return tr(
                "A scan cannot tell the two barrels apart. With a new code this one needs a new "
                "label on its head; the other keeps its own.");
        case Unsettled::FilledTwice:
            return tr(
                "One of these fills did not happen, or an emptying was not recorded. Take back the "
                "one that did not happen; until then the later one counts.");
        case Unsettled::GaugedTwice:
            return tr(
                "They may be two looks, or one that two people recorded. Take back the one too "
                "many, or say that both are right; until then both are kept.");
        case Unsettled::Overfull:
            return tr(
                "Take back the record that is wrong, or correct it on the barrel's page, or its "
                "size there; until then it counts as it stands.");
        case Unsettled::Overdrawn:
            return tr(
                "A draw was recorded twice, or a top-up or a gauge is missing. Take back what did "
                "not happen, or record what is missing; until then it counts as empty of beer.");
        case Unsettled::Copied:
            return tr(
                "Two copies have recorded under one key. The records of both are kept. The device "
                "goes on under a new key. If you cut the old key off, what it still signs is set "
                "aside.");
        case Unsettled::SetAside:
            return tr(
                "The device was cut off or does not belong to the cellar. These records are kept, "
                "but count nowhere until somebody lets them count.");
        case Unsettled::Waiting:
            return tr(
                "Nobody has let this device in yet. Its records are kept; they count once it is "
                "let "
                "in. Let it in only if you know whose it is.");
        case Unsettled::Newer:
            return tr(
                "Update Spile: %n record(s) need a newer version. They are kept and handed on "
                "meanwhile.",
                "", static_cast<int>(row.count));
    }
    return {};
}

// A fill by what went in, another record by what it says: "Take it back: gauged 190 l".
QString SettlingText::takeBack(const cellar::Choice& choice, const ChoiceFacts& facts,
                               const Formats& formats)
{
    const auto fill = facts.fills.find(choice.entry);
    if (fill != facts.fills.end() && !fill->second.isEmpty()) {
        return tr("Take this fill back: %1").arg(fill->second);
    }
    if (choice.kind == "fill" && !choice.volumeMl) {
        return tr("Take this fill back");
    }
    const QString done = word("done " + choice.kind);
    return choice.volumeMl ? tr("Take it back: %1 %2", "gauged, 190 l")
                                 .arg(done, formats.volume(volumeFromMl(*choice.volumeMl)))
                           : tr("Take it back: %1", "gauged").arg(done);
}

QString SettlingText::choice(const cellar::UnsettledRow& row, const cellar::Choice& choice,
                             const ChoiceFacts& facts, const Formats& formats)
{
    switch (choice.does) {
        case Settling::SetValue: {
            const cellar::FieldSpec* field = cellar::findField(choice.field);
            return field == nullptr
                       ? tr("A value of a newer version")
                       : textOf(*field, choice.value, formats,
                                [&](const SubjectId& id) { return nameIn(facts, id); });
        }
        case Settling::KeepVoided:
            return tr("It stays taken back");
        case Settling::BringBack:
            return tr("It counts, as corrected");
        case Settling::NewCode:
            return tr("Give %1 a new code").arg(about(row));
        case Settling::TakeBack:
            return takeBack(choice, facts, formats);
        case Settling::KeepBoth:
            return tr("Both are right");
        case Settling::CutOff:
            return tr("Cut the old key off");
        case Settling::Adopt: {
            const QString name = nameIn(facts, choice.subject);
            return name.isEmpty() ? tr("Let it count: %1").arg(word("done " + choice.kind))
                                  : tr("Let it count: %1, %2", "a barrel, drawn")
                                        .arg(name, word("done " + choice.kind));
        }
        case Settling::Admit:
            return tr("Let it in");
    }
    return {};
}

QString SettlingText::hint(const cellar::Choice& choice, const Formats& formats)
{
    const bool said = choice.does == Settling::SetValue || choice.does == Settling::TakeBack ||
                      choice.does == Settling::Adopt;
    if (!said) {
        return {};
    }
    const QString when = formats.marked(formats.dateAndTime(choice.at), choice.at);
    return choice.deviceName.empty() ? when
                                     : tr("%1, %2", "a device, when")
                                           .arg(QString::fromStdString(choice.deviceName), when);
}

QString SettlingText::done(const cellar::UnsettledRow& row, const cellar::Choice& choice,
                           const QString& name)
{
    switch (choice.does) {
        case Settling::SetValue:
            return tr("Settled: the value you chose counts.");
        case Settling::KeepVoided:
            return tr("Settled: it stays taken back.");
        case Settling::BringBack:
            return tr("Settled: it counts.");
        case Settling::NewCode:
            return tr("%1 has a new code. Print a label for its head.").arg(about(row));
        case Settling::TakeBack:
            return tr("Settled: it is taken back.");
        case Settling::KeepBoth:
            return tr("Settled: both stay.");
        case Settling::CutOff:
            return tr("Settled: the old key is cut off.");
        case Settling::Adopt:
            return allCount(1);
        case Settling::Admit:
            return tr("%1 is let in.").arg(name);
    }
    return {};
}

QString SettlingText::allCount(std::uint64_t records)
{
    return tr("%n record(s) count now.", "", static_cast<int>(records));
}

QString SettlingText::deskOnly() { return tr("Only a desk can do this."); }

}  // namespace spile::viewmodels
