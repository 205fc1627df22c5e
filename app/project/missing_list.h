#pragma once

#include <QDialog>
#include <QString>
#include <QStringList>
#include <vector>

class QPushButton;
class QTreeWidget;

namespace pithward::bench {

/// Something that an archive package lacks.
struct MissingThing {
    bool needed = false; ///< Published studies have it throughout.
    QString what;
    QString remedy;
    QString core;   ///< That it is about; empty where it is about none.
    QString column; ///< Of the field sheet, that mends it; empty where none does.
};

/// From a line of `pithward package`, without "missing, " at its beginning: "needed: WHAT; REMEDY".
[[nodiscard]] MissingThing missing_thing(const QString& line);

/// What an archive package lacks, as a list: what is needed first, and the way to where each is filled in.
class MissingList : public QDialog {
    Q_OBJECT

public:
    MissingList(const QStringList& lines, QWidget* parent = nullptr);

    [[nodiscard]] QTreeWidget& list() { return *list_; }
    [[nodiscard]] QPushButton& there() { return *there_; }

signals:
    /// A column of the field sheet is to be filled in, or a core to be looked at; either may be empty.
    void wanted(const QString& core, const QString& column);

private:
    void follow();
    void go();
    void copy() const;

    std::vector<MissingThing> things_;
    QTreeWidget* list_;
    QPushButton* there_;
};

} // namespace pithward::bench
