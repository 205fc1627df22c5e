#pragma once

namespace pithward::test {

/// Whether a sanitizer watches this program. It keeps what was freed and shadows of it all, so memory tells nothing.
#ifdef __has_feature // clang, which the sanitizers' builds use
inline constexpr bool sanitized = __has_feature(address_sanitizer) || __has_feature(thread_sanitizer);
#else
inline constexpr bool sanitized = false;
#endif

} // namespace pithward::test
