#include "app/project/settle_dialog.h"

#include "app/bench/model/beside_window.h"
#include "app/project/settle_picture.h"
#include "libcore/field/core_code.h"
#include "libcore/record/scan_search.h"
#include "libimaging/code/code_reader.h"

#include <QFileDialog>
#include <QGridLayout>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QSignalBlocker>
#include <QSpinBox>
#include <algorithm>
#include <filesystem>
#include <iterator>
#include <set>

namespace pithward::bench {

namespace {

constexpr int settle_role = Qt::UserRole;
constexpr int picture_side = 1600; ///< Pixels of the picture's longer side: enough to tell cores apart.

} // namespace

SettleDialog::SettleDialog(ProjectDesk& desk, QWidget* parent)
    : QDialog(parent)
    , desk_(desk)
    , settling_(desk)
    , scans_(new QListWidget)
    , cores_(new QListWidget)
    , picture_(new SettlePicture)
    , codes_(new QLabel)
    , said_(new QLabel)
    , number_(new QSpinBox) {
    pool_.setMaxThreadCount(1);
    setWindowTitle(tr("Scans and cores"));
    build();
    connect(scans_, &QListWidget::currentItemChanged, this, &SettleDialog::follow_scan);
    connect(cores_, &QListWidget::currentItemChanged, this, &SettleDialog::follow_choice);
    connect(cores_, &QListWidget::itemActivated, this, &SettleDialog::give_scan); // Return or a double click
    connect(give_, &QPushButton::clicked, this, &SettleDialog::give_scan);
    connect(take_, &QPushButton::clicked, this, [this] {
        if (const record::CoreEntry* chosen = core()) {
            settling_.take_from(chosen->id);
        }
    });
    connect(back_, &QPushButton::clicked, &settling_, &ScanSettling::take_back);
    connect(number_, &QSpinBox::valueChanged, this, [this](int number) {
        if (number > 0) {
            clicked_.reset();
            picture_->choose(std::nullopt);
        }
    });
    connect(picture_, &SettlePicture::chosen, this, [this](ImagePoint place) {
        clicked_ = place;
        number_->setValue(0);
        picture_->choose(place);
    });
    connect(&settling_, &ScanSettling::told, said_, &QLabel::setText);
    connect(&settling_, &ScanSettling::changed, this, &SettleDialog::refill);
    settling_.look();
}

SettleDialog::~SettleDialog() {
    pool_.clear();
    pool_.waitForDone();
}

void SettleDialog::build() {
    auto* grid = new QGridLayout(this);
    auto* scans_title = new QLabel(tr("&Scans"));
    scans_title->setBuddy(scans_);
    auto* cores_title = new QLabel(tr("&Cores"));
    cores_title->setBuddy(cores_);
    for (QLabel* words : {codes_, said_}) {
        words->setWordWrap(true);
        words->setTextFormat(Qt::PlainText); // a stranger may have written it
    }
    scans_->setAccessibleName(tr("Scans of the project"));
    cores_->setAccessibleName(tr("Cores of the project"));
    for (QListWidget* list : {scans_, cores_}) {
        list->setMinimumWidth(230);
        list->setTextElideMode(Qt::ElideMiddle);
    }
    number_->setRange(0, 60);
    number_->setSpecialValueText(tr("–"));
    auto* number_title = new QLabel(tr("&Number on the scan"));
    number_title->setBuddy(number_);
    number_title->setToolTip(
        tr("From the top, or from the left where the cores stand upright. A click on the core in the "
           "picture does the same; a scan of one core needs neither."));
    number_->setToolTip(number_title->toolTip());
    auto* add = new QPushButton(tr("&Add scans…"));
    add->setEnabled(desk_.overview().can_change);
    give_ = new QPushButton(tr("&Give the scan to the core"));
    take_ = new QPushButton(tr("Ta&ke the scan from the core"));
    back_ = new QPushButton(tr("Take &back"));
    auto* close = new QPushButton(tr("Close"));
    for (QPushButton* other : {add, give_, take_, back_, close}) {
        other->setAutoDefault(false);
    }
    grid->addWidget(scans_title, 0, 0);
    grid->addWidget(cores_title, 0, 2);
    grid->addWidget(scans_, 1, 0);
    grid->addWidget(picture_, 1, 1);
    grid->addWidget(cores_, 1, 2);
    grid->addWidget(add, 2, 0, Qt::AlignLeft);
    grid->addWidget(codes_, 2, 1);
    auto* number_row = new QHBoxLayout;
    number_row->addWidget(number_title);
    number_row->addWidget(number_, 1);
    grid->addLayout(number_row, 2, 2);
    grid->addWidget(said_, 3, 0, 1, 2);
    auto* buttons = new QHBoxLayout;
    buttons->addStretch(1);
    for (QPushButton* button : {back_, take_, give_, close}) {
        buttons->addWidget(button);
    }
    grid->addLayout(buttons, 4, 0, 1, 3);
    grid->setColumnStretch(1, 1);
    grid->setRowStretch(1, 1);
    resize(1180, 640);
    connect(add, &QPushButton::clicked, this, &SettleDialog::ask_for_scans);
    connect(close, &QPushButton::clicked, this, &QDialog::accept);
}

std::string SettleDialog::scan() const {
    const QListWidgetItem* item = scans_->currentItem();
    return item != nullptr ? item->data(settle_role).toString().toStdString() : std::string();
}

const record::CoreEntry* SettleDialog::core() const {
    const QListWidgetItem* item = cores_->currentItem();
    return item != nullptr ? core_of(desk_.overview(), record::CoreId{item->data(settle_role).toLongLong()}) : nullptr;
}

std::optional<field::ScanPlace> SettleDialog::place() const {
    if (clicked_) {
        return *clicked_;
    }
    return number_->value() > 0 ? std::optional<field::ScanPlace>(number_->value()) : std::nullopt;
}

void SettleDialog::refill() {
    fill_scans();
    fill_cores();
    const auto& open = settling_.open();
    said_->setText(open.empty() ? tr("Every core has its scan, and every scan its core.")
                                : tr("Cores without a scan: %1. Scans without a core: %2. Scans on which nothing tells "
                                     "the cores apart: %3.")
                                      .arg(open.without_scan.size())
                                      .arg(open.without_core.size())
                                      .arg(open.unclear.size()));
    if (scan() != wanted_) {
        follow_scan();
    }
    show_names();
    follow_choice();
}

void SettleDialog::fill_scans() {
    const QSignalBlocker quiet(scans_);
    const std::string before = scan();
    scans_->clear();
    const auto add = [&](const std::string& scan, const QString& what) {
        const QString name = QString::fromStdString(scan);
        auto* item = new QListWidgetItem(what.isEmpty() ? name : tr("%1 – %2").arg(name, what), scans_);
        item->setData(settle_role, name);
        item->setToolTip(item->text());
        if (scan == before) {
            scans_->setCurrentItem(item);
        }
        return item;
    };
    const auto names = [](const std::vector<record::CoreEntry>& cores) {
        QStringList list;
        for (const record::CoreEntry& one : cores) {
            list << QString::fromStdString(one.core.id);
        }
        return list.join(", ");
    };
    std::set<std::string> listed;
    const auto mark_open = [&](QListWidgetItem* item) {
        QFont bold = scans_->font();
        bold.setBold(true);
        item->setFont(bold);
    };
    for (const auto& doubt : settling_.open().without_core) {
        mark_open(add(doubt.scan, tr("no core")));
        listed.insert(doubt.scan);
    }
    for (const auto& doubt : settling_.open().unclear) {
        mark_open(add(doubt.scan, tr("which is which? %1").arg(names(doubt.cores))));
        listed.insert(doubt.scan);
    }
    for (const record::ScanEntry& entry : desk_.overview().scans) {
        std::vector<record::CoreEntry> users;
        std::ranges::copy_if(desk_.overview().cores, std::back_inserter(users),
                             [&](const record::CoreEntry& one) { return one.core.scan == entry.path; });
        if (!listed.contains(entry.path)) {
            add(entry.path, names(users));
        }
    }
    if (scans_->currentItem() == nullptr && scans_->count() > 0) {
        scans_->setCurrentRow(0);
    }
}

void SettleDialog::fill_cores() {
    const QSignalBlocker quiet(cores_);
    const record::CoreEntry* before = core();
    const record::CoreId kept = before != nullptr ? before->id : record::CoreId{};
    cores_->clear();
    std::set<record::CoreId> open;
    for (const record::CoreEntry& one : settling_.open().without_scan) {
        open.insert(one.id);
    }
    for (const bool first : {true, false}) {
        for (const record::CoreEntry& one : desk_.overview().cores) {
            if (open.contains(one.id) != first) {
                continue;
            }
            const auto place = field::scan_place_of(one.core);
            QString what = one.core.scan.empty() ? tr("no scan") : QString::fromStdString(one.core.scan);
            if (place) {
                what = tr("%1, %2").arg(what, QString::fromStdString(field::text_of(*place)));
            } else if (first && !one.core.scan.empty()) {
                what = tr("%1 is not there").arg(what);
            }
            auto* item = new QListWidgetItem(tr("%1 – %2").arg(QString::fromStdString(one.core.id), what), cores_);
            item->setData(settle_role, QVariant::fromValue(one.id.value));
            item->setToolTip(item->text());
            QFont font = cores_->font();
            font.setBold(first);
            item->setFont(font);
            if (!settling_.can_change(one.id)) {
                item->setFlags(item->flags() & ~Qt::ItemIsEnabled); // what is read keeps its scan
                item->setToolTip(tr("Its scan stays: the core is read, or the project can't be written to."));
            } else if (one.id == kept) {
                cores_->setCurrentItem(item);
            }
        }
    }
    if (cores_->currentItem() == nullptr && cores_->count() > 0) {
        cores_->setCurrentRow(0);
    }
}

void SettleDialog::follow_choice() {
    const record::CoreEntry* chosen = core();
    const bool can_change = chosen != nullptr && settling_.can_change(chosen->id);
    give_->setEnabled(can_change && !scan().empty());
    take_->setEnabled(can_change && !chosen->core.scan.empty());
    back_->setEnabled(!settling_.last().isEmpty() && desk_.overview().can_change);
    back_->setToolTip(settling_.last());
}

void SettleDialog::follow_scan() {
    clicked_.reset();
    number_->setValue(0);
    picture_->choose(std::nullopt);
    picture_->show_marks({});
    codes_->clear();
    wanted_ = scan();
    if (wanted_.empty()) {
        picture_->say(tr("There is no scan."));
        follow_choice();
        return;
    }
    picture_->say(tr("Opening…"));
    const auto look = [wanted = wanted_, overview = desk_.overview(), opener = desk_.opener(),
                       allowed = desk_.allowed()] {
        Seen seen{wanted, {}, 1, {}, {}};
        record::CoreEntry as_core;
        as_core.core.scan = wanted;
        const auto opened = open_project_scan(overview, as_core, opener, allowed); // refuses what leads outside
        if (!opened) {
            seen.why_not = QString::fromStdString(opened.error().line());
            return seen;
        }
        const Scan& header = opened->scan.header;
        seen.reduction = std::max(1, (std::max(header.width, header.height) + picture_side - 1) / picture_side);
        auto picture = opened->scan.pixels({0, 0, header.width, header.height}, seen.reduction);
        if (!picture) {
            seen.why_not = QString::fromStdString(picture.error().line());
            return seen;
        }
        seen.picture = std::move(*picture);
        if (const auto scan = ScanFile::open(opened->scan.path)) {
            for (CodeOnScan& code : read_codes(*scan).value_or(std::vector<CodeOnScan>{})) {
                seen.codes.push_back({std::move(code.text), code.at});
            }
        }
        return seen;
    };
    pool_.clear();
    beside_window(pool_, this, look, [this](Seen seen) { take_seen(std::move(seen)); });
    follow_choice();
}

void SettleDialog::take_seen(Seen seen) {
    if (seen.scan != wanted_) {
        return; // another one was chosen meanwhile
    }
    seen_ = std::move(seen);
    if (seen_.picture.isNull()) {
        picture_->say(seen_.why_not);
        return;
    }
    picture_->show_picture(seen_.picture, seen_.reduction);
    QStringList texts;
    for (const Seen::Code& code : seen_.codes) {
        texts << QString::fromStdString(in_one_line(code.text));
    }
    codes_->setText(texts.isEmpty() ? tr("No code was read on it.") : tr("Codes on it: %1").arg(texts.join(", ")));
    show_names();
    propose_core();
}

void SettleDialog::show_names() {
    std::vector<SettlePicture::Mark> marks;
    for (const record::CoreEntry& one : desk_.overview().cores) {
        const auto place = one.core.scan == seen_.scan ? field::scan_place_of(one.core) : std::nullopt;
        if (place && std::holds_alternative<ImagePoint>(*place)) {
            marks.push_back({std::get<ImagePoint>(*place), QString::fromStdString(one.core.id)});
        }
    }
    picture_->show_marks(std::move(marks));
}

void SettleDialog::propose_core() {
    const std::string stem = std::filesystem::path(seen_.scan).stem().string();
    for (int row = 0; row < cores_->count(); ++row) {
        const QListWidgetItem* item = cores_->item(row);
        const record::CoreEntry* one = core_of(desk_.overview(), record::CoreId{item->data(settle_role).toLongLong()});
        if (one == nullptr || !one->core.scan.empty()) {
            continue;
        }
        const field::CodeNames names{one->site.id, one->core.id};
        const auto code = std::ranges::find_if(seen_.codes, [&](const Seen::Code& read) {
            return read.text == field::core_code(names) || read.text == field::former_core_code(names);
        });
        if (code != seen_.codes.end() || one->core.id == stem) {
            cores_->setCurrentRow(row);
            if (code != seen_.codes.end() && seen_.codes.size() > 1) {
                clicked_ = code->at;
                picture_->choose(clicked_);
            }
            return;
        }
    }
}

void SettleDialog::give_scan() {
    if (const record::CoreEntry* chosen = core(); chosen != nullptr && give_->isEnabled()) {
        settling_.give(chosen->id, scan(), place());
        clicked_.reset();
        number_->setValue(0);
        picture_->choose(std::nullopt);
    }
}

void SettleDialog::ask_for_scans() {
    auto* dialog = new QFileDialog(this, tr("Add scans"));
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->setFileMode(QFileDialog::ExistingFiles);
    dialog->setDirectory(QString::fromStdString(desk_.overview().folder.string()));
    dialog->setNameFilters({tr("Scans (*.tif *.tiff *.png *.jpg *.jpeg)")});
    connect(dialog, &QFileDialog::filesSelected, &settling_, &ScanSettling::add);
    dialog->open();
}

} // namespace pithward::bench
