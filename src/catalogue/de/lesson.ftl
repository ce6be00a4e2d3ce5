### Zwei oder drei Kerne vor einer Klasse, und was in einem Kern steckt.

class-core = die { word-family }
class-kind = { word-family }
class-each = { $core } { $value }
class-for-mm = { $cents } Cent für einen Millimeter
class-for-degree = { $cents } Cent für ein Grad
class-or = { $one } oder { $other }
class-numbers = { $name }: { $each }
class-which =
    { $lead ->
        [clear] { $name }.
        [probably] Wahrscheinlich: { $name }.
        [either] Entweder { $name }: Zwischen ihnen überschneiden sich die Spannen.
       *[even] Das geben diese Zahlen nicht her: Die Spannen überschneiden sich.
    } { $numbers }.
class-context = { $instrument }, { $name }-Saite, { $length } bei { $pitch }
class-steps = Schritte der Stunde
class-back = ← Zurück
class-next = Weiter →
class-made = { $core }. Darum: { $wound }.
class-bar = { $name }, { $number }: { $value }
class-range = wohl { $low } bis { $high }
class-bars = Der Punkt ist der Wert, der Strich enthält ihn 90 Mal von 100. Wo ein Wert auf beiden Seiten der Null liegen kann, steht bei ihr ein senkrechter Strich.

class-inside-title =
    { $count ->
        [2] Zwei
       *[other] Drei
    } Arten, eine { $name }-Saite zu bauen
class-inside-lead = Quer durchgeschnitten, alle im selben Maßstab. Der Kern in der Mitte trägt den Zug; was darum gesponnen ist, macht ihn nur schwerer.
class-stretch-title =
    { $lead ->
        [clear] Alle gleich weit gezogen, und am weitesten springt { $name }: { $value }
        [probably] Alle gleich weit gezogen, und am weitesten springt wahrscheinlich { $name }: { $value }
        [either] Alle gleich weit gezogen, und am weitesten springt { $name }
       *[even] Alle gleich weit gezogen: Welche am weitesten springt, geben diese Zahlen nicht her
    }
class-stretch-lead = Ein steifer Kern antwortet dem Wirbel mit einem Sprung, ein dehnbarer mit einem Schritt.
class-answer-title =
    { $lead ->
        [clear] Auf dem Weg zum Ton dehnt sich am weitesten { $name }: { $value }
        [probably] Auf dem Weg zum Ton dehnt sich wahrscheinlich am weitesten { $name }: { $value }
        [either] Auf dem Weg zum Ton dehnt sich am weitesten { $name }
       *[even] Welche sich auf dem Weg zum Ton am weitesten dehnt, geben diese Zahlen nicht her
    }
class-answer-lead = Was sich weit dehnt, lässt dem Spieler mehr zu formen, heißt es, und kommt später zur Ruhe. Hier sind beide als Zahlen.
class-ring-reach =
    { $heard ->
        [no] über das Hörbare hinaus
       *[yes] bis { $value }
    }
class-ring-title =
    { $lead ->
        [clear] Am hellsten ist { $name }: Der Glanz reicht { $reach }
        [probably] Am hellsten ist wahrscheinlich { $name }: Der Glanz reicht { $reach }
        [either] Am hellsten ist { $name }
       *[even] Welche am hellsten ist, geben diese Zahlen nicht her
    }
class-ring-lead = Biegen und Reiben im Kern verzehren zuerst die höchsten Teiltöne. Was sie übrig lassen, ist der Glanz.
class-warmth-title =
    { $lead ->
        [clear] die Wärme eines Abends verstimmt { $name } am wenigsten: Sie { $value }
        [probably] die Wärme eines Abends verstimmt wahrscheinlich { $name } am wenigsten: Sie { $value }
        [either] die Wärme eines Abends verstimmt { $name } am wenigsten
       *[even] welche die Wärme eines Abends am wenigsten verstimmt, geben diese Zahlen nicht her
    }
class-damp-title =
    { $lead ->
        [clear] die Feuchte der Jahreszeiten verstimmt { $name } am wenigsten: Sie { $value }
        [probably] die Feuchte der Jahreszeiten verstimmt wahrscheinlich { $name } am wenigsten: Sie { $value }
        [either] die Feuchte der Jahreszeiten verstimmt { $name } am wenigsten
       *[even] welche die Feuchte der Jahreszeiten am wenigsten verstimmt, geben diese Zahlen nicht her
    }
class-air-title = { $warmth }; { $damp }
class-air-lead = Wärme und Feuchte verändern die Saite, und sie bewegen das Holz, das ihre Enden hält.
class-settle-title =
    { $lead ->
        [clear] Zuerst gesetzt hat sich { $name }: { $value }
        [probably] Zuerst gesetzt hat sich wahrscheinlich { $name }: { $value }
        [either] Zuerst gesetzt hat sich { $name }
       *[even] Welche sich zuerst gesetzt hat, geben diese Zahlen nicht her
    }
class-settle-lead = Gesetzt heißt: Eine Nacht kostet nicht mehr als fünf Cent. Bis dahin stimmt man täglich nach.

class-ear = Anhören
class-piece = Als
class-plucked = gezupft
class-bowed = gestrichene leere Saite
class-sounds = Zu hören: { $name }.
class-ear-how = Alle sind gleich laut. Der Korpus ist ein allgemeiner: Er vergleicht Saiten und sagt kein Instrument voraus.

class-questions = Fragen an die Klasse
class-ask-heavy = Welche ist die schwerste?
class-ask-peg = Welche springt am weitesten, wenn der Wirbel sich um ein Grad dreht?
class-ask-break = Welche ist dem Reißen am nächsten?
class-ask-gut = Warum ist die { $name }-Saite so selten aus blankem Darm?
class-gut-answer = Weil Darm bei { $share } dessen hinge, was ihn zerreißt. Daneben: { $others }.
class-ask-stretch = Welche dehnt sich auf dem Weg zum Ton am weitesten?
class-ask-speaks = Welche spricht beim Anstrich am schnellsten an?
class-ask-ring = Welche klingt nach dem Zupfen am längsten?
class-ask-lamps = Im Saal wird es warm. Welche verstimmt sich am meisten?
class-ask-rain = Es regnet. Welche ist am Ende des Abends am meisten verstimmt?
class-ask-body = In feuchter Luft quillt der Korpus. Welche spürt das am meisten?
class-ask-drink = Welche verstimmt das Wasser am meisten, das sie selbst aufnimmt?
class-ask-eve = Welche könnte man am kürzesten vor einem Konzert aufziehen?

class-choose = Auswählen
class-string = Saite
class-cores = Zwei oder drei Kerne
class-stop-key = Esc
class-keys = Tasten
class-keys-on = Tasten sind an
class-keys-how = → oder Bild ab geht weiter, ← oder Bild auf zurück, 1 bis 3 lassen einen Kern hören, Esc hält an. In einem Feld tut jede Taste, was sie immer tut.

inside-title = Was darin steckt, und was ein Zug daraus macht
inside-pull = Zug: so viel Saite über den Sattel gewunden, vom Ton aus gezählt
inside-number = Millimeter Zug
inside-fault = Eine Zahl von { $low } bis { $high }.
inside-value = { $mm }: { $strings }
inside-each = { $name } { $now }
inside-to-slack = Alle schlaff
inside-to-pitch = Gestimmt
inside-to-one = Einen Millimeter weiter
inside-word-slack = alle schlaff
inside-word-back = nachgelassen
inside-word-pitch = auf dem Ton
inside-word-further = weiter gespannt
inside-slack = schlaff
inside-perhaps = fast schlaff
inside-snapped = gerissen
inside-change =
    { $way ->
        [up] { $cents } Cent höher
        [down] { $cents } Cent tiefer
       *[same] auf dem Ton
    }
inside-now = { $change }; { $tension } Zug, um { $stretch } gedehnt, bei { $share } dessen, was sie zerreißt
inside-picture = { $name } von der Seite: { $now }
inside-how = Alle sind längs und quer im selben Maßstab gezeichnet: Ein Stück, das schlaff { $piece } lang ist, endet an der gestrichelten Linie. Was der Zug an Länge gibt und an Dicke nimmt, ist { $times }-mal so groß gezeichnet. Links mit Umspinnung, rechts der blanke Kern. Wie breit ein Band ist und wie viele Fasern man sieht, ist nach Augenmaß gezeichnet.
inside-before = Gestimmt zupfen
inside-after = Gezogen zupfen
