#pragma once

#include "app/project/project_desk.h"
#include "libcore/field/scan_place.h"
#include "libcore/record/scans_to_settle.h"

#include <QObject>
#include <QStringList>
#include <optional>
#include <string>
#include <vector>

namespace pithward::bench {

/// What a person does about scans that match no core, and cores that have no scan, without a window. Each step is a
/// change of the core's field data: it stands in the history, and can be taken back.
class ScanSettling : public QObject {
    Q_OBJECT

public:
    explicit ScanSettling(ProjectDesk& desk, QObject* parent = nullptr);

    /// What is to be settled, as it was last looked at.
    [[nodiscard]] const record::ScansToSettle& open() const { return open_; }
    /// Looks anew; `changed` comes when it is known.
    void look();

    /// Whether a core's scan can be changed: one that is read keeps it.
    [[nodiscard]] bool can_change(record::CoreId core) const;
    /// Gives a core a scan, with its place on it where it shows several.
    void give(record::CoreId core, const std::string& scan, const std::optional<field::ScanPlace>& place);
    /// Leaves a core without a scan.
    void take_from(record::CoreId core);
    /// Takes back the last step made here; `last` says which, empty where there is none.
    void take_back();
    [[nodiscard]] QString last() const { return changes_.empty() ? QString() : changes_.back().what; }
    /// Enters scans that came later. They have to lie in the project's folder or below.
    void add(const QStringList& files);

signals:
    void changed();
    void told(const QString& message);

private:
    struct Change {
        record::CoreEntry before;
        record::CoreEntry after;
        QString what;
    };
    void make(const Change& change, bool keep);
    void note(const std::string& scan);

    ProjectDesk& desk_;
    record::ScansToSettle open_;
    bool making_ = false;         ///< A step is on its way: the next one waits for what it leads to.
    std::vector<Change> changes_; ///< Made here since the project was opened.
};

} // namespace pithward::bench
