### The questions for a set: the question itself, its short name, why it is asked, and how to answer it.

question-aim = What do you need?
    .name = What you need
    .why = Often one string is enough.
question-instrument = Which instrument?
    .name = Instrument
    .why = It sets the length and the pitch of the strings.
question-size = Which size?
    .name = Size
    .why = The length of the string decides its gauge.
question-tuning = How is it tuned?
    .name = Tuning
    .why = Pitch and length together set the tension.
question-temperament = Which temperament?
    .name = Temperament
    .why = Pure fifths move the outer strings by cents.
question-set_up = How is it set up?
    .name = Set-up
    .why = Old or light instruments should carry less tension.
question-now = What is on it?
    .name = Strings now
    .why = We compare the new strings with these.
question-music = What is played?
    .name = Music
    .why = Each style asks for something else.
question-played = Is it mostly bowed or plucked?
    .name = Bowed or plucked
    .why = A plucked note has to ring by itself.
question-ring = How should a plucked note ring?
    .name = Ring
    .why = Gut gives a short note, steel a long one.
question-amplified = How is it amplified?
    .name = Amplified
    .why = A magnetic pickup hears only steel.
question-belongs_to = Whose is it?
    .name = Owner
    .why = Strings of a school or a loan bank have to last.
question-tuned_so = Is it always tuned so?
    .name = Unusual tuning
    .why = If it is for good, the strings are made for these notes.
question-most-load = What is the most that all strings may pull together?
    .name = Most total tension
    .why = Give it if a luthier or a maker has set a limit.
    .hint = Leave empty if there is no limit.
question-most-tension = May pull at most
    .name = Most tension of a string
question-level = How long have you played?
    .name = Playing level
    .why = A beginner needs strings that stay in tune.
question-pegs = What turns the strings?
    .name = Pegs
    .why = Stiff strings need a tuner that moves in small steps.
question-tuners = Which strings have fine tuners?
    .name = Fine tuners
    .why = Steel strings need a fine tuner or a geared peg.
question-who_tunes = Who tunes between lessons?
    .name = Who tunes
    .why = A string that nobody tunes until the next lesson has to hold its pitch.
question-room = How is the air?
    .name = Where it is kept
    .why = Damp and warmth move the pitch.
question-budget = What may it cost?
    .name = Budget
    .why = Dearer is not always better.
question-length = What is the sounding length?
    .name = Sounding length
    .why = A measured length narrows every range.
    .hint = Nut to bridge, along the outer string. Leave empty to take the size’s usual length.
question-a4 = What is a′?
    .name = Pitch of a′
    .why = The higher the pitch, the more tension.
    .hint = Leave it empty if you do not know.
question-age = How old are they?
    .name = Age
    .why = A fresh set of the same kind may be all it needs.
question-days = Days from now
    .name = Next concert
question-also-a4 = Another a′
    .name = Other pitch of a′
question-also-semitones = How far above the main tuning
    .name = Other tuning
    .hint = 2 for a whole tone up, −1 for a semitone down.
question-age-of = How old it is
    .name = Age of the string
question-concert = When is your next concert?
    .name = Next concert
    .why = New strings need days to settle.
question-bothers = What bothers you?
    .name = Complaints
    .why = Not every complaint needs new strings.
question-wishes = What would you like to change?
    .name = Wishes
    .why = Each wish has its price.
question-flags = Do any of these apply?
    .name = Special needs
    .why = They rule some strings out.
question-also-tuned = Are the same strings used at another pitch too?
    .name = Other pitch
    .why = The highest pitch sets what they must bear.
    .hint = Leave both empty if there is only one.
question-strings = Is there more to say of one string?
    .name = String by string
    .why = For a mixed set, an odd tuning, or one string that bothers.
question-weights = Set a weight by hand?
    .name = Weights
    .why = Answers move the weights; a number here is taken instead.

label-ask = A label for this set
label-hint = A desk or an instrument, such as “Desk 3 viola”. It stays on this machine.
date-ask = Or the date
unknown = I don’t know

## Headings of the player’s path

path-instrument = The instrument
path-strings = Its strings now
path-wishes = Complaints and wishes
path-player = Music and player
path-tuning = Tuning it
path-room = Where it is kept
path-concert = The next concert
path-needs = Budget and skin

## Headings of the page with everything

part-instrument = Instrument
part-pitch = Pitch
part-now = Strings on it now
part-strings = String by string
part-wishes = Wishes
part-player = Player
part-place = Pegs and place
part-needs = Special needs
part-weights = Weights

## Words to choose from

choice-aim-one-string = One string
choice-aim-whole-set = The whole set
choice-aim-is-it-time = Is it time?
choice-temperament-equal = Equal
choice-temperament-pure-fifths = Pure fifths
choice-set_up-modern = Modern
choice-set_up-historical = Historical
choice-set_up-light = Old or light
choice-now-gut = Gut
choice-now-synthetic = Synthetic
choice-now-steel = Steel
choice-music-classical = Classical
choice-music-early = Early music
choice-music-folk = Folk
choice-music-jazz = Jazz
choice-played-bowed = Mostly bowed
choice-played-plucked = Mostly plucked
choice-played-both = Both
choice-ring-short = Short
choice-ring-long = Long
choice-amplified-magnet = Magnetic pickup
choice-amplified-bridge = Pickup in the bridge
choice-amplified-microphone = Microphone
choice-belongs_to-player = The player’s
choice-belongs_to-school = A school’s
choice-belongs_to-loan = Rented
choice-tuned_so-for-good = Always
choice-tuned_so-sometimes = Only sometimes
choice-level-beginner = Beginner
choice-level-student = Student
choice-level-advanced = Advanced
choice-level-professional = Professional
choice-pegs-friction = Wooden pegs
choice-pegs-geared = Geared pegs
choice-pegs-machine = Machine heads
choice-tuners-none = None
choice-tuners-top = Top string
choice-tuners-all = Every string
choice-who_tunes-player = The player
choice-who_tunes-adult = An adult
choice-who_tunes-nobody = Nobody
choice-room-steady = Always the same
choice-room-seasonal = Heated winters, warm summers
choice-room-damp = Damp
choice-room-dry = Dry
choice-room-travelling = It travels
choice-budget-modest = Little
choice-budget-middle = The usual
choice-budget-any = The best

## Instruments and tunings, as in a sentence and as a word to choose

instrument-violin = violin
instrument-viola = viola
instrument-cello = cello
instrument-double-bass = double bass

## Wishes: the ends, what one could say of them in a lesson, and a step towards each

wish-colour-low = steady
    .said = It stays in tune.
    .more = steadier
wish-colour-high = colour
    .said = Every stroke sounds different.
    .more = more colour
wish-brightness-low = dark
    .said = Like a low, warm voice.
    .more = darker
wish-brightness-high = bright
    .said = Like a small bell.
    .more = brighter
wish-power-low = gentle
    .said = It sings in small rooms.
    .more = gentler
wish-power-high = powerful
    .said = It reaches the back row.
    .more = more powerful
wish-feel-low = soft
    .said = My fingers hardly work.
    .more = softer
wish-feel-high = firm
    .said = It pushes back.
    .more = firmer
wish-response-low = broad
    .said = I lean in, it blooms.
    .more = broader
wish-response-high = quick
    .said = It speaks at a touch.
    .more = quicker
wish-like-now = like now
wish-a-little = a little { $more }
wish-much = much { $more }
wish-name = Wish from { $low } to { $high }
wish-ends = { $low } or { $high }
wish-slider = From { $low } to { $high }
wish-number = From { $low } (−2) to { $high } (2), as a number

## What can bother

bother-too-bright = Too bright
bother-thin = Thin
bother-too-dull = Too dull
bother-too-quiet = Too quiet
bother-slow-to-speak = Slow to speak
bother-chokes = Chokes when pushed
bother-whistles = Whistles
bother-wolf = Wolf note
bother-out-of-tune = Out of tune
bother-goes-flat = Goes flat
bother-breaks = Breaks
bother-breaks-at-the-peg = Breaks at the peg
bother-false = Sounds false
bother-hard-on-the-hand = Hard on the hand
bother-uneven = Uneven strings
bother-only-on = { $bother }, only on

## What may be true, and its short name

flag-nickel_allergy = Nickel irritates skin
    .name = Nickel allergy
flag-acid_sweat = Sweat eats strings
    .name = Acid sweat
flag-animal_free = Nothing from animals
    .name = Animal-free
flag-hand_pain = The hand hurts
    .name = Hand pain
flag-gut_to_its_limit = Plain gut on top, even if it breaks often
    .name = Gut to its limit
flag-must_settle = It must have settled by the next performance
    .name = Settled in time

## Families and gauges one can choose, and as they stand in a list

kind-plain-gut = Plain gut
    .listed = plain gut
kind-wound-gut = Wound gut
    .listed = wound gut
kind-plain-steel = Plain steel
    .listed = plain steel
kind-wound-steel = Wound steel
    .listed = wound steel
kind-stranded-steel = Stranded steel
    .listed = stranded steel
kind-synthetic = Synthetic
    .listed = synthetic
kind-monofilament = Monofilament
    .listed = monofilament
gauge-light = Light
    .listed = light
gauge-medium = Medium
    .listed = medium
gauge-heavy = Heavy
    .listed = heavy

## Weights

weight-feel = feel under the hand
weight-elasticity = elastic core
weight-settling = settling fast
weight-warmth = steadiness in warmth
weight-damp = steadiness in damp
weight-response = quick response
weight-bow-room = room for the bow
weight-power = power
weight-brightness = brightness as wished
weight-ring = ring of a plucked note
weight-durability = reserve to breaking
weight-care = bears hands and sweat
weight-price = price
weight-availability = easy to get
weight-tuning = easy to tune
weight-name = Weight of { $weight }
weight-usual = Usually { $number }
weights-summary = { $count } weights, each from 0 to 10

## What is taken without an answer

usual-now = Nothing to compare with
usual-music = Classical
usual-played = Mostly bowed, in jazz plucked
usual-ring = No matter
usual-amplified = Not at all
usual-belongs_to = The player’s
usual-tuned_so = Only sometimes
usual-most-load = The usual for its size
usual-level = Any
usual-who_tunes = Somebody does
usual-length = { $number } mm, and a wider range
usual-a4 = { $number } Hz
usual-concert = No date
usual-bothers = Nothing
usual-wishes = Everything like now
usual-flags = None
usual-age = Not old
usual-also-tuned = Only this one
usual-strings = The tuning’s notes, any kind
usual-weights = They follow from the answers

## One string

string-legend = { $note } string
string-note-hint = Leave a note empty to keep the tuning’s own.
string-note = Tuned to
string-kind = Kind wanted
string-any-kind = Any kind
string-now = What is there now, and what bothers
string-now-of = : { $note } string
string-kind-now = Kind now
string-gauge-now = Gauge now
string-metal-now = Metal outside
string-stays = It stays
string-stays-ask = Does it stay?
string-bothers = What bothers about it?

## Units in which one can type

unit-typed-mm = mm
unit-typed-in = in
unit-typed-months = months
unit-typed-years = years
unit-typed-Hz = Hz
unit-typed-N = N
unit-typed-kg = kg
unit-typed-lb = lb
unit-typed-semitones = semitones
unit-typed-days = days
unit-of = Unit of: { $question }

## What is wrong with an answer

range-of = { $low } to { $high }
fault-number = { $name }: “{ $typed }” is not a number. It takes { $range }.
fault-outside = { $name }: { $typed } is outside { $range }.
fault-choice = { $name }: “{ $typed }” is not one of the answers. It takes { $choices }.
fault-note = Note of the { $note } string: “{ $typed }” is not a note. It takes a letter, # or b, and the octave, such as { $note } or Bb3.
fault-refused = { $name }: { $typed } is not allowed. It takes { $allowed }.
fault-nothing = nothing
fault-field-note = Note
fault-field-family = Kind of string
fault-field-filament_m = Filament thickness
fault-allowed-family = a kind, for this string or for the whole set: what is to stay must be known
fault-allowed-filament_m = at most a third of the core’s thickness
fault-date = { $name }: “{ $typed }” is not a date. It takes one such as { $date }.
fault-past = { $name }: { $date } is past. It takes today or a later day.
fault-far = { $name }: { $date } is too far off. It takes a day up to { $last }.
faults-title =
    { $count ->
        [one] One answer cannot be used yet
       *[other] { $count } answers cannot be used yet
    }

## The answers in words

said-tuned = tuned to { $note }
said-under = under { $metal }
said-age = { $months } months old
said-now = now { $what }
said-stays = it stays
said-most = at most { $most }
said-concert =
    { $days ->
        [one] In { $number } day, { $date }
       *[other] In { $number } days, { $date }
    }

## Tunings, by instrument

tuning-violin-standard = G D A E
tuning-violin-five-string = C G D A E
tuning-violin-cross-a = A E A E (cross-tuned)
tuning-viola-standard = C G D A
tuning-viola-half-tone-up = a half tone up
tuning-cello-standard = C G D A
tuning-cello-five-string = C G D A E
tuning-cello-a-down = C G D G (top string a tone down)
tuning-double-bass-orchestra = E A D G
tuning-double-bass-solo = F# B E A (solo)
tuning-double-bass-fifths = C G D A (fifths)
tuning-double-bass-c-extension = E A D G with C extension
tuning-double-bass-low-b = B E A D G
tuning-double-bass-low-c = C E A D G
tuning-double-bass-high-c = E A D G C
tuning-double-bass-viennese = A D F# A (Viennese)

# A size of a viola: the length of its body.
size-inches = { $number } in
