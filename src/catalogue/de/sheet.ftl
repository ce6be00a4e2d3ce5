### Das Blatt zum Mitnehmen.

sheet-label = Blatt zum Drucken
sheet-for = Für
sheet-date = Datum
sheet-ask = Fragen Sie nach
sheet-gauge = Stärke, Zug gestimmt
sheet-why = Warum, und was sie kostet
sheet-settles = Setzt sich
sheet-load = Alle Saiten zusammen ziehen mit { $pull }, { $place }. Sie drücken auf den Steg mit { $press }.
sheet-close = Ein anderer Satz, { $strings }, liegt etwa gleichauf.
sheet-close-ask = Dafür verlangen Sie { $asks }.
sheet-close-also = Und dazu { $asks }.
sheet-close-rest = Seine übrigen Saiten sind die von oben.
sheet-look = Zuerst nachsehen.
sheet-when = Wann und wie
sheet-fit = Ziehen Sie den Satz { $likely } vor dem Termin auf; sicherheitshalber { $safe }.
sheet-one = Eine Saite nach der anderen; am ersten Tag oft stimmen, dann täglich, bis eine Nacht nicht mehr als fünf Cent kostet, ein Zwanzigstel eines Halbtons.
sheet-fitted = Was aufgezogen wurde, und wann
sheet-foot = Spannen und Quellen jeder Zahl stehen in Ropewalk.
sheet-instrument = { $instrument } { $size }, { $tuning }, a′ bei { $pitch }, { $set_up ->
        [modern] moderne Einrichtung
        [historical] historische Einrichtung
       *[light] altes oder leicht gebautes Instrument
    }
sheet-but = Aber:
sheet-days = { $likely }, höchstens { $most }
