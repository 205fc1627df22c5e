#include "libcore/formats/study_notes.h"

#include <algorithm>

namespace pithward {

namespace {

/// Names, each once, with commas between.
class Names {
public:
    void add(const std::string& name) {
        if (!name.empty() && std::ranges::find(names_, name) == names_.end()) {
            names_.push_back(name);
        }
    }
    [[nodiscard]] std::string text() const {
        std::string all;
        for (const std::string& name : names_) {
            all += all.empty() ? "" : ", ";
            all += name;
        }
        return all;
    }
    [[nodiscard]] const std::vector<std::string>& names() const { return names_; }

private:
    std::vector<std::string> names_;
};

void widen(std::optional<double>& low, std::optional<double>& high, const std::optional<double>& value) {
    if (value) {
        low = std::min(low.value_or(*value), *value);
        high = std::max(high.value_or(*value), *value);
    }
}

} // namespace

StudyNotes study_notes(const std::vector<Site>& sites) {
    StudyNotes notes;
    Names names;
    Names species;
    Names collectors;
    Names years;
    std::size_t trees = 0;
    std::size_t cores = 0;
    double heights = 0.0;
    int with_height = 0;
    for (const Site& site : sites) {
        names.add(site.id);
        widen(notes.south, notes.north, site.latitude);
        widen(notes.west, notes.east, site.longitude);
        heights += site.elevation_m.value_or(0.0);
        with_height += site.elevation_m ? 1 : 0;
        trees += site.trees.size();
        for (const Tree& tree : site.trees) {
            species.add(tree.species);
            cores += tree.cores.size();
            for (const Core& core : tree.cores) {
                collectors.add(core.collector);
                years.add(core.date_cored.substr(0, 4));
            }
        }
    }
    notes.sites = names.text();
    notes.species = species.text();
    notes.collectors = collectors.text();
    if (with_height > 0) {
        notes.elevation_m = heights / with_height;
    }
    if (cores > 0) {
        notes.notes = std::to_string(cores) + " cores of " + std::to_string(trees) + " trees";
        notes.notes += years.names().empty() ? "" : "; cored in " + years.text();
    }
    return notes;
}

} // namespace pithward
