#include "libcore/pith/strays.h"

#include <gtest/gtest.h>

#include <cmath>

namespace pithward::pith {
namespace {

using Eigen::Vector2d;

/// Traces of circles about (6, 1), from the innermost outward.
std::vector<Trace> circles() {
    std::vector<Trace> traces;
    for (int k = 0; k < 6; ++k) {
        const double radius = std::hypot(6.0, 1.0) + 1.5 * k;
        Trace trace;
        const auto x = [&](double y) { return 6.0 - std::sqrt(radius * radius - (y - 1.0) * (y - 1.0)); };
        trace.at = {x(0.0), 0.0};
        for (int i = -7; i <= 7; ++i) {
            trace.points.emplace_back(x(0.3 * i), 0.3 * i);
        }
        traces.push_back(trace);
    }
    return traces;
}

TEST(Strays, GoodTracesAreLeftAsTheyAre) {
    std::vector<Trace> traces = circles();
    cut_strays(traces);
    for (const Trace& trace : traces) {
        EXPECT_EQ(trace.points.size(), 15U);
    }
}

TEST(Strays, AnInnermostTraceThatRunsAlongTheWoodsEdgeIsCutWhereItDoes) {
    std::vector<Trace> traces = circles();
    for (Vector2d& point : traces[0].points) {
        point.x() = point.y() < -0.8 ? std::min(point.x(), 0.15) : point.x(); // the wood ends at 0.15
    }
    cut_strays(traces);
    EXPECT_LT(traces[0].points.size(), 15U);
    EXPECT_GE(traces[0].points.size(), 9U);
    EXPECT_GT(traces[0].points.front().y(), -1.9);
    EXPECT_NEAR(traces[0].points.back().y(), 2.1, 1e-9) << "the other side is good";
    EXPECT_EQ(traces[3].points.size(), 15U);
}

TEST(Strays, FewTracesCannotBeCompared) {
    std::vector<Trace> traces = circles();
    traces.resize(2);
    traces[0].points.front().x() = 5.0;
    cut_strays(traces);
    EXPECT_EQ(traces[0].points.size(), 15U);
}

} // namespace
} // namespace pithward::pith
