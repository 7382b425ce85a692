# Visit tests: what the patient is told.

test-forward-elevation-passive = Forward elevation, moved by the therapist
    .start = Lie on your back, arm at your side.
    .step-1 = Let the arm go soft.
    .step-2 = The therapist raises it and stops at your limit.

test-forward-elevation-active = Forward elevation, by yourself
    .start = Stand tall, the arm hanging, thumb ahead.
    .step-1 = Raise the arm straight ahead, no further than you are told.
    .step-2 = Hold while it is measured.

test-scapular-plane-elevation-active = Elevation in the plane of the blade, by yourself
    .start = Stand tall, the arm hanging, thumb up.
    .step-1 = Raise the arm halfway between ahead and sideways.
    .step-2 = Hold while it is measured.

test-scapular-plane-elevation-passive = Elevation in the plane of the blade, moved by the therapist
    .start = Lie on your back, arm at your side.
    .step-1 = Let the arm go soft.
    .step-2 = The therapist raises it, a little out to the side.

test-forward-elevation-assisted = Forward elevation with the other hand's help
    .start = Lie on your back and link your fingers.
    .step-1 = Raise both hands, the other arm leading.
    .step-2 = Hold while it is measured.

test-abduction-passive = Abduction, moved by the therapist
    .start = Lie on your back, arm at your side, palm up.
    .step-1 = Let the arm go soft.
    .step-2 = The therapist moves it out to the side.

test-abduction-active = Abduction, by yourself
    .start = Stand tall, the arm hanging, palm ahead.
    .step-1 = Raise the arm out to the side, no further than you are told.
    .step-2 = Hold while it is measured.

test-external-rotation-passive = External rotation at the side, moved by the therapist
    .start = Lie on your back, a rolled towel under the elbow, hand to the ceiling.
    .step-1 = Let the arm go soft.
    .step-2 = The therapist turns the hand outward.

test-external-rotation-active = External rotation at the side, by yourself
    .start = Stand tall, elbow at your side and bent, hand ahead.
    .step-1 = Turn the hand outward, no further than you are told.
    .step-2 = Hold while it is measured.

test-external-rotation-assisted = External rotation with a stick
    .start = Lie on your back, hand to the ceiling, the stick in both hands.
    .step-1 = Turn the hand outward, helped by the stick.
    .step-2 = Hold while it is measured.

test-external-rotation-raised-passive = External rotation with the elbow raised, moved by the therapist
    .start = Lie on your back, the upper arm out to the side, hand to the ceiling.
    .step-1 = Let the arm go soft.
    .step-2 = The therapist lets the hand sink back.

test-external-rotation-raised-active = External rotation with the elbow raised, by yourself
    .start = Lie on your back, the upper arm out to the side, hand to the ceiling.
    .step-1 = Let the hand sink back, no further than you are told.
    .step-2 = Hold while it is measured.

test-internal-rotation-passive = Internal rotation, moved by the therapist
    .start = Lie on your back, a rolled towel under the elbow, hand to the ceiling.
    .step-1 = Let the arm go soft.
    .step-2 = The therapist lowers the hand toward your belly.

test-internal-rotation-active = Internal rotation, by yourself
    .start = Stand tall, elbow at your side and bent, hand ahead.
    .step-1 = Bring the hand toward your belly.
    .step-2 = Hold while it is measured.

test-extension-passive = Extension, moved by the therapist
    .start = Stand tall, the arm hanging.
    .step-1 = Let the arm go soft.
    .step-2 = The therapist moves it backward.

test-extension-active = Extension, by yourself
    .start = Stand tall, the arm hanging.
    .step-1 = Move the straight arm backward, no further than you are told.
    .step-2 = Hold while it is measured.

test-hand-behind-back = Hand behind the back
    .start = Stand tall, the hand at the back of your hip.
    .step-1 = Slide the thumb up your spine as far as it likes.
    .step-2 = The therapist notes the level it reaches.

test-cross-body-active = Reach across the chest
    .start = Sit tall, the arm raised ahead.
    .step-1 = Bring the arm across your chest.
    .step-2 = Hold while it is measured.

test-rotation-effort-at-side = Light push outward at the side
    .start = Sit tall, elbow at your side and bent.
    .step-1 = Push the hand lightly outward against the therapist.
    .step-2 = Use no more than a quarter of your strength.

test-strength-at-90 = Strength at shoulder height
    .start = Stand tall, the arm raised to shoulder height, halfway to the side.
    .step-1 = Push up against the gauge and hold.
    .step-2 = Breathe and let go slowly.

test-rotation-strength-at-side = Strength of turning at the side
    .start = Sit tall, elbow at your side and bent.
    .step-1 = Push outward against the gauge, then inward.
    .step-2 = Breathe and let go slowly.

test-elbow-passive = Elbow, moved by the therapist
    .start = Sit with the forearm on the table.
    .step-1 = Let the arm go soft.
    .step-2 = The therapist bends and straightens the elbow.

test-elbow-active = Elbow, by yourself
    .start = Sit with the arm hanging.
    .step-1 = Bend and straighten the elbow.

test-grip = Hand and grip, light
    .start = Sit with the sling on.
    .step-1 = Make a loose fist and open it.
    .step-2 = Say where the hand feels numb.
