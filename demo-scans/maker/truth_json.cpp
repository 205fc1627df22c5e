#include "demo-scans/maker/truth_of.h"

#include <nlohmann/json.hpp>

#include <cmath>

namespace pithward::demo {

namespace {

using nlohmann::json;

double rounded(double value, double steps) {
    return std::round(value * steps) / steps;
}

json point(ImagePoint p) {
    return json::array({rounded(p.x, 1e3), rounded(p.y, 1e3)});
}

/// Position of a year's ring on the path, if it is there.
const TrueBoundary* boundary_of(const Truth& truth, int year) {
    for (const TrueBoundary& b : truth.boundaries) {
        if (b.year.value() == year) {
            return &b;
        }
    }
    return nullptr;
}

} // namespace

void note_disturbances(const CoreModel& core, Truth& truth) {
    const Disturbances& d = core.scene.disturbances;
    const Piece& piece = core.pieces.front();
    const auto note = [&](const char* type, double strength, std::vector<std::pair<std::string, double>> numbers) {
        truth.disturbances.push_back({type, strength, std::move(numbers)});
    };
    const auto note_years = [&](const char* type, const std::vector<int>& years) {
        for (const int year : years) {
            if (const TrueBoundary* b = boundary_of(truth, year)) {
                note(type, 1.0, {{"year", year}, {"x", b->at.x}, {"y", b->at.y}});
            }
        }
    };
    note_years("absent_ring", d.absent);
    note_years("wedging_ring", d.wedging);
    note_years("micro_ring", d.micro);
    note_years("pale_ring", d.pale);
    const auto note_stretches = [&](const char* type, const std::vector<Years>& stretches) {
        for (const Years& s : stretches) {
            note(type, s.strength, {{"from_year", s.from}, {"to_year", s.to}});
        }
    };
    note_stretches("narrow_rings", d.narrow);
    note_stretches("compression_wood", d.compression);
    for (const RadialCrack& crack : d.radial_cracks) {
        const ImagePoint from = core.to_image(piece, {crack.from_mm, crack.across_mm});
        const ImagePoint to = core.to_image(piece, {crack.to_mm, crack.across_mm});
        note("radial_crack", crack.width_mm,
             {{"width_mm", crack.width_mm}, {"x0", from.x}, {"y0", from.y}, {"x1", to.x}, {"y1", to.y}});
    }
    for (const MissingChunk& chunk : d.chunks) {
        const ImagePoint at = core.to_image(piece, {chunk.at_mm, 0.5 * chunk.side * core.scene.core_width_mm});
        note("missing_chunk", chunk.depth,
             {{"x", at.x},
              {"y", at.y},
              {"length_mm", chunk.length_mm},
              {"depth_mm", chunk.depth * core.scene.core_width_mm}});
    }
    const auto note_strength = [&](const char* type, double strength) {
        if (strength > 0.0) {
            note(type, strength, {});
        }
    };
    note_strength("blue_stain", d.blue_stain);
    note_strength("resin", d.resin);
    note_strength("sanding_scratches", d.scratches);
    note_strength("poor_sanding", d.poor_sanding);
    note_strength("dust", d.dust);
    note_strength("pencil_marks", d.pencil_marks);
    note_strength("chalk", d.chalk);
    note_strength("uneven_light", core.scene.scanner.uneven_light);
    note_strength("lost_outer_wood", core.scene.lost_outer_mm);
}

json truth_json(const Truth& truth) {
    json boundaries = json::array();
    for (const TrueBoundary& b : truth.boundaries) {
        json one{{"x", rounded(b.at.x, 1e3)},
                 {"y", rounded(b.at.y, 1e3)},
                 {"year", b.year.value()},
                 {"angle_deg", rounded(b.angle_deg, 1e2)},
                 {"visible", b.visible}};
        if (!b.visible) {
            one["why_invisible"] = b.why_invisible;
        }
        if (b.at_bark) {
            one["at_bark"] = true;
        }
        boundaries.push_back(one);
    }
    json widths = json::array();
    for (const TrueWidth& w : truth.widths) {
        const auto number = [](const std::optional<double>& mm) { return mm ? json(rounded(*mm, 1e5)) : json(); };
        widths.push_back(
            {{"year", w.year.value()}, {"radial_mm", number(w.radial_mm)}, {"along_path_mm", number(w.along_path_mm)}});
    }
    json bands = json::array();
    for (const TrueFalseRing& f : truth.false_rings) {
        bands.push_back({{"x", rounded(f.at.x, 1e3)},
                         {"y", rounded(f.at.y, 1e3)},
                         {"year", f.year.value()},
                         {"phase", f.phase},
                         {"strength", f.strength}});
    }
    json disturbances = json::array();
    for (const TrueDisturbance& d : truth.disturbances) {
        json one{{"type", d.type}, {"strength", d.strength}};
        for (const auto& [name, value] : d.numbers) {
            one[name] = rounded(value, 1e3);
        }
        disturbances.push_back(one);
    }
    json path = json::array();
    for (const ImagePoint& p : truth.path) {
        path.push_back(point(p));
    }
    const json bark_edge = truth.bark_edge
                               ? json{{"x", rounded(truth.bark_edge->x, 1e3)}, {"y", rounded(truth.bark_edge->y, 1e3)}}
                               : json();
    return {{"name", truth.name},
            {"wood", truth.timber},
            {"wood_type", word(truth.wood)},
            {"dpi", truth.dpi},
            {"width_px", truth.width_px},
            {"height_px", truth.height_px},
            {"path", path},
            {"direction", truth.bark_left ? "bark_left" : "bark_right"},
            {"last_complete_ring_year", truth.last_complete_ring_year.value()},
            {"boundaries", boundaries},
            {"bark_edge", bark_edge},
            {"widths", widths},
            {"false_rings", bands},
            {"pith",
             {{"x", rounded(truth.pith.at.x, 1e2)},
              {"y", rounded(truth.pith.at.y, 1e2)},
              {"inside", truth.pith.inside},
              {"distance_mm", rounded(truth.pith.distance_mm, 1e4)},
              {"missing_rings", truth.pith.missing_rings}}},
            {"disturbances", disturbances}};
}

} // namespace pithward::demo
