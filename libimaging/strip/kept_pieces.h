#pragma once

#include <opencv2/core.hpp>

#include <array>
#include <cstdint>
#include <optional>

namespace pithward {

/// A stretch of lanes (lanes.h): red, green and blue.
using LanePiece = std::array<cv::Mat1f, 3>;

/// A hash of all that a stretch of lanes follows from, but for the scan's pixels: where on the scan each of its columns
/// runs, and how it is averaged. 128 bits, so that two different stretches never meet in practice.
struct PieceKey {
    std::uint64_t high = 0;
    std::uint64_t low = 0;
    friend bool operator==(const PieceKey&, const PieceKey&) = default;
};

/// Stretches of lanes that were made before, kept by whoever reads the same scan again and again. libimaging itself
/// keeps nothing between calls. One is for one opened scan. It may forget at any time; results are the same with and
/// without it. Called from several threads at once.
class KeptPieces {
public:
    virtual ~KeptPieces() = default;
    /// The stretch kept under this key, or nothing. Its pixels are not altered by the caller.
    [[nodiscard]] virtual std::optional<LanePiece> find(const PieceKey& key) = 0;
    /// `piece` has pixels of its own.
    virtual void keep(const PieceKey& key, const LanePiece& piece) = 0;

protected:
    KeptPieces() = default;
    KeptPieces(const KeptPieces&) = default;
    KeptPieces& operator=(const KeptPieces&) = default;
    KeptPieces(KeptPieces&&) = default;
    KeptPieces& operator=(KeptPieces&&) = default;
};

} // namespace pithward
