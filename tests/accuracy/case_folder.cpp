#include "tests/accuracy/case_folder.h"

#include <nlohmann/json.hpp>

#include <fstream>
#include <stdexcept>

namespace pithward::accuracy {

namespace {

using nlohmann::json;

json parsed(const std::string& file) {
    std::ifstream in(file);
    if (!in) {
        throw std::runtime_error("the file can't be opened");
    }
    return json::parse(in);
}

ImagePoint point(const json& object) {
    return {object.at("x").get<double>(), object.at("y").get<double>()};
}

std::optional<double> number(const json& value) {
    return value.is_null() ? std::nullopt : std::optional(value.get<double>());
}

demo::Truth truth_from(const json& object) {
    demo::Truth truth;
    truth.name = object.at("name").get<std::string>();
    truth.wood = wood_type_from(object.at("wood_type").get<std::string>()).value();
    truth.dpi = object.at("dpi").get<double>();
    truth.last_complete_ring_year = Year(object.at("last_complete_ring_year").get<int>());
    for (const json& at : object.at("path")) {
        truth.path.push_back({at.at(0).get<double>(), at.at(1).get<double>()});
    }
    if (truth.path.size() < 2) {
        throw std::runtime_error("the path has fewer than two points");
    }
    for (const json& one : object.at("boundaries")) {
        demo::TrueBoundary boundary;
        boundary.at = point(one);
        boundary.year = Year(one.at("year").get<int>());
        boundary.visible = one.at("visible").get<bool>();
        boundary.why_invisible = one.value("why_invisible", "");
        boundary.at_bark = one.value("at_bark", false);
        truth.boundaries.push_back(boundary);
    }
    for (const json& one : object.at("widths")) {
        truth.widths.push_back({Year(one.at("year").get<int>()), number(one.at("radial_mm")), {}});
    }
    if (object.contains("pith")) {
        const json& pith = object.at("pith");
        truth.pith = {point(pith), pith.value("inside", false), pith.at("distance_mm").get<double>(),
                      pith.at("missing_rings").get<int>()};
    }
    if (object.contains("bark_edge") && !object.at("bark_edge").is_null()) {
        truth.bark_edge = point(object.at("bark_edge"));
    }
    return truth;
}

/// Strength from a name such as "conifer-hard-2-07".
std::optional<int> strength_from(const std::string& name, const std::string& category) {
    const std::size_t at = category.size() + 1;
    const bool told = name.starts_with(category + "-") && name.size() > at + 1 && name[at + 1] == '-';
    return told && name[at] >= '1' && name[at] <= '3' ? std::optional(name[at] - '0') : std::nullopt;
}

} // namespace

Outcome<std::vector<Case>> cases_in(const std::string& folder) {
    std::string file = folder + "/cases.json";
    try {
        std::vector<Case> cases;
        const json list = parsed(file);
        for (const json& entry : list.at("cases")) {
            Case one;
            one.file = folder + "/" + entry.at("file").get<std::string>();
            one.category = entry.at("category").get<std::string>();
            one.strength = strength_from(entry.at("name").get<std::string>(), one.category);
            file = folder + "/" + entry.at("truth").get<std::string>();
            one.truth = truth_from(parsed(file));
            cases.push_back(std::move(one));
        }
        return cases;
    } catch (const std::exception& error) {
        return fail(file, error.what(), "give a folder that pithward-scan-maker has rendered");
    }
}

} // namespace pithward::accuracy
