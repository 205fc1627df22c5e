#include "libimaging/boundary/filters.h"
#include "libimaging/boundary/flow.h"
#include "libimaging/boundary/wood/wood_model.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <functional>
#include <random>

namespace pithward::boundary {
namespace {

/// How far the ring at place s has moved at u, in mm.
using Shape = std::function<double(double s, double u)>;

/// Rings of about 1 mm, light earlywood and dark latewood, moved by `shape`, with a little noise.
Lanes lanes_of(const Shape& shape) {
    Lanes lanes;
    lanes.px_mm = 0.02;
    lanes.lane_mm = 0.1;
    lanes.start_mm = 0.0;
    for (cv::Mat1f& channel : lanes.rgb) {
        channel.create(61, 1500);
    }
    std::mt19937 random(12);
    std::normal_distribution<float> noise(0.0F, 0.015F);
    std::vector<double> edges{-5.0};
    while (edges.back() < 36.0) {
        edges.push_back(edges.back() + 0.7 + 0.6 * static_cast<double>(random() % 1000) / 1000.0);
    }
    for (int lane = 0; lane < lanes.count(); ++lane) {
        for (int column = 0; column < lanes.columns(); ++column) {
            // The place on the path of the ring that is seen here.
            double s = lanes.s(column);
            for (int k = 0; k < 8; ++k) {
                s = lanes.s(column) - shape(s, lanes.u(lane));
            }
            const auto next = std::ranges::upper_bound(edges, s);
            const double share = (s - *(next - 1)) / (*next - *(next - 1));
            const double dark = std::exp(-share / 0.2) * (1.0 - std::exp(-share / 0.03));
            for (cv::Mat1f& channel : lanes.rgb) {
                channel(lane, column) = static_cast<float>(0.75 - 0.4 * dark) + noise(random);
            }
        }
    }
    return lanes;
}

/// The median deviation of the flow found from the true one, mm, within 2 mm of the path and away from the ends.
double flow_error(const Shape& shape) {
    const Lanes lanes = lanes_of(shape);
    const Relief relief = relief_of(lanes);
    const Signal signal = wood_model(WoodType::Conifer).signal(relief, lanes);
    const cv::Mat1f flow = ring_flow(signal.traced, relief.solid, lanes, signal.plan);
    std::vector<double> errors;
    for (int lane = lanes.centre() - 20; lane <= lanes.centre() + 20; ++lane) {
        for (int column = 150; column < lanes.columns() - 150; column += 5) {
            errors.push_back(std::abs(static_cast<double>(flow(lane, column)) - shape(lanes.s(column), lanes.u(lane))));
        }
    }
    std::ranges::nth_element(errors, errors.begin() + static_cast<std::ptrdiff_t>(errors.size() / 2));
    return errors[errors.size() / 2];
}

TEST(RingFlow, IsZeroWhereTheRingsRunStraightAcross) {
    EXPECT_LT(flow_error([](double, double) { return 0.0; }), 0.01);
}

TEST(RingFlow, FollowsSlantedRings) {
    for (const double slant : {-0.4, 0.15, 0.6}) {
        EXPECT_LT(flow_error([&](double, double u) { return slant * u; }), 0.015) << slant;
    }
}

TEST(RingFlow, FollowsRingsThatBendRoundThePith) {
    EXPECT_LT(flow_error([](double s, double u) { return u * u / (2.0 * (40.0 - s)); }), 0.015);
}

TEST(RingFlow, FollowsWavyRings) {
    EXPECT_LT(flow_error([](double s, double u) {
                  return 0.15 * u + 0.12 * (std::sin(1.4 * u + 0.2 * s) - std::sin(0.2 * s));
              }),
              0.02);
}

TEST(RingFlow, FollowsRingsWhoseSlopeDiffersFromOneToTheNext) {
    EXPECT_LT(flow_error([](double s, double u) { return (0.2 + 0.08 * std::sin(2.5 * s)) * u; }), 0.02);
}

TEST(Flatten, MakesEveryLaneShowTheRingOfThePath) {
    cv::Mat1f values(5, 100);
    cv::Mat1f flow(5, 100);
    for (int lane = 0; lane < 5; ++lane) {
        for (int c = 0; c < 100; ++c) {
            flow(lane, c) = 0.02F * static_cast<float>(lane - 2); // one column for each lane
            values(lane, c) = static_cast<float>(c - (lane - 2));
        }
    }
    const cv::Mat1f flat = flatten(values, flow, 0.02);
    for (int lane = 0; lane < 5; ++lane) {
        for (int c = 5; c < 95; ++c) {
            ASSERT_NEAR(flat(lane, c), static_cast<float>(c), 1e-3);
        }
    }
}

} // namespace
} // namespace pithward::boundary
