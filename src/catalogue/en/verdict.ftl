### What to do, and why something bothers.

leave-nothing = { $answer } Leave it as it is.
leave-it = Leave the strings of your { word-instrument } as they are.
fresh-one = Put on a fresh { $name } of the same kind. Keep the others.
fresh-set = Give your { word-instrument } a fresh set of the same kind.
luthier-first = Take your { word-instrument } to a luthier before you buy strings.
change-one = Change one string: take a { word-family } { $name }, { $gauge } gauge.
change-one-only = Change one string: the { $name }.
all-the-same = If you want to change all the same
after-luthier = What we would put on after that
complaint-of = { $complaint }: the { $name } string
complaint-line = { $complaint }: { $cause } { $advice }
stays = stays
not-judged = not judged
findings-title = What may be behind it
findings-unlikely = Less likely: { $causes }.

## Facts that led to the answer

fact-because-old = It has been on as long as such strings last.
fact-because-not-old = Nothing on it is old, as far as we know.
fact-because-nothing-bothers = Nothing bothers you.
fact-because-wishes = You wish for another sound or feel.
fact-because-animal = There is gut on it, and you want nothing from animals.
fact-because-nickel = There is nickel under the fingers, and your skin cannot bear it.
fact-because-pickup = The pickup hears steel, and what is on it has none in the core.
fact-because-other-family = You asked for another kind of string.
fact-because-retuned = Only some strings are tuned otherwise, and only sometimes: the others can stay.
fact-because-no-better = No set that fits comes out clearly better than what is there.
fact-because-nothing-fits = Nothing that is made meets every wish.

## Causes, and what to do about them

cause-old-string = It may be old.
    .advice = Try a fresh one of the same kind first.
cause-faulty-string = The string may have a fault.
    .advice = Try another of the same kind; keep the receipt.
cause-winding-open = The winding may be loose.
    .advice = Run a fingernail along it. If it catches or buzzes, change it.
cause-sweat-eats-winding = Sweat may be eating the metal.
    .advice = Wipe it after playing, and take a harder metal.
cause-not-settled = It may still be too new.
    .advice = Give it a few days before you judge it.
cause-kind-too-bright = This kind of string may be too bright for you.
    .advice = A darker core or metal would help.
cause-kind-too-dark = This kind of string may be too dark for you.
    .advice = A brighter core or metal would help.
cause-tension-too-high = Its tension may be too high: it pulls too hard.
    .advice = A lighter gauge lets it breathe.
cause-tension-too-low = Its tension may be too low: it pulls too little.
    .advice = A heavier gauge gives it body.
cause-too-heavy-to-start = It may be too heavy for the bow.
    .advice = A lighter one starts sooner.
cause-torsion-whistle = The wire may be twisting under the bow.
    .advice = A wound top string hardly does that.
cause-near-its-limit = It may be working too near its limit.
    .advice = A stronger kind would last longer.
cause-thin-under-the-finger = It may be so thin that it cuts.
    .advice = A thicker kind is kinder.
cause-one-stands-out = One string may stand out from the others.
    .advice = Change that one to match its neighbours.
cause-core-drinks-humidity = Its core may be taking up water from the air.
    .advice = A polyester core drinks less, a steel one not at all.
cause-body-moves-it = The body may be moving, and a stiff string follows it.
    .advice = A more elastic core moves less.
cause-peg-slips = The peg may be slipping or sticking.
    .advice = Push it in as you turn. If that fails, a luthier fits it.
cause-not-tuned = It may be that nobody tunes it between lessons.
    .advice = Take a steadier kind, or ask someone to tune.
cause-worn-groove = A groove may be pinching the string.
    .advice = A luthier can reshape it; a pencil does not cure it.
cause-sharp-edge = An edge may be cutting the string.
    .advice = Feel for it where the string broke. A luthier rounds it.
cause-string-height = The strings may stand too high.
    .advice = A luthier can lower them.
cause-soundpost-or-bridge = The soundpost or the bridge may be out of place.
    .advice = A luthier can see it. Do not move it yourself.
cause-wolf-of-the-body = The wolf may be the body’s own.
    .advice = Strings move it a little. A luthier can tame it.
cause-rosin-or-bow-hair = The bow hair or the rosin may be the cause.
    .advice = Try another bow first. It costs nothing.
cause-bow-stroke = It may be how the bow meets the string.
    .advice = Try it straighter, and nearer the bridge.
cause-likely =
    { $likely ->
        [likely] likely
        [possible] possible
        [unlikely] unlikely
       *[other] { $likely }
    }, { $on ->
        [judged] judged
       *[checked] checked
    }

## Numbers that speak for or against a cause

months =
    { $count ->
        [one] { $number }{ "\u00A0" }month
       *[other] { $number }{ "\u00A0" }months
    }
number-whose = The { $name }:
number-of = { $property }: { $value }.
number-age = It has been on for { $age }. Such a string lasts about { $limit }.
number-settling = Days it takes to settle: { $value }. It has been on for { $days }.
number-step = Its step to the next string is { $times } times the usual one.
number-tension-low = Its tension is { $value }. Under { $limit } is light here.
number-tension = Its tension is { $value }. Over { $limit } is heavy here.
number-shine-low = Its shine ends at { $value }. Under { $limit } is dark for your wish.
number-shine = Its shine ends at { $value }. Over { $limit } is bright for your wish.
number-breaking = It uses { $value } of its strength. Over { $limit } is hard work.
number-moisture = Over the seasons the water in its core moves it { $value }. One hears { $limit }.
number-ratchet = Damper air than ever costs it { $value } for good.
number-body = Over the seasons the body moves it { $value }. One hears 3 to 5.
number-torsion = How stiff it is to twist, against swinging: { $value }. Wound strings stay under { $limit }.
number-speaks = It speaks within { $value }. Over { $limit } is slow here.
number-wolf = Least bow force at the wolf, as a share of the greatest: { $value }.
number-thin = It is { $value } thick. Under { $limit } cuts.
