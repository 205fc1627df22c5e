#pragma once

#include <QDialog>

class QTextBrowser;

namespace pithward::bench {

/// The handbook as the program carries it: the pages of docs, with their links.
class Handbook : public QDialog {
    Q_OBJECT

public:
    explicit Handbook(QWidget* parent = nullptr);

    [[nodiscard]] QTextBrowser& pages() { return *pages_; }

private:
    QTextBrowser* pages_;
};

} // namespace pithward::bench
