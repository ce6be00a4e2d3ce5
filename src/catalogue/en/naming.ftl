### What things are called.

metal-aluminium = aluminium
metal-titanium = titanium
metal-chrome-steel = chrome steel
metal-nickel = nickel
metal-copper = copper
metal-silver = silver
metal-tungsten = tungsten
metal-gold = gold
