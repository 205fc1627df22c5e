#include "app/bench/lanes/strip_lane.h"

#include "app/bench/lanes/joined_strips.h"
#include "app/bench/look/appearance.h"
#include "app/bench/model/beside_window.h"
#include "app/picture/ring_places.h"

#include <QMouseEvent>
#include <QPainter>
#include <algorithm>
#include <cmath>

namespace pithward::bench {

namespace {

constexpr double lane_margin = 6.0;
constexpr double strip_share = 0.56; ///< Of the lane's height; the rest is the profile's.

} // namespace

StripLane::StripLane(const BenchModel& model, QWidget* parent)
    : QWidget(parent)
    , model_(model) {
    setMouseTracking(true);
    setMinimumHeight(90);
    setAccessibleName(tr("Straightened strip and light profile"));
    pool_.setMaxThreadCount(1);
    connect(&model_, &BenchModel::changed, this, &StripLane::follow);
}

StripLane::~StripLane() {
    stop_.request_stop();
    pool_.waitForDone();
}

void StripLane::follow() {
    const picture::MeasuredCore* core = model_.core();
    const Path path = core != nullptr ? core->reading.path : Path{};
    if (path != shown_path_) {
        shown_path_ = path;
        picture_ = {};
        light_.clear();
        fetch();
    }
    update();
}

void StripLane::fetch() {
    stop_.request_stop();
    stop_ = {};
    std::vector<LegStrip> legs;
    for (const Leg& leg : shown_path_.legs) {
        const BenchScan* scan = model_.named(leg.scan);
        if (scan != nullptr && scan->calibration) { // one that is not on the bench is left out
            legs.emplace_back();
            legs.back().strip = scan->opened->strip;
            legs.back().request.path = leg.points;
            legs.back().request.calibration = *scan->calibration;
        }
    }
    if (legs.empty()) {
        return;
    }
    const auto make = [legs, stop = stop_.get_token()] { return joined_strips(legs, Work{stop, {}}); };
    beside_window(pool_, this, make, [this, path = shown_path_](const Outcome<StripImage>& made) {
        if (made && path == shown_path_) { // a fault is told where the core itself is read
            picture_ = made->picture;
            light_ = made->light;
            length_mm_ = made->length_mm;
            update();
        }
    });
}

void StripLane::show_stretch(const picture::Stretch& stretch, int breadth) {
    stretch_ = stretch;
    breadth_ = std::max(1, breadth);
    update();
}

void StripLane::pick_ring(int number) {
    if (number != picked_) {
        picked_ = number;
        update();
    }
}

QRectF StripLane::strip_box() const {
    return {0.0, lane_margin, double(width()), strip_share * height() - lane_margin};
}

QRectF StripLane::profile_box() const {
    const double top = strip_box().bottom() + lane_margin;
    return {0.0, top, double(width()), height() - lane_margin - top};
}

double StripLane::x_of(double s_mm) const {
    return stretch_.x_of(s_mm / std::max(1e-9, length_mm_)) * breadth_;
}

int StripLane::ring_at(double x) const {
    const picture::MeasuredCore* core = model_.core();
    if (core == nullptr || picture_.isNull()) {
        return 0;
    }
    const Millimetres s(stretch_.share_at(x / breadth_) * length_mm_);
    return picture::ring_at_place(*core, s).value_or(0);
}

void StripLane::point(int number) {
    if (number != pointed_) {
        pointed_ = number;
        pick_ring(number);
        emit ring_pointed(number);
    }
}

void StripLane::mouseMoveEvent(QMouseEvent* event) {
    point(ring_at(event->position().x()));
}

void StripLane::mouseReleaseEvent(QMouseEvent* event) {
    if (const int ring = ring_at(event->position().x()); ring != 0 && event->button() == Qt::LeftButton) {
        emit ring_chosen(ring);
    }
}

void StripLane::leaveEvent(QEvent*) {
    point(0);
}

void StripLane::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.fillRect(rect(), palette().color(QPalette::Base));
    painter.fillRect(strip_box(), scan_ground(palette()));
    if (picture_.isNull()) {
        painter.setPen(palette().color(QPalette::PlaceholderText));
        painter.drawText(strip_box(), Qt::AlignCenter,
                         shown_path_.legs.empty() ? tr("The straightened core appears here")
                                                  : tr("Straightening the core…"));
        return;
    }
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    painter.save();
    painter.setClipRect(strip_box());
    const double from = x_of(0.0);
    const double to = x_of(length_mm_);
    QTransform place;
    place.translate(from, strip_box().top());
    place.scale((to - from) / picture_.width(), strip_box().height() / picture_.height());
    painter.setTransform(place, true);
    painter.drawImage(0, 0, picture_);
    painter.restore();
    paint_marks(painter);
    paint_profile(painter);
}

void StripLane::paint_profile(QPainter& painter) const {
    const QRectF box = profile_box();
    const auto [low, high] = std::ranges::minmax_element(light_);
    const double span = std::max(1e-6F, *high - *low);
    QPolygonF line;
    const auto count = static_cast<double>(light_.size());
    for (int x = 0; x < width(); ++x) { // the darkest in each column of the lane: thin latewood stays in sight
        const double a = stretch_.share_at(x / double(breadth_)) * count;
        const double b = stretch_.share_at((x + 1) / double(breadth_)) * count;
        const auto first = static_cast<std::ptrdiff_t>(std::floor(std::min(a, b)));
        const auto last = std::max(first + 1, static_cast<std::ptrdiff_t>(std::floor(std::max(a, b))));
        if (first < 0 || last > std::ssize(light_)) {
            continue;
        }
        const float darkest = *std::min_element(light_.begin() + first, light_.begin() + last);
        line << QPointF(x + 0.5, box.bottom() - box.height() * (double{darkest} - double{*low}) / span);
    }
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(palette().color(QPalette::WindowText), 1.0));
    painter.drawPolyline(line);
    const QString name = tr("light");
    const QRectF label(box.left(), box.top(), painter.fontMetrics().horizontalAdvance(name) + 12.0, 16.0);
    painter.fillRect(label, palette().color(QPalette::Base));
    painter.setPen(palette().color(QPalette::PlaceholderText));
    painter.drawText(label, Qt::AlignCenter, name);
}

void StripLane::paint_marks(QPainter& painter) const {
    const picture::MeasuredCore* core = model_.core();
    if (core == nullptr) {
        return;
    }
    const QRectF box = profile_box();
    painter.setRenderHint(QPainter::Antialiasing, false);
    const auto& placed = core->series.boundaries;
    for (std::size_t i = 0; i < placed.size() && i < core->reading.boundaries.size(); ++i) {
        const double x = x_of(placed[i].s.value());
        if (x < 0.0 || x > width()) {
            continue;
        }
        // Below the strip, so that the wood stays bare; whole where a person has confirmed it.
        const bool confirmed = core->reading.boundaries[i].confirmation != Confirmation::None;
        painter.setPen(
            QPen(palette().color(QPalette::Link), confirmed ? 2.0 : 1.0, confirmed ? Qt::SolidLine : Qt::DashLine));
        painter.drawLine(QPointF(x, box.top() - lane_margin), QPointF(x, box.bottom()));
        const bool picked = placed[i].ring_number == picked_ && picked_ != 0;
        if (picked && i + 1 < placed.size()) {
            QColor band = palette().color(QPalette::Link);
            band.setAlpha(48);
            const double inner = x_of(placed[i + 1].s.value());
            painter.fillRect(
                QRectF(QPointF(std::min(x, inner), box.top() - lane_margin), QPointF(std::max(x, inner), box.bottom())),
                band);
        }
    }
}

} // namespace pithward::bench
