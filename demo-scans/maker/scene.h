#pragma once

#include "demo-scans/maker/truth.h"
#include "libcore/specimen/outcome.h"
#include "libcore/specimen/units.h"
#include "libcore/specimen/wood.h"

#include <cstdint>
#include <string>
#include <vector>

namespace pithward::demo {

/// Widths that the renderer makes up: an age trend times a lognormal-like year-to-year signal, part of it shared by the
/// site, part by the tree, the rest the core's own.
struct Growth {
    int rings = 100;           ///< Rings with a width on the core.
    double mean_mm = 1.1;      ///< Mean width of old wood.
    double juvenile = 1.0;     ///< How much wider the first rings are: 1 means twice as wide.
    double trend_years = 30.0; ///< Years in which that falls to 1/e.
    double sensitivity = 0.30; ///< Standard deviation of the logarithm of the widths about the trend.
    double persistence = 0.35; ///< First-order autocorrelation of the site's signal.
    double site_share = 0.55;  ///< Shares of the variance; what is left is the core's own.
    double tree_share = 0.25;
    std::uint64_t site_seed = 0; ///< 0: taken from the scene's seed.
    std::uint64_t tree_seed = 0;
};

/// How the rings lie round the pith.
struct RingShape {
    double eccentricity = 0.06; ///< Relative: 0.1 makes the widest side 10 % wider than the mean.
    double widest_deg = 60.0;   ///< Direction of the widest side, from the core's outer end.
    double ellipticity = 0.03;
    double waviness = 1.0; ///< 0: smooth curves.
};

/// The look of a kind of wood. Colours and anatomy are in timber.cpp.
enum class Timber { Pine, Spruce, Larch, Oak, Ash, Maple, Beech };

[[nodiscard]] WoodType wood_type(Timber timber);
[[nodiscard]] std::string word(Timber timber);

struct Mount {
    enum class Kind { LightStick, DarkStick, Card };
    Kind kind = Kind::LightStick;
    double width_mm = 10.0;
    bool dark_lid = false;
    bool ruler = false; ///< A steel rule beside the mount.
    std::string label;  ///< Written in pencil on the mount: capitals, digits, space and hyphen.
};

/// The scanner. All zero is an ideal one.
struct Scanner {
    double blur_px = 0.6;       ///< Standard deviation of the point-spread function.
    double noise = 1.0;         ///< 1: about 1.3 grey levels.
    double uneven_light = 0.02; ///< Relative fall of the light toward the edges.
    double contrast = 1.0;
    double brightness = 1.0;
    double channel_shift_px = 0.0; ///< Red this far toward -x, blue toward +x.
    bool grey = false;
};

struct FalseRing {
    int year = 0;
    double phase = 0.6;    ///< Share of the ring's width inside the band's middle.
    double strength = 0.6; ///< 1: as dark as latewood.
    double breadth = 1.0;  ///< 1: some 0.13 mm between its half-dark sides in a ring of 1 mm.
    double evenness = 0.0; ///< 0: a little steeper outside; 1: the same on both sides.
};

/// Rings from one year to another, both included.
struct Years {
    int from = 0;
    int to = 0;
    double strength = 1.0;
};

/// A crack across the core, in the middle of a year's ring. No wood is lost.
struct TransverseCrack {
    int year = 0;
    double gap_mm = 0.4;
    double lateral_mm = 0.0;
    double tilt_deg = 0.0;
};

/// Wood between the middles of two rings that is gone; the pieces lie `gap_mm` apart.
struct LostWood {
    Years years;
    double gap_mm = 1.0;
};

struct RadialCrack {
    double from_mm = 0.0; ///< From the outer end of the wood.
    double to_mm = 0.0;
    double across_mm = 0.5; ///< Side of the centre line.
    double width_mm = 0.1;
};

/// A bite out of the side of the core.
struct MissingChunk {
    double at_mm = 0.0; ///< From the outer end of the wood.
    double length_mm = 2.0;
    double depth = 0.4; ///< Share of the core's breadth; over 0.5 it takes the centre line.
    double side = 1.0;  ///< 1: +y of an untilted core, -1: the other.
};

/// What went wrong with the wood or the surface. Empty lists and zeros: nothing did.
struct Disturbances {
    std::vector<int> absent;  ///< Years without wood on the path.
    std::vector<int> wedging; ///< Rings that run out beside the path.
    std::vector<int> micro;   ///< Rings of two or three rows of cells.
    std::vector<int> pale;    ///< Rings with hardly any latewood.
    std::vector<FalseRing> false_rings;
    std::vector<Years> narrow;      ///< Suppressed growth; strength is the factor on the width.
    std::vector<Years> compression; ///< Reaction wood.
    std::vector<TransverseCrack> cracks;
    std::vector<LostWood> lost;
    std::vector<RadialCrack> radial_cracks;
    std::vector<MissingChunk> chunks;
    double blue_stain = 0.0;
    double resin = 0.0;
    double scratches = 0.3;
    double poor_sanding = 0.0; ///< Torn and unclear patches.
    double dust = 0.3;
    double glue = 0.3;
    int pencil_marks = 0;
    double chalk = 0.0; ///< Share of vessels filled white.
};

/// All that a rendering depends on. The defaults are a clear conifer core.
struct Scene {
    std::string name = "core";
    std::uint64_t seed = 1;
    Timber timber = Timber::Pine;

    std::vector<double>
        widths_mm; ///< From bark to pith, square to the rings; 0: locally absent. Empty: as `growth` says.
    Growth growth;
    Year last_year{2023};       ///< Year of the outermost complete ring.
    double unfinished_mm = 0.0; ///< Breadth of a ring not yet complete under the bark.
    double lost_outer_mm = 0.0; ///< Wood broken off the outer end, bark and all.
    int rings_to_pith =
        4; ///< Rings inside those with a width; more are added where the pith lies far off. 0: the pith is on the core.
    double pith_offset_mm = 0.5; ///< Sideways from the core's centre line, toward +y of an untilted core.
    double past_pith_mm =
        1.3; ///< With the pith on the core: wood beyond it. The far side's bark ends it at the latest.
    int sapwood_rings = 25;
    RingShape shape;

    double dpi = 1200.0;
    double core_width_mm = 4.9;
    double bark_mm = 1.8;
    bool bark_left = true;
    double tilt_deg = 0.0;
    double bow_mm = 0.0; ///< Rise of the core's middle over its chord.
    double margin_mm = 3.0;
    double texture = 1.0;     ///< Strength of all that is finer than a ring.
    double hue_noise = 0.0;   ///< Strength of fine texture that differs between the channels.
    double vessel_tint = 0.0; ///< Small vessels from brown (0) to the hue of the densest tissue (1).

    Mount mount;
    Scanner scanner;
    Disturbances disturbances;

    /// Whether the core goes past the pith by some rings: less is its inner end, and no side of its own.
    [[nodiscard]] bool has_far_side() const { return rings_to_pith <= 0 && past_pith_mm > 2.0; }
};

/// An image in memory: 8 bit, red, green, blue, row by row from the top.
struct Picture {
    std::vector<std::uint8_t> pixels;
    int width = 0;
    int height = 0;
    double dpi = 0.0;
};

struct Rendering {
    Picture picture;
    Truth truth;
};

/// Several cores on one scan: the picture, and the truth of each in the order of the scenes. A core that goes past the
/// pith by some rings has two, one for each side of the pith; the second is named like the first with "-far" added.
struct TrayRendering {
    Picture picture;
    std::vector<Truth> truths;
};

/// Renders one core. The same scene gives the same pixels each time. Fails with a plain message on a scene that makes
/// no sense, e.g. no rings, a resolution outside 100 to 10,000 dpi, or a picture of over 2^31 bytes.
[[nodiscard]] Outcome<Rendering> render(const Scene& scene);

/// Renders several cores beside each other on one board, from the top down. Resolution, scanner, mount and seed of the
/// picture are those of the first scene.
[[nodiscard]] Outcome<TrayRendering> render_tray(const std::vector<Scene>& scenes);

/// Switches off all that hides the rings' geometry: texture, noise, dust, scratches and uneven light.
[[nodiscard]] Scene noise_free(Scene scene);

} // namespace pithward::demo
