#include "demo-scans/maker/folder.h"
#include "demo-scans/maker/graded.h"
#include "demo-scans/maker/pith_cores.h"
#include "demo-scans/maker/site.h"
#include "libcore/formats/field_sheet.h"
#include "libcore/formats/whole_file.h"

#include <CLI/CLI.hpp>
#include <nlohmann/json.hpp>

#include <cstdio>
#include <fstream>

namespace {

using namespace pithward;
using namespace pithward::demo;

/// A scene from {"widths_mm": [bark to pith], "last_year": Y, "dpi": N, "name": "..."}; all but the widths may be left
/// out.
Outcome<Order> order_from(const std::string& file) {
    std::ifstream in(file);
    const nlohmann::json json = nlohmann::json::parse(in, nullptr, false);
    const auto wrong = [&](const char* what) {
        return fail(file, what,
                    "give {\"widths_mm\": [widths in mm, bark to pith], \"last_year\": 2020, \"dpi\": 1200}");
    };
    if (!json.is_object() || !json.contains("widths_mm") || !json["widths_mm"].is_array()) {
        return wrong("no JSON object with a list widths_mm");
    }
    Scene scene;
    scene.name = std::filesystem::path(file).stem().string();
    for (const auto& width : json["widths_mm"]) {
        if (!width.is_number()) {
            return wrong("a width is not a number");
        }
        scene.widths_mm.push_back(width.get<double>());
    }
    const auto number = [&](const char* key, double otherwise) {
        return json.contains(key) && json[key].is_number() ? json[key].get<double>() : otherwise;
    };
    scene.last_year = Year(static_cast<int>(number("last_year", 2020)));
    scene.dpi = number("dpi", 1200);
    scene.seed = static_cast<std::uint64_t>(number("seed", 1));
    return Order{scene.name, "series", {scene}, Format::Png};
}

int finish(const Outcome<void>& done) {
    if (!done) {
        std::fprintf(stderr, "%s\n", done.error().line().c_str());
        return 2;
    }
    return 0;
}

} // namespace

int main(int argc, char** argv) {
    CLI::App app{"Renders scans of increment cores whose rings are known exactly."};
    app.require_subcommand(1);
    std::string out;
    std::string in;
    std::string wood;
    std::string only;
    int count = 8;
    bool noise_free_scans = false;
    std::uint64_t seed = 1;
    CLI::App* site = app.add_subcommand("site", "The demo site with its field sheet");
    CLI::App* clear = app.add_subcommand("clear", "Clear conifer cores");
    CLI::App* varied = app.add_subcommand("varied", "Cores in all sorts of conditions, easy to hard");
    CLI::App* graded = app.add_subcommand("graded", "Cores of every kind at three strengths of disturbance");
    CLI::App* past = app.add_subcommand("past", "Cores that go past the pith");
    CLI::App* pith = app.add_subcommand("pith", "Inner ends of cores that miss the pith by up to 20 mm");
    CLI::App* series = app.add_subcommand("series", "One core with given ring widths");
    for (CLI::App* command : {clear, varied, graded, past, pith}) {
        command->add_option("OUTDIR", out, "Folder for scans, truth and cases.json")->required();
        command->add_option("--count", count, "How many; graded: of each kind and strength")
            ->check(CLI::Range(1, 10'000));
        command->add_option("--seed", seed, "Another seed, other cores");
        command->add_flag("--noise-free", noise_free_scans, "Rings alone: no texture, noise, scratches or stains");
    }
    graded->add_option("--only", only,
                       "One kind: conifer-clear, conifer-hard, conifer-narrow, ring-porous, "
                       "diffuse-porous or broken");
    for (CLI::App* command : {varied, past}) {
        command->add_option("--wood", wood, "conifer, ring-porous or diffuse-porous; default: in turn")
            ->check(CLI::IsMember({"conifer", "ring-porous", "diffuse-porous"}));
    }
    site->add_option("OUTDIR", out, "Folder for scans, truth, cases.json and field-sheet.csv")->required();
    series->add_option("FILE", in, "JSON with widths_mm from bark to pith, last_year, dpi")->required();
    series->add_option("OUTDIR", out, "Folder for the scan and its truth")->required();
    CLI11_PARSE(app, argc, argv);

    std::vector<Order> orders;
    if (*site) {
        Outcome<void> done = render_folder(out, demo_site());
        if (done) {
            done = write_whole_file(std::filesystem::path(out) / "field-sheet.csv", true,
                                    [](std::ostream& sheet) { return write_field_sheet(sheet, {demo_field_sheet()}); });
        }
        return finish(done);
    }
    if (*series) {
        Outcome<Order> order = order_from(in);
        if (!order) {
            return finish(tl::unexpected<Fault>(order.error()));
        }
        orders.push_back(*order);
    }
    for (int i = 1; (*clear || *varied || *past) && i <= count; ++i) {
        orders.push_back(*clear    ? clear_core(seed, i)
                         : *varied ? varied_core(seed, i, wood_type_from(wood))
                                   : past_pith_core(seed, i, wood_type_from(wood)));
    }
    for (int i = 1; *pith && i <= count; ++i) {
        orders.push_back(pith_core(seed, i));
    }
    for (const GradeName& kind : grades()) {
        for (int i = 0; *graded && (only.empty() || only == kind.name) && i < 3 * count; ++i) {
            orders.push_back(graded_core(kind.grade, i % 3 + 1, seed, i / 3 + 1));
        }
    }
    if (noise_free_scans) {
        for (Order& order : orders) {
            for (Scene& scene : order.scenes) {
                scene = noise_free(scene);
            }
        }
    }
    return finish(render_folder(out, orders));
}
