### Was zu tun ist, und warum etwas stört.

word-your-instrument-of =
    { $instrument ->
        [viola] Ihrer Bratsche
        [cello] Ihres Cellos
        [double-bass] Ihres Kontrabasses
       *[violin] Ihrer Geige
    }
leave-nothing = { $answer } Lassen Sie alles, wie es ist.
leave-it = Lassen Sie die Saiten { word-your-instrument-of }, wie sie sind.
fresh-one = Ziehen Sie eine frische { $name }-Saite derselben Art auf. Behalten Sie die anderen.
fresh-set =
    Geben Sie { $instrument ->
        [viola] Ihrer Bratsche
        [cello] Ihrem Cello
        [double-bass] Ihrem Kontrabass
       *[violin] Ihrer Geige
    } einen frischen Satz derselben Art.
luthier-first =
    Bringen Sie { $instrument ->
        [viola] Ihre Bratsche
        [cello] Ihr Cello
        [double-bass] Ihren Kontrabass
       *[violin] Ihre Geige
    } zum Geigenbauer, bevor Sie Saiten kaufen.
change-one =
    Wechseln Sie eine Saite: Nehmen Sie als { $name } eine { word-family }, Stärke { $gauge ->
        [light] dünn
        [heavy] stark
       *[medium] mittel
    }.
change-one-only = Wechseln Sie eine Saite: die { $name }-Saite.
all-the-same = Wenn Sie trotzdem wechseln wollen
after-luthier = Was wir danach aufziehen würden
complaint-of = { $complaint } ({ $name }-Saite)
complaint-line = { $complaint }: { $cause } { $advice }
stays = bleibt
not-judged = nicht beurteilt
findings-title = Was dahinter stecken kann
findings-unlikely = Weniger wahrscheinlich: { $sentences }.

## Tatsachen, die zur Antwort führten

fact-because-old = Sie ist schon so lange darauf, wie solche Saiten halten.
fact-because-not-old = Keine Saite darauf ist alt, soviel wir wissen.
fact-because-nothing-bothers = Nichts stört Sie.
fact-because-wishes = Sie wünschen einen anderen Klang oder ein anderes Gefühl.
fact-because-animal = Darm ist darauf, und Sie wollen nichts vom Tier.
fact-because-nickel = Nickel ist unter den Fingern, und Ihre Haut verträgt es nicht.
fact-because-pickup = Der Tonabnehmer hört Stahl, und was darauf ist, hat keinen im Kern.
fact-because-other-family = Sie wollten eine andere Bauart.
fact-because-retuned = Nur einige Saiten sind anders gestimmt, und nur manchmal: Die anderen können bleiben.
fact-because-no-better = Kein passender Satz ist deutlich besser als der jetzige.
fact-because-nothing-fits = Nichts, was gemacht wird, erfüllt jeden Wunsch.

## Ursachen, und was man tun kann

cause-old-string = Vielleicht ist sie alt.
    .advice = Versuchen Sie zuerst eine frische derselben Art.
cause-faulty-string = Vielleicht hat die Saite einen Fehler.
    .advice = Versuchen Sie eine andere derselben Art; heben Sie den Beleg auf.
cause-winding-open = Vielleicht ist die Umspinnung lose.
    .advice = Fahren Sie mit dem Fingernagel darüber. Hakt oder schnarrt es, wechseln Sie sie.
cause-sweat-eats-winding = Vielleicht zerfrisst Schweiß das Metall.
    .advice = Wischen Sie sie nach dem Spielen ab, und nehmen Sie ein härteres Metall.
cause-not-settled = Vielleicht ist sie noch zu neu.
    .advice = Geben Sie ihr ein paar Tage, bevor Sie urteilen.
cause-kind-too-bright = Vielleicht ist Ihnen diese Bauart zu hell.
    .advice = Ein dunklerer Kern oder ein anderes Metall hilft.
cause-kind-too-dark = Vielleicht ist Ihnen diese Bauart zu dunkel.
    .advice = Ein hellerer Kern oder ein anderes Metall hilft.
cause-tension-too-high = Vielleicht zieht sie zu stark.
    .advice = Eine geringere Stärke lässt sie atmen.
cause-tension-too-low = Vielleicht zieht sie zu wenig.
    .advice = Eine größere Stärke gibt ihr Körper.
cause-too-heavy-to-start = Vielleicht ist sie zu schwer für den Bogen.
    .advice = Eine leichtere spricht früher an.
cause-torsion-whistle = Vielleicht dreht sich der Draht unter dem Bogen.
    .advice = Eine umsponnene oberste Saite tut das kaum.
cause-near-its-limit = Vielleicht arbeitet sie zu nahe an ihrer Grenze.
    .advice = Eine festere Bauart hielte länger.
cause-thin-under-the-finger = Vielleicht ist sie so dünn, dass sie schneidet.
    .advice = Eine dickere Bauart ist freundlicher.
cause-one-stands-out = Vielleicht fällt eine Saite aus der Reihe.
    .advice = Wechseln Sie diese, damit sie zu den Nachbarn passt.
cause-core-drinks-humidity = Vielleicht nimmt ihr Kern Wasser aus der Luft auf.
    .advice = Ein Kern aus Polyester trinkt weniger, einer aus Stahl gar nicht.
cause-body-moves-it = Vielleicht bewegt sich der Korpus, und eine steife Saite folgt ihm.
    .advice = Ein elastischerer Kern bewegt sich weniger.
cause-peg-slips = Vielleicht rutscht oder klemmt der Wirbel.
    .advice = Drücken Sie ihn beim Drehen hinein. Hilft das nicht, passt ihn ein Geigenbauer ein.
cause-not-tuned = Vielleicht stimmt zwischen den Stunden niemand.
    .advice = Nehmen Sie eine stimmfestere Bauart, oder bitten Sie jemanden zu stimmen.
cause-worn-groove = Vielleicht klemmt eine Kerbe die Saite ein.
    .advice = Ein Geigenbauer kann sie nachfeilen; Bleistift allein hilft nicht.
cause-sharp-edge = Vielleicht schneidet eine Kante in die Saite.
    .advice = Fühlen Sie dort nach, wo die Saite riss. Ein Geigenbauer rundet sie ab.
cause-string-height = Vielleicht liegen die Saiten zu hoch.
    .advice = Ein Geigenbauer kann sie tiefer legen.
cause-soundpost-or-bridge = Vielleicht ist Stimmstock oder Steg nicht an seinem Platz.
    .advice = Ein Geigenbauer sieht es. Bewegen Sie ihn nicht selbst.
cause-wolf-of-the-body = Vielleicht kommt der Wolf vom Korpus selbst.
    .advice = Saiten ändern ihn wenig. Ein Geigenbauer kann ihn zähmen.
cause-rosin-or-bow-hair = Vielleicht liegt es an Bogenhaar oder Kolophonium.
    .advice = Versuchen Sie zuerst einen anderen Bogen. Das kostet nichts.
cause-bow-stroke = Vielleicht liegt es daran, wie der Bogen die Saite trifft.
    .advice = Versuchen Sie es gerader und näher am Steg.
cause-likely =
    { $likely ->
        [likely] wahrscheinlich
        [possible] möglich
        [unlikely] unwahrscheinlich
       *[other] { $likely }
    }, { $on ->
        [judged] beurteilt
       *[checked] geprüft
    }

## Zahlen, die für oder gegen eine Ursache sprechen

months =
    { $count ->
        [one] { $number }{ "\u00A0" }Monat
       *[other] { $number }{ "\u00A0" }Monate
    }
number-whose = Die { $name }-Saite:
number-of = { $property }: { $value }.
number-age = Sie ist schon { $age } darauf. Eine solche Saite hält etwa { $limit }.
number-settling = Tage, bis sie sich setzt: { $value }. Bisher darauf: { $days }.
number-step = Ihre Stufe zur nächsten Saite ist { $times }-mal so groß wie üblich.
number-tension-low = Sie zieht mit { $value }. Unter { $limit } gilt hier als wenig.
number-tension = Sie zieht mit { $value }. Über { $limit } gilt hier als viel.
number-shine-low = Ihr Glanz endet bei { $value }. Unter { $limit } ist für Ihren Wunsch dunkel.
number-shine = Ihr Glanz endet bei { $value }. Über { $limit } ist für Ihren Wunsch hell.
number-breaking = Sie nutzt { $value } ihrer Festigkeit. Über { $limit } ist harte Arbeit.
number-moisture = Mit den Jahreszeiten verstimmt sie das Wasser im Kern: { $value }. Man hört { $limit }.
number-ratchet = Feuchtere Luft als je zuvor kostet sie { $value } für immer.
number-body = Mit den Jahreszeiten verstimmt sie der Korpus: { $value }. Man hört 3 bis 5.
number-torsion = Wie steif sie gegen Drehen ist, verglichen mit dem Schwingen: { $value }. Umsponnene Saiten bleiben unter { $limit }.
number-speaks = Sie spricht binnen { $value } an. Über { $limit } gilt hier als träge.
number-wolf = Kleinster Bogendruck am Wolf, als Anteil des größten: { $value }.
number-thin = Sie ist { $value } dick. Unter { $limit } schneidet sie.
