#include "app/bench/panels/message_bar.h"
#include "app/bench/panels/scale_dialog.h"
#include "app/bench/scan_view/scan_view.h"
#include "app/bench/tools/two_point_tool.h"
#include "app/bench/window/main_window.h"

// How the scale of the scan is tied to its tool and its dialog.

namespace pithward::bench {

void MainWindow::bind_scale() {
    connect(&scale_, &ScaleEditor::told, messages_, &MessageBar::tell);
    connect(&scale_, &ScaleEditor::ruler_read, this, &MainWindow::show_scale);
    actions_.on(ActionId::ReadRuler, [this] { take_ruler_tool(); });
    actions_.on(ActionId::ShowScale, [this] { show_scale(); });
}

void MainWindow::take_ruler_tool() {
    view_->take_tool(std::make_unique<TwoPointTool>(
                         tr("Ruler: click one end of its marks, in the middle of their length. Escape gives up."),
                         tr("Ruler: click the other end. Backspace takes the first one back, Escape gives up.")),
                     [this](const auto& ends) {
                         scale_.read_ruler(RulerLine{ends.front(), ends.back()});
                     });
    view_->setFocus();
}

void MainWindow::show_scale() {
    if (control_.model().scan() == nullptr || findChild<ScaleDialog*>() != nullptr) {
        return;
    }
    auto* dialog = new ScaleDialog(control_.model(), this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(dialog, &ScaleDialog::dpi_said, &scale_, &ScaleEditor::say);
    connect(dialog, &ScaleDialog::chosen, &scale_, &ScaleEditor::use);
    connect(dialog, &ScaleDialog::ruler_wanted, &scale_, [this] { scale_.read_ruler(std::nullopt); });
    connect(dialog, &ScaleDialog::line_wanted, this, &MainWindow::take_ruler_tool);
    dialog->show();
}

} // namespace pithward::bench
