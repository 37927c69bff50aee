// The rules of the house that can be seen in the text of the sources: who may include whom, what core never calls,
// how long a file may be, which words never stand in the tree. Each rule takes one source and gives what breaks it,
// as sentences, so that a planted bad text can show that the rule fires. Source of the rules: DEVELOPERS.md.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace limbledger::house {

struct Source {
  std::string path;  // from the repository's root
  std::string text;  // as it stands
  std::string code;  // without comments
  std::string bare;  // without comments and without what stands in quotes
};

using Complaints = std::vector<std::string>;

[[nodiscard]] Source make_source(std::string path, std::string text);
// All files below the folders, in the order of their paths; folders of packages and builds stay out.
[[nodiscard]] std::vector<Source> read_tree(const std::vector<std::string>& folders);

[[nodiscard]] bool is_cpp(std::string_view path);
[[nodiscard]] Complaints wrong_includes(const Source& source);
[[nodiscard]] Complaints banned_calls(const Source& source);
[[nodiscard]] Complaints too_long(const Source& source);
[[nodiscard]] Complaints crowded_folders(const std::vector<Source>& sources);
// Two types of one name and namespace in two headers: the linker would take one for the other without a word.
[[nodiscard]] Complaints twice_named(const std::vector<Source>& sources);
[[nodiscard]] Complaints unfinished_words(const Source& source);
[[nodiscard]] Complaints foreign_words(const Source& source);
[[nodiscard]] Complaints no_opening(const Source& source);
[[nodiscard]] Complaints wrong_namespace(const Source& source);
[[nodiscard]] Complaints unknown_fault_codes(const Source& source);
[[nodiscard]] Complaints forbidden_output(const Source& words);

}  // namespace limbledger::house
