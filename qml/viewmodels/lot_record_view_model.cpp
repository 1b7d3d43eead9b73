#include "qml/viewmodels/lot_record_view_model.hpp"

#include "core/cellar/queries.hpp"
#include "qml/viewmodels/barrel_rows.hpp"
#include "qml/viewmodels/error_text.hpp"
#include "qml/viewmodels/lot_text.hpp"
#include "qml/viewmodels/notice.hpp"
#include "qml/viewmodels/taking_back.hpp"
#include "qml/viewmodels/words.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <span>

namespace spile::viewmodels {

namespace {

constexpr int fillsMost = 20;

// What the pads offer, as it is recorded.
constexpr std::array<std::string_view, 4> holdReasons = {"laboratory result", "tasting panel",
                                                         "refermentation", "label approval"};
constexpr std::array<std::string_view, 3> outcomes = {"sound", "not sound", "no objection"};
constexpr std::array<std::string_view, 3> discardReasons = {"not sound", "left in the tank",
                                                            "spilt"};

std::span<const std::string_view> offered(LotRecordViewModel::Kind kind)
{
    switch (kind) {
        case LotRecordViewModel::Kind::Hold:
            return holdReasons;
        case LotRecordViewModel::Kind::Clear:
            return outcomes;
        case LotRecordViewModel::Kind::Discard:
            return discardReasons;
        default:
            return {};
    }
}

}  // namespace

QVariant CountRows::data(const QModelIndex& index, int role) const
{
    const CountLine* line = rowAt(index.row());
    if (line == nullptr) {
        return {};
    }
    switch (role) {
        case Name:
            return line->name;
        case Count:
            return line->count;
        case CanLess:
            return line->canLess;
        case CanMore:
            return line->canMore;
        default:
            return {};
    }
}

QHash<int, QByteArray> CountRows::roleNames() const
{
    return {{Name, "name"}, {Count, "number"}, {CanLess, "canLess"}, {CanMore, "canMore"}};
}

LotRecordViewModel::LotRecordViewModel(Context& context, PeopleViewModel& people, QObject* parent)
    : QObject(parent), context_(context), people_(people)
{
    connect(&people_, &PeopleViewModel::changed, this, &LotRecordViewModel::changed);
}

void LotRecordViewModel::begin(Kind kind, const SubjectId& subject, const QString& about)
{
    kind_ = kind;
    subject_ = subject;
    entry_ = {};
    about_ = about;
    ofBarrel_ = false;
    for (QString* text : {&beer_, &own_, &cost_, &note_, &error_}) {
        text->clear();
    }
    choice_ = -1;
    fills_ = 0;
    volume_ = most_ = {};
    left_.clear();
    going_.clear();
    busy_ = false;
    showCounts();
    emit changed();
}

void LotRecordViewModel::beginNewLot() { begin(Kind::NewLot, {}, {}); }

void LotRecordViewModel::beginHold(const SubjectId& lot, const QString& name)
{
    begin(Kind::Hold, lot, name);
}

void LotRecordViewModel::beginClear(const cellar::HoldRow& hold, const QString& name)
{
    begin(Kind::Clear, {}, tr("%1: %2", "a lot, why it is held").arg(name, word(hold.reason)));
    entry_ = hold.entry;
}

void LotRecordViewModel::beginRelease(const cellar::PackageRow& package)
{
    begin(Kind::Release, package.lot, LotText::packaging(package, context_.formats));
    entry_ = package.entry;
    left_ = package.left;
    going_ = left_;
    for (cellar::PackageCount& one : going_) {
        one.count = 0;
    }
    showCounts();
}

void LotRecordViewModel::beginDiscard(const SubjectId& lot, const QString& name, Volume left)
{
    begin(Kind::Discard, lot, name);
    most_ = std::max(left, Volume{});
    emit changed();
}

void LotRecordViewModel::beginCost(const SubjectId& lot, const QString& name)
{
    begin(Kind::Cost, lot, name);
}

void LotRecordViewModel::beginCostOf(const cellar::BarrelRow& barrel)
{
    begin(Kind::Cost, barrel.barrel, nameOf(barrel));
    ofBarrel_ = true;
    beer_ = QString::fromStdString(barrel.beer);
    choice_ = 0;
    emit changed();
}

QString LotRecordViewModel::title() const
{
    switch (kind_) {
        case Kind::NewLot:
            return tr("New lot");
        case Kind::Hold:
            return tr("Hold the lot");
        case Kind::Clear:
            return tr("The result is in");
        case Kind::Release:
            return tr("Release");
        case Kind::Discard:
            return tr("Pour away");
        case Kind::Cost:
            return tr("What it cost");
    }
    return {};
}

QString LotRecordViewModel::caution() const
{
    return kind_ == Kind::Discard ? tr("Beer that gives off carbon dioxide can fill a pit or a low "
                                       "room: air it first. "
                                       "Ask the local rules before it goes down a drain.")
                                  : QString();
}

QString LotRecordViewModel::question() const
{
    switch (kind_) {
        case Kind::Hold:
            return tr("What does it wait for?");
        case Kind::Clear:
            return tr("What is the result?");
        case Kind::Discard:
            return tr("Why?");
        case Kind::Cost:
            return ofBarrel_ && !beer_.isEmpty() ? tr("What did you pay for?") : QString();
        case Kind::NewLot:
        case Kind::Release:
            break;
    }
    return {};
}

QStringList LotRecordViewModel::choices() const
{
    if (kind_ == Kind::Cost && ofBarrel_ && !beer_.isEmpty()) {
        return {tr("The barrel"), beer_};
    }
    return padWords(offered(kind_));
}

QString LotRecordViewModel::ownLabel() const
{
    switch (kind_) {
        case Kind::NewLot:
            return tr("The lot's name");
        case Kind::Hold:
            return tr("Something else");
        case Kind::Clear:
            return tr("In your own words");
        case Kind::Release:
            return tr("To whom?");
        case Kind::Discard:
            return tr("Another reason");
        case Kind::Cost:
            return tr("What for?");
    }
    return {};
}

void LotRecordViewModel::choose(int choice)
{
    // What was paid for is one of two; other words may be taken back.
    choice_ = choice == choice_ && kind_ != Kind::Cost ? -1 : choice;
    error_.clear();
    emit changed();
}

void LotRecordViewModel::setOwn(const QString& text)
{
    if (text != own_) {
        own_ = text;
        if (kind_ != Kind::Cost && !text.trimmed().isEmpty()) {
            choice_ = -1;
        }
        error_.clear();
        emit changed();
    }
}

void LotRecordViewModel::setCost(const QString& text)
{
    if (text != cost_) {
        cost_ = text;
        error_.clear();
        emit changed();
    }
}

void LotRecordViewModel::setNote(const QString& note)
{
    if (note != note_) {
        note_ = note;
        emit changed();
    }
}

bool LotRecordViewModel::costsBeer() const { return ofBarrel_ && choice_ == 1; }

bool LotRecordViewModel::asksVolume() const { return kind_ == Kind::Discard; }

QString LotRecordViewModel::volume() const { return context_.formats.volume(volume_); }

Volume LotRecordViewModel::stepSize() const
{
    return context_.formats.units == Formats::Units::Us ? usGallons(0.25) : litres(1);
}

QString LotRecordViewModel::smallStep() const { return context_.formats.volume(stepSize()); }
QString LotRecordViewModel::bigStep() const { return context_.formats.volume(10.0 * stepSize()); }

void LotRecordViewModel::stepVolume(int count)
{
    const double steps = std::round(volume_ / stepSize()) + count;
    volume_ = std::clamp(steps * stepSize(), Volume{}, most_);
    error_.clear();
    emit changed();
}

bool LotRecordViewModel::asksFills() const
{
    return kind_ == Kind::Cost && ofBarrel_ && !costsBeer();
}

QString LotRecordViewModel::fills() const
{
    return fills_ == 0 ? QString() : context_.formats.locale.toString(fills_);
}

void LotRecordViewModel::stepFills(int count)
{
    fills_ = std::clamp(fills_ + (count == 0 ? 1 : count), 1, fillsMost);
    emit changed();
}

void LotRecordViewModel::stepCount(int index, int count)
{
    if (index < 0 || index >= static_cast<int>(going_.size())) {
        return;
    }
    const auto at = static_cast<std::size_t>(index);
    going_[at].count = std::clamp<std::int64_t>(going_[at].count + count, 0, left_[at].count);
    error_.clear();
    showCounts();
    emit changed();
}

void LotRecordViewModel::showCounts()
{
    std::vector<CountLine> lines;
    for (std::size_t i = 0; i < going_.size(); ++i) {
        CountLine line;
        line.name =
            tr("%1, %2 left", "a package, how many")
                .arg(LotText::package(left_[i], context_.formats),
                     context_.formats.locale.toString(static_cast<qlonglong>(left_[i].count)));
        line.count = context_.formats.locale.toString(static_cast<qlonglong>(going_[i].count));
        line.canLess = going_[i].count > 0;
        line.canMore = going_[i].count < left_[i].count;
        lines.push_back(std::move(line));
    }
    counts_.replace(std::move(lines));
}

std::optional<double> LotRecordViewModel::costTyped() const
{
    bool isNumber = false;
    const double cost = context_.formats.locale.toDouble(cost_.trimmed(), &isNumber);
    return isNumber && cost > 0 ? std::optional(cost) : std::nullopt;
}

QString LotRecordViewModel::missing() const
{
    if (!people_.who()) {
        return tr("Say who you are first.");
    }
    const bool said = choice_ >= 0 || !own_.trimmed().isEmpty();
    switch (kind_) {
        case Kind::NewLot:
            return said ? QString() : tr("Type a name first.");
        case Kind::Hold:
        case Kind::Clear:
            return said ? QString() : tr("Choose one first.");
        case Kind::Release:
            if (own_.trimmed().isEmpty()) {
                return tr("Type to whom first.");
            }
            return std::any_of(going_.begin(), going_.end(),
                               [](const auto& one) { return one.count > 0; })
                       ? QString()
                       : tr("Step to how many first.");
        case Kind::Discard:
            return volume_ == Volume{} ? tr("Step to the volume first.")
                   : said              ? QString()
                                       : tr("Choose one first.");
        case Kind::Cost:
            return own_.trimmed().isEmpty() ? tr("Type what for first.")
                   : costTyped()            ? QString()
                                            : tr("Type how much first, as a number.");
    }
    return {};
}

std::string LotRecordViewModel::wordChosen() const
{
    const auto words = offered(kind_);
    return choice_ >= 0 && choice_ < static_cast<int>(words.size())
               ? std::string(words[static_cast<std::size_t>(choice_)])
               : own_.trimmed().toStdString();
}

}  // namespace spile::viewmodels
