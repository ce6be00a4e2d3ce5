### Elastizität gegen Ruhe.

balance-how = Jede Marke ist eine Saite, die hier gut wäre: je weiter rechts, desto mehr dehnt sie sich gestimmt; je höher, desto besser hält sie ihre Tonhöhe.
balance-picture = { $title }. Die Tafel darunter hat jede Marke.
balance-today = heutige
balance-chosen = gewählt
balance-was = Als heutige { $name }-Saite haben wir eine { word-family } angenommen, die üblichste: Sie dehnt sich { $stretch } und hält ihre Tonhöhe { $steadiness } von 100.
balance-table = Die Marken als Tafel, mit den Teilen der Ruhe
balance-parts = Die Ruhe verbindet drei Teile nach ihrem Gewicht: die Tage bis zum Setzen, das berechnete Wandern und was Geigenbauer sagen. Das Letzte ist ein Urteil und trägt den größten Teil des Unterschieds zwischen Darm und dem Rest.
balance-axis = ruhig (0 bis 100, nach oben)
balance-stretch = Dehnung, %
balance-mark-today = (heutige)
balance-mark-chosen = (gewählt)
balance-caption = Saiten, die als { $name }-Saite gut wären
balance-column-kind = Bauart
balance-column-stretch = Dehnung, %
balance-column-steadiness = Ruhe, von 100
balance-column-days = Tage bis zum Setzen
balance-column-drift = Wandern, Cent
balance-column-fitters = Geigenbauer (Urteil), von 100
