#include "app/review/history_view.h"

#include "app/bench/look/sentences.h"
#include "app/review/core_viewer.h"
#include "libcore/review/bring_back.h"
#include "libcore/review/standing.h"

#include <QDateTime>
#include <QDialogButtonBox>
#include <QHeaderView>
#include <QLabel>
#include <QLocale>
#include <QPointer>
#include <QPushButton>
#include <QSignalBlocker>
#include <QSplitter>
#include <QTreeWidget>
#include <QVBoxLayout>
#include <algorithm>

namespace pithward::bench {

namespace {

constexpr int entry_role = Qt::UserRole;

/// The time of a stamp, in the zone of this desk.
QString local_time(const std::string& stamp) {
    const QDateTime at = QDateTime::fromString(QString::fromStdString(stamp), Qt::ISODateWithMs);
    return at.isValid() ? QLocale().toString(at.toLocalTime(), "yyyy-MM-dd HH:mm:ss") : QString::fromStdString(stamp);
}

} // namespace

HistoryView::HistoryView(ProjectDesk& desk, record::CoreId core, QWidget* parent)
    : QDialog(parent)
    , desk_(desk)
    , scans_(desk)
    , list_(new QTreeWidget)
    , viewer_(new CoreViewer)
    , words_(new QLabel)
    , back_(new QPushButton(tr("&Bring this back"))) {
    if (const record::CoreEntry* entry = core_of(desk_.overview(), core)) {
        core_ = *entry;
    }
    setWindowTitle(tr("History of %1").arg(QString::fromStdString(core_.core.id)));
    list_->setAccessibleName(tr("What was done to this core"));
    list_->setColumnCount(3);
    list_->setHeaderLabels({tr("When"), tr("Who"), tr("What")});
    list_->setRootIsDecorated(false);
    list_->setUniformRowHeights(true);
    list_->setFrameShape(QFrame::NoFrame);
    list_->header()->setSectionResizeMode(0, QHeaderView::ResizeToContents);
    list_->header()->setSectionResizeMode(1, QHeaderView::ResizeToContents);
    words_->setWordWrap(true);
    words_->setContentsMargins(10, 6, 10, 6);
    words_->setMinimumHeight(words_->fontMetrics().height() * 2 + 14);
    back_->setToolTip(tr("Make the reading again what it was then; a new edit, which can be undone"));
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
    buttons->addButton(back_, QDialogButtonBox::ActionRole);
    auto* right = new QWidget;
    auto* column = new QVBoxLayout(right);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(words_);
    column->addWidget(viewer_, 1);
    auto* parts = new QSplitter;
    parts->addWidget(list_);
    parts->addWidget(right);
    parts->setSizes({460, 740});
    parts->setChildrenCollapsible(false);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(parts, 1);
    layout->addWidget(buttons);
    resize(1200, 640);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(back_, &QPushButton::clicked, this, &HistoryView::bring_back);
    connect(list_, &QTreeWidget::currentItemChanged, this, &HistoryView::show_entry);
    connect(&desk_, &ProjectDesk::overview_changed, this, &HistoryView::refresh);
    connect(&desk_, &ProjectDesk::opened, this, &QDialog::close); // it is of the project before
    scans_.fetch(core_, [this](const ScanFetcher::Opened& scan) {
        if (scan) {
            scan_ = *scan;
            show_entry();
        } else {
            emit told(QString::fromStdString(scan.error().line()));
        }
    });
    show_entry();
    refresh();
}

HistoryView::~HistoryView() {
    list_->disconnect(this); // it goes after what it would tell of
}

void HistoryView::refresh() {
    desk_.store().ask<History>(
        [core = core_.id](record::Project& project) -> Outcome<History> {
            History history;
            auto entries = project.history(core);
            if (!entries) {
                return tl::unexpected(std::move(entries.error()));
            }
            history.entries = std::move(*entries);
            for (const record::HistoryEntry& entry : history.entries) {
                if (!entry.reading || history.documents.contains(*entry.reading)) {
                    continue;
                }
                auto document = project.document(*entry.reading);
                if (!document) {
                    return tl::unexpected(std::move(document.error()));
                }
                history.documents[*entry.reading] = std::move(*document);
            }
            return history;
        },
        [self = QPointer(this)](Outcome<History> history) {
            if (self == nullptr) {
                return; // closed before the answer came
            }
            if (!history) {
                emit self->told(QString::fromStdString(history.error().line()));
            } else if (history->entries != self->history_.entries) {
                self->fill(std::move(*history));
            }
        });
}

void HistoryView::fill(History history) {
    const record::HistoryEntry* before = list_->currentItem() != list_->topLevelItem(0) ? chosen() : nullptr;
    const std::int64_t kept = before != nullptr ? before->id : 0; // who looks at an old one goes on doing so
    history_ = std::move(history);
    {
        const QSignalBlocker quiet(list_);
        list_->clear();
        for (const record::HistoryEntry& entry : history_.entries) {
            QString what = in_window_language(entry.label);
            if (entry.reading && history_.documents.size() > 1) {
                what = tr("Reading %1: %2").arg(entry.reading->value).arg(what);
            }
            auto* line =
                new QTreeWidgetItem({local_time(entry.at), person_in_words(desk_.overview(), entry.who), what});
            line->setData(0, entry_role, QVariant::fromValue(entry.id));
            line->setToolTip(
                0,
                tr("%1, by Pithward %2").arg(QString::fromStdString(entry.at), QString::fromStdString(entry.program)));
            line->setToolTip(2, what);
            list_->insertTopLevelItem(0, line); // the latest first
        }
        QTreeWidgetItem* shown = list_->topLevelItem(0);
        for (int i = 0; kept != 0 && i < list_->topLevelItemCount(); ++i) {
            const bool same = list_->topLevelItem(i)->data(0, entry_role).toLongLong() == kept;
            shown = same ? list_->topLevelItem(i) : shown;
        }
        list_->setCurrentItem(shown);
    }
    show_entry();
}

const record::HistoryEntry* HistoryView::chosen() const {
    const QTreeWidgetItem* item = list_->currentItem();
    const auto found = item != nullptr ? std::ranges::find(history_.entries, item->data(0, entry_role).toLongLong(),
                                                           &record::HistoryEntry::id)
                                       : history_.entries.end();
    return found == history_.entries.end() ? nullptr : &*found;
}

std::optional<Reading> HistoryView::reading_after(const record::HistoryEntry& entry) const {
    const auto document = entry.reading ? history_.documents.find(*entry.reading) : history_.documents.end();
    if (document == history_.documents.end()) {
        return std::nullopt;
    }
    // What is no edit of it came before the first one, or changed nothing in it.
    EditId upto = entry.edit.value_or(EditId{0});
    for (const record::HistoryEntry& other : history_.entries) {
        if (!entry.edit && other.reading == entry.reading && other.edit && other.id < entry.id) {
            upto = std::max(upto, *other.edit);
        }
    }
    const auto then = reading_at(document->second, upto);
    return then ? std::optional(*then) : std::nullopt;
}

void HistoryView::show_entry() {
    const record::HistoryEntry* entry = chosen();
    const auto then = entry != nullptr ? reading_after(*entry) : std::nullopt;
    const bool is_now = then && *then == history_.documents.at(*entry->reading).reading();
    back_->setEnabled(then && !is_now && desk_.overview().can_change);
    if (!then) {
        viewer_->show_nothing();
        words_->setText(entry != nullptr ? tr("This changed no reading.") : QString());
        return;
    }
    const review::Standing standing = review::standing(*then, {});
    words_->setText(tr("%1: %2. %3.")
                        .arg(is_now ? tr("As it is now") : tr("As it was after this"),
                             in_window_language(review::told_counts(standing)),
                             tr("Open findings: %1").arg(standing.open_findings)));
    if (scan_ != nullptr) {
        viewer_->show_reading(scan_, *then);
    }
}

void HistoryView::bring_back() {
    const record::HistoryEntry* entry = chosen();
    const auto then = entry != nullptr ? reading_after(*entry) : std::nullopt;
    if (!then) {
        return;
    }
    const std::string label = tr("Bring back the reading of %1").arg(local_time(entry->at)).toStdString();
    desk_.make(*entry->reading, [then = *then, label](const Document& document) -> Outcome<Edit> {
        return review::bring_back(document.reading(), then, label);
    });
}

} // namespace pithward::bench
