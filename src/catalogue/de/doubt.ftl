### Wo Zahlen auf Boden stehen, der nicht gemessen wurde.

## Vorbehalte

caveat-stress-not-measured = Ihr Kern wird stärker oder schwächer gezogen als in den Messungen, die zeigen, wie steif er klingt; diese Steifheit bleibt am Ende dessen, was gemessen wurde.
caveat-wire-not-tabled = Ein Draht ihres Kerns ist dünner oder dicker, als die Tabelle der Drahtfestigkeiten reicht; die Festigkeit bleibt am Ende der Tabelle.
caveat-breaks = Sie würde reißen, bevor sie gestimmt ist.

## Woher ein Zweifel kommt

doubt-density = die Dichte von { $material }
doubt-modulus = die Steifheit von { $material } bei langsamem Zug
doubt-fast_modulus = die Steifheit von { $material } im Klang
doubt-strength = die Festigkeit von { $material }
doubt-poisson = das Dünnerwerden von { $material } beim Dehnen
doubt-loss = die innere Reibung von { $material }
doubt-creep = das Kriechen von { $material }
doubt-expansion = die Wärmedehnung von { $material }
doubt-moisture_left = die unter Zug noch spürbare Wirkung des Wassers in { $material }
doubt-softening = das Weichwerden von { $material } in der Wärme
doubt-water = die Wasseraufnahme von { $material }
doubt-diffusivity = das Tempo, mit dem Wasser in { $material } eindringt
doubt-swelling_along = das Längerwerden von { $material } durch Wasser
doubt-swelling_across = das Dickerwerden von { $material } durch Wasser
doubt-damp_softening = das Weichwerden von { $material } durch Wasser
doubt-damp_creep = das schnellere Kriechen von { $material } in der Feuchte
doubt-shear = die Steifheit von { $material } gegen Drehen
general-air_density = die Dichte der Luft
general-air_viscosity = die Zähigkeit der Luft
general-body_expansion = die Wärmedehnung des Instruments
general-body_movement = die Bewegung des Instruments mit der Feuchte
general-bonding = der Halt der Drähte oder Fasern aneinander beim Biegen
general-bridge_resistance = das Nachgeben des Stegs
general-brilliance_loss = das angenommene Ende des Glanzes
general-constructional = das Engerrücken eines neuen Seils
general-core_gauge = der Durchmesser des Kerns
general-endurance = die Dauerfestigkeit des Kerns
general-friction_drop = das Sinken der Reibung beim Gleiten
general-least_force = die eine Messung des kleinsten Bogendrucks
general-ratchet = der Verlust von Darm an neue Feuchte
general-edge_friction = die Reibung an Sattel, Steg und Wirbel
general-seating = der Teil der Reibung, der in den Tagen danach loslässt
general-knot = das Nachgeben der Knoten
general-bedding_in = das weitere Zurechtrücken der Drähte eines Seils
general-stress_creep = das schnellere Kriechen bei stärkerem Zug
general-bundle_creep = das stärkere Kriechen eines Bündels gegenüber einer Faser
general-winding_delay = die Zeit, die Umspinnungen das Wasser aufhalten
general-body_warming = die Zeit, in der das Instrument der Wärme folgt
general-body_soaking = die Zeit, in der das Instrument der Feuchte folgt
general-sounding_length = die Mensur
general-string_loss = der Verlust der Saite in ihrem Zug
general-torsion_q = der Nachklang einer Drehung
general-beyond_measured = das Steiferwerden eines Kunststoffs über die gemessene Spannung hinaus
general-winding_gauge = die Dicke der Umspinnung
general-winding_loss = die Reibung zwischen den Umspinnungen
general-winding_stiffening = die Versteifung durch Umspinnungen
general-winding_torsion = die Versteifung gegen Drehen durch Umspinnungen

## Wie man es besser wissen könnte

remedy-sounding_length = Messen Sie sie vom Sattel zum Steg, auf den Millimeter.
remedy-core_gauge = Messen Sie ein blankes Stück mit der Messschraube, oder wiegen Sie einen Meter davon.
remedy-winding_gauge = Messen Sie außen mit der Messschraube, oder wiegen Sie einen Meter davon.
remedy-creep = Schreiben Sie auf, was jeder Tag kostet.
remedy-edge_friction = Schreiben Sie auf, was jeder Tag kostet.
remedy-seating = Schreiben Sie auf, was jeder Tag kostet.
remedy-knot = Schreiben Sie auf, was jeder Tag kostet.
remedy-body_movement = Schreiben Sie einen Monat lang die Tonhöhe mit dem Wetter auf.
remedy-moisture_left = Schreiben Sie einen Monat lang die Tonhöhe mit dem Wetter auf.
remedy-ratchet = Schreiben Sie einen Monat lang die Tonhöhe mit dem Wetter auf.
remedy-bridge_resistance = Es gehört zum Instrument und ändert sich von Ton zu Ton.

## In Sätzen

about-tension_n = Zug
about-breaking_share = Anteil ihrer Festigkeit
about-brilliance_hz = Wo der Glanz endet
about-settling_d = Tage, bis sie sich setzt
about-season_cent = Verstimmung mit den Jahreszeiten
about-bow_window_db = Spielraum für den Bogen, nach der Theorie
nearly-all = fast alles
doubt-share = { $cause } { $share }
doubt-in-short = Zum Zweifel über „{ $about }“ trägt { $cause } { $share } bei.
doubt-sentence = Zum Zweifel über „{ $about }“ trägt { $cause } { $share } bei{ $more }.{ $remedy }
