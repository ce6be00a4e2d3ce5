### Was die Antwort sagt.

word-your-instrument-for =
    { $instrument ->
        [viola] Ihre Bratsche
        [cello] Ihr Cello
        [double-bass] Ihren Kontrabass
       *[violin] Ihre Geige
    }
# Mit „dieser“, im Genitiv.
word-this-instrument-of =
    { $instrument ->
        [viola] dieser Bratsche
        [cello] dieses Cellos
        [double-bass] dieses Kontrabasses
       *[violin] dieser Geige
    }
word-this-instrument-for =
    { $instrument ->
        [viola] diese Bratsche
        [cello] dieses Cello
        [double-bass] diesen Kontrabass
       *[violin] diese Geige
    }
families-one = durchweg { word-families }
families-part =
    { $count ->
        [one] eine { word-family } als { $strings }
       *[other] { word-families } als { $strings }
    }
one-string = eine { word-family }
either-string = als { $string } entweder { $one } oder { $other }
list-of-lists = { $first } und { $last }
gauges-one =
    Stärke { $gauge ->
        [light] dünn
        [heavy] stark
       *[medium] mittel
    }
gauges-part =
    { $gauge ->
        [light] dünnem { $strings }
        [heavy] starkem { $strings }
       *[medium] mittlerem { $strings }
    }
gauges-with = mit { $parts }
set-answer = Für { word-your-instrument-for } empfehlen wir { $strings }.
set-answer-two =
    Zwei Arten von Sätzen passen etwa gleich gut zu { $instrument ->
        [viola] Ihrer Bratsche
        [cello] Ihrem Cello
        [double-bass] Ihrem Kontrabass
       *[violin] Ihrer Geige
    }.
nothing-load = Nichts passt: Jeder Satz für { word-this-instrument-for } zieht stärker, als er sollte.
nothing-made = Nichts passt: Keine Saite, die gemacht wird, erfüllt jeden Wunsch für { $strings } { word-this-instrument-of }.
searched = Für { $strings } ließen sich { $space } Saiten machen. Nach Grenzen und Schranken blieben { $wound } zum Umspinnen und Abwägen; { $inside } davon wären gut.
lead-level = Diese beiden liegen etwa gleichauf. Nehmen Sie, welchen Sie wollen.
lead-next = Der beste Satz aus anderen Saiten, { $strings }, hat { $by } weniger Punkte.
lead-no-string = Keine andere Bauart wäre hier gut.
lead-no-set = Kein Satz anderer Bauart wäre hier gut.
unproven-by = Wir konnten nicht alle denkbaren Saiten prüfen; ein anderer Satz könnte um bis zu { $by } besser abschneiden.
unproven = Wir konnten nicht alle denkbaren Saiten prüfen; ein anderer Satz könnte besser abschneiden.
close-none = Auf der Skala unten liegt keiner der Sätze vorn.
close-by = Auf der Skala unten liegt der erste Satz um { $by } vor dem zweiten; das ist kein nennenswerter Unterschied.

## Was wir angenommen haben

assumptions = Angenommen haben wir: { $parts }.
assumed-instrument =
    { $instrument ->
        [viola] eine Bratsche
        [cello] ein Cello
        [double-bass] einen Kontrabass
       *[violin] eine Geige
    }
assumed-size = die Größe { $size }
assumed-tuning = die Stimmung { $tuning }
assumed-set-up =
    { $set_up ->
        [modern] eine moderne Einrichtung
        [historical] eine historische Einrichtung
        [light] ein altes oder leicht gebautes Instrument
       *[other] die Einrichtung { $set_up }
    }
assumed-a4 = a′ bei { $pitch }
assumed-length = eine schwingende Saitenlänge (Mensur) von etwa { $number } mm
assumed-room-steady = einen gleichmäßigen Raum
assumed-room-seasonal = einen mit den Jahreszeiten wechselnden Raum
assumed-room-damp = einen feuchten Raum
assumed-room-dry = einen trockenen Raum
assumed-room-travelling = ein Leben auf Reisen
assumed-pegs-friction = einfache Holzwirbel
assumed-pegs-geared = Getriebewirbel
assumed-pegs-machine = eine Mechanik
assumed-tuners-none = keine Feinstimmer
assumed-tuners-top = einen Feinstimmer an der obersten Saite
assumed-tuners-all = einen Feinstimmer an jeder Saite

## Last und Stufen

load-below = unter dem Üblichen
load-lower = im unteren Teil des Üblichen
load-middle = in der Mitte des Üblichen
load-upper = im oberen Teil des Üblichen
load-above = über dem Üblichen
load-title = Die Last liegt { $place }
step-much-steeper = viel steiler als üblich
step-steeper = etwas steiler als üblich
step-much-flatter = viel flacher als üblich
step-flatter = etwas flacher als üblich
step-usual = wie üblich
steps-odd =
    von { $upper } zu { $lower } { $step ->
        [much-steeper] viel steiler
        [steeper] etwas steiler
        [much-flatter] viel flacher
       *[flatter] etwas flacher
    }
steps-title = der Zug fällt { $steps } als üblich
steps-usual = Die Stufen von Saite zu Saite sind die üblichen

## Im Laden

counter-core =
    { $family ->
        [plain-gut] blanker Darm
        [wound-gut] Darmkern
        [plain-steel] blanker Stahl
        [wound-steel] Vollstahlkern
        [stranded-steel] Stahlseil- oder Litzenkern
        [synthetic] Kunststoffkern ({ $material })
        [monofilament] eine dicke Kunststofffaser
       *[other] { $family }
    }
counter-wound = , außen mit { $metal } umsponnen
counter =
    eine { $name }-Saite für { $full ->
        [yes] { $instrument ->
            [viola] Bratsche
            [cello] Cello
            [double-bass] Kontrabass
           *[violin] Geige
        }
       *[no] { $instrument ->
            [viola] eine Bratsche der Größe { $size }
            [cello] ein { $size }-Cello
            [double-bass] einen { $size }-Kontrabass
           *[violin] eine { $size }-Geige
        }
    }, { $core }{ $wound }{ $gauge }, { $class ->
        [light] dünn
        [heavy] stark
       *[medium] mittel
    }{ $end ->
        [loop-or-ball] , mit Schlinge oder Kugel, je nach Feinstimmer
        [knot] , zum Anknoten am Saitenhalter
       *[ball] , mit Kugel
    }{ $long ->
        [yes] , lang genug für die Verlängerung
       *[no] { "" }
    }
packet = etwa { $force } bei { $pitch } und { $length } Mensur

## Was ein Spieler brauchen kann

fact-pull = Gestimmt zieht sie mit { $force }.
fact-stretch = Gestimmt ist sie um { $stretch } länger als schlaff.
fact-breaking = Gestimmt nutzt sie { $share } der Festigkeit ihres Kerns.
fact-peg =
    Ein Grad am Wirbel ändert sie um { $cents }{ $tuner ->
        [yes] ; sie hat einen Feinstimmer
       *[no] { "" }
    }.
fact-settling = Zeit, bis sie sich gesetzt hat: { $days }.
fact-warmth =
    Ihre Tonhöhe { $moves }, wenn es { $untuned ->
        [evening] an einem Abend
        [week] in einer Woche
       *[season] mit den Jahreszeiten
    } warm wird.
fact-damp =
    Ihre Tonhöhe { $moves }, wenn es { $untuned ->
        [evening] an einem Abend
        [week] in einer Woche
       *[season] mit den Jahreszeiten
    } feucht wird.

## Was die Tonhöhe tut

moves-falls = fällt um { $cents }
moves-rises = steigt um { $cents }
moves-hardly = bewegt sich kaum
moves-hardly-within = bewegt sich kaum ({ $range })

## Die Bilder davon, was Elastizität kostet

picture-few =
    { $aspect ->
        [settling] Tage bis zum Setzen
        [warmth] Wärme
       *[damp] Feuchte
    }: Die Saiten, die gut wären, dehnen sich zu ähnlich, um zu sagen, was Dehnung kostet
picture-costs =
    { $aspect ->
        [settling] Mehr Dehnung kostet Zeit zum Setzen
        [warmth] Mehr Dehnung kostet Stimmhaltung bei Wärme
       *[damp] Mehr Dehnung kostet Stimmhaltung bei Feuchte
    }: bestenfalls { $stiff } bei { $from } Dehnung, { $elastic } bei { $to }
picture-level =
    { $aspect ->
        [settling] Mehr Dehnung kostet keine Zeit zum Setzen
        [warmth] Mehr Dehnung kostet nichts bei Wärme
       *[damp] Mehr Dehnung kostet nichts bei Feuchte
    }: bestenfalls { $stiff } bei { $from } Dehnung, { $elastic } bei { $to }
picture-gains =
    { $aspect ->
        [settling] Mehr Dehnung setzt sich sogar früher
        [warmth] Mehr Dehnung ist bei Wärme sogar stimmfester
       *[damp] Mehr Dehnung ist bei Feuchte sogar stimmfester
    }: bestenfalls { $stiff } bei { $from } Dehnung, { $elastic } bei { $to }
picture-between =
    { $aspect ->
        [settling] Mittlere Dehnung setzt sich am frühesten
        [warmth] Mittlere Dehnung ist bei Wärme am stimmfestesten
       *[damp] Mittlere Dehnung ist bei Feuchte am stimmfestesten
    }: { $least } bei { $at }; bestenfalls { $stiff } bei { $from }, { $elastic } bei { $to }
picture-overlap = Hier überschneiden sich: { $kinds }. Die Bauart allein entscheidet nicht.
