#pragma once

namespace pithward {

/// Limits the threads of all image work of the process; 0, or more than there are cores, means one for each core. Call
/// it before the first scan is opened.
void use_threads(int count);

} // namespace pithward
