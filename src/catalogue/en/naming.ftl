### What things are called.

metal-aluminium = aluminium
metal-titanium = titanium
metal-chrome-steel = chrome steel
metal-nickel = nickel
metal-copper = copper
metal-silver = silver
metal-tungsten = tungsten
metal-gold = gold

## Strings by their notes

the-string = the { $name } string
a-letter =
    { $first ->
        [A] an
        [E] an
        [F] an
       *[other] a
    } { $letter }
note-of-several =
    { $place ->
        [high] high
        [low] low
       *[middle] middle
    } { $letter }
list-and = { $first } and { $last }
# What follows a colon within a sentence: "small" begins it with a small letter, "large" leaves it.
after-colon = small
note-A = A
note-A-sharp = A♯
note-A-flat = A♭
note-B = B
note-B-sharp = B♯
note-B-flat = B♭
note-C = C
note-C-sharp = C♯
note-C-flat = C♭
note-D = D
note-D-sharp = D♯
note-D-flat = D♭
note-E = E
note-E-sharp = E♯
note-E-flat = E♭
note-F = F
note-F-sharp = F♯
note-F-flat = F♭
note-G = G
note-G-sharp = G♯
note-G-flat = G♭

## Families, as a word by itself and before a note

family-plain-gut = plain gut
family-wound-gut = wound gut
family-plain-steel = plain steel
family-wound-steel = wound steel
family-stranded-steel = stranded steel
family-synthetic = synthetic
family-monofilament = monofilament
family-is-plain-gut = twisted gut with nothing round it
family-is-wound-gut = twisted gut wound with metal
family-is-plain-steel = one steel wire with nothing round it
family-is-wound-steel = one steel wire wound with metal
family-is-stranded-steel = a strand of fine steel wires wound with metal
family-is-synthetic = a bundle of fine synthetic filaments wound with metal
family-is-monofilament = one thick synthetic filament
word-family =
    { $family ->
        [plain-gut] plain gut
        [wound-gut] wound gut
        [plain-steel] plain steel
        [wound-steel] wound steel
        [stranded-steel] stranded steel
        [synthetic] synthetic
        [monofilament] monofilament
       *[other] { $family }
    }

## What strings are made of, and how it is called after “of”

material-gut = gut
    .of = gut
material-spring-steel = spring steel
    .of = spring steel
material-stainless-steel = stainless steel
    .of = stainless steel
material-polyamide = nylon
    .of = nylon
material-polyester = polyester
    .of = polyester
material-high-modulus-polymer = stiff polymer
    .of = stiff polymer
material-aramid = aramid
    .of = aramid
kind-outside = { $kind }, { $metal } outside
core-strand =
    { $layout ->
        [nineteen] a strand of 19 wires
        [rope] a rope of 7 strands of 7 wires
       *[seven] a strand of 7 wires
    }, { $material }, { $across } across, each wire { $wire }
core-bundle = a bundle of about { $count } filaments, { $material }, { $across } across, each filament { $filament }
core-twisted =
    twisted { $material }, { $across } across, { $twist ->
        [high] high twist
       *[low] low twist
    } ({ $degrees }° at the surface)
core-single =
    { $what ->
        [wire] one wire
       *[filament] one filament
    }, { $material }, { $across } across
winding =
    { $metal } { $form ->
        [round] round wire
       *[flat] flat ribbon
    } { $thickness } thick
winding-then = { $inner }, then { $outer }
winding-none = nothing
portrait-plain = Cross-section of { $name }, to scale, { $across } across. Core: { $core }; with nothing wound round it.{ $note }
portrait-wound = Cross-section of { $name }, to scale, { $across } across. Core: { $core }; wound with { $wound }.{ $note }
portrait-part = One part in { $parts } of the filaments is drawn; the rest is alike.
portrait-gut = The ribbons of gut are drawn by eye, not counted.
