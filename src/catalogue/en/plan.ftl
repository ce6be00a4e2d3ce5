### What to do, to check and to beware of.

## Cautions

caution-eyes = A string under tension can snap and cut, and its ends are sharp. Wear safety glasses, keep your face away, and never cut a string under tension.
caution-one-at-a-time = The soundpost can fall without string pressure: change one string at a time. If the bridge resists or the post falls, do not move it yourself; take it to a luthier.
caution-not-above-pitch = Never tune above the planned pitch.
caution-do-not-tension = Do not put tension on an instrument with a crack, an open seam, a loose fingerboard or a fallen soundpost. If one opens while it is strung, let all strings down a little and evenly, and take it to a luthier.
caution-adult-fits = An adult fits a child’s strings. The first time, have it shown.
caution-luthier-first = The instrument is old, light or valuable: ask a luthier before you fit anything.
caution-steel-for-gut = This set puts steel where gut was. The instrument and its tailpiece may not be made for it: ask a luthier first.
caution-load-near-top = The set pulls near the top of what is usual for this kind of instrument. Ask a luthier whether yours may carry it.
caution-gut-near-limit = This gut works near its limit and will break from time to time. Bring it up slowly, never tune it higher later, let it down for travel, and keep a spare.
caution-tuned-up = At its higher tuning the set pulls harder: a quarter more for a whole tone. Ask a luthier, and tune back down after.
caution-kept-near-breaking = At its highest tuning this string works nearer to breaking than it should. Change it too, or do not tune it up.
caution-far-from-usual-note = It is tuned far from the note for which such strings are made, so less is known about it.
caution-not-settled-in-time = It will not have settled by the day. Fit later, or choose another set.
caution-may-not-settle-in-time = It may not have settled by the day. Allow time to tune.
caution-luthier-decides = The tool advises; a luthier who sees the instrument decides.

## To look at at the set-up

check-grooves = Grooves of nut and bridge: the new string should sit in them, neither pinched nor loose. A worn groove, a frayed tailgut, a bent or cracked bridge: luthier first.
check-graphite = A soft pencil in the grooves lets the string slide.
check-protector = A small skin or sleeve under the thin top string keeps it from cutting the bridge.
check-fine-tuner = The peg is coarse for these strings: a fine tuner is needed, or patience.
check-height = The kind of core changes, so the strings may swing wider or narrower: check their height over the fingerboard.
check-bridge-and-post = Bridge upright, soundpost in its place, before, during and after.
check-pegbox-wall = The winding should not be pressed against the wall of the pegbox.
check-keep-old-set = Keep the old set: it is the way back, and a spare.
check-long-string = The lowest string runs over the extension: it must be the longer kind.

## Why constructions were left out: left out, because they …

limit-not-makeable = cannot be made
limit-animal = come from an animal
limit-nickel = have nickel under the fingers
limit-same-fault = would bother in the same way
limit-pickup = have no steel for the pickup
limit-other-family = are of another kind than you asked for
limit-nobody-makes-it = are made by nobody we know of
limit-tension = would pull outside what is made here, or more than you allow
limit-gauge = are thinner or thicker than what is made here
limit-stretch = stretch more or less than what is made here
limit-winding-share = carry more or less winding than what is made here
limit-breaking = are too near to breaking
limit-not-settled = might not settle by the day
limit-needs-fine-tuner = cannot be tuned on the peg alone, and there is no fine tuner

## Wishes that could be given up

relax-animal_free = nothing from animals
relax-nickel_allergy = no nickel under the fingers
relax-amplified = steel for the magnetic pickup
relax-strings = the kind, note or limit you gave for single strings
relax-gut_to_its_limit = no plain gut near its breaking point
relax-must_settle = that it must have settled by the day
relax-also_tuned = the other pitch at which it is used
relax-most_load_n = the limit for all strings together
