#pragma once

#include "app/bench/actions/action_table.h"
#include "app/bench/model/opened_scan.h"
#include "app/picture/measured_core.h"

#include <functional>
#include <memory>
#include <span>
#include <string>
#include <vector>

namespace pithward::bench {

/// What is exported: all readings of one scan.
struct ExportInput {
    std::shared_ptr<const OpenedScan> scan;
    std::vector<picture::MeasuredCore> cores;
    std::vector<std::string> other_scans{}; ///< Paths of the bench's other scans: no export goes over any of them.
};

/// A file's content, and what a person should know of it.
struct ExportBytes {
    std::string bytes;
    std::vector<std::string> remarks;
};

/// A form in which readings leave the bench. A new one is one line in the list of exports.cpp.
struct ExportFormat {
    ActionId action;
    const char* name; ///< For the file dialog; translated in the context "Exports".
    const char* suffix;
    std::function<Outcome<ExportBytes>(const ExportInput& input, const Work& work)> bytes;
};

[[nodiscard]] std::span<const ExportFormat> export_formats();

/// Refused where the file to write is a scan of the bench: it may be the only one of its core.
[[nodiscard]] Outcome<void> spare_scans(const std::string& path, const ExportInput& input);

/// Writes what was made, whole or not at all; the person has said that it may be written over.
[[nodiscard]] Outcome<void> write_export(const std::string& path, const ExportBytes& made);

/// Makes the bytes and writes them to a file, whole or not at all; the person has said that it may be written over.
/// Answers with what they should know of it.
[[nodiscard]] Outcome<std::vector<std::string>> export_to(const std::string& path, const ExportFormat& format,
                                                          const ExportInput& input, const Work& work);

/// A name to begin with: that of the scan with the format's suffix, and never the scan's own.
[[nodiscard]] std::string proposed_name(const OpenedScan& scan, const ExportFormat& format);

} // namespace pithward::bench
