#include "demo-scans/maker/sheet.h"

#include "demo-scans/maker/noise.h"
#include "demo-scans/maker/scanner.h"
#include "demo-scans/maker/wood_shader.h"

#include <algorithm>
#include <atomic>
#include <cmath>
#include <thread>

namespace pithward::demo {

namespace {

constexpr double ruler_mm = 9.0;
constexpr int block_columns = 384;
constexpr int threads = 2;

/// Fine marks of the last sanding, all one way.
double sanding(const Sheet& sheet, double x_mm, double y_mm) {
    const double angle = radians(sheet.scratch_angle_deg);
    const double along = std::cos(angle) * x_mm + std::sin(angle) * y_mm;
    const double across = std::cos(angle) * y_mm - std::sin(angle) * x_mm;
    const std::uint64_t seed = mix(sheet.seed, 20);
    return noise(seed, along / 3.5, across / 0.03) + 0.5 * noise(seed + 1, along / 1.2, across / 0.07);
}

void paint(const Sheet& sheet, Block& block, std::vector<WoodShader>& shaders) {
    for (int row = 0; row < block.height; ++row) {
        for (int column = 0; column < block.width; ++column) {
            const ImagePoint p{static_cast<double>(block.x + column), static_cast<double>(row)};
            Colour& out = block.at(column, row);
            if (row >= sheet.ruler_top) {
                out = ruler_colour(sheet, p.x, p.y);
                continue;
            }
            double shadow = 1.0;
            Colour wood;
            float cover = 0.0F;
            for (WoodShader& shader : shaders) {
                const Seen seen = shader.at(p);
                if (seen.cover > cover) {
                    cover = seen.cover;
                    wood = seen.colour;
                }
                if (seen.beside_mm > 0.0 && seen.beside_mm < 1.0) {
                    shadow = std::min(shadow, 1.0 - 0.62 * std::exp(-seen.beside_mm / 0.14));
                }
            }
            out = cover >= 1.0F ? wood : blend(scaled(sheet.board.colour(p), shadow), wood, static_cast<double>(cover));
            if (sheet.scratches > 0.0) {
                const Board::Place place = sheet.board.place(p);
                if (std::abs(place.q) < sheet.board.half_width_mm) {
                    out = scaled(out, 1.0 + 0.020 * sheet.scratches * sanding(sheet, place.p, place.q));
                }
            }
        }
    }
    for (std::size_t i = 0; i < sheet.strokes.size(); ++i) {
        draw(block, sheet.strokes[i], mix(sheet.seed, 1000 + i));
    }
}

} // namespace

Sheet lay_out(const std::vector<Scene>& scenes) {
    const Scene& first = scenes.front();
    Sheet sheet;
    sheet.px_per_mm = first.dpi / 25.4;
    sheet.seed = mix(first.seed, 90);
    sheet.scanner = first.scanner;
    double length = 0.0;
    double breadth = 0.0;
    double bow = 0.0;
    for (const Scene& scene : scenes) {
        CoreModel& core = sheet.cores.emplace_back(scene);
        length = std::max(length, core.strip_mm + (scene.lost_outer_mm > 0.0 ? -scene.lost_outer_mm : scene.bark_mm));
        bow = std::max(bow, std::abs(scene.bow_mm));
        breadth += scene.core_width_mm;
    }
    const auto count = static_cast<double>(scenes.size());
    Board& board = sheet.board;
    board.mount = first.mount;
    board.seed = mix(first.seed, 91);
    board.px_per_mm = sheet.px_per_mm;
    board.tilt_deg = first.tilt_deg;
    board.cosine = std::cos(radians(first.tilt_deg));
    board.sine = std::sin(radians(first.tilt_deg));
    board.glue = first.disturbances.glue;
    board.half_width_mm = 0.5 * std::max(first.mount.width_mm, breadth + 2.4 * (count + 1.0)) + 0.5 * bow;
    board.half_length_mm = 0.5 * length + 60.0; // longer than the picture
    const double tilt = radians(std::abs(first.tilt_deg));
    const double board_mm = 2.0 * board.half_width_mm / std::cos(tilt) + length * std::sin(tilt);
    sheet.width = static_cast<int>(std::ceil((length * std::cos(tilt) + 2.0 * first.margin_mm) * sheet.px_per_mm));
    const int board_rows = static_cast<int>(std::ceil((board_mm + first.margin_mm) * sheet.px_per_mm));
    sheet.height = board_rows + (first.mount.ruler ? static_cast<int>(ruler_mm * sheet.px_per_mm) : 0);
    sheet.ruler_top = board_rows;
    board.middle = {0.5 * (sheet.width - 1) + 0.31, 0.5 * (board_rows - 1) + 0.17};
    for (std::size_t i = 0; i < sheet.cores.size(); ++i) {
        CoreModel& core = sheet.cores[i];
        core.scene.tilt_deg = first.tilt_deg;
        const double q = 2.0 * board.half_width_mm * ((static_cast<double>(i) + 0.5) / count - 0.5);
        Random random(core.scene.seed, 92);
        const double slack = random.uniform(0.02, 0.16);
        const double off = q + random.uniform(-0.5, 0.5) * slack;
        core.place(board.middle + ImagePoint{-board.sine * off, board.cosine * off} * sheet.px_per_mm);
        board.grooves.push_back({q, 0.5 * core.scene.core_width_mm + slack + 0.06 + std::abs(core.scene.bow_mm)});
    }
    sheet.scratches = first.disturbances.scratches * (first.texture > 0.0 ? 1.0 : 0.0);
    Random random(sheet.seed, 93);
    sheet.scratch_angle_deg = random.chance(0.5) ? random.normal(0.0, 9.0) : random.uniform(40.0, 140.0);
    sheet.strokes = surface_marks(sheet);
    if (first.mount.ruler) {
        const std::vector<Stroke> numbers = ruler_numbers(sheet);
        sheet.strokes.insert(sheet.strokes.end(), numbers.begin(), numbers.end());
    }
    return sheet;
}

Picture scan(const Sheet& sheet) {
    Picture picture;
    picture.width = sheet.width;
    picture.height = sheet.height;
    picture.dpi = sheet.px_per_mm * 25.4;
    picture.pixels.resize(3 * static_cast<std::size_t>(sheet.width) * static_cast<std::size_t>(sheet.height));
    std::atomic<int> next{0};
    const auto work = [&] {
        std::vector<WoodShader> shaders;
        for (const CoreModel& core : sheet.cores) {
            shaders.emplace_back(core);
        }
        for (int from = next.fetch_add(block_columns); from < sheet.width; from = next.fetch_add(block_columns)) {
            Block block{.x = from - blur_margin,
                        .width = std::min(block_columns, sheet.width - from) + 2 * blur_margin,
                        .height = sheet.height,
                        .pixels = {}};
            block.pixels.resize(static_cast<std::size_t>(block.width) * static_cast<std::size_t>(block.height));
            paint(sheet, block, shaders);
            scan_block(block, sheet.scanner, mix(sheet.seed, 94), picture);
        }
    };
    std::vector<std::jthread> pool;
    for (int i = 1; i < threads; ++i) {
        pool.emplace_back(work);
    }
    work();
    pool.clear();
    return picture;
}

} // namespace pithward::demo
