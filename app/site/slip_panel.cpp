#include "app/site/slip_panel.h"

#include "app/bench/look/layout.h"
#include "app/site/site_dating.h"
#include "app/site/slip_words.h"

#include <QAction>
#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QSignalBlocker>
#include <algorithm>
#include <utility>

namespace pithward::bench {

namespace {

QLabel* plain_label() {
    auto* label = new QLabel;
    label->setTextFormat(Qt::PlainText);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    label->setWordWrap(true);
    return label;
}

QString with_key(const QString& words, const QAction& action) {
    return QString("%1 (%2)").arg(words, action.shortcut().toString(QKeySequence::NativeText));
}

} // namespace

SlipPanel::SlipPanel(QWidget* parent)
    : QWidget(parent)
    , title_(plain_label())
    , words_(plain_label())
    , places_(new QListWidget)
    , buttons_(new QWidget) {
    QFont large = font();
    large.setBold(true);
    large.setPointSizeF(large.pointSizeF() * 1.25);
    title_->setFont(large);
    words_->setAccessibleName(tr("What the other cores say"));
    places_->setAccessibleName(tr("Places on the scan, the likeliest first"));
    places_->setFrameShape(QFrame::NoFrame);
    places_->setTextElideMode(Qt::ElideRight);
    places_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    auto* row = new QHBoxLayout(buttons_);
    row->setContentsMargins(0, 0, 0, 0);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(column({title_, words_, places_, buttons_}, {14, 8, 14, 10}, 6));
    connect(places_, &QListWidget::currentRowChanged, this, &SlipPanel::name_accept);
}

void SlipPanel::add_buttons(QAction* see, QAction* accept, QAction* not_so, QAction* untold) {
    const std::pair<QAction*, QString> all[]{
        {see, tr("Show the wood")}, {accept, {}}, {not_so, tr("Not so")}, {untold, tr("Can't be told")}};
    for (const auto& [action, words] : all) {
        auto* button = new QPushButton(with_key(words, *action));
        button->setEnabled(action->isEnabled());
        button->setFocusPolicy(Qt::TabFocus);
        connect(button, &QPushButton::clicked, action, &QAction::trigger);
        connect(action, &QAction::changed, button,
                [button, action = action] { button->setEnabled(action->isEnabled()); });
        buttons_->layout()->addWidget(button);
        if (action == accept) {
            accept_ = button;
        }
    }
    static_cast<QHBoxLayout*>(buttons_->layout())->addStretch(1);
    accepting_ = accept;
    name_accept();
}

const SiteLine* SlipPanel::line() const {
    return dating_ && line_ >= 0 && line_ < static_cast<int>(dating_->lines.size())
               ? &dating_->lines[static_cast<std::size_t>(line_)]
               : nullptr;
}

const dating::Slip* SlipPanel::slip() const {
    const SiteLine* shown = line();
    const dating::DatedResult* series = shown != nullptr ? dating_->dated(*shown) : nullptr;
    return series != nullptr && slip_ >= 0 && slip_ < static_cast<int>(series->slips.size())
               ? &series->slips[static_cast<std::size_t>(slip_)]
               : nullptr;
}

const dating::SlipPlace* SlipPanel::place() const {
    if (slip() == nullptr) {
        return nullptr;
    }
    const auto& all = dating_->dated(*line())->places;
    const auto number = static_cast<std::size_t>(slip_);
    const int row = places_->currentRow();
    return number < all.size() && row >= 0 && row < static_cast<int>(all[number].size())
               ? &all[number][static_cast<std::size_t>(row)]
               : nullptr;
}

int SlipPanel::whole_shift() const {
    const SiteLine* shown = line();
    const dating::DatedResult* series = shown != nullptr ? dating_->dated(*shown) : nullptr;
    return series != nullptr && slip() == nullptr ? series->whole_shift : 0;
}

const Finding* SlipPanel::noted() const {
    return slip() != nullptr ? dating_->noted(*line(), static_cast<std::size_t>(slip_)) : nullptr;
}

QString SlipPanel::words() const {
    return title_->text() + '\n' + words_->text();
}

QString SlipPanel::accept_words() const {
    return accept_ != nullptr ? accept_->text() : QString();
}

void SlipPanel::show_slip(std::shared_ptr<const SiteDating> dating, int line, int slip) {
    dating_ = std::move(dating);
    line_ = line;
    slip_ = slip;
    const SiteLine* shown = this->line();
    if (shown == nullptr) {
        show_nothing();
        return;
    }
    const QString core = QString::fromStdString(dating_->core(*shown).name);
    const dating::Slip* present = this->slip();
    {
        const QSignalBlocker quiet(places_);
        places_->clear();
        if (present != nullptr) {
            const dating::DatedResult& series = *dating_->dated(*shown);
            if (static_cast<std::size_t>(slip) < series.places.size()) {
                for (const dating::SlipPlace& place : series.places[static_cast<std::size_t>(slip)]) {
                    places_->addItem(line_of(place));
                }
            }
            places_->setCurrentRow(places_->count() > 0 ? 0 : -1);
        }
    }
    if (present != nullptr) {
        const int all = static_cast<int>(dating_->dated(*shown)->slips.size());
        const QString title = QString("%1 · %2").arg(core, title_of(*present));
        title_->setText(all > 1 ? tr("%1 (%2 of %3)").arg(title).arg(slip + 1).arg(all) : title);
        words_->setText(certainty_of(*present) + ' ' + tr("Where it may lie on the scan, the likeliest first:"));
    } else {
        title_->setText(core);
        words_->setText(verdict_of(*dating_, *shown));
    }
    places_->setFixedHeight(places_->count() * std::max(1, places_->sizeHintForRow(0)));
    places_->setVisible(places_->count() > 0);
    name_accept();
}

void SlipPanel::show_nothing() {
    dating_.reset();
    line_ = slip_ = -1;
    title_->clear();
    words_->clear();
    places_->clear();
    name_accept();
}

void SlipPanel::name_accept() {
    if (accept_ != nullptr) {
        const dating::SlipPlace* chosen = place();
        const QString words = chosen != nullptr    ? words_of_change(*chosen)
                              : whole_shift() != 0 ? words_of_shift(whole_shift())
                                                   : tr("Accept");
        accept_->setText(with_key(words, *accepting_));
    }
}

} // namespace pithward::bench
