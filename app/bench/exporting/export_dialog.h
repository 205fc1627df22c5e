#pragma once

#include "app/bench/exporting/exports.h"

#include <QDialog>
#include <QThreadPool>
#include <stop_token>

class QComboBox;
class QLabel;
class QLineEdit;
class QPlainTextEdit;
class QPushButton;
class QStackedWidget;

namespace pithward::bench {

/// Shows what an export will write before it is written, and asks for its form and its place. What is shown is what is
/// written. It stays open where writing fails, so that nothing is lost and another place can be given.
class ExportDialog : public QDialog {
    Q_OBJECT

public:
    ExportDialog(ExportInput input, const ExportFormat& first, QWidget* parent = nullptr);
    ~ExportDialog() override;

    [[nodiscard]] bool ready() const { return made_.has_value(); }
    [[nodiscard]] QString preview_text() const;
    [[nodiscard]] QString said() const;
    void set_path(const QString& path);
    void save();

signals:
    void written(const QString& path);

private:
    void build();
    void prepare();
    void show_made(const Outcome<ExportBytes>& made);
    void ask_for_path();
    void follow_path();
    [[nodiscard]] const ExportFormat& format() const;

    ExportInput input_;
    QComboBox* form_;
    QLineEdit* path_;
    QPlainTextEdit* text_;
    QLabel* picture_;
    QStackedWidget* preview_;
    QLabel* said_;
    QPushButton* save_ = nullptr;
    std::optional<ExportBytes> made_;
    std::stop_source stop_;
    QThreadPool pool_;
};

} // namespace pithward::bench
