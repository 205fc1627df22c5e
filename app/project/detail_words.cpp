#include "app/project/detail_words.h"

#include <QCoreApplication>
#include <algorithm>
#include <array>

namespace pithward::bench {

namespace {

struct ColumnWords {
    const char* column;
    const char* name;
    const char* help;
};

constexpr std::array column_words{
    ColumnWords{"species", QT_TRANSLATE_NOOP("FieldSheet", "Species"), ""},
    ColumnWords{"wood", QT_TRANSLATE_NOOP("FieldSheet", "Wood"), ""},
    ColumnWords{"date_cored", QT_TRANSLATE_NOOP("FieldSheet", "Cored on"),
                QT_TRANSLATE_NOOP("FieldSheet", "As 2024-06-30, or 2024-06, or 2024.")},
    ColumnWords{"status", QT_TRANSLATE_NOOP("FieldSheet", "Tree was"), ""},
    ColumnWords{"dbh_cm", QT_TRANSLATE_NOOP("FieldSheet", "Diameter, cm"),
                QT_TRANSLATE_NOOP("FieldSheet", "Of the stem with its bark, at breast height.")},
    ColumnWords{"bark_mm", QT_TRANSLATE_NOOP("FieldSheet", "Bark, mm"),
                QT_TRANSLATE_NOOP("FieldSheet", "Thickness of the bark on one side.")},
    ColumnWords{"core_height_cm", QT_TRANSLATE_NOOP("FieldSheet", "Height, cm"),
                QT_TRANSLATE_NOOP("FieldSheet", "Above the ground where the core was taken.")},
    ColumnWords{"azimuth_deg", QT_TRANSLATE_NOOP("FieldSheet", "Cored from, °"),
                QT_TRANSLATE_NOOP("FieldSheet", "Compass degrees of the side that the borer entered.")},
    ColumnWords{"lean_azimuth_deg", QT_TRANSLATE_NOOP("FieldSheet", "Leans to, °"),
                QT_TRANSLATE_NOOP("FieldSheet", "Compass degrees of the way the stem leans.")},
    ColumnWords{"lean_deg", QT_TRANSLATE_NOOP("FieldSheet", "Lean, °"),
                QT_TRANSLATE_NOOP("FieldSheet", "How far the stem stands from upright.")},
    ColumnWords{"slope_aspect_deg", QT_TRANSLATE_NOOP("FieldSheet", "Slope faces, °"),
                QT_TRANSLATE_NOOP("FieldSheet", "Compass degrees of the way down the slope.")},
    ColumnWords{"borer_mm", QT_TRANSLATE_NOOP("FieldSheet", "Borer, mm"),
                QT_TRANSLATE_NOOP("FieldSheet", "Diameter of the core that the borer takes.")},
    ColumnWords{"outer", QT_TRANSLATE_NOOP("FieldSheet", "Under the bark"),
                QT_TRANSLATE_NOOP("FieldSheet", "What was seen of the outermost ring in the field.")},
    ColumnWords{"pith", QT_TRANSLATE_NOOP("FieldSheet", "Pith"),
                QT_TRANSLATE_NOOP("FieldSheet", "What was seen of the pith in the field.")},
    ColumnWords{"pieces", QT_TRANSLATE_NOOP("FieldSheet", "Pieces"),
                QT_TRANSLATE_NOOP("FieldSheet", "How many pieces the core came out in.")},
    ColumnWords{"scan", QT_TRANSLATE_NOOP("FieldSheet", "Scan"),
                QT_TRANSLATE_NOOP("FieldSheet", "The file with the core. It stays while the core has a reading.")},
    ColumnWords{"latitude", QT_TRANSLATE_NOOP("FieldSheet", "Latitude, °"),
                QT_TRANSLATE_NOOP("FieldSheet", "Degrees north; south of the equator negative.")},
    ColumnWords{"longitude", QT_TRANSLATE_NOOP("FieldSheet", "Longitude, °"),
                QT_TRANSLATE_NOOP("FieldSheet", "Degrees east; in the west negative.")},
    ColumnWords{"elevation_m", QT_TRANSLATE_NOOP("FieldSheet", "Elevation, m"), ""},
    ColumnWords{"collector", QT_TRANSLATE_NOOP("FieldSheet", "Collector"), ""},
    ColumnWords{"notes", QT_TRANSLATE_NOOP("FieldSheet", "Notes"), ""},
};

constexpr std::array choice_words{
    QT_TRANSLATE_NOOP("FieldSheet", "conifer"),        QT_TRANSLATE_NOOP("FieldSheet", "ring-porous"),
    QT_TRANSLATE_NOOP("FieldSheet", "diffuse-porous"), QT_TRANSLATE_NOOP("FieldSheet", "living"),
    QT_TRANSLATE_NOOP("FieldSheet", "dead"),           QT_TRANSLATE_NOOP("FieldSheet", "complete"),
    QT_TRANSLATE_NOOP("FieldSheet", "unfinished"),     QT_TRANSLATE_NOOP("FieldSheet", "lost"),
    QT_TRANSLATE_NOOP("FieldSheet", "unknown"),        QT_TRANSLATE_NOOP("FieldSheet", "reached"),
    QT_TRANSLATE_NOOP("FieldSheet", "near"),           QT_TRANSLATE_NOOP("FieldSheet", "missed"),
};

QString in_sheet_words(const char* text) {
    return *text != '\0' ? QCoreApplication::translate("FieldSheet", text) : QString();
}

const ColumnWords* words_of(const formats::SheetColumn& column) {
    const auto found = std::ranges::find_if(column_words, [&](const auto& one) { return column.name == one.column; });
    return found == column_words.end() ? nullptr : &*found;
}

} // namespace

QString name_of(const formats::SheetColumn& column) {
    const ColumnWords* words = words_of(column);
    return words != nullptr ? in_sheet_words(words->name) : QString::fromStdString(column.name);
}

QString help_of(const formats::SheetColumn& column) {
    const ColumnWords* words = words_of(column);
    return words != nullptr ? in_sheet_words(words->help) : QString();
}

QString choice_in_words(const std::string& word) {
    const auto found = std::ranges::find_if(choice_words, [&](const char* one) { return word == one; });
    if (word.empty()) {
        return QCoreApplication::translate("FieldSheet", "not known");
    }
    return found == choice_words.end() ? QString::fromStdString(word) : in_sheet_words(*found);
}

} // namespace pithward::bench
