### Where every number comes from.

sources-other-answer = the model sent another kind of answer
sources-lead = Every number on these pages has a range and says how it is known.
sources-fetching = Fetching the tables…
sources-broke = The tables could not be had: { $reason }.
sources-grades = How a number is known
sources-range = A range holds the true number 90 times in 100. Where it is wide, it stands behind its number in sentences too.

## Does the trade’s order hold?

sources-trade = What the trade says of steadiness
sources-trade-order = In the trade’s experience solid steel is the steadiest core, then a strand, a stiff synthetic, a soft synthetic, and gut last. We compute three things apart:
sources-trade-settling = How soon it settles: the order holds from solid steel by strands and stiff synthetics to soft ones, with overlaps between neighbours. Gut is slow, but comes out no slower than nylon.
sources-trade-warmth = How far warmth moves it: the order does not hold. Steel, the first in it, comes out as moving most; gut and synthetic cores move less, though less is known of them.
sources-trade-damp = How far damp moves it: the order holds in part. Steel takes up no water, but as the body moves with the damp, it moves the stiffest strings most. Gut and nylon drink, and wound gut may even rise.
sources-formulas = How each number is computed
sources-letters = L is the sounding length, f the pitch, μ the mass a length (μ₀ unstretched), EA the stiffness of the core along the string, T the tension, D and d the outer and the core diameter, K the stiffness in bending, κ/2 = 865.6 cents. Z = √(T μ) is the impedance, R what the bridge resists, β = 0.1 where the bow touches, v = 0.1 m/s its speed, μs and μd the friction of standing and of sliding hair, η a loss, C the stiffness to a twist, J the inertia of one.
sources-table = Table of formulas
sources-formula = Formula
sources-best = Known at best
sources-fitted = Numbers fitted to the bowed-string simulation
sources-fitted-how = Stepping a string through time takes a second. These numbers follow from a formula fitted to it, so that thousands of strings can be compared. On 300 strings that were not used for the fitting they come this near. Among strings of one place they are less sure than over all, for pitch, which is the same there, helps them most. How far they miss is part of every range and of every comparison.
sources-fitted-table = Table of fitted numbers
sources-ranks = Ranks all strings as the simulation does (1: just so)
sources-ranks-place = Ranks those of one place
sources-misses = Misses it by
sources-misses-place = At one place by
sources-unheld = Formulas that nothing outside holds yet, and why
sources-all-held = There are none: every formula is held by a published value or an independent solution.
sources-rest = Every other formula is tested against a published value or an independent solution. These are not; their names are those in the model.
sources-works = The works
sources-remark = To know:

sources-practice = Common practice, and what we say
sources-practice-how = Situations in which nearly everybody, or most, fit the same strings: common practice, no source. In { $agreed } of { $of } rows we name what practice names first or second; where we do not is told first.
sources-practice-table = Situations, string by string
column-situation = Situation
column-practice = In practice
column-told = We say
practice-or = { " or " }
practice-agrees = agrees
practice-differs = differs
practice-nothing = nothing that fits
practised-solid_steel = solid steel
practised-rope_steel = stranded steel
practised-synthetic = synthetic
practised-plain_gut = plain gut
practised-wound_gut = wound gut
practised-keep_current = what is on it
