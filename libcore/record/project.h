#pragma once

#include "libcore/edit/document.h"
#include "libcore/measure/age.h"
#include "libcore/record/project_values.h"
#include "libcore/review/comparison.h"
#include "libcore/specimen/outcome.h"

#include <filesystem>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace pithward::record {

/// A project on disk: one file, and what is read from and written to it. Each function that changes something answers
/// when the change is on the disk whole, or fails and has changed nothing (docs/record.md). Used on the thread that
/// opened it; a window hands it to a thread of its own.
class Project {
public:
    enum class Access {
        Read,
        Write,
        AsAllowed, ///< Write; read where the file or its folder can't be written to.
    };

    /// Makes a new project from what a field sheet says and the scans that were found. Fails on a file that is there.
    [[nodiscard]] static Outcome<Project> create(const std::filesystem::path& file, std::span<const Site> sites,
                                                 std::span<const ScanEntry> scans, const EditStamp& stamp);
    /// Opens a project. Older tables are brought up to date first, after a copy was made; newer ones are refused, and
    /// so is what is no project. After an unclean end the whole file is looked at.
    [[nodiscard]] static Outcome<Project> open(const std::filesystem::path& file, Access access,
                                               Disk disk = Disk::AsFound);
    ~Project();
    Project(Project&&) noexcept;
    Project& operator=(Project&&) noexcept;

    [[nodiscard]] const std::filesystem::path& file() const;
    /// Whether it is open for writing.
    [[nodiscard]] bool can_change() const;
    /// The folder that the scans' paths start from.
    [[nodiscard]] std::filesystem::path folder() const;
    /// What a person should know of how the file is kept; mostly empty.
    [[nodiscard]] const std::string& remark() const;

    [[nodiscard]] Outcome<std::vector<CoreEntry>> cores() const;
    [[nodiscard]] Outcome<std::vector<ReadingEntry>> readings() const;
    [[nodiscard]] Outcome<std::vector<ScanEntry>> scans() const;
    [[nodiscard]] Outcome<std::vector<Person>> people() const;
    /// Oldest first; of one core, or of all and of the project itself.
    [[nodiscard]] Outcome<std::vector<HistoryEntry>> history(std::optional<CoreId> core = std::nullopt) const;
    [[nodiscard]] Outcome<Reading> reading(ReadingId id) const;
    /// The reading with the log of its edits.
    [[nodiscard]] Outcome<Document> document(ReadingId id) const;

    /// Puts a reading under a core, made `readied` and with a number of its own. `label` tells of it in the history.
    /// The first reading of a core is its accepted one.
    Outcome<ReadingId> add_reading(CoreId core, Reading reading, const std::string& label, const EditStamp& stamp);
    enum class Beside { Others, None };
    /// The same, with Beside::None only where the core has no reading yet; nothing where it has. Two that measure a
    /// project at once do not read a core twice.
    Outcome<std::optional<ReadingId>> add_reading(CoreId core, Reading reading, const std::string& label,
                                                  const EditStamp& stamp, Beside beside);
    /// Says which reading of a core stands for it.
    Outcome<void> accept(ReadingId reading, const EditStamp& stamp);
    /// Adds a scan, or tells its size and checksum anew; the checksum may come later, since it takes long.
    Outcome<void> put_scan(const ScanEntry& scan, const EditStamp& stamp);
    /// Changes the field data of a core, of its tree and its site, from `before` to `after`; identifiers stay. `label`
    /// tells of it in the history. Refused where what is to change is no longer as `before` has it.
    Outcome<void> put_details(const CoreEntry& before, const CoreEntry& after, const std::string& label,
                              const EditStamp& stamp);
    /// Enters who works on the project, or gives them another role.
    Outcome<void> put_person(const Person& person, const EditStamp& stamp);

    /// Makes an edit of a reading, on what the file holds by now. An edit that another window's edit of the same object
    /// has overtaken is refused. Nothing where the edit changes nothing.
    Outcome<std::optional<EditRecord>> edit(ReadingId reading, const Edit& edit, const EditStamp& stamp);
    /// As Document::undo, redo and take_back.
    Outcome<std::optional<EditRecord>> undo(ReadingId reading, const EditStamp& stamp);
    Outcome<std::optional<EditRecord>> redo(ReadingId reading, const EditStamp& stamp);
    Outcome<std::optional<EditRecord>> take_back(ReadingId reading, EditId record, const EditStamp& stamp);

    /// A number that grows when another window has changed the project: then look again.
    [[nodiscard]] Outcome<std::int64_t> changes_by_others() const;
    /// Reads the whole file and says what is wrong with it.
    [[nodiscard]] Outcome<void> check() const;
    /// A copy of the project as it is, while windows have it open or not; whole and on the disk, or not there.
    [[nodiscard]] Outcome<void> copy_to(const std::filesystem::path& copy) const;

private:
    class Store;
    explicit Project(std::unique_ptr<Store> store);
    std::unique_ptr<Store> store_;
};

/// The time now, as an EditStamp and the history hold it: "2024-06-30T12:00:00.123Z".
[[nodiscard]] std::string utc_now();

/// Two readings of one core held against each other.
struct ReadingComparison {
    CoreId core;
    ReadingId first;
    ReadingId second;
    review::Comparison comparison;
    std::vector<PlacedBoundary> only_first; ///< The boundaries that `comparison` names so, where they lie on its path.
    std::vector<PlacedBoundary> only_second;
};

/// The age of a tree by one core's accepted reading.
struct CoreAge {
    CoreId core;
    Age age;
};

/// The cores of a project with their readings, and who works on it, as JSON (docs/record.md).
[[nodiscard]] std::string project_json(std::span<const CoreEntry> cores, std::span<const ReadingEntry> readings,
                                       std::span<const ReadingComparison> comparisons = {},
                                       std::span<const CoreAge> ages = {}, std::span<const Person> people = {});

} // namespace pithward::record
