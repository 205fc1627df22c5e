#include "app/bench/panels/findings_list.h"

#include "app/bench/look/sentences.h"
#include "app/bench/look/wording.h"
#include "app/bench/panels/finding_delegate.h"
#include "app/picture/legs.h"
#include "app/picture/ring_places.h"

#include <QSignalBlocker>
#include <algorithm>
#include <utility>

namespace pithward::bench {

namespace {

constexpr int place_role = FindingDelegate::body_role + 1;
constexpr int leg_role = FindingDelegate::body_role + 2;
constexpr int kind_role = FindingDelegate::body_role + 3;

} // namespace

FindingsList::FindingsList(const BenchModel& model, QWidget* parent)
    : WrappedList(parent)
    , model_(model) {
    setAccessibleName(tr("Findings"));
    connect(&model_, &BenchModel::changed, this, &FindingsList::refill);
    connect(this, &QListWidget::itemClicked, this, &FindingsList::choose);
    connect(this, &QListWidget::itemActivated, this, &FindingsList::choose);
}

void FindingsList::refill() {
    const int row = currentRow();
    QSignalBlocker quiet(this);
    clear();
    const picture::MeasuredCore* core = model_.core();
    if (core == nullptr) {
        return;
    }
    int number = 0;
    for (const Finding& finding : core->reading.findings) {
        if (finding.state != Finding::State::Open) {
            continue;
        }
        const std::string scan = picture::scan_of_leg(core->reading, finding.leg);
        const auto ring = picture::ring_at(*core, scan, finding.at, core->half_breadth_px);
        const Ring* about = ring ? picture::ring_of(core->series, *ring) : nullptr;
        QString title = QString("%1  %2").arg(++number).arg(name_of(finding.kind));
        if (about != nullptr) {
            title += " · " + name_of(*about);
        }
        QString body = in_window_language(finding.reason);
        if (!finding.proposal.empty()) {
            body += "\n" + tr("Proposal: %1").arg(in_window_language(finding.proposal));
        }
        if (finding.verdict == Verdict::Returned) {
            title += " · " + tr("returned");
        }
        if (!finding.comment.empty()) {
            body += "\n" + tr("Comment: %1").arg(QString::fromStdString(finding.comment));
        }
        auto* item = new QListWidgetItem(title, this);
        item->setData(FindingDelegate::body_role, body);
        item->setData(place_role, QPointF(finding.at.x, finding.at.y));
        item->setData(leg_role, QVariant::fromValue(finding.leg));
        item->setData(kind_role, static_cast<int>(finding.kind));
        item->setData(Qt::AccessibleDescriptionRole, body);
    }
    setCurrentRow(std::min(row, count() - 1)); // an edit elsewhere leaves the place in the list
    quiet.unblock();
    if (const auto wanted = std::exchange(wanted_row_, std::nullopt); wanted && count() > 0) {
        setCurrentRow(std::min(*wanted, count() - 1));
        choose(currentItem());
    }
}

void FindingsList::show_after_refill(int row) {
    wanted_row_ = row;
}

void FindingsList::step(int by) {
    if (count() == 0) {
        return;
    }
    const int next = currentRow() < 0 ? (by > 0 ? 0 : count() - 1) : (currentRow() + by + count()) % count();
    setCurrentRow(next);
    choose(item(next));
}

bool FindingsList::show_at(ImagePoint at, FindingKind kind) {
    for (int row = 0; row < count(); ++row) {
        if (item(row)->data(place_role).toPointF() == QPointF(at.x, at.y) &&
            item(row)->data(kind_role).toInt() == static_cast<int>(kind)) {
            setCurrentRow(row);
            choose(item(row));
            return true;
        }
    }
    return false;
}

void FindingsList::choose(const QListWidgetItem* item) {
    const QPointF place = item->data(place_role).toPointF();
    emit finding_chosen(row(item) + 1, item->data(leg_role).value<std::size_t>(), {place.x(), place.y()});
}

} // namespace pithward::bench
