#include "app/batch/output_files.h"

#include "libcore/formats/whole_file.h"

#include <algorithm>
#include <filesystem>
#include <iostream>

namespace pithward::batch {

namespace fs = std::filesystem;

namespace {

bool same_file(const std::string& a, const std::string& b) {
    std::error_code error;
    if (fs::equivalent(a, b, error)) {
        return true;
    }
    return fs::weakly_canonical(fs::absolute(a), error) == fs::weakly_canonical(fs::absolute(b), error);
}

Outcome<void> check_one(const OutputFile& output, std::span<const std::string> inputs, bool force) {
    if (output.file == "-") {
        return output.streams ? Outcome<void>()
                              : fail(output.option, "this can't go to standard output", "name a file");
    }
    for (const std::string& input : inputs) {
        if (same_file(output.file, input)) {
            return fail(output.file, "this is the file that is read", "name another file for " + output.option);
        }
    }
    return check_whole_file(output.file, force);
}

} // namespace

Outcome<void> check_outputs(std::span<const OutputFile> outputs, std::span<const std::string> inputs, bool force) {
    std::vector<const OutputFile*> wanted;
    for (const OutputFile& output : outputs) {
        if (output.file.empty()) {
            continue;
        }
        if (auto usable = check_one(output, inputs, force); !usable) {
            return usable;
        }
        const auto twin =
            std::ranges::find_if(wanted, [&](const OutputFile* other) { return same_file(other->file, output.file); });
        if (twin != wanted.end()) {
            const std::string both = (*twin)->option + " and " + output.option;
            return output.file == "-" ? fail(both, "both go to standard output", "name a file for one of them")
                                      : fail(output.file, both + " name the same file", "give each a file of its own");
        }
        wanted.push_back(&output);
    }
    return {};
}

Outcome<void> write_outputs(std::span<const OutputBytes> outputs, bool force) {
    for (const OutputBytes& output : outputs) {
        const auto put = [&](std::ostream& out) -> Outcome<void> {
            out.write(output.bytes.data(), std::ssize(output.bytes));
            return {};
        };
        if (output.file != "-") {
            if (auto written = write_whole_file(output.file, force, put); !written) {
                return written;
            }
            continue;
        }
        (void)put(std::cout);
        if (!std::cout.flush()) {
            return fail("", "standard output can't be written", "check where it goes, and the space left there");
        }
    }
    return {};
}

} // namespace pithward::batch
