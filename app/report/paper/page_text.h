#pragma once

#include <QColor>
#include <QFont>
#include <QPainter>
#include <QString>
#include <memory>
#include <vector>

class QTextLayout;

namespace pithward::report {

/// Tenths of a point: the unit of a page, so that letters stand where their measures say.
inline constexpr double page_unit = 10.0;

inline const QColor page_ink(0x16, 0x1a, 0x1d);
inline const QColor page_soft_ink(0x50, 0x56, 0x5a);
inline const QColor page_caution_ink(0xa8, 0x32, 0x14);

/// A font of so many points on a page.
[[nodiscard]] QFont page_font(double points, bool bold = false);

/// A text broken into lines of a breadth, at words where it can be, else anywhere. Copies share the lines.
class PageText {
public:
    /// The first `bold_letters` letters are bold.
    PageText(const QString& text, const QFont& font, double breadth, Qt::Alignment align = Qt::AlignLeft,
             int bold_letters = 0);

    [[nodiscard]] double height() const;
    [[nodiscard]] int lines() const;
    [[nodiscard]] double line_height(int line) const;
    void paint(QPainter& painter, QPointF at, const QColor& ink) const;
    /// One line with its upper left corner there.
    void paint_line(QPainter& painter, QPointF at, int line, const QColor& ink) const;

private:
    std::shared_ptr<QTextLayout> layout_;
};

} // namespace pithward::report
