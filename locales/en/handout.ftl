# The patient's handout: opened stages only, in plain words.
#
# $side      left or right
# $from, $until, $date   dates as text, as the language writes them
# Degrees come with a word for what they look like ($landmark).

handout-title = Your plan after surgery
handout-side = { $side ->
    [left] LEFT arm
    [right] RIGHT arm
   *[other] (side not known)
}
handout-surgery = Day of surgery: { $date }
handout-running-head = Your plan after shoulder surgery
handout-page = Page { "{" }page{ "}" } of { "{" }pages{ "}" }
handout-name = Name
handout-birth = Date of birth
handout-not-yet-signed = Your surgeon still has to answer a question. Until then, use only the sheet for your first days at home.
handout-not-signed = This plan counts only when your surgeon has signed it.
handout-signature = Surgeon
handout-signature-date = Date
handout-foot = Day { $day } · Night { $night } · Danger: emergency number
handout-care = Use this plan only while your surgeon cares for you. What your surgeon tells you comes first. This paper can’t call for help. You have to call.

## What is open now.

handout-stage-protection = Let it heal
handout-stage-passive = The arm is moved
handout-stage-assisted = The arm helps
handout-stage-active = The arm moves by itself
handout-stage-strengthening = The arm gets strong
handout-stage-return = Back to work and sport
handout-stage-motion = Get it moving
handout-stage-loading = The arm gets strong
handout-stage-other = The next step

handout-step = Step { $number }: { $title }
handout-now = Open from { $from }.
handout-later = Do not start this before { $from }.
handout-now-frozen = These are your rules from { $from } on.
handout-next-opened = Your next step starts on { $date }. Do nothing of it before that day.
handout-later-paper = These steps are open too. Each gets a paper of its own:
handout-later-step = { $step }, from { $from }
handout-later-go-on = You get the new paper before { $date }. If you do not have it by then, stay with this one and call us.
handout-later-step-back = { $step }, again from { $from }
handout-later-stricter = From { $date } your rules get stricter. Do not use this paper from that day on. If you have no new paper by then, wear the sling, do no exercises and call us.
handout-back-title = From { $date } your rules get stricter.
handout-back-own-strength = Stop raising the arm by its own strength.
handout-back-bands = Stop using bands and weights for the shoulder.
handout-back-holding = Hold and carry less with that hand, or nothing, as your new rules say.
handout-back-sling-always = Wear the sling day and night again.
handout-back-sling-again = Wear the sling again, as your new rules say.
handout-back-step = Your new rules stand under “{ $step }”.
handout-back-earlier = You may do this earlier.
handout-back-from = Follow these rules from { $from } at the latest. You may start earlier.
handout-after = Until they do, these rules go on, also after that day.
handout-frozen = Your next step has not been opened yet. These rules hold until your surgeon’s office tells you to go on.
handout-next = Next step: not before { $date }, and only after your surgeon’s office says so.
handout-last = This is the last step of your plan.
handout-not-listed = Is something not on this plan? Then do not do it yet. Call and ask.
handout-hand-height = { $landmark ->
    [top-of-head] When you stand without shoes, keep the hand under { $centimeters } cm ({ $inches } inches) above the floor: that is about the top of your head. Is that place lower on you? Then that place counts.
    [eyes] When you stand without shoes, keep the hand under { $centimeters } cm ({ $inches } inches) above the floor: that is about your eyes. Is that place lower on you? Then that place counts.
    [chin] When you stand without shoes, keep the hand under { $centimeters } cm ({ $inches } inches) above the floor: that is about your chin. Is that place lower on you? Then that place counts.
    [shoulder] When you stand without shoes, keep the hand under { $centimeters } cm ({ $inches } inches) above the floor: that is about your shoulder. Is that place lower on you? Then that place counts.
    [chest] When you stand without shoes, keep the hand under { $centimeters } cm ({ $inches } inches) above the floor: that is about your chest. Is that place lower on you? Then that place counts.
    [half-chest] When you stand without shoes, keep the hand under { $centimeters } cm ({ $inches } inches) above the floor: that is about half way from your belly button to your chest. Is that place lower on you? Then that place counts.
    [belly-button] When you stand without shoes, keep the hand under { $centimeters } cm ({ $inches } inches) above the floor: that is about your belly button. Is that place lower on you? Then that place counts.
    [hip] When you stand without shoes, keep the hand under { $centimeters } cm ({ $inches } inches) above the floor: that is about your hip. Is that place lower on you? Then that place counts.
   *[thigh] When you stand without shoes, keep the hand under { $centimeters } cm ({ $inches } inches) above the floor: that is about the top of your thigh. Is that place lower on you? Then that place counts.
}
handout-no-pain = No pain does not mean that it has healed. The rules stay the same.
handout-stricter = Does your therapist say something else? Do what is more careful, and call us.
handout-moved = Your surgeon has changed the dates of your plan. Throw away older plans.

## The sling.

handout-sling-title = Your sling
handout-sling-always = Wear the sling day and night, asleep too. Take it off only to wash, to dress and to do your exercises.
handout-sling-weaning = Now wear the sling a little less each day. Start with one hour without it. Keep it on in a crowd, on the bus and when you sleep, until it is time to stop.
handout-sling-none = You do not need the sling any more.
handout-sling-numb = First keep it on until you can feel and move the whole arm.
handout-sling-same = Take it off and put it on as in step { $step }.
handout-sling-off-title = To take it off
handout-sling-on-title = To put it on
handout-sling-no-pillow = Does your sling have no pillow? Then let your forearm lie on your belly, and ask us.
handout-sling-from = From { $date }: { $text }
handout-sling-bar = Your sling
handout-sling-bar-always = day and night
handout-sling-bar-always-on = day and night, and it goes on
handout-sling-bar-weaning = less each day
handout-sling-bar-weaning-on = less each day, and it goes on
handout-sling-bar-none = no sling
handout-sling-bar-week = Week
handout-sling-bar-alt = A line of weeks from the day of surgery. { $text }

## May and may not.

handout-rules-from = From { $date } this changes
handout-may-title = You may
handout-not-title = Do not
handout-not-more-title = Do not (new)
handout-may-more-title = You may (new)

handout-may-raise = { $mode ->
    [carried] Let { handout-who-raises } raise the operated arm. The operated arm does no work. { handout-how-high }
    [helped] The operated arm may help a little while { handout-who-helps } raises it{ $lying ->
        [yes] , but only when you lie on your back
       *[no] {""}
    }. { handout-how-high }
   *[alone] Raise the arm by its own strength. { handout-how-high }
}
# Where the other arm can't help, somebody else has to.
handout-who = { $other ->
    [helps] your other arm or a therapist
   *[rests] a therapist
}
handout-who-raises = { $other ->
    [helps] your other arm, a table or a therapist
   *[rests] a table or a therapist
}
handout-who-helps = { $other ->
    [helps] your other arm
   *[rests] a therapist
}
handout-how-high = { $bound ->
    [free] Go as far as is easy.
   *[degrees] { $landmark ->
        [top-of-head] Keep the elbow straight, and keep hand and elbow no higher than the top of your head ({ $degrees }°).
        [eyes] Keep the elbow straight, and keep hand and elbow no higher than your eyes ({ $degrees }°).
        [chin] Keep the elbow straight, and keep hand and elbow no higher than your chin ({ $degrees }°).
        [shoulder] Keep the elbow straight, and keep hand and elbow no higher than your shoulder ({ $degrees }°).
        [chest] Keep the elbow straight, and keep hand and elbow no higher than your chest ({ $degrees }°).
        [half-chest] Keep the elbow straight, and keep hand and elbow no higher than half way from your belly button to your chest ({ $degrees }°).
        [belly-button] Keep the elbow straight, and keep hand and elbow no higher than your belly button ({ $degrees }°).
        [hip] Keep the elbow straight, and keep hand and elbow no higher than your hip ({ $degrees }°).
        [thigh] Keep the elbow straight, and keep hand and elbow no higher than the top of your thigh ({ $degrees }°).
       *[low] Go only as far as you were shown ({ $degrees }°).
    }
}
handout-how-high-else = This is for when you stand or sit up. In the sling the hand may rest at your belly. When you lie down or lean forward, go by what stands under End.
handout-may-raise-ahead = { $mode ->
    [carried] Let { handout-who-raises } raise the operated arm straight ahead. The operated arm does no work. { handout-how-high }
    [helped] The operated arm may help a little while { handout-who-helps } raises it straight ahead{ $lying ->
        [yes] , but only when you lie on your back
       *[no] {""}
    }. { handout-how-high }
   *[alone] Raise the arm straight ahead by its own strength. { handout-how-high }
}
handout-may-raise-out = { $mode ->
    [carried] Let { handout-who-raises } raise the operated arm half way between ahead and the side. The operated arm does no work. { handout-how-high }
    [helped] The operated arm may help a little while { handout-who-helps } raises it half way between ahead and the side{ $lying ->
        [yes] , but only when you lie on your back
       *[no] {""}
    }. { handout-how-high }
   *[alone] Raise the arm half way between ahead and the side by its own strength. { handout-how-high }
}
handout-may-turn-out = { $mode ->
    [carried] Let { handout-who } turn the operated arm out, elbow at your side. The operated arm does no work. { handout-how-far-out }
    [helped] The operated arm may help a little while { handout-who-helps } turns it out{ $lying ->
        [yes] , but only when you lie on your back
       *[no] {""}
    }. { handout-how-far-out }
   *[alone] Turn the arm out by its own strength, elbow at your side. { handout-how-far-out }
}
handout-how-far-out = { $bound ->
    [free] Go as far as is easy.
   *[degrees] { $landmark ->
        [to-the-side] Stop when the hand points straight to the side ({ $degrees }°).
        [two-thirds] Stop two thirds of the way from straight ahead to the side ({ $degrees }°).
        [half] Stop half way from straight ahead to the side ({ $degrees }°).
        [a-third] Stop a third of the way from straight ahead to the side ({ $degrees }°).
        [a-fifth] Stop a fifth of the way from straight ahead to the side ({ $degrees }°).
        [a-sixth] Stop a sixth of the way from straight ahead to the side ({ $degrees }°).
        [a-little] Stop when the hand points a little out from straight ahead ({ $degrees }°).
        [ahead] Stop when the hand points straight ahead ({ $degrees }°).
       *[across] Stop before the hand points straight ahead ({ $degrees }°).
    }
}
handout-may-side = { $mode ->
    [carried] Let { handout-who } move the operated arm out to the side. The operated arm does no work. { handout-how-high }
    [helped] The operated arm may help a little while { handout-who-helps } moves it out to the side. { handout-how-high }
   *[alone] Move the arm out to the side by its own strength. { handout-how-high }
}
handout-may-across = { $mode ->
    [carried] Let { handout-who } bring the operated arm across your chest. The operated arm does no work. { handout-how-far }
    [helped] The operated arm may help a little while { handout-who-helps } brings it across your chest. { handout-how-far }
   *[alone] Bring the arm across your chest by its own strength. { handout-how-far }
}
handout-may-turn-in = { $mode ->
    [carried] Let { handout-who } turn the operated arm in, toward your belly. The operated arm does no work. { handout-how-far }
    [helped] The operated arm may help a little while { handout-who-helps } turns it in. { handout-how-far }
   *[alone] Turn the arm in by its own strength. { handout-how-far }
}
handout-may-back = { $mode ->
    [carried] Let { handout-who } move the operated arm back. The operated arm does no work. { handout-how-far }
    [helped] The operated arm may help a little while { handout-who-helps } moves it back. { handout-how-far }
   *[alone] Move the arm back by its own strength. { handout-how-far }
}
handout-may-behind-back = { $mode ->
    [carried] Let { handout-who } bring the operated hand behind your back. The operated arm does no work.
    [helped] The operated arm may help a little while { handout-who-helps } brings it behind your back.
   *[alone] Put the hand behind your back by its own strength, as far as is easy.
}
handout-may-behind-head = { $mode ->
    [carried] Let { handout-who } bring the operated hand up beside your head. The operated arm does no work.
    [helped] The operated arm may help a little while { handout-who-helps } brings it up beside your head.
   *[alone] Put the hand behind your head, as far as is easy.
}
handout-how-far = { $bound ->
    [free] Go as far as is easy.
   *[degrees] Go only as far as you were shown ({ $degrees }°).
}
handout-may-all-ways = Raise, turn and reach with the arm by its own strength. Go as far as is easy.
handout-may-stretch = Gentle stretches to the end of a move are fine now, as your exercises say.
handout-may-bands = Train the shoulder with bands and weights, as your exercises say.
handout-may-press = { $effort ->
    [quarter] Press lightly with the hand and let nothing move, elbow at your side. Use no more than a quarter of your strength (limit { $percent } %).
   *[percent] Press very lightly with the hand and let nothing move, elbow at your side (limit { $percent } % of your strength).
}
handout-may-hold = { $bound ->
    [free] Hold and carry things with that hand.
   *[load] Hold or carry up to { $kilograms } kg ({ $pounds } lb) with that hand.
}
handout-may-overhead = { $bound ->
    [free] Lift things above your shoulder.
   *[load] Lift up to { $kilograms } kg ({ $pounds } lb) above your shoulder.
}
handout-may-lean = Lean on the arm, and push up with it.
handout-may-arm-below = Move your fingers, wrist and elbow, and turn your palm up and down.
handout-may-hand = Move your fingers and your wrist.
handout-may-elbow = Bend and stretch your elbow.
handout-may-elbow-carried = Let { handout-who } bend and stretch the operated elbow. The operated arm does no work.
handout-may-palm = Turn your palm up and down.
handout-may-blade = Shrug and squeeze your shoulder blades, while the arm rests.

handout-not-shoulder = Do not move your shoulder. Do not lift the arm, reach out with it, or put it behind your back. Let no one else move it.
handout-not-raise = Do not raise the arm. Let no one else raise it.
handout-not-turn-out = Do not turn the arm out. Let no one else turn it.
handout-not-own-strength = Do not raise the arm or turn it out by its own strength.
handout-not-raise-alone = Do not raise the arm by its own strength.
handout-not-raise-ahead = Do not raise the arm straight ahead. Let no one else raise it that way.
handout-not-raise-ahead-alone = Do not raise the arm straight ahead by its own strength.
handout-not-raise-out = Do not raise the arm half way between ahead and the side. Let no one else raise it that way.
handout-not-raise-out-alone = Do not raise the arm half way between ahead and the side by its own strength.
handout-not-turn-out-alone = Do not turn the arm out by its own strength.
handout-not-other-ways = Do not move the arm straight out to the side, across your chest, or behind you.
handout-not-side = Do not move the arm straight out to the side.
handout-not-side-alone = Do not move the arm straight out to the side by its own strength.
handout-not-across = Do not bring the arm across your chest.
handout-not-across-alone = Do not bring the arm across your chest by its own strength.
handout-not-turn-in = Do not turn the arm in.
handout-not-turn-in-alone = Do not turn the arm in by its own strength.
handout-not-back = Keep your elbow in front of you. Do not move it behind your body.
handout-not-back-alone = Do not push the arm back by its own strength.
handout-not-behind-back = Do not put your hand behind your back.
handout-not-behind-back-alone = Do not put your hand behind your back by its own strength.
handout-not-behind-head = Do not put your hand behind your head.
handout-not-behind-head-alone = Do not put your hand behind your head by its own strength.
handout-not-stretch = Do not stretch or force the shoulder to its end.
handout-not-bands = Do not use bands or weights for the shoulder.
handout-not-hold = Do not hold or carry things with that hand. A pen or your phone is fine while the arm rests.
handout-not-overhead = Do not lift things above your shoulder.
handout-not-lean = Do not lean on that arm. Do not push up with it from a chair or bed.
handout-not-elbow-alone = Do not bend the elbow by its own strength.
handout-not-elbow-straight = Do not push the elbow straight.
handout-not-palm-alone = Do not turn the palm up by its own strength.
handout-not-blade = Do not shrug, and do not pull your shoulder blades back.

## Exercises.

handout-exercises-title = Your exercises
handout-exercises-how = Go slowly, and breathe. An ache or a gentle pull is fine. Sharp pain is not: stop. Does it hurt for more than { $pain_minutes } minutes after? Then do less next time.
handout-exercises-missed = Did you miss a day? Do not catch up. Go on as if it were a new day.
handout-exercises-sling = Some moves need the sling off. Put it on again after.
handout-exercises-numb = Is your arm still numb? Do not start yet. Keep it in the sling.
handout-exercises-home = At home, stop where it says under End. That is a little less than the rule.
handout-exercises-none = There are no exercises in this step.
handout-exercise-same = You know this move: number { $number } of step { $step }. Do it the same way.
handout-exercise-again = You know this move: number { $number } of step { $step }. Do it the same way. What counts now:
handout-exercise-again-here = You know this move: number { $number } above. Do it the same way. What counts now:
handout-exercise-start = Start
handout-exercise-end = End
handout-exercise-stop = Stop
handout-exercise-mistakes = Watch out
handout-exercise-dates = Start on { $from }. Stop on { $until }.
handout-exercise-from = Start on { $from }.
handout-exercise-until = Stop on { $until }.

handout-reach-lying-raise = { $landmark ->
    [top-of-head] Stop when the arm points a little past the ceiling ({ $degrees }°).
    [eyes] Stop when the arm points a little past the ceiling ({ $degrees }°).
    [chin] Stop when the arm points a little past the ceiling ({ $degrees }°).
    [shoulder] Stop when the arm points up to the ceiling ({ $degrees }°).
    [chest] Stop before the arm points straight up ({ $degrees }°).
    [half-chest] Stop when the arm points almost straight up to the ceiling ({ $degrees }°).
    [belly-button] Stop two thirds of the way up to the ceiling ({ $degrees }°).
    [hip] Stop half way up to the ceiling ({ $degrees }°).
    [thigh] Stop a third of the way up to the ceiling ({ $degrees }°).
   *[low] Go only as far as you were shown ({ $degrees }°).
}
handout-reach-corner = { $landmark ->
    [shoulder] Stop when your upper arm and your chest make a square corner ({ $degrees }°).
    [chest] Stop before your upper arm and your chest make a square corner ({ $degrees }°).
    [half-chest] Stop well before your upper arm and your chest make a square corner: three quarters of the way to it ({ $degrees }°).
    [belly-button] Stop well before your upper arm and your chest make a square corner: two thirds of the way to it ({ $degrees }°).
    [hip] Stop well before your upper arm and your chest make a square corner: half way to it ({ $degrees }°).
    [thigh] Stop well before your upper arm and your chest make a square corner: a third of the way to it ({ $degrees }°).
   *[other] Go only as far as you were shown ({ $degrees }°).
}
handout-reach-lying-turn = { $landmark ->
    [to-the-side] The hand points to the ceiling. Let it tip out as far as from 12 to 3 on a clock ({ $degrees }°).
    [two-thirds] The hand points to the ceiling. Let it tip out as far as from 12 to 2 on a clock ({ $degrees }°).
    [half] The hand points to the ceiling. Let it tip out as far as from 12 to half past 1 on a clock ({ $degrees }°).
    [a-third] The hand points to the ceiling. Let it tip out as far as from 12 to 1 on a clock ({ $degrees }°).
    [a-fifth] The hand points to the ceiling. Let it tip out a very little more than from 12 to half past 12 on a clock ({ $degrees }°).
    [a-sixth] The hand points to the ceiling. Let it tip out a little, as far as from 12 to half past 12 on a clock ({ $degrees }°).
    [a-little] The hand points to the ceiling. Let it tip out a little, less than from 12 to half past 12 on a clock ({ $degrees }°).
    [ahead] Stop when the hand points to the ceiling ({ $degrees }°).
   *[across] Stop before the hand points to the ceiling ({ $degrees }°).
}
handout-reach-upright-raise = { handout-how-high }
handout-reach-turn-out = { handout-how-far-out }
handout-reach-shown = Go only as far as you were shown ({ $degrees }°).
handout-reach-easy = Go as far as is easy, and no further.

handout-dose-times = { $counted ->
    [times] { $to ->
        [none] Do it { $repetitions } times.
       *[more] Do it { $repetitions } times. Build up to { $to } over time.
    }
   *[other] { $to ->
        [none] Do { $repetitions } { $counted }.
       *[more] Do { $repetitions } { $counted }. Build up to { $to } over time.
    }
}
handout-dose-sets = Do { $sets } sets, with a rest between them.
handout-dose-hold = Hold each one for { $seconds } seconds.
handout-dose-day = { $times ->
    [1] Do this once a day.
    [2] Do this twice a day.
   *[other] Do this { $times } times a day.
}
handout-dose-week = { $times ->
    [1] Do this once a day, on { $days } days a week.
    [2] Do this twice a day, on { $days } days a week.
   *[other] Do this { $times } times a day, on { $days } days a week.
}
handout-dose-load = Use no more than { $kilograms } kg ({ $pounds } lb).
handout-dose-therapist = Only with your therapist.

## May I …?

handout-activities-title = May I …?
handout-activities-intro = These answers hold for this step.
handout-activities-changed = Here is what changes in this step. All else stays as in step { $step }.
handout-activities-same = Nothing changes: the answers of step { $step } stay.
handout-activities-yes = Yes
handout-activities-from = From { $date }
handout-activities-ask = Ask us first
handout-activities-what = What
handout-activities-answer = May I?
handout-activities-not-title = Not yet
handout-activities-not = These have to wait. Use the other hand, or let someone help you.
handout-activities-not-rest = All other things wait too: lifting, heavy work, and sport.

## When to call, and visits.

handout-call-title = When to call
handout-today-numb = Your hand or arm is numb, tingles or is weak, and it does not go away.
handout-visits-title = Your visits
handout-visits-none = Ask your surgeon’s office for your next visit.
handout-visit-wound = { $date }: we look at your wound.
handout-visit-gate = { $date }: we look at your arm, and your surgeon tells you if you may go on.
handout-visit-other = { $date }: visit.
handout-visits-bring = Bring this plan and your tablets. The dates are days we plan for you. Call if one does not suit you.

handout-nights-title = Your first days and nights
handout-nights-intro = This part is for the time right after surgery.
handout-alone-title = Alone, with one hand
handout-alone-bed = Before bed, put water, your phone, your tablets and this plan on your other side.
handout-alone-rise = To get up, slide to the edge. Push with your other hand. Sit for a minute. Then stand.
handout-alone-stairs = On stairs, hold the rail with your other hand. No rail on that side? Sit down and ask for help.
handout-alone-toilet = Put the toilet paper on your other side, and use your other hand.
handout-alone-kitchen = Hold a jar between your knees, and turn the lid with your other hand. Do not lift hot pots.
handout-alone-shoes = Wear shoes that you can slip on and that hold your heel.
handout-tablets-own = Your surgeon wrote: { $tablets }

## The sheet for the fridge.

handout-fridge-pictures = The same in pictures
handout-fridge-stop = Stop a move that hurts sharply, and do not go past the bar. Then call us.
handout-fridge-title = For the fridge: { handout-side }
handout-fridge-valid = Valid from { $from } until your surgeon’s office opens the next step. That is not before { $until }.
handout-fridge-limits-title = The most important rules
handout-fridge-until = Valid from { $from } to { $last } (last day).
handout-fridge-from = Valid from { $from }.
handout-fridge-back = Use this sheet only until { $last }. From { $next } use the sheet “{ $step }”.
handout-fridge-open-end = Valid from { $from } on
handout-fridge-copy = Copy this page for each new week. Week from: ________
handout-fridge-corner = Exercise
handout-fridge-week = Week from: ________
handout-fridge-tick = Tick a box each time. A box you missed stays empty.
handout-fridge-tick-day = Tick the box when you have done a move that day as often as it says. A box you missed stays empty.
handout-fridge-alt = A table to tick: exercises in rows, the days of a week in columns.
handout-fridge-end = End: { $end }
handout-fridge-dose = { $times ->
    [1] once a day
   *[other] { $times } times a day
}
handout-fridge-dose-week = { $times ->
    [1] once a day, { $days } days a week
   *[other] { $times } times a day, { $days } days a week
}
