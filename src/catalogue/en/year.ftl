### A chart's frame, and a year in a room.

chart-walk = Point by point
chart-none = before the first point
year-section = A year in this room
year-title =
    { $known ->
        [yes] between January and July { $name } may wander furthest: { $low } to { $high } cents
       *[no] between January and July { $name } may wander furthest: up to { $high } cents, up or down
    }
year-how = Each row is one string, settled, tuned in the middle of the year and then left alone. Above the middle line it is sharp, below it flat, in cents. The line is the value, and the band holds it 90 times in 100; where the band reaches both sides, the string may be sharp or flat. The year is judged: a plain wave from { $cold } and { $dry } humidity in January to { $warm } and { $damp } in July, north of the equator, with the pitch following it.
year-picture = { $title }. The table below has every month.
year-upward = cents sharp or flat
year-along = month
year-table = The year as a table
year-caption = Cents sharp (+) or flat (−), month by month
year-column-month = Month
year-column-warmth = Warmth
year-column-damp = Humidity
year-column-string = { $name }, cents
year-point = { $month }, { $warmth }, { $damp } humidity: { $strings }
year-stands = { $name } { $cents } cents
year-apart = What gut loses for good when it first gets damper than ever comes on top.
