# What the program says to a clinician. A dot in a message name is a dash here. Language: English. Reviewed by: nobody yet.
# Wording rules: findings are described, never commanded; nothing is called by the words that a negative rule or a silence does
# not earn (a test reads every message for them).

## Motion. Variables: what (item), side (capitals), reading, low, high, error_deg, who (men 20-44), how (instrument), other,
## difference, needed, interval (low to high in words), measured (the reading with
## what 1.96 x its error makes of it), span. A message that ends in row stands in the table of motions, beside side, reading and figures.

msg-motion-within = { $what }{ $side } { $reading }: within the reference interval for { $who } ({ $interval }), { $how }
msg-motion-within_taught = { $what }{ $side } { $reading }: within the taught values for { $who } ({ $interval }), { $how }; the figure was not read at its source
msg-motion-below = { $what }{ $side } { $reading }: below the reference interval for { $who } ({ $interval }), by more than the error of the { $how }
msg-motion-below_taught = { $what }{ $side } { $reading }: below the taught values for { $who } ({ $interval }), by more than the error of the { $how }; the figure was not read at its source
msg-motion-above = { $what }{ $side } { $reading }: above the reference interval for { $who } ({ $interval }), by more than the error of the { $how }
msg-motion-above_taught = { $what }{ $side } { $reading }: above the taught values for { $who } ({ $interval }), by more than the error of the { $how }; the figure was not read at its source
msg-motion-not_distinguishable = { $what }{ $side } { $measured }: cannot be told from the edge of the reference interval for { $who } ({ $interval }), { $how }
msg-motion-not_distinguishable_taught = { $what }{ $side } { $measured }: cannot be told from the edge of the taught values for { $who } ({ $interval }), { $how }; the figure was not read at its source
msg-motion-norms_disagree = { $what }{ $side } { $reading }: the figures that may apply ({ $who }) do not agree; the age is not known closely enough, or nobody said whose norms to compare with
msg-motion-norms_disagree_taught = { $what }{ $side } { $reading }: the taught values that may apply ({ $who }) do not agree; the age is not known closely enough, or nobody said whose norms to compare with, and a figure was not read at its source
msg-motion-sources_disagree = { $what }{ $side } { $reading }: the sources that may apply ({ $who }) do not agree; together they span { $interval }
msg-motion-sources_disagree_taught = { $what }{ $side } { $reading }: the taught values that may apply ({ $who }) do not agree; together they span { $interval }; a figure was not read at its source
msg-motion-no_norm = { $what }{ $side } { $reading }: not compared with other people; compare with the other side and the own past; { $why ->
    [motion] no figures are held for this movement or measurement
    [over_84] nobody above 84 years was measured
    [age] no measured figures for this age
    [sex] measured in the other sex only
    [position] measured in another position only
   *[other] no measured figures for this age, position or way of measuring
 }
msg-motion-shown = { $what }{ $side } { $reading }: shown beside the mean of { $who } ({ $mean }), not judged: how far people differ was not printed
msg-motion-shown_half = { $what }{ $side } { $reading }: shown beside the middle half of { $who } ({ $interval }), not judged
msg-motion-shown_several = { $what }{ $side } { $reading }: figures are held for { $who }, not judged: how far people differ was not printed
msg-motion-no_error = { $what }{ $side } { $reading }: shown beside the figures for { $who } ({ $interval }), not judged: the error of this measurement is not known
msg-motion-compared_with = compared with { $rows }
msg-motion-position_not_named = position not named
msg-motion-instrument_not_named = instrument not named
msg-mode-active = active
msg-mode-passive = passive
msg-motion-no_norm_fused = { $what }{ $side } { $reading }: fused joint, not compared with other people
msg-motion-no_norm_implant = { $what }{ $side } { $reading }: replaced joint, not compared with other people
msg-motion-needs_age = { $what }{ $side } { $reading }: age not known, not compared with other people
msg-motion-needs_instrument = { $what }{ $side } { $reading }: cannot say yet: needs the instrument
msg-motion-unresolved = { $what }{ $side }: written { $reading }, meaning not settled; not compared until someone says which is meant
msg-motion-words_only = { $what }{ $side }: written in words ({ $reading }); a number is needed to compare

msg-motion-side_below = { $what }{ $side } { $reading }: less than the other side ({ $other }) by { $difference }; more than the { $needed } needed to believe it
msg-motion-side_above = { $what }{ $side } { $reading }: more than the other side ({ $other }) by { $difference }; more than the { $needed } needed to believe it
msg-motion-side_not_distinguishable = { $what }{ $side } { $reading }: cannot be told from the other side ({ $other }); { $needed } needed to believe a difference
msg-motion-side_needs_instrument = { $what }{ $side } { $reading }: sides not compared, needs the instrument of both
msg-motion-side_other_position = { $what }{ $side } { $reading }: sides not compared, measured in different positions
msg-motion-past_below = { $what }{ $side } { $reading }: less than last time ({ $other }) by { $difference }; more than the { $needed } needed to believe it
msg-motion-past_above = { $what }{ $side } { $reading }: more than last time ({ $other }) by { $difference }; more than the { $needed } needed to believe it
msg-motion-past_not_distinguishable = { $what }{ $side } { $reading }: cannot be told from last time ({ $other }); { $needed } needed to believe a change
msg-motion-past_needs_instrument = { $what }{ $side } { $reading }: not compared with last time, needs the instrument of both
msg-motion-past_other_position = { $what }{ $side } { $reading }: not compared with last time, measured in different positions
msg-motion-within-row = within
msg-motion-within_taught-row = within
msg-motion-below-row = below, beyond its error
msg-motion-below_taught-row = below the taught values, beyond its error
msg-motion-above-row = above, beyond its error
msg-motion-above_taught-row = above the taught values, beyond its error
msg-motion-not_distinguishable-row = cannot be told from the edge{ $in_span }
msg-motion-not_distinguishable_taught-row = cannot be told from the edge{ $in_span }
msg-motion-norms_disagree-row = the figures that may apply ({ $who }) do not agree; the age is not known closely enough, or nobody said whose norms to compare with
msg-motion-norms_disagree_taught-row = the taught values that may apply ({ $who }) do not agree; the age is not known closely enough, or nobody said whose norms to compare with
msg-motion-sources_disagree-row = the sources that may apply ({ $who }) do not agree; together they span { $interval }
msg-motion-sources_disagree_taught-row = the taught values that may apply ({ $who }) do not agree; together they span { $interval }
msg-motion-shown-row = beside the mean of { $who } ({ $mean }), not judged: how far people differ was not printed
msg-motion-shown_half-row = beside the middle half of { $who } ({ $interval }), not judged
msg-motion-shown_several-row = beside figures for { $who }, not judged: how far people differ was not printed
msg-motion-no_error-row = beside the figures for { $who }, not judged: the error of this measurement is not known
msg-motion-no_norm-row = not compared with other people; { $why ->
    [motion] no figures are held for this movement or measurement
    [over_84] nobody above 84 years was measured
    [age] no measured figures for this age
    [sex] measured in the other sex only
    [position] measured in another position only
   *[other] no measured figures for this age, position or way of measuring
 }
msg-motion-no_norm_fused-row = fused joint, not compared with other people
msg-motion-no_norm_implant-row = replaced joint, not compared with other people
msg-motion-needs_age-row = age not known, not compared with other people
msg-motion-needs_instrument-row = not compared with other people, needs the instrument
msg-motion-side_below-row = less than the other side ({ $other }) by { $difference } (believed above { $needed })
msg-motion-side_above-row = more than the other side ({ $other }) by { $difference } (believed above { $needed })
msg-motion-side_not_distinguishable-row = cannot be told from the other side ({ $other }; believed above { $needed })
msg-motion-side_needs_instrument-row = sides not compared, needs the instrument of both
msg-motion-side_other_position-row = sides not compared, measured in different positions
msg-motion-past_below-row = less than last time ({ $other }) by { $difference }° (believed above { $needed }°)
msg-motion-past_above-row = more than last time ({ $other }) by { $difference }° (believed above { $needed }°)
msg-motion-past_not_distinguishable-row = cannot be told from last time ({ $other }; believed above { $needed }°)
msg-motion-past_needs_instrument-row = not compared with last time, needs the instrument of both
msg-motion-past_other_position-row = not compared with last time, measured in different positions
msg-motion-with_error = { $reading }, with error of measurement { $span }
msg-motion-methods_differ = measured with different instruments
msg-motion-taught = the figure was not read at its source
msg-motion-source = source { $source }

msg-contradiction-active_beyond_passive = Active motion ({ $active_deg }) goes further than passive ({ $passive_deg }): exchanged, pain, or another instrument?

msg-group = { $group ->
    [men] men { $low } to { $high } years
    [women] women { $low } to { $high } years
    [boys] boys { $low } to { $high } years
    [girls] girls { $low } to { $high } years
    [boys_and_men] boys and men { $low } to { $high } years
    [girls_and_women] girls and women { $low } to { $high } years
    [children] children { $low } to { $high } years
   *[people] people { $low } to { $high } years
 }

msg-group_from = { $group ->
    [men] men from { $low } years
    [women] women from { $low } years
    [boys_and_men] boys and men from { $low } years
    [girls_and_women] girls and women from { $low } years
   *[people] people from { $low } years
 }
msg-group_at = { $group ->
    [men] men of { $low } years
    [women] women of { $low } years
    [boys] boys of { $low } years
    [girls] girls of { $low } years
    [children] children of { $low } years
   *[people] people of { $low } years
 }
msg-group_months = children { $low } to { $high } months
msg-group_at_months = { $low ->
    [0] children in the first month
   *[other] children of { $low } months
 }

## What would change a statement.

msg-change-answer_to_what_is_asked = an answer to what is asked
msg-change-repeat_reading = a repeated reading, or an instrument with a smaller error
msg-change-age_or_sex = a closer age, or which figures to compare with
msg-change-birth = the birth date or an age
msg-change-instrument = the instrument
msg-change-same_position = a reading in the same position
msg-change-same_instrument = a reading with the same instrument
msg-change-meaning = what the sign or the order means
msg-change-number = a number
msg-change-age = age
msg-change-days = date of the injury
msg-change-fib = tenderness of the head of the fibula
msg-change-pat = tenderness of the kneecap
msg-change-other = tenderness of other bone of the knee
msg-change-flex = flexion
msg-change-imm = four steps at once after the injury
msg-change-steps = four steps now
msg-change-excl = what the rule was not made for
msg-change-pregnant = pregnancy
msg-change-earlier_operation = earlier operation or break of this knee
msg-change-blunt = whether it was a fall or a blow

## Ottawa knee rule.

msg-rule-ottawa_knee-name = Ottawa knee rule
msg-rule-ottawa_knee-positive = Film of the knee advised by the Ottawa knee rule
msg-rule-ottawa_knee-negative = Film not required by the Ottawa knee rule (all items checked today: { $checked }). Not walking better in 5 to 7 days: examine again
msg-rule-ottawa_knee-negative_with_gaps = Film not required by the Ottawa knee rule by what was checked today ({ $checked }); not checked: { $open }. Not walking better in 5 to 7 days: examine again
msg-rule-ottawa_knee-negative_contradicted = Negative by its letter, contradicted by { $because }: unsettled, use judgement
msg-rule-ottawa_knee-undetermined = Cannot say yet: needs { $needs }
msg-rule-ottawa_knee-not_applicable = Rule not made for this person ({ $gate }): use judgement
msg-rule-ottawa_knee-contradicted_walk = cannot walk four steps now
msg-rule-ottawa_knee-contradicted_film = the film that shows a break
msg-rule-ottawa_knee-contradicted_bone = other bone is tender, which the rule does not count
msg-rule-ottawa_knee-flag_age_decides = 55 or older: by this rule the age alone asks for a film, whatever else was answered
msg-rule-pittsburgh_knee-flag_age_decides = under 12 or over 50: after a fall or a blow the age alone asks for a film by this rule
msg-rule-ottawa_knee-negative_disagrees = Negative by its letter, but another rule advises a film: the more cautious holds until the examiner decides

msg-rule-pittsburgh_knee-name = Pittsburgh knee rule
msg-rule-pittsburgh_knee-positive = Film of the knee advised by the Pittsburgh knee rule
msg-rule-pittsburgh_knee-negative = Film not required by the Pittsburgh knee rule (all items checked today: { $checked }). Not walking better in 5 to 7 days: examine again
msg-rule-pittsburgh_knee-negative_with_gaps = Film not required by the Pittsburgh knee rule by what was checked today ({ $checked }); not checked: { $open }. Not walking better in 5 to 7 days: examine again
msg-rule-pittsburgh_knee-negative_contradicted = Negative by its letter, contradicted by { $because }: unsettled, use judgement
msg-rule-pittsburgh_knee-negative_disagrees = Negative by its letter, but another rule advises a film: the more cautious holds until the examiner decides
msg-rule-pittsburgh_knee-undetermined = Cannot say yet: needs { $needs }
msg-rule-pittsburgh_knee-not_applicable = Rule not made for this person ({ $gate }): use judgement
msg-rule-pittsburgh_knee-contradicted_walk = cannot walk four steps now
msg-rule-pittsburgh_knee-contradicted_film = the film that shows a break
msg-rule-pittsburgh_knee-contradicted_bone = bone is tender, which the rule does not look at

msg-rule-gate-age = under 5
msg-rule-gate-red_flag = an open wound or a joint out of place comes first
msg-rule-gate-days = injury more than 7 days old
msg-rule-gate-exclusions = one of the rule's exclusions is present
msg-rule-gate-answers_reliable = answers not reliable today; examine again when they are
msg-rule-gate-pregnancy = pregnant people were not studied
msg-rule-gate-implant = replaced knee, of which its sources do not speak
msg-rule-gate-fused = fused knee, of which its sources do not speak
msg-rule-gate-no_injury = no injury, by what was told; it was made for injured knees
msg-rule-gate-no_limb = no limb on this side
msg-rule-flag-paediatric_extension = under 18: studied later than in adults, from 5 years
msg-rule-flag-one_study_from_2_years = one study includes children from 2 years
msg-rule-flag-contradicted = findings outside the rule speak otherwise
msg-rule-flag-beside_contradicted = the other rule of this foot is contradicted; the more cautious is the default
msg-rule-flag-outside_derivation = pregnant people were not in the derivation; pregnancy does not bar a film that is needed
msg-rule-flag-replaced_joint = replaced knee: the sources of this rule do not speak of it
msg-rule-flag-pregnancy_not_asked = pregnancy: not asked; ask before a film
msg-rule-flag-side_not_assignable = both knees injured: not walking counts for both
msg-rule-flag-rules_disagree = the two rules do not say the same; the more cautious is the default
msg-rule-flag-earlier_operation_not_asked = earlier operation or break of this knee: the rule was not made for it; ask
msg-rule-settle = { $input }: { $answers }
msg-rule-answer = { $if } gives { $gives }
msg-rule-criteria = Criteria met: { $criteria }
msg-rule-counted = Counted: { $what }
msg-outcome-positive = film advised
msg-outcome-negative = film not required
msg-outcome-undetermined = still open
msg-outcome-not_applicable = rule not made for this person

## The page.

msg-page-title = EXAMINATION
msg-page-decision_support = Decision support for a licensed examiner. Findings are described, not decided upon; the examiner's judgement and local protocol stand above every line. Not tested on real people.
msg-page-intended_use = Intended use: to record a hands-on examination of the lower limb and to set the findings beside published figures and rules. It asks after danger signs of a painful or injured lower limb; what was not asked stays unknown, and that nothing is raised says nothing about it. An interval speaks of the people who were measured, not of this person.
msg-page-consent = Company, and who spoke
msg-page-impression = Examiner's impression
msg-page-alternatives = Alternatives: { $alternatives }
msg-page-code = Code: { $code }
msg-page-none_written = None written.
msg-page-plan = Plan
msg-page-findings = Findings
msg-page-not_done = Not done, with the reason
msg-page-rules = Rules
msg-page-not_fitting = Does not fit together
msg-page-not_examined = Not examined
msg-page-not_part = Other items were not part of this visit.
msg-page-nothing = Nothing.
msg-page-none_left_undone = No test was recorded as tried and left undone.
msg-page-nothing_compared = Nothing to compare yet.
msg-page-no_rule = No rule has anything to go on.
msg-page-signature = Signature
msg-page-signed = Signed by { $by }, { $at }.
msg-page-signed_before = Signed by { $by }, { $at }, which by the clocks is before the examination: one of the two times is wrong.
msg-page-not_signed = Not signed.
msg-page-withdrawn = WITHDRAWN: { $reason }
msg-page-incomplete = Signed, incomplete: { $what }
msg-page-addendum = Addendum, { $at }, { $by }, because: { $reason }
msg-page-correction = CORRECTION (an addendum), { $at }, { $by }, because: { $reason }
msg-page-added = Added after the signature
msg-page-added_unsigned = Added to an exam that was not signed
msg-page-added_head = AFTER THE SIGNATURE: { $count ->
    [one] an addendum was
   *[other] { $count } addenda were
 } written, the last on { $day }{ $corrections ->
    [0] { "" }
    [one] ; one is a CORRECTION
   *[other] ; { $corrections } are CORRECTIONS
 }. Read "{ $where }": what the program says rests on what was signed.
msg-page-added_head_unsigned = THIS EXAM WAS WITHDRAWN AND NOT SIGNED; something was written about it since, the last on { $day }. Read "{ $where }".
msg-page-added_beside = { $what } (signed: { $signed })
msg-page-added_of = Added { $day }: { $what }
msg-page-judged_as_signed = Judged AS SIGNED; since then an addendum has another value of: { $what }.
msg-value-added_since = an ADDENDUM of { $day } has: { $value }
msg-value-corrected_since = a CORRECTION of { $day } has: { $value }
msg-page-facts = Facts: edition { $edition }, judged as of { $as_of }.
msg-page-no_name = No name recorded
msg-page-years = { $years } years
msg-page-months = { $months ->
    [1] 1 month old
   *[other] { $months } months old
 }
msg-page-age_unknown = age not known
msg-page-complaint = Complaint: { $complaint }
msg-page-place = Place: { $place }
msg-page-examiner = Examiner: { $examiner }
msg-page-injured = Injured: { $date }
msg-page-setting = Setting: { $setting }
msg-page-exam_id = Exam: { $exam }
msg-page-conflict = two values, recorded without knowledge of each other; both are kept

msg-consent-not_to_send = THIS RECORD is not to be passed on (consent to send: { $send }). { $care }.
msg-consent-send_not_asked = THIS RECORD is not to be passed on until the person was asked. { $care }.
msg-consent-care = Care of the person goes on
msg-consent-care_and_film = Care of the person, and the film, go on
msg-consent-care_and_transfer = Care and transfer of the person go on
msg-consent-care_and_referral = Care and referral of the person go on
msg-consent-line = Consent. Examine: { $examine }. Record: { $record }. Send: { $send }.
msg-consent-as_signed = As it stood at the signature: an addendum below may say that it was withdrawn.
msg-consent-not_asked = not asked
msg-consent-by = By { $by }.
msg-consent-given_by = Consent by { $by }.
msg-consent-capacity = Capacity: { $capacity }.
msg-capacity-yes = yes
msg-capacity-no = not able to consent alone
msg-capacity-assent = not able to consent alone; agrees (assent)
msg-capacity-unsure = unsure
msg-chaperone-offered = offered; whether one was present is not recorded
msg-consent-chaperone = Chaperone: { $chaperone }.
msg-consent-others = Others in the room: { $others }.
msg-consent-spoke = History from { $who }, reliable: { $reliable }.
msg-consent-interpreter = Interpreter: { $interpreter }.

msg-side-left = LEFT
msg-side-right = RIGHT
msg-side-midline = MIDLINE
msg-side-not_recorded = LEFT OR RIGHT (the record names no one side)

msg-region-history = HISTORY
msg-region-general = GENERAL
msg-region-body = BODY
msg-region-pelvis = PELVIS
msg-region-hip = HIP
msg-region-knee = KNEE
msg-region-leg = LEG
msg-region-ankle = ANKLE
msg-region-foot = FOOT
msg-region-gait = GAIT
msg-region-function = FUNCTION
msg-region-nerve = NERVE
msg-region-vessel = VESSEL
msg-region-skin = SKIN
msg-region-examiner = EXAMINER

msg-value-at_least = at least { $value }
msg-value-at_most = at most { $value }
msg-value-points_between = { $low } to { $high }
msg-value-deg = { $value }°
msg-value-toward = { $value }° toward { $toward }
msg-value-short_of_straight = { $value }° short of straight
msg-value-beyond_straight = { $value }° beyond straight
msg-value-straight = straight (0°)
msg-value-straight_word = straight
msg-value-unit = { $value } { $unit }
msg-value-trials = readings { $trials }, { $how } taken
msg-value-written = written { $text }
msg-value-unresolved = written { $text }, meaning not settled
msg-value-full = full
msg-value-same_as_other_side = same as the other side
msg-value-grade = grade { $grade }
msg-value-grade_means = grade { $grade } ({ $means })
msg-value-weeks_and_years = { $weeks } (about { $years ->
    [one] 1 year
   *[other] { $years } years
 })
msg-value-other_side_not_recorded = the other side is not recorded
msg-value-signal_absent = no signal
msg-value-positive = positive
msg-value-negative = negative
msg-value-equivocal = equivocal
msg-value-reproduces = reproduces { $reproduces ->
    [familiar] the familiar pain
   *[other] another pain
 }
msg-value-in_words = { $value } ({ $says })
msg-value-yes = yes
msg-value-no = no
msg-value-unsure = unsure
msg-value-quote = "{ $text }"
msg-value-pain = pain { $score } of 10
msg-value-pain_there = pain
msg-value-pain_familiar = familiar
msg-value-end_feel = end feel { $feel }
msg-value-despite = done though not advised ({ $how }): { $because }
msg-value-remark = remark: { $text }
msg-value-at_time = at { $time }
msg-value-by_other = by { $examiner }

msg-origin-bulk_expected = no abnormality noted (group entry)
msg-origin-carried_over = carried over from an earlier exam, not looked at today
msg-origin-from_paper = from paper
msg-origin-self_reported = reported, not examined

msg-unit-mm = mm
msg-unit-s = s
msg-unit-min = min
msg-unit-n = N
msg-unit-mm_hg = mmHg
msg-unit-cel = °C
msg-unit-kg = kg

msg-instrument-goniometer_long = long goniometer
msg-instrument-goniometer_short = short goniometer
msg-instrument-inclinometer = inclinometer
msg-instrument-smartphone = smartphone
msg-instrument-by_eye = estimate by eye
msg-instrument-tape = tape
msg-instrument-blocks = blocks
msg-instrument-thermometer = thermometer
msg-instrument-stopwatch = stopwatch
msg-instrument-dynamometer = dynamometer
msg-instrument-monofilament = monofilament
msg-instrument-tuning_fork = tuning fork
msg-instrument-hammer = hammer
msg-instrument-cuff = cuff
msg-instrument-doppler = Doppler
msg-instrument-hand = by hand

msg-why-declined = declined
msg-why-pain = pain
msg-why-blocked = blocked
msg-why-unable = unable
msg-why-baseline_unable = unable before this too
msg-why-no_limb = no limb
msg-why-fused = fused
msg-why-implant = implant
msg-why-covered = covered
msg-why-not_palpable = cannot be felt
msg-why-cannot_hold = cannot hold it
msg-why-beyond_instrument = beyond the instrument
msg-why-no_instrument = no instrument
msg-why-not_reliable = not reliable
msg-why-cannot_answer = cannot answer
msg-why-withheld = not advised now
msg-why-no_time = no time
msg-why-other = other

msg-quality-guarded = guarded
msg-quality-effort_limited = effort limited
msg-quality-poor_contact = poor contact
msg-quality-unsure_landmark = landmark unsure

msg-trials-mean = mean
msg-trials-best = best
msg-trials-last = last

msg-missing-instrument = the instrument
msg-missing-birth = an age
msg-missing-day = the day of the exam
msg-missing-position = the position
msg-missing-meaning = what is meant
msg-missing-number = a number

msg-plan-film = film
msg-plan-referral = referral
msg-plan-splint = splint
msg-plan-limit = limit
msg-plan-exercise = exercise
msg-plan-medicine = medicine, as the examiner wrote it
msg-plan-advice = advice
msg-plan-safety_net = safety net
msg-plan-review = review
msg-plan-film_reader_not_recorded = { $by } (who reads it and what follows: not recorded)
msg-plan-by = by { $date }
msg-plan-told = { $plan }, told
msg-count_of-nerve-monofilament = { $count } of 3
msg-count_of-nerve-tuning_fork = { $count } of 3
msg-plan-open = outcome not recorded yet
msg-plan-after_signature = decided after the signature, by { $by }, { $at }
