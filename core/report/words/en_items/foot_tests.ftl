# What the catalogue says of the foot: tests, motion and shape: label, technique, what counts, when not, what goes wrong often.
# A dot in a message name is a dash here. Language: English. Reviewed by: nobody yet.

msg-item-foot_calcaneal_squeeze-short = Heel bone squeezed from both sides
msg-item-foot_calcaneal_squeeze-how = Foot held free. The heels of both hands press the body of the heel bone from both sides, away from the band and the tendon; the other heel first.
msg-item-foot_calcaneal_squeeze-purpose = A break or a stress fracture of the heel bone; the growth plate of the heel at 8 to 14 years.
msg-item-foot_calcaneal_squeeze-positive = Pain in the bone, more than on the other side.
msg-item-foot_calcaneal_squeeze-care = Gently and once where it may be broken. After a fall from a height: the spine and the other heel too.
msg-item-foot_calcaneal_squeeze-errors = Squeezed too far back on the tendon or on the soft pad; both sides sore in a growing person.
msg-item-foot_calcaneal_squeeze-otherwise = Seated, lying or on the front. Small hands: both hands with fingers locked. A child: on the lap.
msg-item-foot_calcaneal_squeeze-yes = pain in the heel bone
msg-item-foot_calcaneal_squeeze-no = no pain in the heel bone

msg-item-foot_bone_fork_pain-short = Tuning fork on a bone of the foot
msg-item-foot_bone_fork_pain-how = 128 Hz fork, struck, its foot on the tender spot of the bone; then on the same place of the other foot.
msg-item-foot_bone_fork_pain-purpose = Supports a stress fracture; too uneven to decide alone.
msg-item-foot_bone_fork_pain-positive = Sharp pain at that spot while the fork sounds, not on the other side.
msg-item-foot_bone_fork_pain-care = Not over a wound, nor where a bone may be broken right through.
msg-item-foot_bone_fork_pain-errors = Held on soft parts; a numb foot. Studies differ widely.
msg-item-foot_bone_fork_pain-otherwise = No fork: one sharp sore spot under a fingertip stands for it.
msg-item-foot_bone_fork_pain-yes = sharp pain from the fork at that spot
msg-item-foot_bone_fork_pain-no = no sharp pain from the fork

msg-item-foot_windlass_seated-short = Windlass, foot hanging: great toe bent up
msg-item-foot_windlass_seated-how = Seated with the foot free, ankle at a right angle and held. Bend the great toe fully up, its end joint left free to bend.
msg-item-foot_windlass_seated-purpose = The plantar fascia. A positive one speaks for it; a negative one says little.
msg-item-foot_windlass_seated-positive = The familiar pain at the heel or along the arch.
msg-item-foot_windlass_seated-care = Not with a fresh injury of the great toe, where a bone may be broken or the heel cord torn, or in a hot joint.
msg-item-foot_windlass_seated-errors = Toe too stiff to tighten the band: record its degrees. Ankle let down: the band is slack. Pain in the toe joint counted.
msg-item-foot_windlass_seated-otherwise = Cannot sit: lying, knee a little bent. The standing form loads it more.
msg-item-foot_windlass_seated-yes = the familiar pain at heel or arch
msg-item-foot_windlass_seated-no = no familiar pain

msg-item-foot_windlass_standing-short = Windlass, standing: great toe bent up
msg-item-foot_windlass_standing-how = Standing on a step or a low box, the heads of the metatarsals at its edge, toes free, weight on both feet, a hand on the wall. Bend the great toe fully up.
msg-item-foot_windlass_standing-purpose = The plantar fascia under load; finds somewhat more than the hanging form.
msg-item-foot_windlass_standing-positive = The familiar pain at the heel or along the arch.
msg-item-foot_windlass_standing-care = Not with a fresh injury of the great toe, where a bone may be broken or the heel cord torn, in a hot joint, or on a numb foot. A hand ready to catch.
msg-item-foot_windlass_standing-errors = Weight on the other leg; a stiff toe; a step that gives way.
msg-item-foot_windlass_standing-otherwise = Cannot stand: the hanging form, which finds less.
msg-item-foot_windlass_standing-yes = the familiar pain at heel or arch
msg-item-foot_windlass_standing-no = no familiar pain

msg-item-foot_piano_key-short = Piano key: metatarsal heads up and down
msg-item-foot_piano_key-how = Seated or lying. One hand holds the midfoot still; the other moves the head of each metatarsal up and down, one after the other, gently and once.
msg-item-foot_piano_key-purpose = A torn or broken midfoot.
msg-item-foot_piano_key-positive = Pain at the joint where that metatarsal begins; which one in the remark.
msg-item-foot_piano_key-care = Not where a bone may be broken, nor with swelling under tight skin or numb toes (look at the compartments). Any sign positive: no further stress; films of both feet standing, or treated as an injury.
msg-item-foot_piano_key-errors = Midfoot not held; pain of the toe joint counted. No study says how good it is.
msg-item-foot_piano_key-otherwise = Small hands: the midfoot on the couch edge or your thigh.
msg-item-foot_piano_key-yes = pain at a midfoot joint
msg-item-foot_piano_key-no = no pain at the midfoot joints

msg-item-foot_midfoot_squeeze-short = Midfoot squeezed from side to side
msg-item-foot_midfoot_squeeze-how = Seated or lying, one hand round the midfoot over the line of its joints; squeeze inner and outer border together, slowly.
msg-item-foot_midfoot_squeeze-purpose = A torn or broken midfoot.
msg-item-foot_midfoot_squeeze-positive = Pain at the midfoot joints.
msg-item-foot_midfoot_squeeze-care = Not where a bone may be broken, nor with swelling under tight skin or numb toes (look at the compartments). Any sign positive: no further stress; films of both feet standing, or treated as an injury.
msg-item-foot_midfoot_squeeze-errors = Squeezed at the heads: that asks the web spaces.
msg-item-foot_midfoot_squeeze-otherwise = Small hands: the heels of both hands.
msg-item-foot_midfoot_squeeze-yes = pain at the midfoot joints
msg-item-foot_midfoot_squeeze-no = no pain at the midfoot joints

msg-item-foot_pronation_abduction-short = Forefoot twisted out and up, heel held
msg-item-foot_pronation_abduction-how = Seated or lying. One hand fixes the heel; the other twists the forefoot outward and its outer edge up, slowly.
msg-item-foot_pronation_abduction-purpose = A torn or broken midfoot.
msg-item-foot_pronation_abduction-positive = Pain at the midfoot joints.
msg-item-foot_pronation_abduction-care = Not where a bone may be broken, nor with swelling under tight skin or numb toes (look at the compartments). Any sign positive: no further stress; films of both feet standing, or treated as an injury.
msg-item-foot_pronation_abduction-errors = Heel not fixed: the ankle is twisted.
msg-item-foot_pronation_abduction-otherwise = Small hands: the heel against your thigh.
msg-item-foot_pronation_abduction-yes = pain at the midfoot joints
msg-item-foot_pronation_abduction-no = no pain at the midfoot joints

msg-item-foot_first_metatarsal_rise-short = First metatarsal rise: heel turned in by hand
msg-item-foot_first_metatarsal_rise-how = Standing, weight on both feet. From behind, take the shin and turn it outward, or turn the heel inward by hand, and watch the head of the first metatarsal.
msg-item-foot_first_metatarsal_rise-purpose = The tendon that holds the arch has lengthened.
msg-item-foot_first_metatarsal_rise-positive = The head of the first metatarsal leaves the floor.
msg-item-foot_first_metatarsal_rise-care = Not where a bone may be broken. The shin is turned gently: a knee or a hip may be replaced.
msg-item-foot_first_metatarsal_rise-errors = The toe pushes down; forefoot stiff and turned up by itself.
msg-item-foot_first_metatarsal_rise-otherwise = Cannot stand: turning in against the hand and pitting along the tendon; the load is then not judged.
msg-item-foot_first_metatarsal_rise-yes = the first head lifts
msg-item-foot_first_metatarsal_rise-no = the first head stays down

msg-item-foot_web_space_squeeze_second-short = Second web space squeezed, thumb and finger
msg-item-foot_web_space_squeeze_second-how = Seated or lying. Thumb from above and index from below, just beyond the heads of the second and third metatarsals, toes let spread; squeeze the space, not the joints.
msg-item-foot_web_space_squeeze_second-purpose = A thickened nerve between the toes (Morton).
msg-item-foot_web_space_squeeze_second-positive = The familiar pain, with or without tingling into the two toes.
msg-item-foot_web_space_squeeze_second-care = Not through a wound between the toes.
msg-item-foot_web_space_squeeze_second-errors = Heads or joints pressed. How often it is painful in people without the disease is not known.
msg-item-foot_web_space_squeeze_second-otherwise = Seated, lying or on the front; one hand is enough.
msg-item-foot_web_space_squeeze_second-yes = the familiar pain in the space
msg-item-foot_web_space_squeeze_second-no = no familiar pain in the space

msg-item-foot_web_space_squeeze_third-short = Third web space squeezed, thumb and finger
msg-item-foot_web_space_squeeze_third-how = Seated or lying. Thumb from above and index from below, just beyond the heads of the third and fourth metatarsals, toes let spread; squeeze the space, not the joints.
msg-item-foot_web_space_squeeze_third-purpose = A thickened nerve between the toes (Morton).
msg-item-foot_web_space_squeeze_third-positive = The familiar pain, with or without tingling into the two toes.
msg-item-foot_web_space_squeeze_third-care = Not through a wound between the toes.
msg-item-foot_web_space_squeeze_third-errors = Heads or joints pressed. How often it is painful in people without the disease is not known.
msg-item-foot_web_space_squeeze_third-otherwise = Seated, lying or on the front; one hand is enough.
msg-item-foot_web_space_squeeze_third-yes = the familiar pain in the space
msg-item-foot_web_space_squeeze_third-no = no familiar pain in the space

msg-item-foot_mulder-short = Forefoot squeezed, thumb in the web: painful click (Mulder)
msg-item-foot_mulder-how = Seated or lying. One hand squeezes the heads together from both sides; the thumb of the other presses the painful web space from below. Which space in the remark.
msg-item-foot_mulder-purpose = A thickened nerve between the toes (Morton).
msg-item-foot_mulder-positive = A click WITH the familiar pain. A click alone is not positive.
msg-item-foot_mulder-care = Not through a wound; not where a bone may be broken.
msg-item-foot_mulder-errors = Clicks without pain are common; the heads pressed instead of the space.
msg-item-foot_mulder-otherwise = Small hands: squeeze with both hands, the person presses the space.
msg-item-foot_mulder-yes = a click with the familiar pain
msg-item-foot_mulder-no = no painful click

msg-item-foot_forefoot_squeeze-short = Forefoot squeezed from both sides
msg-item-foot_forefoot_squeeze-how = Seated or lying. One hand round the heads of all metatarsals; squeeze from both sides, slowly; the other foot first.
msg-item-foot_forefoot_squeeze-purpose = Inflamed toe joints, a thickened nerve; points to the forefoot and no further.
msg-item-foot_forefoot_squeeze-positive = The familiar pain; between the toes or in the joints, which in the remark.
msg-item-foot_forefoot_squeeze-care = Not where a bone may be broken, nor over a wound.
msg-item-foot_forefoot_squeeze-errors = Squeezed too hard: it hurts everybody. Both feet sore: think of joint disease.
msg-item-foot_forefoot_squeeze-otherwise = Small hands: both hands. A child: on the lap, lightly, watch the face.
msg-item-foot_forefoot_squeeze-yes = the familiar pain on squeezing
msg-item-foot_forefoot_squeeze-no = no familiar pain on squeezing

msg-item-foot_web_percussion_plantar-short = Tapping the web space from below
msg-item-foot_web_percussion_plantar-how = Seated or lying, toes bent up a little. Tap with a fingertip from below between the heads of the painful space.
msg-item-foot_web_percussion_plantar-purpose = A thickened nerve between the toes (Morton).
msg-item-foot_web_percussion_plantar-positive = The familiar pain or tingling into the toes.
msg-item-foot_web_percussion_plantar-care = Not through a wound.
msg-item-foot_web_percussion_plantar-errors = Heads tapped. Less often positive than the squeeze.
msg-item-foot_web_percussion_plantar-otherwise = Seated, lying or on the front.
msg-item-foot_web_percussion_plantar-yes = familiar pain or tingling into the toes
msg-item-foot_web_percussion_plantar-no = no familiar pain or tingling

msg-item-foot_web_percussion_dorsal-short = Tapping the web space from above
msg-item-foot_web_percussion_dorsal-how = Seated or lying, toes bent down a little. Tap with a fingertip from above between the heads of the painful space.
msg-item-foot_web_percussion_dorsal-purpose = A thickened nerve between the toes (Morton).
msg-item-foot_web_percussion_dorsal-positive = The familiar pain or tingling into the toes.
msg-item-foot_web_percussion_dorsal-care = Not through a wound.
msg-item-foot_web_percussion_dorsal-errors = Heads tapped. Less often positive than the squeeze.
msg-item-foot_web_percussion_dorsal-otherwise = Seated, lying or on the front.
msg-item-foot_web_percussion_dorsal-yes = familiar pain or tingling into the toes
msg-item-foot_web_percussion_dorsal-no = no familiar pain or tingling

msg-item-foot_mtp_first_grind-short = Grind: great toe pressed in and turned
msg-item-foot_mtp_first_grind-how = Seated or lying. Hold the first metatarsal, press the toe toward it along its axis and turn and bend it a little.
msg-item-foot_mtp_first_grind-purpose = Worn base joint of the great toe.
msg-item-foot_mtp_first_grind-positive = The familiar pain deep in the joint, with or without grating.
msg-item-foot_mtp_first_grind-care = Not in a hot joint, nor where a bone may be broken.
msg-item-foot_mtp_first_grind-errors = Pain only at the end of bending points to a bony edge.
msg-item-foot_mtp_first_grind-otherwise = Seated, lying or on the front.
msg-item-foot_mtp_first_grind-yes = familiar pain deep in the joint
msg-item-foot_mtp_first_grind-no = no familiar pain (grating alone counts as no)

msg-item-foot_mtp_second_drawer-short = Drawer of the second toe at its base (plantar plate)
msg-item-foot_mtp_second_drawer-how = Seated or lying. One hand holds the head of the second metatarsal; the other takes the first bone of the toe and lifts it straight up against the head, not bending it.
msg-item-foot_mtp_second_drawer-purpose = Torn plate under the base joint of the toe.
msg-item-foot_mtp_second_drawer-positive = More than 2 mm of shift, or the familiar pain.
msg-item-foot_mtp_second_drawer-care = Not where a bone may be broken, nor in a hot joint.
msg-item-foot_mtp_second_drawer-errors = Toe bent up instead of lifted; both feet loose: compare.
msg-item-foot_mtp_second_drawer-otherwise = Slippery toe: a strip of gauze. Small hands: no loss.
msg-item-foot_mtp_second_drawer-yes = shifts more than 2 mm, or the familiar pain
msg-item-foot_mtp_second_drawer-no = shifts little, no familiar pain

msg-item-foot_mtp_third_drawer-short = Drawer of the third toe at its base (plantar plate)
msg-item-foot_mtp_third_drawer-how = Seated or lying. One hand holds the head of the third metatarsal; the other takes the first bone of the toe and lifts it straight up against the head, not bending it.
msg-item-foot_mtp_third_drawer-purpose = Torn plate under the base joint of the toe.
msg-item-foot_mtp_third_drawer-positive = More than 2 mm of shift, or the familiar pain.
msg-item-foot_mtp_third_drawer-care = Not where a bone may be broken, nor in a hot joint.
msg-item-foot_mtp_third_drawer-errors = Toe bent up instead of lifted; both feet loose: compare.
msg-item-foot_mtp_third_drawer-otherwise = Slippery toe: a strip of gauze. Small hands: no loss.
msg-item-foot_mtp_third_drawer-yes = shifts more than 2 mm, or the familiar pain
msg-item-foot_mtp_third_drawer-no = shifts little, no familiar pain

msg-item-foot_mtp_first_extension_active-short = Great toe extension, active, foot hanging
msg-item-foot_mtp_first_extension_active-how = Seated, foot hanging, ankle at a right angle. The person lifts the great toe. Goniometer on the inner side: centre on the joint, one arm along the first metatarsal, the other along the first bone of the toe. 0 is in line with the metatarsal.
msg-item-foot_mtp_first_extension_active-purpose = Push-off: the base joint of the great toe.
msg-item-foot_mtp_first_extension_active-errors = Sole taken as zero: the metatarsal slopes, the reading differs. The end joint bends up.
msg-item-foot_mtp_first_extension_active-otherwise = Seated, lying or half sitting the same. Foot loaded or hanging, and the ankle's bend, give other numbers.

msg-item-foot_mtp_first_extension_passive-short = Great toe extension, passive, foot hanging
msg-item-foot_mtp_first_extension_passive-how = Seated, foot hanging, ankle at a right angle, first metatarsal held. Bend the great toe up until it stops. Goniometer on the inner side: centre on the joint, one arm along the first metatarsal, the other along the first bone of the toe. 0 is in line with the metatarsal.
msg-item-foot_mtp_first_extension_passive-purpose = Stiff great toe, and whether the windlass test can tighten the band.
msg-item-foot_mtp_first_extension_passive-care = Not forced; not where a bone may be broken, nor in a hot joint.
msg-item-foot_mtp_first_extension_passive-errors = Ankle bent up: the band tightens and stops it sooner. Sole taken as zero.
msg-item-foot_mtp_first_extension_passive-otherwise = Seated, lying or half sitting the same. Foot loaded or hanging, and the ankle's bend, give other numbers.

msg-item-foot_mtp_first_extension_active_standing-short = Great toe extension, active, standing
msg-item-foot_mtp_first_extension_active_standing-how = Standing, weight on both feet. The person lifts the great toe, the head stays down. Goniometer on the inner side: centre on the joint, one arm along the first metatarsal, the other along the first bone of the toe. 0 is in line with the metatarsal.
msg-item-foot_mtp_first_extension_active_standing-purpose = The loaded joint, moved by its own muscle; agrees best with what walking uses.
msg-item-foot_mtp_first_extension_active_standing-care = Not where a bone may be broken.
msg-item-foot_mtp_first_extension_active_standing-errors = Weight on the other leg; the arch is lifted.
msg-item-foot_mtp_first_extension_active_standing-otherwise = Cannot stand: the hanging form, which is another quantity.

msg-item-foot_mtp_first_extension_passive_standing-short = Great toe extension, passive, standing
msg-item-foot_mtp_first_extension_passive_standing-how = Standing, weight on both feet, the head of the first metatarsal on the floor. Bend the great toe up until it stops. Goniometer on the inner side: centre on the joint, one arm along the first metatarsal, the other along the first bone of the toe. 0 is in line with the metatarsal.
msg-item-foot_mtp_first_extension_passive_standing-purpose = Free when hanging and stiff when loaded: a joint limited by load.
msg-item-foot_mtp_first_extension_passive_standing-care = Not forced; not where a bone may be broken, nor in a hot joint.
msg-item-foot_mtp_first_extension_passive_standing-errors = Weight on the other leg; the head lifts.
msg-item-foot_mtp_first_extension_passive_standing-otherwise = Cannot stand: the hanging form, which is another quantity.

msg-item-foot_mtp_first_resting_angle-short = Great toe at rest
msg-item-foot_mtp_first_resting_angle-how = Seated or lying, foot relaxed, nothing pushed. Goniometer on the inner side: centre on the joint, one arm along the first metatarsal, the other along the first bone of the toe. 0 is in line with the metatarsal.
msg-item-foot_mtp_first_resting_angle-purpose = Where the base joint lies without being moved.
msg-item-foot_mtp_first_resting_angle-errors = The foot pointed down or up changes it.
msg-item-foot_mtp_first_resting_angle-otherwise = Seated or lying; write which in the remark.

msg-item-foot_mtp_first_flexion_active-short = Great toe flexion, active
msg-item-foot_mtp_first_flexion_active-how = The person bends the great toe down at its base joint, as far as it goes; foot hanging, ankle at a right angle. Goniometer on the inner side: centre on the joint, one arm along the first metatarsal, the other along the first bone of the toe. 0 is in line with the metatarsal.
msg-item-foot_mtp_first_flexion_active-purpose = The base joint of the great toe; stiff after gout, injury, operation.
msg-item-foot_mtp_first_flexion_active-errors = The end joint bends instead.
msg-item-foot_mtp_first_flexion_active-otherwise = Seated, lying or half sitting the same. Foot loaded or hanging, and the ankle's bend, give other numbers.

msg-item-foot_mtp_first_flexion_passive-short = Great toe flexion, passive
msg-item-foot_mtp_first_flexion_passive-how = First metatarsal held, bend the great toe down at its base joint, as far as it goes; foot hanging, ankle at a right angle. Goniometer on the inner side: centre on the joint, one arm along the first metatarsal, the other along the first bone of the toe. 0 is in line with the metatarsal.
msg-item-foot_mtp_first_flexion_passive-purpose = The base joint of the great toe; stiff after gout, injury, operation.
msg-item-foot_mtp_first_flexion_passive-care = Not forced; not where a bone may be broken, nor in a hot joint.
msg-item-foot_mtp_first_flexion_passive-errors = The end joint bends instead.
msg-item-foot_mtp_first_flexion_passive-otherwise = Seated, lying or half sitting the same. Foot loaded or hanging, and the ankle's bend, give other numbers.

msg-item-foot_arc_mtp_first_active-short = Great toe flexion - 0 - extension, active
msg-item-foot_arc_mtp_first_active-how = Both ends as described for the great toe up and down, foot hanging, active. Three numbers with a zero; say which direction stands first.
msg-item-foot_arc_mtp_first_active-purpose = Both ends of the base joint in one neutral-zero entry.
msg-item-foot_arc_mtp_first_active-otherwise = Seated or lying, the foot hanging or unloaded.

msg-item-foot_arc_mtp_first_passive-short = Great toe flexion - 0 - extension, passive
msg-item-foot_arc_mtp_first_passive-how = Both ends as described for the great toe up and down, foot hanging, passive. Three numbers with a zero; say which direction stands first.
msg-item-foot_arc_mtp_first_passive-purpose = Both ends of the base joint in one neutral-zero entry.
msg-item-foot_arc_mtp_first_passive-care = Not forced; not where a bone may be broken, nor in a hot joint.
msg-item-foot_arc_mtp_first_passive-otherwise = Seated or lying, the foot hanging or unloaded.

msg-item-foot_ip_first_extension_passive-short = Great toe, end joint: extension, passive
msg-item-foot_ip_first_extension_passive-how = Base joint held straight; bend the end joint up until it stops. Goniometer from above or the inner side: centre on the joint, the arms along the two bones beside it. 0 is straight.
msg-item-foot_ip_first_extension_passive-purpose = Stiff or over-bent end joint: beside a stiff base joint it gives way.
msg-item-foot_ip_first_extension_passive-care = Not forced; not where a bone may be broken, nor in a hot joint.
msg-item-foot_ip_first_extension_passive-errors = The base joint moves.
msg-item-foot_ip_first_extension_passive-otherwise = Seated, lying or half sitting the same. Foot loaded or hanging, and the ankle's bend, give other numbers.

msg-item-foot_ip_first_flexion_passive-short = Great toe, end joint: flexion, passive
msg-item-foot_ip_first_flexion_passive-how = Base joint held straight; bend the end joint down until it stops. Goniometer from above or the inner side: centre on the joint, the arms along the two bones beside it. 0 is straight.
msg-item-foot_ip_first_flexion_passive-purpose = Stiff end joint; a joint fixed in the bend rubs.
msg-item-foot_ip_first_flexion_passive-care = Not forced; not where a bone may be broken, nor in a hot joint.
msg-item-foot_ip_first_flexion_passive-errors = The base joint moves.
msg-item-foot_ip_first_flexion_passive-otherwise = Seated, lying or half sitting the same. Foot loaded or hanging, and the ankle's bend, give other numbers.

msg-item-foot_mtp_second_extension_passive-short = Second toe extension at its base, passive
msg-item-foot_mtp_second_extension_passive-how = Metatarsal held, ankle at a right angle; bend the second toe up at its base joint until it stops. Goniometer on the back of the toe: centre on the joint. 0 is in line with the metatarsal.
msg-item-foot_mtp_second_extension_passive-purpose = Claw and hammer toes: whether the base joint still gives.
msg-item-foot_mtp_second_extension_passive-care = Not forced; not where a bone may be broken, nor in a hot joint.
msg-item-foot_mtp_second_extension_passive-errors = The middle joint moves; the ankle up or down changes it.
msg-item-foot_mtp_second_extension_passive-otherwise = Seated, lying or half sitting the same. Foot loaded or hanging, and the ankle's bend, give other numbers.

msg-item-foot_mtp_second_flexion_passive-short = Second toe flexion at its base, passive
msg-item-foot_mtp_second_flexion_passive-how = Metatarsal held, ankle at a right angle; bend the second toe down at its base joint until it stops. Goniometer on the back of the toe: centre on the joint. 0 is in line with the metatarsal.
msg-item-foot_mtp_second_flexion_passive-purpose = Claw and hammer toes: whether the base joint still gives.
msg-item-foot_mtp_second_flexion_passive-care = Not forced; not where a bone may be broken, nor in a hot joint.
msg-item-foot_mtp_second_flexion_passive-errors = The middle joint moves; the ankle up or down changes it.
msg-item-foot_mtp_second_flexion_passive-otherwise = Seated, lying or half sitting the same. Foot loaded or hanging, and the ankle's bend, give other numbers.

msg-item-foot_mtp_third_extension_passive-short = Third toe extension at its base, passive
msg-item-foot_mtp_third_extension_passive-how = Metatarsal held, ankle at a right angle; bend the third toe up at its base joint until it stops. Goniometer on the back of the toe: centre on the joint. 0 is in line with the metatarsal.
msg-item-foot_mtp_third_extension_passive-purpose = Claw and hammer toes: whether the base joint still gives.
msg-item-foot_mtp_third_extension_passive-care = Not forced; not where a bone may be broken, nor in a hot joint.
msg-item-foot_mtp_third_extension_passive-errors = The middle joint moves; the ankle up or down changes it.
msg-item-foot_mtp_third_extension_passive-otherwise = Seated, lying or half sitting the same. Foot loaded or hanging, and the ankle's bend, give other numbers.

msg-item-foot_mtp_third_flexion_passive-short = Third toe flexion at its base, passive
msg-item-foot_mtp_third_flexion_passive-how = Metatarsal held, ankle at a right angle; bend the third toe down at its base joint until it stops. Goniometer on the back of the toe: centre on the joint. 0 is in line with the metatarsal.
msg-item-foot_mtp_third_flexion_passive-purpose = Claw and hammer toes: whether the base joint still gives.
msg-item-foot_mtp_third_flexion_passive-care = Not forced; not where a bone may be broken, nor in a hot joint.
msg-item-foot_mtp_third_flexion_passive-errors = The middle joint moves; the ankle up or down changes it.
msg-item-foot_mtp_third_flexion_passive-otherwise = Seated, lying or half sitting the same. Foot loaded or hanging, and the ankle's bend, give other numbers.

msg-item-foot_mtp_fourth_extension_passive-short = Fourth toe extension at its base, passive
msg-item-foot_mtp_fourth_extension_passive-how = Metatarsal held, ankle at a right angle; bend the fourth toe up at its base joint until it stops. Goniometer on the back of the toe: centre on the joint. 0 is in line with the metatarsal.
msg-item-foot_mtp_fourth_extension_passive-purpose = Claw and hammer toes: whether the base joint still gives.
msg-item-foot_mtp_fourth_extension_passive-care = Not forced; not where a bone may be broken, nor in a hot joint.
msg-item-foot_mtp_fourth_extension_passive-errors = The middle joint moves; the ankle up or down changes it.
msg-item-foot_mtp_fourth_extension_passive-otherwise = Seated, lying or half sitting the same. Foot loaded or hanging, and the ankle's bend, give other numbers.

msg-item-foot_mtp_fourth_flexion_passive-short = Fourth toe flexion at its base, passive
msg-item-foot_mtp_fourth_flexion_passive-how = Metatarsal held, ankle at a right angle; bend the fourth toe down at its base joint until it stops. Goniometer on the back of the toe: centre on the joint. 0 is in line with the metatarsal.
msg-item-foot_mtp_fourth_flexion_passive-purpose = Claw and hammer toes: whether the base joint still gives.
msg-item-foot_mtp_fourth_flexion_passive-care = Not forced; not where a bone may be broken, nor in a hot joint.
msg-item-foot_mtp_fourth_flexion_passive-errors = The middle joint moves; the ankle up or down changes it.
msg-item-foot_mtp_fourth_flexion_passive-otherwise = Seated, lying or half sitting the same. Foot loaded or hanging, and the ankle's bend, give other numbers.

msg-item-foot_mtp_fifth_extension_passive-short = Fifth toe extension at its base, passive
msg-item-foot_mtp_fifth_extension_passive-how = Metatarsal held, ankle at a right angle; bend the fifth toe up at its base joint until it stops. Goniometer on the back of the toe: centre on the joint. 0 is in line with the metatarsal.
msg-item-foot_mtp_fifth_extension_passive-purpose = Claw and hammer toes: whether the base joint still gives.
msg-item-foot_mtp_fifth_extension_passive-care = Not forced; not where a bone may be broken, nor in a hot joint.
msg-item-foot_mtp_fifth_extension_passive-errors = The middle joint moves; the ankle up or down changes it.
msg-item-foot_mtp_fifth_extension_passive-otherwise = Seated, lying or half sitting the same. Foot loaded or hanging, and the ankle's bend, give other numbers.

msg-item-foot_mtp_fifth_flexion_passive-short = Fifth toe flexion at its base, passive
msg-item-foot_mtp_fifth_flexion_passive-how = Metatarsal held, ankle at a right angle; bend the fifth toe down at its base joint until it stops. Goniometer on the back of the toe: centre on the joint. 0 is in line with the metatarsal.
msg-item-foot_mtp_fifth_flexion_passive-purpose = Claw and hammer toes: whether the base joint still gives.
msg-item-foot_mtp_fifth_flexion_passive-care = Not forced; not where a bone may be broken, nor in a hot joint.
msg-item-foot_mtp_fifth_flexion_passive-errors = The middle joint moves; the ankle up or down changes it.
msg-item-foot_mtp_fifth_flexion_passive-otherwise = Seated, lying or half sitting the same. Foot loaded or hanging, and the ankle's bend, give other numbers.

msg-item-foot_toes_extension_active-short = Lifts the small toes
msg-item-foot_toes_extension_active-how = Seated or lying, ankle supported, near a right angle if that gives no pain. The person lifts the small toes; each toe is looked at. Yes when all of them move up as on the other side; which do not in the remark.
msg-item-foot_toes_extension_active-purpose = Muscle, nerve, tendon or stiff joints of the small toes.
msg-item-foot_toes_extension_active-care = Answered no after an injury: tendon, nerve and compartment at once.
msg-item-foot_toes_extension_active-errors = The great toe drags the others along.
msg-item-foot_toes_extension_active-otherwise = Seated or lying. One limb: ask how it was before.
msg-item-foot_toes_extension_active-yes = all of them move
msg-item-foot_toes_extension_active-no = not all of them move

msg-item-foot_toes_flexion_active-short = Curls the small toes
msg-item-foot_toes_flexion_active-how = Seated or lying, ankle supported, near a right angle if that gives no pain. The person curls the small toes; each toe is looked at. Yes when all of them move down as on the other side; which do not in the remark.
msg-item-foot_toes_flexion_active-purpose = Muscle, nerve, tendon or stiff joints of the small toes.
msg-item-foot_toes_flexion_active-care = Answered no after an injury: tendon, nerve and compartment at once. Toes that curl leave a torn heel cord not excluded.
msg-item-foot_toes_flexion_active-errors = The great toe drags the others along.
msg-item-foot_toes_flexion_active-otherwise = Seated or lying. One limb: ask how it was before.
msg-item-foot_toes_flexion_active-yes = all of them move
msg-item-foot_toes_flexion_active-no = not all of them move

msg-item-foot_arch_standing-short = Arch of the foot, standing
msg-item-foot_arch_standing-how = Standing, weight even on both feet, seen from the inner side and from in front. Low: the arch is close to the floor. Gone: the inner edge lies on it. High: it stands up and the toes claw or the heel turns in.
msg-item-foot_arch_standing-purpose = Flat or high arch; against the other side.
msg-item-foot_arch_standing-care = Not where standing is withheld. A foot that feels little, warm, with a newly fallen arch: no more walking on it until it is looked into. A high arch newly on one side: look for a disease of nerve or cord.
msg-item-foot_arch_standing-errors = The person holds the arch up; a fat pad fills it in a small child.
msg-item-foot_arch_standing-otherwise = Cannot stand: not done; the shape of the hanging foot goes in another remark.

msg-item-foot_arch_on_tiptoe-short = Does the arch come up on tiptoe
msg-item-foot_arch_on_tiptoe-how = Standing, rise on both feet, fingertips on the wall; or bend the great toe up with the foot on the floor. From the inner side: the arch comes up, or not.
msg-item-foot_arch_on_tiptoe-purpose = A flat foot that gives from one that is stiff.
msg-item-foot_arch_on_tiptoe-care = Not where a bone may be broken, the heel cord torn, or a clot not settled; not with a stress fracture or a hot numb foot.
msg-item-foot_arch_on_tiptoe-errors = Cannot rise: that is the tendon or the calf, not a stiff arch.
msg-item-foot_arch_on_tiptoe-otherwise = Cannot rise: standing, bend the great toe up and watch the arch. Cannot stand: not done.

msg-item-foot_heel_angle_standing-short = Heel against the shin, standing
msg-item-foot_heel_angle_standing-how = Standing, weight even, feet as they fall. From behind: line in the middle of the lower shin, line in the middle of the heel. The angle between them; a heel that leans outward below (valgus) is positive, inward (varus) negative.
msg-item-foot_heel_angle_standing-purpose = Heel leaning out (flat foot, tendon) or in (high arch, nerve).
msg-item-foot_heel_angle_standing-care = Not where standing is withheld.
msg-item-foot_heel_angle_standing-errors = The heel pad bulges; feet placed by the examiner; left and right exchanged when seen from behind.
msg-item-foot_heel_angle_standing-otherwise = Cannot stand: the heel's motion on the shin, which is another quantity; the load is lost.

msg-item-foot_heel_seen_from_front-short = Heel pad seen from the front (peek-a-boo heel)
msg-item-foot_heel_seen_from_front-how = Standing, feet straight ahead, looked at from in front. Yes where the inner edge of the heel pad shows beside the ankle.
msg-item-foot_heel_seen_from_front-purpose = A heel turned in (high-arched foot): look for a disease of nerves.
msg-item-foot_heel_seen_from_front-care = Not where standing is withheld. Yes: power, reflexes and feeling of both legs.
msg-item-foot_heel_seen_from_front-errors = A thick heel pad; feet turned in.
msg-item-foot_heel_seen_from_front-otherwise = Cannot stand: not done; a heel that leans in when seen from behind, lying, goes in a remark.
msg-item-foot_heel_seen_from_front-yes = heel pad seen from the front
msg-item-foot_heel_seen_from_front-no = heel pad not seen from the front

msg-item-foot_too_many_toes-short = Toes seen beside the heel, from behind
msg-item-foot_too_many_toes-how = Standing, feet as they fall, examiner behind at the level of the heel and in line with it. Count the toes that show on the outer side of the leg.
msg-item-foot_too_many_toes-purpose = Forefoot turned out: flat foot, weak inner tendon. One side more than the other counts.
msg-item-foot_too_many_toes-care = Not where standing is withheld.
msg-item-foot_too_many_toes-errors = The whole leg turned out from hip or shin; looked at from the side; sides exchanged.
msg-item-foot_too_many_toes-otherwise = Cannot stand: no other way; pitting along the tendon and turning in against the hand stand for it.

msg-item-foot_forefoot_angle-short = Forefoot against the heel, unloaded (varus, valgus)
msg-item-foot_forefoot_angle-how = Lying on the front, foot over the edge, the joint beneath the ankle held in its middle place. The line under the five heads against the line square to the heel. Inner edge of the forefoot toward the SOLE is positive (valgus), toward the back (upper side) of the foot negative (varus).
msg-item-foot_forefoot_angle-purpose = A forefoot turned up or down on the heel, which the heel makes up for in standing.
msg-item-foot_forefoot_angle-care = Not where a bone may be broken, nor in a hot joint. Not face down late in pregnancy.
msg-item-foot_forefoot_angle-errors = The middle place is found differently by each examiner: shown, seldom enough to decide.
msg-item-foot_forefoot_angle-otherwise = Cannot lie on the front: seated, leg on a stool, seen from the end of the foot; say so in the remark.

msg-item-foot_forefoot_turned_in-short = Forefoot turned in (metatarsus adductus)
msg-item-foot_forefoot_turned_in-how = Infant on the lap or lying on the front, sole in view; outer edge straight or curved. Then hold the heel and press the inner edge of the forefoot outward, lightly: to beyond the middle, only to the middle, or not.
msg-item-foot_forefoot_turned_in-purpose = A curved foot (metatarsus adductus) as a reason for toes turning in.
msg-item-foot_forefoot_turned_in-care = Lightly, the heel held; not where a bone may be broken. A heel that is drawn up with the foot turned in (club foot) is another matter: refer.
msg-item-foot_forefoot_turned_in-errors = The whole leg turned in; heel not held.
msg-item-foot_forefoot_turned_in-otherwise = Held up on the lap; an older child seated or on the front.

msg-item-foot_hallux_angle-short = Hallux valgus angle, from above
msg-item-foot_hallux_angle-how = Standing, weight even, seen from above. Goniometer: centre on the base joint, one arm along the first metatarsal, the other along the first bone of the toe. Turned toward the second toe is positive.
msg-item-foot_hallux_angle-purpose = A great toe turned toward the others (bunion); the course from year to year.
msg-item-foot_hallux_angle-care = Where standing is withheld: seated or lying.
msg-item-foot_hallux_angle-errors = Read along the skin of the bunion; loaded one time and hanging the next. A film gives another number.
msg-item-foot_hallux_angle-otherwise = Cannot stand: seated, sole flat on the floor, or lying; say so in the remark.

msg-item-foot_toe_deformities-short = Shapes of the toes
msg-item-foot_toe_deformities-how = Standing, then hanging. Claw: base joint up, both others down. Hammer: middle joint down. Mallet: end joint down. Which toe, and whether it can be straightened by hand, in the remark.
msg-item-foot_toe_deformities-purpose = Rubbing, wounds in numb feet; claw toes go with a disease of nerves.
msg-item-foot_toe_deformities-care = Where standing is withheld: seated or lying. Look on top, at the tips and between the toes for wounds.
msg-item-foot_toe_deformities-errors = Looked at hanging only: many show standing.
msg-item-foot_toe_deformities-otherwise = Cannot stand: press the sole up at the heads. One limb: only the other foot is lost to compare.

msg-item-foot_posture_talar_head-short = Foot posture: head of the talus
msg-item-foot_posture_talar_head-how = Standing at ease on both feet after some steps on the spot, arms hanging, looking ahead, for as long as all six are looked at. Here: felt at the front of the ankle on both sides with thumb and finger: from felt on the outer side alone (-2), through even on both sides (0), to felt on the inner side alone (+2). -1 and +1 lie between.
msg-item-foot_posture_talar_head-purpose = One of six signs of a standing foot, each from -2 (turned in, supinated) over 0 to +2 (turned out, pronated); all six together describe it.
msg-item-foot_posture_talar_head-care = Not where standing is withheld.
msg-item-foot_posture_talar_head-errors = The thumb slides on to the navicular; the foot is moved while felt.
msg-item-foot_posture_talar_head-otherwise = Cannot stand or cannot load the foot: not done; seated it means nothing.

msg-item-foot_posture_malleolar_curves-short = Foot posture: curves at the outer ankle bone
msg-item-foot_posture_malleolar_curves-how = Standing at ease on both feet after some steps on the spot, arms hanging, looking ahead, for as long as all six are looked at. Here: the curve above the outer ankle bone against the curve below it, from behind: from below straight or bulging (-2), through both alike (0), to below much deeper (+2). -1 and +1 lie between.
msg-item-foot_posture_malleolar_curves-purpose = One of six signs of a standing foot, each from -2 (turned in, supinated) over 0 to +2 (turned out, pronated); all six together describe it.
msg-item-foot_posture_malleolar_curves-care = Not where standing is withheld.
msg-item-foot_posture_malleolar_curves-errors = A swollen ankle: cannot be judged, record not done.
msg-item-foot_posture_malleolar_curves-otherwise = Cannot stand or cannot load the foot: not done; seated it means nothing.

msg-item-foot_posture_heel-short = Foot posture: heel from behind
msg-item-foot_posture_heel-how = Standing at ease on both feet after some steps on the spot, arms hanging, looking ahead, for as long as all six are looked at. Here: the heel seen from behind: from plainly turned in (-2), through upright (0), to plainly turned out (+2). -1 and +1 lie between.
msg-item-foot_posture_heel-purpose = One of six signs of a standing foot, each from -2 (turned in, supinated) over 0 to +2 (turned out, pronated); all six together describe it.
msg-item-foot_posture_heel-care = Not where standing is withheld.
msg-item-foot_posture_heel-errors = Heel pad taken for the bone.
msg-item-foot_posture_heel-otherwise = Cannot stand or cannot load the foot: not done; seated it means nothing.

msg-item-foot_posture_talonavicular-short = Foot posture: bulge at the inner midfoot
msg-item-foot_posture_talonavicular-how = Standing at ease on both feet after some steps on the spot, arms hanging, looking ahead, for as long as all six are looked at. Here: the skin over the joint in front of and below the inner ankle bone: from plainly hollow (-2), through flat (0), to plainly bulging (+2). -1 and +1 lie between.
msg-item-foot_posture_talonavicular-purpose = One of six signs of a standing foot, each from -2 (turned in, supinated) over 0 to +2 (turned out, pronated); all six together describe it.
msg-item-foot_posture_talonavicular-care = Not where standing is withheld.
msg-item-foot_posture_talonavicular-errors = Fat or swelling fills it.
msg-item-foot_posture_talonavicular-otherwise = Cannot stand or cannot load the foot: not done; seated it means nothing.

msg-item-foot_posture_arch-short = Foot posture: inner arch
msg-item-foot_posture_arch-how = Standing at ease on both feet after some steps on the spot, arms hanging, looking ahead, for as long as all six are looked at. Here: the height and the shape of the inner arch: from high and sharply bent toward the heel (-2), through an even curve (0), to low and flat in its middle (+2). -1 and +1 lie between.
msg-item-foot_posture_arch-purpose = One of six signs of a standing foot, each from -2 (turned in, supinated) over 0 to +2 (turned out, pronated); all six together describe it.
msg-item-foot_posture_arch-care = Not where standing is withheld.
msg-item-foot_posture_arch-errors = Height alone is read: the shape counts as well.
msg-item-foot_posture_arch-otherwise = Cannot stand or cannot load the foot: not done; seated it means nothing.

msg-item-foot_posture_forefoot-short = Foot posture: toes seen from behind
msg-item-foot_posture_forefoot-how = Standing at ease on both feet after some steps on the spot, arms hanging, looking ahead, for as long as all six are looked at. Here: the forefoot against the heel, from straight behind: from toes seen on the inner side alone (-2), through as many on both sides (0), to toes seen on the outer side alone (+2). -1 and +1 lie between.
msg-item-foot_posture_forefoot-purpose = One of six signs of a standing foot, each from -2 (turned in, supinated) over 0 to +2 (turned out, pronated); all six together describe it.
msg-item-foot_posture_forefoot-care = Not where standing is withheld.
msg-item-foot_posture_forefoot-errors = The whole leg turned; looked at from the side.
msg-item-foot_posture_forefoot-otherwise = Cannot stand or cannot load the foot: not done; seated it means nothing.
