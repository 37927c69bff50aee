# What the catalogue says of vessels: pulses, pressures, colour, warmth, swelling, veins. Label, technique, what it is for, what counts, when not.
# A dot in a message name is a dash here. Language: English. Reviewed by: nobody yet.

msg-item-vessel_pulse_femoral-short = Pulse in the groin
msg-item-vessel_pulse_femoral-how = Lying, leg slightly out. Press half way between the front corner of the pelvis and the middle of the pubic bone, just below the fold. Both sides.
msg-item-vessel_pulse_femoral-purpose = Weak here: the vessel is narrowed above the groin.
msg-item-vessel_pulse_femoral-care = Covered, with a chaperone offered. A lump that pulsates is not pressed. Not felt after an injury or with a cold leg: call now. Pulses felt leave a lack of blood not excluded.
msg-item-vessel_pulse_femoral-errors = Own pulse in the finger. A heavy belly hides it: lift the fold.
msg-item-vessel_pulse_femoral-otherwise = Cannot lie flat: half sitting. Large person: two hands, or the Doppler.

msg-item-vessel_pulse_popliteal_broad-short = Pulse behind the knee broad
msg-item-vessel_pulse_popliteal_broad-how = While feeling the pulse behind the knee: does it push the fingers apart, easily felt over a wide place?
msg-item-vessel_pulse_popliteal_broad-purpose = A widened vessel behind the knee, which can close or send clots.
msg-item-vessel_pulse_popliteal_broad-care = Do not press it again and again. Cold foot with it: call now.
msg-item-vessel_pulse_popliteal_broad-errors = A cyst that lies on the vessel moves up and down but does not widen.
msg-item-vessel_pulse_popliteal_broad-otherwise = Cannot lie: seated with the knee slack.
msg-item-vessel_pulse_popliteal_broad-yes = broad, pushes the fingers apart
msg-item-vessel_pulse_popliteal_broad-no = not broad

msg-item-vessel_pressure_dorsalis_pedis-short = Pressure, artery on the back of the foot
msg-item-vessel_pressure_dorsalis_pedis-how = Lying still for 5 to 10 minutes, cuff just above the ankle bones, probe on the back (upper side) of the foot outside the tendon that lifts the great toe. The pressure at which the sound returns. No sound at all: signal absent.
msg-item-vessel_pressure_dorsalis_pedis-purpose = With the other foot artery and both arms: the ankle-arm ratio, worked out by the program from the higher foot artery and the higher arm.
msg-item-vessel_pressure_dorsalis_pedis-care = Not over an ulcer, a graft, a fresh fracture or an open wound, and not over a painful calf that may hold a clot.
msg-item-vessel_pressure_dorsalis_pedis-errors = Not rested first; cuff too narrow; let down too fast; probe slides off. A stiff vessel, with diabetes or failing kidneys, gives too high a number: toe pressure then.
msg-item-vessel_pressure_dorsalis_pedis-otherwise = Cannot lie flat: half sitting, and write it; seated is not comparable. Large ankle: a wide cuff. No Doppler: not done, no instrument; never 0.

msg-item-vessel_pressure_posterior_tibial_after_exercise-short = Pressure after exercise, posterior tibial
msg-item-vessel_pressure_posterior_tibial_after_exercise-how = At rest first. Then the person walks or rises on the toes until the familiar pain comes, lies down at once, and the pressure at the posterior tibial artery is measured with the probe behind the inner ankle bone. The arm is measured again too.
msg-item-vessel_pressure_posterior_tibial_after_exercise-purpose = For pain on walking where the ratio at rest is above 0.90 and not above 1.40: a fall speaks of narrowed vessels.
msg-item-vessel_pressure_posterior_tibial_after_exercise-care = Not over an ulcer, a graft, a fresh fracture or an open wound, and not over a painful calf that may hold a clot. Not with chest pain, breathlessness, pain at rest, an ulcer, a hot foot, where a bone may be broken or a tendon torn, or anything else that forbids walking.
msg-item-vessel_pressure_posterior_tibial_after_exercise-errors = Measured minutes later: the fall is over. Another exercise the next time.
msg-item-vessel_pressure_posterior_tibial_after_exercise-otherwise = Cannot walk: heel lifts seated, and write it; or left out.

msg-item-vessel_pressure_dorsalis_pedis_after_exercise-short = Pressure after exercise, back of the foot
msg-item-vessel_pressure_dorsalis_pedis_after_exercise-how = At rest first. Then the person walks or rises on the toes until the familiar pain comes, lies down at once, and the pressure at the artery on the back of the foot is measured with the probe on the back of the foot. The arm is measured again too.
msg-item-vessel_pressure_dorsalis_pedis_after_exercise-purpose = For pain on walking where the ratio at rest is above 0.90 and not above 1.40: a fall speaks of narrowed vessels.
msg-item-vessel_pressure_dorsalis_pedis_after_exercise-care = Not over an ulcer, a graft, a fresh fracture or an open wound, and not over a painful calf that may hold a clot. Not with chest pain, breathlessness, pain at rest, an ulcer, a hot foot, where a bone may be broken or a tendon torn, or anything else that forbids walking.
msg-item-vessel_pressure_dorsalis_pedis_after_exercise-errors = Measured minutes later: the fall is over. Another exercise the next time.
msg-item-vessel_pressure_dorsalis_pedis_after_exercise-otherwise = Cannot walk: heel lifts seated, and write it; or left out.

msg-item-vessel_pressure_arm_after_exercise-short = Pressure after exercise, arm
msg-item-vessel_pressure_arm_after_exercise-how = At once after the foot pressures that follow the exercise, on the arm that was higher at rest. The pressure at which the sound returns.
msg-item-vessel_pressure_arm_after_exercise-purpose = The number that the foot is compared with after exercise.
msg-item-vessel_pressure_arm_after_exercise-care = Not on an arm with a shunt for dialysis. Not at all where the exercise is not done.
msg-item-vessel_pressure_arm_after_exercise-errors = Left out, so that the rise in the arm is taken for a fall in the foot.
msg-item-vessel_pressure_arm_after_exercise-otherwise = Cannot lie flat: half sitting, as for the foot.

msg-item-vessel_pressure_toe-short = Pressure, great toe
msg-item-vessel_pressure_toe-how = Lying, feet warm, small cuff round the base of the great toe, probe or light sensor at its end. The pressure at which the signal returns.
msg-item-vessel_pressure_toe-purpose = Where the ankle vessels are too stiff to be pressed shut, as with diabetes or failing kidneys.
msg-item-vessel_pressure_toe-care = Not over an ulcer or a black toe.
msg-item-vessel_pressure_toe-errors = Cold foot: too low. Cuff of the wrong width.
msg-item-vessel_pressure_toe-otherwise = No great toe: the second, and write it. No small cuff: not done, no instrument.

msg-item-vessel_doppler_arterial_audible-short = Doppler: artery heard at the foot
msg-item-vessel_doppler_arterial_audible-how = Gel, probe slanting, on the back (upper side) of the foot and behind the inner ankle. Yes when a beating sound is heard at either.
msg-item-vessel_doppler_arterial_audible-purpose = Grades a foot that lacks blood.
msg-item-vessel_doppler_arterial_audible-care = Not heard with pain, numbness or a cold foot: call now. Heard leaves a lack of blood not excluded.
msg-item-vessel_doppler_arterial_audible-errors = Probe pressed too hard; wrong place; flat battery: try it on the own wrist.
msg-item-vessel_doppler_arterial_audible-otherwise = No Doppler: pulses by hand; not done, no instrument.
msg-item-vessel_doppler_arterial_audible-yes = artery heard
msg-item-vessel_doppler_arterial_audible-no = no artery heard

msg-item-vessel_doppler_venous_audible-short = Doppler: vein heard at the foot
msg-item-vessel_doppler_venous_audible-how = Probe beside the artery behind the inner ankle; squeeze the foot gently and listen for the rush. Yes when it is heard.
msg-item-vessel_doppler_venous_audible-purpose = With no vein heard and a stiff, numb foot the limb may be past saving: still now.
msg-item-vessel_doppler_venous_audible-care = No squeezing of a calf that may hold a clot.
msg-item-vessel_doppler_venous_audible-errors = Pressing the probe closes the vein.
msg-item-vessel_doppler_venous_audible-otherwise = No Doppler: not done, no instrument.
msg-item-vessel_doppler_venous_audible-yes = vein heard
msg-item-vessel_doppler_venous_audible-no = no vein heard

msg-item-vessel_bruit_iliac-short = Bruit above the groin
msg-item-vessel_bruit_iliac-how = At rest, stethoscope lightly just above the fold of the groin. Yes when a blowing sound goes with the pulse.
msg-item-vessel_bruit_iliac-purpose = Narrowed vessel; with pain on walking it speaks for it.
msg-item-vessel_bruit_iliac-care = After injury a bruit is a hard sign of a torn vessel: call now. None heard leaves narrowed vessels not excluded.
msg-item-vessel_bruit_iliac-errors = Pressing hard makes a bruit.
msg-item-vessel_bruit_iliac-otherwise = Cannot lie: seated or half sitting.

msg-item-vessel_bruit_femoral-short = Bruit in the groin
msg-item-vessel_bruit_femoral-how = At rest, stethoscope lightly over the pulse in the groin. Yes when a blowing sound goes with the pulse.
msg-item-vessel_bruit_femoral-purpose = Narrowed vessel; with pain on walking it speaks for it.
msg-item-vessel_bruit_femoral-care = After injury a bruit is a hard sign of a torn vessel: call now. None heard leaves narrowed vessels not excluded.
msg-item-vessel_bruit_femoral-errors = Pressing hard makes a bruit.
msg-item-vessel_bruit_femoral-otherwise = Cannot lie: seated or half sitting.

msg-item-vessel_bruit_popliteal-short = Bruit behind the knee
msg-item-vessel_bruit_popliteal-how = At rest, stethoscope lightly over the hollow of the knee. Yes when a blowing sound goes with the pulse.
msg-item-vessel_bruit_popliteal-purpose = Narrowed vessel; with pain on walking it speaks for it.
msg-item-vessel_bruit_popliteal-care = After injury a bruit is a hard sign of a torn vessel: call now. None heard leaves narrowed vessels not excluded.
msg-item-vessel_bruit_popliteal-errors = Pressing hard makes a bruit.
msg-item-vessel_bruit_popliteal-otherwise = Cannot lie: seated or half sitting.

msg-item-vessel_thrill-short = Buzzing felt over a vessel
msg-item-vessel_thrill-how = Gloved flat hand beside the wound or over the swelling, without pressing: is a buzz felt with each beat?
msg-item-vessel_thrill-purpose = A hard sign of a torn vessel after injury.
msg-item-vessel_thrill-care = Yes after injury: call now; no more handling.
msg-item-vessel_thrill-errors = Muscle twitching.

msg-item-vessel_haematoma_expanding-short = Swelling that grows or beats
msg-item-vessel_haematoma_expanding-how = A swelling after injury that grows while it is watched, or beats. Mark its edge with the time.
msg-item-vessel_haematoma_expanding-purpose = A hard sign of a torn vessel.
msg-item-vessel_haematoma_expanding-care = Yes: call now. No cutting, no needle, no pressing.
msg-item-vessel_haematoma_expanding-errors = Swelling of the joint itself.

msg-item-vessel_bleeding_active-short = Bleeds now
msg-item-vessel_bleeding_active-how = Blood that runs or spurts from a wound of this limb, or soaks a dressing.
msg-item-vessel_bleeding_active-purpose = First of all questions after an injury.
msg-item-vessel_bleeding_active-care = Yes: press on it, lay the person down, call; all else waits. What sticks in it stays in: press beside it.

msg-item-vessel_capillary_refill_great_toe-short = Colour returns, great toe, seconds
msg-item-vessel_capillary_refill_great_toe-how = Room of 20 to 25 °C. Press the pulp of the great toe for 5 s, let go, and time until the colour is back.
msg-item-vessel_capillary_refill_great_toe-purpose = The number behind "colour comes back slowly"; for repeats before and after a splint.
msg-item-vessel_capillary_refill_great_toe-care = Back in time leaves trouble of vessel or compartment not excluded.
msg-item-vessel_capillary_refill_great_toe-errors = Cold room, nail varnish, poor light. The limit depends on age and sex.
msg-item-vessel_capillary_refill_great_toe-otherwise = Dark or thick skin: under the nail. No great toe: another, and write it.

msg-item-vessel_foot_warm-short = Foot warmer than the other
msg-item-vessel_foot_warm-how = Back of the hand over ankle, midfoot and toes of both feet, uncovered for some minutes. Yes when this one is warmer.
msg-item-vessel_foot_warm-purpose = Warm, red and swollen with little pain in a numb foot: a collapsing foot or infection, whatever the skin looks like.
msg-item-vessel_foot_warm-care = Yes in a numb foot: off the foot at once, same day; tenderness says little there.
msg-item-vessel_foot_warm-errors = One foot was covered or in the sun. Both warm.
msg-item-vessel_foot_warm-otherwise = One limb: compare with the shin above and write it.

msg-item-vessel_foot_colour-short = Colour of the foot
msg-item-vessel_foot_colour-how = Both feet side by side, lying, in daylight; in dark skin the soles and nail beds. The one that fits best.
msg-item-vessel_foot_colour-purpose = Pale or mottled after a sudden pain: lack of blood. Blue and swollen: veins.
msg-item-vessel_foot_colour-care = Pale, blue, mottled or dusky with a cold foot or a missing pulse: call now.
msg-item-vessel_foot_colour-errors = Judged with the legs hanging: red there may be the lack of blood itself.

msg-item-vessel_skin_temperature_foot-short = Skin temperature of the foot
msg-item-vessel_skin_temperature_foot-how = Both feet bare for some minutes in the same room. Skin thermometer at the same place of both feet, the warmest place of the ill one; write the place.
msg-item-vessel_skin_temperature_foot-purpose = A difference of 2 degrees or more between feet speaks of a collapsing foot or infection; followed at each visit.
msg-item-vessel_skin_temperature_foot-care = No difference leaves either not excluded.
msg-item-vessel_skin_temperature_foot-errors = Different places; wet skin; one foot had a sock. Both ill: no comparison.
msg-item-vessel_skin_temperature_foot-otherwise = No skin thermometer: back of the hand, as "foot warm". One limb: own past.

msg-item-vessel_elevation_pallor-short = Pales when lifted
msg-item-vessel_elevation_pallor-how = Lying, both legs lifted together and held until the colour settles. Yes when the sole turns pale, more than the other.
msg-item-vessel_elevation_pallor-purpose = Lack of blood at rest.
msg-item-vessel_elevation_pallor-care = Not where the foot is already pale and cold with pain: an ischaemic limb is not lifted. Nor where a bone may be broken or a compartment may be tight.
msg-item-vessel_elevation_pallor-errors = Poor light; dark soles: compare.
msg-item-vessel_elevation_pallor-otherwise = Cannot lift the legs: carried by the examiner; a heavy limb: left out.

msg-item-vessel_dependency_redness-short = Dark red when it hangs
msg-item-vessel_dependency_redness-how = After lifting: seated, legs hanging. Yes when the foot turns dusky red, more than the other.
msg-item-vessel_dependency_redness-purpose = Lack of blood at rest. Redness that goes on lifting speaks for the vessels; infection stays not excluded.
msg-item-vessel_dependency_redness-care = With pain at rest or an ulcer over weeks: vessel specialist, urgent.
msg-item-vessel_dependency_redness-errors = Called an infection without lifting the leg; or an infection overlooked because the vessels are bad too.
msg-item-vessel_dependency_redness-otherwise = Cannot sit: leg over the edge of the couch.

msg-item-vessel_vein_filling-short = Veins fill on hanging, seconds
msg-item-vessel_vein_filling-how = After lifting until the veins on the back of the foot are empty: seated, legs hanging; time until a vein stands up again.
msg-item-vessel_vein_filling-purpose = Slow filling speaks of narrowed arteries.
msg-item-vessel_vein_filling-care = Not lifted where the foot is pale and cold with pain. Nor where a bone may be broken or a compartment may be tight.
msg-item-vessel_vein_filling-errors = Varicose veins fill at once from above and tell nothing.
msg-item-vessel_vein_filling-otherwise = Cannot sit: leg over the edge of the couch. No veins seen: not done.

msg-item-vessel_oedema_pitting-short = Oedema, pit
msg-item-vessel_oedema_pitting-how = Lying. Press with the thumb over the shin bone just above the ankle, slowly, let go; judge the depth of the pit in millimetres. The same place on both sides.
msg-item-vessel_oedema_pitting-purpose = One side, new: a clot is asked after. Both sides: heart, kidney, liver, medicine or veins.
msg-item-vessel_oedema_pitting-care = Lightly over a tender calf. One side and new: no compression, no massage.
msg-item-vessel_oedema_pitting-errors = Pressed on muscle; pressed too briefly. Depth and time of recovery do not tell the cause. Swelling that does not pit is not none.
msg-item-vessel_oedema_pitting-otherwise = Bed-bound: over the sacrum as well; write it. One limb: own past.

msg-item-vessel_oedema_recovery-short = Oedema, pit goes, seconds
msg-item-vessel_oedema_recovery-how = Time from letting go until the pit is gone.
msg-item-vessel_oedema_recovery-purpose = Stands beside the depth; it does not tell the cause.
msg-item-vessel_oedema_recovery-errors = Looked at from above: slanting light shows the pit.

msg-item-vessel_oedema_level-short = Oedema, how far up
msg-item-vessel_oedema_level-how = Press in steps from the foot upward. The highest place that still pits.
msg-item-vessel_oedema_level-purpose = Follows swelling; above the knee on one side is asked after in a clot.
msg-item-vessel_oedema_level-care = Lightly over a tender calf.
msg-item-vessel_oedema_level-errors = Stopped at the ankle.
msg-item-vessel_oedema_level-otherwise = Bed-bound: sacrum too; write it.

msg-item-vessel_oedema_more_this_side-short = Pitting oedema, only or more in this leg
msg-item-vessel_oedema_more_this_side-how = Both legs at the same place. Yes when it pits in this leg alone, or more than in the other.
msg-item-vessel_oedema_more_this_side-purpose = One of the points asked when a clot is suspected.
msg-item-vessel_oedema_more_this_side-care = No leaves a clot not excluded.
msg-item-vessel_oedema_more_this_side-errors = Both legs ill: the worse leg is the one asked about.

msg-item-vessel_whole_leg_swollen-short = Whole leg swollen
msg-item-vessel_whole_leg_swollen-how = Foot to groin, both legs side by side. Yes when the whole leg is fuller.
msg-item-vessel_whole_leg_swollen-purpose = One of the points asked when a clot is suspected.
msg-item-vessel_whole_leg_swollen-care = Blue or pale, tense and painful: call now. No leaves a clot not excluded.
msg-item-vessel_whole_leg_swollen-errors = Calf alone is another point. Lymph swelling of years.

msg-item-vessel_veins_collateral-short = New surface veins, not varicose
msg-item-vessel_veins_collateral-how = Look at shin, thigh and groin. Yes for wide, straight surface veins that this leg has and the other does not.
msg-item-vessel_veins_collateral-purpose = One of the points asked when a clot is suspected.
msg-item-vessel_veins_collateral-care = No leaves a clot not excluded.
msg-item-vessel_veins_collateral-errors = Varicose veins do not count.

msg-item-vessel_veins_varicose-short = Varicose veins
msg-item-vessel_veins_varicose-how = Standing where possible. Yes for winding, bulging surface veins; brown skin or eczema at the ankle in the remark.
msg-item-vessel_veins_varicose-purpose = Explains swelling and ulcers at the inner ankle; does not count as a sign of a clot.
msg-item-vessel_veins_varicose-errors = Looked at lying: they are empty.
msg-item-vessel_veins_varicose-otherwise = Cannot stand: legs hanging over the edge.
