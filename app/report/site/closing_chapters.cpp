#include "app/report/site/chapters.h"

namespace pithward::report {

void add_limits(std::vector<Block>& blocks) {
    blocks.push_back(Heading{1, "Limits and cautions"});
    blocks.push_back(Bullets{{
        "A scan shows brightness and colour, not cells. Rings under three pixels, rings without latewood and rings "
        "that the "
        "core misses can't be seen on it. A confidence says how sure the program is of what is there, not that nothing "
        "is "
        "missing: only crossdating tells that.",
        "Counting is not dating. A ring overlooked, counted twice or never laid shifts every older year by one.",
        "A core without its pith gives a least age. Tell the interval with the number.",
        "Age and ring widths are no judgement of a tree's safety. Whether a tree may stand belongs to licensed "
        "practice under "
        "local rules.",
        "Coring wounds the tree: ask its owner and the authority in charge first, take as few cores as the question "
        "needs, and "
        "clean the borer between trees. A borer under load can slip or break; wear gloves and eye protection.",
        "Sanding makes fine dust: wear a mask made for it, use extraction, keep sparks away.",
    }});
    blocks.push_back(
        Paragraph{"These are common practice of the trade. Local rules and the instructions of your tools come "
                  "before them.",
                  true});
}

void add_sources(std::vector<Block>& blocks) {
    blocks.push_back(Heading{1, "Sources"});
    blocks.push_back(
        Paragraph{"Where the formulas come from; cited from memory. docs/methods.md of the program tells each "
                  "step, and which values are assumed."});
    blocks.push_back(Bullets{{
        "M. G. L. Baillie and J. R. Pilcher, 1973: Tree-Ring Bulletin 33 (logarithms of five years).",
        "K. R. Briffa and P. D. Jones, 1990: in Methods of Dendrochronology (correlation of trees).",
        "E. R. Cook and K. Peters, 1981: Tree-Ring Bulletin 41 (smoothing spline).",
        "R. P. Duncan, 1989: New Zealand Natural Sciences 16 (distance to the pith by an arc).",
        "D. Eckstein and J. Bauch, 1969: Forstwissenschaftliches Centralblatt 88 (sign agreement).",
        "B. Efron, 1979 (the bootstrap).",
        "H. C. Fritts, 1976: Tree Rings and Climate (falling exponential, mean sensitivity).",
        "F. Mosteller and J. W. Tukey, 1977: Data Analysis and Regression (biweight mean).",
        "T. M. L. Wigley, K. R. Briffa and P. D. Jones, 1984: Journal of Climate and Applied Meteorology 23 (EPS).",
    }});
}

} // namespace pithward::report
