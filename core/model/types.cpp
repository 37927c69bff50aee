// The type tables of the model, made once.
#include "core/model/item.hpp"
#include "core/model/operation.hpp"

namespace limbledger::wire {

template const Type& type_of<model::Value>();
template const Type& type_of<model::Observation>();
template const Type& type_of<model::Finding>();
template const Type& type_of<model::Settled>();
template const Type& type_of<model::Consent>();
template const Type& type_of<model::Company>();
template const Type& type_of<model::WhoSpoke>();
template const Type& type_of<model::Interpreter>();
template const Type& type_of<model::Impression>();
template const Type& type_of<model::PlanItem>();
template const Type& type_of<model::Letter>();
template const Type& type_of<model::LetterPage>();
template const Type& type_of<model::Exam>();
template const Type& type_of<model::Signed>();
template const Type& type_of<model::Addendum>();
template const Type& type_of<model::Conflict>();
template const Type& type_of<model::Person>();
template const Type& type_of<model::Place>();
template const Type& type_of<model::Item>();
template const Type& type_of<model::Scale>();
template const Type& type_of<model::Sequence>();
template const Type& type_of<model::Operation>();
template const Type& type_of<model::PersonBody>();
template const Type& type_of<model::ExamBody>();
template const Type& type_of<model::ConsentBody>();
template const Type& type_of<model::FindingBody>();
template const Type& type_of<model::WithdrawBody>();
template const Type& type_of<model::ImpressionBody>();
template const Type& type_of<model::PlanBody>();
template const Type& type_of<model::SignBody>();
template const Type& type_of<model::AddendumBody>();
template const Type& type_of<model::MoveBody>();
template const Type& type_of<model::SwapSidesBody>();
template const Type& type_of<model::SettleBody>();
template const Type& type_of<model::AlertHandledBody>();
template const Type& type_of<model::PlaceBody>();
template const Type& type_of<model::TransferBody>();
template const Type& type_of<model::DisagreeBody>();
template const Type& type_of<model::BecameBody>();
template const Type& type_of<model::OutcomeBody>();
template const Type& type_of<model::CountersignBody>();
template const Type& type_of<model::TransferSet>();
template const Type& type_of<model::Transferred>();
template const Type& type_of<model::Countersigned>();
template const Type& type_of<model::LetterBody>();
template const Type& type_of<model::LinkBody>();
template const Type& type_of<model::ExaminerNameBody>();
template const Type& type_of<model::PutOffBody>();
template const Type& type_of<model::ReportBody>();

}  // namespace limbledger::wire
