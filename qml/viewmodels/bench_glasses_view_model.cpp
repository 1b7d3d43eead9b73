// What is done with the glasses; what is said of them is in bench_glasses_texts.cpp.
#include "qml/viewmodels/bench_glasses_view_model.hpp"

#include "core/cellar/acts/benching.hpp"
#include "core/cellar/acts/lots.hpp"
#include "core/cellar/vocabulary.hpp"
#include "qml/viewmodels/error_text.hpp"
#include "qml/viewmodels/notice.hpp"

#include <algorithm>

namespace spile::viewmodels {

namespace {

constexpr int lowest = 1;
constexpr int highest = 9;

// What is scored in the glasses: the target's attributes, else what was scored already, else what
// was asked for on this device.
Result<std::vector<std::string>> attributesOf(ledger::Database& database,
                                              const cellar::BenchWhole& bench,
                                              const std::vector<std::string>& wished)
{
    std::vector<std::string> attributes;
    if (bench.target) {
        SPILE_ASSIGN(windows, cellar::windowsOfTarget(database, *bench.target));
        for (const cellar::Window& window : windows) {
            attributes.push_back(window.attribute);
        }
    }
    for (const auto& others : {bench.scoredAttributes(), wished}) {
        if (attributes.empty()) {
            attributes = others;
        }
    }
    if (attributes.empty()) {
        const auto usual = cellar::usualAttributes();
        attributes.assign(usual.begin(), usual.end());
    }
    return attributes;
}

}  // namespace

BenchGlassesViewModel::BenchGlassesViewModel(Context& context, PeopleViewModel& people,
                                             QObject* parent)
    : QObject(parent), context_(context), people_(people)
{
    connect(&context_.workers, &Workers::changed, this, [this] {
        if (stage_ != Reading) {
            refresh();
        }
    });
    connect(&people_, &PeopleViewModel::changed, this, [this] {
        if (stage_ != Reading) {
            showTasters();
        }
    });
}

void BenchGlassesViewModel::open(const SubjectId& bench, std::vector<std::string> attributes)
{
    bench_ = {};
    bench_.bench = bench;
    wished_ = std::move(attributes);
    attributes_.clear();
    stage_ = Reading;
    taster_.reset();
    mixing_ = 1;
    chosen_ = 0;
    mixed_ = begun_ = cold_ = carbonated_ = busy_ = false;
    setLotName({});
    emit changed();
    refresh();
}

void BenchGlassesViewModel::refresh()
{
    context_.workers.look(
        this,
        [id = bench_.bench, wished = wished_,
         now = context_.formats.now()](ledger::Database& database) -> Result<std::optional<Found>> {
            SPILE_ASSIGN(bench, cellar::benchById(database, id));
            if (!bench) {
                return std::optional<Found>();
            }
            Found found;
            SPILE_ASSIGN(attributes, attributesOf(database, *bench, wished));
            found.attributes = std::move(attributes);
            if (bench->choice) {
                if (const auto* glass = bench->glassOf(bench->choice->glass)) {
                    SPILE_ASSIGN(tank, plan::tankPartsOf(database, *glass, now));
                    found.tank = std::move(tank);
                }
            }
            found.bench = std::move(*bench);
            return std::optional(std::move(found));
        },
        [this, id = bench_.bench](Result<std::optional<Found>> found) {
            if (id != bench_.bench) {
                return;
            }
            if (!found) {
                refuse(found.error());
            } else if (*found) {
                take(std::move(**found));
            } else if (stage_ != Reading) {
                stage_ = Reading;  // it was taken back
                emit ended();
            }
        });
}

void BenchGlassesViewModel::refuse(const Error& error)
{
    busy_ = false;
    context_.notice.refuse(textOf(error));
}

void BenchGlassesViewModel::take(Found found)
{
    const bool first = stage_ == Reading;
    bench_ = std::move(found.bench);
    attributes_ = std::move(found.attributes);
    busy_ = false;
    if (first) {
        mixed_ = std::any_of(bench_.poured.begin(), bench_.poured.end(),
                             [](const auto& glass) { return !glass.tastes.empty(); });
        setLotName(bench_.name.empty() ? tr("Blend") : QString::fromStdString(bench_.name));
        showMixing();
    }
    showTank(found.tank);
    arrange();
}

// Where it stands, by what is recorded and who tastes.
void BenchGlassesViewModel::arrange()
{
    const Stage before = stage_;
    stage_ = bench_.choice       ? Tank
             : !mixed_           ? Mixing
             : !taster_          ? Tasters
             : nextNumber() == 0 ? Scores
             : begun_            ? Scoring
                                 : SettingOut;
    if (stage_ == Scoring && before != Scoring) {
        asking_ = 0;
        values_.assign(attributes_.size() + 1, 0);
    }
    showTasters();
    showSetOut();
    showScores();
    emit changed();
}

void BenchGlassesViewModel::tick(int index)
{
    if (index >= 0 && index < static_cast<int>(ticked_.size())) {
        const auto at = static_cast<std::size_t>(index);
        ticked_[at] = !ticked_[at];
        showMixing();
        emit changed();
    }
}

bool BenchGlassesViewModel::isMeasured() const
{
    return std::all_of(ticked_.begin(), ticked_.end(), [](bool ticked) { return ticked; });
}

bool BenchGlassesViewModel::isLastGlass() const
{
    return mixing_ == static_cast<int>(bench_.poured.size());
}

void BenchGlassesViewModel::nextGlass()
{
    if (stage_ != Mixing || !isMeasured()) {
        return;
    }
    if (isLastGlass()) {
        mixed_ = true;
    } else {
        ++mixing_;
        ticked_.clear();
        showMixing();
    }
    arrange();
}

std::vector<int> BenchGlassesViewModel::order() const
{
    return cellar::glassOrder(bench_.bench, taster_.value_or(SubjectId()),
                              static_cast<int>(bench_.poured.size()));
}

int BenchGlassesViewModel::nextNumber() const
{
    for (const int number : order()) {
        const cellar::BenchGlass* glass = bench_.glassOf(number);
        if (glass != nullptr && taster_ && !glass->isTastedBy(*taster_)) {
            return number;
        }
    }
    return 0;
}

void BenchGlassesViewModel::chooseTaster(int index)
{
    const auto& people = people_.people();
    if (index >= 0 && index < static_cast<int>(people.size())) {
        taster_ = people[static_cast<std::size_t>(index)].subject;
        begun_ = false;
        chosen_ = 0;
        cold_ = carbonated_ = false;
        arrange();
    }
}

void BenchGlassesViewModel::beginTasting()
{
    begun_ = true;
    arrange();
}

void BenchGlassesViewModel::choose(int value)
{
    if (stage_ == Scoring) {
        int& kept = values_[static_cast<std::size_t>(asking_)];
        kept = kept == value ? 0 : std::clamp(value, lowest, highest);
        emit changed();
    }
}

void BenchGlassesViewModel::nudge(int by)
{
    if (stage_ == Scoring && value() > 0) {
        values_[static_cast<std::size_t>(asking_)] = std::clamp(value() + by, lowest, highest);
        emit changed();
    }
}

bool BenchGlassesViewModel::isLastAsked() const
{
    return asking_ == static_cast<int>(attributes_.size());  // the liking
}

int BenchGlassesViewModel::value() const
{
    return stage_ == Scoring ? values_[static_cast<std::size_t>(asking_)] : 0;
}

void BenchGlassesViewModel::next()
{
    if (stage_ != Scoring) {
        return;
    }
    if (isLastAsked()) {
        record();
    } else {
        ++asking_;
        emit changed();
    }
}

void BenchGlassesViewModel::previous()
{
    if (stage_ == Scoring && asking_ > 0) {
        --asking_;
        emit changed();
    }
}

void BenchGlassesViewModel::record()
{
    if (busy_) {
        return;
    }
    busy_ = true;
    cellar::NewGlassTaste taste;
    taste.bench = bench_.bench;
    taste.glass = nextNumber();
    for (std::size_t i = 0; i < attributes_.size(); ++i) {
        taste.scores[attributes_[i]] = values_[i] > 0 ? cellar::Score(values_[i]) : std::nullopt;
    }
    if (values_.back() > 0) {
        taste.liking = values_.back();
    }
    taste.circumstance.person = taster_;
    context_.workers.act(
        this, [taste](cellar::Cellar& cellar) { return cellar::recordGlassTaste(cellar, taste); },
        [this](Result<EntryId> recorded) {
            if (!recorded) {
                refuse(recorded.error());
                return;
            }
            asking_ = 0;
            values_.assign(attributes_.size() + 1, 0);
            refresh();
        });
}

void BenchGlassesViewModel::nextTaster()
{
    taster_.reset();
    begun_ = false;
    arrange();
}

void BenchGlassesViewModel::chooseGlass(int index)
{
    if (const BenchItem* item = scores_.rowAt(index)) {
        chosen_ = item->id.toInt();
        showScores();
        emit changed();
    }
}

void BenchGlassesViewModel::toggleCold()
{
    cold_ = !cold_;
    emit changed();
}

void BenchGlassesViewModel::toggleCarbonated()
{
    carbonated_ = !carbonated_;
    emit changed();
}

void BenchGlassesViewModel::accept()
{
    if (!canAccept() || busy_) {
        return;
    }
    busy_ = true;
    cellar::NewAcceptance acceptance{bench_.bench, chosen_, cold_, carbonated_, {}};
    acceptance.circumstance.person = taster_;
    context_.workers.act(
        this,
        [acceptance](cellar::Cellar& cellar) { return cellar::acceptGlass(cellar, acceptance); },
        [this](Result<EntryId> accepted) {
            if (accepted) {
                context_.notice.tell(tr("The glass is accepted: kept."));
                refresh();
            } else {
                refuse(accepted.error());
            }
        });
}

void BenchGlassesViewModel::setLotName(const QString& name)
{
    if (name != lotName_) {
        lotName_ = name;
        emit lotNameChanged();
    }
}

void BenchGlassesViewModel::makeLot()
{
    if (!bench_.choice || busy_) {
        return;
    }
    if (bench_.choice->lot) {
        emit lotWanted(*bench_.choice->lot);
        return;
    }
    busy_ = true;
    const QString name = lotName_.trimmed();
    cellar::NewLot lot;
    lot.name = (name.isEmpty() ? tr("Blend") : name).toStdString();
    lot.target = bench_.target;
    lot.accepted = bench_.choice->entry;
    lot.circumstance.person = people_.who();
    context_.workers.act(
        this, [lot](cellar::Cellar& cellar) { return cellar::registerLot(cellar, lot); },
        [this](Result<SubjectId> made) {
            if (!made) {
                refuse(made.error());
                return;
            }
            busy_ = false;
            emit lotWanted(*made);
        });
}

}  // namespace spile::viewmodels
