# What the catalogue says of the whole person: vital signs, general look, results from the laboratory. Label, technique, what it is for, what counts, when not.
# A dot in a message name is a dash here. Language: English. Reviewed by: nobody yet.

msg-item-general_blood_pressure_systolic-short = Blood pressure, upper
msg-item-general_blood_pressure_systolic-how = Rested, cuff of the right width on the upper arm at heart level. The upper number. Where both arms are measured, the higher counts.
msg-item-general_blood_pressure_systolic-purpose = Unwell, injured, bleeding or infected; under 90 with an infection: infection of the whole body.
msg-item-general_blood_pressure_systolic-care = Low with a fast pulse after injury or with fever: call now. Not on an arm with a shunt for dialysis.
msg-item-general_blood_pressure_systolic-errors = Cuff too narrow for a large arm reads too high; arm hangs.
msg-item-general_blood_pressure_systolic-otherwise = No arm to use: leave it, and write pulse and breathing.

msg-item-general_blood_pressure_diastolic-short = Blood pressure, lower
msg-item-general_blood_pressure_diastolic-how = The lower number of the same measurement.
msg-item-general_blood_pressure_diastolic-purpose = Stands against a measured compartment pressure.
msg-item-general_blood_pressure_diastolic-errors = Taken at another time than the compartment pressure.

msg-item-general_respiratory_rate-short = Breaths in a minute
msg-item-general_respiratory_rate-how = Counted for a full minute without saying so; a child asleep or calm on the lap.
msg-item-general_respiratory_rate-purpose = Fast with fever or a wound: infection of the whole body; fast with a swollen leg: a clot may have gone to the lung.
msg-item-general_respiratory_rate-care = More than 20 in a grown-up with an infected foot counts toward severe.
msg-item-general_respiratory_rate-errors = Counted for some seconds and multiplied; the person knows and changes it.

msg-item-general_oxygen_saturation-short = Oxygen in the blood, of 100
msg-item-general_oxygen_saturation-how = Sensor on a warm finger without varnish until the reading stands still.
msg-item-general_oxygen_saturation-purpose = Breathless, chest pain, or unwell with a leg.
msg-item-general_oxygen_saturation-care = A good number leaves a clot in the lung not excluded.
msg-item-general_oxygen_saturation-errors = Cold hand, varnish, movement; reads too high in dark skin.
msg-item-general_oxygen_saturation-otherwise = No sensor: not done, no instrument; breaths in a minute.

msg-item-general_consciousness-short = Awake and with it
msg-item-general_consciousness-how = Alert; newly confused; answers to voice only; to pain only; not at all. What is usual for this person is asked of those who know them.
msg-item-general_consciousness-purpose = New confusion counts as grave illness until shown otherwise, and makes answers and tenderness unreliable.
msg-item-general_consciousness-care = Any but alert, and new: call now.
msg-item-general_consciousness-errors = Old dementia taken for new, or new taken for old.

msg-item-general_temperature_highest_7_days-short = Highest temperature, now or last seven days
msg-item-general_temperature_highest_7_days-how = The highest that was measured, by whom and where in the remark; felt only is not a number.
msg-item-general_temperature_highest_7_days-purpose = A child with a sore joint: fever in the week before counts, not only now.
msg-item-general_temperature_highest_7_days-care = No fever says nothing against an infected joint.
msg-item-general_temperature_highest_7_days-errors = Armpit readings are lower. A fever medicine hides it: ask.

msg-item-general_body_height-short = Body height
msg-item-general_body_height-how = Standing against a wall without shoes, heels down, a flat thing on the head. A child under two lying.
msg-item-general_body_height-purpose = Growth of a child over the visits; bow legs in a child small for its age are looked into.
msg-item-general_body_height-errors = Bent hips or knees, a leg shorter: write it.
msg-item-general_body_height-otherwise = Cannot stand: lying along a tape, and write it.

msg-item-general_child_at_play-short = Child at play, seen from a distance
msg-item-general_child_at_play-how = Before anybody touches: as usual; plays but spares the leg; quiet; will not move or be moved.
msg-item-general_child_at_play-purpose = Tells more than any hand on a frightened child.
msg-item-general_child_at_play-care = Will not move, or lies still with a leg bent and turned out: an infected joint until shown otherwise, same day.
msg-item-general_child_at_play-errors = Watched after the examination only.
msg-item-general_child_at_play-otherwise = A baby: does it kick with both legs?

msg-item-general_pallor-short = Pale lids or palms
msg-item-general_pallor-how = Inside of the lower lid and palms in daylight, beside the own.
msg-item-general_pallor-purpose = With bone pain or bruises in a child: blood count within two days; sickle cell; bleeding.
msg-item-general_pallor-care = A no in poor light leaves it not excluded.
msg-item-general_pallor-errors = Lamp light; dark skin: lids and palms only.

msg-item-general_nodes-short = Nodes swollen
msg-item-general_nodes-how = Groins, and in a child neck and armpits: larger than a bean, hard, or stuck together. Where, in the remark.
msg-item-general_nodes-purpose = Infection of the limb, or a growth.
msg-item-general_nodes-care = With a lump or bone pain: sent. Covered, chaperone offered.
msg-item-general_nodes-errors = Small soft nodes in the groin are common.

msg-item-general_control_point_tender-short = Tender at a place that is not ill
msg-item-general_control_point_tender-how = Press as hard as at the sore place on one that has nothing to do with it, such as the outer thigh half way down or the forearm.
msg-item-general_control_point_tender-purpose = Yes: tenderness means little in this person.
msg-item-general_control_point_tender-errors = Pressed less hard there.
msg-item-general_control_point_tender-yes = tender also where nothing is ill
msg-item-general_control_point_tender-no = not tender where nothing is ill

msg-item-general_bladder_after_ml-short = Water left in the bladder after passing it, ml
msg-item-general_bladder_after_ml-how = By scan, or by catheter where one is laid for pain, after the person has tried. Millilitres.
msg-item-general_bladder_after_ml-purpose = 200 and more with back or leg pain makes pressure on the lowest roots more to be feared; less leaves it not excluded.
msg-item-general_bladder_after_ml-care = Never delays the call or the transfer.
msg-item-general_bladder_after_ml-errors = Measured before trying.
msg-item-general_bladder_after_ml-otherwise = No scanner: not done, no instrument; the question on passing water stands.

msg-item-general_lab_esr-short = Blood: sedimentation rate, mm in the hour
msg-item-general_lab_esr-how = As the laboratory gives it, with the day in the remark.
msg-item-general_lab_esr-purpose = Counts in a child with a sore hip and in a painful hip of grown-ups.
msg-item-general_lab_esr-care = A low number leaves an infected joint not excluded.
msg-item-general_lab_esr-errors = An old result.

msg-item-general_lab_crp-short = Blood: CRP, mg in a litre
msg-item-general_lab_crp-how = In milligrams in a LITRE, with the day. A result in mg in a decilitre is ten times too small: the unit is read first.
msg-item-general_lab_crp-purpose = Infection; in a child with a sore hip beside the other signs.
msg-item-general_lab_crp-care = A low number leaves an infected joint not excluded.
msg-item-general_lab_crp-errors = mg/dl written as mg/l.

msg-item-general_lab_white_cells-short = Blood: white cells in a microlitre
msg-item-general_lab_white_cells-how = In a MICROLITRE: 12.0 x 10^9 in a litre is 12000. With the day.
msg-item-general_lab_white_cells-purpose = Infection; counts in a child with a sore hip and an infected foot.
msg-item-general_lab_white_cells-care = An ordinary number leaves an infected joint not excluded. Very high or very low in a child with bone pain: call the same day.
msg-item-general_lab_white_cells-errors = Written in thousands: 12 instead of 12000.
msg-item-general_lab_white_cells-otherwise = More than 100000: write 100000, and the number in the remark.

msg-item-general_lab_d_dimer-short = Blood: D-dimer
msg-item-general_lab_d_dimer-how = Not done, negative, or positive by the limit of the laboratory. The points for a clot are recorded before it is read.
msg-item-general_lab_d_dimer-purpose = With few points and a negative result another cause is looked for.
msg-item-general_lab_d_dimer-care = Alone it settles nothing; not in pregnancy.
msg-item-general_lab_d_dimer-errors = Read first, so that the points are bent to it.

msg-item-general_scan_leg_veins-short = Scan of the leg veins
msg-item-general_scan_leg_veins-how = What the report of the scan of the upper leg veins says for this leg: not done, a clot seen, none seen. By whom and when in the remark.
msg-item-general_scan_leg_veins-purpose = Goes with points and D-dimer on the route for a clot.
msg-item-general_scan_leg_veins-care = None seen with many points and a positive D-dimer: again in 6 to 8 days.
msg-item-general_scan_leg_veins-errors = A scan of the calf only.
