#include "app/bench/control/bench_control.h"

#include "app/bench/model/scan_files.h"

#include <algorithm>

namespace pithward::bench {

namespace {

using OpenedScans = std::vector<Outcome<OpenedScan>>;

} // namespace

BenchControl::BenchControl(ScanOpener opener, QObject* parent)
    : QObject(parent)
    , opener_(std::move(opener)) {}

void BenchControl::open(const QStringList& paths) {
    const auto project = std::ranges::find_if(
        paths, [](const QString& path) { return path.endsWith(".pithward", Qt::CaseInsensitive); });
    if (project != paths.end()) {
        emit project_wanted(*project);
        return;
    }
    const QStringList files = scan_files_in(paths);
    if (files.isEmpty()) {
        emit told(tr("No scan found there. Choose TIFF, PNG or JPEG files."));
        return;
    }
    jobs_.start<OpenedScans>(
        tr("Opening"),
        [files, opener = opener_](const Work& work) {
            OpenedScans opened;
            for (const QString& file : files) {
                if (work.stopped()) {
                    break;
                }
                opened.push_back(opener(file.toStdString()));
                work.report(static_cast<double>(opened.size()) / static_cast<double>(files.size()));
            }
            return opened;
        },
        [this](OpenedScans opened) {
            int first = 0;
            for (auto& scan : opened) {
                if (!scan) {
                    tell(scan.error());
                    continue;
                }
                const auto here = std::ranges::find_if(
                    model_.scans(), [&](const BenchScan& other) { return other.opened->path == scan->path; });
                const auto believed = believed_calibration(scan->header, std::nullopt);
                if (naming_) {
                    scan->named = naming_(scan->path);
                }
                const int id =
                    here != model_.scans().end()
                        ? here->id
                        : model_.add_scan(std::move(*scan), believed ? std::optional(*believed) : std::nullopt);
                first = first == 0 ? id : first;
            }
            if (first != 0) {
                show_scan(first);
            }
        });
}

void BenchControl::show_scan(int id) {
    model_.show_scan(id);
    read_if_new();
}

void BenchControl::step_scan(int by) {
    const auto& scans = model_.scans();
    const BenchScan* shown = model_.scan();
    if (shown == nullptr) {
        return;
    }
    const auto index = (shown - scans.data()) + by;
    if (index >= 0 && index < static_cast<std::ptrdiff_t>(scans.size())) {
        show_scan(scans[static_cast<std::size_t>(index)].id);
    }
}

void BenchControl::step_core(int by) {
    CorePlace place = model_.present();
    place.index += by;
    model_.show_core(place);
}

void BenchControl::show_core(const CorePlace& place) {
    model_.show_core(place);
    read_if_new();
}

void BenchControl::use_dpi(double dpi) {
    const BenchScan* scan = model_.scan();
    if (scan == nullptr) {
        return;
    }
    const auto calibration = believed_calibration(scan->opened->header, dpi);
    if (!calibration) {
        tell(calibration.error());
        return;
    }
    model_.set_calibration(scan->id, *calibration);
    read_if_new();
}

void BenchControl::read_if_new() {
    const BenchScan* scan = model_.scan();
    if (scan != nullptr && !scan->searched) {
        read_shown_scan();
    }
}

void BenchControl::export_shown(const QString& path, const ExportFormat& format) {
    const BenchScan* scan = model_.home();
    if (scan == nullptr) {
        return;
    }
    using Written = Outcome<std::vector<std::string>>;
    jobs_.start<Written>(
        tr("Exporting"),
        [file = path.toStdString(), format, input = ExportInput{scan->opened, scan->cores}](const Work& work) {
            return export_to(file, format, input, work);
        },
        [this, path](const Written& written) {
            if (!written) {
                tell(written.error());
                return;
            }
            emit done(tr("Written to %1").arg(path));
            for (const std::string& remark : *written) {
                emit told(QString::fromStdString(remark));
            }
        });
}

void BenchControl::tell(const Fault& fault) {
    emit told(QString::fromStdString(fault.line()));
}

} // namespace pithward::bench
