#include "qml/viewmodels/alarm_text.hpp"

#include "qml/viewmodels/words.hpp"

#include <cmath>

namespace spile::viewmodels {

using plan::AlarmKind;

std::vector<SaidLine> AlarmText::lines(const std::vector<plan::Alarm>& alarms,
                                       const Formats& formats)
{
    std::vector<SaidLine> lines;
    for (const plan::Alarm& alarm : alarms) {
        const auto place = static_cast<int>(lines.size());
        lines.push_back({QString::number(place), saw(alarm, formats), check(alarm.kind)});
    }
    return lines;
}

QString AlarmText::saw(const plan::Alarm& alarm, const Formats& formats)
{
    const QString day = formats.day(alarm.at);
    switch (alarm.kind) {
        case AlarmKind::PhFalls:
            return tr("Souring? pH fell from %1 to %2 (%3).")
                .arg(formats.ph(alarm.before), formats.ph(alarm.now), day);
        case AlarmKind::AcidityJumps:
            return tr("Souring? Acidity was scored %1, about %2 was to be expected (%3).")
                .arg(QString::number(alarm.now, 'f', 1), QString::number(alarm.before, 'f', 1),
                     day);
        case AlarmKind::SourFault:
            return tr("Souring? “%1” was tasted (%2).").arg(word(alarm.word), day);
        case AlarmKind::Referments:
            return tr("Fermenting again? The gravity fell from %1 to %2; loss, spirit from the "
                      "wood and reading error explain no less than %3.")
                .arg(formats.gravity(alarm.before), formats.gravity(alarm.now),
                     formats.gravity(alarm.limit));
        case AlarmKind::GravityFalls:
            return tr("Fermenting again? The gravity falls ever faster: %1, now %2.")
                .arg(formats.gravity(alarm.before), formats.gravity(alarm.now));
        case AlarmKind::Oxidised:
            return tr("Oxidised? “%1” was tasted (%2).").arg(word(alarm.word), day);
        case AlarmKind::Leaks:
            return tr("Leaking? %1 is gone by the last gauge; %2 was to be expected.")
                .arg(formats.volume(litres(alarm.now)), formats.volume(litres(alarm.before)));
        case AlarmKind::Unsound:
            return tr("“%1” was found and nothing mended since (%2).").arg(word(alarm.word), day);
        case AlarmKind::Silent:
            return tr("Nobody has looked at this barrel for %n days.", nullptr,
                      static_cast<int>(std::lround(alarm.now)));
        case AlarmKind::TooFar:
            return tr("Its time may have gone by: %1.").arg(formats.chance(alarm.now));
    }
    return {};
}

QStringList AlarmText::moving(const std::vector<plan::Alarm>& alarms)
{
    QStringList words;
    for (const plan::Alarm& alarm : alarms) {
        if (alarm.kind == AlarmKind::PhFalls) {
            words << tr("the pH falls");
        } else if (alarm.kind == AlarmKind::Referments || alarm.kind == AlarmKind::GravityFalls) {
            words << tr("the gravity falls");
        }
    }
    words.removeDuplicates();
    return words;
}

QString AlarmText::check(AlarmKind kind)
{
    switch (kind) {
        case AlarmKind::PhFalls:
            return tr("Check the meter with a fresh buffer and read again. Keep its kit apart.");
        case AlarmKind::AcidityJumps:
        case AlarmKind::SourFault:
            return tr(
                "Taste it once more beside a sound one, and read the pH. Keep its kit "
                "apart.");
        case AlarmKind::Referments:
        case AlarmKind::GravityFalls:
            return tr(
                "Ease the pressure first, with care. Read the gravity again at the "
                "hydrometer's temperature, without gas.");
        case AlarmKind::Oxidised:
            return tr("Taste it once more. Is it full, is the bung tight?");
        case AlarmKind::Leaks:
            return tr("Measure again. Was it filled full? Are there drips on the floor?");
        case AlarmKind::Unsound:
            return tr("Look at that place, and write down what was done.");
        case AlarmKind::Silent:
            return tr("Look for leaks, gauge it, and taste it if you can.");
        case AlarmKind::TooFar:
            return tr("Taste it soon and decide, or aim for something else.");
    }
    return {};
}

}  // namespace spile::viewmodels
