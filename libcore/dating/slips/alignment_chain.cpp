#include "libcore/dating/slips/alignment_chain.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace pithward::dating {

namespace {

using Column = ShiftColumn;
using States = AlignmentSums::States;

/// The value of the next higher shift, and of the next lower one; 0 beyond.
Column from_higher(const Column& column) {
    Column moved = Column::Zero();
    moved.head<shift_rows - 1>() = column.tail<shift_rows - 1>();
    return moved;
}
Column from_lower(const Column& column) {
    Column moved = Column::Zero();
    moved.tail<shift_rows - 1>() = column.head<shift_rows - 1>();
    return moved;
}

States forward_step(const StepFactors& f, const States& outer, int i) {
    States inner;
    inner.normal = outer.normal * f.stay.col(i) + outer.inner_part * f.after_split.col(i) +
                   outer.inserted * f.after_inserted.col(i) + from_higher(outer.normal) * f.lost.col(i) +
                   from_higher(outer.merged) * f.after_merged.col(i) + outer.own_way * f.after_own_way.col(i);
    inner.merged = outer.normal * f.merged.col(i);
    inner.merged(0) = 0.0; // Its inner neighbour would have a lower shift than there is.
    inner.outer_part = outer.normal * f.begin_split;
    inner.outer_part(shift_count - 1) = 0.0;
    inner.inner_part = from_lower(outer.outer_part) * f.split.col(i);
    inner.inserted = from_lower(outer.normal) * f.inserted.col(i);
    inner.own_way = (outer.normal * f.begin_own_way + outer.own_way * f.stay_own_way) * f.own_way.col(i);
    return inner;
}

States backward_step(const StepFactors& f, const States& inner, int i) {
    States outer;
    outer.normal = inner.normal * f.stay.col(i) + from_lower(inner.normal * f.lost.col(i)) +
                   inner.merged * f.merged.col(i) + inner.outer_part * f.begin_split +
                   from_higher(inner.inserted * f.inserted.col(i)) + inner.own_way * f.own_way.col(i) * f.begin_own_way;
    outer.merged = from_lower(inner.normal * f.after_merged.col(i));
    outer.merged(0) = 0.0;
    outer.outer_part = from_higher(inner.inner_part * f.split.col(i));
    outer.inner_part = inner.normal * f.after_split.col(i);
    outer.inserted = inner.normal * f.after_inserted.col(i);
    outer.own_way = inner.normal * f.after_own_way.col(i) + inner.own_way * f.own_way.col(i) * f.stay_own_way;
    return outer;
}

/// Adds up the slips between a ring and its outer neighbour by the year of the ring outside each.
void add_slips(Alignment& result, const StepFactors& f, const States& outer, const States& inner, int i, int year,
               int jump) {
    const Column lost = from_higher(outer.normal) * f.lost.col(i) * inner.normal;
    const Column merged = outer.normal * f.merged.col(i) * inner.merged;
    Column split = outer.normal * f.begin_split * inner.outer_part;
    split(shift_count - 1) = 0.0;
    const Column inserted = from_lower(outer.normal) * f.inserted.col(i) * inner.inserted;
    for (int s = 0; s < shift_count; ++s) {
        const int here = year + (s - most_shift) * jump - result.first_year;
        result.missing(here + 1 + jump) += lost(s);
        result.missing(here) += merged(s);
        result.extra(here) += split(s);
        result.extra(here + 1 - jump) += inserted(s);
    }
}

/// Logarithm of the density of the ways without a slip: all rings in one shift, normal or not.
double log_without_slip(const StepFactors& f) {
    Column normal = f.start;
    Column own_way = Column::Zero();
    double logarithm = 0.0;
    for (Eigen::Index i = 1; i < f.stay.cols(); ++i) {
        const Column next = normal * f.stay.col(i) + own_way * f.after_own_way.col(i);
        own_way = (normal * f.begin_own_way + own_way * f.stay_own_way) * f.own_way.col(i);
        normal = next;
        const double scale = normal.sum() + own_way.sum();
        normal /= scale;
        own_way /= scale;
        logarithm += std::log(scale);
    }
    return logarithm + std::log(normal.sum() + own_way.sum());
}

} // namespace

AlignmentSums::AlignmentSums(StepFactors factors)
    : factors_(std::move(factors))
    , forward_(factors_.stay.cols())
    , scale_(factors_.stay.cols()) {
    const int n = static_cast<int>(forward_.size());
    for (int i = 0; i < n; ++i) {
        if (i == 0) {
            forward_[i].normal = factors_.start;
        } else {
            forward_[i] = forward_step(factors_, forward_[i - 1], i);
        }
        scale_(i) = forward_[i].sum().sum();
        forward_[i] /= scale_(i);
    }
    // A series doesn't end between the two parts of one ring.
    ended_ = forward_[n - 1].sum().sum() - forward_[n - 1].outer_part.sum();
    log_evidence_ = scale_.log().sum() + std::log(ended_);
}

Alignment AlignmentSums::alignment(int last_year, int jump) const {
    const int n = static_cast<int>(forward_.size());
    const int margin = (most_shift + 1) * jump + 2;
    Alignment result;
    result.log_evidence = log_evidence_;
    result.first_year = last_year - n + 1 - margin;
    result.missing = Eigen::ArrayXd::Zero(n + 2 * margin);
    result.extra = Eigen::ArrayXd::Zero(n + 2 * margin);
    result.shift.resize(n, shift_count);
    States backward;
    for (Column* part :
         {&backward.normal, &backward.merged, &backward.inner_part, &backward.inserted, &backward.own_way}) {
        part->setOnes();
    }
    backward.merged(0) = 0.0;
    backward /= ended_;
    for (int i = n - 1; i >= 0; --i) {
        const States& f = forward_[i];
        const States& b = backward;
        const Column shift = f.normal * b.normal + f.merged * b.merged + f.outer_part * b.outer_part +
                             f.inner_part * b.inner_part + f.inserted * b.inserted + f.own_way * b.own_way;
        result.shift.row(n - 1 - i) = shift.head<shift_count>().transpose();
        if (i > 0) {
            backward /= scale_(i);
            add_slips(result, factors_, forward_[i - 1], backward, i, last_year - i, jump);
            backward = backward_step(factors_, backward, i);
        }
    }
    result.no_slip = std::min(1.0, std::exp(log_without_slip(factors_) - result.log_evidence));
    return result;
}

} // namespace pithward::dating
