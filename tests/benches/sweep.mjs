// The sweep of src/strings/report/lean/sweep.rs in plain JavaScript, and the compiled one in the same engine.
// node sweep.mjs NUMBERS.json MODULE.js: writes the seconds of one sweep, the median of many, and what it came to.

import { readFileSync } from "node:fs";
import { createRequire } from "node:module";

const n = JSON.parse(readFileSync(process.argv[2], "utf8"));
const compiled = createRequire(import.meta.url)(process.argv[3]);
const TIMES = 20;

function sweep(n) {
  const { length: l, pitch: f } = n;
  const rigidOfOne = 4 * (l * f) * (l * f);
  const layerOfOne = Math.sqrt((2 * Math.PI * f) / n.air_viscosity) / 4;
  let sum = 0;
  for (let i = 0; i < n.strings; i++) {
    const thick = n.thinnest + n.step * i;
    const mean = n.diameter + thick;
    const gauge = n.diameter + 2 * thick;
    const winding = n.density * Math.PI * thick * mean;
    const tube = (n.modulus * Math.PI * mean * mean * mean * thick) / 8;
    const whole = winding + n.mass;
    const rigid = rigidOfOne * whole;
    const tension = (2 * rigid) / (1 + Math.sqrt(1 + (4 * rigid) / n.axial));
    const mass = whole / (1 + tension / n.axial);
    const stress = tension / n.area;
    const held = Math.min(Math.max(stress, n.slope_from), n.slope_to);
    const fast = n.fast_modulus + n.fast_slope * (held + n.beyond * (stress - held));
    const core = n.bending_of_one * fast;
    const lossy = core * n.core_loss + tube * n.winding_loss;
    const brilliance = f * Math.sqrt((((n.brilliance_loss * l * l) / (Math.PI * Math.PI)) * tension) / lossy);
    const inharmonicity = (((Math.PI * Math.PI) / (l * l)) * n.stiffening * core) / tension;
    const layer = gauge * layerOfOne;
    const air =
      ((((n.air_density * Math.PI) / 4) * gauge * gauge) / mass) *
      ((2 * Math.SQRT2 * layer + 1) / (2 * layer * layer));
    const bending = (((Math.PI * Math.PI) / (l * l)) * lossy) / tension;
    const bridge = (2 / (Math.PI * n.resistance)) * Math.sqrt(tension * mass);
    const loss = (air + n.string_loss + bending) / (1 + inharmonicity) + bridge;
    const ring = Math.log(1000) / (Math.PI * f) / loss;
    sum += tension + gauge + winding / whole + brilliance + ring;
  }
  return sum;
}

// One measurement runs the sweep several times: the clock is coarse.
function seconds(run) {
  const all = Array.from({ length: 99 }, () => {
    const start = performance.now();
    run();
    return (performance.now() - start) / 1e3 / TIMES;
  });
  return all.sort((a, b) => a - b)[49];
}

let total = 0;
const plain = () => {
  for (let i = 0; i < TIMES; i++) total += sweep(n);
};
const report = {
  sum: sweep(n),
  plain: seconds(plain),
  alone: seconds(() => (total += compiled.sweep(false, TIMES))),
  lanes: seconds(() => (total += compiled.sweep(true, TIMES))),
  total,
};
console.log(JSON.stringify(report));
