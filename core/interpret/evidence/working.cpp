#include "core/interpret/evidence/working.hpp"

#include "core/interpret/evidence/math.hpp"
#include "core/interpret/params.hpp"

#include <algorithm>

namespace limbledger::interpret {

namespace {

constexpr std::size_t line_length = 200;

[[nodiscard]] std::string three(double value) { return wire::write_number(to_steps(value, 1000), 1000); }

void add_line(Working& working, std::string text) {
  if (text.size() > line_length) {
    text.resize(line_length);  // names of the catalogue and digits only: one byte a character
  }
  working.lines.push_back({std::move(text)});
}

[[nodiscard]] std::string result_word(const TestHeard& heard) { return *heard.positive ? " positive" : " negative"; }

[[nodiscard]] std::string joined_reasons(const reference::Admission& admission) {
  std::string out;
  for (const model::Word& reason : admission.reasons) {
    out += (out.empty() ? "" : ", ") + reason.text;
  }
  return out;
}

[[nodiscard]] wire::Raw numbers_of(const reference::AccuracyRow& row) {
  std::string members;
  const auto add = [&](std::string_view name, const std::optional<reference::Measure>& figure) {
    if (figure) {
      members += (members.empty() ? "" : ",") + wire::quoted(name) + ":" + wire::write_number(figure->steps, 10000);
    }
  };
  add("sens", row.sens);
  add("sens_low", row.sens_low);
  add("sens_high", row.sens_high);
  add("spec", row.spec);
  add("spec_low", row.spec_low);
  add("spec_high", row.spec_high);
  add("lr_pos", row.lr_pos);
  add("lr_pos_low", row.lr_pos_low);
  add("lr_pos_high", row.lr_pos_high);
  add("lr_neg", row.lr_neg);
  add("lr_neg_low", row.lr_neg_low);
  add("lr_neg_high", row.lr_neg_high);
  return {"{" + members + "}"};
}

void add_row(Working& working, const reference::AccuracyRow& row) { working.rows.push_back({row.row, row.source, row.status, numbers_of(row)}); }

void write_inputs(const Account& account, Working& working) {
  for (const TestHeard& heard : *account.heard) {
    for (const model::FindingId& id : ids_of(heard.findings)) {
      WorkingInput input;
      input.finding = id;
      input.input = heard.member->test;
      input.state = model::Word{heard.positive ? (*heard.positive ? "positive" : "negative") : heard.state};
      working.inputs.push_back(std::move(input));
    }
  }
}

void write_left_out(const Account& account, Working& working) {
  const std::vector<TestHeard>& heard = *account.heard;
  for (const std::size_t at : account.choice->direction) {
    add_line(working, heard[at].member->test.text + result_word(heard[at]) + ": direction only: " + joined_reasons(heard[at].admission));
    if (heard[at].row != nullptr) {
      add_row(working, *heard[at].row);
    }
  }
  for (const auto& [at, because] : account.choice->left_out) {
    std::string line = heard[at].member->test.text + (heard[at].positive ? result_word(heard[at]) : "") + ": left out: " + because;
    if (heard[at].positive && !heard[at].ratio) {
      line += "; may not compute: " + joined_reasons(heard[at].admission);
    }
    add_line(working, std::move(line));
  }
}

void write_sum(const Account& account, Working& working) {
  const std::vector<TestHeard>& heard = *account.heard;
  for (const std::size_t at : account.choice->kept) {
    add_line(working, heard[at].group->group.text + ": " + heard[at].member->test.text + result_word(heard[at]) + ": " + heard[at].ratio->sum);
    add_row(working, *heard[at].row);
  }
  const Combined& combined = account.combined;
  std::string logs;
  std::string sum;
  std::string errors;
  for (std::size_t i = 0; i < combined.order.size(); ++i) {
    const Ratio& ratio = *heard[account.choice->kept[combined.order[i]]].ratio;
    const std::string weight = combined.weight[i] < 1 ? three(combined.weight[i]) + " x " : "";
    logs += (logs.empty() ? "ln " : ", ln ") + three(ratio.value) + " = " + three(ratio.ln());
    sum += (sum.empty() ? "" : " + ") + weight + (ratio.ln() < 0 ? "(" + three(ratio.ln()) + ")" : three(ratio.ln()));
    errors += (errors.empty() ? "" : " + ") + ("(" + weight + three(ratio.se) + ")^2") + (ratio.stated ? " stated" : "");
  }
  add_line(working, logs);
  const bool is_held = held(combined.point) != combined.point;
  add_line(working,
           sum + " = " + three(combined.sum) + ", exp " + three(combined.point) + (is_held ? ", held to " + three(held(combined.point)) : ""));
  add_line(working, "error: root of " + errors + " = " + three(combined.se));
  const RatioInterval interval = interval_of(combined);
  add_line(working, three(combined.sum) + " -/+ 1.96 x " + three(combined.se) + ": ratio " + three(interval.low) + " to " + three(interval.high) +
                        (tells_nothing(combined) ? ": holds 1, tells nothing" : ": does not hold 1"));
  const auto bound = [](double ratio) { return three(ratio) + (held(ratio) != ratio ? ", held to " + three(held(ratio)) : ""); };
  add_line(working, "best single " + bound(combined.best) + "; undiscounted product " + bound(combined.product));
  if (account.second_class) {
    add_line(working, "second class: no interval was printed, or of fewer than 40 people, so an error of 0.5 or more is stated and no band stands above favour");
  }
}

[[nodiscard]] std::string bayes(double prior, double ratio) {
  const double odds = prior / (1 - prior);
  return three(prior) + " / (1 - " + three(prior) + ") x " + three(ratio) + " = " + three(odds * ratio) + "; " + three(odds * ratio) + " / (1 + " +
         three(odds * ratio) + ") = " + three(std::clamp(posterior(prior, ratio), 0.001, 0.99));
}

void write_chances(const Account& account, const Hypothesis& result, Working& working) {
  if (!account.prior) {
    add_line(working, "no eligible prior: direction only");
    return;
  }
  const Prior& prior = *account.prior;
  const Combined& combined = account.combined;
  if (prior.row != nullptr) {
    std::string members = "\"low\":" + wire::write_number(prior.row->low.steps, 10000);
    members += ",\"best\":" + wire::write_number(prior.row->best.steps, 10000) + ",\"high\":" + wire::write_number(prior.row->high.steps, 10000);
    working.rows.push_back({prior.row->row, prior.row->source, prior.row->status, {"{" + members + "}"}});
    add_line(working,
             "prior " + three(prior.share.best) + " (" + three(prior.share.low) + " to " + three(prior.share.high) + "): " + prior.row->row.text);
    add_line(working, "counted among: " + prior.row->population.text);
  } else {
    add_line(working, "prior " + three(prior.share.best) + " as typed");
  }
  const double point = held(combined.point);
  const double least = std::min({point, held(combined.best), held(combined.product)});
  const double most = std::max({point, held(combined.best), held(combined.product)});
  add_line(working, "point: " + bayes(prior.share.best, point));
  add_line(working, "low: " + bayes(prior.share.low, least));
  add_line(working, "high: " + bayes(prior.share.high, most));
  for (const Replaced& one : account.replaced) {
    if (one.open_composite()) {
      add_line(working, one.test->member->test.text + ", of which a part is positive and another open, would give " + three(one.point) + " as a negative" +
                            (one.kept_as_end ? "; its figure stays as an end of the range" : ""));
      continue;
    }
    if (one.set_aside()) {
      add_line(working, one.test->member->test.text + " was set aside (" + one.test->state + "); counted it would give " + three(one.point) +
                            (one.kept_as_end ? "; its figure stays as an end of the range" : ""));
      continue;
    }
    const std::string dropped = one.test != nullptr ? one.test->member->test.text + result_word(*one.test) + " gave " + three(one.point)
                                                    : "without " + one.keeper->member->test.text + " it was " + three(one.point);
    const std::string why = one.test != nullptr ? ", replaced by " + one.keeper->member->test.text + ", which stands before it in the group: "
                                                : ", a composite replaces its members: ";
    add_line(working,
             dropped + why + three(posterior(prior.share.best, point)) + (one.kept_as_end ? "; its figure stays as an end of the range" : ""));
  }
  if (result.range) {
    add_line(working, three(account.chances.low) + " to " + three(account.chances.high) + ": " + wire::write_number(result.range->low.steps, 1) +
                          " to " + wire::write_number(result.range->high.steps, 1) + " in 100, rounded to 5");
  }
}

}  // namespace

void write_working(const Account& account, const Hypothesis& result, Working& working) {
  write_inputs(account, working);
  if (account.choice->kept.empty()) {
    working.formula = {"direction only: no finding has a row that may compute"};
    write_left_out(account, working);
    return;
  }
  working.formula = {"one finding a group; ln ratios of one direction x 1, 1/2, 1/4 ..., strongest first; prior odds x exp of the sum"};
  write_sum(account, working);
  write_chances(account, result, working);
  write_left_out(account, working);
}

}  // namespace limbledger::interpret
