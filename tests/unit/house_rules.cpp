#include "tests/unit/house_rules.hpp"

#include "core/wire/fault.hpp"

#include <algorithm>
#include <array>
#include <cctype>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <map>
#include <span>
#include <sstream>
#include <utility>

namespace limbledger::house {

namespace {

bool word_char(char c) { return std::isalnum(static_cast<unsigned char>(c)) != 0 || c == '_'; }

// Where the word stands alone, from `from` on; npos where it does not.
std::size_t find_word(std::string_view text, std::string_view word, std::size_t from = 0) {
  for (std::size_t at = text.find(word, from); at != std::string_view::npos; at = text.find(word, at + 1)) {
    const std::size_t end = at + word.size();
    const bool left = at == 0 || !word_char(text[at - 1]) || !word_char(word.front());
    const bool right = end == text.size() || !word_char(text[end]) || !word_char(word.back());
    if (left && right) {
      return at;
    }
  }
  return std::string_view::npos;
}

std::string line_of(std::string_view text, std::size_t at) {
  return std::to_string(1 + std::count(text.begin(), text.begin() + static_cast<std::ptrdiff_t>(at), '\n'));
}

std::string lower(std::string_view text) {
  std::string out(text);
  std::transform(out.begin(), out.end(), out.begin(), [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
  return out;
}

// "core/wire" of "core/wire/read.cpp"; "rpc" of anything in rpc; "" elsewhere and for core's own files.
std::string folder_of(std::string_view path) {
  if (path.starts_with("rpc/")) {
    return "rpc";
  }
  if (!path.starts_with("core/")) {
    return "";
  }
  const auto slash = path.find('/', 5);
  return slash == std::string_view::npos ? "" : std::string(path.substr(0, slash));
}

// What a folder may include besides itself: folders (ending in a slash) or single files.
const std::map<std::string, std::vector<std::string>, std::less<>>& edges() {
  static const std::map<std::string, std::vector<std::string>, std::less<>> table{
      {"core/wire", {}},
      {"core/model", {"core/wire/"}},
      {"core/reference", {"core/wire/", "core/model/"}},
      {"core/interpret", {"core/wire/", "core/model/", "core/reference/"}},
      {"core/report", {"core/wire/", "core/model/", "core/reference/", "core/interpret/"}},
      {"core/ledger", {"core/wire/", "core/model/"}},
      {"core/match", {"core/wire/", "core/model/"}},
      {"core/store", {"core/ledger/port.hpp", "core/ledger/entry.hpp", "core/ledger/bytes.hpp", "core/wire/", "core/model/ids.hpp"}},
      {"core/service", {"core/"}},
      {"rpc", {"core/service/", "core/ledger/port.hpp", "core/wire/"}},
  };
  return table;
}

// Where a single file may reach further than its folder: the program puts the parts together.
const std::map<std::string, std::vector<std::string>, std::less<>>& own_edges() {
  static const std::map<std::string, std::vector<std::string>, std::less<>> table{
      {"rpc/access/", {"core/ledger/world.hpp"}},
      {"rpc/program/", {"core/store/", "core/ledger/world.hpp", "core/reference/edition.hpp", "core/report/", "core/model/operation.hpp"}},
  };
  return table;
}

// Libraries, and the only places that may see them.
struct Library {
  std::string_view header;
  std::vector<std::string_view> places;
};

const std::vector<Library>& libraries() {
  static const std::vector<Library> table{
      {"boost/describe", {"core/", "rpc/"}},
      {"boost/mp11", {"core/wire/"}},
      {"boost/pfr", {"core/wire/type.hpp"}},
      {"boost/system/result.hpp", {"core/wire/fault.hpp"}},
      {"simdjson.h", {"core/wire/read.cpp", "core/wire/parse.cpp"}},
      {"boost/asio/", {"rpc/transport/"}},
      {"boost/beast/", {"rpc/transport/"}},
      {"openssl/", {"rpc/transport/"}},
      {"sodium.h", {"core/ledger/", "rpc/access/token.cpp"}},
      {"sodium/", {"core/ledger/"}},
      {"sqlite3.h", {"core/store/"}},
      {"spdlog/", {"rpc/"}},
      {"CLI/", {"rpc/"}},
  };
  return table;
}

// Parts of the standard library that bring the world, threads, printing or an order that differs between libraries.
constexpr std::array worldly_headers{
    std::string_view{"atomic"},     std::string_view{"chrono"},        std::string_view{"condition_variable"},
    std::string_view{"cstdio"},     std::string_view{"ctime"},         std::string_view{"filesystem"},
    std::string_view{"format"},     std::string_view{"fstream"},       std::string_view{"future"},
    std::string_view{"iomanip"},    std::string_view{"iostream"},      std::string_view{"locale"},
    std::string_view{"clocale"},    std::string_view{"mutex"},         std::string_view{"random"},
    std::string_view{"regex"},      std::string_view{"shared_mutex"},  std::string_view{"sstream"},
    std::string_view{"thread"},     std::string_view{"unordered_map"}, std::string_view{"unordered_set"},
    std::string_view{"expected"},   std::string_view{"stdio.h"},       std::string_view{"time.h"},
    std::string_view{"unistd.h"},   std::string_view{"fcntl.h"},       std::string_view{"pthread.h"},
};

// Words that core never uses, each with what it would break.
constexpr std::array banned_words{
    std::pair{std::string_view{"system_clock"}, std::string_view{"time comes from world.hpp"}},
    std::pair{std::string_view{"steady_clock"}, std::string_view{"time comes from world.hpp"}},
    std::pair{std::string_view{"high_resolution_clock"}, std::string_view{"time comes from world.hpp"}},
    std::pair{std::string_view{"clock_gettime"}, std::string_view{"time comes from world.hpp"}},
    std::pair{std::string_view{"gettimeofday"}, std::string_view{"time comes from world.hpp"}},
    std::pair{std::string_view{"random_device"}, std::string_view{"randomness comes from world.hpp"}},
    std::pair{std::string_view{"randombytes_buf"}, std::string_view{"randomness comes from world.hpp"}},
    std::pair{std::string_view{"mt19937"}, std::string_view{"randomness comes from world.hpp"}},
    std::pair{std::string_view{"rand"}, std::string_view{"randomness comes from world.hpp"}},
    std::pair{std::string_view{"srand"}, std::string_view{"randomness comes from world.hpp"}},
    std::pair{std::string_view{"std::hash"}, std::string_view{"its outcome differs between libraries"}},
    std::pair{std::string_view{"unordered_map"}, std::string_view{"its order differs between libraries"}},
    std::pair{std::string_view{"unordered_set"}, std::string_view{"its order differs between libraries"}},
    std::pair{std::string_view{"cout"}, std::string_view{"core never prints"}},
    std::pair{std::string_view{"cerr"}, std::string_view{"core never prints"}},
    std::pair{std::string_view{"printf"}, std::string_view{"core never prints"}},
    std::pair{std::string_view{"fprintf"}, std::string_view{"core never prints"}},
    std::pair{std::string_view{"puts"}, std::string_view{"core never prints"}},
    std::pair{std::string_view{"getenv"}, std::string_view{"core has no environment"}},
    std::pair{std::string_view{"locale"}, std::string_view{"core has no locale"}},
    std::pair{std::string_view{"setlocale"}, std::string_view{"core has no locale"}},
    std::pair{std::string_view{"fopen"}, std::string_view{"core has no files of its own"}},
    std::pair{std::string_view{"thread"}, std::string_view{"core has no threads"}},
    std::pair{std::string_view{"mutex"}, std::string_view{"core has no threads"}},
    std::pair{std::string_view{"long"}, std::string_view{"its size differs between platforms"}},
    std::pair{std::string_view{"throw"}, std::string_view{"failures are results"}},
    std::pair{std::string_view{".value()"}, std::string_view{"look first, then use *"}},
};

}  // namespace

Source make_source(std::string path, std::string text) {
  Source source{std::move(path), std::move(text), {}, {}};
  const std::string& in = source.text;
  const auto both = [&](char c) {
    source.code += c;
    source.bare += c;
  };
  for (std::size_t i = 0; i < in.size();) {
    if (in.compare(i, 2, "//") == 0) {
      while (i < in.size() && in[i] != '\n') {
        ++i;
      }
    } else if (in.compare(i, 2, "/*") == 0) {
      const std::size_t end = std::min(in.find("*/", i + 2), in.size() - 2);
      for (; i < end + 2; ++i) {
        if (in[i] == '\n') {
          both('\n');
        }
      }
    } else if (in.compare(i, 2, "R\"") == 0 && (i == 0 || !word_char(in[i - 1]))) {
      const std::size_t open = in.find('(', i);
      const std::string close = ")" + in.substr(i + 2, open - i - 2) + "\"";
      const std::size_t end = std::min(in.find(close, open), in.size() - close.size()) + close.size();
      source.code += in.substr(i, end - i);
      source.bare += "\"\"" + std::string(static_cast<std::size_t>(std::count(in.begin() + static_cast<std::ptrdiff_t>(i),
                                                                              in.begin() + static_cast<std::ptrdiff_t>(end), '\n')),
                                          '\n');
      i = end;
    } else if (in[i] == '"' || (in[i] == '\'' && (i == 0 || !word_char(in[i - 1])))) {
      const char quote = in[i];
      std::size_t end = i + 1;
      while (end < in.size() && in[end] != quote && in[end] != '\n') {
        end += in[end] == '\\' ? 2U : 1U;
      }
      end = std::min(end + 1, in.size());
      source.code += in.substr(i, end - i);
      source.bare += quote;
      source.bare += quote;
      i = end;
    } else {
      both(in[i]);
      ++i;
    }
  }
  return source;
}

std::vector<Source> read_tree(const std::vector<std::string>& folders) {
  const std::filesystem::path root(LIMBLEDGER_SOURCE_DIR);
  std::vector<Source> sources;
  for (const std::string& folder : folders) {
    if (!std::filesystem::exists(root / folder)) {
      continue;
    }
    for (std::filesystem::recursive_directory_iterator it(root / folder), end; it != end; ++it) {
      const std::string name = it->path().filename().string();
      if (it->is_directory() && (name == "node_modules" || name == "build" || name == "__pycache__")) {
        it.disable_recursion_pending();
      } else if (it->is_regular_file() && name != "package-lock.json") {
        std::ifstream file(it->path(), std::ios::binary);
        sources.push_back(make_source(std::filesystem::relative(it->path(), root).generic_string(),
                                      std::string(std::istreambuf_iterator<char>(file), {})));
      }
    }
  }
  std::sort(sources.begin(), sources.end(), [](const Source& a, const Source& b) { return a.path < b.path; });
  return sources;
}

bool is_cpp(std::string_view path) { return path.ends_with(".cpp") || path.ends_with(".hpp") || path.ends_with(".h"); }

Complaints wrong_includes(const Source& source) {
  Complaints complaints;
  const std::string folder = folder_of(source.path);
  if (folder.empty() || !is_cpp(source.path)) {
    return complaints;
  }
  const auto rule = edges().find(folder);
  if (rule == edges().end()) {
    return {source.path + ": " + folder + " is not a folder of the house"};
  }
  std::istringstream lines(source.code);
  for (std::string line; std::getline(lines, line);) {
    if (!line.starts_with("#include ")) {
      continue;
    }
    const std::string target = line.substr(10, line.find_last_of("\">") - 10);
    const auto starts = [&](std::string_view allowed) {
      return allowed.ends_with('/') ? target.starts_with(allowed) : target == allowed;
    };
    bool good = false;
    if (line[9] == '"') {
      good = target.starts_with(folder + "/") || std::any_of(rule->second.begin(), rule->second.end(), starts);
      for (const auto& [place, more] : own_edges()) {
        good = good || (source.path.starts_with(place) && std::any_of(more.begin(), more.end(), starts));
      }
    } else {
      const bool library = target.find('/') != std::string::npos || target.ends_with(".h");
      good = !library && (folder == "rpc" || std::find(worldly_headers.begin(), worldly_headers.end(), target) == worldly_headers.end());
      // The operating system is rpc's business.
      good = good || (folder == "rpc" && (target.starts_with("sys/") || (library && target.find('/') == std::string::npos &&
                                                                         target != "sodium.h" && target != "sqlite3.h" && target != "simdjson.h")));
      for (const Library& known : libraries()) {
        good = good || (target.starts_with(known.header) &&
                        std::any_of(known.places.begin(), known.places.end(), [&](std::string_view place) { return source.path.starts_with(place); }));
      }
    }
    if (!good) {
      complaints.push_back(source.path + ": may not include " + target);
    }
  }
  return complaints;
}

Complaints banned_calls(const Source& source) {
  Complaints complaints;
  if (!source.path.starts_with("core/") || !is_cpp(source.path)) {
    return complaints;
  }
  for (const auto& [word, why] : banned_words) {
    const std::size_t at = find_word(source.bare, word);
    // The JSON parser's fields have a `value()` that is no result.
    const bool parsers_own = word == ".value()" && (source.path == "core/wire/parse.cpp" || source.path == "core/wire/read.cpp");
    if (at != std::string::npos && !parsers_own) {
      complaints.push_back(source.path + ":" + line_of(source.bare, at) + ": " + std::string(word) + ": " + std::string(why));
    }
  }
  // A call of time; a member named so is another thing.
  for (std::size_t at = find_word(source.bare, "time("); at != std::string::npos; at = find_word(source.bare, "time(", at + 1)) {
    if (at == 0 || (source.bare[at - 1] != '.' && source.bare[at - 1] != '>')) {
      complaints.push_back(source.path + ":" + line_of(source.bare, at) + ": time comes from world.hpp");
    }
  }
  for (std::size_t at = source.bare.find("_distribution"); at != std::string::npos; at = source.bare.find("_distribution", at + 1)) {
    if (at + 13 == source.bare.size() || !word_char(source.bare[at + 13])) {
      complaints.push_back(source.path + ":" + line_of(source.bare, at) + ": distributions differ between libraries");
    }
  }
  return complaints;
}

Complaints too_long(const Source& source) {
  const auto lines = std::count(source.text.begin(), source.text.end(), '\n');
  const bool generated = source.text.substr(0, 400).find("do not edit") != std::string::npos;
  if (!is_cpp(source.path) || generated || lines <= 500) {
    return {};
  }
  return {source.path + ": " + std::to_string(lines) + " lines, over 500"};
}

Complaints crowded_folders(const std::vector<Source>& sources) {
  std::map<std::string, int> counts;
  for (const Source& source : sources) {
    if (is_cpp(source.path)) {
      ++counts[source.path.substr(0, source.path.rfind('/'))];
    }
  }
  Complaints complaints;
  for (const auto& [folder, count] : counts) {
    if (count > 24) {
      complaints.push_back(folder + ": " + std::to_string(count) + " source files, over 24");
    }
  }
  return complaints;
}

Complaints twice_named(const std::vector<Source>& sources) {
  Complaints complaints;
  std::map<std::string, std::string> seen;
  for (const Source& source : sources) {
    if (!source.path.ends_with(".hpp")) {
      continue;
    }
    std::string space;
    std::istringstream lines(source.bare);
    for (std::string line; std::getline(lines, line);) {
      if (line.starts_with("namespace ")) {
        space = line.substr(10, line.find_first_of(" {", 10) - 10);
      }
      const bool type = line.starts_with("struct ") || line.starts_with("class ");
      if (type && line.find('{') != std::string::npos && line.find('<') == std::string::npos) {
        const std::size_t begin = line.find(' ') + 1;
        std::string name = space + "::" + line.substr(begin, line.find_first_of(" {", begin) - begin);
        if (name.ends_with(':')) {
          name.pop_back();
        }
        const auto [first, fresh] = seen.emplace(name, source.path);
        if (!fresh && first->second != source.path) {
          complaints.push_back(name + ": in " + first->second + " and in " + source.path);
        }
      }
    }
  }
  return complaints;
}

Complaints unfinished_words(const Source& source) {
  Complaints complaints;
  const std::string text = lower(source.text);
  for (const std::string_view word : {"to" "do", "fix" "me", "xx" "x", "ha" "ck", "not imple" "mented", "unimple" "mented", "place" "holder"}) {
    const std::size_t at = find_word(text, word);
    if (at != std::string::npos) {
      complaints.push_back(source.path + ":" + line_of(text, at) + ": unfinished: " + std::string(word));
    }
  }
  return complaints;
}

Complaints foreign_words(const Source& source) {
  Complaints complaints;
  const std::string text = lower(source.text);
  for (const std::string_view part : {"/wo" "rk/", ".." "/shared", "deb.deb" "ian.org", "registry.npm" "js.org", "sub" "agent"}) {
    const std::size_t at = text.find(part);
    if (at != std::string::npos) {
      complaints.push_back(source.path + ":" + line_of(text, at) + ": " + std::string(part) + " is not of this project");
    }
  }
  return complaints;
}

Complaints no_opening(const Source& source) {
  if (!source.path.ends_with(".hpp") && !source.path.ends_with(".h")) {
    return {};
  }
  std::istringstream lines(source.text);
  int count = 0;
  for (std::string line; std::getline(lines, line) && line.starts_with("//");) {
    ++count;
  }
  if (count < 1 || count > 8) {
    return {source.path + ": opens with " + std::to_string(count) + " lines of comment, not 1 to 8"};
  }
  return {};
}

Complaints wrong_namespace(const Source& source) {
  const std::string folder = folder_of(source.path);
  if (folder.empty() || !is_cpp(source.path) || source.path.ends_with("/main.cpp") || source.path.ends_with("/types.cpp")) {
    return {};
  }
  const std::string name = "namespace limbledger::" + (folder == "rpc" ? "rpc" : folder.substr(5));
  if (find_word(source.bare, name) == std::string::npos) {
    return {source.path + ": nothing in " + name};
  }
  return {};
}

Complaints unknown_fault_codes(const Source& source) {
  Complaints complaints;
  for (const std::string_view open : {"Fault(\"", "Fault{\""}) {
    for (std::size_t at = source.code.find(open); at != std::string::npos; at = source.code.find(open, at + 1)) {
      const std::size_t begin = at + open.size();
      const std::string code = source.code.substr(begin, source.code.find('"', begin) - begin);
      if (wire::find_fault_code(code) == nullptr) {
        complaints.push_back(source.path + ":" + line_of(source.code, at) + ": no fault code " + code);
      }
    }
  }
  return complaints;
}

Complaints forbidden_output(const Source& words) {
  Complaints complaints;
  std::istringstream lines(words.text);
  for (std::string line; std::getline(lines, line);) {
    const std::size_t equals = line.find('=');
    if (line.starts_with("#") || (equals == std::string::npos && !line.starts_with(" "))) {
      continue;
    }
    const std::string said = lower(line.starts_with(" ") ? line : line.substr(equals + 1));
    for (const std::string_view word : {"excluded", "ruled out", "rules out", "safe", "normal", "confirmed", "all clear"}) {
      const std::size_t at = find_word(said, word);
      if (at != std::string::npos && !(word == "excluded" && at >= 4 && said.compare(at - 4, 4, "not ") == 0)) {
        complaints.push_back(words.path + ": \"" + std::string(word) + "\" is never said: " + line);
      }
    }
  }
  return complaints;
}

}  // namespace limbledger::house
