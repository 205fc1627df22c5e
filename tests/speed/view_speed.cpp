// What it costs to look at a large scan: the first view, a step of panning, memory. Each beside a bare floor in the
// same run: see docs/speed.md. Usage: view_speed FILE, of big_scans; offscreen.
#include "app/bench/look/appearance.h"
#include "app/bench/scan_view/scan_view.h"
#include "app/bench/window/main_window.h"
#include "app/picture/scan_picture.h"

#include <sys/resource.h>

#include <QApplication>
#include <QImage>
#include <QPainter>
#include <QTest>
#include <algorithm>
#include <chrono>
#include <cstdio>
#include <functional>
#include <vector>

namespace {

using namespace pithward;
using namespace pithward::bench;

constexpr int steps = 400;

double milliseconds(const std::function<void()>& work) {
    const auto begin = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - begin).count();
}

double peak_mb() {
    rusage usage{};
    getrusage(RUSAGE_SELF, &usage);
    return static_cast<double>(usage.ru_maxrss) / 1024.0;
}

double at_share(std::vector<double> values, double share) {
    std::ranges::sort(values);
    return values[static_cast<std::size_t>(share * static_cast<double>(values.size() - 1))];
}

/// The pixels of a view at half size, drawn as they are moved step by step: nothing but the drawing.
std::vector<double> bare_draws(const QImage& pixels, QImage& canvas) {
    std::vector<double> times;
    for (int i = 0; i < steps; ++i) {
        times.push_back(milliseconds([&] {
            QPainter painter(&canvas);
            painter.setRenderHint(QPainter::SmoothPixmapTransform);
            painter.translate(-i % 40 - 0.3, -0.2);
            painter.scale(0.55, 0.55);
            painter.drawImage(QPointF(0, 0), pixels);
        }));
    }
    return times;
}

} // namespace

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    const QApplication application(argc, argv);
    if (argc != 2) {
        std::fprintf(stderr, "usage: view_speed FILE\n");
        return 2;
    }
    Appearance appearance;
    MainWindow window([](const std::string& path) { return open_scan(path); }, appearance);
    window.resize(1400, 900);
    window.show();
    if (!QTest::qWaitForWindowExposed(&window)) {
        return 2;
    }
    ScanView& view = window.view();
    // Only looked at: no core is sought.
    BenchModel& model = window.control().model();
    const double first = milliseconds([&] {
        auto opened = open_scan(argv[1]);
        if (!opened) {
            std::fprintf(stderr, "%s\n", opened.error().line().c_str());
            std::exit(2);
        }
        const int id = model.add_scan(std::move(*opened), std::nullopt);
        model.leave_unread(id);
        model.show_scan(id);
        (void)QTest::qWaitFor([&] { return view.picture_complete(); }, 120'000);
    });

    view.set_view(view.view().scaled_to(0.55).centred({4000.0, 3000.0}));
    (void)QTest::qWaitFor([&] { return view.picture_complete(); }, 60'000);
    // Every place that the steps come by is loaded: the step is measured, not the disk.
    const auto at_step = [&](int i) { return view.view().centred({4000.0 + i % 40, 3000.0}); };
    std::vector<double> pans;
    QImage canvas(view.viewport()->size(), QImage::Format_RGB32);
    for (int i = 0; i < steps; ++i) {
        pans.push_back(milliseconds([&] {
            view.set_view(at_step(i));
            view.viewport()->repaint();
        }));
    }
    const double peak = peak_mb();
    const auto pixels = model.scan()->opened->pixels(QRect(2700, 2000, canvas.width() * 2, canvas.height() * 2), 1);
    const auto bare = pixels ? bare_draws(*pixels, canvas) : std::vector<double>{0.0};
    std::printf("%s: first view %.0f ms; pan step median %.2f ms, 99th percentile %.2f ms; bare draw %.2f, %.2f ms; "
                "ratio of the 99th percentiles %.2f; peak memory %.0f MB\n",
                argv[1], first, at_share(pans, 0.5), at_share(pans, 0.99), at_share(bare, 0.5), at_share(bare, 0.99),
                at_share(pans, 0.99) / at_share(bare, 0.99), peak);
    return 0;
}
