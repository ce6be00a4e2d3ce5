//! A static file server for the built page: this machine only, files only, nothing kept between requests.
//!
//! It leaves out what a server on the open network needs (TLS, ranges, compression, long-lived connections).

use std::fs;
use std::io::{self, BufRead, BufReader, Read, Write};
use std::net::{Ipv4Addr, SocketAddr, TcpListener, TcpStream};
use std::path::{Component, Path, PathBuf};
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, Ordering};
use std::thread::{self, JoinHandle};
use std::time::Duration;

/// What the page may load: its own files, and its own WebAssembly. The same words stand in `www/index.html`.
///
/// Sent as a header too, because a worker takes its policy from its own response and not from the page.
pub const POLICY: &str = "default-src 'self'; script-src 'self' 'wasm-unsafe-eval'; img-src 'self' data: blob:; \
    media-src 'self' blob:; worker-src 'self'; object-src 'none'; base-uri 'none'; form-action 'none'";

/// How long a connection may stay silent before it is dropped.
const PATIENCE: Duration = Duration::from_secs(10);

/// The longest request head that is read; a browser's is about a kilobyte.
const HEAD_MAX: u64 = 32 * 1024;

/// A running server. It stops when it is dropped.
#[derive(Debug)]
pub struct Server {
    address: SocketAddr,
    stopping: Arc<AtomicBool>,
    listening: Option<JoinHandle<()>>,
}

impl Server {
    /// Serves `folder` on `port`; 0 takes any free port.
    ///
    /// # Errors
    /// When the port is taken or may not be used.
    pub fn start(folder: &Path, port: u16) -> io::Result<Self> {
        let listener = TcpListener::bind((Ipv4Addr::LOCALHOST, port))?;
        let address = listener.local_addr()?;
        let stopping = Arc::new(AtomicBool::new(false));
        let (stop, folder) = (Arc::clone(&stopping), folder.to_path_buf());
        let listening = thread::spawn(move || {
            for connection in listener.incoming() {
                if stop.load(Ordering::SeqCst) {
                    break;
                }
                let (stop, folder) = (Arc::clone(&stop), folder.clone());
                if let Ok(stream) = connection {
                    // A visitor who goes away in the middle of a file is no fault of the server.
                    thread::spawn(move || drop(serve(&stream, &folder, &stop)));
                }
            }
        });
        Ok(Self { address, stopping, listening: Some(listening) })
    }

    /// Serves `folder` on `port`, or on the next free one above it.
    ///
    /// # Errors
    /// When none of a hundred ports can be had.
    pub fn start_near(folder: &Path, port: u16) -> io::Result<Self> {
        let mut last = io::Error::from(io::ErrorKind::AddrInUse);
        for port in port..=port.saturating_add(99) {
            match Self::start(folder, port) {
                Ok(server) => return Ok(server),
                Err(error) => last = error,
            }
        }
        Err(last)
    }

    /// The address of the page, ending in a slash.
    #[must_use]
    pub fn url(&self) -> String {
        format!("http://{}/", self.address)
    }

    /// Waits until the server ends; it ends only with the program.
    pub fn wait(mut self) {
        if let Some(listening) = self.listening.take() {
            drop(listening.join());
        }
    }
}

impl Drop for Server {
    fn drop(&mut self) {
        let Some(listening) = self.listening.take() else {
            return;
        };
        self.stopping.store(true, Ordering::SeqCst);
        // The listener wakes only for a visitor, so this is one.
        drop(TcpStream::connect(self.address));
        drop(listening.join());
    }
}

/// Reads one request and answers it.
fn serve(stream: &TcpStream, folder: &Path, stopped: &AtomicBool) -> io::Result<()> {
    stream.set_read_timeout(Some(PATIENCE))?;
    stream.set_write_timeout(Some(PATIENCE))?;
    let mut head = BufReader::new(stream.take(HEAD_MAX));
    let mut request = String::new();
    head.read_line(&mut request)?;
    let mut line = String::new();
    while head.read_line(&mut line)? > 2 {
        line.clear();
    }
    // Browsers open connections ahead; none of them is answered when the server has ended.
    if stopped.load(Ordering::SeqCst) {
        return Ok(());
    }
    let mut words = request.split(' ');
    let (method, target) = (words.next().unwrap_or_default(), words.next().unwrap_or_default());
    let (status, kind, body) = if method != "GET" && method != "HEAD" {
        (
            "405 Method Not Allowed",
            "text/plain; charset=utf-8",
            b"only GET and HEAD are answered\n".to_vec(),
        )
    } else if let Some((path, body)) =
        file(folder, target).and_then(|path| fs::read(&path).ok().map(|body| (path, body)))
    {
        ("200 OK", kind(&path), body)
    } else {
        ("404 Not Found", "text/plain; charset=utf-8", b"no such file\n".to_vec())
    };
    let length = body.len();
    let mut stream = stream;
    // `no-cache` makes the browser ask each time, so that a new build is seen at the next reload.
    write!(
        stream,
        "HTTP/1.1 {status}\r\nContent-Type: {kind}\r\nContent-Length: {length}\r\nCache-Control: no-cache\r\n\
         Content-Security-Policy: {POLICY}; frame-ancestors 'none'\r\nX-Content-Type-Options: nosniff\r\n\
         Referrer-Policy: no-referrer\r\nCross-Origin-Opener-Policy: same-origin\r\nConnection: close\r\n\r\n"
    )?;
    if method == "GET" {
        stream.write_all(&body)?;
    }
    stream.flush()
}

/// The file that a request names, if it lies inside the folder.
fn file(folder: &Path, target: &str) -> Option<PathBuf> {
    let path = decode(target.split(['?', '#']).next()?)?;
    let relative = Path::new(path.strip_prefix('/')?);
    // Only plain names: no `..`, no root, no drive.
    if !relative.components().all(|part| matches!(part, Component::Normal(_))) {
        return None;
    }
    let full = folder.join(relative);
    Some(if full.is_dir() { full.join("index.html") } else { full })
}

/// Undoes the percent signs of an address.
fn decode(text: &str) -> Option<String> {
    let mut bytes = Vec::with_capacity(text.len());
    let mut rest = text.bytes();
    while let Some(byte) = rest.next() {
        if byte == b'%' {
            let pair = [rest.next()?, rest.next()?];
            bytes.push(u8::from_str_radix(str::from_utf8(&pair).ok()?, 16).ok()?);
        } else {
            bytes.push(byte);
        }
    }
    String::from_utf8(bytes).ok().filter(|path| !path.contains(['\0', '\\']))
}

/// The media type of a file. WebAssembly must have its own, or the browser will not compile it while it loads.
fn kind(path: &Path) -> &'static str {
    match path.extension().and_then(|extension| extension.to_str()) {
        Some("html") => "text/html; charset=utf-8",
        Some("js") => "text/javascript; charset=utf-8",
        Some("css") => "text/css; charset=utf-8",
        Some("wasm") => "application/wasm",
        Some("json") => "application/json",
        Some("webmanifest") => "application/manifest+json",
        Some("svg") => "image/svg+xml",
        Some("png") => "image/png",
        Some("woff2") => "font/woff2",
        Some("txt" | "md") => "text/plain; charset=utf-8",
        _ => "application/octet-stream",
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::place;

    fn ask(server: &Server, request: &str) -> String {
        let mut stream = TcpStream::connect(server.address).unwrap();
        write!(stream, "{request} HTTP/1.1\r\nHost: x\r\n\r\n").unwrap();
        let mut reply = String::new();
        stream.read_to_string(&mut reply).unwrap();
        reply
    }

    fn folder(name: &str) -> PathBuf {
        let folder = place::target().join("tmp").join(name);
        fs::create_dir_all(folder.join("sub dir")).unwrap();
        fs::write(folder.join("index.html"), "<p>hello").unwrap();
        fs::write(folder.join("sub dir/a.wasm"), "wasm").unwrap();
        folder
    }

    #[test]
    fn files_come_with_their_media_type() {
        let server = Server::start(&folder("server-files"), 0).unwrap();
        let page = ask(&server, "GET /?x=1");
        assert!(page.starts_with("HTTP/1.1 200 OK") && page.ends_with("<p>hello"), "{page}");
        assert!(page.contains("Content-Security-Policy: default-src 'self';"), "{page}");
        assert!(ask(&server, "GET /sub%20dir/a.wasm").contains("Content-Type: application/wasm"));
        assert!(ask(&server, "HEAD /").ends_with("\r\n\r\n"));
    }

    #[test]
    fn nothing_outside_the_folder_is_served() {
        let server = Server::start(&folder("server-outside/inner"), 0).unwrap();
        fs::write(place::target().join("tmp/server-outside/secret.txt"), "secret").unwrap();
        for target in [
            "/../secret.txt",
            "/%2e%2e/secret.txt",
            "/sub%20dir/../../secret.txt",
            "//etc/passwd",
            "/%",
            "secret.txt",
            "/..%5csecret.txt",
        ] {
            assert!(ask(&server, &format!("GET {target}")).starts_with("HTTP/1.1 404"), "{target}");
        }
        assert!(ask(&server, "POST /").starts_with("HTTP/1.1 405"));
    }

    #[test]
    fn a_taken_port_leads_to_the_next() {
        let folder = folder("server-port");
        let first = Server::start(&folder, 0).unwrap();
        let second = Server::start_near(&folder, first.address.port()).unwrap();
        assert_ne!(first.address, second.address);
        drop(first);
        assert!(ask(&second, "GET /").contains("hello"));
    }

    #[test]
    fn an_ended_server_answers_nobody_on_a_connection_from_before() {
        let server = Server::start(&folder("server-ended"), 0).unwrap();
        let mut before = TcpStream::connect(server.address).unwrap();
        // It is accepted when a later one has been answered.
        ask(&server, "GET /");
        drop(server);
        // Whether this still goes out or not, nothing comes back.
        drop(write!(before, "GET / HTTP/1.1\r\nHost: x\r\n\r\n"));
        let mut reply = String::new();
        drop(before.read_to_string(&mut reply));
        assert_eq!(reply, "");
    }

    #[test]
    fn the_page_states_the_same_policy() {
        let page = fs::read_to_string(place::root().join("www/index.html")).unwrap();
        assert!(
            page.contains(POLICY),
            "www/index.html must carry the policy of server.rs, word for word"
        );
    }
}
