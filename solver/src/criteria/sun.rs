//! Where the sun stands: a short almanac, good to a hundredth of a degree between 1950 and 2050 (the low-precision
//! formulas of the Astronomical Almanac, as published by Michalsky 1988), less refraction.

use elbowroom_model::{Brief, Point, WallId};

/// Where the sun stands in the sky.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SunPosition {
    /// Above the horizon, degrees, without refraction.
    pub altitude: f64,
    /// Compass bearing, degrees clockwise from north, 0 to 360.
    pub bearing: f64,
}

/// Declination of the sun and the hour angle at Greenwich, degrees.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Almanac {
    /// Declination, degrees.
    pub declination: f64,
    /// How far the sun is past the meridian of Greenwich, degrees westward, 0 to 360.
    pub greenwich_hour_angle: f64,
}

impl Almanac {
    /// The almanac at `days` since noon (universal time) of 1 January 2000.
    #[must_use]
    pub fn at(days: f64) -> Self {
        let mean_longitude = 280.460 + 0.985_647_4 * days;
        let anomaly = (357.528 + 0.985_600_3 * days).to_radians();
        let longitude = (mean_longitude + 1.915 * anomaly.sin() + 0.020 * (2.0 * anomaly).sin()).to_radians();
        let obliquity = (23.439 - 0.000_000_4 * days).to_radians();
        let right_ascension = (obliquity.cos() * longitude.sin()).atan2(longitude.cos()).to_degrees();
        let declination = (obliquity.sin() * longitude.sin()).asin().to_degrees();
        let sidereal = 280.460_62 + 360.985_647_37 * days;
        Self { declination, greenwich_hour_angle: (sidereal - right_ascension).rem_euclid(360.0) }
    }

    /// Where the sun stands over a place, degrees north and east.
    #[must_use]
    pub fn over(self, latitude: f64, longitude: f64) -> SunPosition {
        sun_at(latitude, self.declination, self.greenwich_hour_angle + longitude)
    }
}

/// Where the sun stands at a latitude when it is `hour_angle` degrees past the meridian (15 degrees an hour).
///
/// ```
/// use elbowroom_solver::criteria::sun::sun_at;
/// let noon = sun_at(39.0, 10.0, 0.0);
/// assert!((noon.altitude - 61.0).abs() < 1e-9 && (noon.bearing - 180.0).abs() < 1e-9);
/// ```
#[must_use]
pub fn sun_at(latitude: f64, declination: f64, hour_angle: f64) -> SunPosition {
    let (sin_lat, cos_lat) = latitude.to_radians().sin_cos();
    let (sin_dec, cos_dec) = declination.to_radians().sin_cos();
    let (sin_hour, cos_hour) = hour_angle.to_radians().sin_cos();
    let up = sin_lat * sin_dec + cos_lat * cos_dec * cos_hour;
    let north = cos_lat * sin_dec - sin_lat * cos_dec * cos_hour;
    let east = -cos_dec * sin_hour;
    SunPosition {
        altitude: up.atan2(east.hypot(north)).to_degrees(),
        bearing: east.atan2(north).to_degrees().rem_euclid(360.0),
    }
}

/// Below this the sun is behind houses and trees, above that it does not reach far into a room, degrees (common practice,
/// no source).
const LOW: std::ops::Range<f64> = 5.0..35.0;

/// Share of the hours of low sun, over the year, in which it shines in through a wall within 60 degrees of square; `None`
/// where latitude or bearing is not known.
#[must_use]
pub fn low_sun_through(brief: &Brief, wall: WallId) -> Option<f64> {
    const SQUARE: f64 = 60.0;
    let outward = bearing_of(brief, wall)?;
    let latitude = brief.room.latitude?;
    let aside = |bearing: f64| ((bearing - outward + 180.0).rem_euclid(360.0) - 180.0).abs();
    let low: Vec<SunPosition> = year(latitude).filter(|sun| LOW.contains(&sun.altitude)).collect();
    // Softened at the edge, so that a wall turned by a hair changes nothing by a leap.
    let through = |sun: &SunPosition| ((SQUARE + 10.0 - aside(sun.bearing)) / 20.0).clamp(0.0, 1.0);
    super::curve::mean(low.iter().map(through)).or(Some(0.0))
}

/// Compass bearing one looks along when facing a wall.
fn bearing_of(brief: &Brief, wall: WallId) -> Option<f64> {
    let (known, bearing) = brief.room.bearing?;
    let outward = |wall: WallId| -> Option<Point> { Some(-brief.room.wall(wall)?.inward()) };
    Some((bearing - (outward(wall)?.degrees() - outward(known)?.degrees())).rem_euclid(360.0))
}

/// Half-hours of the two solstices and an equinox, the equinox twice.
fn year(latitude: f64) -> impl Iterator<Item = SunPosition> {
    const DECLINATIONS: [f64; 4] = [-23.44, 0.0, 0.0, 23.44];
    let hours = (0..48).map(|half| f64::from(half) * 7.5 - 176.25);
    hours.flat_map(move |hour_angle| DECLINATIONS.map(|declination| sun_at(latitude, declination, hour_angle)))
}
