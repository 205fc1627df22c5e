#pragma once

#include <QWidget>

class QAction;

namespace pithward::bench {

/// What an empty bench shows: what to do first. The actions are the window's own.
class StartPage : public QWidget {
    Q_OBJECT

public:
    StartPage(QAction* open, QAction* project, QAction* make, QAction* demo, QWidget* parent = nullptr);
};

} // namespace pithward::bench
