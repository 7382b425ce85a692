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
letter-call = Call { $day } (night { $night }): pop or fall, wound open or leaking, fever, new weakness, cold or numb hand.
letter-valid = Not valid unsigned. Valid until { $until }, the visit that decides on the next stage ({ $stage }). Nothing from its gate on is in force before the surgeon opens it and a new letter says so.
letter-valid-without-visit = Not valid unsigned. Valid until { $until }, the gate of the next stage ({ $stage }). Nothing from that day on is in force before the surgeon opens it and a new letter says so.
letter-valid-until-back = Not valid unsigned. Valid until { $until }: on { $back } the plan goes back to { $stage }. Nothing after it that has to be opened is in force before the surgeon opens it anew and a new letter says so.
letter-valid-waiting = Not valid unsigned. The gate of the next stage ({ $stage }, { $gate }) has passed and the surgeon has not opened it. Each limit stays at the lowest value it has had since the day before that gate. A new letter follows when it is opened. Valid until { $until }.
letter-valid-all-opened = Not valid unsigned. Every stage is opened. Valid until { $until }, the end of the dated plan, unless a newer letter replaces it.
letter-box-title = The box of limits: substitute any exercise inside it
letter-box-alt = Limits of each group of movements from each day on
letter-box-legend = Hands-on work stays inside the box too; what is not listed is not allowed. Elevation: forward and in the scapular plane. Passive: also what the other arm drives wholly, by stick or pulley. Assisted: the operated arm helps. Isometric, other positions: those without a row of their own. Degrees count from the arm at the side, in external rotation from the forearm straight ahead; minus: that far short of it. Supine: only lying on the back. Sling neutral: forearm straight ahead. * No published source for a number or day of the row: own choice or common practice.
letter-done-alt = What was done, and the sling
letter-frequency = { $times } times a week for { $weeks } weeks, from ____________
letter-arcs-title = Passive limits on the day of issue, drawn
letter-arc = { $key }: stop at { $degrees }°
letter-rest-title = The rest of the box: stretch, effort and resistance below the shoulder
letter-orders-alt = Manual therapy, end-range stretch, pool and traction
letter-as-the-surgeon-writes = as the surgeon writes:
letter-no-order = no
letter-yes-from = from { $from }
letter-order-not-before = not before { $from }, inside the box{ $earlier ->
    [yes] ; earlier than active motion: the surgeon's choice
   *[no] {""}
}
letter-order-once-opened = not before { $from }, inside the box, once { $stage } is opened{ $earlier ->
    [yes] ; earlier than active motion: the surgeon's choice
   *[no] {""}
}
letter-order-held = stopped: hold until { $until }
letter-order-waits = stopped: { $stage } is not opened
letter-order-moved = ask the surgeon: the plan was moved
letter-stretch-once-opened = not before { $from }, once { $stage } is opened
letter-stretch-never = no
letter-gates-alt = Gates with what is looked at before the surgeon opens them
letter-gate-closes-again = opened before; closes again on { $date }; new signature needed
letter-gate-no-visit = not opened; next visit: to be made
letter-questions = { $count ->
    [one] One question is
   *[other] { $count } questions are
} still open and told in full on the next pages; { $blocking } to be answered before signing.
letter-questions-full-title = Open questions in full
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
letter-home-title = Home exercises now, with their dose
letter-home-none = None on this day.
letter-reasons-text = Numbered as in the columns "why". Under "Evidence", where a source stands the value was read there; other values carry their mark.
letter-evidence-title = Evidence
letter-evidence-alt = Numbered values with their sources or marks
letter-reasons-alt = Numbered reasons with their place in the record and their evidence

surgeon-title = Surgeon's page
surgeon-running = Surgeon's page · { $side } · operated { $date }
surgeon-running-with-id = Surgeon's page · { $side } · operated { $date } · { $id }
surgeon-why-title = Why this protocol
surgeon-index-score = Healing index { $score } of { $of }: { $meaning } (pairing of score and share: own choice; { $evidence }).
surgeon-index-range = Healing index { $low } to { $high } of { $of }: { $meaning } (pairing of score and share: own choice; { $evidence }). Not recorded: { $missing }.
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
surgeon-question-effect-open = could change { $count ->
    [one] one value
   *[other] { $count } values
}, such as { $key } on days { $from } to { $until }, between no and free
surgeon-line-title = Recovery line
surgeon-line-alt = Weeks from surgery, the sling as a bar, and the stages from gate to gate
surgeon-cautions-title = Cautions
surgeon-loosened-title = Loosened by the surgeon
surgeon-outside = outside the proof: { $line }
surgeon-moved-title = Moved: holds and go-backs
surgeon-settings-title = Differences from the built-in defaults by this surgeon's settings
surgeon-settings-none = None: every built-in default holds.
surgeon-box-title = Limits
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
surgeon-returns-shut-again = { $first }; shut again after it, for good from { $stays }
surgeon-returns-not-again = { $first }; shut again after it, and for good on no dated day
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
surgeon-sign = Not valid unsigned. What is signed: the dated limits, exercises and sling inside the stages that are opened, for the { $side }, as the file prescription.json with this SHA-256 holds them. A later stage is opened by a new entry with name and date, never by this signature.
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
work-intro-release = The person named here had an operation on the { $side ->
    [left] LEFT
    [right] RIGHT
   *[other] (side not known)
    } arm on { $date }. The joint is being moved again. Please plan the work by this note.
work-rule = Each date is the first day it can be. It holds only when the surgeon's office has said so. What is not listed here is not allowed yet.
work-review = We look again on { $date }. Ask for a new note then.
work-review-no-date = We look again at the next visit, which is still to be made. Ask for a new note then.
work-tasks-title = What can be done at work
work-none-before = No work with this arm before { $date }.
work-none-yet = No work with this arm until the surgeon's office says so.
work-tasks-alt = Kinds of work with the first day they can be done
work-task = Work
work-earliest = Earliest
work-review-head = Review
work-desk-sling = Desk work with the sling on
work-one-hand = Light work with the other hand only, sling on
work-one-hand-no-sling = Light work with the other hand only
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
work-lift-before = Until
work-lift-hand = Lift or carry
work-lift-overhead = Above shoulder height
work-lift-nothing = nothing
work-lift-most = up to { $kilograms } kg ({ $pounds } lb)
work-lift-free = no set limit
work-lift-open-end = until the surgeon says more
work-lift-now = in force
work-lift-earliest = planned, not open: ask
work-lift-more = A line that is planned allows nothing yet. The next note says more.
work-lift-holds = Holds
work-sling-title = Sling
work-sling-always = The sling is worn at work, all the time, until { $until } at the earliest.
work-sling-always-open = The sling is worn at work, all the time, until the surgeon says more.
work-sling-again = From { $from } it is worn all the time again, until { $until } at the earliest.
work-sling-weaning = From { $from } at the earliest it comes off step by step.
work-sling-weaning-now = The sling comes off step by step, until { $until } at the earliest.
work-sling-weaning-open = It comes off step by step, as the surgeon says.
work-sling-weaning-again = From { $from } it is worn again, and comes off step by step.
work-sling-off = It is off from { $from } at the earliest.
work-sling-none = No sling is needed.
work-sign-blocked = Not valid unsigned, and not to be signed while a question marked "before signing" is open. If work hurts the arm, stop it and call the practice.
work-sign = Not valid unsigned. If work hurts the arm, stop it and call the practice.
