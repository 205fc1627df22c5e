#pragma once

#include <QMargins>
#include <QString>
#include <initializer_list>
#include <utility>

class QLabel;
class QWidget;

namespace pithward::bench {

/// A label as the headings of all parts look.
void make_heading(QLabel& label);
[[nodiscard]] QLabel* heading(const QString& text);

/// What keeps its height and is scrolled where there is less room, so that no line is cut.
[[nodiscard]] QWidget* scrolled(QWidget* inner);

/// Parts with movable lines between them, in shares of the whole. The name is what their places are remembered by.
[[nodiscard]] QWidget* divided(const QString& name, Qt::Orientation direction,
                               std::initializer_list<std::pair<QWidget*, int>> parts);

/// Parts one under the other, with room around and between them.
[[nodiscard]] QWidget* column(std::initializer_list<QWidget*> parts, const QMargins& around = {}, int between = 0);

} // namespace pithward::bench
