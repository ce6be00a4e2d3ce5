//! Drives the built page in a real browser.
