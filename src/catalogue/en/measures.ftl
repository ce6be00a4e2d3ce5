### How numbers and days are written.

decimal-point = .
date = { $day } { $month } { $year }
month-1 = January
month-2 = February
month-3 = March
month-4 = April
month-5 = May
month-6 = June
month-7 = July
month-8 = August
month-9 = September
month-10 = October
month-11 = November
month-12 = December

not-known = not known
unit-cents-mm = cents/mm
unit-cents-degree = cents/degree
unit-millionths = millionths
unit-start = m/s² per N
unit-thousandths = thousandths
unit-times = times
unit-swings = swings
unit-days = days
unit-inch = in
unit-kg = kg
unit-lb = lb
gauge-mm = { $mm } ({ $inch } of an inch)
gauge-inch = { $inch } of an inch ({ $mm })
force = { $own } ({ $one }, { $other })
cents-less = less than a cent
cents-one = 1 cent
days-less = less than a day
days-one = a day
days-safe = 1 day
