#pragma once

#include "qml/viewmodels/context.hpp"
#include "qml/viewmodels/notice.hpp"
#include "qml/viewmodels/settings.hpp"
#include "tests/support/faulty_file_system.hpp"
#include "tests/support/small_cellar.hpp"

#include <QTest>

namespace spile::support {

/// What a view-model works with, real but for clock, keys and randomness; its cellar has the person
/// Ada and the barrel "Rum 3" that holds 190 L.
class ViewModelWorld {
public:
    ViewModelWorld()
    {
        workers.open(
            &workers,
            [this](const Job&) -> viewmodels::Workers::Opened {
                auto cellar = cellar::Cellar::create(device.cellarFolder(), outside,
                                                     {"Our cellar", {}, "Phone"});
                if (cellar) {
                    small = fillSmallCellar(**cellar);
                    mark = (*cellar)->identity().mark;
                }
                return cellar;
            },
            [](std::uint64_t, std::uint64_t) {},
            [this](const Result<void>& opened) { isOpen = opened.has_value(); });
    }

    /// Run `act` on the writer and wait for what it returns.
    template <class Act>
    auto act(Act wanted)
    {
        std::optional<std::invoke_result_t<Act, cellar::Cellar&>> answer;
        workers.act(&workers, wanted, [&](auto done) { answer = std::move(done); });
        [[maybe_unused]] const bool came =
            QTest::qWaitFor([&] { return answer.has_value(); }, 20000);
        return std::move(*answer);
    }
    [[nodiscard]] bool waitUntilOpen()
    {
        return QTest::qWaitFor([this] { return isOpen; }, 20000);
    }

    TestDevice device{7};
    FaultyFileSystem disk{device.files};
    Outside outside{device.clock, disk, device.random, device.ids, device.keys};
    viewmodels::Formats formats{device.clock};
    viewmodels::Notice notice;
    viewmodels::Settings settings{
        QString::fromStdString((device.folder.path() / "settings.ini").string()), formats};
    SmallCellar small;
    std::string mark;
    bool isOpen = false;
    viewmodels::Workers workers;  // ends before what its threads use
    viewmodels::Context context{workers, outside, formats, notice, settings};
};

}  // namespace spile::support
