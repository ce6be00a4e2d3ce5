### Wie die Dinge heißen.

metal-aluminium = Aluminium
metal-titanium = Titan
metal-chrome-steel = Chromstahl
metal-nickel = Nickel
metal-copper = Kupfer
metal-silver = Silber
metal-tungsten = Wolfram
metal-gold = Gold
