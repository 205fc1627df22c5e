#pragma once

#include "libcore/specimen/reading.h"

#include <array>
#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace pithward::progress {

/// What is done with a core, one after the other.
enum class Stage { Scanned, Measured, Confirmed, Dated, Reviewed };
inline constexpr std::array all_stages{Stage::Scanned, Stage::Measured, Stage::Confirmed, Stage::Dated,
                                       Stage::Reviewed};

/// How far a stage is.
enum class HowFar {
    NotYet,
    Partly, ///< Begun, or done as far as can be by now.
    Done,
    WantsLook, ///< Something stands against it.
};

/// What somebody does next. Of a core; of a site, the first of these that a core of it waits for.
enum class Step {
    FindScan, ///< No scan is known, or its file is not there.
    Measure,  ///< It has no reading.
    Settle,   ///< Findings are open.
    Confirm,  ///< Boundaries that nobody has looked at.
    Date,     ///< It has no years, or the other series contradict them.
    SayDone,  ///< Its analyst has nothing left to do but to say so.
    Review,   ///< It waits for a second person.
    Report,   ///< All is done: tell of it.
};

/// The accepted reading of a core, as far as its progress asks.
struct ReadingFacts {
    Reading::State state = Reading::State::Proposed;
    int boundaries = 0;
    int confirmed = 0; ///< Of the boundaries, looked at or in bulk.
    int open_findings = 0;
};

/// What the other series of the site say of the years of one.
struct DatingFacts {
    int slips = 0;             ///< Rings missing or counted twice, which nobody has settled.
    int shift = 0;             ///< All of it fits so many years later; 0 where it fits as it is.
    bool can_be_dated = false; ///< It has no years, and there are series enough to look for them.
};

/// What is known of a core.
struct CoreFacts {
    bool scan_named = false;
    bool scan_there = false;
    std::optional<ReadingFacts> reading;
    bool has_years = false;            ///< Rings of the reading have calendar years.
    std::optional<DatingFacts> dating; ///< Nothing before the site was dated.
};

/// Something that stands against a core.
struct Objection {
    enum class Kind {
        NoScan,      ///< None is known.
        ScanGone,    ///< Its file is not there.
        OpenFinding, ///< `count` of them.
        Unconfirmed, ///< `count` boundaries that nobody has confirmed.
        NoYears,
        Slip,     ///< `count` of them.
        Shift,    ///< All of it fits `count` years later, less than 0: earlier.
        Returned, ///< The second person sent it back.
    };
    Kind kind;
    int count = 0;
    friend bool operator==(const Objection&, const Objection&) = default;
};

/// How far the work on a core is.
struct CoreProgress {
    std::array<HowFar, all_stages.size()> stages{};
    Step next = Step::Report;
    std::vector<Objection> against; ///< In the order in which it is best mended.

    [[nodiscard]] HowFar at(Stage stage) const { return stages[static_cast<std::size_t>(stage)]; }
};

/// How far a core is, what stands against it and what comes next.
///
/// 1. A core without a reading waits for its scan, then to be measured.
/// 2. Then come open findings, then what nobody has confirmed; once a reading is marked, both are for the second
/// person.
/// 3. A slip, a shift of all years, or missing years where dating can tell them come before the reading is said to be
///    done, and also after it was passed: they change what was looked at.
/// 4. A reading is done with when it is passed and nothing of the above is left.
[[nodiscard]] CoreProgress core_progress(const CoreFacts& facts);

/// How far the cores of a site are together.
struct SiteProgress {
    std::array<int, all_stages.size()> done{}; ///< Cores that are through each stage.
    int cores = 0;
    Step next = Step::FindScan;       ///< FindScan where there is no core.
    int waiting = 0;                  ///< How many cores wait for that.
    std::optional<std::size_t> first; ///< The first of them, by its place in the list.

    [[nodiscard]] int at(Stage stage) const { return done[static_cast<std::size_t>(stage)]; }
};

/// What comes next for the site is what most other work waits for: to measure, then what the analysts do in its order,
/// then the review, then the report. A scan that is missing holds nothing up: it is next only where nothing else is.
[[nodiscard]] SiteProgress site_progress(std::span<const CoreProgress> cores);

/// The state of a reading by its word; Proposed where there is no such word.
[[nodiscard]] Reading::State state_of(std::string_view word);

/// "find its scan", "measure", "settle findings", ...
[[nodiscard]] std::string word(Step step);

} // namespace pithward::progress
