### The kinds of set: what they are called, how usual they are, and how they compare with the chosen one.

set-kind-gut = Gut throughout
set-kind-wound-gut =
    { $steel ->
        [top] Wound gut under a steel { $top }
       *[none] Wound gut throughout
    }
set-kind-steel-over-gut =
    { $steel ->
        [top] Plain and wound gut under a steel { $top }
       *[none] Plain gut over wound gut
    }
set-kind-gut-over-steel = Plain gut over stranded steel
set-kind-stranded-steel = All steel, stranded cores
set-kind-solid-steel = All steel, solid cores
set-kind-solid-over-stranded-steel = Solid steel over stranded steel
set-kind-soft-synthetic =
    { $steel ->
        [top] Steel { $top } over soft synthetics
       *[none] Soft synthetics throughout
    }
set-kind-middle-synthetic =
    { $steel ->
        [top] Steel { $top } over medium-stiff synthetics
       *[none] Medium-stiff synthetics throughout
    }
set-kind-stiff-synthetic =
    { $steel ->
        [top] Steel { $top } over stiff synthetics
       *[none] Stiff synthetics throughout
    }
set-kind-steel-over-soft-synthetic = Steel { $top } over soft synthetics
set-kind-steel-over-middle-synthetic = Steel { $top } over medium-stiff synthetics
set-kind-steel-over-stiff-synthetic = Steel { $top } over stiff synthetics
set-kind-steel-outside = Steel outer strings, soft synthetics between
set-kind-steel-over-synthetic = Solid steel over soft synthetics

## The chosen kind and the others

kind-chosen = { $kind }, { $gauge }
kind-second = { $kind }, { $gauge }
kinds-title = Other kinds of set
kinds-how = Each of these is the best set of its kind for you, beside the chosen one.
kind-usual = About { $number } of 100 players like you have it.
kind-rare = It is rare among players like you.
kind-now = What is on the instrument now is of this kind.
kind-differs = Against the chosen set: { $parts }.
kind-differs-on = { $words } on { $strings }
kind-differs-all = { $words } on every string
kind-alike = No difference from the chosen set would be noticed.
kind-lead =
    { $how ->
        [level] It would suit you as well.
        [little] It would suit you nearly as well.
        [clearly] It would suit you clearly less.
       *[far] It would suit you far less.
    }
kind-lead-by =
    It comes out { $how ->
        [level] about level with the chosen set, behind
        [little] a little behind the chosen set,
        [clearly] clearly behind the chosen set,
       *[far] far behind the chosen set,
    } { $proven ->
        [yes] by { $by }
       *[no] by at most { $by }
    }.
kinds-more =
    { $count ->
        [one] One more kind
       *[other] { $count } more kinds
    }
kinds-ruled-out = Not possible here
kind-ruled-out =
    { $kind }: { $limit ->
        [nobody-makes-it] nobody we know of makes such strings for the { $name }
       *[other] for the { $name }, most such strings { $why }
    }.
kind-too-heavy = { $kind }: even its lightest set pulls harder than it should.
