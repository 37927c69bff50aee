// Reads the files of a front end once, at the start: what is served later cannot reach out of the folder, and does not change
// under a page that is open. Files and folders whose names begin with a dot stay out, and links are not followed. Refused: a
// name that is no plain address, a kind of file that has no type here, more than 32 MiB in all.
#pragma once

#include "rpc/access/pages.hpp"

#include <string>

namespace limbledger::rpc {

// Throws Problem.
[[nodiscard]] Pages read_pages(const std::string& folder);

}  // namespace limbledger::rpc
