"""Which formulas could be two per cent wrong without a published or reference check noticing?

Copies the workspace, lets every function of src/strings/physics multiply what it returns by 1.02 when MUTATE names it, builds
once, and runs the published and the reference checks for one function after another. The reference programs are not run
again: their stored output stands in. Prints the functions whose mutant survives.

    python3 tests/mutate.py [FOLDER]      FOLDER takes the copy; a temporary one by default

With CARGO_TARGET_DIR unset the copy keeps its own target folder, so that nothing here is touched.
"""

import os
import re
import shutil
import subprocess
import sys
import tempfile
from pathlib import Path

FACTOR = 1.02
ROOT = Path(__file__).resolve().parent.parent
MUTATION = """//! Multiplies what the named function returns; only in copies made by tests/mutate.py.
#![allow(missing_docs)]

use crate::quantity::*;

pub trait Scaled { fn scaled(self, by: f64) -> Self; }
impl Scaled for f64 { fn scaled(self, by: f64) -> Self { self * by } }
impl<T: Scaled> Scaled for Option<T> { fn scaled(self, by: f64) -> Self { self.map(|x| x.scaled(by)) } }
macro_rules! scaled { ($($t:ty),*) => { $(impl Scaled for $t { fn scaled(self, by: f64) -> Self { <$t>::new(self.get() * by) } })* } }
scaled!(TYPES);

pub fn apply<T: Scaled>(function: &str, value: T) -> T {
    static NAME: std::sync::OnceLock<String> = std::sync::OnceLock::new();
    let name = NAME.get_or_init(|| std::env::var("MUTATE").unwrap_or_default());
    if name == function { value.scaled(FACTOR) } else { value }
}
"""


def mutable(path):
    """The text of a module whose functions obey MUTATE, their names, and the types they return."""
    text, names, types = path.read_text(), [], set()
    out, at = "", 0
    for found in re.finditer(r"^pub fn (\w+)", text, re.M):
        name = f"{path.stem}::{found[1]}"
        depth, closing = 0, text.index("(", found.end())
        while True:
            depth += {"(": 1, ")": -1}.get(text[closing], 0)
            if depth == 0:
                break
            closing += 1
        opened = text.index("{", closing)
        returned = text[closing + 1 : opened].strip().removeprefix("->").strip()
        closed = text.index("\n}", opened)
        out += text[at:opened] + "{ let value: " + returned + " = (|| {" + text[opened + 1 : closed] + "\n})();\n"
        out += f'crate::mutation::apply("{name}", value)'
        at = closed
        names.append(name)
        types.update(re.findall(r"\w+", returned.split("::")[-1]))
    return out + text[at:], names, types


def main():
    folder = Path(sys.argv[1]) if len(sys.argv) > 1 else Path(tempfile.mkdtemp(prefix="mutants-"))
    folder.mkdir(parents=True, exist_ok=True)
    for part in ("Cargo.toml", "Cargo.lock", "rust-toolchain.toml", ".cargo", "src", "tests", "README.md"):
        source = ROOT / part
        if source.is_dir():
            shutil.copytree(source, folder / part, dirs_exist_ok=True)
        elif source.exists():
            shutil.copy2(source, folder / part)
    names, types = [], set()
    for path in sorted((folder / "src/strings/physics").glob("*.rs")):
        text, found, returned = mutable(path)
        path.write_text(text)
        names += found
        types |= returned
    quantities = (folder / "src/strings/quantity.rs").read_text()
    types = sorted(t for t in types if re.search(rf"\b{t}\b", quantities) and t not in ("f64", "Option"))
    text = MUTATION.replace("TYPES", ", ".join(types)).replace("FACTOR", str(FACTOR))
    (folder / "src/strings/mutation.rs").write_text(text)
    lib = folder / "src/strings/lib.rs"
    lib.write_text(lib.read_text() + "\npub mod mutation;\n")
    python = folder / "tests/reference/python.rs"
    stored = 'serde_json::from_str(&fs::read_to_string(folder().join(format!("{name}.json"))).expect("stored")).expect("JSON")'
    python.write_text(python.read_text().replace("let live = run(name);", f"let live: Value = {stored};\n    let _ = run;"))
    environment = dict(os.environ, RUST_BACKTRACE="0")
    environment.setdefault("CARGO_TARGET_DIR", str(folder / "target"))
    build = ["cargo", "test", "--offline", "--package", "tests", "--test", "published", "--test", "reference", "--no-run"]
    told = subprocess.run(build, cwd=folder, env=environment, capture_output=True, text=True)
    # Cargo names them as seen from the folder it ran in.
    programs = [folder / p for p in re.findall(r"\((\S+/deps/(?:published|reference)-\w+)\)", told.stderr)]
    if told.returncode or len(programs) != 2:
        sys.exit(told.stderr)

    def survives(name):
        changed = dict(environment, MUTATE=name)
        return all(subprocess.run([p, "-q", "--skip", "recompute"], cwd=folder / "tests", env=changed, capture_output=True).returncode == 0 for p in programs)

    if not survives(""):
        sys.exit("the checks fail without any mutant")
    alive = [name for name in names if survives(name)]
    print(f"{len(names) - len(alive)} of {len(names)} functions are noticed when {FACTOR - 1:.0%} off; not noticed:")
    for name in alive:
        print(f"  {name}")


main()
