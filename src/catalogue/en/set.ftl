### What the answer says.

word-instrument =
    { $instrument ->
        [viola] viola
        [cello] cello
        [double-bass] double bass
       *[violin] violin
    }
families-one = { word-family } strings throughout
families-part =
    { $count ->
        [one] a { word-family } { $strings }
       *[other] { word-family } { $strings }
    }
one-string = a { word-family }
either-string = either { $one } or { $other } { $string }
list-of-lists = { $first }, and { $last }
gauges-one = { $gauge } gauge
gauges-part =
    { $count ->
        [one] a { $gauge } { $strings }
       *[other] { $gauge } { $strings }
    }
gauges-with = with { $parts }
set-answer = For your { word-instrument } we suggest { $strings }.
set-answer-two = Two kinds of set would suit your { word-instrument } about equally well.
nothing-load = Nothing fits: every set for this { word-instrument } pulls harder than it should.
nothing-made = Nothing fits: no string that is made meets every wish for the { $strings } of this { word-instrument }.
searched = { $space } strings could be made for the { $strings }; { $wound } were worked out in full, and { $inside } of them would do.
lead-level = These two come out about level. Choose either.
lead-next = The best set of other strings, { $strings }, scores { $by } lower.
lead-no-string = No other kind of string would do here.
lead-no-set = No other kind of set would do here.
unproven-by = We could not check every string that could be made; another set could score up to { $by } higher.
unproven = We could not check every string that could be made; another set could score higher.
close-none = On the scale below neither set leads the other.
close-by = On the scale below the first set leads the second by { $by }, which is no difference to speak of.

## What was taken for granted

assumptions = We took for granted: { $parts }.
assumed-instrument = a { word-instrument }
assumed-size = the size { $size }
assumed-tuning = the tuning { $tuning }
assumed-set-up = a { $set_up } set-up
assumed-a4 = a′ at { $pitch }
assumed-length = a sounding length of about { $number } mm
assumed-room-steady = a steady room
assumed-room-seasonal = a room that changes with the seasons
assumed-room-damp = a damp room
assumed-room-dry = a dry room
assumed-room-travelling = an instrument that travels
assumed-pegs-friction = plain wooden pegs
assumed-pegs-geared = geared pegs
assumed-pegs-machine = machine heads
assumed-tuners-none = no fine tuners
assumed-tuners-top = a fine tuner on the top string
assumed-tuners-all = a fine tuner on every string

## Load and steps

load-below = below what is usual
load-lower = in the lower part of what is usual
load-middle = in the middle of what is usual
load-upper = in the upper part of what is usual
load-above = above what is usual
load-title = The load is { $place }
step-much-steeper = much steeper than usual
step-steeper = a little steeper than usual
step-much-flatter = much flatter than usual
step-flatter = a little flatter than usual
step-usual = as usual
steps-odd =
    from { $upper } to { $lower } the tension falls { $step ->
        [much-steeper] much steeper
        [steeper] a little steeper
        [much-flatter] much flatter
       *[flatter] a little flatter
    }
steps-title = { $steps } than usual
steps-usual = The steps from string to string are the usual ones

## At the counter

counter-core =
    { $family ->
        [plain-gut] plain gut
        [wound-gut] gut core
        [plain-steel] plain steel
        [wound-steel] steel core
        [stranded-steel] rope or strand steel core
        [synthetic] { $material } core
        [monofilament] one thick synthetic filament
       *[other] { $family }
    }
counter-wound = , wound with { $metal } outside
counter =
    a { $full ->
        [yes] { word-instrument }
       *[no] { $size } { word-instrument }
    } { $name } string, { $core }{ $wound }{ $gauge }, { $class }{ $end ->
        [loop-or-ball] , loop or ball end as your fine tuner needs
        [knot] , to be knotted at the tailpiece
       *[ball] , ball end
    }{ $long ->
        [yes] , long enough for the extension
       *[no] { "" }
    }
packet = about { $force } at { $pitch } and { $length } of sounding length

## What a player can use

fact-pull = Tension in tune: { $force }.
fact-stretch = It is { $stretch } longer in tune than slack.
fact-breaking = In tune it uses { $share } of the strength of its core.
fact-peg =
    A degree of peg moves it by { $cents }{ $tuner ->
        [yes] ; it has a fine tuner
       *[no] { "" }
    }.
fact-settling = It has settled after { $days }.
fact-warmth =
    Its pitch { $moves } when { $untuned ->
        [evening] an evening gets
        [week] a week gets
       *[season] the seasons get
    } warm.
fact-damp =
    Its pitch { $moves } when { $untuned ->
        [evening] an evening gets
        [week] a week gets
       *[season] the seasons get
    } damp.

## What the pitch does

moves-falls = falls { $cents }
moves-rises = rises { $cents }
moves-hardly = hardly moves
moves-hardly-within = hardly moves ({ $range })

## The pictures of what elasticity costs

picture-few =
    { $aspect ->
        [settling] Days to settle
        [warmth] Warmth
       *[damp] Damp
    }: the strings that would do are too much alike in stretch to say what it costs
picture-costs =
    { $aspect ->
        [settling] More stretch costs time to settle
        [warmth] More stretch costs steadiness in warmth
       *[damp] More stretch costs steadiness in damp
    }: at best { $stiff } at { $from } of stretch, { $elastic } at { $to }
picture-level =
    { $aspect ->
        [settling] More stretch costs no time to settle
        [warmth] More stretch costs nothing in warmth
       *[damp] More stretch costs nothing in damp
    }: at best { $stiff } at { $from } of stretch, { $elastic } at { $to }
picture-gains =
    { $aspect ->
        [settling] More stretch even settles sooner
        [warmth] More stretch is even steadier in warmth
       *[damp] More stretch is even steadier in damp
    }: at best { $stiff } at { $from } of stretch, { $elastic } at { $to }
picture-between =
    { $aspect ->
        [settling] A middling stretch settles soonest
        [warmth] A middling stretch is steadiest in warmth
       *[damp] A middling stretch is steadiest in damp
    }: { $least } at { $at }; at best { $stiff } at { $from }, { $elastic } at { $to }
picture-overlap = { $kinds } strings overlap here: the kind alone does not decide it.
