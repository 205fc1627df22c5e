#pragma once

#include <QListWidget>

namespace pithward::bench {

/// A list whose rows have a title and a body (FindingDelegate) and are as high as their wrapped text.
class WrappedList : public QListWidget {
    Q_OBJECT

public:
    explicit WrappedList(QWidget* parent = nullptr);

protected:
    void resizeEvent(QResizeEvent* event) override;
};

} // namespace pithward::bench
