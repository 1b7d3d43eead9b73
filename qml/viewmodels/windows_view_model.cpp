#include "qml/viewmodels/windows_view_model.hpp"

#include "core/cellar/vocabulary.hpp"
#include "qml/viewmodels/error_text.hpp"
#include "qml/viewmodels/notice.hpp"
#include "qml/viewmodels/words.hpp"

#include <algorithm>
#include <array>

namespace spile::viewmodels {

namespace {

constexpr int least = 1;
constexpr int most = 9;
// Where a window begins that is given by one tap: around the middle of the ladder.
constexpr int firstLow = 4;
constexpr int firstHigh = 6;

// The ladder's word of a step; between two rungs, that it is over the lower one.
QString rungWord(int step)
{
    const std::array<QString, 5> words = {
        WindowsViewModel::tr("none"), WindowsViewModel::tr("slight"), WindowsViewModel::tr("clear"),
        WindowsViewModel::tr("strong"), WindowsViewModel::tr("dominant")};
    const auto below = static_cast<std::size_t>((step - least) / 2);
    return step % 2 == 1 ? words.at(below)
                         : WindowsViewModel::tr("over %1", "a touch more than \"slight\"")
                               .arg(words.at(below));
}

QString textOfWindow(const cellar::Window& window)
{
    if (window.low == 0) {
        return WindowsViewModel::tr("No window");
    }
    if (window.low == window.high) {
        return WindowsViewModel::tr("%1: %2", "a step and its word")
            .arg(window.low)
            .arg(rungWord(window.low));
    }
    return WindowsViewModel::tr("%1 to %2: %3 to %4", "steps and their words")
        .arg(window.low)
        .arg(window.high)
        .arg(rungWord(window.low), rungWord(window.high));
}

}  // namespace

QVariant WindowRows::data(const QModelIndex& index, int role) const
{
    const WindowLine* line = rowAt(index.row());
    if (line == nullptr) {
        return {};
    }
    switch (role) {
        case Name:
            return line->name;
        case WindowText:
            return line->text;
        case Given:
            return line->low > 0;
        case CanLower:
            return line->low > least;
        case CanNarrow:
            return line->low < line->high;
        case CanRaise:
            return line->high < most;
        default:
            return {};
    }
}

QHash<int, QByteArray> WindowRows::roleNames() const
{
    return {{Name, "name"},         {WindowText, "windowText"}, {Given, "given"},
            {CanLower, "canLower"}, {CanNarrow, "canNarrow"},   {CanRaise, "canRaise"}};
}

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
    rows_.replace({});
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
            before_ = windows_ = found->windows;
            for (const std::string& attribute : found->attributes) {
                const bool given = std::any_of(
                    before_.begin(), before_.end(),
                    [&](const cellar::Window& window) { return window.attribute == attribute; });
                if (!given) {
                    windows_.push_back({attribute, 0, 0});
                }
            }
            loaded_ = true;
            show();
        });
}

void WindowsViewModel::show()
{
    std::vector<WindowLine> lines;
    for (const cellar::Window& window : windows_) {
        lines.push_back({QString::fromStdString(window.attribute),
                         capitalised(word(window.attribute)), window.low, window.high,
                         textOfWindow(window)});
    }
    rows_.replace(std::move(lines));
    emit changed();
}

cellar::Window* WindowsViewModel::windowAt(int index)
{
    return index >= 0 && index < static_cast<int>(windows_.size()) && isKnown()
               ? &windows_[static_cast<std::size_t>(index)]
               : nullptr;
}

void WindowsViewModel::stepLow(int index, int by)
{
    if (cellar::Window* window = windowAt(index); window != nullptr && window->low > 0) {
        window->low = std::clamp(window->low + by, least, window->high);
        show();
    }
}

void WindowsViewModel::stepHigh(int index, int by)
{
    if (cellar::Window* window = windowAt(index); window != nullptr && window->low > 0) {
        window->high = std::clamp(window->high + by, window->low, most);
        show();
    }
}

void WindowsViewModel::toggle(int index)
{
    if (cellar::Window* window = windowAt(index)) {
        const bool given = window->low > 0;
        window->low = given ? 0 : firstLow;
        window->high = given ? 0 : firstHigh;
        show();
    }
}

void WindowsViewModel::save()
{
    std::vector<cellar::Window> wanted = windows_;
    std::erase_if(wanted, [](const cellar::Window& window) { return window.low == 0; });
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
