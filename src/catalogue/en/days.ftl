### How a string settles from day to day.

very-likely = very likely
likely = likely
close-call = a close call
unlikely = unlikely
very-unlikely = very unlikely
of-hundred = { $number } of 100
over-of-hundred = over { $number } of 100
under-of-hundred = under { $number } of 100
over = over { $number }
under = under { $number }
cents = cents
value-within = { $value } ({ $range })
value-about = about { $value } ({ $range })
on-day =
    { $day ->
        [1] on the first day
       *[other] on day { $day }
    }
days-very = the { $name } has very likely settled { $day }
days-both = the { $name } has likely settled { $day }, very likely { $later }
days-likely = the { $name } has likely settled { $day }, but not even after { $days } days very likely
days-unlikely = that the { $name } has settled within { $days } days is { $likely }
nights-how = Each block is one day, retuned every evening: it reaches from the least to the most cents that the day may cost, 90 times in 100, and the dot is the value. Below the dashed line a day costs no more than five cents.
nights-picture = { $title }. The table below has every day.
nights-axis = cents lost in the day
nights-day = day
nights-enough = five cents
nights-settled-is = that it has settled is
nights-point = Day { $day } costs { $lost }; that it has settled is { $likely }.
nights-table = The days as a table
nights-caption = Cents lost each day by the { $name }
nights-column-day = Day
nights-column-lost = Cents lost
nights-column-chance = Within five cents
nights-column-words = In words
