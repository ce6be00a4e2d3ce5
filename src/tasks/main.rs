//! The commands of the repository: serve, proof, campaign, ask, and the last step of a build.
//!
//! `.cargo/config.toml` gives each its short name. What they share with tests is in the library beside this file.
#![allow(clippy::print_stdout, reason = "this is a program for the terminal")]

mod campaign;
mod proof;

use std::env;
use std::io::{self, Read, Write};
use std::path::PathBuf;
use std::process::ExitCode;

use tasks::server::Server;
use tasks::setup::{self, Fault};
use tasks::{finish, place};

/// What the commands are, for someone who asked for none of them.
const HELP: &str = "\
cargo serve [PORT]     build the page and serve it on this machine (port 8080, or the next free one)
cargo proof            run every check; --only STAGE runs one, --plant STAGE makes one fail
cargo campaign [NAME]  run the tests that draw their cases by chance, with far more cases than a proof
cargo ask < REQUEST    answer one JSON request without a browser; exit code 2 if it is refused
cargo ask --schema     print the JSON Schema of requests and replies";

fn main() -> ExitCode {
    let words: Vec<String> = env::args().skip(1).collect();
    let (command, rest) =
        words.split_first().map_or(("", &[][..]), |(command, rest)| (command.as_str(), rest));
    let outcome = match command {
        "serve" => serve(rest),
        "proof" => proof::Wish::read(rest).map(|wish| {
            let tally = proof::prove(&wish);
            println!("\n{tally}");
            ExitCode::from(u8::from(tally.failed > 0))
        }),
        "campaign" => campaign::run(rest).map(|()| ExitCode::SUCCESS),
        "ask" if rest == ["--schema"] => schema(),
        "ask" if rest.is_empty() => ask(),
        "finish" => finish_build(),
        _ => Err(HELP.to_owned()),
    };
    outcome.unwrap_or_else(|fault| {
        eprintln!("{fault}");
        ExitCode::FAILURE
    })
}

/// Builds the page and serves it until the program is ended.
fn serve(words: &[String]) -> Result<ExitCode, Fault> {
    let port = match words {
        [] => 8080,
        [port] => port.parse().map_err(|_| format!("{port} is not a port: 0 to 65535"))?,
        _ => return Err(HELP.to_owned()),
    };
    setup::for_building()?;
    setup::build()?;
    let server = Server::start_near(&place::dist(), port)
        .map_err(|error| format!("no free port from {port} on: {error}"))?;
    println!("Ropewalk is at {}  (Ctrl+C ends it)", server.url());
    server.wait();
    Ok(ExitCode::SUCCESS)
}

/// Prints the JSON Schema of the door.
fn schema() -> Result<ExitCode, Fault> {
    let schema =
        finish::schema().map_err(|error| format!("the schema cannot be written: {error}"))?;
    println!("{schema}");
    Ok(ExitCode::SUCCESS)
}

/// Answers the request on the standard input.
fn ask() -> Result<ExitCode, Fault> {
    let mut request = Vec::new();
    // A byte more than is allowed is enough to be refused; the input may never end.
    io::stdin()
        .take(protocol::REQUEST_BYTES as u64 + 1)
        .read_to_end(&mut request)
        .map_err(|error| format!("the request cannot be read: {error}"))?;
    let reply = protocol::answer_bytes(&request);
    match writeln!(io::stdout(), "{reply}") {
        // Whoever reads it has seen enough.
        Err(error) if error.kind() == io::ErrorKind::BrokenPipe => {}
        outcome => outcome.map_err(|error| format!("the reply cannot be written: {error}"))?,
    }
    let refused = serde_json::from_str::<serde_json::Value>(&reply)
        .map_or(true, |reply| reply["reply"] == "refused");
    Ok(ExitCode::from(if refused { 2 } else { 0 }))
}

/// Trunk calls this when it has built the page into a folder of its own.
fn finish_build() -> Result<ExitCode, Fault> {
    let folder = env::var_os("TRUNK_STAGING_DIR")
        .map(PathBuf::from)
        .ok_or("this is a step of `trunk build`")?;
    finish::finish(&folder).map_err(|error| format!("the build cannot be finished: {error}"))?;
    Ok(ExitCode::SUCCESS)
}
