#pragma once

#include "libcore/formats/field_sheet_columns.h"

#include <QStringList>
#include <QWidget>

class QComboBox;
class QLineEdit;

namespace pithward::bench {

/// One column of the field sheet as a field to type or choose in.
class DetailField : public QWidget {
    Q_OBJECT

public:
    explicit DetailField(const formats::SheetColumn& column, QWidget* parent = nullptr);
    ~DetailField() override;

    [[nodiscard]] const formats::SheetColumn& column() const { return column_; }
    /// The text that the sheet would hold.
    [[nodiscard]] std::string text() const;
    /// Shows what is known, unless somebody is typing.
    void show(const std::string& text);
    /// Texts that complete what is typed.
    void propose(const QStringList& texts);
    void let_change(bool allowed);
    /// Leaves what was typed where it is, and says what is wrong with it.
    void object(const QString& reason);

signals:
    /// A person is done with the field and has changed it.
    void changed();
    /// A person has come to the field: it is time to propose.
    void entered();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void clear_marks();
    void typed();

    const formats::SheetColumn& column_;
    QLineEdit* line_ = nullptr;
    QComboBox* box_ = nullptr;
    std::string shown_;
    bool typing_ = false; ///< Somebody is at it, or what they typed could not be taken.
};

} // namespace pithward::bench
