#include "app/report/package/package_files.h"

#include "app/report/package/zip_file.h"
#include "libcore/formats/text_input.h"
#include "libcore/formats/whole_file.h"

#include <unistd.h>

#include <QByteArray>
#include <QCryptographicHash>
#include <fstream>
#include <set>
#include <sstream>

namespace pithward::report {

namespace fs = std::filesystem;

namespace {

bool is_zip(const fs::path& out) {
    return formats::lower_case(out.extension().string()) == ".zip";
}

/// Without a slash at its end.
fs::path named(const fs::path& out) {
    return out.has_filename() ? out : out.parent_path();
}

/// Nothing is in it but what its checksums name.
bool only_a_package(const fs::path& folder) {
    std::set<std::string> own{checksums_name};
    std::ifstream sums(folder / checksums_name);
    constexpr std::size_t name_at = 66; // After 64 digits and two blanks.
    for (std::string line; std::getline(sums, line);) {
        if (line.size() > name_at) {
            own.insert(line.substr(name_at));
        }
    }
    std::error_code error;
    for (const auto& entry : fs::directory_iterator(folder, error)) {
        if (!own.contains(entry.path().filename().string()) || !entry.is_regular_file(error)) {
            return false;
        }
    }
    return !error;
}

Outcome<void> write_folder(const fs::path& out, const std::vector<PackageFile>& files, bool force) {
    fs::path part = out;
    part += "." + std::to_string(::getpid()) + ".part";
    std::error_code error;
    if (!fs::create_directory(part, error)) {
        return fail(out.string(), "the folder can't be made: " + error.message(), "name another folder");
    }
    const auto broken = [&](Fault fault) {
        fs::remove_all(part, error);
        return tl::unexpected(std::move(fault));
    };
    for (const PackageFile& file : files) {
        auto written = write_whole_file(part / file.name, false, [&](std::ostream& to) -> Outcome<void> {
            to.write(file.bytes.data(), std::ssize(file.bytes));
            return {};
        });
        if (!written) {
            return broken(std::move(written.error()));
        }
    }
    if (auto free = check_package_place(out, force); !free) {
        return broken(std::move(free.error()));
    }
    fs::path old = out;
    old += "." + std::to_string(::getpid()) + ".old";
    const bool replaces = fs::exists(out, error);
    if (replaces) {
        fs::rename(out, old, error);
        if (error) {
            return broken({out.string(), "it can't be replaced: " + error.message(), "name another folder"});
        }
    }
    fs::rename(part, out, error);
    if (error) {
        Fault fault{out.string(), "it can't be written: " + error.message(), "name another folder"};
        if (replaces) {
            fs::rename(old, out, error);
        }
        return broken(std::move(fault));
    }
    if (replaces) {
        fs::remove_all(old, error);
    }
    return {};
}

} // namespace

std::vector<PackageFile> with_checksums(std::vector<PackageFile> files) {
    std::string sums;
    for (const PackageFile& file : files) {
        const QByteArray bytes = QByteArray::fromRawData(file.bytes.data(), std::ssize(file.bytes));
        sums += QCryptographicHash::hash(bytes, QCryptographicHash::Sha256).toHex().toStdString();
        sums += "  " + file.name + "\n";
    }
    files.push_back({checksums_name, std::move(sums)});
    return files;
}

Outcome<void> check_package_place(const fs::path& wanted, bool force) {
    const fs::path out = named(wanted);
    if (is_zip(out)) {
        return check_whole_file(out, force);
    }
    std::error_code error;
    const fs::path folder = out.has_parent_path() ? out.parent_path() : fs::path(".");
    if (!fs::is_directory(folder, error)) {
        return fail(out.string(), "there is no folder " + folder.string(), "make it, or name another place");
    }
    if (!fs::exists(fs::symlink_status(out, error))) {
        return ::access(folder.c_str(), W_OK | X_OK) == 0
                   ? Outcome<void>()
                   : fail(out.string(), "the folder around it can't be written to", "name another place");
    }
    if (!fs::is_directory(fs::symlink_status(out, error))) {
        return fail(out.string(), "this is no folder", "name a folder, or a file that ends in .zip");
    }
    if (!force) {
        return fail(out.string(), "this folder exists already", "choose another name, or replace it with --force");
    }
    return only_a_package(out) ? Outcome<void>()
                               : fail(out.string(), "this folder holds more than a package", "name another folder");
}

Outcome<void> write_package(const fs::path& wanted, const std::vector<PackageFile>& files, bool force) {
    const fs::path out = named(wanted);
    if (!is_zip(out)) {
        return write_folder(out, files, force);
    }
    const auto bytes = zip_bytes(out.stem().string(), files);
    if (!bytes) {
        return fail(out.string(), bytes.error().what, bytes.error().remedy);
    }
    return write_whole_file(out, force, [&](std::ostream& to) -> Outcome<void> {
        to.write(bytes->data(), std::ssize(*bytes));
        return {};
    });
}

} // namespace pithward::report
