### Wie Zahlen und Tage geschrieben werden.

decimal-point = ,
date = { $day }. { $month } { $year }
month-1 = Januar
month-2 = Februar
month-3 = März
month-4 = April
month-5 = Mai
month-6 = Juni
month-7 = Juli
month-8 = August
month-9 = September
month-10 = Oktober
month-11 = November
month-12 = Dezember

not-known = nicht bekannt
unit-cents-mm = Cent/mm
unit-cents-degree = Cent/Grad
unit-millionths = Millionstel
unit-start = m/s² je N
unit-thousandths = Tausendstel
unit-times = mal
unit-swings = Schwingungen
unit-days = Tage
unit-inch = Zoll
unit-kg = kg
unit-lb = lb
gauge-mm = { $mm } ({ $inch } Zoll)
gauge-inch = { $inch } Zoll ({ $mm })
force = { $own } ({ $one }, { $other })
cents-less = weniger als ein Cent
cents-one = 1 Cent
days-less = weniger als ein Tag
days-one = ein Tag
days-safe = 1 Tag
