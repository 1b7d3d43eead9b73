#include "qml/viewmodels/window_set.hpp"

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

}  // namespace

// The ladder's word of a step; between two rungs, that it is over the lower one.
QString WindowSet::rungWord(int step)
{
    const std::array<QString, 5> words = {tr("none"), tr("slight"), tr("clear"), tr("strong"),
                                          tr("dominant")};
    const auto below = static_cast<std::size_t>((step - least) / 2);
    return step % 2 == 1 ? words.at(below)
                         : tr("over %1", "a touch more than \"slight\"").arg(words.at(below));
}

QString WindowSet::textOf(const cellar::Window& window)
{
    if (window.low == 0) {
        return tr("No window");
    }
    if (window.low == window.high) {
        return tr("%1: %2", "a step and its word").arg(window.low).arg(rungWord(window.low));
    }
    return tr("%1 to %2: %3 to %4", "steps and their words")
        .arg(window.low)
        .arg(window.high)
        .arg(rungWord(window.low), rungWord(window.high));
}

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

void WindowSet::begin(std::vector<cellar::Window> windows,
                      const std::vector<std::string>& attributes)
{
    windows_ = std::move(windows);
    for (const std::string& attribute : attributes) {
        const bool given = std::any_of(
            windows_.begin(), windows_.end(),
            [&](const cellar::Window& window) { return window.attribute == attribute; });
        if (!given) {
            windows_.push_back({attribute, 0, 0});
        }
    }
    show();
}

std::vector<cellar::Window> WindowSet::given() const
{
    std::vector<cellar::Window> given = windows_;
    std::erase_if(given, [](const cellar::Window& window) { return window.low == 0; });
    return given;
}

void WindowSet::show()
{
    std::vector<WindowLine> lines;
    for (const cellar::Window& window : windows_) {
        lines.push_back({QString::fromStdString(window.attribute),
                         capitalised(word(window.attribute)), window.low, window.high,
                         textOf(window)});
    }
    rows_.replace(std::move(lines));
}

cellar::Window* WindowSet::windowAt(int index)
{
    return index >= 0 && index < static_cast<int>(windows_.size())
               ? &windows_[static_cast<std::size_t>(index)]
               : nullptr;
}

void WindowSet::stepLow(int index, int by)
{
    if (cellar::Window* window = windowAt(index); window != nullptr && window->low > 0) {
        window->low = std::clamp(window->low + by, least, window->high);
        show();
    }
}

void WindowSet::stepHigh(int index, int by)
{
    if (cellar::Window* window = windowAt(index); window != nullptr && window->low > 0) {
        window->high = std::clamp(window->high + by, window->low, most);
        show();
    }
}

void WindowSet::toggle(int index)
{
    if (cellar::Window* window = windowAt(index)) {
        const bool given = window->low > 0;
        window->low = given ? 0 : firstLow;
        window->high = given ? 0 : firstHigh;
        show();
    }
}

}  // namespace spile::viewmodels
