#include "app/bench/model/piece_shelf.h"

#include <algorithm>

namespace pithward::bench {

PieceShelf::PieceShelf(std::size_t most_bytes)
    : most_(most_bytes) {}

std::size_t PieceShelf::bytes_of(const LanePiece& piece) {
    std::size_t sum = 0;
    for (const cv::Mat1f& channel : piece) {
        sum += channel.total() * channel.elemSize();
    }
    return sum;
}

std::size_t PieceShelf::bytes() const {
    const std::scoped_lock lock(guard_);
    return bytes_;
}

std::optional<LanePiece> PieceShelf::find(const PieceKey& key) {
    const std::scoped_lock lock(guard_);
    const auto held = held_.find(key);
    if (held == held_.end()) {
        return std::nullopt;
    }
    held->second.used = ++clock_;
    return held->second.piece;
}

void PieceShelf::keep(const PieceKey& key, const LanePiece& piece) {
    const std::scoped_lock lock(guard_);
    if (held_.insert_or_assign(key, Held{piece, ++clock_}).second) {
        bytes_ += bytes_of(piece);
    }
    while (bytes_ > most_ && !held_.empty()) {
        const auto oldest = std::min_element(
            held_.begin(), held_.end(), [](const auto& a, const auto& b) { return a.second.used < b.second.used; });
        bytes_ -= bytes_of(oldest->second.piece);
        held_.erase(oldest);
    }
}

} // namespace pithward::bench
