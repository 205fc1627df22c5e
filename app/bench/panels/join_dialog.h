#pragma once

#include "app/bench/model/bench_model.h"
#include "libcore/specimen/break.h"

#include <QDialog>

class QComboBox;
class QLabel;
class QPushButton;
class QSpinBox;

namespace pithward::bench {

/// Asks on which other core of the bench the present one goes on, and how the two meet.
class JoinDialog : public QDialog {
    Q_OBJECT

public:
    /// How the two meet: at the boundary in hand, which both show, or at a gap.
    enum class How { AtBoundary, AtCrack, OverLostWood };

    /// `boundary`: what the boundary in hand is called; empty where none is in hand.
    JoinDialog(const BenchModel& model, const QString& boundary, QWidget* parent = nullptr);

signals:
    /// `rings_lost`: only with lost wood, where they are known.
    void chosen(const pithward::bench::CorePlace& inner, How how, std::optional<int> rings_lost);

private:
    void follow();
    [[nodiscard]] How how() const;

    QComboBox* where_;
    QComboBox* how_;
    QSpinBox* rings_;
    QLabel* meaning_;
    QPushButton* ok_ = nullptr;
};

} // namespace pithward::bench
