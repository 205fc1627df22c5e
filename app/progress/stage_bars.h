#pragma once

#include <QWidget>
#include <vector>

namespace pithward::progress {
struct SiteProgress;
}

namespace pithward::bench {

/// How many cores of the site are through each stage: a bar for each, with words.
class StageBars : public QWidget {
    Q_OBJECT

public:
    explicit StageBars(QWidget* parent = nullptr);
    void show_site(const progress::SiteProgress& site);

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    std::vector<int> done_; ///< Cores that are through each stage.
    int cores_ = 0;
};

} // namespace pithward::bench
