#pragma once

#include "libimaging/strip/kept_pieces.h"

#include <cstddef>
#include <cstdint>
#include <map>
#include <mutex>

namespace pithward::bench {

/// The straightened stretches of one scan, so that a path of which a piece was moved is read again without the rest.
/// Up to a number of bytes; those unused for longest go first.
class PieceShelf : public KeptPieces {
public:
    /// Two cores of 300 mm at 2400 dpi fit in.
    explicit PieceShelf(std::size_t most_bytes = 64'000'000);

    [[nodiscard]] std::optional<LanePiece> find(const PieceKey& key) override;
    void keep(const PieceKey& key, const LanePiece& piece) override;
    [[nodiscard]] std::size_t bytes() const;

private:
    struct Order {
        bool operator()(const PieceKey& a, const PieceKey& b) const {
            return a.high != b.high ? a.high < b.high : a.low < b.low;
        }
    };
    struct Held {
        LanePiece piece;
        std::uint64_t used = 0;
    };
    static std::size_t bytes_of(const LanePiece& piece);

    mutable std::mutex guard_;
    std::size_t most_;
    std::size_t bytes_ = 0;
    std::uint64_t clock_ = 0;
    std::map<PieceKey, Held, Order> held_;
};

} // namespace pithward::bench
