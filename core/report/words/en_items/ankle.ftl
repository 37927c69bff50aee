# What the catalogue says of the ankle: look, feel, move: label, technique, what counts, when not, what goes wrong often.
# A dot in a message name is a dash here. Language: English. Reviewed by: nobody yet.

msg-item-ankle_look_deformity-short = Ankle out of shape after injury
msg-item-ankle_look_deformity-how = Look from the front and the back, the other ankle beside it. Yes for a foot that stands off to one side, back or forward, or turned.
msg-item-ankle_look_deformity-purpose = A dislocated or broken ankle is seen first.
msg-item-ankle_look_deformity-care = Yes: pulses, feeling and the skin over the bone at once; no test of motion or ligament.
msg-item-ankle_look_deformity-errors = A large swelling at the outer side looks like a deformity; an old one: ask.
msg-item-ankle_look_deformity-otherwise = As the person sits or lies. One limb: ask how it was before.
msg-item-ankle_look_deformity-yes = out of shape, newly
msg-item-ankle_look_deformity-no = not out of shape

msg-item-ankle_skin_tented-short = Skin over the ankle stretched or white
msg-item-ankle_skin_tented-how = Look at the skin over both ankle bones and the front after an injury. Yes where bone lifts it, or where it is white and stays so.
msg-item-ankle_skin_tented-purpose = Skin over a displaced bone dies within hours.
msg-item-ankle_skin_tented-care = Yes: now. Whoever is trained and permitted straightens it once; otherwise splint as found, and pulses again afterwards.
msg-item-ankle_skin_tented-errors = On dark skin white is seen late: compare, press and watch the colour come back.
msg-item-ankle_skin_tented-otherwise = As the person sits or lies.
msg-item-ankle_skin_tented-yes = lifted by bone, or white
msg-item-ankle_skin_tented-no = not lifted and not white

msg-item-ankle_swelling_lateral-short = Swelling at the outer ankle
msg-item-ankle_swelling_lateral-how = Both feet side by side, from the front and the back. Yes for fullness in front of and below the outer ankle bone, more than on the other side.
msg-item-ankle_swelling_lateral-purpose = Where it is swollen tells which ligaments were hurt; none at the outer side in the first two days speaks against a complete tear there.
msg-item-ankle_swelling_lateral-errors = Old thick ankles; swelling of both legs. A full heel-cord hollow on both sides of the tendon is fluid in the joint.
msg-item-ankle_swelling_lateral-otherwise = Seated, lying or standing, both feet alike. One limb: ask how it was before.
msg-item-ankle_swelling_lateral-yes = fuller than the other side
msg-item-ankle_swelling_lateral-no = not fuller than the other side

msg-item-ankle_swelling_medial-short = Swelling at the inner ankle
msg-item-ankle_swelling_medial-how = Both feet side by side, from the front and the back. Yes for fullness below the inner ankle bone, more than on the other side.
msg-item-ankle_swelling_medial-purpose = Swollen at the inner side too: the inner ligament or a break; press the inner bone and the whole fibula.
msg-item-ankle_swelling_medial-errors = Old thick ankles; swelling of both legs. A full heel-cord hollow on both sides of the tendon is fluid in the joint.
msg-item-ankle_swelling_medial-otherwise = Seated, lying or standing, both feet alike. One limb: ask how it was before.
msg-item-ankle_swelling_medial-yes = fuller than the other side
msg-item-ankle_swelling_medial-no = not fuller than the other side

msg-item-ankle_haematoma-short = Bruise at the outer ankle
msg-item-ankle_haematoma-how = Look at the outer side of ankle and foot down to the sole. Yes for blue, purple or yellow skin.
msg-item-ankle_haematoma-purpose = With tenderness at the front ligament and a drawer, four to five days after a sprain, it speaks for a torn ligament.
msg-item-ankle_haematoma-errors = A bruise sinks: on the third day it stands at the edge of the sole. On dark skin look for a darker or shiny patch. A bruise of the SOLE is another sign: midfoot.
msg-item-ankle_haematoma-otherwise = Any position. Blood thinners make a large bruise from little.
msg-item-ankle_haematoma-yes = bruised
msg-item-ankle_haematoma-no = no bruise seen

msg-item-ankle_crescent_bruise-short = Crescent bruise under the ankle bones
msg-item-ankle_crescent_bruise-how = Look below both ankle bones, from the inner and the outer side. Yes for a bruise in the shape of a crescent, without an injury of the ankle.
msg-item-ankle_crescent_bruise-purpose = After sudden pain in the calf: a burst cyst behind the knee, or a torn calf muscle; the blood sinks.
msg-item-ankle_crescent_bruise-care = A burst cyst looks like a clot, and both may be there: a yes leaves a clot not excluded; ask what a clot rule asks, or have a scan.
msg-item-ankle_crescent_bruise-errors = An ankle sprain of some days ago. On dark skin look for a darker or shiny patch.
msg-item-ankle_crescent_bruise-otherwise = Any position. Blood thinners make a large bruise from little.
msg-item-ankle_crescent_bruise-yes = crescent bruise
msg-item-ankle_crescent_bruise-no = no crescent bruise seen

msg-item-ankle_hot_red-short = Ankle hot or red
msg-item-ankle_hot_red-how = Back of the hand on both ankles, front and sides, then shin and foot. Yes when warmer than the other, or red.
msg-item-ankle_hot_red-purpose = Infection, gout, a Charcot foot, a flare of joint disease.
msg-item-ankle_hot_red-care = Hot and hardly moving, or a replaced joint newly hot and painful: the same day. Hot, swollen, little pain in somebody with numb feet: no more walking on it until it is looked into.
msg-item-ankle_hot_red-errors = On dark skin redness is not seen: feel. Both ankles hot; a fresh sprain is warm too.
msg-item-ankle_hot_red-otherwise = Any position. One limb: compare with the shin above.
msg-item-ankle_hot_red-yes = warmer than the other side, or red
msg-item-ankle_hot_red-no = not warmer, not red

msg-item-ankle_pain_malleolar_zone-short = Pain in the zone of the ankle bones
msg-item-ankle_pain_malleolar_zone-how = Ask and let it be shown with one finger: pain at or around either ankle bone, from the last 6 cm of shin and fibula down to the front of the ankle.
msg-item-ankle_pain_malleolar_zone-purpose = The ankle part of the Ottawa rules begins with it.
msg-item-ankle_pain_malleolar_zone-errors = Pain of the midfoot is the other zone; both may hurt. Tender without pain: check the record.
msg-item-ankle_pain_malleolar_zone-otherwise = Any position. Who cannot answer: not reliable, the rule then stays open.
msg-item-ankle_pain_malleolar_zone-yes = pain in the zone
msg-item-ankle_pain_malleolar_zone-no = no pain in the zone

msg-item-ankle_lateral_malleolus_tender-short = Outer ankle bone tender: back edge or tip
msg-item-ankle_lateral_malleolus_tender-how = Press bone, not the soft parts in front: with the pad of the thumb along the BACK edge of the outer ankle bone, the whole of the last 6 cm, and then its tip. Begin above, away from the pain.
msg-item-ankle_lateral_malleolus_tender-purpose = One of the points of the Ottawa ankle rule.
msg-item-ankle_lateral_malleolus_tender-care = Yes and not imaged: no drawer, tilt, twist, heel rise or hop.
msg-item-ankle_lateral_malleolus_tender-errors = The ligament in front of the tip pressed instead of the bone; only the tip pressed; the front edge pressed. Gross swelling, drink, a numb leg or a worse pain elsewhere: record not reliable.
msg-item-ankle_lateral_malleolus_tender-otherwise = { -bone_otherwise }
msg-item-ankle_lateral_malleolus_tender-yes = tender here
msg-item-ankle_lateral_malleolus_tender-no = not tender here

msg-item-ankle_medial_malleolus_tender-short = Inner ankle bone tender: back edge or tip
msg-item-ankle_medial_malleolus_tender-how = Press bone, not the soft parts in front: with the pad of the thumb along the BACK edge of the inner ankle bone, the whole of the last 6 cm, and then its tip. Begin above, away from the pain.
msg-item-ankle_medial_malleolus_tender-purpose = One of the points of the Ottawa ankle rule. The inner side is often forgotten.
msg-item-ankle_medial_malleolus_tender-care = Yes and not imaged: no drawer, tilt, twist, heel rise or hop.
msg-item-ankle_medial_malleolus_tender-errors = The ligament in front of the tip pressed instead of the bone; only the tip pressed; the front edge pressed. Gross swelling, drink, a numb leg or a worse pain elsewhere: record not reliable.
msg-item-ankle_medial_malleolus_tender-otherwise = { -bone_otherwise }
msg-item-ankle_medial_malleolus_tender-yes = tender here
msg-item-ankle_medial_malleolus_tender-no = not tender here

msg-item-ankle_atfl_tender-short = Front outer ligament tender (ATFL)
msg-item-ankle_atfl_tender-how = Seated or lying, foot relaxed. One fingertip in the soft spot 1 to 2 cm in front of and below the tip of the outer ankle bone.
msg-item-ankle_atfl_tender-purpose = Sprain of the first ligament to tear. Nearly every sprain is tender here: no pain here speaks against, pain says little.
msg-item-ankle_atfl_tender-care = After the bone. One finger, once; the other ankle first.
msg-item-ankle_atfl_tender-errors = { -press_errors }
msg-item-ankle_atfl_tender-otherwise = { -press_otherwise }
msg-item-ankle_atfl_tender-yes = tender here
msg-item-ankle_atfl_tender-no = not tender here

msg-item-ankle_cfl_tender-short = Outer heel ligament tender (CFL)
msg-item-ankle_cfl_tender-how = Foot bent up a little. One fingertip just below and behind the tip of the outer ankle bone, toward the heel.
msg-item-ankle_cfl_tender-purpose = The second ligament to fail.
msg-item-ankle_cfl_tender-care = After the bone. One finger, once; the other ankle first.
msg-item-ankle_cfl_tender-errors = { -press_errors }
msg-item-ankle_cfl_tender-otherwise = { -press_otherwise }
msg-item-ankle_cfl_tender-yes = tender here
msg-item-ankle_cfl_tender-no = not tender here

msg-item-ankle_ptfl_tender-short = Back outer ligament tender (PTFL)
msg-item-ankle_ptfl_tender-how = One fingertip in the hollow behind the outer ankle bone, toward the heel cord, the tendons pushed aside.
msg-item-ankle_ptfl_tender-purpose = Seldom hurt alone; pain behind the ankle after a bad sprain.
msg-item-ankle_ptfl_tender-care = After the bone. One finger, once; the other ankle first.
msg-item-ankle_ptfl_tender-errors = { -press_errors }
msg-item-ankle_ptfl_tender-otherwise = { -press_otherwise }
msg-item-ankle_ptfl_tender-yes = tender here
msg-item-ankle_ptfl_tender-no = not tender here

msg-item-ankle_aitfl_tender-short = Upper front ligament tender (AITFL)
msg-item-ankle_aitfl_tender-how = One fingertip in the groove between shin and fibula, just above the joint line at the front outer side.
msg-item-ankle_aitfl_tender-purpose = The ligament between shin and fibula: a sprain high up heals slower. No pain here speaks against it.
msg-item-ankle_aitfl_tender-care = Yes with a swollen inner side or a tender upper fibula: film of the whole lower leg before any twist.
msg-item-ankle_aitfl_tender-errors = { -press_errors }
msg-item-ankle_aitfl_tender-otherwise = { -press_otherwise }
msg-item-ankle_aitfl_tender-yes = tender here
msg-item-ankle_aitfl_tender-no = not tender here

msg-item-ankle_aitfl_tender_length-short = Tender upward from the fibular tip
msg-item-ankle_aitfl_tender_length-how = Seated or lying. From the tip of the outer ankle bone press every finger's breadth upward along the front groove between shin and fibula, until it no longer hurts. Tape from the tip to the last tender point. 0 where nothing hurts.
msg-item-ankle_aitfl_tender_length-purpose = How far up the tenderness reaches goes with a longer recovery; it tells the course, not what is torn.
msg-item-ankle_aitfl_tender_length-care = Tender to the neck of the fibula: film of the whole lower leg.
msg-item-ankle_aitfl_tender_length-errors = Measured from the joint line instead of the tip; a blow on the shin.
msg-item-ankle_aitfl_tender_length-otherwise = Seated, lying or on the side the same; the person can hold the end of the tape.

msg-item-ankle_deltoid_tender-short = Inner ligament tender (deltoid)
msg-item-ankle_deltoid_tender-how = One fingertip in the fan below the inner ankle bone, front, middle and back.
msg-item-ankle_deltoid_tender-purpose = Sprain of the inner side; together with a break or tear of the outer side the ankle may give way.
msg-item-ankle_deltoid_tender-care = Yes with a tender outer bone, or a tender upper fibula: leave the foot unloaded until it is filmed.
msg-item-ankle_deltoid_tender-errors = { -press_errors }
msg-item-ankle_deltoid_tender-otherwise = { -press_otherwise }
msg-item-ankle_deltoid_tender-yes = tender here
msg-item-ankle_deltoid_tender-no = not tender here

msg-item-ankle_anterior_gutter_tender-short = Front outer corner of the joint tender
msg-item-ankle_anterior_gutter_tender-how = Foot pointed down a little. One fingertip at the joint line just outside the tendons that lift the toes.
msg-item-ankle_anterior_gutter_tender-purpose = Caught or thickened lining after sprains; tender at the joint line, not at the ligament.
msg-item-ankle_anterior_gutter_tender-care = After the bone. One finger, once; the other ankle first.
msg-item-ankle_anterior_gutter_tender-errors = { -press_errors }
msg-item-ankle_anterior_gutter_tender-otherwise = { -press_otherwise }
msg-item-ankle_anterior_gutter_tender-yes = tender here
msg-item-ankle_anterior_gutter_tender-no = not tender here

msg-item-ankle_sinus_tarsi_tender-short = Outer pit of the hindfoot tender (sinus tarsi)
msg-item-ankle_sinus_tarsi_tender-how = One fingertip in the pit in front of and below the outer ankle bone, the foot turned in a little.
msg-item-ankle_sinus_tarsi_tender-purpose = Sprain of the joint under the ankle, or a stiff hindfoot from birth.
msg-item-ankle_sinus_tarsi_tender-care = After the bone. One finger, once; the other ankle first.
msg-item-ankle_sinus_tarsi_tender-errors = { -press_errors }
msg-item-ankle_sinus_tarsi_tender-otherwise = { -press_otherwise }
msg-item-ankle_sinus_tarsi_tender-yes = tender here
msg-item-ankle_sinus_tarsi_tender-no = not tender here

msg-item-ankle_peroneal_tendons_tender-short = Peroneal tendons tender, behind the outer ankle bone
msg-item-ankle_peroneal_tendons_tender-how = Along the two tendons from behind the outer ankle bone to the base of the fifth metatarsal, slack and then while the person turns the foot out. Yes for the familiar pain; fullness in the remark.
msg-item-ankle_peroneal_tendons_tender-purpose = Overuse, a tear, or tendons that jump.
msg-item-ankle_peroneal_tendons_tender-care = After an injury the bone edge first: it lies right in front of the tendons.
msg-item-ankle_peroneal_tendons_tender-errors = { -press_errors }
msg-item-ankle_peroneal_tendons_tender-otherwise = { -press_otherwise }
msg-item-ankle_peroneal_tendons_tender-yes = tender here
msg-item-ankle_peroneal_tendons_tender-no = not tender here

msg-item-ankle_posterior_tibial_tendon_tender-short = Posterior tibial tendon tender, inner ankle bone
msg-item-ankle_posterior_tibial_tendon_tender-how = Along the tendon from behind the inner ankle bone to the navicular, slack and then while the person turns the foot in. Yes for the familiar pain; fullness in the remark.
msg-item-ankle_posterior_tibial_tendon_tender-purpose = Weakness of the tendon that holds the arch.
msg-item-ankle_posterior_tibial_tendon_tender-care = After an injury the bone edge first.
msg-item-ankle_posterior_tibial_tendon_tender-errors = { -press_errors }
msg-item-ankle_posterior_tibial_tendon_tender-otherwise = { -press_otherwise }
msg-item-ankle_posterior_tibial_tendon_tender-yes = tender here
msg-item-ankle_posterior_tibial_tendon_tender-no = not tender here

msg-item-ankle_posterior_tibial_oedema-short = Posterior tibial oedema: pitting along the tendon only
msg-item-ankle_posterior_tibial_oedema-how = Seated or lying. Press with a finger along the tendon from behind the inner ankle bone to the navicular, some seconds each; then the shin and the outer side the same.
msg-item-ankle_posterior_tibial_oedema-purpose = Weakness of the tendon that holds the arch.
msg-item-ankle_posterior_tibial_oedema-positive = A pit along the tendon and not elsewhere.
msg-item-ankle_posterior_tibial_oedema-care = Lightly where a clot is open.
msg-item-ankle_posterior_tibial_oedema-errors = Pits over the whole foot: a vein, the heart, the kidneys. Pressed too short.
msg-item-ankle_posterior_tibial_oedema-otherwise = Seated, lying or on the side the same. Both legs swollen: cannot be read, record as unsure.
msg-item-ankle_posterior_tibial_oedema-yes = pits along the inner tendon only
msg-item-ankle_posterior_tibial_oedema-no = no pit along the tendon, or pits elsewhere too

msg-item-ankle_achilles_midportion_tender-short = Heel cord tender, 2 to 6 cm above the heel
msg-item-ankle_achilles_midportion_tender-how = Pinch the tendon gently between finger and thumb from the heel up to the muscle, the other side first. Yes for the familiar pain in the stretch of 2 to 6 cm above the heel.
msg-item-ankle_achilles_midportion_tender-purpose = Disease of the middle of the tendon.
msg-item-ankle_achilles_midportion_tender-care = After a sudden pain behind the ankle look for a gap and squeeze the calf first. New on both sides: ask after quinolone antibiotics and steroids.
msg-item-ankle_achilles_midportion_tender-errors = { -press_errors }
msg-item-ankle_achilles_midportion_tender-otherwise = Cannot lie on the front: seated, on the side, or on the back with the foot turned; one hand is enough. One limb: compare with the tendon above.
msg-item-ankle_achilles_midportion_tender-yes = tender here
msg-item-ankle_achilles_midportion_tender-no = not tender here

msg-item-ankle_achilles_tender_height-short = Tender place above the heel bone
msg-item-ankle_achilles_tender_height-how = Tape or ruler from the upper edge of the heel bone to the most tender place of the heel cord.
msg-item-ankle_achilles_tender_height-purpose = Tells the middle of the tendon from its end at the bone; to find the same place again.
msg-item-ankle_achilles_tender_height-errors = Measured from the sole.
msg-item-ankle_achilles_tender_height-otherwise = Any position in which the tendon can be reached.

msg-item-ankle_achilles_thickened-short = Heel cord thicker than the other
msg-item-ankle_achilles_thickened-how = Pinch both tendons at the same height. Yes for a spindle or a lump.
msg-item-ankle_achilles_thickened-purpose = Disease of the tendon; a fat deposit where it is on both sides.
msg-item-ankle_achilles_thickened-errors = Both thick feels even. A swelling of the sheath stays where it is when the foot moves.
msg-item-ankle_achilles_thickened-otherwise = Any position in which both tendons can be reached. One limb: compare with the part above and below.
msg-item-ankle_achilles_thickened-yes = thicker, or a lump in it
msg-item-ankle_achilles_thickened-no = not thicker

msg-item-ankle_achilles_insertion_tender-short = End of the heel cord tender at the bone
msg-item-ankle_achilles_insertion_tender-how = Press the middle and both edges of the tendon where it meets the heel bone. Yes for the familiar pain.
msg-item-ankle_achilles_insertion_tender-purpose = Disease at the bone; in a growing person the growth plate of the heel.
msg-item-ankle_achilles_insertion_tender-errors = { -press_errors }
msg-item-ankle_achilles_insertion_tender-otherwise = Cannot lie on the front: seated, on the side or on the back, foot turned.
msg-item-ankle_achilles_insertion_tender-yes = tender here
msg-item-ankle_achilles_insertion_tender-no = not tender here

msg-item-ankle_achilles_insertion_lump-short = Lump at the back of the heel
msg-item-ankle_achilles_insertion_lump-how = Look from the side and the back, feel the upper outer edge of the heel bone. Yes for a lump that the other side has not, or that shoes rub.
msg-item-ankle_achilles_insertion_lump-purpose = A prominent heel bone, or a thickened end of the tendon.
msg-item-ankle_achilles_insertion_lump-errors = Many have it without pain.
msg-item-ankle_achilles_insertion_lump-otherwise = Standing, seated or lying; both heels in one view.
msg-item-ankle_achilles_insertion_lump-yes = a lump
msg-item-ankle_achilles_insertion_lump-no = no lump

msg-item-ankle_retrocalcaneal_tender-short = In front of the heel cord, above the heel: tender
msg-item-ankle_retrocalcaneal_tender-how = Finger and thumb in the soft space in front of the tendon, just above the heel bone, from both sides.
msg-item-ankle_retrocalcaneal_tender-purpose = The bursa between tendon and bone.
msg-item-ankle_retrocalcaneal_tender-errors = { -press_errors }
msg-item-ankle_retrocalcaneal_tender-otherwise = Any position; one hand is enough.
msg-item-ankle_retrocalcaneal_tender-yes = tender here
msg-item-ankle_retrocalcaneal_tender-no = not tender here

msg-item-ankle_achilles_gap-short = Gap in the heel cord
msg-item-ankle_achilles_gap-how = Face down with the foot over the edge, calf slack. Run a finger along the tendon from the heel bone upward; the tear is most often 2 to 6 cm above the heel. Yes for a dip.
msg-item-ankle_achilles_gap-purpose = A torn heel cord. One of three signs; the squeeze of the calf counts most.
msg-item-ankle_achilles_gap-care = Lightly. No foot bent up to make it wider. No gap leaves a tear not excluded: do the calf squeeze.
msg-item-ankle_achilles_gap-errors = Swelling fills it; after two to three weeks it is filled. The other tendons behind the ankle cross it.
msg-item-ankle_achilles_gap-otherwise = Cannot lie on the front: on the side with the knee bent, seated sideways, or kneeling on a chair facing its back. One limb: compare with the part above.
msg-item-ankle_achilles_gap-yes = a dip in the tendon
msg-item-ankle_achilles_gap-no = no dip felt

msg-item-ankle_calf_squeeze-short = Calf squeeze (Simmonds-Thompson)
msg-item-ankle_calf_squeeze-how = Face down, feet over the edge of the couch. Squeeze the bulk of the calf once with one hand, below its widest part, and watch the foot; the other side first. It moves down as far as on the other side, less, or not at all.
msg-item-ankle_calf_squeeze-purpose = Whether the heel cord is torn. The first test after a sudden pain behind the ankle, and part of every sprain.
msg-item-ankle_calf_squeeze-positive = The foot does not move down. Less than the other side counts as unsure: look at the foot's rest with bent knees and for a gap.
msg-item-ankle_calf_squeeze-care = Once. Moving or pointing the foot, walking, even a heel rise leave a torn cord not excluded. No movement at all: the same day; splint with the toes down, and no heel rise. Where a clot is open: lightly.
msg-item-ankle_calf_squeeze-errors = The long toe muscles and the thin tendon beside it move the foot a little. Squeezed too low, or foot not free of the edge. A tear of some weeks may have grown together long.
msg-item-ankle_calf_squeeze-otherwise = Cannot lie on the front: kneeling on a stool or a chair facing its back, feet free; on the side with the knee bent; seated with the legs hanging; or on the back with hip and knee at 90, squeezed from above. Small hands, big calf: both hands, or the cuff. One limb: what is seen stands alone.

msg-item-ankle_matles-short = Matles: feet at rest, knees bent, face down
msg-item-ankle_matles-how = Face down, the person bends both knees to 90. Look from the side at how the feet hang: pointing a little down on both sides.
msg-item-ankle_matles-purpose = Whether the heel cord is torn, without touching it.
msg-item-ankle_matles-positive = The foot of the hurt side falls to a right angle or further up.
msg-item-ankle_matles-care = Nothing is pushed. No fall leaves a tear not excluded.
msg-item-ankle_matles-errors = Ankle stiff; the person holds the foot; knees not at 90; both tendons torn.
msg-item-ankle_matles-otherwise = Cannot lie on the front: the calf squeeze. On the side or on the back the weight of the foot does not pull it up, and no fall there says nothing. Knee that does not bend: the calf squeeze alone.
msg-item-ankle_matles-yes = the foot falls to a right angle or up
msg-item-ankle_matles-no = the foot points down as the other

msg-item-ankle_calf_cuff_pressure-short = Cuff on the calf, foot bent up (Copeland)
msg-item-ankle_calf_cuff_pressure-how = Face down, knee bent to 90. Cuff round the bulk of the calf, filled to 100 mm Hg with the foot pointing down; then the foot is bent up gently, once. Write the reading reached: it should rise to about 140 where the cord holds, and hardly rises where it is torn. Compare with the other side.
msg-item-ankle_calf_cuff_pressure-purpose = Whether the heel cord is torn, for small hands or a big calf.
msg-item-ankle_calf_cuff_pressure-care = Not over a leg that may hold a clot, nor a hard leg; the foot bent up only as far as it goes without force.
msg-item-ankle_calf_cuff_pressure-errors = Cuff too low; calf tense before. Figures from memory: the difference of the two sides counts.
msg-item-ankle_calf_cuff_pressure-otherwise = Cannot lie on the front: on the side, knee bent. No cuff: both hands round the calf.

msg-item-ankle_achilles_arc_sign-short = Arc sign: the thick place moves with the tendon
msg-item-ankle_achilles_arc_sign-how = Mark the thickest place of the heel cord between two fingers; the person moves the foot slowly up and down.
msg-item-ankle_achilles_arc_sign-purpose = Tells a diseased tendon (it moves) from a diseased sheath (it stays).
msg-item-ankle_achilles_arc_sign-positive = The thick place moves with the foot.
msg-item-ankle_achilles_arc_sign-care = Not where the tendon may be torn.
msg-item-ankle_achilles_arc_sign-errors = No thick place: it cannot be judged, record not done. Fingers slide with the skin.
msg-item-ankle_achilles_arc_sign-otherwise = Cannot lie on the front: on the side, or seated with the leg on a stool.
msg-item-ankle_achilles_arc_sign-yes = the thick place moves with the tendon
msg-item-ankle_achilles_arc_sign-no = the thick place stays, or none is felt

msg-item-ankle_achilles_tender_in_dorsiflexion-short = Tender spot with the foot bent up (Royal London)
msg-item-ankle_achilles_tender_in_dorsiflexion-how = Find the tender spot with the foot relaxed. The person bends the foot fully up; press the same spot again.
msg-item-ankle_achilles_tender_in_dorsiflexion-purpose = Disease of the middle of the tendon: the tender spot hurts less when the tendon is tight.
msg-item-ankle_achilles_tender_in_dorsiflexion-positive = Less pain or none on pressing with the foot bent up.
msg-item-ankle_achilles_tender_in_dorsiflexion-care = Not where the tendon may be torn: no bending up.
msg-item-ankle_achilles_tender_in_dorsiflexion-errors = Read the other way round on one teaching page; here LESS pain counts. Another spot pressed.
msg-item-ankle_achilles_tender_in_dorsiflexion-otherwise = Cannot lie on the front: seated or on the side.
msg-item-ankle_achilles_tender_in_dorsiflexion-yes = hurts less with the foot bent up
msg-item-ankle_achilles_tender_in_dorsiflexion-no = hurts as much with the foot bent up

msg-item-ankle_dorsiflexion_active_knee_bent-short = Ankle dorsiflexion, active, knee bent
msg-item-ankle_dorsiflexion_active_knee_bent-how = Seated with the leg hanging, or lying, knee bent to 90. The person bends the foot up as far as it goes. Goniometer: centre below the outer ankle bone, one arm along the fibula, the other along the outer edge of the foot. 0 is the foot at a right angle to the shin. Not reaching it is negative.
msg-item-ankle_dorsiflexion_active_knee_bent-purpose = How far the ankle itself lets the foot come up, the outer calf muscle slack.
msg-item-ankle_dorsiflexion_active_knee_bent-care = Not with a torn heel cord open: the foot is not bent up.
msg-item-ankle_dorsiflexion_active_knee_bent-errors = Middle of the foot bends instead of the ankle; heel let fall outward; knee another bend than last time.
msg-item-ankle_dorsiflexion_active_knee_bent-otherwise = Seated or lying: the knee's bend decides, not the position. The other bend of the knee is a quantity of its own. Heavy foot or small hands: forearm under the sole. Fused ankle: not done, fused.

msg-item-ankle_dorsiflexion_active_knee_straight-short = Ankle dorsiflexion, active, knee straight
msg-item-ankle_dorsiflexion_active_knee_straight-how = Lying on the back or seated with the leg on the couch, knee straight. The person bends the foot up as far as it goes. Goniometer: centre below the outer ankle bone, one arm along the fibula, the other along the outer edge of the foot. 0 is the foot at a right angle to the shin. Not reaching it is negative.
msg-item-ankle_dorsiflexion_active_knee_straight-purpose = How far the calf lets the foot come up.
msg-item-ankle_dorsiflexion_active_knee_straight-care = Not with a torn heel cord open: the foot is not bent up.
msg-item-ankle_dorsiflexion_active_knee_straight-errors = Middle of the foot bends instead of the ankle; heel let fall outward; knee another bend than last time.
msg-item-ankle_dorsiflexion_active_knee_straight-otherwise = Seated or lying: the knee's bend decides, not the position. The other bend of the knee is a quantity of its own. Heavy foot or small hands: forearm under the sole. Fused ankle: not done, fused.

msg-item-ankle_dorsiflexion_passive_knee_bent-short = Ankle dorsiflexion, passive, knee bent
msg-item-ankle_dorsiflexion_passive_knee_bent-how = Seated with the leg hanging, or lying, knee bent to 90. Hold the heel upright in line with the shin, hand under the sole, and bend the foot up until it stops. Goniometer: centre below the outer ankle bone, one arm along the fibula, the other along the outer edge of the foot. 0 is the foot at a right angle to the shin. Not reaching it is negative.
msg-item-ankle_dorsiflexion_passive_knee_bent-purpose = How far the ankle itself lets the foot come up, the outer calf muscle slack.
msg-item-ankle_dorsiflexion_passive_knee_bent-care = Not forced, and not with a break or a torn heel cord open; once where a joint may be infected.
msg-item-ankle_dorsiflexion_passive_knee_bent-errors = Middle of the foot bends instead of the ankle; heel let fall outward; knee another bend than last time.
msg-item-ankle_dorsiflexion_passive_knee_bent-otherwise = Seated or lying: the knee's bend decides, not the position. The other bend of the knee is a quantity of its own. Heavy foot or small hands: forearm under the sole. Fused ankle: not done, fused.

msg-item-ankle_dorsiflexion_passive_knee_straight-short = Ankle dorsiflexion, passive, knee straight
msg-item-ankle_dorsiflexion_passive_knee_straight-how = Lying on the back or seated with the leg on the couch, knee straight. Hold the heel upright in line with the shin, hand under the sole, and bend the foot up until it stops. Goniometer: centre below the outer ankle bone, one arm along the fibula, the other along the outer edge of the foot. 0 is the foot at a right angle to the shin. Not reaching it is negative.
msg-item-ankle_dorsiflexion_passive_knee_straight-purpose = How far the calf lets the foot come up.
msg-item-ankle_dorsiflexion_passive_knee_straight-care = Not forced, and not with a break or a torn heel cord open; once where a joint may be infected. Not repeated where a clot is open.
msg-item-ankle_dorsiflexion_passive_knee_straight-errors = Middle of the foot bends instead of the ankle; heel let fall outward; knee another bend than last time.
msg-item-ankle_dorsiflexion_passive_knee_straight-otherwise = Seated or lying: the knee's bend decides, not the position. The other bend of the knee is a quantity of its own. Heavy foot or small hands: forearm under the sole. Fused ankle: not done, fused.

msg-item-ankle_plantarflexion_active_knee_bent-short = Ankle plantarflexion, active, knee bent
msg-item-ankle_plantarflexion_active_knee_bent-how = Seated with the leg hanging, or lying, knee bent to 90. The person bends the foot down as far as it goes. Goniometer: centre below the outer ankle bone, one arm along the fibula, the other along the outer edge of the foot. 0 is the foot at a right angle to the shin.
msg-item-ankle_plantarflexion_active_knee_bent-purpose = How far the foot points down.
msg-item-ankle_plantarflexion_active_knee_bent-errors = Toes curl and pull the reading on; middle of the foot bends.
msg-item-ankle_plantarflexion_active_knee_bent-otherwise = Seated or lying: the knee's bend decides, not the position. The other bend of the knee is a quantity of its own. Heavy foot or small hands: forearm under the sole. Fused ankle: not done, fused.

msg-item-ankle_plantarflexion_active_knee_straight-short = Ankle plantarflexion, active, knee straight
msg-item-ankle_plantarflexion_active_knee_straight-how = Lying on the back or seated with the leg on the couch, knee straight. The person bends the foot down as far as it goes. Goniometer: centre below the outer ankle bone, one arm along the fibula, the other along the outer edge of the foot. 0 is the foot at a right angle to the shin.
msg-item-ankle_plantarflexion_active_knee_straight-purpose = How far the foot points down with the knee straight; bending the knee changes it.
msg-item-ankle_plantarflexion_active_knee_straight-errors = Toes curl and pull the reading on; middle of the foot bends.
msg-item-ankle_plantarflexion_active_knee_straight-otherwise = Seated or lying: the knee's bend decides, not the position. The other bend of the knee is a quantity of its own. Heavy foot or small hands: forearm under the sole. Fused ankle: not done, fused.

msg-item-ankle_plantarflexion_passive_knee_bent-short = Ankle plantarflexion, passive, knee bent
msg-item-ankle_plantarflexion_passive_knee_bent-how = Seated with the leg hanging, or lying, knee bent to 90. Hold the heel, hand on the back of the foot, and bend it down until it stops. Goniometer: centre below the outer ankle bone, one arm along the fibula, the other along the outer edge of the foot. 0 is the foot at a right angle to the shin.
msg-item-ankle_plantarflexion_passive_knee_bent-purpose = How far the foot points down.
msg-item-ankle_plantarflexion_passive_knee_bent-care = Not forced, and not with a break open; once where a joint may be infected.
msg-item-ankle_plantarflexion_passive_knee_bent-errors = Toes curl and pull the reading on; middle of the foot bends.
msg-item-ankle_plantarflexion_passive_knee_bent-otherwise = Seated or lying: the knee's bend decides, not the position. The other bend of the knee is a quantity of its own. Heavy foot or small hands: forearm under the sole. Fused ankle: not done, fused.

msg-item-ankle_plantarflexion_passive_knee_straight-short = Ankle plantarflexion, passive, knee straight
msg-item-ankle_plantarflexion_passive_knee_straight-how = Lying on the back or seated with the leg on the couch, knee straight. Hold the heel, hand on the back of the foot, and bend it down until it stops. Goniometer: centre below the outer ankle bone, one arm along the fibula, the other along the outer edge of the foot. 0 is the foot at a right angle to the shin.
msg-item-ankle_plantarflexion_passive_knee_straight-purpose = How far the foot points down with the knee straight; bending the knee changes it.
msg-item-ankle_plantarflexion_passive_knee_straight-care = Not forced, and not with a break open; once where a joint may be infected.
msg-item-ankle_plantarflexion_passive_knee_straight-errors = Toes curl and pull the reading on; middle of the foot bends.
msg-item-ankle_plantarflexion_passive_knee_straight-otherwise = Seated or lying: the knee's bend decides, not the position. The other bend of the knee is a quantity of its own. Heavy foot or small hands: forearm under the sole. Fused ankle: not done, fused.

msg-item-ankle_arc_active_knee_bent-short = Plantarflexion - 0 - dorsiflexion, active, knee bent
msg-item-ankle_arc_active_knee_bent-how = Both ends as described for foot up and foot down, active, knee bent. Three numbers with a zero; say which direction stands first. A foot that does not reach the right angle has the zero at one end.
msg-item-ankle_arc_active_knee_bent-purpose = Both ends of the ankle in one neutral-zero entry.
msg-item-ankle_arc_active_knee_bent-care = Not with a torn heel cord open: the foot is not bent up.
msg-item-ankle_arc_active_knee_bent-otherwise = Seated or lying at the same bend of the knee.

msg-item-ankle_arc_active_knee_straight-short = Plantarflexion - 0 - dorsiflexion, active, knee straight
msg-item-ankle_arc_active_knee_straight-how = Both ends as described for foot up and foot down, active, knee straight. Three numbers with a zero; say which direction stands first. A foot that does not reach the right angle has the zero at one end.
msg-item-ankle_arc_active_knee_straight-purpose = Both ends of the ankle in one neutral-zero entry.
msg-item-ankle_arc_active_knee_straight-care = Not with a torn heel cord open: the foot is not bent up.
msg-item-ankle_arc_active_knee_straight-otherwise = Seated or lying at the same bend of the knee.

msg-item-ankle_arc_passive_knee_bent-short = Plantarflexion - 0 - dorsiflexion, passive, knee bent
msg-item-ankle_arc_passive_knee_bent-how = Both ends as described for foot up and foot down, passive, knee bent. Three numbers with a zero; say which direction stands first. A foot that does not reach the right angle has the zero at one end.
msg-item-ankle_arc_passive_knee_bent-purpose = Both ends of the ankle in one neutral-zero entry.
msg-item-ankle_arc_passive_knee_bent-care = Not forced, and not with a break or a torn heel cord open; once where a joint may be infected.
msg-item-ankle_arc_passive_knee_bent-otherwise = Seated or lying at the same bend of the knee.

msg-item-ankle_arc_passive_knee_straight-short = Plantarflexion - 0 - dorsiflexion, passive, knee straight
msg-item-ankle_arc_passive_knee_straight-how = Both ends as described for foot up and foot down, passive, knee straight. Three numbers with a zero; say which direction stands first. A foot that does not reach the right angle has the zero at one end.
msg-item-ankle_arc_passive_knee_straight-purpose = Both ends of the ankle in one neutral-zero entry.
msg-item-ankle_arc_passive_knee_straight-care = Not forced, and not with a break or a torn heel cord open; once where a joint may be infected. Not repeated where a clot is open.
msg-item-ankle_arc_passive_knee_straight-otherwise = Seated or lying at the same bend of the knee.

msg-item-ankle_dorsiflexion_lunge_distance-short = Weight-bearing lunge: toe to wall
msg-item-ankle_dorsiflexion_lunge_distance-how = Standing facing a wall, foot straight ahead and flat, great toe some way off. The knee is brought to the wall over the second toe, the heel stays down. Move the foot back until the heel would just lift. Tape from the great toe to the wall.
msg-item-ankle_dorsiflexion_lunge_distance-purpose = Bending up of the loaded ankle; needed for squatting, stairs and hills.
msg-item-ankle_dorsiflexion_lunge_distance-care = Not with a break, a stress fracture, a torn heel cord or knee tendon, a locked knee, an infected joint or a clot open, nor in the first days of a bad sprain. A hand on the wall.
msg-item-ankle_dorsiflexion_lunge_distance-errors = Heel lifts, foot rolls in, knee goes to the inner side of the great toe, the foot turned out.
msg-item-ankle_dorsiflexion_lunge_distance-otherwise = Cannot stand: the passive reading with the knee bent, which is another quantity. A knee that does not reach the wall even with the toe at it: record the angle.

msg-item-ankle_dorsiflexion_lunge_angle-short = Weight-bearing lunge: lean of the shin
msg-item-ankle_dorsiflexion_lunge_angle-how = As the lunge to the wall, at the last place where the heel stays down: inclinometer on the front of the shin below the tubercle, against upright.
msg-item-ankle_dorsiflexion_lunge_angle-purpose = The same lunge read as an angle; does not depend on the length of the leg.
msg-item-ankle_dorsiflexion_lunge_angle-care = Not with a break, a stress fracture, a torn heel cord or knee tendon, a locked knee, an infected joint or a clot open, nor in the first days of a bad sprain. A hand on the wall.
msg-item-ankle_dorsiflexion_lunge_angle-errors = Phone on the soft calf; heel lifts; foot rolls in; foot turned out.
msg-item-ankle_dorsiflexion_lunge_angle-otherwise = Cannot stand: the passive reading with the knee bent, which is another quantity.

msg-item-ankle_dorsiflexion_standing_knee_straight-short = Weight-bearing dorsiflexion, knee straight
msg-item-ankle_dorsiflexion_standing_knee_straight-how = Standing, hands on the wall, the foot behind straight ahead and flat, its knee straight. Lean forward until the heel would just lift. Inclinometer on the front of the shin, against upright.
msg-item-ankle_dorsiflexion_standing_knee_straight-purpose = Length of the calf under load.
msg-item-ankle_dorsiflexion_standing_knee_straight-care = Not with a break, a torn heel cord, an infected joint or a clot open.
msg-item-ankle_dorsiflexion_standing_knee_straight-errors = Knee bends; heel lifts; foot turned out.
msg-item-ankle_dorsiflexion_standing_knee_straight-otherwise = Cannot stand: the passive reading with the knee straight, which is another quantity.

msg-item-ankle_inversion_active-short = Inversion, whole foot, active
msg-item-ankle_inversion_active-how = Seated or lying, knee bent to 90 or over a roll, foot relaxed. The person turns the sole inward as far as it goes, the shin still. Goniometer on the front: centre between the ankle bones, one arm along the shin, the other along the second metatarsal.
msg-item-ankle_inversion_active-purpose = Turning of the whole foot: hindfoot and midfoot together.
msg-item-ankle_inversion_active-errors = The shin turns with it; foot pointed down in one reading and not in the other. Two examiners agree poorly: shown, seldom enough to decide.
msg-item-ankle_inversion_active-otherwise = Seated, lying or half sitting. Not the same as the heel on the shin, which is a quantity of its own.

msg-item-ankle_eversion_active-short = Eversion, whole foot, active
msg-item-ankle_eversion_active-how = Seated or lying, knee bent to 90 or over a roll, foot relaxed. The person turns the sole outward as far as it goes, the shin still. Goniometer on the front: centre between the ankle bones, one arm along the shin, the other along the second metatarsal.
msg-item-ankle_eversion_active-purpose = Turning of the whole foot: hindfoot and midfoot together.
msg-item-ankle_eversion_active-errors = The shin turns with it; foot pointed down in one reading and not in the other. Two examiners agree poorly: shown, seldom enough to decide.
msg-item-ankle_eversion_active-otherwise = Seated, lying or half sitting. Not the same as the heel on the shin, which is a quantity of its own.

msg-item-ankle_inversion_passive-short = Inversion, whole foot, passive
msg-item-ankle_inversion_passive-how = Seated or lying, knee bent to 90 or over a roll, foot relaxed. Hold the shin, take hold of the forefoot and turn the sole inward as far as it goes, the shin still. Goniometer on the front: centre between the ankle bones, one arm along the shin, the other along the second metatarsal.
msg-item-ankle_inversion_passive-purpose = Turning of the whole foot: hindfoot and midfoot together.
msg-item-ankle_inversion_passive-care = Not with a break open; once and gently in a fresh sprain. Passive turning in pulls on the outer ligaments.
msg-item-ankle_inversion_passive-errors = The shin turns with it; foot pointed down in one reading and not in the other. Two examiners agree poorly: shown, seldom enough to decide.
msg-item-ankle_inversion_passive-otherwise = Seated, lying or half sitting. Not the same as the heel on the shin, which is a quantity of its own.

msg-item-ankle_eversion_passive-short = Eversion, whole foot, passive
msg-item-ankle_eversion_passive-how = Seated or lying, knee bent to 90 or over a roll, foot relaxed. Hold the shin, take hold of the forefoot and turn the sole outward as far as it goes, the shin still. Goniometer on the front: centre between the ankle bones, one arm along the shin, the other along the second metatarsal.
msg-item-ankle_eversion_passive-purpose = Turning of the whole foot: hindfoot and midfoot together.
msg-item-ankle_eversion_passive-care = Not with a break open; once and gently in a fresh sprain. Passive turning out pulls on the inner ligament.
msg-item-ankle_eversion_passive-errors = The shin turns with it; foot pointed down in one reading and not in the other. Two examiners agree poorly: shown, seldom enough to decide.
msg-item-ankle_eversion_passive-otherwise = Seated, lying or half sitting. Not the same as the heel on the shin, which is a quantity of its own.

msg-item-ankle_arc_eversion_active-short = Inversion - 0 - eversion, whole foot, active
msg-item-ankle_arc_eversion_active-how = Both ends as described for turning in and out, active. Three numbers with a zero; say which direction stands first.
msg-item-ankle_arc_eversion_active-purpose = Both ends of the turning foot in one neutral-zero entry.
msg-item-ankle_arc_eversion_active-otherwise = Seated or lying.

msg-item-ankle_arc_eversion_passive-short = Inversion - 0 - eversion, whole foot, passive
msg-item-ankle_arc_eversion_passive-how = Both ends as described for turning in and out, passive. Three numbers with a zero; say which direction stands first.
msg-item-ankle_arc_eversion_passive-purpose = Both ends of the turning foot in one neutral-zero entry.
msg-item-ankle_arc_eversion_passive-care = Not with a break open.
msg-item-ankle_arc_eversion_passive-otherwise = Seated or lying.

msg-item-ankle_subtalar_inversion_passive-short = Subtalar inversion, passive (heel on the shin)
msg-item-ankle_subtalar_inversion_passive-how = Lying on the front, feet over the edge, foot at a right angle. Mark the middle line of the lower shin and of the heel. Hold the shin, take the heel in the other hand and turn it inward until it stops. The angle between the two lines.
msg-item-ankle_subtalar_inversion_passive-purpose = Motion of the joint under the ankle alone: stiff from birth, arthritis, after a break of the heel.
msg-item-ankle_subtalar_inversion_passive-care = Not with a break open.
msg-item-ankle_subtalar_inversion_passive-errors = The foot pointed down: the ankle tilts and is counted; skin lines slip. Two examiners agree poorly (worse for turning out).
msg-item-ankle_subtalar_inversion_passive-otherwise = Cannot lie on the front: on the side with the foot over the edge, or seated with the leg on a stool, seen from behind; say so in the remark. Small hands: both hands round the heel.

msg-item-ankle_subtalar_eversion_passive-short = Subtalar eversion, passive (heel on the shin)
msg-item-ankle_subtalar_eversion_passive-how = Lying on the front, feet over the edge, foot at a right angle. Mark the middle line of the lower shin and of the heel. Hold the shin, take the heel in the other hand and turn it outward until it stops. The angle between the two lines.
msg-item-ankle_subtalar_eversion_passive-purpose = Motion of the joint under the ankle alone: stiff from birth, arthritis, after a break of the heel.
msg-item-ankle_subtalar_eversion_passive-care = Not with a break open.
msg-item-ankle_subtalar_eversion_passive-errors = The foot pointed down: the ankle tilts and is counted; skin lines slip. Two examiners agree poorly (worse for turning out).
msg-item-ankle_subtalar_eversion_passive-otherwise = Cannot lie on the front: on the side with the foot over the edge, or seated with the leg on a stool, seen from behind; say so in the remark. Small hands: both hands round the heel.

msg-item-ankle_arc_subtalar_passive-short = Subtalar inversion - 0 - eversion, passive
msg-item-ankle_arc_subtalar_passive-how = Both ends as described for the heel on the shin. Three numbers with a zero; say which direction stands first.
msg-item-ankle_arc_subtalar_passive-purpose = Both ends of the joint under the ankle in one neutral-zero entry.
msg-item-ankle_arc_subtalar_passive-care = Not with a break open.
msg-item-ankle_arc_subtalar_passive-otherwise = Cannot lie on the front: on the side or seated, as for each end.
