"""Does the reader of the page notice when the page contradicts its numbers?

Copies the workspace and plants one contradiction after another: in the code of the page, where the variable PLANTED chooses
which, and in the messages of both languages. Prints which the reader objects to; fails if it misses one. Two builds of the
page; CARGO_TARGET_DIR may name a folder where its dependencies are compiled already.

    python3 tests/contradictions.py [FOLDER]      FOLDER takes the copy; a temporary one by default
"""

import os
import re
import shutil
import subprocess
import sys
import tempfile
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
CASES = "300"
SWITCH = """
/// Whether a contradiction is planted; only in copies made by tests/contradictions.py.
pub fn planted(name: &str) -> bool {
    static NAME: std::sync::OnceLock<String> = std::sync::OnceLock::new();
    NAME.get_or_init(|| std::env::var("PLANTED").unwrap_or_default()) == name
}

/// The number that was asked for first.
pub fn stale(value: f64) -> f64 {
    static FIRST: std::sync::OnceLock<f64> = std::sync::OnceLock::new();
    *FIRST.get_or_init(|| value)
}
"""
# What is planted, in which file, and what stands there in place of what.
IN_CODE = {
    "more and less are swapped": ("words/reasons.rs", "if above { p.more() }", "if above != planted { p.more() }"),
    "a step is told of other strings": ("words/set.rs", "upper = &names[i], lower", "upper = &names[if planted { 0 } else { i }], lower"),
    "what turns is told of another string": ("words/certainty.rs", "names.get(t.string)", "names.get(if planted { names.len() - 1 - t.string } else { t.string })"),
    "kilograms are pounds": ("units.rs", "fixed(force.kilograms_force(), 1)", "fixed(if planted { force.pounds_force() } else { force.kilograms_force() }, 1)"),
    "a pull is that of an earlier set": ("words/set.rs", "units::force(q.value)", "units::force(if planted { crate::stale(q.value) } else { q.value })"),
    "shares are rounded down": ("units.rs", "fixed(share * 100.0, 0)", "fixed(if planted { libm::floor(share * 100.0) } else { share * 100.0 }, 0)"),
    "a family has another's name": ("words/set.rs", "count = members.len(), family = key,", 'count = members.len(), family = if planted && key == "synthetic" { "wound-gut" } else { key },'),
    "a cost is missing": ("components/string_card.rs", "string.costs.iter().map(", "string.costs.iter().skip(usize::from(planted)).map("),
    "a caution stands on another card": ("pages/set.rs", "c.string == Some(i)", "c.string == Some(if planted { (i + 1) % names.len() } else { i })"),
    "a sentence stands where it is not so": ("components/string_card.rs", 'if string.grade == "sometimes" {', 'if (string.grade == "sometimes") != planted {'),
    "the day is a week later": ("pages/set.rs", "units::days(days)", "units::days(if planted { days + 7.0 } else { days })"),
    "the load is called higher": ("words/set.rs", "place < 1.0 / 3.0", "place < if planted { 0.1 } else { 1.0 / 3.0 }"),
    "two columns are swapped": ("pages/compare.rs", "{ cell(one) }", "{ cell(if planted { other } else { one }) }"),
    "likely is called very likely": ("words/days.rs", "if chance >= VERY_LIKELY {", "if chance >= if planted { LIKELY } else { VERY_LIKELY } {"),
    "a sentence is no message": ("pages/set.rs", '<p class="lede">{ words::lead(set) }</p>', '<p class="lede">{ words::lead(set) }if planted { { " The first is much brighter." } }</p>'),
}
IN_MESSAGES = {
    "compared-elasticity": ("de/reasons.ftl", "um { $this }, die andere um { $other }", "um { $other }, die andere um { $this }"),
    "property-brilliance_hz.more": ("de/property.ftl", ".more = heller", ".more = dunkler"),
    "judged-price": ("en/reasons.ftl", "Its materials cost more.", "Its materials cost less."),
    "sure-likely": ("de/certainty.ftl", "sind wahrscheinlich die besten", "sind kaum die besten"),
    "nights-how": ("en/days.ftl", "90 times in 100", "80 times in 100"),
    "family-plain-gut": ("de/naming.ftl", "family-plain-gut = blanker Darm", "family-plain-gut = umsponnener Darm"),
}


def copied(folder):
    for part in ("Cargo.toml", "Cargo.lock", "rust-toolchain.toml", ".cargo", "src", "tests", "README.md"):
        source = ROOT / part
        if source.is_dir():
            shutil.copytree(source, folder / part, dirs_exist_ok=True)
        elif source.exists():
            shutil.copy2(source, folder / part)


def plant(path, before, after):
    text = path.read_text()
    if before not in text:
        sys.exit(f"{path}: “{before}” is not there any more")
    path.write_text(text.replace(before, after))


def run(folder, test, **more):
    environment = dict(os.environ, RUST_BACKTRACE="0", ROPEWALK_CASES=CASES, **more)
    command = ["cargo", "test", "--offline", "--package", "reader", "--test", "reader", "--", test]
    told = subprocess.run(command, cwd=folder, env=environment, capture_output=True, text=True)
    if "running " not in told.stdout:
        sys.exit(told.stderr)
    return told.returncode == 0, told.stdout


def main():
    folder = Path(sys.argv[1]) if len(sys.argv) > 1 else Path(tempfile.mkdtemp(prefix="contradictions-"))
    folder.mkdir(parents=True, exist_ok=True)
    copied(folder)
    app = folder / "src/app"
    (app / "lib.rs").write_text((app / "lib.rs").read_text() + SWITCH)
    for name, (path, before, after) in IN_CODE.items():
        plant(app / path, before, after.replace("planted", f'crate::planted("{name}")'))
    agrees, told = run(folder, "the_text_never")
    if not agrees:
        sys.exit("the reader objects without any contradiction:\n" + told)
    missed = 0
    for name in IN_CODE:
        agrees, told = run(folder, "the_text_never", PLANTED=name)
        first = re.search(r"objections; the first:\n(.*)", told)
        missed += agrees
        print(f"{'MISSED' if agrees else 'seen'}: {name}" + (f"\n    {first[1][:160]}" if first else ""), flush=True)
    for path, before, after in IN_MESSAGES.values():
        plant(folder / "src/catalogue" / path, before, after)
    _, told = run(folder, "messages_")
    for name, (path, _, after) in IN_MESSAGES.items():
        seen = re.search(rf'"{re.escape(name)}[:\[]', told)
        missed += not seen
        print(f"{'seen' if seen else 'MISSED'}: {name} in {path} reads “{after}”")
    print(f"{len(IN_CODE) + len(IN_MESSAGES) - missed} of {len(IN_CODE) + len(IN_MESSAGES)} contradictions are seen")
    sys.exit(missed > 0)


main()
