# Labels of a form in French. A dot in a message name is a dash here. Language: French. Reviewed by: nobody yet.

msg-language-code = fr


# Sides, answers, results, reasons, why something was left out of a form.

msg-side-left = GAUCHE
msg-side-right = DROITE
msg-side-midline = LIGNE MÉDIANE
msg-side-not_recorded = GAUCHE OU DROITE (non noté)
msg-answer-yes = oui
msg-answer-no = non
msg-answer-unsure = incertain
msg-result-negative = négatif
msg-result-equivocal = douteux
msg-result-positive = positif
msg-why-declined = refusé
msg-why-pain = douleur
msg-why-blocked = bloqué
msg-why-unable = ne peut pas
msg-why-baseline_unable = ne pouvait pas avant non plus
msg-why-no_limb = pas de membre
msg-why-fused = fusionné
msg-why-implant = implant
msg-why-covered = couvert
msg-why-not_palpable = ne se palpe pas
msg-why-cannot_hold = ne peut pas le tenir
msg-why-beyond_instrument = hors de portée de l'instrument
msg-why-no_instrument = pas d'instrument
msg-why-not_reliable = pas fiable
msg-why-cannot_answer = ne peut pas répondre
msg-why-withheld = pas conseillé maintenant
msg-why-no_time = pas le temps
msg-why-other = autre
msg-why_left-no_minutes = pas le temps pour cela
msg-why_left-cannot = la personne ne peut pas
msg-why_left-pregnancy = pas en fin de grossesse
msg-why_left-no_instrument = rien pour mesurer
msg-why_left-age_unknown = seulement pour un enfant plus jeune ; l'âge n'est pas connu assez précisément

# Units, instruments, directions, ends of movement.

msg-unit-deg = °
msg-unit-mm = mm
msg-unit-s = s
msg-unit-n = N
msg-unit-mm_hg = mmHg
msg-unit-cel = °C
msg-unit-kg = kg
msg-instrument-goniometer_long = goniomètre long
msg-instrument-goniometer_short = goniomètre court
msg-instrument-inclinometer = inclinomètre
msg-instrument-smartphone = téléphone
msg-instrument-by_eye = à l'œil
msg-instrument-tape = mètre ruban
msg-instrument-blocks = cales
msg-instrument-thermometer = thermomètre
msg-instrument-stopwatch = chronomètre
msg-instrument-dynamometer = dynamomètre
msg-instrument-monofilament = monofilament
msg-instrument-tuning_fork = diapason
msg-instrument-hammer = marteau
msg-instrument-cuff = brassard
msg-instrument-doppler = Doppler
msg-instrument-hand = à la main
msg-toward-flexion = flexion
msg-toward-extension = extension
msg-toward-internal_rotation = rotation interne
msg-toward-external_rotation = rotation externe
msg-toward-abduction = abduction
msg-toward-adduction = adduction
msg-toward-dorsiflexion = dorsiflexion
msg-toward-plantarflexion = flexion plantaire
msg-toward-inversion = inversion
msg-toward-eversion = éversion
msg-toward-valgus = valgus
msg-toward-varus = varus
msg-toward-pronation = pronation
msg-toward-supination = supination
msg-end_feel-none = aucune
msg-end_feel-tissue_stretch = étirement des tissus
msg-end_feel-tissue_approximation = contact des tissus
msg-end_feel-capsular_firm = capsulaire ferme
msg-end_feel-springy_block = blocage élastique
msg-end_feel-spasm = spasme
msg-end_feel-empty = vide
msg-end_feel-bone_to_bone = os contre os
msg-end_feel-firm = ferme
msg-end_feel-soft = molle

# Positions.

msg-position-standing = debout
msg-position_heading-standing = Debout
msg-position-walking = en marchant
msg-position_heading-walking = En marchant
msg-position-seated = assis
msg-position_heading-seated = Assis, jambes pendantes
msg-position-half_sitting = demi-assis
msg-position_heading-half_sitting = Demi-assis
msg-position-supine = sur le dos
msg-position_heading-supine = Couché sur le dos
msg-position-left_tilt = sur le dos, incliné à gauche
msg-position_heading-left_tilt = Couché sur le dos, incliné à gauche
msg-position-side_lying = sur le côté
msg-position_heading-side_lying = Couché sur le côté
msg-position-prone = sur le ventre
msg-position_heading-prone = Couché sur le ventre
msg-position-on_lap = sur les genoux
msg-position_heading-on_lap = Sur les genoux du parent

# Complaints.

msg-complaint-acute_knee = genou, lésion ou douleur récente
msg-complaint-chronic_knee = genou, douleur de semaines ou plus
msg-complaint-limping_child = enfant qui boite
msg-complaint-free = examen libre
msg-complaint-hip_groin = douleur de hanche ou d'aine
msg-complaint-hip_after_fall = hanche après une chute, personne âgée
msg-complaint-lateral_hip = douleur à la face latérale de la hanche
msg-complaint-posterior_hip = douleur derrière la hanche ou à la fesse
msg-complaint-infant_hip = hanches du nourrisson
msg-complaint-child_alignment = forme des jambes et marche de l'enfant
msg-complaint-ankle_injury = cheville ou pied, lésion récente
msg-complaint-calf_pain = douleur du mollet
msg-complaint-swollen_legs = jambe ou jambes gonflées
msg-complaint-diabetic_foot = examen du pied dans le diabète
msg-complaint-wound_or_numb_foot = plaie ou pied insensible de toute cause
msg-complaint-heel_pain = douleur du talon
msg-complaint-forefoot_pain = douleur du médio- ou de l'avant-pied
msg-complaint-back_leg = douleur lombaire et de jambe
msg-complaint-after_plaster = après un plâtre ou une attelle
msg-complaint-after_operation = après une opération
msg-complaint-after_amputation = après une amputation
msg-complaint-no_complaint = sans plainte (saison, travail, école)
msg-complaint-review = contrôle d'une visite précédente
msg-complaint-whole_limb = membres inférieurs entiers, deux côtés
msg-joint-hip = hanche
msg-joint-knee = genou
msg-joint-ankle = cheville
msg-joint-pelvis = bassin
msg-joint-leg = cuisse et jambe
msg-joint-foot = pied

# The form on paper.

msg-language-for_review = À RELIRE : aucun clinicien n'a encore lu ces mots
msg-language-sentences_english = Les phrases marquées (en) sont en anglais et attendent une relecture
msg-page-untested = Pas éprouvé sur de vraies personnes
msg-page-demonstration = DÉMONSTRATION : personnes inventées seulement
msg-page-practice = EXERCICE : personnes inventées seulement, pour l'enseignement
msg-paper-title = Examen sur papier
msg-paper-name = Nom
msg-paper-born = Naissance ou âge
msg-paper-second_identifier = Numéro ou domicile (second identifiant)
msg-paper-identified = Les deux identifiants demandés et comparés
msg-paper-date = Date
msg-paper-time = Heure
msg-paper-examiner = Examinateur
msg-paper-place = Lieu
msg-paper-side = Côté de la plainte :
msg-paper-each_side = DROITE et GAUCHE
msg-paper-injured_on = Blessé le
msg-paper-consent = Consentement pour
msg-paper-examine = examiner
msg-paper-record = enregistrer
msg-paper-send = envoyer
msg-paper-consent_by = donné par
msg-paper-chaperone = Accompagnant
msg-paper-chaperone_who = (nom, proposé, refusé)
msg-paper-spoke = Récit de
msg-paper-not_to_miss = À ne pas manquer :
msg-paper-how_to_fill = Entourez un mot ou un grade ; ○ cochez-en un, ☐ cochez tous ceux qui valent ; ou écrivez la valeur avec ses décimales. ? = incertain. ☐ fam = la douleur est celle que la personne connaît : se coche à côté de nég, pos ou ?, jamais à leur place. Une case vide veut dire « non demandé ou non examiné », jamais non. ● et gras = ensemble minimal. Le meilleur côté d'abord, l'étape douloureuse à la fin.
msg-paper-why_not = Non fait : une lettre dans le petit carré.
msg-paper-not_while = ▲ Pas conseillé tant que ceci est ouvert (fait quand même ? notez-le et dites pourquoi) :
msg-paper-measured_with = Mesuré avec (écrivez-le après « avec ») :
msg-paper-with = avec
msg-paper-sheet = Feuille
msg-paper-under = moins de { $age } ans
msg-paper-late = à la fin, et doucement
msg-paper-instead_of = à la place de : { $item }
msg-paper-negative = nég
msg-paper-positive = pos
msg-paper-familiar = fam
msg-paper-no = non
msg-paper-yes = oui
msg-paper-marks_here = ▲ ici : { $marks }, et les numéros qui suivent
msg-paper-write_one = Écrivez-en un :
msg-paper-write_all = Écrivez tous ceux qui valent :
msg-paper-each_sheet = Nom
msg-paper-range = { $low } à { $high }
msg-paper-grades = Grades.
msg-paper-left_out = Pas sur cette feuille :
msg-paper-impression = Impression (mots de l'examinateur, avec le côté)
msg-paper-plan = Plan (qui, pour quand)
msg-paper-pain_after = Douleur après l'examen (0 à 10)
msg-paper-signature = Signature
msg-paper-said_back = Redit par la personne
msg-paper-entered_later = Pour saisir ceci plus tard : origine « du papier », date et heure de l'examen ci-dessus, pas de la saisie ; rien de mémoire.
msg-paper-about = Pas éprouvé sur de vraies personnes ; aide de travail pour examinateurs formés. Le protocole local passe avant cette feuille. Données : édition { $edition }.
msg-paper-entered_by = Saisi par
msg-paper-entered_at = le

# Directions of an angle on paper.

msg-paper_way-flexion = flexion
msg-paper_short-flexion = manque pour tendu
msg-paper_way-foot_flexion = bas
msg-paper_short-foot_flexion = haut
msg-paper_way-nerve_flexion = levée
msg-paper_short-nerve_flexion = sous le plan
msg-paper_way-extension = au-delà de tendu
msg-paper_short-extension = manque pour tendu
msg-paper_way-foot_extension = haut
msg-paper_short-foot_extension = bas
msg-paper_way-internal_rotation = dedans
msg-paper_short-internal_rotation = dehors
msg-paper_way-external_rotation = dehors
msg-paper_short-external_rotation = dedans
msg-paper_way-abduction = dehors
msg-paper_short-abduction = dedans
msg-paper_way-adduction = dedans
msg-paper_short-adduction = dehors
msg-paper_way-dorsiflexion = pied en haut
msg-paper_short-dorsiflexion = pied en bas
msg-paper_way-plantarflexion = pied en bas
msg-paper_short-plantarflexion = pied en haut
msg-paper_way-inversion = talon en dedans
msg-paper_short-inversion = talon en dehors
msg-paper_way-eversion = talon en dehors
msg-paper_short-eversion = talon en dedans
msg-paper_way-valgus = dehors
msg-paper_short-valgus = dedans

# What is not settled, and what is waited for.

msg-concern-pelvic_fracture = Une fracture du bassin n'est pas tranchée
msg-concern-hip_fracture = Une fracture de hanche n'est pas tranchée
msg-concern-hip_dislocated = La hanche est peut-être hors de l'articulation
msg-concern-femoral_neck_stress = Une fracture de fatigue de la hanche n'est pas tranchée
msg-concern-hip_slip = Un glissement de la hanche en croissance n'est pas tranché
msg-concern-shaft_fracture = Une fracture du fémur ou du tibia n'est pas tranchée
msg-concern-knee_fracture = Une fracture au genou n'est pas tranchée
msg-concern-ankle_fracture = Une fracture à la cheville n'est pas tranchée
msg-concern-foot_fracture = Une fracture du pied n'est pas tranchée
msg-concern-extensor_rupture = Une rupture des tendons extenseurs n'est pas tranchée
msg-concern-achilles_rupture = Une rupture du tendon d'Achille n'est pas tranchée
msg-concern-knee_dislocated = Le genou a peut-être été luxé
msg-concern-knee_locked = Le genou est bloqué
msg-concern-joint_infection = Une articulation infectée n'est pas tranchée
msg-concern-clot = Un caillot dans la jambe n'est pas tranché
msg-until-film = jusqu'à ce qu'une radiographie soit vue
msg-until-unlocked = jusqu'à ce que l'examinateur le trouve débloqué
msg-until-joint_fluid = jusqu'à ce que le liquide articulaire soit vu
msg-until-scan = jusqu'à ce qu'une échographie soit vue
msg-form-lies_tilted = À plat sur le dos par courtes périodes seulement ; incliné à gauche ou demi-assis.
