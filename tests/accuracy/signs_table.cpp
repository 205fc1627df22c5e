// Prints the signs of every mark of a folder of rendered scans with what the truth says of it: the input of
// fit_odds.py. Usage: signs_table FOLDER (cases.json and truth files as demo-scans/maker writes them)

#include "libcore/measure/leg_line.h"
#include "libimaging/boundary/flat_strip.h"
#include "libimaging/boundary/inner_end.h"
#include "libimaging/boundary/odds.h"
#include "libimaging/boundary/outer_end.h"
#include "libimaging/boundary/wood/wood_model.h"
#include "libimaging/scan/scan_file.h"
#include "libimaging/strip/lanes.h"
#include "libimaging/strip/strip_geometry.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <fstream>
#include <string>

namespace {

using namespace pithward;
using nlohmann::json;

json read_json(const std::string& file) {
    return json::parse(std::ifstream(file));
}

std::vector<ImagePoint> points_of(const json& list) {
    std::vector<ImagePoint> points;
    for (const json& point : list) {
        points.push_back({point[0].get<double>(), point[1].get<double>()});
    }
    return points;
}

/// 1 for a visible boundary, 0 for none, -1 where the truth is not to be judged by (invisible ones).
int verdict(const json& truth, const LegLine& line, double s_mm, double px_mm) {
    int found = 0;
    for (const json& boundary : truth["boundaries"]) {
        const double place = line.along({boundary["x"].get<double>(), boundary["y"].get<double>()});
        const double distance = std::abs(place - s_mm);
        if (boundary["visible"].get<bool>() ? distance < std::max(2.0 * px_mm, 0.06) : distance < 0.15) {
            found = boundary["visible"].get<bool>() ? 1 : (found == 1 ? 1 : -1);
        }
    }
    return found;
}

void print_case(const std::string& folder, const json& entry) {
    const auto scan = ScanFile::open(folder + "/" + entry["file"].get<std::string>());
    const auto calibration = scan ? believed_calibration(scan->header(), std::nullopt) : tl::unexpected(scan.error());
    if (!calibration) {
        std::fprintf(stderr, "%s\n", calibration.error().line().c_str());
        return;
    }
    const std::vector<ImagePoint> path = points_of(entry["path"]);
    const StripGeometry geometry(path, *calibration);
    const auto lanes = lanes_along(*scan, geometry, calibration->px_per_mm());
    if (!lanes) {
        return;
    }
    const auto wood = wood_type_from(entry["wood_type"].get<std::string>());
    const boundary::WoodModel& model = boundary::wood_model(wood.value_or(WoodType::Conifer));
    const boundary::Relief relief =
        boundary::ending_with_wood(boundary::relief_of(*lanes), *lanes, geometry.length_mm());
    const boundary::FlatStrip strip =
        boundary::flat_strip(*lanes, relief, model.signal(relief, *lanes), geometry.length_mm());
    const auto marks = model.marks(strip);
    const auto outer = boundary::outer_end(*lanes, strip, marks, model);
    const json truth = read_json(folder + "/" + entry["truth"].get<std::string>());
    const LegLine line(Leg{"", path, {}}, *calibration);
    for (const boundary::Mark& mark : marks) {
        const double s = strip.s(mark.column);
        const int said = verdict(truth, line, s, strip.px_mm);
        if (s < 0.0 || s > strip.path_mm || mark.column < outer.column || said < 0) {
            continue;
        }
        std::printf("%s,%d", entry["name"].get<std::string>().c_str(), said);
        for (const double term : boundary::terms(mark.signs)) {
            std::printf(",%.5f", term);
        }
        std::printf(",%.3f,%.3f\n", s, mark.log_odds);
    }
}

} // namespace

int main(int argc, char** argv) {
    if (argc != 2) {
        std::fprintf(stderr, "usage: signs_table FOLDER\n");
        return 2;
    }
    try {
        const std::string folder = argv[1];
        const json all = read_json(folder + "/cases.json");
        for (const json& entry : all["cases"]) {
            print_case(folder, entry);
        }
    } catch (const std::exception& error) {
        std::fprintf(stderr, "%s: %s\n", argv[1], error.what());
        return 2;
    }
    return 0;
}
