// The ages that the cores of a tree tell, as somebody works on one of them in the real window.
#include "app/bench/panels/message_bar.h"
#include "app/bench/window/main_window.h"
#include "libcore/record/tree_ages.h"
#include "tests/project/fake_project.h"

#include <gtest/gtest.h>

#include <QTest>
#include <span>

namespace pithward::bench {
namespace {

TEST_F(FakeProject, AnOpenFindingThatTheCoresOfATreeDifferGoesWhenTheyAgree) {
    {
        record::Project project = test::opened(file);
        for (const std::int64_t id : {1, 2}) {
            const Reading reading = project.reading(ReadingId{id}).value();
            Reading with_pith = reading;
            Pith pith;
            pith.inside = true;
            pith.at = {1900, 100};
            pith.missing_rings = 1;
            pith.missing_low = 0;
            pith.missing_high = 2;
            with_pith.pith = pith;
            with_pith.last_year = Year(id == 1 ? 2020 : 1980);
            with_pith.findings.clear();
            ASSERT_TRUE(project.add_reading(record::CoreId{id}, with_pith, "Read again", test::stamp_by("Ida")));
            ASSERT_TRUE(project.accept(ReadingId{id + 2}, test::stamp_by("Ida")).has_value());
        }
        const auto cores = project.cores().value();
        const std::span of_tree(cores.data(), 2);
        ASSERT_EQ(
            record::compare_tree_ages(project, of_tree, record::AgeFindings::FollowAdd, test::stamp_by("Pithward"))
                .value(),
            1);
        ASSERT_EQ(project.reading(ReadingId{4})->findings.size(), 1U);
    }
    Appearance appearance;
    MainWindow window{open_fake, appearance};
    open(window, "Ida");
    window.desk().open_reading(ReadingId{4});
    const auto shown = [&] {
        const auto* core = window.control().model().core();
        return core != nullptr && core->reading.id == ReadingId{4} ? &core->reading : nullptr;
    };
    ASSERT_TRUE(QTest::qWaitFor([&] { return shown() != nullptr && shown()->findings.size() == 1; }));
    // A person looks at it, and rights the year step by step.
    window.editor().take_up(shown()->boundaries[3].id);
    window.actions().at(ActionId::Confirm)->trigger();
    const std::string before = shown()->findings[0].reason;
    window.control().set_last_year(Year(1990));
    ASSERT_TRUE(
        QTest::qWaitFor([&] { return shown()->findings.size() == 1 && shown()->findings[0].reason != before; }));
    window.control().set_last_year(Year(2020));
    ASSERT_TRUE(QTest::qWaitFor([&] { return shown()->findings.empty(); })) << shown()->findings[0].reason;
    ASSERT_TRUE(written(window));
    const Document kept = test::opened(file, record::Project::Access::Read).document(ReadingId{4}).value();
    EXPECT_TRUE(kept.reading().findings.empty());
    EXPECT_EQ(kept.log().back().who, "Pithward");
    EXPECT_TRUE(window.messages().text().isEmpty()) << window.messages().text().toStdString();
}

} // namespace
} // namespace pithward::bench
