#include "demo-scans/maker/timber.h"

namespace pithward::demo {

namespace {

const TimberLook pine{.early = {231, 203, 160},
                      .middle = {204, 154, 103},
                      .late = {143, 88, 52},
                      .heartwood = {0.965F, 0.88F, 0.79F},
                      .latewood_mm = 0.08,
                      .latewood_share = 0.20,
                      .gradual = 0.26,
                      .darkness = 0.86,
                      .canals_per_mm = 0.55};
const TimberLook spruce{.early = {236, 217, 181},
                        .middle = {214, 176, 130},
                        .late = {160, 110, 68},
                        .heartwood = {1.0F, 1.0F, 1.0F},
                        .latewood_mm = 0.07,
                        .latewood_share = 0.15,
                        .gradual = 0.45,
                        .darkness = 0.80,
                        .canals_per_mm = 0.22};
const TimberLook larch{.early = {221, 179, 130},
                       .middle = {182, 120, 75},
                       .late = {112, 62, 38},
                       .heartwood = {0.93F, 0.82F, 0.74F},
                       .latewood_mm = 0.09,
                       .latewood_share = 0.24,
                       .gradual = 0.14,
                       .darkness = 0.92,
                       .darkness_sd = 0.08,
                       .canals_per_mm = 0.25};
const TimberLook oak{.early = {213, 184, 140},
                     .middle = {188, 150, 104},
                     .late = {150, 111, 70},
                     .heartwood = {0.86F, 0.79F, 0.70F},
                     .darkness = 0.62,
                     .darkness_sd = 0.10,
                     .file_mm = 0.022,
                     .rays_per_mm = 7.0,
                     .ray_mm = 0.016,
                     .ray_tone = 0.06,
                     .broad_rays_per_mm = 0.42,
                     .broad_ray_mm = 0.26,
                     .vessel_mm = 0.27,
                     .vessel_rows = 1.7,
                     .vessels_per_mm2 = 11.0};
const TimberLook ash{.early = {226, 203, 165},
                     .middle = {205, 174, 130},
                     .late = {172, 134, 92},
                     .heartwood = {1.0F, 1.0F, 1.0F},
                     .darkness = 0.60,
                     .darkness_sd = 0.10,
                     .file_mm = 0.022,
                     .rays_per_mm = 6.0,
                     .ray_mm = 0.03,
                     .ray_tone = 0.05,
                     .vessel_mm = 0.20,
                     .vessel_rows = 2.5,
                     .vessels_per_mm2 = 6.0};
const TimberLook maple{.early = {229, 203, 166},
                       .middle = {213, 180, 138},
                       .late = {172, 126, 84},
                       .heartwood = {0.95F, 0.90F, 0.84F},
                       .darkness = 0.62,
                       .darkness_sd = 0.10,
                       .file_mm = 0.02,
                       .rays_per_mm = 4.5,
                       .ray_mm = 0.05,
                       .ray_tone = 0.045,
                       .vessel_mm = 0.062,
                       .vessels_per_mm2 = 46.0,
                       .terminal_mm = 0.05};
const TimberLook beech{.early = {222, 187, 149},
                       .middle = {200, 157, 117},
                       .late = {156, 108, 73},
                       .heartwood = {0.97F, 0.93F, 0.90F},
                       .darkness = 0.60,
                       .darkness_sd = 0.10,
                       .file_mm = 0.02,
                       .rays_per_mm = 3.5,
                       .ray_mm = 0.03,
                       .ray_tone = -0.03,
                       .broad_rays_per_mm = 0.5,
                       .broad_ray_mm = 0.11,
                       .vessel_mm = 0.055,
                       .vessels_per_mm2 = 110.0,
                       .terminal_mm = 0.07};

} // namespace

const TimberLook& look_of(Timber timber) {
    switch (timber) {
    case Timber::Spruce:
        return spruce;
    case Timber::Larch:
        return larch;
    case Timber::Oak:
        return oak;
    case Timber::Ash:
        return ash;
    case Timber::Maple:
        return maple;
    case Timber::Beech:
        return beech;
    case Timber::Pine:
        break;
    }
    return pine;
}

WoodType wood_type(Timber timber) {
    switch (timber) {
    case Timber::Oak:
    case Timber::Ash:
        return WoodType::RingPorous;
    case Timber::Maple:
    case Timber::Beech:
        return WoodType::DiffusePorous;
    case Timber::Pine:
    case Timber::Spruce:
    case Timber::Larch:
        break;
    }
    return WoodType::Conifer;
}

std::string word(Timber timber) {
    switch (timber) {
    case Timber::Spruce:
        return "spruce";
    case Timber::Larch:
        return "larch";
    case Timber::Oak:
        return "oak";
    case Timber::Ash:
        return "ash";
    case Timber::Maple:
        return "maple";
    case Timber::Beech:
        return "beech";
    case Timber::Pine:
        break;
    }
    return "pine";
}

} // namespace pithward::demo
