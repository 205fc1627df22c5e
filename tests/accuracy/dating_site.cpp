// dating_site FOLDER [--seed N] [--count N]: renders a site whose cores are hard to read and share their growth, with
// its field sheet, and others.csv, the true widths of twelve more trees of it. What the finder overlooks or doubles on
// these cores is real; place_table.py tells whether dating brings it to its place. docs/accuracy.md tells how to run
// it.
#include "demo-scans/maker/folder.h"
#include "demo-scans/maker/graded.h"
#include "demo-scans/maker/growth.h"
#include "demo-scans/maker/random.h"
#include "libcore/formats/field_sheet.h"
#include "libcore/formats/whole_file.h"

#include <CLI/CLI.hpp>

#include <array>
#include <cstdio>

namespace {

using namespace pithward;
using namespace pithward::demo;

constexpr int youngest_year = 2020;
constexpr int clear_trees = 12;
constexpr int clear_rings = 130;

/// The site's growth is the same for all: so much of a core's variance, as on the demo site.
void join_site(Scene& scene, std::uint64_t seed, int tree) {
    scene.growth.site_share = 0.62;
    scene.growth.tree_share = 0.18;
    scene.growth.site_seed = mix(seed, 1);
    scene.growth.tree_seed = mix(seed, 100 + static_cast<std::uint64_t>(tree));
    scene.last_year = Year(youngest_year);
}

/// Which kinds of core, at the two greater strengths of disturbance, in turn.
demo::Order hard_core(std::uint64_t seed, int number) {
    constexpr std::array kinds{Grade::ConiferHard, Grade::ConiferNarrow, Grade::RingPorous, Grade::DiffusePorous};
    const auto kind = kinds[static_cast<std::size_t>(number) % kinds.size()];
    demo::Order order = graded_core(kind, 2 + number / 4 % 2, seed, number);
    Scene& scene = order.scenes.front();
    // The years of its disturbances were drawn for another last year.
    const int moved = youngest_year - scene.last_year.value();
    for (std::vector<int>* years : {&scene.disturbances.absent, &scene.disturbances.wedging, &scene.disturbances.micro,
                                    &scene.disturbances.pale}) {
        for (int& year : *years) {
            year += moved;
        }
    }
    for (auto& ring : scene.disturbances.false_rings) {
        ring.year += moved;
    }
    for (std::vector<demo::Years>* stretches : {&scene.disturbances.narrow, &scene.disturbances.compression}) {
        for (demo::Years& stretch : *stretches) {
            stretch.from += moved;
            stretch.to += moved;
        }
    }
    join_site(scene, seed, number);
    return order;
}

Tree tree_on_sheet(const demo::Order& order) {
    const Scene& scene = order.scenes.front();
    Core core;
    core.id = order.name;
    core.outer = scene.unfinished_mm > 0.0 ? OuterWood::Unfinished : OuterWood::Complete;
    core.date_cored = scene.unfinished_mm > 0.0 ? "2021-07-10" : "2020-11-20";
    core.scan = order.name + suffix(order.format);
    Tree tree;
    tree.id = order.name;
    tree.wood = wood_type(scene.timber);
    tree.living = true;
    tree.cores.push_back(core);
    return tree;
}

void write_clear_trees(std::ostream& out, std::uint64_t seed) {
    std::vector<std::vector<double>> widths;
    out << "year";
    for (int tree = 0; tree < clear_trees; ++tree) {
        Scene scene;
        scene.growth.mean_mm = 0.9;
        join_site(scene, seed, 1000 + tree);
        widths.push_back(
            grow(scene.growth, mix(seed, 5000 + static_cast<std::uint64_t>(tree)), clear_rings, youngest_year));
        out << ",R" << tree + 1;
    }
    for (int k = 0; k < clear_rings; ++k) {
        out << '\n' << youngest_year - clear_rings + 1 + k;
        for (const auto& series : widths) {
            out << ',' << series[static_cast<std::size_t>(k)];
        }
    }
    out << '\n';
}

} // namespace

int main(int argc, char** argv) {
    CLI::App app{"Renders a site of hard cores with common growth."};
    std::string folder;
    std::uint64_t seed = 1;
    int count = 24;
    app.add_option("FOLDER", folder, "For scans, truth, field-sheet.csv and others.csv")->required();
    app.add_option("--seed", seed, "Another seed, another site");
    app.add_option("--count", count, "Cores, each of its own tree")->check(CLI::Range(1, 1000));
    CLI11_PARSE(app, argc, argv);

    Site site;
    site.id = "made";
    site.latitude = 47.5;
    site.longitude = -31.25;
    std::vector<demo::Order> orders;
    for (int i = 0; i < count; ++i) {
        orders.push_back(hard_core(seed, i));
        site.trees.push_back(tree_on_sheet(orders.back()));
    }
    Outcome<void> done = render_folder(folder, orders);
    if (done) {
        done = write_whole_file(std::filesystem::path(folder) / "field-sheet.csv", true,
                                [&](std::ostream& out) { return write_field_sheet(out, {site}); });
    }
    if (done) {
        done = write_whole_file(std::filesystem::path(folder) / "others.csv", true, [&](std::ostream& out) {
            write_clear_trees(out, seed);
            return Outcome<void>();
        });
    }
    if (!done) {
        std::fprintf(stderr, "%s\n", done.error().line().c_str());
        return 2;
    }
    return 0;
}
