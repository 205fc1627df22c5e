#include "app/project/project_list.h"

#include "app/bench/look/wording.h"
#include "app/project/state_words.h"

#include <QHeaderView>
#include <QSignalBlocker>

namespace pithward::bench {

namespace {

constexpr int core_id_role = Qt::UserRole;

QString findings_in_words(const record::ReadingEntry* reading) {
    return reading != nullptr && reading->open_findings > 0
               ? ProjectList::tr("%n open", nullptr, reading->open_findings)
               : QString();
}

} // namespace

ProjectList::ProjectList(const ProjectDesk& desk, QWidget* parent)
    : QTreeWidget(parent)
    , desk_(desk) {
    setAccessibleName(tr("Cores of the project"));
    setColumnCount(3);
    setHeaderLabels({tr("Core"), tr("State"), tr("Findings")});
    header()->setStretchLastSection(false);
    header()->setSectionResizeMode(0, QHeaderView::Stretch);
    header()->setSectionResizeMode(1, QHeaderView::ResizeToContents);
    header()->setSectionResizeMode(2, QHeaderView::ResizeToContents);
    setFrameShape(QFrame::NoFrame);
    setRootIsDecorated(false);
    setUniformRowHeights(true);
    setMinimumSize(170, 60);
    connect(&desk_, &ProjectDesk::overview_changed, this, &ProjectList::refill);
    connect(this, &QTreeWidget::currentItemChanged, this, [this](const QTreeWidgetItem* item) {
        if (item != nullptr) {
            emit core_chosen(core_at(item));
        }
    });
}

record::CoreId ProjectList::core_at(const QTreeWidgetItem* item) {
    return {item->data(0, core_id_role).toLongLong()};
}

void ProjectList::refill() {
    const QSignalBlocker quiet(this);
    const auto& cores = desk_.overview().cores;
    while (topLevelItemCount() > static_cast<int>(cores.size())) {
        delete takeTopLevelItem(topLevelItemCount() - 1);
    }
    for (int i = 0; i < static_cast<int>(cores.size()); ++i) {
        const record::CoreEntry& core = cores[static_cast<std::size_t>(i)];
        const record::ReadingEntry* reading = accepted_of(desk_.overview(), core.id);
        QTreeWidgetItem* item = i < topLevelItemCount() ? topLevelItem(i) : new QTreeWidgetItem(this);
        item->setData(0, core_id_role, QVariant::fromValue(core.id.value));
        item->setText(0, QString::fromStdString(core.core.id));
        item->setToolTip(0, in_full(core.site, core.tree, core.core));
        item->setText(1, reading != nullptr ? state_in_words(reading->state) : tr("not read"));
        item->setText(2, findings_in_words(reading));
    }
    show_present();
}

void ProjectList::show_present() {
    const QSignalBlocker quiet(this);
    const auto present = desk_.present();
    for (int i = 0; present && i < topLevelItemCount(); ++i) {
        if (core_at(topLevelItem(i)) == *present) {
            setCurrentItem(topLevelItem(i));
        }
    }
}

std::optional<record::CoreId> ProjectList::next_to_do() const {
    const auto& cores = desk_.overview().cores;
    const auto here = std::ranges::find(cores, desk_.present().value_or(record::CoreId{}), &record::CoreEntry::id);
    const std::size_t start = here == cores.end() ? 0 : static_cast<std::size_t>(here - cores.begin()) + 1;
    std::optional<record::CoreId> first;
    for (std::size_t i = 0; i < cores.size(); ++i) {
        const record::CoreEntry& core = cores[(start + i) % cores.size()];
        const record::ReadingEntry* reading = accepted_of(desk_.overview(), core.id);
        if (reading != nullptr && reading->state == "returned") {
            return core.id;
        }
        const bool to_do = !core.core.scan.empty() && (reading == nullptr || reading->state == "proposed");
        if (to_do && !first) {
            first = core.id;
        }
    }
    return first;
}

} // namespace pithward::bench
