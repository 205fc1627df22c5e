#include "app/bench/panels/message_bar.h"

#include "app/bench/look/sentences.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QStyle>
#include <QToolButton>
#include <algorithm>

namespace pithward::bench {

MessageBar::MessageBar(QWidget* parent)
    : QFrame(parent)
    , label_(new QLabel) {
    setObjectName("message_bar");
    setAccessibleName(tr("Message"));
    setAutoFillBackground(true);
    setBackgroundRole(QPalette::ToolTipBase);
    setForegroundRole(QPalette::ToolTipText);
    label_->setWordWrap(true);
    label_->setTextFormat(Qt::PlainText);
    label_->setTextInteractionFlags(Qt::TextSelectableByMouse);
    label_->setForegroundRole(QPalette::ToolTipText);
    auto* close = new QToolButton;
    close->setAutoRaise(true);
    close->setIcon(style()->standardIcon(QStyle::SP_TitleBarCloseButton));
    close->setToolTip(tr("Close this message"));
    close->setAccessibleName(tr("Close this message"));
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(14, 6, 8, 6);
    layout->addWidget(label_, 1);
    layout->addWidget(close, 0, Qt::AlignTop);
    connect(close, &QToolButton::clicked, this, &MessageBar::put_away);
    hide();
}

void MessageBar::tell(const QString& sentence) {
    constexpr qsizetype most_told = 4;
    constexpr qsizetype most_kept = 40;
    const QString message = in_window_language(sentence.toStdString());
    messages_.removeAll(message);
    messages_ << message;
    while (messages_.size() > most_kept) {
        messages_.removeFirst();
    }
    QStringList shown = messages_.mid(std::max<qsizetype>(0, messages_.size() - most_told));
    const bool more = shown.size() < messages_.size();
    if (more) { // of many scans that are opened at once, each that can't be read is told
        shown.prepend(tr("%1 more messages: rest the mouse here to read them.").arg(messages_.size() - shown.size()));
    }
    label_->setText(shown.join('\n'));
    const QString all = messages_.join('\n');
    label_->setToolTip(more ? "<p style='white-space:pre'>" + all.toHtmlEscaped() + "</p>" : QString());
    label_->setAccessibleDescription(more ? all : QString());
    show();
}

void MessageBar::put_away() {
    messages_.clear();
    hide();
}

QString MessageBar::text() const {
    return isHidden() ? QString() : label_->text();
}

} // namespace pithward::bench
