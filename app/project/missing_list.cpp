#include "app/project/missing_list.h"

#include "app/bench/look/sentences.h"

#include <QClipboard>
#include <QDialogButtonBox>
#include <QGuiApplication>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QRegularExpression>
#include <QTreeWidget>
#include <QVBoxLayout>
#include <algorithm>

namespace pithward::bench {

MissingThing missing_thing(const QString& line) {
    static const QString needed = "needed: ";
    static const QString customary = "customary: ";
    MissingThing thing;
    thing.needed = line.startsWith(needed);
    const QString rest =
        thing.needed ? line.mid(needed.size()) : (line.startsWith(customary) ? line.mid(customary.size()) : line);
    const qsizetype end = rest.lastIndexOf("; ");
    thing.what = end < 0 ? rest : rest.left(end);
    thing.remedy = end < 0 ? QString() : rest.mid(end + 2);
    static const QRegularExpression about_core("^core (\\S+) has no calendar years");
    static const QRegularExpression tells_column("^fill in (\\w+) on the field sheet");
    static const QRegularExpression lacks_column("the field sheet does not tell (\\w+)");
    thing.core = about_core.match(thing.what).captured(1);
    thing.column = tells_column.match(thing.remedy).captured(1);
    if (thing.column.isEmpty()) {
        thing.column = lacks_column.match(thing.what).captured(1);
    }
    return thing;
}

MissingList::MissingList(const QStringList& lines, QWidget* parent)
    : QDialog(parent)
    , list_(new QTreeWidget) {
    setWindowTitle(tr("What the archive package lacks"));
    for (const QString& line : lines) {
        things_.push_back(missing_thing(line));
    }
    std::ranges::stable_sort(things_, [](const auto& a, const auto& b) { return a.needed && !b.needed; });
    list_->setAccessibleName(windowTitle());
    list_->setHeaderLabels({tr("Missing"), tr("How much it matters"), tr("What to do")});
    list_->setRootIsDecorated(false);
    for (const MissingThing& thing : things_) {
        const QString matters = thing.needed ? tr("needed") : tr("customary");
        const QStringList words{in_window_language(thing.what.toStdString()), matters,
                                in_window_language(thing.remedy.toStdString())};
        auto* item = new QTreeWidgetItem(list_, words);
        for (int column = 0; column < words.size(); ++column) {
            item->setToolTip(column, words[column]);
        }
    }
    auto* meaning = new QLabel(tr("The package is written. Needed is what every published study has that the program "
                                  "was checked against; the package's README tells the same list."));
    meaning->setWordWrap(true);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
    there_ = buttons->addButton(tr("&Fill it in"), QDialogButtonBox::ActionRole);
    auto* copied = buttons->addButton(tr("C&opy the list"), QDialogButtonBox::ActionRole);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(meaning);
    layout->addWidget(list_);
    layout->addWidget(buttons);
    resize(900, 420);
    list_->header()->setSectionResizeMode(1, QHeaderView::ResizeToContents);
    list_->header()->resizeSection(0, 430);
    connect(list_, &QTreeWidget::currentItemChanged, this, &MissingList::follow);
    connect(list_, &QTreeWidget::itemActivated, this, &MissingList::go);
    connect(there_, &QPushButton::clicked, this, &MissingList::go);
    connect(copied, &QPushButton::clicked, this, &MissingList::copy);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    list_->setCurrentItem(list_->topLevelItem(0));
    list_->setFocus();
    follow();
}

void MissingList::follow() {
    const int row = list_->indexOfTopLevelItem(list_->currentItem());
    const bool leads = row >= 0 && !(things_[static_cast<std::size_t>(row)].core.isEmpty() &&
                                     things_[static_cast<std::size_t>(row)].column.isEmpty());
    there_->setEnabled(leads);
}

void MissingList::go() {
    const int row = list_->indexOfTopLevelItem(list_->currentItem());
    if (row >= 0 && there_->isEnabled()) {
        const MissingThing& thing = things_[static_cast<std::size_t>(row)];
        emit wanted(thing.core, thing.column);
    }
}

void MissingList::copy() const {
    QStringList lines;
    for (const MissingThing& thing : things_) {
        lines << QString("%1: %2; %3").arg(thing.needed ? tr("needed") : tr("customary"), thing.what, thing.remedy);
    }
    QGuiApplication::clipboard()->setText(lines.join('\n'));
}

} // namespace pithward::bench
