#pragma once

#include <QString>

namespace pithward::bench {

/// The folder of the demo site: beside the program's shared files, or in a folder above the program (in the project
/// itself). Empty where it is not there.
[[nodiscard]] QString demo_site();

} // namespace pithward::bench
