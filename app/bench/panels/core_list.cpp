#include "app/bench/panels/core_list.h"

#include <QHeaderView>
#include <QSignalBlocker>

namespace pithward::bench {

namespace {

constexpr int scan_role = Qt::UserRole;
constexpr int core_role = Qt::UserRole + 1;

} // namespace

CoreList::CoreList(const BenchModel& model, QWidget* parent)
    : QTreeWidget(parent)
    , model_(model) {
    setAccessibleName(tr("Scans and cores"));
    setColumnCount(2);
    setHeaderHidden(true);
    header()->setStretchLastSection(false);
    header()->setSectionResizeMode(0, QHeaderView::Stretch);
    header()->setSectionResizeMode(1, QHeaderView::ResizeToContents);
    setFrameShape(QFrame::NoFrame);
    setIndentation(14);
    setMinimumHeight(60);
    connect(&model_, &BenchModel::changed, this, [this](BenchModel::Changes changes) {
        if (changes & (BenchModel::ScanList | BenchModel::Cores | BenchModel::ShownScan)) {
            refill();
        }
        show_present();
    });
    connect(this, &QTreeWidget::currentItemChanged, this, [this](QTreeWidgetItem* item) {
        if (item == nullptr) {
            return;
        }
        const int scan = item->data(0, scan_role).toInt();
        if (item->data(0, core_role).isValid()) {
            emit core_chosen(scan, item->data(0, core_role).toInt());
        } else {
            emit scan_chosen(scan);
        }
    });
}

void CoreList::refill() {
    const QSignalBlocker quiet(this);
    clear();
    for (const BenchScan& scan : model_.scans()) {
        auto* top = new QTreeWidgetItem(this, {QString::fromStdString(scan.opened->name())});
        top->setData(0, scan_role, scan.id);
        top->setToolTip(0, QString::fromStdString(scan.opened->path));
        for (int i = 0; i < static_cast<int>(scan.cores.size()); ++i) {
            const auto rings = static_cast<int>(scan.cores[static_cast<std::size_t>(i)].series.rings.size());
            const bool part = model_.taken_in(scan.cores[static_cast<std::size_t>(i)].reading);
            const QString told = part ? tr("part of another") : tr("%n rings", nullptr, rings);
            auto* core = new QTreeWidgetItem(top, {tr("Core %1").arg(i + 1), told});
            core->setData(0, scan_role, scan.id);
            core->setData(0, core_role, i);
            core->setTextAlignment(1, Qt::AlignRight | Qt::AlignVCenter);
        }
        if (scan.searched && scan.cores.empty()) {
            top->setText(1, tr("no core"));
        }
        top->setExpanded(true);
    }
}

void CoreList::show_present() {
    const QSignalBlocker quiet(this);
    const BenchScan* shown = model_.scan();
    for (int i = 0; shown != nullptr && i < topLevelItemCount(); ++i) {
        QTreeWidgetItem* top = topLevelItem(i);
        const bool home = model_.core() != nullptr ? model_.home()->id == top->data(0, scan_role).toInt()
                                                   : shown->id == top->data(0, scan_role).toInt();
        if (home) {
            QTreeWidgetItem* core = top->child(model_.core_index());
            setCurrentItem(core != nullptr ? core : top);
        }
    }
}

} // namespace pithward::bench
