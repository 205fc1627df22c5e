#include "libimaging/scan/scan_file.h"

#include "libimaging/scan/first_damage.h"
#include "libimaging/scan/load_image.h"
#include "libimaging/scan/scratch.h"
#include "libimaging/scan/vips_image.h"

#include <opencv2/core/utility.hpp>
#include <opencv2/imgproc.hpp>

#include <algorithm>
#include <atomic>
#include <mutex>
#include <optional>
#include <utility>

namespace pithward {

using scan::FirstDamage;

struct ScanFile::State {
    scan::LoadedImage image;
    FirstDamage damage;
    std::once_flag scratch_wanted;
    std::optional<Outcome<scan::Scratch>> scratch; ///< Made when pixels of a scan that needs it are first asked for.

    /// Where pixels may be read here and there.
    Outcome<VipsImage*> pixels() {
        if (!image.needs_scratch) {
            return image.pixels.get();
        }
        const std::string& file = image.header.file;
        std::call_once(scratch_wanted, [&] {
            scratch = scan::load_top_to_bottom(file).and_then([&](const scan::VipsHandle& from_top) {
                return scan::Scratch::decode(file, from_top.get(), [&] { return damage.met_in(file); });
            });
        });
        return scratch->map([](const scan::Scratch& made) { return made.pixels(); });
    }
};

namespace {

int type_of(VipsImage* image) {
    return vips_image_get_format(image) == VIPS_FORMAT_USHORT ? CV_16UC3 : CV_8UC3;
}

/// Averages whole squares of `step` pixels of one stretch of rows into `out`. False on damaged data.
bool average_rows(VipsImage* image, const cv::Rect& rows, int step, cv::Mat out) {
    const scan::VipsRegionHandle region(vips_region_new(image));
    const VipsRect rect{rows.x, rows.y, rows.width, rows.height};
    if (!region || vips_region_prepare(region.get(), &rect) != 0) {
        return false;
    }
    // libvips hands out its own memory: nothing is copied but the result.
    const cv::Mat pixels(rows.height, rows.width, type_of(image), VIPS_REGION_ADDR(region.get(), rows.x, rows.y),
                         VIPS_REGION_LSKIP(region.get()));
    if (step == 1) {
        pixels.copyTo(out);
    } else {
        cv::resize(pixels, out, out.size(), 0.0, 0.0, cv::INTER_AREA);
    }
    return true;
}

/// In which order an image gives its rows.
enum class Rows { Any, FromTheTop };

/// The region averaged over squares, stretch by stretch so that memory stays bounded. Its sides are whole multiples of
/// the step.
Outcome<cv::Mat> averaged(const std::string& path, FirstDamage& damage, VipsImage* image, Rows order,
                          const cv::Rect& region, int step, const Work& work) {
    constexpr std::int64_t stretch_bytes = 8'000'000;
    cv::Mat out(region.height / step, region.width / step, type_of(image));
    const std::int64_t row_bytes = static_cast<std::int64_t>(region.width) * static_cast<std::int64_t>(out.elemSize());
    const int rows = std::max(1, static_cast<int>(stretch_bytes / (row_bytes * step))); // of the result
    const int stretches = (out.rows + rows - 1) / rows;
    std::atomic<bool> whole = true;
    std::mutex guard;
    int done = 0;
    const auto average = [&](const cv::Range& range) {
        for (int k = range.start; k < range.end && whole && !work.stopped(); ++k) {
            const cv::Range part(k * rows, std::min(out.rows, (k + 1) * rows));
            const cv::Rect source(region.x, region.y + part.start * step, region.width, part.size() * step);
            if (!average_rows(image, source, step, out.rowRange(part))) {
                whole = false;
            }
            const std::scoped_lock lock(guard);
            work.report(static_cast<double>(++done) / stretches);
        }
    };
    if (order == Rows::FromTheTop) {
        average(cv::Range(0, stretches));
    } else {
        cv::parallel_for_(cv::Range(0, stretches), average);
    }
    if (!whole) {
        return tl::unexpected(damage.met_in(path));
    }
    if (work.stopped()) {
        return fail(path, "stopped", "start again when wanted");
    }
    return out;
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
    return state_->pixels().and_then(
        [&](VipsImage* image) { return averaged(header.file, state_->damage, image, Rows::Any, region, step, {}); });
}

Outcome<cv::Mat> ScanFile::overview(int reduction, const Work& work) const {
    const Scan& header = state_->image.header;
    const int step = std::clamp(reduction, 1, std::min(header.width, header.height));
    const cv::Rect region(0, 0, header.width - header.width % step, header.height - header.height % step);
    const auto average = [&](VipsImage* image, Rows order) {
        return averaged(header.file, state_->damage, image, order, region, step, work);
    };
    auto whole = state_->image.needs_scratch
                     ? scan::load_top_to_bottom(header.file).and_then([&](const scan::VipsHandle& image) {
                           return average(image.get(), Rows::FromTheTop);
                       })
                     : average(state_->image.pixels.get(), Rows::Any);
    if (whole && whole->depth() == CV_16U) {
        whole->convertTo(*whole, CV_8U, 1.0 / 257.0);
    }
    return whole;
}

} // namespace pithward
