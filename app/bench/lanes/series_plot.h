#pragma once

#include "app/bench/model/bench_model.h"
#include "app/bench/model/kept_series.h"

#include <QWidget>

class QCustomPlot;
class QCPGraph;
class QCPItemStraightLine;
class QCPItemText;

namespace pithward::bench {

/// The widths of the present core by year, or by ring number from the bark while undated; the bark end is on the right.
/// Tied to the scan by ring numbers.
class SeriesPlot : public QWidget {
    Q_OBJECT

public:
    explicit SeriesPlot(const BenchModel& model, QWidget* parent = nullptr);

    /// The series that the open project keeps; none where no project is open.
    void show_kept(std::vector<KeptSeries> kept);

    /// Picks a ring out; 0 for none.
    void pick_ring(int number);
    [[nodiscard]] int picked_ring() const { return picked_; }
    /// How many other cores are drawn beside this one.
    [[nodiscard]] int others() const { return static_cast<int>(others_.size()); }
    /// Whether their mean is drawn.
    [[nodiscard]] bool shows_mean() const;

signals:
    /// The ring under the cursor; 0 for none.
    void ring_pointed(int number);
    /// A ring was clicked, or chosen with the arrow keys.
    void ring_chosen(int number);

protected:
    void changeEvent(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void refill();
    /// Other dated cores as thin lines behind this one, and a mean.
    void refill_others();
    void refill_mean(const std::vector<const RingSeries*>& others);
    /// The other dated cores on the bench.
    [[nodiscard]] Companions on_the_bench() const;
    [[nodiscard]] QString key_words() const;
    void recolour();
    void step_ring(int by);
    /// The ring at a place of the plot; 0 for none.
    [[nodiscard]] int ring_at(QPointF at) const;
    [[nodiscard]] double key_of(const Ring& ring) const;

    const BenchModel& model_;
    QCustomPlot* plot_;
    QCPGraph* widths_;
    std::vector<QCPGraph*> others_;
    QCPGraph* mean_;
    QCPGraph* absent_;
    QCPItemStraightLine* cursor_;
    QCPItemText* readout_;
    std::vector<KeptSeries> kept_;
    bool dated_ = false;
    bool from_project_ = false; ///< What is drawn beside the core is of the project.
    int picked_ = 0;
};

} // namespace pithward::bench
