#include "app/project/detail_field.h"

#include "app/bench/look/icons.h"
#include "app/project/detail_words.h"

#include <QAction>
#include <QComboBox>
#include <QCompleter>
#include <QEvent>
#include <QLineEdit>
#include <QStringListModel>
#include <QVBoxLayout>

namespace pithward::bench {

DetailField::DetailField(const formats::SheetColumn& column, QWidget* parent)
    : QWidget(parent)
    , column_(column) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins({});
    QWidget* field = nullptr;
    if (column.choices.empty()) {
        field = line_ = new QLineEdit;
        auto* completer = new QCompleter(new QStringListModel(line_), line_);
        completer->setCaseSensitivity(Qt::CaseInsensitive);
        completer->setFilterMode(Qt::MatchContains);
        line_->setCompleter(completer);
        line_->installEventFilter(this);
        connect(line_, &QLineEdit::textEdited, this, [this] { typing_ = true; });
        connect(line_, &QLineEdit::editingFinished, this, &DetailField::typed);
    } else {
        field = box_ = new QComboBox;
        box_->addItem(choice_in_words({}), QString());
        for (const std::string& word : column.choices) {
            if (word != "unknown") { // the empty one stands for it
                box_->addItem(choice_in_words(word), QString::fromStdString(word));
            }
        }
        box_->setMinimumContentsLength(6);
        box_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        box_->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
        connect(box_, &QComboBox::activated, this, &DetailField::typed);
    }
    field->setAccessibleName(name_of(column));
    setFocusProxy(field);
    layout->addWidget(field);
}

DetailField::~DetailField() {
    if (line_ != nullptr) { // it loses the focus as it goes, and must not tell of that then
        line_->disconnect(this);
        line_->removeEventFilter(this);
    }
}

std::string DetailField::text() const {
    return (line_ != nullptr ? line_->text().trimmed() : box_->currentData().toString()).toStdString();
}

bool DetailField::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::FocusIn) {
        emit entered();
    }
    return QWidget::eventFilter(watched, event);
}

void DetailField::propose(const QStringList& texts) {
    if (line_ != nullptr) {
        static_cast<QStringListModel*>(line_->completer()->model())->setStringList(texts);
    }
}

void DetailField::clear_marks() {
    for (QAction* mark : line_->actions()) {
        line_->removeAction(mark);
    }
}

void DetailField::show(const std::string& text) {
    const QString now = QString::fromStdString(text);
    shown_ = text == "unknown" && box_ != nullptr ? std::string() : text;
    if (line_ == nullptr) {
        box_->setCurrentIndex(std::max(0, box_->findData(QString::fromStdString(shown_))));
        setToolTip(help_of(column_));
        return;
    }
    if (typing_) {
        return;
    }
    clear_marks();
    if (line_->text() != now) {
        line_->setText(now);
        line_->setCursorPosition(0); // the start of a long note is what tells it apart
    }
    const QString help = help_of(column_);
    setToolTip(now.isEmpty() || help.isEmpty() ? now + help : now + '\n' + help);
}

void DetailField::let_change(bool allowed) {
    if (line_ != nullptr) {
        line_->setReadOnly(!allowed); // a long note can still be read, and any text copied
        line_->setPlaceholderText(allowed && column_.name != "notes" ? choice_in_words({}) : QString());
    } else {
        box_->setEnabled(allowed);
    }
}

void DetailField::object(const QString& reason) {
    if (line_ == nullptr) {
        return;
    }
    clear_marks();
    typing_ = true;
    QAction* mark =
        line_->addAction(drawn_icon("warning", palette().color(QPalette::Text)), QLineEdit::TrailingPosition);
    mark->setToolTip(reason);
    setToolTip(reason);
}

void DetailField::typed() {
    typing_ = false;
    if (text() != shown_) {
        emit changed();
    }
}

} // namespace pithward::bench
