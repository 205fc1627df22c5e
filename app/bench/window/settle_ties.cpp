#include "app/bench/panels/message_bar.h"
#include "app/bench/window/main_window.h"
#include "app/project/settle_dialog.h"

#include <utility>

// How scans that match no core come before a person.

namespace pithward::bench {

void MainWindow::bind_settling() {
    actions_.on(ActionId::SettleScans, [this] { settle_scans(); });
    connect(&desk_, &ProjectDesk::opened, this, [this] {
        if (std::exchange(settle_when_opened_, false)) {
            settle_what_is_open();
        }
    });
}

void MainWindow::settle_scans() {
    auto* dialog = new SettleDialog(desk_, this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(&desk_, &ProjectDesk::opened, dialog, &QDialog::reject);
    dialog->open();
}

void MainWindow::settle_what_is_open() {
    using Open = record::ScansToSettle;
    desk_.store().ask<Open>([](record::Project& project) { return record::scans_to_settle(project); },
                            [this](const Outcome<Open>& open) {
                                if (!open) {
                                    messages_->tell(QString::fromStdString(open.error().line()));
                                } else if (!open->without_core.empty() || !open->unclear.empty()) {
                                    settle_scans(); // a core alone without a scan may not be scanned yet
                                }
                            });
}

} // namespace pithward::bench
