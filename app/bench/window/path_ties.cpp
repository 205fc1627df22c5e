#include "app/bench/panels/message_bar.h"
#include "app/bench/scan_view/scan_view.h"
#include "app/bench/window/main_window.h"
#include "app/picture/nearest_mark.h"

#include <QLabel>

// How the shape of the path is tied to the keys and the mouse.

namespace pithward::bench {

void MainWindow::at_cursor(const std::function<void(ImagePoint)>& run) {
    if (const auto at = view_->cursor()) {
        run(*at);
    } else {
        messages_->tell(tr("Point at the place on the wood first."));
    }
}

void MainWindow::bind_path() {
    using enum ActionId;
    connect(&path_, &PathEditor::told, messages_, &MessageBar::tell);
    connect(&path_, &PathEditor::edited, this, &MainWindow::hint_at_edit);
    connect(&path_, &PathEditor::edited, messages_, &MessageBar::put_away);
    connect(view_, &ScanView::path_dropped, this, [this](const PathDrop& drop) {
        if (drop.fresh) {
            path_.bend(drop.vertex, drop.to);
        } else {
            path_.move(drop.vertex, drop.to);
        }
    });
    actions_.on(ExtendPath, [this] { at_cursor([this](ImagePoint at) { path_.extend(at); }); });
    actions_.on(BendPath, [this] {
        at_cursor([this](ImagePoint at) {
            const picture::MeasuredCore* core = control_.model().core();
            const auto before =
                vertex_after(core->reading, control_.model().scan()->opened->name(), at, 1.5 * core->half_breadth_px);
            if (before) {
                path_.bend(*before, at);
            } else {
                messages_->tell(tr("Point at the wood of the present core to bend its path there."));
            }
        });
    });
    actions_.on(StraightenPath, [this] {
        if (const auto bend = view_->bend_under_cursor()) {
            path_.straighten(*bend);
        } else {
            messages_->tell(tr("Point at a bend of the path first: a short tick across it."));
        }
    });
    actions_.on(StepAside, [this] {
        at_cursor([this](ImagePoint at) {
            if (const Boundary* boundary = editor_.in_hand()) {
                path_.step_aside(boundary->id, at);
            }
        });
    });
}

} // namespace pithward::bench
