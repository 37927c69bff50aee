# What the catalogue says of the skin: wounds, ulcers, infection, nails, shoes, lumps. Label, technique, what it is for, what counts, when not.
# A dot in a message name is a dash here. Language: English. Reviewed by: nobody yet.

msg-item-skin_intact-short = Skin of foot and ankle whole
msg-item-skin_intact-how = All of it: heel, sole, between the toes, under the heads, round the nails; in good light, with a mirror or telephone for the sole. Yes when there is no break at all.
msg-item-skin_intact-purpose = Parts a collapsing foot from an infected ulcer, and says what was looked at.
msg-item-skin_intact-care = Whole skin leaves an infection not excluded.
msg-item-skin_intact-errors = Between the toes and the back of the heel left out.
msg-item-skin_intact-otherwise = Cannot lift the leg: look from the end of the couch with a mirror.
msg-item-skin_intact-yes = no break of the skin
msg-item-skin_intact-no = a break of the skin

msg-item-skin_wound_over_bone-short = Wound near a possible fracture
msg-item-skin_wound_over_bone-how = Any wound on the same part of the limb as the deformity, the tender bone or the break, however small.
msg-item-skin_wound_over_bone-purpose = Counts as an open fracture until shown otherwise.
msg-item-skin_wound_over_bone-care = Yes: call now. Do not probe, do not wash out; moist dressing, splint, pulses. Photograph once, then leave it covered.
msg-item-skin_wound_over_bone-errors = A small wound with dark, oily blood is passed over. Looked at again and again.

msg-item-skin_bone_visible-short = Bone seen in a wound
msg-item-skin_bone_visible-how = Bone can be seen, without probing.
msg-item-skin_bone_visible-purpose = An open fracture, or an ulcer down to the bone.
msg-item-skin_bone_visible-care = After injury: call now, cover, do not push it back. In an ulcer: same day.
msg-item-skin_bone_visible-errors = Fascia or tendon looks white too: write what is seen.

msg-item-skin_deep_wound-short = Deep wound
msg-item-skin_deep_wound-how = All that hold: puncture; bite of an animal or a person; sting or snake; something left inside; or none of these. When, and through which shoe, in the remark.
msg-item-skin_deep_wound-purpose = Small outside, deep inside: tendon, joint or bone may be reached.
msg-item-skin_deep_wound-care = Over a joint, or hot and painful: same day. Tetanus is asked. Bite of an animal: rabies by local protocol. Snake: call now; limb still and level, no cutting, no tight band.
msg-item-skin_deep_wound-errors = Through a shoe: germs of the sole go in deep. A film shows metal, not wood.

msg-item-skin_foreign_body-short = Thorn, splinter, glass or metal in the foot
msg-item-skin_foreign_body-how = Look and press lightly over sole and between toes; ask about walking barefoot. Yes for one seen, felt or sure from the story.
msg-item-skin_foreign_body-purpose = A child that limps, or a wound that does not close.
msg-item-skin_foreign_body-care = Not dug for without light, numbing and the right tools. None found leaves one not excluded.
msg-item-skin_foreign_body-errors = Wood does not show on a film.
msg-item-skin_foreign_body-otherwise = A child: on the lap, sole looked at last.

msg-item-skin_ulcer-short = Ulcer now
msg-item-skin_ulcer-how = An open sore of foot or leg that goes through the skin. Under callus too: a dark spot under callus is an ulcer until it is pared by somebody trained.
msg-item-skin_ulcer-purpose = Changes everything in a numb or badly supplied foot: within one working day, and same day when infected or black.
msg-item-skin_ulcer-care = No weight on it; no filament on it.
msg-item-skin_ulcer-errors = Hidden under callus or between the toes; painless, so nobody knew.
msg-item-skin_ulcer-yes = an open sore
msg-item-skin_ulcer-no = no open sore found

msg-item-skin_ulcer_site-short = Ulcer, where
msg-item-skin_ulcer_site-how = All places that hold.
msg-item-skin_ulcer_site-purpose = Sole: pressure and numbness. Toe tips and edges: blood. Inner ankle: veins.

msg-item-skin_ulcer_length-short = Ulcer, longest way across
msg-item-skin_ulcer_length-how = Longest distance from edge to edge, tape held over it and not on it. Several: the largest, and the number in the remark.
msg-item-skin_ulcer_length-purpose = Whether it closes from visit to visit.
msg-item-skin_ulcer_length-errors = Callus or redness round it measured too. Another direction the next time.

msg-item-skin_ulcer_width-short = Ulcer, widest way at a right angle
msg-item-skin_ulcer_width-how = Widest distance at a right angle to the length.
msg-item-skin_ulcer_width-purpose = Whether it closes from visit to visit.
msg-item-skin_ulcer_width-errors = Not at a right angle.

msg-item-skin_ulcer_depth-short = Ulcer, how deep
msg-item-skin_ulcer_depth-how = What is seen at its bottom: skin only; fat under the skin; tendon, muscle or capsule; bone; or covered so that it cannot be seen.
msg-item-skin_ulcer_depth-purpose = Deeper than the fat under the skin is at least a moderate infection when infected at all.
msg-item-skin_ulcer_depth-care = Not opened to see.
msg-item-skin_ulcer_depth-errors = A dry crust hides the depth: then it is not seen.

msg-item-skin_ulcer_probe_to_bone-short = Ulcer, probe meets bone
msg-item-skin_ulcer_probe_to_bone-how = By trained hands only: a sterile blunt probe laid gently into the ulcer. Yes when it meets something hard and gritty.
msg-item-skin_ulcer_probe_to_bone-purpose = Infection of the bone below.
msg-item-skin_ulcer_probe_to_bone-care = Only by somebody trained, never in a fresh wound after injury. Bone met: same day. No bone met leaves an infected bone not excluded.
msg-item-skin_ulcer_probe_to_bone-errors = Pushed; a joint capsule feels hard too.
msg-item-skin_ulcer_probe_to_bone-otherwise = Nobody trained here: not done; a film and a blood test instead.
msg-item-skin_ulcer_probe_to_bone-yes = the probe meets bone
msg-item-skin_ulcer_probe_to_bone-no = the probe meets no bone

msg-item-skin_infection_signs-short = Signs of infection at the wound
msg-item-skin_infection_signs-how = All that hold: redness of more than half a centimetre round it, swelling, pain or tenderness, warmth, pus; or none of these.
msg-item-skin_infection_signs-purpose = Two or more make an infected ulcer. How far the redness goes makes the degree.
msg-item-skin_infection_signs-care = None leaves an infection not excluded, above all in a foot that lacks blood or with diabetes. Temperature, pulse and breathing with it.
msg-item-skin_infection_signs-errors = Redness of a hanging leg; pain missing in a numb foot.

msg-item-skin_redness_margin-short = Redness, how far from the edge
msg-item-skin_redness_margin-how = From the edge of the ulcer or wound to the end of the redness, where it goes farthest. Draw the margin on the skin with the time.
msg-item-skin_redness_margin-purpose = Up to 20 mm and no deeper than the fat under the skin is mild; more, or deeper, is moderate. Severe with two of: temperature above 38 or below 36, pulse above 90, breathing above 20, white cells above 12 or below 4.
msg-item-skin_redness_margin-care = Farther at the next look, fever, or pain beyond what is seen: now.
msg-item-skin_redness_margin-errors = Dark skin: feel the warmth and the swelling as well. Not marked, so nobody knows whether it spreads.

msg-item-skin_redness_spreading-short = Redness spreads
msg-item-skin_redness_spreading-how = The margin has moved beyond the drawn line, or the story is of hours. Look again after 30 to 60 minutes where it may be deep.
msg-item-skin_redness_spreading-purpose = Spreading infection: same day. Spreading within hours, or with one of the deep signs: call now.
msg-item-skin_redness_spreading-care = No spread yet leaves a deep infection not excluded: pain that rises counts more.
msg-item-skin_redness_spreading-errors = No line drawn. Dark skin hides it.
msg-item-skin_redness_spreading-yes = the margin moves
msg-item-skin_redness_spreading-no = no spread seen

msg-item-skin_swelling_beyond_redness-short = Swelling goes beyond the redness
msg-item-skin_swelling_beyond_redness-how = Hard or doughy swelling well beyond the red skin.
msg-item-skin_swelling_beyond_redness-purpose = Infection below the skin.
msg-item-skin_swelling_beyond_redness-care = With redness that spreads: call now, above all with pain beyond what is seen, numb skin, blisters, fever or a fast pulse.
msg-item-skin_swelling_beyond_redness-errors = Oedema from before.

msg-item-skin_numb_patch-short = Skin numb over the redness
msg-item-skin_numb_patch-how = Light touch over the red or dusky skin against the skin beside it. Yes when it is felt less or not.
msg-item-skin_numb_patch-purpose = Deep infection kills the nerves of the skin; or leprosy where a pale patch is numb.
msg-item-skin_numb_patch-care = New, with redness: call now, no waiting for tests.
msg-item-skin_numb_patch-errors = Numb feet from before: compare above.

msg-item-skin_dusky_or_blistered-short = Skin dusky, blistered or dead
msg-item-skin_dusky_or_blistered-how = Blue-grey skin, blisters with dark fluid, or dead patches in or round the redness.
msg-item-skin_dusky_or_blistered-purpose = Deep infection.
msg-item-skin_dusky_or_blistered-care = Yes: call now. Mark the margin with the time.
msg-item-skin_dusky_or_blistered-errors = A blister from a shoe. Bruising under dark skin.

msg-item-skin_gas_crackle-short = Crackles under the fingers
msg-item-skin_gas_crackle-how = Press once, lightly, beside the red or wounded skin. Yes when it crackles like snow.
msg-item-skin_gas_crackle-purpose = Gas under the skin.
msg-item-skin_gas_crackle-care = Once. Yes: call now. No crackle leaves a deep infection not excluded.
msg-item-skin_gas_crackle-errors = Air let in by the wound itself.

msg-item-skin_sinus_draining-short = Sinus that runs
msg-item-skin_sinus_draining-how = A small opening that lets out fluid, on and off, with thick skin or a scar round it.
msg-item-skin_sinus_draining-purpose = Old infection of bone or joint, also tuberculosis.
msg-item-skin_sinus_draining-care = Not probed, not closed. Yes: same day.
msg-item-skin_sinus_draining-errors = Dry today: ask what stains the cloth.

msg-item-skin_black_toe-short = Black toe
msg-item-skin_black_toe-how = Any toe black or blue-black, dry or wet; which, in the remark.
msg-item-skin_black_toe-purpose = Dead tissue: same day.
msg-item-skin_black_toe-care = Dry: keep dry and covered. Wet, with smell, redness or fever: now.
msg-item-skin_black_toe-errors = Blood under a nail; dye.

msg-item-skin_gangrene-short = Dead tissue
msg-item-skin_gangrene-how = None; dry: black, shrunk, with a line; wet: soft, smelling, no line.
msg-item-skin_gangrene-purpose = Wet spreads within hours.
msg-item-skin_gangrene-care = Wet: call now. Dry: same day. Either: pulses, pressures, and no bandage that presses.
msg-item-skin_gangrene-errors = A black crust on a clean ulcer.

msg-item-skin_callus-short = Callus
msg-item-skin_callus-how = All places that hold; and whether a dark spot shows inside.
msg-item-skin_callus-purpose = Shows where pressure goes; in a numb foot the place of the next ulcer.
msg-item-skin_callus-care = Pared only by somebody trained. A dark spot inside counts as an ulcer.
msg-item-skin_callus-errors = Skipped on the heel edge.

msg-item-skin_nails-short = Nails
msg-item-skin_nails-how = All that hold: thick, grown in, fungal, too long, blood under it, red and sore beside it; or none of these.
msg-item-skin_nails-purpose = Doors for infection, and whether feet are looked after.
msg-item-skin_nails-care = In a numb or badly supplied foot cut only by somebody trained.
msg-item-skin_nails-errors = A dark streak that grows is not blood: write it.

msg-item-skin_between_toes-short = Between the toes
msg-item-skin_between_toes-how = Each cleft opened, also the last. All that hold.
msg-item-skin_between_toes-purpose = Small cracks let infection into swollen, numb or diabetic feet.
msg-item-skin_between_toes-care = Gently: thin skin tears.
msg-item-skin_between_toes-errors = Last cleft left out.

msg-item-skin_heel_and_sole-short = Heel and sole
msg-item-skin_heel_and_sole-how = All that hold: deep cracks, dry, blister, wart or corn, scaling, a red or blue pressure mark on the heel; or none of these.
msg-item-skin_heel_and_sole-purpose = Where the next wound begins; pressure marks in those who lie.
msg-item-skin_heel_and_sole-care = A pressure mark on the heel of somebody in bed: heel off the bed at once.
msg-item-skin_heel_and_sole-errors = Heels of those who lie in bed are not looked at.

msg-item-skin_shoes_inside-short = Shoes looked into
msg-item-skin_shoes_inside-how = Turn each shoe over and shake it out, look into it, then feel with the hand. All that hold: something inside; a seam, fold or nail; worn through; wet; no shoes here; or none of these.
msg-item-skin_shoes_inside-purpose = A numb foot does not tell of a stone in the shoe.
msg-item-skin_shoes_inside-errors = Only the shoes for the visit are seen: ask for those of work.

msg-item-skin_shoe_fit-short = Shoes, fit
msg-item-skin_shoe_fit-how = Standing in them. All that hold: too short, too narrow, too shallow over the toes, loose, no hold at the heel; or none of these.
msg-item-skin_shoe_fit-purpose = Pressure from shoes makes ulcers, corns and sore forefeet.
msg-item-skin_shoe_fit-errors = Judged seated: the foot is longer standing.
msg-item-skin_shoe_fit-otherwise = Cannot stand, or the foot is not to be loaded: seated, foot set flat.

msg-item-skin_shoe_wear-short = Shoes, wear of the sole
msg-item-skin_shoe_wear-how = Sole of the shoe used most, both compared.
msg-item-skin_shoe_wear-purpose = Tells how the foot is loaded over weeks: worn toe with a foot that drops, one side more with a short or sore leg.
msg-item-skin_shoe_wear-errors = New shoes tell nothing.

msg-item-skin_scars-short = Scars
msg-item-skin_scars-how = All round the limb, front and back; where, and what from, in the remark.
msg-item-skin_scars-purpose = Operations, old wounds, burns and infections that were not told.
msg-item-skin_scars-errors = Back of the knee and groin are left out.

msg-item-skin_rash-short = Rash
msg-item-skin_rash-how = Look at both legs and, with consent, the trunk. Press it with a glass: does it fade? Kind and place in the remark.
msg-item-skin_rash-purpose = Joint pain with a rash; a child that limps.
msg-item-skin_rash-care = A rash that does not fade in somebody feverish or unwell: call now.
msg-item-skin_rash-errors = Dark skin: look at palms, soles and the inside of the lids.

msg-item-skin_bruises-short = Bruises on this limb
msg-item-skin_bruises-how = Front and back. Place, size and shape in the remark; measured, not dated by colour.
msg-item-skin_bruises-purpose = Injury, bleeding, or a tear higher up that has sunk down.
msg-item-skin_bruises-care = In a child or somebody who depends on others, what no story explains is written apart, in the protected item.
msg-item-skin_bruises-errors = Age told from colour. Birth marks on the buttocks of small children.

msg-item-skin_bruise_pattern-short = Marks that need a protected note
msg-item-skin_bruise_pattern-how = All that hold, seen on the whole body with consent: a shape of an object or hand; a bite; a burn with a straight line; a burn with the shape of an object; soles, buttocks or ears; injuries of different ages; a bruise in a child who does not move about; or none of these. Place and measure in the remark, no cause.
msg-item-skin_bruise_pattern-purpose = Protection of a child or a person who depends on others.
msg-item-skin_bruise_pattern-care = In private. Nothing is said before the company, no question twice, no accusation. Injury first; then those who protect, by local law.
msg-item-skin_bruise_pattern-errors = A cause is written. Asked before the person who may have done it.

msg-item-skin_folds_unequal-short = Skin folds unequal (infant)
msg-item-skin_folds_unequal-how = Infant relaxed on the back, then on the belly: folds of groin, thigh and buttock, number and height.
msg-item-skin_folds_unequal-purpose = A weak sign of a hip out of place; opening and knee height count more.
msg-item-skin_folds_unequal-care = Equal folds leave a hip out of place not excluded.
msg-item-skin_folds_unequal-errors = Many sound infants have unequal folds.
msg-item-skin_folds_unequal-otherwise = Restless: on the lap.
msg-item-skin_folds_unequal-yes = folds differ between sides
msg-item-skin_folds_unequal-no = folds alike on both sides

msg-item-skin_lump-short = Lump
msg-item-skin_lump-how = Look and feel over thigh, knee, calf and foot. Yes for any lump that the other side lacks; where, in the remark.
msg-item-skin_lump-purpose = Lumps that grow, are deep or large are not watched but sent.
msg-item-skin_lump-care = No needle, no cutting, no rubbing. A lump that pulsates is not pressed.
msg-item-skin_lump-errors = A bony knob on both sides; a muscle that bulges when it tightens.

msg-item-skin_lump_size-short = Lump, longest way across
msg-item-skin_lump_size-how = Longest distance between its edges, felt with two fingers, tape over it.
msg-item-skin_lump_size-purpose = More than 50 mm, or larger than last time, is sent whatever else.
msg-item-skin_lump_size-care = No pressing hard.
msg-item-skin_lump_size-errors = Fat round it measured too.

msg-item-skin_lump_features-short = Lump, what it is like
msg-item-skin_lump_features-how = All that hold: grows; deep, or does not move on what lies under it when the muscle is tight; came back after removal; with nodes in the groin; on the bone; painful; or none of these.
msg-item-skin_lump_features-purpose = Any of the first four, or more than 50 mm: sent. On the bone without an explanation, in somebody under 25: a film within 48 hours.
msg-item-skin_lump_features-care = None of these leaves a growth not excluded.
msg-item-skin_lump_features-errors = Painless taken for harmless.
