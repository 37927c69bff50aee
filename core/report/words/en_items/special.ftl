# What changes the rules of reading: a limb that is not there, a joint that was fused or replaced, metal, plaster, a chair, lost feeling,
# pregnancy, joints that move far. A dot in a message name is a dash here. Language: English. Reviewed by: nobody yet.

msg-item-body_limb_level-short = Level of an amputation
msg-item-body_limb_level-purpose = Says what is not there, so that nothing below it is asked for or read as a gap.
msg-item-body_limb_level-how = The highest level at which the limb ends, whether after an operation, an injury or from birth. Look at skin, scar, bony end and the joint above, with the prosthesis off.

msg-item-body_prosthesis-short = Wears a prosthesis today
msg-item-body_prosthesis-purpose = Standing, walking and steps are then those of the person with the prosthesis.
msg-item-body_prosthesis-how = Ask, and look. Look at the skin under the socket with the prosthesis off. Write beside each count of steps whether it was worn.
msg-item-body_prosthesis-yes = worn today
msg-item-body_prosthesis-no = not worn today

msg-item-body_hip_fused-short = Hip fused
msg-item-body_hip_fused-purpose = A joint that was fused has an angle and no motion: it is compared with nobody.
msg-item-body_hip_fused-how = An operation or a disease has joined the bones: the hip does not move, and the pelvis and back move for it. Write the angle at which it stands as its motion.

msg-item-body_ankle_fused-short = Ankle fused
msg-item-body_ankle_fused-purpose = A joint that was fused has an angle and no motion: it is compared with nobody.
msg-item-body_ankle_fused-how = An operation or a disease has joined the bones: the ankle does not move, and the middle of the foot may move for it. Write the angle at which it stands as its motion.

msg-item-body_hip_replaced-short = Hip replaced
msg-item-body_hip_replaced-purpose = Native norms and the figures of tests do not hold for it; infection, loosening and a break beside it stay open.
msg-item-body_hip_replaced-how = An artificial hip, whole or half. Ask when, from where it was opened, and which movements were advised against.

msg-item-body_ankle_replaced-short = Ankle replaced
msg-item-body_ankle_replaced-purpose = Native norms and the figures of tests do not hold for it; infection, loosening and a break beside it stay open.
msg-item-body_ankle_replaced-how = An artificial ankle joint. Ask when.

msg-item-body_implant-short = Metal in the bone
msg-item-body_implant-purpose = A plate, nail or screw: an infection can sit on it, and a bone can break at its end.
msg-item-body_implant-how = Ask for operations, and look for scars. Name the bones. A replaced joint is an item of its own.

msg-item-body_contracture-short = Joint does not reach neutral, for long (contracture)
msg-item-body_contracture-purpose = A joint that does not come back falsifies length and alignment of the limb.
msg-item-body_contracture-how = The joint does not reach its neutral place by hand, slowly and without force, and it is old. Not in the first months of life: hips and knees of a newborn do not straighten fully. Name the joints; write the angle as passive motion. Lay the other leg in the same place before lengths are compared.
msg-item-body_contracture-care = Not stretched to try it, and not in a joint that is hot, freshly hurt or freshly operated. A block that came suddenly is no contracture: it has its own item.

msg-item-body_cast-short = Covered by plaster, splint or dressing
msg-item-body_cast-purpose = What is covered was not seen: it is a reason, and no finding.
msg-item-body_cast-how = What cannot be taken off today. Name the parts that it covers. Toes stay in view: colour, warmth, movement, feeling.
msg-item-body_cast-care = Pain that rises under it, toes pale, blue, numb or painful when moved: split it down to the skin along its whole length, the limb at the height of the heart, and look again.

msg-item-body_chair_user-short = Took no steps before this (wheelchair, hands and knees)
msg-item-body_chair_user-purpose = A rule about steps asks for an ability that was lost; who did not walk before has not lost it now.
msg-item-body_chair_user-how = Ask how the person moved about before this trouble began. Yes: took no steps, also before; who moves on hands or knees as well, with a remark. No: took steps, with or without help.
msg-item-body_chair_user-yes = took no steps, also before
msg-item-body_chair_user-no = took steps before this

msg-item-body_paralysis-short = Leg paralysed or weak for long
msg-item-body_paralysis-purpose = Active motion, muscle and girth are then neither compared with other people nor with the other leg.
msg-item-body_paralysis-how = Since childhood, after a stroke, an injury of the back or of a nerve. What is new is asked and written apart: a new weakness is a danger sign.
msg-item-body_paralysis-yes = for long
msg-item-body_paralysis-no = not known to be

msg-item-body_spastic_tone-short = Leg spastic
msg-item-body_spastic_tone-purpose = The end of a motion depends on how fast the joint is moved.
msg-item-body_spastic_tone-how = Move the joint slowly, then again a little faster: a catch that a slow movement does not have. Measure the slow end, the person warm and lying at ease.
msg-item-body_spastic_tone-care = Not in a limb where a bone may be broken, a joint out of place, hot or freshly operated, nor where a clot is open. Stop at pain.
msg-item-body_spastic_tone-yes = a catch when moved faster
msg-item-body_spastic_tone-no = no catch

msg-item-body_feeling_lost-short = Feeling lost in the foot
msg-item-body_feeling_lost-purpose = Where pain is not felt, no tenderness means nothing.
msg-item-body_feeling_lost-how = Known from before, or found today at the sole. Any cause: diabetes, leprosy, back, nerve. Each foot by itself.
msg-item-body_feeling_lost-yes = lost, in part or wholly
msg-item-body_feeling_lost-no = felt

msg-item-body_pregnancy_weeks-short = Weeks of pregnancy
msg-item-body_pregnancy_weeks-purpose = From about 20 weeks nobody lies face down, and flat on the back in short turns alone.
msg-item-body_pregnancy_weeks-how = Completed weeks, as told or as written in the card.

msg-item-body_hypermobility-short = Joints that move far: signs of nine
msg-item-body_hypermobility-purpose = Who moves far everywhere is compared with the own other side and not with a table.
msg-item-body_hypermobility-how = One point for each little finger, thumb, elbow and knee, and one for the trunk, as the five items below say. Count those that are there. A sign that cannot be tried (missing, operated, sore) is not a no: name it in the remark.
msg-item-body_hypermobility-care = Each sign has its own caution below. A low count does not say that no joint moves far.

msg-item-body_beighton_little_finger-short = Little finger bends back beyond 90
msg-item-body_beighton_little_finger-purpose = One of nine signs of joints that move far.
msg-item-body_beighton_little_finger-how = Forearm and palm flat on the table; lift the little finger backward by hand, without force. Yes where it passes 90 degrees.
msg-item-body_beighton_little_finger-care = Not where hand or finger hurts.

msg-item-body_beighton_thumb-short = Thumb reaches the forearm
msg-item-body_beighton_thumb-purpose = One of nine signs of joints that move far.
msg-item-body_beighton_thumb-how = Wrist bent toward the palm, elbow straight: the thumb is laid toward the palm side of the forearm, without force. Yes where it touches.
msg-item-body_beighton_thumb-care = Not where hand or wrist hurts.

msg-item-body_beighton_elbow-short = Elbow goes beyond straight by more than 10
msg-item-body_beighton_elbow-purpose = One of nine signs of joints that move far.
msg-item-body_beighton_elbow-how = Arm forward, palm up, straighten. Yes where it passes straight by more than 10 degrees.
msg-item-body_beighton_elbow-care = Not where the elbow hurts.

msg-item-body_beighton_knee-short = Knee goes beyond straight by more than 10
msg-item-body_beighton_knee-purpose = One of nine signs of joints that move far.
msg-item-body_beighton_knee-how = Lying or standing, straighten. Yes where it passes straight by more than 10 degrees.
msg-item-body_beighton_knee-care = Not in a knee hurt lately, operated, hot or locked, nor where a bone of the leg may be broken.

msg-item-body_beighton_trunk-short = Palms flat on the floor, knees straight
msg-item-body_beighton_trunk-purpose = One of nine signs of joints that move far.
msg-item-body_beighton_trunk-how = Standing, bend forward with straight knees. Yes where both palms lie flat on the floor.
msg-item-body_beighton_trunk-care = Not with acute pain of the back or after an injury of it, nor where standing is withheld. A replaced hip is not bent so far.
msg-item-body_beighton_trunk-otherwise = Who cannot stand: not done; the count is then of eight signs.

## Choices.

msg-choice-limb_whole = Whole limb
msg-choice-at_hip = At the hip
msg-choice-through_thigh = Through the thigh
msg-choice-at_knee = At the knee
msg-choice-through_shin = Through the shin
msg-choice-at_ankle = At the ankle
msg-choice-part_of_foot = Part of the foot
msg-choice-toes_only = Toes
msg-choice-metal_pelvis = Pelvis
msg-choice-metal_hip = Neck of the femur
msg-choice-metal_thigh = Shaft of the femur
msg-choice-metal_kneecap = Kneecap
msg-choice-metal_shin = Shin bones
msg-choice-metal_ankle = Ankle
msg-choice-metal_foot = Foot
msg-choice-contracture_hip = Hip
msg-choice-contracture_knee = Knee
msg-choice-contracture_ankle = Ankle
msg-choice-contracture_toes = Toes
msg-choice-cast_hip = Hip
msg-choice-cast_thigh = Thigh
msg-choice-cast_knee = Knee
msg-choice-cast_shin = Lower leg
msg-choice-cast_ankle = Ankle
msg-choice-cast_foot = Foot

## What such a body changes, said once on the page.

msg-body-limb_at_hip = Limb ends at the hip{ $side } nothing below it is asked for; the other leg has no other side to compare with
msg-body-limb_through_thigh = Limb ends in the thigh{ $side } knee, lower leg and foot are not there; the other leg has no other side to compare with below that
msg-body-limb_at_knee = Limb ends at the knee{ $side } knee, lower leg and foot are not there; the other leg has no other side to compare with below that
msg-body-limb_through_shin = Limb ends in the shin{ $side } ankle and foot are not there; the other foot has no other side to compare with
msg-body-limb_at_ankle = Limb ends at the ankle{ $side } the foot is not there; the other foot has no other side to compare with
msg-body-limb_part_of_foot = Part of the foot is missing{ $side } the feet are not compared with each other
msg-body-limb_toes = Toes are missing{ $side } the feet are not compared with each other
msg-body-prosthesis = Prosthesis worn{ $side } steps and gait are those with the prosthesis
msg-body-hip_fused = Hip fused{ $side } its angle is a value, compared with nobody; tests of the hip tell nothing
msg-body-knee_fused = Knee fused{ $side } its angle is a value, compared with nobody; tests of its ligaments and menisci do not apply
msg-body-ankle_fused = Ankle fused{ $side } its angle is a value, compared with nobody; tests of the ankle tell nothing
msg-body-hip_replaced = Hip replaced{ $side } native norms and figures of tests do not hold; infection, loosening and a break beside it stay open
msg-body-knee_replaced = Knee replaced{ $side } native norms and figures of tests do not hold; infection, loosening and a break beside it stay open
msg-body-ankle_replaced = Ankle replaced{ $side } native norms and figures of tests do not hold; infection, loosening and a break beside it stay open
msg-body-implant = Metal in the bone{ $side } an infection on it, and a break at its end, stay open
msg-body-contracture_hip = Hip fixed{ $side } length of the leg and tilt of the pelvis are not what they seem; lay the other leg in the same place
msg-body-contracture_knee = Knee fixed{ $side } length and alignment of the leg are not what they seem; lay the other leg in the same place
msg-body-contracture_ankle = Ankle fixed{ $side } length of the leg when standing is not what it seems
msg-body-contracture_toes = Toes fixed{ $side } look for pressure on the skin
msg-body-cast = Covered by plaster, splint or dressing{ $side } what is under it was not seen
msg-body-chair_user = Took no steps before this: not walking is no new loss, and settles no rule; steps standing are replaced or left out
msg-body-paralysis = Paralysed or weak for long{ $side } active motion, strength and girth are compared with nobody; new weakness stays a danger sign
msg-body-spastic_tone = Spastic{ $side } the end of a motion depends on how fast it was moved; not compared with other people
msg-body-feeling_lost = Feeling lost in the foot{ $side } a foot that does not hurt when pressed tells nothing
msg-body-pregnancy = Pregnant: the rules were not made for it; what speaks for a film stands
msg-body-pregnancy_late = Pregnant, 20 weeks or more, or weeks not recorded: not face down; flat on the back in short turns alone, tilted to the left or half sitting
msg-body-hypermobile = Joints that move far, { $count } signs of nine: the own other side is compared with, other people are not
msg-body-under_one = Under one year: steps that need standing are left out; figures of older people do not hold
msg-body-under_two = Under two years: outside every rule here; figures of older people do not hold

msg-motion-no_norm_body = { $what }{ $side } { $reading }: not compared with other people ({ $state })
msg-body-state-hypermobile = joints that move far
msg-body-state-paralysis = paralysed or weak for long
msg-body-state-spastic_tone = spastic
msg-body-state-limb_part_of_foot = part of the foot missing
msg-body-state-limb_toes = toes missing
msg-body-state-contracture_hip = hip fixed
msg-body-state-contracture_knee = knee fixed

## What does not fit together.

msg-contradiction-finding_below_level = The limb ends above, but something was found below: the wrong side, or the wrong level?
msg-contradiction-pulse_below_level = The limb ends above, but a pulse was felt below: the wrong side, or the wrong level?
msg-contradiction-fused_and_motion = Fused, but it moves from { $from_deg } to { $to_deg }: is it fused, or did a neighbouring joint move?
msg-contradiction-film_both = A film that shows a break of this part, and one that does not: the same film, or two?
msg-contradiction-cast_and_skin = Covered by plaster, splint or dressing, but looked at: was it taken off?
msg-contradiction-chair_and_steps = Took no steps before this, but four steps were counted: which holds?
msg-contradiction-age_and_steps = Under eight months, but four steps were counted: is the birth right, or the count?
msg-contradiction-weeks_without_pregnancy = Weeks of pregnancy, but not pregnant: which holds?
msg-contradiction-counts_of_signs = Two counts of the signs of nine are not the same: which holds?
msg-contradiction-signs_and_count = The count of signs of nine is not that of the signs recorded: which holds?
msg-contradiction-sensitive_through_family = Answered no through a relative or a child: was the person asked alone, or does it stay not asked?
msg-contradiction-consent_and_record = Consent to record was refused or taken back, but findings are recorded: was the person asked again?
