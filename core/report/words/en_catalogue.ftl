# What the catalogue says: labels, techniques and cautions of items, meanings of grades and choices.
# A dot in a message name is a dash here. Language: English. Reviewed by: nobody yet.

msg-item-knee_flexion_active-short = Knee flexion, active
msg-item-knee_flexion_active-how = Lying on the back, the person bends the knee as far as it goes with the heel sliding on the couch. Long goniometer: centre over the lateral epicondyle, one arm to the greater trochanter, the other to the lateral malleolus. Name the position when it is another one. The number is how far the knee is bent, 0 being straight.

msg-item-knee_flexion_passive-short = Knee flexion, passive
msg-item-knee_flexion_passive-how = Lying on the back, the examiner bends the knee until it stops, and says how the end feels. Long goniometer: centre over the lateral epicondyle, one arm to the greater trochanter, the other to the lateral malleolus.
msg-item-knee_flexion_passive-care = Do not force it when the knee cannot be straightened actively or a fracture is open.

msg-item-knee_extension_active-short = Knee extension, active
msg-item-knee_extension_active-how = Lying on the back or seated, the person straightens the knee as far as it goes. Long goniometer: centre over the lateral epicondyle, one arm to the greater trochanter, the other to the lateral malleolus. Toward extension: 0 is straight, 5 is five degrees beyond straight, -20 stops twenty degrees short.

msg-item-knee_extension_passive-short = Knee extension, passive
msg-item-knee_extension_passive-how = Lying on the back with the heel propped, the knee is let down or gently pressed to its end; say how the end feels. Long goniometer: centre over the lateral epicondyle, one arm to the greater trochanter, the other to the lateral malleolus. Toward extension: 0 is straight, 5 is five degrees beyond straight, -20 stops twenty degrees short.
msg-item-knee_extension_passive-care = A springy stop short of straight may be a block: do not press through it.

msg-item-knee_arc_active-short = Knee motion in three numbers, active
msg-item-knee_arc_active-how = Written as extension-zero-flexion or flexion-zero-extension: name the order. 5-0-140 goes five degrees beyond straight and bends to 140; 0-20-110 stops twenty degrees short and bends to 110; 0-15-15 does not move. It is recorded as extension and flexion.

msg-item-knee_arc_passive-short = Knee motion in three numbers, passive
msg-item-knee_arc_passive-how = Written as extension-zero-flexion or flexion-zero-extension: name the order. 5-0-140 goes five degrees beyond straight and bends to 140; 0-20-110 stops twenty degrees short and bends to 110; 0-15-15 does not move. It is recorded as extension and flexion.

msg-item-knee_effusion_stroke-short = Effusion, stroke test
msg-item-knee_effusion_stroke-how = Lying on the back, knee straight and relaxed. Stroke up the inner side two or three times from below the joint line into the pouch above the kneecap and watch; then stroke once down the outer side. Graded by the wave that comes back into the inner hollow.
msg-item-knee_effusion_stroke-care = A knee that is not straight, a thick fat pad or swelling in front of the kneecap misleads.

msg-item-knee_lachman-short = Lachman test
msg-item-knee_lachman-how = Lying on the back, knee bent 20 to 30 degrees, heel on the couch. One hand holds the thigh just above the kneecap, the other holds the shin high, thumb by the tubercle, and draws it straight forward in small quick pulls. Judge how many millimetres further than the other side, and how it ends: firm, soft or not at all.
msg-item-knee_lachman-care = Look for a tibia that has sagged back first. Guarding, a tense effusion or a locked knee hide laxity: record it as guarded.

msg-item-knee_mcmurray-short = McMurray test
msg-item-knee_mcmurray-how = Lying on the back, hip and knee fully bent, fingers on the joint line. Turn the shin out and straighten slowly to about 90 for the inner meniscus; turn it in for the outer one. Positive: a thud or click that is felt with the familiar pain on the joint line. Pain alone is the loose reading: write it in the remark.
msg-item-knee_mcmurray-care = Not through a block, not in a tense painful knee.

msg-item-knee_joint_line_medial_tender-short = Inner joint line tender
msg-item-knee_joint_line_medial_tender-how = Knee bent 90, thumb along the inner joint line from front to back. Tender on the line, not above it or below it.

msg-item-knee_fibular_head_tender-short = Head of the fibula tender
msg-item-knee_fibular_head_tender-how = Press with one finger on the bone, the sound side first. Yes only for tenderness of the bone.

msg-item-knee_patella_tender-short = Kneecap tender
msg-item-knee_patella_tender-how = Press with one finger on the bone, the sound side first. Yes for tenderness of the kneecap, whether or not other bone is tender too.

msg-item-knee_bone_tender_elsewhere-short = Other bone of the knee tender
msg-item-knee_bone_tender_elsewhere-how = Press with one finger on the bone, the sound side first. Femur and tibia near the joint, other than the kneecap and the head of the fibula.

msg-item-nerve_power_knee_extension-short = Power, knee extension
msg-item-nerve_power_knee_extension-how = Seated, the person straightens the knee and holds it against the hand above the ankle. Graded 0 to 5; with minus or plus at 4.
msg-item-nerve_power_knee_extension-care = Pain lowers effort: mark the effort as limited.

msg-item-nerve_strength_knee_extension-short = Strength, knee extension (dynamometer)
msg-item-nerve_strength_knee_extension-how = Seated, knee bent 90, the dynamometer against the shin just above the ankle, held by a strap or the examiner; push for three to five seconds. The best of up to three pushes counts.

msg-item-vessel_pulse_dorsalis_pedis-short = Pulse on the back of the foot
msg-item-vessel_pulse_dorsalis_pedis-how = Feel over the tarsal bones, just outside the tendon that lifts the great toe; both feet. Missing from birth in a few people.

msg-item-vessel_pressure_posterior_tibial-short = Pressure, posterior tibial artery
msg-item-vessel_pressure_posterior_tibial-how = Lying still for some minutes, cuff just above the ankle, probe behind the inner ankle bone. The pressure at which the sound returns. No sound at all: signal absent.
msg-item-vessel_pressure_posterior_tibial-care = Not over an open wound, and not over a painful calf that may hold a clot.

msg-item-vessel_pressure_arm-short = Pressure, arm
msg-item-vessel_pressure_arm-how = Lying as for the ankle, cuff on the upper arm. The pressure at which the sound returns.

msg-item-leg_thigh_girth_10cm-short = Thigh girth, 10 cm above the kneecap
msg-item-leg_thigh_girth_10cm-how = Lying, knee straight and muscles relaxed. Mark the skin 10 cm above the upper edge of the kneecap on both sides, lay the tape without pulling. Another level is another quantity.

msg-item-general_temperature-short = Temperature
msg-item-general_temperature-how = By thermometer; write where it was taken in the remark. No fever says nothing against an infected joint.

msg-item-general_body_mass-short = Body mass
msg-item-general_body_mass-how = Weighed, without shoes and heavy clothes. Said by the person: mark the origin as self reported.

msg-item-function_single_leg_stance_eyes_open-short = Standing on one leg, eyes open
msg-item-function_single_leg_stance_eyes_open-how = Bare foot, arms free, a hand ready to catch. Time until the other foot touches the floor or the standing foot moves. The side is the leg stood on; the best of up to three.
msg-item-function_single_leg_stance_eyes_open-care = Not where the person cannot stand unaided or a fracture is open.

msg-item-gait_steps_now-short = Steps taken now (0 to 4)
msg-item-gait_steps_now-how = Four steps: weight is transferred twice on to each foot. Limping counts as walking; a stick or a hand to hold does not make it fewer. Count up to four, here and now.
msg-item-gait_steps_now-care = Not where the hip, the pelvis or the spine may be broken.

msg-item-history_steps_at_once-short = Could take four steps at once after the injury
msg-item-history_steps_at_once-how = Four steps: weight is transferred twice on to each foot. Limping counts as walking; a stick or a hand to hold does not make it fewer. Yes, no, or not sure.

msg-item-history_mechanism-short = How it happened
msg-item-history_mechanism-how = The one that fits best; the own words stand beside it.

msg-item-history_knee_rule_exclusions-short = Anything that puts the knee rule aside
msg-item-history_knee_rule_exclusions-how = All that hold. Only a superficial skin injury; seen again for the same injury; altered consciousness; paraplegia; several injuries at once; or none of these.

msg-item-general_answers_reliable-short = Answers can be relied on
msg-item-general_answers_reliable-how = No where drink, drugs, confusion, pain elsewhere or lost feeling make what is said or felt unreliable.

msg-item-body_pregnancy-short = Pregnant
msg-item-body_pregnancy-how = Asked, not assumed. Not asked is never no.

msg-item-body_knee_fused-short = Knee fused
msg-item-body_knee_fused-how = An operation or a disease has joined the bones: the knee does not move.

msg-item-body_knee_replaced-short = Knee replaced
msg-item-body_knee_replaced-how = An artificial knee joint, whole or in part. Native norms and ligament figures do not hold for it.

msg-item-history_own_words-short = In the person's own words
msg-item-history_own_words-how = What happened and what troubles most, as it is said. The text is kept as written and is not interpreted.

msg-choice-no_injury = No injury
msg-choice-twist = Twist
msg-choice-direct_blow = Direct blow
msg-choice-fall = Fall
msg-choice-jump_or_landing = Jump or landing
msg-choice-dashboard = Shin against a dashboard or the ground, knee bent
msg-choice-hyperextension = Bent backwards
msg-choice-vehicle = Struck by a vehicle or in one
msg-choice-other_mechanism = Something else
msg-choice-not_known = Not known
msg-choice-none_of_these = None of these
msg-choice-superficial_only = Only a superficial skin injury
msg-choice-repeat_visit = Seen again for the same injury
msg-choice-altered_consciousness = Altered consciousness
msg-choice-paraplegia = Paraplegia
msg-choice-multiple_injuries = Several injuries at once

msg-scale-effusion_stroke-title = Effusion, stroke test
msg-scale-effusion_stroke-0 = No wave on the down-stroke
msg-scale-effusion_stroke-trace = Small wave on the inner side on the down-stroke
msg-scale-effusion_stroke-1_plus = Larger bulge on the down-stroke
msg-scale-effusion_stroke-2_plus = The inner hollow fills again by itself after the up-stroke
msg-scale-effusion_stroke-3_plus = So much fluid that it cannot be moved out

msg-scale-laxity_difference-title = Laxity against the other side, in whole millimetres
msg-scale-laxity_difference-0 = Up to 2 mm more than the other side
msg-scale-laxity_difference-1 = 3 to 5 mm more than the other side
msg-scale-laxity_difference-2 = 6 to 10 mm more than the other side
msg-scale-laxity_difference-3 = More than 10 mm more than the other side

msg-scale-mrc_1976-title = Muscle power
msg-scale-mrc_1976-0 = No contraction
msg-scale-mrc_1976-1 = A flicker that is seen or felt, no movement
msg-scale-mrc_1976-2 = Moves with gravity taken away
msg-scale-mrc_1976-3 = Moves against gravity, no resistance
msg-scale-mrc_1976-4 = Moves against gravity and resistance, weaker than expected
msg-scale-mrc_1976-5 = Full power

msg-scale-pulse_0-3-title = Pulse
msg-scale-pulse_0-3-0 = Not felt
msg-scale-pulse_0-3-1 = Diminished
msg-scale-pulse_0-3-2 = As expected
msg-scale-pulse_0-3-3 = Bounding
