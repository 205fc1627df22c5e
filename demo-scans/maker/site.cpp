#include "demo-scans/maker/site.h"

#include "demo-scans/maker/growth.h"
#include "demo-scans/maker/random.h"

#include <cmath>
#include <cstdio>
#include <numeric>

namespace pithward::demo {

namespace {

constexpr std::uint64_t site_seed = 20'240;
constexpr int last_year = 2023;

struct TreeRow {
    int number;
    Timber timber;
    const char* species;
    double mean_mm;
    double juvenile;
    double trend_years;
    double lean_azimuth_deg;
    double lean_deg;
    int age;   ///< Rings from pith to bark.
    bool june; ///< Cored on the second trip, in June 2024, with the ring of 2024 begun; else in October 2023.
};

struct CoreRow {
    int tree;
    char letter;
    bool bark_left;
    int rings_to_pith;
    double pith_offset_mm;
    double tilt_deg;
    double bow_mm;
    double azimuth_deg;
    const char* notes;
};

constexpr TreeRow trees[] = {
    {1, Timber::Pine, "Pinus sp.", 0.78, 1.2, 28, 0, 0, 112, false},
    {2, Timber::Pine, "Pinus sp.", 0.92, 1.0, 26, 0, 0, 97, false},
    {3, Timber::Pine, "Pinus sp.", 0.52, 1.7, 34, 0, 0, 149, false},
    {4, Timber::Pine, "Pinus sp.", 0.66, 1.3, 30, 110, 8, 125, true},
    {5, Timber::Pine, "Pinus sp.", 1.02, 0.9, 24, 0, 0, 84, true},
    {6, Timber::Pine, "Pinus sp.", 0.50, 1.5, 36, 0, 0, 160, true},
    {7, Timber::Oak, "Quercus sp.", 0.98, 0.5, 30, 0, 0, 92, false},
    {8, Timber::Oak, "Quercus sp.", 1.12, 0.5, 28, 0, 0, 81, false},
    {9, Timber::Maple, "Acer sp.", 1.08, 0.5, 26, 0, 0, 79, false},
    {10, Timber::Maple, "Acer sp.", 1.00, 0.6, 28, 0, 0, 86, false},
};

constexpr CoreRow cores[] = {
    {1, 'A', true, 4, 0.8, 0.3, 0.0, 20, ""},
    {1, 'B', false, 7, -2.6, -0.6, 0.2, 115, ""},
    {2, 'A', true, 5, 1.5, 0.2, 0.0, 45, ""},
    {2, 'B', true, 6, -1.1, -0.4, 0.0, 140, "broke in the borer; both halves kept and fit together"},
    {3, 'A', false, 5, 2.2, 0.5, -0.3, 80, ""},
    {3, 'B', true, 8, 3.4, 0.0, 0.0, 175, "bark and outer wood crumbled off"},
    {4, 'A', true, 6, -1.8, -0.8, 0.3, 110, "on the side that the stem leans to"},
    {4, 'B', false, 4, 0.6, 0.4, 0.0, 200, ""},
    {5, 'A', true, 0, 0.2, 0.1, 0.0, 60, "pith on the core"},
    {5, 'B', true, 7, 5.6, 0.9, 0.0, 150, ""},
    {6, 'A', false, 6, -2.0, -0.3, 0.4, 30, "blue stain in the sapwood; split while drying"},
    {6, 'B', true, 14, 8.0, 0.6, 0.0, 125, "pith missed"},
    {7, 'A', true, 5, 1.6, 0.3, 0.0, 70, "surface rubbed with chalk"},
    {8, 'A', false, 4, -0.9, -0.5, 0.0, 95, ""},
    {9, 'A', true, 5, 2.1, 0.4, 0.0, 10, ""},
    {10, 'A', true, 6, -1.4, -0.2, 0.0, 55, ""},
};

std::string id_of(const TreeRow& tree) {
    char text[16];
    std::snprintf(text, sizeof text, "HW%02d", tree.number);
    return text;
}

std::string id_of(const CoreRow& core) {
    return id_of(trees[core.tree - 1]) + core.letter;
}

std::uint64_t signal_seed(Timber timber) {
    return mix(site_seed, static_cast<std::uint64_t>(wood_type(timber)));
}

/// The year in which the site's signal is lowest.
int poorest_year(Timber timber, int from, int to, double persistence) {
    int poorest = from;
    for (int year = from; year <= to; ++year) {
        if (year_signal(signal_seed(timber), year, persistence) <
            year_signal(signal_seed(timber), poorest, persistence)) {
            poorest = year;
        }
    }
    return poorest;
}

void add_disturbances(Scene& scene, const std::string& id) {
    Disturbances& d = scene.disturbances;
    const double persistence = scene.growth.persistence;
    if (id == "HW02A") {
        d.false_rings = {{1959, 0.62, 0.62}, {1983, 0.55, 0.5}, {2006, 0.68, 0.7}};
    } else if (id == "HW02B") {
        d.cracks = {{1978, 0.9, 0.08, 0.3}};
    } else if (id == "HW03A") {
        d.absent = {poorest_year(scene.timber, 1920, 2000, persistence)};
        d.narrow = {{2004, 2011, 0.55}};
    } else if (id == "HW03B") {
        scene.lost_outer_mm = 2.4;
    } else if (id == "HW04A") {
        d.compression = {{1961, 1968, 0.85}};
        d.resin = 0.45;
    } else if (id == "HW04B") {
        d.pencil_marks = 9;
    } else if (id == "HW05B") {
        d.chunks = {{41.0, 2.4, 0.3, 1.0}};
        d.false_rings = {{1994, 0.6, 0.55}};
    } else if (id == "HW06A") {
        d.blue_stain = 0.6;
        d.radial_cracks = {{9.0, 27.0, 0.9, 0.11}};
    } else if (id == "HW06B") {
        d.wedging = {poorest_year(scene.timber, 1935, 1995, persistence)};
        d.pale = {1948};
    } else if (id == "HW07A") {
        d.chalk = 0.8;
    }
}

Order order_of(const CoreRow& row) {
    const TreeRow& tree = trees[row.tree - 1];
    const auto number = static_cast<std::uint64_t>(tree.number);
    Random random(mix(site_seed, number), static_cast<std::uint64_t>(row.letter));
    Scene scene;
    scene.name = id_of(row);
    scene.seed = random.next();
    scene.timber = tree.timber;
    scene.growth = {.rings = tree.age - row.rings_to_pith,
                    .mean_mm = tree.mean_mm * (row.letter == 'A' ? 1.0 : random.uniform(0.92, 1.06)),
                    .juvenile = tree.juvenile,
                    .trend_years = tree.trend_years,
                    .sensitivity = wood_type(tree.timber) == WoodType::Conifer ? 0.30 : 0.24,
                    .site_share = 0.62,
                    .tree_share = 0.18,
                    .site_seed = signal_seed(tree.timber),
                    .tree_seed = mix(site_seed, 500 + number)};
    scene.last_year = Year(last_year);
    scene.unfinished_mm = tree.june ? random.uniform(0.16, 0.34) : 0.0;
    scene.rings_to_pith = row.rings_to_pith;
    scene.pith_offset_mm = row.pith_offset_mm;
    scene.bark_left = row.bark_left;
    scene.tilt_deg = row.tilt_deg;
    scene.bow_mm = row.bow_mm;
    scene.shape.widest_deg = random.uniform(0.0, 360.0);
    scene.core_width_mm = random.uniform(4.7, 5.0);
    scene.bark_mm = random.uniform(1.2, 2.2);
    scene.margin_mm = 1.6;
    scene.sapwood_rings = wood_type(tree.timber) == WoodType::Conifer ? random.whole(32, 48) : random.whole(14, 22);
    scene.mount = {
        .kind = Mount::Kind::LightStick, .width_mm = 9.2, .dark_lid = true, .ruler = false, .label = id_of(row)};
    scene.scanner.uneven_light = random.uniform(0.01, 0.04);
    scene.scanner.channel_shift_px = random.normal(0.0, 0.05);
    scene.disturbances.scratches = random.uniform(0.2, 0.5);
    scene.disturbances.dust = random.uniform(0.1, 0.4);
    add_disturbances(scene, scene.name);
    return {scene.name, word(wood_type(tree.timber)) + "-site", {scene}, Format::Jpeg};
}

/// Of the tree's first core, a little more for the shrinkage in drying.
double radius_mm(const TreeRow& tree) {
    for (const CoreRow& row : cores) {
        if (row.tree == tree.number) {
            const Scene scene = order_of(row).scenes.front();
            const std::vector<double> widths = grow(scene.growth, scene.seed, tree.age, last_year);
            return 1.04 * std::accumulate(widths.begin(), widths.end(), 0.0);
        }
    }
    return 0.0;
}

OuterWood outer_wood(const Scene& scene) {
    if (scene.lost_outer_mm > 0.0) {
        return OuterWood::Lost;
    }
    return scene.unfinished_mm > 0.0 ? OuterWood::Unfinished : OuterWood::Complete;
}

Core core_on_sheet(const CoreRow& row) {
    const TreeRow& tree = trees[row.tree - 1];
    const Scene scene = order_of(row).scenes.front();
    Core core;
    core.id = id_of(row);
    core.date_cored = tree.june ? "2024-06-12" : "2023-10-04";
    core.outer = outer_wood(scene);
    core.pith = row.rings_to_pith == 0               ? FieldPith::Reached
                : std::abs(row.pith_offset_mm) < 4.0 ? FieldPith::Near
                                                     : FieldPith::Missed;
    core.core_height_cm = 110 + 5 * (tree.number % 4);
    core.azimuth_deg = row.azimuth_deg;
    core.borer_mm = 5.15;
    core.pieces = static_cast<int>(scene.disturbances.cracks.size()) + 1;
    core.scan = core.id + suffix(Format::Jpeg);
    core.collector = "demo";
    core.notes = row.notes;
    return core;
}

Tree tree_on_sheet(const TreeRow& row) {
    Tree tree;
    tree.id = id_of(row);
    tree.species = row.species;
    tree.wood = wood_type(row.timber);
    tree.living = true;
    tree.bark_mm = 6 + row.number / 2;
    tree.dbh_cm = std::round(2.0 * (radius_mm(row) + *tree.bark_mm) / 5.0) / 2.0; // to half a centimetre
    tree.slope_aspect_deg = 240;
    constexpr int not_noted = 6; // nobody looked whether this one leans
    if (row.lean_deg > 0.0) {
        tree.lean_azimuth_deg = row.lean_azimuth_deg;
    }
    if (row.number != not_noted) {
        tree.lean_deg = row.lean_deg;
    }
    for (const CoreRow& core : cores) {
        if (core.tree == row.number) {
            tree.cores.push_back(core_on_sheet(core));
        }
    }
    return tree;
}

} // namespace

std::vector<Order> demo_site() {
    std::vector<Order> orders;
    for (const CoreRow& row : cores) {
        orders.push_back(order_of(row));
    }
    return orders;
}

Site demo_field_sheet() {
    Site site;
    site.id = "HW";
    site.latitude = 47.5; // in the open sea, where no such wood can be
    site.longitude = -31.25;
    site.elevation_m = 640;
    for (const TreeRow& row : trees) {
        site.trees.push_back(tree_on_sheet(row));
    }
    return site;
}

} // namespace pithward::demo
