# Motion of hip, ankle and foot beyond norm, other side and last time; lengths, girths, colour, pitting; what does not fit together there.
# Variables as in en.ftl; besides: mm, other_mm, difference_mm, needed_mm, s, limit_s, other_item and because_item (items), reason, from.

## Motion.

msg-motion-neutral_below = { $what }{ $side } { $reading }: does not come to the middle position, by more than the error of the { $how }; { $from ->
    [hip_extension] held bent
    [hip_abduction] held across the middle
    [hip_adduction] held outward
    [hip_internal_rotation] held turned out
    [hip_external_rotation] held turned in
    [ankle_dorsiflexion] held pointed down
    [ankle_plantarflexion] held up
    [ankle_inversion] held turned outward
    [ankle_eversion] held turned inward
    [foot_extension] toe held down
    [foot_flexion] toe held up
   *[other] held to one side
 }, which the end feel tells apart from a block
msg-motion-neutral_not_distinguishable = { $what }{ $side } { $measured }: cannot be told from the middle position, { $how }
msg-motion-neutral_needs_instrument = { $what }{ $side } { $reading }: whether it comes to the middle position cannot be said yet, needs the instrument
msg-motion-neutral_below-row = does not come to the middle position, beyond its error
msg-motion-neutral_not_distinguishable-row = cannot be told from the middle position ({ $span })
msg-motion-neutral_needs_instrument-row = whether it comes to the middle position needs the instrument
msg-motion-unlike = { $what }{ $side } { $reading }: sides not compared, the other side was measured in another way ({ $other_item }); position and load make them two quantities
msg-motion-unlike-row = sides not compared, the other was measured in another way ({ $other_item })
msg-motion-calf_gap_below = { $what }{ $side } { $reading }: the foot comes up { $difference } further with the knee bent ({ $other }); more than the { $needed } needed to believe it; in sound adults about 15 are gained so
msg-motion-calf_gap_pattern_taught = { $what }{ $side } { $reading }: the foot comes up { $difference } further with the knee bent ({ $other }); under 5 straight and 10 or more bent is taught as a tight calf muscle; the figure was not read at its source
msg-motion-calf_gap_not_distinguishable = { $what }{ $side } { $reading }: cannot be told from the motion with the knee bent ({ $other }); { $needed } needed to believe a difference
msg-motion-calf_gap_needs_instrument = { $what }{ $side } { $reading }: not compared with the motion with the knee bent, needs the instrument of both
msg-motion-calf_gap_other_position = { $what }{ $side } { $reading }: not compared with the motion with the knee bent, measured in different positions
msg-motion-calf_gap_below-row = { $difference } less than with the knee bent ({ $needed } needed; about 15 in sound adults)
msg-motion-calf_gap_pattern_taught-row = { $difference } less than with the knee bent; taught as a tight calf muscle
msg-motion-calf_gap_not_distinguishable-row = cannot be told from the motion with the knee bent (believed above { $needed })
msg-motion-calf_gap_needs_instrument-row = not compared with the knee bent, needs the instrument of both
msg-motion-calf_gap_other_position-row = not compared with the knee bent, measured in different positions
msg-motion-capsular_hip_all = { $what }{ $side } { $reading }: against the other side inward rotation lacks { $rotation_loss_deg }, flexion { $flexion_loss_deg }, abduction { $abduction_loss_deg }, each beyond its error: the three that a capsular pattern of the hip was described by; most worn hips do not show a fixed pattern; a description, no test
msg-motion-capsular_hip_some = { $what }{ $side } { $reading }: of the three motions that a capsular pattern of the hip was described by (inward rotation, flexion, abduction) { $lost } lacks more than its error against the other side; most worn hips do not show a fixed pattern; a description, no test
msg-motion-capsular_order_within = { $what }{ $side } { $reading }: lacks { $first_loss_deg } against the other side, { $other_item } { $second_loss_deg }: in the order that was called a capsular pattern; a description, no test
msg-motion-capsular_order_outside = { $what }{ $side } { $reading }: lacks { $first_loss_deg } against the other side, { $other_item } { $second_loss_deg }: not in the order that was called a capsular pattern; a description, no test
msg-motion-capsular_order_open = { $what }{ $side } { $reading }: lacks { $first_loss_deg } against the other side, { $other_item } { $second_loss_deg }: which of the two lacks more cannot be told; a description, no test
msg-motion-capsular_hip_all-row = lacks { $rotation_loss_deg }, with flexion { $flexion_loss_deg } and abduction { $abduction_loss_deg }, against the other side: the three of a capsular pattern; a description, no test
msg-motion-capsular_hip_some-row = { $lost } of the three motions of a capsular pattern lacks more than its error; a description, no test
msg-motion-capsular_order_within-row = lacks { $first_loss_deg }, { $other_item } { $second_loss_deg }: in the order of a capsular pattern; a description, no test
msg-motion-capsular_order_outside-row = lacks { $first_loss_deg }, { $other_item } { $second_loss_deg }: not in the order of a capsular pattern; a description, no test
msg-motion-capsular_order_open-row = lacks { $first_loss_deg }, { $other_item } { $second_loss_deg }: which lacks more cannot be told

msg-motion_family-hip-extension = Hip extension
msg-motion_family-hip-extension_thomas = Hip extension, other hip bent
msg-motion_family-hip-abduction = Hip abduction
msg-motion_family-hip-adduction = Hip adduction
msg-motion_family-ankle-dorsiflexion = Ankle, foot up
msg-motion_family-ankle-plantarflexion = Ankle, foot down
msg-motion_family-ankle-inversion = Foot turned in
msg-motion_family-ankle-eversion = Foot turned out
msg-motion_family-foot-mtp_first_extension = Great toe up
msg-motion_family-foot-mtp_first_flexion = Great toe down
msg-motion_way-passive_prone = passive, face down
msg-motion_way-passive_side_lying = passive, on the side
msg-motion_way-active_seated = active, seated
msg-motion_way-active_supine = active, lying
msg-motion_way-active_prone = active, face down
msg-motion_way-active_side_lying = active, on the side
msg-motion_way-active_standing = active, standing
msg-motion_way-passive_standing = passive, standing
msg-motion_way-active_knee_bent = active, knee bent
msg-motion_way-active_knee_straight = active, knee straight
msg-motion_way-passive_knee_bent = passive, knee bent
msg-motion_way-passive_knee_straight = passive, knee straight

msg-because-one_rater = measured by two examiners, while the error that is held is that of one who measured twice

## Leg length.

msg-measure-length_likely = { $what }{ $side } { $reading }: measured { $difference_mm } mm shorter than the other leg ({ $other_mm } mm), 20 or more, which tends to matter; the tape named the wrong leg in 7 of 20, so that which leg is shorter is not settled by it
msg-measure-length_likely_once = { $what }{ $side } { $reading }: measured { $difference_mm } mm shorter than the other leg ({ $other_mm } mm), from one reading of a leg: weak until it is measured again; which leg is shorter is not settled by a tape
msg-measure-length_possible = { $what }{ $side } { $reading }: measured { $difference_mm } mm shorter than the other leg ({ $other_mm } mm); over 5 is a difference that can be there, under 20 it seldom matters; which leg is shorter is not settled by a tape
msg-measure-length_possible_once = { $what }{ $side } { $reading }: measured { $difference_mm } mm shorter than the other leg ({ $other_mm } mm), from one reading of a leg; over 5 is a difference that can be there; which leg is shorter is not settled by a tape
msg-measure-length_within = { $what }: the legs differ by { $difference_mm } mm, not over 5, which cannot be told from no difference by a tape
msg-measure-length_other_position = { $what }: legs not compared, measured in different positions
msg-measure-length_falsified = { $what }: legs not compared, because a hip or knee is held from its middle position ({ $because_item }), which makes a leg seem shorter or longer than it is
msg-measure-length_no_limb = { $what }{ $side } { $reading }: not compared, the other leg ends above the ankle
msg-measure-length_alone = { $what }{ $side } { $reading }: not compared, the other leg was not measured
msg-measure-length_apparent_taught = { $what }{ $side } { $reading }: { $difference_mm } mm shorter than the other ({ $other_mm } mm) while the true lengths do not differ: a tilted pelvis or a hip that is held, as taught; the rule was not read at its source
msg-measure-blocks_likely = { $what }{ $side } { $reading }: the pelvis stands level on { $mm } mm under this leg, 20 or more, which tends to matter
msg-measure-blocks_possible = { $what }{ $side } { $reading }: the pelvis stands level on { $mm } mm under this leg; spoken of from 10, from 20 on it tends to matter
msg-measure-blocks_small = { $what }{ $side } { $reading }: the pelvis stands level on { $mm } mm under this leg; under 10, which blocks do not tell from none
msg-measure-length_likely-row = { $difference_mm } mm shorter than the other leg by tape; which leg is shorter is not settled by it
msg-measure-blocks_likely-row = the pelvis stands level on { $mm } mm under this leg

## Girth, and the knee to the wall.

msg-measure-girth_within = { $what }{ $side } { $reading }: cannot be told from the other side ({ $other_mm } mm); two readings of one leg differ as much
msg-measure-girth_within_taught = { $what }{ $side } { $reading }: cannot be told from the other side ({ $other_mm } mm); over { $needed_mm } mm is taught to be believed, and was not read at its source
msg-measure-girth_less = { $what }{ $side } { $reading }: { $difference_mm } mm less than the other side ({ $other_mm } mm), beyond what two readings differ by ({ $needed_mm })
msg-measure-girth_more = { $what }{ $side } { $reading }: { $difference_mm } mm more than the other side ({ $other_mm } mm), beyond what two readings differ by ({ $needed_mm })
msg-measure-girth_less_taught = { $what }{ $side } { $reading }: { $difference_mm } mm less than the other side ({ $other_mm } mm); over { $needed_mm } mm is taught to be wasting, and was not read at its source
msg-measure-girth_more_taught = { $what }{ $side } { $reading }: { $difference_mm } mm more than the other side ({ $other_mm } mm); over { $needed_mm } mm is taught to be believed, and was not read at its source
msg-measure-girth_clot = { $what }{ $side } { $reading }: { $difference_mm } mm more than the other side ({ $other_mm } mm), 30 or more at this level, which counts in the rule of a clot in the leg
msg-measure-girth_level = { $what }{ $side } { $reading }: sides not compared, different level (other side: { $other_item }); levels alone explain a difference; measured again at one level it can be
msg-measure-girth_other_position = { $what }{ $side } { $reading }: sides not compared, measured in different positions
msg-measure-wall_within = { $what }{ $side } { $reading }: cannot be told from the other side ({ $other_mm } mm); { $needed_mm } mm needed to believe a difference
msg-measure-wall_less = { $what }{ $side } { $reading }: { $difference_mm } mm less than the other side ({ $other_mm } mm), more than sound people differ by
msg-measure-wall_more = { $what }{ $side } { $reading }: { $difference_mm } mm more than the other side ({ $other_mm } mm), more than sound people differ by
msg-measure-wall_less_ordinary = { $what }{ $side } { $reading }: { $difference_mm } mm less than the other side ({ $other_mm } mm), beyond the { $needed_mm } needed to believe it; some sound people differ by up to 30
msg-measure-wall_more_ordinary = { $what }{ $side } { $reading }: { $difference_mm } mm more than the other side ({ $other_mm } mm), beyond the { $needed_mm } needed to believe it; some sound people differ by up to 30
msg-measure-wall_other_position = { $what }{ $side } { $reading }: sides not compared, measured in different positions
msg-measure-past_within = { $what }{ $side } { $reading }: cannot be told from last time ({ $other_mm } mm)
msg-measure-past_within_taught = { $what }{ $side } { $reading }: cannot be told from last time ({ $other_mm } mm); the figure for it was not read at its source
msg-measure-past_less = { $what }{ $side } { $reading }: { $difference_mm } mm less than last time ({ $other_mm } mm), beyond the { $needed_mm } needed to believe it
msg-measure-past_more = { $what }{ $side } { $reading }: { $difference_mm } mm more than last time ({ $other_mm } mm), beyond the { $needed_mm } needed to believe it
msg-measure-past_less_taught = { $what }{ $side } { $reading }: { $difference_mm } mm less than last time ({ $other_mm } mm); over { $needed_mm } is taught to be believed, and was not read at its source
msg-measure-past_more_taught = { $what }{ $side } { $reading }: { $difference_mm } mm more than last time ({ $other_mm } mm); over { $needed_mm } is taught to be believed, and was not read at its source
msg-measure-past_other_position = { $what }{ $side } { $reading }: not compared with last time, measured in different positions
msg-measure-girth_within-beside = cannot be told apart: two readings of one leg differ as much
msg-measure-girth_within_taught-beside = cannot be told apart: over { $needed_mm } mm is taught to be believed, and was not read at its source
msg-measure-girth_less-beside = { $difference_mm } mm less, beyond what two readings differ by ({ $needed_mm })
msg-measure-girth_more-beside = { $difference_mm } mm more, beyond what two readings differ by ({ $needed_mm })
msg-measure-girth_less_taught-beside = { $difference_mm } mm less; over { $needed_mm } mm is taught to be wasting, and was not read at its source
msg-measure-girth_more_taught-beside = { $difference_mm } mm more; over { $needed_mm } mm is taught to be believed, and was not read at its source
msg-measure-girth_clot-beside = { $difference_mm } mm more, which counts in the rule of a clot
msg-measure-girth_level-beside = sides not compared, different level
msg-measure-girth_other_position-beside = sides not compared, measured in different positions
msg-measure-girth_less_taught-row = { $difference_mm } mm less than the other side ({ $other_mm } mm); over { $needed_mm } mm is taught to be wasting, and was not read at its source
msg-measure-girth_more_taught-row = { $difference_mm } mm more than the other side ({ $other_mm } mm); over { $needed_mm } mm is taught to be believed, and was not read at its source
msg-measure-girth_less-row = { $difference_mm } mm less than the other side ({ $other_mm } mm; believed above { $needed_mm })
msg-measure-girth_more-row = { $difference_mm } mm more than the other side ({ $other_mm } mm; believed above { $needed_mm })
msg-measure-girth_clot-row = { $difference_mm } mm more than the other side ({ $other_mm } mm), which counts in the rule of a clot
msg-measure-wall_less-row = { $difference_mm } mm less than the other side ({ $other_mm } mm; believed above { $needed_mm })
msg-measure-wall_more-row = { $difference_mm } mm more than the other side ({ $other_mm } mm; believed above { $needed_mm })
msg-measure-past_less-row = { $difference_mm } mm less than last time (believed above { $needed_mm })
msg-measure-past_more-row = { $difference_mm } mm more than last time (believed above { $needed_mm })

## Colour after a press, pitting, knees and ankles apart, what was not read.

msg-measure-refill_within = { $what }{ $side } { $reading }: not over the { $limit_s } s printed for the foot at this age; a poor supply and a tight compartment are not excluded by it
msg-measure-refill_slow = { $what }{ $side } { $reading }: over the { $limit_s } s printed for the foot at this age; a cold room slows it too
msg-measure-refill_within_finger = { $what }{ $side } { $reading }: not over the { $limit_s } s that were printed for the finger of such people, of the toe none was; a poor supply and a tight compartment are not excluded by it
msg-measure-refill_slow_finger = { $what }{ $side } { $reading }: over the { $limit_s } s that were printed for the finger of such people, of the toe none was; a cold room slows it too
msg-measure-refill_open = { $what }{ $side } { $reading }: lies between the limits that may apply ({ $limit_s } to { $to_s } s); age or sex is not known closely enough
msg-measure-refill_no_limit = { $what }{ $side } { $reading }: no limit is held for this age
msg-measure-refill_slow-row = over the { $limit_s } s printed for the foot at this age
msg-measure-pitting_one_side = { $what }{ $side } { $reading }: pits on this side alone; where it is new, the rule of a clot in the leg asks for it. How fast the pit goes does not tell the cause
msg-measure-pitting_both = { $what }{ $side } { $reading }: pits on both sides; how fast the pit goes does not tell the cause
msg-measure-pitting_alone = { $what }{ $side } { $reading }: pits; the other side was not compared
msg-measure-pitting_one_side-row = pits on this side alone
msg-measure-apart_shown = { $what } { $mm } mm: shown beside { $at ->
    [9_months] children of 9 months
    [15_months] children of 15 months
    [29_months] children of 29 months
   *[8_to_11_years] children of 8 to 11 years
 } of one population (mean { $mean_mm }, up to { $to_mm }), not judged: others differ
msg-measure-apart_no_row = { $what } { $mm } mm: no figure is held for this age; whether the sides are alike, and the change by the same way of measuring, is what tells
msg-measure-apart_needs_age = { $what } { $mm } mm: age not known, not compared
msg-measure-power_held_back = { $what }{ $side } { $reading }: the effort was held back, so that this is no grade of the muscle and a weakness is not told by it
msg-because-by_depth = by its depth it is { $by_depth }
msg-measure-not_read = { $what }{ $side } could not be read ({ $reason }), so that nothing is concluded from it

## Beside missing items and joints.

msg-missing_why-minimum = of the minimum set
msg-missing_why-other_side = of the minimum set, the other side
msg-missing_why-child = asked for at this age
msg-missing_why-to_confirm = carried over or reported only, nobody looked today
msg-missing_why-no_time = not examined, no time
msg-not_examined_why-complaint = not examined, though complained of
msg-not_examined_why-other_side = not examined, the other side
msg-not_examined_why-joint_around = not examined, a joint above or below
msg-not_examined_why-transfer = not examined, stopped for transfer
msg-incomplete-not_examined = nothing of the minimum set was examined

msg-change-blocks = blocks under the foot until the pelvis stands level
msg-change-second_reading = a second reading of each leg
msg-change-same_level = both sides at one level

## What does not fit together.

msg-contradiction-tape_and_blocks = By blocks this leg is the shorter one ({ $blocks_mm } mm), by tape the other ({ $tape_mm } mm): sides exchanged, or a hip or knee held bent?
msg-contradiction-knees_and_ankles_apart = Knees apart ({ $knees_mm } mm) and ankles apart ({ $ankles_mm } mm) at once: one of the two touches when the legs are brought together
msg-contradiction-tender_without_pain_ankle = The ankle bone is tender, and there is no pain in the zone of the ankle: which of the two is meant?
msg-contradiction-tender_without_pain_midfoot = The bone of the midfoot is tender, and there is no pain in the midfoot: which of the two is meant?
msg-contradiction-steps_and_hop = Fewer than four steps, and a hop or a heel rise on one leg was done: which came first, and what can the leg do now?
msg-contradiction-kneecap_and_arc = The kneecap lies out of place, and the knee bends fully without pain: back in place meanwhile, or another finding meant?
msg-contradiction-feeling_and_filament = Feeling is said to be lost, and the filament was felt where it was tried: which places, and was it asked with closed eyes?
msg-contradiction-foot_cold_and_warm = The same foot is said to be cold and warm
msg-contradiction-pulses_and_index = No pulse felt in the foot, and an ankle-arm index as expected: pulses not found, stiff arteries, or the other leg measured?
msg-contradiction-pitting_and_level = A pit was graded, and the swelling is said to reach nowhere
msg-contradiction-no_pit_and_level = No pit, and the swelling is said to reach a level: swelling that does not pit, or one of the two not meant?
msg-contradiction-heel_rise_and_count = The heel is said not to rise on this leg, and rises were counted
msg-contradiction-more_on_both = The same is said of each side against the other (warmer, fuller, thinner, lower, further): of two sides one at most can be so
msg-contradiction-crest_on_both = The pelvis is said to be high, or low, on both sides at once
msg-contradiction-bowed_and_angle = The knee is said to be bowed, and its angle is knock-kneed: sign or side exchanged?
msg-contradiction-knock_kneed_and_angle = The knee is said to be knock-kneed, and its angle is bowed: sign or side exchanged?
msg-contradiction-hip_bent_and_back = The hip is held bent on the back, and goes behind the trunk in another position: pelvis not held, or another reading meant?
msg-contradiction-prosthesis_and_limb = A prosthesis, and the limb is said to be whole
msg-contradiction-heel_walk_and_power = Walks on the heel, and the foot does not lift: which of the two is meant?
msg-contradiction-toe_walk_and_power = Walks on the toes, and the foot does not push down: which of the two is meant?
msg-contradiction-skin_whole_and_open = The skin of the foot is said to be whole, and there is an ulcer on it
