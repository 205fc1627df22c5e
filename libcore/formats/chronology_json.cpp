#include "libcore/formats/chronology_files.h"
#include "libcore/formats/json_numbers.h"
#include "libcore/formats/text_input.h"

namespace pithward {

using formats::json_number;
using nlohmann::ordered_json;

namespace {

constexpr int index_digits = 4;

ordered_json known_or_null(const std::optional<double>& value) {
    return value ? json_number(*value, index_digits) : ordered_json();
}

ordered_json variance_json(const dating::CommonVariance& variance) {
    ordered_json value;
    value["trees"] = json_number(variance.trees, index_digits);
    value["r_bar"] = known_or_null(variance.r_bar);
    value["r_bar_within"] = known_or_null(variance.within);
    value["r_bar_between"] = known_or_null(variance.between);
    value["r_bar_effective"] = known_or_null(variance.effective);
    value["r_bar_effective_low"] = known_or_null(variance.effective_low);
    value["r_bar_effective_high"] = known_or_null(variance.effective_high);
    value["eps"] = known_or_null(variance.eps);
    value["eps_low"] = known_or_null(variance.eps_low);
    value["eps_high"] = known_or_null(variance.eps_high);
    value["signal_to_noise"] = known_or_null(variance.signal_to_noise);
    return value;
}

} // namespace

Outcome<void> write_chronology_json(std::ostream& out, const dating::Chronology& chronology,
                                    const std::string& identifier) {
    ordered_json root;
    root["id"] = formats::as_utf8(identifier);
    ordered_json& years = root["years"] = ordered_json::array();
    for (const dating::ChronologyYear& year : chronology.years) {
        years.push_back({{"year", year.year},
                         {"value", known_or_null(year.value)},
                         {"low", known_or_null(year.low)},
                         {"high", known_or_null(year.high)},
                         {"series", year.series},
                         {"trees", year.trees}});
    }
    root["site"] = variance_json(chronology.variance);
    ordered_json& running = root["running"] = ordered_json::array();
    for (const dating::WindowVariance& window : chronology.running) {
        ordered_json value{{"from", window.from}, {"to", window.to}};
        value.update(variance_json(window.variance));
        running.push_back(std::move(value));
    }
    ordered_json& pointers = root["pointer_years"] = ordered_json::array();
    for (const dating::PointerYear& year : chronology.pointer_years) {
        pointers.push_back({{"year", year.year},
                            {"growth", year.wide ? "wide" : "narrow"},
                            {"share", json_number(year.share, index_digits)},
                            {"series", year.series}});
    }
    ordered_json& remarks = root["remarks"] = ordered_json::array();
    for (const std::string& remark : chronology.remarks) {
        remarks.push_back(formats::as_utf8(remark));
    }
    out << root.dump(1) << '\n';
    return {};
}

} // namespace pithward
