#include "tests/outside/archive/archive_support.h"

#include <algorithm>
#include <cstdlib>
#include <fstream>
#include <sstream>

namespace pithward::test {

namespace fs = std::filesystem;

namespace {

std::vector<std::string> cells_of(const std::string& line) {
    std::vector<std::string> cells;
    std::istringstream stream(line);
    for (std::string cell; std::getline(stream, cell, '\t');) {
        cells.push_back(cell);
    }
    return cells;
}

} // namespace

fs::path archive_folder() {
    const char* named = std::getenv("PITHWARD_ARCHIVE");
    return named != nullptr ? named : PITHWARD_ARCHIVE_DEFAULT;
}

std::vector<fs::path> decadal_files(const std::string& folder) {
    std::vector<fs::path> files;
    std::error_code error;
    for (const auto& entry : fs::directory_iterator(archive_folder() / folder, error)) {
        if (entry.path().extension() == ".rwl") {
            files.push_back(entry.path());
        }
    }
    std::ranges::sort(files);
    return files;
}

fs::path twin_of(const fs::path& decadal_file) {
    return decadal_file.parent_path() / (decadal_file.stem().string() + "-rwl-noaa.txt");
}

std::map<std::string, YearWidths> plain_table(const fs::path& template_file) {
    std::map<std::string, YearWidths> table;
    std::vector<std::string> names;
    std::ifstream in(template_file);
    for (std::string line; std::getline(in, line);) {
        std::erase(line, '\r');
        if (line.empty() || line[0] == '#') {
            continue;
        }
        const auto cells = cells_of(line);
        if (names.empty()) {
            for (const std::string& cell : cells) {
                names.push_back(cell.ends_with("_raw") ? cell.substr(0, cell.size() - 4) : cell);
            }
            continue;
        }
        for (std::size_t i = 1; i < cells.size(); ++i) {
            if (!cells[i].empty() && cells[i] != "NA" && cells[i] != "NaN") {
                table[names[i]][std::atoi(cells[0].c_str())] = std::atof(cells[i].c_str());
            }
        }
    }
    return table;
}

YearWidths year_widths(const WidthSeries& series) {
    YearWidths widths;
    for (std::size_t i = 0; i < series.widths.size(); ++i) {
        if (series.widths[i]) {
            widths[(series.first_year + static_cast<int>(i)).value()] = series.widths[i]->value();
        }
    }
    return widths;
}

} // namespace pithward::test
