#include "app/bench/look/wording.h"
#include "app/bench/panels/join_dialog.h"
#include "app/bench/panels/message_bar.h"
#include "app/bench/scan_view/scan_view.h"
#include "app/bench/tools/point_tool.h"
#include "app/bench/window/main_window.h"
#include "app/picture/nearest_mark.h"
#include "app/picture/ring_places.h"

#include <QLabel>
#include <algorithm>

// How a core that goes on on another scan is put together.

namespace pithward::bench {

namespace {

/// What the ring is called that a boundary closes.
QString name_of_boundary(const picture::MeasuredCore& core, BoundaryId id) {
    const auto found = std::ranges::find(core.reading.boundaries, id, &Boundary::id);
    const auto index = static_cast<std::size_t>(found - core.reading.boundaries.begin());
    const Ring* ring = index < core.series.boundaries.size()
                           ? picture::ring_of(core.series, core.series.boundaries[index].ring_number)
                           : nullptr;
    return ring != nullptr ? bench::name_of(*ring) : MainWindow::tr("the innermost ring");
}

} // namespace

void MainWindow::bind_joining() {
    actions_.on(ActionId::GoOnElsewhere, [this] { ask_how_it_goes_on(); });
}

void MainWindow::ask_how_it_goes_on() {
    const picture::MeasuredCore* core = control_.model().core();
    if (core == nullptr) {
        return;
    }
    const CorePlace outer = control_.model().present();
    const Boundary* in_hand = editor_.in_hand();
    const BoundaryId at = in_hand != nullptr ? in_hand->id : BoundaryId{};
    auto* dialog = new JoinDialog(control_.model(), in_hand != nullptr ? name_of_boundary(*core, at) : QString(), this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(
        dialog, &JoinDialog::chosen, this,
        [this, outer, at](const CorePlace& inner, JoinDialog::How how, std::optional<int> rings_lost) {
            if (how == JoinDialog::How::AtBoundary) {
                ask_for_same_boundary(outer, at, inner);
                return;
            }
            const bool lost = how == JoinDialog::How::OverLostWood;
            join(outer, inner,
                 MeetAtBreak{lost ? Break::Kind::LostWood : Break::Kind::Crack, lost ? rings_lost : std::optional(0)});
        });
    dialog->open();
}

void MainWindow::ask_for_same_boundary(const CorePlace& outer, BoundaryId at, const CorePlace& inner) {
    const picture::MeasuredCore* core = control_.model().core_at(outer);
    if (core == nullptr) {
        return;
    }
    const QString ring = name_of_boundary(*core, at);
    when_shown_ = [this, outer, at, inner, ring] {
        view_->take_tool(
            std::make_unique<PointTool>(tr("Go on: click the boundary of %1 here too. Escape gives up.").arg(ring)),
            [this, outer, at, inner](const auto& places) {
                const picture::MeasuredCore* there = control_.model().core_at(inner);
                const BenchScan* scan = control_.model().scan();
                const auto same = there != nullptr && scan != nullptr
                                      ? picture::nearest_boundary(*there, scan->opened->name(), places.front(),
                                                                  2.0 * view_->reach_px())
                                      : std::nullopt;
                if (same) {
                    join(outer, inner, MeetAtBoundary{at, same->id});
                } else {
                    messages_->tell(tr("No boundary lies there, so nothing was joined. Try again from the "
                                       "outer part of the core."));
                }
            });
        view_->setFocus();
    };
    control_.show_core(inner);
}

void MainWindow::join(const CorePlace& outer, const CorePlace& inner, const Meeting& meeting) {
    BenchModel& model = control_.model();
    const picture::MeasuredCore* part = model.core_at(inner);
    const BenchScan* home = model.find(outer.scan);
    const BenchScan* there = model.find(inner.scan);
    if (part == nullptr || home == nullptr || there == nullptr) {
        return;
    }
    if (home->recorded && !desk_.can_hold(*there)) {
        messages_->tell(tr("A project holds scans of its own folder. Put %1 there, open it again, and join then.")
                            .arg(QString::fromStdString(there->opened->name())));
        return;
    }
    const auto made = model.change(outer, [&](Document& document) -> Outcome<bool> {
        const auto edit = go_on_with(document.reading(), part->reading, meeting, document.fresh_id());
        return edit ? document.make(*edit, model.stamp()) : tl::unexpected(edit.error());
    });
    if (!made) {
        messages_->tell(QString::fromStdString(made.error().line()));
        return;
    }
    if (home->recorded) {
        desk_.note_scan(*there);
    }
    control_.show_core(outer);
    hint_->setText(tr("The core goes on on %1").arg(QString::fromStdString(there->opened->name())));
}

} // namespace pithward::bench
