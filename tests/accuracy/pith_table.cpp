// pith_table FOLDER... [--list] [--keep] [--threads N]: reads every core of folders that `pithward-scan-maker pith` has
// rendered, judges where its pith is, and prints how right that is by offset and ring width. docs/accuracy.md tells how
// to run it.

#include "tests/accuracy/case_folder.h"
#include "tests/accuracy/pith_score.h"
#include "tests/accuracy/read_each.h"

#include <CLI/CLI.hpp>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <functional>
#include <iterator>
#include <optional>
#include <string>
#include <vector>

namespace {

using namespace pithward;
using namespace pithward::accuracy;

std::vector<PithScore> read_all(const std::vector<Case>& cases, const ReadingWay& way) {
    std::vector<std::optional<PithScore>> scores(cases.size());
    read_each(
        cases,
        [&](std::size_t i, const Outcome<ReadCore>& core) {
            if (core) {
                scores[i] = pith_score(cases[i].truth, core->reading, core->series);
            }
        },
        way);
    std::vector<PithScore> all;
    for (auto& score : scores) {
        if (score) {
            all.push_back(std::move(*score));
        }
    }
    return all;
}

double median_of(std::vector<double> values) {
    if (values.empty()) {
        return std::nan("");
    }
    std::ranges::sort(values);
    const std::size_t n = values.size();
    return n % 2 == 1 ? values[n / 2] : 0.5 * (values[n / 2 - 1] + values[n / 2]);
}

double percent(double part, std::size_t whole) {
    return whole == 0 ? std::nan("") : 100.0 * part / static_cast<double>(whole);
}

/// Median error and share of errors over five rings of one method, over the cores where it gave a number.
void print_method(const std::vector<const PithScore*>& scores, const std::optional<PithAnswer> PithScore::*method) {
    constexpr int far_off = 5;
    std::vector<double> errors;
    double far = 0.0;
    for (const PithScore* score : scores) {
        if (const auto& answer = score->*method) {
            const int error = std::abs(answer->rings - score->rings);
            errors.push_back(error);
            far += error > far_off ? 1.0 : 0.0;
        }
    }
    std::printf(" %4.0f | %4.1f | %3.0f |", percent(static_cast<double>(errors.size()), scores.size()),
                median_of(errors), percent(far, errors.size()));
}

void print_row(const char* name, const std::vector<PithScore>& all,
               const std::function<bool(const PithScore&)>& wanted) {
    std::vector<const PithScore*> scores;
    std::vector<double> lengths;
    std::vector<double> relative;
    double distance_held = 0.0;
    double rings_held = 0.0;
    for (const PithScore& score : all) {
        if (!wanted(score)) {
            continue;
        }
        scores.push_back(&score);
        if (const auto& ours = score.ours) {
            lengths.push_back((ours->high_mm - ours->low_mm) / std::max(score.distance_mm, 1e-3));
            relative.push_back(std::abs(ours->rings - score.rings) / std::max(1.0, static_cast<double>(score.rings)));
            distance_held += ours->low_mm <= score.distance_mm && score.distance_mm <= ours->high_mm ? 1.0 : 0.0;
            rings_held += ours->rings_low <= score.rings && score.rings <= ours->rings_high ? 1.0 : 0.0;
        }
    }
    std::printf("| %-26s | %3zu | %5.1f | %5.1f | %4.2f | %4.0f |", name, scores.size(),
                percent(distance_held, lengths.size()), percent(rings_held, lengths.size()), median_of(lengths),
                100.0 * median_of(relative));
    print_method(scores, &PithScore::ours);
    print_method(scores, &PithScore::duncan);
    print_method(scores, &PithScore::applequist);
    std::printf("\n");
}

void print_table(const std::vector<PithScore>& all) {
    std::printf(
        "| cores | n | distance held %% | rings held %% | length / distance | median error of rings %% | told %% | "
        "median error | over 5 %% | Duncan told %% | median error | over 5 %% | Applequist told %% | median error "
        "| over 5 %% |\n|%s\n",
        " --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |");
    const auto missed = [](const PithScore& s) { return !s.inside; };
    print_row("pith on the core", all, [](const PithScore& s) { return s.inside; });
    print_row("pith missed, all", all, missed);
    const std::vector<double> offsets{0.0, 3.0, 6.0, 9.0, 12.0, 16.0, 20.5};
    const std::vector<double> widths{0.0, 1.0, 2.0, 9.0};
    char name[64];
    for (std::size_t i = 0; i + 1 < offsets.size(); ++i) {
        const auto in_band = [&](const PithScore& s) {
            return missed(s) && s.offset_mm >= offsets[i] && s.offset_mm < offsets[i + 1];
        };
        std::snprintf(name, sizeof name, "%.0f to %.0f mm", offsets[i], std::floor(offsets[i + 1]));
        print_row(name, all, in_band);
        for (std::size_t k = 0; k + 1 < widths.size(); ++k) {
            const char* rings[] = {"under 1", "1 to 2", "over 2"};
            std::snprintf(name, sizeof name, "%.0f to %.0f, rings %s", offsets[i], std::floor(offsets[i + 1]),
                          rings[k]);
            print_row(name, all, [&](const PithScore& s) {
                return in_band(s) && s.width_mm >= widths[k] && s.width_mm < widths[k + 1];
            });
        }
    }
    const auto wide = [&](const PithScore& s) { return missed(s) && s.width_mm >= 1.0; };
    const auto to = [&](double mm) { return [=](const PithScore& s) { return missed(s) && s.offset_mm <= mm; }; };
    print_row("offset to 12 mm", all, to(12.0));
    print_row("offset to 6 mm", all, to(6.0));
    print_row("rings of 1 mm and more", all, wide);
    print_row("these, offset to 12 mm", all, [&](const PithScore& s) { return wide(s) && s.offset_mm <= 12.0; });
    print_row("these, offset to 6 mm", all, [&](const PithScore& s) { return wide(s) && s.offset_mm <= 6.0; });
    print_row("rings under 1 mm", all, [&](const PithScore& s) { return missed(s) && !wide(s); });
    print_row("offset 10 to 14 mm", all,
              [&](const PithScore& s) { return missed(s) && s.offset_mm >= 10.0 && s.offset_mm <= 14.0; });
    print_row("distance 10 to 14 mm", all,
              [&](const PithScore& s) { return missed(s) && s.distance_mm >= 10.0 && s.distance_mm <= 14.0; });
    const auto said = [&](bool inside) {
        return std::ranges::count_if(all, [=](const PithScore& s) { return s.inside == inside && s.said_inside; });
    };
    std::printf("said to be on the core: %td of those where it is, %td of the others\n", said(true), said(false));
}

void print_line(const PithScore& s) {
    const PithAnswer ours = s.ours.value_or(PithAnswer{});
    std::printf("%s inside %d said %d offset %.2f width %.2f distance %.2f rings %d told %d: %.2f (%.2f to %.2f), "
                "%d (%d to %d)\n",
                s.name.c_str(), s.inside, s.said_inside, s.offset_mm, s.width_mm, s.distance_mm, s.rings,
                s.ours.has_value(), ours.distance_mm, ours.low_mm, ours.high_mm, ours.rings, ours.rings_low,
                ours.rings_high);
}

} // namespace

int main(int argc, char** argv) {
    CLI::App app("How right the program is about the pith, on rendered cores");
    std::vector<std::string> folders;
    bool list = false;
    bool keep = false;
    ReadingWay way;
    app.add_option("FOLDER", folders, "Scans, truth and cases.json")->required();
    app.add_flag("--list", list, "Each core on a line first");
    app.add_flag("--keep", keep,
                 "Keep readings in the folder, or take those that are kept there: piths are judged anew");
    app.add_option("--threads", way.threads, "Cores read at once; 0: as many as there are processors");
    CLI11_PARSE(app, argc, argv);
    std::vector<PithScore> scores;
    for (const std::string& folder : folders) {
        const auto cases = cases_in(folder);
        if (!cases) {
            std::fprintf(stderr, "%s\n", cases.error().line().c_str());
            return 2;
        }
        way.kept_folder = keep ? folder : "";
        std::ranges::move(read_all(*cases, way), std::back_inserter(scores));
    }
    for (const PithScore& s : scores) {
        if (list) {
            print_line(s);
        }
    }
    print_table(scores);
    return 0;
}
