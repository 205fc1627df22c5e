#include "demo-scans/maker/scene.h"

#include "demo-scans/maker/sheet.h"
#include "demo-scans/maker/truth_of.h"

#include <algorithm>
#include <cmath>

namespace pithward::demo {

namespace {

constexpr double most_bytes = 2147483647.0;

std::optional<Fault> fault_in(const Scene& s) {
    const auto wrong = [&](std::string what, std::string remedy) {
        return std::optional<Fault>(Fault{s.name, std::move(what), std::move(remedy)});
    };
    if (!(s.dpi >= 100.0 && s.dpi <= 10'000.0)) {
        return wrong("the resolution is not between 100 and 10,000 dpi", "choose one that is");
    }
    if (s.widths_mm.empty() && (s.growth.rings < 3 || s.growth.rings > 5000)) {
        return wrong("the number of rings is not between 3 and 5000", "choose one that is");
    }
    const auto sound = [](double w) { return w >= 0.0 && w < 100.0; };
    if (!s.widths_mm.empty() && (s.widths_mm.size() < 3 || s.widths_mm.size() > 5000 ||
                                 !std::all_of(s.widths_mm.begin(), s.widths_mm.end(), sound) ||
                                 !(*std::max_element(s.widths_mm.begin(), s.widths_mm.end()) > 0.0))) {
        return wrong("the widths are not 3 to 5000 numbers from 0 to 100 mm",
                     "give one a ring, bark first, 0 for an absent ring");
    }
    if (!(s.core_width_mm > 0.5 && s.core_width_mm < 50.0)) {
        return wrong("the core's breadth is not between 0.5 and 50 mm", "choose one that is");
    }
    if (s.rings_to_pith <= 0 && std::abs(s.pith_offset_mm) > 0.45 * s.core_width_mm) {
        return wrong("with no rings to the pith the pith must lie on the core",
                     "make the offset smaller or ask for rings to the pith");
    }
    if (!(s.past_pith_mm >= 0.0 && s.past_pith_mm <= 1000.0)) {
        return wrong("the wood past the pith is not between 0 and 1000 mm", "choose a length that is");
    }
    return std::nullopt;
}

} // namespace

Outcome<TrayRendering> render_tray(const std::vector<Scene>& scenes) {
    if (scenes.empty()) {
        return fail("tray", "there is no core on it", "give at least one scene");
    }
    for (const Scene& scene : scenes) {
        if (auto fault = fault_in(scene)) {
            return tl::unexpected<Fault>(*fault);
        }
        if (scene.dpi != scenes.front().dpi) {
            return fail(scene.name, "its resolution is not that of the tray", "give all cores of a tray the same");
        }
    }
    const Sheet sheet = lay_out(scenes);
    if (3.0 * sheet.width * sheet.height > most_bytes) {
        return fail(scenes.front().name, "the picture would be larger than 2 GB",
                    "lower the resolution or the number of rings");
    }
    TrayRendering rendering{.picture = scan(sheet), .truths = {}};
    for (const CoreModel& core : sheet.cores) {
        rendering.truths.push_back(truth_of(core, sheet.width, sheet.height));
        if (core.scene.has_far_side()) {
            rendering.truths.push_back(far_truth_of(core, sheet.width, sheet.height));
        }
        if (sheet.board.mount.ruler) {
            rendering.truths.back().disturbances.push_back({"ruler",
                                                            1.0,
                                                            {{"y0", sheet.ruler_top},
                                                             {"y1", sheet.height},
                                                             {"px_per_mm", sheet.px_per_mm},
                                                             {"tick0_x", ruler_zero(sheet)}}});
        }
    }
    return rendering;
}

Outcome<Rendering> render(const Scene& scene) {
    return render_tray({scene}).map([](TrayRendering&& tray) {
        return Rendering{std::move(tray.picture), std::move(tray.truths.front())};
    });
}

Scene noise_free(Scene scene) {
    scene.texture = 0.0;
    scene.scanner.noise = 0.0;
    scene.scanner.uneven_light = 0.0;
    scene.scanner.channel_shift_px = 0.0;
    scene.disturbances.dust = 0.0;
    scene.disturbances.scratches = 0.0;
    scene.disturbances.pencil_marks = 0;
    scene.disturbances.blue_stain = 0.0;
    scene.disturbances.resin = 0.0;
    scene.disturbances.poor_sanding = 0.0;
    return scene;
}

} // namespace pithward::demo
