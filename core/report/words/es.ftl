# Labels of a form in Spanish. A dot in a message name is a dash here. Language: Spanish. Reviewed by: nobody yet.

msg-language-code = es


# Sides, answers, results, reasons, why something was left out of a form.

msg-side-left = IZQUIERDA
msg-side-right = DERECHA
msg-side-midline = LÍNEA MEDIA
msg-side-not_recorded = IZQUIERDA O DERECHA (no consta)
msg-answer-yes = sí
msg-answer-no = no
msg-answer-unsure = en duda
msg-result-negative = negativo
msg-result-equivocal = dudoso
msg-result-positive = positivo
msg-why-declined = no quiso
msg-why-pain = dolor
msg-why-blocked = bloqueado
msg-why-unable = no puede
msg-why-baseline_unable = tampoco podía antes
msg-why-no_limb = sin miembro
msg-why-fused = fusionado
msg-why-implant = implante
msg-why-covered = cubierto
msg-why-not_palpable = no se palpa
msg-why-cannot_hold = no puede sostenerlo
msg-why-beyond_instrument = fuera del alcance del instrumento
msg-why-no_instrument = sin instrumento
msg-why-not_reliable = no fiable
msg-why-cannot_answer = no puede responder
msg-why-withheld = no se aconseja ahora
msg-why-no_time = sin tiempo
msg-why-other = otro
msg-why_left-no_minutes = sin tiempo para ello
msg-why_left-cannot = la persona no puede
msg-why_left-pregnancy = no al final del embarazo
msg-why_left-no_instrument = nada con que medir
msg-why_left-age_unknown = solo para un niño menor; la edad no se sabe con suficiente exactitud

# Units, instruments, directions, ends of movement.

msg-unit-deg = °
msg-unit-mm = mm
msg-unit-s = s
msg-unit-n = N
msg-unit-mm_hg = mmHg
msg-unit-cel = °C
msg-unit-kg = kg
msg-instrument-goniometer_long = goniómetro largo
msg-instrument-goniometer_short = goniómetro corto
msg-instrument-inclinometer = inclinómetro
msg-instrument-smartphone = teléfono
msg-instrument-by_eye = a ojo
msg-instrument-tape = cinta métrica
msg-instrument-blocks = tacos
msg-instrument-thermometer = termómetro
msg-instrument-stopwatch = cronómetro
msg-instrument-dynamometer = dinamómetro
msg-instrument-monofilament = monofilamento
msg-instrument-tuning_fork = diapasón
msg-instrument-hammer = martillo
msg-instrument-cuff = manguito
msg-instrument-doppler = Doppler
msg-instrument-hand = con la mano
msg-toward-flexion = flexión
msg-toward-extension = extensión
msg-toward-internal_rotation = rotación interna
msg-toward-external_rotation = rotación externa
msg-toward-abduction = abducción
msg-toward-adduction = aducción
msg-toward-dorsiflexion = dorsiflexión
msg-toward-plantarflexion = flexión plantar
msg-toward-inversion = inversión
msg-toward-eversion = eversión
msg-toward-valgus = valgo
msg-toward-varus = varo
msg-toward-pronation = pronación
msg-toward-supination = supinación
msg-end_feel-none = ninguno
msg-end_feel-tissue_stretch = estiramiento de tejidos
msg-end_feel-tissue_approximation = contacto de tejidos
msg-end_feel-capsular_firm = capsular firme
msg-end_feel-springy_block = bloqueo elástico
msg-end_feel-spasm = espasmo
msg-end_feel-empty = vacío
msg-end_feel-bone_to_bone = hueso con hueso
msg-end_feel-firm = firme
msg-end_feel-soft = blando

# Positions.

msg-position-standing = de pie
msg-position_heading-standing = De pie
msg-position-walking = caminando
msg-position_heading-walking = Caminando
msg-position-seated = sentado
msg-position_heading-seated = Sentado, piernas colgando
msg-position-half_sitting = semisentado
msg-position_heading-half_sitting = Semisentado
msg-position-supine = boca arriba
msg-position_heading-supine = Acostado boca arriba
msg-position-left_tilt = boca arriba, inclinado a la izquierda
msg-position_heading-left_tilt = Acostado boca arriba, inclinado a la izquierda
msg-position-side_lying = de lado
msg-position_heading-side_lying = Acostado de lado
msg-position-prone = boca abajo
msg-position_heading-prone = Acostado boca abajo
msg-position-on_lap = en el regazo
msg-position_heading-on_lap = En el regazo del padre o de la madre

# Complaints.

msg-complaint-acute_knee = rodilla, lesión o dolor reciente
msg-complaint-chronic_knee = rodilla, dolor de semanas o más
msg-complaint-limping_child = niño que cojea
msg-complaint-free = examen libre
msg-complaint-hip_groin = dolor de cadera o ingle
msg-complaint-hip_after_fall = cadera tras una caída, persona mayor
msg-complaint-lateral_hip = dolor en la cara lateral de la cadera
msg-complaint-posterior_hip = dolor detrás de la cadera o en la nalga
msg-complaint-infant_hip = caderas del lactante
msg-complaint-child_alignment = forma de las piernas y marcha del niño
msg-complaint-ankle_injury = tobillo o pie, lesión reciente
msg-complaint-calf_pain = dolor de pantorrilla
msg-complaint-swollen_legs = pierna o piernas hinchadas
msg-complaint-diabetic_foot = revisión del pie en la diabetes
msg-complaint-wound_or_numb_foot = herida o pie insensible de cualquier causa
msg-complaint-heel_pain = dolor de talón
msg-complaint-forefoot_pain = dolor del medio o antepié
msg-complaint-back_leg = dolor lumbar y de pierna
msg-complaint-after_plaster = después de un yeso o férula
msg-complaint-after_operation = después de una operación
msg-complaint-after_amputation = después de una amputación
msg-complaint-no_complaint = sin molestias (temporada, trabajo, escuela)
msg-complaint-review = revisión de una visita anterior
msg-complaint-whole_limb = miembros inferiores completos, ambos lados
msg-joint-hip = cadera
msg-joint-knee = rodilla
msg-joint-ankle = tobillo
msg-joint-pelvis = pelvis
msg-joint-leg = muslo y pierna
msg-joint-foot = pie

# The form on paper.

msg-language-for_review = PARA REVISIÓN: ningún clínico ha leído todavía estas palabras
msg-language-sentences_english = Las frases marcadas (en) están en inglés y esperan revisión
msg-page-untested = No probado en personas reales
msg-page-demonstration = DEMOSTRACIÓN: solo personas inventadas
msg-page-practice = PRÁCTICA: solo personas inventadas, para enseñar
msg-paper-title = Examen en papel
msg-paper-name = Nombre
msg-paper-born = Nacimiento o edad
msg-paper-second_identifier = Número o domicilio (segundo identificador)
msg-paper-identified = Los dos identificadores preguntados y comparados
msg-paper-date = Fecha
msg-paper-time = Hora
msg-paper-examiner = Examinador
msg-paper-place = Lugar
msg-paper-side = Lado de la queja:
msg-paper-each_side = DERECHA e IZQUIERDA
msg-paper-injured_on = Lesionado el
msg-paper-consent = Consentimiento para
msg-paper-examine = examinar
msg-paper-record = registrar
msg-paper-send = enviar
msg-paper-consent_by = dado por
msg-paper-chaperone = Acompañante
msg-paper-chaperone_who = (nombre, ofrecido, rechazado)
msg-paper-spoke = Relato de
msg-paper-not_to_miss = No pasar por alto:
msg-paper-how_to_fill = Rodee una palabra o un grado; ○ marque uno, ☐ marque todos los que valgan; o escriba el valor con sus decimales. ? = en duda. ☐ fam = el dolor es el conocido: se marca junto a neg, pos o ?, nunca en su lugar. Una casilla vacía es "no preguntado o no examinado", nunca un no. ● y negrita = conjunto mínimo. Primero el lado mejor, el paso doloroso al final.
msg-paper-why_not = No hecho: una letra en el cuadrito.
msg-paper-not_while = ▲ No se aconseja mientras esto esté abierto (¿hecho igualmente? regístrelo y diga por qué):
msg-paper-measured_with = Medido con (escríbalo tras "con"):
msg-paper-with = con
msg-paper-sheet = Hoja
msg-paper-under = menor de { $age } años
msg-paper-late = al final, y con suavidad
msg-paper-instead_of = en lugar de: { $item }
msg-paper-negative = neg
msg-paper-positive = pos
msg-paper-familiar = fam
msg-paper-no = no
msg-paper-yes = sí
msg-paper-marks_here = ▲ aquí: { $marks }, y los números que siguen
msg-paper-write_one = Escriba uno:
msg-paper-write_all = Escriba todos los que valgan:
msg-paper-each_sheet = Nombre
msg-paper-range = { $low } a { $high }
msg-paper-grades = Grados.
msg-paper-left_out = No está en esta hoja:
msg-paper-impression = Impresión (palabras del examinador, con el lado)
msg-paper-plan = Plan (quién, para cuándo)
msg-paper-pain_after = Dolor después del examen (0 a 10)
msg-paper-signature = Firma
msg-paper-said_back = Repetido por la persona
msg-paper-entered_later = Al introducir esto después: origen "del papel", fecha y hora del examen de arriba, no de la introducción; nada de memoria.
msg-paper-about = No probado en personas reales; ayuda de trabajo para examinadores formados. El protocolo local está por encima de esta hoja. Datos: edición { $edition }.
msg-paper-entered_by = Introducido por
msg-paper-entered_at = el

# Directions of an angle on paper.

msg-paper_way-flexion = flexión
msg-paper_short-flexion = falta para recto
msg-paper_way-foot_flexion = abajo
msg-paper_short-foot_flexion = arriba
msg-paper_way-nerve_flexion = elevada
msg-paper_short-nerve_flexion = bajo el plano
msg-paper_way-extension = más allá de recto
msg-paper_short-extension = falta para recto
msg-paper_way-foot_extension = arriba
msg-paper_short-foot_extension = abajo
msg-paper_way-internal_rotation = adentro
msg-paper_short-internal_rotation = afuera
msg-paper_way-external_rotation = afuera
msg-paper_short-external_rotation = adentro
msg-paper_way-abduction = afuera
msg-paper_short-abduction = adentro
msg-paper_way-adduction = adentro
msg-paper_short-adduction = afuera
msg-paper_way-dorsiflexion = pie arriba
msg-paper_short-dorsiflexion = pie abajo
msg-paper_way-plantarflexion = pie abajo
msg-paper_short-plantarflexion = pie arriba
msg-paper_way-inversion = talón adentro
msg-paper_short-inversion = talón afuera
msg-paper_way-eversion = talón afuera
msg-paper_short-eversion = talón adentro
msg-paper_way-valgus = afuera
msg-paper_short-valgus = adentro

# What is not settled, and what is waited for.

msg-concern-pelvic_fracture = Una fractura de pelvis no está aclarada
msg-concern-hip_fracture = Una fractura de cadera no está aclarada
msg-concern-hip_dislocated = La cadera puede estar fuera de la articulación
msg-concern-femoral_neck_stress = Una fractura por estrés de la cadera no está aclarada
msg-concern-hip_slip = Un deslizamiento de la cadera en crecimiento no está aclarado
msg-concern-shaft_fracture = Una fractura de fémur o tibia no está aclarada
msg-concern-knee_fracture = Una fractura en la rodilla no está aclarada
msg-concern-ankle_fracture = Una fractura en el tobillo no está aclarada
msg-concern-foot_fracture = Una fractura del pie no está aclarada
msg-concern-extensor_rupture = Una rotura de los tendones extensores no está aclarada
msg-concern-achilles_rupture = Una rotura del tendón de Aquiles no está aclarada
msg-concern-knee_dislocated = La rodilla pudo haberse dislocado
msg-concern-knee_locked = La rodilla está bloqueada
msg-concern-joint_infection = Una articulación infectada no está aclarada
msg-concern-clot = Un coágulo en la pierna no está aclarado
msg-until-film = hasta ver una radiografía
msg-until-unlocked = hasta que el examinador la encuentre desbloqueada
msg-until-joint_fluid = hasta ver el líquido articular
msg-until-scan = hasta ver una ecografía
msg-form-lies_tilted = Plano boca arriba solo por ratos cortos; inclinado a la izquierda o semisentado.
