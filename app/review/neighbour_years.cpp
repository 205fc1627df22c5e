#include "app/review/neighbour_years.h"

#include <QLocale>
#include <QPainter>
#include <algorithm>
#include <cmath>

namespace pithward::bench {

namespace {

constexpr int years_beside = 8; ///< On either side of the ring in question.
constexpr double name_room = 78.0;
constexpr double year_room = 20.0;
constexpr double row_height = 50.0;

QString short_width(const Ring& ring) {
    if (ring.absent) {
        return "0";
    }
    return ring.width ? QLocale().toString(ring.width->value(), 'f', 2) : QString("–");
}

QString heading_of(const Ring& ring) {
    return ring.year ? QString::number(ring.year->value()) : QString("#%1").arg(ring.number);
}

} // namespace

NeighbourYears::NeighbourYears(QWidget* parent)
    : QWidget(parent) {
    setAccessibleName(tr("Widths of the neighbouring years"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void NeighbourYears::show_about(const QString& name, const picture::MeasuredCore& core, int number,
                                const std::vector<std::pair<QString, const RingSeries*>>& others) {
    rows_.assign(1, {name, {}});
    number_ = number;
    for (const Ring& ring : core.series.rings) {
        if (std::abs(ring.number - number) <= years_beside) {
            rows_.front().rings.push_back(ring);
        }
    }
    const auto& shown = rows_.front().rings;
    for (const auto& [other, rings_of] : others) {
        Row row{other, {}};
        for (const Ring& ring : rings_of->rings) {
            const bool of_these_years =
                ring.year && std::ranges::any_of(shown, [&](const Ring& one) { return one.year == ring.year; });
            if (of_these_years) {
                row.rings.push_back(ring);
            }
        }
        if (!row.rings.empty()) {
            rows_.push_back(std::move(row));
        }
    }
    setAccessibleDescription(in_words());
    updateGeometry();
    update();
}

void NeighbourYears::show_nothing() {
    rows_.clear();
    updateGeometry();
    update();
}

QString NeighbourYears::in_words() const {
    QStringList lines;
    for (const Row& row : rows_) {
        QStringList widths;
        for (const Ring& ring : row.rings) {
            widths << QString("%1: %2").arg(heading_of(ring), short_width(ring));
        }
        lines << QString("%1: %2").arg(row.name, widths.join(", "));
    }
    return lines.join('\n');
}

QSize NeighbourYears::sizeHint() const {
    return {600, qRound(year_room + row_height * static_cast<double>(std::max<std::size_t>(1, rows_.size())))};
}

double NeighbourYears::column_breadth() const {
    return std::min(64.0, (width() - name_room) / (2.0 * years_beside + 1.0));
}

std::optional<double> NeighbourYears::column_of(const Ring& ring) const {
    const auto& shown = rows_.front().rings;
    const auto same = std::ranges::find_if(
        shown, [&](const Ring& one) { return ring.year ? one.year == ring.year : one.number == ring.number; });
    return same == shown.end()
               ? std::nullopt
               : std::optional(name_room + column_breadth() * static_cast<double>(same - shown.begin()));
}

void NeighbourYears::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.fillRect(rect(), palette().color(QPalette::Base));
    if (rows_.empty()) {
        return;
    }
    painter.setPen(palette().color(QPalette::Text));
    for (const Ring& ring : rows_.front().rings) {
        const double left = *column_of(ring);
        const bool asked = ring.number == number_;
        QFont lettering = font();
        lettering.setBold(asked);
        painter.setFont(lettering);
        painter.drawText(QRectF(left, 0.0, column_breadth(), year_room), Qt::AlignCenter, heading_of(ring));
        if (asked) {
            painter.drawRect(QRectF(left + 0.5, 0.5, column_breadth() - 1.0, height() - 1.0));
        }
    }
    painter.setFont(font());
    for (std::size_t i = 0; i < rows_.size(); ++i) {
        paint_row(painter, rows_[i], i == 0, year_room + row_height * static_cast<double>(i), row_height);
    }
}

void NeighbourYears::paint_row(QPainter& painter, const Row& row, bool present, double top, double height) const {
    const QColor ink = palette().color(QPalette::Text);
    const double letters = painter.fontMetrics().height();
    painter.setPen(ink);
    painter.drawText(QRectF(6.0, top, name_room - 10.0, height), Qt::AlignVCenter | Qt::AlignLeft,
                     painter.fontMetrics().elidedText(row.name, Qt::ElideRight, qRound(name_room - 10.0)));
    double widest = 0.0;
    for (const Ring& ring : row.rings) {
        widest = std::max(widest, ring.width ? ring.width->value() : 0.0);
    }
    for (const Ring& ring : row.rings) {
        const auto left = column_of(ring);
        if (!left) {
            continue;
        }
        const double room = height - letters - 10.0;
        const double bar = ring.width && widest > 0.0 ? room * ring.width->value() / widest : 0.0;
        const QRectF box(*left + 0.25 * column_breadth(), top + height - letters - bar, 0.5 * column_breadth(), bar);
        painter.setPen(QPen(present ? palette().color(QPalette::Link) : ink, 1.0));
        painter.setBrush(present ? QBrush(palette().color(QPalette::Link)) : QBrush(Qt::NoBrush));
        if (bar > 0.0) {
            painter.drawRect(box);
        }
        painter.setPen(ink);
        painter.drawText(QRectF(*left, top + height - letters, column_breadth(), letters), Qt::AlignCenter,
                         short_width(ring));
    }
    painter.setBrush(Qt::NoBrush);
}

} // namespace pithward::bench
