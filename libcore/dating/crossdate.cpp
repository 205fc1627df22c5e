#include "libcore/dating/crossdate.h"

#include "libcore/dating/robust_mean.h"

#include <algorithm>
#include <cmath>
#include <functional>

namespace pithward::dating {

namespace {

using Transform = std::function<YearSeries(const YearSeries&)>;

/// Series by one transform, and what each is held against.
struct Held {
    std::vector<YearSeries> series;
    std::vector<YearSeries> against;
    SiteTable table;
};

std::vector<YearSeries> transformed(const std::vector<TreeSeries>& site, const Transform& transform) {
    std::vector<YearSeries> result;
    std::ranges::transform(site, std::back_inserter(result),
                           [&](const TreeSeries& series) { return transform(series.widths); });
    return result;
}

Held hold(const CrossdateInput& input, const Transform& transform) {
    Held held;
    held.series = transformed(input.dated, transform);
    held.table = site_table(held.series, tree_numbers(input.dated));
    if (input.reference.empty()) {
        held.against = means_of_other_trees(held.table);
    } else {
        const auto series = transformed(input.reference, transform);
        held.against.assign(input.dated.size(), mean_series(site_table(series, tree_numbers(input.reference))));
    }
    return held;
}

std::optional<double> mean_over(const std::vector<DatedResult>& all,
                                const std::function<std::optional<double>(const DatedResult&)>& value) {
    double sum = 0.0;
    int n = 0;
    for (const DatedResult& one : all) {
        if (const auto here = value(one)) {
            sum += *here;
            ++n;
        }
    }
    return n == 0 ? std::nullopt : std::optional(sum / n);
}

double typical_r(const std::vector<DatedResult>& all) {
    Eigen::ArrayXd r(static_cast<Eigen::Index>(all.size()));
    std::ranges::transform(all, r.begin(), [](const DatedResult& one) { return one.agreement.r.value_or(none); });
    const double middle = median(r);
    return std::isnan(middle) ? 0.0 : middle;
}

/// The same widths under two names: one of them is to go.
void remark_twins(const std::vector<TreeSeries>& site, std::vector<DatedResult>& results) {
    for (std::size_t i = 0; i < site.size(); ++i) {
        for (std::size_t j = 0; j < i; ++j) {
            const YearSeries& a = site[i].widths;
            const YearSeries& b = site[j].widths;
            if (a.first_year == b.first_year && a.size() == b.size() &&
                ((a.values == b.values) || (a.values.isNaN() && b.values.isNaN())).all()) {
                results[i].remarks.push_back("it has the same widths as " + site[j].id);
                results[j].remarks.push_back("it has the same widths as " + site[i].id);
            }
        }
    }
}

std::vector<DatedResult> agreements(const CrossdateInput& input, const CrossdateOptions& options, const Held& indices) {
    const Held five = hold(input, five_year_logarithms);
    const Held yearly = hold(input, yearly_logarithms);
    std::vector<DatedResult> results;
    for (std::size_t i = 0; i < input.dated.size(); ++i) {
        const TreeSeries& series = input.dated[i];
        DatedResult result;
        result.id = series.id;
        result.tree = series.tree;
        result.first_year = series.widths.first_year;
        result.last_year = series.widths.last_year();
        result.agreement = agreement(indices.series[i], indices.against[i]);
        result.five_year = agreement(five.series[i], five.against[i]);
        result.yearly = agreement(yearly.series[i], yearly.against[i]);
        result.signs = sign_agreement(series.widths, indices.against[i]);
        result.best =
            best_shifts(indices.series[i], indices.against[i], least_overlap_of(indices.series[i]), options.positions);
        result.mean_sensitivity = mean_sensitivity(series.widths.values);
        result.ar1 = first_autocorrelation(series.widths.values);
        if (const IndexSeries index = index_series(series.widths, options.index); !index.remark.empty()) {
            result.remarks.push_back(index.remark);
        }
        if (!result.agreement.r) {
            result.remarks.emplace_back(result.agreement.overlap < 3
                                            ? "it has fewer than three years in common with series of other trees"
                                            : "its widths, or those of the others, don't vary");
        }
        results.push_back(std::move(result));
    }
    remark_twins(input.dated, results);
    return results;
}

UndatedResult place(const TreeSeries& series, const YearSeries& reference, const CrossdateOptions& options) {
    UndatedResult result;
    result.id = series.id;
    result.rings = series.widths.size();
    result.first_year = series.widths.first_year;
    const YearSeries index = index_series(series.widths, options.index).index;
    result.places = best_shifts(index, reference, least_overlap_of(index), options.positions);
    for (const RankedMatch& match : result.places) {
        result.signs.push_back(sign_agreement(series.widths, reference, match.match.shift));
    }
    if (result.places.empty()) {
        result.remarks.emplace_back("it has no position with enough years in common with the reference");
    }
    return result;
}

} // namespace

std::string CrossdateOptions::validate() const {
    constexpr int shortest = 10;
    constexpr int longest = 10'000;
    if (length && (*length < shortest || *length > longest)) {
        return "the length of segments must be 10 to 10,000 years";
    }
    if (step && (*step < 1 || *step > longest)) {
        return "the step of segments must be 1 to 10,000 years";
    }
    return index.validate();
}

CrossdateResult crossdate(const CrossdateInput& input, const CrossdateOptions& options, const Work& work) {
    CrossdateResult result;
    const auto to_index = [&](const YearSeries& widths) { return index_series(widths, options.index).index; };
    const Held indices = hold(input, to_index);
    result.dated = agreements(input, options, indices);
    result.length = options.length.value_or(segment_length_for(typical_r(result.dated)));
    result.step = options.step.value_or(std::max(1, result.length / 2));
    std::vector<SeriesSlips> slips = input.reference.empty()
                                         ? find_slips(input.dated, options.slips, work)
                                         : find_slips_against(input.reference, input.dated, options.slips, work);
    for (std::size_t i = 0; i < result.dated.size(); ++i) {
        DatedResult& one = result.dated[i];
        one.segments = segments(indices.series[i], indices.against[i], result.length, result.step);
        one.slips = std::move(slips[i].slips);
        one.alignment = std::move(slips[i].alignment);
        one.whole_shift = slips[i].whole_shift;
        one.index = indices.series[i];
        one.others = indices.against[i];
        if (i < input.wood.size()) {
            one.places = slip_places(one.slips, one.alignment, one.whole_shift, input.wood[i]);
        }
    }
    if (!input.undated.empty()) {
        const auto& known = input.reference.empty() ? input.dated : input.reference;
        const YearSeries reference = mean_series(site_table(transformed(known, to_index), tree_numbers(known)));
        for (const TreeSeries& series : input.undated) {
            result.undated.push_back(place(series, reference, options));
        }
    }
    if (options.pairs) {
        result.pairs = pair_results(indices.table, work);
    }
    SiteResult& site = result.site;
    site.series = indices.table.series();
    site.trees = indices.table.tree_count();
    site.variance = common_variance(indices.table);
    site.series_intercorrelation = mean_over(result.dated, [](const DatedResult& one) { return one.agreement.r; });
    site.mean_sensitivity = mean_over(result.dated, [](const DatedResult& one) { return one.mean_sensitivity; });
    site.ar1 = mean_over(result.dated, [](const DatedResult& one) { return one.ar1; });
    return result;
}

} // namespace pithward::dating
