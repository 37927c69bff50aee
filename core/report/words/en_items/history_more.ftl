# What the catalogue says of what is asked: pain, daily life, medicines, dangers, a child's story. Label, technique, what it is for, what counts, when not.
# A dot in a message name is a dash here. Language: English. Reviewed by: nobody yet.

msg-item-history_pain_now-short = Pain now, 0 to 10
msg-item-history_pain_now-how = At this moment, as the person sits or lies. 0 is none, 10 the worst that can be thought of. Fingers, faces or a drawn line help.
msg-item-history_pain_now-purpose = Before the first touch and at the end.
msg-item-history_pain_now-errors = Guessed by the examiner or the family. Several pains in one number: the one complained of.
msg-item-history_pain_now-otherwise = Cannot use numbers: a word in the remark, or not done, cannot answer.

msg-item-history_pain_worst-short = Pain at its worst, 0 to 10
msg-item-history_pain_worst-how = The worst of the last week. 0 is none, 10 the worst that can be thought of. Fingers, faces or a drawn line help.
msg-item-history_pain_worst-purpose = What it does at its most.
msg-item-history_pain_worst-errors = Guessed by the examiner or the family. Several pains in one number: the one complained of.
msg-item-history_pain_worst-otherwise = Cannot use numbers: a word in the remark, or not done, cannot answer.

msg-item-history_pain_at_rest-short = Pain at rest, 0 to 10
msg-item-history_pain_at_rest-how = After sitting or lying still for a while. 0 is none, 10 the worst that can be thought of. Fingers, faces or a drawn line help.
msg-item-history_pain_at_rest-purpose = Pain that does not rest is looked into.
msg-item-history_pain_at_rest-errors = Guessed by the examiner or the family. Several pains in one number: the one complained of.
msg-item-history_pain_at_rest-otherwise = Cannot use numbers: a word in the remark, or not done, cannot answer.

msg-item-history_pain_at_night-short = Pain at night, 0 to 10
msg-item-history_pain_at_night-how = At its worst in the last nights. Whether turning ends it is asked beside. 0 is none, 10 the worst that can be thought of. Fingers, faces or a drawn line help.
msg-item-history_pain_at_night-purpose = Goes with the questions on night pain.
msg-item-history_pain_at_night-errors = Guessed by the examiner or the family. Several pains in one number: the one complained of.
msg-item-history_pain_at_night-otherwise = Cannot use numbers: a word in the remark, or not done, cannot answer.

msg-item-history_pain_site-short = Where it hurts, shown with one finger
msg-item-history_pain_site-how = The person points with one finger; all places of this side that hurt.
msg-item-history_pain_site-purpose = A finger says more than a word: hip pain is often felt at the knee.
msg-item-history_pain_site-errors = The examiner points. A word like "hip" means the waist to many.

msg-item-history_pain_movements-short = By which movement it hurts
msg-item-history_pain_movements-how = All that hold; or none of these.
msg-item-history_pain_movements-purpose = What to look at, and what to repeat at review.

msg-item-history_painkiller_last_6h-short = Pain-killer in the last six hours
msg-item-history_painkiller_last_6h-how = Any, also herbs, a neighbour's tablets, an injection or a numbing spray.
msg-item-history_painkiller_last_6h-purpose = Yes: a tender point may be missed, and no pain means less.
msg-item-history_painkiller_last_6h-yes = a pain-killer within six hours: tenderness may be missed
msg-item-history_painkiller_last_6h-no = no pain-killer within six hours

msg-item-history_painkiller_what-short = Pain-killer, which and when
msg-item-history_painkiller_what-how = Name, how much and when, as it is said.
msg-item-history_painkiller_what-purpose = For the letter, and for reading the pain numbers.

msg-item-history_onset-short = How it began
msg-item-history_onset-how = The one that fits best. New load: more running, marching, field work, new shoes or ground.
msg-item-history_onset-purpose = Sudden, slow, or after load are three different ways to go on.

msg-item-history_pain_most_days-short = Hurts on most days of the last month
msg-item-history_pain_most_days-how = The joint complained of, on more days than not; which joint, in the remark.
msg-item-history_pain_most_days-purpose = One of the points for a worn knee or hip.

msg-item-history_pain_with_use-short = Hurts with use
msg-item-history_pain_with_use-how = The joint complained of: worse with walking, stairs or work, better with rest.
msg-item-history_pain_with_use-purpose = One of the points for a worn joint.

msg-item-history_pain_severe_sudden-short = Pain severe and sudden
msg-item-history_pain_severe_sudden-how = Came suddenly, and so strong that nothing else can be done.
msg-item-history_pain_severe_sudden-purpose = In a child that limps: same day.

msg-item-history_rapid_worsening-short = Getting worse fast
msg-item-history_rapid_worsening-how = Pain, stiffness or shape much worse within weeks.
msg-item-history_rapid_worsening-purpose = A worn joint does not do that: another cause is looked for.
msg-item-history_rapid_worsening-yes = much worse within weeks
msg-item-history_rapid_worsening-no = not much worse within weeks

msg-item-history_function_reduced-short = Does less because of it
msg-item-history_function_reduced-how = Something of daily life is left out or done otherwise. What, as an activity.
msg-item-history_function_reduced-purpose = One of the points for a worn knee, and what the letter says.

msg-item-history_pain_squatting-short = Squatting makes it worse
msg-item-history_pain_squatting-how = As the person says, without trying it.
msg-item-history_pain_squatting-purpose = One of five signs put together for a worn hip.

msg-item-history_pain_stairs_or_slopes-short = Hurts on stairs or slopes
msg-item-history_pain_stairs_or_slopes-how = Up or down; which, in the remark.
msg-item-history_pain_stairs_or_slopes-purpose = Hip and kneecap.

msg-item-history_pain_lying_on_side-short = Hurts lying on this side
msg-item-history_pain_lying_on_side-how = At night or at rest, and ends on turning.
msg-item-history_pain_lying_on_side-purpose = Outer hip. It is no sign of a growth while turning ends it.
msg-item-history_pain_lying_on_side-yes = hurts when lying on this side
msg-item-history_pain_lying_on_side-no = does not hurt when lying on this side

msg-item-history_exertional_groin_pain-short = Groin or thigh hurts on running or marching
msg-item-history_exertional_groin_pain-how = Comes with load, stays longer each time, eases at rest.
msg-item-history_exertional_groin_pain-purpose = Stress fracture of the neck of the thigh bone until imaged: no hop, no squat load, less weight on it.
msg-item-history_exertional_groin_pain-care = Yes: no hopping, no squat under load, no fulcrum, no resisted leg raise, no running.
msg-item-history_exertional_groin_pain-errors = Called a pulled groin because the first film shows nothing.

msg-item-history_pain_first_steps-short = First steps in the morning hurt most
msg-item-history_pain_first_steps-how = Under the heel, on getting up or after sitting, better after some steps.
msg-item-history_pain_first_steps-purpose = The band under the heel.

msg-item-history_pebble_in_shoe-short = As if walking on a pebble
msg-item-history_pebble_in_shoe-how = Under the forefoot.
msg-item-history_pebble_in_shoe-purpose = Nerve between the toes; only about half say so.

msg-item-history_click_forefoot-short = Clicks in the forefoot
msg-item-history_click_forefoot-how = The person feels a click between the toes on walking.
msg-item-history_click_forefoot-purpose = Nerve between the toes.

msg-item-history_kick_to_heel_cord-short = Sudden pain at the heel cord, like a kick
msg-item-history_kick_to_heel_cord-how = At a push-off, often with a crack; looked round who had kicked.
msg-item-history_kick_to_heel_cord-purpose = A torn heel cord: walking and even rising on the toes leave it not excluded.
msg-item-history_kick_to_heel_cord-care = Yes: feel for a gap and squeeze the calf before any heel rise.

msg-item-history_joints_several-short = Other joints stiff or swollen too
msg-item-history_joints_several-how = In the morning above all; which, in the remark.
msg-item-history_joints_several-purpose = An illness of joints, not of this one.

msg-item-history_gout_known-short = Gout known
msg-item-history_gout_known-how = Told by a clinician, or earlier attacks that came and went.
msg-item-history_gout_known-purpose = Explains a hot joint, and leaves an infected one not excluded.

msg-item-history_pain_below_knee-short = Pain runs from the back to below the knee
msg-item-history_pain_below_knee-how = In this leg.
msg-item-history_pain_below_knee-purpose = A lumbar root.

msg-item-history_leg_pain_both-short = Pain down both legs from the back
msg-item-history_leg_pain_both-how = New, in both legs, running down from the back. Sore muscles after work do not count.
msg-item-history_leg_pain_both-purpose = With back pain: pressure on the lowest roots.
msg-item-history_leg_pain_both-care = Yes and new: bladder, bowel and saddle are asked now.

msg-item-history_both_legs_weak-short = Both legs weak
msg-item-history_both_legs_weak-how = New; legs give way, cannot rise, feet drop.
msg-item-history_both_legs_weak-purpose = Cord or lowest roots.
msg-item-history_both_legs_weak-care = Yes and new: call now; no walking tests.

msg-item-history_weakness_getting_worse-short = Weakness gets worse by the day
msg-item-history_weakness_getting_worse-how = Of one or both legs, over hours or days.
msg-item-history_weakness_getting_worse-purpose = Cannot wait for an ordinary appointment.
msg-item-history_weakness_getting_worse-care = Yes: call now.

msg-item-history_sexual_function_change-short = Change in feeling or function in sex
msg-item-history_sexual_function_change-how = New, since the back or leg pain: feeling, erection, orgasm. "I ask everybody with this pain, because the same nerves serve it."
msg-item-history_sexual_function_change-purpose = The lowest roots.
msg-item-history_sexual_function_change-care = Asked in private only, in the person's own language, not through a child or a relative. Not alone: not asked, and it stays open. Yes and new: call now.
msg-item-history_sexual_function_change-errors = Left out from shame; asked before the family.

msg-item-history_numb_or_tingling-short = Numb, burning or tingling
msg-item-history_numb_or_tingling-how = Feet or legs; where, and whether stocking-like on both sides, in the remark.
msg-item-history_numb_or_tingling-purpose = Nerve disease, a root, or a nerve that is pressed.

msg-item-history_weight_bearing-short = Weight on this leg now
msg-item-history_weight_bearing-how = As the person or the parent says: fully; with a limp; only with an aid; not at all; never walked or has not for long.
msg-item-history_weight_bearing-purpose = Not at all is a danger sign in a child and after a fall.
msg-item-history_weight_bearing-errors = Not walking before this counts as its own answer, never as "cannot".

msg-item-history_refuses_weight-short = Child cannot or will not put weight on it
msg-item-history_refuses_weight-how = The answer that the count for a child's hip reads. Since when, in the remark. Carried everywhere, or crawls instead.
msg-item-history_refuses_weight-purpose = One of four signs in a sore hip of a child; same day with fever.
msg-item-history_refuses_weight-care = No leaves an infected joint not excluded.
msg-item-history_refuses_weight-yes = does not put weight on this leg
msg-item-history_refuses_weight-no = puts weight on this leg

msg-item-history_walks_usually-short = Walking before this began
msg-item-history_walks_usually-how = The best of the weeks before.
msg-item-history_walks_usually-purpose = The state to get back to; a rule on steps does not fit who did not walk before.

msg-item-history_walking_lost-short = Cannot stand or walk since the fall, or stopped walking
msg-item-history_walking_lost-how = Can the person stand or walk since the fall? Yes for who stood and walked before and now does not, also where nobody saw a fall.
msg-item-history_walking_lost-purpose = In an old, frail or confused person a broken hip until imaged.
msg-item-history_walking_lost-yes = cannot stand or walk since
msg-item-history_walking_lost-no = stands and walks as before

msg-item-history_fall_recent-short = Fall, these days
msg-item-history_fall_recent-how = Any, also one that nobody saw: bruises, found on the floor.
msg-item-history_fall_recent-purpose = Broken hip or pelvis in old and frail people.

msg-item-history_fall_cause-short = Fall, why, and how long on the floor
msg-item-history_fall_cause-how = Tripped, dizzy, fainted, chest pain; time on the floor; cold. Pushed or struck by somebody: not here, under the protected questions.
msg-item-history_fall_cause-purpose = The cause of the fall may be the illness.

msg-item-history_head_injury-short = Head struck, or knocked out
msg-item-history_head_injury-how = With this fall or injury.
msg-item-history_head_injury-purpose = With blood thinners: same day whatever the leg shows.

msg-item-history_frail-short = Frail
msg-item-history_frail-how = The examiner's own answer: thin, slow, weak, needs help with daily things.
msg-item-history_frail-purpose = Changes what may be asked of the body and what is feared after a fall.

msg-item-history_needs-short = What they need to do
msg-item-history_needs-how = All that hold for this person's days.
msg-item-history_needs-purpose = Squat, fields and hills ask more of a leg than a flat street.

msg-item-history_work-short = Work and field tasks
msg-item-history_work-how = What the work is, what the leg does in it, whether it is stopped or lessened now, until when.
msg-item-history_work-purpose = Limits with an end date; what the letter says.

msg-item-history_sport_and_load-short = Sport and load
msg-item-history_sport_and_load-how = Which, how often, how far; what changed in the last weeks.
msg-item-history_sport_and_load-purpose = Overuse and return.

msg-item-history_load_changed-short = More load than before, these weeks
msg-item-history_load_changed-how = More running, marching, field work or jumping, new ground or shoes.
msg-item-history_load_changed-purpose = Overload of bone and tendon.

msg-item-history_low_energy_intake-short = Eats too little for the work done
msg-item-history_low_energy_intake-how = Weight kept low, meals left out, fasting with hard training; in women periods that stopped. Asked kindly.
msg-item-history_low_energy_intake-purpose = Bone that breaks by load.
msg-item-history_low_energy_intake-care = Asked in private.

msg-item-history_medicines-short = Medicines
msg-item-history_medicines-how = All, also herbs and what others gave; names as on the packet.
msg-item-history_medicines-purpose = For the letter and the call: blood thinners, steroids, bone medicines, quinolones are asked one by one.

msg-item-history_steroids-short = Steroids, now or lately
msg-item-history_steroids-how = Tablets, injections or into a joint or tendon; when, in the remark.
msg-item-history_steroids-purpose = Weak tendons, weak bone, hidden infection.

msg-item-history_bone_drugs-short = Bone medicine for years
msg-item-history_bone_drugs-how = Against thin bones, by mouth or drip (bisphosphonate, denosumab); how long, in the remark.
msg-item-history_bone_drugs-purpose = With thigh or groin pain: a fracture of the shaft that begins.
msg-item-history_bone_drugs-care = Yes with pain in thigh or groin: no hop, less weight on the leg, seen the same day.

msg-item-history_quinolones-short = Antibiotic of the quinolone kind, these months
msg-item-history_quinolones-how = Such as for the bladder or the lung; name in the remark.
msg-item-history_quinolones-purpose = Tendon pain and tears, the heel cord above all.

msg-item-history_allergy_known-short = Allergy known
msg-item-history_allergy_known-how = To medicines, plaster, latex, bites or foods.
msg-item-history_allergy_known-purpose = Part of every call and letter.
msg-item-history_allergy_known-yes = an allergy is known
msg-item-history_allergy_known-no = no allergy is known

msg-item-history_allergies-short = Allergies, to what and what happened
msg-item-history_allergies-how = As it is said.
msg-item-history_allergies-purpose = Part of every call and letter.

msg-item-history_tetanus-short = Tetanus protection
msg-item-history_tetanus-how = By card or memory.
msg-item-history_tetanus-purpose = Part of the transfer set with any wound.

msg-item-history_last_meal-short = Last food and drink, when
msg-item-history_last_meal-how = Time of the last food and the last drink.
msg-item-history_last_meal-purpose = Part of the transfer set.

msg-item-history_given_so_far-short = Given so far
msg-item-history_given_so_far-how = Medicine, fluids, splint, traction: what, how much, when, by whom.
msg-item-history_given_so_far-purpose = Part of the transfer set.

msg-item-history_other_illness-short = Other illnesses
msg-item-history_other_illness-how = Heart, lung, kidney, stroke, joint disease, epilepsy, HIV, hepatitis: as told.
msg-item-history_other_illness-purpose = What changes what can be done.
msg-item-history_other_illness-care = Asked in private. What the person does not want in a letter carried by hand is not put there.

msg-item-history_operation_this_limb-short = Operation or metal in this limb
msg-item-history_operation_this_limb-how = Ever; which and when in the remark.
msg-item-history_operation_this_limb-purpose = Norms, magnets and infection.

msg-item-history_fracture_minimal_force-short = Broken by almost nothing
msg-item-history_fracture_minimal_force-how = A break from a step, a turn or a small fall.
msg-item-history_fracture_minimal_force-purpose = Bone that was ill before: growth, thin bone, bone medicine.

msg-item-history_bone_fragile-short = Thin or weak bones known
msg-item-history_bone_fragile-how = Earlier breaks from small falls, told so, or long steroids.
msg-item-history_bone_fragile-purpose = Stress fracture and broken hip come to mind sooner; no forcing.

msg-item-history_bone_pain_unexplained-short = Bone pain without an explanation
msg-item-history_bone_pain_unexplained-how = The examiner's own answer after the examination: the story and the findings do not explain this pain.
msg-item-history_bone_pain_unexplained-purpose = Under 25 years: film within two days. A football story explains less than it seems.
msg-item-history_bone_pain_unexplained-yes = story and findings do not explain it
msg-item-history_bone_pain_unexplained-no = story and findings explain it

msg-item-history_lump_noticed-short = Lump noticed
msg-item-history_lump_noticed-how = By the person or family; since when, growing or not, in the remark.
msg-item-history_lump_noticed-purpose = Felt for and measured.

msg-item-history_fatigue-short = Tired beyond what explains it
msg-item-history_fatigue-how = New; in a child does not play.
msg-item-history_fatigue-purpose = With bone pain or a limp: blood, infection, growth.

msg-item-history_night_sweats-short = Sweats at night
msg-item-history_night_sweats-how = So that clothes are changed.
msg-item-history_night_sweats-purpose = Tuberculosis, infection, growth.

msg-item-history_claudication-short = Leg pain on walking, gone on standing still
msg-item-history_claudication-how = In calf, thigh or buttock; comes after about the same distance, goes within minutes of standing. Sitting needed to end it speaks for the back.
msg-item-history_claudication-purpose = Narrowed arteries.
msg-item-history_claudication-errors = Pain from hip, knee or back that also comes with walking.

msg-item-history_claudication_distance-short = Distance until the leg hurts, metres
msg-item-history_claudication_distance-how = On the flat at the usual pace; a known distance in the village helps.
msg-item-history_claudication_distance-purpose = Followed over the visits.
msg-item-history_claudication_distance-errors = Hills and carrying shorten it.

msg-item-history_rest_pain_foot-short = Foot hurts at rest, eased by hanging down
msg-item-history_rest_pain_foot-how = At night in bed, forefoot or toes; hangs the leg out or sleeps in a chair.
msg-item-history_rest_pain_foot-purpose = Lack of blood at rest.
msg-item-history_rest_pain_foot-care = With a cold foot and for days only: call now.

msg-item-history_rest_pain_over_2_weeks-short = Such pain for more than two weeks
msg-item-history_rest_pain_over_2_weeks-how = Rest pain of the foot that has lasted longer than two weeks.
msg-item-history_rest_pain_over_2_weeks-purpose = With poor pulses: vessel specialist, urgent.
msg-item-history_rest_pain_over_2_weeks-yes = rest pain for more than two weeks
msg-item-history_rest_pain_over_2_weeks-no = no rest pain, or not that long

msg-item-history_cold_pale_sudden-short = Leg became cold, pale or numb suddenly
msg-item-history_cold_pale_sudden-how = Within hours or days, less than two weeks ago.
msg-item-history_cold_pale_sudden-purpose = Lack of blood, suddenly: hours count.
msg-item-history_cold_pale_sudden-care = Yes: pulses now, call now.

msg-item-history_foot_ulcer_before-short = Foot ulcer before
msg-item-history_foot_ulcer_before-how = Any sore of this foot that took weeks; where, in the remark.
msg-item-history_foot_ulcer_before-purpose = High danger of another one.

msg-item-history_foot_ulcer_over_2_weeks-short = This sore is older than two weeks
msg-item-history_foot_ulcer_over_2_weeks-how = The one that is there now.
msg-item-history_foot_ulcer_over_2_weeks-purpose = With poor pulses: vessel specialist, urgent.
msg-item-history_foot_ulcer_over_2_weeks-yes = the sore is older than two weeks
msg-item-history_foot_ulcer_over_2_weeks-no = no sore, or not older than two weeks

msg-item-history_amputation_before-short = Part of this leg taken off before
msg-item-history_amputation_before-how = Toe, foot or more; the level is recorded with the body items.
msg-item-history_amputation_before-purpose = Counts in the foot category.

msg-item-history_kidney_failure-short = Kidneys failing
msg-item-history_kidney_failure-how = End stage, on dialysis, or with a new kidney.
msg-item-history_kidney_failure-purpose = Counts in the foot category; stiff vessels make ankle pressures too high.

msg-item-history_sight_poor-short = Cannot see the own feet well
msg-item-history_sight_poor-how = With glasses.
msg-item-history_sight_poor-purpose = Somebody else has to look each day.
msg-item-history_sight_poor-yes = does not see the own feet well
msg-item-history_sight_poor-no = sees the own feet well

msg-item-history_can_reach_feet-short = Reaches the own feet
msg-item-history_can_reach_feet-how = To wash, dry, look between the toes.
msg-item-history_can_reach_feet-purpose = No: somebody else has to look each day.
msg-item-history_can_reach_feet-yes = reaches the own feet
msg-item-history_can_reach_feet-no = does not reach the own feet

msg-item-history_barefoot-short = Walks barefoot
msg-item-history_barefoot-how = Also at night to the toilet, at prayer and in the field.
msg-item-history_barefoot-purpose = A numb foot is hurt without knowing.

msg-item-history_shoes-short = Shoes of every day
msg-item-history_shoes-how = The kind worn most, also at work.
msg-item-history_shoes-purpose = With the look into the shoes.

msg-item-history_foot_soaking-short = Soaks, heats or cuts the own feet
msg-item-history_foot_soaking-how = Hot water, coals, stones, razor, acids or plant juice on callus.
msg-item-history_foot_soaking-purpose = Burns and cuts of a numb foot.

msg-item-history_diabetes_years-short = Diabetes, for how many years
msg-item-history_diabetes_years-how = Whole years since it was told; 0 in the first.
msg-item-history_diabetes_years-purpose = Longer: numbness and narrowed vessels are looked for harder.
msg-item-history_diabetes_years-errors = Had it longer than it was known.

msg-item-history_leprosy-short = Leprosy, now or treated before
msg-item-history_leprosy-how = Or pale numb patches; where it is named with shame, asked kindly and in private.
msg-item-history_leprosy-purpose = Numb feet without diabetes.
msg-item-history_leprosy-care = Asked in private.

msg-item-history_foot_check_last_year-short = Feet looked at by a clinician within a year
msg-item-history_foot_check_last_year-how = By whom, and what was said, in the remark.
msg-item-history_foot_check_last_year-purpose = Whether the next look is due.
msg-item-history_foot_check_last_year-yes = looked at within a year
msg-item-history_foot_check_last_year-no = not looked at within a year

msg-item-history_tb_contact-short = Tuberculosis, own or of somebody close
msg-item-history_tb_contact-how = Ever; treated and how long, in the remark.
msg-item-history_tb_contact-purpose = One swollen joint or a sinus over weeks.
msg-item-history_tb_contact-care = Asked in private.

msg-item-history_sickle_cell-short = Sickle cell disease
msg-item-history_sickle_cell-how = Told, or pain crises and pale since small. Only in the family and never tested: not sure, and in the remark.
msg-item-history_sickle_cell-purpose = Bone infection, bone death at the hip.

msg-item-history_rash-short = Rash, these weeks
msg-item-history_rash-how = Where, came and went, in the remark.
msg-item-history_rash-purpose = Joint pain that belongs to a rash.

msg-item-history_recent_cold-short = Cold or sore throat, these weeks
msg-item-history_recent_cold-how = Before the limp began.
msg-item-history_recent_cold-purpose = Sore hip of a child that passes; and leaves an infected joint not excluded.

msg-item-history_limp_days-short = Limps, for how many days
msg-item-history_limp_days-how = Whole days; 0 on the first.
msg-item-history_limp_days-purpose = More than seven days not looked at, or more than fourteen without a name: same day.
msg-item-history_limp_days-errors = Since it was noticed, not since it became worse.

msg-item-history_limp_recurring-short = Limped before, came and went
msg-item-history_limp_recurring-how = Sore hip that came back.
msg-item-history_limp_recurring-purpose = Comes again: looked into by film.

msg-item-history_limp_seen_before-short = This limp was looked at before
msg-item-history_limp_seen_before-how = By a clinician; what was said, in the remark.
msg-item-history_limp_seen_before-purpose = Third visit without a name is a sign of its own.
msg-item-history_limp_seen_before-yes = a clinician has looked at it
msg-item-history_limp_seen_before-no = no clinician has looked at it

msg-item-history_child_not_moving_leg-short = Baby or child does not move this leg
msg-item-history_child_not_moving_leg-how = Kicks with the other only; cries on changing.
msg-item-history_child_not_moving_leg-purpose = Infected joint or bone, or a break: same day, under three months at once.
msg-item-history_child_not_moving_leg-yes = does not move this leg
msg-item-history_child_not_moving_leg-no = moves this leg

msg-item-history_birth_presentation-short = How the child lay before birth
msg-item-history_birth_presentation-how = Also where it was turned or cut out.
msg-item-history_birth_presentation-purpose = Breech: hips are looked at again and by scan.

msg-item-history_walking_age_months-short = Walked alone at, months
msg-item-history_walking_age_months-how = Completed months at the first steps alone.
msg-item-history_walking_age_months-purpose = Late walking goes with hips, nerves or muscles.
msg-item-history_walking_age_months-errors = With a hand or a wall is not alone.

msg-item-history_moves_about-short = Child moves about by
msg-item-history_moves_about-how = The best it does now.
msg-item-history_moves_about-purpose = A story of an injury has to fit what the child can do.

msg-item-history_family_hip-short = Hip out of place in the family
msg-item-history_family_hip-how = Parents, brothers, sisters.
msg-item-history_family_hip-purpose = Hips of the infant are looked at again and by scan.

msg-item-history_family_legs-short = Legs of this shape in the family
msg-item-history_family_legs-how = Parents, brothers, sisters at that age: bowed, knock-kneed, toes in, flat.
msg-item-history_family_legs-purpose = Family shape, or not.

msg-item-history_growth-short = Growth
msg-item-history_growth-how = By card or by the family.
msg-item-history_growth-purpose = A small child with bowed legs is looked into.

msg-item-history_alignment_course-short = Shape of the legs, over the last months
msg-item-history_alignment_course-how = As the family sees it; photographs help.
msg-item-history_alignment_course-purpose = Worse or one-sided: sent; better: looked at again.

msg-item-history_hip_count_exclusions-short = Anything that puts the count for a child's hip aside
msg-item-history_hip_count_exclusions-how = All that hold, or none of these.
msg-item-history_hip_count_exclusions-purpose = The count of signs was not made for these children: they are sent without it.

msg-item-history_ankle_rule_exclusions-short = Anything that puts the ankle rule aside
msg-item-history_ankle_rule_exclusions-how = All that hold, or none of these. Drunk or not able to take part counts as altered consciousness.
msg-item-history_ankle_rule_exclusions-purpose = The rule on films of ankle and foot was not made for these.

msg-item-history_knee_operation_or_fracture_before-short = Knee operated on or broken before
msg-item-history_knee_operation_or_fracture_before-how = This side.
msg-item-history_knee_operation_or_fracture_before-purpose = Puts one of the two knee rules aside.

msg-item-history_injury_story-short = Story of the injury, protected note
msg-item-history_injury_story-how = All that hold, in a child or a person who depends on others; or none of these. Words as they were said, by whom, in the remark. The examiner writes what was said, not a cause.
msg-item-history_injury_story-purpose = Protection.
msg-item-history_injury_story-care = In private. Not asked twice, nothing led, nobody accused. Treat the injury first; then those who protect, by local law. Never in a letter carried by hand.

msg-item-history_hurt_or_afraid-short = Hurt by somebody, or afraid at home
msg-item-history_hurt_or_afraid-how = "Because it is common, I ask everybody: has somebody hurt you, or are you afraid of somebody?" Words as they were said.
msg-item-history_hurt_or_afraid-purpose = Protection.
msg-item-history_hurt_or_afraid-care = Asked in private only, in the person's own language, not through a child or a relative. Not alone: not asked, and it stays open. Yes: ask what the person wants; those who protect, by local law; never in a letter carried by hand.
msg-item-history_hurt_or_afraid-errors = Asked with the partner, a relative or a child present.
msg-item-history_hurt_or_afraid-yes = hurt by somebody or afraid
msg-item-history_hurt_or_afraid-no = not hurt and not afraid, as said in private

msg-item-history_neglect_concern-short = Care that is missing
msg-item-history_neglect_concern-how = The examiner's own answer, of a child, an old or a dependent person: unwashed, unfed, untreated, left alone. What is seen, not why.
msg-item-history_neglect_concern-purpose = Protection.
msg-item-history_neglect_concern-care = In private. Not said before those in question.
msg-item-history_neglect_concern-yes = care is missing, as seen
msg-item-history_neglect_concern-no = no missing care seen

msg-item-history_joint_put_back-short = Joint was out and is back
msg-item-history_joint_put_back-how = A joint that was out of place and went back: by itself, by whom, when; which joint, in the remark.
msg-item-history_joint_put_back-purpose = Vessels and nerves are looked at after it, and pressures measured again.
msg-item-history_joint_put_back-care = Knee: vessel check each hour, whatever the pulse is now.

msg-item-history_compartment_causes-short = What could make the limb swell inside its sheaths
msg-item-history_compartment_causes-how = All that hold, now or these days; or none of these. A severe injury is answered by itself as well.
msg-item-history_compartment_causes-purpose = With pain on stretch or pain beyond what the hurt explains: now.
msg-item-history_compartment_causes-care = None of these leaves it not excluded where both pains are there.

msg-item-history_memory_poor-short = Memory or understanding poor before this
msg-item-history_memory_poor-how = Known, or said by those who live with the person.
msg-item-history_memory_poor-purpose = A fall is not told, tenderness is not said: stopped walking counts as a broken hip until imaged.
msg-item-history_memory_poor-yes = poor before this: the story of others counts
msg-item-history_memory_poor-no = not poor before this

msg-item-history_foot_drop_new-short = Foot drop is new
msg-item-history_foot_drop_new-how = Toes catch, foot slaps, since days or few weeks; since when, in the remark.
msg-item-history_foot_drop_new-purpose = New: same day; the back, the knee and the front compartment are looked at.
msg-item-history_foot_drop_new-yes = new, since days or few weeks
msg-item-history_foot_drop_new-no = old, or no foot drop
