### Wie die Dinge heißen.

metal-aluminium = Aluminium
metal-titanium = Titan
metal-chrome-steel = Chromstahl
metal-nickel = Nickel
metal-copper = Kupfer
metal-silver = Silber
metal-tungsten = Wolfram
metal-gold = Gold

## Saiten nach ihren Tönen

the-string = die { $name }-Saite
a-letter = die { $letter }-Saite
note-of-several = { $letter }{ $octave }
list-and = { $first } und { $last }
# Was nach einem Doppelpunkt folgt: „small“ beginnt klein, „large“ bleibt, wie es ist.
after-colon = large
note-A = A
note-A-sharp = Ais
note-A-flat = As
note-B = H
note-B-sharp = His
note-B-flat = B
note-C = C
note-C-sharp = Cis
note-C-flat = Ces
note-D = D
note-D-sharp = Dis
note-D-flat = Des
note-E = E
note-E-sharp = Eis
note-E-flat = Es
note-F = F
note-F-sharp = Fis
note-F-flat = Fes
note-G = G
note-G-sharp = Gis
note-G-flat = Ges

## Bauarten, als Wort für sich und vor einem Ton

family-plain-gut = blanker Darm
family-wound-gut = umsponnener Darm
family-plain-steel = blanker Stahl
family-wound-steel = umsponnener Vollstahl
family-stranded-steel = Stahlseil
family-synthetic = Kunststoffkern
family-monofilament = Monofil
family-is-plain-gut = gedrehter Darm ohne etwas darum
family-is-wound-gut = gedrehter Darm, mit Metall umsponnen
family-is-plain-steel = ein Stahldraht ohne etwas darum
family-is-wound-steel = ein Stahldraht, mit Metall umsponnen
family-is-stranded-steel = ein Seil aus feinen Stahldrähten, mit Metall umsponnen
family-is-synthetic = ein Bündel feiner Kunststofffasern, mit Metall umsponnen
family-is-monofilament = eine dicke Kunststofffaser
word-family =
    { $family ->
        [plain-gut] blanke Darmsaite
        [wound-gut] umsponnene Darmsaite
        [plain-steel] blanke Stahlsaite
        [wound-steel] umsponnene Vollstahlsaite
        [stranded-steel] Saite mit Stahlseilkern
        [synthetic] Kunststoffsaite
        [monofilament] Saite aus einer einzelnen Faser
       *[other] { $family }
    }
# Nach „einer“: Genitiv und Dativ.
word-family-of =
    { $family ->
        [plain-gut] blanken Darmsaite
        [wound-gut] umsponnenen Darmsaite
        [plain-steel] blanken Stahlsaite
        [wound-steel] umsponnenen Vollstahlsaite
        [stranded-steel] Saite mit Stahlseilkern
        [synthetic] Kunststoffsaite
        [monofilament] Saite aus einer einzelnen Faser
       *[other] { $family }
    }
word-families =
    { $family ->
        [plain-gut] blanke Darmsaiten
        [wound-gut] umsponnene Darmsaiten
        [plain-steel] blanke Stahlsaiten
        [wound-steel] umsponnene Vollstahlsaiten
        [stranded-steel] Saiten mit Stahlseilkern
        [synthetic] Kunststoffsaiten
        [monofilament] Saiten aus einer einzelnen Faser
       *[other] { $family }
    }

## Woraus Saiten gemacht sind, und wie es nach „von“ heißt

material-gut = Darm
    .of = Darm
material-spring-steel = Federstahl
    .of = Federstahl
material-stainless-steel = rostfreier Stahl
    .of = rostfreiem Stahl
material-polyamide = Nylon
    .of = Nylon
material-polyester = Polyester
    .of = Polyester
material-high-modulus-polymer = steifer Kunststoff
    .of = steifem Kunststoff
material-aramid = Aramid
    .of = Aramid
kind-outside = { $kind }, außen { $metal }
core-strand =
    { $layout ->
        [nineteen] eine Litze aus 19 Drähten
        [rope] ein Seil aus 7 Litzen zu je 7 Drähten
       *[seven] eine Litze aus 7 Drähten
    }, { $material }, { $across } im Durchmesser, jeder Draht { $wire }
core-bundle = ein Bündel aus etwa { $count } Fasern, { $material }, { $across } im Durchmesser, jede Faser { $filament }
core-twisted =
    gedreht, { $material }, { $across } im Durchmesser, { $twist ->
        [high] stark gedreht
       *[low] schwach gedreht
    } ({ $degrees }° an der Oberfläche)
core-single =
    { $what ->
        [wire] ein Draht
       *[filament] eine Faser
    }, { $material }, { $across } im Durchmesser
winding =
    { $metal }, { $form ->
        [round] Runddraht
       *[flat] Flachband
    }, { $thickness } dick
winding-then = { $inner }, dann { $outer }
winding-none = nichts
portrait-plain = Querschnitt, maßstäblich: { $name }, { $across } im Durchmesser. Kern: { $core }; nichts darum gesponnen.{ $note }
portrait-wound = Querschnitt, maßstäblich: { $name }, { $across } im Durchmesser. Kern: { $core }; umsponnen mit { $wound }.{ $note }
portrait-part = Von { $parts } Teilen der Fasern ist einer gezeichnet; der Rest ist gleich.
portrait-gut = Die Streifen des Darms sind nach Augenmaß gezeichnet, nicht gezählt.
