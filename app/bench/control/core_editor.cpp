#include "app/bench/control/core_editor.h"

#include "app/picture/marks.h"
#include "app/picture/nearest_mark.h"
#include "libcore/edit/edit_log.h"
#include "libcore/edit/finding_edits.h"
#include "libcore/edit/reading_edits.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace pithward::bench {

CoreEditor::CoreEditor(BenchModel& model, QObject* parent)
    : QObject(parent)
    , model_(model) {
    looking_.setMaxThreadCount(1);
    connect(&model_, &BenchModel::changed, this, &CoreEditor::follow);
}

CoreEditor::~CoreEditor() {
    looking_.clear();
    looking_.waitForDone();
}

const Boundary* CoreEditor::in_hand() const {
    return model_.core() != nullptr && in_hand_ ? picture::boundary_of(model_.core()->reading, *in_hand_) : nullptr;
}

void CoreEditor::follow(BenchModel::Changes changes) {
    if ((changes & (BenchModel::PresentCore | BenchModel::ShownScan)) || in_hand() == nullptr) {
        take_up(std::nullopt);
    }
}

void CoreEditor::take_up(std::optional<BoundaryId> id) {
    if (id != in_hand_) {
        in_hand_ = id;
        emit hand_changed();
    }
}

void CoreEditor::step(int by) {
    const picture::MeasuredCore* core = model_.core();
    if (core == nullptr || core->reading.boundaries.empty()) {
        return;
    }
    const auto& all = core->reading.boundaries;
    const auto here = std::ranges::find(all, in_hand_.value_or(BoundaryId{}), &Boundary::id);
    const auto next = here == all.end() ? 0 : (here - all.begin()) + by;
    if (next >= 0 && next < std::ssize(all)) {
        take_up(all[static_cast<std::size_t>(next)].id);
    }
}

bool CoreEditor::make(const Builder& build) {
    QString label;
    const auto made = model_.change([&](Document& document) -> Outcome<bool> {
        const auto edit = build(document);
        if (!edit) {
            return tl::unexpected(edit.error());
        }
        label = QString::fromStdString(label_of(*edit));
        return document.make(*edit, model_.stamp());
    });
    if (!made) {
        tell(made.error());
        return false;
    }
    if (*made) {
        emit edited(label);
    }
    return *made;
}

void CoreEditor::confirm_and_step() {
    if (const Boundary* boundary = in_hand()) {
        const BoundaryId id = boundary->id;
        make([id](const Document& document) { return confirm(document.reading(), id); });
    }
    step(1);
}

void CoreEditor::confirm_sure() {
    make([](const Document& document) -> Outcome<Edit> {
        return confirm_above(document.reading(), picture::sure_from);
    });
}

void CoreEditor::remove() {
    if (const Boundary* boundary = in_hand()) {
        make([id = boundary->id](const Document& document) { return delete_boundary(document.reading(), id); });
    }
}

void CoreEditor::mark_false() {
    if (const Boundary* boundary = in_hand()) {
        make([id = boundary->id, why = tr("marked as a false ring").toStdString()](const Document& document) {
            return mark_as_false_ring(document.reading(), id, CandidateId{document.fresh_id()}, why);
        });
    }
}

void CoreEditor::take_candidate(ImagePoint at, double reach_px) {
    const picture::MeasuredCore* core = model_.core();
    const auto id =
        core != nullptr ? picture::nearest_candidate(*core, model_.scan()->opened->name(), at, reach_px) : std::nullopt;
    if (!id) {
        emit told(tr("No candidate that was turned down lies there. Point at its struck tips."));
        return;
    }
    make([id](const Document& document) {
        return pithward::take_candidate(document.reading(), *id, BoundaryId{document.fresh_id()});
    });
}

void CoreEditor::add_absent() {
    if (const Boundary* boundary = in_hand()) {
        make([id = boundary->id](const Document& document) {
            return add_absent_ring(document.reading(), id, AbsentRingId{document.fresh_id()});
        });
    }
}

void CoreEditor::remove_absent() {
    const Boundary* boundary = in_hand();
    if (boundary == nullptr) {
        return;
    }
    const auto& rings = model_.core()->reading.absent_rings;
    const auto ring = std::ranges::find(rings, boundary->id, &AbsentRing::at);
    if (ring == rings.end()) {
        emit told(tr("No ring is marked as locally absent at this boundary."));
        return;
    }
    make([id = ring->id](const Document& document) { return remove_absent_ring(document.reading(), id); });
}

void CoreEditor::turn(BoundaryId id, double tangent) {
    make([&](const Document& document) { return turn_boundary(document.reading(), id, tangent); });
}

void CoreEditor::turn_by(double degrees) {
    if (const Boundary* boundary = in_hand()) {
        const double turned = boundary->tangent + degrees * std::numbers::pi / 180.0;
        turn(boundary->id, picture::line_direction({0, 0}, {std::cos(turned), std::sin(turned)}));
    }
}

void CoreEditor::annotate(const QString& note) {
    if (const Boundary* boundary = in_hand()) {
        make([&, id = boundary->id](const Document& document) {
            return pithward::annotate(document.reading(), id, note.toStdString());
        });
    }
}

void CoreEditor::settle(int number, Finding::State state) {
    const picture::MeasuredCore* core = model_.core();
    if (core == nullptr) {
        return;
    }
    for (const Finding& finding : core->reading.findings) {
        if (finding.state == Finding::State::Open && --number == 0) {
            const auto* proposed = std::get_if<ProposeBreak>(&finding.change);
            const std::optional<Break> stretch = proposed != nullptr ? std::optional(proposed->stretch) : std::nullopt;
            const bool settled = make([id = finding.id, state](const Document& document) {
                return settle_finding(document.reading(), id, state, {}, document.fresh_id());
            });
            if (settled && stretch && state == Finding::State::ProposalTaken) {
                ask_what_was_lost(*stretch);
            }
            return;
        }
    }
}

void CoreEditor::ask_what_was_lost(const Break& taken) {
    const auto& breaks = model_.core()->reading.breaks;
    const auto made = std::ranges::find_if(
        breaks, [&](const Break& one) { return one.leg == taken.leg && one.from == taken.from && one.to == taken.to; });
    if (made != breaks.end() && made->kind == Break::Kind::LostWood && !made->rings_lost) {
        emit rings_lost_wanted(made->id);
    }
}

void CoreEditor::undo() {
    if (model_.take_back_drawn()) {
        emit edited(tr("Undone"));
        return;
    }
    const auto done = model_.change([this](Document& document) { return document.undo(model_.stamp()); });
    if (!done) {
        tell(done.error());
    } else if (*done) {
        emit edited(tr("Undone"));
    }
}

void CoreEditor::redo() {
    if (model_.bring_back_drawn()) {
        emit edited(tr("Done again"));
        return;
    }
    const auto done = model_.change([this](Document& document) { return document.redo(model_.stamp()); });
    if (!done) {
        tell(done.error());
    } else if (*done) {
        emit edited(tr("Done again"));
    }
}

void CoreEditor::tell(const Fault& fault) {
    emit told(QString::fromStdString(fault.line()));
}

} // namespace pithward::bench
