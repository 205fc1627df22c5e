#include "tests/record/made_up_project.h"

#include "tests/edit/random_edits.h"

#include <gtest/gtest.h>

#include <stdexcept>

namespace pithward::test {

namespace {

template <typename T>
T required(Outcome<T> outcome) {
    if (!outcome) {
        throw std::runtime_error(outcome.error().line());
    }
    return std::move(*outcome);
}

} // namespace

EditStamp stamp_by(const std::string& who) {
    return {who, record::utc_now(), "0.1.0"};
}

std::vector<Site> made_up_sites() {
    Core first;
    first.id = "H01A";
    first.date_cored = "2024-06";
    first.outer = OuterWood::Complete;
    first.pith = FieldPith::Near;
    first.core_height_cm = 130.0;
    first.azimuth_deg = 90.0;
    first.borer_mm = 5.15;
    first.pieces = 2;
    first.scan = "H01A.jpg";
    first.collector = "A. Person";
    first.notes = "split, glued\nfragile";
    first.others = {{"weather", "rain"}, {"Wetter", "naß"}};
    Core second;
    second.id = "H01B";
    Core third;
    third.id = "H02A";
    Tree one;
    one.id = "H01";
    one.species = "PISY";
    one.wood = WoodType::Conifer;
    one.living = true;
    one.dbh_cm = 31.5;
    one.lean_deg = 5.0;
    one.cores = {first, second};
    Tree two;
    two.id = "H02";
    two.living = false;
    two.cores = {third};
    Site hill;
    hill.id = "Hill";
    hill.latitude = 46.5;
    hill.longitude = -7.25;
    hill.trees = {one, two};
    Site vale;
    vale.id = "Vale";
    one.cores = {first};
    vale.trees = {one};
    return {hill, vale};
}

record::Project made_up_project(const std::string& file, unsigned seed) {
    record::Project project = required(record::Project::create(file, made_up_sites(), {}, stamp_by("Ida")));
    std::mt19937 random(seed);
    for (int core = 1; core <= 3; ++core) {
        (void)required(project.add_reading(record::CoreId{core}, random_reading(random), "Propose a reading",
                                           stamp_by("pithward")));
    }
    return project;
}

record::Project opened(const std::string& file, record::Project::Access access) {
    return required(record::Project::open(file, access));
}

} // namespace pithward::test
