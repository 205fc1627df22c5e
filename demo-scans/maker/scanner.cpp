#include "demo-scans/maker/scanner.h"

#include "demo-scans/maker/noise.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace pithward::demo {

namespace {

using Kernel = std::array<float, 2 * blur_margin + 1>;

/// A Gaussian about `shift`, its sum 1. With no blur a shift is linear between neighbours.
Kernel kernel(double sd, double shift) {
    Kernel k{};
    double sum = 0.0;
    for (int i = 0; i <= 2 * blur_margin; ++i) {
        const double off = i - blur_margin - shift;
        const double weight = sd > 0.05 ? std::exp(-0.5 * off * off / (sd * sd)) : std::max(0.0, 1.0 - std::abs(off));
        k[static_cast<std::size_t>(i)] = static_cast<float>(weight);
        sum += weight;
    }
    for (float& w : k) {
        w /= static_cast<float>(sum);
    }
    return k;
}

/// Blurs along x into `out`, the margins left as they are.
void blur_rows(const Block& in, Block& out, const Kernel& red, const Kernel& green, const Kernel& blue) {
    for (int y = 0; y < in.height; ++y) {
        const Colour* row = in.pixels.data() + static_cast<std::ptrdiff_t>(y) * in.width;
        for (int x = blur_margin; x < in.width - blur_margin; ++x) {
            Colour sum;
            for (int i = 0; i <= 2 * blur_margin; ++i) {
                const Colour& c = row[x + i - blur_margin];
                const auto k = static_cast<std::size_t>(i);
                sum += Colour{c.r * red[k], c.g * green[k], c.b * blue[k]};
            }
            out.at(x, y) = sum;
        }
    }
}

std::uint8_t rounded(double value) {
    return static_cast<std::uint8_t>(std::clamp(std::floor(value + 0.5), 0.0, 255.0));
}

} // namespace

void scan_block(const Block& block, const Scanner& scanner, std::uint64_t seed, Picture& picture) {
    const double shift = scanner.channel_shift_px;
    Block rows = block;
    const Kernel down = kernel(scanner.blur_px, 0.0);
    blur_rows(block, rows, kernel(scanner.blur_px, shift), down, kernel(scanner.blur_px, -shift));
    const int last_row = block.height - 1;
    for (int y = 0; y < block.height; ++y) {
        const double v = picture.height > 1 ? 2.0 * y / (picture.height - 1) - 1.0 : 0.0;
        // The sensor's cells differ a little, which leaves faint lines along the way that it travels.
        const double cell = 1.0 + 0.0022 * scanner.noise * bell(lattice(mix(seed, 1), y));
        for (int x = blur_margin; x < block.width - blur_margin; ++x) {
            const int column = block.x + x;
            if (column < 0 || column >= picture.width) {
                continue;
            }
            Colour c;
            for (int i = 0; i <= 2 * blur_margin; ++i) {
                c += rows.at(x, std::clamp(y + i - blur_margin, 0, last_row)) * down[static_cast<std::size_t>(i)];
            }
            const double u = picture.width > 1 ? 2.0 * column / (picture.width - 1) - 1.0 : 0.0;
            const double light = 1.0 - scanner.uneven_light * (0.7 * v * v + 0.3 * u * u + 0.4 * v +
                                                               0.25 * u * noise(mix(seed, 2), 2.0 * u));
            float channels[3] = {c.r, c.g, c.b};
            if (scanner.grey) {
                channels[0] = channels[1] = channels[2] = 0.299F * c.r + 0.587F * c.g + 0.114F * c.b;
            }
            const std::uint64_t hash = lattice(mix(seed, 3), column, y);
            const double common = scanner.noise * bell(hash);
            std::uint8_t* out = picture.pixels.data() + 3 * (static_cast<std::ptrdiff_t>(y) * picture.width + column);
            for (int i = 0; i < 3; ++i) {
                const double own =
                    scanner.grey ? 0.0 : 0.7 * scanner.noise * bell(mix(hash, static_cast<std::uint64_t>(i)));
                const double tone = static_cast<double>(channels[i]) * light * cell * scanner.brightness;
                out[i] = rounded(128.0 + (tone - 128.0) * scanner.contrast + common + own);
            }
        }
    }
}

} // namespace pithward::demo
