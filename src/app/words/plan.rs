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
        "tuned-up" => {
            "At its higher tuning the set pulls harder: a quarter more for a whole tone. Ask a luthier, and tune back down after."
        }
        "kept-near-breaking" => {
            "At its highest tuning this string works nearer to breaking than it should. Change it too, or do not tune it up."
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

/// Why constructions were left out.
#[must_use]
pub fn limit(key: &str) -> &str {
    match key {
        "not-makeable" => "cannot be made",
        "animal" => "come from an animal",
        "nickel" => "have nickel under the fingers",
        "same-fault" => "would bother in the same way",
        "pickup" => "have no steel for the pickup",
        "other-family" => "are of another kind than you asked for",
        "nobody-makes-it" => "are made by nobody we know of",
        "tension" => "would pull outside what is made here",
        "gauge" => "are thinner or thicker than what is made here",
        "stretch" => "stretch more or less than what is made here",
        "winding-share" => "carry more or less winding than what is made here",
        "breaking" => "are too near to breaking",
        "not-settled" => "would hardly settle by the day",
        "needs-fine-tuner" => "cannot be tuned on the peg alone, and there is no fine tuner",
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
        "must_settle" => "that it must have settled by the day",
        "also_tuned" => "the other pitch at which it is used",
        other => other,
    }
}
