#pragma once

#include "app/bench/model/opened_scan.h"

#include <QImage>
#include <QObject>
#include <QThreadPool>
#include <memory>
#include <stop_token>

namespace pithward::bench {

/// The whole of a scan at a coarse level, which fills while the file is read.
class CoarsePicture : public QObject {
    Q_OBJECT

public:
    explicit CoarsePicture(QObject* parent = nullptr);
    ~CoarsePicture() override;

    /// Turns to another scan, or to none (null), averaged over squares of `reduction` pixels.
    void show(const std::shared_ptr<const OpenedScan>& scan, int reduction);

    /// What has come so far; null before the first part. What has not come is transparent.
    [[nodiscard]] const QImage& picture() const { return picture_; }
    [[nodiscard]] bool complete() const { return complete_; }

signals:
    void grown();
    /// Said once for each scan.
    void failed(const QString& message);

private:
    void take(int generation, int first_row, const QImage& rows);
    void end(int generation, const Outcome<void>& done);

    QThreadPool pool_;
    std::stop_source stop_;
    QImage picture_;
    int generation_ = 0;
    bool complete_ = false;
};

} // namespace pithward::bench
