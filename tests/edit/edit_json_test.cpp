#include "libcore/edit/edit_json.h"
#include "tests/edit/random_edits.h"
#include "tests/measure/straight_reading.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace pithward {
namespace {

TEST(EditJson, AnyEditComesBackEqual) {
    std::mt19937 random(11);
    for (int n = 0; n < 3000; ++n) {
        const Edit edit = test::any_edit(random);
        const auto text = edit_to_json(edit);
        ASSERT_TRUE(text.has_value()) << text.error().line();
        EXPECT_EQ(text->find('\n'), std::string::npos) << "it is one line";
        const auto back = edit_from_json(*text);
        ASSERT_TRUE(back.has_value()) << back.error().line() << "\n" << *text;
        ASSERT_EQ(*back, edit) << *text;
        EXPECT_EQ(edit_to_json(*back).value(), *text);
    }
}

TEST(EditJson, ARecordComesBackEqual) {
    std::mt19937 random(12);
    const EditRecord record{EditId{7}, "Ida", "2024-06-30T12:00:00Z", "0.1.0", EditId{3}, test::any_edit(random)};
    EXPECT_EQ(record_from_json(*record_to_json(record)).value(), record);
    EditRecord plain = record;
    plain.undoes.reset();
    EXPECT_EQ(record_from_json(*record_to_json(plain)).value(), plain);
}

TEST(EditJson, TheShapeIsWhatTheDocsSay) {
    const Edit edit{Added<AbsentRing>{{.id = AbsentRingId{4}, .at = BoundaryId{2}, .note = "by the others"}}};
    EXPECT_EQ(nlohmann::json::parse(*edit_to_json(edit)), nlohmann::json::parse(R"({"v": 1, "edit": "absent-ring-added",
                "value": {"id": 4, "at": 2, "origin": "analyst", "note": "by the others"}})"));
}

TEST(EditJson, ATextThatIsNoUtf8IsRefused) {
    const Edit edit{CalibrationChanged{"\xE9t\xE9.tif", std::nullopt, std::nullopt}};
    ASSERT_FALSE(edit_to_json(edit).has_value());
    EXPECT_EQ(edit_to_json(edit).error().what, "a text of this edit is not UTF-8");
}

TEST(EditJson, WhatCouldNotBeReadAgainIsNotWritten) {
    const Edit edit{Added<AbsentRing>{{.id = AbsentRingId{4}, .at = BoundaryId{2}, .note = std::string(20'001, 'x')}}};
    ASSERT_FALSE(edit_to_json(edit).has_value());
    EXPECT_EQ(edit_to_json(edit).error().remedy, "shorten it");
    EXPECT_FALSE(value_to_json(std::get<Added<AbsentRing>>(edit.body).value).has_value());
}

TEST(EditJson, HostileTextIsRefusedInWords) {
    std::string deep;
    for (int n = 0; n < 100; ++n) {
        deep += R"({"v":1,"edit":"group","label":"","parts":[)";
    }
    std::string nested = R"({"edit":"group","label":"","parts":[)";
    for (int n = 0; n < 9; ++n) {
        nested.insert(0, R"({"v":1,"edit":"group","label":"","parts":[)");
        nested += "]}";
    }
    nested += "]}";
    const std::pair<std::string, const char*> all[] = {
        {"", "it is no JSON"},
        {"{", "it is no JSON"},
        {"[]", "something is no object with fields"},
        {"{}", "the field v is missing"},
        {R"({"v":2,"edit":"group"})", "it is of a version that this program does not know"},
        {R"({"v":1,"edit":"ring-boundary-eaten"})", "there is no edit of the kind"},
        {R"({"v":1,"edit":"absent-ring-added","value":7})", "something is no object"},
        {R"({"v":1,"edit":"absent-ring-added","value":{"id":-1,"at":2,"origin":"analyst","note":""}})",
         "the field id is no whole number"},
        {R"({"v":1,"edit":"absent-ring-added","value":{"id":18446744073709551615,"at":2}})",
         "the field id is no whole number"},
        {R"({"v":1,"edit":"absent-ring-added","value":{"id":1,"at":2,"origin":"nobody","note":""}})",
         "the field origin holds an unknown word"},
        {R"({"v":1,"edit":"scale-changed","scan":"a","after":{"px_per_mm_x":1e999}})", "it is no JSON"},
        {deep, "it is"},
        {nested, "groups are nested too deeply"},
    };
    for (const auto& [text, words] : all) {
        const auto edit = edit_from_json(text);
        ASSERT_FALSE(edit.has_value()) << text;
        EXPECT_NE(edit.error().line().find(words), std::string::npos) << edit.error().line() << " for " << text;
        EXPECT_FALSE(edit.error().remedy.empty());
    }
}

} // namespace
} // namespace pithward
