### Was um die Räume herum steht, und in den Räumen vor dem Satz.

name = Ropewalk
window-title = { $room } · Ropewalk
skip = Zum Inhalt
rooms = Bereiche
room-fit = Besaiten
room-compare = Vergleichen
room-questions = Fragen
room-everything = Alles
room-set = Der Satz
room-sources = Quellen
room-class = Kerne vor der Klasse
room-glossary = Wörter
room-specimen = Musterblatt
foot-sources = Woher die Zahlen kommen
class-open = Kerne vor der Klasse zeigen
foot-glossary = Wörter des Fachs
foot-specimen = Über diese Seite
foot-advises = Das Programm rät; ein Geigenbauer, der das Instrument sieht, entscheidet.
foot-private = Alles wird auf diesem Gerät berechnet, und nichts verlässt es.
lost = Unter dieser Adresse gibt es keine Seite. Dies ist die erste.
undo = Rückgängig
close = Schließen

## Wege weiter und zurück

back = Zurück
continue = Weiter
find = Saiten finden
stop = Anhalten
change = Ändern
answer = Antworten
open = Öffnen
remove = Entfernen
try-again = Noch einmal versuchen
load-again = Seite neu laden
check-answers = Antworten prüfen
screen-of = { $screen } von { $all }

## Die Vordertür

home-title = Finden Sie Saiten, die zu Instrument und Spieler passen, und sehen Sie, warum.
home-go-on = Weiter mit { $name }
home-afresh = Neu beginnen
home-path = Ein paar Fragen beantworten
    .more = Acht kurze Seiten, drei Minuten. „Weiß ich nicht“ ist immer eine Antwort.
home-everything = Für die Werkbank: gemessene Mensur, Stimmung, jede Saite, Gewichte.
home-class = Für den Unterricht: vier Kerne nebeneinander, gezeichnet, zu hören und verglichen.
home-just = Gleich einen Satz zeigen
home-open = Eine gespeicherte Datei öffnen
home-not-opened = Nicht geöffnet: { $reason }.
home-private = Nichts, was Sie tippen, verlässt dieses Gerät.
home-kept = Auf diesem Gerät aufbewahrt
home-kept-none = Hier steht ein Satz, sobald Sie darunter „Aufbewahren“ gedrückt haben, und lässt sich mit allen Antworten wieder öffnen.
home-invent = Drei erfundene Sätze zeigen
home-invented = Erfunden, zum Ansehen
home-invented-about = Eine Werkstatt in einer kleinen Hafenstadt betreut die Instrumente eines Jugendorchesters. Das alles ist erdacht, und nichts davon gehört Ihnen.
home-uninvent = Die erfundenen Sätze entfernen
home-undo = Die letzte Änderung lässt sich rückgängig machen.
home-others = In einem anderen Tab begonnen
home-others-about = Diese Antworten gehören zu einem anderen Tab oder zu einem, der geschlossen wurde. Wenn Sie sie öffnen, ziehen sie hierher um; was Sie gerade beantworten, wird unten aufbewahrt.
home-unreadable = Aufbewahrt, aber nicht lesbar
home-unreadable-about = Es bleibt, wie es ist, bis Sie es entfernen. Speichern Sie es in eine Datei, um es anzusehen oder mit einer anderen Fassung dieser Seite zu öffnen.
unread-set = Ein aufbewahrter Satz
unread-answers = Antworten
unread-undo = Ein früherer Stand der Antworten
unread-later = Eine neuere Fassung dieser Seite hat es geschrieben.
unread-damaged = Es ist beschädigt.
unread-save = In eine Datei speichern
invented-desk-3-viola = Pult 3, Bratsche 15{ "\u00A0" }Zoll (erfunden)
invented-desk-1-violin = Pult 1, Geige 3/4 (erfunden)
invented-desk-2-cello = Pult 2, Cello (erfunden)
offline-ready = Auch ohne Netz bereit.
offline-newer = Eine neuere Version ist da.
offline-newer-elsewhere = Ein anderer Tab verwendet schon eine neuere Version.
offline-use = Jetzt verwenden
offline-impossible = Dieser Browser bewahrt die Seite nicht für die Zeit ohne Netz auf.
offline-failed = Die Seite ist nicht für die Zeit ohne Netz aufbewahrt: { $reason }.

## Alle Fragen, und die Liste der Antworten

everything-title = Alles auf einer Seite
everything-lead = Lassen Sie aus, was Sie nicht wissen: Die Spanne wird breiter, und nichts hält Sie auf.
check-title = Ihre Antworten prüfen
check-nothing = Noch ist nichts gesagt. Ein Satz lässt sich trotzdem finden.
check-unsaid = Nicht gesagt: Wir nehmen das Übliche
check-sharpen = Jede dieser Antworten macht das Ergebnis genauer.

## Während ein Satz gesucht wird

finding-title = Saiten werden gesucht
finding-not-yet = Noch nicht
finding-busy = Ein Satz wird berechnet.
finding-stopped = Angehalten. Die Antworten bleiben.
finding-failed = Es gibt keine Antwort: { $reason }. Ihre Antworten bleiben.
finding-earlier = Unten steht der Satz zu Ihren früheren Antworten.
not-saved = Nicht gespeichert: { $reason }.

## Was geschehen ist

told-empty = Die Antworten sind wieder leer.
told-put-by = Das sind die Antworten zu diesem Satz. Was vorher hier stand, ist auf der ersten Seite aufbewahrt.
told-invented = Drei erfundene Sätze stehen unten. Was Ihnen gehört, ist wie zuvor.
told-uninvented = Die erfundenen Sätze sind fort. Was Ihnen gehört, ist wie zuvor.
told-reopened = Das sind die Antworten zu diesem Satz.
told-removed = „{ $name }“ ist entfernt.
told-undone = Rückgängig gemacht. Noch einmal stellt es wieder her.
told-unreadable = Etwas von dem Aufbewahrten lässt sich nicht lesen. Es ist auf der ersten Seite aufgeführt.
told-open = { $name } ist geöffnet.
told-added = Aufbewahrte Sätze hinzugefügt: { $count }.
told-had = Was vorher hier stand, ist auf der ersten Seite aufbewahrt.
told-half-open = { $name } ist geöffnet, aber nicht alles war lesbar: { $notes }.
told-not-open = { $name } wurde nicht geöffnet: { $reason }. Nichts hat sich geändert.
told-taken = Ein anderer Tab hat die Antworten geändert, und dieser hat sie übernommen.
told-kept = Auf diesem Gerät aufbewahrt. Zu finden auf der ersten Seite.
summary-line = { $note }: { $family }, { $gauge }, { $force }

## Sprache

language-label = Sprache
language-failed = Die Texte dieser Sprache waren nicht zu bekommen.
language-missing = Die Texte Ihrer Sprache waren nicht zu bekommen, darum ist die Seite vorerst englisch. Laden Sie sie neu, wenn wieder ein Netz da ist.
room-mute = Was dort steht, war nicht zu bekommen. Laden Sie die Seite neu, wenn wieder ein Netz da ist.
length-label = Längen in
force-label = Kräfte in
warmth-label = Wärme in
habit-mm = Millimetern
habit-in = Zoll
habit-N = Newton
habit-kg = Kilogramm
habit-lb = Pfund
habit-C = °C
habit-F = °F

## Die vier Kerne an der Vordertür

cores-title = Vier Kerne im Querschnitt, in einem Maßstab
cores-gut = Blanker Darm
    .means = vielschichtig und warm; spürt jedes Wetter
cores-solid = Vollstahl
    .means = gebündelt und kräftig; setzt sich sofort
cores-synthetic = Kunststoffbündel
    .means = nahe am Darm; bei Feuchte ruhiger
cores-strand = Stahlseil
    .means = Stahl, der etwas mehr nachgibt
