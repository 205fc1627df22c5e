#pragma once

#include "libcore/dating/slips/alignment.h"

#include <vector>

namespace pithward::dating {

/// The sums over all alignments for one set of factors. The forward ones are made at once and give the evidence; what
/// costs as much again is made only where it is asked for.
class AlignmentSums {
public:
    /// A number for each state of the chain.
    struct States {
        ShiftColumn normal = ShiftColumn::Zero();
        ShiftColumn merged = ShiftColumn::Zero();
        ShiftColumn outer_part = ShiftColumn::Zero();
        ShiftColumn inner_part = ShiftColumn::Zero();
        ShiftColumn inserted = ShiftColumn::Zero();
        ShiftColumn own_way = ShiftColumn::Zero();

        [[nodiscard]] ShiftColumn sum() const { return normal + merged + outer_part + inner_part + inserted + own_way; }
        States& operator/=(double scale) {
            const double factor = 1.0 / scale;
            for (ShiftColumn* part : {&normal, &merged, &outer_part, &inner_part, &inserted, &own_way}) {
                *part *= factor;
            }
            return *this;
        }
    };

    explicit AlignmentSums(StepFactors factors);

    /// Logarithm of the density of the series.
    [[nodiscard]] double log_evidence() const { return log_evidence_; }

    /// `last_year` is that of the outermost ring, `jump` the years of a slip.
    [[nodiscard]] Alignment alignment(int last_year, int jump) const;

private:
    StepFactors factors_;
    std::vector<States> forward_;
    Eigen::ArrayXd scale_; ///< What the states of each ring were divided by.
    double ended_ = 0.0;
    double log_evidence_ = 0.0;
};

} // namespace pithward::dating
