#include "libimaging/scan/scan_file.h"

#include "libimaging/scan/first_damage.h"
#include "libimaging/scan/load_image.h"
#include "libimaging/scan/scratch.h"
#include "libimaging/scan/vips_image.h"

#include <opencv2/core/utility.hpp>
#include <opencv2/imgproc.hpp>

#include <algorithm>
#include <atomic>
#include <functional>
#include <mutex>
#include <optional>
#include <utility>

namespace pithward {

using scan::FirstDamage;

struct ScanFile::State {
    scan::LoadedImage image;
    FirstDamage damage;
    std::once_flag scratch_wanted;
    std::atomic<bool> scratch_begun = false;
    std::optional<Outcome<scan::Scratch>> scratch; ///< Made when pixels of a scan that needs it are first asked for.

    /// Where pixels may be read here and there. `rows` sees them where this call is the one that decodes.
    Outcome<VipsImage*> pixels(const scan::Scratch::Rows& rows = {}) {
        if (!image.needs_scratch) {
            return image.pixels.get();
        }
        const std::string& file = image.header.file;
        std::call_once(scratch_wanted, [&] {
            scratch_begun = true;
            scratch = scan::load_top_to_bottom(file).and_then([&](const scan::VipsHandle& from_top) {
                return scan::Scratch::decode(
                    file, from_top.get(), [&] { return damage.met_in(file); }, rows);
            });
        });
        return scratch->map([](const scan::Scratch& made) { return made.pixels(); });
    }

    /// A stretch was read: the memory that it took is let go.
    void let_go() const {
        if (scratch && scratch->has_value()) {
            (*scratch)->let_go();
        }
    }
};

namespace {

/// Averages whole squares of `step` pixels.
void average(const cv::Mat& pixels, cv::Mat& out) {
    if (pixels.size() == out.size()) {
        pixels.copyTo(out);
    } else {
        cv::resize(pixels, out, out.size(), 0.0, 0.0, cv::INTER_AREA);
    }
}

/// The same of one stretch of an image's rows. False on damaged data.
bool average_rows(VipsImage* image, const cv::Rect& rows, cv::Mat out) {
    const scan::VipsRegionHandle region(vips_region_new(image));
    const VipsRect rect{rows.x, rows.y, rows.width, rows.height};
    if (!region || vips_region_prepare(region.get(), &rect) != 0) {
        return false;
    }
    // libvips hands out its own memory: nothing is copied but the result.
    average(cv::Mat(rows.height, rows.width, scan::type_of(image), VIPS_REGION_ADDR(region.get(), rows.x, rows.y),
                    VIPS_REGION_LSKIP(region.get())),
            out);
    return true;
}

cv::Mat as_8_bit(cv::Mat pixels) {
    if (pixels.depth() == CV_16U) {
        pixels.convertTo(pixels, CV_8U, 1.0 / 257.0);
    }
    return pixels;
}

Fault stopped(const std::string& path) {
    return {path, "stopped", "start again when wanted"};
}

/// In which order an image gives its rows.
enum class Rows { Any, FromTheTop };

/// An image, or a region of it, to be averaged over squares, stretch by stretch so that memory stays bounded.
struct Averaging {
    VipsImage* image;
    Rows order;
    cv::Rect region; ///< Its sides are whole multiples of the step.
    int step;
    std::function<void()> after_stretch = {};
    /// Opens the image once more, for a thread of its own.
    std::function<scan::VipsHandle()> another = {};
};

/// Hands out each stretch of the result, never two at once.
Outcome<void> average_stretches(const std::string& path, FirstDamage& damage, const Averaging& what,
                                const ScanFile::Part& part, const Work& work) {
    constexpr std::int64_t stretch_bytes = 8'000'000;
    const cv::Rect region = what.region;
    const int step = what.step;
    const cv::Size size(region.width / step, region.height / step);
    const int type = scan::type_of(what.image);
    const std::int64_t row_bytes = static_cast<std::int64_t>(region.width) * CV_ELEM_SIZE(type);
    // Whole rows of tiles where there are any, so that none is decoded twice.
    constexpr int tile_rows = 512;
    const int least = region.height > tile_rows ? tile_rows / step : 1;
    const int rows = std::max({1, least, static_cast<int>(stretch_bytes / (row_bytes * step))}); // of the result
    const int stretches = (size.height + rows - 1) / rows;
    std::atomic<bool> whole = true;
    std::mutex guard;
    int done = 0;
    const auto average_some = [&](const cv::Range& range) {
        const scan::VipsHandle another = what.another ? what.another() : scan::VipsHandle();
        VipsImage* const image = another ? another.get() : what.image;
        for (int k = range.start; k < range.end && whole && !work.stopped(); ++k) {
            const cv::Range taken(k * rows, std::min(size.height, (k + 1) * rows));
            const cv::Rect source(region.x, region.y + taken.start * step, region.width, taken.size() * step);
            cv::Mat averages(taken.size(), size.width, type);
            if (!average_rows(image, source, averages)) {
                whole = false;
                return;
            }
            if (what.after_stretch) {
                what.after_stretch();
            }
            const std::scoped_lock lock(guard);
            part(taken.start, averages);
            work.report(static_cast<double>(++done) / stretches);
        }
    };
    if (what.order == Rows::FromTheTop) {
        average_some(cv::Range(0, stretches));
    } else {
        cv::parallel_for_(cv::Range(0, stretches), average_some);
    }
    if (!whole) {
        return tl::unexpected(damage.met_in(path));
    }
    return work.stopped() ? tl::unexpected(stopped(path)) : Outcome<void>();
}

Outcome<cv::Mat> averaged(const std::string& path, FirstDamage& damage, const Averaging& what, const Work& work) {
    cv::Mat out(what.region.height / what.step, what.region.width / what.step, scan::type_of(what.image));
    const auto put = [&](int first, const cv::Mat& rows) { rows.copyTo(out.rowRange(first, first + rows.rows)); };
    return average_stretches(path, damage, what, put, work).map([&] { return out; });
}

/// The part of a scan that is cut to whole squares.
cv::Rect whole_squares(const Scan& header, int step) {
    return {0, 0, header.width - header.width % step, header.height - header.height % step};
}

} // namespace

Outcome<ScanFile> ScanFile::open(const std::string& path, std::int64_t most_memory) {
    if (!scan::start_vips()) {
        return fail(path, "the image library could not be started", "reinstall libvips");
    }
    auto image = scan::load_image(path, most_memory);
    if (!image) {
        return tl::unexpected(image.error());
    }
    auto state = std::make_shared<State>();
    state->image = std::move(*image);
    return ScanFile(std::move(state));
}

const Scan& ScanFile::header() const {
    return state_->image.header;
}

std::optional<Fault> ScanFile::damage() const {
    return state_->damage.fault();
}

Outcome<cv::Mat> ScanFile::read(cv::Rect region, int reduction) const {
    const Scan& header = state_->image.header;
    region &= cv::Rect(0, 0, header.width, header.height);
    const int step = std::max(1, reduction);
    region.width -= region.width % step;
    region.height -= region.height % step;
    if (region.empty()) {
        return fail(header.file, "the region asked for lies outside the scan", "choose a place on the scan");
    }
    return state_->pixels().and_then([&](VipsImage* image) {
        const auto let_go = [this] { state_->let_go(); };
        return averaged(header.file, state_->damage, {image, Rows::Any, region, step, let_go}, {});
    });
}

Outcome<cv::Mat> ScanFile::overview(int reduction, const Work& work) const {
    const Scan& header = state_->image.header;
    const int step = std::clamp(reduction, 1, std::min(header.width, header.height));
    const auto average_of = [&](VipsImage* image, Rows order) {
        const auto let_go = [this] { state_->let_go(); };
        return averaged(header.file, state_->damage, {image, order, whole_squares(header, step), step, let_go}, work);
    };
    // What is being decoded for good already is waited for, and not decoded a second time.
    const bool from_top = state_->image.needs_scratch && !state_->scratch_begun;
    return (from_top ? scan::load_top_to_bottom(header.file).and_then([&](const scan::VipsHandle& image) {
               return average_of(image.get(), Rows::FromTheTop);
           })
                     : state_->pixels().and_then([&](VipsImage* image) { return average_of(image, Rows::Any); }))
        .map(as_8_bit);
}

Outcome<void> ScanFile::stream(int reduction, const Part& part, const Work& work) const {
    const Scan& header = state_->image.header;
    const int step = std::clamp(reduction, 1, greatest_stream_reduction);
    const cv::Rect region = whole_squares(header, step);
    const auto give = [&](int first, const cv::Mat& rows) { part(first, as_8_bit(rows)); };
    const auto average_of = [&](VipsImage* image, Rows order, int by) {
        const cv::Rect shrunk(0, 0, region.width / by, region.height / by);
        return average_stretches(header.file, state_->damage, {image, order, shrunk, step / by}, give, work);
    };
    if (state_->image.shrinks && step > 1) {
        const int by = std::min(step, 8);
        return scan::load_shrunk(header.file, by).and_then([&](const scan::VipsHandle& image) {
            return average_of(image.get(), Rows::FromTheTop, by);
        });
    }
    if (state_->image.needs_scratch && !state_->scratch_begun) {
        const auto rows_come = [&](int first, const cv::Mat& pixels) {
            const int rows = std::min(pixels.rows, region.height - first) / step;
            if (rows > 0) {
                cv::Mat averages(rows, region.width / step, pixels.type());
                average(pixels(cv::Rect(0, 0, region.width, rows * step)), averages);
                give(first / step, averages);
            }
        };
        bool came = false;
        const auto decoded = state_->pixels([&](int first, const cv::Mat& pixels) {
            came = true;
            rows_come(first, pixels);
        });
        if (!decoded || came) {
            return decoded.map([](VipsImage*) {});
        }
    }
    if (state_->image.one_by_one) {
        const auto another = [&] {
            auto once_more = scan::load_image(header.file, 0);
            return once_more ? std::move(once_more->pixels) : scan::VipsHandle();
        };
        return average_stretches(header.file, state_->damage,
                                 {state_->image.pixels.get(), Rows::Any, region, step, {}, another}, give, work);
    }
    return state_->pixels().and_then([&](VipsImage* image) { return average_of(image, Rows::Any, 1); });
}

} // namespace pithward
