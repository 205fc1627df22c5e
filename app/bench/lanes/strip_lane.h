#pragma once

#include "app/bench/model/bench_model.h"
#include "app/picture/seen_stretch.h"

#include <QImage>
#include <QThreadPool>
#include <QWidget>
#include <stop_token>
#include <vector>

namespace pithward::bench {

/// The present core straightened, and its light profile below, over the stretch of the path that the scan shows. Tied
/// to the scan and the plot by ring numbers. The strip is made beside the window.
class StripLane : public QWidget {
    Q_OBJECT

public:
    explicit StripLane(const BenchModel& model, QWidget* parent = nullptr);
    ~StripLane() override;

    /// Shows this part of the path over `breadth` pixels from the left, so that it lies under the scan.
    void show_stretch(const picture::Stretch& stretch, int breadth);
    void pick_ring(int number);
    [[nodiscard]] int picked_ring() const { return picked_; }
    [[nodiscard]] bool complete() const { return !picture_.isNull(); }

signals:
    /// The ring under the cursor; 0 for none.
    void ring_pointed(int number);
    void ring_chosen(int number);

protected:
    void paintEvent(QPaintEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void leaveEvent(QEvent* event) override;
    [[nodiscard]] QSize sizeHint() const override { return {600, 130}; }

private:
    void follow();
    void fetch();
    [[nodiscard]] QRectF strip_box() const;
    [[nodiscard]] QRectF profile_box() const;
    [[nodiscard]] double x_of(double s_mm) const;
    [[nodiscard]] int ring_at(double x) const;
    void point(int number);
    void paint_profile(QPainter& painter) const;
    void paint_marks(QPainter& painter) const;

    const BenchModel& model_;
    picture::Stretch stretch_;
    int breadth_ = 1;
    QImage picture_;
    std::vector<float> light_;
    double length_mm_ = 0.0;
    Path shown_path_; ///< What the strip is of.
    std::stop_source stop_;
    QThreadPool pool_;
    int picked_ = 0;
    int pointed_ = 0;
};

} // namespace pithward::bench
