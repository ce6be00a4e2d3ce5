//! What to do, to check and to beware of, as sentences.

/// A caution.
#[must_use]
pub fn caution(key: &str) -> &str {
    match key {
        "eyes" => {
            "A string under tension can snap and cut. Keep your eyes away from it, and wear glasses."
        }
        "one-at-a-time" => {
            "Change one string at a time. The bridge leans as you tune, so keep setting it upright; without string pressure the soundpost falls."
        }
        "not-above-pitch" => "Never tune above the planned pitch.",
        "do-not-tension" => {
            "Do not put tension on an instrument with a crack, an open seam, a loose fingerboard or a fallen soundpost. Take it to a luthier."
        }
        "adult-fits" => "An adult fits a child’s strings.",
        "luthier-first" => {
            "The instrument is old, light or valuable: ask a luthier before you fit anything."
        }
        "steel-for-gut" => {
            "This set puts steel where gut was. The instrument and its tailpiece may not be made for it: ask a luthier first."
        }
        "load-near-top" => {
            "The set pulls near the top of what is usual for this kind of instrument. Ask a luthier whether yours may carry it."
        }
        "gut-near-limit" => {
            "This gut works near its limit and will break from time to time. Keep a spare."
        }
        "far-from-usual-note" => {
            "It is tuned far from the note for which such strings are made, so less is known about it."
        }
        "not-settled-in-time" => {
            "It will not have settled by the day. Fit later, or choose another set."
        }
        "may-not-settle-in-time" => "It may not have settled by the day. Allow time to tune.",
        "luthier-decides" => "The tool advises; a luthier who sees the instrument decides.",
        other => other,
    }
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
    match key {
        "grooves" => {
            "Grooves of nut and bridge: the new string should sit in them, neither pinched nor loose."
        }
        "graphite" => "A soft pencil in the grooves lets the string slide.",
        "protector" => {
            "A small skin or sleeve under the thin top string keeps it from cutting the bridge."
        }
        "fine-tuner" => "The peg is coarse for these strings: a fine tuner is needed, or patience.",
        "height" => {
            "The kind of core changes, so the strings may swing wider or narrower: check their height over the fingerboard."
        }
        "bridge-and-post" => "Bridge upright, soundpost in its place, before, during and after.",
        "pegbox-wall" => "The winding should not be pressed against the wall of the pegbox.",
        "keep-old-set" => "Keep the old set: it is the way back, and a spare.",
        "long-string" => "The lowest string runs over the extension: it must be the longer kind.",
        other => other,
    }
}

/// What to look at before buying: the finding, and what to do.
#[must_use]
pub fn first_look(key: &str) -> (&str, &str) {
    match key {
        "old-strings" => (
            "The strings are old.",
            "A fresh set of the same kind may be the whole answer. Strings lose their shine and their truth long before they break.",
        ),
        "wolf-luthier" => (
            "A wolf is the instrument’s.",
            "Strings move it a little and rarely cure it. A luthier can look at the soundpost, the fit of the bridge and a weight on the tailpiece side.",
        ),
        "breaking-place" => (
            "Look where the strings break.",
            "Always at one place means a sharp groove or edge there, and a new string will break there too.",
        ),
        "false-string" => (
            "One false string is worn or faulty.",
            "Replace that one with another of the same kind before you change the set.",
        ),
        "pegs-and-grooves" => (
            "Out of tune is often the pegs.",
            "Pegs that slip or stick, tight grooves and a loose tail cord move the pitch more than any string does.",
        ),
        "bow-and-rosin" => (
            "Try the bow first.",
            "Old hair or the wrong rosin makes any string slow, or makes it whistle.",
        ),
        "post-and-bridge" => (
            "Uneven strings are often the set-up.",
            "A soundpost or bridge a hair out of place makes one side louder. A luthier can see it.",
        ),
        "string-height" => (
            "Measure the height of the strings.",
            "Strings that stand too high are hard on any hand. A luthier can lower them.",
        ),
        other => (other, ""),
    }
}

/// Why constructions were left out.
#[must_use]
pub fn limit(key: &str) -> &str {
    match key {
        "not-makeable" => "cannot be made",
        "animal" => "come from an animal",
        "nickel" => "have nickel under the fingers",
        "pickup" => "have no steel for the pickup",
        "other-family" => "are of another kind than you asked for",
        "nobody-makes-it" => "are made by nobody we know of",
        "tension" => "would pull outside what is made here",
        "gauge" => "are thinner or thicker than what is made here",
        "stretch" => "stretch more or less than what is made here",
        "winding-share" => "carry more or less winding than what is made here",
        "breaking" => "are too near to breaking",
        other => other,
    }
}

/// A wish that could be given up.
#[must_use]
pub fn relax(key: &str) -> &str {
    match key {
        "animal_free" => "nothing from animals",
        "nickel_allergy" => "no nickel under the fingers",
        "magnetic_pickup" => "steel for the magnetic pickup",
        "strings" => "the kind or note you asked for on single strings",
        "gut_to_its_limit" => "no plain gut near its breaking point",
        other => other,
    }
}
