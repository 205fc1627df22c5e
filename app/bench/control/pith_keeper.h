#pragma once

#include "app/bench/model/bench_model.h"
#include "libcore/pith/judge_pith.h"

#include <QObject>
#include <QThreadPool>
#include <QTimer>
#include <map>
#include <optional>
#include <stop_token>
#include <string>
#include <utility>

namespace pithward::bench {

/// Keeps the pith of the present core in step with its boundaries, and places it as a person wishes. The pith is judged
/// beside the window; what comes of it is an edit: the program's own where boundaries changed (so that nobody's undo
/// meets it), a person's where a person placed the pith.
class PithKeeper : public QObject {
    Q_OBJECT

public:
    explicit PithKeeper(BenchModel& model, QObject* parent = nullptr);
    ~PithKeeper() override;

    /// Puts the pith at a place of the scan.
    void place(ImagePoint at);
    /// Puts it at the centre of the circle through a boundary's place on the path and through another place.
    void bend_ring(BoundaryId id, ImagePoint through);
    /// Judges it by the rings again where a person had placed it.
    void judge_by_rings();
    /// A pith is being judged, or will be in a moment.
    [[nodiscard]] bool busy() const { return running_ || later_.isActive(); }

signals:
    void told(const QString& message);
    /// A person's edit was made; in words.
    void edited(const QString& what);

private:
    using CoreKey = std::pair<int, int>; ///< Scan and core.
    struct Judging {
        CoreKey key;
        Reading before; ///< What the judgement rests on, when it was begun.
        Reading asked;
        std::string label; ///< Of a person's edit; empty for the program's own.
    };

    [[nodiscard]] CoreKey present() const;
    void follow();
    void ask(std::optional<Pith> pith, const QString& label);
    void begin(Reading asked, std::string label);
    void take(const Judging& judging, const PithJudgement& judgement);
    Outcome<bool> change(Document& document, const Judging& judging, const PithJudgement& judgement) const;

    BenchModel& model_;
    QTimer later_;
    QThreadPool pool_;
    std::stop_source stop_;
    bool running_ = false;
    bool by_person_ = false;            ///< What runs was asked for by a person.
    std::map<CoreKey, Reading> judged_; ///< What the present pith of each core rests on.
};

} // namespace pithward::bench
