#include "libcore/edit/path_shapes.h"

#include <cmath>

namespace pithward {

namespace {

bool has(const Path& path, Vertex vertex, std::size_t beyond = 0) {
    return vertex.leg < path.legs.size() && vertex.index < path.legs[vertex.leg].points.size() + beyond;
}

tl::unexpected<Fault> no_vertex() {
    return fail("", "the path has no such bend any more", "point at one that it has");
}

double between(ImagePoint a, ImagePoint b) {
    return std::hypot(a.x - b.x, a.y - b.y);
}

} // namespace

Outcome<Path> with_vertex_moved(Path path, Vertex vertex, ImagePoint to) {
    if (!has(path, vertex)) {
        return no_vertex();
    }
    path.legs[vertex.leg].points[vertex.index] = to;
    return path;
}

Outcome<Path> with_vertex_added(Path path, Vertex before, ImagePoint at) {
    if (!has(path, before, 1)) {
        return no_vertex();
    }
    auto& points = path.legs[before.leg].points;
    points.insert(points.begin() + static_cast<std::ptrdiff_t>(before.index), at);
    return path;
}

Outcome<Path> without_vertex(Path path, Vertex vertex) {
    if (!has(path, vertex)) {
        return no_vertex();
    }
    auto& points = path.legs[vertex.leg].points;
    if (points.size() <= 2) {
        return fail("", "a path needs two ends", "drag the end elsewhere, or draw another path");
    }
    points.erase(points.begin() + static_cast<std::ptrdiff_t>(vertex.index));
    return path;
}

Outcome<Path> extended_to(Path path, const std::string& scan, ImagePoint to) {
    if (path.legs.empty() || path.legs.front().points.empty() || path.legs.back().points.empty()) {
        return no_vertex();
    }
    Leg& first = path.legs.front();
    Leg& last = path.legs.back();
    const bool outward = first.scan == scan &&
                         (last.scan != scan || between(first.points.front(), to) < between(last.points.back(), to));
    if (!outward && last.scan != scan) {
        return fail("", "neither end of the path lies on this scan", "show the scan of the end");
    }
    auto& points = outward ? first.points : last.points;
    points.insert(outward ? points.begin() : points.end(), to);
    return path;
}

} // namespace pithward
