#include "app/picture/marks.h"

#include "app/picture/lettering.h"
#include "app/picture/mark_shapes.h"
#include "app/picture/polyline.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>
#include <cmath>

namespace pithward::picture {

namespace {

/// Gathers the marks of one core. Holds what every kind of mark asks for: the legs in view and what is near enough.
class MarkBuilder {
public:
    MarkBuilder(const MeasuredCore& core, const std::string& scan, const ViewTransform& view, const QRectF& exposed)
        : core_(core)
        , view_(view)
        , exposed_(exposed) {
        const double reach = core.half_breadth_px * view.scale();
        const double margin = reach + 3.0 * word_offset;
        near_ = exposed.adjusted(-margin, -margin, margin, margin);
        std::vector<std::vector<const Boundary*>> on_leg(core.reading.path.legs.size());
        for (const Boundary& boundary : core.reading.boundaries) {
            if (boundary.leg < on_leg.size()) {
                on_leg[boundary.leg].push_back(&boundary);
            }
        }
        for (std::size_t i = 0; i < on_leg.size(); ++i) {
            const Leg& leg = core.reading.path.legs[i];
            const bool here = leg.scan == scan && leg.points.size() > 1;
            legs_.push_back(here ? std::optional(leg_view(leg, on_leg[i], view, reach)) : std::nullopt);
        }
    }

    [[nodiscard]] MarkSet build() const {
        MarkSet set;
        set.boundaries = boundaries();
        thin_out(set.boundaries);
        set.path = path();
        for (const Candidate& candidate : core_.reading.not_annual) {
            if (seen(candidate.leg, candidate.at)) {
                set.turned_down.push_back(turned_down_mark(candidate, core_, view_));
            }
        }
        set.findings = findings();
        for (const Break& stretch : core_.reading.breaks) {
            if (seen(stretch.leg, stretch.from) || seen(stretch.leg, stretch.to)) {
                set.breaks.push_back(break_mark(stretch, *leg(stretch.leg), view_));
            }
        }
        set.absent = absent();
        add_ends(set);
        return set;
    }

private:
    [[nodiscard]] const LegView* leg(std::size_t index) const {
        return index < legs_.size() && legs_[index] ? &*legs_[index] : nullptr;
    }
    [[nodiscard]] bool seen(std::size_t index, ImagePoint at) const {
        return leg(index) != nullptr && near_.contains(view_.to_view(at));
    }

    /// The mean width of the rings in view, which near the pith may be many times that near the bark.
    [[nodiscard]] double seen_ring_width() const {
        double length = 0.0;
        int rings = 0;
        std::vector<std::optional<double>> last(legs_.size());
        for (const Boundary& boundary : core_.reading.boundaries) {
            if (!seen(boundary.leg, boundary.at)) {
                continue;
            }
            const double along = foot_of(leg(boundary.leg)->line, view_.to_view(boundary.at)).along;
            if (last[boundary.leg]) {
                length += std::abs(along - *last[boundary.leg]);
                ++rings;
            }
            last[boundary.leg] = along;
        }
        return rings > 0 ? length / rings : YearLettering::least_room; // a ring alone has room
    }

    [[nodiscard]] std::vector<BoundaryMark> boundaries() const {
        const YearLettering years(seen_ring_width());
        std::vector<BoundaryMark> marks;
        for (std::size_t i = 0; i < core_.reading.boundaries.size(); ++i) {
            const Boundary& boundary = core_.reading.boundaries[i];
            if (!seen(boundary.leg, boundary.at)) {
                continue;
            }
            BoundaryMark mark = boundary_mark(boundary, core_, view_);
            const auto year = i < core_.series.boundaries.size() ? years.at(core_.series.boundaries[i]) : std::nullopt;
            if (year) {
                mark.lettering = lettering_beside(mark, view_.to_view(boundary.at), *leg(boundary.leg));
                mark.lettering->text = year->text;
                mark.lettering->decade = year->decade;
            }
            marks.push_back(std::move(mark));
        }
        return marks;
    }

    /// Takes away lettering that would run into other lettering; decades stay.
    static void thin_out(std::vector<BoundaryMark>& marks) {
        std::vector<QPointF> kept;
        for (const bool decades : {true, false}) {
            for (BoundaryMark& mark : marks) {
                if (!mark.lettering || mark.lettering->decade != decades) {
                    continue;
                }
                const QPointF at = mark.lettering->at;
                const bool room = std::ranges::none_of(kept, [&](QPointF other) {
                    return std::abs(other.x() - at.x()) < 0.85 * YearLettering::least_room &&
                           std::abs(other.y() - at.y()) < 14.0;
                });
                if (room) {
                    kept.push_back(at);
                } else {
                    mark.lettering.reset();
                }
            }
        }
    }

    [[nodiscard]] std::vector<QPolygonF> path() const {
        std::vector<std::vector<double>> crossings(legs_.size());
        for (const Boundary& boundary : core_.reading.boundaries) {
            if (seen(boundary.leg, boundary.at)) {
                crossings[boundary.leg].push_back(foot_of(leg(boundary.leg)->line, view_.to_view(boundary.at)).along);
            }
        }
        std::vector<QPolygonF> pieces;
        for (std::size_t i = 0; i < legs_.size(); ++i) {
            if (legs_[i]) {
                std::ranges::move(path_pieces(legs_[i]->line, crossings[i], near_), std::back_inserter(pieces));
            }
        }
        return pieces;
    }

    [[nodiscard]] std::vector<AbsentMark> absent() const {
        std::vector<AbsentMark> marks;
        for (const AbsentRing& ring : core_.reading.absent_rings) {
            const auto boundary = std::ranges::find(core_.reading.boundaries, ring.at, &Boundary::id);
            if (boundary != core_.reading.boundaries.end() && seen(boundary->leg, boundary->at)) {
                const auto i = static_cast<std::size_t>(boundary - core_.reading.boundaries.begin());
                marks.push_back(absent_mark(view_.to_view(boundary->at), absent_years(i), *leg(boundary->leg)));
            }
        }
        return marks;
    }

    /// The absent rings that lie between this boundary's ring and the one outside it, as the series numbers them.
    [[nodiscard]] QString absent_years(std::size_t boundary) const {
        const auto& placed = core_.series.boundaries;
        QStringList years;
        for (const Ring& ring : core_.series.rings) {
            if (ring.absent && boundary < placed.size() && ring.number < placed[boundary].ring_number &&
                (boundary == 0 || ring.number > placed[boundary - 1].ring_number)) {
                years << (ring.year ? QString::number(ring.year->value()) : QString::number(ring.number));
            }
        }
        return QCoreApplication::translate("Marks", "%1 absent").arg(years.join(", "));
    }

    [[nodiscard]] std::vector<FindingMark> findings() const {
        std::vector<FindingMark> marks;
        int number = 0;
        for (const Finding& finding : core_.reading.findings) {
            if (finding.state != Finding::State::Open) {
                continue;
            }
            ++number;
            if (seen(finding.leg, finding.at) || (finding.to && seen(finding.leg, *finding.to))) {
                marks.push_back(finding_mark(finding, number, *leg(finding.leg), view_));
            }
        }
        share_numbers(marks);
        return marks;
    }

    /// Numbers that would run into each other are lettered together, at the first of them.
    static void share_numbers(std::vector<FindingMark>& marks) {
        constexpr double room = 20.0;
        std::vector<FindingMark*> kept;
        for (FindingMark& mark : marks) {
            const auto close = std::ranges::find_if(kept, [&](const FindingMark* other) {
                const QPointF apart = other->number_at - mark.number_at;
                return std::hypot(apart.x(), apart.y()) < room + 7.0 * static_cast<double>(other->numbers.size());
            });
            if (close == kept.end()) {
                mark.numbers = QString::number(mark.number);
                kept.push_back(&mark);
            } else {
                (*close)->numbers += QString(", %1").arg(mark.number);
            }
        }
    }

    void add_ends(MarkSet& set) const {
        const Reading& reading = core_.reading;
        if (!legs_.empty() && legs_.front()) {
            const LegView& outer = *legs_.front();
            const QPointF first = reading.wood_edge ? view_.to_view(*reading.wood_edge) : outer.line.front();
            set.bark = end_mark(first, -foot_of(outer.line, first).direction, outer.reach);
            set.bark->sure = reading.bark_end.probability >= sure_from;
        }
        if (!legs_.empty() && legs_.back()) {
            const LegView& inner = *legs_.back();
            set.inner = end_mark(inner.line.back(), foot_of(inner.line, inner.line.back()).direction, inner.reach);
        }
        const bool inner_here = !legs_.empty() && legs_.back();
        if (reading.pith && inner_here &&
            exposed_.adjusted(-20, -20, 20, 20).contains(view_.to_view(reading.pith->at))) {
            set.pith = PithMark{view_.to_view(reading.pith->at), reading.pith->inside};
        }
    }

    const MeasuredCore& core_;
    const ViewTransform& view_;
    QRectF exposed_;
    QRectF near_;
    std::vector<std::optional<LegView>> legs_;
};

} // namespace

LineForm form_of(double confidence, Confirmation confirmation) {
    if (confirmation != Confirmation::None || confidence >= sure_from) {
        return LineForm::Whole;
    }
    return confidence >= likely_from ? LineForm::Dashed : LineForm::Sparse;
}

MarkSet visible_marks(const MeasuredCore& core, const std::string& scan, const ViewTransform& view,
                      const QRectF& exposed) {
    return MarkBuilder(core, scan, view, exposed).build();
}

} // namespace pithward::picture
