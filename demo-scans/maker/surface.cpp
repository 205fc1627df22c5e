#include "demo-scans/maker/noise.h"
#include "demo-scans/maker/sheet.h"

#include <algorithm>
#include <cmath>

namespace pithward::demo {

namespace {

struct Marks {
    const Sheet& sheet;
    Random random;
    std::vector<Stroke> strokes;

    [[nodiscard]] double mm(double value) const { return value * sheet.px_per_mm; }
    [[nodiscard]] ImagePoint on_board(double p, double q) const {
        const double c = sheet.board.cosine;
        const double s = sheet.board.sine;
        return sheet.board.middle + ImagePoint{c * p - s * q, s * p + c * q} * sheet.px_per_mm;
    }
    [[nodiscard]] double half_length() const { return 0.5 * sheet.width / sheet.px_per_mm; }

    /// Scratches that a coarser grit left.
    void scratches(double strength) {
        const double area = 4.0 * half_length() * sheet.board.half_width_mm;
        const int count = static_cast<int>(area * 0.045 * strength);
        for (int i = 0; i < count; ++i) {
            const double angle = radians(sheet.scratch_angle_deg + random.normal(0.0, 5.0));
            const double length = random.uniform(0.8, 6.0);
            const double p = random.uniform(-half_length(), half_length());
            const double q = random.uniform(-sheet.board.half_width_mm, sheet.board.half_width_mm);
            const double bend = random.normal(0.0, 0.02) * length;
            Stroke s;
            for (int j = 0; j <= 4; ++j) {
                const double t = 0.5 * j - 1.0;
                const double along = 0.5 * length * t;
                const double across = bend * (1.0 - t * t);
                const double qq = q + std::sin(angle) * along + std::cos(angle) * across;
                if (std::abs(qq) < sheet.board.half_width_mm) {
                    s.points.push_back(on_board(p + std::cos(angle) * along - std::sin(angle) * across, qq));
                }
            }
            const bool pale = random.chance(0.55);
            s.half_width_px = mm(random.uniform(0.006, 0.016));
            s.factor = true;
            s.colour = pale ? Colour{1.12F, 1.13F, 1.14F} : Colour{0.80F, 0.77F, 0.74F};
            s.opacity = random.uniform(0.15, 0.65) * std::min(1.0, 0.5 + strength);
            s.grain = 0.8;
            if (s.points.size() > 1) {
                strokes.push_back(s);
            }
        }
    }

    void dust(double strength) {
        const double area = sheet.width * static_cast<double>(sheet.height) / (sheet.px_per_mm * sheet.px_per_mm);
        const int specks = static_cast<int>(area * 0.035 * strength);
        for (int i = 0; i < specks; ++i) {
            Stroke s;
            s.points = {{random.uniform(0, sheet.width), random.uniform(0, sheet.height)}};
            if (random.chance(0.4)) {
                s.points.push_back(s.points[0] +
                                   ImagePoint{mm(random.normal(0.0, 0.04)), mm(random.normal(0.0, 0.04))});
            }
            s.half_width_px = mm(0.012 + 0.05 * random.uniform() * random.uniform());
            s.colour = random.chance(0.75) ? Colour{236, 230, 218} : Colour{70, 58, 46};
            s.opacity = random.uniform(0.3, 0.8);
            strokes.push_back(s);
        }
        const int hairs = static_cast<int>(strength * 2.5 * half_length() / 50.0 + random.uniform());
        for (int i = 0; i < hairs; ++i) {
            Stroke s;
            double x = random.uniform(0, sheet.width);
            double y = random.uniform(0, sheet.height);
            double heading = random.uniform(0.0, 6.28);
            const double curl = random.normal(0.0, 0.12);
            for (int j = 0; j < 14; ++j) {
                s.points.push_back({x, y});
                heading += curl + random.normal(0.0, 0.10);
                x += mm(0.13) * std::cos(heading);
                y += mm(0.13) * std::sin(heading);
            }
            s.half_width_px = mm(0.011);
            s.colour = random.chance(0.7) ? Colour{228, 224, 216} : Colour{60, 50, 44};
            s.opacity = random.uniform(0.4, 0.75);
            strokes.push_back(s);
        }
    }

    /// Short strokes of a soft pencil across a core, as people make at every so many rings.
    void pencil_marks(const CoreModel& core, int count) {
        for (int i = 0; i < count; ++i) {
            const double a = random.uniform(2.0, std::max(3.0, core.a_end - 2.0));
            const double b = random.uniform(-0.4, 0.4) * core.scene.core_width_mm;
            const double lean = random.normal(0.0, 0.25);
            const double length = random.chance(0.5) ? random.uniform(0.3, 0.9) : random.uniform(0.0, 0.15);
            const Piece& piece = core.pieces.front();
            Stroke s;
            s.points = {core.to_image(piece, {a, b}), core.to_image(piece, {a + lean * length, b + length})};
            s.half_width_px = mm(random.uniform(0.07, 0.13));
            s.colour = {92, 90, 92};
            s.opacity = random.uniform(0.45, 0.75);
            s.grain = 0.75;
            strokes.push_back(s);
        }
    }

    void label(const std::string& text) {
        if (text.empty()) {
            return;
        }
        const double room =
            sheet.board.half_width_mm - (sheet.board.grooves.back().q + sheet.board.grooves.back().half_mm);
        const double height = std::clamp(0.62 * room, 0.8, 2.6);
        const ImagePoint from =
            on_board(random.uniform(-0.5, 0.1) * half_length(), sheet.board.half_width_mm - 0.5 * room - 0.5 * height);
        for (auto& line :
             lettering(text, from, mm(height), sheet.board.tilt_deg + random.normal(0.0, 1.2), random.next())) {
            Stroke s;
            s.points = std::move(line);
            s.half_width_px = mm(random.uniform(0.07, 0.10));
            s.colour = {78, 77, 80};
            s.opacity = random.uniform(0.6, 0.85);
            s.grain = 0.7;
            strokes.push_back(s);
        }
    }
};

} // namespace

std::vector<Stroke> surface_marks(const Sheet& sheet) {
    Marks marks{sheet, Random(sheet.seed, 95), {}};
    const Disturbances& d = sheet.cores.front().scene.disturbances;
    marks.scratches(d.scratches);
    marks.label(sheet.board.mount.label);
    for (const CoreModel& core : sheet.cores) {
        marks.pencil_marks(core, core.scene.disturbances.pencil_marks);
    }
    marks.dust(d.dust);
    return std::move(marks.strokes);
}

} // namespace pithward::demo
