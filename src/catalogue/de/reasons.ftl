### Warum diese Saite: was die Wahl gewogen hat.

## Was gewogen wird

attribute-feel = Gefühl unter der Hand
    .means = Zug nahe an dem, was Hand und Bogen gewohnt sind
attribute-elasticity = Elastizität
    .means = die Fachleute hören in einem elastischen Kern mehr Farbe; das ist ihr Urteil
attribute-settling = schnelles Setzen
    .means = wenige Tage, bis eine Nacht nicht mehr als fünf Cent kostet
attribute-warmth = Stimmhaltung bei Wärme
    .means = ihre Tonhöhe fällt oder steigt wenig, wenn es warm wird und niemand stimmt
attribute-damp = Stimmhaltung bei Feuchte
    .means = ihre Tonhöhe fällt oder steigt wenig, wenn es feucht wird und niemand stimmt
attribute-response = Ansprache unter dem Bogen
    .means = ein sauberer Ton steht bald, bei vielen Strichen
attribute-bow-room = Spielraum für den Bogen
    .means = leichte wie harte Striche klingen sauber
attribute-power = Kraft
    .means = eine Anregung des Stegs nahe am Gewünschten
attribute-brightness = Helligkeit
    .means = Helligkeit nahe am Gewünschten
attribute-ring = Nachklang
    .means = wie lange ein gezupfter Ton nachklingt
attribute-durability = Reserve bis zum Reißen
    .means = Reserve bis zum Reißen
attribute-care = Beständigkeit gegen Hände und Schweiß
    .means = eine Außenseite, die sich unter den Fingern langsam abnutzt
attribute-price = Preis
    .means = nicht mehr, als ausgegeben werden darf
attribute-availability = Erhältlichkeit
    .means = die meisten Geschäfte sollten sie haben oder bestellen können
attribute-tuning = feines Stimmen
    .means = der Wirbel oder ein Feinstimmer ändert die Tonhöhe in kleinen Schritten

## Die Antwort, die ein Gewicht änderte

because-wishes-colour = was Sie über Farbe und Stimmhaltung sagten
because-wishes-brightness = was Sie über Helligkeit sagten
because-wishes-power = was Sie über Kraft sagten
because-wishes-feel = was Sie über das Gefühl sagten
because-wishes-response = was Sie über die Ansprache sagten
because-set_up = die Einrichtung
because-level = wie lange schon gespielt wird
because-who_tunes = niemand stimmt zwischen den Stunden
because-room = wo es lebt
because-concert_days = der Tag ist nah
because-budget = der Preis
because-music = die Musik
because-played = es wird gezupft
because-ring = was Sie über den Nachklang sagten
because-bothers = Saiten reißen
because-bothers-chokes = sie erstickt, wenn man drückt
because-acid_sweat = Schweiß, der Metall zerfrisst
because-hand_pain = die Hand schmerzt

## Worauf ein Satz ruht

computed-very-likely = berechnet, sehr wahrscheinlich
computed-likely = berechnet, wahrscheinlich
computed-close-call = berechnet, knapp
computed = berechnet
judgement = Urteil

## Gründe und Kosten

judged-availability =
    { $cost ->
        [yes] Schwerer zu kaufen: Sie wird nur manchmal gemacht und muss vielleicht bestellt werden.
       *[no] Leichter zu kaufen: Sie wird jeden Tag gemacht.
    }
judged-buying =
    { $cost ->
        [yes] Schwerer zu kaufen.
       *[no] Leichter zu kaufen.
    }
judged-price =
    { $cost ->
        [yes] Ihr Material kostet mehr.
       *[no] Ihr Material kostet weniger.
    }
judged-other =
    { $cost ->
        [yes] Weniger gut
       *[no] Besser
    }: { $attribute }.
different = anders
further-from-wanted = weiter weg vom Gewünschten
nearer-to-wanted = näher am Gewünschten
compared = { $word }: { $this }, die andere { $other }.
compared-elasticity = { $word } und { $wanted }: Gestimmt dehnt sie sich um { $this }, die andere um { $other }.
compared-settling = { $word }: { $this }, die andere { $other }.
compared-warmth = { $word }: { $this }, die andere { $other }.
compared-damp = { $word }: { $this }, die andere { $other }.
compared-feel = { $word } unter der Hand und { $wanted }: { $this }, die andere { $other }.
compared-power = { $word } und { $wanted }: { $this } am Steg, die andere { $other }.
compared-brightness =
    { $word } und { $wanted }: Ihr Glanz endet bei { $this }, der der anderen bei { $other }{ $heard ->
        [no] , beides über dem Hörbaren
       *[yes] { "" }
    }.
compared-tuning = { $word }: Ein Grad am Wirbel ändert sie um { $this }, die andere um { $other }.
compared-response = { $word }: binnen { $this }, die andere binnen { $other }.
compared-bow-room =
    { $word }: { $apart } dB { $by ->
        [more] mehr
       *[less] weniger
    } zwischen dem leichtesten und dem härtesten sauberen Strich.
compared-ring = { $word }: { $this }, bis ein gezupfter Ton verklungen ist, die andere { $other }.
compared-durability = { $word }: Sie nutzt { $this } ihrer Festigkeit, die andere { $other }.
weakest-durability = Ihr schwächster Punkt ist die Reserve: Gestimmt nutzt sie { $number } ihrer Festigkeit.
weakest-elasticity = Ihr schwächster Punkt ist die Elastizität: Gestimmt dehnt sie sich um { $number }, weit von dem, was gewünscht ist.
weakest-of = Ihr schwächster Punkt: { $attribute }. { $property }: { $number }.
weakest = Ihr schwächster Punkt: { $attribute }.
more = mehr
less = weniger
alike = etwa gleich
rather = { $word }, falls man es merkt
undecided = lässt sich nicht sagen
