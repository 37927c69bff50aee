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

msg-page-found = Found out of the ordinary, as recorded
msg-page-found_side = { $side }: { $what }
msg-page-found_person = Of the person as a whole: { $what }
msg-page-found_one = { $what }: { $value }
msg-page-found_motion = { $what } { $reading }: { $says }
msg-page-found_nothing = nothing out of the ordinary among what was examined
msg-page-found_not_examined = not examined
msg-page-told = What the person was told
msg-page-told_nothing = Nothing is recorded. By hand: ________________________________________
msg-plan-was_told = told
msg-plan-not_told_yet = not recorded yet as told
msg-plan-only_told = Nothing besides what stands below for the person.
msg-page-film_in_plan = What was decided: { $films }
msg-page-film_planned = film planned ({ $text })
msg-page-film_declined = film declined ({ $text })
msg-page-film_none = no film in the plan
msg-page-cannot_wait = Alerts, and what was done
msg-page-alert_because = Rests on: { $findings }
msg-page-question = Not settled yet{ $side }: { $question }
msg-page-questions_more = Further questions that are not yet asked: { $count }.
msg-page-questions_more_named = Further questions that are not yet asked: { $count } (signs of: { $names }).
msg-page-no_alert = No alert for now or today raised by what was recorded
msg-page-no_other_alert = No other alert for now or today raised by what was recorded
msg-page-no_alert_here = No alert for now or today stands on this copy
msg-page-no_alert_open = danger signs not asked after, or not all of it: { $count }, named once below
msg-page-next_step = Next step
msg-page-step_after_alerts = What the alerts above ask for comes first. Of what can be asked or felt here, this would help most: { $item }, { $minutes } min, because an answer changes what is said of: { $changes }
msg-page-step_plan = The plan above is the examiner's. The program names no further step
msg-page-step_alerts_stand = what the alerts above ask for stands
msg-page-step_alerts_open = what the alerts above leave open stands
msg-page-step_questions_open = what the questions above leave open stands
msg-page-step_both_open = what the alerts and questions above leave open stands
msg-page-until_then = Until then: { $what }
msg-page-alert_action = Done: { $text }
msg-page-alert_reason = Nothing done, because: { $text }
msg-page-alert_open_plan = No answer to this alert is recorded. The plan says (whether that answers it, the examiner knows): { $plan }
msg-page-alert_open_plan_again = No answer to this alert is recorded. The plan says what stands above (whether that answers it, the examiner knows).
msg-page-planned = { $kind } { $text }
msg-alert_state-raised = No answer to this alert is recorded, and nothing is planned for it.
msg-alert_state-handled = An action or a reason is recorded.
msg-alert_state-withdrawn_by_correction = Raised, withdrawn by correction.

msg-page-danger_signs = Danger signs asked after
msg-page-no_flags = This edition asks for no danger signs by itself: that nothing is raised on this page says nothing about them.
msg-page-flags_raised = Raised (signs of): { $flags }.
msg-page-flag_rests = { $flag } ({ $findings })
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
msg-flag-hip_fx_old = a break of the hip behind the knee
msg-flag-ext_mech = torn extensor tendons
msg-flag-bleed_joint = blood in the joint of one who bleeds more than others
msg-flag-locked_knee = a locked knee
msg-flag-limp_child = a limp of a child that nothing explains
msg-flag-nai = harm by another person
msg-flag-tumour = bone pain that asks for a film
msg-flag-perthes = a child's hip losing its bone
msg-flag-joint_over_2_weeks = a joint swollen for weeks

msg-page-no_hypothesis_yet = Nothing is said yet: the minimum set of this complaint is not complete (see what was not done and what was not examined).
msg-page-no_hypothesis = Nothing can be said: for these findings, this age or this complaint there are no figures that may be used.
msg-page-compared = Compared with published figures, the other side and last time
msg-page-in_brackets = In brackets: the span of a reading with its error of measurement, where that decides; or the degrees that a difference has to exceed to be believed.
msg-page-against = Compared with
msg-page-against_text = against
msg-page-motion_reading = { $way } { $reading }:
msg-page-motion_of = { $way }: { $against }
msg-page-motion_against = { $interval } in { $who } ({ $kind ->
    [taught] taught values
    [taught] taught values, not read at their source
    [half] the middle half
   *[read] reference interval
 })
msg-motion_family-knee-flexion = Knee flexion
msg-motion_family-knee-extension = Knee extension
msg-motion_family-hip-flexion = Hip flexion
msg-motion_family-hip-internal_rotation = Hip inward rotation
msg-motion_family-hip-external_rotation = Hip outward rotation
msg-motion_way-active = active
msg-motion_way-passive = passive
msg-motion_way-passive_seated = passive, seated
msg-motion_way-passive_supine = passive, lying
msg-page-taught = "Taught values" are figures that were not read at their source: they may be compared with, and raise nothing.
msg-page-one_side = A side without an entry was not recorded; that is not a no.
msg-page-what_positive = What positive means:
msg-page-group_entries = A group entry was made for several items at once. It settles no rule and speaks for and against nothing.
msg-page-minimum_side = of the minimum set, { $side }: { $items }
msg-page-minimum_other = of the minimum set, { $side } (the other side): { $items }
msg-page-minimum = of the minimum set: { $items }
msg-page-joint = { $joint }: { $sides }
msg-page-joint_only = { $joint } { $side }: only { $items }
msg-page-joints_rest = Of { $joints }: where a side is not named here, more than two items of it were recorded, not necessarily all.
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
