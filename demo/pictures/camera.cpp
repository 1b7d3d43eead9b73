#include "demo/pictures/camera.hpp"

#include <array>
#include <cmath>
#include <cstddef>

namespace spile::demo {

Frame::Frame(int w, int h)
    : width(w), height(h), light(static_cast<std::size_t>(w) * static_cast<std::size_t>(h))
{
}

Rgb& Frame::at(int column, int row)
{
    return light[static_cast<std::size_t>(row) * static_cast<std::size_t>(width) +
                 static_cast<std::size_t>(column)];
}

Frame painted(const Camera& camera, const std::function<Seen(Vec3 ray)>& look)
{
    Frame frame(camera.width, camera.height);
    std::vector<std::uint32_t> subjects(frame.light.size());
    std::vector<bool> coarse(frame.light.size());
    const auto index = [&](int column, int row) {
        return static_cast<std::size_t>(std::clamp(row, 0, frame.height - 1)) *
                   static_cast<std::size_t>(frame.width) +
               static_cast<std::size_t>(std::clamp(column, 0, frame.width - 1));
    };
    const auto everyPixel = [&](const auto& work) {
        for (int row = 0; row < frame.height; ++row) {
            for (int column = 0; column < frame.width; ++column) {
                work(column, row, index(column, row));
            }
        }
    };
    everyPixel([&](int column, int row, std::size_t i) {
        const Seen seen = look(camera.ray(column, row));
        frame.light[i] = seen.light;
        subjects[i] = seen.subject;
        coarse[i] = seen.fine;
    });
    everyPixel([&](int column, int row, std::size_t i) {
        const std::uint32_t own = subjects[i];
        if (coarse[i] || own != subjects[index(column - 1, row)] ||
            own != subjects[index(column + 1, row)] || own != subjects[index(column, row - 1)] ||
            own != subjects[index(column, row + 1)]) {
            Rgb sum;
            for (const double dy : {-0.25, 0.25}) {
                for (const double dx : {-0.25, 0.25}) {
                    sum = sum + look(camera.ray(column + dx, row + dy)).light;
                }
            }
            frame.light[i] = 0.25 * sum;
        }
    });
    return frame;
}

namespace {

/// The lens's blur: a bell curve over five pixels, which is enough for deviations up to one.
/// Asked for row after row, it keeps only the few rows that it needs.
class Blur {
public:
    Blur(const Frame& frame, double deviation) : frame_(frame)
    {
        double sum = 0.0;
        for (int i = -reach; i <= reach; ++i) {
            const double weight = std::exp(-0.5 * i * i / (deviation * deviation));
            weights_.at(tap(i)) = weight;
            sum += weight;
        }
        for (double& weight : weights_) {
            weight /= sum;
        }
        for (int row = -reach; row < reach; ++row) {
            smearRow(row);
        }
    }

    /// Make ready the pixels of `row`. Rows must be asked for one after the other, from 0.
    void goTo(int row)
    {
        smearRow(row + reach);
        row_ = row;
    }

    [[nodiscard]] Rgb at(int column) const
    {
        Rgb sum;
        for (int k = -reach; k <= reach; ++k) {
            sum = sum + weights_[tap(k)] * rows_[slot(row_ + k)][static_cast<std::size_t>(column)];
        }
        return sum;
    }

private:
    static constexpr int reach = 2;
    static constexpr int taps = 2 * reach + 1;

    static std::size_t tap(int offset)
    {
        const int index = offset + reach;
        return static_cast<std::size_t>(index);
    }
    static std::size_t slot(int row)
    {
        const int index = (row + taps) % taps;
        return static_cast<std::size_t>(index);
    }

    // Past the edges the last row and the last column go on.
    void smearRow(int row)
    {
        std::vector<Rgb>& smeared = rows_[slot(row)];
        smeared.resize(static_cast<std::size_t>(frame_.width));
        const Rgb* const pixels =
            frame_.light.data() +
            static_cast<std::ptrdiff_t>(std::clamp(row, 0, frame_.height - 1)) * frame_.width;
        for (int column = 0; column < frame_.width; ++column) {
            Rgb sum;
            for (int k = -reach; k <= reach; ++k) {
                sum = sum + weights_[tap(k)] * pixels[std::clamp(column + k, 0, frame_.width - 1)];
            }
            smeared[static_cast<std::size_t>(column)] = sum;
        }
    }

    const Frame& frame_;
    std::array<double, taps> weights_{};
    std::array<std::vector<Rgb>, taps> rows_;
    int row_ = 0;
};

/// Linear light to sRGB steps, from a table, since a power for each of six million is slow.
class Encoding {
public:
    Encoding()
    {
        for (std::size_t i = 0; i < steps_.size(); ++i) {
            const double exposed = range * static_cast<double>(i) / last;
            // The shoulder: what is brighter than 0.8 creeps towards white and never clips hard.
            const double light =
                exposed <= knee ? exposed
                                : 1.0 - (1.0 - knee) * std::exp((knee - exposed) / (1.0 - knee));
            const double encoded =
                light <= 0.0031308 ? 12.92 * light : 1.055 * std::pow(light, 1.0 / 2.4) - 0.055;
            steps_[i] = static_cast<float>(255.0 * encoded);
        }
    }

    [[nodiscard]] double operator()(double light) const
    {
        const double place = std::clamp(light / range, 0.0, 1.0) * last;
        return static_cast<double>(steps_[static_cast<std::size_t>(place)]);
    }

private:
    static constexpr double range = 2.0;
    static constexpr double knee = 0.8;
    static constexpr double last = 16383.0;
    std::array<float, 16384> steps_{};
};

/// Normally distributed values, made once and drawn by chance: a logarithm and a cosine for each
/// of six million would cost more than the scene.
class Grain {
public:
    explicit Grain(SeededRandom& random)
    {
        for (float& value : pool_) {
            value = static_cast<float>(random.normal(0.0, 1.0));
        }
    }

    [[nodiscard]] double at(std::uint64_t bits) const
    {
        return static_cast<double>(pool_[bits % pool_.size()]);
    }

private:
    std::array<float, 16384> pool_{};
};

}  // namespace

static std::uint8_t asByte(double value)
{
    return static_cast<std::uint8_t>(std::clamp(value + 0.5, 0.0, 255.0));
}

picture::Image developed(const Frame& frame, const Film& film, SeededRandom& random)
{
    Blur lens(frame, film.blur);
    const Encoding encoding;
    const Grain grain(random);
    picture::Image image{frame.width, frame.height, picture::PixelFormat::Rgb8, {}};
    image.pixels.reserve(3 * frame.light.size());
    const double centreColumn = 0.5 * frame.width;
    const double centreRow = 0.5 * frame.height;
    const double corner = centreColumn * centreColumn + centreRow * centreRow;
    for (int row = 0; row < frame.height; ++row) {
        lens.goTo(row);
        for (int column = 0; column < frame.width; ++column) {
            const double dx = column - centreColumn;
            const double dy = row - centreRow;
            const double shade = 1.0 - film.vignetting * (dx * dx + dy * dy) / corner;
            const Rgb light = (film.exposure * shade) * lens.at(column);
            std::uint64_t bits = random.next();
            for (const double band : {light.r, light.g, light.b}) {
                const double value = encoding(band);
                // Half of the noise is the sensor's own, half grows with the light.
                const double deviation = 0.5 * film.noise * (1.0 + std::sqrt(value / 128.0));
                image.pixels.push_back(asByte(value + deviation * grain.at(bits)));
                bits >>= 16U;
            }
        }
    }
    return image;
}

}  // namespace spile::demo
