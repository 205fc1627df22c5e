#pragma once

#include <QWidget>

class QAction;

namespace pithward::bench {

/// What an empty bench shows: what to do first. `open` is the window's own action.
class StartPage : public QWidget {
    Q_OBJECT

public:
    explicit StartPage(QAction* open, QWidget* parent = nullptr);
};

} // namespace pithward::bench
