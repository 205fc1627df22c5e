#include "app/report/package/zip_file.h"

#include <archive.h>
#include <archive_entry.h>

#include <memory>

namespace pithward::report {

namespace {

la_ssize_t append(archive* /*zip*/, void* bytes, const void* piece, std::size_t size) {
    static_cast<std::string*>(bytes)->append(static_cast<const char*>(piece), size);
    return static_cast<la_ssize_t>(size);
}

bool add_file(archive& zip, const std::string& path_inside, const std::string& bytes) {
    const std::unique_ptr<archive_entry, decltype(&archive_entry_free)> entry(archive_entry_new(), archive_entry_free);
    constexpr int readable = 0644;
    constexpr int first_of_1980 = 315532800; // The least date that a zip knows, as seconds.
    archive_entry_set_pathname_utf8(entry.get(), path_inside.c_str());
    archive_entry_set_size(entry.get(), std::ssize(bytes));
    archive_entry_set_filetype(entry.get(), AE_IFREG);
    archive_entry_set_perm(entry.get(), readable);
    archive_entry_set_mtime(entry.get(), first_of_1980, 0);
    return archive_write_header(&zip, entry.get()) == ARCHIVE_OK &&
           archive_write_data(&zip, bytes.data(), bytes.size()) == std::ssize(bytes);
}

} // namespace

Outcome<std::string> zip_bytes(const std::string& folder, const std::vector<PackageFile>& files) {
    std::string bytes;
    const std::unique_ptr<archive, decltype(&archive_write_free)> zip(archive_write_new(), archive_write_free);
    bool good = zip && archive_write_set_format_zip(zip.get()) == ARCHIVE_OK &&
                archive_write_set_options(zip.get(), "hdrcharset=UTF-8") >= ARCHIVE_WARN &&
                archive_write_open(zip.get(), &bytes, nullptr, append, nullptr) == ARCHIVE_OK;
    for (const PackageFile& file : files) {
        good = good && add_file(*zip, folder + "/" + file.name, file.bytes);
    }
    if (!good || archive_write_close(zip.get()) != ARCHIVE_OK) {
        const char* reason = zip ? archive_error_string(zip.get()) : nullptr;
        return fail("", std::string("the zip can't be made: ") + (reason != nullptr ? reason : "no memory"),
                    "name a folder in place of a zip");
    }
    return bytes;
}

} // namespace pithward::report
