#pragma once

namespace pithward::pith {

/// What is known of growth near the pith before a core is looked at. The defaults are assumed; a project that has other
/// cores of the site with the pith on them may tell better.
struct GrowthBeforehand {
    double trend = 0.01;      ///< Change of ln(width) from one ring to the next one inward (the usual age trend) ...
    double trend_sd = 0.015;  ///< ... and how it differs between cores.
    double scatter = 0.25;    ///< Deviation of ln(width) of single rings about the trend.
    double persistence = 0.4; ///< Correlation of neighbouring rings about the trend.
    /// Further inward growth goes back toward the usual: wide rings grow narrower and narrow ones wider. This share of
    /// how far ln(width) is from the usual one is lost in the end; told by ring series of open archives
    /// (docs/methods.md).
    double back_to_usual = 0.3;
    double usual_mm = 1.0; ///< Width that it goes back to.
};

} // namespace pithward::pith
