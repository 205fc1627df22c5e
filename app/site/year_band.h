#pragma once

#include "app/picture/dating/year_axis.h"
#include "app/site/year_window.h"

#include <QWidget>
#include <optional>

namespace pithward::picture {
struct Inks;
}

namespace pithward::bench {

/// Inks for the ground that the window has, light or dark.
[[nodiscard]] picture::Inks chart_inks(const QPalette& palette);

/// A picture with calendar years across. Wheel and drag move through the years that all such pictures of a page share;
/// arrow keys point at a year. What it shows is painted by who derives from it.
class YearBand : public QWidget {
    Q_OBJECT

public:
    explicit YearBand(YearWindow& years, QWidget* parent = nullptr);

    /// Leaves room on the right, in pixels, where another picture of the page has a scroll bar.
    void leave_right(int pixels);

signals:
    /// A year was chosen, by a click or Return.
    void year_chosen(int year);
    /// The series before, -1, or the next, 1, is wanted.
    void step_wanted(int by);

protected:
    /// Paints between the margins; lengths are points, which grow with the font.
    virtual void paint_band(QPainter& painter, const picture::YearAxis& axis, const QRectF& place,
                            const picture::Inks& inks) = 0;
    /// A click at a place, in points.
    virtual void clicked(QPointF at, int year);

    /// How many pixels a point has.
    [[nodiscard]] double unit() const;
    [[nodiscard]] YearWindow& years() { return years_; }
    /// The axis, in points.
    [[nodiscard]] picture::YearAxis axis() const;

    bool event(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void leaveEvent(QEvent* event) override;

private:
    [[nodiscard]] int year_at(QPointF pixel) const;
    void paint_pointed(QPainter& painter, const picture::YearAxis& axis, const picture::Inks& inks) const;

    struct Press {
        QPointF at;
        int year = 0; ///< That was under the mouse, and stays so.
        bool dragged = false;
    };

    YearWindow& years_;
    std::optional<Press> press_;
    int right_ = 0;
    double turned_ = 0.0; ///< Of the wheel, in notches that were not yet used.
};

} // namespace pithward::bench
