#pragma once

#include "libcore/specimen/outcome.h"
#include "libcore/specimen/scan.h"
#include "libcore/specimen/work.h"

#include <opencv2/core.hpp>

#include <functional>
#include <memory>
#include <optional>
#include <string>

namespace pithward {

/// A scan opened for reading. Cheap to copy; copies share the decoder. All calls may come from any thread.
///
/// Formats: TIFF (8 and 16 bit, strips or tiles, LZW, deflate), PNG, JPEG. Pixels come as RGB, `CV_8UC3` or `CV_16UC3`;
/// grey becomes RGB, an alpha channel is dropped. Positions are those of the image as stored: an orientation tag is not
/// applied.
class ScanFile {
public:
    /// Reads the header only. Fails on files that are no image, have absurd sizes or a colour space that can't be used;
    /// the fault's `where` is the file. Up to `most_memory` bytes of pixels are kept in memory.
    [[nodiscard]] static Outcome<ScanFile> open(const std::string& path, std::int64_t most_memory = 400'000'000);

    [[nodiscard]] const Scan& header() const;

    /// The damage that reading has met so far: nothing of the scan can be relied on then.
    [[nodiscard]] std::optional<Fault> damage() const;

    /// Pixels of `region` (clipped to the scan), averaged over squares of `reduction` pixels (at least 1; the region is
    /// cut to whole squares). Decodes what it needs; a format without regions is decoded once and kept: in memory when
    /// it fits, else in a nameless file in the folder for temporary files. Fails on damaged or truncated data.
    [[nodiscard]] Outcome<cv::Mat> read(cv::Rect region, int reduction = 1) const;

    /// The whole scan averaged over squares of `reduction` pixels, 8 bit, read once from top to bottom in bounded
    /// memory.
    [[nodiscard]] Outcome<cv::Mat> overview(int reduction, const Work& work = {}) const;

    /// The same, handed out in parts as they come, in any order and by several threads but never two at once: for a
    /// picture that fills while the file is read. What can only be decoded from the top is decoded once, also for what
    /// is read later. `reduction`: a power of two, at most `greatest_stream_reduction`.
    using Part = std::function<void(int first_row, const cv::Mat& rows)>;
    [[nodiscard]] Outcome<void> stream(int reduction, const Part& part, const Work& work = {}) const;
    static constexpr int greatest_stream_reduction = 64;

    /// The greatest size accepted on either side, and in all: an A3 sheet at 2400 dpi has 1,100 million pixels.
    static constexpr int greatest_side = 1'000'000;
    static constexpr std::int64_t greatest_area = 1'600'000'000;

private:
    struct State;
    explicit ScanFile(std::shared_ptr<State> state)
        : state_(std::move(state)) {}
    std::shared_ptr<State> state_;
};

} // namespace pithward
