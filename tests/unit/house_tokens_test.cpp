// Secrets are compared by the sealing library's own call alone, which takes as long whatever fits. Read in the sources: whatever
// is named a token, code text, digest, passphrase or secret never stands beside ==, != or another comparison. Source: contract,
// section 11.
#include "tests/unit/house_rules.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <array>
#include <cctype>

namespace limbledger::house {

namespace {

constexpr std::array secret_names{std::string_view("token"), std::string_view("digest"), std::string_view("passphrase"), std::string_view("secret"),
                                  std::string_view("bearer_text"), std::string_view("traded")};

bool chain_char(char c) { return std::isalnum(static_cast<unsigned char>(c)) != 0 || c == '_' || c == '.' || c == '>' || c == '-' || c == '*' || c == ')' || c == '('; }

// What asks only whether there is one, or how long it is, does not compare it; nor does what looks at the outcome of a call.
bool harmless(std::string_view left, std::string_view right) {
  for (const std::string_view asks : {".size()", ".empty()", ".end()", ".has_value()"}) {
    if (left.find(asks) != std::string_view::npos || right.find(asks) != std::string_view::npos) {
      return true;
    }
  }
  return right.starts_with("nullptr") || (!right.empty() && std::isdigit(static_cast<unsigned char>(right.front())) != 0);
}

// One of the names along "held->digest.data()".
bool names_secret(std::string_view chain) {
  std::string name;
  for (const char c : std::string(chain) + ".") {
    if (std::isalnum(static_cast<unsigned char>(c)) != 0 || c == '_') {
      name += c;
      continue;
    }
    if (std::find(secret_names.begin(), secret_names.end(), name) != secret_names.end()) {
      return true;
    }
    name.clear();
  }
  return false;
}

std::string_view before_sign(std::string_view code, std::size_t at) {
  while (at > 0 && code[at - 1] == ' ') {
    --at;
  }
  std::size_t from = at;
  while (from > 0 && chain_char(code[from - 1])) {
    --from;
  }
  return code.substr(from, at - from);
}

std::string_view after_sign(std::string_view code, std::size_t at) {
  while (at < code.size() && code[at] == ' ') {
    ++at;
  }
  std::size_t to = at;
  while (to < code.size() && chain_char(code[to])) {
    ++to;
  }
  return code.substr(at, to - at);
}

Complaints compared_secrets(const Source& source) {
  Complaints complaints;
  const std::string_view code = source.bare;
  for (const std::string_view sign : {"==", "!="}) {
    for (std::size_t at = code.find(sign); at != std::string_view::npos; at = code.find(sign, at + 2)) {
      const std::string_view left = before_sign(code, at);
      const std::string_view right = after_sign(code, at + 2);
      if ((names_secret(left) || names_secret(right)) && !harmless(left, right)) {
        complaints.push_back(source.path + ": " + std::string(left) + " " + std::string(sign) + " " + std::string(right));
      }
    }
  }
  for (const std::string_view call : {"memcmp(", "std::equal(", "strcmp(", ".compare("}) {
    for (std::size_t at = code.find(call); at != std::string_view::npos; at = code.find(call, at + 1)) {
      const std::string_view around = code.substr(at > 40 ? at - 40 : 0, 120);
      const bool by_library = at >= 7 && code.substr(at - 7, 7) == "sodium_";
      if (!by_library && names_secret(around)) {
        complaints.push_back(source.path + ": " + std::string(around));
      }
    }
  }
  return complaints;
}

std::size_t fires_on(std::string text) { return compared_secrets(make_source("rpc/access/a.cpp", std::move(text))).size(); }

}  // namespace

TEST_CASE("no token, code, digest or passphrase is compared but by the sealing library's own call") {
  std::string found;
  bool by_library = false;
  for (const Source& source : read_tree({"rpc", "core/service", "core/ledger/keys"})) {
    if (!is_cpp(source.path)) {
      continue;
    }
    for (const std::string& complaint : compared_secrets(source)) {
      found += complaint + "\n";
    }
    by_library = by_library || (source.path == "rpc/access/token.cpp" && source.bare.find("sodium_memcmp(held->digest.data(), digest.data()") != std::string::npos);
  }
  CHECK(found == "");
  CHECK(by_library);
}

TEST_CASE("the rule on comparing secrets fires, and not on what only asks whether there is one") {
  for (const char* bad : {"if (token == sent) {}", "if (params.token->text != given) {}", "if (held.digest == digest) {}", "return text == passphrase;",
                          "if (memcmp(a, token, 32) == 0) {}", "if (std::equal(digest.begin(), digest.end(), other.begin())) {}", "if (secret.compare(x) == 0) {}"}) {
    CAPTURE(bad);
    CHECK(fires_on(std::string(bad) + "\n") >= 1);
  }
  for (const char* good : {"if (sodium_memcmp(held->digest.data(), digest.data(), digest.size()) == 0) {}", "if (context.tokens == nullptr) {}", "if (token.size() == 43) {}",
                           "if (!params.token) {}", "// token == sent\n"}) {
    CAPTURE(good);
    CHECK(fires_on(std::string(good) + "\n") == 0);
  }
}

}  // namespace limbledger::house
