# What the catalogue says of hip, leg, ankle, nerves and vessels: label, technique, what counts, when not, what goes wrong often.
# A dot in a message name is a dash here. Language: English. Reviewed by: nobody yet.

msg-item-hip_log_roll-short = Log roll of the leg
msg-item-hip_log_roll-how = Lying, legs straight and relaxed, hands on thigh and shin. Roll the whole leg gently in and out, the better side first. Nothing but the hip moves.
msg-item-hip_log_roll-positive = Pain in groin or hip, or clearly less roll than the other side.
msg-item-hip_log_roll-care = Once and small where a fracture or an infection of the hip is open. Not where a slip or a dislocation of the hip, or a fracture of the pelvis, is open.
msg-item-hip_log_roll-errors = Turning the foot alone turns the knee and ankle; a knee that hurts makes the roll hurt: hold above it.
msg-item-hip_log_roll-yes = pain in groin or hip, or less roll than the other side
msg-item-hip_log_roll-no = no pain in groin or hip, rolls as the other side

msg-item-hip_internal_rotation_passive_seated-short = Hip inward rotation, seated
msg-item-hip_internal_rotation_passive_seated-how = Seated on the edge, hip and knee bent 90, thigh still on the couch, pelvis level. The FOOT goes outward, the thigh turns inward. Goniometer: centre on the kneecap, one arm straight down, the other along the shin. 0 is the shin straight down. Lying on the back with hip and knee at 90 counts as this one: 0 is then the shin in line with the trunk.
msg-item-hip_internal_rotation_passive_seated-care = Not forced, and not again, where a slip or a fracture of the hip is open. In a growing person with knee pain it is never left out. Not where the hip may be out of joint or infected. A replaced hip stays inside the range its surgeon allowed.
msg-item-hip_internal_rotation_passive_seated-errors = Side of the foot taken for the side of the turn; pelvis lifts; thigh slides. Not to be compared with face down.

msg-item-hip_internal_rotation_passive_supine-short = Hip inward rotation, lying, hip straight
msg-item-hip_internal_rotation_passive_supine-how = Lying on the back, hip straight, knee bent over the end of the couch or leg straight. The FOOT goes outward with the knee bent; with the leg straight the kneecap turns inward. Read the shin or the kneecap against upright. 0 is the kneecap facing up.
msg-item-hip_internal_rotation_passive_supine-care = Not forced, and not again, where a slip or a fracture of the hip is open. Not where the hip may be out of joint or infected. A replaced hip stays inside the range its surgeon allowed.
msg-item-hip_internal_rotation_passive_supine-errors = Foot turned at the ankle; pelvis rolls. Not to be compared with a seated reading.

msg-item-hip_external_rotation_passive_seated-short = Hip outward rotation, seated
msg-item-hip_external_rotation_passive_seated-how = Seated on the edge, hip and knee bent 90, thigh still on the couch, pelvis level. The FOOT goes inward, the thigh turns outward. Goniometer as for inward rotation.
msg-item-hip_external_rotation_passive_seated-care = Not forced where a slip or a fracture of the hip is open. Not where the hip may be out of joint or infected. A replaced hip stays inside the range its surgeon allowed.
msg-item-hip_external_rotation_passive_seated-errors = Side of the foot taken for the side of the turn; the body leans over.

msg-item-hip_flexion_passive-short = Hip flexion, passive
msg-item-hip_flexion_passive-how = Lying, knee bent, other thigh flat on the couch. Bend the hip until the pelvis begins to move. Goniometer: centre over the trochanter, one arm along the trunk, the other to the outer knob of the thigh bone. Watch whether the thigh turns outward as it bends.
msg-item-hip_flexion_passive-care = Gently, once, where a slip is open. A hip that rolls outward while it bends, in a growing person: stop and tell. Not where a fracture, a dislocation or an infection of the hip is open. A replaced hip stays inside the range its surgeon allowed.
msg-item-hip_flexion_passive-errors = The pelvis tilts and adds to the number; belly or thigh stops it first.

msg-item-leg_thigh_girth_10cm-short = Thigh girth, 10 cm above the kneecap
msg-item-leg_thigh_girth_10cm-how = Lying, knee straight and muscles relaxed. Mark the skin 10 cm above the upper edge of the kneecap on both sides, lay the tape without pulling. Another level is another quantity.
msg-item-leg_thigh_girth_10cm-purpose = Wasting or swelling of the thigh; and whether the thigh is too heavy for some tests of the knee.
msg-item-leg_thigh_girth_10cm-otherwise = Half sitting, knee straight on the couch, both sides alike. Very large: a wide tape, twice. One limb: only against last time.
msg-item-leg_thigh_girth_10cm-errors = Mark made from the joint line on one side and the kneecap on the other; muscle tightened; tape aslant.

msg-item-leg_tense_compartment-short = Leg tense and hard
msg-item-leg_tense_compartment-how = Feel the front, outer and back of the lower leg with flat fingers and compare. Yes for a part that is as hard as wood.
msg-item-leg_tense_compartment-purpose = Pressure in the lower leg: an emergency.
msg-item-leg_tense_compartment-otherwise = Seated, lying or on the side. Who is drowsy or cannot answer: the hard leg and the need for more and more relief are all there is.
msg-item-leg_tense_compartment-care = Open casts and bandages to the skin first. Leg level with the heart, not raised. Soft to the touch leaves it not excluded. Hard after an injury, a cast or a crush: an emergency, whatever the pulse.
msg-item-leg_tense_compartment-errors = The deep part at the back cannot be felt.

msg-item-leg_calf_swelling-short = Calf swollen
msg-item-leg_calf_swelling-how = Look at both calves from the back; where it counts, tape at 10 cm below the tubercle of the shin, both sides. Yes when fuller than the other.
msg-item-leg_calf_swelling-purpose = A clot, a torn calf, a burst cyst behind the knee.
msg-item-leg_calf_swelling-otherwise = Standing from behind, seated or lying, both calves alike. One limb: ask how it was before.
msg-item-leg_calf_swelling-errors = The level differs from side to side; a stronger leg is fuller.

msg-item-leg_calf_tender_vein-short = Tender along the deep vein
msg-item-leg_calf_tender_vein-how = Press lightly from the hollow of the knee down the middle of the calf, then up the inner thigh to the groin.
msg-item-leg_calf_tender_vein-purpose = A clot: one of the things that clot rules ask for.
msg-item-leg_calf_tender_vein-otherwise = Seated or lying, knee a little bent. Thick calf: both hands, lightly.
msg-item-leg_calf_tender_vein-care = Lightly and once; no massage.
msg-item-leg_calf_tender_vein-errors = A strained muscle is tender to one side and when it works.

msg-item-ankle_movement-short = Moves foot and toes
msg-item-ankle_movement-how = The person lifts and lowers the foot and the toes. Yes when all of it moves.
msg-item-ankle_movement-purpose = Nerve, muscle and tendon of the lower leg in one look; before and after any splint.
msg-item-ankle_movement-otherwise = Seated or lying. In a cast: the toes. One limb: ask how it was before.
msg-item-ankle_movement-care = No after an injury: look at nerve, vessel and compartment at once.
msg-item-ankle_movement-yes = all of it moves
msg-item-ankle_movement-no = not all of it moves

msg-item-nerve_power_knee_extension-short = Power, knee extension
msg-item-nerve_power_knee_extension-how = Seated, the person straightens the knee and holds it against the hand above the ankle. Graded 0 to 5; with minus or plus at 4.
msg-item-nerve_power_knee_extension-purpose = Front of the thigh; key movement of the root L3.
msg-item-nerve_power_knee_extension-otherwise = Cannot sit: on the back, knee over a roll. Small hands: both hands, or the forearm. Without gravity: side-lying. Large limb: the dynamometer with a strap.
msg-item-nerve_power_knee_extension-care = Not against resistance where the extensor tendons or the kneecap may be torn or broken, nor where hip, pelvis, thigh, knee or shin may be broken or the hip slipped. Pain lowers effort: mark the effort as limited.

msg-item-nerve_strength_knee_extension-short = Strength, knee extension (dynamometer)
msg-item-nerve_strength_knee_extension-how = Seated, knee bent 90, the dynamometer against the shin just above the ankle, held by a strap or the examiner; push for three to five seconds. The best of up to three pushes counts.
msg-item-nerve_strength_knee_extension-purpose = A number to compare sides and visits.
msg-item-nerve_strength_knee_extension-otherwise = Small examiner: a strap or belt round the couch. No dynamometer: power by hand.
msg-item-nerve_strength_knee_extension-care = Not where a tendon or the kneecap may be torn or broken, nor where hip, pelvis, thigh, knee or shin may be broken, the hip slipped or the knee was dislocated. Pain of the familiar kind: stop. Not in a hot joint.
msg-item-nerve_strength_knee_extension-errors = The pad slips up the shin: another lever, another number. No strap: the examiner's own strength is measured.

msg-item-nerve_power_ankle_dorsiflexion-short = Power, lifting the foot
msg-item-nerve_power_ankle_dorsiflexion-how = Seated or lying, the person lifts the foot and holds it against the hand on its back (upper side). Graded 0 to 5; with minus or plus at 4.
msg-item-nerve_power_ankle_dorsiflexion-purpose = Muscles that lift the foot; key movement of the root L4, and the deep fibular nerve.
msg-item-nerve_power_ankle_dorsiflexion-otherwise = Large foot or small hands: walking on the heels, an item of its own, shows it too. Cannot sit or lie: standing, the forefoot is lifted.
msg-item-nerve_power_ankle_dorsiflexion-care = Where leg, ankle or foot may be broken: moved without resistance. New weakness after an injury, plaster or operation: look at nerve, vessel and compartment at once.
msg-item-nerve_power_ankle_dorsiflexion-errors = The toes do the lifting.

msg-item-nerve_sensation_foot_reduced-short = Feeling in the foot reduced
msg-item-nerve_sensation_foot_reduced-how = Eyes closed, touch lightly: between first and second toe, back (upper side) of the foot, sole; both feet. Yes where any of them is less than on the other side or than on the hand, or gone; say where in the remark.
msg-item-nerve_sensation_foot_reduced-purpose = A quick look at the nerves of the foot, before and after any splint.
msg-item-nerve_sensation_foot_reduced-otherwise = Cannot answer: not done; watch the pulling away. Dressing in the way: the places that are free, and which.
msg-item-nerve_sensation_foot_reduced-care = New after an injury, plaster or operation: look at vessel and compartment at once. With a cold or pale foot: call now. Felt leaves trouble of vessel or compartment not excluded.
msg-item-nerve_sensation_foot_reduced-errors = Both feet numb feel alike: compare with the hand.

msg-item-nerve_foot_drop-short = Foot drops
msg-item-nerve_foot_drop-how = Walking on the heels, or lifting the foot when lying. Yes when the foot cannot be lifted or slaps.
msg-item-nerve_foot_drop-purpose = Common fibular nerve, root L5 or the front compartment.
msg-item-nerve_foot_drop-otherwise = Cannot walk: lifting the foot lying. Heavy leg: heel on the couch.
msg-item-nerve_foot_drop-care = New after an injury of the knee: the knee may have been dislocated. Feel the pulses. Not by walking where a bone may be broken or the leg is not to be loaded: lying.

msg-item-vessel_pulse_dorsalis_pedis-short = Pulse on the back of the foot
msg-item-vessel_pulse_dorsalis_pedis-how = Feel on the upper side of the foot, over the tarsal bones, just outside the tendon that lifts the great toe; both feet. Missing from birth in a few people.
msg-item-vessel_pulse_dorsalis_pedis-purpose = Blood reaches the foot; before and after any splint.
msg-item-vessel_pulse_dorsalis_pedis-otherwise = Cannot lie: seated with the foot on a stool. Swollen foot: the Doppler. Not felt: mark the place and try again, write it as not felt.
msg-item-vessel_pulse_dorsalis_pedis-care = Not felt or weaker than the other after an injury, or newly lost with a cold, pale, numb or painful foot: call now. Felt leaves trouble of vessel or compartment not excluded.

msg-item-vessel_pulse_posterior_tibial-purpose = Blood reaches the foot; before and after any splint.
msg-item-vessel_pulse_posterior_tibial-otherwise = Cannot lie: seated with the foot on a stool. Swollen ankle or heavy leg: the Doppler.

msg-item-vessel_pulse_posterior_tibial-short = Pulse behind the inner ankle
msg-item-vessel_pulse_posterior_tibial-how = Feel half way between the inner ankle bone and the heel cord; both feet, the sound one first.
msg-item-vessel_pulse_posterior_tibial-care = Not felt or weaker than the other after an injury, or newly lost with a cold, pale, numb or painful foot: call now. Felt leaves trouble of vessel or compartment not excluded.
msg-item-vessel_pulse_posterior_tibial-errors = Your own pulse in the finger; a swollen ankle hides it.

msg-item-vessel_pulse_popliteal-short = Pulse behind the knee
msg-item-vessel_pulse_popliteal-how = Knee slightly bent and slack, fingers of both hands deep in the middle of the hollow.
msg-item-vessel_pulse_popliteal-purpose = Blood reaches the knee; after a knee that dislocated.
msg-item-vessel_pulse_popliteal-otherwise = Cannot lie flat: half sitting with the knee slack, or face down with the shin carried. Large leg: the pulses of the foot and the Doppler.
msg-item-vessel_pulse_popliteal-care = Not deep where a clot is suspected. Injured knee: as it lies, not bent for it. Not felt or weaker after an injury: call now. Felt leaves a torn vessel not excluded.
msg-item-vessel_pulse_popliteal-errors = Hard to feel in many; broad and easily felt may be a widened vessel.

msg-item-vessel_foot_cold-short = Foot cold
msg-item-vessel_foot_cold-how = Back of the hand on both feet, from toes to shin. Yes when colder than the other, or cold to above the toes.
msg-item-vessel_foot_cold-purpose = A foot that lacks blood, or a bandage that presses.
msg-item-vessel_foot_cold-otherwise = One limb: compare with the thigh and the hands.
msg-item-vessel_foot_cold-care = Cold with pain, numbness, weakness or a missing pulse: call now. Leg level, nothing tight, no heat on it.
msg-item-vessel_foot_cold-errors = A cold room cools both.

msg-item-vessel_capillary_refill_slow-short = Colour comes back slowly
msg-item-vessel_capillary_refill_slow-how = Press the pulp of the great toe for 5 seconds, let go, count. Yes above 4 seconds in a child older than a week; 2 in a man, 2.9 in a woman, 4.5 in an older person.
msg-item-vessel_capillary_refill_slow-purpose = A foot that lacks blood, or a bandage that presses.
msg-item-vessel_capillary_refill_slow-otherwise = Great toe missing or varnished: another toe.
msg-item-vessel_capillary_refill_slow-care = Back in time leaves trouble of vessel or compartment not excluded.
msg-item-vessel_capillary_refill_slow-errors = Cold room, nail varnish, poor light.

msg-item-vessel_pressure_posterior_tibial-short = Pressure, posterior tibial artery
msg-item-vessel_pressure_posterior_tibial-how = Lying still for 5 to 10 minutes, cuff just above the ankle bones, probe behind the inner ankle bone. The pressure at which the sound returns. No sound at all: signal absent.
msg-item-vessel_pressure_posterior_tibial-purpose = With the other foot artery and both arms: the ankle-arm ratio.
msg-item-vessel_pressure_posterior_tibial-otherwise = Cannot lie flat: half sitting, and write it; seated is not comparable. Large ankle: a wide cuff. No Doppler: not done, no instrument; never 0.
msg-item-vessel_pressure_posterior_tibial-care = Not over an ulcer, a graft, a fresh fracture or an open wound, and not over a painful calf that may hold a clot.

msg-item-vessel_pressure_arm-short = Pressure, arm
msg-item-vessel_pressure_arm-how = Lying still as for the ankle, in the same position, cuff on the upper arm. The pressure at which the sound returns.
msg-item-vessel_pressure_arm-purpose = The number that the foot is compared with; both arms, the higher counts.
msg-item-vessel_pressure_arm-otherwise = One arm: the other; write it. Large arm: a wide cuff.
msg-item-vessel_pressure_arm-care = Not on an arm with a shunt for dialysis, a fresh fracture or a wound under the cuff: the other arm; write it.
