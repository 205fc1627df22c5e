#pragma once

#include <filesystem>
#include <string>
#include <string_view>

namespace pithward::test {

/// A folder of its own, with a space and a non-ASCII letter in its name, gone with the object.
class TemporaryFolder {
public:
    TemporaryFolder();
    ~TemporaryFolder();
    TemporaryFolder(const TemporaryFolder&) = delete;
    TemporaryFolder& operator=(const TemporaryFolder&) = delete;

    [[nodiscard]] std::string file(std::string_view name) const { return (path_ / name).string(); }
    /// Writes bytes as they are; the file's path.
    [[nodiscard]] std::string write(std::string_view name, std::string_view bytes) const;

private:
    std::filesystem::path path_;
};

/// The bytes of a file.
[[nodiscard]] std::string bytes_of(const std::string& file);

} // namespace pithward::test
