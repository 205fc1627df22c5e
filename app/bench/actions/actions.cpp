#include "app/bench/actions/actions.h"

#include "app/bench/actions/changing_actions.h"
#include "app/bench/look/icons.h"

#include <QMenu>
#include <QMenuBar>
#include <QToolBar>

namespace pithward::bench {

namespace {

QList<QKeySequence> keys_of(const ActionSpec& spec) {
    QList<QKeySequence> keys;
    for (const QString& one : QString(spec.keys).split(' ', Qt::SkipEmptyParts)) {
        keys << QKeySequence(one, QKeySequence::PortableText);
    }
    return keys;
}

} // namespace

Actions::Actions(QWidget* window)
    : QObject(window) {
    for (const ActionSpec& spec : action_table()) {
        auto* action = new QAction(text_of(spec), this);
        const auto keys = keys_of(spec);
        action->setShortcuts(keys);
        const QString help = help_of(spec);
        action->setStatusTip(help);
        action->setToolTip(
            keys.isEmpty() ? help : QString("%1 (%2)").arg(help, keys.front().toString(QKeySequence::NativeText)));
        window->addAction(action); // reachable by key even where no menu is open
        actions_[spec.id] = action;
    }
}

void Actions::on(ActionId id, const std::function<void()>& run) {
    connect(at(id), &QAction::triggered, this, [run] { run(); });
}

void Actions::fill(QMenuBar* bar) const {
    std::map<Menu, QMenu*> menus;
    for (const ActionSpec& spec : action_table()) {
        QMenu*& menu = menus[spec.menu];
        if (menu == nullptr) {
            // The choice of colours is a part of the view.
            menu = spec.menu == Menu::Colours ? menus[Menu::View]->addMenu(title_of(spec.menu))
                                              : bar->addMenu(title_of(spec.menu));
        }
        if (spec.opens_group) {
            menu->addSeparator();
        }
        menu->addAction(at(spec.id));
    }
}

void Actions::fill(QToolBar* bar) const {
    for (const ActionSpec& spec : action_table()) {
        if (spec.in_tool_bar) {
            if (spec.opens_group) {
                bar->addSeparator();
            }
            bar->addAction(at(spec.id));
        }
    }
}

void Actions::follow(const BenchState& state) {
    for (const ActionSpec& spec : action_table()) {
        const bool rests = state.only_seen && changes_something(spec.id);
        at(spec.id)->setEnabled(enabled(spec.needs, state) && !rests);
    }
}

void Actions::draw_icons(const QColor& ink) {
    for (const ActionSpec& spec : action_table()) {
        at(spec.id)->setIcon(drawn_icon(spec.icon, ink));
    }
}

} // namespace pithward::bench
