# What the catalogue says of pelvis, groin and low back, with the tests of the adductors: label, purpose, technique, what counts, when not, what goes wrong often, how else.
# A dot in a message name is a dash here. Language: English. Reviewed by: nobody yet.

msg-item-hip_adductor_squeeze_0-short = Squeeze of the knees, hips at 0
msg-item-hip_adductor_squeeze_0-purpose = To bring out groin pain from the adductors or the pubic bone.
msg-item-hip_adductor_squeeze_0-how = Lying on the back, legs straight, your forearm or fist between the ankles or knees: say which. Squeeze hard for 5 seconds. Say which side hurts, and how much from 0 to 10; up to 2 go on, 3 to 5 with caution, 6 or more stop (working steps).
msg-item-hip_adductor_squeeze_0-positive = The familiar pain in the groin.
msg-item-hip_adductor_squeeze_0-care = Not after a fall or injury until imaged, not with a slip or an infection of the hip open. Not with a fracture of the pubic bone or a stress fracture open.
msg-item-hip_adductor_squeeze_0-errors = It names the region, not the structure. A half-hearted squeeze does not hurt.
msg-item-hip_adductor_squeeze_0-otherwise = Half sitting. One leg missing, or large thighs: a folded pillow between the thighs, or the single leg against your hand.
msg-item-hip_adductor_squeeze_0-yes = familiar groin pain on the squeeze
msg-item-hip_adductor_squeeze_0-no = no familiar groin pain on the squeeze

msg-item-hip_adductor_squeeze_45-short = Squeeze of the knees, hips at 45
msg-item-hip_adductor_squeeze_45-purpose = To bring out groin pain from the adductors or the pubic bone.
msg-item-hip_adductor_squeeze_45-how = Lying on the back, hips bent 45, feet flat, your fist between the knees. Squeeze hard for 5 seconds. Say which side hurts, and how much from 0 to 10; up to 2 go on, 3 to 5 with caution, 6 or more stop (working steps).
msg-item-hip_adductor_squeeze_45-positive = The familiar pain in the groin.
msg-item-hip_adductor_squeeze_45-care = Not after a fall or injury until imaged, not with a slip or an infection of the hip open. Not with a fracture of the pubic bone or a stress fracture open.
msg-item-hip_adductor_squeeze_45-errors = It names the region, not the structure. A half-hearted squeeze does not hurt.
msg-item-hip_adductor_squeeze_45-otherwise = Half sitting. One leg missing, or large thighs: a folded pillow between the thighs, or the single leg against your hand.
msg-item-hip_adductor_squeeze_45-yes = familiar groin pain on the squeeze
msg-item-hip_adductor_squeeze_45-no = no familiar groin pain on the squeeze

msg-item-hip_adductor_squeeze_90-short = Squeeze of the knees, hips at 90
msg-item-hip_adductor_squeeze_90-purpose = To bring out groin pain from the adductors or the pubic bone.
msg-item-hip_adductor_squeeze_90-how = Lying on the back, hips and knees bent 90, shins carried, your fist between the knees. Squeeze hard for 5 seconds. Say which side hurts, and how much from 0 to 10; up to 2 go on, 3 to 5 with caution, 6 or more stop (working steps).
msg-item-hip_adductor_squeeze_90-positive = The familiar pain in the groin.
msg-item-hip_adductor_squeeze_90-care = Not after a fall or injury until imaged, not with a slip or an infection of the hip open. Not with a fracture of the pubic bone or a stress fracture open.
msg-item-hip_adductor_squeeze_90-errors = It names the region, not the structure. A half-hearted squeeze does not hurt.
msg-item-hip_adductor_squeeze_90-otherwise = Half sitting. One leg missing, or large thighs: a folded pillow between the thighs, or the single leg against your hand.
msg-item-hip_adductor_squeeze_90-yes = familiar groin pain on the squeeze
msg-item-hip_adductor_squeeze_90-no = no familiar groin pain on the squeeze

msg-item-hip_adductor_squeeze_pressure_0-short = Squeeze of the knees, pressure, hips at 0
msg-item-hip_adductor_squeeze_pressure_0-purpose = To follow it from visit to visit.
msg-item-hip_adductor_squeeze_pressure_0-how = As the squeeze with the hips at 0, a folded cuff between the knees, filled a little first: say to what. The highest pressure reached; the best of up to three.
msg-item-hip_adductor_squeeze_pressure_0-care = Not after a fall or injury until imaged, not with a slip or an infection of the hip open. Not with a fracture of the pubic bone or a stress fracture open.
msg-item-hip_adductor_squeeze_pressure_0-errors = Another fill of the cuff gives another number; both legs push, so it has no side.
msg-item-hip_adductor_squeeze_pressure_0-otherwise = No cuff: pain alone. One leg missing: lost.

msg-item-hip_adductor_squeeze_pressure_45-short = Squeeze of the knees, pressure, hips at 45
msg-item-hip_adductor_squeeze_pressure_45-purpose = To follow it from visit to visit.
msg-item-hip_adductor_squeeze_pressure_45-how = As the squeeze with the hips at 45, a folded cuff between the knees, filled a little first: say to what. The highest pressure reached; the best of up to three.
msg-item-hip_adductor_squeeze_pressure_45-care = Not after a fall or injury until imaged, not with a slip or an infection of the hip open. Not with a fracture of the pubic bone or a stress fracture open.
msg-item-hip_adductor_squeeze_pressure_45-errors = Another fill of the cuff gives another number; both legs push, so it has no side.
msg-item-hip_adductor_squeeze_pressure_45-otherwise = No cuff: pain alone. One leg missing: lost.

msg-item-hip_adductor_squeeze_pressure_90-short = Squeeze of the knees, pressure, hips at 90
msg-item-hip_adductor_squeeze_pressure_90-purpose = To follow it from visit to visit.
msg-item-hip_adductor_squeeze_pressure_90-how = As the squeeze with the hips at 90, a folded cuff between the knees, filled a little first: say to what. The highest pressure reached; the best of up to three.
msg-item-hip_adductor_squeeze_pressure_90-care = Not after a fall or injury until imaged, not with a slip or an infection of the hip open. Not with a fracture of the pubic bone or a stress fracture open.
msg-item-hip_adductor_squeeze_pressure_90-errors = Another fill of the cuff gives another number; both legs push, so it has no side.
msg-item-hip_adductor_squeeze_pressure_90-otherwise = No cuff: pain alone. One leg missing: lost.

msg-item-hip_resisted_adduction-short = Resisted adduction, one leg
msg-item-hip_resisted_adduction-purpose = For one leg alone, where squeezing is not possible.
msg-item-hip_resisted_adduction-how = Lying on the back, leg straight, slightly outward; the person pushes it inward against your hand at the inner ankle or knee: say which.
msg-item-hip_resisted_adduction-positive = The familiar pain in the groin.
msg-item-hip_resisted_adduction-care = Not after a fall or injury until imaged, not with a slip or an infection of the hip open. Not with a fracture of the pubic bone or a stress fracture open.
msg-item-hip_resisted_adduction-errors = The hip benders help.
msg-item-hip_resisted_adduction-otherwise = On the tested side, lifting the lower leg against the hand; or seated, knee pushed inward.
msg-item-hip_resisted_adduction-yes = familiar groin pain
msg-item-hip_resisted_adduction-no = no familiar groin pain

msg-item-hip_resisted_adduction_outer_range-short = Resisted adduction, leg far out
msg-item-hip_resisted_adduction_outer_range-purpose = To load a freshly strained adductor.
msg-item-hip_resisted_adduction_outer_range-how = Lying on the back, the straight leg led outward as far as comfort lets; the person pushes it inward against your hand.
msg-item-hip_resisted_adduction_outer_range-positive = The familiar pain in the groin.
msg-item-hip_resisted_adduction_outer_range-care = Not after a fall or injury until imaged, not with a slip or an infection of the hip open. Not with a fracture of the pubic bone or a stress fracture open; the origin may be torn off after a pop.
msg-item-hip_resisted_adduction_outer_range-errors = Not far enough out.
msg-item-hip_resisted_adduction_outer_range-otherwise = Half sitting; on the side it is lost.
msg-item-hip_resisted_adduction_outer_range-yes = familiar groin pain
msg-item-hip_resisted_adduction_outer_range-no = no familiar groin pain

msg-item-hip_adductor_stretch-short = Stretch of the adductors
msg-item-hip_adductor_stretch-purpose = To stretch a freshly strained adductor.
msg-item-hip_adductor_stretch-how = Lying on the back, pelvis held, the straight leg led outward to the end and a little further, slowly.
msg-item-hip_adductor_stretch-positive = The familiar pain in the groin or inner thigh.
msg-item-hip_adductor_stretch-care = Not after a fall or injury until imaged, not with a slip or an infection of the hip open. Not with a replaced hip.
msg-item-hip_adductor_stretch-errors = Pain at the outer side is a pinch, not a stretch.
msg-item-hip_adductor_stretch-otherwise = Half sitting, or seated with the knees let apart.
msg-item-hip_adductor_stretch-yes = familiar pain in groin or inner thigh
msg-item-hip_adductor_stretch-no = no familiar pain in groin or inner thigh

msg-item-pelvis_crest_level_standing-short = Iliac crests, standing
msg-item-pelvis_crest_level_standing-purpose = To see unequal legs, a tilted or turned pelvis.
msg-item-pelvis_crest_level_standing-how = Stand or sit behind, eyes level. Hands flat on the flanks, press in and down on to the crests. Knees straight, feet together under the hips, weight on both. This side: level with the other, higher, or lower.
msg-item-pelvis_crest_level_standing-care = Not where standing is withheld.
msg-item-pelvis_crest_level_standing-errors = A bent knee, weight on one leg, a spine that leans, another thickness of fat. Level crests make unequal legs less to be expected and leave them not excluded.
msg-item-pelvis_crest_level_standing-otherwise = Who cannot stand: seated for the pelvis alone; the legs are then measured with the tape. With one limb, with the prosthesis on.

msg-item-pelvis_asis_level_standing-short = Front spines of the pelvis, standing
msg-item-pelvis_asis_level_standing-purpose = To see unequal legs, a tilted or turned pelvis.
msg-item-pelvis_asis_level_standing-how = Sit in front, eyes level. Thumbs hooked under both front spines from below. Knees straight, feet together under the hips, weight on both. This side: level with the other, higher, or lower.
msg-item-pelvis_asis_level_standing-care = Not where standing is withheld.
msg-item-pelvis_asis_level_standing-errors = A bent knee, weight on one leg, a spine that leans, another thickness of fat. Level crests make unequal legs less to be expected and leave them not excluded.
msg-item-pelvis_asis_level_standing-otherwise = Who cannot stand: seated for the pelvis alone; the legs are then measured with the tape. With one limb, with the prosthesis on.

msg-item-pelvis_psis_level_standing-short = Back dimples of the pelvis, standing
msg-item-pelvis_psis_level_standing-purpose = To see unequal legs, a tilted or turned pelvis.
msg-item-pelvis_psis_level_standing-how = Sit behind, eyes level. Thumbs under the bony points of the dimples beside the sacrum. Knees straight, feet together under the hips, weight on both. This side: level with the other, higher, or lower.
msg-item-pelvis_psis_level_standing-care = Not where standing is withheld.
msg-item-pelvis_psis_level_standing-errors = A bent knee, weight on one leg, a spine that leans, another thickness of fat. Level crests make unequal legs less to be expected and leave them not excluded.
msg-item-pelvis_psis_level_standing-otherwise = Who cannot stand: seated for the pelvis alone; the legs are then measured with the tape. With one limb, with the prosthesis on.

msg-item-pelvis_block_height_standing-short = Blocks that level the pelvis
msg-item-pelvis_block_height_standing-purpose = The better way to measure unequal legs in one who stands.
msg-item-pelvis_block_height_standing-how = Standing, knees straight. Blocks under the lower side, in steps of 5 mm, until the crests are level. The side is the foot on the blocks. Twice, mean of both.
msg-item-pelvis_block_height_standing-care = Not where standing is withheld. Within reach of a rail.
msg-item-pelvis_block_height_standing-errors = Levelled by a bent knee; a fixed hip or a curved spine keeps the crests uneven and is not length.
msg-item-pelvis_block_height_standing-otherwise = Who cannot stand: the tape, lying; it names the wrong leg more often.

msg-item-pelvis_crest_tender-short = Iliac crest tender
msg-item-pelvis_crest_tender-purpose = A blow, a pulled muscle, or in the growing a sore growth plate.
msg-item-pelvis_crest_tender-how = Run a finger along the rim from front to back, both sides. The better side first. Yes for tenderness of the bone.
msg-item-pelvis_crest_tender-care = After a blow of high energy, in shock or not fully awake: press and rock nothing; a binder at the height of the trochanters. After a small fall, in one awake: one finger, lightly. In the growing, after a sudden pop: once, and film first.
msg-item-pelvis_crest_tender-errors = Muscle or skin beside it is pressed; somebody tender everywhere is tender here too.
msg-item-pelvis_crest_tender-otherwise = Lying on the side or seated leaning forward for who cannot lie face down.

msg-item-pelvis_asis_tender-short = Front spine of the pelvis tender
msg-item-pelvis_asis_tender-purpose = In the growing, after a sprint, the bone may be pulled off.
msg-item-pelvis_asis_tender-how = The front end of the crest: one finger, both sides. The better side first. Yes for tenderness of the bone.
msg-item-pelvis_asis_tender-care = After a blow of high energy, in shock or not fully awake: press and rock nothing; a binder at the height of the trochanters. After a small fall, in one awake: one finger, lightly. In the growing, after a sudden pop: once, and film first.
msg-item-pelvis_asis_tender-errors = Muscle or skin beside it is pressed; somebody tender everywhere is tender here too.
msg-item-pelvis_asis_tender-otherwise = Half sitting for who cannot lie flat; a heavy belly is held up by the helper.

msg-item-pelvis_aiis_tender-short = Lower front spine of the pelvis tender
msg-item-pelvis_aiis_tender-purpose = The origin of the long thigh muscle: pulled off in the growing after a kick, sore in others.
msg-item-pelvis_aiis_tender-how = Hip slightly bent and slack; deep, below the front spine. Both sides. The better side first. Yes for tenderness of the bone.
msg-item-pelvis_aiis_tender-care = After a blow of high energy, in shock or not fully awake: press and rock nothing; a binder at the height of the trochanters. After a small fall, in one awake: one finger, lightly. In the growing, after a sudden pop: once, and film first.
msg-item-pelvis_aiis_tender-errors = Muscle or skin beside it is pressed; somebody tender everywhere is tender here too.
msg-item-pelvis_aiis_tender-otherwise = Half sitting for who cannot lie flat; a heavy belly is held up by the helper.

msg-item-pelvis_pubic_tubercle_tender-short = Pubic tubercle tender
msg-item-pelvis_pubic_tubercle_tender-purpose = Groin pain from the pubic bone; a hernia comes out above and inward of it.
msg-item-pelvis_pubic_tubercle_tender-how = Slide inward along the fold of the groin to the bony point beside the middle. Both sides. The better side first. Yes for tenderness of the bone.
msg-item-pelvis_pubic_tubercle_tender-care = After a blow of high energy, in shock or not fully awake: press and rock nothing; a binder at the height of the trochanters. After a small fall, in one awake: one finger, lightly.
msg-item-pelvis_pubic_tubercle_tender-errors = Muscle or skin beside it is pressed; somebody tender everywhere is tender here too.
msg-item-pelvis_pubic_tubercle_tender-otherwise = Half sitting for who cannot lie flat; a heavy belly is held up by the helper. Offer a chaperone; the person may guide the finger.

msg-item-pelvis_symphysis_tender-short = Joint of the pubic bones tender
msg-item-pelvis_symphysis_tender-purpose = Pain in those who kick, after childbirth or late in pregnancy; a break or a gap after an injury.
msg-item-pelvis_symphysis_tender-how = One finger in the middle, above the private parts; feel for a step or gap. Yes for tenderness of the bone.
msg-item-pelvis_symphysis_tender-care = After a blow of high energy, in shock or not fully awake: press and rock nothing; a binder at the height of the trochanters. After a small fall, in one awake: one finger, lightly.
msg-item-pelvis_symphysis_tender-errors = Muscle or skin beside it is pressed; somebody tender everywhere is tender here too.
msg-item-pelvis_symphysis_tender-otherwise = Half sitting for who cannot lie flat; a heavy belly is held up by the helper. Offer a chaperone; the person may guide the finger.

msg-item-pelvis_pubic_ramus_tender-short = Branch of the pubic bone tender
msg-item-pelvis_pubic_ramus_tender-purpose = The commonest break of the pelvis in an older person after a fall, and a stress fracture in a runner.
msg-item-pelvis_pubic_ramus_tender-how = From the pubic tubercle outward and down, with one finger, lightly. Both sides. The better side first. Yes for tenderness of the bone.
msg-item-pelvis_pubic_ramus_tender-care = After a blow of high energy, in shock or not fully awake: press and rock nothing; a binder at the height of the trochanters. After a small fall, in one awake: one finger, lightly.
msg-item-pelvis_pubic_ramus_tender-errors = Muscle or skin beside it is pressed; somebody tender everywhere is tender here too.
msg-item-pelvis_pubic_ramus_tender-otherwise = Half sitting for who cannot lie flat; a heavy belly is held up by the helper. Offer a chaperone; the person may guide the finger.

msg-item-pelvis_psis_tender-short = Back dimple of the pelvis tender
msg-item-pelvis_psis_tender-purpose = Pain of the sacroiliac joint or sent from the back; tender alone it says little.
msg-item-pelvis_psis_tender-how = The dimple beside the sacrum and the groove inward of it. Both sides. The better side first. Yes for tenderness of the bone.
msg-item-pelvis_psis_tender-care = After a blow of high energy, in shock or not fully awake: press and rock nothing; a binder at the height of the trochanters. After a small fall, in one awake: one finger, lightly. Not turned for it where a fracture or a dislocation of the hip is open.
msg-item-pelvis_psis_tender-errors = Muscle or skin beside it is pressed; somebody tender everywhere is tender here too.
msg-item-pelvis_psis_tender-otherwise = Lying on the side or seated leaning forward for who cannot lie face down.

msg-item-pelvis_sacrum_tender-short = Sacrum tender
msg-item-pelvis_sacrum_tender-purpose = A break after a fall, or by itself in weak bone.
msg-item-pelvis_sacrum_tender-how = In the middle from the dimples down to the cleft, one finger, feeling for a step. Yes for tenderness of the bone.
msg-item-pelvis_sacrum_tender-care = After a blow of high energy, in shock or not fully awake: press and rock nothing; a binder at the height of the trochanters. After a small fall, in one awake: one finger, lightly. Not turned for it where a fracture or a dislocation of the hip is open.
msg-item-pelvis_sacrum_tender-errors = Muscle or skin beside it is pressed; somebody tender everywhere is tender here too.
msg-item-pelvis_sacrum_tender-otherwise = Lying on the side or seated leaning forward for who cannot lie face down.

msg-item-pelvis_coccyx_tender-short = Tail bone tender
msg-item-pelvis_coccyx_tender-purpose = A bruise or a break after a fall on the seat.
msg-item-pelvis_coccyx_tender-how = From outside, through the cleft, the last bones, one finger. Yes for tenderness of the bone.
msg-item-pelvis_coccyx_tender-care = After a blow of high energy, in shock or not fully awake: press and rock nothing; a binder at the height of the trochanters. After a small fall, in one awake: one finger, lightly. Not turned for it where a fracture or a dislocation of the hip is open.
msg-item-pelvis_coccyx_tender-errors = Muscle or skin beside it is pressed; somebody tender everywhere is tender here too.
msg-item-pelvis_coccyx_tender-otherwise = Lying on the side, or standing bent over the couch, for who cannot lie face down. Offer a chaperone; the person may guide the finger.

msg-item-pelvis_groin_lump-short = Lump in the groin
msg-item-pelvis_groin_lump-purpose = Groin pain may be a hernia, a node or a vessel.
msg-item-pelvis_groin_lump-how = Look, standing, then ask for a cough; then feel, lying. None; comes with a cough or goes back (hernia); a node; throbs; another lump. The largest one; where it lies and whether it is hard, red or tender in the remark.
msg-item-pelvis_groin_lump-care = A lump that throbs is not pressed. Hard, tender, red and not going back, with vomiting: at once. Offer a chaperone. Not where a fracture of the pelvis is open.
msg-item-pelvis_groin_lump-errors = Lying alone hides a hernia; small nodes on both sides are common in those who go barefoot.
msg-item-pelvis_groin_lump-otherwise = Who cannot or may not stand: lying, with a cough. Through thin clothing, where undressing is declined; say so.

msg-item-pelvis_abdomen_look-short = Belly, look and feel
msg-item-pelvis_abdomen_look-purpose = Pain of hip, groin or thigh, and a child's limp, may come from the belly.
msg-item-pelvis_abdomen_look-how = Lying, knees bent, belly bare and slack. Look, then a flat hand in all four quarters, the sore one last: swollen, tender, held hard, a mass, a full bladder above the pubic bone. All that are found.
msg-item-pelvis_abdomen_look-care = Held hard and tender: the same day. A full bladder that does not empty, with back or leg signs: at once. After a blow of high energy look only at the pelvis.
msg-item-pelvis_abdomen_look-errors = A cold hand makes it hard.
msg-item-pelvis_abdomen_look-otherwise = Half sitting; a child on the lap. From about the 20th week of pregnancy with a left tilt.

msg-item-pelvis_scrotum_tender-short = Testis tender or swollen
msg-item-pelvis_scrotum_tender-purpose = A boy's limp or groin pain may be a twisted testis.
msg-item-pelvis_scrotum_tender-how = With leave, and a parent or chaperone present: look, then feel gently. Yes for a tender, swollen or high testis of this side.
msg-item-pelvis_scrotum_tender-care = Sudden pain with a high tender testis: at once; within hours it is lost. Who declines: ask, and write that it was not examined.
msg-item-pelvis_scrotum_tender-errors = Ashamed boys name the groin or the belly.
msg-item-pelvis_scrotum_tender-otherwise = The person points and describes, where touch is declined.
msg-item-pelvis_scrotum_tender-yes = tender, swollen or high
msg-item-pelvis_scrotum_tender-no = not tender, not swollen, not high

msg-item-pelvis_lumbar_look-short = Back, look
msg-item-pelvis_lumbar_look-purpose = Pain of hip and leg, and a child's limp, may come from the back.
msg-item-pelvis_lumbar_look-how = Back bare, from behind and from the side: curved; leaning to one side; flat and held stiff; too hollow; a step between two bones; a hairy patch, dimple or mark in the middle; a scar. All that are seen.
msg-item-pelvis_lumbar_look-care = A child who holds the back stiff and will not bend: the same day.
msg-item-pelvis_lumbar_look-errors = Unequal legs curve the back when standing: look again seated.
msg-item-pelvis_lumbar_look-otherwise = Seated or on the side for who cannot or may not stand; an infant on the lap.

msg-item-pelvis_lumbar_tender-short = Back bones tender
msg-item-pelvis_lumbar_tender-purpose = To find a break, an infection or a growth behind leg pain.
msg-item-pelvis_lumbar_tender-how = Standing, face down or on the side: one finger on each bony point of the low back, then a light knock with the fist. Yes for tenderness of bone.
msg-item-pelvis_lumbar_tender-care = After a fall from a height or a crash: no knocking and no bending; keep the back still. With fever, cancer or night pain: the same day. Weak bone with sudden pain: press, do not knock. Not where a fracture of the pelvis is open.
msg-item-pelvis_lumbar_tender-errors = Muscle beside the middle is sore in most with back pain.
msg-item-pelvis_lumbar_tender-otherwise = On the side or seated leaning forward for who cannot or may not stand.

msg-item-pelvis_lumbar_flexion-short = Back, bending forward
msg-item-pelvis_lumbar_flexion-purpose = A quick look, no measurement.
msg-item-pelvis_lumbar_flexion-how = Standing, knees straight, the person bends forward as far as comfort lets; look from the side whether the low back rounds or only the hips bend. Full; some; hardly any.
msg-item-pelvis_lumbar_flexion-care = Stay within reach. Not after an injury of the back until imaged, nor where standing is withheld.
msg-item-pelvis_lumbar_flexion-errors = Stiff hips or short hamstrings stop it, and the back is blamed.
msg-item-pelvis_lumbar_flexion-otherwise = Seated on a stool for who cannot stand.

msg-item-pelvis_lumbar_flexion_leg_pain-short = Leg pain on bending forward
msg-item-pelvis_lumbar_flexion_leg_pain-purpose = To ask whether leg pain comes from the back.
msg-item-pelvis_lumbar_flexion_leg_pain-how = Standing, knees straight, the person bends forward as far as comfort lets; look from the side whether the low back rounds or only the hips bend. Yes when the familiar pain of this leg comes or spreads further down.
msg-item-pelvis_lumbar_flexion_leg_pain-care = Stop at leg pain. Saddle numbness, a bladder that changed or both legs weak: at once. Not after an injury of the back until imaged. Not where standing is withheld.
msg-item-pelvis_lumbar_flexion_leg_pain-errors = A pull behind the thigh is the hamstrings.
msg-item-pelvis_lumbar_flexion_leg_pain-otherwise = Seated on a stool for who cannot stand.
msg-item-pelvis_lumbar_flexion_leg_pain-yes = leg pain comes or spreads down
msg-item-pelvis_lumbar_flexion_leg_pain-no = no leg pain

msg-item-pelvis_lumbar_extension-short = Back, bending backward
msg-item-pelvis_lumbar_extension-purpose = A quick look, no measurement.
msg-item-pelvis_lumbar_extension-how = Standing, hands on the buttocks, the person leans back as far as comfort lets; your hand behind the shoulder. Full; some; hardly any.
msg-item-pelvis_lumbar_extension-care = Stay within reach. Not after an injury of the back until imaged, nor where standing is withheld.
msg-item-pelvis_lumbar_extension-errors = A knee that bends or a pelvis pushed forward looks like the back; hips that do not straighten stop it.
msg-item-pelvis_lumbar_extension-otherwise = Seated on a stool for who cannot stand. Bending backward seated shows less.

msg-item-pelvis_lumbar_extension_leg_pain-short = Leg pain on bending backward
msg-item-pelvis_lumbar_extension_leg_pain-purpose = To ask whether leg pain comes from the back.
msg-item-pelvis_lumbar_extension_leg_pain-how = Standing, hands on the buttocks, the person leans back as far as comfort lets; your hand behind the shoulder. Yes when the familiar pain of this leg comes or spreads further down.
msg-item-pelvis_lumbar_extension_leg_pain-care = Stay within reach. Stop at leg pain. Saddle numbness, a bladder that changed or both legs weak: at once. Not after an injury of the back until imaged. Not where standing is withheld.
msg-item-pelvis_lumbar_extension_leg_pain-errors = Pain of the back alone, or a pull at the front of the hip, is not this.
msg-item-pelvis_lumbar_extension_leg_pain-otherwise = Seated on a stool for who cannot stand.
msg-item-pelvis_lumbar_extension_leg_pain-yes = leg pain comes or spreads down
msg-item-pelvis_lumbar_extension_leg_pain-no = no leg pain

msg-item-pelvis_lumbar_pain_centralises-short = Pain draws toward the middle with repeated bending
msg-item-pelvis_lumbar_pain_centralises-purpose = Done before the sacroiliac set: where the pain draws in, that set does not count.
msg-item-pelvis_lumbar_pain_centralises-how = The person bends backward, then forward, several times each, standing or face down on the forearms; ask after each where the pain is. Yes when the lowest pain draws up toward the middle of the back and stays there.
msg-item-pelvis_lumbar_pain_centralises-care = Stop when leg pain spreads down. Not after an injury of the back until imaged. Not where standing is withheld. Not face down from about the 20th week of pregnancy.
msg-item-pelvis_lumbar_pain_centralises-errors = Less pain at the same place is not this.
msg-item-pelvis_lumbar_pain_centralises-otherwise = Who cannot stand or lie face down: seated bending; less is known of it.
msg-item-pelvis_lumbar_pain_centralises-yes = pain draws toward the middle: the sacroiliac set does not count
msg-item-pelvis_lumbar_pain_centralises-no = pain does not draw toward the middle

msg-item-pelvis_distraction-short = Pressing the front spines apart
msg-item-pelvis_distraction-purpose = One of a set for pain of the sacroiliac joint: done together and counted.
msg-item-pelvis_distraction-how = Lying on the back, a cushion under the knees. Heels of the hands on the front spines, arms crossed, press outward and back. Hold 5 to 30 seconds, the force rising; the side is where the familiar pain is.
msg-item-pelvis_distraction-positive = The familiar pain over the sacroiliac joint of this side.
msg-item-pelvis_distraction-care = Not after any recent injury of the pelvis, not with great pain in pregnancy, not with weak bone and acute pain, not with an infection open.
msg-item-pelvis_distraction-errors = A back with a disc lesion answers as well: bend repeatedly first. A sore hip hurts in the groin. Only the familiar pain counts; one of the set alone says little.
msg-item-pelvis_distraction-otherwise = Small hands or a large person: straight arms, lean with the body. Who cannot lie flat: half sitting is weak; leave it and use the others.
msg-item-pelvis_distraction-yes = familiar pain over the sacroiliac joint of this side
msg-item-pelvis_distraction-no = no familiar pain over the sacroiliac joint of this side

msg-item-pelvis_thigh_thrust-short = Push down the upright thigh (sacroiliac)
msg-item-pelvis_thigh_thrust-purpose = One of a set for pain of the sacroiliac joint: done together and counted.
msg-item-pelvis_thigh_thrust-how = Lying on the back, hip bent 90, knee bent, the thigh straight up and not led across. A hand under the sacrum, the other arm round the knee: push down along the thigh bone. The side is the thigh that is pushed. Hold 5 to 30 seconds, the force rising.
msg-item-pelvis_thigh_thrust-positive = The familiar pain over the sacroiliac joint of this side.
msg-item-pelvis_thigh_thrust-care = Not after any recent injury of the pelvis, not with great pain in pregnancy, not with weak bone and acute pain, not with an infection open. Not with a replaced hip.
msg-item-pelvis_thigh_thrust-errors = A back with a disc lesion answers as well: bend repeatedly first. A sore hip hurts in the groin. Only the familiar pain counts; one of the set alone says little.
msg-item-pelvis_thigh_thrust-otherwise = Small hands: chest on the knee, body weight. Heavy leg: a helper carries it. Who cannot lie flat: compression on the side.
msg-item-pelvis_thigh_thrust-yes = familiar pain over the sacroiliac joint of this side
msg-item-pelvis_thigh_thrust-no = no familiar pain over the sacroiliac joint of this side

msg-item-pelvis_compression-short = Pressing the upper crest down
msg-item-pelvis_compression-purpose = One of a set for pain of the sacroiliac joint: done together and counted.
msg-item-pelvis_compression-how = Lying on the side, hips and knees bent, a pillow between the knees. Press straight down on the upper crest. Hold 5 to 30 seconds, the force rising; the side is where the familiar pain is.
msg-item-pelvis_compression-positive = The familiar pain over the sacroiliac joint of this side.
msg-item-pelvis_compression-care = Not after any recent injury of the pelvis, not with great pain in pregnancy, not with weak bone and acute pain, not with an infection open. A frail person does not lie on a painful hip.
msg-item-pelvis_compression-errors = A back with a disc lesion answers as well: bend repeatedly first. A sore hip hurts in the groin. Only the familiar pain counts; one of the set alone says little.
msg-item-pelvis_compression-otherwise = A large person: the forearm. Small hands: straight arms, body weight. Who cannot lie on the side: pressing the front spines apart.
msg-item-pelvis_compression-yes = familiar pain over the sacroiliac joint of this side
msg-item-pelvis_compression-no = no familiar pain over the sacroiliac joint of this side

msg-item-pelvis_sacral_thrust-short = Pressing the sacrum forward
msg-item-pelvis_sacral_thrust-purpose = One of a set for pain of the sacroiliac joint: done together and counted.
msg-item-pelvis_sacral_thrust-how = Face down. The heel of a hand on the middle of the sacrum, press straight forward. Hold 5 to 30 seconds, the force rising; the side is where the familiar pain is.
msg-item-pelvis_sacral_thrust-positive = The familiar pain over the sacroiliac joint of this side.
msg-item-pelvis_sacral_thrust-care = Not after any recent injury of the pelvis, not with great pain in pregnancy, not with weak bone and acute pain, not with an infection open. Not face down from about the 20th week of pregnancy.
msg-item-pelvis_sacral_thrust-errors = A back with a disc lesion answers as well: bend repeatedly first. A sore hip hurts in the groin. Only the familiar pain counts; one of the set alone says little.
msg-item-pelvis_sacral_thrust-otherwise = Who cannot lie face down: leave it and count the others; pain behind in the figure four may stand in for it.
msg-item-pelvis_sacral_thrust-yes = familiar pain over the sacroiliac joint of this side
msg-item-pelvis_sacral_thrust-no = no familiar pain over the sacroiliac joint of this side

msg-item-pelvis_gaenslen-short = One knee to the chest, other thigh over the edge (Gaenslen)
msg-item-pelvis_gaenslen-purpose = One of a set for pain of the sacroiliac joint: done together and counted.
msg-item-pelvis_gaenslen-how = Lying on the back near the edge. The person holds one knee to the chest; the thigh of the tested side hangs over the edge and is pressed gently down while you press the held knee. Once with each leg over the edge: the side is the thigh that hangs. Hold 5 to 30 seconds, the force rising.
msg-item-pelvis_gaenslen-positive = The familiar sacroiliac pain, whichever leg hangs; the side of the pain in the remark.
msg-item-pelvis_gaenslen-care = Not after any recent injury of the pelvis, not with great pain in pregnancy, not with weak bone and acute pain, not with an infection open. Not with a replaced hip. One hand on the person: falls happen here.
msg-item-pelvis_gaenslen-errors = A back with a disc lesion answers as well: bend repeatedly first. A sore hip hurts in the groin. Only the familiar pain counts; one of the set alone says little.
msg-item-pelvis_gaenslen-otherwise = Heavy limb or unsteady at the edge: on the side, lower knee held to the chest, the upper thigh led back. Who can lie neither way: leave it and count the others.
msg-item-pelvis_gaenslen-yes = familiar sacroiliac pain, this thigh hanging
msg-item-pelvis_gaenslen-no = no familiar sacroiliac pain, this thigh hanging

msg-item-pelvis_injury_pain-short = Pain in the pelvis after an injury
msg-item-pelvis_injury_pain-purpose = Asking comes before touching.
msg-item-pelvis_injury_pain-how = In one who is awake and has no other great pain: ask for pain in groin, hips, low back, sacrum. Touch nothing yet.
msg-item-pelvis_injury_pain-care = Yes: binder at the height of the trochanters, knees and feet together, moved on a scoop, no rolling. No in one who is not fully awake, or with another great pain, tells nothing.
msg-item-pelvis_injury_pain-errors = Pain is named in the back or the leg.
msg-item-pelvis_injury_pain-otherwise = As found, in the position the person lies in; nobody is turned or lifted for it.
msg-item-pelvis_injury_pain-yes = pain in the pelvis
msg-item-pelvis_injury_pain-no = no pain in the pelvis; a fracture is not excluded

msg-item-pelvis_injury_deformity-short = Pelvis or leg out of shape after an injury
msg-item-pelvis_injury_deformity-purpose = To see an unstable ring without touching it.
msg-item-pelvis_injury_deformity-how = Look only: a crest higher or turned, one leg short or turned without a break of its own, a gap at the front.
msg-item-pelvis_injury_deformity-care = Yes: binder at the height of the trochanters, knees and feet together, moved on a scoop, no rolling.
msg-item-pelvis_injury_deformity-errors = A broken thigh also shortens the leg.
msg-item-pelvis_injury_deformity-otherwise = As found, in the position the person lies in; nobody is turned or lifted for it.
msg-item-pelvis_injury_deformity-yes = out of shape
msg-item-pelvis_injury_deformity-no = not out of shape; a fracture is not excluded

msg-item-pelvis_perineum_bruise-short = Bruise between the legs or on the flank
msg-item-pelvis_perineum_bruise-purpose = Blood from a broken ring tracks here.
msg-item-pelvis_perineum_bruise-how = Look, when the clothes are cut: between the legs, the scrotum or lips, both flanks. Nothing is spread or turned.
msg-item-pelvis_perineum_bruise-care = Yes: binder at the height of the trochanters, knees and feet together, moved on a scoop, no rolling. Offer a chaperone.
msg-item-pelvis_perineum_bruise-errors = It comes after hours: look again.
msg-item-pelvis_perineum_bruise-otherwise = As found, in the position the person lies in; nobody is turned or lifted for it.
msg-item-pelvis_perineum_bruise-yes = bruise seen
msg-item-pelvis_perineum_bruise-no = no bruise seen; a fracture is not excluded

msg-item-pelvis_blood_at_meatus-short = Blood where the urine comes
msg-item-pelvis_blood_at_meatus-purpose = A torn urethra goes with a broken ring.
msg-item-pelvis_blood_at_meatus-how = Look only. Yes for fresh blood at the opening.
msg-item-pelvis_blood_at_meatus-care = Yes: binder at the height of the trochanters, knees and feet together, moved on a scoop, no rolling. No catheter before a surgeon has seen it.
msg-item-pelvis_blood_at_meatus-errors = A monthly bleeding in a woman.
msg-item-pelvis_blood_at_meatus-otherwise = As found, in the position the person lies in; nobody is turned or lifted for it.
msg-item-pelvis_blood_at_meatus-yes = blood seen
msg-item-pelvis_blood_at_meatus-no = no blood seen; an injury is not excluded

msg-item-pelvis_ring_tender_light-short = Pelvic ring tender to one light finger
msg-item-pelvis_ring_tender_light-purpose = After a small fall, in one who is awake and steady.
msg-item-pelvis_ring_tender_light-how = One finger, lightly, on both pubic branches, both crests, the sacrum and the tail bone. Yes when any is tender; which in the remark.
msg-item-pelvis_ring_tender_light-care = After a blow of high energy, in shock or not fully awake: press and rock nothing; a binder at the height of the trochanters. Not where a fracture of the pelvis is already open. Never spring or rock the pelvis, and never test it by hand for looseness: it tells little and may start the bleeding again. Yes: no sacroiliac set, no squat, no hop, no turning of the leg until imaged.
msg-item-pelvis_ring_tender_light-errors = A bruise of the skin; no tenderness counts only in one who is awake and has no other great pain.
msg-item-pelvis_ring_tender_light-otherwise = The back points last, rolled only so far as comfort lets, or felt with a flat hand slid under.
msg-item-pelvis_ring_tender_light-yes = tender at one point or more
msg-item-pelvis_ring_tender_light-no = not tender; a fracture is not excluded while it hurts or cannot be stood on
