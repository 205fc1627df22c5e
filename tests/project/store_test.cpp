#include "app/project/store.h"
#include "libcore/edit/boundary_edits.h"
#include "libcore/edit/reading_edits.h"
#include "tests/record/made_up_project.h"
#include "tests/support/temporary_folder.h"

#include <gtest/gtest.h>

#include <QSignalSpy>
#include <QTest>
#include <QThread>
#include <set>
#include <tuple>

namespace pithward::bench {
namespace {

using record::Project;
using test::stamp_by;

class StoreTest : public testing::Test {
protected:
    void SetUp() override { std::ignore = test::made_up_project(file); }
    static bool opened(Store& store, const std::string& path) {
        std::optional<Outcome<void>> answer;
        store.open(path, [&](Outcome<void> done) { answer = std::move(done); });
        EXPECT_TRUE(QTest::qWaitFor([&] { return answer.has_value(); }));
        return answer && answer->has_value();
    }

    test::TemporaryFolder folder;
    std::string file = folder.file("hill wood é.pithward");
    ReadingId id{1};
};

TEST_F(StoreTest, AnswersComeInTheOrderOfTheQuestionsOnTheThreadThatAsked) {
    Store store;
    ASSERT_TRUE(opened(store, file));
    std::vector<int> order;
    std::set<QThread*> asked_in;
    for (int i = 0; i < 20; ++i) {
        store.ask<int>(
            [&asked_in, i](Project& project) -> Outcome<int> {
                asked_in.insert(QThread::currentThread());
                auto done = project.edit(ReadingId{1}, set_note(*project.reading(ReadingId{1}), std::to_string(i)),
                                         stamp_by("Ida"));
                return done ? Outcome<int>(i) : tl::unexpected(done.error());
            },
            [&order](const Outcome<int>& answer) {
                EXPECT_EQ(QThread::currentThread(), QCoreApplication::instance()->thread());
                order.push_back(answer.value_or(-1));
            });
    }
    EXPECT_EQ(store.waiting(), 20);
    ASSERT_TRUE(QTest::qWaitFor([&] { return store.waiting() == 0; }));
    ASSERT_EQ(order.size(), 20U);
    EXPECT_TRUE(std::ranges::is_sorted(order));
    EXPECT_EQ(order.front(), 0);
    ASSERT_EQ(asked_in.size(), 1U) << "one store, one thread";
    EXPECT_NE(*asked_in.begin(), QThread::currentThread());
}

TEST_F(StoreTest, ClosingWaitsForTheQueue) {
    {
        Store store;
        ASSERT_TRUE(opened(store, file));
        for (int i = 0; i < 50; ++i) {
            store.ask<void>(
                [i](Project& project) {
                    return project
                        .edit(ReadingId{1}, set_note(*project.reading(ReadingId{1}), "note " + std::to_string(i)),
                              stamp_by("Ida"))
                        .map([](const auto&) {});
                },
                [](const Outcome<void>& done) { EXPECT_TRUE(done.has_value()); });
        }
    }
    EXPECT_EQ(test::opened(file).reading(id)->note, "note 49");
    EXPECT_EQ(test::opened(file).document(id)->revision(), 50);
    EXPECT_FALSE(std::filesystem::exists(file + "-wal")) << "one file again after a clean close";
}

TEST_F(StoreTest, ARefusalComesBackAsAFault) {
    Store store;
    ASSERT_TRUE(opened(store, file));
    const Reading seen = test::opened(file).reading(id).value();
    std::optional<Outcome<void>> answer;
    const auto annotate_first = [&](const char* note) {
        const Edit edit = annotate(seen, seen.boundaries[0].id, note).value();
        answer.reset();
        store.ask<void>(
            [edit, reading = id](Project& project) {
                return project.edit(reading, edit, stamp_by("Ida")).map([](const auto&) {});
            },
            [&](Outcome<void> done) { answer = std::move(done); });
        EXPECT_TRUE(QTest::qWaitFor([&] { return answer.has_value(); }));
    };
    annotate_first("one");
    EXPECT_TRUE(answer->has_value());
    annotate_first("two"); // of what is no longer so
    ASSERT_FALSE(answer->has_value());
    EXPECT_NE(answer->error().what.find("no longer what it was"), std::string::npos);
}

TEST_F(StoreTest, ChangesOfAnotherWindowAreToldAndOwnOnesAreNot) {
    Store store;
    ASSERT_TRUE(opened(store, file));
    QSignalSpy told(&store, &Store::changed_by_others);
    store.ask<void>(
        [reading = id](Project& project) {
            return project.edit(reading, set_note(*project.reading(reading), "own"), stamp_by("Ida"))
                .map([](const auto&) {});
        },
        [](const Outcome<void>&) {});
    EXPECT_FALSE(told.wait(1000));
    Project other = test::opened(file);
    ASSERT_TRUE(other.edit(id, set_note(other.reading(id).value(), "theirs"), stamp_by("Udo")).has_value());
    EXPECT_TRUE(told.wait(1000)) << "within a second";
}

TEST_F(StoreTest, WhatCantBeOpenedIsToldAndWhatIsAskedThenFails) {
    Store store;
    EXPECT_FALSE(opened(store, folder.file("not there.pithward")));
    std::optional<Outcome<int>> answer;
    store.ask<int>([](Project&) -> Outcome<int> { return 1; }, [&](Outcome<int> done) { answer = std::move(done); });
    ASSERT_TRUE(QTest::qWaitFor([&] { return answer.has_value(); }));
    EXPECT_FALSE(answer->has_value());
}

} // namespace
} // namespace pithward::bench
