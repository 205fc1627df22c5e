#include "libcore/specimen/pith.h"

namespace pithward {

std::string word(Pith::Source source) {
    switch (source) {
    case Pith::Source::Curves:
        return "curves";
    case Pith::Source::Seen:
        return "seen";
    case Pith::Source::Hand:
        return "hand";
    }
    return "curves";
}

std::optional<Pith::Source> pith_source_from(std::string_view text) {
    for (const auto source : {Pith::Source::Curves, Pith::Source::Seen, Pith::Source::Hand}) {
        if (word(source) == text) {
            return source;
        }
    }
    return std::nullopt;
}

} // namespace pithward
