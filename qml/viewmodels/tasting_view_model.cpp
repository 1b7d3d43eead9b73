#include "qml/viewmodels/tasting_view_model.hpp"

#include "core/cellar/flights.hpp"
#include "core/cellar/vocabulary.hpp"
#include "core/panel/serving_order.hpp"
#include "core/scan/barrel_code.hpp"
#include "qml/viewmodels/barrel_rows.hpp"
#include "qml/viewmodels/error_text.hpp"
#include "qml/viewmodels/notice.hpp"
#include "qml/viewmodels/open_sheets_view_model.hpp"
#include "qml/viewmodels/settings.hpp"
#include "qml/viewmodels/words.hpp"

#include <algorithm>

namespace spile::viewmodels {

namespace {

constexpr int ladderLeast = 1;
constexpr int ladderMost = 9;

// The attributes in the order in which this sheet asks for them.
std::vector<std::string> inOrder(const std::vector<std::string>& attributes, int session)
{
    std::vector<std::string> ordered;
    for (const int i : panel::williamsRow(static_cast<int>(attributes.size()), session)) {
        ordered.push_back(attributes[static_cast<std::size_t>(i)]);
    }
    return ordered;
}

}  // namespace

TastingViewModel::TastingViewModel(Context& context, PeopleViewModel& people, QObject* parent)
    : QObject(parent), context_(context), people_(people)
{
    connect(&people_, &PeopleViewModel::changed, this, &TastingViewModel::changed);
}

Result<TastingViewModel::SheetNow> TastingViewModel::readNow(cellar::Cellar& cellar,
                                                             const SubjectId& sheet)
{
    SPILE_ASSIGN(content, cellar::readSheet(cellar, sheet));
    SPILE_ASSIGN(last, cellar::lastTap(cellar, sheet));
    return SheetNow{std::move(content), std::move(last)};
}

void TastingViewModel::begin(const cellar::BarrelRow& barrel) { begin(Wanted{barrel.barrel}); }

void TastingViewModel::beginGlass(const SubjectId& flight, int glass, const SubjectId& barrel)
{
    begin(Wanted{barrel, flight, glass});
}

Result<cellar::OpenSheet> TastingViewModel::openOrGoOn(cellar::Cellar& cellar, const Wanted& wanted,
                                                       const SubjectId& person, int session)
{
    SPILE_ASSIGN(open, cellar::openSheets(cellar));
    for (const cellar::OpenSheet& sheet : open) {
        if (sheet.barrel == wanted.barrel && sheet.person == person &&
            sheet.flight == wanted.flight && sheet.glass == wanted.glass) {
            return sheet;
        }
    }
    std::optional<cellar::FlightRow> flight;
    if (wanted.flight) {
        SPILE_ASSIGN(found, cellar::flightById(cellar.database(), *wanted.flight));
        flight = found;
    }
    SPILE_ASSIGN(attributes, flight ? cellar::attributesOfFlight(cellar.database(), *flight)
                                    : cellar::attributesOf(cellar.database(), wanted.barrel));
    cellar::OpenSheet begun;
    begun.barrel = wanted.barrel;
    begun.person = person;
    begun.flight = wanted.flight;
    begun.glass = wanted.glass;
    SPILE_ASSIGN(sheet, cellar::openSheet(cellar, begun.barrel, person, begun.flight, begun.glass));
    SPILE_TRY(cellar::keepOrder(cellar, sheet, inOrder(attributes, session)));
    begun.sheet = sheet;
    return begun;
}

void TastingViewModel::begin(const Wanted& wanted)
{
    const auto person = people_.who();
    if (!person || busy_) {
        return;
    }
    busy_ = true;
    const int session = context_.settings.countSheet();
    context_.workers.act(
        this,
        [wanted, person = *person, session](cellar::Cellar& cellar) {
            return openOrGoOn(cellar, wanted, person, session);
        },
        [this](Result<cellar::OpenSheet> begun) {
            busy_ = false;
            if (begun) {
                resume(*begun);
            } else {
                fail(begun.error());
            }
        });
}

void TastingViewModel::resume(const cellar::OpenSheet& sheet)
{
    struct Resumed {
        cellar::BarrelRow barrel;
        SheetNow now;
    };
    context_.workers.act(
        this,
        [sheet](cellar::Cellar& cellar) -> Result<Resumed> {
            SPILE_ASSIGN(now, readNow(cellar, sheet.sheet));
            Resumed resumed{{}, std::move(now)};
            if (!sheet.flight) {
                SPILE_ASSIGN(row, cellar::barrelById(cellar.database(), sheet.barrel));
                resumed.barrel = row.value_or(cellar::BarrelRow());
            }
            return resumed;
        },
        [this, sheet](Result<Resumed> resumed) {
            if (!resumed) {
                fail(resumed.error());
                return;
            }
            sheet_ = sheet.sheet;
            taster_ = sheet.person;
            barrel_ = resumed->barrel;
            flight_ = sheet.flight;
            if (flight_) {  // nothing but the glass is known here
                barrel_.barrel = sheet.barrel;
                barrel_.mark = glassName(sheet).toStdString();
            }
            error_.clear();
            asked_.reset();
            unkeptNote_.reset();
            steps_ = SheetSteps(resumed->now.content.taste.attributeOrder);
            steps_.goTo(sheet.step);
            take(std::move(resumed->now));
            readExpected();
            emit opened();
        });
}

void TastingViewModel::readExpected()
{
    expected_ = {};
    if (flight_) {
        return;  // a gravity can tell which barrel it is
    }
    context_.workers.look(
        this,
        [barrel = barrel_.barrel](ledger::Database& database) {
            return cellar::lastReading(database, barrel);
        },
        [this](Result<std::optional<cellar::ReadingRow>> reading) {
            if (reading) {
                expected_ = reading->value_or(cellar::ReadingRow());
                emit changed();
            }
        });
}

void TastingViewModel::take(SheetNow now)
{
    content_ = std::move(now.content);
    last_ = std::move(now.last);
    if (unkeptNote_ == note()) {
        unkeptNote_.reset();
    }
    emit changed();
}

void TastingViewModel::fail(const Error& error)
{
    error_ = textOf(error);
    context_.notice.refuse(error_);
    emit changed();
}

// Only what the writer has made durable comes back here and is shown.
void TastingViewModel::tap(Tap tap)
{
    if (!isOpen()) {
        return;
    }
    ++waiting_;
    error_.clear();
    context_.notice.forgetRefusal();
    context_.workers.act(
        this,
        [tap = std::move(tap), sheet = sheet_](cellar::Cellar& cellar) -> Result<SheetNow> {
            SPILE_TRY(tap(cellar, sheet));
            return readNow(cellar, sheet);
        },
        [this, sheet = sheet_](Result<SheetNow> now) {
            if (--waiting_ == 0) {
                asked_.reset();
            }
            if (sheet != sheet_) {
                return;
            }
            if (!now) {
                fail(now.error());
                return;
            }
            take(std::move(*now));
            emit kept();
        });
}

void TastingViewModel::reload()
{
    tap([](cellar::Cellar&, const SubjectId&) { return Result<void>(); });
}

void TastingViewModel::keepStep()
{
    context_.workers.act(
        this,
        [sheet = sheet_, step = steps_.name()](cellar::Cellar& cellar) {
            return cellar::keepStep(cellar, sheet, step);
        },
        [](const Result<void>& /*kept*/) {});  // the sheet itself is kept whatever becomes of this
}

void TastingViewModel::tapValue(int value)
{
    asked_ = value;
    if (step() == Liking) {
        tap([value](cellar::Cellar& cellar, const SubjectId& sheet) {
            return cellar::tapLiking(cellar, sheet, value);
        });
    } else if (step() == Attribute) {
        tap([value, attribute = steps_.attribute()](cellar::Cellar& cellar,
                                                    const SubjectId& sheet) {
            return cellar::tapScore(cellar, sheet, attribute, value);
        });
    }
}

void TastingViewModel::choose(int value)
{
    if (value >= ladderLeast && value <= ladderMost && asked_.value_or(this->value()) != value) {
        tapValue(value);
    }
}

void TastingViewModel::nudge(int by)
{
    const int from = asked_.value_or(value());
    const int to = std::clamp(from + by, ladderLeast, ladderMost);
    if (from != 0 && to != from) {
        tapValue(to);
    }
}

void TastingViewModel::move(void (SheetSteps::*how)())
{
    if (isOpen()) {
        (steps_.*how)();
        asked_.reset();
        keepStep();
        emit changed();
    }
}

void TastingViewModel::next()
{
    if (step() == Attribute && value() == 0 && !asked_ && !isNotJudged()) {
        tap([attribute = steps_.attribute()](cellar::Cellar& cellar, const SubjectId& sheet) {
            return cellar::tapScore(cellar, sheet, attribute, std::nullopt);
        });
    }
    move(&SheetSteps::next);
}

void TastingViewModel::previous() { move(&SheetSteps::previous); }

void TastingViewModel::tapFault(int index)
{
    const auto all = cellar::usualFaults();
    if (index < 0 || index >= static_cast<int>(all.size())) {
        return;
    }
    const std::string fault(all[static_cast<std::size_t>(index)]);
    const auto found = content_.taste.faults.find(fault);
    // Each tap is one step more: none, slight, clear, strong, and none again.
    const int now = found == content_.taste.faults.end() ? 1 : found->second;
    constexpr int strongest = 7;
    const std::optional<int> strength = now >= strongest ? std::nullopt : std::optional(now + 2);
    tap([fault, strength](cellar::Cellar& cellar, const SubjectId& sheet) {
        return cellar::tapFault(cellar, sheet, fault, strength);
    });
}

void TastingViewModel::tapPalateTired()
{
    tap([tired = !isPalateTired()](cellar::Cellar& cellar, const SubjectId& sheet) {
        return cellar::tapPalateTired(cellar, sheet, tired);
    });
}

void TastingViewModel::writeNote(const QString& text)
{
    if (text.trimmed() != unkeptNote_.value_or(note())) {
        unkeptNote_ = text.trimmed();
        tap([note = unkeptNote_->toStdString()](cellar::Cellar& cellar, const SubjectId& sheet) {
            return cellar::writeNote(cellar, sheet, note);
        });
    }
}

void TastingViewModel::tapNoteChip(int index)
{
    const QString chip = noteChips().value(index);
    QStringList phrases = phrasesOf(unkeptNote_.value_or(note()));
    if (phrases.removeAll(chip) == 0) {
        phrases << chip;
    }
    writeNote(phrases.join(noteSeparator));
}

void TastingViewModel::undo()
{
    if (canUndo()) {
        goToLastTap();
        tap([](cellar::Cellar& cellar, const SubjectId& sheet) -> Result<void> {
            SPILE_TRY(cellar::undoTap(cellar, sheet));
            return {};
        });
    }
}

// What is taken back is looked at again.
void TastingViewModel::goToLastTap()
{
    if (last_->subject == "score") {
        steps_.goToAttribute(last_->name);
    } else if (last_->subject == "liking") {
        steps_.goToKind(SheetSteps::Kind::Liking);
    } else if (last_->subject == "fault" || last_->subject == "palate_tired") {
        steps_.goToKind(SheetSteps::Kind::Faults);
    } else if (last_->subject == "note") {
        steps_.goToKind(SheetSteps::Kind::Note);
    } else if (last_->subject == "reading") {
        steps_.goToKind(SheetSteps::Kind::Readings);
    }
    keepStep();
}

void TastingViewModel::close()
{
    if (!isOpen() || busy_) {
        return;
    }
    busy_ = true;
    context_.notice.forgetRefusal();
    context_.workers.act(
        this,
        [sheet = sheet_, note = unkeptNote_](cellar::Cellar& cellar) -> Result<EntryId> {
            if (note) {  // it stands on the page, but when it was typed the disk was full
                SPILE_TRY(cellar::writeNote(cellar, sheet, note->toStdString()));
            }
            return cellar::closeSheet(cellar, sheet);
        },
        [this](Result<EntryId> taste) {
            busy_ = false;
            if (!taste) {
                fail(taste.error());
                return;
            }
            sheet_ = {};
            emit changed();
            emit closed(textOf(barrel_.barrel), textOf(*taste));
        });
}

void TastingViewModel::discard()
{
    context_.workers.act(
        this,
        [sheet = sheet_](cellar::Cellar& cellar) { return cellar::discardSheet(cellar, sheet); },
        [this](Result<void> gone) {
            if (!gone) {
                fail(gone.error());
                return;
            }
            sheet_ = {};
            emit changed();
            emit discarded();
        });
}

}  // namespace spile::viewmodels
