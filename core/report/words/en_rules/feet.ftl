## Rules of the feet, and of joints that move far. A band's words come before those of the outcome. Variables: needs, gate, points.

msg-change-redness_spreading = redness that spreads, of each foot
msg-change-hot_red_swollen = a hot, red and swollen foot
msg-change-dead_tissue = a black toe or dead tissue, of each foot
msg-change-rest_pain_long = rest pain of the foot for over two weeks
msg-change-callus = callus of each foot

msg-rule-nice_feet-name = Class of the feet (NICE NG19)
msg-rule-nice_feet-band_class_low = Class low: feeling and blood supply found, no deformity. Look at the feet again in 12 months
msg-rule-nice_feet-band_class_moderate = Class moderate: feeling lost, arteries narrowed, or a deformity. The foot team within 6 to 8 weeks, then again in 3 to 6 months
msg-rule-nice_feet-band_class_high = Class high: an earlier ulcer, an amputation or failing kidneys, or feeling lost or arteries narrowed together or with callus or deformity. The foot team within 2 to 4 weeks, then again in 1 to 2 months, in 1 to 2 weeks where something is of immediate concern
msg-rule-nice_feet-undetermined = Cannot say yet: needs { $needs }
msg-rule-nice_feet-not_applicable = Graver than what the classes sort ({ $gate }): the foot is treated now, not waited with
msg-rule-nice_feet-gives_class_low = class low
msg-rule-nice_feet-gives_class_moderate = class moderate
msg-rule-nice_feet-gives_class_high = class high
msg-rule-nice_feet-gives_not_applicable = no class
msg-rule-gate-active_foot = one or more of: an ulcer, redness that spreads, a hot red swollen foot, dead tissue, or narrowed arteries with rest pain for over two weeks
msg-rule-nice_feet-flag_rules_disagree = the other table of the feet gives the longest interval: the shorter one counts, unless the place has its own protocol
msg-rule-foot_category-flag_sooner_elsewhere = the class of NICE NG19 looks at such feet sooner: the shorter interval counts, unless the place has its own protocol
msg-rule-nice_feet-flag_made_for_diabetes = the classes were made for diabetes; they are shown here for a numb foot, whatever the cause
msg-rule-foot_category-flag_rules_disagree = the class of NICE NG19 gives a shorter interval: the shorter one counts, unless the place has its own protocol

msg-change-talar_head = talar head, felt
msg-change-malleolar_curves = curves above and below the lateral malleolus
msg-change-heel = heel seen from behind
msg-change-talonavicular = bulge at the talonavicular joint
msg-change-arch = inner arch
msg-change-forefoot = forefoot on the hindfoot
msg-if-minus_2 = −2
msg-if-minus_1 = −1
msg-if-plus_1 = +1
msg-if-plus_2 = +2

msg-rule-foot_posture-name = How the foot stands, six items
msg-rule-foot_posture-band_highly_supinated = Sum { $points } (−12 to +12): highly supinated by band. A band is a name, no illness
msg-rule-foot_posture-band_supinated = Sum { $points } (−12 to +12): supinated by band. A band is a name, no illness
msg-rule-foot_posture-band_neutral = Sum { $points } (−12 to +12): neutral by band
msg-rule-foot_posture-band_pronated = Sum { $points } (−12 to +12): pronated by band. A band is a name, no illness
msg-rule-foot_posture-band_highly_pronated = Sum { $points } (−12 to +12): highly pronated by band. A band is a name, no illness
msg-rule-foot_posture-undetermined = Sum { $points } (−12 to +12). No band yet: needs { $needs }
msg-rule-foot_posture-undetermined_here = No band by the items that can be seen here
msg-rule-foot_posture-not_applicable = No sum on this side ({ $gate })
msg-rule-foot_posture-gives_highly_supinated = highly supinated
msg-rule-foot_posture-gives_supinated = supinated
msg-rule-foot_posture-gives_neutral = neutral
msg-rule-foot_posture-gives_pronated = pronated
msg-rule-foot_posture-gives_highly_pronated = highly pronated
msg-rule-foot_posture-flag_usual_in_adults = +6 and +7 lie within the usual range of adults in one study (+1 to +7, from memory)
msg-rule-gate-cannot_stand = does not stand on both legs

msg-change-little_finger = little finger bent back beyond 90°, both sides
msg-change-thumb = thumb to the forearm, both sides
msg-change-elbow = elbow beyond straight by more than 10°, both sides
msg-change-knee = knee beyond straight by more than 10°, both sides
msg-change-trunk = palms flat on the floor, knees straight
msg-change-signs_counted = the count of signs
msg-change-palms_ever = palms on the floor ever
msg-change-thumb_ever = thumb on the forearm ever
msg-change-odd_shapes_as_child = odd shapes or the splits as a child
msg-change-out_of_place_twice = shoulder or kneecap out of place more than once in youth
msg-change-double_jointed = whether the person calls itself double-jointed
msg-change-before_puberty = whether puberty has begun
msg-if-50_or_under = 50 or under

msg-rule-hypermobility-name = Joints that move far everywhere, nine signs
msg-rule-hypermobility-band_met = { $points } signs of nine: the published cut is met. Compare with the own other side, not with a table
msg-rule-hypermobility-band_not_met = { $points } signs of nine: below the published cut. Joints that move far everywhere are not excluded by this
msg-rule-hypermobility-undetermined = { $points } signs of nine. Cannot say yet: needs { $needs }
msg-rule-hypermobility-undetermined_here = { $points } signs of nine. Cannot say by the signs that can be tried
msg-rule-hypermobility-not_applicable = Not counted ({ $gate })
msg-rule-hypermobility-gives_met = cut met
msg-rule-hypermobility-gives_not_met = below the cut
