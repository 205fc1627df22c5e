#pragma once

#include "app/project/scan_settling.h"

#include <QDialog>
#include <QThreadPool>
#include <optional>
#include <string>

class QLabel;
class QListWidget;
class QListWidgetItem;
class QPushButton;
class QSpinBox;

namespace pithward::bench {

class SettlePicture;

/// Scans on the left, cores on the right, the scan as a picture between them: a person gives a scan to a core, and says
/// which core of it is meant by a number or by a click on it. What is to be settled stands first in both lists.
class SettleDialog : public QDialog {
    Q_OBJECT

public:
    explicit SettleDialog(ProjectDesk& desk, QWidget* parent = nullptr);
    ~SettleDialog() override;

    [[nodiscard]] QListWidget& scans() { return *scans_; }
    [[nodiscard]] QListWidget& cores() { return *cores_; }
    [[nodiscard]] QSpinBox& number() { return *number_; }
    [[nodiscard]] SettlePicture& picture() { return *picture_; }
    [[nodiscard]] QLabel& said() { return *said_; }
    [[nodiscard]] QPushButton& give() { return *give_; }
    [[nodiscard]] QPushButton& take() { return *take_; }
    [[nodiscard]] QPushButton& back() { return *back_; }
    [[nodiscard]] ScanSettling& settling() { return settling_; }

private:
    void build();
    void refill();
    void fill_scans();
    void fill_cores();
    void follow_scan();
    void follow_choice();
    void show_names();
    /// Chooses the core that a code on the scan, or its name, speaks of.
    void propose_core();
    void give_scan();
    void ask_for_scans();
    [[nodiscard]] std::string scan() const;
    [[nodiscard]] const record::CoreEntry* core() const;
    [[nodiscard]] std::optional<field::ScanPlace> place() const;

    /// What was seen of the chosen scan.
    struct Seen {
        std::string scan;
        QImage picture;
        int reduction = 1;
        struct Code {
            std::string text;
            ImagePoint at;
        };
        std::vector<Code> codes;
        QString why_not;
    };
    void take_seen(Seen seen);

    ProjectDesk& desk_;
    ScanSettling settling_;
    QThreadPool pool_;
    Seen seen_;
    std::string wanted_; ///< The scan whose picture was asked for.
    std::optional<ImagePoint> clicked_;
    QListWidget* scans_;
    QListWidget* cores_;
    SettlePicture* picture_;
    QLabel* codes_;
    QLabel* said_;
    QSpinBox* number_;
    QPushButton* give_;
    QPushButton* take_;
    QPushButton* back_;
};

} // namespace pithward::bench
