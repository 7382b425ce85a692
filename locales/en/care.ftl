# Care poses, step by step.

care-sling-neutral = Sling with a pillow, hand pointing ahead
    .start = Sit on a chair. Keep the operated arm close to you.
    .step-1 = Slide the elbow as deep into the sling as it goes.
    .step-2 = Rest the forearm so that the hand points ahead.
    .step-3 = Close the straps. The hand lies a little above the elbow.
    .step-4 = Check that two fingers fit under the strap.
    .mistake-1 = A strap that cuts into the neck. Put a pad under it.
    .mistake-2 = The wrist hangs over the edge.

care-sling-internal = Sling with the forearm on the belly
    .start = Sit on a chair. Lay the operated forearm on your belly.
    .step-1 = Slide the elbow as deep into the sling as it goes.
    .step-2 = Close the strap around the neck or back.
    .step-3 = The hand lies a little above the elbow.
    .mistake-1 = The elbow slips forward out of the sling.
    .mistake-2 = The wrist hangs over the edge.

care-rest-pillow = Rest in a chair
    .start = Sit back with a pillow beside you.
    .step-1 = Lay the arm in its sling on the pillow.
    .step-2 = Let the shoulder sink.
    .step-3 = Keep the elbow in front of your body.
    .mistake-1 = The elbow slides behind your back.

care-sleep-recline = Sleep half sitting
    .start = Build a slope of pillows, or use a chair that tips back.
    .step-1 = Lean back with the sling on.
    .step-2 = Put a pillow under the elbow so that you can see it.
    .step-3 = Put a pillow on the other side so that you don't roll.
    .mistake-1 = Lying on the operated side.
    .mistake-2 = The elbow sinks behind your body.

care-sleep-other-side = Sleep on the other side
    .start = Lie on your other side, the sling on.
    .step-1 = Fold a pillow in front of your chest.
    .step-2 = Lay the arm on it from elbow to wrist.
    .step-3 = Put a pillow behind your back.
    .mistake-1 = The arm slides off in front.

care-armpit-lean = Wash under the arm
    .start = Take the sling off. Hold on to a chair with your other hand.
    .step-1 = Lean forward until the arm hangs a few inches from your body.
    .step-2 = Wash and dry the armpit with your other hand.
    .step-3 = Come up slowly, holding the operated wrist.
    .mistake-1 = Lifting the arm by itself.
    .mistake-2 = Leaning so far that you lose your balance.

care-shower-hang = Stand in the shower
    .start = Cover the wound with a watertight dressing. Take the sling off.
    .step-1 = Let the arm hang at your side, or lay the hand on your belly.
    .step-2 = Keep the water off the wound.
    .step-3 = Dry yourself with the other hand and put the sling on.
    .mistake-1 = Reaching for the soap with the operated arm.

care-wash-at-basin = Wash at the basin
    .start = Stand at the basin with the sling off.
    .step-1 = Rest the operated hand on your belly or let it hang.
    .step-2 = Wash with the other hand.
    .mistake-1 = Leaning on the operated hand.

care-dress-shirt-first = Put on a shirt: operated arm first
    .start = Sit down. Take a wide shirt that opens in front.
    .step-1 = Lean forward a little and let the operated arm hang.
    .step-2 = Pull the sleeve up over it with your other hand.
    .step-3 = Bring the shirt around your back.
    .step-4 = Put the other arm in, then the sling on.
    .mistake-1 = Reaching into the sleeve with the operated arm.
    .mistake-2 = Twisting the arm behind you.

care-undress-shirt-last = Take off a shirt: operated arm last
    .start = Sit down and take the sling off.
    .step-1 = Slip the other arm out first.
    .step-2 = Bring the shirt around to the front.
    .step-3 = Let the operated arm hang and slide the sleeve down.
    .mistake-1 = Pulling the arm backward.

care-sling-off-hang = Take the sling off safely
    .start = Sit down. Hold the operated wrist with your other hand.
    .step-1 = Open the straps with your other hand.
    .step-2 = Lower the forearm slowly until the arm hangs.
    .step-3 = Let it hang close to your body.
    .mistake-1 = Letting the arm drop.
    .mistake-2 = Stretching the arm out to the side.
