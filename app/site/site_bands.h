#pragma once

#include "app/site/year_band.h"

#include <memory>

namespace pithward::bench {

struct SiteDating;

/// How each series of the site agrees with the others through time: a row of bars each, in the order of the list, with
/// slips marked. A click on a row chooses its series.
class AgreementBand : public YearBand {
    Q_OBJECT

public:
    using YearBand::YearBand;
    void show(std::shared_ptr<const SiteDating> dating, int chosen);
    /// Where the row of the chosen series is, in pixels.
    [[nodiscard]] QRect chosen_row() const;

signals:
    void line_chosen(int line);

protected:
    void paint_band(QPainter& painter, const picture::YearAxis& axis, const QRectF& place,
                    const picture::Inks& inks) override;
    void clicked(QPointF at, int year) override;
    void changeEvent(QEvent* event) override;

private:
    void fit();

    std::shared_ptr<const SiteDating> dating_;
    int chosen_ = -1;
};

/// The chosen series on the mean of the others, with its slips marked.
class SeriesBand : public YearBand {
    Q_OBJECT

public:
    using YearBand::YearBand;
    void show(std::shared_ptr<const SiteDating> dating, int chosen);
    /// The year that is pointed at with its ring, in words; empty where none is.
    [[nodiscard]] QString pointed_in_words();

protected:
    void paint_band(QPainter& painter, const picture::YearAxis& axis, const QRectF& place,
                    const picture::Inks& inks) override;
    [[nodiscard]] QSize sizeHint() const override;

private:
    std::shared_ptr<const SiteDating> dating_;
    int chosen_ = -1;
};

/// The site chronology with its depth and its signal.
class ChronologyBand : public YearBand {
    Q_OBJECT

public:
    using YearBand::YearBand;
    void show(std::shared_ptr<const SiteDating> dating);

protected:
    void paint_band(QPainter& painter, const picture::YearAxis& axis, const QRectF& place,
                    const picture::Inks& inks) override;
    [[nodiscard]] QSize sizeHint() const override;

private:
    std::shared_ptr<const SiteDating> dating_;
};

} // namespace pithward::bench
