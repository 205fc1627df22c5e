#include "libcore/dating/trees.h"

#include <algorithm>
#include <set>
#include <string_view>

namespace pithward::dating {

namespace {

bool is_digit(char c) {
    return c >= '0' && c <= '9';
}
bool is_letter(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
}

std::string without_last(const std::string& id) {
    std::string stem = id.substr(0, id.size() - 1);
    while (stem.size() > 1 && std::string_view(" ._-").find(stem.back()) != std::string_view::npos) {
        stem.pop_back();
    }
    return stem;
}

/// A last character that may tell cores apart, of the given sort.
bool ends_in(const std::string& id, bool (*sort)(char)) {
    return id.size() > 2 && sort(id.back()) && is_digit(id[id.size() - 2]);
}

/// Rule 2: do the last digits of these identifiers tell cores apart?
bool digits_tell(const std::vector<std::string>& identifiers) {
    std::size_t series = 0;
    std::set<std::string> stems;
    for (const std::string& id : identifiers) {
        if (ends_in(id, is_digit)) {
            if (id.back() < '1' || id.back() > '4') {
                return false;
            }
            ++series;
            stems.insert(without_last(id));
        }
    }
    return stems.size() < series && 3 * stems.size() >= series;
}

} // namespace

Trees trees_by_stem(const std::vector<std::string>& identifiers) {
    const bool digits = digits_tell(identifiers);
    Trees trees;
    trees.guessed = false;
    for (const std::string& id : identifiers) {
        const bool core = ends_in(id, is_letter) || (digits && ends_in(id, is_digit));
        trees.of_series.push_back(core ? without_last(id) : id);
        trees.guessed = trees.guessed || core;
    }
    const std::set<std::string> all(trees.of_series.begin(), trees.of_series.end());
    trees.remark = trees.guessed
                       ? "trees are taken from the common stem of the identifiers: " + std::to_string(all.size()) +
                             " trees of " + std::to_string(identifiers.size()) + " series"
                       : "the identifiers don't tell which series are of one tree: each is taken as its own";
    return trees;
}

} // namespace pithward::dating
