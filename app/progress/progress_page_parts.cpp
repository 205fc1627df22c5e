#include "app/bench/look/layout.h"
#include "app/progress/progress_delegate.h"
#include "app/progress/progress_page.h"
#include "app/progress/stage_bars.h"
#include "app/progress/strip_shelf.h"

#include <QAction>
#include <QCheckBox>
#include <QComboBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QSortFilterProxyModel>
#include <QStackedWidget>
#include <QTableView>
#include <QVBoxLayout>

// The parts of the page of progress.

namespace pithward::bench {

namespace {

constexpr int page_margin = 12;

QLabel* wrapped_label() {
    auto* label = new QLabel;
    label->setTextFormat(Qt::PlainText); // names come from a field sheet
    label->setWordWrap(true);
    return label;
}

QWidget* row(std::initializer_list<QWidget*> parts, QWidget* wide) {
    auto* box = new QWidget;
    auto* layout = new QHBoxLayout(box);
    layout->setContentsMargins(page_margin, 4, page_margin, 8);
    layout->setSpacing(page_margin);
    for (QWidget* part : parts) {
        layout->addWidget(part, part == wide ? 1 : 0);
    }
    return box;
}

} // namespace

ProgressPage::ProgressPage(ProjectDesk& desk, SiteWork& dating, QWidget* parent)
    : QWidget(parent)
    , desk_(desk)
    , dating_(dating)
    , strips_(new StripShelf(desk, this))
    , sorted_(new QSortFilterProxyModel(this))
    , pages_(new QStackedWidget)
    , bars_(new StageBars)
    , next_(wrapped_label())
    , work_(wrapped_label())
    , site_button_(new QPushButton)
    , buttons_(new QWidget)
    , order_(new QComboBox)
    , reversed_(new QCheckBox(tr("Re&versed")))
    , table_(new QTableView)
    , title_(wrapped_label())
    , story_(wrapped_label())
    , core_button_(new QPushButton) {
    build_table();
    QLabel* empty = wrapped_label();
    empty->setText(tr("This project has no cores. Make one from a field sheet with File, New project."));
    empty->setAlignment(Qt::AlignCenter);
    pages_->addWidget(empty);
    auto* page = column({build_top(), build_order(), table_, build_below()});
    qobject_cast<QVBoxLayout*>(page->layout())->setStretchFactor(table_, 1);
    pages_->addWidget(page);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(pages_);
    tie();
}

ProgressPage::~ProgressPage() {
    dating_.disconnect(this);
    table_->selectionModel()->disconnect(this); // it goes after what it would tell of
}

QWidget* ProgressPage::build_top() {
    auto* layout = new QHBoxLayout(buttons_);
    layout->setContentsMargins(0, 0, 0, 0);
    next_->setAccessibleName(tr("What is next for the site"));
    QFont font = next_->font();
    font.setBold(true);
    next_->setFont(font);
    auto* bars = column({bars_}, {page_margin, 12, page_margin, 6});
    return column({bars, row({next_, site_button_, buttons_}, next_)});
}

QWidget* ProgressPage::build_order() {
    order_->addItem(tr("Field sheet"), -1);
    for (int column = 0; column < ProgressModel::ColumnCount; ++column) {
        if (column != ProgressModel::Wood) {
            order_->addItem(model_.headerData(column, Qt::Horizontal).toString(), column);
        }
    }
    order_->setAccessibleName(tr("What the cores are sorted by"));
    auto* label = new QLabel(tr("S&orted by"));
    label->setBuddy(order_);
    return row({label, order_, reversed_, work_}, work_);
}

void ProgressPage::build_table() {
    sorted_->setSourceModel(&model_);
    sorted_->setSortRole(ProgressModel::SortRole);
    sorted_->setSortCaseSensitivity(Qt::CaseInsensitive);
    table_->setModel(sorted_);
    table_->setAccessibleName(tr("Cores of the project and how far each is"));
    table_->setSelectionBehavior(QAbstractItemView::SelectRows);
    table_->setSelectionMode(QAbstractItemView::SingleSelection);
    table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table_->setTabKeyNavigation(false);
    table_->setFrameShape(QFrame::NoFrame);
    table_->setShowGrid(false);
    table_->setWordWrap(false);
    table_->setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
    table_->verticalHeader()->hide();
    table_->verticalHeader()->setDefaultSectionSize(std::max(34, table_->fontMetrics().height() + 14));
    table_->setItemDelegate(new ProgressDelegate(
        [this](const QModelIndex& index, QSize pixels) {
            const ProgressRow* shown = row_at(index);
            return shown != nullptr ? picture_of(*shown, pixels) : QImage();
        },
        table_));
    QHeaderView* header = table_->horizontalHeader();
    header->setHighlightSections(false);
    header->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    header->setSortIndicatorShown(true);
    header->setSectionsClickable(true);
    header->setSortIndicatorClearable(true);
    header->setSortIndicator(-1, Qt::AscendingOrder);
    const int letter = table_->fontMetrics().averageCharWidth();
    const auto set = [&](int column, int letters) { header->resizeSection(column, letters * letter); };
    set(ProgressModel::Name, 12);
    set(ProgressModel::Tree, 22);
    set(ProgressModel::Wood, 34);
    for (int i = 0; i < 5; ++i) {
        set(ProgressModel::FirstStage + i, 18);
    }
    set(ProgressModel::FirstStage + static_cast<int>(progress::Stage::Dated), 24);
    set(ProgressModel::Against, 38);
    header->setStretchLastSection(true);
}

QWidget* ProgressPage::build_below() {
    QFont font = title_->font();
    font.setBold(true);
    title_->setFont(font);
    title_->setWordWrap(false);
    story_->setAccessibleName(tr("What stands against the core"));
    auto* line = row({title_, story_, core_button_}, story_);
    line->layout()->setContentsMargins(page_margin, 8, page_margin, 8);
    return line;
}

void ProgressPage::add_buttons(const std::vector<QAction*>& actions) {
    for (QAction* action : actions) {
        auto* button = new QPushButton(action->text());
        button->setToolTip(action->toolTip());
        button->setEnabled(action->isEnabled());
        connect(button, &QPushButton::clicked, action, &QAction::trigger);
        connect(action, &QAction::changed, button, [button, action] { button->setEnabled(action->isEnabled()); });
        buttons_->layout()->addWidget(button);
    }
}

void ProgressPage::tie() {
    connect(&desk_, &ProjectDesk::opened, this, &ProgressPage::start_anew);
    connect(&desk_, &ProjectDesk::overview_changed, this, &ProgressPage::refresh);
    connect(&dating_, &SiteWork::seen, this, [this](const SiteCores& cores) {
        seen_ = cores;
        put_rows();
    });
    connect(&dating_, &SiteWork::changed, this, &ProgressPage::put_rows);
    connect(strips_, &StripShelf::come, &model_, &ProgressModel::picture_came);
    connect(table_->selectionModel(), &QItemSelectionModel::currentRowChanged, this, &ProgressPage::show_core);
    connect(table_, &QTableView::activated, this, &ProgressPage::go_on_with_core);
    connect(core_button_, &QPushButton::clicked, this, &ProgressPage::go_on_with_core);
    connect(site_button_, &QPushButton::clicked, this, &ProgressPage::go_on_with_site);
    connect(order_, &QComboBox::currentIndexChanged, this, &ProgressPage::sort);
    connect(reversed_, &QCheckBox::toggled, this, &ProgressPage::sort);
    connect(table_->horizontalHeader(), &QHeaderView::sortIndicatorChanged, this,
            [this](int column, Qt::SortOrder order) {
                sorted_->sort(column, order);
                follow_sorting(column, order);
            });
}

} // namespace pithward::bench
