#include "app/report/labels/field_page.h"

namespace pithward::report {

namespace {

void add_where(std::vector<Block>& blocks) {
    blocks.push_back(Heading{1, "Which side to core"});
    blocks.push_back(Bullets{{
        "The stem leans: core square to the lean, from either side. In conifers compression wood lies on the side that "
        "the stem leans to, in hardwoods tension wood on the upper side; square to the lean you avoid both.",
        "No lean, but a slope: core along the contour, since stems lean down the slope or did so once.",
        "No lean and no slope: any side; the opposite side for a second core, or a quarter round.",
        "A core nearer than 60 degrees to the line of the lean, or of the slope's fall where no lean is noted, is "
        "pointed out when it is measured. Note a lean of 0 where there is none.",
        "Keep clear of branches, wounds, swellings, rot and buttresses. Point the borer at the middle of the stem.",
    }});
}

void add_depth(std::vector<Block>& blocks) {
    blocks.push_back(Heading{1, "How deep"});
    blocks.push_back(Bullets{{
        "Half the stem's diameter suffices: the pith lies there, or near. Going on wounds the tree for nothing.",
        "Measure the diameter at breast height (1.3 m) and the thickness of the bark: the length from bark to pith is "
        "held against them later. The pith may be off the middle by a tenth, more where the stem leans.",
        "Bark and the outermost ring tell the year. Do not let them break off, and note it when they do.",
        "For ages core as low as you can, and note the height: the years up to it have to be added.",
    }});
}

void add_notes(std::vector<Block>& blocks) {
    blocks.push_back(Heading{1, "What to note"});
    blocks.push_back(Bullets{{
        "At the tree, before the next one: site, tree, core, species, and the date with its day. In the growing "
        "season the date decides which year the outermost ring is.",
        "Diameter, bark, height of the core, and the compass degrees of the side that the borer entered; the way the "
        "stem leans and by how many degrees; the way the ground falls.",
        "Outer wood: complete, unfinished (cored while it grew) or lost. Pith: reached, near or missed. In how many "
        "pieces the core came out, and where wood is missing.",
        "Put the label on the straw at once, bark end marked. One identifier stands for one core of a site, for good.",
    }});
}

/// As in docs/cautions.md.
void add_cautions(std::vector<Block>& blocks) {
    blocks.push_back(Heading{1, "Take care"});
    for (const char* caution : {
             "Coring wounds the tree. Ask its owner and the authority in charge before you core, and keep to their "
             "rules. Take as few cores as the question needs, none from trees that can't bear it.",
             "Clean the borer between trees, so that no disease goes from one to the next.",
             "A borer under load can slip or break. Wear gloves and eye protection, and keep clear of the handle's "
             "sweep; no coring in wind or under hanging branches.",
             "Sanding makes fine dust. Wear a dust mask made for it, use extraction, keep sparks away; dust of some "
             "woods causes allergies or worse.",
             "Age and ring widths are no judgement of a tree's safety. Whether a tree may stand belongs to licensed "
             "practice under local rules.",
             "Ages have intervals. A core without its pith gives a least age.",
         }) {
        blocks.push_back(Paragraph{caution, true});
    }
    blocks.push_back(Paragraph{"Local rules and the instructions of your tools come before this page. All of it is "
                               "common practice of the trade, none of it a law of nature."});
}

} // namespace

Document field_page() {
    Document page;
    page.title = "At the tree";
    page.subtitle = "What makes a core worth measuring";
    page.contents = false; // one page
    add_where(page.blocks);
    add_depth(page.blocks);
    add_notes(page.blocks);
    add_cautions(page.blocks);
    return finished(page);
}

} // namespace pithward::report
