#include "tests/accuracy/figure_table.h"

#include <array>
#include <cstdio>

namespace pithward::accuracy {

namespace {

using Value = std::optional<double>;

struct Column {
    const char* head;
    int width;
    int digits;
    Value (*value)(const Figures&);
};

Value percent(const Value& share) {
    return share ? Value(100.0 * *share) : share;
}

constexpr std::array columns{
    Column{"cores", 6, 0, [](const Figures& f) { return Value(f.cores); }},
    Column{"rings", 7, 0, [](const Figures& f) { return Value(f.rings); }},
    Column{"F1", 7, 4, [](const Figures& f) { return f.f1; }},
    Column{"worst", 7, 3, [](const Figures& f) { return f.worst_f1; }},
    Column{"esc/100", 8, 2, [](const Figures& f) { return f.escaped; }},
    Column{"look %", 7, 1, [](const Figures& f) { return percent(f.asked); }},
    Column{"px", 6, 2, [](const Figures& f) { return f.error_px; }},
    Column{"bias px", 8, 2, [](const Figures& f) { return f.bias_px; }},
    Column{"ECE", 7, 3, [](const Figures& f) { return f.confidence.expected; }},
    Column{"of", 7, 0, [](const Figures& f) { return Value(f.confidence.candidates); }},
    Column{"mid", 7, 3, [](const Figures& f) { return f.doubtful.expected; }},
    Column{"of", 6, 0, [](const Figures& f) { return Value(f.doubtful.candidates); }},
    Column{"z place", 8, 2, [](const Figures& f) { return f.position.spread; }},
    Column{">4 %", 6, 1, [](const Figures& f) { return percent(f.position.share_far); }},
    Column{"z width", 8, 2, [](const Figures& f) { return f.width.spread; }},
    Column{">4 %", 6, 1, [](const Figures& f) { return percent(f.width.share_far); }},
};

} // namespace

void print_table(std::span<const FigureRow> rows) {
    std::printf("%-20s", "");
    for (const Column& column : columns) {
        std::printf("%*s", column.width, column.head);
    }
    std::printf("\n");
    for (const FigureRow& row : rows) {
        std::printf("%-20s", row.name.c_str());
        for (const Column& column : columns) {
            if (const Value value = column.value(row.figures)) {
                std::printf("%*.*f", column.width, column.digits, *value);
            } else {
                std::printf("%*s", column.width, "-");
            }
        }
        std::printf("\n");
    }
}

} // namespace pithward::accuracy
