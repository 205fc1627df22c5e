#include "tests/project/fake_project.h"

#include "libcore/record/scan_entry.h"

#include <QTest>
#include <fstream>

namespace pithward::bench {

namespace {

Site fake_site() {
    Site site;
    site.id = "Hill";
    for (const char* tree_id : {"H01", "H02"}) {
        Tree tree;
        tree.id = tree_id;
        tree.species = "PISY";
        for (const char* side : {"A", "B"}) {
            Core core;
            core.id = tree.id + side;
            core.scan = core.id == "H02B" ? "" : "scans/" + core.id + ".png";
            tree.cores.push_back(core);
        }
        site.trees.push_back(tree);
    }
    return site;
}

} // namespace

void FakeProject::SetUp() {
    std::filesystem::create_directory(folder.file("scans"));
    std::vector<record::ScanEntry> scans;
    for (const char* core : {"H01A", "H01B", "H02A"}) {
        const std::string path = std::string("scans/") + core + ".png";
        std::ofstream(folder.file(path)) << "the pixels of " << core;
        scans.push_back(record::scan_entry(folder.file(path), path).value());
    }
    const auto stamp = test::stamp_by("Ida");
    record::Project project = record::Project::create(file, std::vector{fake_site()}, scans, stamp).value();
    for (int core = 1; core <= 2; ++core) {
        const std::string id = core == 1 ? "H01A" : "H01B";
        Reading reading = fake_reading(fake_request("scans/" + id + ".png"));
        reading.core = id;
        reading.last_year = Year(2020);
        ASSERT_TRUE(project.add_reading(record::CoreId{core}, reading, "Propose a reading", stamp).has_value());
    }
}

void FakeProject::open(MainWindow& window, const std::string& who) {
    window.resize(1400, 900);
    window.show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(&window));
    window.control().model().set_person(who);
    window.control().open({QString::fromStdString(file)});
    ASSERT_TRUE(QTest::qWaitFor([&] { return window.control().model().core() != nullptr; }));
    ASSERT_TRUE(written(window));
}

bool FakeProject::written(MainWindow& window) {
    const bool done = QTest::qWaitFor([&] { return window.desk().waiting() == 0; });
    QCoreApplication::processEvents();
    return done;
}

} // namespace pithward::bench
