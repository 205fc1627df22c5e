#pragma once

#include "libcore/specimen/ids.h"
#include "libcore/specimen/site.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace pithward::record {

/// What a project lies on: a network folder is kept otherwise (docs/record.md).
enum class Disk {
    AsFound, ///< What the system says.
    Network, ///< A network folder, whatever the system says.
};

using CoreId = Id<struct CoreTag>;

/// A core of a project with what the field sheet says of its tree and site (both without their cores and trees).
struct CoreEntry {
    CoreId id;
    Site site;
    Tree tree;
    Core core;
    std::optional<ReadingId> accepted; ///< The reading that stands for the core in exports.
    friend bool operator==(const CoreEntry&, const CoreEntry&) = default;
};

/// A scan that a project refers to.
struct ScanEntry {
    std::string path; ///< Relative to the project's folder, with / between its parts.
    std::int64_t bytes = 0;
    std::string sha256; ///< In hexadecimal; empty until computed.
    friend bool operator==(const ScanEntry&, const ScanEntry&) = default;
};

/// A reading of a project, at a glance.
struct ReadingEntry {
    ReadingId id;
    CoreId core;
    std::int64_t revision = 0; ///< How many edits it has had.
    std::string analyst;
    std::string state; ///< "proposed", "marked", "passed", "returned".
    int boundaries = 0;
    int looked_at = 0; ///< Of the boundaries ...
    int in_bulk = 0;   ///< ... and these; nobody has confirmed the rest.
    int findings = 0;
    int open_findings = 0;
    friend bool operator==(const ReadingEntry&, const ReadingEntry&) = default;

    /// Whether no person has confirmed a boundary of it or said that it is done.
    [[nodiscard]] bool unconfirmed() const { return state == "proposed" && looked_at == 0 && in_bulk == 0; }
};

/// One line of a project's history: an edit of a reading, or something that was done to the project.
struct HistoryEntry {
    std::int64_t id = 0;
    std::string at; ///< ISO 8601 in UTC.
    std::string who;
    std::string program;
    std::optional<CoreId> core = {};
    std::optional<ReadingId> reading = {};
    std::optional<EditId> edit = {};   ///< Its number within the reading.
    std::optional<EditId> undoes = {}; ///< The edit that it takes back.
    std::string label;                 ///< What was done, in words.
    std::string body;                  ///< The edit, or what was before and after, as JSON; may be empty.
    friend bool operator==(const HistoryEntry&, const HistoryEntry&) = default;
};

/// A person who works on a project. This is no access control.
struct Person {
    std::string name;
    std::string role;
    friend bool operator==(const Person&, const Person&) = default;
};

} // namespace pithward::record
