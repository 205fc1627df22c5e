#include "libcore/edit/reading_edits.h"

#include "libcore/edit/reading_head.h"
#include "libcore/edit/require_object.h"

namespace pithward {

Outcome<Edit> add_absent_ring(const Reading& reading, BoundaryId at, AbsentRingId fresh, std::string note) {
    return require_object(reading.boundaries, at).map([&](const Boundary& /*boundary*/) {
        return Edit{Added<AbsentRing>{{.id = fresh, .at = at, .note = std::move(note)}}};
    });
}

Outcome<Edit> remove_absent_ring(const Reading& reading, AbsentRingId id) {
    return require_object(reading.absent_rings, id).map([](const AbsentRing& ring) {
        return Edit{Removed<AbsentRing>{ring}};
    });
}

Edit add_break(Break stretch) {
    return {Added<Break>{std::move(stretch)}};
}

Outcome<Edit> remove_break(const Reading& reading, BreakId id) {
    return require_object(reading.breaks, id).map([](const Break& stretch) { return Edit{Removed<Break>{stretch}}; });
}

Outcome<Edit> change_break(const Reading& reading, Break after) {
    return require_object(reading.breaks, after.id).map([&](const Break& before) {
        return Edit{Changed<Break>{before, std::move(after)}};
    });
}

Edit change_head(const Reading& reading, ReadingHead after) {
    return {Changed<ReadingHead>{head_of(reading), std::move(after)}};
}

Edit set_last_year(const Reading& reading, std::optional<Year> year) {
    ReadingHead after = head_of(reading);
    after.last_year = year;
    return change_head(reading, std::move(after));
}

Outcome<Edit> shift_years(const Reading& reading, int years) {
    if (!reading.last_year) {
        return fail("years", "this reading has none", "set the year of its outermost ring");
    }
    return set_last_year(reading, *reading.last_year + years);
}

Edit set_note(const Reading& reading, std::string note) {
    ReadingHead after = head_of(reading);
    after.note = std::move(note);
    return change_head(reading, std::move(after));
}

Edit set_state(const Reading& reading, Reading::State state) {
    ReadingHead after = head_of(reading);
    after.state = state;
    return change_head(reading, std::move(after));
}

Edit change_path(const Reading& reading, Path after) {
    return {Changed<Path>{reading.path, std::move(after)}};
}

Edit change_calibration(const Reading& reading, const std::string& scan, const std::optional<Calibration>& after) {
    const auto found = reading.calibrations.find(scan);
    const auto before = found == reading.calibrations.end() ? std::nullopt : std::optional(found->second);
    return {CalibrationChanged{scan, before, after}};
}

} // namespace pithward
