//! From where the figure is seen.

use body::{Angle, Vector};
use kurbo::Point;

/// A camera far away: nothing gets smaller with distance.
///
/// # Units and shape
/// In the room of [`body`]: azimuth 0 looks at the front of somebody who stands, negative azimuths come from the side
/// of the operated arm, −90 being straight from that side. Somebody who lies on the back or the front has the head at
/// −X or +X, so azimuth 0 looks from the feet or from the head. Elevation looks down from above.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Camera {
    /// Around the upright axis.
    pub azimuth: Angle,
    /// Above the horizon.
    pub elevation: Angle,
}

/// A place as the camera sees it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Projected {
    /// To the right of the picture.
    pub x: f64,
    /// Up in the picture.
    pub y: f64,
    /// Toward the viewer.
    pub depth: f64,
}

impl Projected {
    /// The place in the picture.
    pub const fn point(self) -> Point {
        Point::new(self.x, self.y)
    }
}

/// The axes of a camera, computed once for many places.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Axes {
    pub(crate) right: Vector,
    pub(crate) up: Vector,
    pub(crate) toward: Vector,
}

impl Axes {
    pub(crate) fn project(&self, place: Vector) -> Projected {
        Projected { x: place.dot(self.right), y: place.dot(self.up), depth: place.dot(self.toward) }
    }

    pub(crate) fn point(&self, place: Vector) -> Point {
        self.project(place).point()
    }
}

impl Camera {
    /// From degrees.
    pub const fn degrees(azimuth: f64, elevation: f64) -> Self {
        Self { azimuth: Angle::from_degrees(azimuth), elevation: Angle::from_degrees(elevation) }
    }

    /// The direction from the figure to the viewer.
    pub fn toward_viewer(&self) -> Vector {
        let level = self.elevation.cos();
        Vector::new(level * self.azimuth.cos(), self.elevation.sin(), -level * self.azimuth.sin())
    }

    /// The direction that points right in the picture.
    pub fn right(&self) -> Vector {
        Vector::new(-self.azimuth.sin(), 0.0, -self.azimuth.cos())
    }

    /// The direction that points up in the picture.
    pub fn up(&self) -> Vector {
        self.toward_viewer().cross(self.right())
    }

    /// Where a place of the room is in the picture.
    pub fn project(&self, place: Vector) -> Projected {
        self.axes().project(place)
    }

    pub(crate) fn axes(&self) -> Axes {
        Axes { right: self.right(), up: self.up(), toward: self.toward_viewer() }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn check(camera: Camera, place: Vector, x: f64, y: f64, depth: f64) {
        let seen = camera.project(place);
        let error = (seen.x - x).abs() + (seen.y - y).abs() + (seen.depth - depth).abs();
        assert!(error < 1e-12, "{seen:?}");
    }

    #[test]
    fn from_the_front_the_right_hand_is_on_the_left() {
        check(Camera::degrees(0.0, 0.0), Vector::Z, -1.0, 0.0, 0.0);
        check(Camera::degrees(0.0, 0.0), Vector::Y, 0.0, 1.0, 0.0);
        check(Camera::degrees(0.0, 0.0), Vector::X, 0.0, 0.0, 1.0);
    }

    #[test]
    fn from_the_right_side_the_person_faces_right() {
        check(Camera::degrees(-90.0, 0.0), Vector::X, 1.0, 0.0, 0.0);
        check(Camera::degrees(-90.0, 0.0), Vector::Z, 0.0, 0.0, 1.0);
        check(Camera::degrees(-90.0, 90.0), Vector::Y, 0.0, 0.0, 1.0);
    }
}
