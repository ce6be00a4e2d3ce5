### Zwei Saiten nebeneinander.

compare-place = { $instrument } { $size }, { $length } bei { $pitch }
compare-title = Zwei { $name }-Saiten nebeneinander
compare-first-string = Erste Saite
compare-second-string = Zweite Saite
compare-first = Erste
compare-second = Zweite
compare-change-first = Die erste Saite ändern
compare-change-second = Die zweite Saite ändern
compare-last = Gezeigt ist die letzte, die sich berechnen ließ.
compare-broke = Es ließ sich nicht berechnen: { $reason }.
compare-computing = Es wird berechnet …
compare-bow = Unter dem Bogen
compare-others = Saiten des Satzes
compare-apart = { $word } ({ $likely })
compare-cannot = lässt sich nicht sagen: unbekannt
compare-same = gleich
compare-overlap = die Spannen überschneiden sich
compare-verdict = Die erste: { $verdict }.
compare-the-first = die erste
compare-the-second = die zweite
compare-against = { $one } und { $other } im Vergleich: { $apart }
compare-every = Jede Zahl
compare-how = Bei „wahrscheinlich“ und „sehr wahrscheinlich“ rechnen wir beide Saiten mit denselben Ziehungen von allem, was unsicher ist. So hebt sich auf, was sie gemeinsam haben. Gesagt wird es ab 80 und ab 85 von 100. Bei den anderen Zahlen entscheiden allein die Spannen.
compare-table = Jede Zahl beider Saiten
compare-column = Die erste ist oder hat
compare-other-answer = es kam eine Antwort anderer Art
