# Beside the knee complained of: the hip above it, and the other knee. Variables as in en.ftl.

msg-hip-painful = { $what }{ $side } { $reading }: hurts when the hip is turned; the pain of a hip is often felt at the knee
msg-injury-axial = A jump, a landing or a fall, and fewer than four steps now: heels, hips and back bore the same force; heels and back are no part of this sequence
msg-hip-painful-row = hurts when the hip is turned
msg-hip-lost-row = turns inward little, or less than the other hip
msg-hip-lost_and_painful-row = turns inward little, or less than the other hip, and hurts
msg-hip-lost = { $what }{ $side } { $reading }: turns inward little, or less than the other hip; the pain of a hip is often felt at the knee
msg-hip-lost_and_painful = { $what }{ $side } { $reading }: turns inward little, or less than the other hip, and hurts; the pain of a hip is often felt at the knee
msg-contradiction-impression_side = The impression says this side, but all that was found out of the ordinary is on the other one: which side is meant?
msg-contradiction-impression_beside_danger = The impression says this side; a danger stands on the other one, and no sign found today on this side explains the impression: which side is meant?
msg-contradiction-plan_beside_danger = The plan says this side; a danger stands on the other one, and no sign found today on this side explains the plan: which side is meant?
msg-contradiction-plan_side = The plan says this side, but all that was found out of the ordinary is on the other one: which side is meant?
msg-contradiction-complaint_and_findings = Complained of on this side, but all that was found out of the ordinary is on the other one: which side is meant?
msg-contradiction-complaint_not_turned = Left and right of the findings were exchanged and the side of the complaint was not: it says this side, and all that was found out of the ordinary is on the other one; correct the complaint, or look again?
msg-contradiction-complaint_side = Complained of on this side, but the signs were found on the other knee and not here: entered under the wrong side?
