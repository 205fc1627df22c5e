#include "libcore/formats/dating_json.h"

#include "libcore/formats/json_numbers.h"
#include "libcore/formats/text_input.h"

#include <cmath>
#include <variant>

namespace pithward {

using formats::json_number;
using nlohmann::ordered_json;

namespace {

constexpr int statistic_digits = 4;

ordered_json number_or_null(const std::optional<double>& value, int digits = statistic_digits) {
    return value ? json_number(*value, digits) : ordered_json();
}

/// Chances may be tiny: four significant digits.
ordered_json chance_json(double chance) {
    constexpr int significant = 4;
    constexpr double smallest = 1e-300;
    if (!(chance > smallest)) {
        return 0.0;
    }
    return json_number(chance, significant - 1 - static_cast<int>(std::floor(std::log10(chance))));
}

std::string_view word_of(dating::Slip::Kind kind) {
    return kind == dating::Slip::Kind::RingMissing ? "ring missing" : "ring too many";
}

ordered_json texts(const std::vector<std::string>& remarks) {
    ordered_json list = ordered_json::array();
    for (const std::string& remark : remarks) {
        list.push_back(formats::as_utf8(remark));
    }
    return list;
}

ordered_json json_of(const dating::RankedMatch& ranked) {
    ordered_json value;
    value["shift"] = ranked.match.shift;
    value["overlap"] = ranked.match.overlap;
    value["r"] = json_number(ranked.match.r, statistic_digits);
    value["t"] = json_number(ranked.match.t, statistic_digits);
    value["chance"] = chance_json(ranked.chance_of_best);
    return value;
}

ordered_json json_of(const dating::Segment& segment) {
    ordered_json value;
    value["from"] = segment.from;
    value["to"] = segment.to;
    value["r"] = number_or_null(segment.r);
    value["best_shift"] = segment.best_shift;
    value["best_r"] = number_or_null(segment.best_r);
    value["chance"] = chance_json(segment.chance);
    return value;
}

ordered_json json_of(const dating::Slip& slip) {
    ordered_json value;
    value["kind"] = word_of(slip.kind);
    value["year"] = slip.year;
    value["from"] = slip.from;
    value["to"] = slip.to;
    value["ring_year"] = slip.ring_year();
    value["probability"] = json_number(slip.probability, formats::share_digits);
    return value;
}

std::string_view word_of(const ProposedChange& change) {
    if (std::holds_alternative<ProposeBoundary>(change)) {
        return "add boundary";
    }
    return std::holds_alternative<ProposeRemoval>(change) ? "take boundary out" : "note absent ring";
}

ordered_json json_of(const dating::SlipPlace& place) {
    ordered_json value;
    value["ring_year"] = place.ring_year;
    value["change"] = word_of(place.place.change);
    value["probability"] = json_number(place.probability, formats::share_digits);
    value["scan"] = formats::as_utf8(place.place.scan);
    value["leg"] = place.place.leg;
    value["x"] = json_number(place.place.at.x, formats::pixel_digits);
    value["y"] = json_number(place.place.at.y, formats::pixel_digits);
    value["s_mm"] = json_number(place.place.s.value(), formats::millimetre_digits);
    value["reason"] = formats::as_utf8(place.place.reason);
    return value;
}

ordered_json json_of(const dating::DatedResult& series);
ordered_json json_of(const dating::UndatedResult& series);

template <typename T>
ordered_json list_of(const std::vector<T>& items) {
    ordered_json list = ordered_json::array();
    for (const T& item : items) {
        list.push_back(json_of(item));
    }
    return list;
}

ordered_json t_or_null(const dating::Agreement& agreement) {
    return agreement.r ? json_number(agreement.t, statistic_digits) : ordered_json();
}

ordered_json json_of(const dating::DatedResult& series) {
    ordered_json value;
    value["id"] = formats::as_utf8(series.id);
    value["tree"] = formats::as_utf8(series.tree);
    value["first_year"] = series.first_year;
    value["last_year"] = series.last_year;
    value["overlap"] = series.agreement.overlap;
    value["r"] = number_or_null(series.agreement.r);
    value["t"] = t_or_null(series.agreement);
    value["t_baillie_pilcher"] = t_or_null(series.five_year);
    value["t_hollstein"] = t_or_null(series.yearly);
    value["sign_agreement"] = number_or_null(series.signs.share);
    value["sign_agreement_level"] = json_number(series.signs.level, statistic_digits);
    value["chance"] = chance_json(series.agreement.chance);
    value["mean_sensitivity"] = number_or_null(series.mean_sensitivity);
    value["ar1"] = number_or_null(series.ar1);
    value["best"] = list_of(series.best);
    value["segments"] = list_of(series.segments);
    ordered_json& slips = value["slips"] = list_of(series.slips);
    for (std::size_t i = 0; i < series.places.size(); ++i) {
        slips[i]["places"] = list_of(series.places[i]);
    }
    value["whole_shift"] = series.whole_shift;
    value["remarks"] = texts(series.remarks);
    return value;
}

ordered_json json_of(const dating::UndatedResult& series) {
    ordered_json value;
    value["id"] = formats::as_utf8(series.id);
    value["rings"] = series.rings;
    ordered_json& places = value["positions"] = ordered_json::array();
    for (std::size_t i = 0; i < series.places.size(); ++i) {
        ordered_json place;
        place["first_year"] = series.first_year_at(series.places[i]);
        place["last_year"] = series.last_year_at(series.places[i]);
        place.update(json_of(series.places[i]));
        place["sign_agreement"] = number_or_null(series.signs[i].share);
        places.push_back(std::move(place));
    }
    value["remarks"] = texts(series.remarks);
    return value;
}

ordered_json json_of(const dating::SiteResult& site) {
    ordered_json value;
    value["series"] = site.series;
    value["trees"] = site.trees;
    value["r_bar"] = number_or_null(site.variance.r_bar);
    value["r_bar_within"] = number_or_null(site.variance.within);
    value["r_bar_between"] = number_or_null(site.variance.between);
    value["r_bar_effective"] = number_or_null(site.variance.effective);
    value["r_bar_effective_low"] = number_or_null(site.variance.effective_low);
    value["r_bar_effective_high"] = number_or_null(site.variance.effective_high);
    value["eps"] = number_or_null(site.variance.eps);
    value["eps_low"] = number_or_null(site.variance.eps_low);
    value["eps_high"] = number_or_null(site.variance.eps_high);
    value["signal_to_noise"] = number_or_null(site.variance.signal_to_noise);
    value["series_intercorrelation"] = number_or_null(site.series_intercorrelation);
    value["mean_sensitivity"] = number_or_null(site.mean_sensitivity);
    value["ar1"] = number_or_null(site.ar1);
    return value;
}

ordered_json json_of(const dating::PairResult& pair, const std::vector<dating::DatedResult>& series) {
    const dating::DatedResult& first = series[pair.first];
    const dating::DatedResult& second = series[pair.second];
    ordered_json value;
    value["first"] = formats::as_utf8(first.id);
    value["second"] = formats::as_utf8(second.id);
    value["same_tree"] = first.tree == second.tree;
    value["overlap"] = pair.overlap;
    value["r"] = number_or_null(pair.r);
    value["t"] = pair.r ? json_number(pair.t, statistic_digits) : ordered_json();
    value["positions"] = pair.positions;
    value["best"] = pair.best ? json_of(*pair.best) : ordered_json();
    return value;
}

ordered_json pairs_or_null(const dating::CrossdateResult& result) {
    if (!result.pairs) {
        return {};
    }
    ordered_json list = ordered_json::array();
    for (const dating::PairResult& pair : *result.pairs) {
        list.push_back(json_of(pair, result.dated));
    }
    return list;
}

} // namespace

Outcome<void> write_crossdate_json(std::ostream& out, const dating::CrossdateResult& result,
                                   const CrossdateSettings& settings) {
    ordered_json root;
    root["series"] = list_of(result.dated);
    root["undated"] = list_of(result.undated);
    root["pairs"] = pairs_or_null(result);
    root["site"] = json_of(result.site);
    ordered_json& chosen = root["settings"];
    chosen["detrend"] = settings.detrend;
    chosen["prewhiten"] = settings.prewhiten;
    chosen["length"] = result.length;
    chosen["step"] = result.step;
    chosen["reference"] =
        settings.reference.empty() ? ordered_json() : ordered_json(formats::as_utf8(settings.reference));
    root["remarks"] = texts(result.remarks);
    out << root.dump(1) << '\n';
    return {};
}

} // namespace pithward
