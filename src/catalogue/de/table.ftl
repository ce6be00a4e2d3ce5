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
table-unknown = unbekannt, Spanne
table-none = keine
doubts-title = Was Sie messen können, um mehr zu wissen
