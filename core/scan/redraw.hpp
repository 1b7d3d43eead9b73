#pragma once

#include "core/picture/image.hpp"
#include "core/scan/label_decoder.hpp"
#include "core/scan/reader.hpp"
#include "core/scan/redraw_modules.hpp"

#include <array>
#include <optional>
#include <vector>

namespace spile::scan {

/// A symbol that was found but not read, or the best that looked like one.
struct Found {
    float fit = 0;        // of its known patterns: about 1 when clear, 0.3 may be anything
    float module = 0;     // pixels
    float sharpness = 0;  // contrast of single modules as a share of that of the finders' cores
    float damage = 0;     // share of the known modules that are of the other colour
    std::array<Point, 4> corners{};
    redraw::Softs softs;  // empty if nothing was found
};

/// Reads damaged labels: QR symbols of version 2 at level H whose finders ZXing does not recognise.
/// In still pictures, where time does not press, also QR symbols of other levels and sizes.
///
/// Finds the cores of finders, guesses from them where a symbol may lie, fits a grid so that the
/// known patterns lie where they are dark and light, and corrects what the modules say. What comes
/// out is redrawn whole and clean, and read by ZXing. Keeps its buffers; not thread safe.
class Redrawer {
public:
    Redrawer() : Redrawer(label::size, false) {}
    /// For symbols of `size` modules, of 21, 25 ... 41; with `anyLevel` those that are no labels
    /// too, as they always are in other sizes than 25.
    Redrawer(int size, bool anyLevel);
    Redrawer(const Redrawer&) = delete;  // its parts look at its patterns
    Redrawer& operator=(const Redrawer&) = delete;
    ~Redrawer() = default;

    /// Read the symbols in `part`; corners in its pixels. Requires a sound view; throws what ZXing
    /// throws.
    [[nodiscard]] std::vector<Code> read(const picture::LuminanceView& part);
    /// The best of what the last call did not read.
    [[nodiscard]] const Found& unread() const { return unread_; }

    /// Read what several frames say together; its corners are unknown: all (0, 0).
    [[nodiscard]] std::optional<Code> readTogether(std::span<const float> softs);

private:
    void addCores(float scale);
    void readPlaces(std::vector<Code>& codes);
    [[nodiscard]] bool isSeen(const redraw::Place& place) const;
    [[nodiscard]] std::optional<Code> readAt(const redraw::Place& place);
    [[nodiscard]] std::optional<Code> readModules(const redraw::Grid& grid);
    [[nodiscard]] std::optional<Code> readSofts();
    [[nodiscard]] std::optional<Code> confirmed(const label::Corrected& corrected);
    [[nodiscard]] static std::array<Point, 4> cornersOf(const redraw::Place& place,
                                                        const redraw::Grid& grid);
    void remember(const redraw::Place& place, const redraw::Grid& grid);

    redraw::KnownPatterns patterns_;
    bool anyLevel_;
    redraw::DarkMap darkMap_;
    redraw::CoreFinder coreFinder_;
    redraw::PlaceFinder placeFinder_;
    redraw::GridFitter fitter_;
    redraw::ModuleSampler sampler_;
    redraw::Patch patch_;
    std::array<redraw::Plane, 2> planes_;
    redraw::Plane dark_;
    redraw::Plane drawn_;
    std::vector<redraw::Core> inLook_;
    std::vector<redraw::Core> cores_;
    std::vector<redraw::Place> places_;
    std::vector<redraw::Place> seen_;
    redraw::Softs softs_;
    Found unread_;
};

}  // namespace spile::scan
