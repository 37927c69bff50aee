# Hypotheses: a word band with its range in the same line, in study clinics. Never a lone figure, never 0 or 100.

msg-hypothesis-speak_against = Findings speak against { $what } ({ $range } such people in study clinics; not studied here); not excluded
msg-hypothesis-speak_against_or_leave_open = Findings speak against { $what } or leave it open ({ $range } such people in study clinics; not studied here); not excluded
msg-hypothesis-leave_open = Findings leave { $what } open ({ $range } such people in study clinics; not studied here)
msg-hypothesis-leave_open_or_favour = Findings leave { $what } open or favour it ({ $range } such people in study clinics; not studied here)
msg-hypothesis-favour = Findings favour { $what } ({ $range } such people in study clinics; not studied here)
msg-hypothesis-favour_or_strongly_favour = Findings favour { $what } or strongly favour it ({ $range } such people in study clinics; not studied here)
msg-hypothesis-strongly_favour = Findings strongly favour { $what } ({ $range } such people in study clinics; not studied here)
msg-hypothesis-cannot_tell = { $what }: cannot be told from these findings ({ $range } such people in study clinics; not studied here)
msg-hypothesis-direction_for = Findings point toward { $what } ({ $strength }); how often such people have it is not known here
msg-hypothesis-direction_against = Findings point away from { $what } ({ $strength }); how often such people have it is not known here; not excluded
msg-hypothesis-direction_neither = { $what }: these findings tell nothing either way; not excluded

msg-hypothesis-fewer = fewer than { $high } in 100
msg-hypothesis-about = about { $low } to { $high } in 100
msg-hypothesis-about_one = about { $low } in 100
msg-hypothesis-more = more than { $low } in 100

msg-strength-weak = weak evidence
msg-strength-moderate = moderate evidence
msg-strength-strong = strong evidence

msg-page-hypotheses = What the findings support, in study clinics
msg-page-not_exclusive = These do not add up, and one does not shut out another. In order of what is worst to miss, then by name.

msg-condition-acl_tear = an ACL tear
msg-condition-lcl_tear = an LCL tear
msg-condition-pcl_tear = a PCL tear
msg-condition-mcl_tear = an MCL tear
msg-condition-meniscal_tear = a meniscal tear
msg-condition-patellar_instability = patellar instability
msg-condition-posterolateral_corner_injury = an injury of the posterolateral corner
msg-condition-knee_fracture = a fracture at the knee
msg-condition-patellar_dislocation = a dislocation of the patella
msg-condition-deep_vein_thrombosis = a deep vein thrombosis
msg-condition-knee_osteoarthritis = osteoarthritis of the knee
msg-condition-ligament_injury_or_patellar_dislocation = a major ligament injury or dislocation of the patella
msg-condition-ligament_tear = a ligament tear
msg-condition-intra_articular_injury = an injury inside the joint
msg-condition-knee_injury = an injury of the knee joint or its ligaments
msg-condition-internal_derangement = an internal derangement
msg-condition-knee_effusion = fluid in the knee
msg-condition-patellofemoral_pain = patellofemoral pain
msg-condition-quadriceps_tendon_rupture = a quadriceps tendon rupture
msg-condition-patellar_tendon_rupture = a patellar tendon rupture
msg-condition-popliteal_cyst_ruptured = a ruptured popliteal cyst
msg-condition-popliteal_cyst = a popliteal cyst
msg-condition-iliotibial_band_syndrome = iliotibial band syndrome
