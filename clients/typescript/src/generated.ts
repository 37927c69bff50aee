// Made by generate.mjs from schemas/; not written by hand.

/**
 * 26 characters of lower-case base32
 */
export type Id = string;
/**
 * an instant in UTC such as 2026-11-24T10:15:00.000Z
 */
export type Instant = string;
export type AddendumKind = 'text' | 'findings' | 'correction';
/**
 * a name from the catalogue
 */
export type Name = string;
export type Side = 'left' | 'right' | 'midline';
export type OfTrials = 'mean' | 'best' | 'last';
export type Bound = 'at_least' | 'at_most';
export type Reads = 'unresolved' | 'full' | 'same_as_other_side';
export type Signal = 'absent';
export type Shade = 'minus' | 'plus';
export type TestResult = 'negative' | 'positive' | 'equivocal';
export type Reproduces = 'familiar' | 'other';
export type AnswerWord = 'yes' | 'no' | 'unsure';
export type WhyNot =
  | 'declined'
  | 'pain'
  | 'blocked'
  | 'unable'
  | 'baseline_unable'
  | 'no_limb'
  | 'fused'
  | 'implant'
  | 'covered'
  | 'not_palpable'
  | 'cannot_hold'
  | 'beyond_instrument'
  | 'no_instrument'
  | 'not_reliable'
  | 'cannot_answer'
  | 'withheld'
  | 'no_time'
  | 'other';
export type Quality = 'guarded' | 'effort_limited' | 'poor_contact' | 'unsure_landmark';
export type Origin = 'observed' | 'bulk_expected' | 'carried_over' | 'from_paper' | 'self_reported';
export type DespiteHow = 'before' | 'elsewhere' | 'knowingly';
export type AlertState = 'raised' | 'handled' | 'withdrawn_by_correction';
export type Urgency = 'now' | 'same_day';
export type Audience = 'clinician' | 'protected';
/**
 * a calendar date: 1971, 1971-05 or 1971-05-12
 */
export type CalendarDate = string;
export type FlagAnswer = 'raised' | 'asked_no' | 'not_asked' | 'cannot_answer';
export type Outcome = 'positive' | 'negative' | 'undetermined' | 'not_applicable';
export type StatementGrade = 'as_expected' | 'unclear' | 'notable' | 'cannot_tell';
export type Verdict = 'below' | 'within' | 'above' | 'not_distinguishable' | 'no_norm' | 'norms_disagree';
export type Comparator = 'norm' | 'other_side' | 'own_past' | 'none';
export type Band = 'speak_against' | 'leave_open' | 'favour' | 'strongly_favour' | 'cannot_tell';
export type Support = 'for' | 'against' | 'neither';
export type Strength = 'weak' | 'moderate' | 'strong';
export type Discomfort = 'none' | 'low' | 'some' | 'high';
export type AxisEnd = 'high' | 'low';
export type Became = 'arranged' | 'given' | 'done' | 'declined' | 'written' | 'sent' | 'received' | 'seen' | 'answered' | 'lost';
export type Cannot = 'lie_prone' | 'lie_supine' | 'lie_side' | 'stand' | 'walk' | 'sit' | 'reach_90' | 'one_limb' | 'no_instrument';
export type Capacity = 'yes' | 'no' | 'assent' | 'unsure';
export type ValueKind =
  | 'angle'
  | 'arc'
  | 'length'
  | 'time'
  | 'force'
  | 'pressure'
  | 'temperature'
  | 'mass'
  | 'count'
  | 'grade'
  | 'test'
  | 'answer'
  | 'choice'
  | 'choices'
  | 'text';
export type Status = 'read' | 'memory' | 'derived' | 'common_practice' | 'convention';
export type ChangedKind = 'exam' | 'person' | 'clinic';
export type Chaperone = 'offered' | 'present' | 'declined' | 'not_available';
export type ClockHealth = 'plausible' | 'suspect';
export type ConsentWord = 'yes' | 'no' | 'withdrawn';
export type Control = 'angle' | 'number' | 'grade' | 'test' | 'answer' | 'choice' | 'choices' | 'text';
export type DurabilityWord = 'memory' | 'browser' | 'disk';
export type ExamState = 'open' | 'signed' | 'withdrawn';
export type Setting = 'outreach' | 'primary_care' | 'emergency' | 'orthopaedic' | 'sports';
export type Reliable = 'yes' | 'no' | 'unsure';
export type InterpreterKind = 'none' | 'trained' | 'relative' | 'child';
export type PlanKind = 'film' | 'referral' | 'splint' | 'limit' | 'exercise' | 'medicine' | 'advice' | 'safety_net' | 'review';
export type SaidBack = 'yes' | 'partly' | 'not_done';
export type Standing = 'current' | 'replaced' | 'withdrawn' | 'in_conflict';
export type LetterUrgency = 'now' | 'same_day' | 'two_weeks' | 'routine';
export type LaterKind = 'film' | 'operation' | 'answer' | 'impression';
export type Sex = 'male' | 'female' | 'other' | 'unknown';
export type NormSex = 'male' | 'female' | 'unspecified';
export type LedgerKindWord = 'clinic' | 'demonstration' | 'practice';
export type WhyLeft = 'no_minutes' | 'cannot' | 'pregnancy' | 'no_instrument' | 'age_unknown';
export type LedgerState = 'ready' | 'locked' | 'read_only';
export type YesNo = 'yes' | 'no';
export type OpenedBy = 'passphrase' | 'printed_code';
export type RequestState = 'recorded' | 'unknown';
export type ScopeWord = 'none' | 'examiner' | 'kiosk' | 'viewer' | 'sync';
/**
 * a UUID made by the client
 */
export type RequestId = string;

export interface Addendum {
  entry: Id;
  by: Id;
  at: Instant;
  kind: AddendumKind;
  reason: string;
  text?: string;
  findings?: Observation[];
  marks?: Name[];
}
export interface Observation {
  item: Name;
  side: Side;
  value:
    | Angle
    | Length
    | Duration
    | Force
    | Pressure
    | Temperature
    | Mass
    | CountValue
    | Grade
    | Test
    | Answer
    | Choice
    | Choices
    | Words
    | NotDone;
  instrument?: Name;
  position?: Name;
  end_feel?: Name;
  pain?: Pain;
  quality?: Quality[];
  origin?: Origin;
  despite?: Despite;
  remark?: string;
}
export interface Angle {
  kind: 'angle';
  /**
   * deg, in steps of 0.1
   */
  deg?: number;
  toward?: Name;
  /**
   * deg, in steps of 0.1
   */
  toward_deg?: number;
  /**
   * Items: deg, in steps of 0.1
   */
  trials?: number[];
  of_trials?: OfTrials;
  entered?: string;
  order?: Name;
  bound?: Bound;
  reads?: Reads;
}
export interface Length {
  kind: 'length';
  /**
   * mm
   */
  mm?: number;
  /**
   * Items: mm
   */
  trials?: number[];
  of_trials?: OfTrials;
  entered?: string;
}
export interface Duration {
  kind: 'time';
  /**
   * s, in steps of 0.1
   */
  s?: number;
  /**
   * Items: s, in steps of 0.1
   */
  trials?: number[];
  of_trials?: OfTrials;
  entered?: string;
}
export interface Force {
  kind: 'force';
  /**
   * N
   */
  n?: number;
  /**
   * Items: N
   */
  trials?: number[];
  of_trials?: OfTrials;
  entered?: string;
}
export interface Pressure {
  kind: 'pressure';
  /**
   * mm[Hg]
   */
  mm_hg?: number;
  /**
   * Items: mm[Hg]
   */
  trials?: number[];
  of_trials?: OfTrials;
  entered?: string;
  signal?: Signal;
}
export interface Temperature {
  kind: 'temperature';
  /**
   * Cel, in steps of 0.1
   */
  cel?: number;
  /**
   * Items: Cel, in steps of 0.1
   */
  trials?: number[];
  of_trials?: OfTrials;
  entered?: string;
}
export interface Mass {
  kind: 'mass';
  /**
   * kg, in steps of 0.1
   */
  kg?: number;
  /**
   * Items: kg, in steps of 0.1
   */
  trials?: number[];
  of_trials?: OfTrials;
  entered?: string;
}
export interface CountValue {
  kind: 'count';
  count: number;
}
export interface Grade {
  kind: 'grade';
  scale: Name;
  grade: string;
  shade?: Shade;
  word?: string;
  /**
   * mm
   */
  mm?: number;
}
export interface Test {
  kind: 'test';
  result: TestResult;
  reproduces?: Reproduces;
}
export interface Answer {
  kind: 'answer';
  answer: AnswerWord;
}
export interface Choice {
  kind: 'choice';
  choice: Name;
}
export interface Choices {
  kind: 'choices';
  choices?: Name[];
}
export interface Words {
  kind: 'text';
  text: string;
}
export interface NotDone {
  kind: 'not_done';
  reason: WhyNot;
  detail?: string;
}
export interface Pain {
  score?: number;
  site?: Name;
  familiar?: boolean;
}
export interface Despite {
  how: DespiteHow;
  because: string;
}
export interface AddendumRecordResult {
  addendum: Addendum;
  revision?: Id[];
  repeat?: boolean;
  stale_letters?: Id[];
  call_backs?: Alert[];
}
export interface Alert {
  alert: Name;
  side?: Side;
  state: AlertState;
  urgency: Urgency;
  interrupts: boolean;
  because?: Id[];
  message: Name;
  meanwhile?: Name[];
  stop?: Name[];
  audience: Audience;
  sources?: Name[];
  handled?: AlertHandled;
  text?: string;
  /**
   * true: it was not there when the exam was signed, so the person has to be called back
   */
  call_back?: boolean;
}
export interface AlertHandled {
  alert: Name;
  side?: Side;
  urgent: boolean;
  action?: string;
  reason?: string;
  by?: Id;
  at: Instant;
}
export interface Agreement {
  pairs: number;
  table?: AgreementCell[];
  /**
   * in 100 pairs, both said the same (in steps of 0.1)
   */
  agree?: number;
  /**
   * beyond what chance alone would give; it falls where one answer is far commoner than the others, whatever the examiners do, so it is read beside commonest_of (in steps of 0.01)
   */
  kappa?: number;
  /**
   * one_answer_only: both always said the same one thing, so chance alone would make them agree (a name from the catalogue)
   */
  no_kappa?: Name;
  commonest?: string;
  /**
   * in steps of 0.1
   */
  commonest_of?: number;
}
export interface AgreementCell {
  first: string;
  second: string;
  count: number;
}
export interface AgreementReadResult {
  exams: number;
  /**
   * those that two examiners looked at side by side in one exam, and said in words of the catalogue
   */
  items?: ItemAgreement[];
}
export interface ItemAgreement {
  item: Name;
  agreement: Agreement;
  text?: string;
}
export interface AlertHandleResult {
  alert: Alert;
  revision?: Id[];
  repeat?: boolean;
}
export interface ArcEnds {
  low: Name;
  high: Name;
}
export interface Ask {
  item: Name;
  side: Side;
}
export interface Assessment {
  edition: Name;
  as_of: CalendarDate;
  saw?: string;
  alerts?: Alert[];
  questions?: Question[];
  questions_more: number;
  flags?: Flag[];
  rules?: RuleResult[];
  statements?: Statement[];
  hypotheses?: Hypothesis[];
  steps?: Step[];
  missing?: MissingItem[];
  not_examined?: NotExamined[];
  contradictions?: Contradiction[];
  /**
   * with which statement, rule, hypothesis or alert somebody disagrees and why; it stays where it is
   */
  disagreed?: Disagreed[];
  /**
   * once an alert of class now stands unanswered: whom to call, from the place of the exam
   */
  urgent?: UrgentWay;
  /**
   * true: the exam is supervised, and no hypothesis is given before its examiner has signed
   */
  held_back?: boolean;
}
export interface Question {
  question: Name;
  side?: Side;
  rank: number;
  ask?: Ask[];
  message: Name;
  text?: string;
}
export interface Flag {
  flag: Name;
  side?: Side;
  answer: FlagAnswer;
  findings?: Id[];
}
export interface RuleResult {
  rule: Name;
  edition: Name;
  side: Side;
  outcome: Outcome;
  gate?: Name;
  band?: Name;
  value?: RuleValue;
  points?: RulePoints;
  inputs?: RuleInput[];
  settle?: Settle[];
  flags?: Name[];
  findings?: Id[];
}
export interface RuleValue {
  /**
   * in steps of 0.01
   */
  low?: number;
  /**
   * in steps of 0.01
   */
  high?: number;
}
export interface RulePoints {
  low: number;
  high: number;
}
export interface RuleInput {
  input: Name;
  state: Name;
}
export interface Settle {
  input: Name;
  item?: Name;
  side?: Side;
  answers?: SettleAnswer[];
}
export interface SettleAnswer {
  if: string;
  gives: Outcome;
  band?: Name;
}
export interface Statement {
  statement: Name;
  side?: Side;
  grade: StatementGrade;
  verdict?: Verdict;
  comparator: Comparator;
  message: Name;
  /**
   * numbers and words for the message, in steps of 0.1; `deg` is on the axis, `toward_deg` in the direction the item is named for, and `low`, `high` are in that direction; `instead` names an item that would tell more, and what weakens a test stands as a word with `true` (guarded, heavy_thigh, first_weeks ...)
   */
  params: {
    [k: string]: unknown;
  };
  findings?: Id[];
  rows?: Name[];
  /**
   * what the statement would have needed: instrument, birth, position, meaning, number, other_side
   */
  missing?: Name[];
  text?: string;
}
export interface Hypothesis {
  hypothesis: Name;
  side?: Side;
  bands?: Band[];
  range?: OutOf;
  support: Support;
  strength: Strength;
  in: Name;
  used?: Used[];
  left_out?: LeftOut[];
  message: Name;
}
export interface OutOf {
  low: number;
  high: number;
  of: number;
}
export interface Used {
  finding: Id;
  group: Name;
  row: Name;
}
export interface LeftOut {
  finding: Id;
  because: Name;
}
export interface Step {
  step: Name;
  side: Side;
  changes?: Name[];
  seconds: number;
  discomfort: Discomfort;
  message: Name;
  instead?: Instead[];
}
export interface Instead {
  when: Name;
  item: Name;
  measured?: Name;
  /**
   * in steps of 0.1
   */
  over?: number;
  /**
   * in steps of 0.1
   */
  under?: number;
  source?: Name;
}
export interface MissingItem {
  item: Name;
  side: Side;
  /**
   * minimum: of the complaint's minimum set; other_side: the same on the side not complained of; child: asked for at this age, or where the age is not known; to_confirm: carried over or reported by the person alone; no_time: the whole set was left for lack of time (a name from the catalogue)
   */
  why?: Name;
  text?: string;
}
export interface NotExamined {
  joint: Name;
  side: Side;
  /**
   * complaint: the part complained of; other_side: the same part on the other side; joint_around: the joint above or below it (a name from the catalogue)
   */
  why: Name;
  text?: string;
}
export interface Contradiction {
  contradiction: Name;
  side?: Side;
  message: Name;
  params: unknown;
  findings?: Id[];
  text?: string;
}
export interface Disagreed {
  entry: Id;
  statement: Name;
  because: string;
  by?: Id;
  at: Instant;
  edition: Name;
}
export interface UrgentWay {
  alerts?: Name[];
  window_minutes: number;
  /**
   * true: travel from this place takes longer than that, so the call precedes every further question; absent: travel times of the place are not known
   */
  call_first?: boolean;
  travel?: Travel[];
  telephones?: Telephone[];
}
export interface Travel {
  to: string;
  minutes: number;
}
export interface Telephone {
  who: string;
  number: string;
}
export interface Birth {
  date?: CalendarDate;
  age_years?: number;
  plus_minus?: number;
  on?: CalendarDate;
}
export interface BodyStep {
  item: Name;
  sides?: Side[];
  reason: WhyNot;
  because: Name;
}
export interface CatalogueReadResult {
  items?: Item[];
  scales?: Scale[];
  edition: Name;
  /**
   * those that exam.open and form.describe take in this edition, whatever was asked for; their words are msg.complaint.<name>
   */
  complaints?: Name[];
  words?: LabelledWord[];
}
export interface Item {
  item: Name;
  family: Name;
  region: Name;
  sides?: Side[];
  value: ValueKind;
  axis?: Name;
  end?: AxisEnd;
  toward?: Name;
  arc?: ArcEnds;
  unit?: Name;
  /**
   * Items: in steps of 0.1
   */
  refuse?: number[];
  /**
   * Items: in steps of 0.1
   */
  confirm?: number[];
  scale?: Name;
  choices?: Name[];
  ordinary?: Name[];
  positions?: Name[];
  instruments?: Name[];
  trials_max?: number;
  of_trials?: OfTrials;
  end_feels?: Name[];
  counts?: Counts[];
  seconds: number;
  discomfort: Discomfort;
  safety: boolean;
  withheld_by?: Name[];
  protected?: boolean;
  text: ItemText;
  instead?: Instead[];
  sources?: Name[];
  status: Status;
}
export interface Counts {
  as: TestResult;
  grades?: string[];
  end_feels?: Name[];
}
export interface ItemText {
  short: Name;
  how: Name;
  purpose?: Name;
  positive?: Name;
  care?: Name;
  errors?: Name;
  otherwise?: Name;
  yes?: Name;
  no?: Name;
}
export interface Scale {
  scale: Name;
  title: Name;
  grades?: ScaleGrade[];
  takes_mm?: boolean;
  against_other_side?: boolean;
  ordinary?: string[];
  sources?: Name[];
  status: Status;
}
export interface ScaleGrade {
  grade: string;
  means: Name;
  shades?: boolean;
  /**
   * mm
   */
  mm_low?: number;
  /**
   * mm
   */
  mm_high?: number;
}
export interface LabelledWord {
  /**
   * complaint, region, position, instrument, end_feel, toward, unit, setting, why, quality, origin or side (a name from the catalogue)
   */
  kind: Name;
  word: Name;
  label: Name;
}
export interface Change {
  kind: ChangedKind;
  object: Id;
}
export interface ChangesReadResult {
  changes?: Change[];
  cursor: string;
  more?: boolean;
}
export interface CheckedFault {
  code: string;
  path: string;
  expected?: string;
  got?: string;
}
export interface ClockSeen {
  /**
   * suspect: not set, before the release of the program, or more than 50 years after it; nothing is refused for it
   */
  state: ClockHealth;
  hint?: string;
}
export interface Company {
  chaperone?: Chaperone;
  chaperone_name?: string;
  others?: string[];
}
export interface Conflict {
  about: Name;
  item?: Name;
  side?: Side;
  entries?: Id[];
  values?: unknown[];
}
export interface Consent {
  examine?: ConsentWord;
  record?: ConsentWord;
  send?: ConsentWord;
  by?: string;
  capacity?: Capacity;
}
export interface Countersigned {
  entry: Id;
  by: Id;
  at: Instant;
  findings?: Observation[];
  impression?: Impression;
  remark?: string;
}
export interface Impression {
  text: string;
  side?: Side;
  certainty?: string;
  alternatives?: string[];
  code?: string;
}
export interface DamagedEntry {
  replica: Id;
  seq: number;
  entry?: Id;
  code: Name;
}
export interface EntryMark {
  entry: Id;
  mark: Name;
}
export interface ErrorData {
  retry: boolean;
  faults?: ShownFault[];
  held?: unknown;
  sent?: unknown;
  incident?: string;
}
export interface ShownFault {
  code: string;
  path: string;
  expected?: string;
  got?: string;
  hint: string;
  params?: unknown;
}
export interface Exam {
  exam?: Id;
  person?: Id;
  state?: ExamState;
  complaint: Name;
  side?: Side;
  setting: Setting;
  place?: Id;
  examiner?: Id;
  examined_at?: Instant;
  offset_min?: number;
  injured_on?: CalendarDate;
  edition?: Name;
  revision?: Id[];
  consent?: Consent;
  company?: Company;
  who_spoke?: WhoSpoke;
  interpreter?: Interpreter;
  impression?: Impression;
  plan?: PlanItem[];
  findings?: Finding[];
  alerts_handled?: AlertHandled[];
  addenda?: Addendum[];
  letters?: Letter[];
  signed?: Signed;
  incomplete?: Name[];
  withdrawn?: Withdrawn;
  conflicts?: Conflict[];
  marks?: EntryMark[];
  reviews?: Id;
  supervised?: boolean;
  transfer?: Transferred[];
  disagreed?: Disagreed[];
  followed?: Followed[];
  outcomes?: OutcomeTold[];
  countersigned?: Countersigned[];
}
export interface WhoSpoke {
  who: string;
  reliable?: Reliable;
}
export interface Interpreter {
  kind: InterpreterKind;
  name?: string;
}
export interface PlanItem {
  plan_item?: Id;
  kind: PlanKind;
  text: string;
  side?: Side;
  who?: string;
  by?: CalendarDate;
  became?: Became;
  became_on?: CalendarDate;
  said_back?: SaidBack;
}
export interface Finding {
  finding?: Id;
  exam?: Id;
  item: Name;
  side: Side;
  value:
    | Angle
    | Length
    | Duration
    | Force
    | Pressure
    | Temperature
    | Mass
    | CountValue
    | Grade
    | Test
    | Answer
    | Choice
    | Choices
    | Words
    | NotDone;
  instrument?: Name;
  position?: Name;
  end_feel?: Name;
  pain?: Pain;
  quality?: Quality[];
  origin?: Origin;
  despite?: Despite;
  remark?: string;
  examiner?: Id;
  examined_at?: Instant;
  entry?: Id;
  entered_at?: Instant;
  entered_by?: Id;
  standing?: Standing;
  marks?: Name[];
}
export interface Letter {
  letter: Id;
  entry: Id;
  by?: Id;
  at: Instant;
  to?: string;
  question?: string;
  urgency?: LetterUrgency;
  plan_item?: Id;
  corrects?: Id;
  corrected_by?: Id;
  protected?: boolean;
  stale?: boolean;
  stale_because?: Name[];
}
export interface Signed {
  by: Id;
  at: Instant;
  saw: string;
  shown?: Shown[];
}
export interface Shown {
  id: Name;
  message?: Name;
  params?: unknown;
  answered?: string;
}
export interface Withdrawn {
  by?: Id;
  at: Instant;
  reason: string;
}
export interface Transferred {
  entry: Id;
  by?: Id;
  at: Instant;
  set: TransferSet;
}
export interface TransferSet {
  to?: string;
  onset?: string;
  /**
   * the last look at pulse, colour and warmth, in words, and when
   */
  vessel_check?: LastCheck;
  /**
   * the last look at feeling and movement, in words, and when
   */
  nerve_check?: LastCheck;
  allergies?: string;
  last_meal?: string;
  tetanus?: string;
  blood_thinners?: string;
  /**
   * as told: yes with weeks, no with the day of the last bleeding, not asked is left out
   */
  pregnancy?: string;
  given?: GivenSoFar[];
  called?: WasCalled[];
  /**
   * when vessels and nerves are looked at again while the person waits (an instant in UTC such as 2026-11-24T10:15:00.000Z)
   */
  next_check?: Instant;
}
export interface LastCheck {
  text: string;
  at?: Instant;
}
export interface GivenSoFar {
  what: string;
  at?: Instant;
}
export interface WasCalled {
  who: string;
  number?: string;
  at?: Instant;
  said?: string;
}
export interface Followed {
  entry: Id;
  plan_item: Id;
  became: Became;
  on?: CalendarDate;
  text?: string;
  by?: Id;
  at: Instant;
}
export interface OutcomeTold {
  entry: Id;
  found: FoundLater;
  by?: Id;
  at: Instant;
}
export interface FoundLater {
  /**
   * what a film showed, what an operation found, what the other clinic answered, or what the treating clinician holds it for in the end
   */
  kind: LaterKind;
  text: string;
  side?: Side;
  on?: CalendarDate;
  /**
   * who says so: a report, a letter, the person
   */
  source?: string;
}
export interface ExamChanges {
  complaint?: Name;
  side?: Side;
  setting?: Setting;
  place?: Id;
  offset_min?: number;
  injured_on?: CalendarDate;
  reviews?: Id;
  supervised?: boolean;
}
export interface ExamCountersignResult {
  countersigned: Countersigned;
  differences?: SupervisedDifference[];
  revision?: Id[];
  repeat?: boolean;
}
export interface SupervisedDifference {
  about: Name;
  item?: Name;
  side?: Side;
  signed?:
    | Angle
    | Length
    | Duration
    | Force
    | Pressure
    | Temperature
    | Mass
    | CountValue
    | Grade
    | Test
    | Answer
    | Choice
    | Choices
    | Words
    | NotDone;
  supervisor?:
    | Angle
    | Length
    | Duration
    | Force
    | Pressure
    | Temperature
    | Mass
    | CountValue
    | Grade
    | Test
    | Answer
    | Choice
    | Choices
    | Words
    | NotDone;
}
export interface ExamDocument {
  /**
   * limbledger-exam/1
   */
  format: string;
  /**
   * the day to judge by where the exam has no examined_at (a calendar date: 1971, 1971-05 or 1971-05-12)
   */
  as_of: CalendarDate;
  person?: Person;
  exam: Exam;
  /**
   * a finding without an id is named by its place, counted from 1 in the last bytes of the id
   */
  findings?: Finding[];
  /**
   * earlier exams of the same person, each with its findings
   */
  earlier?: Exam[];
  /**
   * names for the ids of place and examiners, as exam.read gives them; printed on a page, never judged
   */
  names?: ExamNames;
  /**
   * of the ledger it was taken from, as health.check says it: a demonstration or practice says so on every page
   */
  ledger_kind?: LedgerKindWord;
}
export interface Person {
  person?: Id;
  names?: PersonName[];
  birth?: Birth;
  sex: Sex;
  norm_sex: NormSex;
  home?: string;
  identifiers?: Identifier[];
  revision?: Id[];
}
export interface PersonName {
  text: string;
}
export interface Identifier {
  issuer: string;
  text: string;
}
export interface ExamNames {
  places?: NamedPlace[];
  examiners?: NamedExaminer[];
}
export interface NamedPlace {
  place: Id;
  name: string;
}
export interface NamedExaminer {
  examiner: Id;
  name: string;
}
export interface ExamFindResult {
  exams?: ListedExam[];
  cursor?: string;
}
export interface ListedExam {
  exam: Id;
  persons?: Id[];
  state: ExamState;
  complaint: Name;
  side?: Side;
  place?: Id;
  examiner?: Id;
  examined_at?: Instant;
  offset_min?: number;
  findings: number;
  in_conflict?: boolean;
}
export interface ExamReadResult {
  exam: Exam;
  revision?: Id[];
  names?: ExamNames;
}
export interface ExamReply {
  exam: Exam;
  revision?: Id[];
  repeat?: boolean;
  /**
   * clock_suspect: an exam was opened without examined_at while the clock of the device cannot be right
   */
  remarks?: Name[];
  /**
   * letters of this exam that the record no longer agrees with and that no other corrects
   */
  stale_letters?: Id[];
}
export interface ExamSignResult {
  signed: Signed;
  incomplete?: Name[];
  revision?: Id[];
  repeat?: boolean;
}
export interface ExamTransferResult {
  exam: Exam;
  revision?: Id[];
  repeat?: boolean;
  text: string;
  html: string;
}
export interface ExaminerAddResult {
  examiner: Id;
  repeat?: boolean;
}
export interface ExchangedFinding {
  finding: Id;
  item: Name;
  side: Side;
}
export interface FindingCheckResult {
  faults?: CheckedFault[];
  confirm?: CheckedFault[];
}
export interface FindingHistoryResult {
  findings?: Finding[];
}
export interface FindingRecordResult {
  recorded?: RecordedFinding[];
  revision?: Id[];
  repeat?: boolean;
  alerts?: Alert[];
  tell_staff?: boolean;
  stale_letters?: Id[];
}
export interface RecordedFinding {
  finding: Id;
  entry: Id;
}
export interface FindingWithdrawResult {
  finding: Id;
  entry: Id;
  revision?: Id[];
  repeat?: boolean;
  alerts?: Alert[];
  stale_letters?: Id[];
}
export interface FormDescribeResult {
  complaint: Name;
  label: Name;
  edition: Name;
  /**
   * a working figure of the trade for the focused examination of this complaint by a practised hand, not for every step below
   */
  minutes?: number;
  /**
   * the steps below that are not recorded yet, each side by itself, added up
   */
  seconds: number;
  /**
   * of these, the minimum set alone
   */
  minimum_seconds: number;
  positions?: FormPosition[];
  withheld?: WithheldStep[];
  left_out?: LeftStep[];
  /**
   * what this body does not have, what is covered, or what is for younger children alone; a finding for it is taken all the same
   */
  not_applicable?: BodyStep[];
  /**
   * the whole minimum set for this person, also what is withheld or left out
   */
  minimum?: Name[];
  not_to_miss?: Name[];
  /**
   * with an exam: what of the minimum set is not recorded yet
   */
  minimum_open?: OpenItem[];
  /**
   * with an exam: the first step that is not wholly recorded (a name from the catalogue)
   */
  resume_at?: Name;
  /**
   * of a review: what the exam that it reviews measured, with which tool and in which position; these come first, the same way
   */
  again?: MeasuredBefore[];
  language?: Name;
  /**
   * no clinician has read the words of this language; every page that shows them says so
   */
  for_review?: boolean;
  /**
   * with a language: each label, choice, position, side and reason of this form, by name
   */
  texts?: FormText[];
}
export interface FormPosition {
  position: Name;
  label: Name;
  /**
   * how to lie or sit, where something recorded asks for it (a name from the catalogue)
   */
  advice?: Name;
  /**
   * in this order; each on both sides before the next
   */
  steps?: FormStep[];
}
export interface FormStep {
  item: Name;
  sides?: Side[];
  control: Control;
  /**
   * the kind of the value to send; an arc is sent as an angle with entered and one of orders, such as 5-0-130 and extension_zero_flexion
   */
  value: ValueKind;
  /**
   * of an angle: deg counts along it, so that a knee which stops 20 short of straight is deg 20 on flexion (a name from the catalogue)
   */
  axis?: Name;
  /**
   * of an angle: toward_deg counts in this direction; send deg or toward_deg, not both (a name from the catalogue)
   */
  toward?: Name;
  /**
   * of an arc: one of them is sent as order; it names the ends that the first and the last number belong to
   */
  orders?: Name[];
  label: Name;
  text: ItemText;
  /**
   * of a grade: what to send as grade, with the scale; of a choice: what to send as choice or choices
   */
  choices?: FormOption[];
  scale?: Name;
  /**
   * the grade may come with its millimetres
   */
  takes_mm?: boolean;
  unit?: Name;
  /**
   * lowest and highest that are taken, in the unit; of an angle along its axis
   *
   * Items: in steps of 0.1
   */
  refuse?: number[];
  /**
   * what is outside is asked back (value.unusual); of an angle along its axis
   *
   * Items: in steps of 0.1
   */
  confirm?: number[];
  /**
   * one of them may be sent as position; where there are none, send none
   */
  positions?: Name[];
  /**
   * one of them may be sent as instrument; where there are none, send none
   */
  instruments?: Name[];
  /**
   * so many readings may be sent as trials, in place of the value; of an angle along its axis
   */
  trials_max?: number;
  end_feels?: Name[];
  /**
   * reasons to offer for not done; every other reason of the list is taken too
   */
  why_not?: WhyNot[];
  /**
   * an estimate for one side
   */
  seconds: number;
  discomfort: Discomfort;
  /**
   * asked because of what must not be missed
   */
  safety: boolean;
  /**
   * of the minimum set
   */
  minimum?: boolean;
  /**
   * of the minimum set under this age in years, where the age is not known
   */
  minimum_under?: number;
  /**
   * only after the steps before it, and gently
   */
  late?: boolean;
  /**
   * what to examine where somebody cannot do this
   */
  instead?: Instead[];
  /**
   * stands here in the place of that item, for what cannot be done (a name from the catalogue)
   */
  instead_of?: Name;
  /**
   * what the exam holds of this step already; a side that is not named is still open
   */
  recorded?: FormRecorded[];
  /**
   * every side of this step is recorded, or a reason why not
   */
  done?: boolean;
}
export interface FormOption {
  grade?: string;
  choice?: Name;
  label: Name;
  shades?: boolean;
}
export interface FormRecorded {
  side: Side;
  findings?: Id[];
  /**
   * recorded, with this reason for not having been done; no_time leaves the step open, since nobody looked
   */
  not_done?: WhyNot;
  in_conflict?: boolean;
  /**
   * done by this other item, which may stand in its place (a name from the catalogue)
   */
  by?: Name;
  /**
   * carried over, or reported by the person alone: the side is open until an examiner records it
   */
  to_confirm?: boolean;
}
export interface WithheldStep {
  /**
   * not advised now; a finding for it is taken all the same (a name from the catalogue)
   */
  item: Name;
  sides?: Side[];
  by: Name;
  because: Name;
  until: Name;
  /**
   * the examiner's own no here lifts it (a name from the catalogue)
   */
  lifted_by?: Name;
  /**
   * so does this choice of history.film_result; where there is none, a film does not lift it (a name from the catalogue)
   */
  film_lifts?: Name;
  minimum?: boolean;
  label?: Name;
  /**
   * what the exam holds of it already
   */
  recorded?: FormRecorded[];
}
export interface LeftStep {
  item: Name;
  why: WhyLeft;
  minimum?: boolean;
  label?: Name;
  /**
   * what it would have told (a name from the catalogue)
   */
  loses?: Name;
}
export interface OpenItem {
  item: Name;
  side: Side;
}
export interface MeasuredBefore {
  item: Name;
  side: Side;
  instrument?: Name;
  position?: Name;
  examined_at?: Instant;
}
export interface FormText {
  message: Name;
  text: string;
  /**
   * nobody has translated it: it is said in English, with its mark
   */
  english?: boolean;
}
export interface FormWriteResult {
  /**
   * a whole document, black on white, for A4; it loads nothing and runs nothing. What is entered from it later has origin from_paper and the time of the examination
   */
  html: string;
  edition: Name;
  language: Name;
  for_review?: boolean;
}
export interface FoundPerson {
  person: Person;
  because?: Name[];
}
export interface HealthResult {
  state: LedgerState;
  store: StoreHealth;
  protocol: ProtocolRange;
  edition: Name;
  limits: Limits;
  ledger_kind: LedgerKindWord;
  examiners?: string[];
  version: string;
  clock: ClockSeen;
}
export interface StoreHealth {
  durability: DurabilityWord;
  entries?: number;
  read: boolean;
  fault?: Name;
  writes: boolean;
  damage?: StoreDamage;
}
export interface StoreDamage {
  count: number;
  code: Name;
}
export interface ProtocolRange {
  oldest: number;
  newest: number;
}
export interface Limits {
  message_bytes: number;
  depth: number;
  batch: number;
  findings_a_call: number;
  name: number;
  remark: number;
  text: number;
}
export interface Here {
  what: Name;
  there: YesNo;
}
export interface LetterReply {
  letter: Letter;
  text: string;
  /**
   * a whole document, black on white, for one sheet of A4; it loads nothing and runs nothing
   */
  html: string;
  language: Name;
  revision?: Id[];
  repeat?: boolean;
  /**
   * letters of this exam that the record no longer agrees with and that no other corrects
   */
  stale_letters?: Id[];
  /**
   * longer_than_a_sheet: what was written by hand is never shortened, so that it runs over one sheet; not_up_to_date
   */
  remarks?: Name[];
}
export interface LockResult {
  locked: boolean;
}
export interface LookAlike {
  person: Id;
  because?: Name[];
}
export interface NewFinding {
  item: Name;
  side: Side;
  value:
    | Angle
    | Length
    | Duration
    | Force
    | Pressure
    | Temperature
    | Mass
    | CountValue
    | Grade
    | Test
    | Answer
    | Choice
    | Choices
    | Words
    | NotDone;
  instrument?: Name;
  position?: Name;
  end_feel?: Name;
  pain?: Pain;
  quality?: Quality[];
  origin?: Origin;
  despite?: Despite;
  remark?: string;
  examiner?: Id;
  examined_at?: Instant;
  replaces?: Id[];
  beside?: boolean;
  confirmed?: string[];
}
export interface NoteWriteResult {
  text: string;
  /**
   * a whole document, black on white, for A4; it loads nothing and runs nothing
   */
  html: string;
  /**
   * the exam's revision that the note was written from
   */
  about?: Id[];
  language: Name;
  protected?: boolean;
}
export interface PersonBody {
  names?: PersonName[];
  birth?: Birth;
  sex?: Sex;
  norm_sex?: NormSex;
  home?: string;
  identifiers?: Identifier[];
}
export interface PersonFindResult {
  people?: FoundPerson[];
  cursor?: Id;
}
export interface PersonReadResult {
  person: Person;
  conflicts?: Conflict[];
  marks?: EntryMark[];
  revision?: Id[];
  exams?: ListedExam[];
  look_alikes?: LookAlike[];
}
export interface PersonReply {
  person: Person;
  conflicts?: Conflict[];
  marks?: EntryMark[];
  revision?: Id[];
  repeat?: boolean;
  look_alikes?: LookAlike[];
}
export interface Place {
  place?: Id;
  name?: string;
  travel?: Travel[];
  telephones?: Telephone[];
  here?: Here[];
  protocols?: Protocol[];
  endemic?: string[];
  reviewed?: ReviewedLanguage[];
  revision?: Id[];
}
export interface Protocol {
  text: string;
  dated: CalendarDate;
}
export interface ReviewedLanguage {
  language: Name;
  by: string;
  on: CalendarDate;
}
export interface PlaceAmendResult {
  places?: ShownPlace[];
  revision?: Id[];
  repeat?: boolean;
}
export interface ShownPlace {
  place: Place;
  conflicts?: Conflict[];
  entries?: Id[];
}
export interface PlaceChanges {
  name?: string;
  travel?: Travel[];
  telephones?: Telephone[];
  here?: Here[];
  protocols?: Protocol[];
  endemic?: string[];
  reviewed?: ReviewedLanguage[];
}
export interface PlaceReadResult {
  places?: ShownPlace[];
  revision?: Id[];
}
export interface PlanRecordResult {
  exam: Exam;
  revision?: Id[];
  repeat?: boolean;
  open_loops?: PlanItem[];
}
export interface RequestReadResult {
  state: RequestState;
  object?: Id;
  entries?: Id[];
  revision?: Id[];
}
export interface SessionEndResult {
  ended: boolean;
}
export interface SessionOpenResult {
  scope: ScopeWord;
  expires_at?: Instant;
  locked: boolean;
  cursor?: string;
  protocol: number;
  token?: string;
}
export interface StepSuggestResult {
  steps?: Step[];
  message?: Name;
  withheld?: WithheldNow[];
}
export interface WithheldNow {
  item: Name;
  side: Side;
  by: Name;
  until: Name;
}
export interface SwapSidesResult {
  exam: Exam;
  revision?: Id[];
  repeat?: boolean;
  exchanged?: ExchangedFinding[];
  texts_to_read?: Name[];
  stale_letters?: Id[];
}
export interface TakeHomeWriteResult {
  text: string;
  html: string;
  /**
   * the exam's revision that the sheet was written from
   */
  about?: Id[];
  language: Name;
  /**
   * nobody has read the texts of this language yet; the sheet says so
   */
  for_review?: boolean;
  /**
   * so many things to do did not fit among three: decline what matters least, or say them
   */
  left_out?: number;
}
export interface TransferWriteResult {
  text: string;
  /**
   * a whole document, black on white, for A4; it loads nothing and runs nothing
   */
  html: string;
  /**
   * the exam's revision that the note was written from
   */
  about?: Id[];
  language: Name;
}
export interface TypedPrior {
  /**
   * condition.acl_tear and the like (a name from the catalogue)
   */
  condition: Name;
  /**
   * how many in 100 people like this one have it, in the examiner's own judgement
   */
  per_cent: number;
}
export interface UnlockResult {
  examiner?: Id;
  locks_at: Instant;
  opened_by: OpenedBy;
}
export interface VerifyResult {
  entries: number;
  opened: number;
  replicas: number;
  damage?: DamagedEntry[];
  unlisted?: number;
  vouched_to?: VouchedHead[];
}
export interface VouchedHead {
  replica: Id;
  seq: number;
  entry: Id;
}
export interface Working {
  statement: Name;
  message: Name;
  inputs?: WorkingInput[];
  rows?: WorkingRow[];
  formula: string;
  lines?: string[];
  changes_if?: Name[];
}
export interface WorkingInput {
  finding?: Id;
  input?: Name;
  state?: Name;
  /**
   * deg, in steps of 0.1
   */
  deg?: number;
}
export interface WorkingRow {
  row: Name;
  source: Name;
  status: Status;
  numbers: unknown;
}
export interface ErrorObject {
  code: number;
  message: string;
  data: ErrorData;
}
export interface RpcDiscoverParams {}
export interface HealthCheckParams {}
export interface SessionOpenParams {
  token?: string;
  once?: string;
  client?: string;
  protocol?: number;
  examiner?: string;
}
export interface SessionEndParams {}
export interface LedgerUnlockParams {
  passphrase: string;
  examiner?: string;
}
export interface LedgerLockParams {}
export interface ExaminerAddParams {
  code: string;
  examiner: string;
  passphrase: string;
}
export interface LedgerVerifyParams {
  from?: number;
}
export interface RequestReadParams {
  request: RequestId;
}
export interface FormDescribeParams {
  complaint: Name;
  minutes?: number;
  cannot?: Cannot[];
  exam?: Id;
  language?: Name;
}
export interface FormWriteParams {
  complaint: Name;
  minutes?: number;
  cannot?: Cannot[];
  language?: Name;
}
export interface ChangesReadParams {
  cursor?: string;
  wait_ms?: number;
}
export interface CatalogueReadParams {
  region?: Name;
  items?: Name[];
  scales?: Name[];
  words?: boolean;
}
export interface PersonRegisterParams {
  sex: Sex;
  request: RequestId;
  names?: PersonName[];
  birth?: Birth;
  norm_sex?: NormSex;
  home?: string;
  identifiers?: Identifier[];
  confirmed?: string[];
}
export interface PersonAmendParams {
  person: Id;
  changes: PersonBody;
  request: RequestId;
  replaces?: Id[];
  seen?: Id[];
  confirmed?: string[];
}
export interface PersonFindParams {
  text?: string;
  birth?: CalendarDate;
  home?: string;
  limit?: number;
  cursor?: Id;
}
export interface PersonReadParams {
  person: Id;
}
export interface PlaceReadParams {
  place?: Id;
}
export interface PlaceAmendParams {
  changes: PlaceChanges;
  request: RequestId;
  place?: Id;
  replaces?: Id[];
  seen?: Id[];
}
export interface ExamOpenParams {
  complaint: Name;
  setting: Setting;
  request: RequestId;
  person?: Id;
  side?: Side;
  place?: Id;
  examined_at?: Instant;
  offset_min?: number;
  injured_on?: CalendarDate;
  identified?: string[];
  confirmed?: string[];
  reviews?: Id;
  supervised?: boolean;
}
export interface ExamAmendParams {
  exam: Id;
  changes: ExamChanges;
  request: RequestId;
  seen?: Id[];
  confirmed?: string[];
}
export interface ExamReadParams {
  exam: Id;
}
export interface ExamFindParams {
  person?: Id;
  from?: CalendarDate;
  to?: CalendarDate;
  state?: ExamState;
  limit?: number;
  cursor?: string;
}
export interface ConsentRecordParams {
  exam: Id;
  request: RequestId;
  consent?: Consent;
  company?: Company;
  who_spoke?: WhoSpoke;
  interpreter?: Interpreter;
  seen?: Id[];
}
export interface ImpressionRecordParams {
  exam: Id;
  impression: Impression;
  request: RequestId;
  replaces?: Id[];
  seen?: Id[];
}
export interface PlanRecordParams {
  exam: Id;
  request: RequestId;
  plan_items?: PlanItem[];
  replaces?: Id[];
  seen?: Id[];
}
export interface AlertHandleParams {
  exam: Id;
  alert: Name;
  request: RequestId;
  side?: Side;
  action?: string;
  reason?: string;
  seen?: Id[];
}
export interface ExamSignParams {
  exam: Id;
  read_aloud: string;
  request: RequestId;
  identified?: string[];
  shown?: Shown[];
  seen?: Id[];
  confirmed?: string[];
}
export interface ExamTransferParams {
  exam: Id;
  set: TransferSet;
  request: RequestId;
  seen?: Id[];
  confirmed?: string[];
}
export interface ExamCountersignParams {
  exam: Id;
  request: RequestId;
  findings?: NewFinding[];
  impression?: Impression;
  remark?: string;
  seen?: Id[];
}
export interface StatementDisagreeParams {
  exam: Id;
  statement: Name;
  because: string;
  request: RequestId;
  seen?: Id[];
}
export interface PlanFollowParams {
  exam: Id;
  plan_item: Id;
  became: Became;
  request: RequestId;
  on?: CalendarDate;
  text?: string;
  seen?: Id[];
  confirmed?: string[];
}
export interface OutcomeRecordParams {
  exam: Id;
  found: FoundLater;
  request: RequestId;
  seen?: Id[];
  confirmed?: string[];
}
export interface ExamWithdrawParams {
  exam: Id;
  reason: string;
  request: RequestId;
  seen?: Id[];
}
export interface ExamMoveParams {
  exam: Id;
  person: Id;
  reason: string;
  request: RequestId;
  seen?: Id[];
  confirmed?: string[];
}
export interface ExamSwapSidesParams {
  exam: Id;
  reason: string;
  request: RequestId;
  seen?: Id[];
}
export interface AddendumRecordParams {
  exam: Id;
  kind: AddendumKind;
  reason: string;
  request: RequestId;
  text?: string;
  findings?: NewFinding[];
  seen?: Id[];
}
export interface FindingCheckParams {
  exam?: Id;
  findings?: NewFinding[];
}
export interface FindingRecordParams {
  exam: Id;
  request: RequestId;
  findings?: NewFinding[];
  seen?: Id[];
}
export interface FindingWithdrawParams {
  exam: Id;
  finding: Id;
  reason: string;
  request: RequestId;
  seen?: Id[];
}
export interface FindingHistoryParams {
  exam: Id;
  item: Name;
  side?: Side;
}
export interface ExamAssessParams {
  exam: Id;
  only?: string[];
  priors?: TypedPrior[];
  protected?: boolean;
  language?: Name;
}
export interface StepSuggestParams {
  exam: Id;
  minutes?: number;
}
export interface DocumentAssessParams {
  document: ExamDocument;
  only?: string[];
  confirmed?: string[];
  priors?: TypedPrior[];
  language?: Name;
}
export interface StatementExplainParams {
  statement: Name;
  exam?: Id;
  document?: ExamDocument;
  priors?: TypedPrior[];
}
export interface TransferWriteParams {
  exam: Id;
  language?: Name;
}
export interface AgreementReadParams {
  items?: Name[];
  from?: CalendarDate;
  to?: CalendarDate;
  language?: Name;
}
export interface NoteWriteParams {
  exam: Id;
  language?: Name;
  protected?: boolean;
}
export interface LetterWriteParams {
  exam: Id;
  question: string;
  request: RequestId;
  to?: string;
  urgency?: LetterUrgency;
  plan_item?: Id;
  corrects?: Id;
  language?: Name;
  protected?: boolean;
  seen?: Id[];
  confirmed?: string[];
}
export interface LetterReadParams {
  exam: Id;
  letter: Id;
  protected?: boolean;
}
export interface TakeHomeWriteParams {
  exam: Id;
  language?: Name;
}

/** What each method takes and gives. */
export interface Methods {
  /** This document */
  'rpc.discover': { params: RpcDiscoverParams; result: Record<string, unknown> };
  /** whether the sidecar and its store answer, and within which limits */
  'health.check': { params: HealthCheckParams; result: HealthResult };
  /** begins a session and says what it may do */
  'session.open': { params: SessionOpenParams; result: SessionOpenResult };
  /** ends the session */
  'session.end': { params: SessionEndParams; result: SessionEndResult };
  /** opens the ledger with an examiner's passphrase */
  'ledger.unlock': { params: LedgerUnlockParams; result: UnlockResult };
  /** locks the ledger */
  'ledger.lock': { params: LedgerLockParams; result: LockResult };
  /** one more examiner of this device, by the printed code; for when every passphrase is lost */
  'examiner.add': { params: ExaminerAddParams; result: ExaminerAddResult };
  /** checks every entry and head, and unlocked every seal; names what is damaged */
  'ledger.verify': { params: LedgerVerifyParams; result: VerifyResult };
  /** what the ledger has from one request */
  'request.read': { params: RequestReadParams; result: RequestReadResult };
  /** what to draw for a complaint, position by position, with what is withheld */
  'form.describe': { params: FormDescribeParams; result: FormDescribeResult };
  /** the same form on paper, as one HTML document for A4 */
  'form.write': { params: FormWriteParams; result: FormWriteResult };
  /** which records changed since a cursor; waits for it where that is asked for */
  'changes.read': { params: ChangesReadParams; result: ChangesReadResult };
  /** items, scales and complaints of the edition at hand */
  'catalogue.read': { params: CatalogueReadParams; result: CatalogueReadResult };
  /** registers a person; look-alikes are listed, never a bar */
  'person.register': { params: PersonRegisterParams; result: PersonReply };
  /** changes what is known of a person, member by member */
  'person.amend': { params: PersonAmendParams; result: PersonReply };
  /** people by name, birth or home, page by page, with reasons */
  'person.find': { params: PersonFindParams; result: PersonFindResult };
  /** one person with their exams and look-alikes */
  'person.read': { params: PersonReadParams; result: PersonReadResult };
  /** places: travel, telephones, what is there, local protocol */
  'place.read': { params: PlaceReadParams; result: PlaceReadResult };
  /** adds or changes a place */
  'place.amend': { params: PlaceAmendParams; result: PlaceAmendResult };
  /** begins an exam */
  'exam.open': { params: ExamOpenParams; result: ExamReply };
  /** corrects what an exam was opened with: complaint, side, setting, place, injury */
  'exam.amend': { params: ExamAmendParams; result: ExamReply };
  /** one exam as it stands, with conflicts and marks */
  'exam.read': { params: ExamReadParams; result: ExamReadResult };
  /** exams, newest first, page by page */
  'exam.find': { params: ExamFindParams; result: ExamFindResult };
  /** consent, company, who spoke, interpreter */
  'consent.record': { params: ConsentRecordParams; result: ExamReply };
  /** the examiner's own impression */
  'impression.record': { params: ImpressionRecordParams; result: ExamReply };
  /** what was decided, and what became of it */
  'plan.record': { params: PlanRecordParams; result: PlanRecordResult };
  /** what was done about an alert, or why nothing was */
  'alert.handle': { params: AlertHandleParams; result: AlertHandleResult };
  /** signs the exam as it was shown; what is missing is listed, never a bar */
  'exam.sign': { params: ExamSignParams; result: ExamSignResult };
  /** stops the exam for transfer, with what travels along; answers with the note */
  'exam.transfer': { params: ExamTransferParams; result: ExamTransferResult };
  /** the supervisor's own findings and impression beside a signed exam, and what differs */
  'exam.countersign': { params: ExamCountersignParams; result: ExamCountersignResult };
  /** stands beside a statement, with the reason; takes nothing away */
  'statement.disagree': { params: StatementDisagreeParams; result: ExamReply };
  /** what became of a plan item, with the day; also after the signature */
  'plan.follow': { params: PlanFollowParams; result: ExamReply };
  /** what was found out later about what the exam asked */
  'outcome.record': { params: OutcomeRecordParams; result: ExamReply };
  /** marks an exam as void, with the reason */
  'exam.withdraw': { params: ExamWithdrawParams; result: ExamReply };
  /** gives an exam to another person, with the reason */
  'exam.move': { params: ExamMoveParams; result: ExamReply };
  /** exchanges left and right of every sided finding, with the reason */
  'exam.swap_sides': { params: ExamSwapSidesParams; result: SwapSidesResult };
  /** adds to a signed exam */
  'addendum.record': { params: AddendumRecordParams; result: AddendumRecordResult };
  /** what would be refused or asked back; writes nothing */
  'finding.check': { params: FindingCheckParams; result: FindingCheckResult };
  /** records findings, all or none */
  'finding.record': { params: FindingRecordParams; result: FindingRecordResult };
  /** takes a finding back, with the reason */
  'finding.withdraw': { params: FindingWithdrawParams; result: FindingWithdrawResult };
  /** every entry of one item, oldest first */
  'finding.history': { params: FindingHistoryParams; result: FindingHistoryResult };
  /** what the findings of an exam support */
  'exam.assess': { params: ExamAssessParams; result: Assessment };
  /** at most one thing to examine next, and what is withheld now */
  'step.suggest': { params: StepSuggestParams; result: StepSuggestResult };
  /** the same of a document that stands in no ledger */
  'document.assess': { params: DocumentAssessParams; result: Assessment };
  /** how one statement was reached */
  'statement.explain': { params: StatementExplainParams; result: Working };
  /** the note of a transfer again, on one page */
  'transfer.write': { params: TransferWriteParams; result: TransferWriteResult };
  /** how far two examiners agree, item by item; never of persons */
  'agreement.read': { params: AgreementReadParams; result: AgreementReadResult };
  /** one exam as a page to read and to print: impression and plan first */
  'note.write': { params: NoteWriteParams; result: NoteWriteResult };
  /** a letter about the exam on one sheet, kept as it was printed */
  'letter.write': { params: LetterWriteParams; result: LetterReply };
  /** a letter as it was written, with what has changed since */
  'letter.read': { params: LetterReadParams; result: LetterReply };
  /** the sheet that the person carries home, in large print */
  'take_home.write': { params: TakeHomeWriteParams; result: TakeHomeWriteResult };
}

/** Methods that write: they take a `request`, and the same one again writes nothing twice. */
export type WritingMethod =
  | 'person.register'
  | 'person.amend'
  | 'place.amend'
  | 'exam.open'
  | 'exam.amend'
  | 'consent.record'
  | 'impression.record'
  | 'plan.record'
  | 'alert.handle'
  | 'exam.sign'
  | 'exam.transfer'
  | 'exam.countersign'
  | 'statement.disagree'
  | 'plan.follow'
  | 'outcome.record'
  | 'exam.withdraw'
  | 'exam.move'
  | 'exam.swap_sides'
  | 'addendum.record'
  | 'finding.record'
  | 'finding.withdraw'
  | 'letter.write';

/** Every code of an error: its number in JSON-RPC, whether the same call may succeed later, and what to do. */
export const faults = {
  /** this addendum cannot hold what was sent */
  'addendum.kind': { number: 1, retry: false, hint: "send a text, or findings, or both" },
  /** this exam has no such alert */
  'alert.unknown': { number: 8, retry: false, hint: "use an alert and side of exam.assess" },
  /** the person said no to sending this on */
  'consent.send': { number: 2, retry: false, hint: "print it for the person's own hand, after asking: send it again with confirmed" },
  /** an entry is not of the ledger's format */
  'entry.format': { number: 9, retry: false, hint: "run verify; keep the file and a copy of it" },
  /** entries are missing before this one */
  'entry.gap': { number: 9, retry: false, hint: "bring the earlier entries of this replica" },
  /** an entry does not have the hash its chain says */
  'entry.hash': { number: 9, retry: false, hint: "run verify; use the copy held elsewhere" },
  /** the signature over a head does not hold */
  'entry.head': { number: 9, retry: false, hint: "run verify; use the copy held elsewhere" },
  /** a key does not belong to its object, or is missing */
  'entry.key': { number: 9, retry: false, hint: "run verify; use the copy held elsewhere" },
  /** a sealed entry does not open */
  'entry.seal': { number: 9, retry: false, hint: "run verify; use the copy held elsewhere" },
  /** an entry's body is over 1 MiB */
  'entry.size': { number: 9, retry: false, hint: "it cannot have been made by this program" },
  /** the store's file is damaged */
  'entry.store': { number: 9, retry: false, hint: "stop writing; keep this file as it is, and take up the newest whole copy of the folder" },
  /** this exam is supervised, and its examiner has not closed it yet */
  'exam.not_closed': { number: 1, retry: false, hint: "let its examiner sign it; then exam.countersign takes what you found; or end that with exam.amend, supervised false" },
  /** this exam cannot be reviewed by that one */
  'exam.not_reviewed': { number: 1, retry: false, hint: "name an earlier exam of the same person, and the complaint review" },
  /** the exam is still open */
  'exam.not_signed': { number: 1, retry: false, hint: "record the finding itself, or sign the exam first" },
  /** this exam was not stopped for transfer */
  'exam.not_transferred': { number: 1, retry: false, hint: "stop it with exam.transfer; the set may be empty" },
  /** this token may use its own exam only */
  'exam.not_yours': { number: 6, retry: false, hint: "use the exam that the token names" },
  /** the exam is signed; its record does not change */
  'exam.signed': { number: 1, retry: false, hint: "write an addendum" },
  /** no exam has this id here */
  'exam.unknown': { number: 8, retry: false, hint: "look the exam up with exam.find" },
  /** the exam is withdrawn */
  'exam.withdrawn': { number: 1, retry: false, hint: "open a new exam" },
  /** the printed code opened the ledger for reading; nobody records without a name */
  'examiner.needed': { number: 6, retry: false, hint: "lock it, and unlock it with an examiner's passphrase; where all are lost, examiner.add makes a new one with the code" },
  /** whoever signed an exam does not countersign it */
  'examiner.own': { number: 1, retry: false, hint: "let another examiner unlock and countersign" },
  /** an examiner of this device has this name, with another passphrase */
  'examiner.taken': { number: 1, retry: false, hint: "choose another name, such as the same with the year" },
  /** no examiner has this id or label here */
  'examiner.unknown': { number: 8, retry: false, hint: "use the id that health.check or the program shows" },
  /** two things recorded here do not go together */
  'finding.contradicts': { number: 2, retry: false, hint: "check both; send it again with confirmed, or change one" },
  /** the place is filled by a value that the writer had not named */
  'finding.stale': { number: 3, retry: false, hint: "show both values; send again with replaces or beside" },
  /** no finding has this id here */
  'finding.unknown': { number: 8, retry: false, hint: "read the exam again" },
  /** this part was written by a newer edition and cannot be replaced here */
  'format.newer': { number: 1, retry: false, hint: "update this program" },
  /** the Host header is not this machine's */
  'host.refused': { number: 6, retry: false, hint: "call the address that sidecar.json names" },
  /** the Content-Type is not application/json */
  'http.content_type': { number: -32600, retry: false, hint: "send Content-Type: application/json, in UTF-8" },
  /** only POST is answered here */
  'http.method': { number: -32600, retry: false, hint: "send the message with POST, or open a WebSocket" },
  /** nothing is served under this address */
  'http.path': { number: -32600, retry: false, hint: "use the address that sidecar.json names, without a query" },
  /** this is not a request of HTTP 1.1, or no WebSocket handshake */
  'http.request': { number: -32600, retry: false, hint: "send one whole request with one Host, and its length" },
  /** something went wrong inside; the log has the incident */
  'internal.failure': { number: -32603, retry: true, hint: "try again; report the incident's number" },
  /** not enough memory */
  'internal.memory': { number: -32603, retry: true, hint: "close other programs and try again" },
  /** this item does not fit what was sent */
  'item.not_applicable': { number: 1, retry: false, hint: "look the item up in catalogue.read" },
  /** this item has no such side */
  'item.side': { number: 1, retry: false, hint: "use one of the item's sides" },
  /** no such item in this edition */
  'item.unknown': { number: 1, retry: false, hint: "use the nearest name shown, or catalogue.read" },
  /** this step is not advised now */
  'item.withheld': { number: 2, retry: false, hint: "already done? send it again with despite" },
  /** a member is named twice */
  'json.duplicate_member': { number: -32600, retry: false, hint: "send each member once" },
  /** the text is not JSON */
  'json.syntax': { number: -32700, retry: false, hint: "send one JSON text in UTF-8" },
  /** the keyring file is damaged */
  'keyring.damaged': { number: 9, retry: false, hint: "use a copy of it, or the recovery code" },
  /** the keyring is missing, and the ledger's file is there */
  'keyring.missing': { number: 9, retry: false, hint: "bring the file keyring back from a copy; without it what is sealed stays shut" },
  /** there are no texts of this kind in this language */
  'language.no_texts': { number: 1, retry: false, hint: "use en, or write by hand" },
  /** no named clinician has read the texts for people in this language */
  'language.not_reviewed': { number: 1, retry: false, hint: "name who read them, and when, in a place (place.amend, reviewed); until then write by hand" },
  /** another program holds this ledger */
  'ledger.in_use': { number: 5, retry: true, hint: "stop the other program first" },
  /** the ledger is locked */
  'ledger.locked': { number: 4, retry: true, hint: "unlock it with ledger.unlock" },
  /** the ledger's file is missing or empty */
  'ledger.missing': { number: 9, retry: false, hint: "bring ledger.sqlite back from a copy, with ledger.sqlite-wal if there is one; make no new ledger over it" },
  /** there is no ledger here */
  'ledger.none': { number: 8, retry: false, hint: "make one with: limbledger new DIR" },
  /** the passphrase or code does not open it */
  'ledger.passphrase': { number: 4, retry: true, hint: "check capitals and the examiner's name; try again" },
  /** nothing can be written now (disk full or read only) */
  'ledger.read_only': { number: 5, retry: true, hint: "free some space; after an error of the disk start the program again" },
  /** too many wrong passphrases; wait */
  'ledger.wait': { number: 4, retry: true, hint: "try again after the wait shown" },
  /** this letter is kept apart */
  'letter.protected': { number: 1, retry: false, hint: "open it on purpose, with protected" },
  /** no letter has this id in this exam */
  'letter.unknown': { number: 8, retry: false, hint: "use a letter that exam.read names" },
  /** too many calls in one batch */
  'limit.batch': { number: -32600, retry: false, hint: "send fewer calls a batch" },
  /** lists and objects are nested too deep */
  'limit.depth': { number: -32600, retry: false, hint: "send a flatter message" },
  /** the head of the request is too long */
  'limit.head': { number: -32600, retry: false, hint: "send fewer or shorter header fields" },
  /** a list is too long */
  'limit.items': { number: -32602, retry: false, hint: "send fewer items a call" },
  /** an operation names too many others */
  'limit.pointers': { number: 1, retry: false, hint: "send fewer pointers" },
  /** too many calls or connections */
  'limit.rate': { number: 7, retry: true, hint: "wait and send again" },
  /** the message is too large */
  'limit.size': { number: -32600, retry: false, hint: "send a smaller message" },
  /** a text is too long */
  'limit.text': { number: -32602, retry: false, hint: "shorten it; nothing was cut" },
  /** the request did not come to its end in time */
  'limit.time': { number: 7, retry: true, hint: "send it again, whole" },
  /** there is no such method */
  'method.unknown': { number: -32601, retry: false, hint: "rpc.discover lists the methods" },
  /** this page may not call the sidecar */
  'origin.refused': { number: 6, retry: false, hint: "open the page that the sidecar serves" },
  /** a member is missing */
  'params.missing': { number: -32602, retry: false, hint: "send it" },
  /** there is no such member */
  'params.unknown_member': { number: -32602, retry: false, hint: "use the nearest name shown" },
  /** there is no such word here */
  'params.unknown_word': { number: -32602, retry: false, hint: "use one of the words listed" },
  /** the value has the wrong type or form */
  'params.wrong_type': { number: -32602, retry: false, hint: "send what was expected" },
  /** the parcel ends too early */
  'parcel.cut_short': { number: 9, retry: true, hint: "copy it again from where it came" },
  /** the parcel belongs to another clinic */
  'parcel.foreign': { number: 9, retry: false, hint: "use a parcel of this clinic" },
  /** the passphrase is too short */
  'passphrase.short': { number: 1, retry: false, hint: "choose a longer one, such as four words that do not belong together" },
  /** this does not name the person of the exam */
  'person.mismatch': { number: 2, retry: false, hint: "ask for both identifiers again; take the other person, or send it again with confirmed" },
  /** no person has this id here */
  'person.unknown': { number: 8, retry: false, hint: "look the person up with person.find" },
  /** no place has this id here */
  'place.unknown': { number: 8, retry: false, hint: "read the places with place.read" },
  /** no plan item has this id in this exam */
  'plan.unknown': { number: 8, retry: false, hint: "leave plan_item out for a new one" },
  /** this protocol version is not spoken */
  'protocol.version': { number: 1, retry: false, hint: "use one in the range shown" },
  /** this replica's chain has two branches */
  'replica.forked': { number: 9, retry: false, hint: "both are kept; go on under a new replica" },
  /** this device was revoked */
  'replica.revoked': { number: 9, retry: false, hint: "a person decides at the hub" },
  /** this is not a JSON-RPC 2.0 request */
  'request.envelope': { number: -32600, retry: false, hint: "send jsonrpc, method, params and id as the specification says" },
  /** this request id was used for something else */
  'request.reused': { number: 1, retry: false, hint: "make a new UUID for a new request" },
  /** seen names entries that are not of this record */
  'revision.unknown': { number: -32602, retry: false, hint: "send back the revision that was shown" },
  /** the side is missing */
  'side.needed': { number: 1, retry: false, hint: "name left, right or midline" },
  /** the assessment has no such statement */
  'statement.unknown': { number: 8, retry: false, hint: "use an id from exam.assess" },
  /** the token has expired */
  'token.expired': { number: 6, retry: false, hint: "open a new session" },
  /** a token is needed */
  'token.missing': { number: 6, retry: false, hint: "open a session first" },
  /** the token does not allow this method */
  'token.scope': { number: 6, retry: false, hint: "use a token with the scope shown" },
  /** this token or code is not of this launch, or was used up */
  'token.unknown': { number: 6, retry: false, hint: "read sidecar.json again" },
  /** no token is taken here, and the one sent was not looked at */
  'token.unwanted': { number: 1, retry: false, hint: "leave token and once out; on the standard input the program's option --scope says who calls" },
  /** exactly one way of giving the value is needed */
  'value.all_or_one': { number: 1, retry: false, hint: "send one of the members listed" },
  /** a text holds a control character */
  'value.control_character': { number: -32602, retry: false, hint: "remove it" },
  /** not a calendar date */
  'value.date': { number: -32602, retry: false, hint: "send 1971, 1971-05 or 1971-05-12" },
  /** these dates cannot both be right */
  'value.date_order': { number: 1, retry: false, hint: "correct the one that is wrong" },
  /** the value does not agree with its readings */
  'value.disagrees': { number: 1, retry: false, hint: "send the readings alone" },
  /** a text is empty */
  'value.empty': { number: -32602, retry: false, hint: "leave the member out, or write something" },
  /** this grade is not on the item's scale */
  'value.grade': { number: 1, retry: false, hint: "use a grade of the scale listed" },
  /** this item is not measured so */
  'value.instrument': { number: 1, retry: false, hint: "use one of the instruments listed" },
  /** this item does not take a value of this kind */
  'value.kind': { number: -32602, retry: false, hint: "send the kind that was expected" },
  /** the three numbers cannot be read as a neutral-zero triple */
  'value.neutral_zero': { number: 1, retry: false, hint: "send three whole numbers with a zero, and their order" },
  /** impossible value */
  'value.out_of_range': { number: 1, retry: false, hint: "measure again" },
  /** this item is not examined so */
  'value.position': { number: 1, retry: false, hint: "use one of the positions listed" },
  /** more decimals than the unit has */
  'value.step': { number: -32602, retry: false, hint: "round to the step" },
  /** too many or too few readings */
  'value.trials': { number: 1, retry: false, hint: "send the number of readings the item takes" },
  /** a number without its unit */
  'value.unit_missing': { number: 1, retry: false, hint: "send the number with its unit" },
  /** possible, but unlikely */
  'value.unusual': { number: 2, retry: false, hint: "check it; send it again with confirmed, or change it" },
  /** this reason needs a detail */
  'value.why': { number: 1, retry: false, hint: "say why in detail" },
  /** a binary message */
  'websocket.binary': { number: -32600, retry: false, hint: "send JSON as a text message" },
} as const;

export type FaultCode = keyof typeof faults;
