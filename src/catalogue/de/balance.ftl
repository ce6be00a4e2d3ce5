### Was Elastizität kostet, in drei Bildern.

balance-how =
    Jede Marke ist eine Saite, die hier gut wäre. Je weiter rechts sie steht, desto mehr dehnt sich die Saite gestimmt; je tiefer, desto stimmfester ist sie: in Tagen, bis sie sich gesetzt hat, und in Cent, um die ihre Tonhöhe fällt oder steigt, wenn es { $untuned ->
        [evening] an einem Abend
        [week] in einer Woche
       *[season] mit den Jahreszeiten
    } warm oder feucht wird.
balance-picture = { $name }: { $title }. In der Tabelle darunter steht jede Marke.
balance-today = heutige
balance-chosen = gewählt
balance-was = Als heutige { $name }-Saite haben wir eine { word-family } angenommen, die üblichste: Sie dehnt sich um { $stretch }, Zeit zum Setzen: { $days }, Verstimmung durch Wärme: { $warmth }, durch Feuchte: { $damp }.
balance-point =
    { $kind }: dehnt sich um { $stretch }, { $aspect ->
        [settling] Zeit zum Setzen: { $value }
        [warmth] durch Wärme { $value }
       *[damp] durch Feuchte { $value }
    }
balance-table = Die Marken als Tabelle
balance-stretch = Dehnung, %
balance-axis-settling = Setzen, Tage
balance-axis-warmth = Wärme, Cent
balance-axis-damp = Feuchte, Cent
balance-mark-today = (heutige)
balance-mark-chosen = (gewählt)
balance-caption = Saiten, die als { $name }-Saite gut wären
balance-column-kind = Bauart
balance-column-stretch = Dehnung, %
