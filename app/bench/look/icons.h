#pragma once

#include <QColor>
#include <QIcon>
#include <QString>

namespace pithward::bench {

/// One of the program's own drawings (resources/icons/NAME.svg) in an ink, so that one drawing serves light and dark.
/// A null icon for an empty name.
[[nodiscard]] QIcon drawn_icon(const QString& name, const QColor& ink);

} // namespace pithward::bench
