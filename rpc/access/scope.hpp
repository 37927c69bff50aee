// The words for who may call what, as the command line, tokens and the OpenRPC document use them.
#pragma once

#include "core/service/method.hpp"

#include <array>
#include <string>
#include <string_view>

namespace limbledger::rpc {

struct ScopeWord {
  std::string_view word;
  service::Scope scope;
};

inline constexpr std::array scope_words{
    ScopeWord{"examiner", service::Scope::examiner},
    ScopeWord{"kiosk", service::Scope::kiosk},
    ScopeWord{"viewer", service::Scope::viewer},
    ScopeWord{"sync", service::Scope::sync},
};

// "examiner, viewer", or "anybody".
[[nodiscard]] inline std::string scopes_text(const service::Scopes& scopes) {
  std::string text;
  for (const ScopeWord& one : scope_words) {
    if (!scopes.open && scopes.allows(one.scope)) {
      text += (text.empty() ? "" : ", ") + std::string(one.word);
    }
  }
  return scopes.open ? "anybody" : text;
}

}  // namespace limbledger::rpc
