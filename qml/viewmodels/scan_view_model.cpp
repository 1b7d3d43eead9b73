#include "qml/viewmodels/scan_view_model.hpp"

#include "core/scan/barrel_code.hpp"
#include "qml/frames/frame_reader.hpp"
#include "qml/viewmodels/barrel_rows.hpp"
#include "qml/viewmodels/error_text.hpp"

namespace spile::viewmodels {

namespace {

constexpr std::size_t codeLength = 6;
constexpr int longestShown = 60;  // characters of a code that is not ours

QString shownCode(const std::string& code) { return QString::fromStdString(scan::shown(code)); }

}  // namespace

ScanViewModel::ScanViewModel(Context& context, ScanPace pace, QObject* parent)
    : QObject(parent), context_(context)
{
    patience_.setSingleShot(true);
    patience_.setInterval(pace.patience);
    connect(&patience_, &QTimer::timeout, this, [this] {
        showOtherWays_ = true;
        emit changed();
    });
    shown_.setSingleShot(true);
    shown_.setInterval(pace.shown);
    connect(&shown_, &QTimer::timeout, this, [this] { emit found(textOf(barrel_.barrel)); });
}

void ScanViewModel::begin()
{
    expected_ = {};
    typed_.clear();
    lookAgain();
}

void ScanViewModel::lookAgain()
{
    forgetSighting();
    belief_.forget();
    showOtherWays_ = false;
    patience_.start();
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
}

void ScanViewModel::expectBarrel(const QString& barrelId)
{
    expected_ = idOf<SubjectId>(barrelId);
    lookAgain();
}

void ScanViewModel::again()
{
    typed_.clear();
    lookAgain();
}

void ScanViewModel::offer(const QString& text, const QString& format)
{
    const scan::Code code{text.toStdString(), frames::formatNamed(format), {}};
    if (state_ != Found && belief_.take(code, context_.outside.clock.sinceBoot())) {
        ask(scan::ownLabel(code), text, {});
    }
}

// Called on the writer's thread.
Result<ScanViewModel::Sighting> ScanViewModel::lookUp(cellar::Cellar& cellar,
                                                      std::optional<scan::LabelText> label,
                                                      const std::string& typed,
                                                      const SubjectId& expected)
{
    Sighting sighting;
    sighting.cellarMark = cellar.identity().mark;
    if (!typed.empty()) {
        const auto code = scan::parseTyped(sighting.cellarMark, typed);
        sighting.isTypedWrong = !code;
        if (code) {
            label = scan::LabelText{sighting.cellarMark, *code};
        }
    }
    std::vector<std::string> codes;
    if (sighting.isTypedWrong) {
        codes = scan::nearCodes(sighting.cellarMark, typed);
    } else if (label) {
        codes = {label->code};
    }
    for (const std::string& code : codes) {
        SPILE_ASSIGN(rows, cellar::barrelsWithCode(cellar.database(), code));
        sighting.barrels.insert(sighting.barrels.end(), rows.begin(), rows.end());
    }
    if (!expected.isZero()) {
        SPILE_ASSIGN(row, cellar::barrelById(cellar.database(), expected));
        sighting.expectedName = row ? nameOf(*row).toStdString() : std::string();
    }
    sighting.label = std::move(label);
    return sighting;
}

void ScanViewModel::ask(std::optional<scan::LabelText> label, const QString& text,
                        const std::string& typed)
{
    context_.workers.read(
        this,
        [label = std::move(label), typed, expected = expected_](cellar::Cellar& cellar) {
            return lookUp(cellar, label, typed, expected);
        },
        [this, text, question = ++asked_](Result<Sighting> sighting) {
            if (question != asked_) {
                return;
            }
            if (sighting) {
                take(*sighting, text);
            } else {
                show(Failed, textOf(sighting.error()));
            }
        });
}

void ScanViewModel::take(const Sighting& sighting, const QString& text)
{
    forgetSighting();
    expectedName_ = sighting.expectedName;
    if (sighting.isTypedWrong) {
        suggested_ = sighting.barrels;
        typedError_ = suggested_.empty()
                          ? tr("This code cannot be right. Read it once more from the label.")
                          : tr("This code cannot be right. Was it one of these?");
        emit changed();
        return;
    }
    if (!sighting.label) {
        const QString few =
            text.size() > longestShown ? text.left(longestShown) + QStringLiteral("…") : text;
        show(NotALabel, tr("This is not a barrel's label. It says: %1").arg(few));
        return;
    }
    code_ = sighting.label->code;
    if (sighting.label->cellarMark != sighting.cellarMark) {
        show(Foreign, tr("This label is of another cellar, %1. Your records do not have it.")
                          .arg(QString::fromStdString(sighting.label->cellarMark)));
    } else if (sighting.barrels.empty()) {
        show(Unknown, tr("No barrel has the code %1 yet.").arg(shownCode(code_)));
    } else if (sighting.barrels.size() > 1) {
        suggested_ = sighting.barrels;
        show(Several, tr("Two barrels were given the code %1. Which is it?").arg(shownCode(code_)));
    } else {
        takeBarrel(sighting.barrels.front(), sighting.expectedName);
    }
}

void ScanViewModel::show(State state, const QString& message)
{
    state_ = state;
    message_ = message;
    emit changed();
}

void ScanViewModel::takeBarrel(const cellar::BarrelRow& barrel, const std::string& expectedName)
{
    barrel_ = barrel;
    code_ = barrel.code;
    if (!expected_.isZero() && barrel.barrel != expected_) {
        show(WrongBarrel, tr("This is %1, the sheet is for %2.")
                              .arg(nameOf(barrel), QString::fromStdString(expectedName)));
        return;
    }
    patience_.stop();
    show(Found, {});
    shown_.start();
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

QStringList ScanViewModel::suggestions() const
{
    QStringList lines;
    for (const cellar::BarrelRow& row : suggested_) {
        lines << (row.mark.empty() ? shownCode(row.code)
                                   : tr("%1, %2").arg(nameOf(row), shownCode(row.code)));
    }
    return lines;
}

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
        ask(std::nullopt, typed(), typed_);
    }
}

void ScanViewModel::chooseSuggestion(int index)
{
    if (index >= 0 && index < static_cast<int>(suggested_.size())) {
        const cellar::BarrelRow chosen = suggested_[static_cast<std::size_t>(index)];
        forgetSighting();
        takeBarrel(chosen, expectedName_);
    }
}

void ScanViewModel::registerUnknown()
{
    if (state_ == Unknown) {
        emit unknownCode(QString::fromStdString(code_));
    }
}

}  // namespace spile::viewmodels
