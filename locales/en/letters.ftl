# The therapist's letter, the surgeon's page and the work note. Clinicians and employers read them.
#
# Dates, days and loads come in as text, written as the reader shall read them.

letter-title = Letter to the therapist
letter-page-of = Page { $page } of { $pages }
letter-side = { $side ->
    [left] LEFT shoulder
    [right] RIGHT shoulder
   *[other] (side not known) shoulder
}
letter-unnamed-practice = Practice and surgeon: written in by hand below
letter-running = Letter to the therapist · { $side } · operated { $date }
letter-running-with-id = Letter to the therapist · { $side } · operated { $date } · { $id }
letter-to = To the treating physical therapist
letter-valid = Valid until { $until }, the visit that decides on the next stage ({ $stage }). Nothing from its gate on is in force before the surgeon opens it and a new letter says so.
letter-valid-without-visit = Valid until { $until }, the gate of the next stage ({ $stage }). Nothing from that day on is in force before the surgeon opens it and a new letter says so.
letter-valid-waiting = The gate of the next stage ({ $stage }, { $gate }) has passed and the surgeon has not opened it. Each limit stays at the lowest value it has had since the day before that gate. A new letter follows when it is opened. Valid until { $until }.
letter-valid-all-opened = Every stage is opened. Valid until { $until }, the end of the dated plan, unless a newer letter replaces it.
letter-box-title = The box of limits
letter-box-alt = Limits of each group of movements from each day on
letter-box-rule = Substitute any exercise inside this box. All hands-on work stays inside it too. What is not listed here or on page 2 is not allowed.
letter-box-degrees = Degrees are the arm against the trunk; external rotation counts from the forearm straight ahead. Supine: only lying on the back. A column of a stage that is not open yet is for planning only.
letter-done-alt = What was done, and the sling
letter-frequency = { $times } times a week for { $weeks } weeks
letter-rest-title = The rest of the box: stretch, effort and resistance below the shoulder
letter-orders-alt = Manual therapy, end-range stretch, pool and traction
letter-as-the-surgeon-writes = as the surgeon writes:
letter-no-order = no
letter-yes-from = from { $from }
letter-stretch-never = no
letter-gates-alt = Gates with what is looked at before the surgeon opens them
letter-questions = { $count ->
    [one] One question is
   *[other] { $count } questions are
} still open and told in full on the next pages; { $blocking } to be answered before signing.
letter-questions-full-title = Open questions in full
letter-sign = Not valid unsigned.
letter-sign-blocked = Not valid unsigned, and not to be signed while a question marked "before signing" is open.
letter-strip-title = Send back with the patient, or by mail: ten answers
letter-strip-text = Name ______________________ Label { $label } · { $shown }, operated { $date }. Measure only what is open. Stop at the limit of the day in the box, and write the number even where it is the limit.
letter-strip-not-yet = not yet allowed
letter-strip-not-before = not before { $date }, once opened
letter-strip-never = not in this plan
letter-strip-from = degrees, from { $date } on
letter-strip-worry = yes or no; if yes, call { $number } now
letter-strip-worry-no-number = yes or no; if yes, call the practice now
letter-reasons-title = Reasons and sources
letter-reasons-text = Numbered as in the columns "why". Under "Evidence", where a source stands the value was read there; other values carry their mark.
letter-evidence-title = Evidence
letter-evidence-alt = Numbered values with their sources or marks
letter-reasons-alt = Numbered reasons with their place in the record and their evidence

surgeon-title = Surgeon's page
surgeon-running = Surgeon's page · { $side } · operated { $date }
surgeon-running-with-id = Surgeon's page · { $side } · operated { $date } · { $id }
surgeon-why-title = Why this protocol
surgeon-index-score = Healing index { $score } of { $of }: { $meaning } ({ $evidence }).
surgeon-index-range = Healing index { $low } to { $high } of { $of }: { $meaning } ({ $evidence }). Not recorded: { $missing }.
surgeon-blocked-title = Before signing
surgeon-blocked = This page can't be signed while a question above blocks it.
surgeon-questions-title = Open questions that could change a limit
surgeon-questions-none = No fact is missing that could change a limit.
surgeon-questions-same = The plan is the same for all { $count } completions of this record.
surgeon-questions-compared = The plan was compared over the { $count } completions of this record.
surgeon-question-effect = could change { $count ->
    [one] one value
   *[other] { $count } values
}, such as { $key } on days { $from } to { $until }
surgeon-question-effect-degrees = could change { $count ->
    [one] one value
   *[other] { $count } values
}, such as { $key } on days { $from } to { $until }, by up to { $degrees }°
surgeon-line-title = Recovery line
surgeon-line-alt = Weeks from surgery, the sling as a bar, and the stages from gate to gate
surgeon-cautions-title = Cautions
surgeon-loosened-title = Loosened by the surgeon
surgeon-outside = outside the proof: { $line }
surgeon-moved = moved: { $line }
surgeon-settings-title = Differences from the built-in defaults by this surgeon's settings
surgeon-settings-none = None: every built-in default holds.
surgeon-box-title = Limits
surgeon-box-rule = What is not listed is not allowed. Degrees are the arm against the trunk; external rotation counts from the forearm straight ahead.
surgeon-sling-title = Sling
surgeon-exercises-title = Exercises: what is new and what ends
surgeon-left-out-title = Left out, and why
surgeon-left-out-alt = Exercises of the protocol that some days do not allow
surgeon-exercises-alt = Exercises by the day they begin, with their dose
surgeon-goals-title = Goals
surgeon-goals-alt = Goals with the day they are due
surgeon-goals-text = A goal is no limit. One from memory warns of nothing until the surgeon adopts it.
surgeon-returns-title = Return to activities
surgeon-returns-alt = Activities with the first day their date and the limits allow
surgeon-visits-title = Visits
surgeon-visits-alt = Visits with the day they are due and the clinic day
surgeon-visits-no-days = No clinic days are set: each visit stands on the day it is due.
surgeon-gates-title = Gates
surgeon-gates-text = Opened by the surgeon, never by the date alone. Being stopped at the limit of the day meets a criterion of motion.
surgeon-marked-title = Values on the patient's paper that no source gives
surgeon-marked-text = Patients' paper shows no marks. By signing, the surgeon takes these values on:
surgeon-marked-activities = Angles and loads that daily activities are held against: { $values }.
surgeon-marked-none = Every value on the patient's paper was read in a source.
surgeon-marked-alt = Values without a source, with their marks
surgeon-signature-title = Signature
surgeon-sign = What is signed: the dated limits, exercises and sling inside the stages that are opened, for the { $side }, as the file prescription.json with this SHA-256 holds them. A later stage is opened by a new entry with name and date, never by this signature.
surgeon-reasons-title = Every reason, by its number
surgeon-reasons-text = Numbered as in the columns "why". Under "Evidence", where a source stands the value was read there; other values carry their mark.

work-title = Work note
work-running = Work note · operated { $date }
work-side = { $side ->
    [left] LEFT arm
    [right] RIGHT arm
   *[other] (side not known) arm
}
work-intro = The person named here had an operation on the { $side ->
    [left] LEFT
    [right] RIGHT
   *[other] (side not known)
    } arm on { $date }. The arm heals for months. Please plan the work by this note.
work-rule = Each date is the first day it can be. It holds only when the surgeon's office has said so. What is not listed here is not allowed yet.
work-review = We look again on { $date }. Ask for a new note then.
work-review-no-date = We look again at the next visit. Ask for a new note then.
work-tasks-title = What can be done at work
work-tasks-alt = Kinds of work with the first day they can be done
work-task = Work
work-earliest = Earliest
work-review-head = Review
work-desk-sling = Desk work with the sling on
work-one-hand = Light work with the other hand only, sling on
work-desk-both = Desk work with both hands
work-drive = Driving for work
work-manual = Work with tools and both hands
work-overhead = Work above shoulder height
work-ladder = Work on a ladder
work-may = yes, now
work-from = { $date }
work-only-after = not before { $date }
work-waits = not yet: the surgeon has to say so first
work-not-dated = not in this plan: ask the surgeon
work-review-on = review on { $date }
work-review-later = review at the next visit
work-lift-title = Lifting and carrying with this arm
work-lift-text = What both hands lift together counts as lifted by this arm.
work-lift-alt = The most this arm may lift, from day to day
work-lift-from = From
work-lift-before = Until the day before
work-lift-hand = Lift or carry
work-lift-overhead = Above shoulder height
work-lift-nothing = nothing
work-lift-most = up to { $kilograms } kg ({ $pounds } lb)
work-lift-free = no set limit
work-lift-open-end = until the surgeon says more
work-lift-now = in force
work-lift-earliest = at the earliest
work-lift-holds = Holds
work-sling-title = Sling
work-sling-always = The sling is worn at work, all the time, until { $until } at the earliest.
work-sling-always-open = The sling is worn at work, all the time, until the surgeon says more.
work-sling-weaning = It comes off step by step from { $from }. It is off from { $until } at the earliest.
work-sling-weaning-open = It comes off step by step, as the surgeon says.
work-sling-none = No sling is needed.
work-sign = Not valid unsigned. If work hurts the arm, stop it and call the practice.
