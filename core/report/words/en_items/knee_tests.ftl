# What the catalogue says of ligaments, menisci and kneecap of the knee: label, technique, what counts, when not, what goes wrong often.
# A dot in a message name is a dash here. Language: English. Reviewed by: nobody yet.

msg-item-knee_lachman-short = Lachman test
msg-item-knee_lachman-how = Lying on the back, knee bent 20 to 30 degrees, heel on the couch. One hand holds the thigh just above the kneecap, the other holds the shin high, thumb by the tubercle, and draws it straight forward in small quick pulls. Judge how many millimetres further than the other side, and how it ends: firm, soft or not at all.
msg-item-knee_lachman-purpose = Forward play of the shin near straight, where bone and hamstrings hold it back least: the front cruciate.
msg-item-knee_lachman-positive = 3 mm or more beyond the other side, or a soft end. 3 to 5 mm with a firm end counts as unsure.
msg-item-knee_lachman-care = Look for a tibia that has sagged back first. Not with a fracture open, a knee that was dislocated, or an open wound. Only gently in the first weeks after a reconstruction. Guarding, a tense effusion or a locked knee hide laxity: record it as guarded.
msg-item-knee_lachman-errors = Thigh not held; shin gripped low; shin turned; muscles on the back of the thigh tight; the way back from a sag taken for the way forward; both sides loose.
msg-item-knee_lachman-otherwise = Cannot lie flat: half sitting. One hand or a small one, a heavy thigh: over a roll, leg over the edge, or face down. Guarding: over a roll, and again in about two weeks.

msg-item-knee_lachman_dropped_leg-short = Lachman test, leg over the edge
msg-item-knee_lachman_dropped_leg-how = For a heavy thigh or a small hand. Lying near the edge, thigh on the couch, lower leg hanging over the side a little outward, knee bent 25 to 30, the foot held between your knees. One hand presses the thigh on to the couch, the other draws the shin straight forward. Millimetres beyond the other side, and the end.
msg-item-knee_lachman_dropped_leg-purpose = The Lachman test for a heavy thigh or a small hand.
msg-item-knee_lachman_dropped_leg-positive = 3 mm or more beyond the other side, or a soft end. 3 to 5 mm with a firm end counts as unsure.
msg-item-knee_lachman_dropped_leg-care = As for the Lachman test: sag first; not with a fracture open or a knee that was dislocated.
msg-item-knee_lachman_dropped_leg-errors = The thigh rolls outward; the knee hangs straighter on one side; the couch edge under the joint.
msg-item-knee_lachman_dropped_leg-otherwise = Cannot lie on the back: face down. No couch edge: over a roll.

msg-item-knee_lachman_prone-short = Lachman test, face down
msg-item-knee_lachman_prone-how = For a heavy thigh or a small hand. Face down, knee bent about 30, shin resting on your forearm or thigh; the couch holds the thigh. Both hands push the upper shin toward the floor, fingers on the step beside the tendon. Millimetres beyond the other side, and the end.
msg-item-knee_lachman_prone-purpose = The Lachman test where the couch holds a heavy thigh and the weight of the shin helps.
msg-item-knee_lachman_prone-positive = 3 mm or more beyond the other side, or a soft end. 3 to 5 mm with a firm end counts as unsure.
msg-item-knee_lachman_prone-care = Not face down late in pregnancy, with a sore belly or a hurt kneecap. Not with a fracture open or a knee that was dislocated.
msg-item-knee_lachman_prone-errors = The end is harder to judge this way. A negative one leaves a tear not excluded.
msg-item-knee_lachman_prone-otherwise = Cannot lie face down: leg over the edge.

msg-item-knee_anterior_drawer-short = Anterior drawer
msg-item-knee_anterior_drawer-how = Lying, hip bent 45, knee 90, foot flat and held by sitting beside it, hamstrings slack. First feel that the shin stands about 1 cm in front of the thigh bone. Both hands round the upper shin, thumbs on the joint lines, draw straight forward. Millimetres beyond the other side, and the end.
msg-item-knee_anterior_drawer-purpose = Forward play of the shin at 90: the front cruciate in an older injury.
msg-item-knee_anterior_drawer-positive = 3 mm or more beyond the other side, or a soft end. 3 to 5 mm with a firm end counts as unsure.
msg-item-knee_anterior_drawer-care = Not where 90 is not reached, where the shin has sagged, with a fracture open or a knee that was dislocated.
msg-item-knee_anterior_drawer-errors = Tight hamstrings and a fresh full knee hide laxity; a sag makes it look loose. Poor in the first weeks.
msg-item-knee_anterior_drawer-otherwise = Does not bend to 90, or guards: the Lachman test. Cannot lie: half sitting with the foot held; seated with the leg hanging the hamstrings are not slack and it loses its worth.

msg-item-knee_pivot_shift-short = Pivot shift
msg-item-knee_pivot_shift-how = Last of all. Lying relaxed, leg slightly raised and outward, knee straight. One hand at the heel turns the leg inward, the other pushes behind the head of the fibula toward the inner side; bend slowly. Felt: the outer shin starts forward and falls back at about 20 to 40 degrees. Graded by how it falls back.
msg-item-knee_pivot_shift-purpose = Shows that the shin slips out and back under turning: a front cruciate that fails in use.
msg-item-knee_pivot_shift-positive = A glide or more, beyond the other side.
msg-item-knee_pivot_shift-care = Not in a fresh painful knee, with a fracture open, a knee that was dislocated, a locked knee, a loose inner side or a replaced hip, nor where the hip may be broken or slipped.
msg-item-knee_pivot_shift-errors = Guarding: awake, a torn ligament shows it in a quarter to a half. A meniscus that clunks. A torn inner ligament or outer band takes the sign away.
msg-item-knee_pivot_shift-otherwise = Cannot lie or guards: the Lachman test; what only this test shows is lost. Heavy limb: the foot between your arm and body.

msg-item-knee_lever_sign-short = Lever over the fist
msg-item-knee_lever_sign-how = Lying on a firm couch, legs flat. Your fist under the upper third of the calf, the other hand presses the thigh just above the kneecap down.
msg-item-knee_lever_sign-purpose = The front cruciate, with little strength needed.
msg-item-knee_lever_sign-positive = The heel stays on the couch. It lifts where the ligament holds.
msg-item-knee_lever_sign-care = Not with a fracture open or a knee that was dislocated.
msg-item-knee_lever_sign-errors = Soft couch, fist too low, heavy leg, tense effusion, a partial tear. What it is worth varies widely between studies.
msg-item-knee_lever_sign-otherwise = Cannot lie on the back or no firm couch: lost; the Lachman test half sitting. Small hands: a hard roll instead of the fist.
msg-item-knee_lever_sign-yes = the heel stays down
msg-item-knee_lever_sign-no = the heel lifts

msg-item-knee_posterior_sag-short = Posterior sag
msg-item-knee_posterior_sag-how = Before any test that draws forward. Lying, both hips and knees bent 90, heels held level. Look from the side at both tubercles: the shin stands about 1 cm in front of the thigh bone.
msg-item-knee_posterior_sag-purpose = The back cruciate by looking alone, before anything is drawn forward.
msg-item-knee_posterior_sag-positive = The shin drops back against the other side: step smaller, gone or reversed.
msg-item-knee_posterior_sag-care = Not bent to 90 where the straight leg cannot be lifted. Not with a fracture open, and not where the hip may be broken or slipped.
msg-item-knee_posterior_sag-errors = Legs not level; both sides torn; swelling; a tubercle that was large before.
msg-item-knee_posterior_sag-otherwise = Does not bend to 90: look at the bend that is possible. Cannot lie: lost; the quadriceps active test half sitting says something of the same. One limb: a helper or a chair holds the heel, no side to compare.
msg-item-knee_posterior_sag-yes = the shin stands back
msg-item-knee_posterior_sag-no = the shin does not stand back

msg-item-knee_posterior_drawer-short = Posterior drawer
msg-item-knee_posterior_drawer-how = Lying, hip bent 45, knee 90, foot held, shin not turned. Bring the shin forward to its place first, then push it straight back, thumbs on the step beside the tendon: in front of the thigh bone, level with it, behind it. Millimetres beyond the other side, and the end.
msg-item-knee_posterior_drawer-purpose = Backward play of the shin at 90: the back cruciate.
msg-item-knee_posterior_drawer-positive = 3 mm or more beyond the other side, the step lost, or a soft end. More than 10 mm: look at the outer corner and the other cruciate too.
msg-item-knee_posterior_drawer-care = Not with a fracture open, a knee that was dislocated, or where 90 is not reached.
msg-item-knee_posterior_drawer-errors = Started from a shin that has sagged already there is no way left to push; the way back to its place is taken for an anterior drawer.
msg-item-knee_posterior_drawer-otherwise = Does not bend to 90: look for the sag at the bend that is possible. Cannot lie: half sitting with the foot held.

msg-item-knee_quadriceps_active-short = Quadriceps active test
msg-item-knee_quadriceps_active-how = Lying, hip bent about 45, knee 90, you hold the foot. The person tries to slide the foot down the couch without lifting it. Watch the tubercle from the side.
msg-item-knee_quadriceps_active-purpose = The back cruciate, by the person's own muscle and without strength of the examiner.
msg-item-knee_quadriceps_active-positive = The shin moves forward 2 mm or more before the foot lifts.
msg-item-knee_quadriceps_active-care = Not where the extensor tendons or the kneecap may be torn or broken.
msg-item-knee_quadriceps_active-errors = A fresh full knee may not show it; hamstrings pulling at the same time.
msg-item-knee_quadriceps_active-otherwise = Cannot lie flat: half sitting. Does not bend to 90: lost.
msg-item-knee_quadriceps_active-yes = the shin moves forward
msg-item-knee_quadriceps_active-no = the shin does not move forward

msg-item-knee_dial_30-short = Turning out of the feet, knee 30
msg-item-knee_dial_30-how = Face down, knees together and bent 30, both feet turned out alike with the ankles bent up. Read the angle of the foot against the thigh, both sides. Lying on the back with a helper who holds the thighs where face down is not possible.
msg-item-knee_dial_30-purpose = The outer back corner.
msg-item-knee_dial_30-positive = 10 degrees or more beyond the other side.
msg-item-knee_dial_30-care = Not with a fracture open or a knee that was dislocated. Not face down late in pregnancy or with a sore belly.
msg-item-knee_dial_30-errors = Pelvis tilted, ankle moving, legs turned from birth, an inner tear. Examiners agree only fairly. At 30 alone: outer corner; at both: corner and posterior cruciate; negative leaves the corner not excluded.
msg-item-knee_dial_30-otherwise = Cannot lie face down: on the back with a helper. Neither: the seated one at 90, which is another reading.
msg-item-knee_dial_30-yes = turns out 10 degrees or more beyond the other side
msg-item-knee_dial_30-no = turns out less than 10 degrees beyond the other side

msg-item-knee_dial_90-short = Turning out of the feet, knee 90
msg-item-knee_dial_90-how = As at 30, knees bent 90. Seated, with both calves against the couch edge, it is an item of its own.
msg-item-knee_dial_90-purpose = The outer back corner together with the back cruciate.
msg-item-knee_dial_90-positive = 10 degrees or more beyond the other side.
msg-item-knee_dial_90-care = Not where 90 is not reached, with a fracture open or a knee that was dislocated. Not face down late in pregnancy or with a sore belly.
msg-item-knee_dial_90-errors = As at 30. At 90 alone: think of the posterior cruciate.
msg-item-knee_dial_90-otherwise = Cannot lie face down: seated with both calves against the edge, which is an item of its own, or on the back with a helper.
msg-item-knee_dial_90-yes = turns out 10 degrees or more beyond the other side
msg-item-knee_dial_90-no = turns out less than 10 degrees beyond the other side

msg-item-knee_valgus_30-short = Opening of the inner side, knee 30
msg-item-knee_valgus_30-how = Lying, thigh on the couch, leg just over the edge, knee bent 20 to 30. Fingers on the inner joint line, push from the outer side while the foot is led outward. Millimetres beyond the other side, the end, and pain as a thing of its own.
msg-item-knee_valgus_30-purpose = Opening of the inner side where the inner ligament holds alone.
msg-item-knee_valgus_30-positive = 3 mm or more beyond the other side, or no end. Pain without opening is a mild sprain: grade 0 with pain.
msg-item-knee_valgus_30-care = Not with a fracture open; in a growing person with tender bone film first.
msg-item-knee_valgus_30-errors = The hip turns and looks like opening; a worn outer side lets it swing; guarding; force on the shin instead of the foot.
msg-item-knee_valgus_30-otherwise = Heavy limb: foot between your arm and body, thigh on the couch. Cannot lie: half sitting; seated the hip turns and it loses its worth. Small hands: the shin in the elbow, both hands on the joint.

msg-item-knee_valgus_0-short = Opening of the inner side, knee straight
msg-item-knee_valgus_0-how = As at 30, knee straight.
msg-item-knee_valgus_0-purpose = Opening of the inner side when straight, where more than the ligament holds.
msg-item-knee_valgus_0-positive = 3 mm or more beyond the other side, or no end. Open when straight: the inner corner and likely a cruciate too.
msg-item-knee_valgus_0-care = Not with a fracture open; in a growing person with tender bone film first. Opening both ways when straight: a knee that was dislocated until shown otherwise; feel the pulses.
msg-item-knee_valgus_0-errors = The knee bends a little and is tested at 10.
msg-item-knee_valgus_0-otherwise = As at 30.

msg-item-knee_varus_30-short = Opening of the outer side, knee 30
msg-item-knee_varus_30-how = Lying, thigh on the couch, leg just over the edge, knee bent 20 to 30. Fingers on the outer joint line, push from the inner side while the foot is led inward. Millimetres beyond the other side, the end, and pain as a thing of its own.
msg-item-knee_varus_30-purpose = Opening of the outer side where the outer ligament holds alone.
msg-item-knee_varus_30-positive = 3 mm or more beyond the other side, or no end.
msg-item-knee_varus_30-care = Not with a fracture open; in a growing person with tender bone film first. Let the foot be lifted first: the nerve lies beside it.
msg-item-knee_varus_30-errors = The outer side has more play from birth: compare. A worn inner side lets it swing.
msg-item-knee_varus_30-otherwise = Heavy limb: foot between your arm and body, thigh on the couch. Cannot lie: half sitting; seated the hip turns and it loses its worth. Small hands: the shin in the elbow, both hands on the joint.

msg-item-knee_varus_0-short = Opening of the outer side, knee straight
msg-item-knee_varus_0-how = As at 30, knee straight.
msg-item-knee_varus_0-purpose = Opening of the outer side when straight, where more than the ligament holds.
msg-item-knee_varus_0-positive = 3 mm or more beyond the other side, or no end. Open when straight: the outer ligament and a cruciate.
msg-item-knee_varus_0-care = Not with a fracture open; in a growing person with tender bone film first. Opening both ways when straight: a knee that was dislocated until shown otherwise; feel the pulses.
msg-item-knee_varus_0-errors = The knee bends a little and is tested at 10.
msg-item-knee_varus_0-otherwise = As at 30.

msg-item-knee_mcmurray-short = McMurray test
msg-item-knee_mcmurray-how = Lying on the back, hip and knee fully bent, fingers on the joint line. Turn the shin out and straighten slowly to about 90 for the inner meniscus; turn it in for the outer one. Positive: a thud or click that is felt with the familiar pain on the joint line. Pain alone is the loose reading, an item of its own.
msg-item-knee_mcmurray-purpose = A torn meniscus that is caught between the bones.
msg-item-knee_mcmurray-positive = A thud or click that is felt, with the familiar pain on the joint line. Pain alone is the loose reading, an item of its own.
msg-item-knee_mcmurray-care = Not through a block, not in a tense painful knee, not with a fracture open or where the hip may be broken or slipped, nor after a recent repair of a meniscus. Late and gently after an injury.
msg-item-knee_mcmurray-errors = Grating behind the kneecap, a tendon that snaps, a knee not fully bent. Schools push differently: write the turn and the push in the remark.
msg-item-knee_mcmurray-otherwise = Cannot lie on the back or bend fully: the joint line, knee at 90, seated. Heavy limb: the foot in your elbow, the person helps to bend. After a replacement: not done.
msg-item-knee_mcmurray-yes = thud or click with the familiar pain
msg-item-knee_mcmurray-no = no thud or click with the familiar pain

msg-item-knee_thessaly_20-short = Turning on one leg, knee 20
msg-item-knee_thessaly_20-how = Standing on one leg, you hold both hands, knee bent 20. Body and thigh turn in and out three times over the fixed foot; sound leg first.
msg-item-knee_thessaly_20-purpose = A torn meniscus under load and turning.
msg-item-knee_thessaly_20-positive = Pain on the joint line, or catching.
msg-item-knee_thessaly_20-care = Not where weight or balance fails, in a full knee, with a fall hazard or a knee that gives way.
msg-item-knee_thessaly_20-errors = Knee bent less than said; pain in front counts for the kneecap.
msg-item-knee_thessaly_20-otherwise = Cannot stand on one leg: the McMurray test and the joint line. One limb: not done.
msg-item-knee_thessaly_20-yes = pain on the joint line, or catching
msg-item-knee_thessaly_20-no = no pain on the joint line, no catching

msg-item-knee_thessaly_5-short = Turning on one leg, knee 5
msg-item-knee_thessaly_5-how = As at 20, knee bent 5; done before it.
msg-item-knee_thessaly_5-purpose = The same at a small bend, done first.
msg-item-knee_thessaly_5-positive = Pain on the joint line, or catching.
msg-item-knee_thessaly_5-care = As at 20.
msg-item-knee_thessaly_5-errors = As at 20.
msg-item-knee_thessaly_5-otherwise = Cannot stand on one leg: the McMurray test and the joint line. One limb: not done.
msg-item-knee_thessaly_5-yes = pain on the joint line, or catching
msg-item-knee_thessaly_5-no = no pain on the joint line, no catching

msg-item-knee_apley_compression-short = Pressing and turning, face down
msg-item-knee_apley_compression-how = Face down, knee bent 90, your knee steadies the thigh. Press down along the shin and turn it both ways; then pull up and turn.
msg-item-knee_apley_compression-purpose = Pain of meniscus or joint surface, told from pain of ligaments by pulling.
msg-item-knee_apley_compression-positive = Worse when pressed than when pulled.
msg-item-knee_apley_compression-care = Not face down late in pregnancy, with a sore belly or a hurt kneecap. Not through a block, not in a tense painful knee, not with a fracture open.
msg-item-knee_apley_compression-errors = Pain of the kneecap on the couch; pulled and pressed not compared.
msg-item-knee_apley_compression-otherwise = Cannot lie face down or bend to 90: the McMurray test. Heavy limb: a helper holds the thigh.
msg-item-knee_apley_compression-yes = worse when pressed than when pulled
msg-item-knee_apley_compression-no = not worse when pressed than when pulled

msg-item-knee_ege-short = Squat with the feet turned
msg-item-knee_ege-how = Standing, feet 30 to 40 cm apart. Feet turned fully out and squat, for the inner meniscus; turned fully in and squat, for the outer one. Stop at pain or a click.
msg-item-knee_ege-purpose = A torn meniscus under load, by the person's own weight.
msg-item-knee_ege-positive = Pain on the joint line, or a click, near 90.
msg-item-knee_ege-care = Not where a deep squat is not possible, in a full knee, after a replacement, or where loading is withheld.
msg-item-knee_ege-errors = Pain in front is the kneecap; feet turn back while squatting.
msg-item-knee_ege-otherwise = Cannot stand or squat: the McMurray test.
msg-item-knee_ege-yes = pain on the joint line, or a click
msg-item-knee_ege-no = no pain on the joint line, no click

msg-item-knee_bounce_home-short = Falling into straight
msg-item-knee_bounce_home-how = Lying, you hold the heel, knee slightly bent and relaxed; let it fall gently into straight.
msg-item-knee_bounce_home-purpose = A block: something caught that keeps the knee from straight.
msg-item-knee_bounce_home-positive = It stops short and springs back, or the joint line hurts at the end.
msg-item-knee_bounce_home-care = Not through a block, not with a fracture open; a small fall.
msg-item-knee_bounce_home-errors = Tight hamstrings stop softly; a tense effusion stops too.
msg-item-knee_bounce_home-otherwise = Cannot lie: half sitting with the heel held. Heavy limb: a helper holds the thigh; passive extension with its end feel says the same.
msg-item-knee_bounce_home-yes = stops short of straight and springs back, or hurts at the end
msg-item-knee_bounce_home-no = falls into straight, no pain at the end

msg-item-knee_patellar_apprehension-short = Apprehension, kneecap pushed outward
msg-item-knee_patellar_apprehension-how = Lying, thigh slack, knee bent 20 to 30 over your thigh. Push the kneecap slowly outward and watch the face and the thigh.
msg-item-knee_patellar_apprehension-purpose = A kneecap that goes out, by the fear of it.
msg-item-knee_patellar_apprehension-positive = Fear, grabbing or tightening of the thigh. Pain alone is not positive.
msg-item-knee_patellar_apprehension-care = Not while the kneecap lies out of place, or where a piece of bone may be broken off.
msg-item-knee_patellar_apprehension-errors = Pain taken for fear; loose joints all over; after an operation on the outer side the fear may be of the inner way.
msg-item-knee_patellar_apprehension-otherwise = Cannot lie: seated, heel on a stool, knee a little bent. Small hands: two thumbs.
msg-item-knee_patellar_apprehension-yes = fear, or the thigh grabs
msg-item-knee_patellar_apprehension-no = no fear, the thigh does not grab

msg-item-knee_patellar_apprehension_moving-short = Apprehension while moving
msg-item-knee_patellar_apprehension_moving-how = Start straight with a thumb pushing the kneecap outward; bend to 90 and back with the push held. Again with a finger pushing it inward.
msg-item-knee_patellar_apprehension_moving-purpose = A kneecap that goes out, by fear that the opposite push takes away.
msg-item-knee_patellar_apprehension_moving-positive = Fear with the outward push that is gone with the inward push.
msg-item-knee_patellar_apprehension_moving-care = As for the still test; not where 90 is not reached.
msg-item-knee_patellar_apprehension_moving-errors = Pain taken for fear; the push lost on the way.
msg-item-knee_patellar_apprehension_moving-otherwise = Cannot lie: half sitting with the leg over the edge. Does not bend to 90: the still test.
msg-item-knee_patellar_apprehension_moving-yes = fear with the outward push, gone with the inward push
msg-item-knee_patellar_apprehension_moving-no = no fear, or fear with both pushes

msg-item-knee_patellar_glide-short = Glide of the kneecap
msg-item-knee_patellar_glide-how = Lying, knee straight, then 30. Think of the kneecap in four upright quarters and count how many it glides inward and outward; both sides. The counts in the remark.
msg-item-knee_patellar_glide-purpose = How tightly the kneecap is held on each side.
msg-item-knee_patellar_glide-positive = Less than one quarter inward, or more than three inward or outward.
msg-item-knee_patellar_glide-care = Not where the kneecap may be broken or its tendons torn.
msg-item-knee_patellar_glide-errors = Thigh tight; the kneecap tilts instead of gliding.
msg-item-knee_patellar_glide-otherwise = Cannot lie: seated, heel on a stool, thigh slack; less is felt.
msg-item-knee_patellar_glide-yes = glides too little or too far
msg-item-knee_patellar_glide-no = glides one to three quarters inward, and no more than three outward

msg-item-knee_patellar_tilt-short = Tilt of the kneecap
msg-item-knee_patellar_tilt-how = Lying, knee straight, thigh slack. Lift the outer edge and press the inner one. It comes up past level, by up to about 15 degrees.
msg-item-knee_patellar_tilt-purpose = A tight outer restraint of the kneecap.
msg-item-knee_patellar_tilt-positive = It stays level or below: a tight outer side.
msg-item-knee_patellar_tilt-care = Not where the kneecap may be broken or its tendons torn.
msg-item-knee_patellar_tilt-errors = Thigh tight; the leg turned outward.
msg-item-knee_patellar_tilt-otherwise = Cannot lie: seated, heel on a stool, thigh slack.
msg-item-knee_patellar_tilt-yes = the outer edge does not come up past level
msg-item-knee_patellar_tilt-no = the outer edge comes up past level

msg-item-knee_step_down_eccentric-short = Slow step down
msg-item-knee_step_down_eccentric-how = From a step of about 15 cm, slowly down with the other foot, standing on the side tested; a hand ready.
msg-item-knee_step_down_eccentric-purpose = Pain of the kneecap under load.
msg-item-knee_step_down_eccentric-positive = The familiar pain in front.
msg-item-knee_step_down_eccentric-care = Not where loading is withheld, or a tendon may be torn.
msg-item-knee_step_down_eccentric-errors = Pelvis drops and the foot is let fall: not slow.
msg-item-knee_step_down_eccentric-otherwise = Cannot stand or climb: tightening the thigh against a hand says less.
msg-item-knee_step_down_eccentric-yes = the familiar pain in front
msg-item-knee_step_down_eccentric-no = no familiar pain in front

msg-item-knee_squat-short = Squat
msg-item-knee_squat-how = Standing, feet under the shoulders, down as far as comfort goes and up. Depth and where it hurts in the remark.
msg-item-knee_squat-purpose = Pain of the kneecap under load; a quick look at hip, knee and ankle together.
msg-item-knee_squat-positive = The familiar pain in front of the knee. No pain speaks against the kneecap more than pain speaks for it.
msg-item-knee_squat-care = Not where loading is withheld.
msg-item-knee_squat-errors = A stiff ankle or hip stops it first; heels lift.
msg-item-knee_squat-otherwise = Cannot stand: rising from a chair, hands free; or bending seated, without load.
msg-item-knee_squat-yes = the familiar pain in front
msg-item-knee_squat-no = no familiar pain in front

msg-item-knee_noble_compression-short = Pressure on the outer band
msg-item-knee_noble_compression-how = Lying, knee bent 90. Thumb on the band over the outer knob, about 2 cm above the joint line; straighten slowly.
msg-item-knee_noble_compression-purpose = Pain where the outer band rubs on the outer knob.
msg-item-knee_noble_compression-positive = The familiar pain at about 30.
msg-item-knee_noble_compression-care = Not with a fracture open, a tendon that may be torn, or a knee that was dislocated.
msg-item-knee_noble_compression-errors = Thumb on the joint line or the tendon behind. No study says how good it is.
msg-item-knee_noble_compression-otherwise = Cannot lie: seated, leg hanging, straightened slowly by the person.
msg-item-knee_noble_compression-yes = the familiar pain at about 30
msg-item-knee_noble_compression-no = no familiar pain at about 30

msg-item-knee_pain_full_flexion-short = Pain on full bending
msg-item-knee_pain_full_flexion-how = Lying, bend the knee slowly to its end and hold for a moment. Where does it hurt: the joint line, in front, behind.
msg-item-knee_pain_full_flexion-purpose = One of the five findings of a torn meniscus: the others are catching, a tender joint line, pain when pressed straight, and the McMurray test.
msg-item-knee_pain_full_flexion-positive = The familiar pain on the joint line at the end of bending.
msg-item-knee_pain_full_flexion-care = Not forced: not with a fracture open, a torn tendon or a tense full knee, nor where the hip may be broken or slipped.
msg-item-knee_pain_full_flexion-errors = A tense effusion hurts all over; pain in front is the kneecap.
msg-item-knee_pain_full_flexion-otherwise = Cannot lie: seated, heel drawn under the couch; the last part is lost.
msg-item-knee_pain_full_flexion-yes = familiar pain on the joint line at full bending
msg-item-knee_pain_full_flexion-no = no familiar pain on the joint line at full bending

msg-item-knee_pain_forced_extension-short = Pain when pressed straight
msg-item-knee_pain_forced_extension-how = Lying, heel held, one hand above the kneecap. Press the knee gently into straight and a little beyond as far as the other knee goes.
msg-item-knee_pain_forced_extension-purpose = One of the five findings of a torn meniscus.
msg-item-knee_pain_forced_extension-positive = The familiar pain on the joint line at the end.
msg-item-knee_pain_forced_extension-care = Not through a springy stop short of straight. Not with a fracture open or a knee that was dislocated.
msg-item-knee_pain_forced_extension-errors = Tight hamstrings pull behind; pain in front is the fat pad or the kneecap.
msg-item-knee_pain_forced_extension-otherwise = Cannot lie: seated with the heel on a stool, press above the kneecap.
msg-item-knee_pain_forced_extension-yes = familiar pain on the joint line when pressed straight
msg-item-knee_pain_forced_extension-no = no familiar pain on the joint line when pressed straight

msg-item-knee_extension_from_90_active-short = Straightens the hanging leg
msg-item-knee_extension_from_90_active-how = Seated on the edge, knee hanging at 90. The person straightens the knee against the weight of the leg, both sides.
msg-item-knee_extension_from_90_active-purpose = The part of the extensor test that a partly torn tendon fails: it may lift the straight leg from lying and not straighten the hanging one.
msg-item-knee_extension_from_90_active-positive = Cannot straighten it, or stops 10 degrees or more short of what it reaches passively, where neither a block nor pain explains it.
msg-item-knee_extension_from_90_active-care = Once and gently, no hand against it. Positive: do not bend further. After the straight leg was tried lying; not where the kneecap may be broken.
msg-item-knee_extension_from_90_active-errors = Pain or a tense knee stops the muscle: ask again later. Both sides may be torn.
msg-item-knee_extension_from_90_active-otherwise = Cannot sit: lying on the back with a roll under the thigh; too weak for the weight of the leg: lying on the side.
msg-item-knee_extension_from_90_active-yes = cannot straighten the hanging leg, or it lags
msg-item-knee_extension_from_90_active-no = straightens the hanging leg fully

msg-item-knee_extension_active_side_lying-short = Straightens the knee, lying on the side
msg-item-knee_extension_active_side_lying-how = Lying on the other side, the leg tested carried by a board, a second couch or your arms, knee bent. The person straightens it with gravity taken away.
msg-item-knee_extension_active_side_lying-purpose = Tells a weak extensor from a torn one where the leg's weight cannot be lifted.
msg-item-knee_extension_active_side_lying-positive = Cannot straighten it even so.
msg-item-knee_extension_active_side_lying-care = Gently, once. Not on a painful hip.
msg-item-knee_extension_active_side_lying-errors = The hip bends or the body rolls and the knee swings straight.
msg-item-knee_extension_active_side_lying-otherwise = Cannot lie on the side: half sitting, the heel sliding on a smooth board.
msg-item-knee_extension_active_side_lying-yes = cannot straighten it with gravity taken away
msg-item-knee_extension_active_side_lying-no = straightens it with gravity taken away

msg-item-knee_extension_resisted_pain-short = Pain when the thigh is tightened against a hand
msg-item-knee_extension_resisted_pain-how = Seated or lying with a roll under the thigh, knee a little bent. The person straightens against your hand above the ankle, rising slowly.
msg-item-knee_extension_resisted_pain-purpose = One of three pain signs of the kneecap: with pain on a squat and under the kneecap, two of the three count.
msg-item-knee_extension_resisted_pain-positive = The familiar pain in front of the knee.
msg-item-knee_extension_resisted_pain-care = Not where the extensor tendons or the kneecap may be torn or broken, nor with a fracture open above the knee.
msg-item-knee_extension_resisted_pain-errors = Pain above or below the kneecap is of the tendon: say where.
msg-item-knee_extension_resisted_pain-otherwise = Heavy limb or small hands: a strap round the shin and the couch's leg.
msg-item-knee_extension_resisted_pain-yes = the familiar pain in front when the thigh is tightened
msg-item-knee_extension_resisted_pain-no = no familiar pain in front when the thigh is tightened

msg-item-knee_lachman_supported-short = Lachman test, thigh on a roll
msg-item-knee_lachman_supported-how = For a heavy thigh, a small hand or one hand alone. Lying, the thigh laid over your bent knee on the couch or over a firm roll, knee bent 20 to 30. One hand presses the thigh down on it, the other draws the shin straight forward in small quick pulls. Millimetres beyond the other side, and the end.
msg-item-knee_lachman_supported-purpose = Forward play of the shin near straight, where the hand does not reach round the thigh or the hamstrings guard.
msg-item-knee_lachman_supported-positive = 3 mm or more beyond the other side, or a soft end. 3 to 5 mm with a firm end counts as unsure.
msg-item-knee_lachman_supported-care = Look for a shin that has sagged back first. Not with a fracture open, a knee that was dislocated, or an open wound. Only gently in the first weeks after a reconstruction.
msg-item-knee_lachman_supported-errors = The roll lies under the shin and pushes it forward; the thigh rolls outward; guarding.
msg-item-knee_lachman_supported-otherwise = Still too heavy: leg over the edge, or face down.

msg-item-knee_anterior_drawer_foot_out-short = Anterior drawer, foot turned out 15
msg-item-knee_anterior_drawer_foot_out-how = As the anterior drawer, hip 45 and knee 90, the foot turned outward 15 degrees and held there. Draw the upper shin straight forward and watch whether the inner side comes further. Millimetres beyond the other side, and the end.
msg-item-knee_anterior_drawer_foot_out-purpose = Describes play of the front inner corner; it names no structure by itself.
msg-item-knee_anterior_drawer_foot_out-positive = 3 mm or more beyond the other side, or a soft end. 3 to 5 mm with a firm end counts as unsure.
msg-item-knee_anterior_drawer_foot_out-care = Not where 90 is not reached, where the shin has sagged, with a fracture open or a knee that was dislocated.
msg-item-knee_anterior_drawer_foot_out-errors = Foot let go while drawing; tight hamstrings; a sag.
msg-item-knee_anterior_drawer_foot_out-otherwise = Cannot bend to 90 or lie on the back: what it describes is lost; the opening of the inner side says something of the same corner.

msg-item-knee_anterior_drawer_foot_in-short = Anterior drawer, foot turned in 30
msg-item-knee_anterior_drawer_foot_in-how = As the anterior drawer, hip 45 and knee 90, the foot turned inward 30 degrees and held there. Draw the upper shin straight forward and watch whether the outer side comes further. Millimetres beyond the other side, and the end.
msg-item-knee_anterior_drawer_foot_in-purpose = Describes play of the front outer corner; it names no structure by itself.
msg-item-knee_anterior_drawer_foot_in-positive = 3 mm or more beyond the other side, or a soft end. 3 to 5 mm with a firm end counts as unsure.
msg-item-knee_anterior_drawer_foot_in-care = Not where 90 is not reached, where the shin has sagged, with a fracture open or a knee that was dislocated.
msg-item-knee_anterior_drawer_foot_in-errors = Foot let go while drawing; tight hamstrings; a sag.
msg-item-knee_anterior_drawer_foot_in-otherwise = Cannot bend to 90 or lie on the back: what it describes is lost; the opening of the outer side says something of the same corner.

msg-item-knee_reverse_pivot_shift-short = Reverse pivot shift
msg-item-knee_reverse_pivot_shift-how = Late. Lying relaxed, knee well bent, foot turned outward. One hand holds the foot turned out, the other pushes the upper shin from the outer side toward the inner side; straighten slowly. Felt: the outer shin stands back when bent and comes forward near straight. Graded by how it comes.
msg-item-knee_reverse_pivot_shift-purpose = Play of the outer back corner together with the posterior cruciate: it rises only when both fail.
msg-item-knee_reverse_pivot_shift-positive = A glide or more, beyond the other side.
msg-item-knee_reverse_pivot_shift-care = Not in a fresh painful knee, with a fracture open, a locked knee, a knee that was dislocated or a replaced hip, nor where the hip may be broken or slipped. Let the foot be lifted first.
msg-item-knee_reverse_pivot_shift-errors = Present in loose joints on both sides; guarding takes it away; a meniscus that clunks.
msg-item-knee_reverse_pivot_shift-otherwise = Cannot lie on the back, or guards: the turning of the feet, seated or face down.

msg-item-knee_external_rotation_recurvatum-short = Lifted by the great toes
msg-item-knee_external_rotation_recurvatum-how = Lying, both legs slack. Lift both feet from the couch by the great toes and look at both knees from the side and the front.
msg-item-knee_external_rotation_recurvatum-purpose = Play of the outer back corner with a cruciate.
msg-item-knee_external_rotation_recurvatum-positive = The knee bends backwards, bows and turns outward more than the other.
msg-item-knee_external_rotation_recurvatum-care = Not with a fracture open, a knee that was dislocated, a sore great toe or a replaced hip. Let the foot be lifted first.
msg-item-knee_external_rotation_recurvatum-errors = Loose joints bend both knees backwards; the hip turns the leg outward.
msg-item-knee_external_rotation_recurvatum-otherwise = Cannot lie on the back, or a heavy limb: one leg at a time with a hand on the thigh; seated only the turning of the feet is left.
msg-item-knee_external_rotation_recurvatum-yes = bends back, bows and turns out more than the other
msg-item-knee_external_rotation_recurvatum-no = no more than the other

msg-item-knee_dial_90_seated-short = Turning out of the feet, knee 90, seated
msg-item-knee_dial_90_seated-how = Seated at the couch edge, knees bent 90 and together, both calves against the edge. Turn both feet out alike with the ankles bent up. Read the angle of the foot against the thigh, both sides.
msg-item-knee_dial_90_seated-purpose = The outer back corner together with the posterior cruciate, where face down is not possible.
msg-item-knee_dial_90_seated-positive = 10 degrees or more beyond the other side.
msg-item-knee_dial_90_seated-care = Not where 90 is not reached, with a fracture open or a knee that was dislocated.
msg-item-knee_dial_90_seated-errors = The thighs roll with the feet: hold the knees together. Ankle moving.
msg-item-knee_dial_90_seated-otherwise = Cannot sit: on the back with a helper who holds the thighs, or face down.
msg-item-knee_dial_90_seated-yes = turns out 10 degrees or more beyond the other side
msg-item-knee_dial_90_seated-no = turns out less than 10 degrees beyond the other side

msg-item-knee_mcmurray_pain-short = McMurray test, read by pain alone
msg-item-knee_mcmurray_pain-how = Done as the McMurray test: hip and knee fully bent, fingers on the joint line, shin turned out and straightened slowly to about 90 for the inner meniscus, turned in for the outer one. Here the familiar pain on the joint line counts without a click. The turn and the push in the remark.
msg-item-knee_mcmurray_pain-purpose = The loose reading of the same test, kept apart since what it is worth differs.
msg-item-knee_mcmurray_pain-positive = The familiar pain on the joint line, with or without a click.
msg-item-knee_mcmurray_pain-care = Not through a block, not in a tense painful knee, not with a fracture open or where the hip may be broken or slipped, nor after a recent repair of a meniscus. Late and gently after an injury.
msg-item-knee_mcmurray_pain-errors = Pain in front is the kneecap; any pain at full bending is taken for it.
msg-item-knee_mcmurray_pain-otherwise = Cannot lie on the back or bend fully: the joint line, knee at 90, seated.
msg-item-knee_mcmurray_pain-yes = the familiar pain on the joint line
msg-item-knee_mcmurray_pain-no = no familiar pain on the joint line

msg-item-knee_apley_distraction-short = Pulling and turning, face down
msg-item-knee_apley_distraction-how = Face down, knee bent 90, your knee steadies the thigh. Pull the shin up and turn it both ways; compare with pressing and turning.
msg-item-knee_apley_distraction-purpose = Pain when pulled is of ligament or capsule more than of the meniscus.
msg-item-knee_apley_distraction-positive = The familiar pain when pulled and turned, as much as or more than when pressed.
msg-item-knee_apley_distraction-care = Not face down late in pregnancy, with a sore belly or a hurt kneecap. Not through a block, not in a tense painful knee, not with a fracture open or a knee that was dislocated.
msg-item-knee_apley_distraction-errors = The thigh lifts from the couch; pain of the kneecap on the couch.
msg-item-knee_apley_distraction-otherwise = Cannot lie face down: the opening of the inner and outer side on the back, with pain as a thing of its own.
msg-item-knee_apley_distraction-yes = familiar pain when pulled, as much as or more than when pressed
msg-item-knee_apley_distraction-no = no familiar pain when pulled, or less than when pressed

msg-item-knee_patellar_compression-short = Kneecap pressed while the thigh tightens
msg-item-knee_patellar_compression-how = Lying, knee straight. A hand rests above the kneecap and presses it lightly into its groove while the person tightens the thigh slowly.
msg-item-knee_patellar_compression-purpose = Recorded where it was done; it hurts in many sound knees and changes nothing.
msg-item-knee_patellar_compression-positive = The familiar pain in front, and not on the other side.
msg-item-knee_patellar_compression-care = Lightly: hard pressing hurts and adds nothing. Not where the kneecap or its tendons may be broken or torn, or with a full knee.
msg-item-knee_patellar_compression-errors = Hurts in sound knees; the pouch is pinched under the hand.
msg-item-knee_patellar_compression-otherwise = Better left out: the squat, or where standing is not possible the pain on a tightened thigh.
msg-item-knee_patellar_compression-yes = the familiar pain in front, on this side alone
msg-item-knee_patellar_compression-no = no familiar pain, or as on the other side

msg-item-knee_patellar_glide_medial_0-short = Glide of the kneecap inward, knee straight, in quarters
msg-item-knee_patellar_glide_medial_0-how = Lying, thigh slack, knee straight. Think of the kneecap in four upright quarters and push it inward with two thumbs; count the quarters it travels, 0 to 4, both sides.
msg-item-knee_patellar_glide_medial_0-purpose = How tight the outer side holds: less than one quarter inward is tight, more than three is very loose.
msg-item-knee_patellar_glide_medial_0-care = Not where the kneecap may be broken or its tendons torn; stop at fear, that is another test.
msg-item-knee_patellar_glide_medial_0-errors = Thigh tight; the kneecap tilts instead of gliding; loose joints all over.
msg-item-knee_patellar_glide_medial_0-otherwise = Cannot lie: seated, heel on a stool, thigh slack; less is felt.

msg-item-knee_patellar_glide_medial_30-short = Glide of the kneecap inward, knee bent 30, in quarters
msg-item-knee_patellar_glide_medial_30-how = Lying, thigh slack, knee bent 30 over your thigh or a roll. Think of the kneecap in four upright quarters and push it inward with two thumbs; count the quarters it travels, 0 to 4, both sides.
msg-item-knee_patellar_glide_medial_30-purpose = How tight the outer side holds: less than one quarter inward is tight, more than three is very loose.
msg-item-knee_patellar_glide_medial_30-care = Not where the kneecap may be broken or its tendons torn; stop at fear, that is another test.
msg-item-knee_patellar_glide_medial_30-errors = Thigh tight; the kneecap tilts instead of gliding; loose joints all over.
msg-item-knee_patellar_glide_medial_30-otherwise = Cannot lie: seated, heel on a stool, thigh slack; less is felt.

msg-item-knee_patellar_glide_lateral_0-short = Glide of the kneecap outward, knee straight, in quarters
msg-item-knee_patellar_glide_lateral_0-how = Lying, thigh slack, knee straight. Think of the kneecap in four upright quarters and push it outward with two thumbs; count the quarters it travels, 0 to 4, both sides.
msg-item-knee_patellar_glide_lateral_0-purpose = How far the inner restraint lets go: more than three quarters is very loose.
msg-item-knee_patellar_glide_lateral_0-care = Not where the kneecap may be broken or its tendons torn; stop at fear, that is another test.
msg-item-knee_patellar_glide_lateral_0-errors = Thigh tight; the kneecap tilts instead of gliding; loose joints all over.
msg-item-knee_patellar_glide_lateral_0-otherwise = Cannot lie: seated, heel on a stool, thigh slack; less is felt.

msg-item-knee_patellar_glide_lateral_30-short = Glide of the kneecap outward, knee bent 30, in quarters
msg-item-knee_patellar_glide_lateral_30-how = Lying, thigh slack, knee bent 30 over your thigh or a roll. Think of the kneecap in four upright quarters and push it outward with two thumbs; count the quarters it travels, 0 to 4, both sides.
msg-item-knee_patellar_glide_lateral_30-purpose = How far the inner restraint lets go: more than three quarters is very loose.
msg-item-knee_patellar_glide_lateral_30-care = Not where the kneecap may be broken or its tendons torn; stop at fear, that is another test.
msg-item-knee_patellar_glide_lateral_30-errors = Thigh tight; the kneecap tilts instead of gliding; loose joints all over.
msg-item-knee_patellar_glide_lateral_30-otherwise = Cannot lie: seated, heel on a stool, thigh slack; less is felt.
