#pragma once

#include "app/bench/model/bench_model.h"
#include "libcore/edit/boundary_edits.h"

#include <QObject>
#include <QThreadPool>
#include <functional>
#include <optional>

namespace pithward::bench {

/// What a person can do to the present core. Each wish becomes one edit of its document; what can't be done is told and
/// all stays as it was. One boundary at a time is in hand: most wishes are about that one.
class CoreEditor : public QObject {
    Q_OBJECT

public:
    explicit CoreEditor(BenchModel& model, QObject* parent = nullptr);
    ~CoreEditor() override;

    /// The boundary in hand; null when there is none.
    [[nodiscard]] const Boundary* in_hand() const;
    void take_up(std::optional<BoundaryId> id);
    /// Takes up the next boundary, 1 toward the pith and -1 toward the bark; with none in hand the outermost.
    void step(int by);

    void confirm_and_step();
    /// Confirms in bulk what is as sure as a whole line shows.
    void confirm_sure();
    /// Adds a boundary where the wood shows one near a place, found beside the window; freely: just there, square to
    /// the path.
    void add(ImagePoint at, bool freely);
    void remove();
    void mark_false();
    /// Takes the candidate turned down that is nearest to a place.
    void take_candidate(ImagePoint at, double reach_px);
    void add_absent();
    void remove_absent();
    void add_break(ImagePoint from, ImagePoint to, Break::Kind kind);
    void change_break(const Break& after);
    void remove_break(BreakId id);
    void move(BoundaryId id, ImagePoint to);
    void turn(BoundaryId id, double tangent);
    void turn_by(double degrees);
    void annotate(const QString& note);
    /// Settles an open finding, by its number in the list from 1.
    void settle(int number, Finding::State state);
    void undo();
    void redo();

signals:
    void hand_changed();
    void told(const QString& message);
    /// Lost wood was marked: somebody has to say how many rings went with it.
    void rings_lost_wanted(pithward::BreakId id);
    /// An edit was made, undone or redone; in words.
    void edited(const QString& what);

private:
    using Builder = std::function<Outcome<Edit>(const Document&)>;
    bool make(const Builder& build);
    /// Lost wood that was taken from a proposal: somebody has to say how many rings went with it.
    void ask_what_was_lost(const Break& taken);
    void tell(const Fault& fault);
    void place_found(const Path& path, std::size_t leg, const std::optional<Candidate>& found);
    void follow(BenchModel::Changes changes);

    BenchModel& model_;
    std::optional<BoundaryId> in_hand_;
    QThreadPool looking_; ///< One after the other, so that quick clicks all count.
};

} // namespace pithward::bench
