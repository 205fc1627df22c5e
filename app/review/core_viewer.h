#pragma once

#include "app/bench/model/bench_model.h"

#include <QWidget>
#include <memory>
#include <optional>

namespace pithward::bench {

class ScanView;
class StripLane;

/// A core to be looked at, not to be changed: the scan with its marks, the straightened strip and its light profile.
class CoreViewer : public QWidget {
    Q_OBJECT

public:
    explicit CoreViewer(QWidget* parent = nullptr);

    /// Shows a reading on its scan, bark to the left: as a whole, or at a finding, close enough to tell single rings.
    /// The view stays where it is when it is the reading that is shown already. False where it can't be measured.
    bool show_reading(const std::shared_ptr<const OpenedScan>& scan, const Reading& reading,
                      const Finding* at = nullptr);
    void show_nothing();

    [[nodiscard]] ScanView& view() { return *view_; }
    [[nodiscard]] StripLane& strip() { return *strip_; }
    [[nodiscard]] const BenchModel& model() const { return model_; }

private:
    void follow();
    void follow_view();
    void show_place();
    void level(const Leg& leg);

    BenchModel model_;
    ScanView* view_;
    StripLane* strip_;
    int scan_ = 0;
    bool to_place_ = false; ///< The view is to go to its place when it has the reading.
    std::optional<Finding> at_;
};

} // namespace pithward::bench
