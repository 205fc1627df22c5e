#include "app/bench/panels/message_bar.h"
#include "app/bench/scan_view/scan_view.h"
#include "app/bench/window/main_window.h"

#include <QLabel>

// How the pith is tied to the keys and the mouse.

namespace pithward::bench {

void MainWindow::bind_pith() {
    connect(&pith_, &PithKeeper::told, messages_, &MessageBar::tell);
    connect(&pith_, &PithKeeper::edited, this, &MainWindow::hint_at_edit);
    connect(&pith_, &PithKeeper::edited, messages_, &MessageBar::put_away);
    connect(view_, &ScanView::pith_dropped, this, [this](const PithDrop& drop) {
        if (drop.ring) {
            pith_.bend_ring(*drop.ring, drop.to);
        } else {
            pith_.place(drop.to);
        }
    });
    actions_.on(ActionId::PlacePith, [this] { at_cursor([this](ImagePoint at) { pith_.place(at); }); });
    actions_.on(ActionId::JudgePith, [this] { pith_.judge_by_rings(); });
}

} // namespace pithward::bench
