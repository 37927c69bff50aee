#include "core/interpret/evidence/math.hpp"

namespace limbledger::interpret {

namespace {
constexpr double ln_two = 0.69314718055994530942;
}

double own_ln(double x) {
  int twos = 0;
  for (; x > 1.5; x /= 2) {
    ++twos;
  }
  for (; x < 0.75; x *= 2) {
    --twos;
  }
  // ln x = 2 (z + z^3/3 + z^5/5 ...), z = (x - 1) / (x + 1), at most 0.2 here.
  const double z = (x - 1) / (x + 1);
  const double square = z * z;
  double term = z;
  double sum = 0;
  for (int n = 1; n < 60; n += 2) {
    sum += term / n;
    term *= square;
  }
  return 2 * sum + twos * ln_two;
}

double own_exp(double x) {
  int twos = 0;
  for (; x > ln_two / 2; x -= ln_two) {
    ++twos;
  }
  for (; x < -ln_two / 2; x += ln_two) {
    --twos;
  }
  double term = 1;
  double sum = 1;
  for (int n = 1; n < 25; ++n) {
    term *= x / n;
    sum += term;
  }
  for (; twos > 0; --twos) {
    sum *= 2;
  }
  for (; twos < 0; ++twos) {
    sum /= 2;
  }
  return sum;
}

double own_root(double x) {
  if (!(x > 0)) {
    return 0;
  }
  double root = x > 1 ? x : 1;
  for (int n = 0; n < 200; ++n) {
    const double next = (root + x / root) / 2;
    if (!(next < root)) {
      break;
    }
    root = next;
  }
  return root;
}

std::int64_t to_steps(double value, std::int64_t per_unit) {
  const double scaled = value * static_cast<double>(per_unit);
  // A hair, so that what is a half on paper is one here.
  const double hair = 1e-9;
  return scaled < 0 ? -static_cast<std::int64_t>(-scaled + 0.5 + hair) : static_cast<std::int64_t>(scaled + 0.5 + hair);
}

}  // namespace limbledger::interpret
