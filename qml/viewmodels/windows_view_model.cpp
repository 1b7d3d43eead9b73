#include "qml/viewmodels/windows_view_model.hpp"

#include "core/cellar/vocabulary.hpp"
#include "qml/viewmodels/error_text.hpp"
#include "qml/viewmodels/notice.hpp"

namespace spile::viewmodels {

WindowsViewModel::WindowsViewModel(Context& context, QObject* parent)
    : QObject(parent), context_(context)
{
}

void WindowsViewModel::open(const SubjectId& barrel)
{
    barrel_ = barrel;
    batch_ = {};
    beer_.clear();
    windows_.clear();
    before_.clear();
    loaded_ = false;
    emit changed();
    struct Found {
        std::optional<cellar::NamedRow> batch;
        std::vector<cellar::Window> windows;
        std::vector<std::string> attributes;
    };
    context_.workers.look(
        this,
        [barrel](ledger::Database& database) -> Result<Found> {
            SPILE_ASSIGN(batch, cellar::batchOfBarrel(database, barrel));
            SPILE_ASSIGN(windows, cellar::windowsOfBarrel(database, barrel));
            SPILE_ASSIGN(attributes, cellar::attributesOf(database, barrel));
            return Found{std::move(batch), std::move(windows), std::move(attributes)};
        },
        [this, barrel](Result<Found> found) {
            if (barrel != barrel_) {
                return;
            }
            if (!found) {
                context_.notice.refuse(textOf(found.error()));
                return;
            }
            if (found->batch) {
                batch_ = found->batch->subject;
                beer_ = QString::fromStdString(found->batch->name);
            }
            before_ = found->windows;
            windows_.begin(found->windows, found->attributes);
            loaded_ = true;
            emit changed();
        });
}

// Without a known beer the page shows no lines to set.
void WindowsViewModel::stepLow(int index, int by) { windows_.stepLow(index, by); }
void WindowsViewModel::stepHigh(int index, int by) { windows_.stepHigh(index, by); }
void WindowsViewModel::toggle(int index) { windows_.toggle(index); }

void WindowsViewModel::save()
{
    const std::vector<cellar::Window> wanted = windows_.given();
    if (!isKnown() || !loaded_ || wanted == before_) {
        return;
    }
    before_ = wanted;
    context_.workers.act(
        this,
        [batch = batch_, wanted](cellar::Cellar& cellar) {
            return cellar::setWindows(cellar, batch, wanted);
        },
        [this, beer = beer_](Result<void> set) {
            if (set) {
                context_.notice.tell(tr("Windows of %1: kept.").arg(beer));
            } else {
                context_.notice.refuse(textOf(set.error()));
            }
        });
}

}  // namespace spile::viewmodels
