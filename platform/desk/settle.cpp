// settle: what devices leave for a person to decide.
#include "core/cellar/acts/settling.hpp"
#include "core/cellar/true_time.hpp"
#include "platform/desk/commands.hpp"

#include <nlohmann/json.hpp>

namespace spile::desk {

using cellar::Choice;
using cellar::Settling;
using cellar::Unsettled;
using cellar::UnsettledRow;
using nlohmann::json;

namespace {

constexpr int mostOfEach = 200;

const char* nameOf(Unsettled what)
{
    switch (what) {
        case Unsettled::TwoValues:
            return "two_values";
        case Unsettled::VoidedAndCorrected:
            return "voided_and_corrected";
        case Unsettled::SameCode:
            return "same_code";
        case Unsettled::FilledTwice:
            return "filled_twice";
        case Unsettled::GaugedTwice:
            return "gauged_twice";
        case Unsettled::Overfull:
            return "overfull";
        case Unsettled::Overdrawn:
            return "overdrawn";
        case Unsettled::Copied:
            return "copied";
        case Unsettled::SetAside:
            return "set_aside";
        case Unsettled::Waiting:
            return "waiting";
        case Unsettled::Newer:
            break;
    }
    return "newer";
}

std::string timeText(Instant at, Instant now)
{
    return toIsoTime(at) + (cellar::isInFuture(at, now) ? " (in the future)" : "");
}

// What is the matter, and what follows from it.
std::string settleLine(const UnsettledRow& row, Instant now)
{
    const std::string what = row.kind + " of " + row.about + ", " + timeText(row.at, now);
    switch (row.what) {
        case Unsettled::TwoValues:
            return what + ": corrected on two devices to different values. The later one is shown.";
        case Unsettled::VoidedAndCorrected:
            return what + ": taken back on one device, corrected on another. It is hidden.";
        case Unsettled::SameCode:
            return row.about + ": another barrel has the same code. A scan finds both.";
        case Unsettled::FilledTwice:
            return row.about +
                   ": filled twice without being emptied between. The later fill is "
                   "shown.";
        case Unsettled::GaugedTwice:
            return row.about +
                   ": two devices gauged it within ten minutes. Two looks, or one recorded twice?";
        case Unsettled::Overfull:
            return row.about + ": its fill or a gauge says more than it holds.";
        case Unsettled::Overdrawn:
            return row.about + ": more was drawn than was in it. It counts as empty of beer.";
        case Unsettled::Copied:
            return row.about +
                   ": copied, or set back to an earlier state. Both branches count; "
                   "what its old key signs from now on should not.";
        case Unsettled::SetAside:
            return row.about + ": cut off, or admitted by one that was. " +
                   counted(row.count, "record") +
                   (row.count == 1 ? " counts nowhere." : " count nowhere.");
        case Unsettled::Waiting:
            return "Device " + row.about +
                   (row.formerName.empty() ? ": not admitted. "
                                           : ", which says that it is \"" + row.formerName +
                                                 "\" with a new key: not admitted. ") +
                   counted(row.count, "record") + (row.count == 1 ? " waits." : " wait.");
        case Unsettled::Newer:
            break;
    }
    return counted(row.count, "record") +
           (row.count == 1 ? " needs a newer Spile. It is" : " need a newer Spile. They are") +
           " kept and handed on.";
}

std::string valueText(const ledger::Value& value)
{
    if (const auto* integer = value.as<std::int64_t>()) {
        return std::to_string(*integer);
    }
    if (const auto* text = value.as<std::string>()) {
        return "\"" + *text + "\"";
    }
    if (const auto* flag = value.as<bool>()) {
        return *flag ? "yes" : "no";
    }
    if (const auto* bytes = value.as<Bytes>()) {
        return toHex(*bytes);
    }
    return value.isNull() ? "nothing" : "a list";
}

std::string choiceLine(const Choice& choice, Instant now)
{
    const std::string when = timeText(choice.at, now);
    switch (choice.does) {
        case Settling::SetValue: {
            const cellar::FieldSpec* spec = cellar::findField(choice.field);
            return std::string(spec == nullptr ? "field" : spec->name) + " = " +
                   valueText(choice.value) + ", as " + choice.deviceName + " had it at " + when;
        }
        case Settling::KeepVoided:
            return "it stays taken back";
        case Settling::BringBack:
            return "it counts, as it was corrected";
        case Settling::NewCode:
            return "it gets a new code, and needs a new label";
        case Settling::TakeBack:
            return "take back the " + choice.kind + " of " + when + " by " + choice.deviceName +
                   (choice.volumeMl ? ", " + std::to_string(*choice.volumeMl) + " ml" : "");
        case Settling::KeepBoth:
            return "both are right";
        case Settling::CutOff:
            return "cut the old key off here";
        case Settling::Adopt:
            return "let count: " + choice.kind + ", " + when;
        case Settling::Admit:
            break;
    }
    return "admit it, with --name";
}

json jsonOf(const UnsettledRow& row, Instant now)
{
    return {{"key", row.key},
            {"what", nameOf(row.what)},
            {"about", row.about},
            {"says", settleLine(row, now)},
            {"records", row.count}};
}

int list(const Session& session, const std::vector<UnsettledRow>& rows)
{
    json answer = json::array();
    std::string text;
    for (const UnsettledRow& row : rows) {
        answer.push_back(jsonOf(row, session.clock().now()));
        text += row.key;
        text += "  ";
        text += settleLine(row, session.clock().now());
        text += '\n';
    }
    session.answer(answer, rows.empty() ? "Nothing to settle.\n"
                                        : text + "settle KEY shows what can be done about one.\n");
    return Done;
}

int listChoices(const Session& session, const UnsettledRow& row, const std::vector<Choice>& choices)
{
    const Instant now = session.clock().now();
    json answer = jsonOf(row, now);
    answer["choices"] = json::array();
    std::string text = settleLine(row, now) + "\n";
    for (std::size_t i = 0; i < choices.size(); ++i) {
        answer["choices"].push_back(choiceLine(choices[i], now));
        text += "  ";
        text += std::to_string(i + 1);
        text += "  ";
        text += choiceLine(choices[i], now);
        text += '\n';
    }
    text += choices.empty() ? "" : "settle " + row.key + " NUMBER does it.\n";
    session.answer(answer, text);
    return Done;
}

// What was asked for, of what is to be settled.
Result<std::vector<UnsettledRow>> withKey(cellar::Cellar& cellar, const std::string& key)
{
    SPILE_ASSIGN(rows, cellar::toSettle(cellar.database(), mostOfEach));
    if (!key.empty()) {
        std::erase_if(rows, [&](const UnsettledRow& row) { return !row.key.starts_with(key); });
        if (rows.size() != 1) {
            return fail(ErrorCode::NotFound, "to settle", key,
                        rows.empty() ? "settle lists them" : "more than one begins so");
        }
    }
    return std::move(rows);
}

Result<void> doChoice(cellar::Cellar& cellar, const UnsettledRow& row,
                      const std::vector<Choice>& choices, const SettleOptions& options)
{
    if (options.choice > choices.size()) {
        return fail(ErrorCode::NotFound, "choice", std::to_string(options.choice),
                    "1 to " + std::to_string(choices.size()));
    }
    return cellar::settle(cellar, row, choices[options.choice - 1], {}, options.name);
}

}  // namespace

int settle(Session& session, const SettleOptions& options)
{
    auto cellar = session.open();
    if (!cellar) {
        return session.refuse(cellar.error());
    }
    const auto rows = withKey(**cellar, options.key);
    if (!rows) {
        return session.refuse(rows.error());
    }
    if (options.key.empty()) {
        return list(session, *rows);
    }
    const auto choices = cellar::choicesFor((*cellar)->database(), rows->front());
    if (!choices) {
        return session.refuse(choices.error());
    }
    if (options.choice == 0) {
        return listChoices(session, rows->front(), *choices);
    }
    session.doubtClock(**cellar);
    if (const auto done = doChoice(**cellar, rows->front(), *choices, options); !done) {
        return session.refuse(done.error());
    }
    session.answer({{"key", rows->front().key}, {"settled", true}}, "Settled.\n");
    return Done;
}

}  // namespace spile::desk
