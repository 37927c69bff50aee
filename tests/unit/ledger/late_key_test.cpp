// A key and what it opens may lie in two chains that are read in either order: a repeat of the request is known all the same.
#include "tests/unit/ledger/two_writers.hpp"

using namespace limbledger::ledger;
using namespace limbledger::ledger::fold_test;
namespace model = limbledger::model;

namespace {

constexpr unsigned opening_request = 11;
constexpr unsigned second_request = 22;

// `first` makes the exam and its key, `second` writes under that key in its own chain.
void write_both(DeviceWriter& first, DeviceWriter& second) {
  const model::ExamId exam = exam_of(opening_request);
  const Opened opening = first.act(exam, "exam", open_body, {}, {}, false, opening_request);
  second.take_from(first);
  second.act(exam, "finding", flexion(finding_of(second_request), 110), {opening.entry()}, {}, false, second_request);
}

Identity reader() {
  Identity identity{test_clinic(), SignKey(secret_of(77)), {}, BlobKey(secret_of(3))};
  identity.epochs.emplace(1, BoxPair(secret_of(2)));
  return identity;
}

std::vector<Row> rows_of(DeviceWriter& from, const Head& head) { return *from.store().read(head.replica, 1, head.seq, 1000); }

Head head_of(DeviceWriter& from, const model::ReplicaId& replica) {
  const auto heads = from.store().heads();
  for (const Head& head : heads->newest) {
    if (head.replica == replica) {
      return head;
    }
  }
  FAIL("no head of that chain");
  return {};
}

}  // namespace

TEST_CASE("an operation whose key lies in another chain is in the request index, whichever chain is read first") {
  // Chains are read by their names: with the two writers exchanged, the key's chain comes first once and second once.
  bool key_first = false;
  bool key_second = false;
  for (const bool exchanged : {false, true}) {
    DeviceWriter one(1);
    DeviceWriter two(2);
    DeviceWriter& first = exchanged ? two : one;
    DeviceWriter& second = exchanged ? one : two;
    write_both(first, second);
    (first.log().identity().replica() < second.log().identity().replica() ? key_first : key_second) = true;
    limbledger::service::test::FixedWorld world(9);
    const auto log = Log::open(second.store(), world, reader());
    REQUIRE(log.has_value());
    CHECK((*log)->index().requests.contains(DeviceWriter::request_of(opening_request)));
    CHECK((*log)->index().requests.contains(DeviceWriter::request_of(second_request)));
    CHECK((*log)->index().objects.at(model::as_object(exam_of(opening_request))).type == ObjectType::exam);
  }
  CHECK(key_first);
  CHECK(key_second);
}

TEST_CASE("an operation taken before the key that opens it is noted when the key comes") {
  DeviceWriter first(1);
  DeviceWriter second(2);
  write_both(first, second);
  limbledger::store::MemoryStore store;
  limbledger::service::test::FixedWorld world(9);
  const auto log = Log::open(store, world, reader());
  REQUIRE(log.has_value());
  for (DeviceWriter* from : {&second, &first}) {
    const model::ReplicaId replica = from->log().identity().replica();
    const Head head = head_of(second, replica);
    REQUIRE((*log)->take({test_clinic(), replica, from->log().identity().device_key.pub()}, rows_of(second, head), head).has_value());
    CHECK((*log)->index().requests.contains(DeviceWriter::request_of(second_request)) == (from == &first));
  }
  CHECK((*log)->operations(model::as_object(exam_of(opening_request)))->size() == 2);
}
