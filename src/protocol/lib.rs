//! The one door to the model: a JSON request goes in, a JSON reply comes out.

/// Answers one request given as JSON text with one reply as JSON text; never fails, never panics.
#[must_use]
pub fn answer(request: &str) -> String {
    format!("{{\"reply\":\"refused\",\"faults\":[{{\"field\":\"ask\",\"message\":\"not ready: {} bytes\"}}]}}", request.len())
}
