# What the sequences say: concerns that withhold steps, what is waited for, and what not to miss.
# A dot in a message name is a dash here. Language: English. Reviewed by: nobody yet.

msg-concern-pelvic_fracture = A fracture of the pelvis is not settled
msg-concern-hip_fracture = A fracture of the hip is not settled
msg-concern-femoral_neck_stress = A stress fracture of the hip is not settled
msg-concern-hip_slip = A slip of the growing hip is not settled
msg-concern-shaft_fracture = A fracture of thigh bone or shin is not settled
msg-concern-knee_fracture = A fracture at the knee is not settled
msg-concern-extensor_rupture = A tear of the extensor tendons is not settled
msg-concern-knee_dislocated = The knee may have been dislocated
msg-concern-knee_locked = The knee is locked
msg-concern-joint_infection = An infected joint is not settled
msg-concern-clot = A clot in the leg is not settled

msg-until-film = until a film is seen
msg-until-hip_imaging = until the hip is imaged; a film that shows nothing does not settle it while the pain stays
msg-until-extensor = until the examiner has seen the leg lifted straight, or imaging
msg-until-vessels = until the vessels are checked and the examiner lifts it
msg-until-unlocked = until the examiner finds it unlocked
msg-until-joint_fluid = until the joint fluid is seen
msg-until-scan = until a scan is seen

msg-not_to_miss-knee_dislocated = A knee that was dislocated and went back: pulses, foot, feeling
msg-not_to_miss-compartment = A compartment under pressure: pain beyond the hurt, pain on stretch
msg-not_to_miss-joint_infection = An infected joint: hot, stiff, also without fever
msg-not_to_miss-knee_fracture = A fracture: bone tender, cannot bend to 90, cannot walk four steps
msg-not_to_miss-extensor_rupture = A torn extensor tendon: cannot lift the straight leg
msg-not_to_miss-hip_slip = The hip behind the knee pain, in a growing person a slip: rotation of the hip
msg-not_to_miss-clot = A clot behind a full calf
msg-not_to_miss-tumour = Bone pain that asks for a film: at night, not eased by turning, getting worse
