#include "app/review/finding_words.h"

#include "app/bench/look/sentences.h"
#include "app/bench/look/wording.h"
#include "libcore/review/about_finding.h"
#include "libcore/review/standing.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>

namespace pithward::bench {

namespace {

struct FindingWords {
    Q_DECLARE_TR_FUNCTIONS(FindingWords)
};

QString percent(double probability) {
    return FindingWords::tr("%1 %").arg(probability * 100.0, 0, 'f', 0);
}

QString turned_down(const Candidate& candidate) {
    const QString line = FindingWords::tr("turned down here, %1 sure").arg(percent(candidate.confidence));
    return candidate.reason.empty() ? line : FindingWords::tr("%1: %2").arg(line, in_window_language(candidate.reason));
}

} // namespace

QString state_in_words(Finding::State state) {
    switch (state) {
    case Finding::State::Open:
        return FindingWords::tr("open");
    case Finding::State::ProposalTaken:
        return FindingWords::tr("proposal taken");
    case Finding::State::KeptAsItIs:
        return FindingWords::tr("kept as it is");
    case Finding::State::CannotBeTold:
        return FindingWords::tr("can't be told");
    }
    return {};
}

QString title_of(const QueueItem& item) {
    const QString what = item.finding ? name_of(item.kind) : FindingWords::tr("Ready to be passed");
    return QString("%1 · %2").arg(QString::fromStdString(item.core), what);
}

QString summary_of(const QueueItem& item) {
    if (!item.finding) {
        return FindingWords::tr("Every finding is judged; passing says so of the whole reading.");
    }
    QString summary = FindingWords::tr("%1 · %2 rings at stake")
                          .arg(state_in_words(item.state))
                          .arg(item.rings_at_stake, 0, 'f', item.rings_at_stake < 10.0 ? 1 : 0);
    if (item.verdict == Verdict::Returned) {
        summary = FindingWords::tr("returned · %1").arg(summary);
    }
    return item.comment.empty() ? summary : summary + "\n" + QString::fromStdString(item.comment);
}

QString provenance_of(const ReviewCase& one) {
    const review::Standing standing = review::standing(one.reading(), one.document.log());
    return QStringList{FindingWords::tr("Site %1, tree %2")
                           .arg(QString::fromStdString(one.core.site.id), QString::fromStdString(one.core.tree.id)),
                       in_window_language(review::told_people(standing)),
                       in_window_language(review::told_looks(standing))}
        .join(" · ");
}

QString story_of(const ReviewCase& one, const Finding& finding) {
    QStringList lines;
    lines << FindingWords::tr("Reason: %1").arg(in_window_language(finding.reason));
    if (!finding.proposal.empty()) {
        lines << FindingWords::tr("Proposal: %1 (%2 that this is right)")
                     .arg(in_window_language(finding.proposal), percent(finding.probability));
    }
    const auto& boundaries = one.reading().boundaries;
    const auto boundary =
        finding.boundary ? std::ranges::find(boundaries, *finding.boundary, &Boundary::id) : boundaries.end();
    QStringList alternatives;
    if (boundary != boundaries.end()) {
        alternatives << FindingWords::tr("the boundary that stands, %1 sure").arg(percent(boundary->confidence));
    }
    for (const Candidate& candidate : review::candidates_about(one.reading(), finding)) {
        alternatives << turned_down(candidate);
    }
    lines << FindingWords::tr("The program also saw: %1")
                 .arg(alternatives.isEmpty() ? FindingWords::tr("nothing else here") : alternatives.join("; "));
    const auto who = review::settled_by(one.document.log(), finding.id);
    lines
        << (who ? FindingWords::tr("Settled by %1: %2").arg(QString::fromStdString(*who), state_in_words(finding.state))
                : FindingWords::tr("Nobody has settled it yet"));
    if (!finding.comment.empty()) {
        lines << FindingWords::tr("Comment: %1").arg(QString::fromStdString(finding.comment));
    }
    return lines.join('\n');
}

} // namespace pithward::bench
