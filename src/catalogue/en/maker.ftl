### A construction as a person writes it.

maker-core-gut = gut, twisted
maker-core-spring-wire = spring steel, one wire
maker-core-stainless-wire = stainless steel, one wire
maker-core-strand-7 = spring steel, strand of 7
maker-core-strand-19 = spring steel, strand of 19
maker-core-rope = spring steel, rope of 7 times 7
maker-core-polyamide = nylon (polyamide), bundle
maker-core-polyester = polyester, bundle
maker-core-composite = stiff polymer, bundle
maker-core-aramid = aramid, bundle
maker-core-polyamide-one = nylon (polyamide), one filament
maker-core-polyester-one = polyester, one filament
maker-fault-mm = Put a number of millimetres here, from { $low } to { $high }.
maker-fault-percent = Put a number of per cent here, from { $low } to { $high }.
maker-gauge = Core gauge, mm
maker-first = First winding
maker-second = Second winding
maker-third = Third winding
maker-metal = Metal
maker-none = none
maker-form = Form
maker-flat = flat ribbon
maker-round = round wire
maker-thickness = Thickness, mm
maker-gap = Gap between turns, % of their width
