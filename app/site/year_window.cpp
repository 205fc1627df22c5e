#include "app/site/year_window.h"

#include <algorithm>
#include <cmath>

namespace pithward::bench {

void YearWindow::set_all(int first, int last) {
    const bool whole = first_ == all_first_ && last_ == all_last_;
    all_first_ = first;
    all_last_ = std::max(first, last);
    if (pointed_ && (*pointed_ < all_first_ || *pointed_ > all_last_)) {
        pointed_.reset();
    }
    show(whole ? all_first_ : first_, whole ? all() : shown());
}

void YearWindow::show(int first, int count) {
    const int years = std::clamp(count, std::min(least_shown, all()), all());
    first_ = std::clamp(first, all_first_, all_last_ - years + 1);
    last_ = first_ + years - 1;
    emit changed();
}

void YearWindow::show_all() {
    show(all_first_, all());
}

void YearWindow::zoom(double factor, int about) {
    const int before = shown();
    int after = static_cast<int>(std::lround(before / factor));
    if (after == before) {
        after += factor > 1.0 ? -1 : 1;
    }
    after = std::clamp(after, std::min(least_shown, all()), all());
    const double share = static_cast<double>(about - first_) / before;
    show(about - static_cast<int>(std::lround(share * after)), after);
}

void YearWindow::zoom(double factor) {
    zoom(factor, pointed_ ? std::clamp(*pointed_, first_, last_) : first_ + shown() / 2);
}

void YearWindow::move(int years) {
    show(first_ + years, shown());
}

void YearWindow::point_at(std::optional<int> year) {
    if (pointed_ != year) {
        pointed_ = year;
        emit changed();
    }
}

void YearWindow::go_to(int year) {
    pointed_ = std::clamp(year, all_first_, all_last_);
    if (*pointed_ < first_) {
        show(*pointed_ - 1, shown());
    } else if (*pointed_ > last_) {
        show(*pointed_ - shown() + 2, shown());
    } else {
        emit changed();
    }
}

} // namespace pithward::bench
