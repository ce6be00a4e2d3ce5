### Die Fragen zu einem Satz: die Frage selbst, ihr kurzer Name, warum sie gestellt wird und wie man antwortet.

question-aim = Was brauchen Sie?
    .name = Anliegen
    .why = Oft reicht eine Saite.
question-instrument = Welches Instrument?
    .name = Instrument
    .why = Es bestimmt Länge und Tonhöhe der Saiten.
question-size = Welche Größe?
    .name = Größe
    .why = Die Länge der Saite bestimmt ihre Stärke.
question-tuning = Wie ist es gestimmt?
    .name = Stimmung
    .why = Tonhöhe und Länge bestimmen zusammen den Zug.
question-temperament = Welche Temperatur?
    .name = Temperatur
    .why = Reine Quinten verschieben die äußeren Saiten um einige Cent.
question-set_up = Wie ist es eingerichtet?
    .name = Einrichtung
    .why = Alte oder leicht gebaute Instrumente sollten weniger Zug tragen.
question-now = Welche Saiten sind darauf?
    .name = Saiten jetzt
    .why = Wir vergleichen die neuen Saiten mit diesen.
question-music = Was wird gespielt?
    .name = Musik
    .why = Jeder Stil verlangt etwas anderes.
question-played = Wird es meist gestrichen oder gezupft?
    .name = Gestrichen oder gezupft
    .why = Ein gezupfter Ton muss von selbst klingen.
question-ring = Wie soll ein gezupfter Ton klingen?
    .name = Nachklang
    .why = Darm klingt kurz nach, Stahl lange.
question-amplified = Wie wird es verstärkt?
    .name = Verstärkung
    .why = Ein magnetischer Tonabnehmer hört nur Stahl.
question-belongs_to = Wem gehört es?
    .name = Besitz
    .why = Saiten einer Schule oder eines Leihinstruments müssen lange halten.
question-tuned_so = Ist es immer so gestimmt?
    .name = Seltene Stimmung
    .why = Ist es für immer, sind die Saiten für diese Töne gemacht.
question-most-load = Wie stark dürfen alle Saiten zusammen ziehen?
    .name = Größter Gesamtzug
    .why = Geben Sie sie an, wenn ein Geigenbauer eine Grenze gesetzt hat.
    .hint = Keine Grenze? Dann leer lassen.
question-most-tension = Darf höchstens ziehen
    .name = Größter Zug einer Saite
question-level = Wie lange spielen Sie schon?
    .name = Können
    .why = Wer anfängt, braucht Saiten, die die Stimmung halten.
question-pegs = Womit wird gestimmt?
    .name = Wirbel
    .why = Steife Saiten brauchen feine Schritte beim Stimmen.
question-tuners = Welche Saiten haben Feinstimmer?
    .name = Feinstimmer
    .why = Stahlsaiten brauchen Feinstimmer oder Getriebewirbel.
question-who_tunes = Wer stimmt zwischen den Stunden?
    .name = Wer stimmt
    .why = Was bis zur nächsten Stunde niemand stimmt, muss die Tonhöhe halten.
question-room = Wie ist die Luft?
    .name = Wo es aufbewahrt wird
    .why = Feuchte und Wärme ändern die Tonhöhe.
question-budget = Was darf es kosten?
    .name = Preis
    .why = Teurer ist nicht immer besser.
question-length = Wie lang ist die schwingende Saitenlänge (Mensur)?
    .name = Mensur
    .why = Ein gemessener Wert macht jede Spanne enger.
    .hint = Vom Sattel zum Steg, entlang der äußeren Saite. Leer lassen? Dann gilt die übliche Länge dieser Größe.
question-a4 = Wie hoch ist a′?
    .name = Höhe von a′
    .why = Je höher die Stimmung, desto größer der Zug.
    .hint = Unbekannt? Dann leer lassen.
question-age = Wie alt sind sie?
    .name = Alter
    .why = Vielleicht reicht ein frischer Satz derselben Art.
question-days = Tage ab heute
    .name = Nächstes Konzert
question-also-a4 = Ein anderes a′
    .name = Andere Höhe von a′
question-also-semitones = Wie weit über der Hauptstimmung
    .name = Andere Stimmung
    .hint = 2 für einen Ganzton höher, −1 für einen Halbton tiefer.
question-age-of = Wie alt sie ist
    .name = Alter der Saite
question-concert = Wann ist Ihr nächstes Konzert?
    .name = Nächstes Konzert
    .why = Neue Saiten brauchen Tage, bis sie sich gesetzt haben.
question-bothers = Was stört Sie?
    .name = Beschwerden
    .why = Nicht jede Beschwerde braucht neue Saiten.
question-wishes = Was möchten Sie ändern?
    .name = Wünsche
    .why = Jeder Wunsch hat seinen Preis.
question-flags = Trifft etwas davon zu?
    .name = Besonderes
    .why = Es schließt manche Saiten aus.
question-also-tuned = Werden dieselben Saiten auch anders gestimmt?
    .name = Andere Tonhöhe
    .why = Die höchste Stimmung bestimmt, was sie tragen müssen.
    .hint = Nur eine Stimmung: beides leer lassen.
question-strings = Gibt es zu einer Saite mehr zu sagen?
    .name = Saite für Saite
    .why = Für gemischte Sätze, seltene Stimmungen oder eine Saite, die stört.
question-weights = Ein Gewicht selbst setzen?
    .name = Gewichte
    .why = Die Antworten ändern die Gewichte; eine Zahl hier gilt stattdessen.

label-ask = Ein Name für diesen Satz
label-hint = Ein Pult oder ein Instrument, etwa „Pult 3, Bratsche“. Er bleibt auf diesem Gerät.
date-ask = Oder das Datum
unknown = Weiß ich nicht

## Überschriften des kurzen Weges

path-instrument = Das Instrument
path-strings = Seine Saiten jetzt
path-wishes = Beschwerden und Wünsche
path-player = Musik und Spiel
path-tuning = Das Stimmen
path-room = Wo es aufbewahrt wird
path-concert = Das nächste Konzert
path-needs = Preis und Haut

## Überschriften der Seite mit allem

part-instrument = Instrument
part-pitch = Tonhöhe
part-now = Saiten, die jetzt darauf sind
part-strings = Saite für Saite
part-wishes = Wünsche
part-player = Spieler
part-place = Wirbel und Ort
part-needs = Besonderes
part-weights = Gewichte

## Wörter zur Auswahl

choice-aim-one-string = Eine Saite
choice-aim-whole-set = Der ganze Satz
choice-aim-is-it-time = Ist es Zeit?
choice-temperament-equal = Gleichstufig
choice-temperament-pure-fifths = Reine Quinten
choice-set_up-modern = Modern
choice-set_up-historical = Historisch
choice-set_up-light = Alt oder zart
choice-now-gut = Darm
choice-now-synthetic = Kunststoff
choice-now-steel = Stahl
choice-music-classical = Klassik
choice-music-early = Alte Musik
choice-music-folk = Volksmusik
choice-music-jazz = Jazz
choice-played-bowed = Meist gestrichen
choice-played-plucked = Meist gezupft
choice-played-both = Beides
choice-ring-short = Kurz
choice-ring-long = Lange
choice-amplified-magnet = Magnetischer Tonabnehmer
choice-amplified-bridge = Tonabnehmer im Steg
choice-amplified-microphone = Mikrofon
choice-belongs_to-player = Dem Spieler
choice-belongs_to-school = Einer Schule
choice-belongs_to-loan = Geliehen
choice-tuned_so-for-good = Immer
choice-tuned_so-sometimes = Nur manchmal
choice-level-beginner = Am Anfang
choice-level-student = Im Unterricht
choice-level-advanced = Fortgeschritten
choice-level-professional = Im Beruf
choice-pegs-friction = Holzwirbel
choice-pegs-geared = Getriebewirbel
choice-pegs-machine = Mechanik
choice-tuners-none = Keine
choice-tuners-top = Oberste Saite
choice-tuners-all = Jede Saite
choice-who_tunes-player = Wer spielt
choice-who_tunes-adult = Ein Erwachsener
choice-who_tunes-nobody = Niemand
choice-room-steady = Immer gleich
choice-room-seasonal = Geheizte Winter, warme Sommer
choice-room-damp = Feucht
choice-room-dry = Trocken
choice-room-travelling = Es reist
choice-budget-modest = Wenig
choice-budget-middle = Das Übliche
choice-budget-any = Das Beste

## Instrumente und Stimmungen, im Satz und als Wort zur Auswahl

instrument-violin = Geige
instrument-viola = Bratsche
instrument-cello = Cello
instrument-double-bass = Kontrabass

## Wünsche: die Enden, was man im Unterricht dazu sagen könnte, und ein Schritt zu jedem hin

wish-colour-low = stimmfest
    .said = Sie hält die Stimmung.
    .more = stimmfester
wish-colour-high = farbig
    .said = Jeder Strich klingt anders.
    .more = farbiger
wish-brightness-low = dunkel
    .said = Wie eine tiefe Stimme.
    .more = dunkler
wish-brightness-high = hell
    .said = Wie ein Glöckchen.
    .more = heller
wish-power-low = sanft
    .said = Sie singt im kleinen Raum.
    .more = sanfter
wish-power-high = kräftig
    .said = Man hört sie ganz hinten.
    .more = kräftiger
wish-feel-low = weich
    .said = Die Finger tun fast nichts.
    .more = weicher
wish-feel-high = fest
    .said = Sie hält dagegen.
    .more = fester
wish-response-low = breit
    .said = Ich lehne mich hinein.
    .more = breiter
wish-response-high = flink
    .said = Sie spricht sofort an.
    .more = flinker
wish-like-now = wie jetzt
wish-a-little = etwas { $more }
wish-much = viel { $more }
wish-name = Wunsch von { $low } bis { $high }
wish-ends = { $low } oder { $high }
wish-slider = Von { $low } bis { $high }
wish-number = Von { $low } (−2) bis { $high } (2), als Zahl

## Was stören kann

bother-too-bright = Zu hell
bother-thin = Dünn
bother-too-dull = Zu dumpf
bother-too-quiet = Zu leise
bother-slow-to-speak = Spricht träge an
bother-chokes = Erstickt unter Druck
bother-whistles = Pfeift
bother-wolf = Wolfston
bother-out-of-tune = Verstimmt
bother-goes-flat = Sinkt ab
bother-breaks = Reißt
bother-breaks-at-the-peg = Reißt am Wirbel
bother-false = Klingt quintenunrein
bother-hard-on-the-hand = Hart für die Hand
bother-uneven = Ungleiche Saiten
bother-only-on = { $bother }, nur auf

## Was zutreffen kann, und sein kurzer Name

flag-nickel_allergy = Nickel reizt die Haut
    .name = Nickelallergie
flag-acid_sweat = Schweiß zerfrisst Saiten
    .name = Saurer Schweiß
flag-animal_free = Nichts vom Tier
    .name = Ohne Tierisches
flag-hand_pain = Die Hand schmerzt
    .name = Schmerzen in der Hand
flag-gut_to_its_limit = Blanker Darm oben, auch wenn er oft reißt
    .name = Darm bis an die Grenze
flag-must_settle = Der Satz muss sich bis zum Auftritt gesetzt haben
    .name = Rechtzeitig gesetzt

## Bauarten und Stärken zur Auswahl, und wie sie in einer Aufzählung stehen

kind-plain-gut = Blanker Darm
    .listed = blanker Darm
kind-wound-gut = Umsponnener Darm
    .listed = umsponnener Darm
kind-plain-steel = Blanker Stahl
    .listed = blanker Stahl
kind-wound-steel = Vollstahl, umsponnen
    .listed = umsponnener Vollstahl
kind-stranded-steel = Stahlseil
    .listed = Stahlseil
kind-synthetic = Kunststoff
    .listed = Kunststoffkern
kind-monofilament = Monofil
    .listed = Monofil
gauge-light = Dünn
    .listed = dünn
gauge-medium = Mittel
    .listed = mittel
gauge-heavy = Stark
    .listed = stark

## Gewichte

weight-feel = Gefühl unter der Hand
weight-elasticity = elastischer Kern
weight-settling = setzt sich schnell
weight-warmth = Stimmhaltung bei Wärme
weight-damp = Stimmhaltung bei Feuchte
weight-response = schnelle Ansprache
weight-bow-room = Spielraum für den Bogen
weight-power = Kraft
weight-brightness = Helligkeit wie gewünscht
weight-ring = Nachklang eines gezupften Tons
weight-durability = Reserve bis zum Reißen
weight-care = verträgt Hände und Schweiß
weight-price = Preis
weight-availability = leicht zu bekommen
weight-tuning = leicht zu stimmen
weight-name = Gewicht: { $weight }
weight-usual = Üblich: { $number }
weights-summary = { $count } Gewichte, jedes von 0 bis 10

## Was ohne Antwort gilt

usual-now = Nichts zum Vergleichen
usual-music = Klassik
usual-played = Meist gestrichen, im Jazz gezupft
usual-ring = Gleichgültig
usual-amplified = Gar nicht
usual-belongs_to = Dem Spieler
usual-tuned_so = Nur manchmal
usual-most-load = Das Übliche für die Größe
usual-level = Jedes
usual-who_tunes = Jemand tut es
usual-length = { $number } mm und eine breitere Spanne
usual-a4 = { $number } Hz
usual-concert = Kein Datum
usual-bothers = Nichts
usual-wishes = Alles wie jetzt
usual-flags = Nichts davon
usual-age = Nicht alt
usual-also-tuned = Nur diese
usual-strings = Die Töne der Stimmung, jede Bauart
usual-weights = Sie folgen aus den Antworten

## Eine Saite

string-legend = { $note }-Saite
string-note-hint = Ein leeres Feld behält den Ton der Stimmung.
string-note = Gestimmt auf
string-kind = Gewünschte Bauart
string-any-kind = Jede Bauart
string-now = Was jetzt darauf ist, und was daran stört
string-now-of = : { $note }-Saite
string-kind-now = Bauart jetzt
string-gauge-now = Stärke jetzt
string-metal-now = Metall außen
string-stays = Sie bleibt
string-stays-ask = Bleibt sie?
string-bothers = Was stört an ihr?

## Einheiten, in denen man tippen kann

unit-typed-mm = mm
unit-typed-in = Zoll
unit-typed-months = Monate
unit-typed-years = Jahre
unit-typed-Hz = Hz
unit-typed-N = N
unit-typed-kg = kg
unit-typed-lb = lb
unit-typed-semitones = Halbtöne
unit-typed-days = Tage
unit-of = Einheit zu: { $question }

## Was an einer Antwort nicht stimmt

range-of = { $low } bis { $high }
fault-number = { $name }: „{ $typed }“ ist keine Zahl. Erlaubt ist { $range }.
fault-outside = { $name }: { $typed } liegt außerhalb von { $range }.
fault-choice = { $name }: „{ $typed }“ gehört nicht zu den Antworten. Möglich sind { $choices }.
fault-note = Ton der { $note }-Saite: „{ $typed }“ ist kein Ton. Schreiben Sie einen Buchstaben, # oder b und die Oktave, etwa { $note } oder Bb3.
fault-refused = { $name }: { $typed } ist nicht erlaubt. Möglich ist { $allowed }.
fault-nothing = nichts
fault-field-note = Ton
fault-field-family = Art der Saite
fault-field-filament_m = Faserdicke
fault-allowed-family = eine Art, für diese Saite oder für den ganzen Satz: Was bleiben soll, muss bekannt sein
fault-allowed-filament_m = höchstens ein Drittel der Kernstärke
fault-date = { $name }: „{ $typed }“ ist kein Datum. Möglich ist eines wie { $date }.
fault-past = { $name }: Der { $date } ist vorbei. Möglich ist heute oder ein späterer Tag.
fault-far = { $name }: Der { $date } liegt zu weit weg. Möglich ist ein Tag bis zum { $last }.
faults-title =
    { $count ->
        [one] Eine Antwort ist noch nicht brauchbar
       *[other] { $count } Antworten sind noch nicht brauchbar
    }

## Die Antworten in Worten

said-tuned = gestimmt auf { $note }
said-under = außen { $metal }
said-age = { $months } Monate alt
said-now = jetzt { $what }
said-stays = sie bleibt
said-most = höchstens { $most }
said-concert =
    { $days ->
        [one] In { $number } Tag, am { $date }
       *[other] In { $number } Tagen, am { $date }
    }

## Stimmungen, nach Instrument; das englische B ist im Deutschen ein H

tuning-violin-standard = G D A E
tuning-violin-five-string = C G D A E
tuning-violin-cross-a = A E A E (Skordatur)
tuning-viola-standard = C G D A
tuning-viola-half-tone-up = einen Halbton höher
tuning-cello-standard = C G D A
tuning-cello-five-string = C G D A E
tuning-cello-a-down = C G D G (oberste Saite einen Ton tiefer)
tuning-double-bass-orchestra = E A D G
tuning-double-bass-solo = Fis H E A (Solo)
tuning-double-bass-fifths = C G D A (Quinten)
tuning-double-bass-c-extension = E A D G mit C-Verlängerung
tuning-double-bass-low-b = H E A D G
tuning-double-bass-low-c = C E A D G
tuning-double-bass-high-c = E A D G C
tuning-double-bass-viennese = A D Fis A (Wiener)

# Eine Größe der Bratsche: die Länge ihres Korpus.
size-inches = { $number } Zoll
