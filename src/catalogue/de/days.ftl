### Wie sich eine Saite von Tag zu Tag setzt.

very-likely = sehr wahrscheinlich
likely = wahrscheinlich
close-call = knapp
unlikely = unwahrscheinlich
very-unlikely = sehr unwahrscheinlich
of-hundred = { $number } von 100
over-of-hundred = über { $number } von 100
under-of-hundred = unter { $number } von 100
over = über { $number }
under = unter { $number }
cents = Cent
value-within = { $value } ({ $range })
value-about = etwa { $value } ({ $range })
on-day =
    { $day ->
        [1] am ersten Tag
       *[other] am { $day }. Tag
    }
days-very = die { $name }-Saite hat sich { $day } sehr wahrscheinlich gesetzt
days-both = die { $name }-Saite hat sich { $day } wahrscheinlich gesetzt, { $later } sehr wahrscheinlich
days-likely = die { $name }-Saite hat sich { $day } wahrscheinlich gesetzt, aber selbst nach { $days } Tagen nicht sehr wahrscheinlich
days-unlikely = ob sich die { $name }-Saite in { $days } Tagen gesetzt hat: { $likely }
nights-how = Jeder Block ist ein Tag, an dem abends nachgestimmt wird: Er reicht von den wenigsten bis zu den meisten Cent, die der Tag kosten kann, 90 Mal von 100; der Punkt ist der Wert. Unter der gestrichelten Linie kostet ein Tag nicht mehr als fünf Cent.
nights-picture = { $title }. In der Tabelle darunter steht jeder Tag.
nights-axis = Cent Verlust am Tag
nights-day = Tag
nights-enough = fünf Cent
nights-settled-is = gesetzt ist sie
nights-point = Tag { $day } kostet { $lost }; gesetzt ist sie: { $likely }.
nights-table = Die Tage als Tabelle
nights-caption = Cent Verlust je Tag: { $name }-Saite
nights-column-day = Tag
nights-column-lost = Cent Verlust
nights-column-chance = Höchstens fünf Cent
nights-column-words = In Worten
