#include "libcore/record/project.h"

#include "libcore/record/history_rows.h"
#include "libcore/record/project_header.h"
#include "libcore/record/project_store.h"
#include "libcore/record/scan_rows.h"
#include "libcore/record/schema.h"
#include "libcore/record/site_rows.h"

#include <QDateTime>

namespace pithward::record {

namespace {

bool ended_uncleanly(const std::filesystem::path& file) {
    std::error_code error;
    return std::filesystem::exists(file.string() + "-wal", error) ||
           std::filesystem::exists(file.string() + "-journal", error);
}

} // namespace

Project::Project(std::unique_ptr<Store> store)
    : store_(std::move(store)) {}
Project::~Project() = default;
Project::Project(Project&&) noexcept = default;
Project& Project::operator=(Project&&) noexcept = default;

Outcome<Project> Project::create(const std::filesystem::path& file, std::span<const Site> sites,
                                 std::span<const ScanEntry> scans, const EditStamp& stamp) {
    std::error_code error;
    if (std::filesystem::exists(std::filesystem::symlink_status(file, error))) {
        return fail(file.string(), "the file is there already", "choose another name");
    }
    const auto made = [&]() -> Outcome<Project> {
        auto connection = Connection::open(file, Connection::Mode::Create);
        auto ready = connection ? migrate(**connection, migration_steps()) : tl::unexpected(connection.error());
        if (!ready) {
            return tl::unexpected(std::move(ready.error()));
        }
        auto store = std::make_unique<Store>(std::move(*connection));
        ready = store->change([&] {
            auto written = write_sites(store->connection(), sites);
            for (const ScanEntry& scan : scans) {
                written = written ? insert_scan(store->connection(), scan) : written;
            }
            return written ? write_deed(store->connection(), {.label = "Make the project"}, stamp) : written;
        });
        return ready ? Outcome<Project>(Project(std::move(store))) : tl::unexpected(std::move(ready.error()));
    };
    auto project = made();
    if (!project) {
        std::filesystem::remove(file, error); // no half of a project stays
    }
    return project;
}

Outcome<Project> Project::open(const std::filesystem::path& file, Access access, Disk disk) {
    if (access == Access::AsAllowed) {
        access = may_be_changed(file) ? Access::Write : Access::Read;
    }
    const bool unclean = ended_uncleanly(file);
    const auto mode = access == Access::Read ? Connection::Mode::Read : Connection::Mode::Write;
    auto connection = Connection::open(file, mode, disk);
    if (!connection) {
        return tl::unexpected(std::move(connection.error()));
    }
    const auto version = (*connection)->version();
    if (!version) {
        return tl::unexpected(version.error());
    }
    if (*version > project_version) {
        return tl::unexpected(newer_than_known(file, *version));
    }
    Outcome<void> sound;
    if (*version < project_version) {
        if (access == Access::Read) {
            return fail(file.string(), "an older Pithward wrote this project",
                        "let someone who may write to it open it once");
        }
        sound = migrate(**connection, migration_steps());
    }
    sound = sound ? check_tables(**connection) : sound;
    if (sound && unclean) {
        sound = (*connection)->check();
    }
    if (!sound) {
        return tl::unexpected(std::move(sound.error()));
    }
    return Project(std::make_unique<Store>(std::move(*connection)));
}

const std::filesystem::path& Project::file() const {
    return store_->connection().file();
}

std::filesystem::path Project::folder() const {
    return std::filesystem::absolute(file()).parent_path();
}

bool Project::can_change() const {
    return store_->connection().writes();
}

const std::string& Project::remark() const {
    return store_->connection().remark();
}

Outcome<std::int64_t> Project::changes_by_others() const {
    return store_->connection().changes_by_others();
}

Outcome<void> Project::check() const {
    return store_->connection().check();
}

Outcome<void> Project::copy_to(const std::filesystem::path& copy) const {
    return store_->connection().copy_to(copy);
}

std::string utc_now() {
    return QDateTime::currentDateTimeUtc().toString(Qt::ISODateWithMs).toStdString();
}

} // namespace pithward::record
