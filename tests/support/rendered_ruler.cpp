#include "tests/support/rendered_ruler.h"

#include <opencv2/imgproc.hpp>

#include <algorithm>
#include <cmath>
#include <random>
#include <string>

namespace pithward::test {

namespace {

constexpr double margin_mm = 2.5;
constexpr double ruler_mm = 11.0; // across

struct Stroke {
    double at_mm = 0.0;
    double length_mm = 0.0;
    double strength = 1.0;
};

class Drawing {
public:
    explicit Drawing(const RulerLook& look)
        : look_(look)
        , random_(look.seed)
        , cosine_(std::cos(radians(look.tilt_deg)))
        , sine_(std::sin(radians(look.tilt_deg))) {
        const double length = look.spacing_mm * (look.marks - 1);
        const double wide = length + 2.0 * margin_mm;
        const double high = ruler_mm + 2.0 * margin_mm;
        width_ = static_cast<int>((std::abs(wide * cosine_) + std::abs(high * sine_)) * look.px_per_mm_x);
        height_ = static_cast<int>((std::abs(wide * sine_) + std::abs(high * cosine_)) * look.px_per_mm_y);
        middle_along_ = 0.5 * length;
        middle_down_ = 0.5 * ruler_mm;
        wander_phase_ = uniform(0.0, 6.28);
        strokes_.resize(static_cast<std::size_t>(look.marks));
        for (int k = 0; k < look.marks; ++k) {
            add_strokes(k);
        }
    }

    RenderedRuler picture() {
        cv::Mat1f grey(height_, width_);
        for (int y = 0; y < height_; ++y) {
            for (int x = 0; x < width_; ++x) {
                grey(y, x) = static_cast<float>(colour(x, y));
            }
        }
        if (look_.numerals) {
            add_numerals(grey);
        }
        cv::GaussianBlur(grey, grey, {}, std::max(0.3, look_.blur_px));
        light_and_noise(grey);
        RenderedRuler rendered;
        cv::Mat1b bytes;
        grey.convertTo(bytes, CV_8U);
        cv::cvtColor(bytes, rendered.pixels, cv::COLOR_GRAY2RGB);
        const double down = 0.5 * look_.lengths_mm.front();
        rendered.from = place(0.0, down);
        rendered.to = place(2.0 * middle_along_, down);
        return rendered;
    }

private:
    double uniform(double low, double high) { return std::uniform_real_distribution(low, high)(random_); }

    double length_of(int k) {
        std::size_t rank = 0;
        for (const int each : look_.longer_each) {
            rank += (k + look_.first_number) % each == 0 ? 1 : 0;
        }
        return look_.lengths_mm[std::min(rank, look_.lengths_mm.size() - 1)];
    }

    void add_strokes(int k) {
        std::vector<Stroke>& here = strokes_[static_cast<std::size_t>(k)];
        const double fate = uniform(0.0, 1.0);
        const double off = std::normal_distribution(0.0, 1.0)(random_) * look_.placing_mm;
        Stroke stroke{k * look_.spacing_mm + off, length_of(k), 1.0};
        const double strength = uniform(0.3, 0.9);
        const double share = uniform(0.55, 1.0);
        const double aside = uniform(0.14, 0.3) * look_.spacing_mm;
        if (fate < look_.missing) {
            return;
        }
        if (fate < look_.missing + look_.worn) {
            stroke.strength = strength;
            stroke.length_mm *= share;
        }
        here.push_back(stroke);
        if (uniform(0.0, 1.0) < look_.doubled) {
            here.push_back({stroke.at_mm + aside, stroke.length_mm, strength});
        }
    }

    /// Millimetres along the ruler from its first mark and down from its edge, to pixels ...
    ImagePoint place(double along, double down) const {
        const double a = along - middle_along_;
        const double d = down - middle_down_;
        return {0.5 * width_ + (a * cosine_ - d * sine_) * look_.px_per_mm_x,
                0.5 * height_ + (a * sine_ + d * cosine_) * look_.px_per_mm_y};
    }

    double colour(int x, int y) {
        const double mx = (x - 0.5 * width_) / look_.px_per_mm_x;
        const double my = (y - 0.5 * height_) / look_.px_per_mm_y;
        // ... and back.
        const double per_mm = std::hypot(look_.px_per_mm_x * cosine_, look_.px_per_mm_y * sine_);
        double along = mx * cosine_ + my * sine_ + middle_along_;
        along += look_.wander_px / per_mm * std::sin(along / 2.3 + wander_phase_ + 1.7 * std::sin(along / 7.1));
        const double down = -mx * sine_ + my * cosine_ + middle_down_;
        const auto share = [](double inside_px) { return std::clamp(0.5 + inside_px, 0.0, 1.0); };
        const double on_ruler = share(down * per_mm) * share((ruler_mm - down) * per_mm);
        double ink = 0.0;
        const int nearest = static_cast<int>(std::lround(along / look_.spacing_mm));
        for (int k = std::max(0, nearest - 1); k <= std::min(look_.marks - 1, nearest + 1); ++k) {
            for (const Stroke& stroke : strokes_[static_cast<std::size_t>(k)]) {
                const double off = along - stroke.at_mm;
                const double across =
                    share((off + 0.5 * look_.stroke_mm) * per_mm) - share((off - 0.5 * look_.stroke_mm) * per_mm);
                ink = std::max(ink, stroke.strength * across * share((stroke.length_mm - down) * per_mm));
            }
        }
        return 60.0 + on_ruler * (look_.base - 60.0 + ink * (look_.ink - look_.base));
    }

    void add_numerals(cv::Mat1f& grey) {
        for (int k = 0; k < look_.marks; ++k) {
            const int number = k + look_.first_number;
            if (number % look_.longer_each.back() != 0) {
                continue;
            }
            const ImagePoint at = place(k * look_.spacing_mm + 0.3, look_.lengths_mm.back() + 1.9);
            const double scale = 1.8 * look_.px_per_mm_y / 21.0;
            cv::putText(grey, std::to_string(number / look_.longer_each.back()),
                        cv::Point(static_cast<int>(at.x), static_cast<int>(at.y)), cv::FONT_HERSHEY_SIMPLEX, scale,
                        cv::Scalar::all(look_.ink), std::max(1, static_cast<int>(0.2 * look_.px_per_mm_x)),
                        cv::LINE_AA);
        }
    }

    void light_and_noise(cv::Mat1f& grey) {
        cv::RNG noise(look_.seed * 7919 + 17);
        cv::Mat1f grain(grey.size());
        noise.fill(grain, cv::RNG::NORMAL, 0.0, look_.noise);
        cv::Mat1f streaks(grey.size());
        noise.fill(streaks, cv::RNG::NORMAL, 0.0, 1.0);
        const bool upright = std::abs(sine_) > std::abs(cosine_);
        const int longish = 2 * static_cast<int>(1.5 * look_.px_per_mm_x) + 1;
        cv::blur(streaks, streaks, upright ? cv::Size(1, longish) : cv::Size(longish, 1));
        streaks *= look_.brushed * std::sqrt(longish);
        for (int y = 0; y < height_; ++y) {
            for (int x = 0; x < width_; ++x) {
                const double light =
                    1.0 - look_.uneven_light * (0.5 * x / width_ + 0.5 * std::pow(double(y) / height_, 2.0));
                grey(y, x) = static_cast<float>(light) * (grey(y, x) + streaks(y, x)) + grain(y, x);
            }
        }
    }

    RulerLook look_;
    std::mt19937_64 random_;
    double cosine_;
    double sine_;
    int width_ = 0;
    int height_ = 0;
    double middle_along_ = 0.0;
    double middle_down_ = 0.0;
    double wander_phase_ = 0.0;
    std::vector<std::vector<Stroke>> strokes_;
};

} // namespace

RenderedRuler rendered_ruler(const RulerLook& look) {
    return Drawing(look).picture();
}

} // namespace pithward::test
