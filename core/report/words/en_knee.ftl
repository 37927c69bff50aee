# The knee beyond norm, other side and last time: active against passive, straight, capsular pattern, fluid, looseness.
# Variables as in en.ftl; besides: end_feel, grade, instead (an item), flexion_loss_deg, extension_loss_deg, ratio, ratio_low, ratio_high.

## Motion.

msg-motion-lag_below = { $what }{ $side } { $reading }: less than what the joint allows when it is moved ({ $other }) by { $difference }; a lag of extension, more than the { $needed } needed to believe it
msg-motion-lag_not_distinguishable = { $what }{ $side } { $reading }: a lag cannot be told from the passive motion ({ $other }); { $needed } needed to believe it
msg-motion-lag_needs_instrument = { $what }{ $side } { $reading }: not compared with the passive motion, needs the instrument of both
msg-motion-lag_other_position = { $what }{ $side } { $reading }: not compared with the passive motion, measured in different positions
msg-motion-active_below = { $what }{ $side } { $reading }: less than what the joint allows when it is moved ({ $other }) by { $difference }; more than the { $needed } needed to believe it
msg-motion-active_not_distinguishable = { $what }{ $side } { $reading }: cannot be told from the passive motion ({ $other }); { $needed } needed to believe a difference
msg-motion-active_needs_instrument = { $what }{ $side } { $reading }: not compared with the passive motion, needs the instrument of both
msg-motion-active_other_position = { $what }{ $side } { $reading }: not compared with the passive motion, measured in different positions

msg-motion-contracture_below = { $what }{ $side } { $reading }: does not reach straight, by more than the error of the { $how }; a fixed flexion or a block, which the end feel tells apart
msg-motion-contracture_not_distinguishable = { $what }{ $side } { $measured }: cannot be told from straight, { $how }
msg-motion-contracture_needs_instrument = { $what }{ $side } { $reading }: whether it reaches straight cannot be said yet, needs the instrument
msg-motion-contracture_first_year = { $what }{ $side } { $reading }: does not reach straight; in the first months a lack of extension is ordinary and fades
msg-motion-hyperextension_one_side = { $what }{ $side } { $reading }: goes beyond straight, and more than the other side ({ $other }) by { $difference }; some sound knees do so too
msg-motion-hyperextension_both = { $what }{ $side } { $reading }: goes beyond straight, and cannot be told from the other side ({ $other })
msg-motion-hyperextension_both_wide = { $what }{ $side } { $reading }: goes beyond straight by more than 10 on both sides (other { $other }), with no difference to believe; a hint of joints that move far in general, and other joints would show it
msg-motion-hyperextension_alone = { $what }{ $side } { $reading }: goes beyond straight; the other side was not compared
msg-motion-extension_deficit_below = { $what }{ $side } { $reading }: lacks { $difference } of extension against the other side ({ $other }); more than the { $needed } needed to believe it
msg-motion-extension_deficit_not_distinguishable = { $what }{ $side } { $reading }: a lack of extension cannot be told from the other side ({ $other }); { $needed } needed to believe it
msg-motion-capsular_within = { $what }{ $side } { $reading }: lost { $flexion_loss_deg } of flexion and { $extension_loss_deg } of extension against the other side, ratio { $ratio }; inside what was called a capsular pattern ({ $ratio_low } to { $ratio_high }); a description, no test
msg-motion-capsular_outside = { $what }{ $side } { $reading }: lost { $flexion_loss_deg } of flexion and { $extension_loss_deg } of extension against the other side, ratio { $ratio }; outside what was called a capsular pattern ({ $ratio_low } to { $ratio_high }); a description, no test
msg-motion-lag_below-row = a lag of extension: less than the passive motion by { $difference } (believed above { $needed })
msg-motion-lag_not_distinguishable-row = a lag cannot be told from the passive motion (believed above { $needed })
msg-motion-lag_needs_instrument-row = not compared with the passive motion, needs the instrument of both
msg-motion-lag_other_position-row = not compared with the passive motion, measured in different positions
msg-motion-active_below-row = less than the passive motion by { $difference } (believed above { $needed })
msg-motion-active_not_distinguishable-row = cannot be told from the passive motion (believed above { $needed })
msg-motion-active_needs_instrument-row = not compared with the passive motion, needs the instrument of both
msg-motion-active_other_position-row = not compared with the passive motion, measured in different positions
msg-motion-contracture_below-row = does not reach straight, beyond its error: a fixed flexion or a block, which the end feel tells apart
msg-motion-contracture_not_distinguishable-row = cannot be told from straight ({ $span })
msg-motion-contracture_needs_instrument-row = whether it reaches straight needs the instrument
msg-motion-contracture_first_year-row = does not reach straight; in the first months that is ordinary and fades
msg-motion-hyperextension_one_side-row = beyond straight, and more than the other side ({ $other }) by { $difference }; some sound knees do so too
msg-motion-hyperextension_both-row = beyond straight; cannot be told from the other side ({ $other })
msg-motion-hyperextension_both_wide-row = beyond straight by more than 10 on both sides, with no difference to believe; a hint of joints that move far in general
msg-motion-hyperextension_alone-row = beyond straight; the other side was not compared
msg-motion-extension_deficit_below-row = lacks { $difference } of extension against the other side ({ $other }; believed above { $needed })
msg-motion-extension_deficit_not_distinguishable-row = a lack of extension cannot be told from the other side ({ $other }; believed above { $needed })
msg-motion-capsular_within-row = lost { $flexion_loss_deg } of flexion and { $extension_loss_deg } of extension, ratio { $ratio }: inside what was called a capsular pattern ({ $ratio_low } to { $ratio_high }); a description, no test
msg-motion-capsular_outside-row = lost { $flexion_loss_deg } of flexion and { $extension_loss_deg } of extension, ratio { $ratio }: outside what was called a capsular pattern ({ $ratio_low } to { $ratio_high }); a description, no test
msg-motion-conventions_differ = written in another convention: { $entered } now, { $other_entered } then
msg-motion-positions_named = { $position } now, { $other_position } there

## Fluid.

msg-effusion-no_wave = { $what }{ $side } { $reading }: no wave felt today; a little fluid can be missed, and examiners agree only in part
msg-effusion-trace = { $what }{ $side } { $reading }: a trace, which leaves fluid open
msg-effusion-present = { $what }{ $side } { $reading }: fluid in the knee
msg-effusion-tense = { $what }{ $side } { $reading }: so full that fluid does not move; pressing on the kneecap shows nothing more in such a knee
msg-effusion-tap_positive = { $what }{ $side } { $reading }: the kneecap knocks on the thigh bone, as with a middling amount of fluid
msg-effusion-fluctuation_positive = { $what }{ $side } { $reading }: the impulse passes, as with much fluid
msg-effusion-sign_negative = { $what }{ $side } { $reading }: not felt; a small amount of fluid does not show it
msg-effusion-sign_equivocal = { $what }{ $side } { $reading }: open
msg-effusion-tap_tense = { $what }{ $side } { $reading }: tells nothing, because in a tense knee the kneecap does not knock
msg-effusion-tap_small = { $what }{ $side } { $reading }: tells nothing against fluid, because with a small amount the kneecap does not knock; the stroke test found it
msg-effusion-fluctuation_small = { $what }{ $side } { $reading }: tells nothing against fluid, because a small amount gives no impulse; the stroke test found it
msg-effusion-felt_poorly = { $what }{ $side } { $reading }: tells nothing, it could not be felt well
msg-effusion-examiners_disagree = { $what }{ $side } { $reading }: examiners differ; both are kept and neither is believed more
msg-effusion-not_counted = { $what }{ $side } { $reading }: as written it counts neither way
msg-contradiction-effusion_sign_without_wave = A sign of much fluid, and no wave on stroking: knee not straight, a bursa, or another way of doing it?

## Looseness. `loose` and `not_loose` speak of the difference from the other knee.

msg-laxity-loose = { $what }{ $side } { $reading }: looser than the other knee
msg-laxity-loose_alone = { $what }{ $side } { $reading }: graded looser than the other knee, of which nothing is recorded: the examiner's own comparison
msg-laxity-loose_end = { $what }{ $side } { $reading }: counts as loose by how it ends, not by how far it goes
msg-laxity-loose_end_alone = { $what }{ $side } { $reading }: counts as loose by how it ends, not by how far it goes; nothing of the other knee is recorded
msg-laxity-open = { $what }{ $side } { $reading }: a little more than the other knee with a firm end; open
msg-laxity-open_alone = { $what }{ $side } { $reading }: graded a little more than the other knee with a firm end, and nothing of that knee is recorded; open
msg-laxity-not_loose = { $what }{ $side } { $reading }: not looser than the other knee today
msg-laxity-not_loose_alone = { $what }{ $side } { $reading }: not graded looser than the other knee, of which nothing is recorded: the examiner's own comparison
msg-laxity-not_loose_weak = { $what }{ $side } { $reading }: not looser than the other knee as far as it could be felt; cannot be told from this test now
msg-laxity-not_loose_weak_alone = { $what }{ $side } { $reading }: not graded looser than the other knee, of which nothing is recorded, as far as it could be felt; cannot be told from this test now
msg-laxity-both_sides = { $what }{ $side } { $reading }: found on both sides, so that no side difference is claimed; joints that move far in general, or both ill
msg-laxity-posterior_sag = { $what }{ $side } { $reading }: the shin bone had sagged back, so that this may be its return; the posterior ligament comes first. Where does the shin bone stand with the step restored?
msg-laxity-sagged_start = { $what }{ $side } { $reading }: the shin bone had sagged back before the push, so that no further travel tells nothing
msg-laxity-guarded = { $what }{ $side } { $reading }: tells nothing, because the muscles held the knee; of use again once it has settled
msg-laxity-tense_effusion = { $what }{ $side } { $reading }: tells nothing, because a tense knee holds the shin bone
msg-laxity-medial_side_loose = { $what }{ $side } { $reading }: tells nothing, because the movement needs a firm inner side
msg-laxity-examiners_disagree = { $what }{ $side } { $reading }: examiners differ; both are kept and neither is believed more
msg-laxity-not_counted = { $what }{ $side } { $reading }: as written it counts neither way
msg-laxity-implant = { $what }{ $side } { $reading }: replaced knee, of which these tests do not speak
msg-laxity-fused = { $what }{ $side } { $reading }: fused knee, of which these tests do not speak
msg-laxity-sag = { $what }{ $side } { $reading }: the shin bone stands back; tests that pull it forward begin behind their start
msg-laxity-sag_both_sides = { $what }{ $side } { $reading }: the shin bone stands back on both sides, so that the other knee is no measure

msg-because-posterior_sag = begun from a sagged shin bone
msg-because-sagged_start = begun from a sagged shin bone
msg-because-guarded = muscles held the knee
msg-because-tense_effusion = tense with fluid
msg-because-medial_side_loose = inner side loose
msg-because-heavy_thigh = heavy thigh: the looser knee was often missed in this way
msg-because-small_hands = small hands: the looser knee was often missed in this way
msg-because-first_weeks = first two weeks: what is felt now often differs from what a later test or film shows
msg-because-no_reference = the other knee is replaced or fused and is no measure
msg-laxity-instead = would tell more: { $item }

msg-change-other_side = the other side
msg-change-other_test = another test that suits this knee
msg-change-repeat_test = the test repeated, muscles at rest, or by another examiner
msg-change-two_weeks = the test again after two weeks
msg-change-step_restored = the step in front of the condyles restored, then the push back

msg-missing-other_side = the other side
