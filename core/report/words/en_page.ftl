# The printed exam and the note. A dot in a message name is a dash here. Language: English. Reviewed by: nobody yet.

msg-page-untested = Not tested on real people
msg-page-read_end = Not tested on real people. What this page is, and what it is not, stands at its end.
msg-page-about = What this page is
msg-page-other_edition = The exam was recorded by edition { $edition }; what is said above is judged anew by the edition named before, and may differ from what the examiner saw.
msg-page-born = Born { $date }
msg-page-home = Home: { $home }
msg-page-examined = Examined { $when }
msg-page-certainty = Certainty, in the examiner's words: { $certainty }
msg-page-certainty_not_said = Certainty: not said
msg-page-and = { " and " }
msg-page-see_protected = See protected note

msg-page-cannot_wait = Alerts, and what was done
msg-page-alert_because = Rests on: { $findings }
msg-page-question = Not settled yet{ $side }: { $question }
msg-page-questions_more = Further questions that are not yet asked: { $count }.
msg-page-questions_more_named = Further questions that are not yet asked: { $count } (signs of: { $names }).
msg-page-no_alert = No alert raised by what was recorded
msg-page-no_other_alert = No other alert raised by what was recorded
msg-page-no_alert_here = No alert stands on this copy
msg-page-no_alert_open = not asked, or not all of it (signs of): { $flags }
msg-page-next_step = Next step
msg-page-until_then = Until then: { $what }
msg-page-alert_action = Done: { $text }
msg-page-alert_reason = Nothing done, because: { $text }
msg-page-alert_open_plan = No answer to this alert is recorded. The plan says (whether that answers it, the examiner knows): { $plan }.
msg-page-planned = { $kind } { $text }
msg-alert_state-raised = No answer to this alert is recorded, and nothing is planned for it.
msg-alert_state-handled = An action or a reason is recorded.
msg-alert_state-withdrawn_by_correction = Raised, withdrawn by correction.

msg-page-danger_signs = Danger signs asked after
msg-page-no_flags = This edition asks for no danger signs by itself: that nothing is raised on this page says nothing about them.
msg-page-flags_raised = Raised: { $flags }.
msg-page-flags_asked_no = Asked, answered no (signs of): { $flags }.
msg-page-flags_not_asked = Not asked, or not all of it (signs of): { $flags }.
msg-page-flags_cannot_answer = Asked, cannot be answered (signs of): { $flags }.
msg-page-flags_end = A no is the answer to a question, and no more than that. Free text is not read by the program.
msg-flag-open_fx = an open fracture
msg-flag-knee_disloc_vasc = a knee out of joint, or its artery
msg-flag-acs = pressure in a compartment
msg-flag-ali = blood flow to the foot cut off
msg-flag-dislocation = a kneecap out of place
msg-flag-ces = pressed nerves of the back
msg-flag-septic_adult = an infected joint
msg-flag-septic_child = an infected joint of a child
msg-flag-osteomyelitis = an infected bone
msg-flag-dvt = a clot in the leg
msg-flag-scfe = a slipped upper femoral epiphysis (growing hip)
msg-flag-ext_mech = torn extensor tendons
msg-flag-bleed_joint = blood in the joint
msg-flag-locked_knee = a locked knee
msg-flag-limp_child = a limp of a child that nothing explains
msg-flag-nai = harm by another person
msg-flag-tumour = a growth in the bone
msg-flag-perthes = a child's hip losing its bone
msg-flag-joint_over_2_weeks = a joint swollen for weeks

msg-page-no_hypothesis_yet = Nothing is said yet: the minimum set of this complaint is not complete (see what was not done and what was not examined).
msg-page-no_hypothesis = Nothing can be said: for these findings, this age or this complaint there are no figures that may be used.
msg-page-compared = Compared with published figures, the other side and last time
msg-page-taught = "Taught values" are figures that were not read at their source: they may be compared with, and raise nothing.
msg-page-one_side = A side without an entry was not recorded; that is not a no.
msg-page-what_positive = What positive means:
msg-page-group_entries = A group entry was made for several items at once. It settles no rule and speaks for and against nothing.
msg-page-minimum_side = of the minimum set, { $side }: { $items }
msg-page-minimum_other = of the minimum set, { $side } (the other side): { $items }
msg-page-minimum = of the minimum set: { $items }
msg-page-joint = { $joint }: { $sides }
msg-joint-hip = hip
msg-joint-knee = knee
msg-joint-ankle = ankle
msg-page-for_a_rule = asked for by a rule: { $what }

msg-complaint-acute_knee = knee, recent injury or recent pain
msg-complaint-chronic_knee = knee, pain of weeks or longer
msg-complaint-limping_child = limping child
msg-complaint-free = free examination

## A rule's criteria and answers. Variables: value.

msg-rule-answer_open = { $if } leaves it open
msg-value-between = { $low } to { $high }
msg-rule-ottawa_knee-criterion_age = age { $value } (55 or older)
msg-rule-ottawa_knee-criterion_fib = head of the fibula tender
msg-rule-ottawa_knee-criterion_pat = kneecap tender, and no other bone
msg-rule-ottawa_knee-criterion_flex = flexion { $value }° (below 90°)
msg-rule-ottawa_knee-criterion_blocked = movement blocked (flexion below 90°)
msg-rule-ottawa_knee-criterion_steps = could not walk four steps, neither at once nor now
msg-rule-pittsburgh_knee-criterion_blunt = a fall or a blow
msg-rule-pittsburgh_knee-criterion_age = age { $value } (under 12 or over 50)
msg-rule-pittsburgh_knee-criterion_steps_now = fewer than four steps now
msg-if-yes = yes
msg-if-no = no
msg-if-under_5 = under 5
msg-if-5_to_54 = 5 to 54
msg-if-55_or_more = 55 or more
msg-if-7_or_less = 7 or less
msg-if-more_than_7 = more than 7
msg-if-below_90 = below 90°
msg-if-90_or_more = 90° or more
msg-if-3_or_fewer = 3 or fewer
msg-if-4 = 4

msg-page-demonstration = DEMONSTRATION: invented people only
msg-page-practice = PRACTICE: invented people only, for teaching
