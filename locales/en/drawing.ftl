# What stands in and beside a drawing.

drawing-title = { $title }, { $side ->
        [left] left arm
       *[right] right arm
    }

# The word over the operated arm.
drawing-side = { $side ->
        [left] LEFT
       *[right] RIGHT
    }

drawing-degrees = { $degrees }°
drawing-stop = stop

# For those who can't see it.
drawing-description = { $start } The operated arm is tinted and hatched.
drawing-description-angle = { $start } The operated arm is tinted and hatched. The arc ends at { $degrees }°.
drawing-description-limit = { $start } The operated arm is tinted and hatched. The arc ends at { $degrees }°. A thick bar across the arrow says stop.

# Under the small round picture.
drawing-from = { $from ->
        [above] seen from above
        [feet] seen from the feet
        [head] seen from the head
        [front] seen from the front
        [behind] seen from behind
       *[side] seen from the side
    }

drawing-seconds = { $seconds } s
