#include "app/batch/measure_options.h"

#include "app/batch/outside_folders.h"
#include "libcore/specimen/path_check.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <sstream>

namespace pithward::batch {

namespace {

constexpr int latest_year = 3'000;

std::optional<double> number_from(std::string_view text) {
    double value = 0.0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (error != std::errc() || end != text.data() + text.size() || !std::isfinite(value)) {
        return std::nullopt;
    }
    return value;
}

std::optional<ImagePoint> point_from(std::string_view text) {
    const auto comma = text.find(',');
    if (comma == std::string_view::npos) {
        return std::nullopt;
    }
    const auto x = number_from(text.substr(0, comma));
    const auto y = number_from(text.substr(comma + 1));
    return x && y ? std::optional(ImagePoint{*x, *y}) : std::nullopt;
}

std::optional<Fault> contradiction(const MeasureOptions& options) {
    if (options.scans.size() > 1 && !options.path.empty()) {
        return Fault{"--path", "one path can't serve several scans", "measure them one at a time"};
    }
    if (!options.from.empty() && options.path.empty()) {
        return Fault{"--from", "there is no path that it tells of", "give one with --path \"x,y x,y ...\""};
    }
    if (!options.overlay.empty() && options.overlay != "-" && !options.overlay.ends_with(".png")) {
        return Fault{"--overlay", "the picture is a PNG", "give a name that ends in .png"};
    }
    if (options.scans.size() > 1 && !options.overlay.empty()) {
        return Fault{"--overlay", "one picture can't show several scans", "measure them one at a time"};
    }
    if (!options.decadal.empty() && !options.last_year) {
        return Fault{"--decadal", "a decadal file needs calendar years", "give --last-year, or take --csv"};
    }
    if (!options.by.empty() && !options.scans.empty()) {
        return Fault{"--by", "nobody is noted but in a project", "leave it out, or measure a project"};
    }
    if (!options.outside.empty() && !options.scans.empty()) {
        return Fault{"--outside", "scans that are named themselves need no leave", "leave it out"};
    }
    const auto project =
        std::ranges::find_if(options.scans, [](const std::string& scan) { return scan.ends_with(".pithward"); });
    if (project != options.scans.end()) {
        return Fault{*project, "a project does not stand among scans", "name it first, then the cores to measure"};
    }
    return std::nullopt;
}

std::optional<Fault> contradiction(const MeasureOptions& options, const RulerTask& ruler) {
    if (options.scans.size() > 1 && !ruler.lines.empty()) {
        return Fault{"--ruler", "one ruler line can't serve several scans", "measure them one at a time"};
    }
    if (options.rulers.size() > 1 && ruler.lines.size() != options.rulers.size()) {
        return Fault{"--ruler", "auto and none stand alone", "give either word or one or two lines"};
    }
    if (ruler.lines.empty() && (ruler.apart || ruler.graduation)) {
        return Fault{ruler.apart ? "--apart-mm" : "--graduation", "there is no ruler line that it tells of",
                     "give one with --ruler \"x,y x,y\""};
    }
    if (ruler.apart && ruler.graduation) {
        return Fault{"--apart-mm", "two points a known distance apart need no graduation", "leave out one of the two"};
    }
    return std::nullopt;
}

Outcome<RulerTask> ruler_task(const MeasureOptions& options) {
    RulerTask task;
    task.graduation = graduation_from(options.graduation);
    if (options.apart_mm) {
        task.apart = Millimetres(*options.apart_mm);
    }
    for (const std::string& text : options.rulers) {
        if (text == "auto" || text == "none") {
            task.search = text == "auto" ? RulerTask::Search::Use : RulerTask::Search::No;
            continue;
        }
        const auto points = points_from("--ruler", text);
        if (!points) {
            return tl::unexpected(points.error());
        }
        if (points->size() != 2) {
            return fail("--ruler", "a ruler line has two points, not " + std::to_string(points->size()),
                        "write it as \"x,y x,y\" in pixels");
        }
        task.lines.push_back({points->front(), points->back()});
    }
    if (auto fault = contradiction(options, task)) {
        return tl::unexpected(*fault);
    }
    return task;
}

} // namespace

void add_options(CLI::App& parser, MeasureOptions& options) {
    parser.add_option("SCAN", options.scans, "Scans to measure: TIFF, PNG or JPEG; or a project and some of its cores")
        ->required();
    parser.add_option("--path", options.path, "Path in pixels, \"x,y x,y ...\"; default: every core found");
    parser.add_option("--from", options.from, "Where the path given begins: bark or pith")
        ->check(CLI::IsMember({"bark", "pith"}));
    parser.add_option("--dpi", options.dpi, "Resolution of the scan; overrides the file's tag");
    parser
        .add_option(
            "--ruler", options.rulers,
            "Line along a ruler's marks in pixels, \"x,y x,y\", or one along x and one along y: gives the scale. "
            "auto: find it; none: don't look for one. Default: compare a ruler that is found with the scale told")
        ->allow_extra_args(false);
    parser.add_option("--graduation", options.graduation, "From one mark of the ruler to the next")
        ->check(CLI::IsMember({"1mm", "0.5mm", "1/16in", "auto"}));
    parser.add_option("--apart-mm", options.apart_mm,
                      "The two points of --ruler are so many millimetres apart; marks are not looked for");
    parser.add_option("--wood", options.wood, "Kind of wood")
        ->check(CLI::IsMember({"conifer", "ring-porous", "diffuse-porous", "auto"}));
    parser.add_option("--outer", options.outer, "The wood under the bark")
        ->check(CLI::IsMember({"complete", "unfinished", "lost", "unknown"}));
    parser.add_option("--last-year", options.last_year, "Year of the outermost ring with a width")
        ->check(CLI::Range(earliest_year, latest_year));
    parser.add_option("--json", options.json, "File for everything that was found; - for standard output");
    parser.add_option("--csv", options.csv, "File for the series, years down; - for standard output");
    parser.add_option("--decadal", options.decadal, "File for the series in decades; - for standard output");
    parser.add_option("--by", options.by, "Who measures, for a project's history; default: the user's name");
    add_outside_option(parser, options.outside);
    parser.add_option("--overlay", options.overlay, "PNG file for the scan with its boundaries");
}

Outcome<MeasureTask> task_of(const MeasureOptions& options) {
    if (auto fault = contradiction(options)) {
        return tl::unexpected(*fault);
    }
    MeasureTask task;
    task.wood = wood_type_from(options.wood);
    task.outer = outer_wood_from(options.outer).value_or(OuterWood::Unknown);
    if (options.last_year) {
        task.last_year = Year(*options.last_year);
    }
    if (!options.path.empty()) {
        auto points = points_from("--path", options.path);
        if (!points) {
            return tl::unexpected(points.error());
        }
        if (options.from == "pith") {
            std::ranges::reverse(*points);
        }
        task.path = std::move(*points);
    }
    auto ruler = ruler_task(options);
    if (!ruler) {
        return tl::unexpected(ruler.error());
    }
    task.ruler = std::move(*ruler);
    return task;
}

Outcome<std::vector<ImagePoint>> points_from(const std::string& option, const std::string& text) {
    std::vector<ImagePoint> points;
    std::istringstream words(text);
    for (std::string word; words >> word;) {
        const auto point = point_from(word);
        if (!point) {
            return fail(option,
                        "point " + std::to_string(points.size() + 1) + " is no pair of numbers: " + word.substr(0, 40),
                        "write it as \"x,y x,y ...\" in pixels");
        }
        if (points.size() == most_path_points) {
            return fail(option, "there are more than 10,000 points", "give fewer points");
        }
        points.push_back(*point);
    }
    if (points.size() < 2) {
        return fail(option, "there is only one point", "give at least two different points");
    }
    return points;
}

} // namespace pithward::batch
