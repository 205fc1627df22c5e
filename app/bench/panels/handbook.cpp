#include "app/bench/panels/handbook.h"

#include "app/bench/panels/handbook_pages.h"

#include <QDialogButtonBox>
#include <QPushButton>
#include <QVBoxLayout>

namespace pithward::bench {

Handbook::Handbook(QWidget* parent)
    : QDialog(parent)
    , pages_(new HandbookPages) {
    setWindowTitle(tr("Handbook"));
    resize(1000, 720);
    pages_->setAccessibleName(tr("Handbook"));
    const auto contents = [this] {
        pages_->setSource(QUrl("qrc:/docs/handbook/index.md"), QTextDocument::MarkdownResource);
    };
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
    auto* to_contents = buttons->addButton(tr("&Contents"), QDialogButtonBox::ActionRole);
    auto* back = buttons->addButton(tr("&Back"), QDialogButtonBox::ActionRole);
    back->setEnabled(false);
    connect(to_contents, &QPushButton::clicked, this, contents);
    connect(back, &QPushButton::clicked, pages_, &QTextBrowser::backward);
    connect(pages_, &QTextBrowser::backwardAvailable, back, &QPushButton::setEnabled);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(pages_);
    layout->addWidget(buttons);
    contents();
    pages_->setFocus();
}

} // namespace pithward::bench
