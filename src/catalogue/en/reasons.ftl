### Why this string: what the choice weighed.

## What is weighed

attribute-feel = feel under the hand
    .means = tension near what hand and bow are used to
attribute-elasticity = elasticity
    .means = the trade hears more colour in an elastic core; that is its judgement
attribute-settling = quick settling
    .means = few days until a night costs no more than five cents
attribute-warmth = steadiness in warmth
    .means = its pitch moves little, up or down, when it gets warm while nobody tunes
attribute-damp = steadiness in damp
    .means = its pitch moves little, up or down, when it gets damp while nobody tunes
attribute-response = quickness under the bow
    .means = a clean note stands soon, under many strokes
attribute-bow-room = room for the bow
    .means = strokes from light to hard all sound clean
attribute-power = power
    .means = a push on the bridge near what is wanted
attribute-brightness = brightness
    .means = brightness near what is wanted
attribute-ring = ring
    .means = how long a plucked note rings on
attribute-durability = reserve to breaking
    .means = reserve to breaking
attribute-care = bearing hands and sweat
    .means = an outside that wears slowly under the fingers
attribute-price = price
    .means = within what may be spent
attribute-availability = ease of buying
    .means = most shops should have it or can order it
attribute-tuning = fine tuning
    .means = the peg, or a fine tuner, moves the pitch in small steps

## The answer that moved a weight

because-wishes-colour = what you said of colour and steadiness
because-wishes-brightness = what you said of brightness
because-wishes-power = what you said of power
because-wishes-feel = what you said of the feel
because-wishes-response = what you said of quickness
because-set_up = the set-up
because-level = how long the player has played
because-who_tunes = nobody tunes between lessons
because-room = where it lives
because-concert_days = the day is near
because-budget = the budget
because-music = the music
because-played = it is plucked
because-ring = what you said of the ring
because-bothers = strings break
because-bothers-chokes = it chokes when pushed
because-acid_sweat = sweat that eats metal
because-hand_pain = the hand hurts

## On what a sentence rests

computed-very-likely = computed, very likely
computed-likely = computed, likely
computed-close-call = computed, a close call
computed = computed
judgement = judgement

## Reasons and costs

judged-availability =
    { $cost ->
        [yes] Harder to buy: it is made only sometimes, and may have to be ordered.
       *[no] Easier to buy: it is made every day.
    }
judged-buying =
    { $cost ->
        [yes] Harder to buy.
       *[no] Easier to buy.
    }
judged-price =
    { $cost ->
        [yes] Its materials cost more.
       *[no] Its materials cost less.
    }
judged-other =
    { $cost ->
        [yes] Less good
       *[no] Better
    } in { $attribute }.
different = different
further-from-wanted = further from what is wanted
nearer-to-wanted = nearer to what is wanted
compared = { $word }: { $this }, the other { $other }.
compared-elasticity = { $word }, and { $wanted }: it stretches by { $this } at pitch, the other by { $other }.
compared-settling = { $word }: after { $this }, the other after { $other }.
compared-warmth = { $word }: { $this }, the other { $other }.
compared-damp = { $word }: { $this }, the other { $other }.
compared-feel = { $word } under the hand, and { $wanted }: { $this }, the other { $other }.
compared-power = { $word }, and { $wanted }: { $this } at the bridge, the other { $other }.
compared-brightness =
    { $word }, and { $wanted }: its shine ends at { $this }, that of the other at { $other }{ $heard ->
        [no] , both above hearing
       *[yes] { "" }
    }.
compared-tuning = { $word }: a degree of peg changes it by { $this }, the other by { $other }.
compared-response = { $word }: within { $this }, the other within { $other }.
compared-bow-room =
    { $word }: { $apart } dB { $by ->
        [more] more
       *[less] less
    } between the lightest and the hardest clean stroke.
compared-ring = { $word }: { $this } until a plucked note has faded, the other { $other }.
compared-durability = { $word }: at { $this } of its strength, the other at { $other }.
weakest-durability = Its weakest point is its reserve: in tune it is at { $number } of its strength.
weakest-elasticity = Its weakest point is elasticity: it stretches by { $number } at pitch, far from what is wanted.
weakest-of = Its weakest point is { $attribute }. { $property }: { $number }.
weakest = Its weakest point is { $attribute }.
more = more
less = less
alike = about the same
rather = { $word }, if it is noticed
undecided = can’t be told
