### Two or three cores before a class, and a core's inside story.

class-core = the { word-family } string
class-kind = { word-family }
class-each = { $core } { $value }
class-for-mm = { $cents } cents for a millimetre
class-for-degree = { $cents } cents for a degree
class-or = { $one } or { $other }
class-numbers = { $name }: { $each }
class-which =
    { $lead ->
        [clear] { $name }.
        [probably] Probably { $name }.
        [either] Either { $name }: between them the ranges overlap.
       *[even] These numbers cannot tell: the ranges overlap.
    } { $numbers }.
class-context = { $instrument }, { $name } string, { $length } at { $pitch }
class-steps = Steps of the lesson
class-back = ← Back
class-next = Next →
class-made = { $core }. Round it: { $wound }.
class-bar = { $name }, { $number }: { $value }
class-range = likely { $low } to { $high }
class-bars = The dot is the value, and the line holds it 90 times in 100. An upright stroke marks zero where a value can lie on either side of it.

class-inside-title =
    { $count ->
        [2] Two
       *[other] Three
    } ways to make one { $name } string
class-inside-lead = Cut through, all to one scale. The core in the middle carries the pull; what is wound round it only makes it heavier.
class-stretch-title =
    { $lead ->
        [clear] Pull each by the same amount, and the pitch of { $name } jumps most: { $value }
        [probably] Pull each by the same amount, and the pitch of { $name } probably jumps most: { $value }
        [either] Pull each by the same amount, and the pitch of { $name } jumps most
       *[even] Pull each by the same amount: which jumps most, these numbers cannot tell
    }
class-stretch-lead = A stiff core answers a turn of the peg with a leap, an elastic one with a step.
class-answer-title =
    { $lead ->
        [clear] { $name } stretches furthest on its way to pitch: { $value }
        [probably] { $name } probably stretches furthest on its way to pitch: { $value }
        [either] { $name } stretches furthest on its way to pitch
       *[even] Which stretches furthest on its way to pitch, these numbers cannot tell
    }
class-answer-lead = What stretches far is said to give a player more to shape, and to take longer to come to rest. Here are both, as numbers.
class-ring-reach =
    { $heard ->
        [no] beyond hearing
       *[yes] to { $value }
    }
class-ring-title =
    { $lead ->
        [clear] { $name } is the brightest: its shine reaches { $reach }
        [probably] { $name } is probably the brightest: its shine reaches { $reach }
        [either] { $name } is the brightest
       *[even] Which is the brightest, these numbers cannot tell
    }
class-ring-lead = Inside a core, bending and rubbing eat the highest part of the sound first. What they leave is the shine.
class-warmth-title =
    { $lead ->
        [clear] an evening’s warmth moves { $name } least: it { $value }
        [probably] an evening’s warmth probably moves { $name } least: it { $value }
        [either] an evening’s warmth moves { $name } least
       *[even] which one an evening’s warmth moves least, these numbers cannot tell
    }
class-damp-title =
    { $lead ->
        [clear] the seasons’ damp moves { $name } least: it { $value }
        [probably] the seasons’ damp probably moves { $name } least: it { $value }
        [either] the seasons’ damp moves { $name } least
       *[even] which one the seasons’ damp moves least, these numbers cannot tell
    }
class-air-title = { $warmth }; { $damp }
class-air-lead = Warmth and damp change the string, and they move the wooden body that holds its ends.
class-settle-title =
    { $lead ->
        [clear] { $name } has settled first: { $value }
        [probably] { $name } has probably settled first: { $value }
        [either] { $name } has settled first
       *[even] Which has settled first, these numbers cannot tell
    }
class-settle-lead = Settled means that a night costs no more than five cents. Until then one tunes every day.

class-ear = Hear them
class-piece = As
class-plucked = plucked
class-bowed = bowed, open string
class-sounds = You hear: { $name }.
class-ear-how = All are equally loud. The body is generic: it compares strings, and predicts no instrument.

class-questions = Ask the class
class-ask-heavy = Which of them is the heaviest?
class-ask-peg = Which one’s pitch jumps most when the peg turns by one degree?
class-ask-break = Which one hangs nearest to breaking?
class-ask-gut = Why is the { $name } string so rarely plain gut?
class-gut-answer = Because gut would hang at { $share } of what breaks it. Beside it: { $others }.
class-ask-stretch = Which one stretches furthest on its way to pitch?
class-ask-speaks = Which one speaks soonest when the bow starts?
class-ask-ring = Which one rings longest after a pluck?
class-ask-lamps = The hall gets warm. Which one moves furthest?
class-ask-rain = Rain comes. Which one is out of tune by the end of the evening?
class-ask-body = The damp air makes the body swell. Which one feels that most?
class-ask-drink = Which one does the water that it drinks itself move most?
class-ask-eve = Which one could be fitted shortest before a concert?

class-choose = Choose
class-string = String
class-cores = Two or three cores
class-stop-key = Esc
class-keys = Keys
class-keys-on = Keys are on
class-keys-how = → or Page Down goes on, ← or Page Up goes back, 1 to 3 let a core be heard, Esc stops. In a field every key does what it always does.

inside-title = Inside, and under a pull
inside-pull = Pull: string wound over the nut, counted from pitch
inside-number = Millimetres of pull
inside-fault = A number from { $low } to { $high }.
inside-value = { $mm }: { $strings }
inside-each = { $name } { $now }
inside-to-slack = All slack
inside-to-pitch = At pitch
inside-to-one = One millimetre more
inside-word-slack = all slack
inside-word-back = let back
inside-word-pitch = at pitch
inside-word-further = wound further
inside-slack = slack
inside-perhaps = nearly slack
inside-snapped = snapped
inside-change =
    { $way ->
        [up] { $cents } cents higher
        [down] { $cents } cents lower
       *[same] at pitch
    }
inside-now = { $change }; { $tension } of tension, stretched { $stretch }, at { $share } of what breaks it
inside-picture = { $name } from the side: { $now }
inside-how = All are drawn to one scale, along and across: a piece that is { $piece } long while slack ends at the dashed line. What the pull adds in length and takes in thickness is drawn { $times } times as large. To the left with its windings, to the right the bare core. How wide a ribbon is and how many fibres are seen is drawn by eye.
inside-before = Pluck at pitch
inside-after = Pluck as pulled
