// The bench, and which page follows which: a part of app_view_model.cpp.
#include "qml/viewmodels/app_view_model.hpp"

namespace spile::viewmodels {

void AppViewModel::connectBench()
{
    connect(&bench_, &BenchViewModel::wanted, this, [this](const SubjectId& bench) {
        glasses_.open(bench, bench_.attributes());
        navigator_.open(Navigator::BenchGlasses);
    });
    connect(&glasses_, &BenchGlassesViewModel::changed, this, &AppViewModel::blindChanged);
    connect(&glasses_, &BenchGlassesViewModel::lotWanted, this,
            [this](const SubjectId& lot) { openLot(lot); });
    connect(&glasses_, &BenchGlassesViewModel::ended, this, [this] {
        if (navigator_.page() == Navigator::BenchGlasses) {
            navigator_.back();
        }
    });
    // What is looked for on a page that was left is not wanted any more.
    connect(&navigator_, &Navigator::left, this, [this](Navigator::Page page) {
        if (page == Navigator::Bench) {
            bench_.askAgain();
        }
    });
}

void AppViewModel::openBench()
{
    bench_.open({});
    navigator_.open(Navigator::Bench);
}

void AppViewModel::openBenchOfBarrel()
{
    bench_.open(barrel_.row().barrel);
    navigator_.open(Navigator::Bench);
}

}  // namespace spile::viewmodels
