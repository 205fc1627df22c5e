#pragma once

#include "app/bench/model/bench_model.h"
#include "app/bench/panels/wrapped_list.h"

#include <optional>

namespace pithward::bench {

/// The open findings of the present core, each with its reason and proposal. Their numbers are those on the scan.
class FindingsList : public WrappedList {
    Q_OBJECT

public:
    explicit FindingsList(const BenchModel& model, QWidget* parent = nullptr);

    /// Goes to the next or the previous finding, round the end.
    void step(int by);

    /// Goes to the finding of this kind at this place; false where there is none.
    bool show_at(ImagePoint at, FindingKind kind);
    /// Goes to this row, or the last one before it, when the list has followed the edit that was just made.
    void show_after_refill(int row);

signals:
    /// A finding by its number, from 1, and where it is.
    void finding_chosen(int number, std::size_t leg, pithward::ImagePoint at);

private:
    void refill();
    void choose(const QListWidgetItem* item);

    const BenchModel& model_;
    std::optional<int> wanted_row_;
};

} // namespace pithward::bench
