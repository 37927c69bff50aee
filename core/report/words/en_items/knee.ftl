# What the catalogue says of the knee looked at, felt and moved: label, technique, what counts, when not, what goes wrong often.
# A dot in a message name is a dash here. Language: English. Reviewed by: nobody yet.

msg-item-knee_look_deformity-short = Deformity of the knee
msg-item-knee_look_deformity-how = Look at both knees from the front and the side before touching, legs bare to the groin. Yes where bones stand out of line, or the shape changed with the injury. A kneecap lying on the outer side counts.
msg-item-knee_look_deformity-purpose = Finds a joint or bone out of line before anything is moved.
msg-item-knee_look_deformity-care = Out of line after an injury: feel the foot pulses first and move nothing.
msg-item-knee_look_deformity-errors = A bent knee held for comfort looks out of line; swelling alone is no deformity.

msg-item-knee_look_open_wound-short = Open wound at the knee
msg-item-knee_look_open_wound-how = Look all round, also at the back. Yes for any break of the skin deeper than a graze on the same part of the limb.
msg-item-knee_look_open_wound-purpose = Finds a break or a joint that is open to the outside.
msg-item-knee_look_open_wound-care = Near a break of the bone it counts as open until shown otherwise: cover it, look once, do not probe or wash it out. A wound over the joint may reach into it.

msg-item-knee_look_swelling_spread-short = Where the swelling is
msg-item-knee_look_swelling_spread-how = Look at both knees, lying or seated: none; local (one spot, such as in front of the kneecap or over one ligament); the whole knee (hollows beside the kneecap filled, a horseshoe above it); the whole limb.
msg-item-knee_look_swelling_spread-purpose = Tells fluid in the joint from a bursa, a bruise or a swollen limb.
msg-item-knee_look_swelling_spread-errors = A pouch in front of the kneecap (bursa) is local and is no fluid in the joint; a thick fat pad fills the hollows on both sides alike.

msg-item-knee_look_skin_hot_red-short = Skin hot or red
msg-item-knee_look_skin_hot_red-how = Lay the back of the hand on both knees, uncovered for some minutes, above, on and below the kneecap; look for redness. Yes when warmer than the other knee, or red.
msg-item-knee_look_skin_hot_red-purpose = Looks for infection and inflammation.
msg-item-knee_look_skin_hot_red-care = Hot, swollen and stiff without an injury: an infected joint needs no fever. Do not test it further.
msg-item-knee_look_skin_hot_red-errors = A bandage, sun or a run warms both; dark skin hides redness: go by warmth and shine.

msg-item-knee_bruising-short = Bruising at the knee
msg-item-knee_bruising-how = Look all round and down to the ankle: blood sinks. Say where in the remark.
msg-item-knee_bruising-purpose = Blood outside the joint: a torn capsule, ligament or muscle, and how the injury went.

msg-item-knee_look_patella_height-short = Height of the kneecap
msg-item-knee_look_patella_height-how = Compare both sides, lying with the knee straight; seated with the knee bent only after the straight leg was lifted. Level; high (nearer the thigh than the other side); low; or lying to the outer side.
msg-item-knee_look_patella_height-purpose = A torn tendon lets the kneecap sink or rise; a kneecap out of place lies to the outside.
msg-item-knee_look_patella_height-care = Low with a hollow above it speaks for the thigh tendon, high with a hollow below it for the tendon to the shin: raise the straight leg before anything is bent.
msg-item-knee_look_patella_height-errors = Both sides torn look alike; swelling hides the edge: feel for it.

msg-item-knee_alignment_standing-short = Line of the leg, standing
msg-item-knee_alignment_standing-how = Bare legs, kneecaps facing forward, inner ankle bones or knees just touching. From the front: straight, bowed, or knock-kneed; from the side: straight, bent backwards, or held bent. The one that stands out most; degrees or finger widths in the remark.
msg-item-knee_alignment_standing-purpose = How the load runs through the knee; in a child how the legs grow.
msg-item-knee_alignment_standing-care = Not where standing is withheld.
msg-item-knee_alignment_standing-errors = A kneecap that looks inward makes a straight leg look knock-kneed, one that looks outward makes it look bowed.
msg-item-knee_alignment_standing-otherwise = Cannot stand: lying with the kneecaps upward, in degrees or by the distance between ankles or knees; the knee under load is lost. On one leg: with a hand on a rail.

msg-item-knee_effusion_stroke-short = Effusion, stroke test
msg-item-knee_effusion_stroke-how = Lying on the back, knee straight and relaxed. Stroke up the inner side two or three times from below the joint line into the pouch above the kneecap and watch; then stroke once down the outer side. Graded by the wave that comes back into the inner hollow.
msg-item-knee_effusion_stroke-purpose = Finds small amounts of fluid in the joint.
msg-item-knee_effusion_stroke-positive = 1+ or more. Trace is recorded and counts as unsure.
msg-item-knee_effusion_stroke-care = A knee that is not straight, a thick fat pad or swelling in front of the kneecap misleads.
msg-item-knee_effusion_stroke-errors = Knee not fully straight, muscles not slack, a fat pad taken for fluid, a bursa in front of the kneecap.
msg-item-knee_effusion_stroke-otherwise = Cannot lie: half sitting with the knee straight. A knee that does not straighten: say so; a heavy leg with thick fat: compare with the other knee, or the girth.

msg-item-knee_effusion_ballottement-short = Effusion, knock of the kneecap
msg-item-knee_effusion_ballottement-how = Lying, knee straight. One hand empties the pouch above the kneecap downward and stays there; a finger of the other pushes the kneecap sharply back. Felt: it sinks, knocks on the thigh bone and comes up again.
msg-item-knee_effusion_ballottement-purpose = Finds a moderate amount of fluid, between a small and a tense one.
msg-item-knee_effusion_ballottement-positive = A knock of the kneecap on the thigh bone that is felt.
msg-item-knee_effusion_ballottement-care = Not on a kneecap that may be broken, and not hard on a tender one.
msg-item-knee_effusion_ballottement-errors = In a tense knee the kneecap does not knock, nor with a little fluid: no knock says little. Stroke test first.
msg-item-knee_effusion_ballottement-otherwise = Cannot lie: half sitting with the heel propped. Knee not straight: it loses its worth.
msg-item-knee_effusion_ballottement-yes = the kneecap knocks on the thigh bone
msg-item-knee_effusion_ballottement-no = the kneecap does not knock

msg-item-knee_effusion_fluctuation-short = Effusion, wave between two hands
msg-item-knee_effusion_fluctuation-how = Lying, knee straight. One hand presses the pouch above the kneecap, thumb and finger of the other lie on both sides of the kneecap; press to and fro. Felt: the push arrives on the other side, both ways.
msg-item-knee_effusion_fluctuation-purpose = Finds a large amount of fluid, where the kneecap no longer knocks.
msg-item-knee_effusion_fluctuation-positive = The push is felt both ways.
msg-item-knee_effusion_fluctuation-errors = For large amounts of fluid only; soft fat carries a push one way.
msg-item-knee_effusion_fluctuation-otherwise = Cannot lie: half sitting. Small hands: a helper presses the pouch.
msg-item-knee_effusion_fluctuation-yes = the push is felt both ways
msg-item-knee_effusion_fluctuation-no = the push is not felt both ways

msg-item-knee_joint_line_medial_tender-short = Inner joint line tender
msg-item-knee_joint_line_medial_tender-how = Knee bent 90, less where it hurts or something may be broken or torn; thumb along the inner joint line from front to back. Tender on the line, not above it or below it.
msg-item-knee_joint_line_medial_tender-purpose = Pain of the inner meniscus, the inner ligament or a worn inner side.
msg-item-knee_joint_line_medial_tender-errors = Tender above the line is the ligament, below it the plateau or the tendons; worn joints are tender all along.

msg-item-knee_joint_line_lateral_tender-short = Outer joint line tender
msg-item-knee_joint_line_lateral_tender-how = Knee bent 90, less where it hurts or something may be broken or torn; thumb along the outer joint line from front to back. Tender on the line, not on the head of the fibula and not on the band above.
msg-item-knee_joint_line_lateral_tender-purpose = Pain of the outer meniscus or a worn outer side.
msg-item-knee_joint_line_lateral_tender-errors = The tendon behind and the band above are taken for the line; worn joints are tender all along.

msg-item-knee_fibular_head_tender-short = Head of the fibula tender
msg-item-knee_fibular_head_tender-how = The bony knob below the outer joint line, toward the back. Press with one finger on the bone, the sound side first. Yes only for tenderness of the bone.
msg-item-knee_fibular_head_tender-purpose = One criterion of the rule that says whether a knee film is needed.

msg-item-knee_patella_tender-short = Kneecap tender
msg-item-knee_patella_tender-how = Press with one finger on the bone, the sound side first. Yes for tenderness of the kneecap, whether or not other bone is tender too.
msg-item-knee_patella_tender-purpose = One criterion of the rule that says whether a knee film is needed, where no other bone is tender.

msg-item-knee_bone_tender_elsewhere-short = Other bone of the knee tender
msg-item-knee_bone_tender_elsewhere-how = Press with one finger on the bone, the sound side first. Thigh bone and shin near the joint, other than the kneecap and the head of the fibula.
msg-item-knee_bone_tender_elsewhere-purpose = Tells whether a tender kneecap stands alone, and finds what the rule does not look at.

msg-item-knee_tibial_tubercle_tender-short = Tubercle of the shin tender
msg-item-knee_tibial_tubercle_tender-how = Knee bent, press with one finger on the bump where the kneecap's tendon ends, the sound side first.
msg-item-knee_tibial_tubercle_tender-purpose = Finds a growth plate that is pulled at, or one torn off.
msg-item-knee_tibial_tubercle_tender-care = After a jump with a pop in a growing person: lift the straight leg before bending.

msg-item-knee_collateral_medial_tender-short = Inner collateral ligament tender
msg-item-knee_collateral_medial_tender-how = Knee slightly bent, one finger along the ligament from the inner knob of the thigh bone to a hand's width below the joint line. Say in the remark at which end.
msg-item-knee_collateral_medial_tender-purpose = Pain of the inner ligament, and at which end.
msg-item-knee_collateral_medial_tender-errors = Tender on the joint line alone is recorded as the joint line.

msg-item-knee_collateral_lateral_tender-short = Outer collateral ligament tender
msg-item-knee_collateral_lateral_tender-how = Ankle laid on the other knee: the ligament stands out as a cord between the outer knob of the thigh bone and the head of the fibula. Press along it.
msg-item-knee_collateral_lateral_tender-purpose = Pain or loss of the outer ligament, which stands out as a cord.
msg-item-knee_collateral_lateral_tender-care = Let the foot be lifted: the nerve runs round the neck of the fibula. Ankle not laid on the other knee where hip or knee may be broken, the hip slipped, or the knee was dislocated.
msg-item-knee_collateral_lateral_tender-otherwise = Cannot lay the ankle on the other knee: on the other side with the knee bent; the cord is felt less.

msg-item-knee_adductor_tubercle_tender-short = Inner knob above the knee tender
msg-item-knee_adductor_tubercle_tender-how = Knee slightly bent, press on the small bony knob just above and behind the inner knob of the thigh bone, where the restraint of the kneecap begins.
msg-item-knee_adductor_tubercle_tender-purpose = Where the inner restraint of the kneecap is torn off when it goes out.
msg-item-knee_adductor_tubercle_tender-errors = The ligament's upper end lies just below it.

msg-item-knee_patellar_margin_medial_tender-short = Inner edge of the kneecap tender
msg-item-knee_patellar_margin_medial_tender-how = Knee straight and relaxed, press along the inner edge of the kneecap.
msg-item-knee_patellar_margin_medial_tender-purpose = Where the inner restraint of the kneecap ends, and where its edge is bruised when it goes out.
msg-item-knee_patellar_margin_medial_tender-errors = Push on the edge, not on the front: front tenderness is recorded as kneecap tender.
msg-item-knee_patellar_margin_medial_tender-otherwise = Cannot lie: seated with the heel on a stool so that the knee is straight.

msg-item-knee_quadriceps_gap-short = Gap above the kneecap
msg-item-knee_quadriceps_gap-how = Knee straight or slightly bent, run one finger down the middle of the thigh to the upper edge of the kneecap, at rest and while the thigh is tightened. Yes for a hollow that a finger falls into.
msg-item-knee_quadriceps_gap-purpose = Finds a torn tendon above the kneecap, which is missed often.
msg-item-knee_quadriceps_gap-care = Do not bend the knee to find it.
msg-item-knee_quadriceps_gap-errors = Swelling fills the hollow; compare both sides, which may both be torn.

msg-item-knee_patellar_tendon_gap-short = Gap below the kneecap
msg-item-knee_patellar_tendon_gap-how = Knee straight or slightly bent, run one finger from the lower tip of the kneecap to the tubercle of the shin. Yes for a hollow, or a tendon that does not tighten.
msg-item-knee_patellar_tendon_gap-purpose = Finds a torn tendon below the kneecap.
msg-item-knee_patellar_tendon_gap-care = Do not bend the knee to find it.
msg-item-knee_patellar_tendon_gap-errors = Swelling fills the hollow; a fat pad beside the tendon feels soft on both sides.

msg-item-knee_popliteal_swelling-short = Swelling at the back of the knee
msg-item-knee_popliteal_swelling-how = Prone or standing, look and feel the hollow of both knees with the knee straight and then bent. Yes for a lump. A cyst is firm when straight and soft when bent.
msg-item-knee_popliteal_swelling-purpose = Finds a cyst, a widened vessel or another lump.
msg-item-knee_popliteal_swelling-care = A lump that beats: hands off, feel the pulses. Not pressed deep where a clot is open.
msg-item-knee_popliteal_swelling-errors = A full calf after a burst cyst looks like a clot, and both can be there.
msg-item-knee_popliteal_swelling-otherwise = Cannot lie face down: standing with the back to you, or on the side. Seated the hollow is closed.

msg-item-knee_crepitus-short = Crepitus
msg-item-knee_crepitus-how = Seated, leg hanging, palm on the kneecap while the knee straightens and bends slowly. Yes for grating that is felt in the joint or behind the kneecap.
msg-item-knee_crepitus-purpose = One of the signs of a worn joint.
msg-item-knee_crepitus-care = Not where a bone may be broken or a tendon torn.
msg-item-knee_crepitus-errors = Single painless clicks are not grating.
msg-item-knee_crepitus-otherwise = Cannot sit: lying, heel sliding on the couch.

msg-item-knee_flexion_active-short = Knee flexion, active
msg-item-knee_flexion_active-how = Lying on the back, the person bends the knee as far as it goes with the heel sliding on the couch. Long goniometer: centre over the lateral epicondyle, one arm to the greater trochanter, the other to the lateral malleolus. Name the position when it is another one. The number is how far the knee is bent, 0 being straight.
msg-item-knee_flexion_active-purpose = How far the person bends the knee; 90 is a criterion of a rule that says whether a film is needed.
msg-item-knee_flexion_active-care = By the person alone and only as far as comfort goes. Where the straight leg cannot be lifted: do not bend it further.
msg-item-knee_flexion_active-errors = The pelvis lifts, the arm of the goniometer slides with the skin, another position than last time.
msg-item-knee_flexion_active-otherwise = Cannot lie: seated, which is an item of its own. Heavy limb: the person draws the heel up with a towel, which is no longer active: say so.

msg-item-knee_flexion_passive-short = Knee flexion, passive
msg-item-knee_flexion_passive-how = Lying on the back, the examiner bends the knee until it stops, and says how the end feels. Long goniometer: centre over the lateral epicondyle, one arm to the greater trochanter, the other to the lateral malleolus.
msg-item-knee_flexion_passive-purpose = How far the joint allows bending, and what stops it.
msg-item-knee_flexion_passive-care = Do not force it when the knee cannot be straightened actively or a fracture is open.
msg-item-knee_flexion_passive-errors = Pain is taken for the end; the goniometer's arm lies on the muscle instead of the line to the trochanter.
msg-item-knee_flexion_passive-otherwise = Cannot lie: seated. Heavy limb: the person draws the knee up with both hands, the examiner reads and feels the end.

msg-item-knee_extension_active-short = Knee extension, active
msg-item-knee_extension_active-how = Lying on the back or seated, the person straightens the knee as far as it goes. Long goniometer: centre over the lateral epicondyle, one arm to the greater trochanter, the other to the lateral malleolus. Toward extension: 0 is straight, 5 is five degrees beyond straight, -20 stops twenty degrees short.
msg-item-knee_extension_active-purpose = How far the person straightens the knee; less than the joint allows is a lag.
msg-item-knee_extension_active-errors = Hip bent over the couch edge tightens the hamstrings and looks like a stop.
msg-item-knee_extension_active-otherwise = Cannot lie or sit: on the side, by eye.

msg-item-knee_extension_passive-short = Knee extension, passive
msg-item-knee_extension_passive-how = Lying on the back with the heel propped, the knee is let down or gently pressed to its end; say how the end feels. Long goniometer: centre over the lateral epicondyle, one arm to the greater trochanter, the other to the lateral malleolus. Toward extension: 0 is straight, 5 is five degrees beyond straight, -20 stops twenty degrees short.
msg-item-knee_extension_passive-purpose = A lack of extension, or going beyond straight; and what stops it.
msg-item-knee_extension_passive-care = A springy stop short of straight may be a block: do not press through it. In a baby do not press: hips and knees do not straighten in the first months.
msg-item-knee_extension_passive-errors = Heel not propped: going beyond straight is missed. Sign without direction.
msg-item-knee_extension_passive-otherwise = Cannot lie: half sitting or seated, heel on a stool, knee let down; less exact. Heavy limb: heel on a roll, let the weight do it.

msg-item-knee_arc_active-short = Knee motion in three numbers, active
msg-item-knee_arc_active-how = Written as extension-zero-flexion or flexion-zero-extension: name the order. In the first order 5-0-140 goes five degrees beyond straight and bends to 140; 0-20-110 stops twenty degrees short and bends to 110; 0-15-15 does not move. It is recorded as extension and flexion.
msg-item-knee_arc_active-purpose = Takes what is written in three numbers, by the person's own motion.
msg-item-knee_arc_active-otherwise = Cannot lie: bending and straightening seated are items of their own.

msg-item-knee_arc_passive-short = Knee motion in three numbers, passive
msg-item-knee_arc_passive-how = Written as extension-zero-flexion or flexion-zero-extension: name the order. In the first order 5-0-140 goes five degrees beyond straight and bends to 140; 0-20-110 stops twenty degrees short and bends to 110; 0-15-15 does not move. It is recorded as extension and flexion.
msg-item-knee_arc_passive-purpose = Takes what is written in three numbers, moved by the examiner.
msg-item-knee_arc_passive-care = As for passive flexion and extension: nothing is forced.
msg-item-knee_arc_passive-otherwise = Cannot lie: bending seated is an item of its own; what straightening seated cannot show is lost.

msg-item-knee_straight_leg_raise_active-short = Straight leg raise, by the person
msg-item-knee_straight_leg_raise_active-how = Lying, the person tightens the thigh and lifts the straight leg a hand's width off the couch and holds it. Compare what the knee lacks when lifted with what it lacks when held passively; both sides.
msg-item-knee_straight_leg_raise_active-purpose = Tests thigh muscle, its tendon, kneecap and the tendon below in one.
msg-item-knee_straight_leg_raise_active-positive = Cannot lift it, or the knee sags 10 degrees or more short of what it reaches passively, where neither a block nor pain explains it.
msg-item-knee_straight_leg_raise_active-care = Gently, once; no load. Do not bend it further when it is positive.
msg-item-knee_straight_leg_raise_active-errors = Pain or a tense knee stops the muscle: ask again later. A partly torn tendon lifts from lying but does not straighten the hanging leg. Pain in the groin on lifting is of the hip: after a fall think of a break there.
msg-item-knee_straight_leg_raise_active-otherwise = Cannot lie: seated, straightening the hanging leg. A weak hip or a heavy leg: a roll under the thigh and only the heel is lifted. Cannot lift its weight: on the side.
msg-item-knee_straight_leg_raise_active-yes = cannot lift the straight leg, or it sags
msg-item-knee_straight_leg_raise_active-no = lifts the straight leg

msg-item-knee_stretch_pain_calf-short = Pain when toes and foot are stretched
msg-item-knee_stretch_pain_calf-how = Lying or seated, bend toes and foot slowly up, then down. Yes for strong pain in the calf or shin, more than the hurt explains.
msg-item-knee_stretch_pain_calf-purpose = Pressure in a compartment of the lower leg, before pulse and feeling go.
msg-item-knee_stretch_pain_calf-care = Once is enough. Yes after an injury, a cast or a crush is urgent, whatever the pulse.
msg-item-knee_stretch_pain_calf-errors = A strained calf muscle hurts too: ask about injury, cast, crush, operation, bleeding.

msg-item-knee_look_hollows_filled-short = Hollows beside the kneecap filled
msg-item-knee_look_hollows_filled-how = Lying, knees straight and slack, both in the light from the side; seated where lying is not possible. Look at the hollow on each side of the kneecap and at the pouch above it. Yes where one is filled or bulges against the other knee.
msg-item-knee_look_hollows_filled-purpose = To see fluid before it is moved: the stroke test comes next.
msg-item-knee_look_hollows_filled-errors = A thick fat pad fills both sides alike; fluid in front of the kneecap leaves the hollows open.
msg-item-knee_look_hollows_filled-otherwise = Seated, bent knees hide small amounts: a no says less there.

msg-item-knee_look_tubercle_lump-short = Lump at the tubercle of the shin
msg-item-knee_look_tubercle_lump-how = Look from the side with the knee bent, feel with a flat finger. Yes where the bump stands out more than on the other side.
msg-item-knee_look_tubercle_lump-purpose = To find a growth plate that is pulled at, now or in earlier years.
msg-item-knee_look_tubercle_lump-care = After a jump with a pop in a growing person: raise the straight leg before bending.
msg-item-knee_look_tubercle_lump-errors = An old lump makes the step of the shin look full and hides a sag.

msg-item-knee_look_patella_direction-short = Where the kneecap faces
msg-item-knee_look_patella_direction-how = Standing at ease with the feet pointing forward, look from the front at the middle of each kneecap: forward, inward or outward. Where standing is withheld, lying with the feet upright.
msg-item-knee_look_patella_direction-purpose = A first look at a turned thigh bone or shin.
msg-item-knee_look_patella_direction-errors = Feet placed differently on the two sides; a bent knee.
msg-item-knee_look_patella_direction-otherwise = Cannot stand: lying with the feet upright; what load does to it is lost.

msg-item-knee_patellar_tracking-short = Way of the kneecap
msg-item-knee_patellar_tracking-how = Seated on the edge, legs hanging, knee bent 90. The person straightens slowly and bends again; look from the front. Central all the way; jumps outward near straight; lies outward all the way; or goes out of place.
msg-item-knee_patellar_tracking-purpose = To see a kneecap that does not stay in its groove.
msg-item-knee_patellar_tracking-care = Not against a push. A kneecap that lies out of place now: do not bend, look at vessel and nerve. Not where a bone may be broken or a tendon torn.
msg-item-knee_patellar_tracking-errors = A turned thigh or shin looks like a bad way; fat hides the edges: lay a finger on each.
msg-item-knee_patellar_tracking-otherwise = Cannot sit: lying with a roll under the thigh; the last part of the way alone is seen.

msg-item-knee_pes_anserinus_tender-short = Tendons on the inner shin tender
msg-item-knee_pes_anserinus_tender-how = Knee bent, three to four finger breadths below the inner joint line on the flat inner face of the shin. Press with one finger, the sound side first.
msg-item-knee_pes_anserinus_tender-purpose = To tell pain of these tendons and their bursa from pain of the inner joint line.
msg-item-knee_pes_anserinus_tender-errors = The ligament ends close by; many are a little tender there on both sides. In a growing person press the bone too.

msg-item-knee_gerdy_tubercle_tender-short = Outer bump of the shin tender
msg-item-knee_gerdy_tubercle_tender-how = Knee bent, the bump at the front outer side of the shin just below the joint line, where the outer band ends. Press with one finger, the sound side first.
msg-item-knee_gerdy_tubercle_tender-purpose = To find pain at the end of the outer band, or of the plateau after an injury.
msg-item-knee_gerdy_tubercle_tender-care = Tender after an injury: bone first, film before load.
msg-item-knee_gerdy_tubercle_tender-errors = Joint line and head of the fibula lie close: feel for both.

msg-item-knee_femoral_condyle_lateral_tender-short = Outer knob of the thigh bone tender
msg-item-knee_femoral_condyle_lateral_tender-how = Knee slightly bent, press on the outer knob of the thigh bone about 2 cm above the outer joint line, the sound side first.
msg-item-knee_femoral_condyle_lateral_tender-purpose = To find pain where the outer band rubs, or bruised bone after a kneecap went out.
msg-item-knee_femoral_condyle_lateral_tender-care = Tender after an injury: bone first, film before load.
msg-item-knee_femoral_condyle_lateral_tender-errors = The ligament begins there: bend and compare with the cord.

msg-item-knee_patellar_margin_lateral_tender-short = Outer edge of the kneecap tender
msg-item-knee_patellar_margin_lateral_tender-how = Knee straight and slack, press along the outer edge of the kneecap.
msg-item-knee_patellar_margin_lateral_tender-purpose = To find pain of the outer side of the kneecap and of its tight band.
msg-item-knee_patellar_margin_lateral_tender-errors = Push on the edge, not on the front: front tenderness is recorded as kneecap tender.
msg-item-knee_patellar_margin_lateral_tender-otherwise = Cannot lie: seated, heel on a stool so that the knee is straight.

msg-item-knee_patellar_pole_upper_tender-short = Upper tip of the kneecap tender
msg-item-knee_patellar_pole_upper_tender-how = Knee straight and slack, press on the upper edge where the thigh's tendon comes in, the sound side first.
msg-item-knee_patellar_pole_upper_tender-purpose = To find trouble of the tendon above the kneecap.
msg-item-knee_patellar_pole_upper_tender-care = A hollow above it: raise the straight leg, do not bend.
msg-item-knee_patellar_pole_upper_tender-errors = Fluid in the pouch hurts when pressed.
msg-item-knee_patellar_pole_upper_tender-otherwise = Cannot lie: seated, heel on a stool.

msg-item-knee_patellar_pole_lower_tender-short = Lower tip of the kneecap tender
msg-item-knee_patellar_pole_lower_tender-how = Knee straight and slack. One hand presses the upper edge back toward the thigh bone so that the lower tip tilts forward, a finger of the other presses the tip from below. The sound side first.
msg-item-knee_patellar_pole_lower_tender-purpose = To find trouble of the tendon below the kneecap, and in a growing person of the growing tip.
msg-item-knee_patellar_pole_lower_tender-care = A hollow below it, or a jump with a pop: raise the straight leg, do not bend.
msg-item-knee_patellar_pole_lower_tender-errors = The fat pad beside the tendon is tender too; pressed with the knee bent the tip is hidden.
msg-item-knee_patellar_pole_lower_tender-otherwise = Cannot lie: seated, heel on a stool.

msg-item-knee_patellar_facet_tender-short = Underside of the kneecap tender
msg-item-knee_patellar_facet_tender-how = Lying, knee straight, thigh slack. Push the kneecap inward and feel under the inner edge, then outward and feel under the outer edge.
msg-item-knee_patellar_facet_tender-purpose = One of three pain signs of the kneecap: with pain on a tightened thigh and pain on a squat, two of the three count.
msg-item-knee_patellar_facet_tender-care = Not where the kneecap may be broken or wants to go out of place: stop at fear.
msg-item-knee_patellar_facet_tender-errors = The soft tissue between finger and bone hurts; a tight thigh holds the kneecap.
msg-item-knee_patellar_facet_tender-otherwise = Cannot lie: half sitting with the heel propped.

msg-item-knee_bony_enlargement-short = Bone of the knee thickened
msg-item-knee_bony_enlargement-how = Knee bent, run both thumbs along the edges of thigh bone and shin at the joint line, both knees. Yes for a hard edge or a broad joint that the other knee, or knees of that age, do not have.
msg-item-knee_bony_enlargement-purpose = One of the signs of a worn joint.
msg-item-knee_bony_enlargement-errors = Both knees may be worn: compare with what the hand knows. A hard lump on one bone alone, growing or painful at night, is no wear: say so.

msg-item-knee_popliteal_swelling_softens-short = Swelling behind the knee softens on bending
msg-item-knee_popliteal_swelling_softens-how = Face down, a finger on the lump in the inner half of the hollow while the knee is straight; then bend it and feel again. Yes where it is firm when straight and soft when bent.
msg-item-knee_popliteal_swelling_softens-purpose = To tell a cyst, which softens, from other lumps.
msg-item-knee_popliteal_swelling_softens-care = A lump that beats: hands off, feel the pulses. Not pressed deep where a clot is open.
msg-item-knee_popliteal_swelling_softens-errors = Tendons tighten when the person bends the knee: you bend it.
msg-item-knee_popliteal_swelling_softens-otherwise = Cannot lie face down: on the side, upper leg tested.
msg-item-knee_popliteal_swelling_softens-yes = firm when straight, soft when bent
msg-item-knee_popliteal_swelling_softens-no = does not soften on bending

msg-item-knee_popliteal_swelling_beats-short = Swelling behind the knee beats
msg-item-knee_popliteal_swelling_beats-how = Knee slightly bent and slack, a flat finger laid lightly on each side of the lump. Yes where the fingers are pushed apart with each pulse.
msg-item-knee_popliteal_swelling_beats-purpose = To find a widened vessel before anything is pressed, drawn off or injected.
msg-item-knee_popliteal_swelling_beats-care = Yes: do not press, feel the pulses of the foot, compare the other knee.
msg-item-knee_popliteal_swelling_beats-errors = A lump on the vessel is lifted by each beat, and does not push the fingers apart.
msg-item-knee_popliteal_swelling_beats-otherwise = Face down is best; on the side or on the back with the knee bent less is felt.
