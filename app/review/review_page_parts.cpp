#include "app/bench/look/layout.h"
#include "app/bench/panels/finding_delegate.h"
#include "app/bench/panels/wrapped_list.h"
#include "app/bench/scan_view/scan_view.h"
#include "app/review/core_viewer.h"
#include "app/review/finding_words.h"
#include "app/review/neighbour_years.h"
#include "app/review/review_page.h"

#include <QAction>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QSignalBlocker>
#include <QSplitter>
#include <QVBoxLayout>
#include <algorithm>

// The parts of the review and its list.

namespace pithward::bench {

namespace {

QLabel* text_label() {
    auto* label = new QLabel;
    label->setTextFormat(Qt::PlainText);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    label->setWordWrap(true);
    return label;
}

} // namespace

ReviewPage::ReviewPage(ProjectDesk& desk, QWidget* parent)
    : QWidget(parent)
    , desk_(desk)
    , scans_(desk)
    , shelf_(std::make_shared<ReadingShelf>())
    , list_(new WrappedList)
    , heading_(text_label())
    , title_(text_label())
    , provenance_(text_label())
    , story_(text_label())
    , viewer_(new CoreViewer)
    , years_(new NeighbourYears)
    , comment_(new QLineEdit)
    , buttons_(new QWidget) {
    auto* parts = divided("queue-and-finding", Qt::Horizontal, {{build_side(), 3}, {build_case(), 10}});
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(parts);
    connect(&desk_, &ProjectDesk::overview_changed, this, &ReviewPage::refresh);
    connect(&desk_, &ProjectDesk::opened, this, [this] {
        shelf_ = std::make_shared<ReadingShelf>();
        put_items({});
    });
    connect(list_, &QListWidget::currentRowChanged, this, &ReviewPage::show_row);
    connect(comment_, &QLineEdit::returnPressed, list_, qOverload<>(&QWidget::setFocus));
    connect(&viewer_->view(), &ScanView::failed, this, &ReviewPage::told);
    show_nothing();
}

ReviewPage::~ReviewPage() {
    list_->disconnect(this); // it goes after what it would tell of
}

QWidget* ReviewPage::build_side() {
    list_->setAccessibleName(tr("What waits"));
    make_heading(*heading_);
    return column({heading_, list_});
}

QWidget* ReviewPage::build_case() {
    QFont large = font();
    large.setBold(true);
    large.setPointSizeF(large.pointSizeF() * 1.25);
    title_->setFont(large);
    story_->setAccessibleName(tr("What is to be known of the finding"));
    comment_->setPlaceholderText(tr("Comment that goes with the verdict (I)"));
    comment_->setAccessibleName(tr("Comment"));
    comment_->setMaxLength(2000);
    auto* verdict = new QHBoxLayout(buttons_);
    verdict->setContentsMargins(0, 0, 0, 0);
    verdict->addWidget(comment_, 1);
    auto* words = column({story_, buttons_}, {14, 8, 14, 10}, 6);
    auto* head = column({title_, provenance_}, {14, 8, 14, 6}, 2);
    auto* box = column({head, viewer_, years_, words});
    qobject_cast<QVBoxLayout*>(box->layout())->setStretchFactor(viewer_, 1);
    return box;
}

void ReviewPage::add_buttons(const std::vector<QAction*>& actions) {
    for (QAction* action : actions) {
        const QString key = action->shortcut().toString(QKeySequence::NativeText);
        auto* button = new QPushButton(QString("%1 (%2)").arg(action->text().remove('&'), key));
        button->setToolTip(action->toolTip());
        button->setEnabled(action->isEnabled());
        button->setFocusPolicy(Qt::TabFocus);
        connect(button, &QPushButton::clicked, action, &QAction::trigger);
        connect(action, &QAction::changed, button, [button, action] { button->setEnabled(action->isEnabled()); });
        buttons_->layout()->addWidget(button);
    }
}

void ReviewPage::put_items(std::vector<QueueItem> items) {
    const int row = list_->currentRow();
    items_ = std::move(items);
    int next = std::min(row, static_cast<int>(items_.size()) - 1); // what follows has moved up to this row
    {
        const QSignalBlocker quiet(list_);
        list_->clear();
        for (const QueueItem& item : items_) {
            auto* line = new QListWidgetItem(title_of(item), list_);
            line->setData(FindingDelegate::body_role, summary_of(item));
            line->setData(Qt::AccessibleDescriptionRole, summary_of(item));
            if (item_ && same_item(*item_, item)) {
                next = list_->count() - 1;
            }
        }
        const auto wanted = wanted_ ? std::ranges::find(items_, *wanted_, &QueueItem::reading) : items_.end();
        next = wanted != items_.end() ? static_cast<int>(wanted - items_.begin()) : next;
        wanted_.reset();
        list_->setCurrentRow(std::max(next, items_.empty() ? -1 : 0));
    }
    const auto findings =
        static_cast<int>(std::ranges::count_if(items_, [](const QueueItem& one) { return one.finding.has_value(); }));
    heading_->setText(whom_ == Waits::SecondPerson ? tr("Findings that wait for a second person: %1").arg(findings)
                                                   : tr("Findings that wait for the analysts: %1").arg(findings));
    show_row(list_->currentRow());
}

void ReviewPage::show_other_list() {
    whom_ = whom_ == Waits::SecondPerson ? Waits::Analyst : Waits::SecondPerson;
    list_->setCurrentRow(-1);
    refresh();
}

void ReviewPage::choose(ReadingId reading) {
    whom_ = Waits::SecondPerson;
    wanted_ = reading;
    refresh();
}

void ReviewPage::focus_comment() {
    comment_->setFocus(Qt::ShortcutFocusReason);
    comment_->selectAll();
}

void ReviewPage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    list_->setFocus();
    refresh();
}

} // namespace pithward::bench
