# What a form says, on a screen and on paper: complaints, positions, end feels, settings, and the words around the boxes.
# A dot in a message name is a dash here. Language: English. Reviewed by: nobody yet.

msg-complaint-hip_groin = hip or groin pain
msg-complaint-hip_after_fall = hip after a fall, older person
msg-complaint-lateral_hip = pain at the outer side of the hip
msg-complaint-posterior_hip = pain behind the hip or in the buttock
msg-complaint-infant_hip = infant's hips
msg-complaint-child_alignment = child's leg shape and way of walking
msg-complaint-ankle_injury = ankle or foot, recent injury
msg-complaint-calf_pain = calf pain
msg-complaint-swollen_legs = swollen leg or legs
msg-complaint-diabetic_foot = foot check in diabetes
msg-complaint-wound_or_numb_foot = wound or numb foot of any cause
msg-complaint-heel_pain = heel pain
msg-complaint-forefoot_pain = pain of the mid- or forefoot
msg-complaint-back_leg = low back and leg pain
msg-complaint-after_plaster = after a plaster or splint
msg-complaint-after_operation = after an operation
msg-complaint-after_amputation = after an amputation
msg-complaint-no_complaint = no complaint (season, work, school)
msg-complaint-review = review of an earlier visit
msg-complaint-whole_limb = whole lower limbs, both sides

msg-position-standing = standing
msg-position_heading-standing = Standing
msg-position-walking = walking
msg-position_heading-walking = Walking
msg-position-seated = seated
msg-position_heading-seated = Sitting, legs hanging
msg-position-half_sitting = half sitting
msg-position_heading-half_sitting = Half-sitting
msg-position-supine = supine
msg-position_heading-supine = Lying on the back
msg-position-left_tilt = on the back, tilted to the left
msg-position_heading-left_tilt = Lying on the back, tilted to the left
msg-position-side_lying = lying on the side
msg-position_heading-side_lying = Lying on the side
msg-position-prone = prone
msg-position_heading-prone = Lying face down
msg-position-on_lap = on a lap
msg-position_heading-on_lap = On the parent's lap

msg-end_feel-none = none
msg-end_feel-tissue_stretch = tissue stretch
msg-end_feel-tissue_approximation = tissue approximation
msg-end_feel-capsular_firm = capsular firm
msg-end_feel-springy_block = springy block
msg-end_feel-spasm = spasm
msg-end_feel-empty = empty
msg-end_feel-bone_to_bone = bone to bone
msg-end_feel-firm = firm
msg-end_feel-soft = soft

msg-setting-outreach = outreach
msg-setting-primary_care = primary care
msg-setting-emergency = emergency
msg-setting-orthopaedic = orthopaedic
msg-setting-sports = sports

msg-joint-pelvis = pelvis
msg-joint-leg = thigh and lower leg
msg-joint-foot = foot

msg-form-only_younger = Only for a younger child: at this age it tells little or can harm.
msg-form-lies_tilted = Flat on the back in short turns only; tilted to the left, or half-sitting.

msg-despite-before = before it was known to be unwise
msg-despite-elsewhere = by somebody else, elsewhere
msg-despite-knowingly = knowingly

msg-flag_answer-raised = found
msg-flag_answer-asked_no = asked, and the answer was no
msg-flag_answer-not_asked = not asked
msg-flag_answer-cannot_answer = no answer could be given
msg-urgency-now = now
msg-urgency-same_day = the same day
msg-why_left-no_minutes = no time for it
msg-why_left-cannot = the person cannot
msg-why_left-pregnancy = not late in pregnancy
msg-why_left-no_instrument = nothing to measure with
msg-why_left-age_unknown = only for a younger child; the age is not known closely enough

msg-answer-yes = yes
msg-answer-no = no
msg-answer-unsure = unsure

msg-result-negative = negative
msg-result-equivocal = equivocal
msg-result-positive = positive

## On paper.

msg-paper-title = Examination on paper
msg-paper-name = Name
msg-paper-born = Born or age
msg-paper-second_identifier = Number or home (second identifier)
msg-paper-identified = Both identifiers asked and compared
msg-paper-date = Date
msg-paper-time = Time
msg-paper-examiner = Examiner
msg-paper-place = Place
msg-paper-side = Side complained of:
msg-paper-each_side = RIGHT and LEFT
msg-paper-injured_on = Injured on
msg-paper-consent = Consent to
msg-paper-examine = examine
msg-paper-record = record
msg-paper-send = send
msg-paper-consent_by = given by
msg-paper-chaperone = Chaperone
msg-paper-chaperone_who = (name, offered, declined)
msg-paper-spoke = History from
msg-paper-not_to_miss = Not to miss:
msg-paper-how_to_fill = Ring one word or grade; ○ mark one, ☐ mark all that hold; or write the value with its decimals. ? = unsure. ☐ fam = the pain is the familiar one: marked beside neg, pos or ?, never in their place. An empty box is "not asked or not examined", never a no. ● and bold = minimum set. Better side first, painful step last.
msg-paper-why_not = Not done: one letter in the small square.
msg-paper-not_while = ▲ Not advised while this is open (done all the same? record it, and say why):
msg-paper-measured_with = Measured with (write it behind "with"):
msg-paper-with = with
msg-paper-sheet = Sheet
msg-paper-under = under { $age } years
msg-paper-late = late, and gently
msg-paper-instead_of = in place of: { $item }
msg-paper-negative = neg
msg-paper-positive = pos
msg-paper-familiar = fam
msg-paper-no = no
msg-paper-yes = yes
msg-paper-marks_here = ▲ here: { $marks }, and the numbers behind it
msg-paper-write_one = Write one:
msg-paper-write_all = Write all that hold:
msg-paper-each_sheet = Name
msg-paper-range = { $low } to { $high }
msg-paper-grades = Grades.
msg-paper-left_out = Left out of this sheet:
msg-paper-impression = Impression (the examiner's own words, with side)
msg-paper-plan = Plan (who, by when)
msg-paper-pain_after = Pain after the examination (0 to 10)
msg-paper-signature = Signature
msg-paper-said_back = Said back by the person
msg-paper-entered_later = Entering this later: origin "from paper", date and time of the examination above, not of the entry; nothing from memory.
msg-paper-entered_by = Entered by
msg-paper-entered_at = on
msg-paper-about = Not tested on real people; a working aid for trained examiners. Local protocol stands above this sheet. Facts: edition { $edition }.

# A concern in the words of one complaint: in an infant two steps look for it; what withholds is an injury.
msg-paper_concern-hip_dislocated_infant_hip = The hip may be out of joint after an injury (Galeazzi and abduction bent 90 look for an infant's hip out of joint: without an injury they go on)

# The two directions of an angle: what it counts, and what falls short of it. Where a joint has its own words they stand behind its name.
msg-paper_way-flexion = bent
msg-paper_short-flexion = short of straight
msg-paper_way-foot_flexion = down
msg-paper_short-foot_flexion = up
msg-paper_way-nerve_flexion = raised
msg-paper_short-nerve_flexion = below level
msg-paper_way-extension = beyond straight
msg-paper_short-extension = short of straight
msg-paper_way-foot_extension = up
msg-paper_short-foot_extension = down
msg-paper_way-internal_rotation = inward
msg-paper_short-internal_rotation = outward
msg-paper_way-external_rotation = outward
msg-paper_short-external_rotation = inward
msg-paper_way-leg_external_rotation = foot outward
msg-paper_short-leg_external_rotation = foot inward
msg-paper_way-gait_external_rotation = toes out
msg-paper_short-gait_external_rotation = toes in
msg-paper_way-abduction = outward
msg-paper_short-abduction = inward
msg-paper_way-adduction = inward
msg-paper_short-adduction = outward
msg-paper_way-dorsiflexion = foot up
msg-paper_short-dorsiflexion = foot down
msg-paper_way-plantarflexion = foot down
msg-paper_short-plantarflexion = foot up
msg-paper_way-inversion = heel inward
msg-paper_short-inversion = heel outward
msg-paper_way-eversion = heel outward
msg-paper_short-eversion = heel inward
msg-paper_way-valgus = outward
msg-paper_short-valgus = inward
msg-paper_way-foot_valgus = heel outward
msg-paper_short-foot_valgus = heel inward

## Words of the vocabulary that a form needs and a page does not.

msg-origin-observed = observed
msg-unit-deg = °
msg-toward-flexion = flexion
msg-toward-extension = extension
msg-toward-internal_rotation = internal rotation
msg-toward-external_rotation = external rotation
msg-toward-abduction = abduction
msg-toward-adduction = adduction
msg-toward-dorsiflexion = dorsiflexion
msg-toward-plantarflexion = plantarflexion
msg-toward-inversion = inversion
msg-toward-eversion = eversion
msg-toward-valgus = valgus
msg-toward-varus = varus
msg-toward-pronation = pronation
msg-toward-supination = supination

msg-language-for_review = FOR REVIEW: no clinician has read these words yet
msg-language-sentences_english = Sentences marked (en) are in English and await review
