#include "libcore/edit/reading_head.h"

namespace pithward {

ReadingHead head_of(const Reading& reading) {
    return {.analyst = reading.analyst,
            .state = reading.state,
            .wood = reading.wood,
            .outer = reading.outer,
            .last_year = reading.last_year,
            .bark_end = reading.bark_end,
            .wood_edge = reading.wood_edge,
            .pith = reading.pith,
            .note = reading.note};
}

void set_head(Reading& reading, const ReadingHead& head) {
    reading.analyst = head.analyst;
    reading.state = head.state;
    reading.wood = head.wood;
    reading.outer = head.outer;
    reading.last_year = head.last_year;
    reading.bark_end = head.bark_end;
    reading.wood_edge = head.wood_edge;
    reading.pith = head.pith;
    reading.note = head.note;
}

} // namespace pithward
