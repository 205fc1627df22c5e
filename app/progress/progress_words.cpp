#include "app/progress/progress_words.h"

#include "app/project/state_words.h"

#include <QCoreApplication>
#include <QStringList>
#include <cstdlib>

namespace pithward::bench {

namespace {

struct ProgressWords {
    Q_DECLARE_TR_FUNCTIONS(ProgressWords)
};

using progress::HowFar;
using progress::Objection;
using progress::Stage;
using progress::Step;

QString years_of(const ProgressRow& row) {
    return row.last_year ? ProgressWords::tr("%1 to %2").arg(*row.first_year).arg(*row.last_year)
                         : ProgressWords::tr("no years");
}

/// With its sign, a minus as broad as a plus.
QString signed_number(int number) {
    return (number < 0 ? QString(QChar(0x2212)) : QString("+")) + QString::number(std::abs(number));
}

QString words_of_scan(HowFar how) {
    if (how == HowFar::NotYet) {
        return ProgressWords::tr("no scan");
    }
    return how == HowFar::Done ? ProgressWords::tr("scanned") : ProgressWords::tr("not in its place");
}

QString confirmed_of(const record::ReadingEntry& reading) {
    const int confirmed = reading.looked_at + reading.in_bulk;
    return confirmed == reading.boundaries ? ProgressWords::tr("all")
                                           : ProgressWords::tr("%1 of %2").arg(confirmed).arg(reading.boundaries);
}

QString words_of_form(HowFar how) {
    switch (how) {
    case HowFar::NotYet:
        return ProgressWords::tr("not yet");
    case HowFar::Partly:
        return ProgressWords::tr("partly");
    case HowFar::Done:
        return ProgressWords::tr("done");
    case HowFar::WantsLook:
        return ProgressWords::tr("wants a look");
    }
    return {};
}

QString words_of(const Objection& objection) {
    using enum Objection::Kind;
    switch (objection.kind) {
    case NoScan:
        return ProgressWords::tr("no scan is known");
    case ScanGone:
        return ProgressWords::tr("its scan is not in its place");
    case OpenFinding:
        return ProgressWords::tr("open findings: %1").arg(objection.count);
    case Unconfirmed:
        return ProgressWords::tr("boundaries confirmed by nobody: %1").arg(objection.count);
    case NoYears:
        return ProgressWords::tr("its rings have no years");
    case Slip:
        return ProgressWords::tr("rings missing or counted twice: %1").arg(objection.count);
    case Shift:
        return ProgressWords::tr("it fits with %1 added to all of its years").arg(signed_number(objection.count));
    case Returned:
        return ProgressWords::tr("returned by the second person");
    }
    return {};
}

QString words_of_site(const progress::SiteProgress& site) {
    switch (site.next) {
    case Step::FindScan:
        return ProgressWords::tr("cores that wait for a scan: %1").arg(site.waiting);
    case Step::Measure:
        return ProgressWords::tr("cores to be measured: %1").arg(site.waiting);
    case Step::Settle:
        return ProgressWords::tr("cores with open findings: %1").arg(site.waiting);
    case Step::Confirm:
        return ProgressWords::tr("cores with boundaries that nobody has confirmed: %1").arg(site.waiting);
    case Step::Date:
        return ProgressWords::tr("cores whose years want a look: %1").arg(site.waiting);
    case Step::SayDone:
        return ProgressWords::tr("cores that are ready to be called done: %1").arg(site.waiting);
    case Step::Review:
        return ProgressWords::tr("cores that wait for a second person: %1").arg(site.waiting);
    case Step::Report:
        return ProgressWords::tr("all that can be done is done: the report");
    }
    return {};
}

} // namespace

QString title_of(Stage stage) {
    switch (stage) {
    case Stage::Scanned:
        return ProgressWords::tr("Scanned");
    case Stage::Measured:
        return ProgressWords::tr("Measured");
    case Stage::Confirmed:
        return ProgressWords::tr("Confirmed");
    case Stage::Dated:
        return ProgressWords::tr("Dated");
    case Stage::Reviewed:
        return ProgressWords::tr("Reviewed");
    }
    return {};
}

QString words_of(const ProgressRow& row, Stage stage) {
    if (stage == Stage::Scanned) {
        return words_of_scan(row.progress.at(stage));
    }
    if (!row.reading) {
        return stage == Stage::Measured ? ProgressWords::tr("not yet") : QString();
    }
    switch (stage) {
    case Stage::Measured:
        return row.read ? ProgressWords::tr("%1 rings").arg(row.rings) : ProgressWords::tr("measured");
    case Stage::Confirmed:
        return confirmed_of(*row.reading);
    case Stage::Dated:
        return years_of(row);
    default:
        return state_in_words(row.reading->state);
    }
}

QString spoken(const ProgressRow& row, Stage stage) {
    const QString words = words_of(row, stage);
    const QString form = words_of_form(row.progress.at(stage));
    return words.isEmpty() ? form : QString("%1, %2").arg(words, form);
}

QString against_in_short(const ProgressRow& row) {
    const auto& against = row.progress.against;
    if (against.empty()) {
        return {};
    }
    const QString first = words_of(against.front());
    return against.size() == 1 ? first : ProgressWords::tr("%1, and %2 more").arg(first).arg(against.size() - 1);
}

QString against_in_full(const ProgressRow& row) {
    QStringList all;
    for (const Objection& objection : row.progress.against) {
        all << words_of(objection);
    }
    if (all.isEmpty()) {
        return row.reading ? ProgressWords::tr("Nothing stands against it.")
                           : ProgressWords::tr("It has no reading yet.");
    }
    return ProgressWords::tr("Against it: %1.").arg(all.join("; "));
}

QString words_of(Step step) {
    switch (step) {
    case Step::FindScan:
        return ProgressWords::tr("Find its scan");
    case Step::Measure:
        return ProgressWords::tr("Measure");
    case Step::Settle:
        return ProgressWords::tr("Settle findings");
    case Step::Confirm:
        return ProgressWords::tr("Confirm boundaries");
    case Step::Date:
        return ProgressWords::tr("Look at its years");
    case Step::SayDone:
        return ProgressWords::tr("Say that it is done");
    case Step::Review:
        return ProgressWords::tr("Review");
    case Step::Report:
        return ProgressWords::tr("Done");
    }
    return {};
}

QString next_of_site(const progress::SiteProgress& site, const std::vector<ProgressRow>& rows) {
    if (rows.empty()) {
        return ProgressWords::tr("This project has no cores.");
    }
    const QString words = ProgressWords::tr("Next for the site: %1").arg(words_of_site(site));
    return site.next == Step::Report || site.next == Step::Measure
               ? words
               : ProgressWords::tr("%1, %2 first").arg(words, QString::fromStdString(rows[*site.first].core.core.id));
}

QString button_of_site(const progress::SiteProgress& site) {
    switch (site.next) {
    case Step::Measure:
        return ProgressWords::tr("Measure all cores");
    case Step::Report:
        return ProgressWords::tr("Write the report…");
    default:
        return words_of(site.next);
    }
}

} // namespace pithward::bench
