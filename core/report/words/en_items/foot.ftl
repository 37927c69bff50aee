# What the catalogue says of the foot: look and feel: label, technique, what counts, when not, what goes wrong often.
# A dot in a message name is a dash here. Language: English. Reviewed by: nobody yet.

msg-item-foot_look_deformity-short = Foot out of shape after injury
msg-item-foot_look_deformity-how = Both feet side by side, from above and from the side. Yes for a new bend, a step on the back (upper side) of the midfoot, a widened forefoot or a toe that stands off.
msg-item-foot_look_deformity-purpose = A dislocated or broken foot.
msg-item-foot_look_deformity-care = Yes: pulses, feeling and skin at once; no test of motion. Swelling with tight skin, or numb toes: look at the compartments of the foot.
msg-item-foot_look_deformity-errors = Swelling hides it; an old shape: ask.
msg-item-foot_look_deformity-otherwise = As the person sits or lies. One limb: ask how it was before.
msg-item-foot_look_deformity-yes = out of shape, newly
msg-item-foot_look_deformity-no = not newly out of shape

msg-item-foot_look_swelling-short = Foot swollen
msg-item-foot_look_swelling-how = Both feet, tendons and veins on the back (upper side) of the foot. Yes where they are hidden, or fuller than on the other side; where in the remark.
msg-item-foot_look_swelling-purpose = Where: back of the foot, one toe joint, forefoot, the whole foot.
msg-item-foot_look_swelling-errors = Both feet swollen look even; the side lain on.
msg-item-foot_look_swelling-otherwise = Seated, lying or standing. A child: on the lap. One limb: ask how it was before.
msg-item-foot_look_swelling-yes = swollen, or fuller than the other side
msg-item-foot_look_swelling-no = not swollen

msg-item-foot_hot_red_swollen-short = Foot hot, red and swollen
msg-item-foot_hot_red_swollen-how = Back of the hand on both feet, same places. Yes when one is warmer, with swelling or redness. Where there is a skin thermometer, write both numbers in the remark.
msg-item-foot_hot_red_swollen-purpose = Infection, gout, a clot, or a Charcot foot in numb feet: little pain speaks for the last.
msg-item-foot_hot_red_swollen-care = With a wound, spreading redness or fever: taken as infected, the same day. Feeling reduced and one foot hot: stop walking on it today until it is looked into, whatever the film shows. A bone rule does not hold in numb feet.
msg-item-foot_hot_red_swollen-errors = On dark skin redness is not seen: feel. The foot that lay in the sun; both feet hot.
msg-item-foot_hot_red_swollen-otherwise = Any position. One limb: compare with the shin.
msg-item-foot_hot_red_swollen-yes = hot, with swelling or redness
msg-item-foot_hot_red_swollen-no = not hot with swelling or redness

msg-item-foot_plantar_bruise-short = Bruise of the sole
msg-item-foot_plantar_bruise-how = Look at the sole of the midfoot. Yes for a bruise there.
msg-item-foot_plantar_bruise-purpose = A torn midfoot (Lisfranc) until shown otherwise.
msg-item-foot_plantar_bruise-care = Yes: no further stress; films of both feet taken standing, or treated as an injury where there are none.
msg-item-foot_plantar_bruise-errors = On dark or horny skin look from the edge of the sole; it may come after a day. A bruise that sank from the ankle stands at the outer edge.
msg-item-foot_plantar_bruise-otherwise = Seated with the leg out, lying or on the front.
msg-item-foot_plantar_bruise-yes = bruise of the sole
msg-item-foot_plantar_bruise-no = no bruise of the sole seen

msg-item-foot_deformity-short = Shape that presses: toes, heads, arch
msg-item-foot_deformity-how = Look and feel from all sides: claw toes, a great toe turned toward the others, heads of the metatarsals that stand out under the forefoot, a fallen or very high arch, stumps of toes. Yes for any; which in the remark.
msg-item-foot_deformity-purpose = In numb or badly supplied feet a prominent place becomes a wound: with either of the two it changes how often the foot is looked at.
msg-item-foot_deformity-care = Newly fallen arch, warm or swollen, in a foot that feels little: record it as hot, no more walking on it until it is looked into.
msg-item-foot_deformity-errors = Looked at unloaded alone; shoes not looked at.
msg-item-foot_deformity-otherwise = Standing shows most; seated or lying with the sole pressed up shows the toes.
msg-item-foot_deformity-yes = a place that presses
msg-item-foot_deformity-no = no place that presses found

msg-item-foot_pain_midfoot_zone-short = Pain in the midfoot zone
msg-item-foot_pain_midfoot_zone-how = Ask and let it be shown with one finger: pain between the front of the ankle and where the metatarsals begin, the bump of the fifth with it.
msg-item-foot_pain_midfoot_zone-purpose = The foot part of the Ottawa rules begins with it. Midfoot alone: not toes, forefoot or heel.
msg-item-foot_pain_midfoot_zone-errors = Pain at the ankle bones is the other zone; both may hurt. Tender without pain: check the record.
msg-item-foot_pain_midfoot_zone-otherwise = Any position. Who cannot answer: not reliable, the rule then stays open.
msg-item-foot_pain_midfoot_zone-yes = pain in the zone
msg-item-foot_pain_midfoot_zone-no = no pain in the zone

msg-item-foot_fifth_metatarsal_base_tender-short = Base of the fifth metatarsal tender
msg-item-foot_fifth_metatarsal_base_tender-how = Press the bump on the outer border of the midfoot from the outside and from below.
msg-item-foot_fifth_metatarsal_base_tender-purpose = One of the two points of the Ottawa foot rule.
msg-item-foot_fifth_metatarsal_base_tender-care = Yes and not imaged: no drawer, tilt, twist, heel rise, hop or piano key.
msg-item-foot_fifth_metatarsal_base_tender-errors = The tendon above the bump pressed instead of the bone. Gross swelling, drink, a numb foot: record not reliable.
msg-item-foot_fifth_metatarsal_base_tender-otherwise = { -bone_otherwise }
msg-item-foot_fifth_metatarsal_base_tender-yes = tender here
msg-item-foot_fifth_metatarsal_base_tender-no = not tender here

msg-item-foot_fifth_metatarsal_junction_tender-short = Fifth metatarsal tender, 1.5 to 3 cm beyond its base
msg-item-foot_fifth_metatarsal_junction_tender-how = From the bump of the fifth metatarsal 1.5 to 3 cm toward the toe, press from the outside and above.
msg-item-foot_fifth_metatarsal_junction_tender-purpose = A break 1.5 to 3 cm beyond the bump heals badly.
msg-item-foot_fifth_metatarsal_junction_tender-care = Yes: film, and leave it unloaded until then.
msg-item-foot_fifth_metatarsal_junction_tender-errors = { -bone_errors }
msg-item-foot_fifth_metatarsal_junction_tender-otherwise = { -bone_otherwise }
msg-item-foot_fifth_metatarsal_junction_tender-yes = tender here
msg-item-foot_fifth_metatarsal_junction_tender-no = not tender here

msg-item-foot_navicular_tender-short = Navicular tender
msg-item-foot_navicular_tender-how = The first bony lump in front of and below the inner ankle bone, and its upper side in front of the ankle. Press both.
msg-item-foot_navicular_tender-purpose = One of the two points of the Ottawa foot rule; also an extra bone, or the end of the tendon that holds the arch.
msg-item-foot_navicular_tender-care = Yes and not imaged: no drawer, tilt, twist, heel rise, hop or piano key.
msg-item-foot_navicular_tender-errors = The inner ankle bone or the first cuneiform pressed. Gross swelling, drink, a numb foot: record not reliable.
msg-item-foot_navicular_tender-otherwise = { -bone_otherwise }
msg-item-foot_navicular_tender-yes = tender here
msg-item-foot_navicular_tender-no = not tender here

msg-item-foot_navicular_dorsum_tender-short = Top of the navicular tender (one spot)
msg-item-foot_navicular_dorsum_tender-how = One fingertip on the top of the navicular, in the middle between the tendons of ankle and great toe.
msg-item-foot_navicular_dorsum_tender-purpose = A stress fracture in somebody who runs or jumps: heals badly, films may show nothing.
msg-item-foot_navicular_dorsum_tender-care = After an injury: the navicular counts as tender too, record it there. Yes in somebody who runs or jumps: no hop, leave it unloaded and have it imaged.
msg-item-foot_navicular_dorsum_tender-errors = { -bone_errors }
msg-item-foot_navicular_dorsum_tender-otherwise = { -bone_otherwise }
msg-item-foot_navicular_dorsum_tender-yes = tender here
msg-item-foot_navicular_dorsum_tender-no = not tender here

msg-item-foot_cuboid_tender-short = Cuboid tender
msg-item-foot_cuboid_tender-how = Behind the base of the fifth metatarsal on the outer midfoot, from above and from below.
msg-item-foot_cuboid_tender-purpose = Not part of the rule in use today; a break, or a joint out of place after a sprain.
msg-item-foot_cuboid_tender-care = Yes after an injury: a foot rule that asks for no film is then not settled; have it filmed or treat it as broken until it is.
msg-item-foot_cuboid_tender-errors = { -bone_errors }
msg-item-foot_cuboid_tender-otherwise = { -bone_otherwise }
msg-item-foot_cuboid_tender-yes = tender here
msg-item-foot_cuboid_tender-no = not tender here

msg-item-foot_lisfranc_line_tender-short = Line of the midfoot joints tender (Lisfranc)
msg-item-foot_lisfranc_line_tender-how = Run a fingertip across the back (upper side) of the midfoot from the inner to the outer edge over the five joints where the metatarsals begin; the second lies nearer the heel than the others. Yes for pain at any; which one is an entry of its own.
msg-item-foot_lisfranc_line_tender-purpose = A torn or broken midfoot: often missed at first.
msg-item-foot_lisfranc_line_tender-care = Swelling with tight skin or numb toes: look at the compartments. Yes after an injury: no further stress; films of both feet standing, or treated as an injury.
msg-item-foot_lisfranc_line_tender-errors = { -bone_errors }
msg-item-foot_lisfranc_line_tender-otherwise = { -bone_otherwise }
msg-item-foot_lisfranc_line_tender-yes = tender here
msg-item-foot_lisfranc_line_tender-no = not tender here

msg-item-foot_lisfranc_tender_joints-short = Which midfoot joints are tender
msg-item-foot_lisfranc_tender_joints-how = Each of the five joints where a metatarsal begins, one fingertip, from the inner side; wiggling the metatarsal helps to find its joint.
msg-item-foot_lisfranc_tender_joints-purpose = Where the midfoot was torn.
msg-item-foot_lisfranc_tender_joints-care = After an injury and not imaged: press, do not wiggle.
msg-item-foot_lisfranc_tender_joints-errors = The second joint looked for in line with the others: it lies nearer the heel.
msg-item-foot_lisfranc_tender_joints-otherwise = { -bone_otherwise }

msg-item-foot_metatarsal_first_tender-short = First metatarsal, shaft tender
msg-item-foot_metatarsal_first_tender-how = Finger and thumb along the first metatarsal from base to head, from above and from below. Yes for one sharp place in the bone.
msg-item-foot_metatarsal_first_tender-purpose = A stress fracture (second and third most of all), a break, an infection.
msg-item-foot_metatarsal_first_tender-care = One sharp place after much walking: a stress fracture stays open although the film shows nothing.
msg-item-foot_metatarsal_first_tender-errors = { -bone_errors }
msg-item-foot_metatarsal_first_tender-otherwise = { -bone_otherwise }
msg-item-foot_metatarsal_first_tender-yes = tender here
msg-item-foot_metatarsal_first_tender-no = not tender here

msg-item-foot_metatarsal_second_tender-short = Second metatarsal, shaft tender
msg-item-foot_metatarsal_second_tender-how = Finger and thumb along the second metatarsal from base to head, from above and from below. Yes for one sharp place in the bone.
msg-item-foot_metatarsal_second_tender-purpose = A stress fracture (second and third most of all), a break, an infection.
msg-item-foot_metatarsal_second_tender-care = One sharp place after much walking: a stress fracture stays open although the film shows nothing.
msg-item-foot_metatarsal_second_tender-errors = { -bone_errors }
msg-item-foot_metatarsal_second_tender-otherwise = { -bone_otherwise }
msg-item-foot_metatarsal_second_tender-yes = tender here
msg-item-foot_metatarsal_second_tender-no = not tender here

msg-item-foot_metatarsal_third_tender-short = Third metatarsal, shaft tender
msg-item-foot_metatarsal_third_tender-how = Finger and thumb along the third metatarsal from base to head, from above and from below. Yes for one sharp place in the bone.
msg-item-foot_metatarsal_third_tender-purpose = A stress fracture (second and third most of all), a break, an infection.
msg-item-foot_metatarsal_third_tender-care = One sharp place after much walking: a stress fracture stays open although the film shows nothing.
msg-item-foot_metatarsal_third_tender-errors = { -bone_errors }
msg-item-foot_metatarsal_third_tender-otherwise = { -bone_otherwise }
msg-item-foot_metatarsal_third_tender-yes = tender here
msg-item-foot_metatarsal_third_tender-no = not tender here

msg-item-foot_metatarsal_fourth_tender-short = Fourth metatarsal, shaft tender
msg-item-foot_metatarsal_fourth_tender-how = Finger and thumb along the fourth metatarsal from base to head, from above and from below. Yes for one sharp place in the bone.
msg-item-foot_metatarsal_fourth_tender-purpose = A stress fracture (second and third most of all), a break, an infection.
msg-item-foot_metatarsal_fourth_tender-care = One sharp place after much walking: a stress fracture stays open although the film shows nothing.
msg-item-foot_metatarsal_fourth_tender-errors = { -bone_errors }
msg-item-foot_metatarsal_fourth_tender-otherwise = { -bone_otherwise }
msg-item-foot_metatarsal_fourth_tender-yes = tender here
msg-item-foot_metatarsal_fourth_tender-no = not tender here

msg-item-foot_metatarsal_fifth_tender-short = Fifth metatarsal, shaft tender
msg-item-foot_metatarsal_fifth_tender-how = Finger and thumb along the fifth metatarsal from base to head, from above and from below. Yes for one sharp place in the bone.
msg-item-foot_metatarsal_fifth_tender-purpose = A stress fracture (second and third most of all), a break, an infection.
msg-item-foot_metatarsal_fifth_tender-care = One sharp place after much walking: a stress fracture stays open although the film shows nothing.
msg-item-foot_metatarsal_fifth_tender-errors = { -bone_errors }
msg-item-foot_metatarsal_fifth_tender-otherwise = { -bone_otherwise }
msg-item-foot_metatarsal_fifth_tender-yes = tender here
msg-item-foot_metatarsal_fifth_tender-no = not tender here

msg-item-foot_mtp_first_tender-short = First toe, base joint tender
msg-item-foot_mtp_first_tender-how = Finger above and thumb below the head of the first metatarsal and the joint in front of it; above and below each by itself, which in the remark.
msg-item-foot_mtp_first_tender-purpose = Gout, stiffness, a great toe turned toward the others (bunion), a hurt joint.
msg-item-foot_mtp_first_tender-care = Hot and red: not pressed again.
msg-item-foot_mtp_first_tender-errors = { -bone_errors }
msg-item-foot_mtp_first_tender-otherwise = { -bone_otherwise }
msg-item-foot_mtp_first_tender-yes = tender here
msg-item-foot_mtp_first_tender-no = not tender here

msg-item-foot_mtp_second_tender-short = Second toe, base joint tender
msg-item-foot_mtp_second_tender-how = Finger above and thumb below the head of the second metatarsal and the joint in front of it; above and below each by itself, which in the remark.
msg-item-foot_mtp_second_tender-purpose = Torn plate under the joint (second most of all), arthritis, a break of the head.
msg-item-foot_mtp_second_tender-care = Hot and red: not pressed again.
msg-item-foot_mtp_second_tender-errors = { -bone_errors }
msg-item-foot_mtp_second_tender-otherwise = { -bone_otherwise }
msg-item-foot_mtp_second_tender-yes = tender here
msg-item-foot_mtp_second_tender-no = not tender here

msg-item-foot_mtp_third_tender-short = Third toe, base joint tender
msg-item-foot_mtp_third_tender-how = Finger above and thumb below the head of the third metatarsal and the joint in front of it; above and below each by itself, which in the remark.
msg-item-foot_mtp_third_tender-purpose = Torn plate under the joint (second most of all), arthritis, a break of the head.
msg-item-foot_mtp_third_tender-care = Hot and red: not pressed again.
msg-item-foot_mtp_third_tender-errors = { -bone_errors }
msg-item-foot_mtp_third_tender-otherwise = { -bone_otherwise }
msg-item-foot_mtp_third_tender-yes = tender here
msg-item-foot_mtp_third_tender-no = not tender here

msg-item-foot_mtp_fourth_tender-short = Fourth toe, base joint tender
msg-item-foot_mtp_fourth_tender-how = Finger above and thumb below the head of the fourth metatarsal and the joint in front of it; above and below each by itself, which in the remark.
msg-item-foot_mtp_fourth_tender-purpose = Torn plate under the joint (second most of all), arthritis, a break of the head.
msg-item-foot_mtp_fourth_tender-care = Hot and red: not pressed again.
msg-item-foot_mtp_fourth_tender-errors = { -bone_errors }
msg-item-foot_mtp_fourth_tender-otherwise = { -bone_otherwise }
msg-item-foot_mtp_fourth_tender-yes = tender here
msg-item-foot_mtp_fourth_tender-no = not tender here

msg-item-foot_mtp_fifth_tender-short = Fifth toe, base joint tender
msg-item-foot_mtp_fifth_tender-how = Finger above and thumb below the head of the fifth metatarsal and the joint in front of it; above and below each by itself, which in the remark.
msg-item-foot_mtp_fifth_tender-purpose = Torn plate under the joint (second most of all), arthritis, a break of the head.
msg-item-foot_mtp_fifth_tender-care = Hot and red: not pressed again.
msg-item-foot_mtp_fifth_tender-errors = { -bone_errors }
msg-item-foot_mtp_fifth_tender-otherwise = { -bone_otherwise }
msg-item-foot_mtp_fifth_tender-yes = tender here
msg-item-foot_mtp_fifth_tender-no = not tender here

msg-item-foot_web_space_first_tender-short = First web space tender
msg-item-foot_web_space_first_tender-how = One fingertip from above, then from below, BETWEEN the heads of the first and second metatarsals, just beyond the heads. Yes for the familiar pain.
msg-item-foot_web_space_first_tender-purpose = A thickened nerve (second and third most of all), a bursa.
msg-item-foot_web_space_first_tender-care = Not through a wound between the toes.
msg-item-foot_web_space_first_tender-errors = The heads pressed instead of the space.
msg-item-foot_web_space_first_tender-otherwise = { -press_otherwise }
msg-item-foot_web_space_first_tender-yes = tender here
msg-item-foot_web_space_first_tender-no = not tender here

msg-item-foot_web_space_second_tender-short = Second web space tender
msg-item-foot_web_space_second_tender-how = One fingertip from above, then from below, BETWEEN the heads of the second and third metatarsals, just beyond the heads. Yes for the familiar pain.
msg-item-foot_web_space_second_tender-purpose = A thickened nerve (second and third most of all), a bursa.
msg-item-foot_web_space_second_tender-care = Not through a wound between the toes.
msg-item-foot_web_space_second_tender-errors = The heads pressed instead of the space. Squeezed between thumb and finger: that is the squeeze test.
msg-item-foot_web_space_second_tender-otherwise = { -press_otherwise }
msg-item-foot_web_space_second_tender-yes = tender here
msg-item-foot_web_space_second_tender-no = not tender here

msg-item-foot_web_space_third_tender-short = Third web space tender
msg-item-foot_web_space_third_tender-how = One fingertip from above, then from below, BETWEEN the heads of the third and fourth metatarsals, just beyond the heads. Yes for the familiar pain.
msg-item-foot_web_space_third_tender-purpose = A thickened nerve (second and third most of all), a bursa.
msg-item-foot_web_space_third_tender-care = Not through a wound between the toes.
msg-item-foot_web_space_third_tender-errors = The heads pressed instead of the space. Squeezed between thumb and finger: that is the squeeze test.
msg-item-foot_web_space_third_tender-otherwise = { -press_otherwise }
msg-item-foot_web_space_third_tender-yes = tender here
msg-item-foot_web_space_third_tender-no = not tender here

msg-item-foot_web_space_fourth_tender-short = Fourth web space tender
msg-item-foot_web_space_fourth_tender-how = One fingertip from above, then from below, BETWEEN the heads of the fourth and fifth metatarsals, just beyond the heads. Yes for the familiar pain.
msg-item-foot_web_space_fourth_tender-purpose = A thickened nerve (second and third most of all), a bursa.
msg-item-foot_web_space_fourth_tender-care = Not through a wound between the toes.
msg-item-foot_web_space_fourth_tender-errors = The heads pressed instead of the space.
msg-item-foot_web_space_fourth_tender-otherwise = { -press_otherwise }
msg-item-foot_web_space_fourth_tender-yes = tender here
msg-item-foot_web_space_fourth_tender-no = not tender here

msg-item-foot_mtp_first_hot_red-short = Base joint of the great toe hot and red
msg-item-foot_mtp_first_hot_red-how = Look and back of the hand on both great toes. Yes when warmer than the other, or red and swollen.
msg-item-foot_mtp_first_hot_red-purpose = Gout, infection.
msg-item-foot_mtp_first_hot_red-care = New and sore to move, or with fever or a wound: it may be infected, the same day; no fever leaves that open. Not moved to try it out.
msg-item-foot_mtp_first_hot_red-errors = On dark skin redness is not seen: feel.
msg-item-foot_mtp_first_hot_red-otherwise = Any position. One limb: compare with the other toes.
msg-item-foot_mtp_first_hot_red-yes = warmer, or red and swollen
msg-item-foot_mtp_first_hot_red-no = neither warmer nor red and swollen

msg-item-foot_sesamoid_medial_tender-short = Inner small bone under the great toe tender
msg-item-foot_sesamoid_medial_tender-how = Under the head of the first metatarsal, the inner of the two small bones; it slips forward when the great toe is bent up. Yes when the sore place goes with it.
msg-item-foot_sesamoid_medial_tender-purpose = A break, a stress fracture or soreness of the sesamoid.
msg-item-foot_sesamoid_medial_tender-care = Fresh injury of the toe or a hot joint: press only, the toe is not bent up.
msg-item-foot_sesamoid_medial_tender-errors = { -bone_errors }
msg-item-foot_sesamoid_medial_tender-otherwise = { -bone_otherwise }
msg-item-foot_sesamoid_medial_tender-yes = tender here
msg-item-foot_sesamoid_medial_tender-no = not tender here

msg-item-foot_sesamoid_lateral_tender-short = Outer small bone under the great toe tender
msg-item-foot_sesamoid_lateral_tender-how = Under the head of the first metatarsal, the outer of the two small bones; it slips forward when the great toe is bent up. Yes when the sore place goes with it.
msg-item-foot_sesamoid_lateral_tender-purpose = A break, a stress fracture or soreness of the sesamoid.
msg-item-foot_sesamoid_lateral_tender-care = Fresh injury of the toe or a hot joint: press only, the toe is not bent up.
msg-item-foot_sesamoid_lateral_tender-errors = { -bone_errors }
msg-item-foot_sesamoid_lateral_tender-otherwise = { -bone_otherwise }
msg-item-foot_sesamoid_lateral_tender-yes = tender here
msg-item-foot_sesamoid_lateral_tender-no = not tender here

msg-item-foot_toe_bones_tender-short = Bones of the toes tender
msg-item-foot_toe_bones_tender-how = Each toe, each bone, finger and thumb from side to side. Yes for pain at the bone; which toe in the remark.
msg-item-foot_toe_bones_tender-purpose = A broken toe.
msg-item-foot_toe_bones_tender-care = Nail lifted or wound over it: it may be an open break.
msg-item-foot_toe_bones_tender-errors = { -bone_errors }
msg-item-foot_toe_bones_tender-otherwise = { -bone_otherwise }
msg-item-foot_toe_bones_tender-yes = tender here
msg-item-foot_toe_bones_tender-no = not tender here

msg-item-foot_calcaneal_tubercle_tender-short = Medial calcaneal tubercle tender (heel pad, inner front)
msg-item-foot_calcaneal_tubercle_tender-how = Great toe bent up a little; thumb on the inner edge of the heel pad at its front end, deep against the bone.
msg-item-foot_calcaneal_tubercle_tender-purpose = The plantar fascia at its start: heel pain with the first steps.
msg-item-foot_calcaneal_tubercle_tender-errors = The middle of the pad pressed: that is the pad, or the bone.
msg-item-foot_calcaneal_tubercle_tender-otherwise = { -bone_otherwise }
msg-item-foot_calcaneal_tubercle_tender-yes = tender here
msg-item-foot_calcaneal_tubercle_tender-no = not tender here

msg-item-foot_plantar_fascia_tender-short = Plantar fascia tender along the sole
msg-item-foot_plantar_fascia_tender-how = Great toe bent up so that the band stands out; thumb along it from heel to forefoot. Lumps in the remark.
msg-item-foot_plantar_fascia_tender-purpose = The plantar fascia along the arch; nodules in it.
msg-item-foot_plantar_fascia_tender-errors = { -press_errors }
msg-item-foot_plantar_fascia_tender-otherwise = { -press_otherwise }
msg-item-foot_plantar_fascia_tender-yes = tender here
msg-item-foot_plantar_fascia_tender-no = not tender here

msg-item-foot_heel_pad_tender-short = Middle of the heel pad tender
msg-item-foot_heel_pad_tender-how = Thumb in the middle of the heel pad, firmly, and squeeze the pad between finger and thumb.
msg-item-foot_heel_pad_tender-purpose = Thin or bruised pad; a foreign body.
msg-item-foot_heel_pad_tender-care = Look for a wound or a thorn first.
msg-item-foot_heel_pad_tender-errors = { -press_errors }
msg-item-foot_heel_pad_tender-otherwise = { -press_otherwise }
msg-item-foot_heel_pad_tender-yes = tender here
msg-item-foot_heel_pad_tender-no = not tender here
