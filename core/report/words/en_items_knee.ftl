# What the catalogue says of the knee looked at, felt and moved: label, technique, what counts, when not, what goes wrong often.
# A dot in a message name is a dash here. Language: English. Reviewed by: nobody yet.

msg-item-knee_look_deformity-short = Deformity of the knee
msg-item-knee_look_deformity-how = Look at both knees from the front and the side before touching, legs bare to the groin. Yes where bones stand out of line, or the shape changed with the injury. A kneecap lying on the outer side counts.
msg-item-knee_look_deformity-care = Out of line after an injury: feel the foot pulses first and move nothing.
msg-item-knee_look_deformity-errors = A bent knee held for comfort looks out of line; swelling alone is no deformity.

msg-item-knee_look_open_wound-short = Open wound at the knee
msg-item-knee_look_open_wound-how = Look all round, also at the back. Yes for any break of the skin deeper than a graze on the same part of the limb.
msg-item-knee_look_open_wound-care = Near a break of the bone it counts as open until shown otherwise: cover it, look once.

msg-item-knee_look_swelling_spread-short = Where the swelling is
msg-item-knee_look_swelling_spread-how = Look at both knees, lying or seated: none; local (one spot, such as in front of the kneecap or over one ligament); the whole knee (hollows beside the kneecap filled, a horseshoe above it); the whole limb.
msg-item-knee_look_swelling_spread-errors = A pouch in front of the kneecap (bursa) is local and is no fluid in the joint; a thick fat pad fills the hollows on both sides alike.

msg-item-knee_look_skin_hot_red-short = Skin hot or red
msg-item-knee_look_skin_hot_red-how = Lay the back of the hand on both knees, uncovered for some minutes, above, on and below the kneecap; look for redness. Yes when warmer than the other knee, or red.
msg-item-knee_look_skin_hot_red-errors = A bandage, sun or a run warms both; dark skin hides redness: go by warmth and shine.

msg-item-knee_bruising-short = Bruising at the knee
msg-item-knee_bruising-how = Look all round and down to the ankle: blood sinks. Say where in the remark.

msg-item-knee_look_patella_height-short = Height of the kneecap
msg-item-knee_look_patella_height-how = Compare both sides, lying with the knee straight and seated with the knee bent 90. Level; high (nearer the thigh than the other side); low; or lying to the outer side.
msg-item-knee_look_patella_height-care = Low with a hollow above it speaks for the thigh tendon, high with a hollow below it for the tendon to the shin: raise the straight leg before anything is bent.
msg-item-knee_look_patella_height-errors = Both sides torn look alike; swelling hides the edge: feel for it.

msg-item-knee_alignment_standing-short = Line of the leg, standing
msg-item-knee_alignment_standing-how = Bare legs, feet pointing forward, inner ankle bones or knees just touching. From the front: straight, bowed, or knock-kneed; from the side: straight, bent backwards, or held bent. The one that stands out most; degrees or finger widths in the remark.
msg-item-knee_alignment_standing-care = Not where standing is withheld.
msg-item-knee_alignment_standing-errors = Feet turned out, or a kneecap that looks inward, make a straight leg look bowed or knock-kneed.

msg-item-knee_effusion_stroke-short = Effusion, stroke test
msg-item-knee_effusion_stroke-how = Lying on the back, knee straight and relaxed. Stroke up the inner side two or three times from below the joint line into the pouch above the kneecap and watch; then stroke once down the outer side. Graded by the wave that comes back into the inner hollow.
msg-item-knee_effusion_stroke-positive = 1+ or more. Trace is recorded and counts as unsure.
msg-item-knee_effusion_stroke-care = A knee that is not straight, a thick fat pad or swelling in front of the kneecap misleads.
msg-item-knee_effusion_stroke-errors = Knee not fully straight, muscles not slack, a fat pad taken for fluid, a bursa in front of the kneecap.

msg-item-knee_effusion_ballottement-short = Effusion, knock of the kneecap
msg-item-knee_effusion_ballottement-how = Lying, knee straight. One hand empties the pouch above the kneecap downward and stays there; a finger of the other pushes the kneecap sharply back. Felt: it sinks, knocks on the thigh bone and comes up again.
msg-item-knee_effusion_ballottement-positive = A knock of the kneecap on the thigh bone that is felt.
msg-item-knee_effusion_ballottement-care = Not hard on a tender kneecap.
msg-item-knee_effusion_ballottement-errors = In a tense knee the kneecap does not knock, nor with a little fluid: no knock says little. Stroke test first.
msg-item-knee_effusion_ballottement-yes = the kneecap knocks on the thigh bone
msg-item-knee_effusion_ballottement-no = the kneecap does not knock

msg-item-knee_effusion_fluctuation-short = Effusion, wave between two hands
msg-item-knee_effusion_fluctuation-how = Lying, knee straight. One hand presses the pouch above the kneecap, thumb and finger of the other lie beside it; press to and fro. Felt: the push arrives on the other side, both ways.
msg-item-knee_effusion_fluctuation-positive = The push is felt both ways.
msg-item-knee_effusion_fluctuation-errors = For large amounts of fluid only; soft fat carries a push one way.
msg-item-knee_effusion_fluctuation-yes = the push is felt both ways
msg-item-knee_effusion_fluctuation-no = no push is felt across

msg-item-knee_joint_line_medial_tender-short = Inner joint line tender
msg-item-knee_joint_line_medial_tender-how = Knee bent 90, thumb along the inner joint line from front to back. Tender on the line, not above it or below it.
msg-item-knee_joint_line_medial_tender-errors = Tender above the line is the ligament, below it the plateau or the tendons; worn joints are tender all along.

msg-item-knee_joint_line_lateral_tender-short = Outer joint line tender
msg-item-knee_joint_line_lateral_tender-how = Knee bent 90, thumb along the outer joint line from front to back. Tender on the line, not on the head of the fibula and not on the band above.
msg-item-knee_joint_line_lateral_tender-errors = The tendon behind and the band above are taken for the line; worn joints are tender all along.

msg-item-knee_fibular_head_tender-short = Head of the fibula tender
msg-item-knee_fibular_head_tender-how = Press with one finger on the bone, the sound side first. Yes only for tenderness of the bone.

msg-item-knee_patella_tender-short = Kneecap tender
msg-item-knee_patella_tender-how = Press with one finger on the bone, the sound side first. Yes for tenderness of the kneecap, whether or not other bone is tender too.

msg-item-knee_bone_tender_elsewhere-short = Other bone of the knee tender
msg-item-knee_bone_tender_elsewhere-how = Press with one finger on the bone, the sound side first. Femur and tibia near the joint, other than the kneecap and the head of the fibula.

msg-item-knee_tibial_tubercle_tender-short = Tubercle of the shin tender
msg-item-knee_tibial_tubercle_tender-how = Knee bent, press with one finger on the bump where the kneecap's tendon ends, the sound side first.
msg-item-knee_tibial_tubercle_tender-care = After a jump with a pop in a growing person: lift the straight leg before bending.

msg-item-knee_collateral_medial_tender-short = Inner collateral ligament tender
msg-item-knee_collateral_medial_tender-how = Knee slightly bent, one finger along the ligament from the inner knob of the thigh bone to a hand's width below the joint line. Say in the remark at which end.
msg-item-knee_collateral_medial_tender-errors = On the line alone it is the line.

msg-item-knee_collateral_lateral_tender-short = Outer collateral ligament tender
msg-item-knee_collateral_lateral_tender-how = Ankle laid on the other knee: the ligament stands out as a cord between the outer knob of the thigh bone and the head of the fibula. Press along it.
msg-item-knee_collateral_lateral_tender-care = Let the foot be lifted: the nerve runs round the neck of the fibula.

msg-item-knee_adductor_tubercle_tender-short = Inner knob above the knee tender
msg-item-knee_adductor_tubercle_tender-how = Knee slightly bent, press on the small bony knob just above and behind the inner knob of the thigh bone, where the restraint of the kneecap begins.
msg-item-knee_adductor_tubercle_tender-errors = The ligament's upper end lies just below it.

msg-item-knee_patellar_margin_medial_tender-short = Inner edge of the kneecap tender
msg-item-knee_patellar_margin_medial_tender-how = Knee straight and relaxed, press along the inner edge of the kneecap.
msg-item-knee_patellar_margin_medial_tender-errors = Push on the edge, not on the front: front tenderness is recorded as kneecap tender.

msg-item-knee_quadriceps_gap-short = Gap above the kneecap
msg-item-knee_quadriceps_gap-how = Knee straight or slightly bent, run one finger down the middle of the thigh to the upper edge of the kneecap, at rest and while the thigh is tightened. Yes for a hollow that a finger falls into.
msg-item-knee_quadriceps_gap-care = Do not bend the knee to find it.
msg-item-knee_quadriceps_gap-errors = Swelling fills the hollow; compare both sides, which may both be torn.

msg-item-knee_patellar_tendon_gap-short = Gap below the kneecap
msg-item-knee_patellar_tendon_gap-how = Knee straight or slightly bent, run one finger from the lower tip of the kneecap to the tubercle of the shin. Yes for a hollow, or a tendon that does not tighten.
msg-item-knee_patellar_tendon_gap-care = Do not bend the knee to find it.
msg-item-knee_patellar_tendon_gap-errors = Swelling fills the hollow; a fat pad beside the tendon feels soft on both sides.

msg-item-knee_popliteal_swelling-short = Swelling at the back of the knee
msg-item-knee_popliteal_swelling-how = Prone or standing, look and feel the hollow of both knees with the knee straight and then bent. Yes for a lump. A cyst is firm when straight and soft when bent.
msg-item-knee_popliteal_swelling-care = A lump that beats: hands off, feel the pulses. Not pressed deep where a clot is open.
msg-item-knee_popliteal_swelling-errors = A full calf after a burst cyst looks like a clot, and both can be there.

msg-item-knee_crepitus-short = Crepitus
msg-item-knee_crepitus-how = Seated, leg hanging, palm on the kneecap while the knee straightens and bends slowly. Yes for grating that is felt in the joint or behind the kneecap.
msg-item-knee_crepitus-errors = Single painless clicks are not grating.

msg-item-knee_flexion_active-short = Knee flexion, active
msg-item-knee_flexion_active-how = Lying on the back, the person bends the knee as far as it goes with the heel sliding on the couch. Long goniometer: centre over the lateral epicondyle, one arm to the greater trochanter, the other to the lateral malleolus. Name the position when it is another one. The number is how far the knee is bent, 0 being straight.
msg-item-knee_flexion_active-errors = The pelvis lifts, the arm of the goniometer slides with the skin, another position than last time.

msg-item-knee_flexion_passive-short = Knee flexion, passive
msg-item-knee_flexion_passive-how = Lying on the back, the examiner bends the knee until it stops, and says how the end feels. Long goniometer: centre over the lateral epicondyle, one arm to the greater trochanter, the other to the lateral malleolus.
msg-item-knee_flexion_passive-care = Do not force it when the knee cannot be straightened actively or a fracture is open.
msg-item-knee_flexion_passive-errors = Pain is taken for the end; the goniometer's arm lies on the muscle instead of the line to the trochanter.

msg-item-knee_extension_active-short = Knee extension, active
msg-item-knee_extension_active-how = Lying on the back or seated, the person straightens the knee as far as it goes. Long goniometer: centre over the lateral epicondyle, one arm to the greater trochanter, the other to the lateral malleolus. Toward extension: 0 is straight, 5 is five degrees beyond straight, -20 stops twenty degrees short.
msg-item-knee_extension_active-errors = Hip bent over the couch edge tightens the hamstrings and looks like a stop.

msg-item-knee_extension_passive-short = Knee extension, passive
msg-item-knee_extension_passive-how = Lying on the back with the heel propped, the knee is let down or gently pressed to its end; say how the end feels. Long goniometer: centre over the lateral epicondyle, one arm to the greater trochanter, the other to the lateral malleolus. Toward extension: 0 is straight, 5 is five degrees beyond straight, -20 stops twenty degrees short.
msg-item-knee_extension_passive-care = A springy stop short of straight may be a block: do not press through it.
msg-item-knee_extension_passive-errors = Heel not propped: going beyond straight is missed. Sign without direction.

msg-item-knee_arc_active-short = Knee motion in three numbers, active
msg-item-knee_arc_active-how = Written as extension-zero-flexion or flexion-zero-extension: name the order. 5-0-140 goes five degrees beyond straight and bends to 140; 0-20-110 stops twenty degrees short and bends to 110; 0-15-15 does not move. It is recorded as extension and flexion.

msg-item-knee_arc_passive-short = Knee motion in three numbers, passive
msg-item-knee_arc_passive-how = Written as extension-zero-flexion or flexion-zero-extension: name the order. 5-0-140 goes five degrees beyond straight and bends to 140; 0-20-110 stops twenty degrees short and bends to 110; 0-15-15 does not move. It is recorded as extension and flexion.
msg-item-knee_arc_passive-care = As for passive flexion and extension: nothing is forced.

msg-item-knee_straight_leg_raise_active-short = Straight leg raise, by the person
msg-item-knee_straight_leg_raise_active-how = Lying, the person tightens the thigh and lifts the straight leg a hand's width off the couch and holds it. Compare what the knee lacks when lifted with what it lacks when held passively; both sides.
msg-item-knee_straight_leg_raise_active-positive = Cannot lift it, or the knee sags 10 degrees or more short of what it reaches passively, where neither a block nor pain explains it.
msg-item-knee_straight_leg_raise_active-care = Gently, once; no load. Do not bend it further when it is positive.
msg-item-knee_straight_leg_raise_active-errors = Pain or a tense knee stops the muscle: ask again later. A partly torn tendon lifts from lying but does not straighten the hanging leg.
msg-item-knee_straight_leg_raise_active-yes = cannot lift the straight leg, or it sags
msg-item-knee_straight_leg_raise_active-no = lifts the straight leg

msg-item-knee_stretch_pain_calf-short = Pain when toes and foot are stretched
msg-item-knee_stretch_pain_calf-how = Lying or seated, bend toes and foot slowly up, then down. Yes for strong pain in the calf or shin, more than the hurt explains.
msg-item-knee_stretch_pain_calf-care = Once is enough. Yes after an injury, a cast or a crush is urgent, whatever the pulse.
msg-item-knee_stretch_pain_calf-errors = A strained calf muscle hurts too: ask about injury, cast, crush, operation, bleeding.
