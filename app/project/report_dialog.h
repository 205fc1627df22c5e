#pragma once

#include <QDialog>
#include <QString>
#include <QStringList>

class QLabel;
class QLineEdit;
class QPushButton;

namespace pithward::bench {

/// Asks for what a report needs beside the project: the file to write, and where there is one a climate series and the
/// years that trees took to grow up to the height of coring.
class ReportDialog : public QDialog {
    Q_OBJECT

public:
    /// `project`: its file; the report is proposed beside it.
    explicit ReportDialog(const QString& project, QWidget* parent = nullptr);

    [[nodiscard]] QLineEdit& file() { return *file_; }
    [[nodiscard]] QLineEdit& climate() { return *climate_; }
    [[nodiscard]] QLineEdit& years() { return *years_; }
    [[nodiscard]] QLineEdit& years_sd() { return *years_sd_; }
    [[nodiscard]] QPushButton& write() { return *write_; }

signals:
    /// `more`: options of `pithward report`.
    void said(const QString& file, const QStringList& more);

private:
    void check();
    [[nodiscard]] QStringList more() const;

    QLineEdit* file_;
    QLineEdit* climate_;
    QLineEdit* years_;
    QLineEdit* years_sd_;
    QLabel* remark_;
    QPushButton* write_ = nullptr;
};

} // namespace pithward::bench
