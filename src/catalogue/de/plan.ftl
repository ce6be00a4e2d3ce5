### Was zu tun, zu prüfen und zu beachten ist.

## Vorsicht

caution-eyes = Eine gespannte Saite kann reißen und schneiden, und ihre Enden sind spitz. Tragen Sie eine Schutzbrille, halten Sie das Gesicht fern, und schneiden Sie nie eine gespannte Saite durch.
caution-one-at-a-time = Ohne den Druck der Saiten kann der Stimmstock fallen: Wechseln Sie eine Saite nach der anderen. Sperrt sich der Steg oder fällt der Stimmstock, bewegen Sie nichts selbst, sondern gehen Sie zum Geigenbauer.
caution-not-above-pitch = Stimmen Sie nie über die geplante Tonhöhe hinaus.
caution-do-not-tension = Spannen Sie kein Instrument mit einem Riss, einer offenen Naht, einem losen Griffbrett oder einem umgefallenen Stimmstock. Öffnet sich etwas am gespannten Instrument, lassen Sie alle Saiten gleichmäßig ein wenig nach und bringen es zum Geigenbauer.
caution-adult-fits = Die Saiten eines Kindes zieht ein Erwachsener auf. Lassen Sie es sich beim ersten Mal zeigen.
caution-luthier-first = Das Instrument ist alt, zart oder wertvoll: Fragen Sie einen Geigenbauer, bevor Sie etwas aufziehen.
caution-steel-for-gut = Dieser Satz bringt Stahl, wo Darm war. Instrument und Saitenhalter sind vielleicht nicht dafür gemacht: Fragen Sie zuerst einen Geigenbauer.
caution-load-near-top = Der Satz zieht nahe am oberen Ende dessen, was für ein solches Instrument üblich ist. Fragen Sie einen Geigenbauer, ob Ihres das trägt.
caution-gut-near-limit = Dieser Darm arbeitet nahe an seiner Grenze und wird ab und zu reißen. Stimmen Sie ihn langsam hoch, später nie höher, auf Reisen tiefer, und halten Sie Ersatz bereit.
caution-tuned-up = In der höheren Stimmung zieht der Satz stärker: ein Viertel mehr für einen Ganzton. Fragen Sie einen Geigenbauer, und stimmen Sie danach wieder herunter.
caution-kept-near-breaking = In der höchsten Stimmung ist diese Saite näher am Reißen, als sie sollte. Wechseln Sie auch sie, oder stimmen Sie nicht hinauf.
caution-far-from-usual-note = Sie ist weit von dem Ton gestimmt, für den solche Saiten gemacht werden; darum weiß man weniger über sie.
caution-not-settled-in-time = Bis zu dem Tag wird sie sich nicht gesetzt haben. Ziehen Sie später auf, oder nehmen Sie einen anderen Satz.
caution-may-not-settle-in-time = Vielleicht hat sie sich bis zu dem Tag nicht gesetzt. Planen Sie Zeit zum Stimmen ein.
caution-luthier-decides = Das Programm rät; ein Geigenbauer, der das Instrument sieht, entscheidet.

## Beim Einrichten zu prüfen

check-grooves = Kerben in Sattel und Steg: Die neue Saite soll darin liegen, weder geklemmt noch lose. Bei einer ausgeschlagenen Kerbe, einem faserigen Henkel oder einem verzogenen oder gerissenen Steg erst zum Geigenbauer.
check-graphite = Weicher Bleistift in den Kerben lässt die Saite gleiten.
check-protector = Pergament oder ein Saitenschlauch unter der dünnen obersten Saite verhindert, dass sie in den Steg einschneidet.
check-fine-tuner = Der Wirbel stimmt diese Saiten nur grob: Es braucht einen Feinstimmer oder Geduld.
check-height = Die Art des Kerns ändert sich, also schwingen die Saiten vielleicht weiter oder enger: Prüfen Sie ihre Höhe über dem Griffbrett.
check-bridge-and-post = Der Steg steht gerade, der Stimmstock an seinem Platz: vorher, währenddessen und nachher.
check-pegbox-wall = Die Umspinnung soll nicht an die Wand des Wirbelkastens gepresst werden.
check-keep-old-set = Bewahren Sie den alten Satz auf: Er ist der Weg zurück und ein Ersatz.
check-long-string = Die tiefste Saite läuft über die Verlängerung: Sie muss die längere Ausführung sein.

## Warum etwas ausgelassen wurde: ausgelassen, weil sie …

limit-not-makeable = sich nicht herstellen lassen
limit-animal = vom Tier kommen
limit-nickel = Nickel unter den Fingern haben
limit-same-fault = auf dieselbe Weise stören würden
limit-pickup = keinen Stahl für den Tonabnehmer haben
limit-other-family = von anderer Art sind, als Sie wollten
limit-nobody-makes-it = unseres Wissens niemand macht
limit-tension = stärker oder schwächer ziehen würden als alles, was hier gemacht wird, oder stärker, als Sie erlauben
limit-gauge = dünner oder dicker sind als alles, was hier gemacht wird
limit-stretch = sich mehr oder weniger dehnen als alles, was hier gemacht wird
limit-winding-share = mehr oder weniger Umspinnung tragen als alles, was hier gemacht wird
limit-breaking = dem Reißen zu nahe sind
limit-not-settled = sich bis zu dem Tag vielleicht nicht setzen
limit-needs-fine-tuner = sich mit dem Wirbel allein nicht stimmen lassen, und es gibt keinen Feinstimmer

## Wünsche, auf die man verzichten könnte

relax-animal_free = nichts vom Tier
relax-nickel_allergy = kein Nickel unter den Fingern
relax-amplified = Stahl für den magnetischen Tonabnehmer
relax-strings = die Bauart, der Ton oder die Grenze, die Sie für einzelne Saiten nannten
relax-gut_to_its_limit = kein blanker Darm nahe am Reißen
relax-must_settle = dass sich der Satz bis zu dem Tag gesetzt haben muss
relax-also_tuned = die andere Tonhöhe, auf die das Instrument gestimmt wird
relax-most_load_n = die Grenze für alle Saiten zusammen
