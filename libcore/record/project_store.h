#pragma once

#include "libcore/record/connection.h"
#include "libcore/record/project.h"

#include <functional>

namespace pithward::record {

/// The connection, and the reading that was edited last: most edits follow one on the same reading.
class Project::Store {
public:
    explicit Store(std::unique_ptr<Connection> connection)
        : connection_(std::move(connection)) {}

    [[nodiscard]] const Connection& connection() const { return *connection_; }

    /// Runs a change and what it leaves in the history as one transaction.
    Outcome<void> change(const std::function<Outcome<void>()>& parts);

    [[nodiscard]] Outcome<Document> load(ReadingId id) const;

    using Making = std::function<Outcome<bool>(Document&)>;

    /// Changes the document of a reading and writes what that left in its log.
    Outcome<std::optional<EditRecord>> make(ReadingId id, const Making& making);

private:
    /// Loads the document unless it is there and as the file holds it. Within the transaction, so it stays so.
    Outcome<void> refresh(ReadingId id);
    Outcome<void> write(ReadingId id, const EditRecord& record);

    std::unique_ptr<Connection> connection_;
    std::optional<Document> document_;
};

} // namespace pithward::record
