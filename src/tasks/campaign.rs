//! `cargo campaign`: the tests that draw their cases by chance, with far more cases than a proof has time for.

use tasks::setup::{self, Fault};

/// One campaign.
struct Campaign {
    name: &'static str,
    /// The variable that says how many cases are tried, and how many these are.
    cases: (&'static str, &'static str),
    /// What `cargo test` is told.
    test: &'static [&'static str],
}

/// All of them.
const ALL: [Campaign; 5] = [
    Campaign {
        name: "people",
        cases: ("ROPEWALK_PEOPLE", "5000"),
        test: &["-p", "tests", "--test", "fits"],
    },
    Campaign {
        name: "runaways",
        cases: ("ROPEWALK_RUNAWAYS", "20000"),
        test: &["-p", "tests", "--test", "fits", "hostile_answers"],
    },
    Campaign {
        name: "fuzz",
        cases: ("ROPEWALK_FUZZ", "1000000"),
        test: &["-p", "tests", "--test", "fuzz"],
    },
    Campaign { name: "reader", cases: ("ROPEWALK_CASES", "100000"), test: &["-p", "reader"] },
    Campaign { name: "kills", cases: ("ROPEWALK_KILLS", "300"), test: &["-p", "e2e", "kills"] },
];

/// Runs the campaigns that are named, or all of them.
pub(crate) fn run(names: &[String]) -> Result<(), Fault> {
    let known: Vec<&str> = ALL.iter().map(|campaign| campaign.name).collect();
    if let Some(name) = names.iter().find(|name| !known.contains(&name.as_str())) {
        return Err(format!("{name} is none of the campaigns {}", known.join(", ")));
    }
    let is_wanted = |name: &str| names.is_empty() || names.iter().any(|wanted| wanted == name);
    // The page that is killed has to be built.
    if is_wanted("kills") {
        setup::for_building()?;
        setup::build()?;
    }
    let mut failed = Vec::new();
    for Campaign { name, cases: (variable, cases), test } in &ALL {
        if !is_wanted(name) {
            continue;
        }
        println!("== {name}: {cases} cases ==");
        let mut command = setup::tests(test);
        command.args(["--", "--nocapture"]).env(variable, cases);
        failed.extend(setup::succeed(&mut command).err());
    }
    if failed.is_empty() { Ok(()) } else { Err(failed.join("\n")) }
}
