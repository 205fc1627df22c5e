#pragma once

#include <opencv2/core/utility.hpp>

#include <future>
#include <type_traits>
#include <utility>

namespace pithward {

/// Starts a piece of work beside what the caller goes on with; its answer is asked for with `get`. With one thread it
/// is done then and there. What it refers to must live until then.
template <typename Piece>
[[nodiscard]] std::future<std::invoke_result_t<Piece>> beside(Piece piece) {
    const auto policy = cv::getNumThreads() > 1 ? std::launch::async : std::launch::deferred;
    return std::async(policy, std::move(piece));
}

} // namespace pithward
