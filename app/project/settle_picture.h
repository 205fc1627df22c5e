#pragma once

#include "libcore/specimen/units.h"

#include <QImage>
#include <QString>
#include <QWidget>
#include <optional>
#include <vector>

namespace pithward::bench {

/// A scan as a picture as large as there is room, with names at places on it. A click on it chooses a place.
class SettlePicture : public QWidget {
    Q_OBJECT

public:
    /// A place on the scan, in its pixels, and what is written there.
    struct Mark {
        ImagePoint at;
        QString words;
    };

    explicit SettlePicture(QWidget* parent = nullptr);

    /// `reduction`: pixels of the scan along one of the picture.
    void show_picture(const QImage& picture, int reduction);
    /// No picture: says why.
    void say(const QString& words);
    void show_marks(std::vector<Mark> marks);
    void choose(const std::optional<ImagePoint>& place);

signals:
    void chosen(pithward::ImagePoint place);

protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;

private:
    [[nodiscard]] QRectF frame() const;
    [[nodiscard]] QPointF on_widget(ImagePoint at) const;

    QImage picture_;
    int reduction_ = 1;
    QString words_;
    std::vector<Mark> marks_;
    std::optional<ImagePoint> place_;
};

} // namespace pithward::bench
