### Eine Saite, wie man sie beschreibt.

maker-core-gut = Darm, gedreht
maker-core-spring-wire = Federstahl, ein Draht
maker-core-stainless-wire = rostfreier Stahl, ein Draht
maker-core-strand-7 = Federstahl, Litze aus 7
maker-core-strand-19 = Federstahl, Litze aus 19
maker-core-rope = Federstahl, Seil aus 7 mal 7
maker-core-polyamide = Nylon (Polyamid), Bündel
maker-core-polyester = Polyester, Bündel
maker-core-composite = steifer Kunststoff, Bündel
maker-core-aramid = Aramid, Bündel
maker-core-polyamide-one = Nylon (Polyamid), eine Faser
maker-core-polyester-one = Polyester, eine Faser
maker-fault-mm = Schreiben Sie eine Zahl in Millimetern, von { $low } bis { $high }.
maker-fault-percent = Schreiben Sie eine Zahl in Prozent, von { $low } bis { $high }.
maker-gauge = Kernstärke, mm
maker-first = Erste Umspinnung
maker-second = Zweite Umspinnung
maker-third = Dritte Umspinnung
maker-metal = Metall
maker-none = keines
maker-form = Form
maker-flat = Flachband
maker-round = Runddraht
maker-thickness = Dicke, mm
maker-gap = Lücke zwischen den Windungen, % ihrer Breite
