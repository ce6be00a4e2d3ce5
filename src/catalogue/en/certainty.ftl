### How sure a set is, what would change it, and how deep the page goes.

depth-label = How much detail
depth-words = In plain words
depth-numbers = With numbers
depth-bench = At the bench

sure-title = How sure is it?
sure-waits = How sure is this? One moment: we try many variations.
sure-failed = How sure this is could not be worked out: { $reason }.
sure-very-likely = Very likely the best kinds of string for you.
sure-likely = Likely the best kinds of string for you.
sure-close-call = It is a close call.
sure-equal = Another set is as good a choice: { $families }.
sure-level-very-likely = The first comes out ahead nearly every time, but only a little: if one cannot be had, take the other.
sure-level-likely = The first comes out ahead most of the time, but only a little: if one cannot be had, take the other.
sure-leads = It leads for what you answered; slightly different answers could change that.
sure-more = How we know
sure-how = No answer is exact, and neither are our numbers. We moved all of them a little, many times, and looked each time for the best set.
sure-chosen = In { $share } of 100 tries, with answers and numbers moved a little, these kinds come out best, give or take { $error }.
sure-second = The second set comes out best in { $share } of 100.
sure-next = After these, most often best are { $families }: in { $share } of 100.
sure-string = { $name }: { $family }, { $word }; { $gauge } gauge, { $gauge_word }.
sure-string-share = { $name }: { $family } in { $share } of 100, { $gauge } gauge in { $gauge_share } of 100.
sure-string-other = { $name }: { $family } in { $share } of 100, else { $other } in { $other_share }; { $gauge } gauge in { $gauge_share } of 100.
sure-word-very-likely = very likely
sure-word-likely = likely
sure-word-close-call = a close call
sure-bench-worlds = { $worlds } worlds, each a draw of every constant and one way in which the answers can be meant; the best set of the finalists is found anew in each, exactly.
sure-bench-spreads = Nine times in ten a wish lies within half a step of where you put it, a weight within 0.75 to 1.33 of itself, the humidity of a room within 8 of 100 of its word, the swings within 0.6 to 1.6 of theirs. What you did not answer is drawn by how people answer. All of this is judgement.
sure-bench-error = Give or take: one standard error, from way to way. Very likely: 85 of 100 and over. Likely: 65 and over. Under that: a close call.
sure-sheet = How sure: { $sure }
sure-sources = Where the numbers and their ranges come from

turn-title = What would change it
turn-none = No single answer would change the kind or the gauge of a string. We changed { $tried } answers and weights, one at a time.
turn-unsure = Some answers might, but we ran out of time to make sure of any.
turn-steps = { $steps ->
    [one] Wished one step { $more }
   *[other] Wished { $steps } steps { $more }
}
turn-scale = { $change } (from { $from } to { $to } on the scale, { $holds } is not enough)
turn-scale-first = { $change } (from { $from } to { $to } on the scale)
turn-weight-up = If “{ $weight }” counted for more
turn-weight-down = If “{ $weight }” counted for less
turn-weight = { $change } ({ $to } in place of { $from }, { $holds } is not enough)
turn-weight-first = { $change } ({ $to } in place of { $from })
turn-pitch = At an a′ of { $to } in place of { $from }
turn-answer = { $name }: “{ $to }” in place of “{ $from }”
turn-answer-new = { $name }: “{ $to }”
turn-so = If this were so: { $fact }
turn-not-so = If this were not so: { $fact }
turn-days = If it mattered in { $days }
turn-then = { $change }: { $then }.
turn-kind = the { $names } would be { $family }
turn-gauge = the { $names } would be of { $gauge } gauge
turn-both = the { $names } would be { $family } of { $gauge } gauge
turn-confirmed = Each was fitted anew at that value and at the one before it. Three are told at most, the nearest first: a step of a wish counts 0.5, a doubling of a weight 1, five hertz 1, another word 1.
turn-sheet = Would change it first: { $turn }

## Reasons, deeper and less deep

reason-plain = { $word }.
reason-plain-wanted = { $word }, nearer to what you want.
reason-plain-weakest = Its weakest point is { $what }.
reason-more = That is { $percent } % more
reason-less = That is { $percent } % less
reason-times = That is { $times } times as much
reason-times-other = The other has { $times } times as much
reason-cents-more = That is { $cents } cents more
reason-cents-less = That is { $cents } cents less
reason-noticed = { $by }; { $least } % is about the least that is noticed.
reason-noticed-cents = { $by }; { $least } cents are about the least that is noticed.
reason-ranks = Over { $count } strings that it was not fitted to, its ranks correlate with those of the simulation by { $all }, over those of one place by { $place }.
reason-carries = Of the score, { $what } carries { $gain } here, by a weight of { $weight }.
