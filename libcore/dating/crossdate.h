#pragma once

#include "libcore/dating/agreement.h"
#include "libcore/dating/index_series.h"
#include "libcore/dating/pair_results.h"
#include "libcore/dating/segments.h"
#include "libcore/dating/shifts.h"
#include "libcore/dating/site_statistics.h"
#include "libcore/dating/site_table.h"
#include "libcore/dating/slips/find_slips.h"
#include "libcore/dating/slips/slip_places.h"
#include "libcore/specimen/outcome.h"
#include "libcore/specimen/work.h"

#include <optional>
#include <string>
#include <vector>

namespace pithward::dating {

/// How a site is crossdated.
struct CrossdateOptions {
    IndexOptions index;
    std::optional<int>
        length; ///< Of the segments, in years; nothing: by the site's own signal, see `segment_length_for`.
    std::optional<int> step; ///< Nothing: half of the length.
    SlipOptions slips;
    bool pairs = false;        ///< Hold every pair of dated series against each other too.
    std::size_t positions = 5; ///< How many of the best positions are told of a series whose years aren't known.

    /// What is wrong with them, in words; empty if nothing is.
    [[nodiscard]] std::string validate() const;
};

/// What is to be dated, and by what.
struct CrossdateInput {
    std::vector<TreeSeries> dated;     ///< Each is held against the others, or against the reference.
    std::vector<TreeSeries> undated;   ///< Their years only count rings.
    std::vector<TreeSeries> reference; ///< Held to be dated rightly; empty: the dated series.
    /// What the wood shows of the dated series, in their order; empty where there are no scans.
    std::vector<std::vector<DoubtfulPlace>> wood = {};
};

/// What was found of one dated series.
struct DatedResult {
    std::string id;
    std::string tree;
    int first_year = 0;
    int last_year = 0;
    Agreement agreement;           ///< Of indices.
    Agreement five_year;           ///< After Baillie and Pilcher.
    Agreement yearly;              ///< After Hollstein.
    SignAgreement signs;           ///< Of widths with the mean of the other series' indices.
    std::vector<RankedMatch> best; ///< The best of all shifts; none if nothing overlaps enough.
    std::vector<Segment> segments;
    std::vector<Slip> slips;
    std::vector<std::vector<SlipPlace>> places; ///< Of each slip, where the wood is known: likeliest first.
    int whole_shift = 0;
    std::optional<double> mean_sensitivity;
    std::optional<double> ar1; ///< Of widths.
    std::vector<std::string> remarks;
    YearSeries index;    ///< Its indices.
    YearSeries others;   ///< What they were held against.
    Alignment alignment; ///< From which the slips were read.
};

/// Where a series without years may belong.
struct UndatedResult {
    std::string id;
    int rings = 0;
    int first_year = 0;              ///< As it came: the number of its innermost ring.
    std::vector<RankedMatch> places; ///< By height of t, `shift` to be added to its years.
    std::vector<SignAgreement> signs;
    std::vector<std::string> remarks;

    [[nodiscard]] int first_year_at(const RankedMatch& place) const { return first_year + place.match.shift; }
    [[nodiscard]] int last_year_at(const RankedMatch& place) const { return first_year_at(place) + rings - 1; }
};

struct SiteResult {
    int series = 0;
    int trees = 0;
    CommonVariance variance;                       ///< Of indices.
    std::optional<double> series_intercorrelation; ///< Mean r of the series with what they were held against.
    std::optional<double> mean_sensitivity;        ///< Mean over the series.
    std::optional<double> ar1;
};

struct CrossdateResult {
    std::vector<DatedResult> dated;
    std::vector<UndatedResult> undated;
    SiteResult site;
    std::optional<std::vector<PairResult>> pairs; ///< Of the dated series; nothing where they weren't asked for.
    int length = 0;                               ///< Of the segments.
    int step = 0;
    std::vector<std::string> remarks;
};

/// Holds each series against the mean of all others of other trees, or against the mean of the reference: over the
/// whole overlap, over segments, at every shift; looks for slips; and finds places for series without years. A series
/// that can't be compared has a remark in place of numbers.
[[nodiscard]] CrossdateResult crossdate(const CrossdateInput& input, const CrossdateOptions& options,
                                        const Work& work = {});

} // namespace pithward::dating
