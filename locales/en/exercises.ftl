# A table: one message an exercise. Titles, then the words a patient reads.

## Exercises in which something else moves the operated arm.

exercise-pendulum = Pendulum circles
    .counted = circles each way
    .purpose = Keeps the joint moving while the muscles rest.
    .start = Stand by a table, a chair behind you. Lean on the table with your other hand. Let the operated arm hang down.
    .step-1 = Bend forward until your arm hangs free from your body.
    .step-2 = Rock your hips so that the arm starts to swing.
    .step-3 = Let the hand draw small circles, first one way, then the other.
    .step-4 = Let the arm come to rest. Push up with your other hand, and stand still.
    .mistake-1 = Stirring with the shoulder. Let your body do the work.
    .mistake-2 = Big circles. Keep them as small as a dinner plate.
    .mistake-3 = Standing up while the arm still swings.
    .stop = Stop if the pain gets sharp, or if you feel dizzy.

exercise-table-slide = Table slide
    .reach = { handout-reach-corner }
    .purpose = Lets the arm go up without lifting it.
    .start = Sit at a table. Rest the operated forearm on a towel in front of you.
    .step-1 = Let the arm lie heavy on the table.
    .step-2 = Lean your chest forward so that the towel slides away from you.
    .step-3 = Go only as far as it says under End. Wait a moment.
    .step-4 = Sit up again and let the arm slide back.
    .mistake-1 = Pushing the hand forward with your shoulder. Only the body moves.
    .mistake-2 = Lifting the shoulder to the ear.
    .stop = Stop if it hurts more than a gentle pull.

exercise-stick-elevation-scapular-plane = Stick raise, a little out to the side
    .purpose = Takes the arm up while the other arm does the work.
    .start = Lie on your back. Hold the stick in both hands, thumbs up. The operated arm lies a little out from your side.
    .step-1 = Let the operated arm go soft.
    .step-2 = Push the stick up with the other arm.
    .step-3 = Let the operated arm ride up, a little out to the side.
    .step-4 = Stop where it says under End, then come down slowly.
    .mistake-1 = Helping with the operated arm.
    .mistake-2 = Letting the arm drop on the way down.
    .stop = Stop if the arm wants to jerk or the pain is sharp.

exercise-stick-elevation-forward = Stick raise, straight ahead
    .purpose = Takes the arm up while the other arm does the work.
    .start = Lie on your back with bent knees. Hold the stick in both hands across your hips.
    .step-1 = Let the operated arm go soft.
    .step-2 = Push the stick up with the other arm.
    .step-3 = Stop where it says under End and wait a moment.
    .step-4 = Come down slowly, still led by the other arm.
    .mistake-1 = Helping with the operated arm.
    .mistake-2 = Arching your back to get further.
    .stop = Stop if the pain is sharp or goes on after you rest.

exercise-supine-self-raise = Raise lying down, carried by the other hand
    .purpose = Takes the arm up with no work for the repair.
    .start = Lie on your back, a pillow under the operated elbow. Hold that wrist with your other hand.
    .step-1 = Let the operated arm go heavy.
    .step-2 = Lift it with your other hand toward the ceiling.
    .step-3 = Stop where it says under End and breathe out.
    .step-4 = Carry it back down to the pillow.
    .mistake-1 = Lifting with the operated arm.
    .mistake-2 = Letting go on the way down.
    .stop = Stop if you can't keep the arm soft.

exercise-stick-external-rotation = Stick turn outward
    .reach = { handout-reach-lying-turn }
    .purpose = Keeps the arm able to turn outward.
    .start = Lie on your back, a rolled towel under the operated elbow. Bend the elbow so the hand points up. Hold the stick in both hands.
    .step-1 = Keep the operated elbow on the towel, close to your side.
    .step-2 = Push the stick sideways with the other arm.
    .step-3 = Let the operated hand tip outward like a door that opens.
    .step-4 = Stop where it says under End, then come back.
    .mistake-1 = The elbow slides away from your side.
    .mistake-2 = Turning the arm by itself.
    .mistake-3 = The wrist bends instead of the arm turning.
    .stop = Stop if it pulls sharply at the front of the shoulder.

exercise-doorway-external-rotation = Turn outward at a door frame
    .reach = Go only as far as you were shown ({ $degrees }°).
    .purpose = Turns the arm outward without using the other arm.
    .start = Stand in a doorway, elbow at your side and bent. Rest the palm on the frame.
    .step-1 = Let the hand stay still on the frame.
    .step-2 = Turn your whole body slowly away from that hand.
    .step-3 = Move your feet in small steps as you turn.
    .step-4 = Stop where it says under End, then turn back.
    .mistake-1 = Pushing the hand into the frame.
    .mistake-2 = The elbow leaves your side.
    .stop = Stop if the front of the shoulder hurts.

exercise-table-external-rotation = Turn outward at a table
    .reach = Go only as far as you were shown ({ $degrees }°).
    .purpose = Turns the arm outward without using the other arm.
    .start = Sit with the operated side next to a table. Rest the forearm on it, hand pointing ahead.
    .step-1 = Let the forearm lie heavy and still.
    .step-2 = Turn your chest slowly away from the table.
    .step-3 = Stop where it says under End and breathe.
    .step-4 = Turn back to the front.
    .mistake-1 = Pressing down with the arm.
    .mistake-2 = Sliding the elbow away from your body.
    .stop = Stop if the shoulder hurts more than a gentle pull.

exercise-stick-internal-rotation = Stick turn inward
    .purpose = Keeps the arm able to turn inward.
    .start = Lie on your back, a rolled towel under the operated elbow. The hand points up. Hold the stick in both hands.
    .step-1 = Keep the operated arm soft.
    .step-2 = Pull the stick sideways with the other arm.
    .step-3 = Let the operated hand sink toward your belly.
    .step-4 = Stop where it says under End, then come back up.
    .mistake-1 = Letting the hand fall by itself.
    .mistake-2 = The shoulder rolls forward off the bed.
    .stop = Stop if it pinches in the shoulder.

exercise-therapist-elevation = Raise in the therapist's hands
    .purpose = Takes the arm up with no work at all.
    .start = Lie on your back. Your therapist holds your arm at elbow and wrist.
    .step-1 = Let the arm go as heavy as you can.
    .step-2 = The therapist raises it slowly.
    .step-3 = Say at once when it starts to pull.
    .mistake-1 = Helping the therapist.
    .mistake-2 = Holding your breath.
    .stop = Say stop when it hurts. The therapist stops at once.

exercise-therapist-external-rotation = Turn outward in the therapist's hands
    .reach = { handout-reach-lying-turn }
    .purpose = Turns the arm outward with no work at all.
    .start = Lie on your back, a rolled towel under the elbow. Your therapist holds the wrist.
    .step-1 = Let the arm go heavy.
    .step-2 = The therapist turns the hand outward slowly.
    .step-3 = Say at once when it starts to pull.
    .mistake-1 = Helping the therapist.
    .mistake-2 = Lifting the elbow from the towel.
    .stop = Say stop when it hurts. The therapist stops at once.

exercise-therapist-internal-rotation = Turn inward in the therapist's hands
    .purpose = Turns the arm inward with no work at all.
    .start = Lie on your back, a rolled towel under the elbow. Your therapist holds the wrist.
    .step-1 = Let the arm go heavy.
    .step-2 = The therapist lowers the hand toward your belly.
    .step-3 = Say at once when it pinches.
    .mistake-1 = Helping the therapist.
    .mistake-2 = Rolling the shoulder forward.
    .stop = Say stop when it hurts. The therapist stops at once.

exercise-pulley-elevation = Pulley raise
    .reach = Go only as far as you were shown ({ $degrees }°).
    .purpose = Pulls the arm up while the other arm works.
    .start = Sit under the pulley with your back to the door. Hold a handle in each hand.
    .step-1 = Let the operated arm go soft.
    .step-2 = Pull down with the other hand.
    .step-3 = Let the operated arm rise as far as it says under End.
    .step-4 = Let it down slowly.
    .mistake-1 = Lifting with the operated arm.
    .mistake-2 = Lifting the shoulder to the ear.
    .stop = Stop if it catches or hurts on the way down.

exercise-passive-cross-body = Arm across the chest, carried
    .purpose = Frees the back of the shoulder.
    .start = Lie on your back. Hold the operated elbow with your other hand, arm pointing up.
    .step-1 = Let the operated arm go soft.
    .step-2 = Pull the elbow slowly across your chest.
    .step-3 = Wait a moment, then carry it back.
    .mistake-1 = Pulling hard at the end.
    .mistake-2 = Rolling your body along.
    .stop = Stop if it pinches at the top of the shoulder.

## Exercises in which the operated arm works and is helped.

exercise-supine-elevation = Raise lying down, with the other hand's help
    .purpose = Lets the operated arm begin to help.
    .start = Lie on your back with bent knees. Link the fingers of both hands on your belly.
    .step-1 = Lift both hands together toward the ceiling.
    .step-2 = Let the other arm do most of the work.
    .step-3 = Stop where it says under End.
    .step-4 = Lower both hands slowly to your belly.
    .mistake-1 = Lifting with the operated arm alone.
    .mistake-2 = Lifting the shoulder to the ear.
    .stop = Stop if the arm shakes or the pain is sharp.

exercise-side-lying-elevation = Slide up, lying on your side
    .purpose = Lets the arm move up with its weight carried.
    .start = Lie on your other side. Rest the operated arm on a smooth board on pillows before you.
    .step-1 = Let the board carry the arm.
    .step-2 = Slide the hand slowly up toward your head.
    .step-3 = Stop where it says under End.
    .step-4 = Slide back down.
    .mistake-1 = Lifting the arm off the board.
    .mistake-2 = Rolling backward.
    .stop = Stop if the shoulder hurts at the top.

exercise-washcloth-press = Press up with a cloth
    .reach = Go only as far as you were shown ({ $degrees }°).
    .purpose = Teaches the arm to push upward again.
    .start = Lie on your back. Hold a cloth stretched between both hands on your chest.
    .step-1 = Press both hands up toward the ceiling.
    .step-2 = Let the other arm lead.
    .step-3 = Wait with straight elbows, then lower slowly.
    .mistake-1 = Pulling hard on the cloth.
    .mistake-2 = Letting the operated arm lead.
    .stop = Stop if the shoulder catches or hurts.

exercise-stick-flexion-standing = Stick raise standing
    .purpose = Brings the help you had lying down to upright.
    .start = Stand tall. Hold the stick in both hands in front of your thighs.
    .step-1 = Raise the stick with both arms, the other arm leading.
    .step-2 = Keep both shoulders low.
    .step-3 = Stop where it says under End.
    .step-4 = Come down slowly.
    .mistake-1 = The shoulder creeps up to the ear.
    .mistake-2 = Leaning back.
    .stop = Stop if you can't lift without the shoulder creeping up.

exercise-stick-side-raise = Stick raise to the side
    .purpose = Brings the arm out to the side with help.
    .start = Stand tall. Hold the stick in front of you, one end in each palm.
    .step-1 = Push the stick toward the operated side.
    .step-2 = Let the arm rise out to the side.
    .step-3 = Stop where it says under End, then come back.
    .mistake-1 = The shoulder creeps up to the ear.
    .mistake-2 = Bending your body to the side.
    .stop = Stop if it pinches at the top of the shoulder.

exercise-wall-slide = Wall slide
    .reach = Go only as far as you were shown ({ $degrees }°).
    .purpose = Lets the wall help carry the arm up.
    .start = Face a wall. Rest the operated hand on a towel against it, elbow bent.
    .step-1 = Slide the towel up the wall.
    .step-2 = Step closer as the hand goes up.
    .step-3 = Stop where it says under End.
    .step-4 = Slide down slowly.
    .mistake-1 = Pushing hard into the wall.
    .mistake-2 = The shoulder creeps up to the ear.
    .stop = Stop if the arm drops or the pain is sharp.

exercise-pulley-assisted = Pulley raise, both arms working
    .reach = Go only as far as you were shown ({ $degrees }°).
    .purpose = Lets the operated arm work with help.
    .start = Sit under the pulley. Hold a handle in each hand, elbows a little out.
    .step-1 = Pull with the other hand and lift along with the operated arm.
    .step-2 = Go as far as it says under End.
    .step-3 = Come down slowly, still working a little.
    .mistake-1 = Letting the pulley yank the arm.
    .mistake-2 = The shoulder creeps up to the ear.
    .stop = Stop if it catches or hurts on the way down.

exercise-stick-external-rotation-assisted = Stick turn outward, both arms working
    .purpose = Lets the arm begin to turn outward by itself.
    .start = Sit tall, a rolled towel between elbow and body. Hold the stick in both hands.
    .step-1 = Turn the operated hand outward.
    .step-2 = Help with a light push of the stick.
    .step-3 = Stop where it says under End, then come back.
    .mistake-1 = Losing the towel.
    .mistake-2 = Bending the wrist.
    .stop = Stop if the front of the shoulder hurts.

exercise-stick-extension = Stick push backward
    .purpose = Lets the arm move behind the body again.
    .start = Stand tall. Hold the stick behind your hips in both hands.
    .step-1 = Move the stick gently away from your body.
    .step-2 = Keep your chest up.
    .step-3 = Stop where it says under End, then come back.
    .mistake-1 = Leaning forward.
    .mistake-2 = Rounding the shoulders.
    .stop = Stop if the front of the shoulder hurts.

exercise-towel-behind-back = Towel slide up the back
    .purpose = Helps the hand reach up the back.
    .start = Hang a towel over your other shoulder. Hold the lower end behind you with the operated hand.
    .step-1 = Pull gently on the upper end with the other hand.
    .step-2 = Let the operated hand slide up your back.
    .step-3 = Wait a moment, then let it down.
    .mistake-1 = Pulling with force.
    .mistake-2 = Bending forward.
    .stop = Stop if the shoulder pinches.

exercise-ball-roll-table = Ball roll on a table
    .reach = Go only as far as you were shown ({ $degrees }°).
    .purpose = Lets the arm work with its weight on a ball.
    .start = Stand at a table. Rest the operated hand on a large ball.
    .step-1 = Roll the ball away from you.
    .step-2 = Lean along with your body.
    .step-3 = Stop where it says under End, then roll back.
    .mistake-1 = Putting your body weight on the hand.
    .mistake-2 = The shoulder creeps up to the ear.
    .stop = Stop if the arm slips or hurts.

## Exercises in which the operated arm moves itself.

exercise-supine-active-elevation = Raise lying down, by itself
    .purpose = Lets the arm lift its own weight in the easiest place.
    .start = Lie on your back with bent knees, the arm at your side, thumb up.
    .step-1 = Lift the arm toward the ceiling.
    .step-2 = Go as far as it says under End.
    .step-3 = Lower it slowly.
    .mistake-1 = Lifting the shoulder to the ear.
    .mistake-2 = Letting the arm drop.
    .stop = Stop if the arm shakes or won't stay up.

exercise-forward-elevation = Raise straight ahead
    .purpose = Brings back reaching forward and up.
    .start = Stand tall, the arm hanging, thumb pointing ahead.
    .step-1 = Keep the shoulder low.
    .step-2 = Raise the arm straight ahead.
    .step-3 = Go as far as it says under End, as far as it stays smooth.
    .step-4 = Lower it slowly.
    .mistake-1 = The shoulder creeps up to the ear.
    .mistake-2 = Leaning back.
    .stop = Stop if you can't lift without the shoulder creeping up.

exercise-scapular-plane-elevation = Raise a little out to the side
    .purpose = Brings back reaching up, in the line of the shoulder blade.
    .start = Stand with your back near a wall, the arm hanging, thumb up.
    .step-1 = Raise the arm halfway between straight ahead and sideways.
    .step-2 = Keep the shoulder low.
    .step-3 = Go as far as it says under End.
    .step-4 = Lower it slowly.
    .mistake-1 = Thumb turning down.
    .mistake-2 = The shoulder creeps up to the ear.
    .stop = Stop if it pinches on the way up or down.

exercise-abduction = Raise to the side
    .purpose = Brings back reaching out to the side.
    .start = Stand tall, the arm hanging, palm facing forward.
    .step-1 = Raise the arm straight out to the side.
    .step-2 = Keep the palm facing forward.
    .step-3 = Go as far as it says under End.
    .step-4 = Lower it slowly.
    .mistake-1 = Palm turning to the floor.
    .mistake-2 = Bending your body to the other side.
    .stop = Stop if it pinches at the top of the shoulder.

exercise-side-lying-raise = Raise to the ceiling, lying on your side
    .purpose = Trains lifting to the side with a steady body.
    .start = Lie on your other side, the operated arm along your body, thumb up.
    .step-1 = Lift the arm toward the ceiling.
    .step-2 = Stop where it says under End.
    .step-3 = Lower it slowly.
    .mistake-1 = Rolling backward.
    .mistake-2 = Lifting the shoulder to the ear.
    .stop = Stop if it pinches at the top of the shoulder.

exercise-external-rotation = Turn outward
    .purpose = Brings back turning the arm outward.
    .start = Stand tall, a rolled towel between elbow and body. The hand points ahead.
    .step-1 = Keep the elbow on the towel.
    .step-2 = Turn the hand outward.
    .step-3 = Wait a moment, then come back.
    .mistake-1 = The towel drops.
    .mistake-2 = The body turns along.
    .stop = Stop if the front of the shoulder hurts.

exercise-internal-rotation = Turn inward
    .purpose = Brings back turning the hand to the belly.
    .start = Stand tall, elbow at your side and bent, the hand pointing ahead.
    .step-1 = Keep the elbow at your side.
    .step-2 = Bring the hand to your belly.
    .step-3 = Go back to the front.
    .mistake-1 = The elbow moves forward.
    .mistake-2 = Pressing on the belly.
    .stop = Stop if the front of the shoulder hurts.

exercise-side-lying-external-rotation = Turn outward, lying on your side
    .purpose = Trains the muscles that turn the arm outward.
    .start = Lie on your other side, a rolled towel between elbow and body. The hand rests on your belly.
    .step-1 = Keep the elbow on the towel.
    .step-2 = Lift the hand toward the ceiling.
    .step-3 = Stop where it says under End, then lower it slowly.
    .mistake-1 = The elbow leaves the towel.
    .mistake-2 = Rolling backward.
    .stop = Stop if the arm shakes or hurts deep in the shoulder.

exercise-side-lying-wiper = Wiper, lying on your side
    .purpose = Joins lifting and turning in one movement.
    .start = Lie on your other side, the operated hand on your belly, elbow bent.
    .step-1 = Lift the hand off your belly and turn it outward.
    .step-2 = Sweep the bent arm up in front of you like a wiper.
    .step-3 = Sweep back and put the hand down.
    .mistake-1 = Rolling backward.
    .mistake-2 = Going fast.
    .stop = Stop if the shoulder catches.

exercise-supine-inward-turn = Turn inward, lying down
    .purpose = Trains the muscle at the front of the shoulder.
    .start = Lie on your back, a rolled towel under the elbow. The hand points up and a little out.
    .step-1 = Bring the hand up to the ceiling.
    .step-2 = Let it go on slowly toward your belly.
    .step-3 = Come back to the start.
    .mistake-1 = The shoulder rolls forward.
    .mistake-2 = The elbow leaves the towel.
    .stop = Stop if the front of the shoulder hurts.

exercise-prone-inward-turn = Turn inward, lying on your front
    .purpose = Trains turning inward with the arm out.
    .start = Lie on your front at the edge of the bed. The upper arm rests out to the side, forearm hanging.
    .step-1 = Keep the upper arm on the bed.
    .step-2 = Swing the hand back toward your feet.
    .step-3 = Lower it slowly.
    .mistake-1 = Lifting the elbow off the bed.
    .mistake-2 = The shoulder drops toward the floor.
    .stop = Stop if it pinches in the shoulder.

exercise-hand-behind-back-slide = Hand up the back
    .purpose = Brings back tucking in a shirt and closing a bra.
    .start = Stand tall, the operated hand at the back of your hip.
    .step-1 = Slide the back of the hand across to your spine.
    .step-2 = Let the thumb creep up your back.
    .step-3 = Stop at a light pull, then slide down.
    .mistake-1 = Bending forward to get higher.
    .mistake-2 = Pushing through pain.
    .stop = Stop if it pinches at the front of the shoulder.

exercise-arm-across-chest = Arm across the chest
    .purpose = Brings back reaching the other shoulder.
    .start = Sit tall, the arm raised straight ahead if your sheet allows.
    .step-1 = Move the arm across your chest.
    .step-2 = Touch the other shoulder if you can.
    .step-3 = Move back to the front.
    .mistake-1 = The shoulder creeps up to the ear.
    .mistake-2 = Turning the body along.
    .stop = Stop if it pinches at the top of the shoulder.

exercise-hand-to-head = Hand to the back of the head
    .purpose = Brings back washing and combing your hair.
    .start = Sit tall, hands in your lap.
    .step-1 = Bring the operated hand to the back of your head.
    .step-2 = Let the elbow open out to the side.
    .step-3 = Close the elbow and lower the hand.
    .mistake-1 = Dropping the head to meet the hand.
    .mistake-2 = Forcing the elbow back.
    .stop = Stop if the shoulder feels as if it might slip.

exercise-trapezius-extension = Straight arm backward
    .purpose = Trains the muscles between the shoulder blades.
    .start = Stand tall, the arm hanging, palm facing back.
    .step-1 = Draw the shoulder blade back and down.
    .step-2 = Move the straight arm a little behind you.
    .step-3 = Wait a moment, then let it come back.
    .mistake-1 = Rounding the shoulders forward.
    .mistake-2 = Pushing the belly out.
    .stop = Stop if the front of the shoulder hurts.

exercise-prone-arm-lift = Lift backward, lying on your front
    .purpose = Trains the back of the shoulder and the shoulder blade.
    .start = Lie on your front at the edge of the bed, the operated arm hanging down.
    .step-1 = Draw the shoulder blade back toward your spine.
    .step-2 = Lift the straight arm to the side of your hip.
    .step-3 = Lower it slowly.
    .mistake-1 = Lifting the shoulder to the ear.
    .mistake-2 = Swinging the arm.
    .stop = Stop if the shoulder or neck hurts.

exercise-prone-raise-outward = Raise outward, lying on your front
    .purpose = Trains the shoulder blade and the back of the cuff.
    .start = Lie on your front, the operated arm out to the side, thumb up.
    .step-1 = Draw the shoulder blade toward the spine.
    .step-2 = Lift the arm a little, thumb leading.
    .step-3 = Lower it slowly.
    .mistake-1 = Thumb turning down.
    .mistake-2 = Lifting the head.
    .stop = Stop if it pinches at the top of the shoulder.

## Effort without movement, the arm at the side.

exercise-isometric-external-rotation = Press outward
    .purpose = Wakes the muscles that turn the arm outward.
    .start = Stand beside a wall, elbow at your side and bent. A folded towel lies between hand and wall.
    .step-1 = Press the back of the hand gently into the wall.
    .step-2 = Use no more than a quarter of your strength.
    .step-3 = Hold, breathe, and let go slowly.
    .mistake-1 = Pressing hard.
    .mistake-2 = The elbow leaves your side.
    .stop = Stop if it hurts while you press.

exercise-isometric-internal-rotation = Press inward
    .purpose = Wakes the muscles that turn the arm inward.
    .start = Stand at a door frame, elbow at your side and bent. Lay the palm on the frame.
    .step-1 = Press the palm gently into the frame.
    .step-2 = Use no more than a quarter of your strength.
    .step-3 = Hold, breathe, and let go slowly.
    .mistake-1 = Pressing hard.
    .mistake-2 = Leaning into the frame.
    .stop = Stop if it hurts while you press.

exercise-isometric-abduction = Press to the side
    .purpose = Wakes the muscles that raise the arm sideways.
    .start = Stand with the operated side near a wall. A pillow fills the gap.
    .step-1 = Press the elbow gently into the pillow.
    .step-2 = Use no more than a quarter of your strength.
    .step-3 = Hold, breathe, and let go slowly.
    .mistake-1 = The shoulder creeps up to the ear.
    .mistake-2 = Leaning into the wall.
    .stop = Stop if it hurts while you press.

exercise-isometric-flexion = Press forward
    .purpose = Wakes the muscles that raise the arm ahead.
    .start = Face a wall, elbow at your side and bent. A folded towel lies between fist and wall.
    .step-1 = Press the fist gently into the wall.
    .step-2 = Use no more than a quarter of your strength.
    .step-3 = Hold, breathe, and let go slowly.
    .mistake-1 = The shoulder creeps up to the ear.
    .mistake-2 = Leaning into the wall.
    .stop = Stop if it hurts while you press.

exercise-isometric-extension = Press backward
    .purpose = Wakes the muscles that move the arm backward.
    .start = Stand with your back to a wall, elbow at your side. A folded towel lies behind the elbow.
    .step-1 = Press the elbow gently into the wall.
    .step-2 = Use no more than a quarter of your strength.
    .step-3 = Hold, breathe, and let go slowly.
    .mistake-1 = Pushing the hips forward.
    .mistake-2 = Pressing hard.
    .stop = Stop if it hurts while you press.

## Gentle pressure at the end of a movement.

exercise-cross-body-stretch = Cross-body stretch
    .purpose = Loosens the back of the shoulder.
    .start = Stand tall. Hold the operated elbow with your other hand, arm across your chest.
    .step-1 = Pull the elbow gently toward the other shoulder.
    .step-2 = Hold and breathe.
    .step-3 = Let go slowly.
    .mistake-1 = Pulling through pain.
    .mistake-2 = The shoulder creeps up to the ear.
    .stop = Stop if it pinches at the top of the shoulder.

exercise-towel-stretch-behind-back = Towel stretch up the back
    .purpose = Loosens the shoulder for reaching up the back.
    .start = Hang a towel over your other shoulder. Hold its lower end behind you with the operated hand.
    .step-1 = Pull up gently with the other hand.
    .step-2 = Hold at a light pull and breathe.
    .step-3 = Let the towel down slowly.
    .mistake-1 = Jerking the towel.
    .mistake-2 = Bending forward.
    .stop = Stop if the front of the shoulder pinches.

exercise-lying-inward-stretch = Inward stretch, lying down
    .purpose = Loosens turning inward.
    .start = Lie on your back, the operated arm out on a pillow, elbow bent, hand up.
    .step-1 = Press the hand gently toward your feet with your other hand.
    .step-2 = Hold at a light pull and breathe.
    .step-3 = Let the hand come up slowly.
    .mistake-1 = The shoulder rolls forward.
    .mistake-2 = Pressing hard.
    .stop = Stop if it pinches deep in the shoulder.

exercise-doorway-outward-stretch = Outward stretch at a door frame
    .purpose = Loosens turning outward.
    .start = Stand in a doorway, elbow at your side and bent, palm on the frame.
    .step-1 = Turn your body away until you feel a light pull.
    .step-2 = Hold and breathe.
    .step-3 = Turn back slowly.
    .mistake-1 = The elbow leaves your side.
    .mistake-2 = Arching the back.
    .stop = Stop if the front of the shoulder hurts sharply.

exercise-doorway-chest-stretch = Chest stretch at a door frame
    .purpose = Loosens the arm for reaching up and back.
    .start = Stand in a doorway. Rest the forearm on the frame, elbow at shoulder height.
    .step-1 = Step forward until the chest feels a light pull.
    .step-2 = Hold and breathe.
    .step-3 = Step back slowly.
    .mistake-1 = Leaning with your weight.
    .mistake-2 = Arching the back.
    .stop = Stop if the shoulder feels as if it might slip.

exercise-overhead-lean-stretch = Overhead stretch on a chair
    .purpose = Loosens reaching up.
    .start = Kneel in front of a chair. Rest both forearms on the seat.
    .step-1 = Sink your chest toward the floor.
    .step-2 = Hold at a light pull and breathe.
    .step-3 = Come up slowly.
    .mistake-1 = Dropping quickly.
    .mistake-2 = Pushing up with the operated arm.
    .stop = Stop if it pinches at the top of the shoulder.

exercise-lying-overhead-stretch = Overhead stretch, lying down
    .purpose = Loosens reaching up, with your back at rest.
    .start = Lie on your back with bent knees. Hold the operated wrist with your other hand.
    .step-1 = Carry the arm up over your head.
    .step-2 = Press it gently toward the floor.
    .step-3 = Hold, breathe, and carry it back.
    .mistake-1 = Arching the back.
    .mistake-2 = Bouncing.
    .stop = Stop if it pinches at the top of the shoulder.

## Exercises against a band, a weight, or the weight of the body.

exercise-band-external-rotation = Band turn outward
    .purpose = Makes the muscles that turn outward strong.
    .start = Tie the band at elbow height on the other side. A rolled towel lies between elbow and body.
    .step-1 = Start with the hand near your belly.
    .step-2 = Turn the hand outward against the band.
    .step-3 = Come back slowly.
    .mistake-1 = The towel drops.
    .mistake-2 = The band snaps you back.
    .stop = Stop if the shoulder hurts during or long after.

exercise-band-internal-rotation = Band turn inward
    .purpose = Makes the muscles that turn inward strong.
    .start = Tie the band at elbow height on the operated side. Keep the elbow at your side.
    .step-1 = Start with the hand a little outward.
    .step-2 = Pull the hand to your belly.
    .step-3 = Come back slowly.
    .mistake-1 = The elbow moves backward.
    .mistake-2 = The body turns along.
    .stop = Stop if the front of the shoulder hurts.

exercise-row = Row
    .purpose = Makes the back of the shoulder and the shoulder blade strong.
    .start = Tie the band in front of you at waist height. Hold both ends in the operated hand.
    .step-1 = Draw the shoulder blade toward the spine.
    .step-2 = Pull the elbow back along your body.
    .step-3 = Go back slowly until the arm is nearly straight.
    .mistake-1 = The shoulder creeps up to the ear.
    .mistake-2 = Pulling far behind the body.
    .stop = Stop if the front of the shoulder hurts.

exercise-band-pull-down = Straight-arm pull down
    .purpose = Makes the muscles that draw the arm down strong.
    .start = Tie the band in front of you at shoulder height. Hold both ends with the operated arm straight.
    .step-1 = Pull the hand down to your hip.
    .step-2 = Keep the elbow straight.
    .step-3 = Go back up slowly.
    .mistake-1 = Leaning back.
    .mistake-2 = Rounding the shoulders.
    .stop = Stop if it pinches on the way up.

exercise-band-forward-punch = Forward punch with a band
    .purpose = Makes the muscle that holds the shoulder blade strong.
    .start = Tie the band behind you at waist height. Hold an end at your ribs.
    .step-1 = Punch slowly forward and a little up.
    .step-2 = Reach a little more at the end.
    .step-3 = Come back slowly.
    .mistake-1 = The shoulder creeps up to the ear.
    .mistake-2 = Turning the body.
    .stop = Stop if it pinches at the top of the shoulder.

exercise-diagonal-band = Diagonal pull
    .purpose = Joins lifting and turning against a band.
    .start = Tie the band low on the other side. Start with the hand at the other hip.
    .step-1 = Pull up and out, as if drawing a sword.
    .step-2 = End with the thumb pointing back.
    .step-3 = Come back slowly on the same line.
    .mistake-1 = Jerking the start.
    .mistake-2 = Arching the back.
    .stop = Stop if the shoulder feels as if it might slip.

exercise-band-external-rotation-raised = Band turn outward, elbow raised
    .purpose = Makes the cuff ready for throwing and serving.
    .start = Tie the band in front of you at chest height. Raise the elbow to shoulder height, hand ahead.
    .step-1 = Turn the hand up and back.
    .step-2 = Keep the elbow where it is.
    .step-3 = Come back slowly.
    .mistake-1 = The elbow drops.
    .mistake-2 = The shoulder creeps up to the ear.
    .stop = Stop if it pinches deep in the shoulder.

exercise-band-internal-rotation-raised = Band turn inward, elbow raised
    .purpose = Makes the front of the cuff ready for sport.
    .start = Tie the band behind you at chest height. Raise the elbow to shoulder height, hand up.
    .step-1 = Turn the hand forward and down.
    .step-2 = Keep the elbow where it is.
    .step-3 = Come back slowly.
    .mistake-1 = The elbow drops.
    .mistake-2 = Going fast.
    .stop = Stop if the front of the shoulder hurts.

exercise-side-lying-external-rotation-weight = Turn outward with a weight, lying on your side
    .purpose = Makes the muscles that turn outward strong.
    .start = Lie on your other side, a rolled towel between elbow and body. Hold a light weight.
    .step-1 = Lift the hand toward the ceiling.
    .step-2 = Wait a moment.
    .step-3 = Lower it slowly.
    .mistake-1 = The elbow leaves the towel.
    .mistake-2 = A weight that makes you swing.
    .stop = Stop if the arm shakes or hurts.

exercise-full-can = Raise with a weight, thumb up
    .purpose = Makes the repaired muscle strong.
    .start = Stand tall with a light weight, the arm hanging, thumb up.
    .step-1 = Raise the arm halfway between ahead and sideways.
    .step-2 = Stop at shoulder height.
    .step-3 = Lower it slowly.
    .mistake-1 = Thumb turning down.
    .mistake-2 = The shoulder creeps up to the ear.
    .stop = Stop if it pinches, or if the shoulder has to creep up.

exercise-forward-raise-weight = Forward raise with a weight
    .purpose = Makes lifting ahead strong.
    .start = Stand tall with a light weight, the arm hanging, thumb ahead.
    .step-1 = Raise the arm straight ahead to shoulder height.
    .step-2 = Wait a moment.
    .step-3 = Lower it slowly.
    .mistake-1 = Swinging.
    .mistake-2 = Leaning back.
    .stop = Stop if the shoulder has to creep up.

exercise-side-raise-weight = Side raise with a weight
    .purpose = Makes lifting to the side strong.
    .start = Stand tall with a light weight, the arm hanging, palm ahead.
    .step-1 = Raise the arm out to the side to shoulder height.
    .step-2 = Wait a moment.
    .step-3 = Lower it slowly.
    .mistake-1 = Palm turning down.
    .mistake-2 = Bending to the side.
    .stop = Stop if it pinches at the top of the shoulder.

exercise-prone-raise-outward-weight = Raise outward with a weight, lying on your front
    .purpose = Makes the back of the cuff and the shoulder blade strong.
    .start = Lie on your front at the edge of the bed. The arm hangs with a light weight.
    .step-1 = Turn the thumb up.
    .step-2 = Raise the arm out to the side.
    .step-3 = Lower it slowly.
    .mistake-1 = Lifting above the body.
    .mistake-2 = The shoulder creeps up to the ear.
    .stop = Stop if it pinches at the top of the shoulder.

exercise-bent-forward-row = Row bent forward
    .purpose = Makes the back of the shoulder strong.
    .start = Lean on a chair with your other hand. The operated arm hangs with a weight.
    .step-1 = Draw the shoulder blade back.
    .step-2 = Pull the elbow up along your body.
    .step-3 = Lower it slowly.
    .mistake-1 = Twisting the body.
    .mistake-2 = Rounding the back.
    .stop = Stop if the front of the shoulder hurts.

exercise-biceps-curl = Elbow bends with a weight
    .purpose = Makes lifting with the arm strong.
    .start = Stand tall with a weight, the arm hanging, palm ahead.
    .step-1 = Bend the elbow and lift the weight.
    .step-2 = Keep the upper arm still.
    .step-3 = Lower it slowly.
    .mistake-1 = Swinging the body.
    .mistake-2 = The elbow moves forward.
    .stop = Stop if the front of the shoulder or upper arm hurts.

exercise-band-elbow-straighten = Elbow straightening with a band
    .purpose = Makes the back of the arm strong.
    .start = Fix the band above you in a shut door. Hold it with the operated elbow bent at your side.
    .step-1 = Straighten the elbow and press down.
    .step-2 = Keep the upper arm still.
    .step-3 = Come back slowly.
    .mistake-1 = Leaning on the band.
    .mistake-2 = The elbow drifts forward.
    .stop = Stop if the elbow or shoulder hurts.

exercise-wall-push-up = Wall push-up
    .purpose = Brings back pushing, with little weight.
    .start = Face a wall at arm's length. Put both palms on it at chest height.
    .step-1 = Bend the elbows and bring the chest to the wall.
    .step-2 = Push away slowly.
    .step-3 = At the end push a little more.
    .mistake-1 = The shoulders creep up to the ears.
    .mistake-2 = Elbows out wide.
    .stop = Stop if the shoulder hurts while you push.

exercise-hands-and-knees-lean = Lean on hands and knees
    .purpose = Lets the shoulder learn to carry weight.
    .start = Kneel on hands and knees, hands under the shoulders.
    .step-1 = Shift a little weight onto the operated arm.
    .step-2 = Keep the shoulder blade flat on the ribs.
    .step-3 = Hold, breathe, and shift back.
    .mistake-1 = Sinking between the shoulder blades.
    .mistake-2 = Locking the elbow.
    .stop = Stop if the shoulder hurts or gives way.

exercise-kneeling-push-up = Push-up on the knees
    .purpose = Makes pushing stronger.
    .start = Kneel with both hands on the floor under your shoulders, body straight.
    .step-1 = Bend the elbows and lower the chest.
    .step-2 = Push up slowly.
    .mistake-1 = Elbows out wide.
    .mistake-2 = Sagging in the middle.
    .stop = Stop if the shoulder hurts at the bottom.

exercise-push-up-plus = Push-up with an extra push
    .purpose = Makes the muscle that holds the shoulder blade strong.
    .start = Kneel with straight arms, hands under the shoulders.
    .step-1 = Keep the elbows straight.
    .step-2 = Push the floor away and round the upper back.
    .step-3 = Sink back slowly between the shoulder blades.
    .mistake-1 = Bending the elbows.
    .mistake-2 = Moving only the head.
    .stop = Stop if the shoulder hurts.

exercise-push-up = Push-up
    .purpose = Gets the arm ready for heavy work and sport.
    .start = Lie on your front, hands beside the chest, toes on the floor.
    .step-1 = Push up with a straight body.
    .step-2 = Lower yourself slowly.
    .mistake-1 = Elbows out wide.
    .mistake-2 = Going lower than the body.
    .stop = Stop if the shoulder hurts during or long after.

exercise-plank = Plank on the forearms
    .purpose = Trains shoulder and trunk together.
    .start = Lie on your front, forearms on a towel under your shoulders.
    .step-1 = Lift the body into a straight line.
    .step-2 = Push the floor away with the forearms.
    .step-3 = Hold and keep breathing.
    .mistake-1 = Sagging between the shoulder blades.
    .mistake-2 = Holding your breath.
    .stop = Stop if the shoulder hurts or shakes.

exercise-overhead-press = Overhead press, light
    .purpose = Brings back putting things on a high shelf.
    .start = Stand tall, a light weight at shoulder height, thumb back.
    .step-1 = Press the weight up and a little forward.
    .step-2 = Straighten the elbow.
    .step-3 = Lower it slowly.
    .mistake-1 = Leaning back.
    .mistake-2 = The shoulder creeps up to the ear.
    .stop = Stop if it pinches at the top.

exercise-carry-walk = Walk with a bag
    .purpose = Gets the arm ready for daily loads.
    .start = Stand tall with the bag hanging from the operated hand.
    .step-1 = Set the shoulder blade.
    .step-2 = Walk slowly with a straight body.
    .step-3 = Put the bag down with care.
    .mistake-1 = The bag pulls the shoulder down.
    .mistake-2 = Leaning to the side.
    .stop = Stop if the shoulder aches or the grip gives way.

## Elbow, forearm, wrist and hand.

exercise-elbow-flexion = Elbow bends
    .purpose = Keeps the elbow from getting stiff.
    .start = Take the sling off. Stand with the arm hanging close to your body, nothing in your hand.
    .step-1 = Bend the elbow and bring the hand up.
    .step-2 = Let the hand sink slowly. Do not push the elbow straight.
    .step-3 = Keep the upper arm still at your side.
    .mistake-1 = Lifting the whole arm.
    .mistake-2 = Holding something in the hand.
    .stop = Stop if the front of the upper arm hurts sharply.

exercise-elbow-flexion-assisted = Elbow bends with help
    .purpose = Lets the elbow muscle begin to work.
    .start = Sit with the operated arm close to your body. Hold its wrist with your other hand.
    .step-1 = Bend the elbow while the other hand helps.
    .step-2 = Straighten it slowly, still with help.
    .mistake-1 = Lifting the elbow off your side.
    .mistake-2 = Pulling it fully straight with force.
    .stop = Stop if the front of the upper arm hurts sharply.

exercise-elbow-flexion-passive = Elbow bends, carried
    .purpose = Keeps the elbow moving while its tendon heals.
    .start = Lie on your back, a pillow under the upper arm. Hold the operated wrist with your other hand.
    .step-1 = Let the operated arm go soft.
    .step-2 = Bend the elbow with your other hand.
    .step-3 = Lower the hand again. Stop before it is fully straight.
    .mistake-1 = Helping with the operated arm.
    .mistake-2 = Pressing it straight.
    .stop = Stop if you feel a pull at the front of the upper arm.

exercise-elbow-extension = Elbow straightening
    .purpose = Brings back a straight elbow.
    .start = Lie on your back, the operated arm by your side, elbow bent, hand up.
    .step-1 = Lower the hand slowly toward the bed.
    .step-2 = Let the elbow open as far as it likes.
    .step-3 = Bend it up again, just as slowly.
    .mistake-1 = Dropping the hand.
    .mistake-2 = Lifting the upper arm.
    .stop = Stop if the crease of the elbow hurts.

exercise-forearm-turn = Palm up, palm down
    .purpose = Keeps the forearm able to turn.
    .start = Sit with the elbow bent at your side, the forearm on a pillow.
    .step-1 = Turn the palm up to the ceiling.
    .step-2 = Turn it down to the floor.
    .step-3 = Keep the elbow at your side.
    .mistake-1 = Swinging the elbow out.
    .stop = Stop if the elbow or upper arm hurts.

exercise-forearm-turn-passive = Palm up, palm down, carried
    .purpose = Keeps the forearm moving while the tendon heals.
    .start = Sit with the elbow bent at your side, the forearm on a pillow. Hold the wrist with your other hand.
    .step-1 = Let the operated hand go soft.
    .step-2 = Turn the palm up with your other hand.
    .step-3 = Turn it down again.
    .mistake-1 = Helping with the operated hand.
    .mistake-2 = Gripping with the operated hand.
    .stop = Stop if the elbow or upper arm hurts.

exercise-wrist-circles = Wrist bends and circles
    .purpose = Keeps the wrist moving and brings swelling down.
    .start = Keep the sling on. Let the hand reach just out of it.
    .step-1 = Bend the wrist up, then down.
    .step-2 = Draw slow circles with the hand.
    .step-3 = Circle the other way too.
    .mistake-1 = Moving the elbow or shoulder along.
    .stop = Stop if the hand goes numb, cold or white. Call your surgeon's office.

exercise-hand-open-close = Open and close the hand
    .purpose = Keeps the fingers moving and brings swelling down.
    .start = Keep the sling on. Let the fingers be free.
    .step-1 = Make a loose fist.
    .step-2 = Open the hand wide and spread the fingers.
    .step-3 = Touch each finger with the thumb.
    .mistake-1 = Squeezing hard.
    .stop = Stop if the hand goes numb, cold or white. Call your surgeon's office.

exercise-ball-squeeze = Squeeze a soft ball
    .purpose = Keeps the grip and the forearm strong.
    .start = Keep the sling on. Hold a soft ball in the operated hand.
    .step-1 = Squeeze the ball gently.
    .step-2 = Hold, then let go fully.
    .mistake-1 = Tensing the shoulder.
    .mistake-2 = Using a hard ball.
    .stop = Stop if the elbow or shoulder hurts while you squeeze.

exercise-elbow-hand-resistance = Elbow bend against your other hand
    .purpose = Starts to load the elbow muscle.
    .start = Sit with the operated elbow bent at your side. Lay your other hand on that wrist.
    .step-1 = Bend the elbow up.
    .step-2 = Push lightly against it with your other hand.
    .step-3 = Let the hand move, slowly, up and down.
    .mistake-1 = Pushing hard.
    .mistake-2 = The elbow leaves your side.
    .stop = Stop if the front of the upper arm hurts.

exercise-elbow-straighten-hand-resistance = Elbow straightening against your other hand
    .purpose = Starts to load the back of the arm.
    .start = Sit with the operated elbow bent on a table. Your other hand holds that wrist from below.
    .step-1 = Straighten the elbow.
    .step-2 = Hold back lightly with your other hand.
    .step-3 = Let the hand move slowly.
    .mistake-1 = Pushing hard.
    .mistake-2 = Leaning on the elbow.
    .stop = Stop if the elbow or shoulder hurts.

exercise-forearm-hand-resistance = Palm turns against your other hand
    .purpose = Starts to load the muscles that turn the palm.
    .start = Sit with the operated forearm on a pillow. Hold that hand with your other one.
    .step-1 = Turn the palm up against a light hold.
    .step-2 = Turn it down against a light hold.
    .mistake-1 = Gripping hard.
    .mistake-2 = Swinging the elbow.
    .stop = Stop if the front of the upper arm hurts.

## The shoulder blade, the arm supported.

exercise-shrug = Shoulder shrugs
    .purpose = Keeps the shoulder blade and the neck loose.
    .start = Stand tall with the arm in the sling, or resting on your belly.
    .step-1 = Lift the shoulder gently toward the ear. You may lift both.
    .step-2 = Wait a moment.
    .step-3 = Let it sink all the way.
    .mistake-1 = Lifting with the arm.
    .mistake-2 = Poking the head forward.
    .stop = Stop if the shoulder itself hurts.

exercise-shoulder-roll = Shoulder rolls
    .purpose = Keeps the shoulder blade gliding on the ribs.
    .start = Stand tall with the arm in the sling, or resting on your belly.
    .step-1 = Draw a slow circle with the shoulder: up, back, down.
    .step-2 = Keep the circle small.
    .step-3 = Let the arm stay quiet in the sling.
    .mistake-1 = Rolling forward and hunching.
    .mistake-2 = Moving the elbow backward.
    .stop = Stop if the shoulder itself hurts.

exercise-blade-placing = Set the shoulder blade
    .purpose = Teaches the shoulder blade where to rest.
    .start = Sit tall with the forearm on a pillow. If you wear a sling, keep it on.
    .step-1 = Think of the lower tip of your shoulder blade, the flat bone at your back.
    .step-2 = Let it glide a little back and down.
    .step-3 = Hold softly and keep breathing.
    .mistake-1 = Pulling hard.
    .mistake-2 = Lifting the chest.
    .stop = Stop if the shoulder itself hurts.

exercise-blade-squeeze = Squeeze the shoulder blade back
    .purpose = Trains the muscles between the shoulder blades.
    .start = Sit tall with the arm in the sling, a pillow under it.
    .step-1 = Draw the shoulder blade gently toward the spine.
    .step-2 = Keep the elbow where it is.
    .step-3 = Hold, breathe, and let go.
    .mistake-1 = The elbow moves backward.
    .mistake-2 = Lifting the shoulders to the ears.
    .stop = Stop if the front of the shoulder hurts.

exercise-blade-down = Shoulder blade down
    .purpose = Takes the strain out of the neck.
    .start = Stand tall with the arm in the sling.
    .step-1 = Let the shoulder sink away from the ear.
    .step-2 = Reach the top of your head up.
    .step-3 = Hold softly, then let go.
    .mistake-1 = Leaning to one side.
    .mistake-2 = Pushing the arm down hard.
    .stop = Stop if the shoulder itself hurts.

exercise-blade-forward = Shoulder blade forward, lying down
    .purpose = Wakes the muscle that holds the shoulder blade to the ribs.
    .start = Lie on your back, a pillow under the upper arm. If you wear a sling, keep it on.
    .step-1 = Let the whole shoulder rise a little off the bed.
    .step-2 = The arm stays quiet in the sling.
    .step-3 = Let it sink back.
    .mistake-1 = Lifting the elbow.
    .mistake-2 = Holding your breath.
    .stop = Stop if the front of the shoulder hurts.

## Drills before sport.

exercise-underhand-toss = Underhand toss
    .purpose = Starts quick movement below the shoulder.
    .start = Stand a few steps from a wall with a soft ball.
    .step-1 = Swing the arm back a little.
    .step-2 = Toss the ball underhand against the wall.
    .step-3 = Catch it with both hands.
    .mistake-1 = Throwing hard.
    .mistake-2 = Reaching far back.
    .stop = Stop if the shoulder hurts or feels loose.

exercise-chest-pass = Chest pass at a wall
    .purpose = Starts pushing at speed with both arms.
    .start = Face a wall, the ball at your chest in both hands.
    .step-1 = Push the ball at the wall.
    .step-2 = Catch it softly with bent elbows.
    .mistake-1 = Catching with stiff arms.
    .mistake-2 = The shoulders creep up to the ears.
    .stop = Stop if the shoulder hurts when you catch.

exercise-wall-dribble = Ball taps on a wall
    .purpose = Trains quick, small work above the shoulder.
    .start = Face a wall, a ball in the operated hand above your head.
    .step-1 = Tap the ball against the wall in small, quick taps.
    .step-2 = Keep the shoulder blade set.
    .mistake-1 = Dropping the elbow.
    .mistake-2 = Leaning back.
    .stop = Stop if the arm tires so that the shoulder creeps up.

exercise-overhead-throw-two-hands = Overhead throw with both hands
    .purpose = Starts throwing with the other arm's help.
    .start = Stand with one foot ahead, the ball above your head in both hands.
    .step-1 = Throw the ball gently at a wall.
    .step-2 = Let your body lead and the arms follow.
    .step-3 = Let it bounce before you catch it.
    .mistake-1 = Throwing with the arms alone.
    .mistake-2 = Arching the back.
    .stop = Stop if the shoulder hurts behind or on top.

exercise-ball-throw-drill = Easy overhand throw
    .purpose = Brings back the throwing movement, slowly.
    .start = Stand side-on to a wall, a soft ball in the operated hand.
    .step-1 = Raise the elbow to shoulder height.
    .step-2 = Step and throw at half your speed.
    .step-3 = Let the arm swing down and across.
    .mistake-1 = Throwing hard.
    .mistake-2 = Stopping the arm short.
    .stop = Stop if the shoulder hurts or feels loose.

exercise-quick-band-rotation = Quick band turns
    .purpose = Gets the cuff ready for speed.
    .start = Tie the band at elbow height. A rolled towel lies between elbow and body.
    .step-1 = Turn outward fast.
    .step-2 = Come back slowly.
    .step-3 = Keep the towel in place.
    .mistake-1 = Losing the towel.
    .mistake-2 = Moving the whole body.
    .stop = Stop if you can't control the way back.

exercise-wall-push-off = Push-off at a wall
    .purpose = Gets the arm ready for sudden loads.
    .start = Face a wall at arm's length, palms at chest height.
    .step-1 = Let yourself fall lightly against the wall.
    .step-2 = Push off so that the hands leave it.
    .step-3 = Land softly with bent elbows.
    .mistake-1 = Landing with stiff arms.
    .mistake-2 = The shoulders creep up to the ears.
    .stop = Stop if the shoulder hurts when you land.

exercise-swim-stroke-on-land = Swim stroke on land
    .purpose = Gets the arm ready for the water.
    .start = Bend forward at the hips. Hold the band, tied in front of you.
    .step-1 = Reach ahead, then pull past your hip.
    .step-2 = Come back slowly.
    .step-3 = Keep the shoulder blade set.
    .mistake-1 = Crossing the middle line.
    .mistake-2 = Pulling with a bent wrist.
    .stop = Stop if it pinches when you reach ahead.

exercise-shadow-swing = Slow practice swing
    .purpose = Brings back the swing of your sport, without a ball.
    .start = Stand as in your sport, racket or club in both hands or one.
    .step-1 = Swing slowly through the whole movement.
    .step-2 = Stop smoothly at the end.
    .step-3 = Make it quicker only when it stays easy.
    .mistake-1 = Starting at full speed.
    .mistake-2 = Stopping short.
    .stop = Stop if the shoulder hurts at either end of the swing.

exercise-serve-practice = Overhead stroke at half speed
    .purpose = The last step before overhead sport.
    .start = Stand as for a serve or a throw, with your own gear.
    .step-1 = Make the whole stroke at half speed.
    .step-2 = Rest between strokes.
    .step-3 = Add speed only on a day without pain.
    .mistake-1 = Too many on the first day.
    .mistake-2 = The shoulder creeps up to the ear.
    .stop = Stop if the shoulder hurts the next morning. Do less.
