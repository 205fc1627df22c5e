// Prints what libcore/dating makes of numbers, for checks in other languages: one result a line, a name and its values.
//   dating_numbers autoregression < VALUES       dating_numbers spline PERIOD < VALUES
//   dating_numbers exponential < VALUES          dating_numbers agreement < PAIRS
#include "libcore/dating/agreement.h"
#include "libcore/dating/autoregression.h"
#include "libcore/dating/exponential.h"
#include "libcore/dating/smoothing_spline.h"

#include <cstdio>
#include <cstdlib>
#include <iostream>
#include <iterator>
#include <string>
#include <vector>

namespace {

using namespace pithward::dating;

std::vector<double> numbers() {
    return {std::istream_iterator<double>(std::cin), std::istream_iterator<double>()};
}

Eigen::ArrayXd as_array(const std::vector<double>& values, std::size_t from = 0, std::size_t step = 1) {
    Eigen::ArrayXd result(static_cast<Eigen::Index>((values.size() - from + step - 1) / step));
    for (Eigen::Index i = 0; i < result.size(); ++i) {
        result(i) = values[from + static_cast<std::size_t>(i) * step];
    }
    return result;
}

template <typename Values>
void print(const char* name, const Values& values) {
    std::printf("%s", name);
    for (const double value : values) {
        std::printf(" %.17g", value);
    }
    std::puts("");
}

void print_autoregression() {
    const Eigen::ArrayXd values = as_array(numbers());
    const Autoregression model = fit_autoregression(values);
    print("acf", autocorrelation(values, 20));
    print("order", std::vector<double>{static_cast<double>(model.order())});
    print("coefficients", model.coefficients);
    print("variance", std::vector<double>{model.variance});
    print("aic", model.aic);
    print("innovations", innovations(values, model));
}

void print_agreement() {
    const std::vector<double> values = numbers();
    const Agreement found = agreement({0, as_array(values, 0, 2)}, {0, as_array(values, 1, 2)});
    print("r", std::vector<double>{found.r.value_or(0.0)});
    print("t", std::vector<double>{found.t});
    print("chance", std::vector<double>{found.chance});
}

} // namespace

int main(int argc, char** argv) {
    const std::string what = argc > 1 ? argv[1] : "";
    if (what == "autoregression") {
        print_autoregression();
    } else if (what == "spline" && argc > 2) {
        print("curve", smoothing_spline(as_array(numbers()), std::atof(argv[2])));
    } else if (what == "exponential") {
        print("curve", falling_exponential(as_array(numbers())).value_or(Eigen::ArrayXd()));
    } else if (what == "agreement") {
        print_agreement();
    } else {
        std::fputs("dating_numbers: say autoregression, spline PERIOD, exponential or agreement\n", stderr);
        return 2;
    }
    return 0;
}
