# The clinic's lists: the day, what is left open, what disagrees, who looks alike. Language: English. Reviewed by: nobody yet.
# The words keep to what was recorded; nothing is urged but what an alert says, and leaving a line is always possible.

msg-clinic-nobody = nobody yet (the person is not named)
msg-clinic-named = { $names }
msg-clinic-born = born { $date }
msg-clinic-aged = about { $years } years on { $on }
msg-clinic-home = { $home }
msg-clinic-day_unknown = a day not known
msg-clinic-clock_doubtful = at a time that its clock cannot have had right
msg-clinic-no_examiner = no examiner named
msg-clinic-state_open = not signed
msg-clinic-state_signed = signed
msg-clinic-state_withdrawn = withdrawn
msg-clinic-visit = { $person }: { $visit }; { $state }; { $by }
msg-clinic-alert = No action recorded: { $alert }
msg-clinic-call_back = Not there when it was signed, so the person has to be called back: { $alert }
msg-clinic-to_settle = Something here was written without knowledge of something else: see what is to be settled.
msg-clinic-left = Left: { $what }

msg-clinic-day_title = DAY LIST { $day }
msg-clinic-day_counts = { $came ->
    [one] 1 person came
   *[other] { $came } people came
 }; exams: { $visits }; not signed: { $open }; with an alert and no action: { $alerts }.
msg-clinic-day_beside = Beside them, of a day not known: { $exams }, below.
msg-clinic-undated = Of a day not known, because the clock of the device cannot have been right, or known to the month alone. They stand on the list of each day that it may have been. Who was there can say the day (examined_on): of an exam that is not signed by exam.amend, of a signed one by addendum.record:
msg-clinic-day_end = The list holds what has reached this ledger. What a device still carries is not in it.

msg-clinic-loops_title = LEFT OPEN, as of { $day }
msg-clinic-loops_count = { $people ->
    [one] 1 person
   *[other] { $people } people
 }, those who cannot wait first.
msg-clinic-loops_end = The list holds what has reached this ledger. A line goes when what was done is recorded.
msg-clinic-loop_call_back = Call back (exam of { $on }): { $alert }
msg-clinic-loop_alert_without_action = No action recorded (exam of { $on }): { $alert }
msg-clinic-loop_in_conflict = Values written without knowledge of each other (exam of { $on }): to be settled
msg-clinic-loop_unsigned_exam = Not signed (exam of { $on })
msg-clinic-loop_referral_past_day = Referral without an answer, due { $by } (exam of { $on }){ $side }: { $plan }
msg-clinic-loop_review_overdue = Review overdue, due { $by } (exam of { $on }){ $side }: { $plan }
msg-clinic-loop_third_visit_without_impression = Third visit or more without an impression (the last on { $on })

msg-clinic-queue_title = { $count ->
    [one] TO BE SETTLED: 1
   *[other] TO BE SETTLED: { $count }, the gravest first
 }
msg-clinic-queue_none = TO BE SETTLED: 0
msg-clinic-queue_looking = WHO LOOKS ALIKE IS NOT LISTED YET: { $compared } of { $of } pairs of records were compared. Asked again, the program goes on.
msg-clinic-queue_part = These are { $first } to { $last } of { $count }; the others are not on this page.
msg-clinic-queue_end = Whatever is left waits and loses nothing: all values stay, and a warning goes by the more alarming of them. Until it is settled, do not rely on one of them alone.
msg-clinic-queue_of = ({ $person }; { $visit })
msg-clinic-queue_of_person = ({ $person })
msg-clinic-queue_of_visit = ({ $visit })
msg-clinic-queue_entry = { $by }, { $at }: { $what }{ $seen }.
msg-clinic-queue_unseen = , without having seen the other
msg-clinic-queue_seen = , having seen the other
msg-clinic-queue_alone = {""}
msg-clinic-queue_person = Whose exam is it? It was given to two people.
msg-clinic-queue_side_exchange_unseen = Which side? Left and right of this exam were exchanged, and this was written by somebody who did not know it.
msg-clinic-queue_finding = Two values for one finding.
msg-clinic-queue_withdrawal = A finding was taken back, and changed by somebody who did not know it.
msg-clinic-queue_late = Written without knowledge of the signature, and not seen by the signer.
msg-clinic-queue_signature_unseen = An addition by somebody who had not seen the exam signed.
msg-clinic-queue_withdrawal_unseen = Written for an exam that somebody else had withdrawn.
msg-clinic-queue_impression = Two impressions.
msg-clinic-queue_plan = Two versions of what is planned.
msg-clinic-queue_consent = Two records of consent.
msg-clinic-queue_request = One form was sent with two contents.
msg-clinic-queue_exam = Two versions of what the exam is of.
msg-clinic-queue_transfer = Two records of what travels along.
msg-clinic-queue_became = Two answers for what became of the plan.
msg-clinic-queue_birth = Two births for one person.
msg-clinic-queue_sex = Two answers for the sex of one person.
msg-clinic-queue_norm_sex = Two answers for the norms that are compared with.
msg-clinic-queue_home = Two homes for one person.
msg-clinic-queue_pair_of = One person or two? Decided both ways: { $first } - and - { $second }. { $because }.
msg-clinic-queue_look_alike_of = Registered twice? { $first } - and - { $second }. { $because }.
msg-clinic-decided = { $by }, { $at }: { $what }.
msg-clinic-remark_perhaps_twins = They may be twins: one birth, a name in common, and another beside it.
msg-clinic-remark_perhaps_parent_and_child = They may be parent and child: one name, one home, a generation apart.
msg-clinic-remark_decided_differently = Two people decided it differently, without knowing of each other.
msg-clinic-remark_contradicted = A chain of decisions makes one of two who were decided not to be the same; meanwhile nobody of them is shown as one.

msg-clinic-same-yes = one person
msg-clinic-same-no = two people
msg-clinic-same-undo = not decided after all
msg-clinic-field-name = name
msg-clinic-field-birth = birth
msg-clinic-field-sex = sex
msg-clinic-field-home = home
msg-clinic-field-identifier = number
msg-clinic-level-same = the same
msg-clinic-level-look_alike_letters = the same in letters that look alike
msg-clinic-level-near = nearly the same
msg-clinic-level-part = one holds the other
msg-clinic-level-close = alike
msg-clinic-level-shares_word = a word in common
msg-clinic-level-other = another
msg-clinic-level-same_day = the same day
msg-clinic-level-swapped_day_month = day and month exchanged
msg-clinic-level-one_slip = one digit apart
msg-clinic-level-same_month = the same month
msg-clinic-level-same_year = the same year
msg-clinic-level-about = may be the same, so far as it is known
msg-clinic-did-exam = opened the exam
msg-clinic-did-consent = recorded consent
msg-clinic-did-finding = recorded a finding
msg-clinic-did-withdraw = took it back
msg-clinic-did-impression = wrote an impression
msg-clinic-did-plan = wrote the plan
msg-clinic-did-sign = signed
msg-clinic-did-addendum = added to it
msg-clinic-did-move = gave the exam to another person
msg-clinic-did-swap_sides = exchanged left and right
msg-clinic-did-settle = settled it
msg-clinic-did-alert_handled = recorded what was done about an alert
msg-clinic-did-transfer = stopped it for transfer
msg-clinic-did-disagree = disagreed with a statement
msg-clinic-did-became = recorded what became of the plan
msg-clinic-did-outcome = recorded what was found out later
msg-clinic-did-countersign = countersigned
msg-clinic-did-letter = wrote a letter
msg-clinic-did-person = registered the person
msg-clinic-did-person_change = changed what is known of the person

msg-clinic-wrote_move = gave the exam to { $person }
msg-clinic-wrote_exam = { $what }
msg-clinic-wrote_withdraw = took it back
msg-clinic-wrote_withdraw_exam = withdrew the exam
msg-clinic-wrote_impression = { $text }
msg-clinic-wrote_plan = { $kind }: { $text }
msg-clinic-wrote_consent = examine: { $examine }, record: { $record }, send: { $send }
msg-clinic-consent_by = by { $by }
msg-clinic-wrote_addendum = added: { $text }
msg-clinic-certainty = certainty: { $certainty }
msg-clinic-injured = injured { $date }
msg-clinic-examined_on = done on { $date }
msg-clinic-number = { $issuer }: { $number }
msg-clinic-because = {" "}(reason: { $reason })

msg-clinic-settle_by_conflict_settle = To settle it, say which value holds, and why (conflict.settle).
msg-clinic-settle_side_exchange_unseen = To settle it, say that it holds for the side that stands here, and why (conflict.settle), or withdraw it and record it for the other side (finding.withdraw, finding.record).
msg-clinic-settle_withdrawal = To settle it, say that the value holds, and why (conflict.settle), or withdraw it (finding.withdraw).
msg-clinic-settle_by_exam_move = To settle it, give the exam to the one whose it is, and say why (exam.move).
msg-clinic-settle_by_exam_amend = To settle it, write what holds, of each thing that differs (exam.amend).
msg-clinic-settle_by_impression_record = To settle it, write the one that holds (impression.record).
msg-clinic-settle_by_plan_record = To settle it, write the one that holds (plan.record).
msg-clinic-settle_by_plan_follow = To settle it, write what became of it (plan.follow).
msg-clinic-settle_by_consent_record = To settle it, ask the person, and write the answer (consent.record).
msg-clinic-settle_by_addendum_record = To settle it, look at both and write an addendum on what holds (addendum.record).
msg-clinic-settle_by_person_amend = To settle it, ask the person, and write what holds (person.amend).
msg-clinic-settle_by_pair_decide = To settle it, say whether it is one person or two, and from where that is known (pair.decide).
