#include "app/bench/lanes/series_plot.h"

#include "app/bench/look/wording.h"
#include "app/picture/ring_places.h"
#include "libcore/measure/mean_widths.h"

#include <qcustomplot.h>

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <optional>
#include <set>
#include <string>

namespace pithward::bench {

SeriesPlot::SeriesPlot(const BenchModel& model, QWidget* parent)
    : QWidget(parent)
    , model_(model)
    , plot_(new QCustomPlot(this)) {
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("Ring widths"));
    setAccessibleDescription(tr("The ring widths by year; arrow keys go from ring to ring"));
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(1, 1, 1, 1);
    layout->addWidget(plot_);
    plot_->setFocusProxy(this);
    setMinimumWidth(320);
    plot_->setMouseTracking(true);
    plot_->installEventFilter(this);
    plot_->setNoAntialiasingOnDrag(true);

    mean_ = plot_->addGraph();
    mean_->setLayer("grid"); // behind the core that is worked on
    widths_ = plot_->addGraph();
    widths_->setScatterStyle(QCPScatterStyle(QCPScatterStyle::ssNone));
    absent_ = plot_->addGraph();
    absent_->setLineStyle(QCPGraph::lsNone);
    absent_->setScatterStyle(QCPScatterStyle(QCPScatterStyle::ssCross, 8));
    cursor_ = new QCPItemStraightLine(plot_);
    readout_ = new QCPItemText(plot_);
    readout_->position->setTypeX(QCPItemPosition::ptPlotCoords);
    readout_->position->setTypeY(QCPItemPosition::ptAxisRectRatio);
    readout_->setPadding({4, 1, 4, 1});
    readout_->setClipToAxisRect(false);

    plot_->xAxis->setNumberPrecision(0);
    plot_->xAxis->setNumberFormat("f");
    plot_->yAxis->setLabel(tr("Ring width, mm"));
    plot_->axisRect()->setAutoMargins(QCP::msLeft | QCP::msBottom);
    plot_->axisRect()->setMargins({0, 24, 14, 0});
    plot_->setInteractions(QCP::iRangeDrag | QCP::iRangeZoom);
    plot_->axisRect()->setRangeDrag(Qt::Horizontal);
    plot_->axisRect()->setRangeZoom(Qt::Horizontal);
    connect(&model_, &BenchModel::changed, this, &SeriesPlot::refill);
    recolour();
    refill();
}

double SeriesPlot::key_of(const Ring& ring) const {
    return dated_ && ring.year ? ring.year->value() : ring.number;
}

void SeriesPlot::refill() {
    const picture::MeasuredCore* core = model_.core();
    QVector<double> keys;
    QVector<double> values;
    QVector<double> absent;
    double highest = 0.0;
    dated_ = core != nullptr && !core->series.rings.empty() && core->series.rings.front().year.has_value();
    if (core != nullptr) {
        for (const Ring& ring : core->series.rings) {
            keys << key_of(ring);
            values << (ring.width ? ring.width->value() : std::numeric_limits<double>::quiet_NaN());
            highest = std::max(highest, ring.width ? ring.width->value() : 0.0);
            if (ring.absent) {
                absent << key_of(ring);
            }
        }
    }
    refill_others();
    widths_->setData(keys, values);
    absent_->setData(absent, QVector<double>(absent.size(), 0.0));
    plot_->xAxis->setLabel(key_words());
    plot_->xAxis->setRangeReversed(!dated_);
    if (!keys.isEmpty()) {
        const auto [low, high] = std::minmax_element(keys.begin(), keys.end());
        plot_->xAxis->setRange(*low - 0.6, *high + 0.6);
    }
    plot_->yAxis->setRange(0.0, highest > 0.0 ? highest * 1.08 : 1.0); // room over the highest, for the eye only
    const bool empty = keys.isEmpty();
    plot_->xAxis->setVisible(!empty);
    plot_->yAxis->setVisible(!empty);
    plot_->xAxis->grid()->setVisible(!empty);
    plot_->yAxis->grid()->setVisible(!empty);
    picked_ = 0;
    pick_ring(0);
    plot_->replot(QCustomPlot::rpQueuedReplot);
}

QString SeriesPlot::key_words() const {
    if (!dated_) {
        return tr("Ring, counted from the bark");
    }
    if (from_project_) {
        return others_.empty() ? (shows_mean() ? tr("Year; dashed: the site's mean") : tr("Year"))
               : shows_mean()  ? tr("Year; thin: the tree's other cores; dashed: the site's mean")
                               : tr("Year; thin: the tree's other cores");
    }
    return others_.empty() ? tr("Year")
           : shows_mean()  ? tr("Year; thin lines: the other cores on the bench; dashed: their mean")
                           : tr("Year; thin lines: the other cores on the bench");
}

void SeriesPlot::show_kept(std::vector<KeptSeries> kept) {
    kept_ = std::move(kept);
    refill();
}

Companions SeriesPlot::on_the_bench() const {
    Companions found;
    std::set<std::string> taken{model_.core()->reading.core}; // one reading of each core for the mean
    for (const BenchScan& scan : model_.scans()) {
        for (const picture::MeasuredCore& core : scan.cores) {
            const bool dated = !core.series.rings.empty() && core.series.rings.front().year.has_value();
            if (!dated || &core == model_.core() || model_.taken_in(core.reading)) {
                continue;
            }
            found.drawn.push_back(&core.series);
            if (core.reading.core.empty() || taken.insert(core.reading.core).second) {
                found.mean.push_back(&core.series);
            }
        }
    }
    return found;
}

void SeriesPlot::refill_others() {
    for (QCPGraph* graph : others_) {
        plot_->removeGraph(graph);
    }
    others_.clear();
    Companions beside;
    const picture::MeasuredCore* core = model_.core();
    const KeptSeries* present = core != nullptr ? kept_of(kept_, core->reading.id, core->reading.core) : nullptr;
    from_project_ = present != nullptr && model_.home() != nullptr && model_.home()->recorded;
    if (dated_) {
        beside = from_project_ ? companions(kept_, *present) : on_the_bench();
    }
    for (const RingSeries* series : beside.drawn) {
        QCPGraph* graph = plot_->addGraph();
        for (const Ring& ring : series->rings) {
            graph->addData(key_of(ring), ring.width ? ring.width->value() : std::numeric_limits<double>::quiet_NaN());
        }
        graph->setLayer("grid"); // behind the core that is worked on
        others_.push_back(graph);
    }
    refill_mean(beside.mean);
    recolour();
}

void SeriesPlot::refill_mean(const std::vector<const RingSeries*>& others) {
    constexpr int least = 3; // fewer say little of a site, and their lines are seen by themselves
    const std::map<Year, Millimetres> means = mean_widths(others, least);
    mean_->setData({}, {});
    std::optional<Year> before;
    for (const auto& [year, width] : means) {
        if (before && year - *before > 1) {
            mean_->addData(before->value() + 1, std::numeric_limits<double>::quiet_NaN()); // no line over a gap
        }
        mean_->addData(year.value(), width.value());
        before = year;
    }
}

bool SeriesPlot::shows_mean() const {
    return mean_->dataCount() > 0;
}

void SeriesPlot::pick_ring(int number) {
    const picture::MeasuredCore* core = model_.core();
    const Ring* ring = core != nullptr ? picture::ring_of(core->series, number) : nullptr;
    picked_ = ring != nullptr ? number : 0;
    cursor_->setVisible(ring != nullptr);
    readout_->setVisible(ring != nullptr);
    if (ring != nullptr) {
        const double key = key_of(*ring);
        cursor_->point1->setCoords(key, 0.0);
        cursor_->point2->setCoords(key, 1.0);
        readout_->setText(ring_in_short(*ring));
        readout_->position->setCoords(key, 0.0);
        const double share = plot_->xAxis->coordToPixel(key) - plot_->axisRect()->left();
        const bool left_half = share < 0.5 * plot_->axisRect()->width();
        readout_->setPositionAlignment((left_half ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignBottom);
    }
    plot_->replot(QCustomPlot::rpQueuedReplot);
}

int SeriesPlot::ring_at(QPointF at) const {
    const picture::MeasuredCore* core = model_.core();
    if (core == nullptr || !plot_->axisRect()->rect().contains(at.toPoint())) {
        return 0;
    }
    const double key = std::round(plot_->xAxis->pixelToCoord(at.x()));
    const auto& rings = core->series.rings;
    const auto ring = std::ranges::find_if(rings, [&](const Ring& one) { return key_of(one) == key; });
    return ring == rings.end() ? 0 : ring->number;
}

bool SeriesPlot::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::MouseMove) {
        const int ring = ring_at(static_cast<QMouseEvent*>(event)->position());
        if (ring != picked_) {
            pick_ring(ring);
            emit ring_pointed(ring);
        }
    } else if (event->type() == QEvent::Leave) {
        pick_ring(0);
        emit ring_pointed(0);
    } else if (event->type() == QEvent::MouseButtonPress) {
        setFocus();
        if (const int ring = ring_at(static_cast<QMouseEvent*>(event)->position()); ring != 0) {
            emit ring_chosen(ring);
        }
    }
    return QWidget::eventFilter(watched, event);
}

void SeriesPlot::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
    case Qt::Key_Left:
        return step_ring(1); // older
    case Qt::Key_Right:
        return step_ring(-1);
    default:
        QWidget::keyPressEvent(event);
    }
}

void SeriesPlot::step_ring(int by) {
    const picture::MeasuredCore* core = model_.core();
    if (core == nullptr || core->series.rings.empty()) {
        return;
    }
    const int last = core->series.rings.back().number;
    pick_ring(picked_ == 0 ? 1 : std::clamp(picked_ + by, 1, last));
    emit ring_chosen(picked_);
}

void SeriesPlot::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setPen(palette().color(hasFocus() ? QPalette::Link : QPalette::Base));
    painter.drawRect(rect().adjusted(0, 0, -1, -1));
}

void SeriesPlot::changeEvent(QEvent* event) {
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) {
        recolour();
    }
    QWidget::changeEvent(event);
}

void SeriesPlot::recolour() {
    const QColor ink = palette().color(QPalette::Text);
    const QColor ground = palette().color(QPalette::Base);
    QColor faint = ink;
    faint.setAlphaF(0.14F);
    QColor axis = ink;
    axis.setAlphaF(0.6F);
    plot_->setBackground(ground);
    for (QCPAxis* each : {plot_->xAxis, plot_->yAxis}) {
        each->setBasePen(QPen(axis));
        each->setTickPen(QPen(axis));
        each->setSubTickPen(Qt::NoPen);
        each->setTickLabelColor(ink);
        each->setLabelColor(ink);
        each->setTickLabelFont(font());
        each->setLabelFont(font());
        each->grid()->setPen(QPen(faint));
        each->grid()->setZeroLinePen(QPen(faint));
    }
    widths_->setPen(QPen(palette().color(QPalette::Link), 1.5));
    absent_->setPen(QPen(ink, 1.5));
    QColor thin = ink;
    thin.setAlphaF(0.4F);
    for (QCPGraph* graph : others_) {
        graph->setPen(QPen(thin, 1.0));
    }
    QColor middle = ink;
    middle.setAlphaF(0.75F);
    mean_->setPen(QPen(middle, 1.5, Qt::DashLine));
    cursor_->setPen(QPen(ink, 1.0));
    readout_->setColor(ink);
    readout_->setFont(font());
    plot_->replot(QCustomPlot::rpQueuedReplot);
}

} // namespace pithward::bench
