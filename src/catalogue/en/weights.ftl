### The weights, asked as swings, and the wish that moves a set along its balance.

along-title = Between steadiness and colour
along-how = Move it: the whole set follows.
along-picture = Move along it: the whole set follows.

swings-title = Weigh the wishes yourself
swings-how = Think of each as one swing, from the worst to the best that there is. Which swing would you want most? Push it furthest right, and set the others against it. The set follows at once.
swings-reset = Weigh them as my answers do
# What is seen beside the slider, and what is read aloud with the wish’s name before it.
swings-counts = counts { $share } %

swing-feel = from far too slack or stiff to just right
swing-elasticity = from { $times } times too stiff or too elastic to just as wanted
swing-settling = from { $from } to { $to } days until it has settled
swing-warmth = from { $from } to { $to } cents when it gets warm
swing-damp = from { $from } to { $to } cents when it gets damp
swing-response = from the slowest to the quickest made for this place
swing-bow-room = from { $from } to { $to } dB between the lightest and the hardest clean stroke
swing-power = from far off to just as wanted
swing-brightness = from far off to just as wanted
swing-ring = from { $from } to { $to } swings until a plucked note has faded
swing-durability = from { $from } to { $to } % of its strength used
swing-care = from an outside that wears soon to one that lasts
swing-price = from far over what may be spent to within it
swing-availability = from made sometimes to on every shelf
swing-tuning = from { $from } to { $to } cents for a degree of peg
