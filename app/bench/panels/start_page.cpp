#include "app/bench/panels/start_page.h"

#include "app/bench/look/icons.h"

#include <QAction>
#include <QEvent>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace pithward::bench {

namespace {

class Emblem : public QLabel {
public:
    Emblem() { redraw(); }

protected:
    void changeEvent(QEvent* event) override {
        if (event->type() == QEvent::PaletteChange) {
            redraw();
        }
        QLabel::changeEvent(event);
    }

private:
    void redraw() {
        QColor ink = palette().color(QPalette::WindowText);
        ink.setAlphaF(0.55F);
        setPixmap(drawn_icon("core", ink).pixmap(QSize(96, 96), devicePixelRatioF()));
    }
};

} // namespace

StartPage::StartPage(QAction* open, QAction* project, QAction* make, QAction* demo, QWidget* parent)
    : QWidget(parent) {
    auto* title = new QLabel(tr("Open a scan of increment cores"));
    QFont large = title->font();
    large.setPointSizeF(large.pointSizeF() * 1.6);
    title->setFont(large);
    title->setAlignment(Qt::AlignCenter);
    auto* text = new QLabel(tr("Sanded and scanned, TIFF, PNG or JPEG. Pithward finds the cores, marks the ring\n"
                               "boundaries and measures the widths; you look at what is in doubt."));
    text->setAlignment(Qt::AlignCenter);
    auto* button = new QPushButton(tr("Open scan…"));
    button->setDefault(true);
    button->setMinimumWidth(180);
    button->setToolTip(open->toolTip());
    connect(button, &QPushButton::clicked, open, &QAction::trigger);
    auto* open_project = new QPushButton(tr("Open project…"));
    open_project->setMinimumWidth(button->minimumWidth());
    open_project->setToolTip(project->toolTip());
    connect(open_project, &QPushButton::clicked, project, &QAction::trigger);
    auto* make_project = new QPushButton(tr("New project…"));
    make_project->setMinimumWidth(button->minimumWidth());
    make_project->setToolTip(make->toolTip());
    connect(make_project, &QPushButton::clicked, make, &QAction::trigger);
    auto* try_demo = new QPushButton(tr("Look at the demo site"));
    try_demo->setMinimumWidth(button->minimumWidth());
    try_demo->setToolTip(demo->toolTip());
    try_demo->setVisible(demo->isVisible());
    connect(try_demo, &QPushButton::clicked, demo, &QAction::trigger);
    auto* drop = new QLabel(tr("or drop scans or a folder here"));
    drop->setAlignment(Qt::AlignCenter);
    drop->setEnabled(false);
    auto* emblem = new Emblem;
    emblem->setAlignment(Qt::AlignCenter);

    auto* layout = new QVBoxLayout(this);
    layout->setSpacing(12);
    layout->addStretch(2);
    layout->addWidget(emblem);
    layout->addWidget(title);
    layout->addWidget(text);
    layout->addSpacing(8);
    layout->addWidget(button, 0, Qt::AlignCenter);
    layout->addWidget(drop);
    layout->addWidget(open_project, 0, Qt::AlignCenter);
    layout->addWidget(make_project, 0, Qt::AlignCenter);
    layout->addWidget(try_demo, 0, Qt::AlignCenter);
    layout->addStretch(3);
}

} // namespace pithward::bench
