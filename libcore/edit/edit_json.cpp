#include "libcore/edit/edit_json.h"

#include "libcore/edit/json_fields.h"
#include "libcore/edit/object_lists.h"

#include <functional>
#include <map>

namespace pithward {

using exact_json::Json;
using exact_json::Malformed;

namespace {

constexpr int edit_version = 1;
constexpr std::size_t longest_edit = std::size_t{64} << 20U;
constexpr int deepest_group = 8;
constexpr int deepest_edit_json = 40;
constexpr std::size_t most_parts = 1'000'000;

template <typename T>
struct Tag;
template <>
struct Tag<Boundary> {
    static constexpr const char* word = "ring-boundary";
};
template <>
struct Tag<Candidate> {
    static constexpr const char* word = "candidate";
};
template <>
struct Tag<Break> {
    static constexpr const char* word = "break";
};
template <>
struct Tag<AbsentRing> {
    static constexpr const char* word = "absent-ring";
};
template <>
struct Tag<Finding> {
    static constexpr const char* word = "finding";
};
template <>
struct Tag<ReadingHead> {
    static constexpr const char* word = "entries";
};
template <>
struct Tag<Path> {
    static constexpr const char* word = "path";
};

template <typename T>
std::string tag(const char* what) {
    return std::string(Tag<T>::word) + "-" + what;
}

Json body_json(const EditGroup& group);

template <typename T>
Json body_json(const Added<T>& added) {
    return {{"edit", tag<T>("added")}, {"value", exact_json::write(added.value)}};
}
template <typename T>
Json body_json(const Removed<T>& removed) {
    return {{"edit", tag<T>("removed")}, {"value", exact_json::write(removed.value)}};
}
template <typename T>
Json body_json(const Changed<T>& changed) {
    return {{"edit", tag<T>("changed")},
            {"before", exact_json::write(changed.before)},
            {"after", exact_json::write(changed.after)}};
}
Json body_json(const CalibrationChanged& changed) {
    const auto scale = [](const std::optional<Calibration>& one) { return one ? exact_json::write(*one) : Json(); };
    return {{"edit", "scale-changed"},
            {"scan", changed.scan},
            {"before", scale(changed.before)},
            {"after", scale(changed.after)}};
}

Json edit_json(const Edit& edit) {
    return std::visit([](const auto& body) { return body_json(body); }, edit.body);
}

Json body_json(const EditGroup& group) {
    Json parts = Json::array();
    for (const Edit& edit : group.edits) {
        parts.push_back(edit_json(edit));
    }
    return {{"edit", "group"}, {"label", group.label}, {"parts", std::move(parts)}};
}

using BodyReader = std::function<Edit::Body(const Json&)>;

template <typename T>
T value_of(const Json& object, const char* key) {
    T value;
    exact_json::read(exact_json::field(object, key), value);
    return value;
}

template <typename T>
void add_changed(std::map<std::string, BodyReader>& readers) {
    readers[tag<T>("changed")] = [](const Json& object) {
        return Changed<T>{value_of<T>(object, "before"), value_of<T>(object, "after")};
    };
}

template <typename T>
void add_object(std::map<std::string, BodyReader>& readers) {
    readers[tag<T>("added")] = [](const Json& object) { return Added<T>{value_of<T>(object, "value")}; };
    readers[tag<T>("removed")] = [](const Json& object) { return Removed<T>{value_of<T>(object, "value")}; };
    add_changed<T>(readers);
}

std::optional<Calibration> scale_of(const Json& object, const char* key) {
    return exact_json::optional_field(object, key) != nullptr ? std::optional(value_of<Calibration>(object, key))
                                                              : std::nullopt;
}

const std::map<std::string, BodyReader>& body_readers() {
    static const std::map<std::string, BodyReader> all = [] {
        std::map<std::string, BodyReader> readers;
        add_object<Boundary>(readers);
        add_object<Candidate>(readers);
        add_object<Break>(readers);
        add_object<AbsentRing>(readers);
        add_object<Finding>(readers);
        add_changed<ReadingHead>(readers);
        add_changed<Path>(readers);
        readers["scale-changed"] = [](const Json& object) {
            return CalibrationChanged{exact_json::text(object, "scan"), scale_of(object, "before"),
                                      scale_of(object, "after")};
        };
        return readers;
    }();
    return all;
}

Edit read_edit(const Json& object, int depth) {
    const std::string kind = exact_json::text(object, "edit");
    if (kind == "group") {
        if (depth >= deepest_group) {
            throw Malformed{"groups are nested too deeply"};
        }
        EditGroup group{exact_json::text(object, "label"), {}};
        const Json& parts = exact_json::list(object, "parts");
        group.edits.reserve(parts.size());
        for (const Json& part : parts) {
            group.edits.push_back(read_edit(part, depth + 1));
        }
        return {std::move(group)};
    }
    const auto reader = body_readers().find(kind);
    if (reader == body_readers().end()) {
        throw Malformed{"there is no edit of the kind '" + kind.substr(0, 40) + "'"};
    }
    return {reader->second(object)};
}

void require_version(const Json& object) {
    if (exact_json::whole(object, "v", 0, 1'000'000) != edit_version) {
        throw Malformed{"it is of a version that this program does not know"};
    }
}

/// One line of JSON, of what `read` takes: a text that is too long would make the whole reading unreadable.
/// nlohmann-json objects to texts that are no UTF-8, and writes null for what is no number.
Outcome<std::string> line_of(const std::function<Json()>& make, const std::function<void(const Json&)>& read) {
    try {
        const Json json = make();
        std::string line = json.dump();
        if (line.size() > longest_edit) {
            throw Malformed{"it is too long"};
        }
        read(json);
        return line;
    } catch (const Malformed& malformed) {
        return fail("", "this can't be kept: " + malformed.what, "shorten it");
    } catch (const Json::exception&) {
        return fail("", "a text of this edit is not UTF-8", "rename the scan or retype the text");
    }
}

Json parsed(std::string_view text) {
    if (text.size() > longest_edit) {
        throw Malformed{"it is too long"};
    }
    constexpr std::size_t short_text = 1'000; // bounds depth and parts by itself, and is read in half of the time
    if (text.size() <= short_text) {
        return Json::parse(text);
    }
    std::size_t items = 0;
    const auto bounded = [&](int depth, Json::parse_event_t, Json&) {
        if (depth > deepest_edit_json || ++items > 100 * most_parts) {
            throw Malformed{"it is too large"};
        }
        return true;
    };
    return Json::parse(text, bounded);
}

template <typename Read>
auto reading_json(const char* what, Read read) -> Outcome<decltype(read())> {
    const auto refused = [&](const std::string& why) {
        return fail("", std::string(what) + " can't be read: " + why, "use a copy of the project from before");
    };
    try {
        return read();
    } catch (const Malformed& malformed) {
        return refused(malformed.what);
    } catch (const Json::exception&) {
        return refused("it is no JSON");
    }
}

} // namespace

Outcome<std::string> edit_to_json(const Edit& edit) {
    return line_of(
        [&] {
            Json object = edit_json(edit);
            object["v"] = edit_version;
            return object;
        },
        [](const Json& object) { (void)read_edit(object, 0); });
}

Outcome<Edit> edit_from_json(std::string_view text) {
    return reading_json("an edit", [&] {
        const Json object = parsed(text);
        require_version(object);
        return read_edit(object, 0);
    });
}

Outcome<std::string> record_to_json(const EditRecord& record) {
    return line_of(
        [&] {
            return Json{{"v", edit_version},
                        {"id", record.id.value},
                        {"who", record.who},
                        {"when", record.when},
                        {"program", record.program_version},
                        {"undoes", record.undoes ? Json(record.undoes->value) : Json()},
                        {"what", edit_json(record.edit)}};
        },
        [](const Json& object) { (void)read_edit(exact_json::field(object, "what"), 0); });
}

Outcome<EditRecord> record_from_json(std::string_view text) {
    return reading_json("a record of the history", [&] {
        const Json object = parsed(text);
        require_version(object);
        EditRecord record;
        record.id.value = exact_json::id(object);
        record.who = exact_json::text(object, "who");
        record.when = exact_json::text(object, "when");
        record.program_version = exact_json::text(object, "program");
        if (exact_json::optional_field(object, "undoes") != nullptr) {
            record.undoes = EditId{exact_json::id(object, "undoes")};
        }
        record.edit = read_edit(exact_json::field(object, "what"), 0);
        return record;
    });
}

template <typename T>
Outcome<std::string> value_to_json(const T& value) {
    return line_of([&] { return exact_json::write(value); },
                   [](const Json& json) {
                       T back;
                       exact_json::read(json, back);
                   });
}

template <typename T>
Outcome<T> value_from_json(std::string_view text) {
    return reading_json("a value", [&] {
        T value;
        exact_json::read(parsed(text), value);
        return value;
    });
}

template Outcome<std::string> value_to_json(const Break&);
template Outcome<std::string> value_to_json(const AbsentRing&);
template Outcome<std::string> value_to_json(const Finding&);
template Outcome<std::string> value_to_json(const Path&);
template Outcome<std::string> value_to_json(const ReadingHead&);
template Outcome<Break> value_from_json(std::string_view);
template Outcome<AbsentRing> value_from_json(std::string_view);
template Outcome<Finding> value_from_json(std::string_view);
template Outcome<Path> value_from_json(std::string_view);
template Outcome<ReadingHead> value_from_json(std::string_view);

} // namespace pithward
