# What the catalogue says of the tests of the hip: label, purpose, technique, what counts, when not, what goes wrong often, how else.
# A dot in a message name is a dash here. Language: English. Reviewed by: nobody yet.

msg-item-hip_squat-short = Squat, pain behind the hip
msg-item-hip_squat-purpose = A look at the whole leg; pain behind points to a worn hip, deep groin pain to the joint.
msg-item-hip_squat-how = Standing, feet under the shoulders, a hand on a rail, down as far as comfort goes and up. Depth by the thigh (full, level, a quarter, not at all), where it hurts, and whether the heels lift go into the remark.
msg-item-hip_squat-positive = Pain behind the hip or in the buttock of this side.
msg-item-hip_squat-care = Not with a fracture, a stress fracture, a slip or an infection open, a locked or loose knee, or who is unsteady.
msg-item-hip_squat-errors = A stiff ankle or a sore knee stops it first; pain in groin or knee is not this answer.
msg-item-hip_squat-otherwise = Who cannot squat or stand: rising from a chair five times; in a wheelchair it is lost.
msg-item-hip_squat-yes = pain behind the hip or in the buttock
msg-item-hip_squat-no = no pain behind the hip or in the buttock

msg-item-hip_hop-short = One hop
msg-item-hip_hop-purpose = To load a thigh bone that may have a stress injury, late and only where the neck is thought sound.
msg-item-hip_hop-how = Standing on the leg, one small hop, stop at pain. Once. The side is the hopping leg.
msg-item-hip_hop-positive = Pain in groin, thigh or hip on landing.
msg-item-hip_hop-care = Never while a stress fracture of the neck is open: groin pain with load in a runner, a recruit, or one with weak bone is imaged or rested instead. Not with any fracture, a slip or an infection open. Not in a child who limps.
msg-item-hip_hop-errors = A sore ankle or knee; a hop that did not hurt leaves a stress fracture not excluded.
msg-item-hip_hop-otherwise = Who cannot hop: do not look for another load; image where it matters.
msg-item-hip_hop-yes = pain in groin, thigh or hip on the hop
msg-item-hip_hop-no = no pain in groin, thigh or hip on the hop

msg-item-hip_puranen_orava-short = Heel on a support, reach (Puranen-Orava)
msg-item-hip_puranen_orava-purpose = To stretch a sore hamstring origin.
msg-item-hip_puranen_orava-how = Standing, heel on a support so that the hip is bent about 90, knee straight; the person reaches for the toes.
msg-item-hip_puranen_orava-positive = The familiar pain at the sitting bone.
msg-item-hip_puranen_orava-care = Hold on. Not after a sudden pop, with a bruise, or in the young with acute pain: the origin may be torn off.
msg-item-hip_puranen_orava-errors = Pain behind the knee or down the leg is hamstring length or nerve; the knee bends.
msg-item-hip_puranen_orava-otherwise = Who cannot stand: the slow stretch on the back.
msg-item-hip_puranen_orava-yes = familiar pain at the sitting bone
msg-item-hip_puranen_orava-no = no familiar pain at the sitting bone

msg-item-hip_fulcrum-short = Thigh bent over the arm (fulcrum test)
msg-item-hip_fulcrum-purpose = To find a stress fracture of the shaft of the thigh bone.
msg-item-hip_fulcrum-how = Seated, legs hanging. Your forearm under the thigh is the pivot; the other hand presses gently down on the knee. Move the pivot from mid-thigh upward. The sound side first.
msg-item-hip_fulcrum-positive = Sharp pain or apprehension in the thigh over the pivot.
msg-item-hip_fulcrum-care = Not where a complete fracture, a stress fracture of the neck or a bone lesion is open, nor with very weak bone.
msg-item-hip_fulcrum-errors = Pressure pain of the muscle on the arm; pressed too hard.
msg-item-hip_fulcrum-otherwise = Heavy thigh or small hands: a rolled towel or the edge of the couch is the pivot. Who cannot sit: lost; image instead.
msg-item-hip_fulcrum-yes = sharp thigh pain or apprehension over the pivot
msg-item-hip_fulcrum-no = no sharp thigh pain over the pivot

msg-item-hip_resisted_flexion_seated-short = Resisted hip flexion, seated
msg-item-hip_resisted_flexion_seated-purpose = To load the hip bender and the front of the joint.
msg-item-hip_resisted_flexion_seated-how = Seated, hip and knee 90, the person lifts the thigh against your hand above the knee, straight up.
msg-item-hip_resisted_flexion_seated-positive = The familiar pain in the groin.
msg-item-hip_resisted_flexion_seated-care = Not after a fall or injury until imaged, not with a slip or an infection of the hip open. Not with a stress fracture open.
msg-item-hip_resisted_flexion_seated-errors = Thigh turned out brings in another muscle; weakness without pain is another finding.
msg-item-hip_resisted_flexion_seated-otherwise = Who cannot sit: the resisted straight leg on the back. Small hands: both hands, straight arms.
msg-item-hip_resisted_flexion_seated-yes = familiar groin pain
msg-item-hip_resisted_flexion_seated-no = no familiar groin pain

msg-item-hip_seated_piriformis_stretch-short = Seated stretch of the deep buttock
msg-item-hip_seated_piriformis_stretch-purpose = To ask whether the nerve is caught deep in the buttock.
msg-item-hip_seated_piriformis_stretch-how = Seated, hip 90; you straighten the knee, then lead the bent hip inward and turn it inward, a finger of the other hand 1 cm outward of the sitting bone.
msg-item-hip_seated_piriformis_stretch-positive = The familiar pain in the buttock, with or without tingling down the leg.
msg-item-hip_seated_piriformis_stretch-care = Not after a fall or injury until imaged, not with a slip or an infection of the hip open. Not with a replaced hip.
msg-item-hip_seated_piriformis_stretch-errors = A back with a trapped nerve answers as well: lift the straight leg and do the slump first. Tight hamstrings hurt behind the knee.
msg-item-hip_seated_piriformis_stretch-otherwise = Who cannot sit: on the sound side, the same bend and turn; the published form is then lost.
msg-item-hip_seated_piriformis_stretch-yes = familiar buttock pain
msg-item-hip_seated_piriformis_stretch-no = no familiar buttock pain

msg-item-hip_log_roll_free-short = Log roll, turns out further
msg-item-hip_log_roll_free-purpose = To see a slack capsule.
msg-item-hip_log_roll_free-how = Lying, legs straight and relaxed. Roll the leg out to its end and let go: compare how far the foot falls outward and whether there is an end.
msg-item-hip_log_roll_free-positive = Turns clearly further out than the other side, without a firm end.
msg-item-hip_log_roll_free-care = Not after an injury, a slip or with a fracture open.
msg-item-hip_log_roll_free-errors = A thigh bone turned from birth; a shin bone turned out.
msg-item-hip_log_roll_free-otherwise = Half sitting where flat lying is not possible; the turn is then less on both sides.
msg-item-hip_log_roll_free-yes = turns out further than the other side
msg-item-hip_log_roll_free-no = turns out as the other side

msg-item-hip_turns_out_in_flexion-short = Hip rolls outward as it bends (Drehmann sign)
msg-item-hip_turns_out_in_flexion-purpose = The sign of a slipped hip of the growing age. Every child with pain of hip, thigh or knee has it looked for.
msg-item-hip_turns_out_in_flexion-how = Lying on the back, knee bent. Bend the hip slowly, once, without steering it: the knee should go to the shoulder of its side.
msg-item-hip_turns_out_in_flexion-positive = The thigh rolls outward and away as it bends, and cannot be turned inward at 90.
msg-item-hip_turns_out_in_flexion-care = Gently and once; no forced turning. Positive at 8 to 16 years, and for caution from 6 to 18: stop, no weight on the leg, carried, same day; at once when it cannot walk even with crutches. A hip that rolls straight leaves an early slip not excluded.
msg-item-hip_turns_out_in_flexion-errors = A stiff or overweight child: the belly pushes the thigh outward; look at both sides. A worn hip in an adult does the same.
msg-item-hip_turns_out_in_flexion-otherwise = Who cannot lie flat: half sitting, from the bend that is there. On a lap for a small child.
msg-item-hip_turns_out_in_flexion-yes = rolls outward as it bends
msg-item-hip_turns_out_in_flexion-no = bends straight, without rolling outward

msg-item-hip_pain_passive_severe-short = Smallest movement of the hip hurts badly
msg-item-hip_pain_passive_severe-purpose = To find an infected hip.
msg-item-hip_pain_passive_severe-how = With the leg as it lies, roll it by the smallest amount, once. Yes when even that hurts badly or is held against by spasm.
msg-item-hip_pain_passive_severe-care = Once. Yes with fever, or in one who does not walk: the same day. No leaves an infection not excluded.
msg-item-hip_pain_passive_severe-errors = A frightened child cries before the touch: let the parent move the leg.
msg-item-hip_pain_passive_severe-otherwise = On the parent's lap.
msg-item-hip_pain_passive_severe-yes = the smallest movement hurts badly or is held
msg-item-hip_pain_passive_severe-no = the smallest movement is let happen; an infection is not excluded

msg-item-hip_heel_push-short = Gentle push along the leg after a fall
msg-item-hip_heel_push-purpose = To find a broken neck that a film may miss, without moving the joint.
msg-item-hip_heel_push-how = Lying, leg as it is. One gentle push along the thigh bone through the bent knee, or through the heel with the leg straight. Once. The sound side first.
msg-item-hip_heel_push-positive = Pain in groin or hip.
msg-item-hip_heel_push-care = Once and gently. Positive: treat as a fracture until imaged. Negative leaves a fracture not excluded. Not on a broken shin, heel or knee. Not where a slip is open.
msg-item-hip_heel_push-errors = A sore knee or heel; the leg is lifted instead of pushed.
msg-item-hip_heel_push-otherwise = Half sitting as well. A below-knee stump is pushed at the bent knee.
msg-item-hip_heel_push-yes = pain in groin or hip on the push
msg-item-hip_heel_push-no = no pain in groin or hip on the push; a fracture is not excluded

msg-item-hip_percussion_patellopubic-short = Knocking on the kneecap, listening at the pubic bone
msg-item-hip_percussion_patellopubic-purpose = Bone that is whole carries sound; nothing is moved.
msg-item-hip_percussion_patellopubic-how = Quiet room. Lying, legs straight and alike. The stethoscope on the pubic joint, held by the person where wished. Knock on each kneecap with a finger in the same way, or stand a sounding fork (128 to 512 Hz) on it. Compare loudness and pitch. The side is the duller one.
msg-item-hip_percussion_patellopubic-positive = Duller or softer than the other side.
msg-item-hip_percussion_patellopubic-care = Offer a chaperone. Where a fracture of the pelvis is open the stethoscope only rests on the bone. Dull: treat as a fracture until imaged. Alike leaves a fracture not excluded while it hurts or cannot be stood on.
msg-item-hip_percussion_patellopubic-errors = Legs not alike; metal in one hip or knee; a full knee; noise; both sides broken.
msg-item-hip_percussion_patellopubic-otherwise = Tender knee: the fork instead of knocking. Poor hearing: a helper, or a microphone. Half sitting where flat is not possible, both legs alike. With one limb it is lost.
msg-item-hip_percussion_patellopubic-yes = duller than the other side
msg-item-hip_percussion_patellopubic-no = as loud as the other side; a fracture is not excluded

msg-item-hip_straight_leg_lift-short = Straight leg lift, a hand's width
msg-item-hip_straight_leg_lift-purpose = After a fall: a broken hip or pelvis mostly does not let it be lifted.
msg-item-hip_straight_leg_lift-how = Lying on the back, the person lifts the straight leg a hand's width off the couch, by the own strength, once.
msg-item-hip_straight_leg_lift-positive = Cannot lift it, or it hurts in the groin.
msg-item-hip_straight_leg_lift-care = Once; no resistance, no help. Positive, or cannot stand: treat as a fracture until imaged. Lifting it leaves a fracture not excluded. Not where a slip is open.
msg-item-hip_straight_leg_lift-errors = A torn tendon at the knee or a nerve lesion stops it as well; weakness from before: ask.
msg-item-hip_straight_leg_lift-otherwise = Half sitting as well, the couch as low as comfort lets.
msg-item-hip_straight_leg_lift-yes = cannot lift it, or groin pain
msg-item-hip_straight_leg_lift-no = lifts it without groin pain; a fracture is not excluded

msg-item-hip_pain_flexion_active-short = Outer hip pain on bending it
msg-item-hip_pain_flexion_active-purpose = One of five signs of a published rule for a worn hip.
msg-item-hip_pain_flexion_active-how = The person draws the knee to the belly alone, lying on the back.
msg-item-hip_pain_flexion_active-positive = Pain at the outer hip.
msg-item-hip_pain_flexion_active-care = Not after a fall or injury until imaged, not with a slip or an infection of the hip open.
msg-item-hip_pain_flexion_active-errors = Another place of pain is no positive: say where in the remark.
msg-item-hip_pain_flexion_active-otherwise = Half sitting or on the side, the leg on a pillow.
msg-item-hip_pain_flexion_active-yes = pain at the outer hip
msg-item-hip_pain_flexion_active-no = no pain at the outer hip

msg-item-hip_pain_extension_active-short = Hip pain on straightening it backward
msg-item-hip_pain_extension_active-purpose = One of five signs of a published rule for a worn hip.
msg-item-hip_pain_extension_active-how = The person lifts the straight thigh backward alone, face down, on the side or standing at a rail.
msg-item-hip_pain_extension_active-positive = Pain in the hip.
msg-item-hip_pain_extension_active-care = Not after a fall or injury until imaged, not with a slip or an infection of the hip open.
msg-item-hip_pain_extension_active-errors = Another place of pain is no positive: say where in the remark.
msg-item-hip_pain_extension_active-otherwise = Who cannot lie face down: on the side, or standing at a rail.
msg-item-hip_pain_extension_active-yes = pain in the hip
msg-item-hip_pain_extension_active-no = no pain in the hip

msg-item-hip_pain_abduction_passive-short = Groin pain at the end of abduction
msg-item-hip_pain_abduction_passive-purpose = To look for a worn hip.
msg-item-hip_pain_abduction_passive-how = You lead the straight leg outward to its end, pelvis held.
msg-item-hip_pain_abduction_passive-positive = Pain in the groin at the end.
msg-item-hip_pain_abduction_passive-care = Not after a fall or injury until imaged, not with a slip or an infection of the hip open.
msg-item-hip_pain_abduction_passive-errors = Another place of pain is no positive: say where in the remark.
msg-item-hip_pain_abduction_passive-otherwise = Who cannot lie on the back: on the side, the leg on your forearm.
msg-item-hip_pain_abduction_passive-yes = pain in the groin at the end
msg-item-hip_pain_abduction_passive-no = no pain in the groin at the end

msg-item-hip_pain_adduction_passive-short = Groin pain at the end of adduction
msg-item-hip_pain_adduction_passive-purpose = To look for a worn hip.
msg-item-hip_pain_adduction_passive-how = You lead the straight leg across the other, pelvis held, to its end.
msg-item-hip_pain_adduction_passive-positive = Pain in the groin at the end.
msg-item-hip_pain_adduction_passive-care = Not after a fall or injury until imaged, not with a slip or an infection of the hip open. Not across the middle with a replaced hip.
msg-item-hip_pain_adduction_passive-errors = Another place of pain is no positive: say where in the remark.
msg-item-hip_pain_adduction_passive-otherwise = Who cannot lie on the back: lost; lowered behind the body on the side it loads the outer tendons instead.
msg-item-hip_pain_adduction_passive-yes = pain in the groin at the end
msg-item-hip_pain_adduction_passive-no = no pain in the groin at the end

msg-item-hip_internal_rotation_overpressure-short = Inward turn to the end, with pressure
msg-item-hip_internal_rotation_overpressure-purpose = To bring out pain from inside the joint.
msg-item-hip_internal_rotation_overpressure-how = Lying on the back, hip and knee bent 90. Turn the thigh inward (FOOT outward) to its end, then a little further, slowly.
msg-item-hip_internal_rotation_overpressure-positive = The familiar pain in the groin.
msg-item-hip_internal_rotation_overpressure-care = Not after a fall or injury until imaged, not with a slip or an infection of the hip open. Not with a replaced hip.
msg-item-hip_internal_rotation_overpressure-errors = A knee that hurts when the shin is used as a lever: hold the thigh.
msg-item-hip_internal_rotation_overpressure-otherwise = Seated, hip and knee 90. Heavy leg: the person holds the own knee, you turn the foot.
msg-item-hip_internal_rotation_overpressure-yes = familiar groin pain
msg-item-hip_internal_rotation_overpressure-no = no familiar groin pain

msg-item-hip_flexion_internal_rotation-short = Bend to 90 and turn inward
msg-item-hip_flexion_internal_rotation-purpose = A pinch at the front of the joint, without leading the leg across.
msg-item-hip_flexion_internal_rotation-how = Lying on the back, bend the hip to 90, then turn the thigh inward (FOOT outward) to its end, slowly, without pressure beyond it.
msg-item-hip_flexion_internal_rotation-positive = The familiar pain in the groin.
msg-item-hip_flexion_internal_rotation-care = Not after a fall or injury until imaged, not with a slip or an infection of the hip open. Not with a replaced hip.
msg-item-hip_flexion_internal_rotation-errors = Positive in many hips; by itself it raises little.
msg-item-hip_flexion_internal_rotation-otherwise = Seated, hip and knee 90.
msg-item-hip_flexion_internal_rotation-yes = familiar groin pain
msg-item-hip_flexion_internal_rotation-no = no familiar groin pain

msg-item-hip_fadir-short = Bent, led across and turned inward (FADIR)
msg-item-hip_fadir-purpose = When it does not hurt, trouble at the front rim of the joint is less to be expected.
msg-item-hip_fadir-how = Lying on the back, hip bent to 90, then led across 10 to 20 and turned inward (FOOT outward) to the end, slowly. The sound side first.
msg-item-hip_fadir-positive = The familiar pain in the groin.
msg-item-hip_fadir-care = Not after a fall or injury until imaged, not with a slip or an infection of the hip open. Never with a replaced hip: this is how it goes out of joint; not with a hip that slips out backward.
msg-item-hip_fadir-errors = Nearly every sore hip says yes: a positive alone raises little. A worn hip, the hip bender or a stiff hip hurts as well. Pain at the outer side or behind is another pain.
msg-item-hip_fadir-otherwise = Seated, hip and knee 90, turned inward and slightly across. Heavy leg: the person holds the own knee with both hands, you turn the foot.
msg-item-hip_fadir-yes = familiar groin pain
msg-item-hip_fadir-no = no familiar groin pain

msg-item-hip_faber_groin-short = Figure four, groin pain (FABER)
msg-item-hip_faber_groin-purpose = Pain in the groin speaks of the hip.
msg-item-hip_faber_groin-how = Lying on the back, the ankle of the tested leg on the other leg just above the knee, your hand on the opposite front spine of the pelvis; let the knee fall outward, then gentle pressure on it. Ask where it hurts.
msg-item-hip_faber_groin-positive = The familiar pain in the groin.
msg-item-hip_faber_groin-care = Not after a fall or injury until imaged, not with a slip or an infection of the hip open. Not early after a hip replaced through the front; no frog position by force.
msg-item-hip_faber_groin-errors = A sore knee or a tight inner thigh stops it; the pelvis rolls along. One movement, three answers: where it hurts decides which.
msg-item-hip_faber_groin-otherwise = Lying on the side with the upper knee let up and back, or seated with the ankle on the other knee. With one limb the foot has nothing to rest on: hold the leg yourself.
msg-item-hip_faber_groin-yes = familiar pain in the groin
msg-item-hip_faber_groin-no = no familiar pain in the groin

msg-item-hip_faber_behind-short = Figure four, pain behind (FABER)
msg-item-hip_faber_behind-purpose = Pain behind speaks of the sacroiliac joint; it may stand in for the push on the sacrum.
msg-item-hip_faber_behind-how = Lying on the back, the ankle of the tested leg on the other leg just above the knee, your hand on the opposite front spine of the pelvis; let the knee fall outward, then gentle pressure on it. Ask where it hurts.
msg-item-hip_faber_behind-positive = The familiar pain behind, at the sacroiliac joint of this side.
msg-item-hip_faber_behind-care = Not after a fall or injury until imaged, not with a slip or an infection of the hip open. Not early after a hip replaced through the front; no frog position by force.
msg-item-hip_faber_behind-errors = A sore knee or a tight inner thigh stops it; the pelvis rolls along. One movement, three answers: where it hurts decides which.
msg-item-hip_faber_behind-otherwise = Lying on the side with the upper knee let up and back, or seated with the ankle on the other knee. With one limb the foot has nothing to rest on: hold the leg yourself.
msg-item-hip_faber_behind-yes = familiar pain behind, at the sacroiliac joint
msg-item-hip_faber_behind-no = no familiar pain behind, at the sacroiliac joint

msg-item-hip_faber_lateral-short = Figure four, outer pain (FABER)
msg-item-hip_faber_lateral-purpose = Pain at the outer side speaks of the gluteal tendons.
msg-item-hip_faber_lateral-how = Lying on the back, the ankle of the tested leg on the other leg just above the knee, your hand on the opposite front spine of the pelvis; let the knee fall outward, then gentle pressure on it. Ask where it hurts.
msg-item-hip_faber_lateral-positive = The familiar pain at the outer hip.
msg-item-hip_faber_lateral-care = Not after a fall or injury until imaged, not with a slip or an infection of the hip open. Not early after a hip replaced through the front; no frog position by force.
msg-item-hip_faber_lateral-errors = A sore knee or a tight inner thigh stops it; the pelvis rolls along. One movement, three answers: where it hurts decides which.
msg-item-hip_faber_lateral-otherwise = Lying on the side with the upper knee let up and back, or seated with the ankle on the other knee. With one limb the foot has nothing to rest on: hold the leg yourself.
msg-item-hip_faber_lateral-yes = familiar pain at the outer hip
msg-item-hip_faber_lateral-no = no familiar pain at the outer hip

msg-item-hip_faber_height-short = Figure four, height of the knee
msg-item-hip_faber_height-purpose = To see a hip that does not fall out as the other does.
msg-item-hip_faber_height-how = In the same position, without pressure: from the outer side of the knee straight down to the couch. Both sides. A difference of 4 to 5 cm or more is a working limit.
msg-item-hip_faber_height-care = Not after a fall or injury until imaged, not with a slip or an infection of the hip open. Not early after a hip replaced through the front; no frog position by force.
msg-item-hip_faber_height-errors = A soft couch, a pelvis that rolls, another place of the ankle on the other leg.
msg-item-hip_faber_height-otherwise = By hand breadths where there is no tape, and say so. Seated it is another quantity.

msg-item-hip_scour-short = Load and sweep (scour)
msg-item-hip_scour-purpose = To feel and provoke a worn or torn joint.
msg-item-hip_scour-how = Lying on the back, hip bent 90 or a little more, knee bent; clasp your hands over the knee, press along the thigh bone, and sweep slowly from across and turned inward to outward and turned outward.
msg-item-hip_scour-positive = Pain in the groin or at the outer side, a catch or grating.
msg-item-hip_scour-care = Never after an injury, in a child, with weak bone and acute pain, a replaced hip, a slip or an infection open.
msg-item-hip_scour-errors = Pain under your hands; swept too fast to say where.
msg-item-hip_scour-otherwise = Small hands or a heavy thigh: forearm under the knee, the body leans for the load; or leave it and turn inward with pressure.
msg-item-hip_scour-yes = pain in groin or outer side, catch or grating
msg-item-hip_scour-no = no pain in groin or outer side, no catch or grating

msg-item-hip_scour_adduction-short = Load with the thigh led across
msg-item-hip_scour_adduction-purpose = One of five signs of a published rule for a worn hip.
msg-item-hip_scour_adduction-how = As the sweep, only the part with the thigh led across.
msg-item-hip_scour_adduction-positive = Pain in the groin or at the outer side.
msg-item-hip_scour_adduction-care = Never after an injury, in a child, with weak bone and acute pain, a replaced hip, a slip or an infection open.
msg-item-hip_scour_adduction-errors = The load is left out.
msg-item-hip_scour_adduction-otherwise = As for the sweep.
msg-item-hip_scour_adduction-yes = pain in groin or outer side
msg-item-hip_scour_adduction-no = no pain in groin or outer side

msg-item-hip_resisted_external_derotation-short = Turning back from outward, hip at 90
msg-item-hip_resisted_external_derotation-purpose = To load the gluteal tendons without standing.
msg-item-hip_resisted_external_derotation-how = Lying on the back, hip and knee bent 90; turn the thigh outward (FOOT inward) to just short of pain. The person turns the leg back to the middle against your hand at the ankle. Negative: repeat face down, hip straight.
msg-item-hip_resisted_external_derotation-positive = The familiar pain at the outer hip.
msg-item-hip_resisted_external_derotation-care = Not after a fall or injury until imaged, not with a slip or an infection of the hip open. Not with a replaced hip.
msg-item-hip_resisted_external_derotation-errors = Groin pain is another pain; a knee that hurts when turned.
msg-item-hip_resisted_external_derotation-otherwise = Seated, hip and knee 90. Who cannot lie face down leaves the second part out: say so.
msg-item-hip_resisted_external_derotation-yes = familiar outer hip pain
msg-item-hip_resisted_external_derotation-no = no familiar outer hip pain

msg-item-hip_resisted_external_derotation_prone-short = Turning back from outward, face down
msg-item-hip_resisted_external_derotation_prone-purpose = The second part, for who said no on the back.
msg-item-hip_resisted_external_derotation_prone-how = Face down, hip straight, knee bent 90; turn the thigh outward (FOOT inward) to just short of pain. The person turns back against your hand at the ankle.
msg-item-hip_resisted_external_derotation_prone-positive = The familiar pain at the outer hip.
msg-item-hip_resisted_external_derotation_prone-care = Not after a fall or injury until imaged, not with a slip or an infection of the hip open. Not with a replaced hip. Not face down from about the 20th week of pregnancy.
msg-item-hip_resisted_external_derotation_prone-errors = The pelvis lifts.
msg-item-hip_resisted_external_derotation_prone-otherwise = Who cannot lie face down: only the part on the back or seated.
msg-item-hip_resisted_external_derotation_prone-yes = familiar outer hip pain
msg-item-hip_resisted_external_derotation_prone-no = no familiar outer hip pain

msg-item-hip_fader-short = Bent, led across and turned outward (FADER)
msg-item-hip_fader-purpose = To press the gluteal tendons on the trochanter.
msg-item-hip_fader-how = Lying on the back, hip bent to 90, led across, turned outward (FOOT inward) to the end.
msg-item-hip_fader-positive = The familiar pain at the outer hip.
msg-item-hip_fader-care = Not after a fall or injury until imaged, not with a slip or an infection of the hip open. Not with a replaced hip.
msg-item-hip_fader-errors = Groin pain is another pain; the pelvis rolls.
msg-item-hip_fader-otherwise = Half sitting. Heavy leg: the person holds the own knee.
msg-item-hip_fader-yes = familiar outer hip pain
msg-item-hip_fader-no = no familiar outer hip pain

msg-item-hip_fader_resisted-short = Bent, across, outward, then pushing inward (FADER-R)
msg-item-hip_fader_resisted-purpose = To load the pressed tendons.
msg-item-hip_fader_resisted-how = Bent to 90, led across and turned outward to the end; there the person turns the leg inward (FOOT outward) against your hand at the ankle.
msg-item-hip_fader_resisted-positive = The familiar pain at the outer hip.
msg-item-hip_fader_resisted-care = Not after a fall or injury until imaged, not with a slip or an infection of the hip open. Not with a replaced hip.
msg-item-hip_fader_resisted-errors = The push goes into bending.
msg-item-hip_fader_resisted-otherwise = Half sitting. For who cannot lie on either side this is the one that is left.
msg-item-hip_fader_resisted-yes = familiar outer hip pain
msg-item-hip_fader_resisted-no = no familiar outer hip pain

msg-item-hip_add-short = Lowered behind, on the side (ADD)
msg-item-hip_add-purpose = To press the gluteal tendons on the trochanter.
msg-item-hip_add-how = Lying on the other side, lower leg bent, pelvis held upright with your hip and hand; the upper leg, knee straight, is led slightly behind the line of the body and lowered to its end.
msg-item-hip_add-positive = The familiar pain at the outer hip.
msg-item-hip_add-care = Not after a fall or injury until imaged, not with a slip or an infection of the hip open. Not with a replaced hip. A frail person does not lie on a painful hip.
msg-item-hip_add-errors = The pelvis tips back or drops with the leg.
msg-item-hip_add-otherwise = Who cannot lie on either side: on the back, bent, led across, turned outward and resisted.
msg-item-hip_add-yes = familiar outer hip pain
msg-item-hip_add-no = no familiar outer hip pain

msg-item-hip_add_resisted-short = Lowered behind, then lifting against the hand (ADD-R)
msg-item-hip_add_resisted-purpose = To load the pressed tendons.
msg-item-hip_add_resisted-how = On the other side, the leg lowered behind the body to its end; there the person lifts the leg against your hand at the outer knee.
msg-item-hip_add_resisted-positive = The familiar pain at the outer hip.
msg-item-hip_add_resisted-care = Not after a fall or injury until imaged, not with a slip or an infection of the hip open. Not with a replaced hip.
msg-item-hip_add_resisted-errors = The body rolls back and the hip bender lifts.
msg-item-hip_add_resisted-otherwise = Who cannot lie on either side: the resisted form on the back.
msg-item-hip_add_resisted-yes = familiar outer hip pain
msg-item-hip_add_resisted-no = no familiar outer hip pain

msg-item-hip_resisted_abduction-short = Resisted abduction, outer pain
msg-item-hip_resisted_abduction-purpose = Read as a pair with the pressed trochanter.
msg-item-hip_resisted_abduction-how = Lying on the other side, upper hip straight or slightly behind, lifted 20 to 30; the person holds it up against your hand. Hand above the knee or above the ankle: say which and keep to it.
msg-item-hip_resisted_abduction-positive = The familiar pain at the outer hip.
msg-item-hip_resisted_abduction-care = Not after a fall or injury until imaged, not with a slip or an infection of the hip open. Not with a stress fracture open.
msg-item-hip_resisted_abduction-errors = Pain is not weakness: power is recorded by itself. A lower hand is a longer lever.
msg-item-hip_resisted_abduction-otherwise = On the back, pushing outward into a belt or your hand; or seated, knees pushed apart. Small hands: a belt fixed to the couch. Large limb: above the knee.
msg-item-hip_resisted_abduction-yes = familiar outer hip pain
msg-item-hip_resisted_abduction-no = no familiar outer hip pain

msg-item-hip_resisted_internal_rotation-short = Resisted inward turn, outer pain
msg-item-hip_resisted_internal_rotation-purpose = To load the gluteal tendons.
msg-item-hip_resisted_internal_rotation-how = Lying on the back or seated, hip and knee bent 90; the person turns the leg inward (FOOT outward) against your hand at the ankle.
msg-item-hip_resisted_internal_rotation-positive = The familiar pain at the outer hip.
msg-item-hip_resisted_internal_rotation-care = Not after a fall or injury until imaged, not with a slip or an infection of the hip open. Not with a stress fracture open.
msg-item-hip_resisted_internal_rotation-errors = Groin pain is another pain; the knee is strained when the hand is too hard.
msg-item-hip_resisted_internal_rotation-otherwise = Seated or half sitting.
msg-item-hip_resisted_internal_rotation-yes = familiar outer hip pain
msg-item-hip_resisted_internal_rotation-no = no familiar outer hip pain

msg-item-hip_ober-short = Band test, on the side (Ober)
msg-item-hip_ober-purpose = To describe tightness at the outer side. Several tissues answer: it describes and names no disease.
msg-item-hip_ober-how = Lying on the other side, lower leg bent, pelvis held still. The upper hip led outward and behind, knee bent or straight (say which), then lowered.
msg-item-hip_ober-positive = The thigh stays above the horizontal.
msg-item-hip_ober-care = Not after a fall or injury until imaged, not with a slip or an infection of the hip open. Not with a replaced hip. A frail person does not lie on a painful hip.
msg-item-hip_ober-errors = The pelvis drops along and hides it; the hip comes forward and lets it fall.
msg-item-hip_ober-otherwise = Who cannot lie on the side: the drift of the thigh over the edge. Heavy limb: two persons.
msg-item-hip_ober-yes = the thigh stays above the horizontal
msg-item-hip_ober-no = the thigh comes down to the horizontal

msg-item-hip_resisted_straight_leg_raise-short = Resisted straight leg (Stinchfield)
msg-item-hip_resisted_straight_leg_raise-purpose = To load the joint and the hip bender.
msg-item-hip_resisted_straight_leg_raise-how = Lying on the back, leg straight, lifted 20 to 30 by the person and held against your hand above the knee.
msg-item-hip_resisted_straight_leg_raise-positive = The familiar pain in the groin.
msg-item-hip_resisted_straight_leg_raise-care = Not after a fall or injury until imaged, not with a slip or an infection of the hip open. Not with a stress fracture open.
msg-item-hip_resisted_straight_leg_raise-errors = Back pain or leg pain is another finding; weak without pain is another finding.
msg-item-hip_resisted_straight_leg_raise-otherwise = Half sitting, or the seated form. Small hands: straight arm, lean.
msg-item-hip_resisted_straight_leg_raise-yes = familiar groin pain
msg-item-hip_resisted_straight_leg_raise-no = no familiar groin pain

msg-item-hip_snap_inner-short = Snap at the groin
msg-item-hip_snap_inner-purpose = To feel the hip bender's tendon jump. Describes, and counts only with the familiar pain.
msg-item-hip_snap_inner-how = Lying on the back, palm on the groin. The hip is led from bent, outward and turned outward to straight and turned inward.
msg-item-hip_snap_inner-positive = A thud felt in the groin, with the familiar pain.
msg-item-hip_snap_inner-care = Not after a fall or injury until imaged, not with a slip or an infection of the hip open. Not with a replaced hip.
msg-item-hip_snap_inner-errors = Many snap without pain. A catch inside the joint is sharper and cannot be felt by the palm.
msg-item-hip_snap_inner-otherwise = Half sitting; or the person shows it.
msg-item-hip_snap_inner-yes = thud in the groin with the familiar pain
msg-item-hip_snap_inner-no = no thud with the familiar pain

msg-item-hip_snap_outer-short = Snap over the trochanter
msg-item-hip_snap_outer-purpose = To feel the outer band jump. Describes, and counts only with the familiar pain.
msg-item-hip_snap_outer-how = Lying on the other side, flat hand on the trochanter; the person bends and straightens the hip, or it is turned in and out.
msg-item-hip_snap_outer-positive = A jump over the trochanter, with the familiar pain.
msg-item-hip_snap_outer-care = Not after a fall or injury until imaged, not with a slip or an infection of the hip open. Not with a replaced hip.
msg-item-hip_snap_outer-errors = Many snap without pain.
msg-item-hip_snap_outer-otherwise = Standing, the person shows it; on the back for who cannot lie on the side.
msg-item-hip_snap_outer-yes = jump over the trochanter with the familiar pain
msg-item-hip_snap_outer-no = no jump with the familiar pain

msg-item-hip_bent_knee_stretch-short = Hamstring stretch, slow
msg-item-hip_bent_knee_stretch-purpose = To stretch a sore hamstring origin.
msg-item-hip_bent_knee_stretch-how = Lying on the back, hip and knee fully bent; straighten the knee slowly, the hip kept bent.
msg-item-hip_bent_knee_stretch-positive = The familiar pain at the sitting bone.
msg-item-hip_bent_knee_stretch-care = Not after a sudden pop, with a bruise, or in the young with acute pain: the origin may be torn off. Not after a fall or injury until imaged, not with a slip or an infection of the hip open.
msg-item-hip_bent_knee_stretch-errors = Pain behind the knee or down the leg is hamstring length or nerve.
msg-item-hip_bent_knee_stretch-otherwise = Half sitting, or on the side with the leg carried. Heavy leg: the heel on your shoulder.
msg-item-hip_bent_knee_stretch-yes = familiar pain at the sitting bone
msg-item-hip_bent_knee_stretch-no = no familiar pain at the sitting bone

msg-item-hip_bent_knee_stretch_fast-short = Hamstring stretch, quick
msg-item-hip_bent_knee_stretch_fast-purpose = The stronger form.
msg-item-hip_bent_knee_stretch_fast-how = Lying on the back, hip and knee fully bent; straighten the knee quickly, the hip kept bent. After the slow form only.
msg-item-hip_bent_knee_stretch_fast-positive = The familiar pain at the sitting bone.
msg-item-hip_bent_knee_stretch_fast-care = Not after a sudden pop, with a bruise, in the young with acute pain, or where the slow form already hurt. Not after a fall or injury until imaged, not with a slip or an infection of the hip open.
msg-item-hip_bent_knee_stretch_fast-errors = A held muscle stops it.
msg-item-hip_bent_knee_stretch_fast-otherwise = As for the slow form.
msg-item-hip_bent_knee_stretch_fast-yes = familiar pain at the sitting bone
msg-item-hip_bent_knee_stretch_fast-no = no familiar pain at the sitting bone

msg-item-hip_active_piriformis-short = Heel into the couch, knee lifted, on the side
msg-item-hip_active_piriformis-purpose = To ask whether the nerve is caught deep in the buttock.
msg-item-hip_active_piriformis-how = Lying on the other side, upper hip and knee bent, its heel pressed into the couch; the person lifts and turns the knee outward against your hand, the other hand on the deep buttock.
msg-item-hip_active_piriformis-positive = The familiar pain in the buttock, with or without tingling down the leg.
msg-item-hip_active_piriformis-care = Not after a fall or injury until imaged, not with a slip or an infection of the hip open. Not with a replaced hip.
msg-item-hip_active_piriformis-errors = A back with a trapped nerve answers as well: lift the straight leg first. Outer hip pain is another pain.
msg-item-hip_active_piriformis-otherwise = Who cannot lie on the side: the seated stretch.
msg-item-hip_active_piriformis-yes = familiar buttock pain
msg-item-hip_active_piriformis-no = no familiar buttock pain

msg-item-hip_anterior_apprehension-short = Leg over the edge, turned outward
msg-item-hip_anterior_apprehension-purpose = One of three for a hip that is loose to the front.
msg-item-hip_anterior_apprehension-how = Lying on the back at the end of the couch, the other knee held to the belly; the leg hangs over the edge and is turned outward.
msg-item-hip_anterior_apprehension-positive = Apprehension, or the familiar pain at the front.
msg-item-hip_anterior_apprehension-care = Not after a fall or injury until imaged, not with a slip or an infection of the hip open. Never with a replaced hip, or soon after a hip that was out of joint: it is the position in which it goes out forward. One hand on the person: falls happen here.
msg-item-hip_anterior_apprehension-errors = A tight hip bender hurts at the front: ask what it is like. The other knee let go hollows the back.
msg-item-hip_anterior_apprehension-otherwise = Who cannot get to the edge: on the side.
msg-item-hip_anterior_apprehension-yes = apprehension or familiar pain at the front
msg-item-hip_anterior_apprehension-no = no apprehension, no familiar pain

msg-item-hip_abduction_extension_external_rotation-short = Outward, behind and turned outward, on the side
msg-item-hip_abduction_extension_external_rotation-purpose = One of three for a hip that is loose to the front.
msg-item-hip_abduction_extension_external_rotation-how = Lying on the other side, the leg carried; led outward, behind and turned outward while a hand presses forward from behind the trochanter.
msg-item-hip_abduction_extension_external_rotation-positive = Apprehension, or the familiar pain at the front.
msg-item-hip_abduction_extension_external_rotation-care = Not after a fall or injury until imaged, not with a slip or an infection of the hip open. Never with a replaced hip, or soon after a hip that was out of joint: it is the position in which it goes out forward.
msg-item-hip_abduction_extension_external_rotation-errors = Pain under the pressing hand is no positive.
msg-item-hip_abduction_extension_external_rotation-otherwise = Who cannot lie on the side: over the edge. Heavy limb: two persons.
msg-item-hip_abduction_extension_external_rotation-yes = apprehension or familiar pain at the front
msg-item-hip_abduction_extension_external_rotation-no = no apprehension, no familiar pain

msg-item-hip_prone_external_rotation_apprehension-short = Turned outward face down, pressed forward
msg-item-hip_prone_external_rotation_apprehension-purpose = One of three for a hip that is loose to the front.
msg-item-hip_prone_external_rotation_apprehension-how = Face down, knee bent 90; the thigh is turned outward (FOOT inward) while a hand presses forward from behind the trochanter.
msg-item-hip_prone_external_rotation_apprehension-positive = Apprehension, or the familiar pain at the front.
msg-item-hip_prone_external_rotation_apprehension-care = Not after a fall or injury until imaged, not with a slip or an infection of the hip open. Never with a replaced hip, or soon after a hip that was out of joint: it is the position in which it goes out forward. Not face down from about the 20th week of pregnancy.
msg-item-hip_prone_external_rotation_apprehension-errors = Pain of the front spine pressed on the couch.
msg-item-hip_prone_external_rotation_apprehension-otherwise = Who cannot lie face down: on the side.
msg-item-hip_prone_external_rotation_apprehension-yes = apprehension or familiar pain at the front
msg-item-hip_prone_external_rotation_apprehension-no = no apprehension, no familiar pain
