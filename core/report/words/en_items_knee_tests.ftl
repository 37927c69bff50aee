# What the catalogue says of ligaments, menisci and kneecap of the knee: label, technique, what counts, when not, what goes wrong often.
# A dot in a message name is a dash here. Language: English. Reviewed by: nobody yet.

msg-item-knee_lachman-short = Lachman test
msg-item-knee_lachman-how = Lying on the back, knee bent 20 to 30 degrees, heel on the couch. One hand holds the thigh just above the kneecap, the other holds the shin high, thumb by the tubercle, and draws it straight forward in small quick pulls. Judge how many millimetres further than the other side, and how it ends: firm, soft or not at all.
msg-item-knee_lachman-positive = 3 mm or more beyond the other side, or a soft end. 3 to 5 mm with a firm end counts as unsure.
msg-item-knee_lachman-care = Look for a tibia that has sagged back first. Not with a fracture open, a knee that was dislocated, or an open wound. Guarding, a tense effusion or a locked knee hide laxity: record it as guarded.
msg-item-knee_lachman-errors = Thigh not held; shin gripped low; shin turned; muscles on the back of the thigh tight; the way back from a sag taken for the way forward; both sides loose.

msg-item-knee_lachman_dropped_leg-short = Lachman test, leg over the edge
msg-item-knee_lachman_dropped_leg-how = For a heavy thigh or a small hand. Lying near the edge, thigh on the couch, lower leg hanging over the side a little outward, knee bent 25 to 30, the foot held between your knees. One hand presses the thigh on to the couch, the other draws the shin straight forward. Millimetres beyond the other side, and the end.
msg-item-knee_lachman_dropped_leg-positive = 3 mm or more beyond the other side, or a soft end. 3 to 5 mm with a firm end counts as unsure.
msg-item-knee_lachman_dropped_leg-care = As for the Lachman test: sag first; not with a fracture open or a knee that was dislocated.
msg-item-knee_lachman_dropped_leg-errors = The thigh rolls outward; the knee hangs straighter on one side; the couch edge under the joint.

msg-item-knee_lachman_prone-short = Lachman test, face down
msg-item-knee_lachman_prone-how = For a heavy thigh or a small hand. Face down, knee bent about 30, shin resting on your forearm or thigh; the couch holds the thigh. Both hands push the upper shin toward the floor, fingers on the step beside the tendon. Millimetres beyond the other side, and the end.
msg-item-knee_lachman_prone-positive = 3 mm or more beyond the other side, or a soft end. 3 to 5 mm with a firm end counts as unsure.
msg-item-knee_lachman_prone-care = Not face down late in pregnancy, with a sore belly or a hurt kneecap. Not with a fracture open or a knee that was dislocated.
msg-item-knee_lachman_prone-errors = The end is harder to judge this way. A negative one leaves a tear not excluded.

msg-item-knee_anterior_drawer-short = Anterior drawer
msg-item-knee_anterior_drawer-how = Lying, hip bent 45, knee 90, foot flat and held by sitting beside it, hamstrings slack. First feel that the shin stands about 1 cm in front of the thigh bone. Both hands round the upper shin, thumbs on the joint lines, draw straight forward. Millimetres beyond the other side, and the end.
msg-item-knee_anterior_drawer-positive = 3 mm or more beyond the other side, or a soft end. 3 to 5 mm with a firm end counts as unsure.
msg-item-knee_anterior_drawer-care = Not where 90 is not reached, where the shin has sagged, with a fracture open or a knee that was dislocated.
msg-item-knee_anterior_drawer-errors = Tight hamstrings and a fresh full knee hide laxity; a sag makes it look loose. Poor in the first weeks.

msg-item-knee_pivot_shift-short = Pivot shift
msg-item-knee_pivot_shift-how = Last of all. Lying relaxed, leg slightly raised and outward, knee straight. One hand at the heel turns the leg inward, the other pushes behind the head of the fibula toward the inner side; bend slowly. Felt: the outer shin starts forward and falls back at about 20 to 40 degrees. Graded by how it falls back.
msg-item-knee_pivot_shift-positive = A glide or more, beyond the other side.
msg-item-knee_pivot_shift-care = Not in a fresh painful knee, with a fracture open, a locked knee, a loose inner side or a replaced hip.
msg-item-knee_pivot_shift-errors = Guarding: awake, a torn ligament shows it in a quarter to a half. A meniscus that clunks. A torn inner ligament or outer band takes the sign away.

msg-item-knee_lever_sign-short = Lever over the fist
msg-item-knee_lever_sign-how = Lying on a firm couch, legs flat. Your fist under the upper third of the calf, the other hand presses the thigh just above the kneecap down.
msg-item-knee_lever_sign-positive = The heel stays on the couch. It lifts where the ligament holds.
msg-item-knee_lever_sign-care = Not with a fracture open or a knee that was dislocated.
msg-item-knee_lever_sign-errors = Soft couch, fist too low, heavy leg, tense effusion, a partial tear. What it is worth varies widely between studies.
msg-item-knee_lever_sign-yes = the heel stays down
msg-item-knee_lever_sign-no = the heel lifts

msg-item-knee_posterior_sag-short = Posterior sag
msg-item-knee_posterior_sag-how = Before any test that draws forward. Lying, both hips and knees bent 90, heels held level. Look from the side at both tubercles: the shin stands about 1 cm in front of the thigh bone.
msg-item-knee_posterior_sag-positive = The shin drops back against the other side: step smaller, gone or reversed.
msg-item-knee_posterior_sag-care = Not bent to 90 where the straight leg cannot be lifted.
msg-item-knee_posterior_sag-errors = Legs not level; both sides torn; swelling; a tubercle that was large before.
msg-item-knee_posterior_sag-yes = the shin stands back
msg-item-knee_posterior_sag-no = the shin does not stand back

msg-item-knee_posterior_drawer-short = Posterior drawer
msg-item-knee_posterior_drawer-how = Lying, hip bent 45, knee 90, foot held, shin not turned. Bring the shin forward to its place first, then push it straight back, thumbs on the step beside the tendon: in front of the thigh bone, level with it, behind it. Millimetres beyond the other side, and the end.
msg-item-knee_posterior_drawer-positive = 3 mm or more beyond the other side, the step lost, or a soft end. More than 10 mm: look at the outer corner and the other cruciate too.
msg-item-knee_posterior_drawer-care = Not with a fracture open, a knee that was dislocated, or where 90 is not reached.
msg-item-knee_posterior_drawer-errors = Started from a shin that has sagged already there is no way left to push; the way back to its place is taken for an anterior drawer.

msg-item-knee_quadriceps_active-short = Quadriceps active test
msg-item-knee_quadriceps_active-how = Lying, hip bent about 45, knee 90, you hold the foot. The person tries to slide the foot down the couch without lifting it. Watch the tubercle from the side.
msg-item-knee_quadriceps_active-positive = The shin moves forward 2 mm or more before the foot lifts.
msg-item-knee_quadriceps_active-care = Not where the extensor tendons or the kneecap may be torn or broken.
msg-item-knee_quadriceps_active-errors = A fresh full knee may not show it; hamstrings pulling at the same time.
msg-item-knee_quadriceps_active-yes = the shin moves forward
msg-item-knee_quadriceps_active-no = the shin does not move forward

msg-item-knee_dial_30-short = Turning out of the feet, knee 30
msg-item-knee_dial_30-how = Face down, knees together and bent 30, both feet turned out alike with the ankles bent up. Read the angle of the foot against the thigh, both sides. Lying on the back with a helper who holds the thighs where face down is not possible.
msg-item-knee_dial_30-positive = 10 degrees or more beyond the other side.
msg-item-knee_dial_30-care = Not with a fracture open or a knee that was dislocated.
msg-item-knee_dial_30-errors = Pelvis tilted, ankle moving, legs turned from birth, an inner tear. Examiners agree only fairly. At 30 alone: outer corner; at both: corner and posterior cruciate; negative leaves the corner not excluded.
msg-item-knee_dial_30-yes = turns out further than the other side
msg-item-knee_dial_30-no = turns out as far as the other side

msg-item-knee_dial_90-short = Turning out of the feet, knee 90
msg-item-knee_dial_90-how = As at 30, knees bent 90. Where face down is not possible: seated, both calves against the couch edge.
msg-item-knee_dial_90-positive = 10 degrees or more beyond the other side.
msg-item-knee_dial_90-care = Not where 90 is not reached, with a fracture open or a knee that was dislocated.
msg-item-knee_dial_90-errors = As at 30. At 90 alone: think of the posterior cruciate.
msg-item-knee_dial_90-yes = turns out further than the other side
msg-item-knee_dial_90-no = turns out as far as the other side

msg-item-knee_valgus_30-short = Opening of the inner side, knee 30
msg-item-knee_valgus_30-how = Lying, thigh on the couch, leg just over the edge, knee bent 20 to 30. Fingers on the inner joint line, push from the outer side while the foot is led outward. Millimetres beyond the other side, the end, and pain as a thing of its own.
msg-item-knee_valgus_30-positive = 3 mm or more beyond the other side, or no end. Pain without opening is a mild sprain: grade 0 with pain.
msg-item-knee_valgus_30-care = Not with a fracture open; in a growing person with tender bone film first.
msg-item-knee_valgus_30-errors = The hip turns and looks like opening; a worn outer side lets it swing; guarding; force on the shin instead of the foot.

msg-item-knee_valgus_0-short = Opening of the inner side, knee straight
msg-item-knee_valgus_0-how = As at 30, knee straight.
msg-item-knee_valgus_0-positive = 3 mm or more beyond the other side, or no end. Open when straight: the inner corner and likely a cruciate too.
msg-item-knee_valgus_0-care = Not with a fracture open. Opening both ways when straight: a knee that was dislocated until shown otherwise; feel the pulses.
msg-item-knee_valgus_0-errors = The knee bends a little and is tested at 10.

msg-item-knee_varus_30-short = Opening of the outer side, knee 30
msg-item-knee_varus_30-how = Lying, thigh on the couch, leg just over the edge, knee bent 20 to 30. Fingers on the outer joint line, push from the inner side while the foot is led inward. Millimetres beyond the other side, the end, and pain as a thing of its own.
msg-item-knee_varus_30-positive = 3 mm or more beyond the other side, or no end.
msg-item-knee_varus_30-care = Not with a fracture open. Let the foot be lifted first: the nerve lies beside it.
msg-item-knee_varus_30-errors = The outer side has more play from birth: compare. A worn inner side lets it swing.

msg-item-knee_varus_0-short = Opening of the outer side, knee straight
msg-item-knee_varus_0-how = As at 30, knee straight.
msg-item-knee_varus_0-positive = 3 mm or more beyond the other side, or no end. Open when straight: the outer ligament and a cruciate.
msg-item-knee_varus_0-care = Not with a fracture open. Opening both ways when straight: a knee that was dislocated until shown otherwise; feel the pulses.
msg-item-knee_varus_0-errors = The knee bends a little and is tested at 10.

msg-item-knee_mcmurray-short = McMurray test
msg-item-knee_mcmurray-how = Lying on the back, hip and knee fully bent, fingers on the joint line. Turn the shin out and straighten slowly to about 90 for the inner meniscus; turn it in for the outer one. Positive: a thud or click that is felt with the familiar pain on the joint line. Pain alone is the loose reading: write it in the remark.
msg-item-knee_mcmurray-positive = A thud or click that is felt, with the familiar pain on the joint line. Pain alone is the loose reading.
msg-item-knee_mcmurray-care = Not through a block, not in a tense painful knee, not with a fracture open. Late and gently after an injury.
msg-item-knee_mcmurray-errors = Grating behind the kneecap, a tendon that snaps, a knee not fully bent. Schools push differently: write the turn and the push in the remark.
msg-item-knee_mcmurray-yes = thud or click with the familiar pain
msg-item-knee_mcmurray-no = no thud or click with the familiar pain

msg-item-knee_thessaly_20-short = Turning on one leg, knee 20
msg-item-knee_thessaly_20-how = Standing on one leg, you hold both hands, knee bent 20. Body and thigh turn in and out three times over the fixed foot; sound leg first.
msg-item-knee_thessaly_20-positive = Pain on the joint line, or catching.
msg-item-knee_thessaly_20-care = Not where weight or balance fails, in a full knee, with a fall hazard or a knee that gives way.
msg-item-knee_thessaly_20-errors = Knee bent less than said; pain in front counts for the kneecap.
msg-item-knee_thessaly_20-yes = pain on the joint line, or catching
msg-item-knee_thessaly_20-no = no pain on the joint line, no catching

msg-item-knee_thessaly_5-short = Turning on one leg, knee 5
msg-item-knee_thessaly_5-how = As at 20, knee bent 5; done before it.
msg-item-knee_thessaly_5-positive = Pain on the joint line, or catching.
msg-item-knee_thessaly_5-care = As at 20.
msg-item-knee_thessaly_5-errors = As at 20.
msg-item-knee_thessaly_5-yes = pain on the joint line, or catching
msg-item-knee_thessaly_5-no = no pain on the joint line, no catching

msg-item-knee_apley_compression-short = Pressing and turning, face down
msg-item-knee_apley_compression-how = Face down, knee bent 90, your knee steadies the thigh. Press down along the shin and turn it both ways; then pull up and turn.
msg-item-knee_apley_compression-positive = Worse when pressed than when pulled.
msg-item-knee_apley_compression-care = Not face down where that does not suit, not through a block, not with a fracture open.
msg-item-knee_apley_compression-errors = Pain of the kneecap on the couch; pulled and pressed not compared.
msg-item-knee_apley_compression-yes = worse when pressed than when pulled
msg-item-knee_apley_compression-no = not worse when pressed than when pulled

msg-item-knee_ege-short = Squat with the feet turned
msg-item-knee_ege-how = Standing, feet 30 to 40 cm apart. Feet turned fully out and squat, for the inner meniscus; turned fully in and squat, for the outer one. Stop at pain or a click.
msg-item-knee_ege-positive = Pain on the joint line, or a click, near 90.
msg-item-knee_ege-care = Not where a deep squat is not possible, after a replacement, or where loading is withheld.
msg-item-knee_ege-errors = Pain in front is the kneecap; feet turn back while squatting.
msg-item-knee_ege-yes = pain on the joint line, or a click
msg-item-knee_ege-no = no pain on the joint line, no click

msg-item-knee_bounce_home-short = Falling into straight
msg-item-knee_bounce_home-how = Lying, you hold the heel, knee slightly bent and relaxed; let it fall gently into straight.
msg-item-knee_bounce_home-positive = It stops short and springs back, or the joint line hurts at the end.
msg-item-knee_bounce_home-care = Not through a block, not with a fracture open; a small fall.
msg-item-knee_bounce_home-errors = Tight hamstrings stop softly; a tense effusion stops too.
msg-item-knee_bounce_home-yes = stops short of straight and springs back, or hurts at the end
msg-item-knee_bounce_home-no = falls into straight, no pain at the end

msg-item-knee_patellar_apprehension-short = Apprehension, kneecap pushed outward
msg-item-knee_patellar_apprehension-how = Lying, thigh slack, knee bent 20 to 30 over your thigh. Push the kneecap slowly outward and watch the face and the thigh.
msg-item-knee_patellar_apprehension-positive = Fear, grabbing or tightening of the thigh. Pain alone is not positive.
msg-item-knee_patellar_apprehension-care = Not while the kneecap lies out of place, or where a piece of bone may be broken off.
msg-item-knee_patellar_apprehension-errors = Pain taken for fear; loose joints all over; after an operation on the outer side the fear may be of the inner way.
msg-item-knee_patellar_apprehension-yes = fear, or the thigh grabs
msg-item-knee_patellar_apprehension-no = no fear, the thigh does not grab

msg-item-knee_patellar_apprehension_moving-short = Apprehension while moving
msg-item-knee_patellar_apprehension_moving-how = Start straight with a thumb pushing the kneecap outward; bend to 90 and back with the push held. Again with a finger pushing it inward.
msg-item-knee_patellar_apprehension_moving-positive = Fear with the outward push that is gone with the inward push.
msg-item-knee_patellar_apprehension_moving-care = As for the still test; not where 90 is not reached.
msg-item-knee_patellar_apprehension_moving-errors = Pain taken for fear; the push lost on the way.
msg-item-knee_patellar_apprehension_moving-yes = fear with the outward push, gone with the inward push
msg-item-knee_patellar_apprehension_moving-no = no fear that goes with the inward push

msg-item-knee_patellar_glide-short = Glide of the kneecap
msg-item-knee_patellar_glide-how = Lying, knee straight, then 30. Think of the kneecap in four upright quarters and count how many it glides inward and outward; both sides. The counts in the remark.
msg-item-knee_patellar_glide-positive = Less than one quarter inward, or more than three.
msg-item-knee_patellar_glide-care = Not where the kneecap may be broken or its tendons torn.
msg-item-knee_patellar_glide-errors = Thigh tight; the kneecap tilts instead of gliding.
msg-item-knee_patellar_glide-yes = glides too little or too far
msg-item-knee_patellar_glide-no = glides one to three quarters inward

msg-item-knee_patellar_tilt-short = Tilt of the kneecap
msg-item-knee_patellar_tilt-how = Lying, knee straight, thigh slack. Lift the outer edge and press the inner one. It comes up past level, by up to about 15 degrees.
msg-item-knee_patellar_tilt-positive = It stays level or below: a tight outer side.
msg-item-knee_patellar_tilt-care = Not where the kneecap may be broken or its tendons torn.
msg-item-knee_patellar_tilt-errors = Thigh tight; the leg turned outward.
msg-item-knee_patellar_tilt-yes = the outer edge does not come up past level
msg-item-knee_patellar_tilt-no = the outer edge comes up past level

msg-item-knee_step_down_eccentric-short = Slow step down
msg-item-knee_step_down_eccentric-how = From a step of about 15 cm, slowly down with the other foot, standing on the side tested; a hand ready.
msg-item-knee_step_down_eccentric-positive = The familiar pain in front.
msg-item-knee_step_down_eccentric-care = Not where loading is withheld, or a tendon may be torn.
msg-item-knee_step_down_eccentric-errors = Pelvis drops and the foot is let fall: not slow.
msg-item-knee_step_down_eccentric-yes = the familiar pain in front
msg-item-knee_step_down_eccentric-no = no familiar pain in front

msg-item-knee_squat-short = Squat
msg-item-knee_squat-how = Standing, feet under the shoulders, down as far as comfort goes and up. Depth and where it hurts in the remark.
msg-item-knee_squat-positive = The familiar pain in front of the knee. No pain speaks against the kneecap more than pain speaks for it.
msg-item-knee_squat-care = Not where loading is withheld.
msg-item-knee_squat-errors = A stiff ankle or hip stops it first; heels lift.
msg-item-knee_squat-yes = the familiar pain in front
msg-item-knee_squat-no = no familiar pain in front

msg-item-knee_noble_compression-short = Pressure on the outer band
msg-item-knee_noble_compression-how = Lying, knee bent 90. Thumb on the band over the outer knob, about 2 cm above the joint line; straighten slowly.
msg-item-knee_noble_compression-positive = The familiar pain at about 30.
msg-item-knee_noble_compression-care = Not with a fracture open.
msg-item-knee_noble_compression-errors = Thumb on the joint line or the tendon behind. No study says how good it is.
msg-item-knee_noble_compression-yes = the familiar pain at about 30
msg-item-knee_noble_compression-no = no familiar pain at about 30
