//! What to do, to check and to beware of, as sentences.

use super::speech;

/// A caution.
#[must_use]
pub fn caution(key: &str) -> &str {
    speech::of_or_key("caution", key)
}

/// Whether a caution belongs at the top: those that are about this instrument, not about every string.
#[must_use]
pub fn is_urgent(key: &str) -> bool {
    !matches!(
        key,
        "eyes" | "one-at-a-time" | "not-above-pitch" | "do-not-tension" | "luthier-decides"
    )
}

/// Something to look at or do at the set-up.
#[must_use]
pub fn check(key: &str) -> &str {
    speech::of_or_key("check", key)
}

/// Why constructions were left out.
#[must_use]
pub fn limit(key: &str) -> &str {
    speech::of_or_key("limit", key)
}

/// A wish that could be given up.
#[must_use]
pub fn relax(key: &str) -> &str {
    speech::of_or_key("relax", key)
}
