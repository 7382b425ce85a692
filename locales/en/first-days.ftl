# The sheet for the first days at home: the same for every repair, so the strictest of all.
# No shoulder movement, nothing held, sling always, the elbow only helped by the other hand.
#
# $side            left or right
# $operation_date  the day of surgery, as text
# $visit_from, $visit_until   dates between which the wound is looked at, as text
# $dry_until       the first day on which the wound may get wet, as text
# $day_number, $night_number  whom to call
# All other numbers come from the table of evidence.

first-days-side = { $side ->
    [left] LEFT
    [right] RIGHT
   *[other] (side not known)
}

first-days-title = Your first days at home
first-days-arm = { first-days-side } arm
first-days-surgery = You had surgery on your { first-days-side } shoulder on { $operation_date }.
first-days-until = This sheet is for the first days. Use it until your surgeon gives you your own signed plan. Then use the plan.
first-days-stricter = Were you told something else? Do what is more careful. Then call and ask.

first-days-call-title = Who to call
first-days-phone-day = By day
first-days-phone-night = By night
first-days-call-day = By day: { $day_number }
first-days-call-night = By night: { $night_number }
first-days-call-danger = In danger, do not wait for us. Call the emergency number.

first-days-rules-title = The rules for now
first-days-rules-sling = Wear your sling day and night.
first-days-rules-shoulder = Do not move your shoulder. Do not lift the arm, reach out with it, or put it behind your back.
first-days-rules-hold = Do not hold or carry things with that hand.
first-days-rules-lean = Do not lean on that arm. Do not push up with it from a chair or bed.
first-days-rules-pain = No pain does not mean that it has healed. The rules stay the same.
first-days-rules-drive = Do not drive.

first-days-sling-title = Your sling
first-days-sling-fit = Your elbow sits deep in the sling, bent like the corner of a book. Your wrist rests in the sling too. The strap must not dig into your neck.
first-days-sling-hand = Keep your hand in front of your belly. Do not let it swing out to the side.
first-days-sling-off = Take the sling off only to wash, to dress, and for the moves on this sheet. Sit down first.
first-days-sling-wedge = Does your sling have a pad or a wedge? Then ask us before you take it off.
first-days-sling-skin = Look at your skin each day. Is it red or sore where the sling rubs? Call and ask.
first-days-sling-balance = A sling can make you less steady. Take care on stairs and in the shower.

first-days-numb-title = While your arm is numb
first-days-numb-usual = The shot that numbs your arm can last { $block_usual_hours } hours, and at times up to { $block_call_hours }. Your arm may be numb and weak. This is normal.
first-days-numb-signs = You may also be a bit short of breath. Your eyelid may droop, or your voice may be hoarse. This goes away when the shot wears off. If you get very short of breath, call the emergency number.
first-days-numb-prick = Pins and needles as it fades are normal too.
first-days-numb-guard = You can't feel harm to a numb arm. Keep it in the sling. Keep it away from hot drinks, stoves, heaters and sharp things.
first-days-numb-ice = No ice and no heat on numb skin.
first-days-numb-advice = Still numb or weak { $block_advice_hours } hours after surgery? Call and ask what to do. After { $block_call_hours } hours, call the same day.
first-days-numb-pump = Did you go home with a pain pump? Ask your team what is normal for you.

first-days-tablets-title = Pain tablets
first-days-tablets-surgeon = Take the pain tablets just as your surgeon wrote. Take no more of them, and no other pain tablets. Go on with your other tablets as you were told.
first-days-tablets-early = Start before all feeling is back, at the times your surgeon wrote. Do not skip the ones due at bedtime. The numb feeling may fade at night.

first-days-ice-title = Ice
first-days-ice-how = When you can feel your skin again, ice may help. Wrap it in a damp towel. Use it for { $ice_minutes } minutes, up to { $ice_times } times a day. Keep the wound dry.

first-days-moves-title = Moves you may do
first-days-moves-when = Wait until the arm is no longer numb. Keep your upper arm at your side. The shoulder stays still.
first-days-moves-hand = Hand: open your hand, then make a fist. Hold nothing in it. Do this { $hand_repetitions } times.
first-days-moves-wrist = Wrist: bend it up and down. Do this { $hand_repetitions } times.
first-days-moves-elbow = Elbow: sit, and take your wrist in your other hand. The other hand bends the elbow and lets it down again. The operated arm does no work. Let it down only as far as it goes with ease. Do not push the elbow straight. Stop if the other arm hurts too.
first-days-moves-palm = Do not turn the palm up by its own strength.
first-days-moves-often = Do these moves up to { $sessions } times a day.
first-days-moves-stop = An ache that soon goes is fine. Does it hurt for more than { $pain_minutes } minutes after? Then do less next time.

first-days-wash-title = Wash and dress
first-days-wash-shower = Take a shower and not a bath. Use a cover that keeps the wound dry. Keep the wound dry. It may get wet from { $dry_until } on, but only once it has healed.
first-days-wash-armpit = To wash under the arm, lean forward a little. Let the arm hang, and do not lift it. Wash with the other hand.
first-days-wash-dress = Put the operated arm in its sleeve first. When you undress, take it out last. Let it hang or rest. Do not lift or twist it.
first-days-wash-dressing = Leave the wound cover on as you were told. Some blood on it is normal at first.
first-days-wash-rings = Take rings off that hand. The hand may swell.

first-days-sleep-title = Sleep
first-days-sleep-sling = Keep the sling on when you sleep.
first-days-sleep-how = Sleep on your back, half sitting up, or on your other side. Put a pillow under the operated arm. Do not sleep on your { $side ->
    [left] LEFT
    [right] RIGHT
   *[other] operated
    } side.

first-days-emergency-title = Call the emergency number at once
first-days-emergency-chest = Pain in your chest
first-days-emergency-breath = Very short of breath, or short of breath all at once
first-days-emergency-blood = You cough up blood
first-days-emergency-collapse = You pass out
first-days-emergency-lips = Your lips turn blue

first-days-today-title = Call us the same day, by day or by night
first-days-today-fever = You measure a fever of { $fever_celsius } °C ({ $fever_fahrenheit } °F) or more.
first-days-today-fever-again = In the first { $fever_again_days } days, have a drink, take some deep breaths, and measure again. If it is still high, call. If you have chills, call right away.
first-days-today-wound = The skin by the wound gets more and more red or hot, the wound opens, or pus comes out.
first-days-today-leak = A stain grows past the edge of the wound cover, or fresh blood or fluid leaks after { $leak_hours } hours.
first-days-today-pain = Your tablets do not ease the pain.
first-days-today-stiff = The pain grows day by day.
first-days-today-fingers = Your fingers are cold, white or blue.
first-days-today-swelling = Your arm or your calf swells, or your calf hurts.
first-days-today-sick = You keep throwing up, or you can't pee.
first-days-today-numb = Your arm is still numb or weak after { $block_call_hours } hours, or it gets weak again.
first-days-today-fall = You felt a pop, or you fell. Stop all moves and put the sling on.

first-days-soon-title = Call us within { $soon_days } days
first-days-soon-hand = Your hand is swollen, stiff or burns, or its skin changes color.

first-days-visit-title = Your first visit
first-days-visit-when = We look at your wound between { $visit_from } and { $visit_until }. No date yet? Call the day number.
first-days-visit-bring = Bring this sheet and your tablets.
