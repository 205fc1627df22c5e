#include "app/project/core_details.h"

#include "app/bench/look/icons.h"
#include "app/bench/look/layout.h"
#include "app/project/detail_field.h"
#include "app/project/detail_words.h"

#include <QFormLayout>
#include <QLabel>
#include <QPushButton>
#include <algorithm>

namespace pithward::bench {

namespace {

using formats::SheetColumn;
using formats::SheetRow;

constexpr std::size_t identifiers = 3; ///< Columns that name a core; they are not changed.

SheetRow row_of(const record::CoreEntry& entry) {
    return {entry.site, entry.tree, entry.core};
}

record::CoreEntry entry_with(record::CoreEntry entry, const SheetRow& row) {
    entry.site = row.site;
    entry.tree = row.tree;
    entry.core = row.core;
    return entry;
}

QString shown_text(const SheetColumn& column, const std::string& text) {
    return column.choices.empty() && !text.empty() ? QString::fromStdString(text) : choice_in_words(text);
}

QLabel* part_heading(const QString& text) {
    auto* label = new QLabel(text);
    label->setContentsMargins(0, 6, 0, 0);
    QFont font = label->font();
    font.setItalic(true);
    label->setFont(font);
    return label;
}

} // namespace

CoreDetails::CoreDetails(ProjectDesk& desk, const BenchModel& model, QWidget* parent)
    : QWidget(parent)
    , desk_(desk)
    , model_(model)
    , whose_(new QLabel)
    , others_(new QLabel)
    , back_(new QPushButton(tr("Take back"))) {
    auto* form = new QFormLayout(this);
    form->setContentsMargins(12, 4, 12, 8);
    form->setVerticalSpacing(4);
    form->setLabelAlignment(Qt::AlignLeft);
    form->setFieldGrowthPolicy(QFormLayout::ExpandingFieldsGrow);
    for (QLabel* label : {whose_, others_}) {
        label->setWordWrap(true);
        label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    }
    form->addRow(whose_);
    const std::pair<SheetColumn::Owner, QString> parts[] = {{SheetColumn::Owner::Core, tr("This core")},
                                                            {SheetColumn::Owner::Tree, tr("Its tree")},
                                                            {SheetColumn::Owner::Site, tr("The site")}};
    for (const auto& [owner, title] : parts) {
        form->addRow(part_heading(title));
        for (const SheetColumn& column : formats::sheet_columns().subspan(identifiers)) {
            if (column.owner == owner) {
                auto* field = new DetailField(column);
                fields_.push_back(field);
                form->addRow(name_of(column), field);
                connect(field, &DetailField::changed, this, [this, field] { take(*field); });
                connect(field, &DetailField::entered, this, [this, field] { propose(*field); });
            }
        }
    }
    form->addRow(others_);
    form->addRow(back_);
    connect(back_, &QPushButton::clicked, this, &CoreDetails::take_back);
    connect(&desk_, &ProjectDesk::opened, this, [this] { changes_.clear(); });
    connect(&desk_, &ProjectDesk::overview_changed, this, &CoreDetails::refresh);
    connect(&model_, &BenchModel::changed, this, &CoreDetails::refresh);
    refresh();
}

void CoreDetails::take_focus() {
    fields_.front()->setFocus(Qt::ShortcutFocusReason);
}

void CoreDetails::take_focus(const std::string& column) {
    const auto field =
        std::ranges::find_if(fields_, [&](const DetailField* one) { return column == one->column().name; });
    (field != fields_.end() ? *field : fields_.front())->setFocus(Qt::ShortcutFocusReason);
}

const record::CoreEntry* CoreDetails::present() const {
    const auto core = desk_.present();
    return core ? core_of(desk_.overview(), *core) : nullptr;
}

bool CoreDetails::has_details() const {
    const BenchScan* scan = model_.home();
    return present() != nullptr || (scan != nullptr && scan->opened->field);
}

void CoreDetails::refresh() {
    const record::CoreEntry* entry = present();
    const BenchScan* scan = model_.home();
    const auto* field = scan != nullptr && scan->opened->field ? &*scan->opened->field : nullptr;
    const bool can_change = entry != nullptr && desk_.overview().can_change;
    back_->setVisible(can_change && !changes_.empty());
    if (!changes_.empty()) {
        back_->setText(tr("Take back: %1").arg(changes_.back().what));
        back_->setToolTip(back_->text());
    }
    if (entry != nullptr) {
        whose_->setText(tr("%1, tree %2, %3")
                            .arg(QString::fromStdString(entry->core.id), QString::fromStdString(entry->tree.id),
                                 QString::fromStdString(entry->site.id)));
        show_values(row_of(*entry), can_change);
    } else if (field != nullptr) {
        whose_->setText(tr("%1, tree %2, %3. From %4; a project lets you change it.")
                            .arg(QString::fromStdString(field->core.id), QString::fromStdString(field->tree.id),
                                 QString::fromStdString(field->site.id), QString::fromStdString(field->sheet)));
        show_values({field->site, field->tree, field->core}, false);
    } else {
        whose_->setText(tr("No field sheet tells of this scan."));
        show_values({}, false);
    }
}

void CoreDetails::show_values(const SheetRow& row, bool can_change) {
    const auto core = desk_.present();
    const bool read = core && std::ranges::any_of(desk_.overview().readings, [&](const record::ReadingEntry& reading) {
                          return reading.core == *core;
                      });
    for (DetailField* field : fields_) {
        const SheetColumn& column = field->column();
        field->let_change(can_change && !(column.name == "scan" && read));
        field->show(column.get(row));
    }
    show_others(row.core);
}

void CoreDetails::show_others(const Core& core) {
    QStringList lines;
    for (const auto& [name, text] : core.others) {
        lines << tr("%1: %2").arg(QString::fromStdString(name), QString::fromStdString(text));
    }
    others_->setTextFormat(Qt::PlainText);
    others_->setText(lines.join('\n'));
    others_->setVisible(!lines.isEmpty());
    others_->setToolTip(tr("Other columns of the field sheet"));
}

void CoreDetails::propose(DetailField& field) const {
    QStringList texts;
    for (const record::CoreEntry& entry : desk_.overview().cores) {
        texts << QString::fromStdString(field.column().get(row_of(entry)));
    }
    texts.removeAll(QString());
    texts.removeDuplicates();
    texts.sort();
    field.propose(texts);
}

void CoreDetails::take(DetailField& field) {
    const record::CoreEntry* entry = present();
    if (entry == nullptr) {
        return;
    }
    const SheetColumn& column = field.column();
    const std::string before = column.get(row_of(*entry));
    const auto row = formats::with_text(row_of(*entry), column, field.text());
    if (!row) {
        field.object(QString::fromStdString(row.error().line()));
        emit told(QString::fromStdString(row.error().line()));
        return;
    }
    const std::string after = column.get(*row);
    if (after == before) {
        field.show(after);
        return;
    }
    const QString what = tr("%1 of %2 from %3 to %4")
                             .arg(name_of(column), QString::fromStdString(entry->core.id), shown_text(column, before),
                                  shown_text(column, after));
    change({*entry, entry_with(*entry, *row), what}, tr("Change %1").arg(what),
           [this](Change&& made) { changes_.push_back(std::move(made)); });
}

void CoreDetails::take_back() {
    const Change last = std::move(changes_.back());
    changes_.pop_back();
    change({last.after, last.before, last.what}, tr("Take back: %1").arg(last.what), {});
}

void CoreDetails::change(Change wish, const QString& label, std::function<void(Change&&)> made) {
    back_->setEnabled(false); // one after the other
    desk_.change_details(wish.before, wish.after, label, [this, wish, made = std::move(made)](bool done) mutable {
        back_->setEnabled(true);
        if (done && made) {
            made(std::move(wish));
        }
        refresh();
    });
}

} // namespace pithward::bench
