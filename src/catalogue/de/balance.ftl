### Elastizität gegen Stimmhaltung.

balance-how = Jede Marke ist eine Saite, die hier gut wäre. Je weiter rechts sie steht, desto mehr dehnt sich die Saite gestimmt. Je höher sie steht, desto besser hält die Saite die Stimmung.
balance-picture = { $title }. In der Tabelle darunter steht jede Marke.
balance-today = heutige
balance-chosen = gewählt
balance-was = Als heutige { $name }-Saite haben wir eine { word-family } angenommen, die üblichste: Sie dehnt sich um { $stretch } und bekommt für ihre Stimmhaltung { $steadiness } von 100.
balance-point = { $kind }: dehnt sich um { $stretch }, hält die Stimmung zu { $steadiness } von 100
balance-table = Die Marken als Tabelle, mit den Teilen der Stimmhaltung
balance-parts = Die Stimmhaltung verbindet drei Teile nach ihrem Gewicht: die Tage bis zum Setzen, das berechnete Wandern und was Geigenbauer sagen. Das Letzte ist ein Urteil und macht den größten Teil des Unterschieds zwischen Darm und dem Rest aus.
balance-axis = Stimmhaltung (0 bis 100, nach oben)
balance-stretch = Dehnung, %
balance-mark-today = (heutige)
balance-mark-chosen = (gewählt)
balance-caption = Saiten, die als { $name }-Saite gut wären
balance-column-kind = Bauart
balance-column-stretch = Dehnung, %
balance-column-steadiness = Stimmhaltung, von 100
balance-column-days = Tage bis zum Setzen
balance-column-drift = Wandern, Cent
balance-column-fitters = Geigenbauer (Urteil), von 100
