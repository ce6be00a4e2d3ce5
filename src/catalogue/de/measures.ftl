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
