#include "libcore/formats/decadal_pieces.h"

#include <algorithm>
#include <utility>

namespace pithward::formats {

namespace {

WidthSeries::Unit unit_of(int mark) {
    return mark == mark_hundredth ? WidthSeries::Unit::HundredthMm : WidthSeries::Unit::ThousandthMm;
}

std::string years(int from, int to) {
    return from == to ? "year " + std::to_string(from) : "years " + std::to_string(from) + " to " + std::to_string(to);
}

/// Gathers one piece after the other.
class Gatherer {
public:
    Gatherer(const std::vector<DecadalLine>& lines, Remarks& remarks)
        : lines_(lines)
        , remarks_(remarks) {}

    Outcome<std::vector<Piece>> run() {
        for (index_ = 0; index_ < lines_.size(); ++index_) {
            if (auto taken = take(lines_[index_]); !taken) {
                return tl::unexpected(std::move(taken.error()));
            }
        }
        if (auto closed = close_without_mark(); !closed) {
            return tl::unexpected(std::move(closed.error()));
        }
        return std::move(pieces_);
    }

private:
    Outcome<void> take(const DecadalLine& line) {
        note_layout(line);
        if (open_ && !continues(line)) {
            if (auto closed = close_without_mark(); !closed) {
                return closed;
            }
        }
        if (!open_) {
            pieces_.push_back({line.identifier, line.year, {}, {}, {}, line.number, line.number});
            open_ = true;
        } else if (auto joined = join(line); !joined) {
            return joined;
        }
        append(line);
        values_ += line.count;
        if (values_ > most_values) {
            return too_many_values(line.number);
        }
        return {};
    }

    /// The same series: the same identifier, or one that differs in case only and goes on with the next year.
    bool continues(const DecadalLine& line) {
        const Piece& piece = pieces_.back();
        if (line.identifier == piece.identifier) {
            return true;
        }
        const bool same_but_case = lower_case(line.identifier) == lower_case(piece.identifier);
        if (same_but_case && line.year == last_->end_year()) {
            remarks_.add("identifier " + as_utf8(line.identifier) + " goes on with series " +
                             as_utf8(piece.identifier) + ", which has no end mark",
                         line.number);
            pieces_.back().identifier = line.identifier; // The lines that follow bear it.
            return true;
        }
        return false;
    }

    /// Holds a line against the one before it in the same piece.
    Outcome<void> join(const DecadalLine& line) {
        const int expected = last_->end_year();
        Piece& piece = pieces_.back();
        if (line.year < expected || (line.year > expected && !last_->ends_decade())) {
            return fail(place(line.number, identifier_columns + 1),
                        "series " + as_utf8(piece.identifier) + " goes on with year " + std::to_string(line.year) +
                            " where " + std::to_string(expected) + " is due after line " +
                            std::to_string(last_->number),
                        "correct the years, or put in the value that is missing or out the one too many");
        }
        if (line.year > expected) {
            values_ += static_cast<std::size_t>(line.year - expected);
            remarks_.add("series " + as_utf8(piece.identifier) + " has no line for " + years(expected, line.year - 1) +
                             ": read as a gap",
                         line.number);
            piece.steps.resize(piece.steps.size() + static_cast<std::size_t>(line.year - expected));
        } else if (!last_->ends_decade()) {
            remarks_.add("lines that don't end with the decade; read by the years given", last_->number);
        }
        return {};
    }

    void append(const DecadalLine& line) {
        Piece& piece = pieces_.back();
        piece.last_line = line.number;
        if (!line.comment.empty()) {
            piece.comments[Year(line.year)] = line.comment;
        }
        const bool closes = line.ends_with_mark() && !goes_on(line);
        piece.steps.insert(piece.steps.end(), line.values.begin(),
                           line.values.begin() + static_cast<std::ptrdiff_t>(line.count - (closes ? 1 : 0)));
        last_ = &line;
        if (closes) {
            close(*line.values[line.count - 1]);
        }
    }

    /// True where the line's last value is followed by that of the next year in the same series, so that it can't be an
    /// end mark though it looks like one. A line that stops short of its decade stops for its end mark.
    bool goes_on(const DecadalLine& line) const {
        if (index_ + 1 == lines_.size() || (!line.ends_decade() && line.count < values_a_line)) {
            return false;
        }
        const DecadalLine& next = lines_[index_ + 1];
        return next.identifier == line.identifier && next.year == line.end_year();
    }

    void close(int mark) {
        Piece& piece = pieces_.back();
        piece.unit = unit_of(mark);
        if (mark == mark_hundredth && !piece.steps.empty() && piece.steps.back() == mark_hundredth) {
            remarks_.add("999 stands twice at the end of series " + as_utf8(piece.identifier) +
                             ": the first is read as 9.99 mm",
                         piece.last_line);
        }
        open_ = false;
    }

    Outcome<void> close_without_mark() {
        if (!open_) {
            return {};
        }
        open_ = false;
        Piece& piece = pieces_.back();
        const auto mark = whole_number(last_->comment);
        if (mark && is_end_mark(*mark)) {
            remarks_.add("the end mark stands after the tenth value", piece.last_line);
            piece.comments.erase(Year(last_->year));
            close(*mark);
            return {};
        }
        // A mark with nothing but zeros or codes after it may be an end mark in a line that was filled up.
        for (std::size_t i = last_->count; i > 0; --i) {
            const auto& value = last_->values[i - 1];
            if (value && is_end_mark(*value)) {
                return fail(place(last_->number), "it is not clear where series " + as_utf8(piece.identifier) + " ends",
                            "leave nothing but blanks after its end mark");
            }
            if (value.value_or(0) > 0) {
                break;
            }
        }
        return {};
    }

    void note_layout(const DecadalLine& line) {
        switch (line.layout) {
        case DecadalLine::Layout::Columns:
            break;
        case DecadalLine::Layout::NotAligned:
            remarks_.add("values don't end with their columns", line.number);
            break;
        case DecadalLine::Layout::BySpaces:
            remarks_.add("the columns don't hold: read by spaces or tabs", line.number);
            break;
        case DecadalLine::Layout::BlanksAsYears:
            remarks_.add("blank columns before the first value: its year is that of its place", line.number);
            break;
        }
        const auto end = line.values.begin() + static_cast<std::ptrdiff_t>(line.count);
        if (std::find(line.values.begin(), end, std::nullopt) != end) {
            remarks_.add("blank columns between values: read as a gap", line.number);
        }
    }

    const std::vector<DecadalLine>& lines_;
    Remarks& remarks_;
    std::vector<Piece> pieces_;
    std::size_t index_ = 0;
    std::size_t values_ = 0;
    const DecadalLine* last_ = nullptr; ///< The piece's last line; valid while a piece is open.
    bool open_ = false;
};

} // namespace

tl::unexpected<Fault> too_many_values(std::size_t line) {
    return fail(place(line), "the file holds more series or years than can be read",
                "check the years, or divide the file");
}

Outcome<std::vector<Piece>> gather_pieces(const std::vector<DecadalLine>& lines, Remarks& remarks) {
    return Gatherer(lines, remarks).run();
}

} // namespace pithward::formats
