#include "qml/viewmodels/scan_view_model.hpp"

#include "core/cellar/owner_key_text.hpp"
#include "core/scan/barrel_code.hpp"
#include "qml/frames/frame_reader.hpp"
#include "qml/viewmodels/barrel_rows.hpp"
#include "qml/viewmodels/error_text.hpp"

#include <algorithm>
#include <utility>

namespace spile::viewmodels {

namespace {

constexpr std::size_t codeLength = 6;
constexpr std::size_t suggestedFrom = 2;  // characters
constexpr int suggestedMost = 4;
constexpr int longestShown = 60;  // characters of a code that is not ours

QString shownCode(const std::string& code) { return QString::fromStdString(scan::shown(code)); }

QStringList namesOf(const std::vector<cellar::BarrelRow>& rows)
{
    QStringList names;
    for (const cellar::BarrelRow& row : rows) {
        names << nameOf(row);
    }
    return names;
}

// Empty where the code is the name.
QStringList codesOf(const std::vector<cellar::BarrelRow>& rows)
{
    QStringList codes;
    for (const cellar::BarrelRow& row : rows) {
        codes << (row.mark.empty() ? QString() : shownCode(row.code));
    }
    return codes;
}

ScanViewModel::Advice shownAdvice(scan::Advice advice)
{
    switch (advice) {
        case scan::Advice::None:
            return ScanViewModel::NoAdvice;
        case scan::Advice::Light:
            return ScanViewModel::Light;
        case scan::Advice::Closer:
            return ScanViewModel::Closer;
        case scan::Advice::Still:
            return ScanViewModel::Still;
        case scan::Advice::Wipe:
            return ScanViewModel::Wipe;
    }
    return ScanViewModel::NoAdvice;
}

}  // namespace

ScanViewModel::ScanViewModel(Context& context, ScanPace pace, QObject* parent)
    : QObject(parent), context_(context), pace_(pace)
{
    patience_.setSingleShot(true);
    patience_.setInterval(pace.patience);
    connect(&patience_, &QTimer::timeout, this, [this] {
        showOtherWays_ = true;
        emit changed();
    });
    shown_.setSingleShot(true);
    connect(&shown_, &QTimer::timeout, this, &ScanViewModel::count);
    judged_.setInterval(pace.judged);
    connect(&judged_, &QTimer::timeout, this, [this] {
        const Advice advice = shownAdvice(steady_.judge());
        if (std::exchange(advice_, advice) != advice) {
            emit changed();
        }
    });
}

void ScanViewModel::begin() { expectBarrel({}, {}); }

void ScanViewModel::lookAgain()
{
    forgetSighting();
    belief_.forget();
    steady_.forget();
    advice_ = NoAdvice;
    showOtherWays_ = false;
    patience_.start();
    judged_.start();
    emit changed();
}

void ScanViewModel::forgetSighting()
{
    ++asked_;
    shown_.stop();
    state_ = Looking;
    code_.clear();
    message_.clear();
    typedError_.clear();
    suggested_.clear();
    beside_.clear();
}

void ScanViewModel::expectBarrel(const QString& barrelId, const QString& name)
{
    expected_ = idOf<SubjectId>(barrelId);
    expectedName_ = name;
    typed_.clear();
    lookAgain();
}

void ScanViewModel::again()
{
    typed_.clear();
    lookAgain();
}

// Where a label is in view, no other code is meant.
void ScanViewModel::offer(const QList<QString>& texts, const QList<QString>& formats)
{
    std::vector<scan::Code> codes;
    for (qsizetype i = 0; i < std::min(texts.size(), formats.size()); ++i) {
        codes.push_back({texts[i].toStdString(), frames::formatNamed(formats[i]), {}});
    }
    const auto isLabel = [](const scan::Code& code) { return scan::ownLabel(code).has_value(); };
    const auto label = std::find_if(codes.begin(), codes.end(), isLabel);
    const auto meant = label == codes.end() ? codes.begin() : label;
    if (meant == codes.end() || state_ == Found ||
        !belief_.take(*meant, context_.outside.clock.sinceBoot())) {
        return;
    }
    ScanQuestion question{scan::ownLabel(*meant), labelsIn(codes), {}, {}};
    if (!question.label && expected_.isZero()) {
        question.joiner = cellar::parseJoinSymbol(meant->text);
    }
    if (!question.beside.empty()) {
        question.beside.erase(question.beside.begin());  // the one that is meant
    }
    ask(std::move(question), QString::fromStdString(meant->text));
}

void ScanViewModel::miss(const QString& advice) { steady_.note(frames::adviceNamed(advice)); }

void ScanViewModel::ask(ScanQuestion question, const QString& text)
{
    context_.workers.read(
        this,
        [question = std::move(question)](cellar::Cellar& cellar) {
            return sight(cellar, question);
        },
        [this, text, asked = ++asked_](Result<ScanSighting> sighting) {
            if (asked != asked_) {
                return;
            }
            if (sighting) {
                take(*sighting, text);
            } else {
                show(Failed, textOf(sighting.error()));
            }
        });
}

void ScanViewModel::take(const ScanSighting& sighting, const QString& text)
{
    forgetSighting();
    if (sighting.isTypedWrong) {
        suggested_ = sighting.barrels;
        typedError_ = suggested_.empty()
                          ? tr("This code cannot be right. Read it once more from the label.")
                          : tr("This code cannot be right. Was it one of these?");
        emit changed();
        return;
    }
    if (sighting.joiner) {
        takeDevice(*sighting.joiner);
        return;
    }
    if (cellar::isOwnerSymbol(text.toStdString())) {
        show(NotALabel, JoinText::ownersKey());
        return;
    }
    if (!sighting.label) {
        const QString few =
            text.size() > longestShown ? text.left(longestShown) + QStringLiteral("…") : text;
        show(NotALabel, tr("This is not a barrel's label. It says: %1").arg(few));
        return;
    }
    code_ = sighting.label->code;
    if (expected_.isZero()) {  // else one must be aimed at, so that it is sure
        beside_ = sighting.beside;
    }
    if (sighting.label->cellarMark != sighting.cellarMark) {
        show(Foreign, tr("This label is of another cellar, %1. Your records do not have it.")
                          .arg(QString::fromStdString(sighting.label->cellarMark)));
    } else if (sighting.barrels.empty()) {
        show(Unknown, tr("No barrel has the code %1 yet.").arg(shownCode(code_)));
    } else if (sighting.barrels.size() > 1) {
        suggested_ = sighting.barrels;
        show(Several, tr("Two barrels were given the code %1. Which is it?").arg(shownCode(code_)));
    } else {
        takeBarrel(sighting.barrels.front());
    }
}

void ScanViewModel::takeDevice(const JoinSighting& sighting)
{
    const QString hindrance = JoinText::hindrance(sighting);
    asking_ = QString::fromStdString(cellar::joinCode(sighting.symbol.device));
    show(hindrance.isEmpty() ? AskingDevice : NotALabel,
         hindrance.isEmpty() ? tr("This device asks to be let in.") : hindrance);
}

void ScanViewModel::letDeviceIn()
{
    if (state_ == AskingDevice) {
        emit deviceWanted(asking_);
    }
}

void ScanViewModel::show(State state, const QString& message)
{
    state_ = state;
    message_ = message;
    if (state == AskingDevice || state == Unknown || state == Several) {
        patience_.stop();  // what is offered then stays where it is
    }
    emit changed();
}

void ScanViewModel::takeBarrel(const cellar::BarrelRow& barrel)
{
    barrel_ = barrel;
    code_ = barrel.code;
    if (!expected_.isZero() && barrel.barrel != expected_) {
        show(WrongBarrel, tr("This is %1, not %2.").arg(nameOf(barrel), expectedName_));
        return;
    }
    patience_.stop();
    judged_.stop();
    show(Found, {});
    shown_.start(beside_.empty() ? pace_.shown : pace_.shownBeside);
}

// The hit that is shown has been seen, and nobody said no.
void ScanViewModel::count()
{
    shown_.stop();
    if (expected_.isZero()) {
        emit found(textOf(barrel_.barrel));
        return;
    }
    confirmed_ = textOf(expected_);
    emit confirmedChanged();
    emit confirmedIt();
}

void ScanViewModel::choose()
{
    if (state_ == Found) {
        count();
    }
}

void ScanViewModel::forgetConfirmed()
{
    if (!confirmed_.isEmpty()) {
        confirmed_.clear();
        emit confirmedChanged();
    }
}

QString ScanViewModel::name() const { return state_ == Found ? nameOf(barrel_) : QString(); }
QString ScanViewModel::code() const { return code_.empty() ? QString() : shownCode(code_); }

QStringList ScanViewModel::keys() const
{
    QStringList keys;
    for (const char key : scan::codeAlphabet) {
        keys << QString(QLatin1Char(key));
    }
    return keys;
}

QString ScanViewModel::typed() const
{
    QString text = QString::fromStdString(typed_);
    if (text.size() > 3) {
        text.insert(3, u'-');
    }
    return text;
}

QStringList ScanViewModel::suggestions() const { return namesOf(suggested_); }
QStringList ScanViewModel::suggestedCodes() const { return codesOf(suggested_); }
QStringList ScanViewModel::beside() const { return namesOf(beside_); }
QStringList ScanViewModel::codesBeside() const { return codesOf(beside_); }

void ScanViewModel::type(const QString& key)
{
    if (typed_.size() < codeLength) {
        typed_ = scan::tidied(typed_ + key.toStdString()).substr(0, codeLength);
        checkTyped();
    }
}

void ScanViewModel::erase()
{
    if (!typed_.empty()) {
        typed_.pop_back();
        checkTyped();
    }
}

void ScanViewModel::clear()
{
    typed_.clear();
    checkTyped();
}

void ScanViewModel::checkTyped()
{
    forgetSighting();
    emit changed();
    if (typed_.size() == codeLength) {
        ask({{}, {}, typed_, {}}, typed());
    } else if (typed_.size() >= suggestedFrom) {
        suggest();
    }
}

// What is typed so far may be enough to see which is meant; none is taken by itself.
void ScanViewModel::suggest()
{
    context_.workers.look(
        this,
        [beginning = typed_](ledger::Database& database) {
            return cellar::barrelsWithCodeBeginning(database, beginning, suggestedMost);
        },
        [this, asked = ++asked_](Result<std::vector<cellar::BarrelRow>> barrels) {
            if (asked == asked_ && barrels) {
                suggested_ = std::move(*barrels);
                emit changed();
            }
        });
}

void ScanViewModel::chooseSuggestion(int index)
{
    if (index >= 0 && index < static_cast<int>(suggested_.size())) {
        const cellar::BarrelRow chosen = suggested_[static_cast<std::size_t>(index)];
        forgetSighting();
        takeBarrel(chosen);
    }
}

void ScanViewModel::chooseBeside(int index)
{
    if (index >= 0 && index < static_cast<int>(beside_.size())) {
        const cellar::BarrelRow chosen = beside_[static_cast<std::size_t>(index)];
        forgetSighting();
        takeBarrel(chosen);
        choose();
    }
}

void ScanViewModel::registerUnknown()
{
    if (state_ == Unknown) {
        emit unknownCode(QString::fromStdString(code_));
    }
}

}  // namespace spile::viewmodels
