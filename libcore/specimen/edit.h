#pragma once

#include "libcore/specimen/reading.h"

#include <cstdint>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace pithward {

/// An object that comes into a reading, goes from it, or changes in it. Old and new values are both held, so that every
/// edit has an inverse and a log of edits tells the whole story.
template <typename T>
struct Added {
    T value;
    friend bool operator==(const Added&, const Added&) = default;
};
template <typename T>
struct Removed {
    T value;
    friend bool operator==(const Removed&, const Removed&) = default;
};
template <typename T>
struct Changed {
    T before;
    T after;
    friend bool operator==(const Changed&, const Changed&) = default;
};

/// The scale of one scan changes.
struct CalibrationChanged {
    std::string scan;
    std::optional<Calibration> before;
    std::optional<Calibration> after;
    friend bool operator==(const CalibrationChanged&, const CalibrationChanged&) = default;
};

/// The plain fields of a reading that are set as one.
struct ReadingHead {
    std::string analyst;
    Reading::State state = Reading::State::Proposed;
    WoodType wood = WoodType::Conifer;
    OuterWood outer = OuterWood::Unknown;
    std::optional<Year> last_year;
    BarkEnd bark_end;
    std::optional<ImagePoint> wood_edge;
    std::optional<Pith> pith;
    std::string note;
    friend bool operator==(const ReadingHead&, const ReadingHead&) = default;
};

struct Edit;

/// Several edits that stand or fall together, with a name for the person who undoes them.
struct EditGroup {
    std::string label;
    std::vector<Edit> edits;
    friend bool operator==(const EditGroup&, const EditGroup&);
};

/// One change of a reading, as plain data.
struct Edit {
    using Body =
        std::variant<EditGroup, Changed<ReadingHead>, Changed<Path>, CalibrationChanged, Added<Boundary>,
                     Removed<Boundary>, Changed<Boundary>, Added<Break>, Removed<Break>, Changed<Break>,
                     Added<AbsentRing>, Removed<AbsentRing>, Changed<AbsentRing>, Added<Candidate>, Removed<Candidate>,
                     Changed<Candidate>, Added<Finding>, Removed<Finding>, Changed<Finding>>;
    Body body;
    friend bool operator==(const Edit&, const Edit&) = default;
};

inline bool operator==(const EditGroup& a, const EditGroup& b) {
    return a.label == b.label && a.edits == b.edits;
}

/// An edit in the log: who made it, when, with which version, and which earlier edit it takes back.
struct EditRecord {
    EditId id;
    std::string who;
    std::string when; ///< ISO 8601 in UTC.
    std::string program_version;
    std::optional<EditId> undoes;
    Edit edit;
    friend bool operator==(const EditRecord&, const EditRecord&) = default;
};

} // namespace pithward
