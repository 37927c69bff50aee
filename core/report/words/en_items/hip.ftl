# What the catalogue says of the hip: looking, feeling, motion, standing, infants. Words of the oldest items of the hip stand in limb.ftl.
# A dot in a message name is a dash here. Language: English. Reviewed by: nobody yet.

msg-item-hip_log_roll-purpose = The gentlest test of a hip: nothing but the joint moves. First in a hip that hurts.
msg-item-hip_log_roll-otherwise = Half sitting, or on a parent's lap. Heavy leg: both hands on the thigh alone. Who cannot lie: the inward turn seated, gently.

msg-item-hip_internal_rotation_passive_seated-purpose = The motion that goes first in a worn, slipped or inflamed hip; never left out in a growing person with knee pain.
msg-item-hip_internal_rotation_passive_seated-otherwise = Who cannot sit: on the back, hip and knee bent 90 and carried. Heavy leg: a helper holds the thigh down. On the back leave the position empty and say it in the remark.

msg-item-hip_internal_rotation_passive_supine-purpose = To compare both hips with the hip straight, as in walking.
msg-item-hip_internal_rotation_passive_supine-otherwise = Who cannot lie on the back: seated, which is another quantity. Heavy leg: read the kneecap, the leg straight.

msg-item-hip_external_rotation_passive_seated-purpose = With inward rotation it shows a hip that has turned: much outward and little inward.
msg-item-hip_external_rotation_passive_seated-otherwise = Who cannot sit: on the back, hip and knee bent 90 and carried. On the back leave the position empty and say it in the remark.

msg-item-hip_flexion_passive-purpose = What the joint allows; a stiff hip loses it, and a slipped one rolls outward as it bends.
msg-item-hip_flexion_passive-otherwise = Who cannot lie on the back: on the side, the leg on a pillow or carried. Heavy limb: two persons. Half sitting starts from a bend: say so.

msg-item-hip_leg_attitude-short = How the leg lies
msg-item-hip_leg_attitude-purpose = To see a broken, dislocated or full hip before it is touched.
msg-item-hip_leg_attitude-how = Lying on the back, legs uncovered, pelvis level where the person lets it be; look only and move nothing. As the other side; short and turned out (a broken neck that has shifted); bent, led inward and turned in (dislocated backward); bent, led outward and turned out (a full or infected hip, or dislocated forward); turned out alone; short alone; held bent; another way. The one that fits best.
msg-item-hip_leg_attitude-care = After an injury: feel the foot pulses and the feeling in the foot, then move nothing. A broken neck that is jammed together shows no deformity: lying straight leaves a fracture not excluded.
msg-item-hip_leg_attitude-errors = A pelvis that is tilted makes a leg look short; a leg turned out at rest is ordinary when both lie alike.
msg-item-hip_leg_attitude-otherwise = Who cannot lie flat is looked at half sitting or in the position found. With one limb there is nothing to compare with: describe it.

msg-item-hip_look_skin-short = Skin of hip, groin and buttock
msg-item-hip_look_skin-purpose = To find an earlier operation, an infection, or the mark of an injury.
msg-item-hip_look_skin-how = Look all round hip, groin and buttock, the folds too: scar; a hole that discharges (sinus); rash; bruise; wound; hot or red, felt with the back of the hand. All that are seen.
msg-item-hip_look_skin-care = Offer a chaperone and cover again. A bruise low on the buttock after a sudden pop: think of a hamstring torn from its bone. In a child, bruises that nobody can explain go into the protected part.
msg-item-hip_look_skin-errors = Scars hide in the fold of the groin; a joint can be infected under skin that looks well.
msg-item-hip_look_skin-otherwise = Part by part through moved clothing, where undressing is declined; say what was not seen.

msg-item-hip_look_wasting-short = Buttock or thigh thinner
msg-item-hip_look_wasting-purpose = To see disuse, a nerve lesion or long-standing disease of the hip.
msg-item-hip_look_wasting-how = Look at both buttocks from behind and at both thighs from the front, muscles slack, then tightened. Yes when clearly thinner than the other side. The girth is a thing of its own.
msg-item-hip_look_wasting-errors = A flat buttock on both sides has nothing to compare with; fat hides it; a healed swelling on the other side makes this one look thin.
msg-item-hip_look_wasting-otherwise = Who cannot or may not stand: lying on the side or face down; lying on the back shows the thigh alone.
msg-item-hip_look_wasting-yes = buttock or thigh thinner than the other side
msg-item-hip_look_wasting-no = buttock and thigh as the other side

msg-item-hip_look_swelling-short = Swelling about the hip
msg-item-hip_look_swelling-purpose = To find a collection, a mass or bleeding. The joint itself lies too deep to show its fluid.
msg-item-hip_look_swelling-how = Look at and feel groin, trochanter and buttock of both sides with the flat hand. Yes for a fullness that the other side does not have; say where, how large, and whether it is soft, hard or throbs.
msg-item-hip_look_swelling-care = A swelling that throbs is not pressed. A hard mass that grows, or with night pain: refer.
msg-item-hip_look_swelling-errors = No swelling says nothing about fluid in the joint.
msg-item-hip_look_swelling-otherwise = Standing or lying on the side shows the trochanter and buttock of a heavy person best.
msg-item-hip_look_swelling-yes = fuller than the other side
msg-item-hip_look_swelling-no = not fuller than the other side; fluid in the joint is not seen this way

msg-item-hip_leg_not_moved-short = Leg not moved (infant)
msg-item-hip_leg_not_moved-purpose = To find an infected hip, a fracture or a nerve lesion in one who cannot say what hurts.
msg-item-hip_leg_not_moved-how = Watch the child kick, on a parent's lap or lying, before any touch. Yes when one leg is held still while the other moves, or cries when it is moved at a change of napkin.
msg-item-hip_leg_not_moved-care = Below one year: refer the same day.
msg-item-hip_leg_not_moved-errors = A tired or cold child moves neither leg; tickle the sole and wait.
msg-item-hip_leg_not_moved-otherwise = On the parent's lap, or in the cot, from a distance.
msg-item-hip_leg_not_moved-yes = holds the leg still
msg-item-hip_leg_not_moved-no = moves the leg as the other

msg-item-hip_joint_front_tender-short = Front of the hip joint tender
msg-item-hip_joint_front_tender-purpose = To see whether the joint, or the bursa and tendon in front of it, is sore.
msg-item-hip_joint_front_tender-how = Lying on the back, hip slightly bent and slack. Feel the femoral pulse below the middle of the groin; the joint lies deep behind it. Press slowly just to the outer side of the pulse. The sound side first. Yes for pain there, and say whether it is the familiar one.
msg-item-hip_joint_front_tender-care = Never press a lump that throbs, and not deep where a clot is open. Not where a fracture of the pelvis is open.
msg-item-hip_joint_front_tender-errors = Deep pressure in a groin is never comfortable: compare. Nodes and a full bowel are tender too.
msg-item-hip_joint_front_tender-otherwise = Heavy belly: the helper holds the apron of fat up. Half sitting where flat lying is not possible.

msg-item-hip_femoral_triangle_full-short = Fullness below the groin
msg-item-hip_femoral_triangle_full-purpose = To find nodes, a hernia, a widened vessel or a collection.
msg-item-hip_femoral_triangle_full-how = Lying on the back. From the outer to the inner side below the fold of the groin lie nerve, artery and vein. Feel with flat fingers, both sides. Yes for a lump or fullness; say how large, soft or hard, and whether it throbs or comes with a cough.
msg-item-hip_femoral_triangle_full-care = A lump that throbs is not pressed. Not where a fracture of the pelvis is open.
msg-item-hip_femoral_triangle_full-errors = Small nodes on both sides are common in those who go barefoot.
msg-item-hip_femoral_triangle_full-otherwise = Half sitting where flat lying is not possible; standing shows a hernia better.
msg-item-hip_femoral_triangle_full-yes = a lump or fullness felt
msg-item-hip_femoral_triangle_full-no = no lump or fullness felt

msg-item-hip_adductor_origin_tender-short = Adductor origin tender
msg-item-hip_adductor_origin_tender-purpose = To name the region of groin pain in one who kicks, runs or slipped apart.
msg-item-hip_adductor_origin_tender-how = Lying on the back, knee bent and let outward, the leg supported. The long adductor stands out as a cord: follow it to the pubic bone and press the last part and the bone. Both sides. Yes for pain, and say whether it is the familiar one.
msg-item-hip_adductor_origin_tender-care = Not where a fracture of the pelvis is open: ask where it hurts and press nowhere. Where a fracture, a dislocation, a slip or an infection of the hip is open the leg stays as it lies.
msg-item-hip_adductor_origin_tender-errors = The cord is followed only half-way; the pubic bone itself is another point.
msg-item-hip_adductor_origin_tender-otherwise = Offer a chaperone; the person can put the own finger on it first. A leg that cannot be let outward stays straight and slightly apart.

msg-item-hip_trochanter_tender-short = Trochanter: familiar pain on pressure
msg-item-hip_trochanter_tender-purpose = To say whether pain at the outer hip comes from the tendons and bursa there; read together with resisted abduction.
msg-item-hip_trochanter_tender-how = Lying on the sound side, hips bent 45 to 60, knees on each other with a pillow between. The trochanter is the block of bone on the outer thigh. Thumb pressure, until the nail turns pale, on its front, its outer and its upper back facet; the sound side as well, and a control point on the outer thigh.
msg-item-hip_trochanter_tender-positive = The familiar pain on any facet.
msg-item-hip_trochanter_tender-care = Not where a fracture or a dislocation of hip or pelvis is open. In a frail person with a painful hip do not turn on to that side.
msg-item-hip_trochanter_tender-errors = Somebody tender everywhere is tender here too: the control point tells. Pressing behind the bone meets the nerve. Tenderness that is not the familiar pain is no positive.
msg-item-hip_trochanter_tender-otherwise = Who cannot lie on the side: on the back, the leg slightly turned in. A thick layer of fat: use the knuckle and feel the bone move as the leg is rolled.
msg-item-hip_trochanter_tender-yes = the familiar pain on pressing the trochanter
msg-item-hip_trochanter_tender-no = no familiar pain on pressing the trochanter

msg-item-hip_trochanter_tenderness-short = Trochanter, how tender
msg-item-hip_trochanter_tenderness-purpose = To follow tenderness from visit to visit.
msg-item-hip_trochanter_tenderness-how = As for the familiar pain on pressing the trochanter: the most tender facet, graded by what the person does.
msg-item-hip_trochanter_tenderness-care = Not where a fracture or a dislocation of hip or pelvis is open.
msg-item-hip_trochanter_tenderness-errors = Another pressure gives another grade: press until the nail turns pale, each time.
msg-item-hip_trochanter_tenderness-otherwise = On the back, the leg slightly turned in, for who cannot lie on the side.

msg-item-hip_trochanter_facets_tender-short = Trochanter, which part is tender
msg-item-hip_trochanter_facets_tender-purpose = The facets carry different tendons.
msg-item-hip_trochanter_facets_tender-how = Press front, outer side, and upper back of the trochanter in turn, thumb until the nail turns pale. All that hurt.
msg-item-hip_trochanter_facets_tender-care = Not where a fracture or a dislocation of hip or pelvis is open.
msg-item-hip_trochanter_facets_tender-errors = The facets lie close together in a small person.
msg-item-hip_trochanter_facets_tender-otherwise = On the back, the leg slightly turned in; the back facet is then not reached: say so.

msg-item-hip_trochanter_height-short = Height of the trochanter
msg-item-hip_trochanter_height-purpose = A high one speaks of a dislocated hip, a bent or broken neck, or a hip not formed well.
msg-item-hip_trochanter_height-how = Thumbs on the two front spines of the pelvis, middle fingers on the tops of both trochanters. Compare the distances: level with the other side, higher (nearer the pelvis), or lower.
msg-item-hip_trochanter_height-care = After an injury lying and without moving the leg; standing only where nothing withholds it.
msg-item-hip_trochanter_height-errors = A tilted pelvis; both sides high look alike.
msg-item-hip_trochanter_height-otherwise = Lying on the back where standing is not possible. With one limb there is nothing to compare with.

msg-item-hip_control_point_tender-short = Control point on the outer thigh tender
msg-item-hip_control_point_tender-purpose = To tell a sore tendon from soreness everywhere.
msg-item-hip_control_point_tender-how = Press the middle of the outer thigh as firmly as the trochanter was pressed. Yes when it hurts as much.
msg-item-hip_control_point_tender-care = Not where a fracture of the thigh bone is open.
msg-item-hip_control_point_tender-errors = A bruise there makes it useless: choose another spot and say which.
msg-item-hip_control_point_tender-otherwise = In any position; the other thigh where this one is hurt.
msg-item-hip_control_point_tender-yes = as tender as the trochanter: tenderness of the trochanter then says little
msg-item-hip_control_point_tender-no = less tender than the trochanter

msg-item-hip_ischial_tuberosity_tender-short = Sitting bone tender
msg-item-hip_ischial_tuberosity_tender-purpose = To find a sore or torn hamstring origin, or a bursa.
msg-item-hip_ischial_tuberosity_tender-how = Lying on the side, hip bent; the blunt bone under the fold of the buttock. Press its lower and outer part, both sides. Yes for pain; say whether it is the familiar one.
msg-item-hip_ischial_tuberosity_tender-care = In the young after a sudden pop, or with a bruise: the bone may be pulled off. Press once, stretch nothing, film first. Not where a fracture of the pelvis is open. Not turned for it where a fracture or a dislocation of the hip is open.
msg-item-hip_ischial_tuberosity_tender-errors = Pressed with the hip straight the muscle of the buttock lies over it.
msg-item-hip_ischial_tuberosity_tender-otherwise = Face down, or seated leaning to the other side, or on the back with the hip bent, where lying on the side is not possible.

msg-item-hip_deep_gluteal_tender-short = Deep buttock tender
msg-item-hip_deep_gluteal_tender-purpose = To ask whether the nerve is irritated deep in the buttock.
msg-item-hip_deep_gluteal_tender-how = Lying on the side, hip bent, or face down. Half-way between the trochanter and the edge of the sacrum, press slowly and deep. Yes for the familiar pain; tingling down the leg goes into the remark.
msg-item-hip_deep_gluteal_tender-care = Not where a fracture of the pelvis is open, nor on a mass. Not turned for it where a fracture or a dislocation of the hip is open.
msg-item-hip_deep_gluteal_tender-errors = Pain sent from the back is felt here as well: look at the back and lift the straight leg. A deep buttock is tender in many.
msg-item-hip_deep_gluteal_tender-otherwise = Heavy buttock: use the knuckles, lying on the side. Seated leaning forward is a poor second.

msg-item-hip_cutaneous_nerve_tap-short = Knocking beside the front spine of the pelvis
msg-item-hip_cutaneous_nerve_tap-purpose = To show an irritated skin nerve of the outer thigh.
msg-item-hip_cutaneous_nerve_tap-how = One to two finger breadths inward of and below the front spine of the pelvis, knock lightly with a fingertip some times. Then feel the outer thigh for a numb patch (a finding of its own).
msg-item-hip_cutaneous_nerve_tap-positive = Tingling or burning that runs to the outer thigh.
msg-item-hip_cutaneous_nerve_tap-care = Lightly. Not where a fracture of the pelvis is open.
msg-item-hip_cutaneous_nerve_tap-errors = The nerve runs differently from one person to the next. Pain at the spot alone is no positive.
msg-item-hip_cutaneous_nerve_tap-otherwise = Standing or lying on the side; where a heavy belly covers it, the helper lifts it.
msg-item-hip_cutaneous_nerve_tap-yes = tingling runs to the outer thigh
msg-item-hip_cutaneous_nerve_tap-no = no tingling to the outer thigh

msg-item-hip_flexion_active-short = Hip flexion, active
msg-item-hip_flexion_active-purpose = What the person can do; outer pain on the way counts in a published rule for a worn hip.
msg-item-hip_flexion_active-how = Lying on the back, knee bent, other thigh flat on the couch: the person draws the thigh to the belly. Read where the pelvis begins to follow. Long goniometer: centre over the trochanter, one arm along the side of the trunk, the other to the outer knob of the thigh bone. Say where it hurts: groin, outer side or behind.
msg-item-hip_flexion_active-care = The person moves alone and stops at pain. Not where a fracture, a dislocation or a slip of the hip is open.
msg-item-hip_flexion_active-errors = The pelvis rolls back and adds to the number; the belly stops it first.
msg-item-hip_flexion_active-otherwise = Who cannot lie on the back: on the side, the leg on a pillow or board. Standing or seated the hand may help: then it is not active.

msg-item-hip_arc_active-short = Hip flexion and extension in three numbers, active
msg-item-hip_arc_active-purpose = To write down both ends at once, as three numbers.
msg-item-hip_arc_active-how = Written as extension-zero-flexion or flexion-zero-extension: name the order. 10-0-120 goes ten degrees behind the line of the body and bends to 120; 0-20-110 stops twenty degrees short of straight and bends to 110. It is recorded as extension (face down) and flexion (on the back).
msg-item-hip_arc_active-care = The person moves alone and stops at pain. Not where a fracture, a dislocation or a slip of the hip is open. Not face down from about the 20th week of pregnancy.
msg-item-hip_arc_active-otherwise = Who cannot lie face down: each end by itself, extension on the side; in three numbers it is then lost.

msg-item-hip_arc_passive-short = Hip flexion and extension in three numbers, passive
msg-item-hip_arc_passive-purpose = To write down both ends at once, as three numbers.
msg-item-hip_arc_passive-how = Written as extension-zero-flexion or flexion-zero-extension: name the order. 10-0-120 goes ten degrees behind the line of the body and bends to 120; 0-20-110 stops twenty degrees short of straight and bends to 110. It is recorded as extension (face down) and flexion (on the back). A fixed flexion measured with the other hip bent is another item.
msg-item-hip_arc_passive-care = Not forced, and not repeated in a hot joint. Not where a fracture, a dislocation, a slip or an infection of the hip is open. A replaced hip stays inside the range its surgeon allowed. Not face down from about the 20th week of pregnancy.
msg-item-hip_arc_passive-otherwise = Heavy leg: two persons. Who cannot lie face down: each end by itself, extension on the side; in three numbers it is then lost.

msg-item-hip_extension_passive_prone-short = Hip extension, face down
msg-item-hip_extension_passive_prone-purpose = The first motion that a stiff hip loses unseen: the back makes up for it.
msg-item-hip_extension_passive_prone-how = Face down, both front spines of the pelvis on the couch, knee straight. One hand holds the pelvis down over the sacrum, the other lifts the thigh until the pelvis begins to follow. Long goniometer: centre over the trochanter, one arm along the side of the trunk, the other to the outer knob of the thigh bone. Toward extension: 0 is the thigh in line with the trunk, 15 is fifteen degrees behind it, -20 stops twenty degrees short.
msg-item-hip_extension_passive_prone-care = Not forced, and not repeated in a hot joint. Not where a fracture, a dislocation, a slip or an infection of the hip is open. A replaced hip stays inside the range its surgeon allowed. Not face down from about the 20th week of pregnancy.
msg-item-hip_extension_passive_prone-errors = The pelvis and the back do the lifting; a knee that is bent lets the long thigh muscle stop it.
msg-item-hip_extension_passive_prone-otherwise = Who cannot lie face down: on the side, or the fixed flexion on the back with the other hip bent. Standing with support adds the tilt of the pelvis.

msg-item-hip_extension_passive_side_lying-short = Hip extension, on the side
msg-item-hip_extension_passive_side_lying-purpose = Extension for who cannot lie face down; children and adults were measured like this.
msg-item-hip_extension_passive_side_lying-how = Lying on the other side, lower hip bent to hold the pelvis, upper knee straight or slightly bent. Stand behind: one hand holds the pelvis, the forearm carries the leg and leads it back until the pelvis begins to follow. Long goniometer: centre over the trochanter, one arm along the side of the trunk, the other to the outer knob of the thigh bone. Toward extension: 0 is the thigh in line with the trunk, 15 is fifteen degrees behind it, -20 stops twenty degrees short.
msg-item-hip_extension_passive_side_lying-care = Not forced, and not repeated in a hot joint. Not where a fracture, a dislocation, a slip or an infection of the hip is open. A replaced hip stays inside the range its surgeon allowed. A frail person does not lie on a painful hip.
msg-item-hip_extension_passive_side_lying-errors = The body rolls forward or back; the leg is led outward as well.
msg-item-hip_extension_passive_side_lying-otherwise = Heavy limb: two persons, or the leg slides on a board. Who cannot lie on the side: the fixed flexion on the back.

msg-item-hip_extension_active_prone-short = Hip extension, active, face down
msg-item-hip_extension_active_prone-purpose = What the person can do against gravity, and whether it hurts.
msg-item-hip_extension_active_prone-how = Face down, knee straight, the person lifts the thigh while you hold the pelvis down. Long goniometer: centre over the trochanter, one arm along the side of the trunk, the other to the outer knob of the thigh bone. Toward extension: 0 is the thigh in line with the trunk, 15 is fifteen degrees behind it, -20 stops twenty degrees short. Say whether it hurts: pain here counts in a published rule for a worn hip.
msg-item-hip_extension_active_prone-care = The person moves alone and stops at pain. Not where a fracture, a dislocation or a slip of the hip is open. Not face down from about the 20th week of pregnancy.
msg-item-hip_extension_active_prone-errors = The back arches; the pelvis rolls.
msg-item-hip_extension_active_prone-otherwise = Who cannot lie face down: on the side, or the fixed flexion on the back with the other hip bent. Standing with support adds the tilt of the pelvis.

msg-item-hip_extension_active_side_lying-short = Hip extension, active, on the side
msg-item-hip_extension_active_side_lying-purpose = Active extension for a weak person, or one who cannot lie face down.
msg-item-hip_extension_active_side_lying-how = Lying on the other side, lower hip bent, the upper leg on a pillow or board: the person leads it back while you hold the pelvis. Gravity helps nobody and hinders nobody. Long goniometer: centre over the trochanter, one arm along the side of the trunk, the other to the outer knob of the thigh bone. Toward extension: 0 is the thigh in line with the trunk, 15 is fifteen degrees behind it, -20 stops twenty degrees short.
msg-item-hip_extension_active_side_lying-care = The person moves alone and stops at pain. Not where a fracture, a dislocation or a slip of the hip is open.
msg-item-hip_extension_active_side_lying-errors = The trunk bends instead; not to be compared with a lift against gravity.
msg-item-hip_extension_active_side_lying-otherwise = Who cannot lie on the side: standing at a rail. In bed on the back active extension is lost.

msg-item-hip_extension_active_standing-short = Hip extension, active, standing with support
msg-item-hip_extension_active_standing-purpose = A quick look in one who cannot lie down.
msg-item-hip_extension_active_standing-how = Standing, the belly or the hands on a table, the person leads the straight leg back. Long goniometer: centre over the trochanter, one arm along the side of the trunk, the other to the outer knob of the thigh bone. Toward extension: 0 is the thigh in line with the trunk, 15 is fifteen degrees behind it, -20 stops twenty degrees short.
msg-item-hip_extension_active_standing-care = Hold on with both hands. Not where standing is withheld or the other leg does not carry.
msg-item-hip_extension_active_standing-errors = The pelvis tilts and adds to the number: it reads more than lying does, and is not to be compared with it.
msg-item-hip_extension_active_standing-otherwise = Who cannot stand: on the side.

msg-item-hip_extension_passive_thomas-short = Fixed flexion of the hip, other hip bent (Thomas test)
msg-item-hip_extension_passive_thomas-purpose = To uncover a hip that does not straighten and is hidden by a hollow back.
msg-item-hip_extension_passive_thomas-how = Lying on the back, a hand under the hollow of the back. Bend the other hip until the back lies flat on the hand, and have it held there. The angle between couch and tested thigh is the fixed flexion. Toward extension: 0 is the thigh on the couch, -20 is twenty degrees of fixed flexion.
msg-item-hip_extension_passive_thomas-care = Not after a fall until imaged, not where the other hip has been replaced and may not bend so far, not with acute back pain, and not forced in the newborn, in whom some fixed flexion is expected. A replaced hip stays inside the range its surgeon allowed.
msg-item-hip_extension_passive_thomas-errors = The other hip bent too far lifts this thigh and makes a fixed flexion of its own; too little leaves the back hollow. A bent knee pushes the thigh up: let it hang over the edge.
msg-item-hip_extension_passive_thomas-otherwise = Who cannot lie flat: extension on the side; standing with the back to a wall, a gap behind the low back says that something is fixed and not how much. Where the other hip does not bend or is missing: face down with the hips over the end of the couch, or on the side. Heavy limb: the person holds the own knee.

msg-item-hip_extension_passive_thomas_edge-short = Hip extension over the edge, thigh (modified Thomas test)
msg-item-hip_extension_passive_thomas_edge-purpose = To tell short hip benders from a short long thigh muscle. Above level: short hip benders.
msg-item-hip_extension_passive_thomas_edge-how = Seated at the very end of the couch, the person rolls back and draws both knees to the chest, the back flat; one leg is let down while the other is held and the pelvis stays level. Thigh against the horizontal, toward extension: 0 is level with the couch, -10 stands ten degrees above it, 10 hangs ten below.
msg-item-hip_extension_passive_thomas_edge-care = One hand on the person until the back is flat: falls happen here. Not unsteady, not with acute back pain, not with a replaced hip, not after a fall until imaged.
msg-item-hip_extension_passive_thomas_edge-errors = The pelvis not held: the number then says little. Record whether it was held.
msg-item-hip_extension_passive_thomas_edge-otherwise = Who cannot get to the edge: the plain form. Who cannot lie flat: extension on the side.

msg-item-hip_thomas_edge_knee_flexion-short = Modified Thomas test, how the knee hangs
msg-item-hip_thomas_edge_knee_flexion-purpose = To tell a short long thigh muscle from short hip benders.
msg-item-hip_thomas_edge_knee_flexion-how = In the same position, knee slack: how far the knee is bent, 0 being straight. Less than 67 to 80 degrees speaks of a short long thigh muscle.
msg-item-hip_thomas_edge_knee_flexion-care = As for the thigh over the edge.
msg-item-hip_thomas_edge_knee_flexion-errors = The thigh lifts when the knee is bent further by hand; the person holds the knee.
msg-item-hip_thomas_edge_knee_flexion-otherwise = Face down, heel to buttock, looks at the same muscle.

msg-item-hip_thomas_edge_drift-short = Modified Thomas test, thigh drifts outward
msg-item-hip_thomas_edge_drift-purpose = To see a short outer band.
msg-item-hip_thomas_edge_drift-how = In the same position, leg slack: yes when the thigh lies outward of the line of the hip and does not come in without lifting.
msg-item-hip_thomas_edge_drift-care = As for the thigh over the edge.
msg-item-hip_thomas_edge_drift-errors = A hip held turned out looks like drift.
msg-item-hip_thomas_edge_drift-otherwise = On the side, the band test.
msg-item-hip_thomas_edge_drift-yes = the thigh drifts outward
msg-item-hip_thomas_edge_drift-no = the thigh hangs in line

msg-item-hip_thomas_pelvis_held-short = Pelvis held level in the Thomas test
msg-item-hip_thomas_pelvis_held-purpose = Without it the angle over the edge says little.
msg-item-hip_thomas_pelvis_held-how = A hand under the back, or an inclinometer on the front spine: yes when the back stayed flat on the couch and the pelvis did not tilt while the leg was read.
msg-item-hip_thomas_pelvis_held-errors = The back leaves the couch at the last moment.
msg-item-hip_thomas_pelvis_held-otherwise = A helper's hand under the back; on the side the pelvis is held by your hip, and the question is the same.
msg-item-hip_thomas_pelvis_held-yes = pelvis held
msg-item-hip_thomas_pelvis_held-no = pelvis not held: the angle says little

msg-item-hip_abduction_passive-short = Hip abduction, passive
msg-item-hip_abduction_passive-purpose = Lost early in a worn hip, in Perthes disease and with a tight inner side.
msg-item-hip_abduction_passive-how = Lying on the back, leg straight, toes up. One hand holds the opposite front spine of the pelvis, the other leads the leg outward; stop when the spine moves. Goniometer: centre on the front spine of the pelvis, one arm to the other front spine, the other along the middle of the thigh; 0 is the thigh square to the line of the spines.
msg-item-hip_abduction_passive-care = Not forced, and not repeated in a hot joint. Not where a fracture, a dislocation, a slip or an infection of the hip is open. A replaced hip stays inside the range its surgeon allowed. Not pushed in a growing person with a painful hip.
msg-item-hip_abduction_passive-errors = The pelvis tilts and adds to the number; the leg turns out as it goes.
msg-item-hip_abduction_passive-otherwise = Heavy leg: two persons, or the heel slides on a cloth. Who cannot lie on the back: on the side, the upper leg lifted on your forearm, pelvis held. Seated with the knees led apart is another quantity.

msg-item-hip_abduction_active-short = Hip abduction, active
msg-item-hip_abduction_active-purpose = What the person can do without gravity.
msg-item-hip_abduction_active-how = Lying on the back, leg straight, toes up, the heel sliding on the couch: the person leads the leg outward, the opposite front spine of the pelvis held by you; read when the spine moves. Goniometer: centre on the front spine of the pelvis, one arm to the other front spine, the other along the middle of the thigh; 0 is the thigh square to the line of the spines.
msg-item-hip_abduction_active-care = The person moves alone and stops at pain. Not where a fracture, a dislocation or a slip of the hip is open.
msg-item-hip_abduction_active-errors = The pelvis hitches up; the leg turns out and the hip benders do it.
msg-item-hip_abduction_active-otherwise = Who cannot lie on the back: lying on the side, against gravity, which is an item of its own.

msg-item-hip_abduction_active_side_lying-short = Hip abduction, active, on the side
msg-item-hip_abduction_active_side_lying-purpose = What the person can lift against gravity.
msg-item-hip_abduction_active_side_lying-how = Lying on the other side, lower leg bent, the upper hip straight or slightly behind: the person lifts the straight leg, toes forward; read when the pelvis follows. Goniometer: centre on the front spine of the pelvis, one arm to the other front spine, the other along the middle of the thigh; 0 is the thigh square to the line of the spines.
msg-item-hip_abduction_active_side_lying-care = The person moves alone and stops at pain. Not where a fracture, a dislocation or a slip of the hip is open. A frail person does not lie on a painful hip.
msg-item-hip_abduction_active_side_lying-errors = The body rolls back and the hip benders lift.
msg-item-hip_abduction_active_side_lying-otherwise = Who cannot lie on the side: on the back, sliding.

msg-item-hip_abduction_passive_flexed-short = Hip abduction with the hip bent 90
msg-item-hip_abduction_passive_flexed-purpose = The sign of a dislocated hip after the first weeks of life, and of Perthes disease in an older child.
msg-item-hip_abduction_passive_flexed-how = Lying on the back, the infant calm and warm; hips and knees bent 90. Hold the pelvis with one hand or have both thighs led apart together; let each fall outward by its own weight and stop where it stops. The angle of each thigh from upright.
msg-item-hip_abduction_passive_flexed-care = Never pushed. Under 60 degrees, or 20 or more less than the other side, after the newborn weeks: image the hip. Not where a slip or an infection is open.
msg-item-hip_abduction_passive_flexed-errors = A crying child holds both thighs; the pelvis rolls to the free side; both hips out of joint look alike: both are then narrow.
msg-item-hip_abduction_passive_flexed-otherwise = On the parent's lap, half lying. An adult who cannot lie flat does it half sitting.

msg-item-hip_adduction_passive-short = Hip adduction, passive
msg-item-hip_adduction_passive-purpose = A full adduction speaks against a worn hip; pain in the groin or at the outer side on the way is noted.
msg-item-hip_adduction_passive-how = Lying on the back, the other leg lifted or bent out of the way. One hand holds the opposite front spine of the pelvis, the other leads the straight leg across; stop when the spine moves. Goniometer: centre on the front spine of the pelvis, one arm to the other front spine, the other along the middle of the thigh; 0 is the thigh square to the line of the spines.
msg-item-hip_adduction_passive-care = Not forced, and not repeated in a hot joint. Not where a fracture, a dislocation, a slip or an infection of the hip is open. A replaced hip stays inside the range its surgeon allowed. Not across the middle with a replaced hip, unless its surgeon allows it.
msg-item-hip_adduction_passive-errors = The pelvis tilts; the leg is bent to get past the other.
msg-item-hip_adduction_passive-otherwise = Heavy leg: two persons. Who cannot lie on the back: on the side, the upper leg lowered behind the body, which is also the outer pain test.

msg-item-hip_adduction_active-short = Hip adduction, active
msg-item-hip_adduction_active-purpose = What the person can do.
msg-item-hip_adduction_active-how = Lying on the back, the other leg lifted out of the way: the person leads the straight leg across, pelvis held; read when the opposite front spine moves. Goniometer: centre on the front spine of the pelvis, one arm to the other front spine, the other along the middle of the thigh; 0 is the thigh square to the line of the spines.
msg-item-hip_adduction_active-care = The person moves alone and stops at pain. Not where a fracture, a dislocation or a slip of the hip is open. Not across the middle with a replaced hip, unless its surgeon allows it.
msg-item-hip_adduction_active-errors = The pelvis tilts.
msg-item-hip_adduction_active-otherwise = Who cannot lie on the back: lying on the tested side, the lower leg lifted; the angle is then against gravity, say so.

msg-item-hip_arc_abduction_active-short = Hip abduction and adduction in three numbers, active
msg-item-hip_arc_abduction_active-purpose = To write down both ends at once, as three numbers.
msg-item-hip_arc_abduction_active-how = Written as abduction-zero-adduction or adduction-zero-abduction: name the order. 40-0-20 goes forty outward and twenty across; 30-10-0 cannot come nearer to the middle than ten degrees outward. It is recorded as abduction and adduction, on the back, hip straight.
msg-item-hip_arc_abduction_active-care = The person moves alone and stops at pain. Not where a fracture, a dislocation or a slip of the hip is open.
msg-item-hip_arc_abduction_active-otherwise = Who cannot lie on the back: each end by itself, lying on the side; in three numbers it is then lost.

msg-item-hip_arc_abduction_passive-short = Hip abduction and adduction in three numbers, passive
msg-item-hip_arc_abduction_passive-purpose = To write down both ends at once, as three numbers.
msg-item-hip_arc_abduction_passive-how = Written as abduction-zero-adduction or adduction-zero-abduction: name the order. 40-0-20 goes forty outward and twenty across; 30-10-0 cannot come nearer to the middle than ten degrees outward. It is recorded as abduction and adduction, on the back, hip straight.
msg-item-hip_arc_abduction_passive-care = Not forced, and not repeated in a hot joint. Not where a fracture, a dislocation, a slip or an infection of the hip is open. A replaced hip stays inside the range its surgeon allowed.
msg-item-hip_arc_abduction_passive-otherwise = Heavy leg: two persons. Who cannot lie on the back: each end by itself, lying on the side; in three numbers it is then lost.

msg-item-hip_internal_rotation_passive_prone-short = Hip inward rotation, face down
msg-item-hip_internal_rotation_passive_prone-purpose = One half of the rotational profile of a child; with outward rotation it shows how the thigh bone is turned.
msg-item-hip_internal_rotation_passive_prone-how = Face down, hip straight, knee bent 90, both front spines of the pelvis on the couch and held down. Let the FOOT fall outward: the thigh turns inward. Both sides together in a child. Read the shin against upright, stop when the pelvis lifts. 0 is the shin straight up.
msg-item-hip_internal_rotation_passive_prone-care = Not forced, and not again, where a slip or a fracture of the hip is open. Not face down from about the 20th week of pregnancy. Not where the hip may be out of joint or infected. A replaced hip stays inside the range its surgeon allowed.
msg-item-hip_internal_rotation_passive_prone-errors = Side of the foot taken for the side of the turn; the pelvis lifts on that side. Not to be compared with a seated reading.
msg-item-hip_internal_rotation_passive_prone-otherwise = Who cannot lie face down: seated, which is another quantity. A child: on the lap, face down.

msg-item-hip_external_rotation_passive_prone-short = Hip outward rotation, face down
msg-item-hip_external_rotation_passive_prone-purpose = The other half of the rotational profile of a child.
msg-item-hip_external_rotation_passive_prone-how = Face down, hip straight, knee bent 90, both front spines of the pelvis on the couch and held down. Lead the FOOT inward, one leg at a time: the thigh turns outward. Read the shin against upright, stop when the pelvis lifts. 0 is the shin straight up.
msg-item-hip_external_rotation_passive_prone-care = Not forced, and not again, where a slip or a fracture of the hip is open. Not face down from about the 20th week of pregnancy. Not where the hip may be out of joint or infected. A replaced hip stays inside the range its surgeon allowed.
msg-item-hip_external_rotation_passive_prone-errors = Side of the foot taken for the side of the turn; the other leg in the way: bend it aside. More here than seated in some studies: not to be compared.
msg-item-hip_external_rotation_passive_prone-otherwise = Who cannot lie face down: seated, which is another quantity.

msg-item-hip_external_rotation_passive_supine-short = Hip outward rotation, lying, hip straight
msg-item-hip_external_rotation_passive_supine-purpose = To compare both hips with the hip straight, as in walking.
msg-item-hip_external_rotation_passive_supine-how = Lying on the back, hip straight, knee bent over the end of the couch or leg straight. The FOOT goes inward with the knee bent; with the leg straight the kneecap turns outward. Read the shin or the kneecap against upright. 0 is the kneecap facing up.
msg-item-hip_external_rotation_passive_supine-care = Not forced, and not again, where a slip or a fracture of the hip is open. Not where the hip may be out of joint or infected. A replaced hip stays inside the range its surgeon allowed.
msg-item-hip_external_rotation_passive_supine-errors = Foot turned at the ankle; pelvis rolls. Not to be compared with a seated reading.
msg-item-hip_external_rotation_passive_supine-otherwise = Who cannot lie on the back: seated, which is another quantity. Heavy leg: read the kneecap, the leg straight.

msg-item-hip_internal_rotation_active_seated-short = Hip inward rotation, active, seated
msg-item-hip_internal_rotation_active_seated-purpose = What the person can do.
msg-item-hip_internal_rotation_active_seated-how = Seated on the edge, hip and knee bent 90, thigh still on the couch, pelvis level. The person turns the FOOT outward: the thigh turns inward. Goniometer: centre on the kneecap, one arm straight down, the other along the shin. 0 is the shin straight down.
msg-item-hip_internal_rotation_active_seated-care = The person moves alone and stops at pain. Not where a fracture, a dislocation or a slip of the hip is open.
msg-item-hip_internal_rotation_active_seated-errors = Side of the foot taken for the side of the turn; the body leans over; the thigh lifts.
msg-item-hip_internal_rotation_active_seated-otherwise = Who cannot sit: on the back, hip and knee bent 90 and carried, counts as this one. On the back leave the position empty and say it in the remark.

msg-item-hip_internal_rotation_active_supine-short = Hip inward rotation, active, lying, hip straight
msg-item-hip_internal_rotation_active_supine-purpose = What the person can do with the hip straight.
msg-item-hip_internal_rotation_active_supine-how = Lying on the back, hip straight, knee bent over the end of the couch or leg straight. The person turns the leg inward (knee bent: the FOOT goes outward). Read the shin or the kneecap against upright. 0 is the kneecap facing up.
msg-item-hip_internal_rotation_active_supine-care = The person moves alone and stops at pain. Not where a fracture, a dislocation or a slip of the hip is open.
msg-item-hip_internal_rotation_active_supine-errors = The foot turns at the ankle; the pelvis rolls. Not to be compared with a seated reading.
msg-item-hip_internal_rotation_active_supine-otherwise = Who cannot lie on the back: seated, which is another quantity.

msg-item-hip_internal_rotation_active_prone-short = Hip inward rotation, active, face down
msg-item-hip_internal_rotation_active_prone-purpose = What the person can do with the hip straight.
msg-item-hip_internal_rotation_active_prone-how = Face down, hip straight, knee bent 90, both front spines of the pelvis on the couch and held down. The person lets the FOOT go outward: the thigh turns inward. Read the shin against upright. 0 is the shin straight up.
msg-item-hip_internal_rotation_active_prone-care = The person moves alone and stops at pain. Not where a fracture, a dislocation or a slip of the hip is open. Not face down from about the 20th week of pregnancy.
msg-item-hip_internal_rotation_active_prone-errors = The pelvis lifts; gravity helps the last part. Not to be compared with a seated reading.
msg-item-hip_internal_rotation_active_prone-otherwise = Who cannot lie face down: seated, which is another quantity.

msg-item-hip_external_rotation_active_seated-short = Hip outward rotation, active, seated
msg-item-hip_external_rotation_active_seated-purpose = What the person can do.
msg-item-hip_external_rotation_active_seated-how = Seated on the edge, hip and knee bent 90, thigh still on the couch, pelvis level. The person turns the FOOT inward: the thigh turns outward. Goniometer: centre on the kneecap, one arm straight down, the other along the shin. 0 is the shin straight down.
msg-item-hip_external_rotation_active_seated-care = The person moves alone and stops at pain. Not where a fracture, a dislocation or a slip of the hip is open.
msg-item-hip_external_rotation_active_seated-errors = Side of the foot taken for the side of the turn; the body leans over; the thigh lifts.
msg-item-hip_external_rotation_active_seated-otherwise = Who cannot sit: on the back, hip and knee bent 90 and carried, counts as this one. On the back leave the position empty and say it in the remark.

msg-item-hip_external_rotation_active_supine-short = Hip outward rotation, active, lying, hip straight
msg-item-hip_external_rotation_active_supine-purpose = What the person can do with the hip straight.
msg-item-hip_external_rotation_active_supine-how = Lying on the back, hip straight, knee bent over the end of the couch or leg straight. The person turns the leg outward (knee bent: the FOOT goes inward). Read the shin or the kneecap against upright. 0 is the kneecap facing up.
msg-item-hip_external_rotation_active_supine-care = The person moves alone and stops at pain. Not where a fracture, a dislocation or a slip of the hip is open.
msg-item-hip_external_rotation_active_supine-errors = The foot turns at the ankle; the pelvis rolls. Not to be compared with a seated reading.
msg-item-hip_external_rotation_active_supine-otherwise = Who cannot lie on the back: seated, which is another quantity.

msg-item-hip_external_rotation_active_prone-short = Hip outward rotation, active, face down
msg-item-hip_external_rotation_active_prone-purpose = What the person can do with the hip straight.
msg-item-hip_external_rotation_active_prone-how = Face down, hip straight, knee bent 90, both front spines of the pelvis on the couch and held down. The person lets the FOOT go inward: the thigh turns outward. Read the shin against upright. 0 is the shin straight up.
msg-item-hip_external_rotation_active_prone-care = The person moves alone and stops at pain. Not where a fracture, a dislocation or a slip of the hip is open. Not face down from about the 20th week of pregnancy.
msg-item-hip_external_rotation_active_prone-errors = The pelvis lifts; gravity helps the last part. Not to be compared with a seated reading.
msg-item-hip_external_rotation_active_prone-otherwise = Who cannot lie face down: seated, which is another quantity.

msg-item-hip_arc_rotation_active_seated-short = Hip rotation in three numbers, active, seated
msg-item-hip_arc_rotation_active_seated-purpose = To write down both ends at once, as three numbers.
msg-item-hip_arc_rotation_active_seated-how = Written as external_rotation-zero-internal_rotation or the other way round: name the order. 45-0-35 turns forty-five outward and thirty-five inward; 30-10-0 stands turned out and stops ten short of the middle. Read seated, hip at 90; recorded as outward and inward rotation of that position.
msg-item-hip_arc_rotation_active_seated-care = The person moves alone and stops at pain. Not where a fracture, a dislocation or a slip of the hip is open.
msg-item-hip_arc_rotation_active_seated-otherwise = Who cannot sit: on the back, hip and knee bent 90 and carried, counts as this one; leave the position empty then and say it in the remark.

msg-item-hip_arc_rotation_passive_seated-short = Hip rotation in three numbers, passive, seated
msg-item-hip_arc_rotation_passive_seated-purpose = To write down both ends at once, as three numbers.
msg-item-hip_arc_rotation_passive_seated-how = Written as external_rotation-zero-internal_rotation or the other way round: name the order. 45-0-35 turns forty-five outward and thirty-five inward; 30-10-0 stands turned out and stops ten short of the middle. Read seated, hip at 90; recorded as outward and inward rotation of that position.
msg-item-hip_arc_rotation_passive_seated-care = Not forced, and not repeated in a hot joint. Not where a fracture, a dislocation, a slip or an infection of the hip is open. A replaced hip stays inside the range its surgeon allowed.
msg-item-hip_arc_rotation_passive_seated-otherwise = Who cannot sit: on the back, hip and knee bent 90 and carried, counts as this one; leave the position empty then and say it in the remark.

msg-item-hip_arc_rotation_active_supine-short = Hip rotation in three numbers, active, lying
msg-item-hip_arc_rotation_active_supine-purpose = To write down both ends at once, as three numbers.
msg-item-hip_arc_rotation_active_supine-how = Written as external_rotation-zero-internal_rotation or the other way round: name the order. 45-0-35 turns forty-five outward and thirty-five inward; 30-10-0 stands turned out and stops ten short of the middle. Read on the back, hip straight; recorded as outward and inward rotation of that position.
msg-item-hip_arc_rotation_active_supine-care = The person moves alone and stops at pain. Not where a fracture, a dislocation or a slip of the hip is open.
msg-item-hip_arc_rotation_active_supine-otherwise = Who cannot lie on the back: seated, which is another quantity with its own three numbers.

msg-item-hip_arc_rotation_passive_supine-short = Hip rotation in three numbers, passive, lying
msg-item-hip_arc_rotation_passive_supine-purpose = To write down both ends at once, as three numbers.
msg-item-hip_arc_rotation_passive_supine-how = Written as external_rotation-zero-internal_rotation or the other way round: name the order. 45-0-35 turns forty-five outward and thirty-five inward; 30-10-0 stands turned out and stops ten short of the middle. Read on the back, hip straight; recorded as outward and inward rotation of that position.
msg-item-hip_arc_rotation_passive_supine-care = Not forced, and not repeated in a hot joint. Not where a fracture, a dislocation, a slip or an infection of the hip is open. A replaced hip stays inside the range its surgeon allowed.
msg-item-hip_arc_rotation_passive_supine-otherwise = Who cannot lie on the back: seated, which is another quantity with its own three numbers. Heavy leg: read the kneecap, the leg straight.

msg-item-hip_arc_rotation_active_prone-short = Hip rotation in three numbers, active, face down
msg-item-hip_arc_rotation_active_prone-purpose = To write down both ends at once, as three numbers.
msg-item-hip_arc_rotation_active_prone-how = Written as external_rotation-zero-internal_rotation or the other way round: name the order. 45-0-35 turns forty-five outward and thirty-five inward; 30-10-0 stands turned out and stops ten short of the middle. Read face down, hip straight; recorded as outward and inward rotation of that position.
msg-item-hip_arc_rotation_active_prone-care = The person moves alone and stops at pain. Not where a fracture, a dislocation or a slip of the hip is open. Not face down from about the 20th week of pregnancy.
msg-item-hip_arc_rotation_active_prone-otherwise = Who cannot lie face down: seated, which is another quantity with its own three numbers.

msg-item-hip_arc_rotation_passive_prone-short = Hip rotation in three numbers, passive, face down
msg-item-hip_arc_rotation_passive_prone-purpose = To write down both ends at once, as three numbers.
msg-item-hip_arc_rotation_passive_prone-how = Written as external_rotation-zero-internal_rotation or the other way round: name the order. 45-0-35 turns forty-five outward and thirty-five inward; 30-10-0 stands turned out and stops ten short of the middle. Read face down, hip straight; recorded as outward and inward rotation of that position.
msg-item-hip_arc_rotation_passive_prone-care = Not forced, and not repeated in a hot joint. Not where a fracture, a dislocation, a slip or an infection of the hip is open. A replaced hip stays inside the range its surgeon allowed. Not face down from about the 20th week of pregnancy.
msg-item-hip_arc_rotation_passive_prone-otherwise = Who cannot lie face down: seated, which is another quantity with its own three numbers.

msg-item-hip_femoral_version-short = Turn of the thigh bone (Craig test)
msg-item-hip_femoral_version-purpose = To see whether in-toeing or a large inward turn of the hip comes from the thigh bone.
msg-item-hip_femoral_version-how = Face down, knee bent 90. One hand on the trochanter, the other turns the shin: FOOT outward, until the trochanter stands out furthest to the side. The angle of the shin to upright; toward internal rotation, FOOT outward. Usual in an adult: 8 to 15.
msg-item-hip_femoral_version-care = Not forced, and not again, where a slip or a fracture of the hip is open. Not face down from about the 20th week of pregnancy. Not with a replaced hip.
msg-item-hip_femoral_version-errors = The trochanter is hard to find under fat; the front of it is taken for its outermost point; the knee's own play adds to the number.
msg-item-hip_femoral_version-otherwise = Who cannot lie face down: compare inward with outward rotation, seated; far more inward than outward points the same way, and the angle itself is lost.

msg-item-hip_trendelenburg-short = Trendelenburg test, 30 seconds
msg-item-hip_trendelenburg-purpose = To see whether the hip abductors and the mechanics of the hip hold the pelvis. It is no measure of strength.
msg-item-hip_trendelenburg-how = Stand behind, thumbs on the two back dimples or hands on the crests. The person stands on the leg to be tested, the other foot lifted, that hip bent 0 to 30 and the knee as much as the floor needs; then hitches the free side of the pelvis as high as it goes and holds it for 30 seconds, trunk over the standing foot. A stick only in the hand of the standing side. The side is the standing leg. Graded by how high and how long.
msg-item-hip_trendelenburg-positive = Grade 1, 2 or 3: falls before 30 seconds, less than full height, or level or dropping at once.
msg-item-hip_trendelenburg-care = Stay within reach. Not with a fracture, a stress fracture, a slip or an infection open, great pain on standing, or who cannot stand alone. Not below four years; little worth below seven.
msg-item-hip_trendelenburg-errors = Side of the free leg written instead of the standing one. Hitching with the trunk muscles or leaning over hides it; pain, poor balance, a fixed hip, a curved spine that touches the pelvis, or a short leg imitates it.
msg-item-hip_trendelenburg-otherwise = Who cannot stand: resisted abduction on the side or on the back. A large person: sit behind at the height of the pelvis, with marks on the dimples. With one limb it cannot be done: lost.

msg-item-hip_trendelenburg_hold-short = Trendelenburg test, seconds held
msg-item-hip_trendelenburg_hold-purpose = How long the pelvis stayed up.
msg-item-hip_trendelenburg_hold-how = In the same stand: seconds from the full hitch until the free side begins to fall; 30 where it does not, 0 where it drops at once.
msg-item-hip_trendelenburg_hold-care = As for the test.
msg-item-hip_trendelenburg_hold-errors = The clock is started before the hitch is full.
msg-item-hip_trendelenburg_hold-otherwise = Count aloud where there is no watch, and say so.

msg-item-hip_trendelenburg_trunk_lean-short = Trunk leans over the standing leg
msg-item-hip_trendelenburg_trunk_lean-purpose = A lean keeps the pelvis up and hides weak abductors; it also spares a painful hip.
msg-item-hip_trendelenburg_trunk_lean-how = In the same stand, seen from behind: yes when the trunk goes over the standing leg.
msg-item-hip_trendelenburg_trunk_lean-care = As for the test.
msg-item-hip_trendelenburg_trunk_lean-errors = A hand on the wall does the same.
msg-item-hip_trendelenburg_trunk_lean-otherwise = Seen in walking as well.
msg-item-hip_trendelenburg_trunk_lean-yes = trunk leans over the standing leg
msg-item-hip_trendelenburg_trunk_lean-no = trunk stays upright

msg-item-hip_stance_pain_30s-short = Pain standing on one leg, 30 seconds
msg-item-hip_stance_pain_30s-purpose = To load and press the gluteal tendons.
msg-item-hip_stance_pain_30s-how = Sideways to a wall, one finger on it for balance; the person stands on the painful leg, the other hip straight, its knee bent, for 30 seconds. The side is the standing leg.
msg-item-hip_stance_pain_30s-positive = The familiar pain at the outer hip within 30 seconds.
msg-item-hip_stance_pain_30s-care = Stay within reach. Not with a fracture, a stress fracture, a slip or an infection open, or who cannot stand alone.
msg-item-hip_stance_pain_30s-errors = Pain elsewhere; more than a finger on the wall; the pelvis rests on its ligaments.
msg-item-hip_stance_pain_30s-otherwise = Who cannot stand: the pull on the side, or turning back against the hand on the back.
msg-item-hip_stance_pain_30s-yes = familiar pain at the outer hip within 30 s
msg-item-hip_stance_pain_30s-no = no familiar pain at the outer hip within 30 s

msg-item-hip_stance_pain_time-short = Seconds until pain, standing on one leg
msg-item-hip_stance_pain_time-purpose = To follow it from visit to visit.
msg-item-hip_stance_pain_time-how = In the same stand: seconds until the familiar pain at the outer hip comes. Leave it empty where none came by 30.
msg-item-hip_stance_pain_time-care = As for the stand.
msg-item-hip_stance_pain_time-errors = Any pain is timed instead of the familiar one.
msg-item-hip_stance_pain_time-otherwise = Count aloud where there is no watch, and say so.

msg-item-hip_ortolani-short = Lift and lead outward (Ortolani)
msg-item-hip_ortolani-purpose = To find a hip that lies out of joint and can still go in. In the first three months of life.
msg-item-hip_ortolani-how = The infant calm, warm, fed, on the back on something firm, hips and knees bent 90. Thumb on the inner thigh, fingers on the trochanter, the other hand holds the pelvis. Lead the thigh gently outward while the fingers lift the trochanter forward. One hip at a time.
msg-item-hip_ortolani-positive = A clunk that is felt as the hip goes in.
msg-item-hip_ortolani-care = No force. Not where an infection or a fracture is open. After three months it is mostly lost: go by abduction and knee height.
msg-item-hip_ortolani-errors = A click without movement is a tendon; a crying child holds it; a hip that stays out does not clunk.
msg-item-hip_ortolani-otherwise = On the lap, half lying. Over three months: abduction with the hip bent 90 and the height of the knees.
msg-item-hip_ortolani-yes = a clunk: the hip goes in
msg-item-hip_ortolani-no = no clunk; a dislocated hip is not excluded

msg-item-hip_barlow-short = Lead inward and push back (Barlow)
msg-item-hip_barlow-purpose = To find a hip that lies in the joint and can be pushed out. In the first three months of life.
msg-item-hip_barlow-how = After the lift. The infant calm, hips and knees bent 90. Thumb on the inner thigh, lead the thigh inward and push very lightly back along it. One hip at a time, once.
msg-item-hip_barlow-positive = The head is felt to slip out.
msg-item-hip_barlow-care = Once and lightly, never repeated: repeating loosens the hip. Not over three months. Not where an infection or a fracture is open.
msg-item-hip_barlow-errors = A click without movement is a tendon; a crying child holds it.
msg-item-hip_barlow-otherwise = Over three months: abduction with the hip bent 90 and the height of the knees.
msg-item-hip_barlow-yes = the hip slips out
msg-item-hip_barlow-no = the hip does not slip out; an unstable hip is not excluded

msg-item-hip_knee_height_lower-short = Knee lower, hips and knees bent (Galeazzi)
msg-item-hip_knee_height_lower-purpose = To see a dislocated hip in an infant, and to tell thigh from shin in unequal legs.
msg-item-hip_knee_height_lower-how = Lying on the back, pelvis flat and level, hips and knees bent 90, feet together on the couch or held level. Look from the foot end: which knee stands lower. Look from the side: which stands further forward, for the thigh bone.
msg-item-hip_knee_height_lower-positive = The knee of this side stands lower than the other.
msg-item-hip_knee_height_lower-care = Not after an injury with a fracture or dislocation open. Lower in an infant: image the hip.
msg-item-hip_knee_height_lower-errors = Pelvis tilted or feet not level; both hips out of joint stand alike.
msg-item-hip_knee_height_lower-otherwise = On the lap, half lying. Who cannot bend both: lost.
msg-item-hip_knee_height_lower-yes = this knee stands lower
msg-item-hip_knee_height_lower-no = this knee does not stand lower; both hips may still be out

msg-item-hip_infant_creases_uneven-short = Folds of buttock and thigh uneven (infant)
msg-item-hip_infant_creases_uneven-purpose = A weak sign of a hip not formed well; common in sound infants.
msg-item-hip_infant_creases_uneven-how = Look at the folds of groin, buttock and thigh, the infant held face down and on the back, legs together. Yes when number or height differs.
msg-item-hip_infant_creases_uneven-errors = Read alone it misleads: go by abduction and knee height.
msg-item-hip_infant_creases_uneven-otherwise = Held face down over the arm or the lap.
msg-item-hip_infant_creases_uneven-yes = folds of RIGHT and LEFT not alike; no side is part of the question
msg-item-hip_infant_creases_uneven-no = folds even; a dislocated hip is not excluded
