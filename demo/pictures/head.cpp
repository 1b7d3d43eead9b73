#include "demo/pictures/head.hpp"

#include "core/scan/symbol.hpp"
#include "demo/pictures/barrel.hpp"
#include "demo/pictures/camera.hpp"
#include "demo/pictures/cellar.hpp"
#include "demo/pictures/label.hpp"
#include "demo/pictures/scribbles.hpp"

#include <array>
#include <cassert>
#include <cmath>
#include <numbers>

namespace spile::demo {

static constexpr double pitch = 655.0;  // from barrel to barrel in the rack [mm]
static constexpr double fieldOfView = 65.0 * std::numbers::pi / 180.0;
// The barrels of the rack, from the left.
static constexpr std::size_t left = 0;
static constexpr std::size_t own = 1;
static constexpr std::size_t right = 2;
static constexpr double plateThickness = 2.2;
static constexpr Vec3 towardsEye{0.0, 0.0, -1.0};

namespace {

enum Subject : std::uint32_t {
    cellarSubject,
    woodSubject,
    rimSubject,
    hoopSubject,
    neighbourSubject,
    labelSubject
};

class HeadStage {
public:
    HeadStage(SeededRandom& random, const HeadScene& scene, const scan::ModuleGrid& symbol);

    [[nodiscard]] Seen look(Vec3 from, Vec3 ray) const;
    /// Return the light that blank paper in the middle of the label sends out.
    [[nodiscard]] double whiteLight() const;

private:
    [[nodiscard]] Rgb lookAtHead(const Hit& hit, Vec3 ray) const;
    [[nodiscard]] Rgb lookAtLabel(Vec3 place) const;

    Noise noise_;
    Barrel barrel_;
    Cellar cellar_;
    LabelPlate label_;
    Scribbles scribbles_;
    Light light_;
    double labelX_;
    double labelY_;
    Spin labelTurn_;
    std::array<Spin, 3> turns_;  // each barrel shows the same timber, turned
};

}  // namespace

static Light drawnLight(SeededRandom& random, double gradient)
{
    Light light;
    light.lamp = {between(random, -750.0, 750.0), between(random, -850.0, -450.0),
                  between(random, -900.0, -520.0)};
    light.unevenness = gradient;
    light.reference = length(light.lamp);
    const double warmth = random.unit();
    light.lampColour = mix(Rgb{1.0, 0.96, 0.90}, Rgb{1.0, 0.88, 0.70}, warmth);
    return light;
}

HeadStage::HeadStage(SeededRandom& random, const HeadScene& scene, const scan::ModuleGrid& symbol)
    : noise_(random),
      barrel_(random),
      cellar_(random),
      label_(random, symbol, scene.shownCode, scene.mark),
      scribbles_(random),
      light_(drawnLight(random, drawnUnless(scene.light_gradient, 0.25, 0.9, random))),
      labelX_(between(random, -12.0, 12.0)),
      labelY_(between(random, -45.0, 10.0)),
      labelTurn_(between(random, -0.035, 0.035)),  // screwed on by eye
      turns_{Spin(between(random, 0.0, 6.0)), Spin(between(random, 0.0, 6.0)),
             Spin(between(random, 0.0, 6.0))}
{
}

double HeadStage::whiteLight() const
{
    const Vec3 middle{labelX_, labelY_, Barrel::headDepth};
    return light_.on({0.8, 0.8, 0.8}, middle, towardsEye, 1.0, 1.0).g;
}

Rgb HeadStage::lookAtLabel(Vec3 place) const
{
    const Vec3 onPlate = labelTurn_.of(place - Vec3{labelX_, labelY_, 0.0});
    return light_.on(label_.albedo(onPlate.x, onPlate.y, noise_), place, towardsEye, 1.0,
                     Barrel::lampOnHead(place, light_));
}

Rgb HeadStage::lookAtHead(const Hit& hit, Vec3 ray) const
{
    const Rgb wood = barrel_.shade(hit, ray, light_, noise_, turns_[own]);
    const Rgb marked = scribbles_.over(wood, hit.place.x, hit.place.y, light_, noise_);
    // The plate stands off the wood by its thickness and shades it away from the lamp.
    const Vec3 toLamp = unitOf(light_.lamp - hit.place);
    const Vec3 onPlate = labelTurn_.of(hit.place + (plateThickness / -toLamp.z) * toLamp -
                                       Vec3{labelX_, labelY_, 0.0});
    const double shaded = ramp(-1.6, 1.2, label_.inside(onPlate.x, onPlate.y));
    return (1.0 - 0.72 * shaded) * marked;
}

Seen HeadStage::look(Vec3 from, Vec3 ray) const
{
    for (const std::size_t which : {own, left, right}) {
        const Vec3 centre{(static_cast<double>(which) - 1.0) * pitch, 0.0, 0.0};
        const Hit hit = Barrel::meet(from - centre, ray);
        if (hit.part == Part::Cellar) {
            continue;
        }
        if (which != own) {
            Light further = light_;
            further.lamp = light_.lamp - centre;
            return {barrel_.shade(hit, ray, further, noise_, turns_.at(which)), neighbourSubject};
        }
        if (hit.part == Part::Head) {
            const Vec3 onPlate = labelTurn_.of(hit.place - Vec3{labelX_, labelY_, 0.0});
            return label_.inside(onPlate.x, onPlate.y) > 0.0
                       ? Seen{lookAtLabel(hit.place), labelSubject, true}
                       : Seen{lookAtHead(hit, ray), woodSubject};
        }
        const bool wooden = hit.part == Part::Chime || hit.part == Part::Wall;
        return {barrel_.shade(hit, ray, light_, noise_, turns_[own]),
                wooden ? rimSubject : hoopSubject};
    }
    return {cellar_.behind(from, ray, noise_), cellarSubject};
}

static Camera drawnCamera(const HeadScene& scene, SeededRandom& random)
{
    constexpr double degree = std::numbers::pi / 180.0;
    const double distance = 1000.0 * drawnUnless(scene.distance_m, 0.52, 0.80, random);
    const double tilt = degree * drawnUnless(scene.tilt_deg, 0.0, 28.0, random);
    const double roll = degree * drawnUnless(scene.roll_deg, -9.0, 9.0, random);
    const double axisAngle = between(random, 0.0, 2.0 * std::numbers::pi);
    const Vec3 axis{std::cos(axisAngle), std::sin(axisAngle), 0.0};
    const auto posed = [&](Vec3 v) {
        return turned(turned(v, axis, -tilt), {0.0, 0.0, 1.0}, -roll);
    };

    Camera camera;
    camera.width = scene.width;
    camera.height = scene.height;
    camera.focal = 0.5 * scene.width / std::tan(0.5 * fieldOfView);
    camera.right = posed({1.0, 0.0, 0.0});
    camera.down = posed({0.0, 1.0, 0.0});
    camera.forward = posed({0.0, 0.0, 1.0});
    // Nobody aims at the middle exactly.
    const double offX = between(random, -40.0, 40.0);
    const double offY = between(random, -30.0, 30.0);
    camera.origin = Vec3{offX, offY, 0.0} + (-distance) * camera.forward;
    return camera;
}

picture::Image renderHead(const HeadScene& scene)
{
    const auto symbol = scan::makeQr(scene.labelText);
    assert(symbol.has_value());

    SeededRandom random(scene.seed);
    const Camera camera = drawnCamera(scene, random);
    Film film;
    film.noise = drawnUnless(scene.noise, 1.5, 5.0, random);
    film.blur = drawnUnless(scene.blur, 0.55, 0.95, random);
    film.vignetting = between(random, 0.22, 0.42);
    const double brightness = between(random, 0.50, 0.74);
    const HeadStage stage(random, scene, symbol ? *symbol : scan::ModuleGrid{});
    film.exposure = brightness / stage.whiteLight();

    const Frame frame = painted(camera, [&](Vec3 ray) { return stage.look(camera.origin, ray); });
    return developed(frame, film, random);
}

}  // namespace spile::demo
