### Two strings side by side.

compare-place = { $instrument } { $size }, { $length } at { $pitch }
compare-title = Two { $name } strings side by side
compare-first-string = First string
compare-second-string = Second string
compare-first = First
compare-second = Second
compare-change-first = Change the first string
compare-change-second = Change the second string
compare-last = Shown is the last one that could be computed.
compare-broke = It could not be computed: { $reason }.
compare-computing = Computing…
compare-bow = Under the bow
compare-others = Strings of the set
compare-apart = { $likely } { $word }
compare-cannot = cannot be told: it is unknown
compare-same = the same
compare-overlap = the ranges overlap
compare-verdict = The first: { $verdict }.
compare-the-first = first
compare-the-second = second
compare-against = { $one } against { $other }: { $apart }
compare-every = Every number
compare-how = “Likely” and “very likely” come from the two strings in the same draws of all that is uncertain, so that what they share cancels out: from 80 and from 85 of 100. The other numbers are told apart by their ranges alone.
compare-table = Every number of both strings
compare-column = The first is or has
compare-other-answer = another kind of answer came
