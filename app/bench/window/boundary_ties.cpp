#include "app/bench/look/sentences.h"
#include "app/bench/look/wording.h"
#include "app/bench/panels/break_dialog.h"
#include "app/bench/panels/findings_list.h"
#include "app/bench/panels/message_bar.h"
#include "app/bench/scan_view/scan_view.h"
#include "app/bench/tools/two_point_tool.h"
#include "app/bench/window/main_window.h"
#include "app/picture/nearest_mark.h"
#include "app/site/site_page.h"

#include <QInputDialog>
#include <QLabel>
#include <QMenu>
#include <algorithm>

// How edits of the present core are tied to the keys, the mouse and the menus.

namespace pithward::bench {

void MainWindow::bind_edits() {
    using enum ActionId;
    actions_.on(Undo, [this] { editor_.undo(); });
    actions_.on(Redo, [this] { editor_.redo(); });
    actions_.on(ConfirmSure, [this] { editor_.confirm_sure(); });
    actions_.on(NextBoundary, [this] { editor_.step(1); });
    actions_.on(PreviousBoundary, [this] { editor_.step(-1); });
    for (const bool freely : {false, true}) {
        actions_.on(freely ? AddFreely : AddBoundary,
                    [this, freely] { at_cursor([&](ImagePoint at) { editor_.add(at, freely); }); });
    }
    // These are about the boundary that the mouse was moved to, else about the one in hand.
    const auto about_boundary = [this](ActionId id, const std::function<void()>& run) {
        actions_.on(id, [this, run] {
            if (const auto pointed = view_->newly_pointed()) {
                editor_.take_up(pointed);
            }
            run();
        });
    };
    about_boundary(Confirm, [this] { editor_.confirm_and_step(); });
    about_boundary(DeleteBoundary, [this] { editor_.remove(); });
    about_boundary(FalseRing, [this] { editor_.mark_false(); });
    about_boundary(MarkAbsent, [this] { editor_.add_absent(); });
    about_boundary(NotAbsent, [this] { editor_.remove_absent(); });
    about_boundary(Note, [this] { ask_for_note(); });
    about_boundary(TurnBoundaryLeft, [this] { editor_.turn_by(-1.0); });
    about_boundary(TurnBoundaryRight, [this] { editor_.turn_by(1.0); });
    actions_.on(TakeCandidate,
                [this] { at_cursor([&](ImagePoint at) { editor_.take_candidate(at, 3.0 * view_->reach_px()); }); });
    for (const auto kind : {Break::Kind::Crack, Break::Kind::LostWood}) {
        actions_.on(kind == Break::Kind::Crack ? MarkCrack : MarkLostWood, [this, kind] {
            view_->take_tool(
                std::make_unique<TwoPointTool>(
                    tr("Break: click one of its edges on the path. Escape gives up."),
                    tr("Break: click its other edge. Backspace takes the first edge back, Escape gives up.")),
                [this, kind](const auto& edges) { editor_.add_break(edges.front(), edges.back(), kind); });
            view_->setFocus();
        });
    }
    actions_.on(EditBreak, [this] {
        at_cursor([this](ImagePoint at) {
            if (const auto id = break_at(at)) {
                ask_about_break(*id);
            } else {
                messages_->tell(tr("Point at a break first: at the wood between its two edges."));
            }
        });
    });
    actions_.on(TakeProposal, [this] { settle(Finding::State::ProposalTaken); });
    actions_.on(KeepAsItIs, [this] { settle(Finding::State::KeptAsItIs); });
    actions_.on(CannotBeTold, [this] { settle(Finding::State::CannotBeTold); });
}

void MainWindow::tie_edits() {
    connect(&editor_, &CoreEditor::told, messages_, &MessageBar::tell);
    connect(&editor_, &CoreEditor::edited, this, &MainWindow::hint_at_edit);
    connect(&editor_, &CoreEditor::edited, messages_, &MessageBar::put_away);
    connect(&editor_, &CoreEditor::hand_changed, this, [this] {
        const Boundary* boundary = editor_.in_hand();
        view_->pick_boundary(boundary != nullptr ? std::optional(boundary->id) : std::nullopt);
        if (boundary != nullptr) {
            view_->bring_into_view(boundary->at);
        }
        refresh();
    });
    connect(view_, &ScanView::boundary_clicked, &editor_, &CoreEditor::take_up);
    connect(view_, &ScanView::boundary_pointed, this, &MainWindow::refresh);
    connect(view_, &ScanView::wood_double_clicked, this, [this](ImagePoint at, bool freely) {
        if (const auto id = break_at(at)) {
            ask_about_break(*id);
        } else {
            editor_.add(at, freely);
        }
    });
    connect(&editor_, &CoreEditor::rings_lost_wanted, this, &MainWindow::ask_about_break, Qt::QueuedConnection);
    connect(view_, &ScanView::boundary_dropped, this, [this](const GripDrop& drop) {
        editor_.take_up(drop.id);
        if (drop.turned) {
            editor_.turn(drop.id, drop.tangent);
        } else {
            editor_.move(drop.id, drop.at);
        }
    });
    connect(view_, &ScanView::menu_wanted, this, &MainWindow::show_menu);
}

void MainWindow::take_under_cursor() {
    if (const auto id = view_->under_cursor()) {
        editor_.take_up(id);
    }
}

void MainWindow::settle(Finding::State state) {
    if (front_ == Front::Site) {
        site_->settle(state);
        return;
    }
    if (findings_->currentRow() < 0) {
        findings_->step(1); // nothing is settled unseen
        return;
    }
    const int row = findings_->currentRow();
    editor_.settle(row + 1, state);
    findings_->show_after_refill(row); // the next one has moved up to this row
}

std::optional<BreakId> MainWindow::break_at(ImagePoint at) const {
    const picture::MeasuredCore* core = control_.model().core();
    return core != nullptr
               ? picture::nearest_break(*core, control_.model().scan()->opened->name(), at, view_->reach_px())
               : std::nullopt;
}

void MainWindow::ask_about_break(BreakId id) {
    const picture::MeasuredCore* core = control_.model().core();
    if (core == nullptr) {
        return;
    }
    const auto stretch = std::ranges::find(core->reading.breaks, id, &Break::id);
    if (stretch == core->reading.breaks.end()) {
        return;
    }
    auto* dialog = new BreakDialog(*stretch, this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(dialog, &BreakDialog::changed, &editor_, &CoreEditor::change_break);
    connect(dialog, &BreakDialog::removed, &editor_, &CoreEditor::remove_break);
    dialog->open();
}

void MainWindow::ask_for_note() {
    const Boundary* boundary = editor_.in_hand();
    if (boundary == nullptr) {
        return;
    }
    auto* dialog = new QInputDialog(this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->setWindowTitle(tr("Note"));
    dialog->setLabelText(tr("Note on this boundary:"));
    dialog->setTextValue(QString::fromStdString(boundary->note));
    connect(dialog, &QInputDialog::textValueSelected, &editor_, &CoreEditor::annotate);
    dialog->open();
}

void MainWindow::show_menu(const QPoint& screen) {
    take_under_cursor();
    refresh();
    auto* menu = new QMenu(this);
    menu->setAttribute(Qt::WA_DeleteOnClose);
    using enum ActionId;
    if (view_->under_cursor()) {
        for (const ActionId id :
             {Confirm, DeleteBoundary, FalseRing, MarkAbsent, NotAbsent, TurnBoundaryLeft, TurnBoundaryRight, Note}) {
            menu->addAction(actions_.at(id));
        }
    } else if (view_->bend_under_cursor()) {
        menu->addAction(actions_.at(StraightenPath));
        menu->addAction(actions_.at(SwapEnds));
    } else {
        for (const ActionId id : {AddBoundary, AddFreely, TakeCandidate, MarkCrack, MarkLostWood, BendPath, ExtendPath,
                                  StepAside, GoOnElsewhere, EditBreak, PlacePith, JudgePith}) {
            menu->addAction(actions_.at(id));
        }
    }
    menu->addSeparator();
    menu->addAction(actions_.at(Undo));
    menu->addAction(actions_.at(Redo));
    menu->popup(screen);
}

void MainWindow::hint_at_edit(const QString& label) {
    hint_->setText(in_window_language(label.toStdString()));
}

} // namespace pithward::bench
