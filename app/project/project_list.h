#pragma once

#include "app/project/project_desk.h"

#include <QTreeWidget>

namespace pithward::bench {

/// The cores of a project, each with the state of its accepted reading and how many findings are open.
class ProjectList : public QTreeWidget {
    Q_OBJECT

public:
    explicit ProjectList(const ProjectDesk& desk, QWidget* parent = nullptr);

    void show_present();
    /// The next core that waits for its analyst, after the present one and round the end: returned ones first, then
    /// those that are proposed or not read. Nothing where all are marked or passed.
    [[nodiscard]] std::optional<record::CoreId> next_to_do() const;

signals:
    void core_chosen(pithward::record::CoreId id);

private:
    void refill();
    [[nodiscard]] static record::CoreId core_at(const QTreeWidgetItem* item);

    const ProjectDesk& desk_;
};

} // namespace pithward::bench
