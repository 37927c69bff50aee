// One row of the method table: a name, who may call it, and a typed function. `bind<&record_finding>("finding.record", ...)`
// deduces params and result; reader, writer and OpenRPC follow from their types. A function is
// `Result<R>(Context&, const P&)`; P may be wire::Raw to take the params as they came.
#pragma once

#include "core/service/context.hpp"
#include "core/wire/read.hpp"
#include "core/wire/write.hpp"

#include <span>
#include <string>
#include <string_view>
#include <type_traits>
#include <utility>

namespace limbledger::service {

// Bits of Scope; `open` methods need no token at all.
struct Scopes {
  std::uint8_t bits = 0;
  bool open = false;

  [[nodiscard]] constexpr bool allows(Scope scope) const {
    return open || (bits & static_cast<std::uint8_t>(scope)) != 0;
  }
};

inline constexpr Scopes to_anybody{0, true};
inline constexpr Scopes to_any_token{15, false};
inline constexpr Scopes to_all_but_kiosk{13, false};
inline constexpr Scopes to_examiner{1, false};
inline constexpr Scopes to_examiner_sync{9, false};
inline constexpr Scopes to_examiner_kiosk{3, false};
inline constexpr Scopes to_examiner_viewer{5, false};
inline constexpr Scopes to_examiner_kiosk_viewer{7, false};

struct Method {
  std::string_view name;
  std::string_view summary;
  Scopes scopes;
  bool writes = false;          // takes `request`, and is refused while nothing can be written
  bool while_locked = false;    // answers also while the ledger is locked
  bool unattended = false;      // asked by a program again and again: does not count as a person's use
  bool of_own_exam = false;     // a kiosk may go on with it while the ledger is locked
  wire::TypeRef params = nullptr;
  wire::TypeRef result = nullptr;
  Result<std::string> (*invoke)(Context&, const wire::Document&, const wire::Node* params) = nullptr;
};

// A result of type T that was written before: its JSON text. The interface describes it as T.
template <class T>
struct ToldBefore {
  std::string text;
};

namespace detail {

template <class R>
struct Told {
  using Type = R;
  static std::string write(const R& result) { return wire::write(result); }
};
template <class T>
struct Told<ToldBefore<T>> {
  using Type = T;
  static std::string write(ToldBefore<T>& result) { return std::move(result.text); }
};

template <class F>
struct Signature;
template <class R, class P>
struct Signature<Result<R> (*)(Context&, const P&)> {
  using Params = P;
  using Returned = R;
};

// Members by position are taken in the order of the description.
void read_params(const wire::Type& type, void* target, const wire::Document& document, const wire::Node* params, wire::ReadReport& report);

template <auto F>
Result<std::string> invoke(Context& context, const wire::Document& document, const wire::Node* params) {
  using Params = typename Signature<decltype(F)>::Params;
  Params target{};
  wire::ReadReport report;
  read_params(wire::type_of<Params>(), &target, document, params, report);
  if (!report.faults.empty()) {
    return wire::Refusal(std::move(report.faults));
  }
  auto result = F(context, target);
  if (!result) {
    return result.error();
  }
  return Told<typename Signature<decltype(F)>::Returned>::write(*result);
}

}  // namespace detail

struct Traits {
  bool writes = false;
  bool while_locked = false;
  bool unattended = false;
  bool of_own_exam = false;
};

template <auto F>
[[nodiscard]] constexpr Method bind(std::string_view name, Scopes scopes, std::string_view summary, Traits traits = {}) {
  using S = detail::Signature<decltype(F)>;
  return {name,
          summary,
          scopes,
          traits.writes,
          traits.while_locked,
          traits.unattended,
          traits.of_own_exam,
          &wire::type_of<typename S::Params>,
          &wire::type_of<typename detail::Told<typename S::Returned>::Type>,
          &detail::invoke<F>};
}

}  // namespace limbledger::service
