#include "qml/viewmodels/drawing_view_model.hpp"

#include "core/cellar/acts/drawing.hpp"
#include "core/cellar/vocabulary.hpp"
#include "qml/viewmodels/barrel_rows.hpp"
#include "qml/viewmodels/error_text.hpp"
#include "qml/viewmodels/notice.hpp"
#include "qml/viewmodels/settings.hpp"
#include "qml/viewmodels/taking_back.hpp"
#include "qml/viewmodels/words.hpp"

#include <algorithm>
#include <cmath>

namespace spile::viewmodels {

namespace {

constexpr double ouncesPerGallon = 128.0;
const Volume most = litres(20);

}  // namespace

DrawingViewModel::DrawingViewModel(Context& context, PeopleViewModel& people, QObject* parent)
    : QObject(parent), context_(context), people_(people)
{
    connect(&people_, &PeopleViewModel::changed, this, &DrawingViewModel::changed);
}

void DrawingViewModel::openGlass(const cellar::BarrelRow& barrel, const SubjectId& flight,
                                 int glass)
{
    const int method = method_;
    open(barrel);
    flight_ = flight;
    glass_ = glass;
    method_ = method;  // it is mostly the same for all glasses
    emit changed();
}

void DrawingViewModel::open(const cellar::BarrelRow& barrel)
{
    barrel_ = barrel;
    flight_.reset();
    glass_.reset();
    error_.clear();
    busy_ = false;
    method_ = 0;
    volume_ = millilitres(context_.settings.lastDrawMl());
    emit changed();
}

QString DrawingViewModel::barrelName() const { return nameOf(barrel_); }
QString DrawingViewModel::contents() const { return lineOf(barrel_, context_.formats).contents; }

QString DrawingViewModel::caution() const
{
    // The sample hole and the valve lie under the liquid; the bung holds back gas.
    return method_ == 1
               ? tr("Ease the pressure first, face away from the bung; open it briefly. No flame: "
                    "the wood holds spirit. Air the room. Local rules come first.")
               : tr("Ease the pressure first. Spile or nail at hand. No flame: the wood holds "
                    "spirit. Air the room. Local rules come first.");
}

QStringList DrawingViewModel::methods() const { return padWords(cellar::drawMethods()); }

void DrawingViewModel::setMethod(int method)
{
    if (method != method_) {
        method_ = method;
        emit changed();
    }
}

Volume DrawingViewModel::stepSize() const
{
    return context_.formats.units == Formats::Units::Us ? usGallons(1.0 / ouncesPerGallon)
                                                        : millilitres(10);
}

QString DrawingViewModel::volume() const { return context_.formats.volume(volume_); }
QString DrawingViewModel::smallStep() const { return context_.formats.volume(stepSize()); }
QString DrawingViewModel::bigStep() const { return context_.formats.volume(10.0 * stepSize()); }
bool DrawingViewModel::canLess() const { return volume_ > stepSize(); }

void DrawingViewModel::step(int count)
{
    // By whole steps of the unit that is shown: 100 mL is 3.4 fl oz, then 4.
    const double steps = std::round(volume_ / stepSize()) + count;
    volume_ = std::clamp(steps * stepSize(), stepSize(), most);
    emit changed();
}

void DrawingViewModel::record()
{
    if (!canRecord()) {
        return;
    }
    busy_ = true;
    error_.clear();
    emit changed();
    cellar::NewDraw draw{barrel_.barrel,
                         volume_,
                         std::string(cellar::drawMethods()[static_cast<std::size_t>(method_)]),
                         flight_,
                         glass_,
                         {}};
    draw.circumstance.person = people_.who();
    draw.circumstance.at = Formats::eventTime(context_.formats.now());
    context_.workers.act(
        this, [draw](cellar::Cellar& cellar) { return cellar::recordDraw(cellar, draw); },
        [this](Result<EntryId> entry) {
            busy_ = false;
            if (!entry) {
                error_ = textOf(entry.error());
                emit changed();
                return;
            }
            context_.settings.setLastDrawMl(static_cast<int>(std::lround(inMillilitres(volume_))));
            emit changed();
            emit drawn(textOf(barrel_.barrel));
            // Of a flight the bar names the glass alone: it may still stand there for the taster.
            context_.notice.tell(glass_ ? tr("Glass %1 drawn: kept.").arg(*glass_)
                                        : tr("%1 drawn from %2: kept.").arg(volume(), barrelName()),
                                 takeBack(context_, *entry));
        });
}

}  // namespace spile::viewmodels
