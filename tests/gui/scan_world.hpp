#pragma once

#include "core/scan/barrel_code.hpp"
#include "qml/viewmodels/scan_view_model.hpp"
#include "tests/gui/view_model_world.hpp"

namespace spile::support {

/// The scan page's view-model, quick, with a cellar that has the barrel "Rum 3".
class ScanWorld : public ViewModelWorld {
public:
    /// The text of the label of that code in this cellar.
    [[nodiscard]] QString label(const std::string& code) const { return label(mark, code); }
    [[nodiscard]] static QString label(const std::string& cellarMark, const std::string& code)
    {
        return QString::fromStdString(scan::labelText({cellarMark, code}));
    }
    [[nodiscard]] QString ourLabel() const { return label(small.code); }
    [[nodiscard]] QString ourBarrel() const { return QString::fromStdString(small.barrel.hex()); }
    /// A code that no barrel has.
    [[nodiscard]] std::string freeCode() const
    {
        SeededRandom random(1);
        return scan::randomCode(mark, random);
    }
    /// Register one more barrel.
    cellar::RegisteredBarrel add(const std::string& barrelMark, const std::string& code = {})
    {
        return act([&](cellar::Cellar& cellar) {
                   return cellar::registerBarrel(
                       cellar, {.mark = barrelMark, .spirit = "rum", .code = code});
               })
            .value();
    }
    void see(const QString& text, const QString& format = QStringLiteral("qr"))
    {
        scan.offer({text}, {format});
    }
    void type(const std::string& text)
    {
        for (const char key : text) {
            scan.type(QString(QLatin1Char(key)));
        }
    }

    viewmodels::ScanViewModel scan{
        context,
        {.patience = Milliseconds(60), .shown = Milliseconds(40), .judged = Milliseconds(60)}};
};

}  // namespace spile::support
