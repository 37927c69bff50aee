#include "core/model/operation.hpp"

#include <array>

namespace limbledger::model {

std::span<const StoredType> stored_types() {
  static constexpr std::array types{
      StoredType{"", &wire::type_of<Operation>},
      StoredType{"person", &wire::type_of<PersonBody>},
      StoredType{"person_change", &wire::type_of<PersonBody>},
      StoredType{"exam", &wire::type_of<ExamBody>},
      StoredType{"consent", &wire::type_of<ConsentBody>},
      StoredType{"finding", &wire::type_of<FindingBody>},
      StoredType{"withdraw", &wire::type_of<WithdrawBody>},
      StoredType{"impression", &wire::type_of<ImpressionBody>},
      StoredType{"plan", &wire::type_of<PlanBody>},
      StoredType{"sign", &wire::type_of<SignBody>},
      StoredType{"addendum", &wire::type_of<AddendumBody>},
      StoredType{"move", &wire::type_of<MoveBody>},
      StoredType{"swap_sides", &wire::type_of<SwapSidesBody>},
      StoredType{"settle", &wire::type_of<SettleBody>},
      StoredType{"alert_handled", &wire::type_of<AlertHandledBody>},
      StoredType{"place", &wire::type_of<PlaceBody>},
      StoredType{"transfer", &wire::type_of<TransferBody>},
      StoredType{"disagree", &wire::type_of<DisagreeBody>},
      StoredType{"became", &wire::type_of<BecameBody>},
      StoredType{"outcome", &wire::type_of<OutcomeBody>},
      StoredType{"countersign", &wire::type_of<CountersignBody>},
      StoredType{"letter", &wire::type_of<LetterBody>},
      StoredType{"link", &wire::type_of<LinkBody>},
      StoredType{"examiner", &wire::type_of<ExaminerNameBody>},
      StoredType{"put_off", &wire::type_of<PutOffBody>},
      StoredType{"report", &wire::type_of<ReportBody>},
  };
  return types;
}

}  // namespace limbledger::model
