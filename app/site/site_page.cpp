#include "app/site/site_page.h"

#include "app/site/site_bands.h"
#include "app/site/site_dating.h"
#include "app/site/slip_panel.h"
#include "libcore/dating/slips/slip_finding.h"
#include "libcore/edit/finding_edits.h"
#include "libcore/edit/reading_edits.h"

#include <QLabel>
#include <QListWidget>
#include <QScrollArea>
#include <algorithm>
#include <functional>

// What the site's page shows of a series, and what is done about a slip.

namespace pithward::bench {

namespace {

using Building = ProjectDesk::Building;

/// An edit of a reading that is still as it was dated.
Building of_what_was_dated(std::shared_ptr<const SiteDating> dating, const SiteCore& core,
                           std::function<Outcome<Edit>(const Document&)> build) {
    return [dating = std::move(dating), &core, build = std::move(build)](const Document& document) -> Outcome<Edit> {
        if (document.reading() != core.reading) {
            return fail(core.name, "this reading was changed since it was dated", "look at its slips again");
        }
        return build(document);
    };
}

} // namespace

void SitePage::refresh() {
    if (isVisible() && desk_.is_open()) {
        work_.refresh();
    }
}

const SiteLine* SitePage::line() const {
    const int row = list_->currentRow();
    const auto& dating = work_.dating();
    return dating && row >= 0 && row < static_cast<int>(dating->lines.size())
               ? &dating->lines[static_cast<std::size_t>(row)]
               : nullptr;
}

int SitePage::slips_of(int row) const {
    const auto& dating = work_.dating();
    const dating::DatedResult* series =
        dating && row >= 0 ? dating->dated(dating->lines[static_cast<std::size_t>(row)]) : nullptr;
    return series != nullptr ? static_cast<int>(series->slips.size()) : 0;
}

std::optional<record::CoreId> SitePage::core() const {
    return line() != nullptr ? core_ : std::nullopt;
}

void SitePage::choose(record::CoreId core) {
    core_ = core;
    put_lines();
}

bool SitePage::slip_shown() const {
    return slip_panel_->place() != nullptr;
}

bool SitePage::change_shown() const {
    return slip_shown() || slip_panel_->whole_shift() != 0;
}

void SitePage::show_line(int row) {
    if (const SiteLine* shown = line()) {
        core_ = work_.dating()->core(*shown).core;
    }
    agreement_->show(work_.dating(), row);
    series_->show(work_.dating(), row);
    const QRect strip = agreement_->chosen_row();
    rows_->ensureVisible(0, strip.center().y(), 0, strip.height());
    show_slip(slip_number_);
    say_year();
}

void SitePage::show_slip(int number) {
    const int row = list_->currentRow();
    slip_number_ = std::clamp(number, 0, std::max(0, slips_of(row) - 1));
    slip_panel_->show_slip(work_.dating(), row, slips_of(row) > 0 ? slip_number_ : -1);
    if (const dating::Slip* slip = slip_panel_->slip()) {
        years_.go_to(slip->ring_year());
    }
    emit shown_changed();
}

void SitePage::step(int by) {
    const int rows = list_->count();
    const int here = slip_number_ + by;
    if (here >= 0 && here < slips_of(list_->currentRow())) {
        show_slip(here);
        return;
    }
    for (int k = 1; k <= rows; ++k) {
        const int row = ((list_->currentRow() + by * k) % rows + rows) % rows;
        if (slips_of(row) > 0) {
            list_->setCurrentRow(row);
            show_slip(by > 0 ? 0 : slips_of(row) - 1);
            return;
        }
    }
    emit hint(tr("No series of the site shows a ring too many or too few"));
}

void SitePage::say_year() {
    const QString words = series_->pointed_in_words();
    series_->setAccessibleDescription(words);
    emit hint(words);
}

void SitePage::open_year(int year) {
    const SiteLine* shown = line();
    if (shown == nullptr || !shown->dated) {
        return;
    }
    const SiteCore& core = work_.dating()->core(*shown);
    if (const auto at = place_of_year(core, year)) {
        emit bench_wanted(core.reading.id, *at, false);
    }
}

void SitePage::settle(Finding::State state) {
    const auto dating = work_.dating();
    const SiteLine* shown = line();
    const dating::SlipPlace* place = slip_panel_->place();
    if (!dating || shown == nullptr || work_.busy()) {
        return;
    }
    const SiteCore& core = dating->core(*shown);
    if (place == nullptr) {
        if (slip_panel_->whole_shift() == 0) {
            return;
        }
        if (state == Finding::State::ProposalTaken) {
            take_years(dating, core);
        } else {
            emit hint(tr("Nothing is noted of the years: they stay as they are until they are changed"));
        }
        return;
    }
    const auto build = [finding = finding_at(*place), state](const Document& document) {
        return settle_as(document.reading(), finding, state, document.fresh_id());
    };
    desk_.make(core.reading.id, of_what_was_dated(dating, core, build), [this](bool /*done*/) { refresh(); });
}

void SitePage::take_years(std::shared_ptr<const SiteDating> dating, const SiteCore& core) {
    const auto build = [years = slip_panel_->whole_shift()](const Document& document) {
        return shift_years(document.reading(), years);
    };
    desk_.make(core.reading.id, of_what_was_dated(std::move(dating), core, build),
               [this](bool /*done*/) { refresh(); });
}

Finding SitePage::finding_at(const dating::SlipPlace& place) const {
    Finding finding = dating::slip_finding(*slip_panel_->slip(), place);
    const Finding* noted = slip_panel_->noted();
    finding.id = noted != nullptr ? noted->id : FindingId{};
    return finding;
}

void SitePage::see_wood() {
    const auto dating = work_.dating();
    const SiteLine* shown = line();
    if (!dating || shown == nullptr) {
        return;
    }
    const SiteCore& core = dating->core(*shown);
    const dating::SlipPlace* place = slip_panel_->place();
    if (place == nullptr) { // where the years are counted from
        if (!core.reading.boundaries.empty()) {
            emit bench_wanted(core.reading.id, core.reading.boundaries.front().at, false);
        }
        return;
    }
    const Finding* noted = slip_panel_->noted();
    const bool settled = noted != nullptr && noted->state != Finding::State::Open;
    const bool there = noted != nullptr && noted->at == place->place.at;
    if (settled || there || !desk_.overview().can_change) {
        emit bench_wanted(core.reading.id, place->place.at, there && !settled);
    } else {
        note_slip(dating, core, finding_at(*place));
    }
}

void SitePage::note_slip(std::shared_ptr<const SiteDating> dating, const SiteCore& core, const Finding& finding) {
    const auto build = [finding](const Document& document) -> Outcome<Edit> {
        return note_finding(document.reading(), finding, FindingId{document.fresh_id()});
    };
    const auto go_there = [this, reading = core.reading.id, at = finding.at,
                           passed = core.reading.state == Reading::State::Passed](bool done) {
        if (done && passed) {
            emit told(tr("This reading was passed. With a new finding it waits for a second person again."));
        }
        if (done) {
            emit bench_wanted(reading, at, true);
        }
    };
    desk_.make(core.reading.id, of_what_was_dated(std::move(dating), core, build), go_there);
}

QString SitePage::words_in_place() const {
    return has_dating() ? QString() : needed_->text();
}

} // namespace pithward::bench
