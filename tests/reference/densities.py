"""Densities of the winding metals, from the periodictable package (kg/m3 at room temperature).

Sterling silver is 92.5 % silver and 7.5 % copper by mass, its volumes added.
Made with:  python3 densities.py > densities.json
"""

import json

import periodictable


def density(symbol):
    return round(getattr(periodictable, symbol).density * 1000, 6)


sterling = 1 / (0.925 / density("Ag") + 0.075 / density("Cu"))
rows = [
    {"metal": "aluminium", "kg_m3": density("Al")},
    {"metal": "titanium", "kg_m3": density("Ti")},
    {"metal": "nickel", "kg_m3": density("Ni")},
    {"metal": "copper", "kg_m3": density("Cu")},
    {"metal": "silver", "kg_m3": round(sterling, 3)},
    {"metal": "tungsten", "kg_m3": density("W")},
    {"metal": "gold", "kg_m3": density("Au")},
]
print(json.dumps({"densities": rows}, indent=1))
