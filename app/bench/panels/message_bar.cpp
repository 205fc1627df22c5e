#include "app/bench/panels/message_bar.h"

#include "app/bench/look/sentences.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QStyle>
#include <QToolButton>

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
    constexpr qsizetype most = 4;
    const QString message = in_window_language(sentence.toStdString());
    messages_.removeAll(message);
    messages_ << message;
    while (messages_.size() > most) {
        messages_.removeFirst();
    }
    label_->setText(messages_.join('\n'));
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
