### Der Bericht einer Saite, auf Papier.

report-label = Bericht zum Drucken
report-core = Kern:
report-wound = Umsponnen mit:
report-setting = Umgebung:
report-range = Spanne
report-known = Bekannt
report-source = Qu.
report-five = Höchstens fünf Cent
report-losses = { $title }. Verluste in Tausendsteln.
report-hz = Hz
report-sharp = Zu hoch, Cent
report-bridge = Steg
report-air = Luft
report-bending = Biegen
report-pull = Zug
report-sources = Quellen: { $works }. Spannen enthalten die wahre Zahl 90 Mal von 100. Die Werke und Formeln stehen in Ropewalk unter Quellen.
report-title = { $Kind } als { $name }, { $gauge }, für { $instrument ->
        [viola] eine Bratsche der Größe { $size }
        [cello] ein { $size }-Cello
        [double-bass] einen { $size }-Kontrabass
       *[violin] eine { $size }-Geige
    }
setting-doubt = , auf { $doubt } genau
setting-behind = { $length } hinter dem Steg,{ " " }
setting =
    Mensur { $length }{ $doubt }, { $behind }{ $nut } vom Sattel zum Wirbel; { $pitch }; { $angle }° über dem Steg; Wirbel { $peg } dick, Übersetzung { $gear } zu 1; { $height } hoch an der Oktave, Kante des Sattels mit { $edge } gerundet; der Steg widersteht { $peak } bis { $bridge }; Raum { $warmth } ± { $swing }, { $damp } ± { $change } feucht mit den Jahreszeiten, und { $untuned ->
        [evening] an einem Abend
        [week] in einer Woche
       *[season] in einem Jahr
    } ohne Stimmen { $warmer } wärmer und { $damper } feuchter.
