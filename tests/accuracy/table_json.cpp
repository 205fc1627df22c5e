#include "tests/accuracy/figure_table.h"

#include <nlohmann/json.hpp>

namespace pithward::accuracy {

namespace {

using Json = nlohmann::ordered_json;

Json number(const std::optional<double>& value) {
    return value ? Json(*value) : Json();
}

Json json_of(const CalibrationError& error) {
    return {{"expected_error", number(error.expected)}, {"candidates", error.candidates}};
}

Json json_of(const Spread& spread) {
    return {{"spread", number(spread.spread)}, {"share_beyond_4", number(spread.share_far)}, {"values", spread.values}};
}

Json json_of(const FigureRow& row) {
    const Figures& figures = row.figures;
    return {{"name", row.name},
            {"cores", figures.cores},
            {"rings", figures.rings},
            {"found", figures.found},
            {"false", figures.wrong},
            {"f1", number(figures.f1)},
            {"worst_f1", number(figures.worst_f1)},
            {"escaped_of_100", number(figures.escaped)},
            {"asked_share", number(figures.asked)},
            {"median_error_px", number(figures.error_px)},
            {"bias_px", number(figures.bias_px)},
            {"confidence", json_of(figures.confidence)},
            {"confidence_0.1_to_0.9", json_of(figures.doubtful)},
            {"position_over_sd", json_of(figures.position)},
            {"width_over_sd", json_of(figures.width)}};
}

Json json_of(const CaseScore& core) {
    Json mistakes = Json::array();
    for (const Mistake& mistake : core.mistakes) {
        mistakes.push_back({{"kind", mistake.kind == Mistake::Kind::False ? "false" : "overlooked"},
                            {"x", mistake.at.x},
                            {"y", mistake.at.y},
                            {"escaped", mistake.escaped}});
    }
    return {{"name", core.name}, {"rings", core.rings()}, {"proposed", core.proposed}, {"found", core.found},
            {"f1", f1_of(core)}, {"places", core.places}, {"escaped", core.escaped()}, {"mistakes", mistakes}};
}

} // namespace

Json table_json(std::span<const FigureRow> rows, std::span<const CaseScore> scores) {
    Json groups = Json::array();
    for (const FigureRow& row : rows) {
        groups.push_back(json_of(row));
    }
    Json cores = Json::array();
    for (const CaseScore& core : scores) {
        cores.push_back(json_of(core));
    }
    return {{"groups", groups}, {"cores", cores}};
}

} // namespace pithward::accuracy
