#pragma once

#include <cstddef>
#include <map>
#include <string>
#include <utility>
#include <vector>

namespace pithward::formats {

/// What a reader or a writer noticed and a person should know. One thing seen on many lines is one remark.
class Remarks {
public:
    void add(std::string text) { entries_.push_back({std::move(text), {}}); }

    /// The same thing on one more line.
    void add(const std::string& text, std::size_t line) {
        const auto [found, is_new] = by_text_.try_emplace(text, entries_.size());
        if (is_new) {
            entries_.push_back({text, {}});
        }
        entries_[found->second].lines.push_back(line);
    }

    /// In the order of first sight: "line 3: text", or "lines 3, 4, 5 and 12 more: text".
    [[nodiscard]] std::vector<std::string> list() const {
        std::vector<std::string> all;
        for (const Entry& entry : entries_) {
            all.push_back(line_names(entry.lines) + entry.text);
        }
        return all;
    }

private:
    struct Entry {
        std::string text;
        std::vector<std::size_t> lines;
    };

    static std::string line_names(const std::vector<std::size_t>& lines) {
        if (lines.empty()) {
            return {};
        }
        constexpr std::size_t most_named = 3;
        std::string names = lines.size() == 1 ? "line " : "lines ";
        for (std::size_t i = 0; i < lines.size() && i < most_named; ++i) {
            names += (i == 0 ? "" : ", ") + std::to_string(lines[i]);
        }
        if (lines.size() > most_named) {
            names += " and " + std::to_string(lines.size() - most_named) + " more";
        }
        return names + ": ";
    }

    std::vector<Entry> entries_;
    std::map<std::string, std::size_t> by_text_;
};

} // namespace pithward::formats
