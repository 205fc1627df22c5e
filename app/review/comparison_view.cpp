#include "app/review/comparison_view.h"

#include "app/bench/look/layout.h"
#include "app/bench/look/wording.h"
#include "app/picture/ring_places.h"
#include "app/project/state_words.h"
#include "app/review/core_viewer.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QHeaderView>
#include <QLabel>
#include <QLocale>
#include <QPointer>
#include <QSignalBlocker>
#include <QSplitter>
#include <QTreeWidget>
#include <QVBoxLayout>
#include <algorithm>
#include <iterator>

namespace pithward::bench {

namespace {

constexpr int widths_decimals = 3;

QString reading_in_words(const record::ReadingEntry& entry, bool accepted) {
    QString name = ComparisonView::tr("Reading %1, %2").arg(entry.id.value).arg(state_in_words(entry.state));
    if (!entry.analyst.empty()) {
        name = ComparisonView::tr("%1 by %2").arg(name, QString::fromStdString(entry.analyst));
    }
    return accepted ? ComparisonView::tr("%1, accepted").arg(name) : name;
}

QString comparison_in_words(const review::Comparison& comparison) {
    QStringList words;
    const QString share =
        comparison.share_agreeing ? QLocale().toString(*comparison.share_agreeing * 100.0, 'f', 1) : QString("–");
    words << ComparisonView::tr("Rings that both have: %1 (%2 % of all).").arg(comparison.agreeing_rings).arg(share);
    if (comparison.years_differ > 0) {
        words << ComparisonView::tr("Of these with another year: %1.").arg(comparison.years_differ);
    }
    if (comparison.bias && comparison.sd) {
        words << ComparisonView::tr("Widths, the second's less the first's: %1, standard deviation %2.")
                     .arg(in_words(*comparison.bias, widths_decimals), in_words(*comparison.sd, widths_decimals));
    }
    if (comparison.sd_of_one) {
        words << ComparisonView::tr("One reading's width alone, if both are as good: ± %1.")
                     .arg(in_words(*comparison.sd_of_one, widths_decimals));
    }
    return words.join(' ');
}

/// A reading as it is to be looked at here: boundaries without what is asked about them.
Reading without_findings(Reading reading) {
    reading.findings.clear();
    return reading;
}

} // namespace

ComparisonView::ComparisonView(ProjectDesk& desk, record::CoreId core, QWidget* parent)
    : QDialog(parent)
    , desk_(desk)
    , scans_(desk)
    , first_(new QComboBox)
    , second_(new QComboBox)
    , words_(new QLabel)
    , list_(new QTreeWidget)
    , upper_(new CoreViewer)
    , lower_(new CoreViewer) {
    if (const record::CoreEntry* entry = core_of(desk_.overview(), core)) {
        core_ = *entry;
    }
    lay_out();
    fill_choices();
    connect(first_, &QComboBox::currentIndexChanged, this, &ComparisonView::compare);
    connect(second_, &QComboBox::currentIndexChanged, this, &ComparisonView::compare);
    connect(list_, &QTreeWidget::currentItemChanged, this, &ComparisonView::show_wood);
    connect(&desk_, &ProjectDesk::overview_changed, this, [this] {
        fill_choices();
        compare();
    });
    connect(&desk_, &ProjectDesk::opened, this, &QDialog::close); // it is of the project before
    scans_.fetch(core_, [this](const ScanFetcher::Opened& scan) {
        if (scan) {
            scan_ = *scan;
            show_wood();
        } else {
            emit told(QString::fromStdString(scan.error().line()));
        }
    });
    compare();
}

ComparisonView::~ComparisonView() {
    list_->disconnect(this); // it goes after what it would tell of
}

void ComparisonView::lay_out() {
    setWindowTitle(tr("Readings of %1").arg(QString::fromStdString(core_.core.id)));
    first_->setAccessibleName(tr("First reading, shown above"));
    second_->setAccessibleName(tr("Second reading, shown below"));
    words_->setWordWrap(true);
    words_->setTextInteractionFlags(Qt::TextSelectableByMouse);
    words_->setAccessibleName(tr("How far the readings agree"));
    list_->setAccessibleName(tr("Boundaries that only one reading has"));
    list_->setHeaderLabels({tr("Only in reading"), tr("Ring"), tr("From the bark")});
    list_->setRootIsDecorated(false);
    list_->setUniformRowHeights(true);
    list_->setFrameShape(QFrame::NoFrame);
    list_->header()->setSectionResizeMode(QHeaderView::ResizeToContents);
    auto* side = column({first_, second_, words_, heading(tr("Boundaries that only one reading has")), list_},
                        {10, 10, 10, 0}, 6);
    qobject_cast<QVBoxLayout*>(side->layout())->setStretchFactor(list_, 1);
    auto* wood = divided("two-readings", Qt::Vertical, {{upper_, 1}, {lower_, 1}});
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(divided("agreement-and-wood", Qt::Horizontal, {{side, 3}, {wood, 8}}), 1);
    layout->addWidget(buttons);
    resize(1240, 760);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
}

void ComparisonView::fill_choices() {
    std::vector<record::ReadingEntry> entries;
    std::ranges::copy_if(desk_.overview().readings, std::back_inserter(entries),
                         [&](const record::ReadingEntry& entry) { return entry.core == core_.id; });
    const record::ReadingEntry* accepted = accepted_of(desk_.overview(), core_.id);
    const ReadingId before_all = accepted != nullptr ? accepted->id : ReadingId{0};
    std::stable_partition(entries.begin(), entries.end(), [&](const auto& entry) { return entry.id == before_all; });
    for (QComboBox* box : {first_, second_}) {
        const QSignalBlocker quiet(box);
        const QVariant kept = box->currentData();
        box->clear();
        for (const record::ReadingEntry& entry : entries) {
            box->addItem(reading_in_words(entry, entry.id == before_all), QVariant::fromValue(entry.id.value));
        }
        const int again = kept.isValid() ? box->findData(kept) : -1;
        box->setCurrentIndex(again >= 0 ? again : std::min(box == first_ ? 0 : 1, box->count() - 1));
    }
}

void ComparisonView::compare() {
    const ReadingId first{first_->currentData().toLongLong()};
    const ReadingId second{second_->currentData().toLongLong()};
    std::vector<record::ReadingEntry> wanted;
    for (const ReadingId id : {first, second}) {
        if (const record::ReadingEntry* entry = reading_of(desk_.overview(), id)) {
            wanted.push_back(*entry);
        }
    }
    if (wanted == compared_) {
        return; // another core was changed: who has moved the view keeps it
    }
    compared_ = wanted;
    desk_.store().ask<ReadingPair>(
        [first, second](record::Project& project) { return read_pair(project, first, second); },
        [self = QPointer(this), number = ++asked_](Outcome<ReadingPair> pair) {
            if (self == nullptr || number != self->asked_) {
                return; // closed, or others are chosen by now
            }
            if (pair) {
                self->show_pair(std::move(*pair));
            } else {
                self->show_no_pair(pair.error());
            }
        });
}

void ComparisonView::show_no_pair(const Fault& fault) {
    const QSignalBlocker quiet(list_);
    pair_.reset();
    lone_.clear();
    list_->clear();
    upper_->show_nothing();
    lower_->show_nothing();
    words_->setText(QString::fromStdString(fault.line()));
}

void ComparisonView::show_pair(ReadingPair pair) {
    pair_ = std::move(pair);
    lone_ = lone_boundaries(*pair_);
    words_->setText(comparison_in_words(pair_->comparison));
    {
        const QSignalBlocker quiet(list_);
        const int row = list_->indexOfTopLevelItem(list_->currentItem());
        list_->clear();
        for (const LoneBoundary& one : lone_) {
            const picture::MeasuredCore& core = one.in_first ? pair_->first : pair_->second;
            const Ring* ring = picture::ring_of(core.series, one.placed.ring_number);
            new QTreeWidgetItem(list_, {QString::number(core.reading.id.value),
                                        ring != nullptr ? name_of(*ring) : QString(), in_words(one.placed.s, 1)});
        }
        list_->setCurrentItem(list_->topLevelItem(std::clamp(row, 0, std::max(0, list_->topLevelItemCount() - 1))));
    }
    show_wood();
}

void ComparisonView::show_wood() {
    if (!pair_ || scan_ == nullptr) {
        return;
    }
    const int row = list_->indexOfTopLevelItem(list_->currentItem());
    for (const bool first : {true, false}) {
        std::optional<Finding> place;
        if (row >= 0) {
            const LoneBoundary& lone = lone_[static_cast<std::size_t>(row)];
            place.emplace();
            place->leg = lone.boundary.leg;
            place->at = lone.boundary.at;
            place->boundary = lone.in_first == first ? std::optional(lone.boundary.id) : std::nullopt;
        }
        viewer(first).show_reading(scan_, without_findings((first ? pair_->first : pair_->second).reading),
                                   place ? &*place : nullptr);
    }
}

QString ComparisonView::words() const {
    return words_->text();
}

} // namespace pithward::bench
