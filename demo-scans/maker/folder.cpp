#include "demo-scans/maker/folder.h"

#include "libcore/formats/whole_file.h"

#include <nlohmann/json.hpp>

#include <cstdio>

namespace pithward::demo {

namespace {

using nlohmann::json;

Outcome<void> write_text(const std::filesystem::path& file, const std::string& text) {
    return write_whole_file(file, true, [&](std::ostream& out) -> Outcome<void> {
        out << text;
        return {};
    });
}

/// JSON with each member of the top level, and each element of its lists, on a line of its own.
std::string lines(const json& object) {
    std::string text = "{";
    for (auto it = object.begin(); it != object.end(); ++it) {
        text += (it == object.begin() ? "\n " : ",\n ") + json(it.key()).dump() + ": ";
        if (!it->is_array() || it->empty() || !it->front().is_object()) {
            text += it->dump();
            continue;
        }
        for (std::size_t i = 0; i < it->size(); ++i) {
            text += (i == 0 ? "[\n  " : ",\n  ") + (*it)[i].dump();
        }
        text += "]";
    }
    return text + "\n}\n";
}

} // namespace

Outcome<void> render_folder(const std::filesystem::path& folder, const std::vector<Order>& orders) {
    std::error_code error;
    std::filesystem::create_directories(folder, error);
    if (error) {
        return fail(folder.string(), "the folder can't be made", "choose another one");
    }
    json cases = json::array();
    for (const Order& order : orders) {
        const Outcome<TrayRendering> rendering = render_tray(order.scenes);
        if (!rendering) {
            return tl::unexpected<Fault>(rendering.error());
        }
        const std::string file = order.name + suffix(order.format);
        if (auto written = write_image(folder / file, rendering->picture, order.format); !written) {
            return written;
        }
        for (const Truth& truth : rendering->truths) {
            const std::string truth_file = truth.name + ".truth.json";
            const json whole = truth_json(truth);
            if (auto written = write_text(folder / truth_file, lines(whole)); !written) {
                return written;
            }
            cases.push_back({{"name", truth.name},
                             {"file", file},
                             {"category", order.category},
                             {"wood_type", whole["wood_type"]},
                             {"wood", whole["wood"]},
                             {"dpi", truth.dpi},
                             {"path", whole["path"]},
                             {"direction", whole["direction"]},
                             {"last_complete_ring_year", whole["last_complete_ring_year"]},
                             {"truth", truth_file}});
        }
        std::fprintf(stderr, "%s: %d x %d px, %zu core(s), %zu boundaries\n", file.c_str(), rendering->picture.width,
                     rendering->picture.height, rendering->truths.size(), rendering->truths.front().boundaries.size());
    }
    return write_text(folder / "cases.json", lines({{"cases", cases}}));
}

} // namespace pithward::demo
