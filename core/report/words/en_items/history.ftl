# What the catalogue says of what is asked: label, technique, what counts, when not, what goes wrong often.
# A dot in a message name is a dash here. Language: English. Reviewed by: nobody yet.

msg-item-history_own_words-short = In the person's own words
msg-item-history_own_words-how = What happened and what troubles most, as it is said. The text is kept as written and is not interpreted.
msg-item-history_own_words-purpose = The question that brought the person.

msg-item-history_mechanism-purpose = Which way the limb was loaded.

msg-item-history_fall_or_blow-purpose = One of the two knee rules asks for it.

msg-item-history_injury_severe_or_crush-purpose = A limb that may swell inside its sheaths.

msg-item-history_external_force_to_leg-purpose = Loads the ligaments from the side.

msg-item-history_rotational_trauma-purpose = Loads the front cruciate ligament and the menisci.

msg-item-history_pop-purpose = A ligament or tendon that tore.

msg-item-history_giving_way-purpose = A loose knee, or a weak thigh.

msg-item-history_locking-purpose = A piece that blocks the joint.

msg-item-history_swelling_onset-purpose = Fast swelling is blood.

msg-item-history_swelling_noticed-purpose = Fluid that comes and goes.

msg-item-history_patella_dislocated-purpose = A kneecap that may go out again.

msg-item-history_knee_dislocated-purpose = The vessel behind the knee may be torn though the knee looks straight.

msg-item-history_mechanism-short = How it happened
msg-item-history_mechanism-how = The one that fits best; the own words stand beside it.

msg-item-history_fall_or_blow-short = Fall or blow
msg-item-history_fall_or_blow-how = Did the person fall, or was the knee struck? Any fall counts. Yes, no, or not sure.

msg-item-history_injury_severe_or_crush-short = Severe injury or crush
msg-item-history_injury_severe_or_crush-how = Crushed, run over, a fall from a height, a high-speed crash, or a break with a tight cast or bandage.

msg-item-history_external_force_to_leg-short = Force from outside against the leg
msg-item-history_external_force_to_leg-how = Was the leg struck or pushed by someone or something when it happened?

msg-item-history_rotational_trauma-short = Twisted over the fixed foot
msg-item-history_rotational_trauma-how = Did the body turn while the foot stood still?

msg-item-history_pop-short = Pop felt or heard
msg-item-history_pop-how = A pop or a tear at that moment, felt in the knee. Not the clicks of every day.

msg-item-history_giving_way-short = Gives way
msg-item-history_giving_way-how = The knee folds or slides away, at a turn or on uneven ground. Not the weakness of pain.

msg-item-history_locking-short = Locks
msg-item-history_locking-how = The knee sticks, so that it does not straighten fully until it is shaken free, or sticks now. Not stiffness after sitting.

msg-item-history_swelling_onset-short = When the swelling came
msg-item-history_swelling_onset-how = After the injury: none; within two hours; within the day; later. Within two to four hours it is blood until shown otherwise: the hours in the remark.

msg-item-history_swelling_noticed-short = Swelling noticed
msg-item-history_swelling_noticed-how = Has the person seen or felt the knee swollen?

msg-item-history_patella_dislocated-short = Kneecap went out of place
msg-item-history_patella_dislocated-how = The kneecap was seen or felt on the outer side, now or before; who put it back.

msg-item-history_knee_dislocated-short = Knee went out of joint
msg-item-history_knee_dislocated-how = Thigh bone and shin were out of line at the joint, even if it went back by itself.
msg-item-history_knee_dislocated-care = Yes: vessel and nerve first, and again each hour, whatever the pulse is now.

msg-item-history_steps_at_once-short = Could take four steps at once after the injury
msg-item-history_steps_at_once-how = Four steps: weight is transferred twice on to each foot. Limping counts as walking; the stick of every day or a hand for balance does not make it fewer; steps while held up do not count. Yes, no, or not sure.
msg-item-history_steps_at_once-purpose = One part of the rules on films after an injury.
msg-item-history_steps_at_once-yes = four steps were taken
msg-item-history_steps_at_once-no = four steps could not be taken

msg-item-history_knee_rule_exclusions-short = Anything that puts the knee rule aside
msg-item-history_knee_rule_exclusions-how = All that hold. Only a superficial skin injury; seen again for the same injury; altered consciousness; paraplegia; several injuries at once; or none of these.
msg-item-history_knee_rule_exclusions-purpose = The rule on films was not made for these.

msg-item-history_weeks_since_onset-purpose = New and old complaints are looked at differently.

msg-item-history_pain_over_2_weeks-purpose = Past the time in which most small injuries settle.

msg-item-history_pain_prolonged_sitting-purpose = The kneecap.

msg-item-history_morning_stiffness_minutes-purpose = Worn joints are stiff for a short while, inflamed ones for long.

msg-item-history_pain_out_of_proportion-purpose = The first sign of a limb that swells inside its sheaths.

msg-item-history_weeks_since_onset-short = Weeks since it began
msg-item-history_weeks_since_onset-how = Whole weeks; 0 within the first week.

msg-item-history_pain_over_2_weeks-short = Pain for more than two weeks
msg-item-history_pain_over_2_weeks-how = Yes, no, or not sure.

msg-item-history_pain_prolonged_sitting-short = Hurts on long sitting
msg-item-history_pain_prolonged_sitting-how = Pain in front of the knee after sitting with the knee bent, as in a bus.

msg-item-history_morning_stiffness_minutes-short = Stiff in the morning, minutes
msg-item-history_morning_stiffness_minutes-how = How long until the joint moves as freely as it will that day; 0 for none.

msg-item-history_pain_out_of_proportion-short = Pain beyond what the hurt explains
msg-item-history_pain_out_of_proportion-how = Strong, rising, not eased by rest or pain-killer. Ask in the person's own language.
msg-item-history_pain_out_of_proportion-care = Yes after injury, cast, crush or operation is urgent, whatever the pulse.

msg-item-history_fever-short = Fever, now or in the last seven days
msg-item-history_fever-how = Measured or felt, with or without shivering. No fever says nothing against an infected joint.
msg-item-history_fever-purpose = An infected joint or bone.

msg-item-history_unwell-purpose = Illness of the whole body.

msg-item-history_night_pain-purpose = A growth or an infection; also a worn joint.

msg-item-history_night_pain_relieved_by_turning-purpose = Parts the pain of lying on it from pain that does not rest.

msg-item-history_unwell-short = Feels or looks unwell
msg-item-history_unwell-how = Drowsy, pale, off food, shaking; in a child not playing.

msg-item-history_night_pain-short = Pain at night
msg-item-history_night_pain-how = Wakes from pain. The next two questions belong to it.

msg-item-history_night_pain_relieved_by_turning-short = Night pain eases on turning
msg-item-history_night_pain_relieved_by_turning-how = Yes where another position ends it, such as no longer lying on that side.
msg-item-history_night_pain_relieved_by_turning-yes = another position ends it
msg-item-history_night_pain_relieved_by_turning-no = no position ends it

msg-item-history_night_pain_getting_worse-short = Night pain is getting worse
msg-item-history_night_pain_getting_worse-how = Over the last weeks.
msg-item-history_night_pain_getting_worse-purpose = Pain that grows is looked into.

msg-item-history_weight_loss-purpose = A growth, tuberculosis.

msg-item-history_cancer_known-purpose = Bone pain may come from it.

msg-item-history_immune_suppressed-purpose = Infection with few signs.
msg-item-history_immune_suppressed-care = Asked in private. What the person does not want in a letter carried by hand is not put there.

msg-item-history_joint_injection_or_operation_recent-purpose = A door for infection.

msg-item-history_diabetes-purpose = Numb feet, narrowed vessels, infection with few signs.

msg-item-history_blood_thinners-purpose = A joint full of blood; head injuries; needles.

msg-item-history_bleeding_disorder-purpose = A joint full of blood.

msg-item-history_immobile_or_surgery_recent-short = In bed or operated on lately
msg-item-history_immobile_or_surgery_recent-how = In bed for three days or more, or a large operation under anaesthesia within twelve weeks. A leg in plaster is asked by itself.
msg-item-history_immobile_or_surgery_recent-purpose = One of the points asked when a clot is suspected.

msg-item-history_examiner_suspects_clot-purpose = Opens the questions on a clot.

msg-item-history_breathless-purpose = A clot that went to the lung.
msg-item-history_breathless-care = With a swollen or painful leg: call now.

msg-item-history_back_pain-short = Back pain
msg-item-history_back_pain-how = With it or before it. Whether it runs below the knee is asked by itself.
msg-item-history_back_pain-purpose = Pain of the leg may come from the back.

msg-item-history_saddle_numbness-purpose = The lowest roots.
msg-item-history_saddle_numbness-care = Asked in private only, in the person's own language, not through a child or a relative. Not alone: not asked, and it stays open. New: call now.

msg-item-history_bladder_bowel_change-short = Bladder or bowel changed
msg-item-history_bladder_bowel_change-how = Cannot pass water, does not feel it pass, leaks; cannot hold stool or does not feel it; new. Ask in private, not through a child.
msg-item-history_bladder_bowel_change-purpose = The lowest roots.
msg-item-history_bladder_bowel_change-care = Asked in private only, in the person's own language, not through a child or a relative. Not alone: not asked, and it stays open. New: call now.

msg-item-history_unexplained_bruises-purpose = Protection; blood disease.
msg-item-history_unexplained_bruises-care = In private only. Nothing is said before the company.

msg-item-history_film_result-purpose = Opens and lifts what a fracture holds back.

msg-item-history_weight_loss-short = Weight lost without wanting to
msg-item-history_weight_loss-how = Clothes looser, weight fallen, without a reason the person knows.

msg-item-history_cancer_known-short = Cancer, now or before
msg-item-history_cancer_known-how = Of any kind; which and when in the remark. Ask in private.

msg-item-history_immune_suppressed-short = Weak defence against infection
msg-item-history_immune_suppressed-how = Steroid or other medicine against the body's defence, chemotherapy, HIV, no spleen, advanced kidney or liver disease.

msg-item-history_joint_injection_or_operation_recent-short = Joint injected or operated on lately
msg-item-history_joint_injection_or_operation_recent-how = Needle, injection or operation on this joint in the last weeks or months; when, in the remark. An artificial joint goes under knee replaced.

msg-item-history_diabetes-short = Diabetes
msg-item-history_diabetes-how = Known, or treated for it.

msg-item-history_blood_thinners-short = Takes blood thinners
msg-item-history_blood_thinners-how = Which and when last, in the remark.

msg-item-history_bleeding_disorder-short = Bleeds more than others
msg-item-history_bleeding_disorder-how = Known disorder, or long bleeding after a tooth or a cut, in the person or the family.

msg-item-history_examiner_suspects_clot-short = Examiner suspects a clot
msg-item-history_examiner_suspects_clot-how = The examiner's own answer, after looking at both legs.

msg-item-history_breathless-short = Breathless, chest pain or collapse
msg-item-history_breathless-how = New, at rest or on the way here; also coughing blood.

msg-item-history_saddle_numbness-short = Numb between the legs
msg-item-history_saddle_numbness-how = Where one sits, or the private parts; new. Ask in private, in the person's own language, not through a child.

msg-item-history_unexplained_bruises-short = Bruises that nothing explains
msg-item-history_unexplained_bruises-how = On the body, of different ages, or where no story fits. In private; write what is seen, not why.

msg-item-history_film_result-short = What a film showed
msg-item-history_film_result-how = All that hold, for this side: a break, a slip, or none seen, as read by whom, when; or no film; or not readable. No break seen on a film of the hip leaves one not excluded while the pain stays.

msg-item-history_cancer_active-short = Cancer under treatment or within six months
msg-item-history_cancer_active-how = Treatment going on, within six months, or only comfort is sought.
msg-item-history_cancer_active-purpose = One of the points asked when a clot is suspected.
msg-item-history_cancer_active-care = Asked in private.

msg-item-history_leg_paralysed_or_plaster-short = This leg paralysed, weak or lately in plaster
msg-item-history_leg_paralysed_or_plaster-how = Stroke, nerve, polio, or a plaster of the last weeks.
msg-item-history_leg_paralysed_or_plaster-purpose = One of the points asked when a clot is suspected.

msg-item-history_clot_before-short = Clot in a leg vein before
msg-item-history_clot_before-how = Shown by a scan or treated. A clot in the lung alone: no, and in the remark.
msg-item-history_clot_before-purpose = One of the points asked when a clot is suspected.

msg-item-history_childbirth_recent-short = Gave birth in the last weeks
msg-item-history_childbirth_recent-how = A birth, or a pregnancy that ended, in the last weeks; when, in the remark.
msg-item-history_childbirth_recent-purpose = With a swollen or painful leg: the same day, whatever the points for a clot say.
msg-item-history_childbirth_recent-care = Asked in private.

msg-item-history_other_cause_as_likely-short = Another cause fits at least as well as a clot
msg-item-history_other_cause_as_likely-how = The examiner's own answer: torn muscle, cyst, infection, old swelling. Which, in the remark.
msg-item-history_other_cause_as_likely-purpose = Lowers the points; it is never answered by the program.
msg-item-history_other_cause_as_likely-care = Yes leaves a clot not excluded.
msg-item-history_other_cause_as_likely-errors = Answered yes because a clot is not wished for.
msg-item-history_other_cause_as_likely-yes = another cause fits at least as well
msg-item-history_other_cause_as_likely-no = no other cause fits as well
