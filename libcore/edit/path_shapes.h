#pragma once

#include "libcore/specimen/outcome.h"
#include "libcore/specimen/path.h"

#include <cstddef>

namespace pithward {

// Other shapes of a path, as values; `reroute` (libcore/edit/path_edits.h) makes edits of them.

/// A vertex of a path, from the bark.
struct Vertex {
    std::size_t leg = 0;
    std::size_t index = 0;
    friend bool operator==(const Vertex&, const Vertex&) = default;
};

/// Each fails where the path has no such vertex.
[[nodiscard]] Outcome<Path> with_vertex_moved(Path path, Vertex vertex, ImagePoint to);
/// Puts a vertex in before this one; one past the last vertex of a leg adds at its end.
[[nodiscard]] Outcome<Path> with_vertex_added(Path path, Vertex before, ImagePoint at);
/// Fails too where a leg would be left with fewer than two vertices.
[[nodiscard]] Outcome<Path> without_vertex(Path path, Vertex vertex);
/// Goes on to a place from the end of the path that is nearer to it.
[[nodiscard]] Outcome<Path> extended_to(Path path, const std::string& scan, ImagePoint to);

} // namespace pithward
