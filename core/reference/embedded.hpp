// The fact files of core/reference/data and the word files of core/report/words, as they were when the library was
// built. A name is the path below its folder ("scales.json", "en.ftl"); a name that is not there gives empty text.
// The text is checked by whoever loads it, not here.
#pragma once

#include <string_view>
#include <vector>

namespace limbledger::reference {

std::string_view embedded(std::string_view name);

// In the order of the bytes of the names, so that an edition's digest does not depend on a file system.
std::vector<std::string_view> embedded_names();

}  // namespace limbledger::reference
