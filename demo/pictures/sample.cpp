#include "demo/pictures/sample.hpp"

#include "demo/pictures/camera.hpp"
#include "demo/pictures/tabletop.hpp"

#include <array>
#include <cmath>
#include <numbers>

namespace spile::demo {

static constexpr double nudge = 1e-4;  // past a surface, so that it is not met again [mm]
static constexpr Rgb glassTint{0.0016, 0.0008, 0.0012};  // dimming of the glass itself [1/mm]

namespace {

enum class Medium : std::uint8_t { Air, Glass, Beer };

struct Crossing {
    double t = -1.0;  // below 0: nothing more is met
    Vec3 normal;      // any of the two
    std::uint32_t surface = 0;
};

/// A ray on its way through glass and beer.
struct Walk {
    Vec3 place;
    Vec3 ray;
    double passed = 1.0;    // share of light left by the surfaces so far
    double beerPath = 0.0;  // [mm]
    double glassPath = 0.0;
    Rgb gathered;  // light picked up on the way: mirrored or scattered
    std::uint32_t surfaces = 1;
};

class SampleStage {
public:
    SampleStage(SeededRandom& random, const SampleScene& scene);

    [[nodiscard]] Seen look(Vec3 from, Vec3 ray) const;
    /// Return the light of white paper that stands where the glass does.
    [[nodiscard]] double whiteLight() const
    {
        return table_.light().on({0.8, 0.8, 0.8}, {0.0, -50.0, 0.0}, {0.0, 0.0, -1.0}, 1.0, 1.0).g;
    }

private:
    [[nodiscard]] Medium mediumAt(Vec3 place) const;
    [[nodiscard]] Crossing next(Vec3 place, Vec3 ray) const;
    void meetRound(Vec3 place, Vec3 ray, double radius, double foot, std::uint32_t surface,
                   Crossing& nearest) const;
    void meetFlat(Vec3 place, Vec3 ray, double height, std::uint32_t surface,
                  Crossing& nearest) const;
    [[nodiscard]] double foamAt(Vec3 place) const;
    [[nodiscard]] Rgb foamLight(Vec3 place) const;
    [[nodiscard]] bool step(Walk& walk) const;
    void advance(Walk& walk, Medium medium, double far) const;
    void bend(Walk& walk, const Crossing& crossing, Medium from, Medium to) const;
    [[nodiscard]] Rgb dimmed(const Walk& walk, Rgb light) const;

    Noise noise_;
    GlassShape glass_;
    BeerColour beer_;
    Tabletop table_;
    double haze_;
    double foam_;
    Rgb glow_;
};

}  // namespace

static GlassShape drawnGlass(const SampleScene& scene, SeededRandom& random)
{
    GlassShape glass;
    glass.x = between(random, -38.0, -30.0);
    glass.radius = between(random, 34.5, 38.0);
    glass.base = between(random, 7.0, 12.0);
    const double fill = 1000.0 * drawnUnless(scene.fill_ml, 160.0, 290.0, random);
    const double deep = fill / (std::numbers::pi * glass.bore() * glass.bore());
    glass.level = glass.base + deep;
    glass.height = glass.level + between(random, 22.0, 42.0);
    return glass;
}

SampleStage::SampleStage(SeededRandom& random, const SampleScene& scene)
    : noise_(random),
      glass_(drawnGlass(scene, random)),
      beer_(scene.colour_ebc),
      table_(random, glass_, beer_, drawnUnless(scene.light_gradient, 0.2, 0.8, random)),
      haze_(drawnUnless(scene.haze, 0.0, 1.0, random)),
      foam_(drawnUnless(scene.foam, 0.0, 1.0, random)),
      glow_(0.46 * beer_.passed(9.0))
{
}

Medium SampleStage::mediumAt(Vec3 place) const
{
    const double height = -place.y;
    const double r = flatLength(place.x - glass_.x, place.z);
    if (r >= glass_.radius || height >= glass_.height || height <= 0.0) {
        return Medium::Air;
    }
    if (r >= glass_.bore() || height <= glass_.base) {
        return Medium::Glass;
    }
    return height < glass_.level ? Medium::Beer : Medium::Air;
}

void SampleStage::meetRound(Vec3 place, Vec3 ray, double radius, double foot, std::uint32_t surface,
                            Crossing& nearest) const
{
    const double x = place.x - glass_.x;
    const double a = ray.x * ray.x + ray.z * ray.z;
    const double b = x * ray.x + place.z * ray.z;
    const double root = b * b - a * (x * x + place.z * place.z - radius * radius);
    if (root <= 0.0 || a < 1e-12) {
        return;
    }
    for (const double sign : {-1.0, 1.0}) {
        const double t = (-b + sign * std::sqrt(root)) / a;
        const Vec3 met = place + t * ray;
        if (t > nudge && -met.y > foot && -met.y < glass_.height &&
            (nearest.t < 0.0 || t < nearest.t)) {
            nearest = {t, {(met.x - glass_.x) / radius, 0.0, met.z / radius}, surface};
        }
    }
}

void SampleStage::meetFlat(Vec3 place, Vec3 ray, double height, std::uint32_t surface,
                           Crossing& nearest) const
{
    const double t = (-height - place.y) / ray.y;
    if (ray.y == 0.0 || t <= nudge || (nearest.t >= 0.0 && t >= nearest.t)) {
        return;
    }
    const Vec3 met = place + t * ray;
    if (mediumAt(met + nudge * ray) != mediumAt(met - nudge * ray)) {
        nearest = {t, {0.0, 1.0, 0.0}, surface};
    }
}

Crossing SampleStage::next(Vec3 place, Vec3 ray) const
{
    Crossing nearest;
    // Most rays pass beside the glass.
    const double aside = (place.x - glass_.x) * ray.z - place.z * ray.x;
    if (aside * aside > glass_.radius * glass_.radius * (ray.x * ray.x + ray.z * ray.z)) {
        return nearest;
    }
    meetRound(place, ray, glass_.radius, 0.0, 1, nearest);
    meetRound(place, ray, glass_.bore(), glass_.base, 2, nearest);
    meetFlat(place, ray, 0.0, 3, nearest);
    meetFlat(place, ray, glass_.base, 4, nearest);
    meetFlat(place, ray, glass_.level, 5, nearest);
    meetFlat(place, ray, glass_.height, 6, nearest);
    return nearest;
}

/// Return how high foam stands at a place of the surface [mm]; 0 where the beer is bare.
double SampleStage::foamAt(Vec3 place) const
{
    const double x = place.x - glass_.x;
    const double fromWall = glass_.bore() - flatLength(x, place.z);
    const double raft = noise_.fractal(place.x / 14.0, place.z / 14.0, 3);
    const double bubble = noise_.at(place.x / 1.1, place.z / 1.1);
    const double collar = 1.8 + 3.4 * foam_ + 3.0 * (raft - 0.5) + 1.2 * (bubble - 0.5);
    if (fromWall < collar) {
        return 0.9 + 2.4 * foam_ * raft + 0.7 * bubble;
    }
    const double covered = 0.80 - 0.34 * foam_;
    return raft + 0.16 * (bubble - 0.5) > covered ? 0.5 + foam_ : 0.0;
}

Rgb SampleStage::foamLight(Vec3 place) const
{
    const double bubble = noise_.fractal(place.x / 0.9, (place.z + 1.7 * place.y) / 0.9, 2);
    const double lump = noise_.at(place.x / 5.0, (place.z + place.y) / 5.0);
    const double pale = 0.34 + 0.34 * bubble + 0.16 * lump;
    // Foam is beer too: many thin films of it.
    const Rgb tint = mix(Rgb{0.92, 0.90, 0.86}, beer_.passed(2.2), 0.5);
    return table_.light().on(pale * tint, place, {0.0, -0.8, -0.6}, 0.9, 0.75);
}

Rgb SampleStage::dimmed(const Walk& walk, Rgb light) const
{
    if (walk.surfaces == 1) {
        return light;  // nothing met yet
    }
    const auto glass = [&](double perMm) { return std::exp(-perMm * walk.glassPath); };
    return walk.passed * (light * beer_.passed(walk.beerPath) *
                          Rgb{glass(glassTint.r), glass(glassTint.g), glass(glassTint.b)});
}

void SampleStage::advance(Walk& walk, Medium medium, double far) const
{
    if (medium == Medium::Beer) {
        const double turbid = 0.001 + 0.030 * haze_ * haze_;
        const double depth = 0.45 + 0.55 * std::exp((walk.place.y + glass_.level - 12.0) / 60.0);
        const Rgb back = std::min(depth, 1.0) * (beer_.scattered(turbid, far) * glow_);
        walk.gathered = walk.gathered + dimmed(walk, back);
        walk.beerPath += far;
        walk.passed *= std::exp(-turbid * far);
    } else if (medium == Medium::Glass) {
        walk.glassPath += far;
    }
    walk.place = walk.place + far * walk.ray;
}

void SampleStage::bend(Walk& walk, const Crossing& crossing, Medium from, Medium to) const
{
    constexpr std::array<double, 3> indices = {1.0, 1.52, 1.345};
    const double ratio =
        indices.at(static_cast<std::size_t>(from)) / indices.at(static_cast<std::size_t>(to));
    const double side = dot(walk.ray, crossing.normal) > 0.0 ? -1.0 : 1.0;
    const Vec3 normal = side * crossing.normal;  // against the ray
    const double cosine = -dot(walk.ray, normal);
    const Vec3 mirrored = walk.ray + (2.0 * cosine) * normal;
    const double squared = 1.0 - ratio * ratio * (1.0 - cosine * cosine);
    if (squared <= 0.0) {
        walk.ray = mirrored;  // total reflection
        return;
    }
    // Schlick's short form of Fresnel's equations.
    const double head = std::pow((1.0 - ratio) / (1.0 + ratio), 2);
    const double share = head + (1.0 - head) * std::pow(1.0 - cosine, 5);
    if (from == Medium::Air) {
        const Rgb room = table_.seen(walk.place + nudge * mirrored, mirrored, noise_).light;
        walk.gathered = walk.gathered + share * dimmed(walk, room);
    }
    walk.passed *= 1.0 - share;
    walk.ray = unitOf(ratio * walk.ray + (ratio * cosine - std::sqrt(squared)) * normal);
}

/// Go to the next surface and through it. False if nothing more of the glass is met, or foam ends
/// the way.
bool SampleStage::step(Walk& walk) const
{
    const Crossing crossing = next(walk.place, walk.ray);
    if (crossing.t < 0.0) {
        return false;
    }
    const Medium from = mediumAt(walk.place + (0.5 * crossing.t) * walk.ray);
    advance(walk, from, crossing.t);
    walk.surfaces = walk.surfaces * 7 + crossing.surface;
    const Medium to = mediumAt(walk.place + nudge * walk.ray);

    const double above = -walk.place.y - glass_.level;
    const bool onSurface = crossing.surface == 5 && foamAt(walk.place) > 0.0;
    const bool onCollar = crossing.surface == 2 && above > 0.0 && above < foamAt(walk.place);
    if (onSurface || onCollar) {
        walk.gathered = walk.gathered + dimmed(walk, foamLight(walk.place));
        walk.passed = 0.0;
        walk.surfaces = walk.surfaces * 7 + 6;
        return false;
    }
    bend(walk, crossing, from, to);
    walk.place = walk.place + nudge * walk.ray;
    return true;
}

Seen SampleStage::look(Vec3 from, Vec3 ray) const
{
    Walk walk;
    walk.place = from;
    walk.ray = ray;
    constexpr int mostSurfaces = 12;
    int count = 0;
    while (count < mostSurfaces && step(walk)) {
        ++count;
    }
    if (walk.passed <= 0.0) {
        return {walk.gathered, walk.surfaces, true};  // foam, whose bubbles are fine
    }
    const Seen behind = table_.seen(walk.place, walk.ray, noise_);
    return {walk.gathered + dimmed(walk, behind.light), walk.surfaces * 7 + behind.subject};
}

static Camera drawnCamera(const SampleScene& scene, SeededRandom& random)
{
    const Vec3 aim{between(random, -4.0, 4.0), between(random, -70.0, -58.0), 0.0};
    Camera camera;
    camera.width = scene.width;
    camera.height = scene.height;
    camera.focal = 2.70 * scene.width;
    camera.origin = {between(random, -30.0, 30.0), between(random, -215.0, -150.0),
                     between(random, -560.0, -520.0)};
    camera.forward = unitOf(aim - camera.origin);
    const double lean = between(random, -0.02, 0.02);
    const Vec3 right = unitOf({camera.forward.z, 0.0, -camera.forward.x});
    camera.right = turned(right, camera.forward, lean);
    camera.down = turned(camera.right, camera.forward, 0.5 * std::numbers::pi);
    return camera;
}

picture::Image renderSample(const SampleScene& scene)
{
    SeededRandom random(scene.seed);
    const Camera camera = drawnCamera(scene, random);
    Film film;
    film.noise = drawnUnless(scene.noise, 1.5, 4.0, random);
    film.blur = between(random, 0.6, 0.95);
    film.vignetting = between(random, 0.15, 0.32);
    const double brightness = between(random, 0.72, 0.92);
    const SampleStage stage(random, scene);
    film.exposure = brightness / stage.whiteLight();
    const Frame frame = painted(camera, [&](Vec3 ray) { return stage.look(camera.origin, ray); });
    return developed(frame, film, random);
}

}  // namespace spile::demo
