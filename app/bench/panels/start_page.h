#pragma once

#include <QWidget>

class QAction;

namespace pithward::bench {

/// What an empty bench shows: what to do first. `open` and `demo` are the window's own actions.
class StartPage : public QWidget {
    Q_OBJECT

public:
    StartPage(QAction* open, QAction* demo, QWidget* parent = nullptr);
};

} // namespace pithward::bench
