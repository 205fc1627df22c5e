#include "app/bench/panels/scale_dialog.h"

#include "app/bench/look/sentences.h"
#include "app/bench/look/wording.h"
#include "libimaging/calibrate/scale_findings.h"

#include <QDialogButtonBox>
#include <QDoubleSpinBox>
#include <QGridLayout>
#include <QLabel>
#include <QPushButton>

namespace pithward::bench {

namespace {

QString file_in_words(const Scan& header) {
    if (!header.tag_dpi_x) {
        return ScaleDialog::tr("nothing");
    }
    const QString dpi = ScaleDialog::tr("%1 dpi").arg(*header.tag_dpi_x, 0, 'f', 0);
    return believed_calibration(header, std::nullopt)
               ? dpi
               : ScaleDialog::tr("%1, which programs write when they do not know").arg(dpi);
}

} // namespace

ScaleDialog::ScaleDialog(const BenchModel& model, QWidget* parent)
    : QDialog(parent)
    , model_(model)
    , in_use_(new QLabel)
    , file_(new QLabel)
    , said_(new QDoubleSpinBox)
    , ruler_(new QLabel)
    , warning_(new QLabel) {
    setWindowTitle(tr("Scale of the scan"));
    said_->setRange(Calibration::least_dpi, Calibration::greatest_dpi);
    said_->setDecimals(1);
    said_->setValue(1200.0);
    said_->setSuffix(tr(" dpi"));
    said_->setAccessibleName(tr("Resolution that you know of, in dots per inch"));
    warning_->setWordWrap(true);
    warning_->setMinimumWidth(460);
    auto* grid = new QGridLayout(this);
    grid->setHorizontalSpacing(16);
    grid->addWidget(new QLabel(tr("In use")), 0, 0);
    grid->addWidget(in_use_, 0, 1);
    use_file_ = add_source(grid, 1, tr("The file says"), file_);
    use_said_ = add_source(grid, 2, tr("You say"), said_);
    use_ruler_ = add_source(grid, 3, tr("The ruler says"), ruler_);
    grid->addWidget(warning_, 4, 0, 1, 3);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
    look_ = buttons->addButton(tr("Look for a ruler"), QDialogButtonBox::ActionRole);
    draw_ = buttons->addButton(tr("Draw a line along it"), QDialogButtonBox::ActionRole);
    grid->addWidget(buttons, 5, 0, 1, 3);
    grid->setColumnStretch(1, 1);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(look_, &QPushButton::clicked, this, &ScaleDialog::ruler_wanted);
    connect(draw_, &QPushButton::clicked, this, [this] {
        accept();
        emit line_wanted();
    });
    connect(use_file_, &QPushButton::clicked, this, [this] {
        if (const auto by_file = believed_calibration(model_.scan()->opened->header, std::nullopt)) {
            emit chosen(*by_file);
        }
    });
    connect(use_said_, &QPushButton::clicked, this, [this] { emit dpi_said(said_->value()); });
    connect(use_ruler_, &QPushButton::clicked, this, [this] { emit chosen(model_.scan()->ruler->calibration); });
    connect(&model_, &BenchModel::changed, this, &ScaleDialog::refresh);
    refresh();
}

QPushButton* ScaleDialog::add_source(QGridLayout* grid, int row, const QString& name, QWidget* value) {
    auto* use = new QPushButton(tr("Use"));
    use->setAutoDefault(false);
    use->setAccessibleName(tr("Use what %1").arg(name));
    grid->addWidget(new QLabel(name), row, 0);
    grid->addWidget(value, row, 1);
    grid->addWidget(use, row, 2);
    return use;
}

void ScaleDialog::refresh() {
    const BenchScan* scan = model_.scan();
    if (scan == nullptr) {
        reject();
        return;
    }
    in_use_->setText(scan->calibration ? in_full(*scan->calibration) : tr("none yet: widths need one"));
    file_->setText(file_in_words(scan->opened->header));
    const auto by_file = believed_calibration(scan->opened->header, std::nullopt);
    const bool may = !model_.only_seen();
    for (QWidget* part : {static_cast<QWidget*>(said_), static_cast<QWidget*>(use_said_), static_cast<QWidget*>(look_),
                          static_cast<QWidget*>(draw_)}) {
        part->setEnabled(may);
    }
    use_file_->setEnabled(may && by_file && scan->calibration != *by_file);
    const bool read = scan->ruler.has_value();
    use_ruler_->setEnabled(may && read && scan->calibration != scan->ruler->calibration);
    ruler_->setText(
        read ? tr("%1, from %n marks", nullptr, scan->ruler->scale.marks).arg(in_full(scan->ruler->calibration))
             : tr("not read yet"));
    QStringList warnings;
    if (read && scan->ruler->disagreement) {
        warnings << in_window_language(*scan->ruler->disagreement);
    }
    if (by_file && scan->said && differ(*by_file, *scan->said)) {
        warnings << tr("The file and you say different things. A ruler on the scan would tell.");
    }
    warning_->setText(warnings.join('\n'));
    warning_->setVisible(!warnings.isEmpty());
}

} // namespace pithward::bench
