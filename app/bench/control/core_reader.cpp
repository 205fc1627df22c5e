#include "app/bench/control/core_reader.h"

#include "libcore/dating/bark_year.h"
#include "libcore/edit/apply.h"
#include "libcore/field/field_checks.h"
#include "libcore/measure/measure.h"
#include "libcore/pith/published.h"
#include "libcore/specimen/width_series.h"
#include "libimaging/label/placed_cores.h"

#include <algorithm>
#include <filesystem>
#include <utility>

namespace pithward::bench {

namespace {

/// A part of longer work, as its own.
Work part_of(const Work& work, double from, double to) {
    return Work{work.stop, [work, from, to](double done) { work.report(from + (to - from) * done); }};
}

/// The row of one core is at hand, so what it says of the outer end holds only where the scan has one core, be it one
/// that goes past the pith and has two sides.
void tell_field_data(ReadingRequest& request, const FieldData& field, std::size_t whole_cores) {
    request.wood = field.tree.wood;
    if (whole_cores == 1) {
        request.outer = field.core.outer;
        if (const auto year = dating::bark_year(field.site, field.tree, field.core, field.core.outer)) {
            request.last_year = *year;
        }
    }
}

bool in_doubt(const Reading& reading, FindingKind kind) {
    return std::ranges::any_of(reading.findings, [kind](const Finding& finding) {
        return finding.kind == kind && finding.state == Finding::State::Open;
    });
}

} // namespace

std::optional<WoodType> said_wood(const Reading& reading) {
    return in_doubt(reading, FindingKind::Wood) ? std::nullopt : std::optional(reading.wood);
}

OuterWood said_outer(const Reading& reading) {
    return in_doubt(reading, FindingKind::OuterWood) ? OuterWood::Unknown : reading.outer;
}

ReadCores read_cores(const OpenedScan& scan, const Calibration& calibration, const Work& work) {
    constexpr double share_of_finding = 0.3;
    ReadCores result;
    const auto found = scan.find_cores(calibration, part_of(work, 0.0, share_of_finding));
    if (!found) {
        result.faults.push_back(found.error());
        result.damaged = scan.is_damaged();
        return result;
    }
    const double each = (1.0 - share_of_finding) / static_cast<double>(std::max<std::size_t>(1, found->size()));
    const std::size_t whole = whole_cores(*found, calibration).size();
    double from = share_of_finding;
    const std::string stem = std::filesystem::path(scan.name()).stem().string();
    for (std::size_t i = 0; i < found->size() && !work.stopped(); ++i) {
        const FoundCore& core = (*found)[i];
        ReadingRequest request = request_for(core, scan.name(), calibration);
        if (scan.field) {
            tell_field_data(request, *scan.field, whole);
        }
        auto read = read_path(scan, request, core.width_mm, found->size() == 1, part_of(work, from, from + each));
        from += each;
        if (read) {
            read->reading.core = series_id(stem, i, found->size());
            result.cores.push_back(std::move(*read));
        } else {
            result.faults.push_back(read.error());
        }
    }
    return result;
}

PithKnowledge knowledge_of(const OpenedScan& scan) {
    PithKnowledge knowledge;
    knowledge.growth = scan.growth.value_or(knowledge.growth);
    const auto& field = scan.field;
    if (field && field->tree.dbh_cm && field->tree.bark_mm) {
        knowledge.stem_radius = Millimetres(pith::stem_radius(*field->tree.dbh_cm, *field->tree.bark_mm));
    }
    return knowledge;
}

Outcome<picture::MeasuredCore> read_path(const OpenedScan& scan, const ReadingRequest& request, double breadth_mm,
                                         bool only_core, const Work& work) {
    auto reading = scan.propose(request, work);
    if (!reading) {
        return tl::unexpected(reading.error());
    }
    if (const auto series = measure(*reading)) {
        *reading = with_pith(std::move(*reading), *series, knowledge_of(scan), work);
    }
    const auto series = measure(*reading); // with the pith on the core the innermost ring has a width
    if (series && scan.field && only_core) {
        *reading =
            with_field_checks(std::move(*reading), *series, scan.field->site, scan.field->tree, scan.field->core);
    }
    auto ready = readied(std::move(*reading));
    if (!ready) {
        return tl::unexpected(ready.error());
    }
    return picture::measured(std::move(*ready), breadth_mm);
}

ReadingRequest request_of(const Reading& reading, const Calibration& calibration) {
    ReadingRequest request;
    request.calibration = calibration;
    if (!reading.path.legs.empty()) {
        request.scan_name = reading.path.legs.front().scan;
        request.path = reading.path.legs.front().points;
    }
    request.bark_end = reading.bark_end;
    request.wood = said_wood(reading);
    request.outer = said_outer(reading);
    request.last_year = reading.last_year;
    return request;
}

} // namespace pithward::bench
