#pragma once

#include "demo-scans/maker/scene.h"

#include <filesystem>

namespace pithward::demo {

enum class Format { Png, Jpeg, TiffLzw, TiffDeflate };

/// The usual suffix, with its dot.
[[nodiscard]] std::string suffix(Format format);

/// Writes the picture with its resolution in the file's tag: JPEG at quality 92 without chroma subsampling, all others
/// without loss. The file appears whole or not at all; one that is there is written over.
[[nodiscard]] Outcome<void> write_image(const std::filesystem::path& file, const Picture& picture, Format format);

} // namespace pithward::demo
