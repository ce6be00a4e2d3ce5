// The bowed string of sweep/bowing.rs in a JavaScript engine, compiled with vector instructions and without.
// node bowing.mjs WITH.js WITHOUT.js: writes the seconds of each, the least of many, and what it came to.

import { createRequire } from "node:module";

const require = createRequire(import.meta.url);
const modules = { with: require(process.argv[2]), without: require(process.argv[3]) };
const ROUNDS = 7;

function once(run) {
  const start = performance.now();
  const value = run();
  return [(performance.now() - start) / 1e3, value];
}

const told = {};
for (const bass of [false, true]) {
  for (const warm of [false, true]) {
    const strings = Object.entries(modules).map(([name, module]) => [name, new module.Bowing(bass, warm)]);
    const runs = strings.flatMap(([name, string]) => {
      const key = (what) => [bass ? "bass" : "violin", warm ? "warm" : "speed", name, what].join(" ");
      return [
        [key("one"), () => string.one()],
        [key("alone"), () => string.row(false)],
        [key("lanes"), () => string.row(true)],
      ];
    });
    // All in turn, so that a machine that is busy for a while slows none more than another.
    for (let round = 0; round < ROUNDS; round++) {
      for (const [key, run] of runs) {
        const [seconds, value] = once(run);
        told[key] = { seconds: Math.min(seconds, told[key]?.seconds ?? Infinity), value };
      }
    }
  }
}
for (const bass of [false, true]) {
  const string = new modules.with.Bowing(bass, false);
  for (const starts of [false, true]) {
    const [seconds, value] = once(() => string.map(starts));
    told[`${bass ? "bass" : "violin"} with ${starts ? "starts" : "places"}`] = { seconds, value };
  }
}
const set = new modules.with.Bowing(false, false);
for (let piece = 0; piece < 4; piece++) {
  const all = Array.from({ length: ROUNDS }, () => once(() => set.piece(piece)));
  const seconds = all.map(([seconds]) => seconds).sort((a, b) => a - b)[(ROUNDS - 1) / 2];
  told[`piece ${piece}`] = { seconds, value: all[0][1] };
}
console.log(JSON.stringify(told));
