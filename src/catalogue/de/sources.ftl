### Woher jede Zahl kommt.

sources-other-answer = das Modell schickte eine Antwort anderer Art
sources-lead = Jede Zahl auf diesen Seiten hat eine Spanne und sagt, woher man sie weiß.
sources-fetching = Die Tabellen werden geholt …
sources-broke = Die Tabellen waren nicht zu bekommen: { $reason }.
sources-grades = Woher man eine Zahl weiß
sources-range = Eine Spanne enthält die wahre Zahl 90 Mal von 100. Wo sie weit ist, steht sie auch in Sätzen hinter ihrer Zahl.

## Gilt die Reihenfolge der Fachleute?

sources-trade = Was Fachleute über Stimmhaltung sagen
sources-trade-order = Nach der Erfahrung der Fachleute hält Vollstahl die Stimmung am besten, dann Stahlseil, steifer Kunststoff, weicher Kunststoff und zuletzt Darm. Wir berechnen drei Dinge getrennt:
sources-trade-settling = Wie bald sie sich setzt: Die Reihenfolge stimmt von Vollstahl über Stahlseil und steifen Kunststoff bis zu weichem, wobei Nachbarn sich überschneiden. Darm ist langsam, nach der Rechnung aber nicht langsamer als Nylon.
sources-trade-warmth = Wie weit Wärme sie verstimmt: Die Reihenfolge gilt nicht. Stahl, der erste darin, verstimmt sich nach unseren Werten am meisten, Darm und Kunststoff weniger, doch von ihnen weiß man weniger.
sources-trade-damp = Wie weit Feuchte sie verstimmt: Die Reihenfolge gilt zum Teil. Stahl nimmt kein Wasser auf, aber wenn sich der Korpus mit der Feuchte bewegt, verstimmt er die steifsten Saiten am meisten. Darm und Polyamid nehmen Wasser auf, und umsponnener Darm kann sogar steigen.
sources-formulas = Wie jede Zahl berechnet wird
sources-letters = L ist die Mensur, f die Tonhöhe, μ die Masse je Länge (μ₀ ungedehnt), EA die Steifheit des Kerns längs der Saite, T der Zug, D und d der äußere und der Kerndurchmesser, K die Biegesteifheit, κ/2 = 865,6 Cent. Z = √(T μ) ist die Impedanz, R der Widerstand des Stegs, β = 0,1 die Stelle des Bogens, v = 0,1 m/s sein Tempo, μs und μd die Reibung von haftendem und gleitendem Haar, η ein Verlust, C die Steifheit gegen Drehen, J die Trägheit dabei.
sources-table = Tabelle der Formeln
sources-formula = Formel
sources-best = Bestenfalls
sources-fitted = Zahlen, die an die Simulation der gestrichenen Saite angepasst sind
sources-fitted-how = Eine Saite Schritt für Schritt durch die Zeit zu rechnen dauert eine Sekunde. Diese Zahlen folgen aus einer Formel, die daran angepasst ist, damit sich Tausende von Saiten vergleichen lassen. Bei 300 Saiten, die nicht zum Anpassen dienten, kommen sie so nahe. Unter den Saiten einer Stelle sind sie weniger sicher als über alle, denn am meisten hilft ihnen die Tonhöhe, und die ist dort dieselbe. Wie weit sie fehlgehen, steckt in jeder Spanne und in jedem Vergleich.
sources-fitted-table = Tabelle der angepassten Zahlen
sources-ranks = Ordnet alle Saiten wie die Simulation (1: genau so)
sources-ranks-place = Ordnet die einer Stelle
sources-misses = Verfehlt sie um
sources-misses-place = An einer Stelle um
sources-unheld = Formeln, die noch nichts von außen stützt, und warum
sources-all-held = Es gibt keine: Jede Formel wird von einem veröffentlichten Wert oder einer unabhängigen Lösung gestützt.
sources-rest = Jede andere Formel wird an einem veröffentlichten Wert oder einer unabhängigen Lösung geprüft. Diese nicht; ihre Namen sind die im Modell.
sources-works = Die Werke
sources-remark = Wissenswert:

sources-practice = Was üblich ist, und was wir sagen
sources-practice-how = Fälle, in denen fast alle oder die meisten dasselbe aufziehen: üblich, ohne Quelle. In { $agreed } von { $of } Zeilen nennen wir, was dort als Erstes oder Zweites genannt wird; wo nicht, steht es zuerst.
sources-practice-table = Fälle, Saite für Saite
column-situation = Fall
column-practice = Üblich
column-told = Wir sagen
practice-or = { " oder " }
practice-agrees = stimmt überein
practice-differs = weicht ab
practice-nothing = nichts, was passt
practised-solid_steel = Vollstahl
practised-rope_steel = Stahlseil
practised-synthetic = Kunststoff
practised-plain_gut = blanker Darm
practised-wound_gut = umsponnener Darm
practised-keep_current = was darauf ist
