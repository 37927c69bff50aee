# What the catalogue says of thigh and lower leg: label, technique, what counts, when not, what goes wrong often.
# A dot in a message name is a dash here. Language: English. Reviewed by: nobody yet.
# Bone and soft parts are pressed the same way wherever they lie.
-bone_otherwise = Seated, lying or half sitting: the same; one hand is enough. A child: on the lap, the sore place last, watch the face. Swelling that hides the bone: press through it slowly; where bone is not reached, record it as not reliable.
-bone_errors = Soft parts pressed instead of bone; a numb limb, drink or a worse pain elsewhere: record it as not reliable.
-press_otherwise = Seated, lying or half sitting: the same; one hand is enough. A child: on the lap, the sore place last. One limb: compare with the parts above and below.
-press_errors = Pressed so hard that it hurts everybody; another pain than the familiar one counted.

msg-item-leg_thigh_girth_15cm-short = Thigh girth, 15 cm above the inner joint line
msg-item-leg_thigh_girth_15cm-how = Lying on the back, knee straight, muscles slack. Mark the skin 15 cm above the inner joint line of the knee on both sides, lay the tape level and without pulling. Another level, or a level from the kneecap, is another quantity.
msg-item-leg_thigh_girth_15cm-purpose = Wasting or swelling of the thigh, against the other side and against last time.
msg-item-leg_thigh_girth_15cm-errors = Mark made from the kneecap on one side and the joint line on the other; muscle tightened; tape aslant.
msg-item-leg_thigh_girth_15cm-otherwise = Cannot lie: half sitting, knee straight on the couch, both sides alike. A very large thigh: a wide tape, two readings. One limb: only against last time.

msg-item-leg_thigh_girth_20cm-short = Thigh girth, 20 cm above the inner joint line
msg-item-leg_thigh_girth_20cm-how = As at 15 cm, with the mark 20 cm above the inner joint line of the knee, on both sides.
msg-item-leg_thigh_girth_20cm-purpose = Wasting of the upper belly of the thigh muscle; not for short thighs.
msg-item-leg_thigh_girth_20cm-errors = In a short person or a child the mark lies in the groin: use a lower level.
msg-item-leg_thigh_girth_20cm-otherwise = Cannot lie: half sitting, knee straight on the couch. One limb: only against last time.

msg-item-leg_calf_girth_10cm-short = Calf girth, 10 cm below the shin tubercle
msg-item-leg_calf_girth_10cm-how = Lying, knee slightly bent and slack. Mark the skin 10 cm below the bump of the shin (tubercle) on both sides; tape level, touching and not pulling. Twice, and a third time where the two differ by more than the agreed step.
msg-item-leg_calf_girth_10cm-purpose = Swelling of the calf (this level is the one that clot rules ask for) and wasting.
msg-item-leg_calf_girth_10cm-care = Measured once on each side, without squeezing, where a clot is open.
msg-item-leg_calf_girth_10cm-errors = Level measured from the kneecap: two examiners then seldom agree. One leg measured seated and the other lying; the stronger leg is fuller.
msg-item-leg_calf_girth_10cm-otherwise = Cannot lie: seated, feet flat, both sides alike. A very large calf: wide tape, level marked, twice. One limb: only against last time; a clot rule then lacks its input.

msg-item-leg_calf_girth_widest-short = Calf girth, widest part
msg-item-leg_calf_girth_widest-how = Lying or seated, muscles slack. Move the tape up and down until it reads most; write how far below the tubercle that was in the remark.
msg-item-leg_calf_girth_widest-purpose = Wasting of the calf, where the widest part is followed from time to time.
msg-item-leg_calf_girth_widest-errors = Not to be used for a clot rule: those ask for 10 cm below the tubercle.
msg-item-leg_calf_girth_widest-otherwise = Seated with feet flat, both sides alike. One limb: only against last time.

msg-item-leg_ankle_girth-short = Ankle girth, just above the ankle bones
msg-item-leg_ankle_girth-how = Lying or seated, tape level at the thinnest part just above both ankle bones, both sides at the same distance from the floor or the sole.
msg-item-leg_ankle_girth-purpose = Swelling of foot and ankle by vein, heart, kidney or injury.
msg-item-leg_ankle_girth-errors = Level differs; sock marks measured; a leg that hung all day is fuller than in the morning.
msg-item-leg_ankle_girth-otherwise = Seated and lying are not to be compared with each other. One limb: only against last time.

msg-item-leg_length_true-short = Leg length, true: front hip bone to inner ankle
msg-item-leg_length_true-how = Lying flat, pelvis square, both legs in the same place. Tape from the lower edge of the front hip bone (ASIS) to the tip of the inner ankle bone. Twice on each side, the mean counts. Where one leg cannot be straightened, put the other in the same bend.
msg-item-leg_length_true-purpose = Whether one leg is shorter, by tape. Blocks under the short side while standing agree better with films and come first; the tape is for who cannot stand.
msg-item-leg_length_true-care = Not with a fracture of pelvis, hip or leg, or a slip, open: nothing is straightened or squared for a tape.
msg-item-leg_length_true-errors = Pelvis tilted; tape round the bulk of the thigh; one hip or knee bent. By tape the wrong leg may be called the short one.
msg-item-leg_length_true-otherwise = Can stand: blocks under the short side until the crests are level. Cannot lie flat: half sitting alters both sides, record not done. One limb: no difference can be found.

msg-item-leg_length_apparent-short = Leg length, apparent: navel to inner ankle
msg-item-leg_length_apparent-how = Lying flat, legs together and straight in line with the trunk, not squared. Tape from the navel (or the tip of the breastbone, the same on both sides; write which) to the tip of the inner ankle bone.
msg-item-leg_length_apparent-purpose = What the person walks on: a tilted pelvis or a fixed hip makes a leg look shorter that is not.
msg-item-leg_length_apparent-care = Not with a fracture of pelvis, hip or leg, or a slip, open: nothing is straightened or squared for a tape.
msg-item-leg_length_apparent-errors = Legs put square first: then it is no longer the apparent length.
msg-item-leg_length_apparent-otherwise = Cannot lie flat: no other way; a difference seen in standing stands for it. One limb: no difference can be found.

msg-item-leg_length_thigh-short = Thigh length, trochanter to outer joint line
msg-item-leg_length_thigh-how = Lying, hip and knee straight or bent alike on both sides. Tape from the top of the trochanter to the outer joint line of the knee.
msg-item-leg_length_thigh-purpose = Whether thigh bone or shin makes the difference in length.
msg-item-leg_length_thigh-care = Not with a fracture of pelvis, hip or leg, or a slip, open: nothing is straightened or squared for a tape.
msg-item-leg_length_thigh-errors = The top of the trochanter is deep in a heavy thigh; a high trochanter shortens the distance to the hip, not the bone.
msg-item-leg_length_thigh-otherwise = Cannot lie: seated, both knees bent alike. Heavy thigh: look at the bent knees from the side and the end of the couch instead.

msg-item-leg_length_shin-short = Shin length, inner joint line to inner ankle
msg-item-leg_length_shin-how = Lying or seated, knees bent alike. Tape from the inner joint line of the knee to the tip of the inner ankle bone.
msg-item-leg_length_shin-purpose = Whether thigh bone or shin makes the difference in length.
msg-item-leg_length_shin-care = Not with a fracture of knee or shin open: the knee is not bent for a tape.
msg-item-leg_length_shin-errors = Joint line missed by a finger's breadth on one side.
msg-item-leg_length_shin-otherwise = Seated is as good, both knees at the same bend. One limb: no difference can be found.

msg-item-leg_segment_view-short = Bent knees compared (Galeazzi view): short bone
msg-item-leg_segment_view-how = Lying on the back, both hips and knees bent, feet flat side by side, heels level. Look from the end of the couch: one knee lower, the shin of that side is short. Look from the side: one knee further back, the thigh of that side is short. The side recorded is the shorter one.
msg-item-leg_segment_view-purpose = Tells a short thigh from a short shin, without a tape.
msg-item-leg_segment_view-care = Not with a fracture of pelvis, hip, knee or leg open. In an infant a thigh that looks short may be a hip out of its socket: examine the hip.
msg-item-leg_segment_view-errors = Heels not level; pelvis turned; both hips out of joint look even; with the feet off the couch and the hips at 90 a lower knee is a short THIGH or a hip out of its socket; a knee that cannot bend.
msg-item-leg_segment_view-otherwise = Cannot lie on the back: seated, compare how far the knees reach forward and how high they stand. A knee that does not bend: tape of thigh and shin.

msg-item-leg_look_deformity-short = Leg bent out of shape after injury
msg-item-leg_look_deformity-how = Look at thigh and shin from the front and the side, the other leg beside it. Yes for a new bend, twist or step.
msg-item-leg_look_deformity-purpose = A break of thigh bone or shin is seen before it is felt.
msg-item-leg_look_deformity-care = Yes: pulses and feeling of the foot at once, splint, nothing moved for a test.
msg-item-leg_look_deformity-errors = An old bow or an old break taken for a new one: ask.
msg-item-leg_look_deformity-otherwise = As the person lies or sits; nobody is turned for it. One limb: ask and compare with a photograph or the memory of the family.
msg-item-leg_look_deformity-yes = new bend, twist or step
msg-item-leg_look_deformity-no = no new bend, twist or step seen

msg-item-leg_thigh_wasting-short = Thigh thinner than the other
msg-item-leg_thigh_wasting-how = Both legs bare, muscles slack and then tightened, from the front and the back. Yes when the thigh is thinner than the other; a tape at a marked level makes it a number.
msg-item-leg_thigh_wasting-purpose = Disuse, a nerve, or a joint above or below.
msg-item-leg_thigh_wasting-errors = The other leg may be the swollen one; the used leg is stronger.
msg-item-leg_thigh_wasting-otherwise = Standing, seated or lying, both sides alike. Both sides thin: say so in the remark, a no then says nothing.
msg-item-leg_thigh_wasting-yes = thinner than the other side
msg-item-leg_thigh_wasting-no = not thinner than the other side

msg-item-leg_calf_wasting-short = Calf thinner than the other
msg-item-leg_calf_wasting-how = Both legs bare, muscles slack and then tightened, from the front and the back. Yes when the calf is thinner than the other; a tape at a marked level makes it a number.
msg-item-leg_calf_wasting-purpose = Disuse, a nerve root, an old tear of the heel cord, an old clubfoot or polio.
msg-item-leg_calf_wasting-errors = The other leg may be the swollen one; the used leg is stronger.
msg-item-leg_calf_wasting-otherwise = Standing, seated or lying, both sides alike. Both sides thin: say so in the remark, a no then says nothing.
msg-item-leg_calf_wasting-yes = thinner than the other side
msg-item-leg_calf_wasting-no = not thinner than the other side

msg-item-leg_compartment_front_tense-short = Front compartment tense
msg-item-leg_compartment_front_tense-how = Lying or seated, leg level with the heart. Flat fingers beside the shin bone on its outer side, the same place on the other leg. Yes when it is as hard as wood.
msg-item-leg_compartment_front_tense-purpose = Pressure in one compartment of the lower leg, felt part by part.
msg-item-leg_compartment_front_tense-care = Open casts and bandages to the skin first. Soft leaves it not excluded: pain beyond the hurt and pain on stretch come earlier. Pain beyond the hurt or on stretch after an injury, a cast or a crush, or any two signs: an emergency; do not wait for weakness or a lost pulse.
msg-item-leg_compartment_front_tense-errors = Muscle held tight; a tense bruise under the skin; one sign alone misses most cases.
msg-item-leg_compartment_front_tense-otherwise = Seated, lying or on the side. A child or somebody drowsy: pain needing more and more relief, and the hard leg, are all there is.
msg-item-leg_compartment_front_tense-yes = as hard as wood
msg-item-leg_compartment_front_tense-no = not hard

msg-item-leg_compartment_outer_tense-short = Outer compartment tense
msg-item-leg_compartment_outer_tense-how = Lying or seated, leg level with the heart. Flat fingers over the fibula, between front and back, the same place on the other leg. Yes when it is as hard as wood.
msg-item-leg_compartment_outer_tense-purpose = Pressure in one compartment of the lower leg, felt part by part.
msg-item-leg_compartment_outer_tense-care = Open casts and bandages to the skin first. Soft leaves it not excluded: pain beyond the hurt and pain on stretch come earlier. Pain beyond the hurt or on stretch after an injury, a cast or a crush, or any two signs: an emergency; do not wait for weakness or a lost pulse.
msg-item-leg_compartment_outer_tense-errors = Muscle held tight; a tense bruise under the skin; one sign alone misses most cases.
msg-item-leg_compartment_outer_tense-otherwise = Seated, lying or on the side. A child or somebody drowsy: pain needing more and more relief, and the hard leg, are all there is.
msg-item-leg_compartment_outer_tense-yes = as hard as wood
msg-item-leg_compartment_outer_tense-no = not hard

msg-item-leg_compartment_back_tense-short = Back compartment tense
msg-item-leg_compartment_back_tense-how = Lying or seated, leg level with the heart. Flat fingers over the calf, the same place on the other leg. Yes when it is as hard as wood. The deep part at the back lies out of reach of the fingers.
msg-item-leg_compartment_back_tense-purpose = Pressure in one compartment of the lower leg, felt part by part.
msg-item-leg_compartment_back_tense-care = Open casts and bandages to the skin first. Soft leaves it not excluded: pain beyond the hurt and pain on stretch come earlier. Pain beyond the hurt or on stretch after an injury, a cast or a crush, or any two signs: an emergency; do not wait for weakness or a lost pulse.
msg-item-leg_compartment_back_tense-errors = Muscle held tight; a tense bruise under the skin; one sign alone misses most cases.
msg-item-leg_compartment_back_tense-otherwise = Seated, lying or on the side. A child or somebody drowsy: pain needing more and more relief, and the hard leg, are all there is.
msg-item-leg_compartment_back_tense-yes = as hard as wood
msg-item-leg_compartment_back_tense-no = not hard

msg-item-leg_stretch_pain_front-short = Stretch pain, front compartment
msg-item-leg_stretch_pain_front-how = Lying or seated, bend the foot and then the toes slowly DOWN. Stop at the first strong pain. Yes for strong pain in that part of the lower leg, more than the hurt explains.
msg-item-leg_stretch_pain_front-purpose = Pain when the muscles of one compartment are lengthened: among the first signs of pressure.
msg-item-leg_stretch_pain_front-care = Once is enough, slowly. Not where the foot or ankle is visibly broken: moving the toes alone is then enough. A yes after an injury, a cast or a crush is an emergency, whatever the pulse.
msg-item-leg_stretch_pain_front-errors = A strained muscle, the break itself or the ankle joint hurts: ask where. No pain in a leg without feeling says nothing.
msg-item-leg_stretch_pain_front-otherwise = Seated or half sitting the same. In a cast: the toes alone. Who cannot answer: not reliable, say so, and look again every hour.
msg-item-leg_stretch_pain_front-yes = strong pain in that part, more than the hurt explains
msg-item-leg_stretch_pain_front-no = no strong pain there on stretch

msg-item-leg_stretch_pain_outer-short = Stretch pain, outer compartment
msg-item-leg_stretch_pain_outer-how = Lying or seated, turn the foot slowly INWARD, not pointing it down. Stop at the first strong pain. Yes for strong pain in that part of the lower leg, more than the hurt explains.
msg-item-leg_stretch_pain_outer-purpose = Pain when the muscles of one compartment are lengthened: among the first signs of pressure.
msg-item-leg_stretch_pain_outer-care = Once is enough, slowly. Not where the foot or ankle is visibly broken: moving the toes alone is then enough. A yes after an injury, a cast or a crush is an emergency, whatever the pulse.
msg-item-leg_stretch_pain_outer-errors = A strained muscle, the break itself or the ankle joint hurts: ask where. No pain in a leg without feeling says nothing.
msg-item-leg_stretch_pain_outer-otherwise = Seated or half sitting the same. In a cast: the toes alone. Who cannot answer: not reliable, say so, and look again every hour.
msg-item-leg_stretch_pain_outer-yes = strong pain in that part, more than the hurt explains
msg-item-leg_stretch_pain_outer-no = no strong pain there on stretch

msg-item-leg_stretch_pain_back-short = Stretch pain, back compartment
msg-item-leg_stretch_pain_back-how = Lying or seated, with the knee straight bend the foot slowly UP, toes left alone. Stop at the first strong pain. Yes for strong pain in that part of the lower leg, more than the hurt explains.
msg-item-leg_stretch_pain_back-purpose = Pain when the muscles of one compartment are lengthened: among the first signs of pressure.
msg-item-leg_stretch_pain_back-care = Once is enough, slowly. Not with a torn heel cord open: the toes alone. Not where the foot or ankle is visibly broken: moving the toes alone is then enough. A yes after an injury, a cast or a crush is an emergency, whatever the pulse.
msg-item-leg_stretch_pain_back-errors = A strained muscle, the break itself or the ankle joint hurts: ask where. No pain in a leg without feeling says nothing.
msg-item-leg_stretch_pain_back-otherwise = Seated or half sitting the same. In a cast: the toes alone. Who cannot answer: not reliable, say so, and look again every hour.
msg-item-leg_stretch_pain_back-yes = strong pain in that part, more than the hurt explains
msg-item-leg_stretch_pain_back-no = no strong pain there on stretch

msg-item-leg_stretch_pain_deep-short = Stretch pain, deep back compartment
msg-item-leg_stretch_pain_deep-how = Lying or seated, with the foot held still bend the toes slowly UP, then turn the foot outward. Stop at the first strong pain. Yes for strong pain in that part of the lower leg, more than the hurt explains.
msg-item-leg_stretch_pain_deep-purpose = Pain when the muscles of one compartment are lengthened: among the first signs of pressure.
msg-item-leg_stretch_pain_deep-care = Once is enough, slowly. Not where the foot or ankle is visibly broken: moving the toes alone is then enough. A yes after an injury, a cast or a crush is an emergency, whatever the pulse.
msg-item-leg_stretch_pain_deep-errors = A strained muscle, the break itself or the ankle joint hurts: ask where. No pain in a leg without feeling says nothing.
msg-item-leg_stretch_pain_deep-otherwise = Seated or half sitting the same. In a cast: the toes alone. Who cannot answer: not reliable, say so, and look again every hour.
msg-item-leg_stretch_pain_deep-yes = strong pain in that part, more than the hurt explains
msg-item-leg_stretch_pain_deep-no = no strong pain there on stretch

msg-item-leg_thigh_shaft_tender-short = Thigh bone tender
msg-item-leg_thigh_shaft_tender-how = Lying, press with flat fingers through the muscle along the thigh bone, front and outer side, from hip to knee. Yes for pain at the bone.
msg-item-leg_thigh_shaft_tender-purpose = A break, a stress fracture or a growth in the shaft.
msg-item-leg_thigh_shaft_tender-care = Light touch only where a break is open; nothing bent or twisted.
msg-item-leg_thigh_shaft_tender-errors = { -bone_errors }
msg-item-leg_thigh_shaft_tender-otherwise = { -bone_otherwise }
msg-item-leg_thigh_shaft_tender-yes = tender here
msg-item-leg_thigh_shaft_tender-no = not tender here

msg-item-leg_tibial_crest_tender-short = Front edge of the shin tender
msg-item-leg_tibial_crest_tender-how = Run one finger down the front edge of the shin from the tubercle to the ankle. Yes for pain at the bone.
msg-item-leg_tibial_crest_tender-purpose = Stress fracture of the front of the shin, a blow, a break.
msg-item-leg_tibial_crest_tender-care = One sharp spot at the front edge in somebody who runs or marches: a stress fracture there heals badly; no hopping.
msg-item-leg_tibial_crest_tender-errors = { -bone_errors }
msg-item-leg_tibial_crest_tender-otherwise = { -bone_otherwise }
msg-item-leg_tibial_crest_tender-yes = tender here
msg-item-leg_tibial_crest_tender-no = not tender here

msg-item-leg_tibial_border_tender-short = Inner back edge of the shin tender
msg-item-leg_tibial_border_tender-how = Lying or seated, leg slack. Press along the inner back edge of the shin from knee to ankle, every finger's breadth. Yes for pain; measure how long the strip is.
msg-item-leg_tibial_border_tender-purpose = A long tender strip speaks for overloaded bone skin, one sharp spot for a stress fracture.
msg-item-leg_tibial_border_tender-care = Look for swelling, a warm hard calf and veins first; no deep pressing where a clot is open.
msg-item-leg_tibial_border_tender-errors = { -bone_errors }
msg-item-leg_tibial_border_tender-otherwise = { -bone_otherwise }
msg-item-leg_tibial_border_tender-yes = tender here
msg-item-leg_tibial_border_tender-no = not tender here

msg-item-leg_tibial_border_tender_length-short = Length of the tender strip at the shin
msg-item-leg_tibial_border_tender_length-how = Mark the upper and lower end of the tender strip along the inner back edge of the shin; tape between the marks. One spot: 0 to a fingertip's breadth.
msg-item-leg_tibial_border_tender_length-purpose = Longer than 5 cm speaks for overload along the edge; one short spot for a stress fracture.
msg-item-leg_tibial_border_tender_length-errors = Two separate spots measured as one strip: say so in the remark.
msg-item-leg_tibial_border_tender_length-otherwise = Seated or lying the same. The person may mark the ends with a finger.

msg-item-leg_tibial_spot_tender-short = One sharp tender spot on the shin
msg-item-leg_tibial_spot_tender-how = Fingertip along the shin, then once more around the place that hurts. Yes for one spot that can be covered with a fingertip and hurts sharply.
msg-item-leg_tibial_spot_tender-purpose = A stress fracture, an infection of bone or a growth.
msg-item-leg_tibial_spot_tender-care = With fever, or night pain that gets worse: the same day. No hop to try it out.
msg-item-leg_tibial_spot_tender-errors = { -bone_errors }
msg-item-leg_tibial_spot_tender-otherwise = { -bone_otherwise }
msg-item-leg_tibial_spot_tender-yes = tender here
msg-item-leg_tibial_spot_tender-no = not tender here

msg-item-leg_fibular_shaft_tender-short = Fibula tender along the shaft
msg-item-leg_fibular_shaft_tender-how = Press the fibula every few centimetres from the outer ankle bone up to the neck. Yes for pain at the bone; write how far up.
msg-item-leg_fibular_shaft_tender-purpose = A high break of the fibula goes with torn ligaments at the inner ankle or between shin and fibula; easily missed.
msg-item-leg_fibular_shaft_tender-care = Yes after an ankle injury: the whole lower leg on the film, and no twisting test before it.
msg-item-leg_fibular_shaft_tender-errors = { -bone_errors }
msg-item-leg_fibular_shaft_tender-otherwise = { -bone_otherwise }
msg-item-leg_fibular_shaft_tender-yes = tender here
msg-item-leg_fibular_shaft_tender-no = not tender here

msg-item-leg_fibular_neck_tender-short = Neck of the fibula tender
msg-item-leg_fibular_neck_tender-how = Press just below the head of the fibula at the outer side of the knee. Yes for pain at the bone.
msg-item-leg_fibular_neck_tender-purpose = High break of the fibula; the nerve that lifts the foot lies here.
msg-item-leg_fibular_neck_tender-care = Yes after an ankle injury: film of the whole lower leg. Lightly: the nerve lies on the bone. See that the foot lifts.
msg-item-leg_fibular_neck_tender-errors = { -bone_errors }
msg-item-leg_fibular_neck_tender-otherwise = { -bone_otherwise }
msg-item-leg_fibular_neck_tender-yes = tender here
msg-item-leg_fibular_neck_tender-no = not tender here

msg-item-leg_fibula_squeeze-short = Squeeze of the fibula near the knee
msg-item-leg_fibula_squeeze-how = Seated or lying, both hands round the upper half of the lower leg; press fibula and shin together once, gently, working down from below the neck.
msg-item-leg_fibula_squeeze-purpose = A high break of the fibula with an ankle injury.
msg-item-leg_fibula_squeeze-positive = Pain in the fibula under the hand.
msg-item-leg_fibula_squeeze-care = Gently and once. Not where shin or fibula is bent, the leg is hard, or a clot is open.
msg-item-leg_fibula_squeeze-errors = Pain felt down at the ankle is another sign (squeeze for the ligaments between the bones). A bruised calf hurts.
msg-item-leg_fibula_squeeze-otherwise = Small hands or a thick calf: the heel of one hand on the fibula, the other against the shin. Seated, lying or on the side.
msg-item-leg_fibula_squeeze-yes = pain in the fibula under the hand
msg-item-leg_fibula_squeeze-no = no pain in the fibula under the hand

msg-item-leg_shin_squeeze-short = Shin squeezed, a child on the lap
msg-item-leg_shin_squeeze-how = Child on the lap, other things to look at. Squeeze and then press along the shin from knee to ankle, the other leg first; watch the face. Then, once and gently, twist the shin with knee and ankle held.
msg-item-leg_shin_squeeze-purpose = A toddler's break of the shin, an infection of bone; why a small child will not walk.
msg-item-leg_shin_squeeze-positive = The child cries or pulls away at the same place each time.
msg-item-leg_shin_squeeze-care = Once. Where the squeeze hurts, no twist. Fever or a hot leg: the same day.
msg-item-leg_shin_squeeze-errors = A child that cries at every touch; ankle or knee twisted instead of the shin. The film may show nothing in the first days.
msg-item-leg_shin_squeeze-otherwise = On the lap of whoever the child trusts; who speaks can point with one finger. An adult: press the shin point by point.
msg-item-leg_shin_squeeze-yes = pain at one place of the shin
msg-item-leg_shin_squeeze-no = no pain along the shin

msg-item-leg_shin_fork_pain-short = Tuning fork on the shin
msg-item-leg_shin_fork_pain-how = 128 Hz fork, struck, its foot on the tender spot of the bone; then on the same place of the other leg.
msg-item-leg_shin_fork_pain-purpose = Supports a stress fracture of the shin; too uneven to decide alone.
msg-item-leg_shin_fork_pain-positive = Sharp pain at that spot while the fork sounds, not on the other side.
msg-item-leg_shin_fork_pain-care = Not over a wound, nor over a break that is open, nor where bone may be infected.
msg-item-leg_shin_fork_pain-errors = Fork held on muscle; spot not pressed first. Studies differ widely: neither result stands alone.
msg-item-leg_shin_fork_pain-otherwise = No fork: pressure with one fingertip tells as much. Seated or lying.
msg-item-leg_shin_fork_pain-yes = sharp pain from the fork at that spot
msg-item-leg_shin_fork_pain-no = no sharp pain from the fork

msg-item-leg_shin_percussion_pain-short = Tapping the shin away from the pain
msg-item-leg_shin_percussion_pain-how = Seated or lying. Tap the shin with a finger well above or below the painful place.
msg-item-leg_shin_percussion_pain-purpose = Supports a stress fracture: the knock travels along the bone.
msg-item-leg_shin_percussion_pain-positive = Pain at the painful place, not where it is tapped.
msg-item-leg_shin_percussion_pain-care = Not over a wound, nor over a break that is open, nor where bone may be infected.
msg-item-leg_shin_percussion_pain-errors = Tapped on the painful place itself. How good it is, is not known here.
msg-item-leg_shin_percussion_pain-otherwise = Seated, lying or on the side the same.
msg-item-leg_shin_percussion_pain-yes = pain at a distance, in the painful place
msg-item-leg_shin_percussion_pain-no = no pain at a distance

msg-item-leg_quadriceps_belly_tender-short = Front thigh muscle tender
msg-item-leg_quadriceps_belly_tender-how = Lying or seated, thigh slack, then pulled tight. Flat fingers from the groin to the kneecap. Yes for the familiar pain; say how far above the kneecap.
msg-item-leg_quadriceps_belly_tender-purpose = Strain or bruise of the muscle that straightens the knee.
msg-item-leg_quadriceps_belly_tender-care = A hard, growing bruise after a blow: no massage, look at the compartments of the thigh. A lump that is not from an injury: not pressed again.
msg-item-leg_quadriceps_belly_tender-errors = { -press_errors }
msg-item-leg_quadriceps_belly_tender-otherwise = { -press_otherwise }
msg-item-leg_quadriceps_belly_tender-yes = tender here
msg-item-leg_quadriceps_belly_tender-no = not tender here

msg-item-leg_quadriceps_belly_gap-short = Dip in the front thigh muscle
msg-item-leg_quadriceps_belly_gap-how = Seated, the person straightens the knee against gravity. Look and feel for a dip or a lump that stands up.
msg-item-leg_quadriceps_belly_gap-purpose = A torn belly; a gap close to the kneecap is a torn tendon and is recorded at the knee.
msg-item-leg_quadriceps_belly_gap-care = Not with a break of thigh bone or shin open. Cannot straighten the knee: look at the extensor tendons first.
msg-item-leg_quadriceps_belly_gap-errors = Swelling fills a fresh dip; an old tear may be without pain.
msg-item-leg_quadriceps_belly_gap-otherwise = Lying: the knee is pressed into the couch. One limb: compare with the parts above and below.
msg-item-leg_quadriceps_belly_gap-yes = a dip or a lump that stands up
msg-item-leg_quadriceps_belly_gap-no = no dip felt

msg-item-leg_hamstring_belly_tender-short = Back thigh muscle tender
msg-item-leg_hamstring_belly_tender-how = Lying on the front, knee bent a little over a roll; flat fingers from the sitting bone to the hollow of the knee. Yes for the familiar pain; write the distance to the sitting bone in the remark.
msg-item-leg_hamstring_belly_tender-purpose = Strain of the muscles at the back of the thigh; the higher, the slower it heals.
msg-item-leg_hamstring_belly_tender-care = A sudden pop with a bruise near the sitting bone, or a growing person with sudden pain there: the tendon may be off the bone; no stretching.
msg-item-leg_hamstring_belly_tender-errors = { -press_errors }
msg-item-leg_hamstring_belly_tender-otherwise = Not on the front late in pregnancy or with a sore belly: on the side, or seated on the edge with fingers under the thigh, or on the back with the knee drawn up.
msg-item-leg_hamstring_belly_tender-yes = tender here
msg-item-leg_hamstring_belly_tender-no = not tender here

msg-item-leg_hamstring_belly_gap-short = Dip in the back thigh muscle
msg-item-leg_hamstring_belly_gap-how = Lying on the front, the person lifts the foot a little against your hand and lets go. Feel for a dip or a lump.
msg-item-leg_hamstring_belly_gap-purpose = A torn belly, or a tendon off the sitting bone.
msg-item-leg_hamstring_belly_gap-care = Lightly pulled only, and not with a break of thigh bone or shin open. A dip just below the sitting bone: no stretching, and an opinion soon.
msg-item-leg_hamstring_belly_gap-errors = A bruise and swelling hide it in the first days.
msg-item-leg_hamstring_belly_gap-otherwise = On the side, seated with the heel pulled back against a leg of the couch, or on the back with the knee bent.
msg-item-leg_hamstring_belly_gap-yes = a dip or a lump that stands up
msg-item-leg_hamstring_belly_gap-no = no dip felt

msg-item-leg_hamstring_tendons_tender-short = Tendons beside the hollow of the knee tender
msg-item-leg_hamstring_tendons_tender-how = Knee bent and slack, the person pulls the heel back lightly. Feel the two inner cords and the one outer cord. Yes for the familiar pain; say which.
msg-item-leg_hamstring_tendons_tender-purpose = Overuse or a tear where the back thigh muscles reach the shin and fibula.
msg-item-leg_hamstring_tendons_tender-errors = { -press_errors }
msg-item-leg_hamstring_tendons_tender-otherwise = Seated on the edge is as good as lying on the front; on the back with the foot flat too.
msg-item-leg_hamstring_tendons_tender-yes = tender here
msg-item-leg_hamstring_tendons_tender-no = not tender here

msg-item-leg_gastrocnemius_medial_tender-short = Inner calf belly tender
msg-item-leg_gastrocnemius_medial_tender-how = Lying on the front with the foot over the edge, or seated with the knee bent and the calf slack. Flat fingers over the inner belly in the upper half of the calf and where it runs into its sheet. Yes for the familiar pain.
msg-item-leg_gastrocnemius_medial_tender-purpose = Tear of the inner head of the calf muscle: a sudden kick felt in the calf.
msg-item-leg_gastrocnemius_medial_tender-care = A clot hurts as a strain does, and both may be there: look for swelling and ask for what makes a clot; no massage, no deep or repeated pressing where a clot is open.
msg-item-leg_gastrocnemius_medial_tender-errors = Tender along the middle line of the deep veins taken for muscle. No injury told: think of a clot.
msg-item-leg_gastrocnemius_medial_tender-otherwise = Cannot lie on the front: seated, or on the side, knee bent. Thick calf: both hands.
msg-item-leg_gastrocnemius_medial_tender-yes = tender here
msg-item-leg_gastrocnemius_medial_tender-no = not tender here

msg-item-leg_gastrocnemius_lateral_tender-short = Outer calf belly tender
msg-item-leg_gastrocnemius_lateral_tender-how = Lying on the front with the foot over the edge, or seated with the knee bent and the calf slack. Flat fingers over the outer belly in the upper half of the calf. Yes for the familiar pain.
msg-item-leg_gastrocnemius_lateral_tender-purpose = Tear or strain of the outer head.
msg-item-leg_gastrocnemius_lateral_tender-care = A clot hurts as a strain does, and both may be there: look for swelling and ask for what makes a clot; no massage, no deep or repeated pressing where a clot is open.
msg-item-leg_gastrocnemius_lateral_tender-errors = Tender along the middle line of the deep veins taken for muscle. No injury told: think of a clot.
msg-item-leg_gastrocnemius_lateral_tender-otherwise = Cannot lie on the front: seated, or on the side, knee bent. Thick calf: both hands.
msg-item-leg_gastrocnemius_lateral_tender-yes = tender here
msg-item-leg_gastrocnemius_lateral_tender-no = not tender here

msg-item-leg_soleus_tender-short = Deep calf muscle tender
msg-item-leg_soleus_tender-how = Lying on the front with the foot over the edge, or seated with the knee bent and the calf slack. Flat fingers from both sides under the bellies, in the middle and lower calf. Yes for the familiar pain.
msg-item-leg_soleus_tender-purpose = Strain of the deep muscle; hurts with the knee bent too.
msg-item-leg_soleus_tender-care = A clot hurts as a strain does, and both may be there: look for swelling and ask for what makes a clot; no massage, no deep or repeated pressing where a clot is open.
msg-item-leg_soleus_tender-errors = Tender along the middle line of the deep veins taken for muscle. No injury told: think of a clot.
msg-item-leg_soleus_tender-otherwise = Cannot lie on the front: seated, or on the side, knee bent. Thick calf: both hands.
msg-item-leg_soleus_tender-yes = tender here
msg-item-leg_soleus_tender-no = not tender here

msg-item-leg_calf_belly_gap-short = Dip in the calf muscle
msg-item-leg_calf_belly_gap-how = Lying on the front or seated with the calf slack; run flat fingers down the inner belly to its lower end, both sides. Yes for a dip. A dip nearer the heel is in the heel cord and recorded there.
msg-item-leg_calf_belly_gap-purpose = A torn belly of the calf.
msg-item-leg_calf_belly_gap-care = Lightly: no massage where a clot is open.
msg-item-leg_calf_belly_gap-errors = Swelling fills it within hours.
msg-item-leg_calf_belly_gap-otherwise = Cannot lie on the front: seated or on the side. One limb: compare with the outer belly.
msg-item-leg_calf_belly_gap-yes = a dip in the belly
msg-item-leg_calf_belly_gap-no = no dip felt

msg-item-leg_resisted_plantarflexion_knee_straight-short = Foot pushed down against the hand, knee straight
msg-item-leg_resisted_plantarflexion_knee_straight-how = Lying or seated, knee straight, so that both layers of the calf pull. The person pushes the ball of the foot slowly down against your hand and holds; pain and place. Power itself is recorded among the nerves.
msg-item-leg_resisted_plantarflexion_knee_straight-purpose = The calf muscle and the heel cord under load, with the knee straight.
msg-item-leg_resisted_plantarflexion_knee_straight-positive = The familiar pain in the calf or the heel cord; say where.
msg-item-leg_resisted_plantarflexion_knee_straight-care = Do the calf squeeze first after a sudden pain behind the ankle. Not against resistance with a torn heel cord or a break open.
msg-item-leg_resisted_plantarflexion_knee_straight-errors = Toes push alone; the hand gives way. Weak without pain: look for a torn heel cord or a nerve root.
msg-item-leg_resisted_plantarflexion_knee_straight-otherwise = Small hands, strong calf: the foot against your thigh or a strap held in both hands. Seated with the knee straight as well as lying.
msg-item-leg_resisted_plantarflexion_knee_straight-yes = the familiar pain when the calf pushes
msg-item-leg_resisted_plantarflexion_knee_straight-no = no familiar pain when the calf pushes

msg-item-leg_resisted_plantarflexion_knee_bent-short = Foot pushed down against the hand, knee bent
msg-item-leg_resisted_plantarflexion_knee_bent-how = Lying or seated, knee bent, so that the deep layer pulls. The person pushes the ball of the foot slowly down against your hand and holds; pain and place. Power itself is recorded among the nerves.
msg-item-leg_resisted_plantarflexion_knee_bent-purpose = The deep layer of the calf and the heel cord under load, with the knee bent.
msg-item-leg_resisted_plantarflexion_knee_bent-positive = The familiar pain in the calf or the heel cord; say where.
msg-item-leg_resisted_plantarflexion_knee_bent-care = Do the calf squeeze first after a sudden pain behind the ankle. Not against resistance with a torn heel cord or a break open.
msg-item-leg_resisted_plantarflexion_knee_bent-errors = Toes push alone; the hand gives way. Weak without pain: look for a torn heel cord or a nerve root.
msg-item-leg_resisted_plantarflexion_knee_bent-otherwise = Small hands, strong calf: the foot against your thigh or a strap held in both hands. Seated with the knee bent as well as lying.
msg-item-leg_resisted_plantarflexion_knee_bent-yes = the familiar pain when the calf pushes
msg-item-leg_resisted_plantarflexion_knee_bent-no = no familiar pain when the calf pushes

msg-item-leg_thigh_foot_angle-short = Thigh-foot angle, face down, knee at 90
msg-item-leg_thigh_foot_angle-how = Lying on the front, knee bent 90, ankle at a right angle, sole level and left as it falls. From above: the angle between the middle line of the thigh and the middle line of the foot. Toes outward is positive, inward negative.
msg-item-leg_thigh_foot_angle-purpose = Twist of the shin and foot together: why toes turn in or out.
msg-item-leg_thigh_foot_angle-care = Not with a fracture of pelvis, hip, thigh, knee or shin open, nor with a slip: nobody is turned for it.
msg-item-leg_thigh_foot_angle-errors = Foot turned by the hand; a curved foot read instead of the heel's line; knee not at 90.
msg-item-leg_thigh_foot_angle-otherwise = Cannot lie on the front: the line through both ankle bones, seated, which is a quantity of its own. A small child: face down on the lap. Not late in pregnancy face down.

msg-item-leg_transmalleolar_axis-short = Transmalleolar axis, face down, knee at 90
msg-item-leg_transmalleolar_axis-how = Lying on the front, knee bent 90. Mark the middle of both ankle bones. The angle between the line square to the ankle-bone line and the middle line of the thigh, seen from above. Outward is positive.
msg-item-leg_transmalleolar_axis-purpose = Twist of the shin alone, without the foot.
msg-item-leg_transmalleolar_axis-care = Not with a fracture of pelvis, hip, thigh, knee or shin open, nor with a slip: nobody is turned for it.
msg-item-leg_transmalleolar_axis-errors = Tips marked instead of the middle; hip rotated; knee not at 90.
msg-item-leg_transmalleolar_axis-otherwise = Cannot lie on the front: the seated form, which is a quantity of its own.

msg-item-leg_transmalleolar_axis_seated-short = Transmalleolar axis, seated, knee at 90
msg-item-leg_transmalleolar_axis_seated-how = Seated on the edge, knee bent 90, thigh pointing straight ahead, kneecap facing forward. Looking down: the angle of the line through both ankle bones to the edge of the couch. Outer bone behind the inner one is outward and positive.
msg-item-leg_transmalleolar_axis_seated-purpose = Twist of the shin alone, for who cannot lie on the front.
msg-item-leg_transmalleolar_axis_seated-care = Not with a fracture of thigh, knee or shin open.
msg-item-leg_transmalleolar_axis_seated-errors = Thigh not square to the edge; knee not at 90.
msg-item-leg_transmalleolar_axis_seated-otherwise = Cannot sit: the reading face down, where the person can lie so; otherwise record not done. Not to be compared with the reading face down.
