### Der Rahmen eines Diagramms, und ein Jahr im Raum.

chart-walk = Punkt für Punkt
chart-none = vor dem ersten Punkt
year-section = Ein Jahr in diesem Raum
year-title =
    { $known ->
        [yes] zwischen Januar und Juli kann { $name } am weitesten wandern: { $low } bis { $high } Cent
       *[no] zwischen Januar und Juli kann { $name } am weitesten wandern, bis zu { $high } Cent, und niemand kann sagen, wohin
    }
year-how = Jede Zeile ist eine Saite, die sich gesetzt hat, in der Mitte des Jahres gestimmt und dann in Ruhe gelassen. Über der Mittellinie ist sie zu hoch, darunter zu tief, in Cent. Die Linie ist der Wert, das Band enthält ihn 90 Mal von 100; reicht das Band auf beide Seiten, ist nicht einmal die Richtung bekannt. Das Jahr ist geschätzt: eine einfache Schwankung von { $cold } und { $dry } Luftfeuchte im Januar bis { $warm } und { $damp } im Juli, nördlich des Äquators.
year-picture = { $title }. In der Tabelle darunter steht jeder Monat.
year-upward = Cent zu hoch oder zu tief
year-along = Monat
year-table = Das Jahr als Tabelle
year-caption = Cent zu hoch (+) oder zu tief (−), Monat für Monat
year-column-month = Monat
year-column-warmth = Wärme
year-column-damp = Luftfeuchte
year-column-string = { $name }, Cent
year-point = { $month }, { $warmth }, { $damp } Luftfeuchte: { $strings }
year-stands = { $name } { $cents } Cent
year-apart = Was neuer Darm verliert, wenn er zum ersten Mal feucht wird, und was Wirbel und Knoten nachgeben, kommt hinzu.
