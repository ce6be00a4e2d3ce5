### Wie sicher ein Satz ist, was ihn ändern würde, und wie tief die Seite geht.

depth-label = Wie ausführlich
depth-words = In einfachen Worten
depth-numbers = Mit Zahlen
depth-bench = An der Werkbank

sure-title = Wie sicher ist das?
sure-waits = Wie sicher ist das? Einen Augenblick: Wir fragen immer wieder.
sure-failed = Wie sicher das ist, ließ sich nicht errechnen: { $reason }.
sure-very-likely = Diese Bauarten sind sehr wahrscheinlich die besten für Sie.
sure-likely = Diese Bauarten sind wahrscheinlich die besten für Sie.
sure-close-call = Es ist knapp.
sure-equal = Ein anderer Satz ist eine ebenso gute Wahl: { $families }.
sure-level-very-likely = Der erste liegt fast jedes Mal vorn, aber nur wenig: Ist einer nicht zu bekommen, nehmen Sie den anderen.
sure-level-likely = Der erste liegt meist vorn, aber nur wenig: Ist einer nicht zu bekommen, nehmen Sie den anderen.
sure-leads = So wie Sie geantwortet haben, liegt er vorn; ein wenig anders gemeint, vielleicht ein anderer.
sure-more = Woher wir das wissen
sure-how = Keine Antwort ist genau, und unsere Zahlen sind es auch nicht. Wir haben alle viele Male ein wenig verschoben und jedes Mal den besten Satz gesucht.
sure-chosen = In { $share } von 100 Versuchen mit leicht verschobenen Antworten und Zahlen sind diese Bauarten die besten, auf { $error } genau.
sure-second = Der zweite Satz ist in { $share } von 100 der beste.
sure-next = Danach liegt am häufigsten vorn: { $families }, in { $share } von 100.
sure-string = { $name }: { $family }, { $word }; Stärke { $gauge }, { $gauge_word }.
sure-string-share = { $name }: { $family } in { $share } von 100, Stärke { $gauge } in { $gauge_share } von 100.
sure-string-other = { $name }: { $family } in { $share } von 100, sonst { $other } in { $other_share }; Stärke { $gauge } in { $gauge_share } von 100.
sure-word-very-likely = sehr wahrscheinlich
sure-word-likely = wahrscheinlich
sure-word-close-call = knapp
sure-bench-worlds = { $worlds } Welten, jede eine Ziehung aller Konstanten und eine Weise, die Antworten zu meinen; in jeder wird der beste Satz der Endauswahl neu gefunden, exakt.
sure-bench-spreads = In neun von zehn Fällen liegt ein Wunsch höchstens einen halben Schritt neben der gewählten Stelle, ein Gewicht zwischen dem 0,75- und dem 1,33-Fachen seines Werts, die Feuchte eines Raums höchstens 8 von 100 neben dem gewählten Wort, und die Schwankungen liegen zwischen dem 0,6- und dem 1,6-Fachen der angenommenen. Was Sie nicht beantwortet haben, wird so gezogen, wie Menschen antworten. All das ist Ermessen.
sure-bench-error = Die Genauigkeit ist ein Standardfehler, von Weise zu Weise. Sehr wahrscheinlich: ab 85 von 100. Wahrscheinlich: ab 65. Darunter: knapp.
sure-sheet = Wie sicher: { $sure }
sure-sources = Woher die Zahlen und ihre Spannen kommen

turn-title = Was es ändern würde
turn-none = Keine einzelne Antwort würde Bauart oder Stärke einer Saite ändern. Wir haben { $tried } Antworten und Gewichte geändert, eine nach der anderen.
turn-unsure = Manche Antworten vielleicht, aber die Zeit reichte nicht, um sich einer zu vergewissern.
turn-steps = { $steps ->
    [one] Einen Schritt { $more } gewünscht
   *[other] { $steps } Schritte { $more } gewünscht
}
turn-scale = { $change } (von { $from } auf { $to } der Skala, { $holds } genügt nicht)
turn-scale-first = { $change } (von { $from } auf { $to } der Skala)
turn-weight-up = Zählte „{ $weight }“ mehr
turn-weight-down = Zählte „{ $weight }“ weniger
turn-weight = { $change } ({ $to } statt { $from }, { $holds } genügt nicht)
turn-weight-first = { $change } ({ $to } statt { $from })
turn-pitch = Bei einem a′ von { $to } statt { $from }
turn-answer = { $name }: „{ $to }“ statt „{ $from }“
turn-answer-new = { $name }: „{ $to }“
turn-so = Träfe das zu: { $fact }
turn-not-so = Träfe das nicht zu: { $fact }
turn-days = Wäre bis zum Termin noch so viel Zeit: { $days }
turn-then = { $change } – { $then }.
turn-kind = für { $names }: { $family }
turn-gauge = für { $names }: Stärke { $gauge }
turn-both = für { $names }: { $family }, Stärke { $gauge }
turn-confirmed = Jede wurde bei diesem Wert und beim Wert davor neu berechnet. Höchstens drei werden genannt, die nächste zuerst: ein Schritt eines Wunsches zählt 0,5, die Verdoppelung eines Gewichts 1, fünf Hertz 1, ein anderes Wort 1.
turn-sheet = Das würde es zuerst ändern: { $turn }

## Gründe, tiefer und weniger tief

reason-plain = { $word }.
reason-plain-wanted = { $word }, näher an dem, was Sie möchten.
reason-plain-weakest = Ihr schwächster Punkt: { $what }.
reason-more = Das sind { $percent } % mehr
reason-less = Das sind { $percent } % weniger
reason-times = Das ist { $times }-mal so viel
reason-times-other = Die andere hat { $times }-mal so viel
reason-cents-more = Das sind { $cents } Cent mehr
reason-cents-less = Das sind { $cents } Cent weniger
reason-noticed = { $by }; bemerkt wird etwa ab { $least } %.
reason-noticed-cents = { $by }; bemerkt wird etwa ab { $least } Cent.
reason-ranks = Bei { $count } Saiten, die nicht zum Anpassen dienten, beträgt die Rangkorrelation mit der Simulation { $all }, bei denen einer Stelle { $place }.
reason-carries = Zur Wertung trägt „{ $what }“ hier { $gain } bei, mit einem Gewicht von { $weight }.
