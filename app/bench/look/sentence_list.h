#pragma once

#include <span>

namespace pithward::bench {

/// The English sentences of the libraries that the window can say in another language (sentences.h).
[[nodiscard]] std::span<const char* const> library_sentences();

} // namespace pithward::bench
