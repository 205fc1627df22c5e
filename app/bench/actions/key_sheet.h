#pragma once

#include <QDialog>

namespace pithward::bench {

/// Every key, made from the table of actions and the gestures of the scan.
class KeySheet : public QDialog {
    Q_OBJECT

public:
    explicit KeySheet(QWidget* parent);
};

} // namespace pithward::bench
