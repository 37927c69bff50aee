# What the catalogue says of motion by position, angles, distances and girth of the knee: label, technique, what it is for, what counts, when not, what goes wrong often, how else.
# A dot in a message name is a dash here. Language: English. Reviewed by: nobody yet.

msg-item-knee_flexion_active_prone-short = Knee flexion, active, face down
msg-item-knee_flexion_active_prone-how = Face down, hip straight, pelvis flat on the couch, the other leg straight. The person bends the knee as far as it goes. Long goniometer: centre over the outer knob of the thigh bone, one arm to the greater trochanter, the other to the outer ankle bone. Stop when the pelvis lifts.
msg-item-knee_flexion_active_prone-purpose = How far the knee bends while the front of the thigh is stretched over hip and knee.
msg-item-knee_flexion_active_prone-care = Not face down late in pregnancy, with a sore belly or a hurt kneecap.
msg-item-knee_flexion_active_prone-errors = The pelvis lifts or the thigh turns outward and adds to the number; compared with a reading on the back.
msg-item-knee_flexion_active_prone-otherwise = Cannot lie face down: on the side with the hip straight, say so in the remark; or on the back, which is another quantity.

msg-item-knee_flexion_passive_prone-short = Knee flexion, passive, face down
msg-item-knee_flexion_passive_prone-how = Face down, hip straight, one hand holds the pelvis flat. Bend the knee until the pelvis begins to lift or it stops, and say how the end feels. Long goniometer: centre over the outer knob of the thigh bone, one arm to the greater trochanter, the other to the outer ankle bone.
msg-item-knee_flexion_passive_prone-purpose = How far the knee can be bent while the front of the thigh is stretched: less than on the back speaks for a short muscle.
msg-item-knee_flexion_passive_prone-care = Do not force it when the knee cannot be straightened actively or a fracture is open. Not face down late in pregnancy, with a sore belly or a hurt kneecap.
msg-item-knee_flexion_passive_prone-errors = The pelvis lifts; the kneecap on the couch hurts: a towel above it.
msg-item-knee_flexion_passive_prone-otherwise = Cannot lie face down: on the side with the hip straight, say so in the remark; or on the back, which is another quantity.

msg-item-knee_flexion_active_seated-short = Knee flexion, active, seated
msg-item-knee_flexion_active_seated-how = Seated well back, thigh on the couch, lower leg free below the edge. The person draws the heel under the couch as far as it goes. Long goniometer: centre over the outer knob of the thigh bone, one arm to the greater trochanter, the other to the outer ankle bone.
msg-item-knee_flexion_active_seated-purpose = How far the knee bends where the person cannot lie; not to be compared with a reading on the back.
msg-item-knee_flexion_active_seated-errors = The thigh lifts or the seat's edge stops the calf: sit further forward.

msg-item-knee_flexion_passive_seated-short = Knee flexion, passive, seated
msg-item-knee_flexion_passive_seated-how = Seated well back, thigh held on the couch, lower leg free below the edge. Bend the knee until it stops, and say how the end feels. Long goniometer: centre over the outer knob of the thigh bone, one arm to the greater trochanter, the other to the outer ankle bone.
msg-item-knee_flexion_passive_seated-purpose = How far the knee can be bent where the person cannot lie; not to be compared with a reading on the back.
msg-item-knee_flexion_passive_seated-care = Do not force it when the knee cannot be straightened actively or a fracture is open.
msg-item-knee_flexion_passive_seated-errors = The thigh lifts or the seat's edge stops the calf: sit further forward.

msg-item-knee_extension_active_seated-short = Knee extension, active, seated
msg-item-knee_extension_active_seated-how = Seated upright, thigh on the couch, knee hanging at 90. The person straightens it slowly as far as it goes and holds. Long goniometer: centre over the outer knob of the thigh bone, one arm to the greater trochanter, the other to the outer ankle bone. Toward extension: 0 is straight, -20 stops twenty degrees short.
msg-item-knee_extension_active_seated-purpose = How far the person straightens the knee against the weight of the leg; with the passive reading it gives the lag.
msg-item-knee_extension_active_seated-care = Not against a hand. Cannot begin at all: look above and below the kneecap for a hollow.
msg-item-knee_extension_active_seated-errors = The body leans back and lets the hamstrings off; tight hamstrings stop it and look like a lag.
msg-item-knee_extension_active_seated-otherwise = Cannot sit: on the back with a roll under the thigh; cannot lift the weight: lying on the side.

msg-item-knee_extension_active_hip_bent-short = Knee extension with the hip at 90, active
msg-item-knee_extension_active_hip_bent-how = Lying, hip bent 90 and held there with both hands behind the thigh, the other leg flat. The person straightens the knee until it stops. Long goniometer: centre over the outer knob of the thigh bone, one arm to the greater trochanter, the other to the outer ankle bone. Toward extension: -30 stops thirty degrees short.
msg-item-knee_extension_active_hip_bent-purpose = Length of the hamstrings, by the person's own effort.
msg-item-knee_extension_active_hip_bent-care = Pain running below the knee is of a nerve until shown otherwise: stop, and raise the straight leg instead.
msg-item-knee_extension_active_hip_bent-errors = The hip opens while the knee straightens; the other thigh lifts; pelvis tilts back.
msg-item-knee_extension_active_hip_bent-otherwise = Cannot lie flat: half sitting gives another number, say so; heavy limb: a strap or a helper holds the thigh.

msg-item-knee_extension_passive_hip_bent-short = Knee extension with the hip at 90, passive
msg-item-knee_extension_passive_hip_bent-how = Lying, hip bent 90, the other leg flat, pelvis level. Straighten the knee until it stops firmly and before the pelvis moves; say how the end feels. Long goniometer: centre over the outer knob of the thigh bone, one arm to the greater trochanter, the other to the outer ankle bone. Toward extension: -30 stops thirty degrees short of straight; an angle between thigh and shin of 150 is the same.
msg-item-knee_extension_passive_hip_bent-purpose = Length of the hamstrings; in a child with stiff muscles followed over time.
msg-item-knee_extension_passive_hip_bent-care = Pain running below the knee is of a nerve until shown otherwise: stop. Not through a block of the knee.
msg-item-knee_extension_passive_hip_bent-errors = The hip opens; the pelvis tilts back; the angle between thigh and shin (180 is straight) written as degrees short of straight.
msg-item-knee_extension_passive_hip_bent-otherwise = Cannot lie flat: half sitting gives another number, say so; heavy limb: heel on your shoulder, or a helper holds the thigh.

msg-item-knee_heel_height_supine-short = Height of the heel, knee pressed straight, on the back
msg-item-knee_heel_height_supine-how = Lying on a firm couch, legs level. One hand presses the thigh just above the kneecap on to the couch, the other lifts the heel by the great toe or the foot as far as it comes. Measure from the couch to the underside of the heel, both sides.
msg-item-knee_heel_height_supine-purpose = How far each knee goes beyond straight: the difference of the sides is what counts.
msg-item-knee_heel_height_supine-care = Not through a springy stop, and not where the knee may have been out of joint.
msg-item-knee_heel_height_supine-errors = Soft couch; the thigh rolls; one heel bigger than the other.
msg-item-knee_heel_height_supine-otherwise = Cannot lie: passive extension with the heel propped, by goniometer, half sitting; small differences are lost.

msg-item-knee_heel_height_prone-short = Height of the heel, legs hanging, face down
msg-item-knee_heel_height_prone-how = Face down, kneecaps just beyond the edge of the couch, lower legs hanging free and slack for some moments, feet upright. Measure how much higher one heel lies than the other and write it for the higher side; 0 for the other.
msg-item-knee_heel_height_prone-purpose = A small lack of extension of one knee, which no goniometer shows.
msg-item-knee_heel_height_prone-care = Not where the knee may be locked: no weight on the heel. Not late in pregnancy or with a sore belly.
msg-item-knee_heel_height_prone-errors = Pelvis not level; a hip that does not straighten; thighs of different thickness.
msg-item-knee_heel_height_prone-otherwise = Cannot lie face down: passive extension on the back with the heel propped.

msg-item-knee_heel_to_buttock-short = Heel to buttock, face down
msg-item-knee_heel_to_buttock-how = Face down, pelvis held flat, bend the knee as far as it goes without force. Measure from the back of the heel to the buttock, both sides; 0 where it touches. What stops it, and where it pulls, in the remark.
msg-item-knee_heel_to_buttock-purpose = A quick measure of bending that a tape gives, and of a short muscle in front of the thigh.
msg-item-knee_heel_to_buttock-care = Do not force it when the knee cannot be straightened actively or a fracture is open. Not late in pregnancy, with a sore belly or a hurt kneecap.
msg-item-knee_heel_to_buttock-errors = The pelvis lifts; calf and thigh meet first in a heavy limb: then it says little.
msg-item-knee_heel_to_buttock-otherwise = Cannot lie face down: on the side with the hip straight, or bending on the back in degrees.

msg-item-knee_q_angle_standing-short = Angle of the thigh's pull (Q angle), standing
msg-item-knee_q_angle_standing-how = Standing at ease, feet pointing forward and as wide as the hips, thigh slack. Centre of the goniometer on the middle of the kneecap, one arm to the front upper spine of the pelvis, the other along the tendon to the tubercle of the shin. How the feet stand, in the remark.
msg-item-knee_q_angle_standing-purpose = The side pull on the kneecap.
msg-item-knee_q_angle_standing-care = Not where standing is withheld.
msg-item-knee_q_angle_standing-errors = Feet turned: it changes the angle by degrees. Kneecap pushed aside by the arm. Thigh tightened.
msg-item-knee_q_angle_standing-otherwise = Cannot stand: lying, which is an item of its own.

msg-item-knee_q_angle_supine-short = Angle of the thigh's pull (Q angle), lying
msg-item-knee_q_angle_supine-how = Lying, knee straight, thigh slack, feet upright. Centre of the goniometer on the middle of the kneecap, one arm to the front upper spine of the pelvis, the other along the tendon to the tubercle of the shin.
msg-item-knee_q_angle_supine-purpose = The side pull on the kneecap, where it is compared with readings taken lying.
msg-item-knee_q_angle_supine-errors = Foot rolled outward; thigh tightened; not to be compared with a reading standing.
msg-item-knee_q_angle_supine-otherwise = Cannot lie flat: standing, which is an item of its own.

msg-item-knee_tibiofemoral_angle_standing-short = Angle of thigh and shin, standing
msg-item-knee_tibiofemoral_angle_standing-how = Standing, knees straight and kneecaps forward, ankles or knees just touching. Centre of the goniometer on the middle of the kneecap, one arm to the middle of the thigh toward the front upper spine of the pelvis, the other to the middle of the ankle. Knock-knee counts up, bow leg counts below 0.
msg-item-knee_tibiofemoral_angle_standing-purpose = How far the leg is knock-kneed or bowed, to follow in a growing child.
msg-item-knee_tibiofemoral_angle_standing-care = Not where standing is withheld.
msg-item-knee_tibiofemoral_angle_standing-errors = Kneecaps not forward; a bent knee; the arm laid on the edge of the thigh.
msg-item-knee_tibiofemoral_angle_standing-otherwise = Cannot or will not stand: lying, which is an item of its own; or the distances between the ankles or the knees.

msg-item-knee_tibiofemoral_angle_supine-short = Angle of thigh and shin, lying
msg-item-knee_tibiofemoral_angle_supine-how = Lying, knees straight and kneecaps upward. Goniometer as when standing. Knock-knee counts up, bow leg counts below 0.
msg-item-knee_tibiofemoral_angle_supine-purpose = How far the leg is knock-kneed or bowed in a small child or where nobody stands.
msg-item-knee_tibiofemoral_angle_supine-errors = The hips and knees of a newborn do not straighten: do not press them straight. Kneecaps rolled outward.
msg-item-knee_tibiofemoral_angle_supine-otherwise = Cannot lie flat: standing, which is an item of its own.

msg-item-knee_intercondylar_distance_standing-short = Distance between the knees, standing
msg-item-knee_intercondylar_distance_standing-how = Standing, knees straight, kneecaps forward, inner ankle bones just touching. Tape between the inner knobs of both thigh bones; 0 where they touch.
msg-item-knee_intercondylar_distance_standing-purpose = How far the legs are bowed, to follow in a growing child; one side alone is seen by eye.
msg-item-knee_intercondylar_distance_standing-care = Not where standing is withheld.
msg-item-knee_intercondylar_distance_standing-errors = Kneecaps turned out; a bent knee; thick thighs touch first.
msg-item-knee_intercondylar_distance_standing-otherwise = Cannot or will not stand: lying, which is an item of its own.

msg-item-knee_intercondylar_distance_supine-short = Distance between the knees, lying
msg-item-knee_intercondylar_distance_supine-how = Lying, knees straight, kneecaps upward, inner ankle bones just touching. Tape between the inner knobs of both thigh bones; 0 where they touch.
msg-item-knee_intercondylar_distance_supine-purpose = How far the legs of a small child are bowed.
msg-item-knee_intercondylar_distance_supine-errors = The legs of a newborn do not straighten: do not press. Not to be compared with a reading standing.
msg-item-knee_intercondylar_distance_supine-otherwise = Cannot lie: on the lap, or standing, which is an item of its own.

msg-item-knee_intermalleolar_distance_standing-short = Distance between the ankles, standing
msg-item-knee_intermalleolar_distance_standing-how = Standing, knees straight, kneecaps forward, knees just touching. Tape between the inner ankle bones; 0 where they touch.
msg-item-knee_intermalleolar_distance_standing-purpose = How far the legs are knock-kneed, to follow in a growing child.
msg-item-knee_intermalleolar_distance_standing-care = Not where standing is withheld.
msg-item-knee_intermalleolar_distance_standing-errors = Kneecaps turned in; fat thighs hold the feet apart; one knee in front of the other.
msg-item-knee_intermalleolar_distance_standing-otherwise = Cannot or will not stand: lying, which is an item of its own.

msg-item-knee_intermalleolar_distance_supine-short = Distance between the ankles, lying
msg-item-knee_intermalleolar_distance_supine-how = Lying, knees straight, kneecaps upward, knees just touching. Tape between the inner ankle bones; 0 where they touch.
msg-item-knee_intermalleolar_distance_supine-purpose = How far the legs of a small child are knock-kneed.
msg-item-knee_intermalleolar_distance_supine-errors = One knee over the other; not to be compared with a reading standing.
msg-item-knee_intermalleolar_distance_supine-otherwise = Cannot lie: on the lap, or standing, which is an item of its own.

msg-item-knee_girth_patella_upper-short = Girth at the upper edge of the kneecap
msg-item-knee_girth_patella_upper-how = Lying, knee straight, muscles slack. Tape level round the knee at the upper edge of the kneecap without pulling, both sides, twice.
msg-item-knee_girth_patella_upper-purpose = Swelling of the knee as a number to follow.
msg-item-knee_girth_patella_upper-errors = Tape aslant; a bent knee; a thick fat pad: compare sides.
msg-item-knee_girth_patella_upper-otherwise = Cannot lie flat: half sitting with the heel propped; the same way each time.
