#pragma once

#include "app/bench/model/bench_model.h"

#include <QWidget>

class QComboBox;
class QLabel;
class QLineEdit;

namespace pithward::bench {

/// The facts of the present reading, and the three that a person sets: last year, wood, outer wood.
class ReadingPanel : public QWidget {
    Q_OBJECT

public:
    explicit ReadingPanel(const BenchModel& model, QWidget* parent = nullptr);
    void focus_year();

signals:
    void year_set(std::optional<pithward::Year> year);
    void wood_chosen(pithward::WoodType wood);
    void outer_chosen(pithward::OuterWood outer);
    /// The year was ended with Return or given up with Escape: the keys are the wood's again.
    void year_done();

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void refresh();
    void show_year();
    void take_year();

    const BenchModel& model_;
    QLineEdit* year_;
    QComboBox* wood_;
    QComboBox* outer_;
    QLabel* rings_;
    QLabel* length_;
    QLabel* mean_;
    QLabel* scale_;
    QLabel* bark_;
    QLabel* field_;
    QLabel* review_;
};

} // namespace pithward::bench
