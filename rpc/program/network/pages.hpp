// Reads the files of a front end once, at the start: what is served later cannot reach out of the folder, and does not change
// under a page that is open. Files and folders whose names begin with a dot stay out, and links are not followed. What
// cannot be served is left out and named: a name that is no plain address, a kind of file that has no type here, what cannot be
// read, more than 32 MiB in all.
#pragma once

#include "rpc/access/pages.hpp"

#include <string>
#include <vector>

namespace limbledger::rpc {

// `not_served` gets a line for each file that is left out, `remarks` one for each page with a script in itself, which the policy that
// pages are served with keeps a browser from running. Throws Problem: no index.html.
[[nodiscard]] Pages read_pages(const std::string& folder, std::vector<std::string>& not_served, std::vector<std::string>& remarks);

}  // namespace limbledger::rpc
