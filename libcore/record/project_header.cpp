#include "libcore/record/project_header.h"

#include <array>
#include <fstream>
#include <string>
#include <string_view>

namespace pithward::record {

namespace {

constexpr std::size_t header_bytes = 100;
constexpr std::string_view sqlite_magic("SQLite format 3\0", 16);
constexpr std::size_t page_size_at = 16;
constexpr std::size_t change_counter_at = 24;
constexpr std::size_t page_count_at = 28;
constexpr std::size_t user_version_at = 60;
constexpr std::size_t application_id_at = 68;
constexpr std::size_t valid_for_at = 92;

std::uint32_t big_endian(std::string_view bytes, std::size_t at, std::size_t count) {
    std::uint32_t value = 0;
    for (std::size_t i = 0; i < count; ++i) {
        value = value << 8U | static_cast<unsigned char>(bytes[at + i]);
    }
    return value;
}

} // namespace

Fault no_project(const std::filesystem::path& file) {
    std::error_code unknown;
    const char* remedy = "choose a file that ends in .pithward";
    if (std::filesystem::is_regular_file(file, unknown) && std::filesystem::file_size(file, unknown) == 0) {
        remedy = "the file is empty: use a copy from before";
    } else if (file.extension() == ".pithward") {
        remedy = "if it was one, it is damaged: use a copy from before; nothing was changed";
    }
    return {file.string(), "this is no project of Pithward", remedy};
}

Fault newer_than_known(const std::filesystem::path& file, std::int64_t version) {
    return {file.string(),
            "a newer Pithward wrote this project (version " + std::to_string(version) +
                " of its tables; this one knows " + std::to_string(project_version) + ")",
            "open it with that one; nothing was changed"};
}

std::optional<Fault> fault_of_header(const std::filesystem::path& file) {
    std::error_code error;
    const auto status = std::filesystem::status(file, error);
    if (!std::filesystem::exists(status)) {
        return Fault{file.string(), "there is no such project", "check its name, or make one with pithward create"};
    }
    if (!std::filesystem::is_regular_file(status)) {
        return no_project(file);
    }
    std::array<char, header_bytes> bytes{};
    std::ifstream in(file, std::ios::binary);
    if (!in) {
        return Fault{file.string(), "the file can't be read", "ask for permission"};
    }
    in.read(bytes.data(), bytes.size());
    const std::string_view header(bytes.data(), static_cast<std::size_t>(in.gcount()));
    if (header.size() < header_bytes || !header.starts_with(sqlite_magic)) {
        return no_project(file);
    }
    const std::filesystem::path log = file.string() + "-wal";
    const std::filesystem::path journal = file.string() + "-journal";
    if (std::filesystem::exists(log, error) || std::filesystem::exists(journal, error)) {
        return std::nullopt; // the last word on the header is in there
    }
    if (big_endian(header, application_id_at, 4) != project_application_id) {
        return no_project(file);
    }
    if (const std::uint32_t version = big_endian(header, user_version_at, 4); version > project_version) {
        return newer_than_known(file, version);
    }
    const std::uint32_t coded = big_endian(header, page_size_at, 2);
    const std::uint64_t page_size = coded == 1 ? 65536 : coded;
    const std::uint64_t pages = big_endian(header, page_count_at, 4);
    const bool counted = big_endian(header, change_counter_at, 4) == big_endian(header, valid_for_at, 4);
    if (counted && page_size * pages > std::filesystem::file_size(file, error)) {
        return Fault{file.string(), "the file is cut short", "use a copy from before; nothing was changed"};
    }
    return std::nullopt;
}

} // namespace pithward::record
