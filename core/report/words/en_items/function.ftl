# What the catalogue says of gait and function. Label, technique, what it is for, what counts, when not.
# A dot in a message name is a dash here. Language: English. Reviewed by: nobody yet.

msg-item-gait_aid-short = Aid for walking, today
msg-item-gait_aid-how = What the person came with; which hand, in the remark. A stick belongs in the hand of the better side.
msg-item-gait_aid-purpose = How much the limb carries; times and patterns are compared only with the same aid.
msg-item-gait_aid-errors = The aid was left at the door.

msg-item-gait_stance_short-short = Short time on this leg
msg-item-gait_stance_short-how = Barefoot, legs bare, about 10 m out and back, seen from behind and from the side. Yes when the step on this leg is cut short and the other swings fast.
msg-item-gait_stance_short-purpose = Pain anywhere from the back to the toe of this side.
msg-item-gait_stance_short-care = Not before a fracture, a slip of the hip or a dislocated knee is settled. Examiner within reach of who sways. Numb hot foot, a sore on a numb foot, numb between the legs: no walking for the look of it.
msg-item-gait_stance_short-errors = Watched for two steps only; shoes hide it.
msg-item-gait_stance_short-otherwise = Cannot walk: not done, with the reason; what is lost is how the limb carries. With an aid or one limb and a prosthesis: as the person walks each day, and the aid is recorded.

msg-item-gait_trunk-short = Trunk while this leg carries
msg-item-gait_trunk-how = From behind and from the side. While THIS leg carries: upright; leans over this leg; thrown back at heel strike; leans forward, perhaps a hand on the thigh.
msg-item-gait_trunk-purpose = Over the leg: weak or painful side muscles of the hip. Back: weak gluteus maximus. Forward: weak front of the thigh, a hand pushing the knee straight.
msg-item-gait_trunk-care = Not before a fracture, a slip of the hip or a dislocated knee is settled. Examiner within reach of who sways. Numb hot foot, a sore on a numb foot, numb between the legs: no walking for the look of it.
msg-item-gait_trunk-errors = The usual teaching is meant: the trunk leans over the WEAK leg while it carries. One published table prints the reverse.
msg-item-gait_trunk-otherwise = Cannot walk: not done, with the reason; what is lost is how the limb carries. With an aid or one limb and a prosthesis: as the person walks each day, and the aid is recorded.

msg-item-gait_pelvis-short = Pelvis while this leg carries
msg-item-gait_pelvis-how = From behind, eyes on the crests of the pelvis. While THIS leg carries: level; the OTHER side drops; the other side is hitched up to swing; dips on this side.
msg-item-gait_pelvis-purpose = Other side drops: side muscles of THIS hip. Dips on this side: short leg. Other side hitched up: the OTHER leg does not bend or clear the floor.
msg-item-gait_pelvis-care = Not before a fracture, a slip of the hip or a dislocated knee is settled. Examiner within reach of who sways. Numb hot foot, a sore on a numb foot, numb between the legs: no walking for the look of it.
msg-item-gait_pelvis-errors = A trunk that leans over the leg keeps the pelvis level though the muscles are weak: look at both.
msg-item-gait_pelvis-otherwise = Cannot walk: not done, with the reason; what is lost is how the limb carries. With an aid or one limb and a prosthesis: as the person walks each day, and the aid is recorded.

msg-item-gait_knee_in_stance-short = Knee while this leg carries
msg-item-gait_knee_in_stance-how = From in front and from the side. Steady; thrusts outward; thrusts inward; locks back; stays bent; stays stiff also in the swing.
msg-item-gait_knee_in_stance-purpose = A thrust loads one half of the knee or shows loose ligaments; locked back: weak front of the thigh or a foot that cannot come up, as with a tight calf.
msg-item-gait_knee_in_stance-care = Not before a fracture, a slip of the hip or a dislocated knee is settled. Examiner within reach of who sways. Numb hot foot, a sore on a numb foot, numb between the legs: no walking for the look of it.
msg-item-gait_knee_in_stance-errors = Clothes; heavy thighs that swing.
msg-item-gait_knee_in_stance-otherwise = Cannot walk: not done, with the reason; what is lost is how the limb carries. With an aid or one limb and a prosthesis: as the person walks each day, and the aid is recorded.

msg-item-gait_foot_strike-short = Foot strike
msg-item-gait_foot_strike-how = From the side. Heel first; flat; toes first; heel first and then a slap; on the outer edge.
msg-item-gait_foot_strike-purpose = Toes first: tight calf, short leg, spasticity, or a foot that drops. Slap: weak lifting of the foot.
msg-item-gait_foot_strike-care = Not before a fracture, a slip of the hip or a dislocated knee is settled. Examiner within reach of who sways. Numb hot foot, a sore on a numb foot, numb between the legs: no walking for the look of it.
msg-item-gait_foot_strike-errors = Listened to in shoes only.
msg-item-gait_foot_strike-otherwise = Cannot walk: not done, with the reason; what is lost is how the limb carries. With an aid or one limb and a prosthesis: as the person walks each day, and the aid is recorded.

msg-item-gait_push_off-short = Push-off
msg-item-gait_push_off-how = From behind and the side. Heel rises before the other foot lands: full; late and low: weak; the foot is lifted flat: none.
msg-item-gait_push_off-purpose = None: weak calf or a torn heel cord; walking alone leaves a torn cord not excluded.
msg-item-gait_push_off-care = Not before a fracture, a slip of the hip or a dislocated knee is settled. Examiner within reach of who sways. Numb hot foot, a sore on a numb foot, numb between the legs: no walking for the look of it. None after a sudden pain at the heel cord: feel and squeeze before anything else.
msg-item-gait_push_off-errors = Slow walking lowers it on both sides.
msg-item-gait_push_off-otherwise = Cannot walk: not done, with the reason; what is lost is how the limb carries. With an aid or one limb and a prosthesis: as the person walks each day, and the aid is recorded.

msg-item-gait_foot_progression_angle-short = Foot progression angle, walking
msg-item-gait_foot_progression_angle-how = Person walks toward and away along a line. Angle between the long axis of the foot and the line of walking, mean of some steps; out is positive, IN is minus.
msg-item-gait_foot_progression_angle-purpose = In-toeing and out-toeing of children over the visits; a foot that turns out anew with hip or knee pain in a growing person is a slip of the hip until films say otherwise.
msg-item-gait_foot_progression_angle-care = Not before a fracture, a slip of the hip or a dislocated knee is settled. Examiner within reach of who sways. Numb hot foot, a sore on a numb foot, numb between the legs: no walking for the look of it.
msg-item-gait_foot_progression_angle-errors = One step only; the child shows off. The foot turns, but the cause may sit in hip, shin or foot.
msg-item-gait_foot_progression_angle-otherwise = Cannot walk: the standing foot is another quantity. Wet or chalked feet on the floor make prints to measure.

msg-item-gait_heel_walk-short = Walks on the heels
msg-item-gait_heel_walk-how = Some steps on the heels, examiner beside. Each foot: forefoot stays up; sinks or low; cannot.
msg-item-gait_heel_walk-purpose = Muscles that lift the foot, roots L4 and L5: a quick look at both sides.
msg-item-gait_heel_walk-care = Not before a fracture, a slip of the hip or a dislocated knee is settled. Examiner within reach of who sways. Numb hot foot, a sore on a numb foot, numb between the legs: no walking for the look of it. Not before a fracture of ankle or foot is settled, nor where the heel cord may be torn.
msg-item-gait_heel_walk-errors = Stiff ankle or sore heel: not weakness. Falls backward: hold the hands.
msg-item-gait_heel_walk-otherwise = Cannot stand: power of lifting the foot, by hand.

msg-item-gait_toe_walk-short = Walks on the toes
msg-item-gait_toe_walk-how = Some steps on the toes, examiner beside. Each foot: heel stays high; sinks or low; cannot.
msg-item-gait_toe_walk-purpose = Calf, root S1: a quick look at both sides.
msg-item-gait_toe_walk-care = Not before a fracture, a slip of the hip or a dislocated knee is settled. Examiner within reach of who sways. Numb hot foot, a sore on a numb foot, numb between the legs: no walking for the look of it. Not where a torn heel cord, a stress fracture or a fracture of ankle or foot is thought of, nor on a hot numb foot.
msg-item-gait_toe_walk-errors = Able leaves a torn heel cord not excluded. Sore forefoot: not weakness.
msg-item-gait_toe_walk-otherwise = Cannot stand: pushing the foot down, by hand; small losses are not seen.

msg-item-gait_tandem_walk-short = Walks heel to toe on a line
msg-item-gait_tandem_walk-how = Some steps, heel before toe, eyes ahead, examiner within reach.
msg-item-gait_tandem_walk-purpose = Balance, feeling of the feet, cerebellum.
msg-item-gait_tandem_walk-care = Not before a fracture, a slip of the hip or a dislocated knee is settled. Examiner within reach of who sways. Numb hot foot, a sore on a numb foot, numb between the legs: no walking for the look of it.
msg-item-gait_tandem_walk-errors = Pain and stiff feet make it worse too. Shoes.
msg-item-gait_tandem_walk-otherwise = Cannot walk: stance heel to toe; cannot stand: left out.

msg-item-function_single_leg_stance_eyes_closed-short = Stands on one leg, eyes closed
msg-item-function_single_leg_stance_eyes_closed-how = Barefoot, arms crossed or hands on the hips, the other foot near the ankle of this one but not touching. Eyes are closed once steady. Time until the foot moves, the other touches down, an arm leaves or the eyes open; best of three, stopped at 45 s.
msg-item-function_single_leg_stance_eyes_closed-purpose = Balance without the eyes; set beside the age, never a pass or a fail.
msg-item-function_single_leg_stance_eyes_closed-care = Not with a hot joint, a fracture, dislocation or clot not settled, an operation not healed, new weakness from the back, dizziness or chest trouble. Examiner within arm's reach. Stop at pain or fear. Only after eyes open went well.
msg-item-function_single_leg_stance_eyes_closed-errors = Other foot hooked on the leg. Old people manage few seconds: spread is wide.
msg-item-function_single_leg_stance_eyes_closed-otherwise = Cannot stand on one leg: the stances on two. One limb: not done. Not done is not zero: give the reason.

msg-item-function_stance_side_by_side-short = Stance, feet side by side
msg-item-function_stance_side_by_side-how = Feet together side by side, eyes open, no aid, arms as they like. Help into the stance, then let go: time until the feet move or a hand is needed, stopped at 10 s. Held for 10 s: go on to the next stance; not held: stop. The fourth is standing on one leg.
msg-item-function_stance_side_by_side-purpose = First of four stances.
msg-item-function_stance_side_by_side-care = Not with a hot joint, a fracture, dislocation or clot not settled, an operation not healed, new weakness from the back, dizziness or chest trouble. Examiner within arm's reach. Stop at pain or fear.
msg-item-function_stance_side_by_side-errors = Held by the examiner while timed. An aid in the hand.
msg-item-function_stance_side_by_side-otherwise = Not reached because an earlier one failed: not done, unable. Cannot stand: left out. Not done is not zero: give the reason.

msg-item-function_stance_semi_tandem-short = Stance, instep beside big toe
msg-item-function_stance_semi_tandem-how = The instep of one foot beside the big toe of the other, eyes open, no aid, arms as they like. Help into the stance, then let go: time until the feet move or a hand is needed, stopped at 10 s. Held for 10 s: go on to the next stance; not held: stop. The fourth is standing on one leg.
msg-item-function_stance_semi_tandem-purpose = Second of four stances.
msg-item-function_stance_semi_tandem-care = Not with a hot joint, a fracture, dislocation or clot not settled, an operation not healed, new weakness from the back, dizziness or chest trouble. Examiner within arm's reach. Stop at pain or fear.
msg-item-function_stance_semi_tandem-errors = Held by the examiner while timed. An aid in the hand.
msg-item-function_stance_semi_tandem-otherwise = Not reached because an earlier one failed: not done, unable. Cannot stand: left out. Not done is not zero: give the reason.

msg-item-function_stance_tandem-short = Stance, heel to toe
msg-item-function_stance_tandem-how = One foot straight before the other, heel touching toe, eyes open, no aid, arms as they like. Help into the stance, then let go: time until the feet move or a hand is needed, stopped at 10 s. Held for 10 s: go on to the next stance; not held: stop. The fourth is standing on one leg.
msg-item-function_stance_tandem-purpose = Third of four stances; less than 10 s here is a sign that falls threaten.
msg-item-function_stance_tandem-care = Not with a hot joint, a fracture, dislocation or clot not settled, an operation not healed, new weakness from the back, dizziness or chest trouble. Examiner within arm's reach. Stop at pain or fear.
msg-item-function_stance_tandem-errors = Held by the examiner while timed. An aid in the hand.
msg-item-function_stance_tandem-otherwise = Not reached because an earlier one failed: not done, unable. Cannot stand: left out. Not done is not zero: give the reason.

msg-item-function_timed_up_and_go-short = Stand up, walk 3 m, turn, sit down
msg-item-function_timed_up_and_go-how = Armchair, line on the floor 3 m away, own shoes, the usual aid. Back against the chair. On "go": stands up, walks at the usual pace to the line, turns, comes back, sits. Time from "go" to sitting. One trial run before.
msg-item-function_timed_up_and_go-purpose = Getting about; 12 s and more in people of 65 and over is a sign that falls threaten, but alone it is not enough either way.
msg-item-function_timed_up_and_go-care = Not with a hot joint, a fracture, dislocation or clot not settled, an operation not healed, new weakness from the back, dizziness or chest trouble. Examiner within arm's reach. Stop at pain or fear.
msg-item-function_timed_up_and_go-errors = Hurried on; aid not written; chair of another height.
msg-item-function_timed_up_and_go-otherwise = Cannot finish or needs lifting: not done, unable. Wheelchair: not done, baseline. Not done is not zero: give the reason.

msg-item-function_chair_stand_30s-short = Stands up from a chair in 30 s, count
msg-item-function_chair_stand_30s-how = Chair without arms, seat 43 cm, against a wall. Sits in the middle, feet flat, arms crossed on the chest. On "go": up to full standing and down, again and again for 30 s. More than half way up at 30 s counts as one. A hand used to push: stop, count 0, and say so in the next item.
msg-item-function_chair_stand_30s-purpose = Power of thighs and hips; the table goes by age and sex from 60 to 94.
msg-item-function_chair_stand_30s-care = Not with a hot joint, a fracture, dislocation or clot not settled, an operation not healed, new weakness from the back, dizziness or chest trouble. Examiner within arm's reach. Stop at pain or fear.
msg-item-function_chair_stand_30s-errors = Not fully up; chair higher or lower; hands used.
msg-item-function_chair_stand_30s-otherwise = Arms needed: recorded as such. Sore knees: higher chair is another quantity, write it. Cannot stand: left out. Not done is not zero: give the reason.

msg-item-function_chair_stand_arms_used-short = Arms used to stand up from the chair
msg-item-function_chair_stand_arms_used-how = Yes when a hand pushed on thigh or chair.
msg-item-function_chair_stand_arms_used-purpose = Belongs to the count: with arms it is 0.
msg-item-function_chair_stand_arms_used-errors = Swinging arms are not pushing.
msg-item-function_chair_stand_arms_used-yes = arms were used
msg-item-function_chair_stand_arms_used-no = arms were not used

msg-item-function_five_times_sit_to_stand-short = Sits and stands five times, seconds
msg-item-function_five_times_sit_to_stand-how = Chair of 43 to 45 cm, arms crossed. Up and down five times as fast as they dare; time from the first rise to the last sit. Write if the last sit was not counted.
msg-item-function_five_times_sit_to_stand-purpose = Power of the legs; longer than 11.4 s at 60 to 69, 12.6 at 70 to 79, 14.8 at 80 to 89 is slower than the average.
msg-item-function_five_times_sit_to_stand-care = Not with a hot joint, a fracture, dislocation or clot not settled, an operation not healed, new weakness from the back, dizziness or chest trouble. Examiner within arm's reach. Stop at pain or fear.
msg-item-function_five_times_sit_to_stand-errors = Whether the last sit counts; higher chair.
msg-item-function_five_times_sit_to_stand-otherwise = Cannot do five: not done, unable; the number done in the remark. Squat not possible: this is the other way.

msg-item-function_walk_10m_usual-short = Walks 10 m at the usual pace, seconds
msg-item-function_walk_10m_usual-how = Level ground, marks 10 m apart with some steps before and after, own shoes, usual aid. Walks at the pace of every day; time between the marks.
msg-item-function_walk_10m_usual-purpose = Walking speed over the visits: 10 divided by the seconds gives metres a second.
msg-item-function_walk_10m_usual-care = Not with a hot joint, a fracture, dislocation or clot not settled, an operation not healed, new weakness from the back, dizziness or chest trouble. Examiner within arm's reach. Stop at pain or fear.
msg-item-function_walk_10m_usual-errors = Start counted from standing; aid or ground changed; somebody walks ahead.
msg-item-function_walk_10m_usual-otherwise = No 10 m: another distance is another quantity, in the remark. Cannot walk: not done. Not done is not zero: give the reason.

msg-item-function_walk_10m_fast-short = Walks 10 m as fast as they dare, seconds
msg-item-function_walk_10m_fast-how = Level ground, marks 10 m apart with some steps before and after, own shoes, usual aid. Walks as fast as they dare without running; time between the marks.
msg-item-function_walk_10m_fast-purpose = Walking speed over the visits: 10 divided by the seconds gives metres a second.
msg-item-function_walk_10m_fast-care = Not with a hot joint, a fracture, dislocation or clot not settled, an operation not healed, new weakness from the back, dizziness or chest trouble. Examiner within arm's reach. Stop at pain or fear.
msg-item-function_walk_10m_fast-errors = Start counted from standing; aid or ground changed; somebody walks ahead.
msg-item-function_walk_10m_fast-otherwise = No 10 m: another distance is another quantity, in the remark. Cannot walk: not done. Not done is not zero: give the reason.

msg-item-function_squat_depth-short = Squat, how deep
msg-item-function_squat_depth-how = Feet as wide as the shoulders, holding a rail or the examiner's hands. Down as far as they like and up: full; until the thighs are level; a quarter; not at all.
msg-item-function_squat_depth-purpose = One look at hips, knees and ankles of both sides.
msg-item-function_squat_depth-care = Not where a fracture, a slip, a stress fracture, a torn extensor tendon, a locked or freshly unstable knee, a hot joint, a hot numb foot or a clot is thought of, nor for who is unsteady.
msg-item-function_squat_depth-errors = Fear or shoes; leaning on one leg. What stops it is asked.
msg-item-function_squat_depth-otherwise = Not able: sit and stand five times from a chair. Cannot stand: left out.

msg-item-function_squat_pain_site-short = Squat, where it hurts
msg-item-function_squat_pain_site-how = At the lowest place: all places of this side that hurt.
msg-item-function_squat_pain_site-purpose = Behind the hip speaks for a worn hip; groin for pinching at the front of the joint; front of the knee for the kneecap.
msg-item-function_squat_pain_site-care = Not where a fracture, a slip, a stress fracture, a torn extensor tendon, a locked or freshly unstable knee, a hot joint, a hot numb foot or a clot is thought of, nor for who is unsteady.
msg-item-function_squat_pain_site-errors = Asked after standing up.
msg-item-function_squat_pain_site-otherwise = Not able to squat: on rising from a chair.

msg-item-function_squat_heels_lift-short = Squat, heel lifts
msg-item-function_squat_heels_lift-how = From the side at the lowest place. Yes when this heel leaves the floor.
msg-item-function_squat_heels_lift-purpose = Stiff ankle or short calf.
msg-item-function_squat_heels_lift-care = Not where a fracture, a slip, a stress fracture, a torn extensor tendon, a locked or freshly unstable knee, a hot joint, a hot numb foot or a clot is thought of, nor for who is unsteady.
msg-item-function_squat_heels_lift-errors = Feet turned out hide it.
msg-item-function_squat_heels_lift-otherwise = Not able to squat: knee to wall.

msg-item-function_rise_from_squat-short = Rises from a squat
msg-item-function_rise_from_squat-how = From as low as they came, without hands if possible.
msg-item-function_rise_from_squat-purpose = Front of the thigh (L3, L4) and glutei: a quick look.
msg-item-function_rise_from_squat-care = Not where a fracture, a slip, a stress fracture, a torn extensor tendon, a locked or freshly unstable knee, a hot joint, a hot numb foot or a clot is thought of, nor for who is unsteady.
msg-item-function_rise_from_squat-errors = Pulled up by the rail.
msg-item-function_rise_from_squat-otherwise = Not able to squat: from a chair.

msg-item-function_rise_from_floor-short = Gets up from the floor
msg-item-function_rise_from_floor-how = Child at play or grown-up from sitting on the floor: straight up; over one knee; hands climb up the own thighs; with help; not at all.
msg-item-function_rise_from_floor-purpose = Hands climbing up the thighs: weak muscles round hips and thighs on both sides. For field work and prayer as well.
msg-item-function_rise_from_floor-care = Not where a fracture, a slip, a stress fracture, a torn extensor tendon, a locked or freshly unstable knee, a hot joint, a hot numb foot or a clot is thought of, nor for who is unsteady.
msg-item-function_rise_from_floor-errors = A child copies others: watch it alone.
msg-item-function_rise_from_floor-otherwise = Cannot get down: not done, unable.

msg-item-function_single_leg_squat-short = Squat on one leg, how it looks
msg-item-function_single_leg_squat-how = Only after the squat on two legs went well. Fingertip on a wall, small bend of this knee and back, some times. All that is seen from in front.
msg-item-function_single_leg_squat-purpose = Control of hip and knee in people who run and jump.
msg-item-function_single_leg_squat-care = Not where a fracture, a slip, a stress fracture, a torn extensor tendon, a locked or freshly unstable knee, a hot joint, a hot numb foot or a clot is thought of, nor for who is unsteady. Not after an operation without the surgeon's word.
msg-item-function_single_leg_squat-errors = Judged at one try; depth differs between sides.
msg-item-function_single_leg_squat-otherwise = Not able: step down from a low step, or left out.

msg-item-function_step_down_quality-short = Step down, how it looks
msg-item-function_step_down_quality-how = On a low step on THIS leg, the other heel is lowered to touch the floor and comes back, some times. All that is seen from in front.
msg-item-function_step_down_quality-purpose = Control of hip and knee as on stairs.
msg-item-function_step_down_quality-care = Not where a fracture, a slip, a stress fracture, a torn extensor tendon, a locked or freshly unstable knee, a hot joint, a hot numb foot or a clot is thought of, nor for who is unsteady.
msg-item-function_step_down_quality-errors = The other foot takes weight. Side of the standing leg is recorded, not of the leg that goes down.
msg-item-function_step_down_quality-otherwise = No step: the squat on one leg. Cannot stand: left out.

msg-item-function_hop_distance-short = Hop on one leg for distance
msg-item-function_hop_distance-how = Hands free, toe at a line; one hop forward on this leg, landing held still; toe to heel at landing. Sound leg first; some trials before.
msg-item-function_hop_distance-purpose = Return to sport: compared with the other leg.
msg-item-function_hop_distance-care = Not where a fracture, a slip, a stress fracture, a torn extensor tendon, a locked or freshly unstable knee, a hot joint, a hot numb foot or a clot is thought of, nor for who is unsteady. Not in a runner with groin pain, nor with any stress fracture thought of, a fresh sprain, a torn heel cord or in a child with a sore hip; not before power and single-leg squat went well.
msg-item-function_hop_distance-errors = Landing not held; the other foot touches; shoes changed.
msg-item-function_hop_distance-otherwise = Not ready for it or unwilling: squat on one leg. One limb: own past only.

msg-item-function_heel_rise_count_incline-short = Heel rises on one leg, on a slope, count
msg-item-function_heel_rise_count_incline-how = Barefoot on a slope of 10 degrees, toes up, fingertips on a wall, knee straight. One rise each second (60 a minute) to the same height until it drops to less than half, the knee bends or the beat is lost. Sound leg first.
msg-item-function_heel_rise_count_incline-purpose = Endurance of the calf by age and sex; more than 6 between legs is beyond the error of the test. On flat ground it is another quantity, an item of the ankle.
msg-item-function_heel_rise_count_incline-care = Not where the heel cord may be torn or a stress fracture is thought of, nor on a hot numb foot, nor with a fracture of ankle or foot or a clot not settled. One or more rises leave a torn heel cord not excluded.
msg-item-function_heel_rise_count_incline-errors = Pulling with the hands; falling height; counted faster than the beat.
msg-item-function_heel_rise_count_incline-otherwise = No slope: on flat ground (ankle). Cannot stand: pushing the foot down by hand, small losses are not seen.

msg-item-function_activity_1-short = Activity that matters, first
msg-item-function_activity_1-how = In the person's own words: something they need or want to do and cannot do as before. At most three; the same ones again at each review, word for word.
msg-item-function_activity_1-purpose = What the visit is for; what the letter says the person can no longer do.
msg-item-function_activity_1-errors = The examiner chooses for them. A pain instead of an activity.
msg-item-function_activity_1-otherwise = A child: what it played before; the parent names it and it is written who did.

msg-item-function_activity_1_ability-short = Activity, first: how well, 0 to 10
msg-item-function_activity_1_ability-how = How well does it go now? 0: not at all; 10: as before it began. The person says the number; fingers or a drawn line help.
msg-item-function_activity_1_ability-purpose = Repeated at review. What change matters is not judged without a source.
msg-item-function_activity_1_ability-errors = The earlier number is shown first. Pain is rated instead.
msg-item-function_activity_1_ability-otherwise = Cannot use numbers: more, same, less than last time, in the remark.

msg-item-function_activity_2-short = Activity that matters, second
msg-item-function_activity_2-how = In the person's own words: something they need or want to do and cannot do as before. At most three; the same ones again at each review, word for word.
msg-item-function_activity_2-purpose = What the visit is for; what the letter says the person can no longer do.
msg-item-function_activity_2-errors = The examiner chooses for them. A pain instead of an activity.
msg-item-function_activity_2-otherwise = A child: what it played before; the parent names it and it is written who did.

msg-item-function_activity_2_ability-short = Activity, second: how well, 0 to 10
msg-item-function_activity_2_ability-how = How well does it go now? 0: not at all; 10: as before it began. The person says the number; fingers or a drawn line help.
msg-item-function_activity_2_ability-purpose = Repeated at review. What change matters is not judged without a source.
msg-item-function_activity_2_ability-errors = The earlier number is shown first. Pain is rated instead.
msg-item-function_activity_2_ability-otherwise = Cannot use numbers: more, same, less than last time, in the remark.

msg-item-function_activity_3-short = Activity that matters, third
msg-item-function_activity_3-how = In the person's own words: something they need or want to do and cannot do as before. At most three; the same ones again at each review, word for word.
msg-item-function_activity_3-purpose = What the visit is for; what the letter says the person can no longer do.
msg-item-function_activity_3-errors = The examiner chooses for them. A pain instead of an activity.
msg-item-function_activity_3-otherwise = A child: what it played before; the parent names it and it is written who did.

msg-item-function_activity_3_ability-short = Activity, third: how well, 0 to 10
msg-item-function_activity_3_ability-how = How well does it go now? 0: not at all; 10: as before it began. The person says the number; fingers or a drawn line help.
msg-item-function_activity_3_ability-purpose = Repeated at review. What change matters is not judged without a source.
msg-item-function_activity_3_ability-errors = The earlier number is shown first. Pain is rated instead.
msg-item-function_activity_3_ability-otherwise = Cannot use numbers: more, same, less than last time, in the remark.
