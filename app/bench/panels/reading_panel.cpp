#include "app/bench/panels/reading_panel.h"

#include "app/bench/look/sentences.h"
#include "app/bench/look/wording.h"
#include "libcore/measure/series_summary.h"
#include "libcore/review/standing.h"

#include <QComboBox>
#include <QFormLayout>
#include <QIntValidator>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>

namespace pithward::bench {

namespace {

QLabel* fact_label() {
    auto* label = new QLabel;
    label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    label->setWordWrap(true);
    return label;
}

QString span_of(const RingSeries& series) {
    const auto& rings = series.rings;
    return !rings.empty() && rings.front().year && rings.back().year
               ? QString("%1 – %2").arg(rings.back().year->value()).arg(rings.front().year->value())
               : QString();
}

} // namespace

ReadingPanel::ReadingPanel(const BenchModel& model, QWidget* parent)
    : QWidget(parent)
    , model_(model)
    , year_(new QLineEdit)
    , wood_(new QComboBox)
    , outer_(new QComboBox)
    , rings_(fact_label())
    , length_(fact_label())
    , mean_(fact_label())
    , scale_(fact_label())
    , bark_(fact_label())
    , field_(fact_label())
    , review_(fact_label()) {
    year_->setValidator(new QIntValidator(-99999, 99999, this));
    year_->setPlaceholderText(tr("not known"));
    year_->setToolTip(tr("Year in which the outermost measured ring began to grow; empty when not known (Y)"));
    for (const WoodType wood : all_wood_types) {
        wood_->addItem(name_of(wood), QVariant::fromValue(static_cast<int>(wood)));
    }
    wood_->setToolTip(tr("Choosing another type reads the core again"));
    for (const OuterWood outer : {OuterWood::Unknown, OuterWood::Complete, OuterWood::Unfinished, OuterWood::Lost}) {
        outer_->addItem(name_of(outer), QVariant::fromValue(static_cast<int>(outer)));
    }
    outer_->setToolTip(tr("What the wood under the bark is; choosing reads the core again"));

    auto* form = new QFormLayout(this);
    form->setContentsMargins(12, 4, 12, 8);
    form->setVerticalSpacing(4);
    setMinimumWidth(230);
    QSizePolicy as_high_as_its_lines(QSizePolicy::Preferred, QSizePolicy::Maximum);
    as_high_as_its_lines.setHeightForWidth(true);
    setSizePolicy(as_high_as_its_lines);
    form->setLabelAlignment(Qt::AlignLeft | Qt::AlignTop);
    form->addRow(tr("&Year of ring 1"), year_);
    form->addRow(tr("&Wood"), wood_);
    form->addRow(tr("&Under the bark"), outer_);
    form->addRow(tr("Rings"), rings_);
    form->addRow(tr("Length"), length_);
    form->addRow(tr("Mean width"), mean_);
    form->addRow(tr("Scale"), scale_);
    form->addRow(tr("Bark end"), bark_);
    form->addRow(tr("Field sheet"), field_);
    form->addRow(tr("Review"), review_);

    connect(year_, &QLineEdit::editingFinished, this, &ReadingPanel::take_year);
    connect(year_, &QLineEdit::returnPressed, this, &ReadingPanel::year_done);
    connect(wood_, &QComboBox::activated, this,
            [this] { emit wood_chosen(static_cast<WoodType>(wood_->currentData().toInt())); });
    connect(outer_, &QComboBox::activated, this,
            [this] { emit outer_chosen(static_cast<OuterWood>(outer_->currentData().toInt())); });
    connect(&model_, &BenchModel::changed, this, &ReadingPanel::refresh);
    refresh();
}

void ReadingPanel::focus_year() {
    year_->setFocus(Qt::ShortcutFocusReason);
    year_->selectAll();
}

void ReadingPanel::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape && year_->hasFocus()) {
        show_year();
        emit year_done();
        return;
    }
    QWidget::keyPressEvent(event);
}

void ReadingPanel::show_year() {
    const picture::MeasuredCore* core = model_.core();
    year_->setText(core != nullptr && core->reading.last_year ? QString::number(core->reading.last_year->value())
                                                              : QString());
}

void ReadingPanel::take_year() {
    const QString text = year_->text().trimmed();
    emit year_set(text.isEmpty() ? std::nullopt : std::optional(Year(text.toInt())));
}

void ReadingPanel::refresh() {
    const BenchScan* scan = model_.scan();
    const picture::MeasuredCore* core = model_.core();
    setEnabled(core != nullptr);
    for (QWidget* field : {static_cast<QWidget*>(year_), static_cast<QWidget*>(wood_), static_cast<QWidget*>(outer_)}) {
        field->setEnabled(!model_.only_seen());
    }
    scale_->setText(scan != nullptr && scan->calibration ? in_full(*scan->calibration) : QString());
    scale_->setToolTip(tr("Shift+D tells who says what of the scale"));
    const BenchScan* home = model_.home();
    const auto* field = home != nullptr && home->opened->field ? &*home->opened->field : nullptr;
    field_->setText(field != nullptr ? in_words(field->tree, field->core) : tr("none beside the scan"));
    field_->setToolTip(field != nullptr ? tr("%1\nFrom %2")
                                              .arg(in_full(field->site, field->tree, field->core),
                                                   QString::fromStdString(field->sheet))
                                        : QString());
    const bool recorded = core != nullptr && model_.home()->recorded;
    const review::Standing standing =
        recorded ? review::standing(core->reading, model_.document()->log()) : review::Standing{};
    review_->setText(recorded ? in_window_language(review::told_people(standing)) : tr("only in a project"));
    review_->setToolTip(recorded ? in_window_language(review::told_counts(standing)) : QString());
    if (core == nullptr) {
        for (QLabel* label : {rings_, length_, mean_, bark_}) {
            label->clear();
        }
        year_->clear();
        return;
    }
    const SeriesSummary summary = summary_of(core->series);
    const QString span = span_of(core->series);
    QString rings = QString::number(summary.rings);
    if (!span.isEmpty()) {
        rings = tr("%1, %2").arg(rings, span);
    }
    if (summary.absent > 0) {
        rings += tr(", %n locally absent", nullptr, summary.absent);
    }
    rings_->setText(rings);
    length_->setText(in_words(summary.length, 2));
    mean_->setText(summary.mean ? in_words(*summary.mean) : QString());
    bark_->setText(in_words(core->reading.bark_end));
    if (!year_->hasFocus()) {
        show_year();
    }
    wood_->setCurrentIndex(wood_->findData(static_cast<int>(core->reading.wood)));
    outer_->setCurrentIndex(outer_->findData(static_cast<int>(core->reading.outer)));
}

} // namespace pithward::bench
