#include "libimaging/strip/core_finder.h"

#include "libimaging/code/code_reader.h"
#include "libimaging/robust/median.h"
#include "libimaging/strip/core_texture.h"

#include <opencv2/imgproc.hpp>

#include <algorithm>
#include <cmath>

namespace pithward {

namespace {

constexpr double overview_px_per_mm = 12.0;
constexpr double least_length_mm = 12.0;
constexpr double sliver_mm = 25.0;   ///< What is shorter than this ...
constexpr double sliver_share = 0.7; ///< ... and narrower than this share of the widest core beside it is none.
constexpr double least_width_mm = 1.0;
constexpr double greatest_width_mm = 14.0;
constexpr double least_aspect = 4.0;
constexpr double least_fill = 0.6;   ///< Share of a core's stretch that must show texture across it.
constexpr double join_mm = 6.0;      ///< Gaps in the texture up to this are bridged: wide rings, cracks.
constexpr double bare_mm = 5.0;      ///< Wood may show no change along it for so long ...
constexpr double lively_share = 0.3; ///< ... a change being more than this share of the usual energy.
constexpr double knot_mm = 8.0;      ///< Distance of the points of a proposed path.

cv::Mat1b clean(const cv::Mat1b& texture, double px_per_mm) {
    const auto odd = [](double size) { return 2 * static_cast<int>(0.5 * size) + 1; };
    cv::Mat1b mask;
    cv::morphologyEx(texture, mask, cv::MORPH_CLOSE, cv::Mat1b::ones(odd(0.5 * px_per_mm), odd(join_mm * px_per_mm)));
    cv::morphologyEx(mask, mask, cv::MORPH_OPEN, cv::Mat1b::ones(odd(0.8 * px_per_mm), odd(3.0 * px_per_mm)));
    return mask;
}

/// Middle and breadth of a blob, column by column; breadth 0 where it has none.
struct Section {
    double middle = 0.0;
    double breadth = 0.0;
};

std::vector<Section> sections_of(const cv::Mat1i& labels, int label, const cv::Rect& box) {
    std::vector<Section> out(static_cast<std::size_t>(box.width));
    for (int x = 0; x < box.width; ++x) {
        // From edge to edge: rays along the core leave holes.
        int first = -1;
        int last = -1;
        for (int y = box.y; y < box.y + box.height; ++y) {
            if (labels(y, box.x + x) == label) {
                first = first < 0 ? y : first;
                last = y;
            }
        }
        if (first >= 0) {
            out[static_cast<std::size_t>(x)] = {0.5 * (first + last), last - first + 1.0};
        }
    }
    return out;
}

/// The columns of a blob that are wood: averaging and bridging made it too long. From its middle outward, up to where
/// the changes along it stay far under the usual ones for longer than a wide ring or crack.
cv::Range wood_range(const cv::Mat1f& change, const std::vector<Section>& sections, int left, double px_per_mm) {
    std::vector<double> energy;
    for (std::size_t x = 0; x < sections.size(); ++x) {
        const int half = std::max(1, static_cast<int>(0.35 * sections[x].breadth));
        const int middle = static_cast<int>(sections[x].middle);
        const cv::Range rows(std::max(0, middle - half), std::min(change.rows, middle + half + 1));
        const int column = left + static_cast<int>(x);
        energy.push_back(cv::mean(change(rows, cv::Range(column, column + 1)))[0]);
    }
    const double usual = median(energy);
    const int n = static_cast<int>(energy.size());
    const int patience = static_cast<int>(bare_mm * px_per_mm);
    const auto last_lively = [&](int from, int step) {
        int lively = from;
        for (int x = from; x >= 0 && x < n && std::abs(x - lively) <= patience; x += step) {
            if (energy[static_cast<std::size_t>(x)] > lively_share * usual) {
                lively = x;
            }
        }
        return lively;
    };
    return {last_lively(n / 2, -1), last_lively(n / 2, 1) + 1};
}

/// Knots along the middle: medians over windows, so that a ragged edge or a label does not bend the path.
std::vector<ImagePoint> middle_line(const std::vector<Section>& sections, const cv::Rect& box, double px_per_mm) {
    const int n = static_cast<int>(sections.size());
    const int knots = std::max(2, static_cast<int>(std::lround(n / (knot_mm * px_per_mm))) + 1);
    const int half = std::max(1, static_cast<int>(0.5 * knot_mm * px_per_mm));
    std::vector<ImagePoint> points;
    for (int k = 0; k < knots; ++k) {
        const double x = (n - 1.0) * k / (knots - 1.0);
        // A window that shrinks symmetrically toward the ends: its median is no lie on a tilted core.
        const int reach = std::max(2, static_cast<int>(std::min<double>({double(half), x, n - 1.0 - x})));
        std::vector<double> middles;
        for (int i = std::max(0, static_cast<int>(x) - reach); i <= std::min(n - 1, static_cast<int>(x) + reach); ++i) {
            if (sections[static_cast<std::size_t>(i)].breadth > 0.0) {
                middles.push_back(sections[static_cast<std::size_t>(i)].middle);
            }
        }
        if (!middles.empty()) {
            points.push_back({box.x + x, median(middles)});
        }
    }
    // The ragged ends say least about where the middle is: they go on straight from the knots inside.
    const std::size_t last = points.size() - 1;
    if (points.size() >= 4) {
        const auto extend = [](ImagePoint a, ImagePoint b, double x) {
            return ImagePoint{x, b.y + (x - b.x) * (b.y - a.y) / (b.x - a.x)};
        };
        points[0] = extend(points[2], points[1], points[0].x);
        points[last] = extend(points[last - 2], points[last - 1], points[last].x);
    }
    return points;
}

/// Cores that lie along the picture's rows.
std::vector<CoreOutline> along_rows(const cv::Mat& picture, double px_per_mm) {
    const strip::TextureMap map = strip::texture_across_rows(picture, px_per_mm);
    const cv::Mat1b mask = clean(map.across, px_per_mm);
    cv::Mat1i labels;
    cv::Mat1i stats;
    cv::Mat1d centres;
    const int count = cv::connectedComponentsWithStats(mask, labels, stats, centres, 8, CV_32S);
    std::vector<CoreOutline> cores;
    for (int label = 1; label < count; ++label) {
        const cv::Rect box(stats(label, cv::CC_STAT_LEFT), stats(label, cv::CC_STAT_TOP),
                           stats(label, cv::CC_STAT_WIDTH), stats(label, cv::CC_STAT_HEIGHT));
        if (box.width < least_length_mm * px_per_mm) {
            continue;
        }
        const std::vector<Section> sections = sections_of(labels, label, box);
        std::vector<double> breadths;
        breadths.reserve(sections.size());
        for (const Section& section : sections) {
            breadths.push_back(section.breadth);
        }
        CoreOutline core;
        core.width_mm = median(breadths) / px_per_mm;
        const double length_mm = box.width / px_per_mm;
        const double fill =
            static_cast<double>(stats(label, cv::CC_STAT_AREA)) / (box.width * std::max(1.0, median(breadths)));
        if (core.width_mm < least_width_mm || core.width_mm > greatest_width_mm ||
            length_mm < least_aspect * core.width_mm || fill < least_fill) {
            continue;
        }
        const cv::Range wood = wood_range(map.change, sections, box.x, px_per_mm);
        if (wood.size() < least_length_mm * px_per_mm) {
            continue;
        }
        core.path = middle_line({sections.begin() + wood.start, sections.begin() + wood.end},
                                cv::Rect(box.x + wood.start, box.y, wood.size(), box.height), px_per_mm);
        if (core.path.size() < 2 || strip::is_ruler(map.grey, core.path, 0.5 * core.width_mm * px_per_mm, px_per_mm)) {
            continue;
        }
        cores.push_back(std::move(core));
    }
    return cores;
}

bool overlap(const CoreOutline& a, const CoreOutline& b, double px_per_mm) {
    const double reach = 0.5 * (a.width_mm + b.width_mm) * px_per_mm;
    return std::ranges::any_of(a.path, [&](const ImagePoint& p) {
        return std::ranges::any_of(b.path,
                                   [&](const ImagePoint& q) { return std::hypot(p.x - q.x, p.y - q.y) < reach; });
    });
}

double length_of(const CoreOutline& core) {
    const ImagePoint span = core.path.back() - core.path.front();
    return std::hypot(span.x, span.y);
}

/// Handwriting on the mount and slivers: short, and narrower than the cores beside them. The pieces of a core are as
/// wide as the core.
void drop_slivers(std::vector<CoreOutline>& cores, double px_per_mm) {
    double widest = 0.0;
    for (const CoreOutline& core : cores) {
        widest = std::max(widest, core.width_mm);
    }
    std::erase_if(cores, [&](const CoreOutline& core) {
        return core.width_mm < sliver_share * widest && length_of(core) < sliver_mm * px_per_mm;
    });
}

/// A picture with what is around them where codes are: they look as lively as wood, and may lie in line with a core.
cv::Mat without_codes(const cv::Mat& picture) {
    constexpr double with_rim = 0.75; // of the code's side, to each side of its middle: turned by 45 degrees it fits
    const std::vector<CodeOnScan> codes = read_codes(picture);
    if (codes.empty()) {
        return picture;
    }
    cv::Mat covered = picture.clone();
    const cv::Rect whole({0, 0}, picture.size());
    for (const CodeOnScan& code : codes) {
        const auto half = static_cast<int>(std::ceil(with_rim * code.side));
        const cv::Point middle(static_cast<int>(code.at.x), static_cast<int>(code.at.y));
        const cv::Rect square(middle - cv::Point(half, half), cv::Size(2 * half + 1, 2 * half + 1));
        const cv::Rect around = (square + cv::Size(4, 4)) - cv::Point(2, 2);
        cv::Mat rim(picture.size(), CV_8UC1, cv::Scalar(0));
        rim(around & whole).setTo(1);
        rim(square & whole).setTo(0);
        covered(square & whole).setTo(cv::mean(picture, rim));
    }
    return covered;
}

} // namespace

std::vector<CoreOutline> outline_cores(const cv::Mat& whole_picture, double px_per_mm) {
    const cv::Mat picture = without_codes(whole_picture);
    std::vector<CoreOutline> cores = along_rows(picture, px_per_mm);
    cv::Mat turned;
    cv::transpose(picture, turned);
    for (CoreOutline& core : along_rows(turned, px_per_mm)) {
        for (ImagePoint& point : core.path) {
            std::swap(point.x, point.y);
        }
        const auto rival =
            std::ranges::find_if(cores, [&](const CoreOutline& c) { return overlap(c, core, px_per_mm); });
        if (rival == cores.end()) {
            cores.push_back(std::move(core));
        } else if (length_of(core) > 2.0 * length_of(*rival)) {
            *rival = std::move(core);
        }
    }
    drop_slivers(cores, px_per_mm);
    std::ranges::sort(cores, [](const CoreOutline& a, const CoreOutline& b) {
        const auto key = [](const CoreOutline& core) { return core.path[core.path.size() / 2]; };
        return key(a).y != key(b).y ? key(a).y < key(b).y : key(a).x < key(b).x;
    });
    return cores;
}

Outcome<std::vector<CoreOutline>> outline_cores(const ScanFile& scan, const Calibration& calibration,
                                                const Work& work) {
    const int reduction = std::max(1, static_cast<int>(std::lround(calibration.px_per_mm() / overview_px_per_mm)));
    const auto overview = scan.overview(reduction, work);
    if (!overview) {
        return tl::unexpected(overview.error());
    }
    std::vector<CoreOutline> cores = outline_cores(*overview, calibration.px_per_mm() / reduction);
    for (CoreOutline& core : cores) {
        for (ImagePoint& point : core.path) {
            // Pixel i of the overview covers [i * r, (i + 1) * r) of the scan.
            point = {(point.x + 0.5) * reduction - 0.5, (point.y + 0.5) * reduction - 0.5};
        }
    }
    return cores;
}

} // namespace pithward
