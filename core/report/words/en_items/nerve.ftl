# What the catalogue says of nerves: power, strength, reflexes, touch, and the tests that stretch or tap a nerve. Label, technique, what it is for, what counts, when not.
# A dot in a message name is a dash here. Language: English. Reviewed by: nobody yet.

msg-item-nerve_power_hip_flexion-short = Power, hip flexion
msg-item-nerve_power_hip_flexion-how = Seated on the edge, back upright. The person lifts the thigh off the couch and holds it against the hand just above the knee. Full range against gravity first, then resistance. Graded 0 to 5; with minus or plus at 4.
msg-item-nerve_power_hip_flexion-purpose = Muscles that bend the hip; key movement of the root L2.
msg-item-nerve_power_hip_flexion-care = Not against resistance where hip, pelvis, thigh or shin may be broken, where the hip may have slipped, or with a stress fracture of the hip not settled. In a runner with pain in the groin on load: not at all until it is settled.
msg-item-nerve_power_hip_flexion-errors = Pain lowers effort: mark the effort as limited. Body leaning and other muscles do the work: hold the joint above still.
msg-item-nerve_power_hip_flexion-otherwise = Cannot sit: lying on the back, hip and knee bent to a right angle with the calf carried, hold against the hand. Small hands: forearm across the thigh, weight of the body. Without gravity: side-lying with the limb carried.

msg-item-nerve_power_hip_extension-short = Power, hip extension
msg-item-nerve_power_hip_extension-how = Face down, knee bent so that the hamstrings rest. The person lifts the thigh off the couch with the pelvis flat, and holds it against the hand on the back of the thigh. Graded 0 to 5; with minus or plus at 4.
msg-item-nerve_power_hip_extension-purpose = Gluteus maximus; a backward lurch in walking and rising from a squat depend on it.
msg-item-nerve_power_hip_extension-care = Not against resistance where hip, pelvis, thigh or shin may be broken, where the hip may have slipped, or with a stress fracture of the hip not settled. Not face down from mid-pregnancy.
msg-item-nerve_power_hip_extension-errors = Pain lowers effort: mark the effort as limited. Body leaning and other muscles do the work: hold the joint above still.
msg-item-nerve_power_hip_extension-otherwise = Cannot lie face down: on the back, heel pressed down into the hand without lifting the other hip; or standing, chest over the couch. Lost: the comparison with gravity. Without gravity: side-lying, thigh carried.

msg-item-nerve_power_hip_abduction-short = Power, hip abduction, side-lying
msg-item-nerve_power_hip_abduction-how = Lying on the other side, lower leg bent, top hip straight or slightly behind the body, foot level. The person lifts the leg 20 to 30 degrees and holds it against the hand just above the ankle; for a large limb or a weak examiner above the knee. Say in the remark which: another lever. Graded 0 to 5; with minus or plus at 4.
msg-item-nerve_power_hip_abduction-purpose = Side muscles of the hip; pairs with pressing on the trochanter in pain at the outer hip.
msg-item-nerve_power_hip_abduction-care = Not against resistance where hip, pelvis, thigh or shin may be broken, where the hip may have slipped, or with a stress fracture of the hip not settled. Not lying on a painful hip in a frail person. Hurt knee: hand above the knee.
msg-item-nerve_power_hip_abduction-errors = The thigh drifts forward and the hip flexors lift it; the pelvis rolls back. Hand at the ankle once and above the knee the next time.
msg-item-nerve_power_hip_abduction-otherwise = Small examiner: a belt round the couch with a dynamometer. Cannot lie on either side: the form on the back.

msg-item-nerve_power_hip_abduction_supine-short = Power, hip abduction, lying on the back
msg-item-nerve_power_hip_abduction_supine-how = Lying on the back, legs straight, the other leg held still. The person pushes the leg outward against the hand or a belt at the outer side above the ankle, without moving. Graded 0 to 5; with minus or plus at 4.
msg-item-nerve_power_hip_abduction_supine-purpose = The side muscles of the hip where nobody can lie on the side.
msg-item-nerve_power_hip_abduction_supine-care = Not against resistance where hip, pelvis, thigh or shin may be broken, where the hip may have slipped, or with a stress fracture of the hip not settled. Hurt knee: hand or belt above the knee.
msg-item-nerve_power_hip_abduction_supine-errors = Gravity does not count here: compare only with the same form, side with side. The pelvis hitches.
msg-item-nerve_power_hip_abduction_supine-otherwise = Large limb: push against a belt round both thighs.

msg-item-nerve_power_hip_abduction_seated-short = Power, hip abduction, seated
msg-item-nerve_power_hip_abduction_seated-how = Seated, feet on the floor, knees together. The person pushes the knees apart against the hands on their outer sides, without moving. Graded 0 to 5; with minus or plus at 4.
msg-item-nerve_power_hip_abduction_seated-purpose = The side muscles of the hip where nobody can lie down.
msg-item-nerve_power_hip_abduction_seated-care = Not against resistance where hip, pelvis, thigh or shin may be broken, where the hip may have slipped, or with a stress fracture of the hip not settled.
msg-item-nerve_power_hip_abduction_seated-errors = Bent hip: other fibres work than with the hip straight. Compare only with the same form.
msg-item-nerve_power_hip_abduction_seated-otherwise = Large limb or small hands: a belt round both thighs.

msg-item-nerve_power_hip_adduction-short = Power, hip adduction
msg-item-nerve_power_hip_adduction-how = Lying on the side to be tested, top leg carried or bent over in front. The person lifts the lower leg and holds it against the hand at the inner side above the knee. Graded 0 to 5; with minus or plus at 4.
msg-item-nerve_power_hip_adduction-purpose = Muscles of the inner thigh.
msg-item-nerve_power_hip_adduction-care = Not against resistance where hip, pelvis, thigh or shin may be broken, where the hip may have slipped, or with a stress fracture of the hip not settled. Not where the pubic bone may be broken. Not lying on a painful hip in a frail person. Replaced hip: the squeeze, on the back.
msg-item-nerve_power_hip_adduction-errors = Pain lowers effort: mark the effort as limited. Body leaning and other muscles do the work: hold the joint above still.
msg-item-nerve_power_hip_adduction-otherwise = Cannot lie on the side: on the back or seated, squeeze a fist or pillow between the knees; lost: the sides are not told apart. One limb: against the hand at the inner thigh.

msg-item-nerve_power_hip_internal_rotation-short = Power, hip inward rotation
msg-item-nerve_power_hip_internal_rotation-how = Seated, hip and knee bent 90, thigh still. The person swings the FOOT outward and holds it against the hand at the outer ankle. Graded 0 to 5; with minus or plus at 4.
msg-item-nerve_power_hip_internal_rotation-purpose = Muscles that turn the thigh inward.
msg-item-nerve_power_hip_internal_rotation-care = Not against resistance where hip, pelvis, thigh or shin may be broken, where the hip may have slipped, or with a stress fracture of the hip not settled. Nor through the shin where the knee may be broken or was dislocated. Replaced hip: bent and turned inward it can come out of joint; keep the thigh in the middle.
msg-item-nerve_power_hip_internal_rotation-errors = Side of the foot taken for the side of the turn: foot outward is thigh inward. The thigh lifts or the body leans.
msg-item-nerve_power_hip_internal_rotation-otherwise = Cannot sit: on the back with hip and knee bent 90, shin carried. A sore knee: hand on the thigh above the knee.

msg-item-nerve_power_hip_external_rotation-short = Power, hip outward rotation
msg-item-nerve_power_hip_external_rotation-how = Seated, hip and knee bent 90, thigh still. The person swings the FOOT inward and holds it against the hand at the inner ankle. Graded 0 to 5; with minus or plus at 4.
msg-item-nerve_power_hip_external_rotation-purpose = Muscles that turn the thigh outward.
msg-item-nerve_power_hip_external_rotation-care = Not against resistance where hip, pelvis, thigh or shin may be broken, where the hip may have slipped, or with a stress fracture of the hip not settled. Nor through the shin where the knee may be broken or was dislocated.
msg-item-nerve_power_hip_external_rotation-errors = Side of the foot taken for the side of the turn: foot inward is thigh outward. The thigh lifts or the body leans.
msg-item-nerve_power_hip_external_rotation-otherwise = Cannot sit: on the back with hip and knee bent 90, shin carried. A sore knee: hand on the thigh above the knee.

msg-item-nerve_power_knee_flexion-short = Power, knee flexion
msg-item-nerve_power_knee_flexion-how = Seated, knee bent over the edge. The person pulls the heel back under the couch and holds it against the hand behind the ankle. Graded 0 to 5; with minus or plus at 4.
msg-item-nerve_power_knee_flexion-purpose = Hamstrings.
msg-item-nerve_power_knee_flexion-care = Not against resistance where hip, pelvis, thigh, knee or shin may be broken or the hip slipped, the knee was dislocated, or the extensor tendons may be torn. Sudden pain at the sitting bone with a pop, or a bruise there: no resistance. Not face down from mid-pregnancy.
msg-item-nerve_power_knee_flexion-errors = Pain lowers effort: mark the effort as limited. Body leaning and other muscles do the work: hold the joint above still.
msg-item-nerve_power_knee_flexion-otherwise = Against gravity: face down, knee bent half way. Cannot sit or lie face down: on the back with the knee bent and the foot on the couch, heel pressed down and back.

msg-item-nerve_power_ankle_plantarflexion-short = Power, pushing the foot down
msg-item-nerve_power_ankle_plantarflexion-how = Lying or seated, knee straight, foot over the edge. The person pushes the foot down against the palm under the ball of the foot. Graded 0 to 5; with minus or plus at 4.
msg-item-nerve_power_ankle_plantarflexion-purpose = Calf; key movement of the root S1.
msg-item-nerve_power_ankle_plantarflexion-care = Not forced where the heel cord may be torn: feel for a gap first. Not against resistance where leg, ankle or foot may be broken. Moving the foot or the toes down leaves a torn cord not excluded.
msg-item-nerve_power_ankle_plantarflexion-errors = The calf is stronger than any hand: small losses show only in heel rises on one leg. The toe muscles push the foot down too.
msg-item-nerve_power_ankle_plantarflexion-otherwise = Cannot stand for heel rises: hold against both hands or the weight of the body, and write that small losses are not seen.

msg-item-nerve_power_ankle_inversion-short = Power, turning the sole inward
msg-item-nerve_power_ankle_inversion-how = Seated or lying, foot pointed down a little. The person turns the sole inward and holds it against the hand at the inner border of the forefoot. Graded 0 to 5; with minus or plus at 4.
msg-item-nerve_power_ankle_inversion-purpose = Tibialis posterior, and with the foot lifted tibialis anterior.
msg-item-nerve_power_ankle_inversion-care = Gently after a fresh injury, and not against resistance where leg, ankle or foot may be broken.
msg-item-nerve_power_ankle_inversion-errors = The whole leg turns inward at the hip: hold the shin. The toes pull instead.
msg-item-nerve_power_ankle_inversion-otherwise = Heavy limb: heel rests on the couch.

msg-item-nerve_power_ankle_eversion-short = Power, turning the sole outward
msg-item-nerve_power_ankle_eversion-how = Seated or lying, foot pointed down a little. The person turns the sole outward and holds it against the hand at the outer border of the foot. Graded 0 to 5; with minus or plus at 4.
msg-item-nerve_power_ankle_eversion-purpose = Peroneal muscles; weak with the foot drop of the common fibular nerve.
msg-item-nerve_power_ankle_eversion-care = Gently after a fresh injury, and not against resistance where leg, ankle or foot may be broken.
msg-item-nerve_power_ankle_eversion-errors = The whole leg turns outward at the hip: hold the shin. A fresh sprain hurts and lowers effort.
msg-item-nerve_power_ankle_eversion-otherwise = Heavy limb: heel rests on the couch.

msg-item-nerve_power_great_toe_extension-short = Power, lifting the great toe
msg-item-nerve_power_great_toe_extension-how = Seated or lying, foot at rest. The person lifts the great toe and holds it against one finger on its nail. Graded 0 to 5; with minus or plus at 4.
msg-item-nerve_power_great_toe_extension-purpose = Key movement of the root L5; deep fibular nerve.
msg-item-nerve_power_great_toe_extension-care = Where shin, foot or toe may be broken: moved without resistance. Lost after an injury, plaster or operation: look at vessel and compartment at once.
msg-item-nerve_power_great_toe_extension-errors = A stiff joint at the base of the toe: less movement, not less power. The foot lifts instead.
msg-item-nerve_power_great_toe_extension-otherwise = No great toe: the lesser toes.

msg-item-nerve_power_great_toe_flexion-short = Power, bending the great toe
msg-item-nerve_power_great_toe_flexion-how = Seated or lying, foot at rest. The person bends the great toe down over the finger and holds it. Graded 0 to 5; with minus or plus at 4.
msg-item-nerve_power_great_toe_flexion-purpose = Long flexor of the great toe; tibial nerve.
msg-item-nerve_power_great_toe_flexion-care = Where shin, foot or toe may be broken: moved without resistance. Lost after an injury, plaster or operation: look at vessel and compartment at once.
msg-item-nerve_power_great_toe_flexion-errors = The foot pushes down instead. A stiff joint at the base of the toe.
msg-item-nerve_power_great_toe_flexion-otherwise = No great toe: the lesser toes.

msg-item-nerve_power_toes_extension-short = Power, lifting the lesser toes
msg-item-nerve_power_toes_extension-how = Seated or lying, foot at rest. The person lifts the four lesser toes and holds them against a finger laid across. Graded 0 to 5; with minus or plus at 4.
msg-item-nerve_power_toes_extension-purpose = Long and short extensors; L5, deep fibular nerve.
msg-item-nerve_power_toes_extension-care = Where shin, foot or toe may be broken: moved without resistance. Lost after an injury, plaster or operation: look at vessel and compartment at once.
msg-item-nerve_power_toes_extension-errors = Clawed toes stand up without any power.
msg-item-nerve_power_toes_extension-otherwise = Toes missing: those that are there; write which.

msg-item-nerve_power_toes_flexion-short = Power, bending the lesser toes
msg-item-nerve_power_toes_flexion-how = Seated or lying, foot at rest. The person curls the four lesser toes over a finger and holds them. Graded 0 to 5; with minus or plus at 4.
msg-item-nerve_power_toes_flexion-purpose = Long flexors of the toes; tibial nerve.
msg-item-nerve_power_toes_flexion-care = Where shin, foot or toe may be broken: moved without resistance. Lost after an injury, plaster or operation: look at vessel and compartment at once.
msg-item-nerve_power_toes_flexion-errors = The foot pushes down instead. Stiff clawed toes do not move though the muscle works.
msg-item-nerve_power_toes_flexion-otherwise = Toes missing: those that are there; write which.

msg-item-nerve_strength_hip_flexion-short = Strength, hip flexion (dynamometer)
msg-item-nerve_strength_hip_flexion-how = Seated, hip and knee bent 90, the pad on the front of the thigh just above the knee. The person pushes for three to five seconds; the best of up to three pushes counts.
msg-item-nerve_strength_hip_flexion-purpose = A number to compare sides and visits.
msg-item-nerve_strength_hip_flexion-care = Not against resistance where hip, pelvis, thigh or shin may be broken, where the hip may have slipped, or with a stress fracture of the hip not settled. Not in a hot joint.
msg-item-nerve_strength_hip_flexion-errors = The pad stands at another place: another lever, another number. No strap: the examiner's own strength is measured.
msg-item-nerve_strength_hip_flexion-otherwise = Small examiner: a belt fixed to the couch holds the dynamometer. No dynamometer: power by hand.

msg-item-nerve_strength_hip_extension-short = Strength, hip extension (dynamometer)
msg-item-nerve_strength_hip_extension-how = Face down, knee straight, the pad on the back of the leg just above the ankle, a belt over the pelvis. The person pushes for three to five seconds; the best of up to three pushes counts.
msg-item-nerve_strength_hip_extension-purpose = A number to compare sides and visits.
msg-item-nerve_strength_hip_extension-care = Not against resistance where hip, pelvis, thigh or shin may be broken, where the hip may have slipped, or with a stress fracture of the hip not settled. Not face down from mid-pregnancy. Nor through the shin where the knee may be broken or was dislocated. Not in a hot joint.
msg-item-nerve_strength_hip_extension-errors = The pad stands at another place: another lever, another number. No strap: the examiner's own strength is measured. The back arches instead.
msg-item-nerve_strength_hip_extension-otherwise = Small examiner: a belt fixed to the couch holds the dynamometer. No dynamometer: power by hand. Cannot lie face down: power by hand on the back or side; a number is lost.

msg-item-nerve_strength_hip_abduction-short = Strength, hip abduction, pad at the ankle
msg-item-nerve_strength_hip_abduction-how = Side-lying, lower leg bent, top hip straight, the pad on the outer side just above the ankle, held by a belt. The person pushes for three to five seconds; the best of up to three pushes counts.
msg-item-nerve_strength_hip_abduction-purpose = A number for the side muscles of the hip.
msg-item-nerve_strength_hip_abduction-care = Not against resistance where hip, pelvis, thigh or shin may be broken, where the hip may have slipped, or with a stress fracture of the hip not settled. Not lying on a painful hip in a frail person. Knee that may be broken or was dislocated: pad above the knee. Not in a hot joint.
msg-item-nerve_strength_hip_abduction-errors = Pad above the knee is an item of its own: another lever, another number. Side-lying and on the back are not compared.
msg-item-nerve_strength_hip_abduction-otherwise = Small examiner: a belt fixed to the couch holds the dynamometer. No dynamometer: power by hand. Cannot lie on the side: on the back, and the position is recorded.

msg-item-nerve_strength_hip_abduction_above_knee-short = Strength, hip abduction, pad above the knee
msg-item-nerve_strength_hip_abduction_above_knee-how = Side-lying, lower leg bent, top hip straight, the pad on the outer thigh just above the knee, held by a belt. The person pushes for three to five seconds; the best of up to three pushes counts.
msg-item-nerve_strength_hip_abduction_above_knee-purpose = The same for a large limb, a sore knee, or a limb that ends below the knee.
msg-item-nerve_strength_hip_abduction_above_knee-care = Not against resistance where hip, pelvis, thigh or shin may be broken, where the hip may have slipped, or with a stress fracture of the hip not settled. Not lying on a painful hip in a frail person. Not in a hot joint.
msg-item-nerve_strength_hip_abduction_above_knee-errors = Pad at the ankle is an item of its own: another lever, another number.
msg-item-nerve_strength_hip_abduction_above_knee-otherwise = Small examiner: a belt fixed to the couch holds the dynamometer. No dynamometer: power by hand. Cannot lie on the side: on the back, and the position is recorded.

msg-item-nerve_strength_hip_adduction-short = Strength, hip adduction (dynamometer)
msg-item-nerve_strength_hip_adduction-how = Lying on the back, legs straight, the pad at the inner side just above the ankle, the other leg held. The person pushes for three to five seconds; the best of up to three pushes counts.
msg-item-nerve_strength_hip_adduction-purpose = A number for the muscles of the inner thigh, after groin pain above all.
msg-item-nerve_strength_hip_adduction-care = Not against resistance where hip, pelvis, thigh or shin may be broken, where the hip may have slipped, or with a stress fracture of the hip not settled. Pain of the familiar kind: stop. Not through the shin where the knee may be broken or was dislocated. Not in a hot joint.
msg-item-nerve_strength_hip_adduction-errors = The pad stands at another place: another lever, another number. No strap: the examiner's own strength is measured.
msg-item-nerve_strength_hip_adduction-otherwise = Small examiner: a belt fixed to the couch holds the dynamometer. No dynamometer: power by hand. Cannot lie flat: half sitting is another quantity; power by hand instead.

msg-item-nerve_strength_hip_internal_rotation-short = Strength, hip inward rotation (dynamometer)
msg-item-nerve_strength_hip_internal_rotation-how = Seated, hip and knee bent 90, the pad at the outer side just above the ankle; the FOOT pushes outward. The person pushes for three to five seconds; the best of up to three pushes counts.
msg-item-nerve_strength_hip_internal_rotation-purpose = A number to compare sides and visits.
msg-item-nerve_strength_hip_internal_rotation-care = Not against resistance where hip, pelvis, thigh or shin may be broken, where the hip may have slipped, or with a stress fracture of the hip not settled. Nor through the shin where the knee may be broken or was dislocated. Replaced hip: bent and turned inward it can come out of joint; keep the thigh in the middle. Not in a hot joint.
msg-item-nerve_strength_hip_internal_rotation-errors = The pad stands at another place: another lever, another number. No strap: the examiner's own strength is measured. Side of the foot taken for the side of the turn.
msg-item-nerve_strength_hip_internal_rotation-otherwise = Small examiner: a belt fixed to the couch holds the dynamometer. No dynamometer: power by hand.

msg-item-nerve_strength_hip_external_rotation-short = Strength, hip outward rotation (dynamometer)
msg-item-nerve_strength_hip_external_rotation-how = Seated, hip and knee bent 90, the pad at the inner side just above the ankle; the FOOT pushes inward. The person pushes for three to five seconds; the best of up to three pushes counts.
msg-item-nerve_strength_hip_external_rotation-purpose = A number to compare sides and visits.
msg-item-nerve_strength_hip_external_rotation-care = Not against resistance where hip, pelvis, thigh or shin may be broken, where the hip may have slipped, or with a stress fracture of the hip not settled. Nor through the shin where the knee may be broken or was dislocated. Not in a hot joint.
msg-item-nerve_strength_hip_external_rotation-errors = The pad stands at another place: another lever, another number. No strap: the examiner's own strength is measured. Side of the foot taken for the side of the turn.
msg-item-nerve_strength_hip_external_rotation-otherwise = Small examiner: a belt fixed to the couch holds the dynamometer. No dynamometer: power by hand.

msg-item-nerve_strength_knee_flexion-short = Strength, knee flexion (dynamometer)
msg-item-nerve_strength_knee_flexion-how = Seated, knee bent 90, the pad behind the leg just above the ankle, held by a belt. The person pushes for three to five seconds; the best of up to three pushes counts.
msg-item-nerve_strength_knee_flexion-purpose = A number for the hamstrings, against the front of the thigh and the other side.
msg-item-nerve_strength_knee_flexion-care = Not against resistance where hip, pelvis, thigh, knee or shin may be broken or the hip slipped, the knee was dislocated, or the extensor tendons may be torn. Sudden pain at the sitting bone with a pop, or a bruise there: not at all. Not face down from mid-pregnancy. Not in a hot joint.
msg-item-nerve_strength_knee_flexion-errors = The pad stands at another place: another lever, another number. No strap: the examiner's own strength is measured. Cramp behind the thigh ends the push.
msg-item-nerve_strength_knee_flexion-otherwise = Small examiner: a belt fixed to the couch holds the dynamometer. No dynamometer: power by hand.

msg-item-nerve_strength_ankle_dorsiflexion-short = Strength, lifting the foot (dynamometer)
msg-item-nerve_strength_ankle_dorsiflexion-how = Lying, knee straight, ankle at a right angle, the pad on the back (upper side) of the foot behind the toes. The person pushes for three to five seconds; the best of up to three pushes counts.
msg-item-nerve_strength_ankle_dorsiflexion-purpose = A number for the muscles that lift the foot; follows a foot drop.
msg-item-nerve_strength_ankle_dorsiflexion-care = Not where a bone, a joint or a tendon that it pulls on may be broken or torn. Stop at familiar pain. Not in a hot joint.
msg-item-nerve_strength_ankle_dorsiflexion-errors = The pad stands at another place: another lever, another number. No strap: the examiner's own strength is measured. The toes push.
msg-item-nerve_strength_ankle_dorsiflexion-otherwise = Small examiner: a belt fixed to the couch holds the dynamometer. No dynamometer: power by hand.

msg-item-nerve_strength_ankle_plantarflexion-short = Strength, pushing the foot down (dynamometer)
msg-item-nerve_strength_ankle_plantarflexion-how = Lying, knee straight, ankle at a right angle, the pad under the ball of the foot, held by a belt or a wall. The person pushes for three to five seconds; the best of up to three pushes counts.
msg-item-nerve_strength_ankle_plantarflexion-purpose = A number for the calf where heel rises cannot be done.
msg-item-nerve_strength_ankle_plantarflexion-care = Not where leg, ankle or foot may be broken, the heel cord may be torn, or a clot is suspected. Not in a hot joint.
msg-item-nerve_strength_ankle_plantarflexion-errors = The calf is stronger than the arms that hold the pad: with hands alone the number is too small.
msg-item-nerve_strength_ankle_plantarflexion-otherwise = Heel rises on one leg are the better measure where the person can stand.

msg-item-nerve_strength_ankle_inversion-short = Strength, turning the sole inward (dynamometer)
msg-item-nerve_strength_ankle_inversion-how = Lying or seated, shin held still, the pad at the inner border of the forefoot. The person pushes for three to five seconds; the best of up to three pushes counts.
msg-item-nerve_strength_ankle_inversion-purpose = A number for tibialis posterior.
msg-item-nerve_strength_ankle_inversion-care = Not where a bone, a joint or a tendon that it pulls on may be broken or torn. Stop at familiar pain. Not in a hot joint.
msg-item-nerve_strength_ankle_inversion-errors = The pad stands at another place: another lever, another number. No strap: the examiner's own strength is measured. The hip turns the leg.
msg-item-nerve_strength_ankle_inversion-otherwise = Small examiner: a belt fixed to the couch holds the dynamometer. No dynamometer: power by hand.

msg-item-nerve_strength_ankle_eversion-short = Strength, turning the sole outward (dynamometer)
msg-item-nerve_strength_ankle_eversion-how = Lying or seated, shin held still, the pad at the outer border of the foot behind the small toe. The person pushes for three to five seconds; the best of up to three pushes counts.
msg-item-nerve_strength_ankle_eversion-purpose = A number for the peroneal muscles, after sprains and with a foot drop.
msg-item-nerve_strength_ankle_eversion-care = Not where a bone, a joint or a tendon that it pulls on may be broken or torn. Stop at familiar pain. Not in a hot joint.
msg-item-nerve_strength_ankle_eversion-errors = The pad stands at another place: another lever, another number. No strap: the examiner's own strength is measured. The hip turns the leg.
msg-item-nerve_strength_ankle_eversion-otherwise = Small examiner: a belt fixed to the couch holds the dynamometer. No dynamometer: power by hand.

msg-item-nerve_strength_great_toe_extension-short = Strength, lifting the great toe (dynamometer)
msg-item-nerve_strength_great_toe_extension-how = Seated or lying, foot held flat, the pad on the end joint of the great toe. The person pushes for three to five seconds; the best of up to three pushes counts.
msg-item-nerve_strength_great_toe_extension-purpose = A number for the root L5; follows weakness.
msg-item-nerve_strength_great_toe_extension-care = Not where a bone, a joint or a tendon that it pulls on may be broken or torn. Stop at familiar pain. Not in a hot joint.
msg-item-nerve_strength_great_toe_extension-errors = The pad stands at another place: another lever, another number. No strap: the examiner's own strength is measured. The foot lifts instead.
msg-item-nerve_strength_great_toe_extension-otherwise = Small examiner: a belt fixed to the couch holds the dynamometer. No dynamometer: power by hand.

msg-item-nerve_reflex_knee-short = Reflex, knee jerk
msg-item-nerve_reflex_knee-how = Seated with the legs hanging, or lying with the knees carried half bent. Strike the tendon below the kneecap and watch the thigh. Nothing: the person hooks the fingers and pulls while it is struck again; write that this was needed.
msg-item-nerve_reflex_knee-purpose = Roots L2 to L4, L4 above all. Compare sides.
msg-item-nerve_reflex_knee-care = Not on a tendon that may be torn, nor where kneecap, knee, thigh or shin may be broken.
msg-item-nerve_reflex_knee-errors = A tense person; a stroke on the bone. The number 3 means brisk in this scale and something else in another: the meaning is read, not the number. Missing on both sides can be so from birth or with age.
msg-item-nerve_reflex_knee-otherwise = Cannot sit: lying, knee over the forearm. Artificial knee: often missing, says little. No knee on this side: not done.

msg-item-nerve_reflex_ankle-short = Reflex, ankle jerk
msg-item-nerve_reflex_ankle-how = Seated with the legs hanging, face down with the feet over the edge, or lying with the leg turned out and the knee bent. Lift the foot lightly to a right angle and strike the heel cord; watch the calf. Nothing: the person hooks the fingers and pulls while it is struck again.
msg-item-nerve_reflex_ankle-purpose = Root S1. Missing also with nerve disease of the feet.
msg-item-nerve_reflex_ankle-care = Not on a heel cord that may be torn, nor where leg, ankle or foot may be broken. Not face down from mid-pregnancy.
msg-item-nerve_reflex_ankle-errors = Foot hangs down or is pushed by the person. Often missing in old age: less meaning there, and alone it is no loss of protective feeling.
msg-item-nerve_reflex_ankle-otherwise = Large leg: face down with the feet over the edge, or a stroke of the hammer on the fingers laid across the ball of the foot.

msg-item-nerve_reflex_hamstring_medial-short = Reflex, inner hamstring
msg-item-nerve_reflex_hamstring_medial-how = Lying or face down, knee slightly bent and slack. A finger presses on the inner tendon behind the knee, the hammer strikes the finger; feel the tendon pull.
msg-item-nerve_reflex_hamstring_medial-purpose = Root L5, which no other jerk shows.
msg-item-nerve_reflex_hamstring_medial-errors = Hard to get in many: only a difference between sides counts.
msg-item-nerve_reflex_hamstring_medial-otherwise = Cannot lie face down: on the back with the knee carried, or seated.

msg-item-nerve_plantar_response-short = Plantar response
msg-item-nerve_plantar_response-how = Lying, leg relaxed. A blunt point is drawn along the outer border of the sole from the heel to the ball and then inward. The FIRST movement of the great toe counts.
msg-item-nerve_plantar_response-purpose = A toe that goes up after walking age points above the root: brain or cord.
msg-item-nerve_plantar_response-care = A toe that goes up, with back pain, weak legs or a changed bladder: cord, urgent. Not over an ulcer.
msg-item-nerve_plantar_response-errors = Tickling: the whole foot is pulled away. Stroke under the toes. Up is expected before walking age.
msg-item-nerve_plantar_response-otherwise = Sole not to be touched: stroke below the outer ankle forward.

msg-item-nerve_clonus_ankle-short = Clonus at the ankle
msg-item-nerve_clonus_ankle-how = Lying, knee slightly bent. Lift the foot briskly and keep it up lightly. Count the beats against the hand: none, a few that fade, or beats that go on.
msg-item-nerve_clonus_ankle-purpose = Beats that go on point to brain or cord.
msg-item-nerve_clonus_ankle-care = Not where a bone of leg, ankle or foot may be broken, the heel cord torn, or a clot is suspected: brisk lifting of the foot is not done then.
msg-item-nerve_clonus_ankle-errors = A shaking, tense leg is not clonus. A few beats on both sides with brisk jerks can be ordinary.
msg-item-nerve_clonus_ankle-otherwise = Heavy limb: leg rests over a pillow.

msg-item-nerve_touch_l2-short = Touch, front of the thigh (L2)
msg-item-nerve_touch_l2-how = Eyes closed. One light touch with cotton or a fingertip, on the front of the thigh half way down; the same place on the other side. The person says when, and whether it is the same.
msg-item-nerve_touch_l2-purpose = Skin of the root L2.
msg-item-nerve_touch_l2-errors = The answer is guessed: touch now and then without asking. Cold hands, pressing instead of touching. Both sides numb feel alike: compare with the hand.
msg-item-nerve_touch_l2-otherwise = Dressing or cast in the way: not done, covered. A child or somebody who cannot answer: watch the face and the pulling away, and write that.

msg-item-nerve_touch_l3-short = Touch, inner side of the knee (L3)
msg-item-nerve_touch_l3-how = Eyes closed. One light touch with cotton or a fingertip, on the inner side of the thigh just above the knee; the same place on the other side. The person says when, and whether it is the same.
msg-item-nerve_touch_l3-purpose = Skin of the root L3.
msg-item-nerve_touch_l3-errors = The answer is guessed: touch now and then without asking. Cold hands, pressing instead of touching. Both sides numb feel alike: compare with the hand.
msg-item-nerve_touch_l3-otherwise = Dressing or cast in the way: not done, covered. A child or somebody who cannot answer: watch the face and the pulling away, and write that.

msg-item-nerve_touch_l4-short = Touch, inner shin (L4)
msg-item-nerve_touch_l4-how = Eyes closed. One light touch with cotton or a fingertip, on the inner side of the shin and the inner ankle; the same place on the other side. The person says when, and whether it is the same.
msg-item-nerve_touch_l4-purpose = Skin of the root L4; the saphenous nerve runs here too.
msg-item-nerve_touch_l4-errors = The answer is guessed: touch now and then without asking. Cold hands, pressing instead of touching. Both sides numb feel alike: compare with the hand.
msg-item-nerve_touch_l4-otherwise = Dressing or cast in the way: not done, covered. A child or somebody who cannot answer: watch the face and the pulling away, and write that.

msg-item-nerve_touch_l5-short = Touch, outer shin to the great toe (L5)
msg-item-nerve_touch_l5-how = Eyes closed. One light touch with cotton or a fingertip, on the outer shin and the back (upper side) of the foot toward the great toe; the same place on the other side. The person says when, and whether it is the same.
msg-item-nerve_touch_l5-purpose = Skin of the root L5.
msg-item-nerve_touch_l5-errors = The answer is guessed: touch now and then without asking. Cold hands, pressing instead of touching. Both sides numb feel alike: compare with the hand.
msg-item-nerve_touch_l5-otherwise = Dressing or cast in the way: not done, covered. A child or somebody who cannot answer: watch the face and the pulling away, and write that.

msg-item-nerve_touch_s1-short = Touch, outer border of the foot (S1)
msg-item-nerve_touch_s1-how = Eyes closed. One light touch with cotton or a fingertip, on the outer border of the foot and the little toe; the same place on the other side. The person says when, and whether it is the same.
msg-item-nerve_touch_s1-purpose = Skin of the root S1.
msg-item-nerve_touch_s1-errors = The answer is guessed: touch now and then without asking. Cold hands, pressing instead of touching. Both sides numb feel alike: compare with the hand.
msg-item-nerve_touch_s1-otherwise = Dressing or cast in the way: not done, covered. A child or somebody who cannot answer: watch the face and the pulling away, and write that.

msg-item-nerve_touch_first_web-short = Touch, between first and second toe
msg-item-nerve_touch_first_web-how = Eyes closed. One light touch with cotton or a fingertip, in the web between first and second toe; the same place on the other side. The person says when, and whether it is the same.
msg-item-nerve_touch_first_web-purpose = Deep fibular nerve: the first to go in the front compartment, and after a knee that dislocated.
msg-item-nerve_touch_first_web-care = Lost after injury, plaster or operation: look at vessel and compartment at once.
msg-item-nerve_touch_first_web-errors = The answer is guessed: touch now and then without asking. Cold hands, pressing instead of touching. Both sides numb feel alike: compare with the hand.
msg-item-nerve_touch_first_web-otherwise = Dressing or cast in the way: not done, covered. A child or somebody who cannot answer: watch the face and the pulling away, and write that.

msg-item-nerve_touch_foot_dorsum-short = Touch, back (upper side) of the foot
msg-item-nerve_touch_foot_dorsum-how = Eyes closed. One light touch with cotton or a fingertip, on the middle of the back (upper side) of the foot; the same place on the other side. The person says when, and whether it is the same.
msg-item-nerve_touch_foot_dorsum-purpose = Superficial fibular nerve.
msg-item-nerve_touch_foot_dorsum-care = Lost after injury, plaster or operation: look at vessel and compartment at once.
msg-item-nerve_touch_foot_dorsum-errors = The answer is guessed: touch now and then without asking. Cold hands, pressing instead of touching. Both sides numb feel alike: compare with the hand.
msg-item-nerve_touch_foot_dorsum-otherwise = Dressing or cast in the way: not done, covered. A child or somebody who cannot answer: watch the face and the pulling away, and write that.

msg-item-nerve_touch_sole-short = Touch, sole
msg-item-nerve_touch_sole-how = Eyes closed. One light touch with cotton or a fingertip, on the middle of the sole; the same place on the other side. The person says when, and whether it is the same.
msg-item-nerve_touch_sole-purpose = Tibial nerve.
msg-item-nerve_touch_sole-care = Lost after injury, plaster or operation: look at vessel and compartment at once. Not on an ulcer.
msg-item-nerve_touch_sole-errors = The answer is guessed: touch now and then without asking. Cold hands, pressing instead of touching. Both sides numb feel alike: compare with the hand.
msg-item-nerve_touch_sole-otherwise = Dressing or cast in the way: not done, covered. A child or somebody who cannot answer: watch the face and the pulling away, and write that.

msg-item-nerve_touch_outer_thigh-short = Touch, outer thigh
msg-item-nerve_touch_outer_thigh-how = Eyes closed. One light touch with cotton or a fingertip, on the outer side of the thigh; the same place on the other side. The person says when, and whether it is the same.
msg-item-nerve_touch_outer_thigh-purpose = Lateral cutaneous nerve of the thigh: a numb or burning patch without weakness.
msg-item-nerve_touch_outer_thigh-errors = The answer is guessed: touch now and then without asking. Cold hands, pressing instead of touching. Both sides numb feel alike: compare with the hand.
msg-item-nerve_touch_outer_thigh-otherwise = Dressing or cast in the way: not done, covered. A child or somebody who cannot answer: watch the face and the pulling away, and write that.

msg-item-nerve_touch_toes_of_web-short = Touch, facing sides of the sore toes
msg-item-nerve_touch_toes_of_web-how = Eyes closed. One light touch with cotton or a fingertip, on the facing sides of the two toes beside the sore web; write which; the same place on the other side. The person says when, and whether it is the same.
msg-item-nerve_touch_toes_of_web-purpose = The nerve of that web.
msg-item-nerve_touch_toes_of_web-errors = The answer is guessed: touch now and then without asking. Cold hands, pressing instead of touching. Both sides numb feel alike: compare with the hand.
msg-item-nerve_touch_toes_of_web-otherwise = Dressing or cast in the way: not done, covered. A child or somebody who cannot answer: watch the face and the pulling away, and write that.

msg-item-nerve_sensation_loss_level-short = How far up feeling is lost
msg-item-nerve_sensation_loss_level-how = Eyes closed. Light touch from the toes upward, along the front and the inner side. None, toes only, beyond the toes, or the whole foot and more.
msg-item-nerve_sensation_loss_level-purpose = In a foot that lacks blood this, with power, says how many hours there are.
msg-item-nerve_sensation_loss_level-care = Any loss with a cold, pale or pulseless foot: call now; beyond the toes, or with weakness, hours are left at most.
msg-item-nerve_sensation_loss_level-errors = Numb before this from another cause: ask, and use the signs of blood flow alone.
msg-item-nerve_sensation_loss_level-otherwise = Cannot answer: not done, and the signs of blood flow count alone.

msg-item-nerve_saddle_offer-short = Feeling between the legs: examination offered
msg-item-nerve_saddle_offer-how = After the question on numbness: offer to test touch there, with a chaperone of the person's choice. What came of it: done, declined, left to those who receive the person, or not possible in private.
msg-item-nerve_saddle_offer-purpose = Shows that it was offered; nothing is read from a test that was not made.
msg-item-nerve_saddle_offer-care = In private only, never through a relative or a child as interpreter. The transfer of somebody with changed bladder, numbness or weak legs never waits for it, nor for a finger in the back passage.
msg-item-nerve_saddle_offer-errors = Left blank because it is awkward: then nobody knows.

msg-item-nerve_saddle_touch-short = Touch, skin one sits on
msg-item-nerve_saddle_touch-how = In private, covered but for the place, chaperone present. Lying on the side; eyes closed; one light touch on the buttock beside the cleft, each side, compared with the thigh.
msg-item-nerve_saddle_touch-purpose = Lower sacral roots: with a changed bladder or weak legs an emergency.
msg-item-nerve_saddle_touch-care = In private only, with consent of its own. Anything but felt as elsewhere, and new: call now, do not finish the exam. Felt leaves pressure on these roots not excluded. Nobody is turned for it where spine or pelvis may be broken.
msg-item-nerve_saddle_touch-errors = Tested through clothing, or through a relative. Asked only.
msg-item-nerve_saddle_touch-otherwise = Declined, or no private place: the question alone, and the offer recorded.

msg-item-nerve_monofilament_great_toe-short = Filament, pulp of the great toe
msg-item-nerve_monofilament_great_toe-how = The 10 g filament is shown on the hand first. Eyes closed. On the pulp of the great toe: two touches and one sham in mixed order, each about 2 s with the filament bent; asked each time whether it is felt and on which foot. The right answers of three are counted; at the sham "not felt" is right.
msg-item-nerve_monofilament_great_toe-purpose = Protective feeling. Two or three right: there. None or one right: lost at this place, and the foot is numb.
msg-item-nerve_monofilament_great_toe-care = Never on an ulcer, callus, scar or dead skin: beside it. Felt leaves nerve disease not excluded.
msg-item-nerve_monofilament_great_toe-errors = The person sees it; the filament slides; a rhythm that can be guessed; a filament used on many people without a rest bends too easily.
msg-item-nerve_monofilament_great_toe-otherwise = No filament: the toe touch. Toe or forefoot missing or dressed: not done at this place.

msg-item-nerve_monofilament_metatarsal_head_1-short = Filament, under the first metatarsal head
msg-item-nerve_monofilament_metatarsal_head_1-how = The 10 g filament is shown on the hand first. Eyes closed. Under the head of the first metatarsal: two touches and one sham in mixed order, each about 2 s with the filament bent; asked each time whether it is felt and on which foot. The right answers of three are counted; at the sham "not felt" is right.
msg-item-nerve_monofilament_metatarsal_head_1-purpose = Protective feeling. Two or three right: there. None or one right: lost at this place, and the foot is numb.
msg-item-nerve_monofilament_metatarsal_head_1-care = Never on an ulcer, callus, scar or dead skin: beside it. Felt leaves nerve disease not excluded.
msg-item-nerve_monofilament_metatarsal_head_1-errors = The person sees it; the filament slides; a rhythm that can be guessed; a filament used on many people without a rest bends too easily.
msg-item-nerve_monofilament_metatarsal_head_1-otherwise = No filament: the toe touch. Toe or forefoot missing or dressed: not done at this place.

msg-item-nerve_monofilament_metatarsal_head_3-short = Filament, under the third metatarsal head
msg-item-nerve_monofilament_metatarsal_head_3-how = The 10 g filament is shown on the hand first. Eyes closed. Under the head of the third metatarsal (not one of the three places of the rule; other lists have it): two touches and one sham in mixed order, each about 2 s with the filament bent; asked each time whether it is felt and on which foot. The right answers of three are counted; at the sham "not felt" is right.
msg-item-nerve_monofilament_metatarsal_head_3-purpose = Protective feeling. Two or three right: there. None or one right: lost at this place, and the foot is numb.
msg-item-nerve_monofilament_metatarsal_head_3-care = Never on an ulcer, callus, scar or dead skin: beside it. Felt leaves nerve disease not excluded.
msg-item-nerve_monofilament_metatarsal_head_3-errors = The person sees it; the filament slides; a rhythm that can be guessed; a filament used on many people without a rest bends too easily.
msg-item-nerve_monofilament_metatarsal_head_3-otherwise = No filament: the toe touch. Toe or forefoot missing or dressed: not done at this place.

msg-item-nerve_monofilament_metatarsal_head_5-short = Filament, under the fifth metatarsal head
msg-item-nerve_monofilament_metatarsal_head_5-how = The 10 g filament is shown on the hand first. Eyes closed. Under the head of the fifth metatarsal: two touches and one sham in mixed order, each about 2 s with the filament bent; asked each time whether it is felt and on which foot. The right answers of three are counted; at the sham "not felt" is right.
msg-item-nerve_monofilament_metatarsal_head_5-purpose = Protective feeling. Two or three right: there. None or one right: lost at this place, and the foot is numb.
msg-item-nerve_monofilament_metatarsal_head_5-care = Never on an ulcer, callus, scar or dead skin: beside it. Felt leaves nerve disease not excluded.
msg-item-nerve_monofilament_metatarsal_head_5-errors = The person sees it; the filament slides; a rhythm that can be guessed; a filament used on many people without a rest bends too easily.
msg-item-nerve_monofilament_metatarsal_head_5-otherwise = No filament: the toe touch. Toe or forefoot missing or dressed: not done at this place.

msg-item-nerve_tuning_fork_great_toe-short = Tuning fork, great toe
msg-item-nerve_tuning_fork_great_toe-how = The 128 Hz fork is shown on the wrist or elbow first. Eyes closed. Its foot stands upright on the bone at the end of the great toe, upper side: twice sounding and once silent, in mixed order; does it hum? The right answers of three are counted; at the silent one "no" is right.
msg-item-nerve_tuning_fork_great_toe-purpose = Sense of vibration: two or three right, there; none or one, lost here. Then the next place up.
msg-item-nerve_tuning_fork_great_toe-care = Not on an ulcer or a wound. Felt leaves nerve disease not excluded.
msg-item-nerve_tuning_fork_great_toe-errors = Pressure is answered instead of humming: that is what the silent one shows. Struck too weakly.
msg-item-nerve_tuning_fork_great_toe-otherwise = No fork: the toe touch. Toe missing: the next place up; write it.

msg-item-nerve_tuning_fork_ankle-short = Tuning fork, inner ankle bone
msg-item-nerve_tuning_fork_ankle-how = The 128 Hz fork is shown on the wrist or elbow first. Eyes closed. Its foot stands upright on the inner ankle bone: twice sounding and once silent, in mixed order; does it hum? The right answers of three are counted; at the silent one "no" is right.
msg-item-nerve_tuning_fork_ankle-purpose = How far up vibration is lost, where it is lost at the toe.
msg-item-nerve_tuning_fork_ankle-care = Not on an ulcer or a wound. Felt leaves nerve disease not excluded.
msg-item-nerve_tuning_fork_ankle-errors = Pressure is answered instead of humming: that is what the silent one shows. Struck too weakly.
msg-item-nerve_tuning_fork_ankle-otherwise = No fork: the toe touch. Ankle dressed: the tubercle of the shin; write it.

msg-item-nerve_tuning_fork_tibial_tubercle-short = Tuning fork, tubercle of the shin
msg-item-nerve_tuning_fork_tibial_tubercle-how = The 128 Hz fork is shown on the wrist or elbow first. Eyes closed. Its foot stands upright on the tubercle of the shin below the knee: twice sounding and once silent, in mixed order; does it hum? The right answers of three are counted; at the silent one "no" is right.
msg-item-nerve_tuning_fork_tibial_tubercle-purpose = How far up vibration is lost, where it is lost at the ankle.
msg-item-nerve_tuning_fork_tibial_tubercle-care = Not on an ulcer or a wound. Felt leaves nerve disease not excluded.
msg-item-nerve_tuning_fork_tibial_tubercle-errors = Pressure is answered instead of humming: that is what the silent one shows. Struck too weakly.
msg-item-nerve_tuning_fork_tibial_tubercle-otherwise = No fork: the toe touch. Dressed or missing: not done at this place.

msg-item-nerve_toe_touch_great-short = Toe touch, tip of the great toe
msg-item-nerve_toe_touch_great-how = Eyes closed, both feet bare. The tip of the examiner's finger rests lightly on the tip of the great toe for 1 to 2 s, without pushing or knocking; the person says right or left. Yes when it is felt. First, third and fifth toe of both feet are six places.
msg-item-nerve_toe_touch_great-purpose = Protective feeling without an instrument: two or more of the six places not felt count as lost.
msg-item-nerve_toe_touch_great-care = Not on an ulcer. All felt leaves nerve disease not excluded.
msg-item-nerve_toe_touch_great-errors = Pushing or stroking; asking "do you feel it" each time; a second try after a miss.
msg-item-nerve_toe_touch_great-otherwise = Toe missing or dressed: not done at this place; the others count.
msg-item-nerve_toe_touch_great-yes = touch on the toe is felt
msg-item-nerve_toe_touch_great-no = touch on the toe is not felt

msg-item-nerve_toe_touch_third-short = Toe touch, tip of the third toe
msg-item-nerve_toe_touch_third-how = Eyes closed, both feet bare. The tip of the examiner's finger rests lightly on the tip of the third toe for 1 to 2 s, without pushing or knocking; the person says right or left. Yes when it is felt. First, third and fifth toe of both feet are six places.
msg-item-nerve_toe_touch_third-purpose = Protective feeling without an instrument: two or more of the six places not felt count as lost.
msg-item-nerve_toe_touch_third-care = Not on an ulcer. All felt leaves nerve disease not excluded.
msg-item-nerve_toe_touch_third-errors = Pushing or stroking; asking "do you feel it" each time; a second try after a miss.
msg-item-nerve_toe_touch_third-otherwise = Toe missing or dressed: not done at this place; the others count.
msg-item-nerve_toe_touch_third-yes = touch on the toe is felt
msg-item-nerve_toe_touch_third-no = touch on the toe is not felt

msg-item-nerve_toe_touch_fifth-short = Toe touch, tip of the fifth toe
msg-item-nerve_toe_touch_fifth-how = Eyes closed, both feet bare. The tip of the examiner's finger rests lightly on the tip of the fifth toe for 1 to 2 s, without pushing or knocking; the person says right or left. Yes when it is felt. First, third and fifth toe of both feet are six places.
msg-item-nerve_toe_touch_fifth-purpose = Protective feeling without an instrument: two or more of the six places not felt count as lost.
msg-item-nerve_toe_touch_fifth-care = Not on an ulcer. All felt leaves nerve disease not excluded.
msg-item-nerve_toe_touch_fifth-errors = Pushing or stroking; asking "do you feel it" each time; a second try after a miss.
msg-item-nerve_toe_touch_fifth-otherwise = Toe missing or dressed: not done at this place; the others count.
msg-item-nerve_toe_touch_fifth-yes = touch on the toe is felt
msg-item-nerve_toe_touch_fifth-no = touch on the toe is not felt

msg-item-nerve_straight_leg_raise-short = Straight leg raise
msg-item-nerve_straight_leg_raise-how = Lying flat, knee straight, the other leg straight. Lift the leg slowly by the heel until the pain comes; lower it a little until it goes, then bend the foot up at the ankle, or let the person bend the neck: does it come back?
msg-item-nerve_straight_leg_raise-purpose = A lumbar root that is pressed or inflamed, in pain that runs down the leg.
msg-item-nerve_straight_leg_raise-positive = Familiar pain below the knee at about 30 to 70. Brought back by bending up the foot or bending the neck, it speaks more for a root; write that.
msg-item-nerve_straight_leg_raise-care = Not where the spine may be unstable, nor where pelvis, hip, thigh or shin may be broken or the hip slipped. Numb between the legs, changed bladder or weak legs: do not repeat it, call. Slowly, and stop at the pain. A knee that does not straighten is not forced. Where a clot is suspected or the heel cord may be torn: the foot is not bent up.
msg-item-nerve_straight_leg_raise-errors = Tight hamstrings: pain behind the knee that does not change with the neck. Pain in the back alone, or a painful hip, is not positive. The knee bends.
msg-item-nerve_straight_leg_raise-otherwise = Cannot lie: the seated form. Large limb: heel on the examiner's shoulder. Pregnant: half sitting or seated. Side-lying is not the same quantity.
msg-item-nerve_straight_leg_raise-yes = familiar pain below the knee on raising the straight leg
msg-item-nerve_straight_leg_raise-no = no familiar pain below the knee

msg-item-nerve_straight_leg_raise_angle-short = Straight leg raise, angle where pain comes
msg-item-nerve_straight_leg_raise_angle-how = As the straight leg raise. The angle of the straight leg to the couch when the first familiar pain comes, or where it stops. Inclinometer on the shin, or the long goniometer over the trochanter.
msg-item-nerve_straight_leg_raise_angle-purpose = Compares visits; a supple person comes close to 80 to 90 without pain.
msg-item-nerve_straight_leg_raise_angle-care = Not where the spine may be unstable, nor where pelvis, hip, thigh or shin may be broken or the hip slipped. Numb between the legs, changed bladder or weak legs: do not repeat it, call. Slowly, and stop at the pain. A knee that does not straighten is not forced.
msg-item-nerve_straight_leg_raise_angle-errors = The pelvis rolls and adds to the number; the knee bends; read at the stretch behind the thigh instead of the familiar pain.
msg-item-nerve_straight_leg_raise_angle-otherwise = Cannot lie: seated it is another quantity; record the seated test.

msg-item-nerve_straight_leg_raise_site-short = Straight leg raise, where it hurts
msg-item-nerve_straight_leg_raise_site-how = Where the pain is felt at the end of the raise: nowhere, back only, thigh, or below the knee.
msg-item-nerve_straight_leg_raise_site-purpose = Below the knee speaks of a root; back or thigh alone does not.
msg-item-nerve_straight_leg_raise_site-care = Not where the spine may be unstable, nor where pelvis, hip, thigh or shin may be broken or the hip slipped. Numb between the legs, changed bladder or weak legs: do not repeat it, call. Slowly, and stop at the pain.
msg-item-nerve_straight_leg_raise_site-errors = The stretch behind the knee is written as pain below the knee.
msg-item-nerve_straight_leg_raise_site-otherwise = Cannot lie: the same question in the seated form.

msg-item-nerve_straight_leg_raise_seated-short = Straight leg raise, seated
msg-item-nerve_straight_leg_raise_seated-how = Seated on the edge, hands behind, looking ahead. Straighten the knee slowly, then bend the foot up at the ankle. The person leans back or not; pain down the leg?
msg-item-nerve_straight_leg_raise_seated-purpose = The same question for those who cannot lie.
msg-item-nerve_straight_leg_raise_seated-positive = Familiar pain below the knee on straightening, more on bending the foot up.
msg-item-nerve_straight_leg_raise_seated-care = Not where the spine may be unstable, nor where pelvis, hip, thigh or shin may be broken or the hip slipped. Numb between the legs, changed bladder or weak legs: do not repeat it, call. Slowly, and stop at the pain. A knee that does not straighten is not forced. Where a clot is suspected or the heel cord may be torn: the foot is not bent up.
msg-item-nerve_straight_leg_raise_seated-errors = Slumping makes it another test. A stiff knee or tight hamstrings stop it.
msg-item-nerve_straight_leg_raise_seated-otherwise = Cannot sit upright: lying on the back.
msg-item-nerve_straight_leg_raise_seated-yes = familiar pain below the knee on straightening the knee
msg-item-nerve_straight_leg_raise_seated-no = no familiar pain below the knee

msg-item-nerve_crossed_straight_leg_raise-short = Crossed straight leg raise: THIS leg is raised
msg-item-nerve_crossed_straight_leg_raise-how = As the straight leg raise, on the leg without pain. The side recorded is the leg that is RAISED; the pain is looked for in the OTHER leg.
msg-item-nerve_crossed_straight_leg_raise-purpose = A disc that presses hard on a root of the other leg.
msg-item-nerve_crossed_straight_leg_raise-positive = Raising this leg brings the familiar pain in the other leg.
msg-item-nerve_crossed_straight_leg_raise-care = Not where the spine may be unstable, nor where pelvis, hip, thigh or shin may be broken or the hip slipped. Numb between the legs, changed bladder or weak legs: do not repeat it, call. Slowly, and stop at the pain. A knee that does not straighten is not forced. Where a clot is suspected or the heel cord may be torn: the foot is not bent up.
msg-item-nerve_crossed_straight_leg_raise-errors = Recorded on the painful side. Pain in the back or in the raised leg counts as no.
msg-item-nerve_crossed_straight_leg_raise-otherwise = Cannot lie: seated, the same question; said in the remark.
msg-item-nerve_crossed_straight_leg_raise-yes = raising this leg brings the familiar pain in the OTHER leg
msg-item-nerve_crossed_straight_leg_raise-no = raising this leg brings no familiar pain in the other leg

msg-item-nerve_slump-short = Slump test
msg-item-nerve_slump-how = Seated, thighs on the couch, hands behind. In steps, stopping at the familiar pain: slouch, chin down, straighten the knee, bend the foot up at the ankle. Then the head comes up: is the pain less?
msg-item-nerve_slump-purpose = A root that is pressed or inflamed.
msg-item-nerve_slump-positive = Familiar pain down the leg that eases when the head is lifted.
msg-item-nerve_slump-care = Not where the spine may be unstable, nor where pelvis, hip, thigh or shin may be broken or the hip slipped. Numb between the legs, changed bladder or weak legs: do not repeat it, call. Slowly, and stop at the pain. Dizzy on bending the neck, or a neck complaint: without the neck. Where a clot is suspected or the heel cord may be torn: the foot is not bent up. A knee that does not straighten is not forced.
msg-item-nerve_slump-errors = Stretch behind the knee in everybody: only the familiar pain that changes with the head counts. Steps done all at once.
msg-item-nerve_slump-otherwise = Cannot sit: the straight leg raise lying. Small examiner: the person presses the own chin down, one hand only on the foot.
msg-item-nerve_slump-yes = familiar pain down the leg, eased by lifting the head
msg-item-nerve_slump-no = no familiar pain, or not eased by lifting the head

msg-item-nerve_femoral_stretch-short = Femoral nerve stretch
msg-item-nerve_femoral_stretch-how = Face down. Bend the knee slowly; then, with the hand under the thigh, lift the thigh off the couch. The other side too.
msg-item-nerve_femoral_stretch-purpose = Roots L2 to L4, in pain at the front of the thigh.
msg-item-nerve_femoral_stretch-positive = Familiar pain at the front of the thigh.
msg-item-nerve_femoral_stretch-care = Not where pelvis, hip, thigh, knee or shin may be broken, the hip slipped, with a stress fracture of the hip not settled, where the knee was dislocated or the extensor tendons may be torn. Replaced hip or knee: gently. Not face down from mid-pregnancy. Slowly, stop at the pain. Not in a hot joint.
msg-item-nerve_femoral_stretch-errors = A tight front thigh pulls in everybody: compare sides. A painful knee or hip.
msg-item-nerve_femoral_stretch-otherwise = Cannot lie face down: side-lying form. Heavy limb: a pillow under the thigh and a second person.
msg-item-nerve_femoral_stretch-yes = familiar pain at the front of the thigh
msg-item-nerve_femoral_stretch-no = no familiar pain at the front of the thigh

msg-item-nerve_femoral_stretch_side_lying-short = Femoral nerve stretch, side-lying
msg-item-nerve_femoral_stretch_side_lying-how = Lying on the other side, lower hip and knee bent. Bend the top knee, then bring the thigh back with the pelvis held.
msg-item-nerve_femoral_stretch_side_lying-purpose = The same for those who cannot lie face down.
msg-item-nerve_femoral_stretch_side_lying-positive = Familiar pain at the front of the thigh.
msg-item-nerve_femoral_stretch_side_lying-care = Not where pelvis, hip, thigh, knee or shin may be broken, the hip slipped, with a stress fracture of the hip not settled, where the knee was dislocated or the extensor tendons may be torn. Replaced hip or knee: gently. Not lying on a painful hip in a frail person. Slowly, stop at the pain. Not in a hot joint.
msg-item-nerve_femoral_stretch_side_lying-errors = The pelvis rolls back. A tight front thigh pulls in everybody: compare sides.
msg-item-nerve_femoral_stretch_side_lying-otherwise = Cannot lie on the side or face down: not done; power, jerk and touch of L2 to L4 instead.
msg-item-nerve_femoral_stretch_side_lying-yes = familiar pain at the front of the thigh
msg-item-nerve_femoral_stretch_side_lying-no = no familiar pain at the front of the thigh

msg-item-nerve_tinel_fibular_neck-short = Knock on the nerve at the neck of the fibula
msg-item-nerve_tinel_fibular_neck-how = Seated or lying, knee slightly bent. Knock lightly just below the head of the fibula, where the nerve turns forward.
msg-item-nerve_tinel_fibular_neck-purpose = The common fibular nerve, with foot drop or numbness on the back (upper side) of the foot.
msg-item-nerve_tinel_fibular_neck-positive = Tingling down to the outer shin or the back (upper side) of the foot.
msg-item-nerve_tinel_fibular_neck-care = Not where the bone may be broken, nor over an open wound. New foot drop after a knee injury: vessels first.
msg-item-nerve_tinel_fibular_neck-errors = Pain on the bone alone is not tingling. A hard knock tingles in many: compare sides.
msg-item-nerve_tinel_fibular_neck-otherwise = Swollen or large leg: roll the nerve under a finger instead of knocking.
msg-item-nerve_tinel_fibular_neck-yes = tingling down to the shin or the back of the foot
msg-item-nerve_tinel_fibular_neck-no = no tingling down the shin or foot

msg-item-nerve_press_deep_gluteal-short = Press deep in the buttock: leg tingles
msg-item-nerve_press_deep_gluteal-how = Side-lying, painful side up, hip bent. Press with the thumb half way between the trochanter and the edge of the sacrum, slowly.
msg-item-nerve_press_deep_gluteal-purpose = The sciatic nerve in the buttock; the back is looked at as well.
msg-item-nerve_press_deep_gluteal-positive = Familiar tingling or pain that runs down the leg, not tenderness alone.
msg-item-nerve_press_deep_gluteal-care = Not where pelvis or hip may be broken, nor on a lump that pulsates.
msg-item-nerve_press_deep_gluteal-errors = Tenderness alone is common. The lumbar roots give the same picture: do the straight leg raise and slump.
msg-item-nerve_press_deep_gluteal-otherwise = Cannot lie on the side: face down; or seated, leaning to the other side.
msg-item-nerve_press_deep_gluteal-yes = familiar tingling or pain down the leg on pressing
msg-item-nerve_press_deep_gluteal-no = no familiar tingling or pain down the leg
