#pragma once

#include <QObject>
#include <optional>

namespace pithward::bench {

/// Which years are shown, and which one is pointed at: one for all pictures of a page, so that they stay under each
/// other.
class YearWindow : public QObject {
    Q_OBJECT

public:
    using QObject::QObject;

    /// All the years that there are. What is shown stays where it can.
    void set_all(int first, int last);
    [[nodiscard]] int first() const { return first_; }
    [[nodiscard]] int last() const { return last_; }
    [[nodiscard]] std::optional<int> pointed() const { return pointed_; }

    void show_all();
    /// Shows fewer years, for a factor over 1, about a year that keeps its place.
    void zoom(double factor, int about);
    /// About the year that is pointed at, else about the middle.
    void zoom(double factor);
    void move(int years);
    void point_at(std::optional<int> year);
    /// The same, with the year brought into view.
    void go_to(int year);

signals:
    void changed();

private:
    void show(int first, int count);
    [[nodiscard]] int shown() const { return last_ - first_ + 1; }
    [[nodiscard]] int all() const { return all_last_ - all_first_ + 1; }

    static constexpr int least_shown = 12;

    int all_first_ = 0;
    int all_last_ = 0;
    int first_ = 0;
    int last_ = 0;
    std::optional<int> pointed_;
};

} // namespace pithward::bench
