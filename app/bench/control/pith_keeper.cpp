#include "app/bench/control/pith_keeper.h"

#include "app/bench/control/core_reader.h"
#include "app/bench/model/beside_window.h"
#include "app/bench/model/edit_stamp.h"
#include "app/picture/nearest_mark.h"
#include "libcore/edit/apply.h"
#include "libcore/edit/edits_between.h"
#include "libcore/pith/pith_by_hand.h"

#include <algorithm>

namespace pithward::bench {

namespace {

constexpr int rest_ms = 250; ///< Several quick edits are judged once.

/// What a pith rests on: the reading without what does not bear on it.
Reading basis_of(Reading reading) {
    if (reading.pith) {
        // One that was seen on the core or placed by hand bears on it by its place.
        Pith place;
        place.at = reading.pith->at;
        place.source = reading.pith->source;
        reading.pith = place.source == Pith::Source::Curves ? std::nullopt : std::optional(place);
    }
    reading.findings.clear();
    reading.not_annual.clear();
    reading.state = Reading::State::Proposed;
    reading.analyst.clear();
    reading.note.clear();
    reading.last_year.reset();
    for (Boundary& boundary : reading.boundaries) {
        boundary.confirmation = Confirmation::None;
        boundary.confidence = 1.0;
        boundary.flags.clear();
        boundary.note.clear();
    }
    return reading;
}

bool was_judged(const Reading& reading) {
    return reading.pith || std::ranges::any_of(reading.findings, [](const Finding& finding) {
               return finding.kind == FindingKind::Pith;
           });
}

EditStamp programs(EditStamp stamp) {
    stamp.who = programs_name;
    return stamp;
}

/// Whether two readings have the same pith and the same findings, whatever their numbers.
bool same_but_numbers(const Reading& one, const Reading& other) {
    return one.pith == other.pith && std::ranges::equal(one.findings, other.findings, [](Finding a, const Finding& b) {
               a.id = b.id;
               return a == b;
           });
}

} // namespace

PithKeeper::PithKeeper(BenchModel& model, QObject* parent)
    : QObject(parent)
    , model_(model) {
    pool_.setMaxThreadCount(1);
    later_.setSingleShot(true);
    later_.setInterval(rest_ms);
    connect(&later_, &QTimer::timeout, this, [this] {
        if (model_.core() != nullptr) {
            begin(model_.core()->reading, {});
        }
    });
    connect(&model_, &BenchModel::changed, this, &PithKeeper::follow);
}

PithKeeper::~PithKeeper() {
    stop_.request_stop();
    pool_.waitForDone();
}

PithKeeper::CoreKey PithKeeper::present() const {
    return {model_.present().scan, model_.present().index};
}

void PithKeeper::follow() {
    const picture::MeasuredCore* core = model_.core();
    if (core == nullptr || core->reading.state == Reading::State::Passed || by_person_) {
        return; // what was passed stays as it was passed
    }
    Reading basis = basis_of(core->reading);
    const auto known = judged_.find(present());
    if (known != judged_.end() && known->second == basis) {
        later_.stop();
        return;
    }
    // What a project keeps is not written to by looking at it.
    if (known == judged_.end() && (was_judged(core->reading) || model_.home()->recorded)) {
        judged_.insert_or_assign(present(), std::move(basis));
        return;
    }
    later_.start();
}

void PithKeeper::place(ImagePoint at) {
    const picture::MeasuredCore* core = model_.core();
    if (core == nullptr) {
        return;
    }
    const PithKnowledge knowledge = knowledge_of(*model_.home()->opened);
    auto pith = pith_by_hand(core->reading, core->series, at, knowledge.growth);
    if (!pith) {
        emit told(QString::fromStdString(pith.error().line()));
        return;
    }
    ask(std::move(*pith), tr("Place the pith by hand"));
}

void PithKeeper::bend_ring(BoundaryId id, ImagePoint through) {
    const picture::MeasuredCore* core = model_.core();
    const Boundary* ring = core != nullptr ? picture::boundary_of(core->reading, id) : nullptr;
    const auto centre = ring != nullptr ? centre_of_arc(core->reading, *ring, through) : std::nullopt;
    if (centre) {
        place(*centre);
    } else {
        emit told(tr("A straight ring has no centre. Bend its arc to one side."));
    }
}

void PithKeeper::judge_by_rings() {
    if (model_.core() != nullptr) {
        ask(std::nullopt, tr("Judge the pith by the rings"));
    }
}

void PithKeeper::ask(std::optional<Pith> pith, const QString& label) {
    Reading asked = model_.core()->reading;
    asked.pith = std::move(pith);
    by_person_ = true;
    begin(std::move(asked), label.toStdString());
}

void PithKeeper::begin(Reading asked, std::string label) {
    stop_.request_stop();
    stop_ = std::stop_source();
    later_.stop();
    running_ = true;
    Judging judging{present(), basis_of(model_.core()->reading), std::move(asked), std::move(label)};
    const BenchScan& scan = *model_.home();
    const PithKnowledge knowledge = knowledge_of(*scan.opened);
    Work work;
    work.stop = stop_.get_token();
    const auto judge = [asked = judging.asked, series = model_.core()->series, knowledge, work] {
        return judge_pith(asked, series, knowledge, work);
    };
    const auto taken = [this, judging = std::move(judging), stop = stop_.get_token()](const PithJudgement& judgement) {
        if (!stop.stop_requested()) {
            running_ = false;
            by_person_ = false;
            take(judging, judgement);
        }
    };
    beside_window(pool_, this, judge, taken);
}

void PithKeeper::take(const Judging& judging, const PithJudgement& judgement) {
    const picture::MeasuredCore* core = model_.core();
    if (core == nullptr || present() != judging.key || basis_of(core->reading) != judging.before) {
        if (!judging.label.empty()) {
            emit told(tr("The core was changed meanwhile, so the pith stays as it was. Try again."));
        }
        follow();
        return;
    }
    const auto changed = model_.change([&](Document& document) { return change(document, judging, judgement); });
    if (!changed) {
        emit told(QString::fromStdString(changed.error().line()));
    }
    judged_.insert_or_assign(present(), basis_of(model_.core()->reading));
    if (changed && *changed && !judging.label.empty()) {
        emit edited(QString::fromStdString(judging.label));
    }
}

Outcome<bool> PithKeeper::change(Document& document, const Judging& judging, const PithJudgement& judgement) const {
    const Reading after = with_judgement(document.reading(), judgement, document.fresh_id());
    if (same_but_numbers(document.reading(), after)) {
        return false;
    }
    if (!judging.label.empty()) {
        return document.make(edits_between(document.reading(), after, judging.label), model_.stamp());
    }
    // Where a person took an edit back, the program takes back what it made of that edit, so that both are gone.
    const auto same = [&](const Outcome<bool>& done, const Document& trial) {
        return done && *done && same_but_numbers(trial.reading(), after);
    };
    Document back = document;
    if (same(back.undo(programs(model_.stamp())), back)) {
        document = std::move(back);
        return true;
    }
    Document again = document;
    if (same(again.redo(programs(model_.stamp())), again)) {
        document = std::move(again);
        return true;
    }
    return document.make(edits_between(document.reading(), after, tr("Judge the pith").toStdString()),
                         programs(model_.stamp()));
}

} // namespace pithward::bench
