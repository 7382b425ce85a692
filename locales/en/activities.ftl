# Daily-life activities: the title, and a hint on how.

activity-desk-work = Work at a desk with the sling on
    .how = Type with the other hand. The operated hand may rest on the desk in the sling.

activity-type-with-sling = Type for a short time, sling on
    .how = Bring the keyboard to the hand. Do not reach for it.

activity-write = Write by hand, sling on
    .how = Rest the forearm on the table and move the paper, not the arm.

activity-phone-in-hand = Use a phone in your lap, sling on
    .how = Keep the phone in your lap. Use the loudspeaker for calls.

activity-walk = Go for a walk with the sling on
    .how = Take care on stairs. The sling makes it harder to keep your balance.

activity-bus-or-train = Ride a bus or train with the sling on
    .how = Take a seat. Hold on with the other hand only.

activity-sleep-back = Sleep on your back
    .how = Put a pillow under the operated arm. Keep the sling on while your sheet says so.

activity-sleep-sound-side = Sleep on your other side
    .how = Lay the operated arm on a folded pillow from elbow to wrist.

activity-armpit-care = Wash and dry under the operated arm
    .how = Lean forward and let the arm hang. Do not lift it.

activity-wash-face = Wash your face with the operated hand
    .until = Use the other hand until then.

activity-wash-body = Wash your body with the operated hand
    .how = It is easier while the other hand holds the elbow.

activity-shower = Take a shower, the arm hanging
    .how = Keep the wound covered until it has healed. Let the arm hang by your side.

activity-wash-hair = Wash your hair with both hands, standing tall
    .how = Leaning forward makes it easier.

activity-wash-hair-leaning = Wash your hair with both hands, leaning forward
    .how = Bend your head to the hands.

activity-comb-hair = Comb your hair with the operated hand
    .until = Use the other hand until then.

activity-brush-teeth = Brush your teeth with the operated hand
    .until = Use the other hand until then.

activity-shave = Shave with the operated hand
    .until = Use the other hand until then.

activity-toilet = Clean yourself after the toilet with the operated hand
    .until = Use the other hand until then.

activity-shirt-on = Put on a shirt that opens in front
    .how = Operated arm first, hanging and soft. Undress it last.

activity-pullover = Pull a shirt over your head
    .until = Wear shirts that open in front until then.

activity-jacket = Put on a jacket without help
    .how = Operated arm first.

activity-bra-fasten = Fasten a bra behind your back
    .until = Fasten it in front and turn it, with the other hand.

activity-lower-clothes = Pull up trousers and put on socks with both hands
    .until = Sit down. Use the other hand until then.

activity-sleep-operated-side = Sleep on the operated side
    .until = Sleep on your back or on the other side.

activity-eat = Eat with the operated hand
    .until = Rest the elbow on the table. Use the other hand until then.

activity-drink-cup = Drink from a half-full cup with the operated hand
    .how = Fill it half. Keep your other hand under it.

activity-type = Type with both hands, sling off
    .how = Rest both forearms on the table.

activity-desk-work-both-hands = Work at a desk with both hands
    .how = Put what you use close to you. Take breaks.

activity-phone-call = Hold a phone to your ear with the operated hand
    .until = Use the loudspeaker or the other hand until then.

activity-kettle = Lift a half-full kettle with the operated hand
    .until = Fill a cup at a time. Use the other hand until then.

activity-cook = Cook with both hands
    .how = Slide pans instead of lifting them.

activity-reach-shelf = Reach up to a shelf with an empty hand
    .until = Move what you need to a low place.

activity-put-on-shelf = Put something on a high shelf
    .until = Use a step and both hands.

activity-sweep = Sweep the floor with both hands
    .how = Move with your feet, not with your arms.

activity-vacuum = Vacuum with the operated hand
    .until = Use the other hand until then.

activity-push-door = Push a heavy door
    .until = Push with your other side or your back.

activity-pull-door = Pull a heavy door open
    .until = Use the other hand until then.

activity-chair-rise = Push yourself up from a chair with both hands
    .until = Slide forward and rise with your legs. Use the other hand only.

activity-lift-half-kilogram = Lift half a kilogram (1 lb)
    .how = About a full mug. Keep the elbow close to you.

activity-lift-2-kg = Lift 2 kg (4 lb) to a table
    .how = Keep the load close to your body.

activity-lift-5-kg = Lift 5 kg (11 lb) to a table
    .how = Use both hands and keep the load close.

activity-carry-bag = Carry a shopping bag of 4 kg (9 lb)
    .until = Use the other hand or a bag on wheels until then.

activity-hold-child = Hold a small child on both arms
    .how = Sit down and let the child climb onto your lap.

activity-walk-dog = Walk a dog on the operated arm
    .until = A sudden pull can harm the repair. Use the other hand.

activity-garden = Work in the garden
    .how = Start with short, light work near your body.

activity-seat-belt = Reach back for the seat belt with the operated hand
    .until = Pull the belt across with the other hand.

activity-drive = Drive a car
    .until = Let someone else drive you.
    .how = Only without the sling and without strong pain tablets. You must be able to brake hard and turn the wheel fast. Ask your insurer.

activity-manual-work = Go back to work with your hands
    .how = Start with light loads below shoulder height.

activity-overhead-work = Work above your head
    .until = Use a step so that the work is lower.

activity-run = Run
    .how = Start on even ground. A fall can harm the repair.

activity-cycle = Ride a bicycle on the road
    .how = You must be able to steer and brake with both hands.

activity-swim-breaststroke = Swim breaststroke
    .how = Start with short, slow lengths.

activity-swim = Swim front crawl
    .how = Start with short, slow lengths.

activity-sport-drills = Practice the movements of your sport
    .how = Without an opponent and without speed.

activity-sport = Take part in your sport
    .how = Sport below shoulder height and without contact.

activity-overhead-sport = Throw, serve or smash
    .how = Build up speed over weeks.

activity-contact-sport = Play contact sport
    .how = Only after your surgeon has cleared you.

activity-cycle-stationary = Ride a stationary bike
    .how = Sit upright. Do not lean on the operated hand. Earlier, in the sling, only if your surgeon agrees.
