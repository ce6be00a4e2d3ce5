### Der Rahmen eines Diagramms, und ein Jahr im Raum.

chart-walk = Punkt für Punkt
chart-none = vor dem ersten Punkt
year-section = Ein Jahr in diesem Raum
year-title =
    { $known ->
        [yes] zwischen Januar und Juli kann sich { $name } am weitesten verstimmen: { $low } bis { $high } Cent
       *[no] zwischen Januar und Juli kann sich { $name } am weitesten verstimmen: bis zu { $high } Cent, nach oben oder unten
    }
year-how = Jede Zeile ist eine Saite, die sich gesetzt hat, in der Mitte des Jahres gestimmt und dann in Ruhe gelassen. Über der Mittellinie ist sie zu hoch, darunter zu tief, in Cent. Die Linie ist der Wert, das Band enthält ihn 90 Mal von 100; reicht das Band auf beide Seiten, kann die Saite zu hoch oder zu tief sein. Das Jahr ist geschätzt: eine einfache Welle von { $cold } und { $dry } Luftfeuchte im Januar bis { $warm } und { $damp } im Juli, nördlich des Äquators, der die Tonhöhe folgt.
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
year-apart = Was Darm für immer verliert, wenn er zum ersten Mal feuchter wird als je zuvor, kommt hinzu.
