#pragma once

#include "app/bench/model/bench_model.h"

#include <QDialog>

class QComboBox;
class QLabel;
class QLineEdit;
class QSpinBox;

namespace pithward::bench {

/// Asks what a break is: a crack, or lost wood and how many whole rings went with it. It can also be removed here.
class BreakDialog : public QDialog {
    Q_OBJECT

public:
    explicit BreakDialog(const Break& stretch, QWidget* parent = nullptr);

signals:
    void changed(const pithward::Break& after);
    void removed(pithward::BreakId id);

private:
    void follow_kind();
    [[nodiscard]] Break as_said() const;

    Break before_;
    QComboBox* kind_;
    QSpinBox* rings_;
    QLabel* meaning_;
    QLineEdit* note_;
};

} // namespace pithward::bench
