### Every number.

table-of = Every number of { $name }
column-value = Value
column-range = Range, 90 of 100
column-known = How known
column-source = Source
disputed = Least bow force: disputed
disputed-means = how hard the bow must press at the same stroke. By the one theory it grows with the speed of the bow; the one measurement found no such thing
disputed-within = somewhere within { $range }
disputed-theory = By theory
disputed-measured = As measured
filter-label = Show only rows with
filter-left =
    { $left ->
        [0] No row has these words.
        [one] { $left } row of { $all } is left.
       *[other] { $left } rows of { $all } are left.
    }
table-none = none
doubts-title = What to measure to know more
