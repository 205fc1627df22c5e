#pragma once

#include <vips/vips.h>

#include <memory>
#include <string>

namespace pithward::scan {

/// Gives back a reference to a libvips or GLib object.
struct Unref {
    void operator()(VipsImage* image) const { g_object_unref(image); }
    void operator()(VipsRegion* region) const { g_object_unref(region); }
    void operator()(gchar* text) const { g_free(text); }
};

using VipsHandle = std::unique_ptr<VipsImage, Unref>;
using VipsRegionHandle = std::unique_ptr<VipsRegion, Unref>;

/// The OpenCV type of an RGB image's pixels.
[[nodiscard]] int type_of(VipsImage* image);

/// Starts libvips once for the process: only its trusted loaders, no cache of results. False when it can't start.
[[nodiscard]] bool start_vips();

/// What libvips said went wrong since the last call, as one line; empties its log.
[[nodiscard]] std::string vips_complaint();

} // namespace pithward::scan
