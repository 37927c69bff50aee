# What the catalogue says of gait, function, general items, body and examiner: label, technique, what counts, when not, what goes wrong often.
# A dot in a message name is a dash here. Language: English. Reviewed by: nobody yet.

msg-item-gait_steps_now-short = Steps taken now (0 to 4)
msg-item-gait_steps_now-how = Four steps: weight is transferred twice on to each foot. Limping counts as walking; the stick of every day or a hand for balance does not make it fewer; steps while held up do not count. Count up to four, here and now.
msg-item-gait_steps_now-purpose = One part of the rules on films after an injury.
msg-item-gait_steps_now-otherwise = Walks with a stick each day: with the stick. Did not walk before this: not done, baseline.
msg-item-gait_steps_now-care = Not where the hip, the pelvis, the thigh, the shin or the spine may be broken, the hip slipped or the knee out of joint. Stop at the first bad pain: what was done so far is the count.

msg-item-gait_pattern-short = Way of walking
msg-item-gait_pattern-how = Ten metres out and back, bare feet, from the front, the back and the side. The one that stands out: short time on one leg, stiff knee, bent knee, knee thrust to the side, knee locked back, trunk over the leg, pelvis drops on the other side, waddling, high step, on the toes, turned out or in, trunk thrown back, dips on the short side, rises on the other toes, swung out in an arc, hip and pelvis as one, knees cross, wide and irregular, no push-off. The side is the leg at fault. Will not walk: stop, it is urgent.
msg-item-gait_pattern-purpose = Names how this leg walks, so that the same can be seen again.
msg-item-gait_pattern-otherwise = Cannot walk: the last choices, or not done. With an aid or a prosthesis: as on each day, and the aid is recorded.
msg-item-gait_pattern-care = Not where walking is withheld. Examiner within reach of who sways. Numb hot foot, a sore on a numb foot, numb between the legs: no walking for the look of it.
msg-item-gait_pattern-errors = Shoes and a narrow room hide it. The trunk leans over the weak leg; the pelvis drops on the other side.

msg-item-gait_limp-short = Limps
msg-item-gait_limp-how = Watch the person come in and walk a few metres. Yes for any uneven walk.
msg-item-gait_limp-purpose = A child that limps, above all.
msg-item-gait_limp-otherwise = Too young to walk: crawling and kicking, in the remark.
msg-item-gait_limp-care = Not where walking is withheld: nobody is made to walk for it.

msg-item-function_single_leg_stance_eyes_open-short = Standing on one leg, eyes open
msg-item-function_single_leg_stance_eyes_open-how = Bare foot, arms crossed or hands on the hips, the other foot near the ankle of this one but not touching, the examiner ready to catch. Time until the foot moves, the other touches down or an arm leaves; best of up to three, stopped at 45 s. The side is the leg stood on.
msg-item-function_single_leg_stance_eyes_open-purpose = Balance, beside the age; the last of the four stances.
msg-item-function_single_leg_stance_eyes_open-otherwise = Cannot stand on one leg: the stances on two. One limb: not done.
msg-item-function_single_leg_stance_eyes_open-care = Not where the person cannot stand unaided, nor with a hot joint, a fracture, dislocation or clot not settled, an operation not healed, new weakness from the back, dizziness or chest trouble. Examiner within arm's reach.

msg-item-general_temperature-short = Temperature
msg-item-general_temperature-how = By thermometer; write where it was taken in the remark. No fever says nothing against an infected joint.
msg-item-general_temperature-purpose = Infection; a child that limps; a hot joint.

msg-item-general_pulse_rate-purpose = Bleeding, infection, clot in the lung.

msg-item-general_body_mass-purpose = Doses by local protocol, and load on the joints.
msg-item-general_body_mass-otherwise = Cannot stand: with the chair or in the arms, less the chair or the arms.

msg-item-general_answers_reliable-purpose = Drunk, confused, in great pain, a small child or no common language: answers and tenderness mean less.

msg-item-general_pulse_rate-short = Pulse rate, in a minute
msg-item-general_pulse_rate-how = Count for 30 seconds at the wrist and double it; seated or lying for some minutes.

msg-item-general_body_mass-short = Body mass
msg-item-general_body_mass-how = Weighed, without shoes and heavy clothes. Said by the person: mark the origin as self reported.

msg-item-general_answers_reliable-short = Answers can be relied on
msg-item-general_answers_reliable-how = No where drink, drugs, confusion, pain elsewhere or lost feeling make what is said or felt unreliable.
msg-item-general_answers_reliable-yes = reliable
msg-item-general_answers_reliable-no = not reliable today

msg-item-general_concern_pelvic_fracture-short = Concern: fracture of the pelvis
msg-item-general_concern_pelvic_fracture-how = The examiner's own answer. Yes: a fracture of the pelvis is to be settled first, and the steps that could harm are withheld. No: looked into and settled; say how in the remark. It says nothing about what was not examined.
msg-item-general_concern_pelvic_fracture-purpose = Holds open what is to be settled first, so that no step is offered that could harm; the answer is the examiner's own.
msg-item-general_concern_pelvic_fracture-yes = to be settled first
msg-item-general_concern_pelvic_fracture-no = looked into and settled by the examiner

msg-item-general_concern_hip_fracture-short = Concern: fracture of the hip
msg-item-general_concern_hip_fracture-how = The examiner's own answer. Yes: a fracture of the hip is to be settled first, and the steps that could harm are withheld. No: looked into and settled; say how in the remark. It says nothing about what was not examined.
msg-item-general_concern_hip_fracture-purpose = Holds open what is to be settled first, so that no step is offered that could harm; the answer is the examiner's own.
msg-item-general_concern_hip_fracture-yes = to be settled first
msg-item-general_concern_hip_fracture-no = looked into and settled by the examiner

msg-item-general_concern_hip_dislocated-short = Concern: dislocated hip
msg-item-general_concern_hip_dislocated-purpose = To hold back the steps that could harm a hip that may be out of joint, until it is known to be in place.
msg-item-general_concern_hip_dislocated-how = The examiner's own answer. Yes: a hip out of joint is to be settled first, and the steps that could harm are withheld. No: looked into and settled; say how in the remark. It says nothing about what was not examined.
msg-item-general_concern_hip_dislocated-yes = to be settled first
msg-item-general_concern_hip_dislocated-no = looked into and settled by the examiner

msg-item-general_concern_femoral_neck_stress-short = Concern: stress fracture of the hip
msg-item-general_concern_femoral_neck_stress-how = The examiner's own answer. Yes: a stress fracture of the hip is to be settled first, and the steps that could harm are withheld. No: looked into and settled; say how in the remark. It says nothing about what was not examined.
msg-item-general_concern_femoral_neck_stress-purpose = Holds open what is to be settled first, so that no step is offered that could harm; the answer is the examiner's own.
msg-item-general_concern_femoral_neck_stress-yes = to be settled first
msg-item-general_concern_femoral_neck_stress-no = looked into and settled by the examiner

msg-item-general_concern_hip_slip-short = Concern: slip of the hip
msg-item-general_concern_hip_slip-how = The examiner's own answer. Yes: a slip of the hip is to be settled first, and the steps that could harm are withheld. No: looked into and settled; say how in the remark. It says nothing about what was not examined.
msg-item-general_concern_hip_slip-purpose = Holds open what is to be settled first, so that no step is offered that could harm; the answer is the examiner's own.
msg-item-general_concern_hip_slip-yes = to be settled first
msg-item-general_concern_hip_slip-no = looked into and settled by the examiner

msg-item-general_concern_shaft_fracture-short = Concern: fracture of thigh bone or shin
msg-item-general_concern_shaft_fracture-how = The examiner's own answer. Yes: a fracture of thigh bone or shin is to be settled first, and the steps that could harm are withheld. No: looked into and settled; say how in the remark. It says nothing about what was not examined.
msg-item-general_concern_shaft_fracture-purpose = Holds open what is to be settled first, so that no step is offered that could harm; the answer is the examiner's own.
msg-item-general_concern_shaft_fracture-yes = to be settled first
msg-item-general_concern_shaft_fracture-no = looked into and settled by the examiner

msg-item-general_concern_knee_fracture-short = Concern: fracture at the knee
msg-item-general_concern_knee_fracture-how = The examiner's own answer. Yes: a fracture at the knee is to be settled first, and the steps that could harm are withheld. No: looked into and settled; say how in the remark. It says nothing about what was not examined.
msg-item-general_concern_knee_fracture-purpose = Holds open what is to be settled first, so that no step is offered that could harm; the answer is the examiner's own.
msg-item-general_concern_knee_fracture-yes = to be settled first
msg-item-general_concern_knee_fracture-no = looked into and settled by the examiner

msg-item-general_concern_ankle_fracture-short = Concern: fracture at the ankle
msg-item-general_concern_ankle_fracture-how = The examiner's own answer. Yes: a fracture at the ankle is to be settled first, and the steps that could harm are withheld. No: looked into and settled; say how in the remark. It says nothing about what was not examined.
msg-item-general_concern_ankle_fracture-purpose = Holds open what is to be settled first, so that no step is offered that could harm; the answer is the examiner's own.
msg-item-general_concern_ankle_fracture-yes = to be settled first
msg-item-general_concern_ankle_fracture-no = looked into and settled by the examiner

msg-item-general_concern_foot_fracture-short = Concern: fracture of the foot
msg-item-general_concern_foot_fracture-how = The examiner's own answer. Yes: a fracture of the foot is to be settled first, and the steps that could harm are withheld. No: looked into and settled; say how in the remark. It says nothing about what was not examined.
msg-item-general_concern_foot_fracture-purpose = Holds open what is to be settled first, so that no step is offered that could harm; the answer is the examiner's own.
msg-item-general_concern_foot_fracture-yes = to be settled first
msg-item-general_concern_foot_fracture-no = looked into and settled by the examiner

msg-item-general_concern_extensor_rupture-short = Concern: torn extensor tendon
msg-item-general_concern_extensor_rupture-how = The examiner's own answer. Yes: a torn extensor tendon is to be settled first, and the steps that could harm are withheld. No: looked into and settled; say how in the remark. It says nothing about what was not examined.
msg-item-general_concern_extensor_rupture-purpose = Holds open what is to be settled first, so that no step is offered that could harm; the answer is the examiner's own.
msg-item-general_concern_extensor_rupture-yes = to be settled first
msg-item-general_concern_extensor_rupture-no = looked into and settled by the examiner

msg-item-general_concern_achilles_rupture-short = Concern: torn heel cord
msg-item-general_concern_achilles_rupture-how = The examiner's own answer. Yes: a torn heel cord is to be settled first, and the steps that could harm are withheld. No: looked into and settled; say how in the remark. It says nothing about what was not examined.
msg-item-general_concern_achilles_rupture-purpose = Holds open what is to be settled first, so that no step is offered that could harm; the answer is the examiner's own.
msg-item-general_concern_achilles_rupture-yes = to be settled first
msg-item-general_concern_achilles_rupture-no = looked into and settled by the examiner

msg-item-general_concern_knee_dislocated-short = Concern: dislocated knee
msg-item-general_concern_knee_dislocated-how = The examiner's own answer. Yes: a dislocated knee is to be settled first, and the steps that could harm are withheld. No: looked into and settled; say how in the remark. It says nothing about what was not examined.
msg-item-general_concern_knee_dislocated-purpose = Holds open what is to be settled first, so that no step is offered that could harm; the answer is the examiner's own.
msg-item-general_concern_knee_dislocated-yes = to be settled first
msg-item-general_concern_knee_dislocated-no = looked into and settled by the examiner

msg-item-general_concern_knee_locked-short = Concern: locked knee
msg-item-general_concern_knee_locked-how = The examiner's own answer. Yes: a locked knee is to be settled first, and the steps that could harm are withheld. No: looked into and settled; say how in the remark. It says nothing about what was not examined.
msg-item-general_concern_knee_locked-purpose = Holds open what is to be settled first, so that no step is offered that could harm; the answer is the examiner's own.
msg-item-general_concern_knee_locked-yes = to be settled first
msg-item-general_concern_knee_locked-no = looked into and settled by the examiner

msg-item-general_concern_joint_infection-short = Concern: infected joint
msg-item-general_concern_joint_infection-how = The examiner's own answer. Yes: an infected joint is to be settled first, and the steps that could harm are withheld. No: looked into and settled; say how in the remark. It says nothing about what was not examined.
msg-item-general_concern_joint_infection-purpose = Holds open what is to be settled first, so that no step is offered that could harm; the answer is the examiner's own.
msg-item-general_concern_joint_infection-yes = to be settled first
msg-item-general_concern_joint_infection-no = looked into and settled by the examiner

msg-item-general_concern_clot-short = Concern: clot
msg-item-general_concern_clot-how = The examiner's own answer. Yes: a clot is to be settled first, and the steps that could harm are withheld. No: looked into and settled; say how in the remark. It says nothing about what was not examined.
msg-item-general_concern_clot-purpose = Holds open what is to be settled first, so that no step is offered that could harm; the answer is the examiner's own.
msg-item-general_concern_clot-yes = to be settled first
msg-item-general_concern_clot-no = looked into and settled by the examiner

msg-item-body_pregnancy-short = Pregnant
msg-item-body_pregnancy-purpose = Changes which positions suit, which films are asked, and which rules were made for this person.
msg-item-body_pregnancy-how = Asked in private, not assumed. Not asked is never no.

msg-item-body_knee_fused-short = Knee fused
msg-item-body_knee_fused-how = An operation or a disease has joined the bones: the knee does not move. Write the angle at which it stands as its motion.
msg-item-body_knee_fused-purpose = What does not move is not judged as stiff.

msg-item-body_knee_replaced-short = Knee replaced
msg-item-body_knee_replaced-how = An artificial knee joint, whole or in part. Ask when. Native norms and ligament figures do not hold for it.
msg-item-body_knee_replaced-purpose = Changes what is expected, which tests make sense, and how an infection is looked at.

msg-item-examiner_hand_span-short = Examiner's hand span
msg-item-examiner_hand_span-how = From tip of thumb to tip of little finger, hand spread on the tape. Once for each examiner; it helps to choose a way to hold.
msg-item-examiner_hand_span-purpose = Chooses the way of a test for small hands.
