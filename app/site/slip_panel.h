#pragma once

#include <QWidget>
#include <memory>

class QAction;
class QLabel;
class QListWidget;
class QPushButton;

namespace pithward {
struct Finding;
}

namespace pithward::dating {
struct Slip;
struct SlipPlace;
} // namespace pithward::dating

namespace pithward::bench {

struct SiteDating;
struct SiteLine;

/// One slip of a series: how sure it is, the places on the scan where it may lie, and what can be done about it.
class SlipPanel : public QWidget {
    Q_OBJECT

public:
    explicit SlipPanel(QWidget* parent = nullptr);

    /// What the buttons do: see the wood, accept, say that it is not so, say that it can't be told.
    void add_buttons(QAction* see, QAction* accept, QAction* not_so, QAction* untold);

    /// Shows a slip of a line, or what else is to be said of it where it has none.
    void show_slip(std::shared_ptr<const SiteDating> dating, int line, int slip);
    void show_nothing();

    /// The slip that is shown.
    [[nodiscard]] const dating::Slip* slip() const;
    /// The place that is chosen for it; null where the wood shows none.
    [[nodiscard]] const dating::SlipPlace* place() const;
    /// The years by which all of the series is to be dated later, where no slip is shown: 0 where it is dated rightly.
    [[nodiscard]] int whole_shift() const;
    /// The finding that was made of it; null where there is none.
    [[nodiscard]] const Finding* noted() const;
    [[nodiscard]] QListWidget& places() { return *places_; }
    [[nodiscard]] QString words() const;
    /// What the button that accepts says.
    [[nodiscard]] QString accept_words() const;

private:
    [[nodiscard]] const SiteLine* line() const;
    void name_accept();

    std::shared_ptr<const SiteDating> dating_;
    int line_ = -1;
    int slip_ = -1;
    QLabel* title_;
    QLabel* words_;
    QListWidget* places_;
    QWidget* buttons_;
    QAction* accepting_ = nullptr;
    QPushButton* accept_ = nullptr;
};

} // namespace pithward::bench
