#pragma once

#include "app/batch/command.h"

namespace pithward::batch {

std::function<Exit()> attach_labels(CLI::App& parser, const CommonOptions& common);

} // namespace pithward::batch
