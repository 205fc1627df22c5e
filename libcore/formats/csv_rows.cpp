#include "libcore/formats/csv_rows.h"

#include "libcore/formats/csv_guard.h"
#include "libcore/formats/text_input.h"

#include <csv.h>

#include <algorithm>
#include <array>
#include <utility>

namespace pithward::formats {

namespace {

constexpr std::size_t most_fields_a_row = most_series + 100;

std::string_view first_line(std::string_view text) {
    return text.substr(0, std::min(text.find_first_of("\r\n"), text.size()));
}

bool names_separator(std::string_view line) {
    return line.size() == 5 && line.starts_with("sep=");
}

/// libcsv, fed up to one separator, line end or quote at a time, so that it is known where each field stands.
class RowReader {
public:
    explicit RowReader(char separator)
        : separator_(separator) {
        csv_init(&parser_, CSV_STRICT | CSV_STRICT_FINI);
        csv_set_delim(&parser_, static_cast<unsigned char>(separator));
    }
    RowReader(const RowReader&) = delete;
    RowReader& operator=(const RowReader&) = delete;
    ~RowReader() { csv_free(&parser_); }

    Outcome<void> run(std::string_view text, const std::function<Outcome<void>(const CsvRow&)>& take) {
        const std::array specials{separator_, '\r', '\n'};
        const std::string_view stops(specials.data(), specials.size());
        while (!text.empty()) {
            const std::size_t stop = std::min(text.find_first_of(stops), text.size() - 1);
            const std::string_view part = text.substr(0, stop + 1);
            const std::size_t fields = row_.size();
            const std::size_t parsed = csv_parse(&parser_, part.data(), part.size(), on_field, on_row, this);
            if (parsed < part.size()) {
                return fail(place(line_, column_ + columns(part.substr(0, parsed))),
                            "a quotation mark stands where none can be",
                            "quote the whole field and double the quotation marks inside it");
            }
            const bool moved = row_.size() != fields || row_done_;
            if (row_.size() > most_fields_a_row) {
                return fail(place(line_), "a row of more than " + std::to_string(most_fields_a_row) + " fields",
                            "check that it is the right file");
            }
            text.remove_prefix(part.size());
            advance(part, text);
            inside_ = !moved && (inside_ || !trimmed(part, " \t\r\n").empty());
            if (!inside_) {
                field_line_ = line_;
                field_column_ = column_;
            }
            if (auto taken = give_row(take); !taken) {
                return taken;
            }
        }
        if (csv_fini(&parser_, on_field, on_row, this) != 0) {
            return fail(place(field_line_, field_column_), "a quoted field has no end",
                        "put the closing quotation mark");
        }
        return give_row(take);
    }

private:
    static void on_field(void* bytes, std::size_t count, void* self) {
        auto& reader = *static_cast<RowReader*>(self);
        std::string text(unguarded({static_cast<const char*>(bytes), count}));
        reader.row_.push_back({std::move(text), reader.field_line_, reader.field_column_});
    }
    static void on_row(int /*end*/, void* self) { static_cast<RowReader*>(self)->row_done_ = true; }

    /// Moves the place past a part; `rest` follows it.
    void advance(std::string_view part, std::string_view rest) {
        const char last = part.back();
        if (last == '\n' || (last == '\r' && !rest.starts_with('\n'))) {
            ++line_;
            column_ = 1;
        } else {
            column_ += columns(part);
        }
    }

    Outcome<void> give_row(const std::function<Outcome<void>(const CsvRow&)>& take) {
        if (!row_done_) {
            return {};
        }
        row_done_ = false;
        auto taken = take(row_);
        row_.clear();
        return taken;
    }

    csv_parser parser_{};
    char separator_;
    CsvRow row_;
    bool row_done_ = false;
    bool inside_ = false; ///< A field has begun and not ended.
    std::size_t line_ = 1;
    std::size_t column_ = 1;
    std::size_t field_line_ = 1;
    std::size_t field_column_ = 1;
};

} // namespace

CsvDialect csv_dialect(std::string_view text) {
    const std::string_view line = first_line(text);
    if (names_separator(line)) {
        return {line.back()};
    }
    std::array<std::size_t, 256> counts{};
    bool quoted = false;
    for (const char c : text) {
        quoted = quoted != (c == '"');
        if (!quoted && (c == '\r' || c == '\n')) {
            break;
        }
        counts[static_cast<unsigned char>(c)] += quoted ? 0 : 1;
    }
    CsvDialect dialect;
    for (const char candidate : {'\t', ';'}) {
        if (counts[static_cast<unsigned char>(candidate)] > counts[static_cast<unsigned char>(dialect.separator)]) {
            dialect.separator = candidate;
        }
    }
    return dialect;
}

Outcome<void> read_csv_rows(std::string_view text, CsvDialect dialect,
                            const std::function<Outcome<void>(const CsvRow&)>& take) {
    bool skip = names_separator(first_line(text));
    RowReader reader(dialect.separator);
    return reader.run(text, [&](const CsvRow& row) -> Outcome<void> {
        return std::exchange(skip, false) ? Outcome<void>() : take(row);
    });
}

std::string csv_field(std::string_view content) {
    std::string text = guarded(content);
    const bool outer_blank = !text.empty() && trimmed(text).size() != text.size();
    if (!outer_blank && text.find_first_of(",;\"\t\r\n") == std::string_view::npos) {
        return text;
    }
    std::string quoted(2 * text.size() + 2, '\0');
    quoted.resize(csv_write(quoted.data(), quoted.size(), text.data(), text.size()));
    return quoted;
}

tl::unexpected<Fault> csv_fault(const CsvField& at, std::string what, std::string remedy) {
    return fail(place(at.line, at.column), std::move(what), std::move(remedy));
}

} // namespace pithward::formats
