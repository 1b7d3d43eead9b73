#include "qml/viewmodels/navigator.hpp"

namespace spile::viewmodels {

void Navigator::set(QList<Page> pages)
{
    if (pages != pages_) {
        pages_ = std::move(pages);
        emit changed();
    }
}

Navigator::Page Navigator::listPage() const
{
    if (pages_.contains(AllBarrels)) {
        return AllBarrels;
    }
    if (pages_.contains(Lots)) {
        return Lots;
    }
    return root() == Today ? Today : Due;
}

bool Navigator::isBesideHistory() const
{
    static const QList<Page> ofSeveral{Bench,      BenchGlasses, Lots,    Lot,      LotRecord,
                                       LotBarrels, Trace,        Reports, ToSettle, Settle,
                                       Devices,    CutOff,       Admit};
    return !ofSeveral.contains(page());
}

void Navigator::go(Page root) { set({root}); }

void Navigator::open(Page page)
{
    const auto below = pages_.indexOf(page);
    QList<Page> pages = below < 0 ? pages_ : pages_.first(below);
    pages.append(page);
    set(std::move(pages));
}

void Navigator::replace(Page page)
{
    QList<Page> pages = pages_;
    pages.removeLast();
    pages.removeAll(page);
    pages.append(page);
    set(std::move(pages));
}

void Navigator::remove(Page page)
{
    const auto at = pages_.indexOf(page);
    if (at > 0) {
        QList<Page> pages = pages_;
        pages.removeAt(at);
        set(std::move(pages));
    }
}

bool Navigator::back()
{
    if (!canGoBack()) {
        return false;
    }
    const Page from = page();
    QList<Page> pages = pages_;
    pages.removeLast();
    set(std::move(pages));
    emit left(from);
    return true;
}

}  // namespace spile::viewmodels
