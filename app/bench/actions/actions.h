#pragma once

#include "app/bench/actions/action_table.h"

#include <QAction>
#include <QObject>
#include <functional>
#include <map>
#include <set>

class QMenuBar;
class QToolBar;
class QWidget;

namespace pithward::bench {

/// The window's actions, made from the table.
class Actions : public QObject {
    Q_OBJECT

public:
    explicit Actions(QWidget* window);

    [[nodiscard]] QAction* at(ActionId id) const { return actions_.at(id); }
    void on(ActionId id, const std::function<void()>& run);

    void fill(QMenuBar* bar) const;
    void fill(QToolBar* bar) const;
    /// Enables what makes sense now.
    void follow(const BenchState& state);
    /// Draws the icons anew in an ink.
    void draw_icons(const QColor& ink);

private:
    std::map<ActionId, QAction*> actions_;
};

} // namespace pithward::bench
