### Where numbers stand on ground that was not measured.

## Caveats

caveat-stress-not-measured = Its core is pulled harder or less hard than in the measurements of how stiff it sounds; that stiffness is held at the end of what was measured.
caveat-wire-not-tabled = One wire of its core is thinner or thicker than the strengths of wire are tabled for; the strength is held at the end of the table.
caveat-breaks = It would break before it comes to pitch.

## What a doubt comes from

doubt-density = the density of { $material }
doubt-modulus = the stiffness of { $material } to a slow pull
doubt-fast_modulus = the stiffness of { $material } while it sounds
doubt-strength = the strength of { $material }
doubt-poisson = how much { $material } narrows when it stretches
doubt-loss = the inner friction of { $material }
doubt-creep = the creep of { $material }
doubt-expansion = how far warmth lengthens { $material }
doubt-moisture_left = how much of what water does is felt in { $material } under its pull
doubt-softening = how warmth softens { $material }
doubt-water = how much water { $material } takes up
doubt-diffusivity = how fast water gets into { $material }
doubt-swelling_along = how far water lengthens { $material }
doubt-swelling_across = how far water thickens { $material }
doubt-damp_softening = how far water softens { $material }
doubt-damp_creep = how far damp quickens the creep of { $material }
doubt-shear = the stiffness of { $material } to a twist
general-air_density = the density of the air
general-air_viscosity = the stickiness of the air
general-body_expansion = how far warmth lengthens the instrument
general-body_movement = how far the instrument itself moves with the damp
general-bonding = how firmly wires or filaments hold together in bending
general-bridge_resistance = how easily the bridge gives
general-brilliance_loss = where one takes the shine to end
general-constructional = how far a new strand lies closer
general-core_gauge = the diameter of the core
general-endurance = what a core bears for ever
general-friction_drop = how far the hair’s friction falls when it slides
general-least_force = the one measurement of the least bow force
general-ratchet = what gut loses in the first damp spell
general-edge_friction = the friction over nut, bridge and peg
general-seating = how much of what friction holds lets go in the days after
general-knot = how far knots give
general-bedding_in = how far the wires of a strand still find their places
general-stress_creep = how far a harder pull quickens creep
general-bundle_creep = how much more a bundle creeps than one thread
general-winding_delay = how long windings keep water out
general-body_warming = how soon the instrument follows warmth
general-body_soaking = how soon the instrument follows damp
general-sounding_length = the sounding length
general-string_loss = the string’s loss in its pull
general-torsion_q = how long a twist rings
general-beyond_measured = how a polymer stiffens beyond the stress at which it was measured
general-winding_gauge = the thickness of the winding
general-winding_loss = the friction between windings
general-winding_stiffening = how far windings stiffen a string
general-winding_torsion = how far windings stiffen it to a twist

## How one could know it better

remedy-sounding_length = Measure it from nut to bridge, to the millimetre.
remedy-core_gauge = Measure a bare piece with a micrometer, or weigh a metre of it.
remedy-winding_gauge = Measure the outside with a micrometer, or weigh a metre of it.
remedy-creep = Write down what each day costs.
remedy-edge_friction = Write down what each day costs.
remedy-seating = Write down what each day costs.
remedy-knot = Write down what each day costs.
remedy-body_movement = Write down the pitch with the weather, for a month.
remedy-moisture_left = Write down the pitch with the weather, for a month.
remedy-ratchet = Write down the pitch with the weather, for a month.
remedy-bridge_resistance = It belongs to the instrument, and changes from note to note.

## In sentences

about-tension_n = tension
about-breaking_share = the share of its strength
about-brilliance_hz = where the shine ends
about-settling_d = the days to settle
about-season_cent = the drift over the seasons
about-bow_window_db = the room for the bow, by theory
nearly-all = nearly all
doubt-share = { $cause } { $share }
doubt-in-short = { $Cause } decides { $share } of the doubt about { $about }.
doubt-sentence = { $Cause } decides { $share } of the doubt about { $about }{ $more }.{ $remedy }
