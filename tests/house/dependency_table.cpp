#include "tests/house/dependency_table.h"

#include <algorithm>
#include <regex>
#include <set>
#include <string_view>
#include <vector>

namespace pithward::house {

namespace {

enum class Library {
    Standard,
    System,
    Expected,
    Eigen,
    Log,
    Json,
    Csv,
    CommandLine,
    OpenCv,
    Vips,
    Qt,
    Plot,
    Zip,
    Codes
};

struct LibraryHeaders {
    Library library;
    const char* name;
    std::regex headers;
};

/// Which library an include belongs to. OpenCV's other modules are in no row, so nobody may use them.
const std::vector<LibraryHeaders>& libraries() {
    static const std::vector<LibraryHeaders> all{
        {Library::Standard, "the standard library", std::regex("[a-z_0-9]+")},
        {Library::System, "the system's headers", std::regex("(unistd|fcntl)\\.h|sys/[a-z]+\\.h")},
        {Library::Expected, "libexpected", std::regex("tl/expected\\.hpp")},
        {Library::Eigen, "Eigen", std::regex("(unsupported/)?Eigen/.*")},
        {Library::Log, "spdlog", std::regex("spdlog/.*")},
        {Library::Json, "nlohmann-json", std::regex("nlohmann/.*")},
        {Library::Csv, "libcsv", std::regex("csv\\.h")},
        {Library::CommandLine, "CLI11", std::regex("CLI/.*")},
        {Library::OpenCv, "OpenCV's core and imgproc", std::regex("opencv2/(core|imgproc)([./].*)?")},
        {Library::Vips, "libvips", std::regex("vips/.*")},
        {Library::Qt, "Qt", std::regex("Q(t)?[A-Z].*")},
        {Library::Plot, "QCustomPlot", std::regex("qcustomplot\\.h")},
        {Library::Zip, "libarchive", std::regex("archive(_entry)?\\.h")},
        {Library::Codes, "ZXing", std::regex("ZXing/.*")},
    };
    return all;
}

struct Row {
    std::string folder;
    std::vector<std::string> ours; ///< Folders of ours that it may use beside itself.
    std::set<Library> outside;     ///< Libraries that it may use beside the standard one and libexpected.
};

/// What each folder may use. The row of the deepest folder that holds a file counts.
const std::vector<Row>& table() {
    using enum Library;
    static const std::vector<Row> rows{
        {"libcore/specimen", {}, {Eigen}},
        {"libcore/measure", {"libcore/specimen"}, {Eigen, Log}},
        {"libcore/pith", {"libcore/specimen"}, {Eigen, Log}},
        {"libcore/dating", {"libcore/specimen"}, {Eigen, Log}},
        // measure: the year of the pith. dating: the growing season.
        {"libcore/field", {"libcore/specimen", "libcore/measure", "libcore/dating"}, {}},
        // What follows from dated series. dating: series by year.
        {"libcore/results", {"libcore/specimen", "libcore/measure", "libcore/dating"}, {Eigen, Log}},
        {"libcore/edit", {"libcore/specimen"}, {Json, Log}},
        {"libcore/review", {"libcore/specimen", "libcore/edit"}, {Log}},
        // How far the work on a core is.
        {"libcore/progress", {"libcore/specimen"}, {}},
        // measure: a reading's JSON tells where on the path each boundary lies. dating: its results are written.
        // results: a climate series is read, and what it gives is written.
        {"libcore/formats",
         {"libcore/specimen", "libcore/measure", "libcore/dating", "libcore/results"},
         {Json, Csv, Log, System}},
        // The system's headers: whether the file is still the one that was opened.
        // measure: the age that a core tells is written with it. formats: a copy is whole or not there.
        // field: findings about the cores of a tree follow the edits of each.
        {"libcore/record",
         {"libcore/specimen", "libcore/measure", "libcore/edit", "libcore/review", "libcore/formats", "libcore/field"},
         {Qt, Log, System}},
        // Statistics that outliers don't move.
        {"libimaging/robust", {}, {}},
        {"libimaging/scan", {"libcore/specimen"}, {OpenCv, Vips, Log, System}},
        {"libimaging/calibrate", {"libcore/specimen", "libimaging/robust", "libimaging/scan"}, {OpenCv, Eigen, Log}},
        // Codes on labels and mounts.
        {"libimaging/code", {"libcore/specimen", "libimaging/scan"}, {OpenCv, Codes}},
        // code: what is a code is no core.
        {"libimaging/strip",
         {"libcore/specimen", "libimaging/robust", "libimaging/scan", "libimaging/code"},
         {OpenCv, Eigen, Log}},
        {"libimaging/boundary",
         {"libcore/specimen", "libimaging/robust", "libimaging/scan", "libimaging/strip"},
         {OpenCv, Eigen, Log}},
        // Which core of a scan is which.
        {"libimaging/label", {"libcore/specimen", "libcore/field", "libimaging/boundary"}, {}},
        {"app", {"libcore", "libimaging", "app"}, {CommandLine, Log}},
        // The commands need no display; what they draw, report/ draws for them.
        {"app/batch", {"libcore", "libimaging", "app/report"}, {CommandLine, Log}},
        // The window, from its words to the whole: each folder uses those above it.
        {"app/bench/look", {"libcore"}, {Qt}},
        {"app/bench/actions", {"libcore", "app/bench/look"}, {Qt}},
        {"app/bench/model", {"libcore", "libimaging", "app/picture"}, {Qt}},
        {"app/bench/exporting",
         {"libcore", "libimaging", "app/picture", "app/report", "app/bench/actions", "app/bench/look",
          "app/bench/model"},
         {Qt}},
        {"app/bench/control", {"libcore", "libimaging", "app/picture", "app/bench/exporting", "app/bench/model"}, {Qt}},
        {"app/bench/tools", {"libcore", "app/picture"}, {Qt}},
        {"app/bench/scan_view",
         {"libcore", "libimaging", "app/picture", "app/bench/look", "app/bench/model", "app/bench/tools"},
         {Qt}},
        {"app/bench/lanes", {"libcore", "libimaging", "app/picture", "app/bench/look", "app/bench/model"}, {Qt, Plot}},
        {"app/bench/panels",
         {"libcore", "libimaging", "app/picture", "app/bench/look", "app/bench/model", "app/bench/control"},
         {Qt}},
        {"app/bench/window",
         {"libcore", "libimaging", "app/picture", "app/bench", "app/project", "app/progress", "app/review", "app/site"},
         {Qt}},
        // A project at the bench: its store, what it holds, how the two are tied.
        {"app/project",
         {"libcore", "libimaging", "app/picture", "app/bench/look", "app/bench/model", "app/bench/control"},
         {Qt}},
        // The second person's work: what waits, a core to be looked at, its history.
        {"app/review",
         {"libcore", "libimaging", "app/picture", "app/bench/look", "app/bench/model", "app/bench/scan_view",
          "app/bench/lanes", "app/bench/panels", "app/project"},
         {Qt}},
        // The site by its series: dating, and what is done about a slip.
        {"app/site",
         {"libcore", "app/picture", "app/bench/look", "app/bench/model", "app/bench/panels", "app/project"},
         {Qt}},
        // How far the work on each core is. site: whether its years hold against the others.
        {"app/progress",
         {"libcore", "app/picture", "app/bench/look", "app/bench/model", "app/project", "app/site"},
         {Qt}},
        // How a core is drawn, in the window and in a file alike.
        {"app/picture", {"libcore", "libimaging"}, {Qt}},
        {"app/report", {"libcore", "libimaging", "app/picture"}, {Qt}},
        // Labels with codes, and sheets for the field.
        {"app/report/labels", {"libcore", "app/report"}, {Qt, Codes}},
        {"app/report/package", {"libcore", "app/report"}, {Qt, System, Zip}},
        // The maker knows nothing of what is to read its scans.
        {"demo-scans/maker", {"libcore"}, {CommandLine, Json, Vips}},
    };
    return rows;
}

bool within(std::string_view file, std::string_view folder) {
    return file.size() > folder.size() && file.starts_with(folder) && file[folder.size()] == '/';
}

const Row* row_of(const std::string& file) {
    const Row* deepest = nullptr;
    for (const Row& row : table()) {
        if (within(file, row.folder) && (!deepest || row.folder.size() > deepest->folder.size())) {
            deepest = &row;
        }
    }
    return deepest;
}

std::optional<std::string> objection_to_ours(const Row& row, const std::string& name) {
    if (!std::filesystem::is_regular_file(top() / name)) {
        return "no such file, written from the top folder";
    }
    const bool allowed = within(name, row.folder) ||
                         std::ranges::any_of(row.ours, [&](const std::string& folder) { return within(name, folder); });
    return allowed ? std::nullopt : std::optional(row.folder + " may not use it");
}

std::optional<std::string> objection_to_outside(const Row& row, const std::string& name) {
    const auto library = std::ranges::find_if(
        libraries(), [&](const LibraryHeaders& known) { return std::regex_match(name, known.headers); });
    if (library == libraries().end()) {
        return "of no library that the project uses";
    }
    const bool allowed = library->library == Library::Standard || library->library == Library::Expected ||
                         row.outside.contains(library->library);
    return allowed ? std::nullopt : std::optional(row.folder + " may not use " + library->name);
}

} // namespace

std::optional<std::string> objection(const std::string& file, const Include& include) {
    const Row* row = row_of(file);
    if (!row) {
        return "its folder has no row in the table of dependencies";
    }
    return include.quoted ? objection_to_ours(*row, include.name) : objection_to_outside(*row, include.name);
}

} // namespace pithward::house
