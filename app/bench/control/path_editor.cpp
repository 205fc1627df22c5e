#include "app/bench/control/path_editor.h"

#include "app/bench/control/core_reader.h"
#include "libcore/edit/edits_between.h"
#include "libcore/edit/path_order.h"

namespace pithward::bench {

namespace {

/// The end at which a path got longer by enough for a boundary to lie there.
std::optional<PathEnd> longer_at(const Path& before, const Path& after) {
    constexpr double enough = 4.0; // pixels
    const Leg& last = after.legs.back();
    if (along_leg_px(after.legs.front(), before.legs.front().points.front()) > enough) {
        return PathEnd::Bark;
    }
    if (along_leg_px(last, last.points.back()) - along_leg_px(last, before.legs.back().points.back()) > enough) {
        return PathEnd::Inner;
    }
    return std::nullopt;
}

} // namespace

PathEditor::PathEditor(BenchModel& model, ScanJobs& jobs, QObject* parent)
    : QObject(parent)
    , model_(model)
    , jobs_(jobs) {}

void PathEditor::move(Vertex vertex, ImagePoint to) {
    if (model_.core() != nullptr) {
        reshape(with_vertex_moved(model_.core()->reading.path, vertex, to), tr("Move a bend of the path"));
    }
}

void PathEditor::bend(Vertex before, ImagePoint at) {
    if (model_.core() != nullptr) {
        reshape(with_vertex_added(model_.core()->reading.path, before, at), tr("Bend the path"));
    }
}

void PathEditor::straighten(Vertex vertex) {
    if (model_.core() != nullptr) {
        reshape(without_vertex(model_.core()->reading.path, vertex), tr("Take a bend away"));
    }
}

void PathEditor::extend(ImagePoint to) {
    if (model_.core() != nullptr) {
        reshape(extended_to(model_.core()->reading.path, model_.scan()->opened->name(), to), tr("Extend the path"));
    }
}

void PathEditor::step_aside(BoundaryId along, ImagePoint to) {
    const auto made = model_.change([&](Document& document) -> Outcome<bool> {
        const auto edit = pithward::step_aside(document.reading(), along, to, BoundaryId{document.fresh_id()});
        return edit ? document.make(*edit, model_.stamp()) : tl::unexpected(edit.error());
    });
    if (!made) {
        tell(made.error());
    } else if (*made) {
        emit edited(tr("The path steps aside along this boundary"));
    }
}

void PathEditor::reshape(const Outcome<Path>& after, const QString& label) {
    if (!after) {
        tell(after.error());
        return;
    }
    const Reading& before = model_.core()->reading;
    auto rerouted = pithward::rerouted(before, *after);
    if (!rerouted) {
        tell(rerouted.error());
        return;
    }
    if (const auto end = longer_at(before.path, *after)) {
        read_beyond(std::move(*rerouted), *end, label);
        return;
    }
    const auto made = model_.change([&](Document& document) {
        return document.make(edits_between(document.reading(), *rerouted, label.toStdString()), model_.stamp());
    });
    if (!made) {
        tell(made.error());
    } else if (*made) {
        emit edited(label);
    }
}

void PathEditor::read_beyond(Reading rerouted, PathEnd end, const QString& label) {
    const BenchScan& scan = *model_.scan();
    const CorePlace place = model_.present();
    const Leg& leg = end == PathEnd::Bark ? rerouted.path.legs.front() : rerouted.path.legs.back();
    const Path& old_path = model_.core()->reading.path;
    const ImagePoint old_end =
        end == PathEnd::Bark ? old_path.legs.front().points.front() : old_path.legs.back().points.back();
    if (!scan.calibration || leg.scan != scan.opened->name()) {
        emit told(tr("Show the scan on which the path ends, with its resolution, to make the path longer."));
        return;
    }
    ReadingRequest request = request_of(rerouted, *scan.calibration);
    request.path = leg.points;
    if (const auto fault = request.validate(scan.opened->header)) {
        tell(*fault);
        return;
    }
    const double breadth_mm = 2.0 * model_.core()->half_breadth_px / scan.calibration->px_per_mm();
    const std::int64_t fresh = model_.document()->fresh_id();
    jobs_.start<Outcome<picture::MeasuredCore>>(
        tr("Reading the rest of the path"),
        [opened = scan.opened, request, breadth_mm, rerouted, end, old_end, fresh](const Work& work) {
            return read_path(*opened, request, breadth_mm, false, work)
                .and_then([&](const picture::MeasuredCore& read) {
                    return picture::measured(with_what_is_beyond(rerouted, read.reading, end, old_end, fresh),
                                             breadth_mm);
                });
        },
        [this, place, revision = model_.home()->revision, label](Outcome<picture::MeasuredCore> core) {
            if (!core) {
                tell(core.error());
            } else if (model_.put_core(place.scan, revision, static_cast<std::size_t>(place.index), std::move(*core),
                                       label.toStdString())) {
                emit edited(label);
            } else {
                emit told(tr("The core was changed meanwhile, so the path stays as it was. Try again."));
            }
        });
}

void PathEditor::tell(const Fault& fault) {
    emit told(QString::fromStdString(fault.line()));
}

} // namespace pithward::bench
