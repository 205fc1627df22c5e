#include "libcore/edit/touched.h"

#include "libcore/edit/object_lists.h"
#include "libcore/edit/reading_head.h"

namespace pithward {

namespace {

using Kind = Touched::Kind;

Touched ref(const Boundary& boundary) {
    return {Kind::Boundary, boundary.id.value, {}};
}
Touched ref(const Candidate& candidate) {
    return {Kind::Candidate, candidate.id.value, {}};
}
Touched ref(const Break& stretch) {
    return {Kind::Break, stretch.id.value, {}};
}
Touched ref(const AbsentRing& ring) {
    return {Kind::AbsentRing, ring.id.value, {}};
}
Touched ref(const Finding& finding) {
    return {Kind::Finding, finding.id.value, {}};
}

class Touching {
public:
    std::set<Touched> all;

    void operator()(const EditGroup& group) {
        for (const Edit& edit : group.edits) {
            std::visit(*this, edit.body);
        }
    }
    void operator()(const Changed<ReadingHead>& changed) {
        for_each_head_field([&](const char* name, auto field) {
            if (!(changed.before.*field == changed.after.*field)) {
                all.insert({Kind::Head, 0, name});
            }
        });
    }
    void operator()(const Changed<Path>& /*changed*/) { all.insert({Kind::Path, 0, {}}); }
    void operator()(const CalibrationChanged& changed) { all.insert({Kind::Calibration, 0, changed.scan}); }
    template <typename T>
    void operator()(const Added<T>& added) {
        add(added.value);
    }
    template <typename T>
    void operator()(const Removed<T>& removed) {
        add(removed.value);
    }
    template <typename T>
    void operator()(const Changed<T>& changed) {
        add(changed.before);
        add(changed.after);
    }

private:
    template <typename T>
    void add(const T& object) {
        all.insert(ref(object));
        if constexpr (std::same_as<T, AbsentRing>) {
            all.insert({Kind::Boundary, object.at.value, {}});
        }
    }
};

} // namespace

std::set<Touched> touched(const Edit& edit) {
    Touching touching;
    std::visit(touching, edit.body);
    return std::move(touching.all);
}

std::string name_of(const Touched& object) {
    const auto numbered = [&](const char* noun) { return std::string(noun) + " " + std::to_string(object.id); };
    switch (object.kind) {
    case Kind::Head:
        return object.part == "pith" ? "the pith" : "the reading's own entries";
    case Kind::Path:
        return "the path";
    case Kind::Calibration:
        return "the scale";
    case Kind::Boundary:
        return numbered(ObjectList<Boundary>::noun);
    case Kind::Candidate:
        return numbered(ObjectList<Candidate>::noun);
    case Kind::Break:
        return numbered(ObjectList<Break>::noun);
    case Kind::AbsentRing:
        return numbered(ObjectList<AbsentRing>::noun);
    case Kind::Finding:
        return numbered(ObjectList<Finding>::noun);
    }
    return "the reading";
}

std::int64_t highest_id(const Edit& edit) {
    std::int64_t highest = 0;
    for (const Touched& object : touched(edit)) {
        highest = std::max(highest, object.id);
    }
    return highest;
}

std::int64_t highest_id(const Reading& reading) {
    std::int64_t highest = 0;
    for_each_list(reading, [&](const auto& list) {
        for (const auto& object : list) {
            highest = std::max(highest, object.id.value);
        }
    });
    return highest;
}

} // namespace pithward
