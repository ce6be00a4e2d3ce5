### Die Arten von Sätzen: wie sie heißen, wie üblich sie sind und wie sie sich vom gewählten Satz unterscheiden.

set-kind-gut = Durchweg Darm
set-kind-wound-gut =
    { $steel ->
        [top] Umsponnener Darm unter Stahl-{ $top }
       *[none] Durchweg umsponnener Darm
    }
set-kind-steel-over-gut =
    { $steel ->
        [top] Blanker und umsponnener Darm unter Stahl-{ $top }
       *[none] Blanker über umsponnenem Darm
    }
set-kind-gut-over-steel = Blanker Darm über Stahlseil
set-kind-stranded-steel = Ganz aus Stahl, mit Seilkern
set-kind-solid-steel = Ganz aus Stahl, mit Vollkern
set-kind-solid-over-stranded-steel = Vollstahl über Stahlseil
set-kind-soft-synthetic =
    { $steel ->
        [top] Stahl-{ $top } über weichem Kunststoff
       *[none] Durchweg weicher Kunststoff
    }
set-kind-middle-synthetic =
    { $steel ->
        [top] Stahl-{ $top } über mittelsteifem Kunststoff
       *[none] Durchweg mittelsteifer Kunststoff
    }
set-kind-stiff-synthetic =
    { $steel ->
        [top] Stahl-{ $top } über steifem Kunststoff
       *[none] Durchweg steifer Kunststoff
    }
set-kind-steel-over-soft-synthetic = Stahl-{ $top } über weichem Kunststoff
set-kind-steel-over-middle-synthetic = Stahl-{ $top } über mittelsteifem Kunststoff
set-kind-steel-over-stiff-synthetic = Stahl-{ $top } über steifem Kunststoff
set-kind-steel-outside = Außen Stahl, innen weicher Kunststoff
set-kind-steel-over-synthetic = Vollstahl über weichem Kunststoff

## Die gewählte Art und die anderen

kind-chosen = { $kind }, { $gauge }
kind-second = { $kind }, { $gauge }
kinds-title = Andere Arten von Sätzen
kinds-how = Jeder ist der beste Satz seiner Art für Sie, neben dem gewählten.
kind-usual = Etwa { $number } von 100, die spielen wie Sie, haben ihn.
kind-rare = Wer spielt wie Sie, hat ihn selten.
kind-now = Was jetzt auf dem Instrument ist, ist von dieser Art.
kind-differs = Gegenüber dem gewählten Satz: { $parts }.
kind-differs-on = { $words } bei { $strings }
kind-differs-all = { $words } bei jeder Saite
kind-alike = Einen Unterschied zum gewählten Satz würde man nicht merken.
kind-lead =
    { $how ->
        [level] Er passt ebenso gut zu Ihnen.
        [little] Er passt fast ebenso gut zu Ihnen.
        [clearly] Er passt deutlich weniger zu Ihnen.
       *[far] Er passt viel weniger zu Ihnen.
    }
kind-lead-by =
    Er liegt { $how ->
        [level] etwa gleichauf mit dem gewählten, dahinter
        [little] etwas hinter dem gewählten,
        [clearly] deutlich hinter dem gewählten,
       *[far] weit hinter dem gewählten,
    } { $proven ->
        [yes] um { $by }
       *[no] um höchstens { $by }
    }.
kinds-more =
    { $count ->
        [one] Eine weitere Art
       *[other] { $count } weitere Arten
    }
kinds-ruled-out = Hier nicht möglich
kind-ruled-out =
    { $kind }: { $limit ->
        [nobody-makes-it] Solche Saiten für { $name } macht unseres Wissens niemand
       *[other] Die meisten solchen Saiten für { $name } scheiden aus, weil sie { $why }
    }.
kind-too-heavy = { $kind }: Selbst der leichteste Satz zieht stärker, als er sollte.
