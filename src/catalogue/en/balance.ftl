### What elasticity costs, in three pictures.

balance-how =
    Each mark is one string that would do here. The further right, the more it stretches in tune; the lower, the steadier: in days until it has settled, and in cents by which its pitch moves, up or down, when { $untuned ->
        [evening] an evening gets
        [week] a week gets
       *[season] the seasons get
    } warm or damp.
balance-picture = { $name }: { $title }. The table below has every mark.
balance-today = today’s
balance-chosen = chosen
balance-was = Today’s { $name } was taken for a { word-family } string, the most usual one: it stretches { $stretch }, settles in { $days }, and moves { $warmth } by warmth and { $damp } by damp.
balance-point =
    { $kind }: stretches { $stretch }, { $aspect ->
        [settling] settles in { $value }
        [warmth] moves { $value } by warmth
       *[damp] moves { $value } by damp
    }
balance-table = The marks as a table
balance-stretch = stretch, %
balance-axis-settling = settling, days
balance-axis-warmth = warmth, cents
balance-axis-damp = damp, cents
balance-mark-today = (today’s)
balance-mark-chosen = (chosen)
balance-caption = Strings that would do for the { $name }
balance-column-kind = Kind
balance-column-stretch = Stretch, %
