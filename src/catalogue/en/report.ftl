### The report of one string, on paper.

report-label = Report to print
report-core = Core:
report-wound = Wound with:
report-setting = Setting:
report-range = Range
report-known = Known
report-source = Src
report-five = Within five cents
report-losses = { $title }. Losses in thousandths.
report-hz = Hz
report-sharp = Sharp, cents
report-bridge = Bridge
report-air = Air
report-bending = Bending
report-pull = Pull
report-sources = Sources: { $works }. Ranges hold the true number 90 times in 100. The works and formulas are in Ropewalk, under Sources.
report-title = { $Kind } { $name } { $gauge } for a { $size } { word-instrument }
setting-doubt = , give or take { $doubt }
setting-behind = { $length } behind the bridge,{ " " }
setting =
    sounding length { $length }{ $doubt }, { $behind }{ $nut } from nut to peg; { $pitch }; { $angle }° over the bridge; peg { $peg } across, geared { $gear } to 1; { $height } high at the octave, nut’s edge { $edge } round; bridge resists { $peak } to { $bridge }; room { $warmth } ± { $swing }, { $damp } ± { $change } damp over the seasons, and { $untuned ->
        [evening] in an evening
        [week] in a week
       *[season] in a season
    } without tuning { $warmer } warmer and { $damper } damper.
