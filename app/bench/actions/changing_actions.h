#pragma once

#include "app/bench/actions/action_table.h"

namespace pithward::bench {

/// Whether an action changes a reading or the project: it rests where these may only be looked at.
[[nodiscard]] bool changes_something(ActionId id);

} // namespace pithward::bench
