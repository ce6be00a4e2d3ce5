//! What does the arm do? Speed, force and place of the bow as functions of time.

/// A number that runs in straight lines from point to point, and stays where the points end.
#[derive(Clone, Debug, PartialEq)]
pub struct Track(Vec<(f64, f64)>);

impl Track {
    /// Points of time (s) and value, in the order of time.
    #[must_use]
    pub fn through(mut points: Vec<(f64, f64)>) -> Self {
        points.sort_by(|a, b| a.0.total_cmp(&b.0));
        Self(points)
    }

    /// The same value always.
    #[must_use]
    pub fn steady(value: f64) -> Self {
        Self(vec![(0.0, value)])
    }

    /// From zero at `slope` a second up to `most`.
    #[must_use]
    pub fn rising(slope: f64, most: f64) -> Self {
        if slope > 0.0 { Self(vec![(0.0, 0.0), (most / slope, most)]) } else { Self::steady(0.0) }
    }

    /// Its value at `time` seconds; zero where there are no points.
    #[must_use]
    pub fn at(&self, time: f64) -> f64 {
        let after = self.0.partition_point(|(t, _)| *t <= time);
        match (after.checked_sub(1).and_then(|i| self.0.get(i)), self.0.get(after)) {
            (Some(a), Some(b)) => a.1 + (b.1 - a.1) * (time - a.0) / (b.0 - a.0),
            (Some(only), None) | (None, Some(only)) => only.1,
            (None, None) => 0.0,
        }
    }
}

/// A stroke of the bow.
#[derive(Clone, Debug, PartialEq)]
pub struct Gesture {
    /// Speed of the bow, m/s.
    pub speed: Track,
    /// Force of the bow on the string, N.
    pub force: Track,
    /// Place of the bow from the bridge, as a share of the sounding length.
    pub place: Track,
}

impl Gesture {
    /// A bow of one speed, force and place from the first moment.
    #[must_use]
    pub fn steady(speed: f64, force: f64, place: f64) -> Self {
        Self {
            speed: Track::steady(speed),
            force: Track::steady(force),
            place: Track::steady(place),
        }
    }

    /// A bow that starts from rest on the string and gains speed at `acceleration`, m/s², for as long as it lasts.
    #[must_use]
    pub fn accelerated(acceleration: f64, force: f64, place: f64) -> Self {
        Self { speed: Track::rising(acceleration, 1e3), ..Self::steady(0.0, force, place) }
    }
}
