#pragma once

#include <QDialog>
#include <QString>

class QLineEdit;
class QPushButton;

namespace pithward::bench {

/// Asks what a new project is made of: a field sheet, the folder of its scans, and the name of its file.
class NewProjectDialog : public QDialog {
    Q_OBJECT

public:
    explicit NewProjectDialog(QWidget* parent = nullptr);

    [[nodiscard]] QLineEdit& sheet() { return *sheet_; }
    [[nodiscard]] QLineEdit& scans() { return *scans_; }
    [[nodiscard]] QLineEdit& project() { return *project_; }

signals:
    void said(const QString& sheet, const QString& scans, const QString& project);

private:
    /// A sheet proposes the folder that it lies in, and a name beside it.
    void follow_sheet();
    void check();

    QLineEdit* sheet_;
    QLineEdit* scans_;
    QLineEdit* project_;
    QPushButton* make_ = nullptr;
};

} // namespace pithward::bench
