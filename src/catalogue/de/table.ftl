### Jede Zahl.

table-of = Jede Zahl: { $name }
column-value = Wert
column-range = Spanne, 90 von 100
column-known = Woher bekannt
column-source = Quelle
disputed = Kleinster Bogendruck: umstritten
disputed-means = wie stark der Bogen beim selben Strich drücken muss. Nach der einen Theorie wächst dieser Druck mit dem Tempo des Bogens; die eine Messung fand nichts davon
disputed-within = irgendwo innerhalb von { $range }
disputed-theory = Nach der Theorie
disputed-measured = Wie gemessen
filter-label = Nur Zeilen zeigen mit
filter-left =
    { $left ->
        [0] Keine Zeile hat diese Wörter.
        [one] { $left } Zeile von { $all } bleibt.
       *[other] { $left } Zeilen von { $all } bleiben.
    }
table-none = keine
doubts-title = Was Sie messen können, um mehr zu wissen
