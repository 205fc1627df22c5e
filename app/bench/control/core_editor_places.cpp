#include "app/bench/control/core_editor.h"
#include "app/bench/model/beside_window.h"
#include "app/picture/nearest_mark.h"
#include "libcore/edit/path_order.h"
#include "libcore/edit/reading_edits.h"

// Edits that put something at a place on the scan.

namespace pithward::bench {

namespace {

std::optional<picture::PathFoot> foot_of(const BenchModel& model, ImagePoint at) {
    const picture::MeasuredCore* core = model.core();
    return core != nullptr
               ? picture::foot_on_path(core->reading, model.scan()->opened->name(), at, 1.5 * core->half_breadth_px)
               : std::nullopt;
}

/// A place by a person's hand alone.
BoundaryPlace by_hand(const picture::PathFoot& foot, double tangent) {
    BoundaryPlace place;
    place.leg = foot.leg;
    place.at = foot.at;
    place.tangent = tangent;
    return place;
}

} // namespace

void CoreEditor::add(ImagePoint at, bool freely) {
    const auto foot = foot_of(model_, at);
    if (!foot) {
        emit told(tr("Point at the wood of the present core to add a boundary there."));
        return;
    }
    const BenchScan& scan = *model_.scan();
    const Reading& reading = model_.core()->reading;
    if (freely || !scan.calibration) {
        BoundaryId fresh;
        const bool added = make([&](const Document& document) -> Outcome<Edit> {
            fresh = BoundaryId{document.fresh_id()};
            return add_boundary(by_hand(*foot, foot->square), fresh);
        });
        if (added) {
            take_up(fresh);
        }
        return;
    }
    NearRequest request;
    request.path = reading.path.legs[foot->leg].points;
    request.calibration = *scan.calibration;
    request.wood = reading.wood;
    request.at = at;
    const auto look = [near = scan.opened->near, request] { return near(request); };
    const auto place = [this, path = reading.path, leg = foot->leg](const Outcome<std::optional<Candidate>>& found) {
        if (!found) {
            tell(found.error());
        } else {
            place_found(path, leg, *found);
        }
    };
    beside_window(looking_, this, look, place);
}

void CoreEditor::place_found(const Path& path, std::size_t leg, const std::optional<Candidate>& found) {
    if (model_.core() == nullptr || model_.core()->reading.path != path) {
        return; // it was found for another core or for a path that has changed since
    }
    if (!found) {
        emit told(tr("The wood shows no boundary near there. Shift+A, or Shift and a double click, adds one freely."));
        return;
    }
    BoundaryId fresh;
    const bool added = make([&](const Document& document) -> Outcome<Edit> {
        fresh = BoundaryId{document.fresh_id()};
        return add_boundary({.leg = leg,
                             .at = found->at,
                             .tangent = found->tangent,
                             .sd = found->sd,
                             .sd_assumed = false,
                             .curve = found->curve,
                             .latewood = found->latewood},
                            fresh);
    });
    if (added) {
        take_up(fresh);
    }
}

void CoreEditor::move(BoundaryId id, ImagePoint to) {
    const auto foot = foot_of(model_, to);
    if (!foot) {
        emit told(tr("A boundary stays on its path. Let it go nearer to the wood."));
        return;
    }
    make([&](const Document& document) -> Outcome<Edit> {
        const Boundary* boundary = picture::boundary_of(document.reading(), id);
        const double tangent = boundary != nullptr ? boundary->tangent : foot->square;
        return move_boundary(document.reading(), id, by_hand(*foot, tangent));
    });
}

void CoreEditor::add_break(ImagePoint from, ImagePoint to, Break::Kind kind) {
    const auto a = foot_of(model_, from);
    const auto b = foot_of(model_, to);
    if (!a || !b || a->leg != b->leg) {
        emit told(tr("Point at both edges of the break on the wood of the present core."));
        return;
    }
    BreakId fresh;
    const bool added = make([&](const Document& document) -> Outcome<Edit> {
        fresh = BreakId{document.fresh_id()};
        Break stretch;
        stretch.id = fresh;
        stretch.leg = a->leg;
        const Leg& leg = document.reading().path.legs[a->leg];
        const bool bark_first = along_leg_px(leg, a->at) <= along_leg_px(leg, b->at);
        stretch.from = bark_first ? a->at : b->at;
        stretch.to = bark_first ? b->at : a->at;
        stretch.kind = kind;
        if (kind == Break::Kind::LostWood) {
            stretch.rings_lost.reset(); // nobody has said yet
        }
        return pithward::add_break(stretch);
    });
    if (added && kind == Break::Kind::LostWood) {
        emit rings_lost_wanted(fresh);
    }
}

void CoreEditor::change_break(const Break& after) {
    make([&](const Document& document) { return pithward::change_break(document.reading(), after); });
}

void CoreEditor::remove_break(BreakId id) {
    make([&](const Document& document) { return pithward::remove_break(document.reading(), id); });
}

} // namespace pithward::bench
