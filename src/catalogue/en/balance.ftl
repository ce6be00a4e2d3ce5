### Elasticity against steadiness.

balance-how = Each mark is one string that would do here: the further right, the more it stretches in tune; the higher, the better it holds its pitch.
balance-picture = { $title }. The table below has every mark.
balance-today = today’s
balance-chosen = chosen
balance-was = Today’s { $name } was taken for a { word-family } string, the most usual one: it stretches { $stretch } and holds its pitch { $steadiness } of 100.
balance-point = { $kind }: stretches { $stretch }, holds its pitch { $steadiness } of 100
balance-table = The marks as a table, with the parts of steadiness
balance-parts = Steadiness joins three parts by their weights: days to settle, computed drift, and what fitters say. The last is a judgement and carries most of the difference between gut and the rest.
balance-axis = steady (0 to 100, upwards)
balance-stretch = stretch, %
balance-mark-today = (today’s)
balance-mark-chosen = (chosen)
balance-caption = Strings that would do for the { $name }
balance-column-kind = Kind
balance-column-stretch = Stretch, %
balance-column-steadiness = Steadiness, of 100
balance-column-days = Days to settle
balance-column-drift = Drift, cents
balance-column-fitters = Fitters (judgement), of 100
