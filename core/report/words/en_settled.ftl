# What a person decided between values that stood against each other. Language: English. Reviewed by: nobody yet.

msg-settled-title = Decided between values that stood against each other
msg-settled-stands = { $what }: { $value }. Decided by { $by_at }{ $signature }.
msg-settled-undone = Decided once and undone since: { $value }, by { $by_at }{ $signature }.
msg-settled-value = { $value } ({ $whose })
msg-settled-as_written = as written by { $by }
msg-settled-by_at = { $by }, { $at }
msg-settled-nobody = no examiner
msg-settled-new_value = { $value } (a new value, of { $by })
msg-settled-not_taken = Not taken: { $values }.
msg-settled-alone = No other value stood there.
msg-settled-sides_exchanged = Left and right of this exam had been exchanged by { $by_at } (reason: { $reason }), without knowledge of this value; that it is of this side was decided with it.
msg-settled-taken_back = taken back, reason: { $reason }
msg-settled-not_said = not said
msg-settled-not_known = not known
msg-settled-record = the record { $id }
msg-settled-consent = examine: { $examine }, record: { $record }, send: { $send }
msg-settled-aged = { $age } years on { $on }
msg-settled-reason = Reason: { $reason }.
msg-settled-no_reason = Why is not recorded.
msg-settled-after_signature = , after the signature
msg-settled-signature_unseen = , without knowledge of the signature, whose signer did not know of it
msg-settled-since_signed = AFTER THIS SIGNATURE it was decided between values that stood against each other: { $what } (by whom and why stands under that title).
msg-settled-impressions_undecided = Written without knowledge of each other, and not decided between: { $impressions }
msg-settled-others = { $count ->
    [one] and 1 more, marked "decided on"
   *[other] and { $count } more, marked "decided on"
 }
msg-settled-value_mark = decided on

msg-settled_about-person = Whose exam it is
msg-settled_about-complaint = Complaint
msg-settled_about-side = Side
msg-settled_about-setting = Setting
msg-settled_about-place = Place
msg-settled_about-offset_min = Local time
msg-settled_about-injured_on = Day of the injury
msg-settled_about-examined_on = Day of the exam
msg-settled_about-reviews = The exam that is looked at again
msg-settled_about-supervised = Whether the exam is supervised
msg-settled_about-consent = Consent
msg-settled_about-company = Who was there
msg-settled_about-who_spoke = Who spoke
msg-settled_about-interpreter = Interpreter
msg-settled_about-impression = Impression
msg-settled_about-plan = Plan
msg-settled_about-became = What became of the plan
msg-settled_about-transfer = What travels along
msg-settled_about-names = Names of the person
msg-settled_about-birth = Birth
msg-settled_about-sex = Sex of the person
msg-settled_about-norm_sex = Norms that are compared with
msg-settled_about-home = Home of the person
msg-settled_about-identifiers = Numbers of the person
msg-settled_about-withdrawal = Finding taken back
