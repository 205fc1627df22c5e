#pragma once

#include "app/picture/measured_core.h"
#include "app/review/queue_items.h"
#include "libcore/edit/document.h"
#include "libcore/record/project.h"

#include <string>
#include <vector>

namespace pithward::bench {

/// What a person looks at to judge one item of the queue.
struct ReviewCase {
    Document document; ///< The reading, with its log.
    record::CoreEntry core;
    picture::MeasuredCore measured;
    struct Sibling {
        std::string core;
        RingSeries series;
    };
    std::vector<Sibling> siblings; ///< The accepted readings of the tree's other cores.
    [[nodiscard]] const Reading& reading() const { return document.reading(); }
    /// The finding of an item; null where it is about none, or that is gone.
    [[nodiscard]] const Finding* finding(const QueueItem& item) const;
};

[[nodiscard]] Outcome<ReviewCase> read_case(const record::Project& project, const QueueItem& item);

} // namespace pithward::bench
