# What the catalogue says of the questions on joints that move far, and of puberty. Label, technique, what it is for.
# A dot in a message name is a dash here. Language: English. Reviewed by: nobody yet.

msg-item-body_before_puberty-short = Before puberty
msg-item-body_before_puberty-how = Asked of a young person or a parent, in private: no sign of puberty yet. Not worked out of the age; from 18 years on it is not asked.
msg-item-body_before_puberty-purpose = Signs of joints that move far are counted against a higher figure before puberty.
msg-item-body_before_puberty-yes = puberty has not begun
msg-item-body_before_puberty-no = puberty has begun, or is over

msg-item-history_palms_to_floor_ever-short = Ever laid the palms flat on the floor
msg-item-history_palms_to_floor_ever-how = Now or ever before: palms flat on the floor, knees straight.
msg-item-history_palms_to_floor_ever-purpose = One of five questions on joints that moved far before; two yes count where one sign is missing.
msg-item-history_palms_to_floor_ever-yes = palms reached the floor, now or before
msg-item-history_palms_to_floor_ever-no = palms never reached the floor

msg-item-history_thumb_to_forearm_ever-short = Ever laid the thumb on the forearm
msg-item-history_thumb_to_forearm_ever-how = Now or ever before: the thumb bent down until it touched the forearm.
msg-item-history_thumb_to_forearm_ever-purpose = One of five questions on joints that moved far before; two yes count where one sign is missing.
msg-item-history_thumb_to_forearm_ever-yes = the thumb touched the forearm, now or before
msg-item-history_thumb_to_forearm_ever-no = the thumb never touched the forearm

msg-item-history_odd_shapes_as_child-short = Odd shapes or the splits as a child
msg-item-history_odd_shapes_as_child-how = As a child: bent the body into odd shapes that others laughed at, or did the splits.
msg-item-history_odd_shapes_as_child-purpose = One of five questions on joints that moved far before; two yes count where one sign is missing.
msg-item-history_odd_shapes_as_child-yes = did so as a child
msg-item-history_odd_shapes_as_child-no = never did so

msg-item-history_out_of_place_twice-short = Shoulder or kneecap out of place, more than once in youth
msg-item-history_out_of_place_twice-how = As a child or in youth: a shoulder or a kneecap that went out of place more than once.
msg-item-history_out_of_place_twice-purpose = One of five questions on joints that moved far before; two yes count where one sign is missing.
msg-item-history_out_of_place_twice-yes = more than once
msg-item-history_out_of_place_twice-no = never, or once

msg-item-history_double_jointed-short = Calls itself double-jointed
msg-item-history_double_jointed-how = Would the person call itself double-jointed, in whatever word is used at home?
msg-item-history_double_jointed-purpose = One of five questions on joints that moved far before; two yes count where one sign is missing.
msg-item-history_double_jointed-yes = would say so
msg-item-history_double_jointed-no = would not say so
