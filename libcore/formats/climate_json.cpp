#include "libcore/formats/climate_json.h"

#include "libcore/formats/json_numbers.h"
#include "libcore/formats/text_input.h"

namespace pithward {

using nlohmann::ordered_json;

namespace {

ordered_json climate_number(const std::optional<double>& value) {
    constexpr int digits = 4;
    return value ? formats::json_number(*value, digits) : ordered_json();
}

void add_numbers(ordered_json& value, const results::WindowCorrelation& one) {
    value["years"] = one.years;
    value["r"] = climate_number(one.r);
    value["low"] = climate_number(one.low);
    value["high"] = climate_number(one.high);
}

ordered_json window_json(const results::WindowCorrelation& one) {
    ordered_json value;
    value["months"] = results::words_of(one.window);
    value["first_month"] = one.window.first + 1;
    value["last_month"] = one.window.last + 1;
    value["detrended"] = one.detrended;
    add_numbers(value, one);
    return value;
}

} // namespace

Outcome<void> write_climate_json(std::ostream& out, const results::ClimateResponse& response,
                                 const std::vector<std::string>& remarks) {
    ordered_json value;
    value["windows"] = ordered_json::array();
    for (const auto* list : {&response.as_is, &response.detrended}) {
        for (const results::WindowCorrelation& one : *list) {
            value["windows"].push_back(window_json(one));
        }
    }
    value["strongest"] = response.strongest ? window_json(*response.strongest) : ordered_json();
    value["tried"] = response.tried;
    value["chance"] = climate_number(response.chance);
    value["running"] = ordered_json::array();
    for (const results::RunningCorrelation& one : response.running) {
        ordered_json stretch{{"from", one.from}, {"to", one.to}};
        add_numbers(stretch, one.correlation);
        value["running"].push_back(std::move(stretch));
    }
    value["block_years"] = response.block;
    value["draws"] = response.draws;
    value["remarks"] = ordered_json::array();
    for (const std::string& remark : remarks) {
        value["remarks"].push_back(formats::as_utf8(remark));
    }
    out << value.dump(1) << '\n';
    return {};
}

} // namespace pithward
