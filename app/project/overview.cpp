#include "app/project/overview.h"

#include <algorithm>

namespace pithward::bench {

Outcome<ProjectOverview> read_overview(const record::Project& project) {
    ProjectOverview overview{project.file(), project.folder(), {}, {}, {}, {}, project.can_change(), project.remark()};
    const auto keep = [](auto& place) { return [&place](auto values) { place = std::move(values); }; };
    return project.cores()
        .map(keep(overview.cores))
        .and_then([&] { return project.readings().map(keep(overview.readings)); })
        .and_then([&] { return project.scans().map(keep(overview.scans)); })
        .and_then([&] { return project.people().map(keep(overview.people)); })
        .map([&] { return overview; });
}

const record::CoreEntry* core_of(const ProjectOverview& overview, record::CoreId id) {
    const auto core = std::ranges::find(overview.cores, id, &record::CoreEntry::id);
    return core == overview.cores.end() ? nullptr : &*core;
}

const record::ReadingEntry* reading_of(const ProjectOverview& overview, ReadingId id) {
    const auto reading = std::ranges::find(overview.readings, id, &record::ReadingEntry::id);
    return reading == overview.readings.end() ? nullptr : &*reading;
}

const record::ReadingEntry* accepted_of(const ProjectOverview& overview, record::CoreId id) {
    const record::CoreEntry* core = core_of(overview, id);
    return core != nullptr && core->accepted ? reading_of(overview, *core->accepted) : nullptr;
}

QString person_in_words(const ProjectOverview& overview, const std::string& name) {
    const auto person = std::ranges::find(overview.people, name, &record::Person::name);
    const std::string role = person == overview.people.end() ? std::string() : person->role;
    return QString::fromStdString(role.empty() ? name : name + ", " + role);
}

std::string name_of_reading(const ProjectOverview& overview, ReadingId id) {
    const record::ReadingEntry* reading = reading_of(overview, id);
    const record::CoreEntry* core = reading != nullptr ? core_of(overview, reading->core) : nullptr;
    if (core == nullptr) {
        return {};
    }
    const auto several = std::ranges::count(overview.readings, reading->core, &record::ReadingEntry::core) > 1;
    return several ? core->core.id + ", reading " + std::to_string(id.value) : core->core.id;
}

} // namespace pithward::bench
