#include "app/bench/look/layout.h"
#include "app/bench/panels/finding_delegate.h"
#include "app/bench/panels/wrapped_list.h"
#include "app/site/site_bands.h"
#include "app/site/site_dating.h"
#include "app/site/site_page.h"
#include "app/site/slip_panel.h"
#include "app/site/slip_words.h"

#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QSignalBlocker>
#include <QSplitter>
#include <QStackedWidget>
#include <QVBoxLayout>
#include <algorithm>

// The parts of the site's page and its list.

namespace pithward::bench {

namespace {

QLabel* words_label() {
    auto* label = new QLabel;
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    return label;
}

} // namespace

SitePage::SitePage(ProjectDesk& desk, QWidget* parent)
    : QWidget(parent)
    , desk_(desk)
    , work_(desk)
    , list_(new WrappedList)
    , heading_(words_label())
    , summary_(words_label())
    , legend_(words_label())
    , needed_(words_label())
    , again_(new QPushButton(tr("Date the site")))
    , pages_(new QStackedWidget)
    , agreement_(new AgreementBand(years_))
    , rows_(new QScrollArea)
    , series_(new SeriesBand(years_))
    , chronology_(new ChronologyBand(years_))
    , slip_panel_(new SlipPanel) {
    needed_->setAlignment(Qt::AlignCenter);
    needed_->setMaximumWidth(560);
    auto* empty = column({needed_, again_}, {24, 24, 24, 24}, 14);
    auto* middle = static_cast<QVBoxLayout*>(empty->layout());
    middle->setAlignment(needed_, Qt::AlignCenter);
    middle->setAlignment(again_, Qt::AlignCenter);
    middle->insertStretch(0, 2);
    middle->addStretch(3);
    pages_->addWidget(empty);
    pages_->addWidget(divided("series-and-pictures", Qt::Horizontal, {{build_side(), 3}, {build_pictures(), 11}}));
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(pages_);
    tie();
    follow_work();
}

SitePage::~SitePage() {
    list_->disconnect(this); // it goes after what it would tell of
    work_.disconnect(this);
    years_.disconnect(this);
}

QWidget* SitePage::build_side() {
    list_->setAccessibleName(tr("Series of the site, those that want a look first"));
    make_heading(*heading_);
    summary_->setContentsMargins(12, 0, 12, 8);
    return column({heading_, summary_, list_});
}

QWidget* SitePage::build_pictures() {
    agreement_->setAccessibleName(tr("How each series goes with the others through time"));
    series_->setAccessibleName(tr("The chosen series on the mean of the others"));
    chronology_->setAccessibleName(tr("The chronology of the site, its depth and its signal"));
    series_->setToolTip(
        tr("A click on a year, or Return at the one that is pointed at, opens its ring on the bench. The "
           "wheel comes closer."));
    rows_->setWidget(agreement_);
    rows_->setWidgetResizable(true);
    rows_->setFrameShape(QFrame::NoFrame);
    rows_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    rows_->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOn); // so that its years stay under those of the others
    for (YearBand* band : {static_cast<YearBand*>(series_), static_cast<YearBand*>(chronology_)}) {
        band->leave_right(rows_->verticalScrollBar()->sizeHint().width());
    }
    rows_->setFocusPolicy(Qt::NoFocus);
    auto* chosen = column({series_, slip_panel_});
    qobject_cast<QVBoxLayout*>(chosen->layout())->setStretchFactor(series_, 1);
    legend_->setContentsMargins(12, 0, 12, 6);
    auto* all = column({heading(tr("How each series goes with the others")), legend_, rows_});
    qobject_cast<QVBoxLayout*>(all->layout())->setStretchFactor(rows_, 1);
    auto* mean = column({heading(tr("The chronology of the site")), chronology_});
    qobject_cast<QVBoxLayout*>(mean->layout())->setStretchFactor(chronology_, 1);
    return divided("chosen-and-site", Qt::Vertical, {{chosen, 8}, {all, 7}, {mean, 7}});
}

void SitePage::add_buttons(QAction* see, QAction* accept, QAction* not_so, QAction* untold) {
    slip_panel_->add_buttons(see, accept, not_so, untold);
}

void SitePage::tie() {
    connect(&work_, &SiteWork::changed, this, &SitePage::follow_work);
    connect(&work_, &SiteWork::told, this, &SitePage::told);
    connect(&desk_, &ProjectDesk::overview_changed, this, &SitePage::refresh);
    connect(&desk_, &ProjectDesk::opened, this, [this] { core_.reset(); });
    connect(again_, &QPushButton::clicked, this, &SitePage::refresh);
    connect(list_, &QListWidget::currentRowChanged, this, [this](int row) {
        slip_number_ = 0;
        show_line(row);
    });
    connect(list_, &QListWidget::itemActivated, this, &SitePage::see_wood);
    connect(agreement_, &AgreementBand::line_chosen, list_, qOverload<int>(&QListWidget::setCurrentRow));
    connect(series_, &YearBand::year_chosen, this, &SitePage::open_year);
    connect(chronology_, &YearBand::year_chosen, this, &SitePage::open_year);
    for (YearBand* band :
         {static_cast<YearBand*>(agreement_), static_cast<YearBand*>(series_), static_cast<YearBand*>(chronology_)}) {
        connect(band, &YearBand::step_wanted, this, [this](int by) {
            list_->setCurrentRow(std::clamp(list_->currentRow() + by, 0, std::max(0, list_->count() - 1)));
        });
    }
    connect(agreement_, &YearBand::year_chosen, this, &SitePage::open_year);
    connect(&years_, &YearWindow::changed, this, &SitePage::say_year);
}

void SitePage::follow_work() {
    const auto& dating = work_.dating();
    if (work_.busy()) {
        heading_->setText(tr("Dating the site again…"));
        needed_->setText(tr("Dating the site…"));
    } else if (dating) {
        heading_->setText(tr("Series of the site: %1").arg(dating->lines.size()));
    } else if (!work_.known()) {
        needed_->setText(tr("The site is not dated yet."));
    } else {
        needed_->setText(what_is_needed(work_.cores()));
    }
    again_->setVisible(!work_.busy() && !work_.known());
    pages_->setCurrentIndex(dating ? 1 : 0);
    if (dating) {
        say_summary();
    }
    put_lines();
    emit shown_changed();
}

void SitePage::say_summary() {
    const SiteDating& dating = *work_.dating();
    summary_->setText(summary_of(dating));
    legend_->setText(tr("A bar is as high as %1 years correlate with the others, 1 at most. An open bar with a number "
                        "fits clearly better with so many years added, a faint one nowhere better than by chance. A "
                        "bracket that points down: a ring is missing; up: one is counted "
                        "twice.")
                         .arg(dating.result.length));
}

void SitePage::put_lines() {
    const auto& dating = work_.dating();
    int row = -1;
    {
        const QSignalBlocker quiet(list_);
        list_->clear();
        const int lines = dating ? static_cast<int>(dating->lines.size()) : 0;
        for (int i = 0; i < lines; ++i) {
            const SiteLine& line = dating->lines[static_cast<std::size_t>(i)];
            const QString body = verdict_of(*dating, line);
            auto* item = new QListWidgetItem(title_of(*dating, line), list_);
            item->setData(FindingDelegate::body_role, body);
            item->setData(Qt::AccessibleDescriptionRole, body);
            if (core_ && dating->core(line).core == *core_) {
                row = i;
            }
        }
        row = row < 0 && lines > 0 ? 0 : row;
        list_->setCurrentRow(row);
    }
    if (dating && !dating->result.dated.empty()) {
        const auto& dated = dating->result.dated;
        years_.set_all(std::ranges::min_element(dated, {}, &dating::DatedResult::first_year)->first_year,
                       std::ranges::max_element(dated, {}, &dating::DatedResult::last_year)->last_year);
    }
    chronology_->show(dating);
    show_line(row);
}

void SitePage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    list_->setFocus();
    refresh();
}

} // namespace pithward::bench
