#include "app/progress/stage_bars.h"

#include "app/picture/dating/ink.h"
#include "app/progress/progress_words.h"
#include "app/site/year_band.h"

#include <QPainter>
#include <algorithm>

namespace pithward::bench {

namespace {

constexpr int gap = 18;
constexpr int bar_height = 9;

} // namespace

StageBars::StageBars(QWidget* parent)
    : QWidget(parent) {
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    setAccessibleName(tr("How many cores are through each stage"));
}

void StageBars::show_site(const progress::SiteProgress& site) {
    done_.assign(site.done.begin(), site.done.end());
    cores_ = site.cores;
    QStringList words;
    for (const progress::Stage stage : progress::all_stages) {
        words << tr("%1: %2 of %3").arg(title_of(stage)).arg(site.at(stage)).arg(site.cores);
    }
    setAccessibleDescription(words.join(", "));
    setToolTip(words.join('\n'));
    update();
}

QSize StageBars::sizeHint() const {
    return {5 * 170, fontMetrics().height() + bar_height + 8};
}

QSize StageBars::minimumSizeHint() const {
    return {5 * 90, sizeHint().height()};
}

void StageBars::paintEvent(QPaintEvent* /*event*/) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const picture::Inks inks = chart_inks(palette());
    const QColor ink = palette().color(QPalette::WindowText);
    const auto count = static_cast<int>(done_.size());
    const double breadth = (width() - (count - 1.0) * gap) / count;
    for (int i = 0; i < count; ++i) {
        const progress::Stage stage = progress::all_stages[static_cast<std::size_t>(i)];
        const QRectF box(i * (breadth + gap), 0.0, breadth, height());
        painter.setPen(ink);
        painter.drawText(box, Qt::AlignLeft | Qt::AlignTop, title_of(stage));
        painter.drawText(box, Qt::AlignRight | Qt::AlignTop,
                         tr("%1 of %2").arg(done_[static_cast<std::size_t>(i)]).arg(cores_));
        const QRectF frame(box.left() + 0.5, height() - bar_height - 1.5, breadth - 1.0, bar_height);
        const double share = cores_ > 0 ? static_cast<double>(done_[static_cast<std::size_t>(i)]) / cores_ : 0.0;
        painter.setPen(Qt::NoPen);
        painter.setBrush(inks.dark);
        painter.drawRect(QRectF(frame.topLeft(), QSizeF(share * frame.width(), frame.height())));
        painter.setPen(inks.soft);
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(frame);
    }
}

} // namespace pithward::bench
