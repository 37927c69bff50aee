#include "tests/simulation/clinic/device.hpp"

#include "core/wire/write.hpp"

#include <utility>

namespace limbledger::ledger::clinic_sim {

namespace {

Secret32 secret_of(std::uint8_t tag_byte, std::uint64_t number) {
  std::array<std::uint8_t, 32> bytes{tag_byte};
  put_integer(bytes.data() + 8, number, 8);
  return Secret32(View(bytes));
}

// Of the values of one slot the latest by the clock, and nothing said of the others.
void let_the_last_win(ExamFold& fold, std::span<const Opened> operations) {
  const auto stamp_of = [&](const model::Finding& finding) {
    const auto found = std::find_if(operations.begin(), operations.end(), [&](const Opened& one) { return one.entry() == *finding.entry; });
    return found == operations.end() ? Stamp{} : found->stamp();
  };
  std::vector<model::Finding> shown;
  for (const model::Finding& finding : *fold.exam.findings) {
    const auto same = std::find_if(shown.begin(), shown.end(), [&](const model::Finding& one) { return one.item == finding.item && one.side == finding.side; });
    if (same == shown.end()) {
      shown.push_back(finding);
    } else if (stamp_of(*same) < stamp_of(finding)) {
      *same = finding;
    }
  }
  for (model::Finding& finding : shown) {
    finding.standing = model::Standing::current;
  }
  fold.exam.findings = std::move(shown);
  fold.exam.conflicts.reset();
}

}  // namespace

const SignKey& root_key() {
  static const SignKey key(secret_of(1, 0));
  return key;
}

model::ClinicId the_clinic() {
  static const model::ClinicId clinic = clinic_of(root_key().pub());
  return clinic;
}

const BoxPair& epoch_pair() {
  static const BoxPair pair(secret_of(2, 0));
  return pair;
}

Device::Device(std::size_t number_, Planted planted_, std::uint64_t seed, bool on_file)
    : number(number_),
      planted(planted_),
      world(seed),
      disk(std::make_unique<Disk>(planted_, seed, on_file ? std::optional(the_clinic()) : std::nullopt)),
      key(std::make_unique<SignKey>(secret_of(10, number_))),
      examiner_key(secret_of(11, number_)) {
  device.bytes.fill(static_cast<std::uint8_t>(number + 1));
  examiner.bytes.fill(static_cast<std::uint8_t>(number + 1));
  Intro intro;
  intro.storage = Storage::memory;
  intro.box_pub = epoch_pair().pub();
  intro.device = device;
  intro.program = "a simulated device";
  Member own = member();
  if (!begin_chain(own, intro)) {
    throw Complaint{"refused", "no first entry"};
  }
  open();
}

Device::Device(Device& other, std::uint64_t seed)
    : number(other.number),
      planted(other.planted),
      device(other.device),
      examiner(other.examiner),
      world(seed),
      disk(other.disk->copy(seed)),
      key(std::make_unique<SignKey>(*other.key)),
      examiner_key(other.examiner_key),
      promised(other.promised),
      fell_back(other.fell_back) {
  world.reading = other.world.reading;
  world.restart();
}

void Device::open() {
  records.reset();
  Identity identity{the_clinic(), *key, {}, BlobKey(secret_of(3, number))};
  identity.epochs.emplace(1, epoch_pair());
  auto opened = Log::open(*disk, world, std::move(identity));
  if (!opened) {
    throw Complaint{"damaged", "device " + std::to_string(number) + " does not open: " + opened.error().faults.front().code};
  }
  log = std::move(*opened);
  records = std::make_unique<Records>(*log);
  for (const wire::Fault& fault : log->damage()) {
    if (fault.code != "replica.forked") {
      throw Complaint{"damaged", "device " + std::to_string(number) + " opens with " + fault.code};
    }
  }
  if (!has_ended()) {
    (void)log->introduce_examiner(examiner, examiner_key);
  }
}

void Device::catch_up() {
  if (is_dark()) {
    return;
  }
  const auto changed = log->catch_up();
  if (!changed) {
    throw Complaint{"damaged", "device " + std::to_string(number) + " does not read what came: " + changed.error().faults.front().code};
  }
  records->forget(*changed);
}

void Device::power_back() {
  if (disk->is_lying()) {
    promised = before_lie;
    fell_back = true;
  }
  records.reset();
  log.reset();
  disk->power_back();
  world.restart();
  if (predecessor && !stored_intro(*disk, the_clinic(), replica())) {
    key = std::move(predecessor);
  }
  open();
}

void Device::go_on_as_heir() {
  Predecessor before;
  const auto leaves = leaves_of(*disk);
  for (const Place& leaf : *leaves) {
    before = leaf.replica == replica() ? leaf : before;
  }
  Secret32 seed;
  world.random(seed.room());
  auto next = std::make_unique<SignKey>(seed);
  Intro intro;
  intro.storage = Storage::memory;
  intro.box_pub = epoch_pair().pub();
  intro.device = device;
  intro.predecessor = before;
  intro.heir_signature = sign_heir(*key, the_clinic(), replica_of(the_clinic(), next->pub()), before);
  intro.program = "a simulated device";
  Member heir{*disk, world, the_clinic(), *next};
  if (begin_chain(heir, intro)) {
    records.reset();
    log.reset();
    predecessor = std::exchange(key, std::move(next));
    open();
  }
}

Page Device::page(const model::ExamId& exam) {
  Page out;
  const auto record = records->exam(exam);
  if (!record) {
    return out;
  }
  out.operations = (*record)->operations;
  out.exam = (*record)->fold;
  if (planted == Planted::newer_left_out) {
    std::vector<Opened> read;
    std::copy_if(out.operations.begin(), out.operations.end(), std::back_inserter(read), [](const Opened& one) { return one.readable(); });
    out.exam = fold_exam(exam, read, [this](const model::ExaminerId& who, const PublicKey& pub) { return log->knows_examiner(who, pub); }, the_clinic());
  } else if (planted == Planted::last_writer_wins) {
    let_the_last_win(*out.exam, out.operations);
  }
  return out;
}

std::string Device::said() {
  std::string out;
  for (const auto& [object, known] : log->index().objects) {
    const auto operations = log->operations(object);
    out += wire::write(model::Hex<32>{state_digest(object, *operations)});
    if (known.type == ObjectType::exam) {
      const auto shown = page(model::ExamId{object.bytes});
      // What is kept folded must say what the same entries say when they are folded now.
      const auto fresh = fold_exam(model::ExamId{object.bytes}, *operations,
                                   [this](const model::ExaminerId& who, const PublicKey& pub) { return log->knows_examiner(who, pub); }, the_clinic());
      out += shown.exam ? wire::write(shown.exam->exam) : "nothing";
      if (planted == Planted::none && shown.exam && (!fresh || wire::write(fresh->exam) != wire::write(shown.exam->exam))) {
        throw Complaint{"diverged", "device " + std::to_string(number) + " shows an exam as it no longer is"};
      }
    } else if (known.type == ObjectType::person) {
      const auto person = records->person(model::PersonId{object.bytes});
      out += person ? wire::write((*person)->fold.person) : "nobody";
    } else if (known.type == ObjectType::report) {
      for (const ReportFold& one : fold_reports(*operations)) {
        out += one.entry.to_text() + wire::write(one.said);
      }
    }
  }
  const auto links = records->links();
  for (const auto& [persons, pair] : (*links)->pairs) {
    out += persons.first.to_text() + persons.second.to_text() + (pair.same ? wire::write(*pair.same) : "open") + (pair.in_conflict ? "!" : "");
  }
  return out;
}

Result<Bytes> write_on_stick(Device& device, const std::optional<model::ReplicaId>& holder) {
  Member own = device.member();
  auto writing = ParcelWriting::begin(own, 1, epoch_pair().pub(), holder);
  if (!writing) {
    return writing.error();
  }
  Bytes out;
  for (auto piece = writing->next(); ; piece = writing->next()) {
    if (!piece || piece->empty()) {
      return piece ? Result<Bytes>(std::move(out)) : piece;
    }
    out.insert(out.end(), piece->begin(), piece->end());
  }
}

Result<ParcelTaken> take_off_stick(Device& device, const Bytes& parcel, bool cut_too, std::size_t piece) {
  std::map<std::uint32_t, BoxPair> epochs;
  epochs.emplace(1, epoch_pair());
  Member own = device.member();
  ParcelTaking taking(own, epochs, cut_too);
  std::size_t at = 0;
  Result<ParcelTaking::Wants> wants = ParcelTaking::Wants::more;
  while (wants && *wants != ParcelTaking::Wants::nothing) {
    at = *wants == ParcelTaking::Wants::from_start ? 0 : at;
    const std::size_t size = std::min(piece, parcel.size() - at);
    wants = taking.feed(View(parcel).subspan(at, size));
    at += size;
  }
  return wants ? Result<ParcelTaken>(taking.taken()) : Result<ParcelTaken>(wants.error());
}

}  // namespace limbledger::ledger::clinic_sim
