# What the catalogue says of the ankle: tests of ligaments, tendons and nerve, heel rises: label, technique, what counts, when not, what goes wrong often.
# A dot in a message name is a dash here. Language: English. Reviewed by: nobody yet.

msg-item-ankle_silfverskiold-short = Silfverskiöld: foot up, knee straight, then bent
msg-item-ankle_silfverskiold-how = Lying. Hold the heel and the joint beneath it in line with the shin (arch not allowed to give), bend the foot up with the knee straight, then with the knee at 90. Limited only with the knee straight, gaining 10 degrees or more when bent: the outer calf muscle. Limited in both: the deep muscle or the joint.
msg-item-ankle_silfverskiold-purpose = Tells a tight outer calf muscle from a tight deep muscle or a stiff joint.
msg-item-ankle_silfverskiold-care = Not forced. Not with a break or a torn heel cord open, and not repeated where a clot is open.
msg-item-ankle_silfverskiold-errors = The foot turns out and the arch gives: a tight calf is missed. Two different forces. In stiff spasm bend slowly.
msg-item-ankle_silfverskiold-otherwise = Cannot lie: seated on the edge, leg straight out in front, then hanging. Knee that does not straighten: cannot be judged.

msg-item-ankle_anterior_drawer-short = Anterior drawer of the ankle
msg-item-ankle_anterior_drawer-how = Seated or lying, knee bent 60 to 90, foot pointed 10 to 20 down, calf slack. One hand holds the shin above the ankle, the other cups the heel and draws it straight forward. Millimetres beyond the other side, how it ends, and a dimple in front of the outer ankle bone.
msg-item-ankle_anterior_drawer-purpose = Whether the front outer ligament (ATFL) is torn or lengthened.
msg-item-ankle_anterior_drawer-positive = 5 mm or more beyond the other side, or less with a soft end. Less than 5 mm with a firm end counts as unsure.
msg-item-ankle_anterior_drawer-care = Not with a break open (Ottawa points tender and not filmed). Within two days pain and swelling hide it: best on day 4 to 7, book it. The sound ankle first.
msg-item-ankle_anterior_drawer-errors = Calf tight (bend the knee); foot let turn; both ankles loose: look at the other side and at thumb and forearm. A negative one in the first days says little.
msg-item-ankle_anterior_drawer-otherwise = Small hands or a large foot: the form with the heel on the couch and the shin pushed back. Cannot sit: on the back with the knee over a roll. One limb: only the end can be judged.

msg-item-ankle_anterior_drawer_reverse-short = Anterior drawer of the ankle, shin pushed back
msg-item-ankle_anterior_drawer_reverse-how = Lying, knee bent, heel on the couch or its edge, foot pointed 10 to 20 down and held, allowed to turn inward. The other hand pushes the lower shin straight back. Thumb at the front outer edge feels the step.
msg-item-ankle_anterior_drawer_reverse-purpose = The same ligament, with the examiner's weight instead of the grip.
msg-item-ankle_anterior_drawer_reverse-positive = 5 mm or more beyond the other side, or less with a soft end. Less than 5 mm with a firm end counts as unsure.
msg-item-ankle_anterior_drawer_reverse-care = Not with a break open (Ottawa points tender and not filmed). Within two days pain and swelling hide it: best on day 4 to 7, book it. The sound ankle first.
msg-item-ankle_anterior_drawer_reverse-errors = The heel slides on the couch; pushed on the knee instead of the lower shin. Studied in ankles that had been loose for long.
msg-item-ankle_anterior_drawer_reverse-otherwise = Seated: the heel on the edge of a stool. One hand: the couch and a strap hold the foot. One limb: only the end can be judged.

msg-item-ankle_anterolateral_drawer-short = Anterolateral drawer of the ankle
msg-item-ankle_anterolateral_drawer-how = As the anterior drawer, but let the foot turn inward while it is drawn; the thumb on the front outer edge of the talus feels the step from the fibula.
msg-item-ankle_anterolateral_drawer-purpose = The front outer ligament, where the inner ligament would hide a straight drawer.
msg-item-ankle_anterolateral_drawer-positive = 5 mm or more beyond the other side, or less with a soft end. Less than 5 mm with a firm end counts as unsure.
msg-item-ankle_anterolateral_drawer-care = Not with a break open (Ottawa points tender and not filmed). Within two days pain and swelling hide it: best on day 4 to 7, book it. The sound ankle first.
msg-item-ankle_anterolateral_drawer-errors = Calf tight (bend the knee); foot kept from turning inward; both ankles loose: look at the other side and at thumb and forearm. A negative one in the first days says little.
msg-item-ankle_anterolateral_drawer-otherwise = Small hands: the form with the heel on the couch and the shin pushed back.

msg-item-ankle_talar_tilt_neutral-short = Talar tilt inward, foot at a right angle (CFL)
msg-item-ankle_talar_tilt_neutral-how = Seated or lying, knee bent, foot at a right angle. One hand holds the shin, the other holds heel and talus together as one and tips them inward. How far against the other side, and how it ends.
msg-item-ankle_talar_tilt_neutral-purpose = The outer heel ligament (CFL). Speaks for a tear when positive; a negative one says little.
msg-item-ankle_talar_tilt_neutral-positive = Plainly more tilt than on the other side, or a soft end. Slightly more with a firm end counts as unsure.
msg-item-ankle_talar_tilt_neutral-care = Not with a break open (Ottawa points tender and not filmed). Within two days pain and swelling hide it: best on day 4 to 7, book it. The sound ankle first.
msg-item-ankle_talar_tilt_neutral-errors = The heel moves under a still talus: that is the joint below. Forefoot held; both ankles loose.
msg-item-ankle_talar_tilt_neutral-otherwise = Small hands or a large foot: both hands round the heel with thumbs on the talus, the shin held by the couch, on the side. One limb: only the end can be judged.

msg-item-ankle_talar_tilt_plantarflexed-short = Talar tilt inward, foot pointed down (ATFL)
msg-item-ankle_talar_tilt_plantarflexed-how = Seated or lying, knee bent, foot pointed slightly down. One hand holds the shin, the other holds heel and talus together as one and tips them inward. How far against the other side, and how it ends.
msg-item-ankle_talar_tilt_plantarflexed-purpose = The front outer ligament (ATFL). Speaks for a tear when positive; a negative one says little.
msg-item-ankle_talar_tilt_plantarflexed-positive = Plainly more tilt than on the other side, or a soft end. Slightly more with a firm end counts as unsure.
msg-item-ankle_talar_tilt_plantarflexed-care = Not with a break open (Ottawa points tender and not filmed). Within two days pain and swelling hide it: best on day 4 to 7, book it. The sound ankle first.
msg-item-ankle_talar_tilt_plantarflexed-errors = The heel moves under a still talus: that is the joint below. Forefoot held; both ankles loose.
msg-item-ankle_talar_tilt_plantarflexed-otherwise = Small hands or a large foot: both hands round the heel with thumbs on the talus, the shin held by the couch, on the side. One limb: only the end can be judged.

msg-item-ankle_talar_tilt_outward-short = Talar tilt outward (deltoid)
msg-item-ankle_talar_tilt_outward-how = Seated or lying, knee bent, foot at a right angle. One hand holds the shin, the other holds heel and talus together as one and tips them outward. How far against the other side, and how it ends.
msg-item-ankle_talar_tilt_outward-purpose = The inner ligament (deltoid). Speaks for a tear when positive; a negative one says little.
msg-item-ankle_talar_tilt_outward-positive = Plainly more tilt than on the other side, or a soft end. Slightly more with a firm end counts as unsure.
msg-item-ankle_talar_tilt_outward-care = Not with a break open (Ottawa points tender and not filmed). Not with a tender upper fibula, or an inner side swollen and tender, before a film of the whole lower leg. Within two days pain and swelling hide it: best on day 4 to 7, book it. The sound ankle first.
msg-item-ankle_talar_tilt_outward-errors = The heel moves under a still talus: that is the joint below. Forefoot held; both ankles loose.
msg-item-ankle_talar_tilt_outward-otherwise = Small hands or a large foot: both hands round the heel with thumbs on the talus, the shin held by the couch, on the side. One limb: only the end can be judged.

msg-item-ankle_syndesmosis_squeeze-short = Syndesmosis squeeze at mid-calf
msg-item-ankle_syndesmosis_squeeze-how = Seated or lying, both hands at mid-calf, press fibula toward shin once, firmly and slowly.
msg-item-ankle_syndesmosis_squeeze-purpose = The ligaments between shin and fibula (high sprain). A positive one raises it; a negative one says little.
msg-item-ankle_syndesmosis_squeeze-positive = Pain at the ankle, between shin and fibula; not under the hand.
msg-item-ankle_syndesmosis_squeeze-care = Gently and once where a break of the ankle is open; press the whole fibula first. Not in a hard or hot leg, nor where a clot is open.
msg-item-ankle_syndesmosis_squeeze-errors = Pain under the hand counted; squeezed at the ankle.
msg-item-ankle_syndesmosis_squeeze-otherwise = Small hands: the crossed leg, which needs no grip. Cannot sit: lying or on the side.
msg-item-ankle_syndesmosis_squeeze-yes = pain at the ankle, between the bones
msg-item-ankle_syndesmosis_squeeze-no = no pain at the ankle

msg-item-ankle_dorsiflexion_external_rotation-short = Dorsiflexion with external rotation of the foot
msg-item-ankle_dorsiflexion_external_rotation-how = Seated, knee at 90, shin held still. Bend the foot up and turn it out, slowly.
msg-item-ankle_dorsiflexion_external_rotation-purpose = The ligaments between shin and fibula (high sprain).
msg-item-ankle_dorsiflexion_external_rotation-positive = Pain at the front outer side ABOVE the joint line.
msg-item-ankle_dorsiflexion_external_rotation-care = Not with a break open, a tender upper fibula, or a swollen tender inner side before a film of the whole lower leg.
msg-item-ankle_dorsiflexion_external_rotation-errors = The shin turns with it; pain at the inner ligament or the front outer ligament counted.
msg-item-ankle_dorsiflexion_external_rotation-otherwise = Cannot sit: lying, knee bent over a roll. Small hands: forearm along the sole, elbow at the heel.
msg-item-ankle_dorsiflexion_external_rotation-yes = pain above the joint line, front outer side
msg-item-ankle_dorsiflexion_external_rotation-no = no pain above the joint line

msg-item-ankle_lunge_compression-short = Lunge, then ankle bones pressed together (syndesmosis)
msg-item-ankle_lunge_compression-how = Standing, knee to wall with the heel down: how far, and how much it hurts. Then the same while you press both ankle bones together.
msg-item-ankle_lunge_compression-purpose = The ligaments between shin and fibula: pressing the bones together helps.
msg-item-ankle_lunge_compression-positive = It goes further, or hurts less, while the bones are pressed together.
msg-item-ankle_lunge_compression-care = Not with a break open, nor with a tender upper fibula or a swollen tender inner side before a film of the whole lower leg; not where weight cannot be borne.
msg-item-ankle_lunge_compression-errors = Pressed below the bones; the first lunge not to the end.
msg-item-ankle_lunge_compression-otherwise = Cannot stand: squeeze at mid-calf, tenderness upward and foot bent up and turned out. Small hands: a strap round the ankle bones.
msg-item-ankle_lunge_compression-yes = further, or less pain, with the bones pressed
msg-item-ankle_lunge_compression-no = no better with the bones pressed

msg-item-ankle_cotton-short = Cotton test: heel shifted side to side
msg-item-ankle_cotton-how = Seated or lying, foot at a right angle. One hand holds the shin just above the ankle, the other takes the heel and shifts it straight to the inner and the outer side, without tipping.
msg-item-ankle_cotton-purpose = Whether the fork of the ankle has widened.
msg-item-ankle_cotton-positive = More than 3 mm of shift, or a knock, against the other side.
msg-item-ankle_cotton-care = Not with a break open, nor with a tender upper fibula or a swollen tender inner side before a film of the whole lower leg. Positive: leave it unloaded and have it filmed.
msg-item-ankle_cotton-errors = Tipped instead of shifted; both sides loose; guarding.
msg-item-ankle_cotton-otherwise = Small hands: heel on the couch edge, shift the shin instead.
msg-item-ankle_cotton-yes = shifts more than the other side, or knocks
msg-item-ankle_cotton-no = shifts as the other side

msg-item-ankle_fibular_translation-short = Fibular translation: outer ankle bone to and fro
msg-item-ankle_fibular_translation-how = Seated or lying, shin held. Finger and thumb on the outer ankle bone, push it forward and back.
msg-item-ankle_fibular_translation-purpose = The ligaments between shin and fibula.
msg-item-ankle_fibular_translation-positive = Pain between the bones, or more glide than on the other side.
msg-item-ankle_fibular_translation-care = Not with a break open, nor with a tender upper fibula or a swollen tender inner side before a film of the whole lower leg.
msg-item-ankle_fibular_translation-errors = Skin moves instead of bone; a tender bone edge hurts for another reason.
msg-item-ankle_fibular_translation-otherwise = Seated, lying or on the side the same.
msg-item-ankle_fibular_translation-yes = pain between the bones, or more glide
msg-item-ankle_fibular_translation-no = no pain and no more glide

msg-item-ankle_syndesmosis_binding-short = Standing on one leg, then with a strap (syndesmosis)
msg-item-ankle_syndesmosis_binding-how = Standing by a rail: the person stands on the hurt leg alone. Then a strap is drawn tight round the ankle just above the joint, and again.
msg-item-ankle_syndesmosis_binding-purpose = Whether the fork of the ankle gives way under load.
msg-item-ankle_syndesmosis_binding-positive = Cannot stand or it hurts without the strap, and it goes better with it.
msg-item-ankle_syndesmosis_binding-care = Not with a break open, nor with a tender upper fibula or a swollen tender inner side before a film of the whole lower leg; a hand ready to catch.
msg-item-ankle_syndesmosis_binding-errors = Strap too high or slack; balance poor for another reason.
msg-item-ankle_syndesmosis_binding-otherwise = Cannot stand: squeeze at mid-calf and tenderness upward; the load is then not judged.
msg-item-ankle_syndesmosis_binding-yes = better on one leg with the strap
msg-item-ankle_syndesmosis_binding-no = no better with the strap

msg-item-ankle_crossed_leg-short = Crossed leg, knee pressed down (syndesmosis)
msg-item-ankle_crossed_leg-how = Seated, the mid-calf of the hurt leg resting on the other knee. A gentle push down on the knee of the hurt leg.
msg-item-ankle_crossed_leg-purpose = The ligaments between shin and fibula; the person's own leg does the squeezing, so no strength of hand is needed.
msg-item-ankle_crossed_leg-positive = Pain at the ankle, between the bones.
msg-item-ankle_crossed_leg-care = Not with a break of hip, knee or shin, a dislocated knee or a clot open. Where a break of the ankle is open: gently and once. Not after a hip replacement that may not be crossed.
msg-item-ankle_crossed_leg-errors = Hip or knee that does not allow the position; pain under the calf counted.
msg-item-ankle_crossed_leg-otherwise = Cannot cross the leg, or one limb: the squeeze at mid-calf.
msg-item-ankle_crossed_leg-yes = pain at the ankle, between the bones
msg-item-ankle_crossed_leg-no = no pain at the ankle

msg-item-ankle_impingement_anterior-short = Anterior impingement: foot up, thumb at the corner
msg-item-ankle_impingement_anterior-how = Seated, thumb pressing the front outer corner at the joint line, foot pointed down; then bend the foot up while the thumb stays.
msg-item-ankle_impingement_anterior-purpose = Caught lining or bone at the front of the joint.
msg-item-ankle_impingement_anterior-positive = The familiar pain rises when the foot comes up.
msg-item-ankle_impingement_anterior-care = Not forced in a fresh sprain; not with a break open.
msg-item-ankle_impingement_anterior-errors = Thumb on the ligament; a fresh sprain hurts in any way.
msg-item-ankle_impingement_anterior-otherwise = Cannot sit: lying, knee over a roll. Loaded: the lunge to the wall shows the same.
msg-item-ankle_impingement_anterior-yes = the familiar pain rises with the foot up
msg-item-ankle_impingement_anterior-no = no more pain with the foot up

msg-item-ankle_impingement_posterior-short = Posterior impingement: foot pressed fully down
msg-item-ankle_impingement_posterior-how = Seated or lying face down with the knee bent to 90; press the foot firmly to its end of pointing down, turned a little in and out.
msg-item-ankle_impingement_posterior-purpose = Bone or soft parts caught behind the ankle: dancers, kickers.
msg-item-ankle_impingement_posterior-positive = The familiar pain BEHIND the ankle.
msg-item-ankle_impingement_posterior-care = Not forced in a fresh sprain; not with a break open.
msg-item-ankle_impingement_posterior-errors = Pain at the front is a stretch of the capsule.
msg-item-ankle_impingement_posterior-otherwise = Cannot lie on the front: seated with the leg hanging.
msg-item-ankle_impingement_posterior-yes = the familiar pain behind the ankle
msg-item-ankle_impingement_posterior-no = no pain behind the ankle

msg-item-ankle_resisted_eversion-short = Foot turned out against the hand
msg-item-ankle_resisted_eversion-how = Seated, foot pointed down. The person turns the foot out against your hand at its outer edge; the other hand feels behind the outer ankle bone.
msg-item-ankle_resisted_eversion-purpose = The tendons behind the outer ankle bone.
msg-item-ankle_resisted_eversion-positive = The familiar pain behind or below the outer ankle bone.
msg-item-ankle_resisted_eversion-care = Not against resistance with a break open.
msg-item-ankle_resisted_eversion-errors = The toes lift and pull; weakness without pain is a nerve: power is recorded there.
msg-item-ankle_resisted_eversion-otherwise = Small hands: the foot's outer edge against your thigh. Lying the same.
msg-item-ankle_resisted_eversion-yes = the familiar pain behind the outer bone
msg-item-ankle_resisted_eversion-no = no familiar pain

msg-item-ankle_resisted_inversion-short = Foot turned in against the hand
msg-item-ankle_resisted_inversion-how = Seated, foot pointed down and turned out at the start. The person turns it in against your hand at the inner edge of the forefoot.
msg-item-ankle_resisted_inversion-purpose = The tendon behind the inner ankle bone.
msg-item-ankle_resisted_inversion-positive = The familiar pain along the inner tendon, or plainly weaker than the other side.
msg-item-ankle_resisted_inversion-care = Not against resistance with a break open.
msg-item-ankle_resisted_inversion-errors = The front shin muscle helps when the foot comes up: keep it pointed down. The toes curl.
msg-item-ankle_resisted_inversion-otherwise = Cannot stand for a heel rise: this stands for it. Small hands: the inner edge against your thigh.
msg-item-ankle_resisted_inversion-yes = familiar pain, or weaker than the other side
msg-item-ankle_resisted_inversion-no = no familiar pain and as strong

msg-item-ankle_peroneal_subluxation-short = Peroneal tendons ride over the outer ankle bone
msg-item-ankle_peroneal_subluxation-how = Seated, fingers behind the outer ankle bone. The person circles the foot, then bends it up and turns it out against your hand.
msg-item-ankle_peroneal_subluxation-purpose = A torn band that holds the tendons behind the outer ankle bone.
msg-item-ankle_peroneal_subluxation-positive = A tendon is felt or seen to ride over the bone, or snaps with the familiar pain.
msg-item-ankle_peroneal_subluxation-care = Not with a break open: a flake off the outer bone goes with it.
msg-item-ankle_peroneal_subluxation-errors = A snap inside the groove without riding over; both sides in loose people.
msg-item-ankle_peroneal_subluxation-otherwise = Lying the same.
msg-item-ankle_peroneal_subluxation-yes = a tendon rides over the bone
msg-item-ankle_peroneal_subluxation-no = no tendon rides over the bone

msg-item-ankle_tinel_tarsal_tunnel-short = Tinel sign behind the inner ankle bone
msg-item-ankle_tinel_tarsal_tunnel-how = Seated or lying, foot slack and turned out a little. Knock lightly with a fingertip over the nerve, four to six times, just behind the pulse. The other foot too.
msg-item-ankle_tinel_tarsal_tunnel-purpose = The nerve of the sole caught behind the inner ankle bone.
msg-item-ankle_tinel_tarsal_tunnel-positive = Tingling into the sole or toes.
msg-item-ankle_tinel_tarsal_tunnel-care = Not where a wound or an infection lies there.
msg-item-ankle_tinel_tarsal_tunnel-errors = Tapped on the tendon in front; pain on the spot alone. Numb feet from another cause tingle on both sides.
msg-item-ankle_tinel_tarsal_tunnel-otherwise = Seated, lying or on the side. One limb, or both feet numb: says little.
msg-item-ankle_tinel_tarsal_tunnel-yes = tingling into the sole or toes
msg-item-ankle_tinel_tarsal_tunnel-no = no tingling into the sole

msg-item-ankle_dorsiflexion_eversion-short = Dorsiflexion-eversion, held (tarsal tunnel)
msg-item-ankle_dorsiflexion_eversion-how = Seated. Bend the foot fully up, turn the heel out and bend all toes up; hold for 5 to 10 seconds.
msg-item-ankle_dorsiflexion_eversion-purpose = The nerve of the sole caught behind the inner ankle bone.
msg-item-ankle_dorsiflexion_eversion-positive = The familiar pain, numbness or tingling in the sole, or the place behind the ankle bone becomes tender.
msg-item-ankle_dorsiflexion_eversion-care = Not with a break or a torn heel cord open. Not where a wound or an infection lies there.
msg-item-ankle_dorsiflexion_eversion-errors = Held too short; pain of a stretched plantar fascia under the heel counted. Look at both feet.
msg-item-ankle_dorsiflexion_eversion-otherwise = Cannot sit: lying. Small hands: forearm under the sole, fingers over the toes.
msg-item-ankle_dorsiflexion_eversion-yes = the familiar pain or tingling in the sole
msg-item-ankle_dorsiflexion_eversion-no = no familiar pain or tingling

msg-item-ankle_triple_compression-short = Triple compression (tarsal tunnel)
msg-item-ankle_triple_compression-how = Seated or lying. Point the foot fully down, turn it in, and press a thumb on the nerve behind the inner ankle bone; up to 30 seconds.
msg-item-ankle_triple_compression-purpose = The nerve of the sole caught behind the inner ankle bone.
msg-item-ankle_triple_compression-positive = Tingling or numbness in the sole.
msg-item-ankle_triple_compression-care = Not with a break open. Not where a wound or an infection lies there.
msg-item-ankle_triple_compression-errors = Thumb on the artery alone; pain on the spot counted. Look at both feet.
msg-item-ankle_triple_compression-otherwise = Seated, lying or on the side the same.
msg-item-ankle_triple_compression-yes = tingling or numbness in the sole
msg-item-ankle_triple_compression-no = no tingling in 30 seconds

msg-item-ankle_heel_rise_double-short = Heel rise on both feet
msg-item-ankle_heel_rise_double-how = Standing facing a wall, fingertips on it. Rise on to the balls of both feet and down. From behind: how high, evenly, and whether the heels turn inward. Recorded for the side that differs, or for both.
msg-item-ankle_heel_rise_double-purpose = Calf and heel cord, the tendon that holds the arch, and the midfoot.
msg-item-ankle_heel_rise_double-care = Not with a break, a torn heel cord, a clot, an infected joint, a stress fracture or a hot Charcot foot open. Squeeze the calf first after a sudden pain behind the ankle. A heel rise that succeeds leaves a torn cord not excluded.
msg-item-ankle_heel_rise_double-errors = Pulls up by the hands; leans on the good leg; knees bend. Pain under the midfoot: write it in the remark.
msg-item-ankle_heel_rise_double-otherwise = Cannot stand: seated heel rise, which loads less and tells only whether it moves.

msg-item-ankle_heel_rise_seated-short = Heel rise seated
msg-item-ankle_heel_rise_seated-how = Seated, feet flat, knees at 90. Both heels are lifted; then against your hand on the knee. A light load: it says nothing about walking.
msg-item-ankle_heel_rise_seated-purpose = For who cannot stand: whether the calf lifts the heel at all.
msg-item-ankle_heel_rise_seated-care = Not with a break or a torn heel cord open.
msg-item-ankle_heel_rise_seated-errors = The hip lifts the foot.
msg-item-ankle_heel_rise_seated-otherwise = Cannot sit: lying, the foot pushed down against the hand. What a standing heel rise tells of the arch is lost.

msg-item-ankle_heel_rise_single-short = Heel rise on one foot
msg-item-ankle_heel_rise_single-how = Standing facing a wall, fingertips on it, other foot up. Rise on to the ball of the foot. From behind: does the heel turn inward? Where it hurts in the remark: inner ankle, heel cord, midfoot.
msg-item-ankle_heel_rise_single-purpose = The tendon that holds the arch (the heel turns inward), the calf, and the midfoot.
msg-item-ankle_heel_rise_single-care = Not with a break, a torn heel cord, a clot, an infected joint, a stress fracture or a hot Charcot foot open. Squeeze the calf first after a sudden pain behind the ankle. A heel rise that succeeds leaves a torn cord not excluded.
msg-item-ankle_heel_rise_single-errors = Knee bends, body leans forward, hands push. Weak from another cause: root of the first sacral nerve, long rest, age.
msg-item-ankle_heel_rise_single-otherwise = Cannot stand on one leg: heel rise on both, then turning in against the hand. One limb, unsteady: between two hands.

msg-item-ankle_heel_rise_count-short = Heel rises on one foot, how many
msg-item-ankle_heel_rise_count-how = Standing facing a wall, fingertips on it, bare foot, other foot up. Full height each time, one a second (60 a minute, by metronome). Stop when the height is less than half, the knee bends, or it hurts. On the flat floor; on a slope of 10 degrees it is another quantity.
msg-item-ankle_heel_rise_count-purpose = Endurance of the calf. Falls with age; compared with the other leg and with age and sex.
msg-item-ankle_heel_rise_count-care = Not with a break, a torn heel cord, a clot, an infected joint, a stress fracture or a hot Charcot foot open. Squeeze the calf first after a sudden pain behind the ankle. A heel rise that succeeds leaves a torn cord not excluded. None at all with the other leg able: squeeze the calf.
msg-item-ankle_heel_rise_count-errors = Half heights counted; hands push; slope and flat floor mixed; on a slope a difference of six or fewer lay within the error of the test.
msg-item-ankle_heel_rise_count-otherwise = Cannot stand: seated heel rise tells whether, not how many. One limb: against age and sex only.
