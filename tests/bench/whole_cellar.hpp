#pragma once

#include "core/cellar/acts/exchanging.hpp"
#include "core/cellar/checking.hpp"
#include "tests/bench/report.hpp"
#include "tests/support/real_device.hpp"

/// Work on all of a cellar, each meant for a process of its own: the cellar that a GrownCellar made
/// in `folder` handed out, joined with, checked.
namespace spile::bench {

inline void handOutWhole(const Path& folder)
{
    support::RealDevice device(folder);
    auto cellar = device.openOrMake();
    must(cellar);
    must(cellar::handOut(**cellar, folder / "whole.spile", {}));
}

/// Requires handOutWhole().
inline void joinWhole(const Path& folder)
{
    support::RealDevice device(folder / "joined");
    must(cellar::Cellar::join(device.cellarFolder, device.outside(), folder / "whole.spile", {}));
    std::filesystem::remove(folder / "whole.spile");
    std::filesystem::remove_all(folder / "joined");
}

inline void checkWhole(const Path& folder)
{
    support::RealDevice device(folder);
    auto cellar = device.openOrMake();
    must(cellar);
    const auto report = cellar::check(**cellar, {});
    must(report);
    if (!report->problems.empty()) {
        throw std::runtime_error(report->problems.front().subject);
    }
}

inline void runWhole(const Path& folder, const std::string& step)
{
    if (step == "hand-out") {
        handOutWhole(folder);
    } else if (step == "join") {
        joinWhole(folder);
    } else {
        checkWhole(folder);
    }
}

}  // namespace spile::bench
