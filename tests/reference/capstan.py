"""What friction can hold at the ends of a string: the balance of forces on its pieces, along an edge and along the turns.

On a piece that turns by d theta the edge presses with T d theta and friction can hold mu times that: dT = mu T d theta, stepped
along the edge from the side that is pulled less. `over_an_edge` is how much more the other side can be pulled, as a share.
On the peg the pull falls the same way, turn by turn; `in_the_turns_m` is how long a piece at the whole pull would hold as much
stretch as all the turns together.
Made with:  python3 capstan.py > capstan.json
"""

import json

import numpy as np
from scipy.integrate import solve_ivp

edges = []
for friction, degrees in ((0.05, 12.0), (0.10, 12.0), (0.17, 12.0), (0.26, 12.0), (0.10, 22.0), (0.17, 22.0), (0.26, 22.0), (0.26, 40.0)):
    run = solve_ivp(lambda angle, pull: friction * pull, (0.0, np.radians(degrees)), [1.0], rtol=1e-11, atol=1e-13)
    edges.append({"friction": friction, "degrees": degrees, "over_an_edge": float(f"{run.y[0, -1] - 1:.8g}")})

turns = []
for friction, peg in ((0.10, 0.007), (0.17, 0.007), (0.15, 0.011), (0.26, 0.012)):
    radius = peg / 2
    # Forty turns; the second member of the state adds up the stretch.
    run = solve_ivp(
        lambda angle, state: (-friction * state[0], state[0] * radius), (0.0, 80 * np.pi), [1.0, 0.0], rtol=1e-10, atol=1e-14
    )
    turns.append({"friction": friction, "peg_m": peg, "in_the_turns_m": float(f"{run.y[1, -1]:.7g}")})

print(json.dumps({"edges": edges, "turns": turns}, indent=1))
