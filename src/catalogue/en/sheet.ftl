### The sheet to take home.

sheet-label = Sheet to print
sheet-for = For
sheet-date = Date
sheet-ask = Ask for
sheet-gauge = Gauge, pull in tune
sheet-why = Why, and what it costs
sheet-settles = Settles
sheet-load = All strings together pull with { $pull }, { $place }. They press on the bridge with { $press }.
sheet-close = Another set, { $strings }, would suit as well.
sheet-close-ask = For it ask for { $asks }.
sheet-close-also = And for { $asks }.
sheet-close-rest = Its other strings are as above.
sheet-look = Look first.
sheet-when = When and how
sheet-fit = Fit the set { $likely } before it matters; { $safe } to be safe.
sheet-one = One string at a time; tune often on the first day, then daily until a night costs no more than five cents, a twentieth of a semitone.
sheet-fitted = What was fitted, and when
sheet-foot = Ranges and sources of every number are in Ropewalk.
sheet-instrument = { $instrument } { $size }, { $tuning }, a′ at { $pitch }, { $set_up } set-up
sheet-but = But:
sheet-days = { $likely }, at most { $most }
