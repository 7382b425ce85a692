//! The pieces of a person, from joints and build.

use body::Vector;
use kurbo::Point;

use super::arm::ArmFrames;
use super::build::Shape;
use super::grip::Grips;
use super::hair;
use super::hand::Hand;
use super::head::{Head, MarkKind};
use super::joints::{Flank, Joints};
use super::leg::LegFrames;
use super::lines::Line;
use super::loft::{Ring, Shell, Solid};
use super::part::{Ink, JointDisk, Kind, Part, Rim, Scene, Tone};
use super::spec::Legs;
use super::things::{self, Thing};
use super::trunk::{Folds, Trunk};
use crate::camera::Axes;
use body::Hair;

/// Radii of the disks inside which two pieces flow into each other; chosen by eye.
mod disk {
    pub(super) const SHOULDER: f64 = 0.052;
    pub(super) const ELBOW: f64 = 0.042;
    pub(super) const WRIST: f64 = 0.030;
    pub(super) const HIP: f64 = 0.100;
    pub(super) const KNEE: f64 = 0.060;
    pub(super) const FINGER: f64 = 0.013;
    pub(super) const NAPE: f64 = 0.060;
}

/// What is needed to build the pieces.
pub(crate) struct Person<'a> {
    pub(crate) joints: &'a Joints,
    pub(crate) shape: &'a Shape,
    pub(crate) hair: Hair,
    pub(crate) legs: Legs,
    pub(crate) arm_tone: Tone,
    pub(crate) view: Axes,
}

impl Person<'_> {
    pub(crate) fn scene(&self, held: &[Thing]) -> Scene {
        let mut scene = Scene::default();
        let arms = Flank::BOTH.map(|flank| (flank, self.arm_frames(flank)));
        let grips = Grips::of(self.joints, [&arms[0].1, &arms[1].1], held);
        self.torso(&arms, &mut scene);
        self.head(&mut scene);
        if self.legs == Legs::Drawn {
            for flank in Flank::BOTH {
                self.leg(flank, &mut scene);
            }
        }
        for (flank, frames) in arms {
            self.arm(flank, &frames, &self.hand(&frames, flank, &grips), &mut scene);
        }
        for (at, thing) in held.iter().enumerate() {
            things::add(thing, at, &grips, self, &mut scene);
        }
        scene
    }

    /// Where sticks begin and end in the room.
    pub(crate) fn sticks(&self, held: &[Thing]) -> Vec<[Vector; 2]> {
        let arms = Flank::BOTH.map(|flank| self.arm_frames(flank));
        let grips = Grips::of(self.joints, [&arms[0], &arms[1]], held);
        held.iter().filter_map(|thing| things::stick_ends(thing, &grips)).collect()
    }

    /// The trunk in the room.
    pub(crate) const fn trunk(&self) -> Trunk<'_> {
        Trunk { frame: self.joints.skeleton.trunk, shape: self.shape }
    }

    /// The operated arm alone, as one outline.
    pub(crate) fn arm_shells(&self, flank: Flank, held: &[Thing]) -> Vec<Shell> {
        let arms = Flank::BOTH.map(|flank| self.arm_frames(flank));
        let grips = Grips::of(self.joints, [&arms[0], &arms[1]], held);
        let frames = self.arm_frames(flank);
        let hand = self.hand(&frames, flank, &grips);
        let mut solids = vec![frames.upper_arm(self.shape), frames.forearm(self.shape), hand.palm(), hand.thumb()];
        solids.extend(hand.fingers());
        solids.into_iter().map(|solid| self.seen(solid, flank)).collect()
    }

    fn arm_frames(&self, flank: Flank) -> ArmFrames {
        let skeleton = self.joints.skeleton;
        let (arm, joints) = match flank {
            Flank::Operated => (&self.joints.pose.operated, skeleton.operated),
            Flank::Other => (&self.joints.pose.other, skeleton.mirrored().other),
        };
        ArmFrames::of(arm, joints, flank.rotation(skeleton.trunk))
    }

    fn hand(&self, frames: &ArmFrames, flank: Flank, grips: &Grips) -> Hand {
        let (arm, frame) = match flank {
            Flank::Operated => (&self.joints.pose.operated, grips.frames[0]),
            Flank::Other => (&self.joints.pose.other, grips.frames[1]),
        };
        Hand { wrist: frames.joints.wrist, frame, fingers: arm.fingers }
    }

    /// A solid told as of the right half, seen on its own half.
    fn seen(&self, solid: Solid, flank: Flank) -> Shell {
        let solid = if flank == Flank::Operated { solid } else { solid.mirrored() };
        solid.seen(&self.view)
    }

    fn point(&self, place: Vector, flank: Flank) -> Point {
        self.view.point(flank.place(place))
    }

    fn rim(&self, pair: [Kind; 2], limb: &Solid, ring: &Ring, axis: Vector, flank: Flank) -> Rim {
        let limb_start = limb.start().into_iter().map(|place| self.point(place, flank)).collect();
        let middle = self.view.project(flank.place(ring.center)).depth;
        let edge = ring.around(40).map(|place| {
            let seen = self.view.project(flank.place(place));
            (seen.point(), seen.depth >= middle)
        });
        let faces = flank.place(axis).dot(self.view.toward);
        let (faces_viewer, is_wide_open) = (faces > OPENS, faces > OPENS_WIDE);
        let [garment, limb] = pair;
        Rim { garment, limb, edge: edge.collect(), faces_viewer, is_wide_open, limb_start }
    }

    fn torso(&self, arms: &[(Flank, ArmFrames); 2], scene: &mut Scene) {
        let trunk = self.trunk();
        let mut shirt = vec![trunk.shirt().seen(&self.view)];
        for (flank, frames) in arms {
            let side = Trunk { frame: flank.rotation(trunk.frame), ..trunk };
            let shoulder = self.view.project(flank.place(frames.joints.shoulder)).depth;
            let middle = self.view.project(trunk.at(0.0, 0.793, 0.0)).depth;
            let folds = if middle - shoulder > FAR_SIDE { Folds::Hidden } else { Folds::Shown };
            shirt.extend(side.shoulder(frames, folds).into_iter().map(|solid| self.seen(solid, *flank)));
        }
        let whole = Flank::Operated;
        let hips = trunk.hips();
        scene.parts.push(Part::of(Kind::Hips, Tone::Shorts, Ink::Body, vec![hips.seen(&self.view)]));
        let mut shirt = Part::of(Kind::Shirt, Tone::Shirt, Ink::Body, shirt);
        shirt.reshape(shirt.region.with_round_hollows(CLOTH, None));
        scene.parts.push(shirt);
        scene.rims.push(self.rim([Kind::Shirt, Kind::Hips], &hips, &trunk.hem(), -trunk.frame.y(), whole));
        let (head, frame) = (self.joints.skeleton.head, self.joints.head);
        let neck = trunk.neck(head, frame);
        scene.parts.push(Part::of(Kind::Neck, Tone::Skin, Ink::Body, vec![neck.seen(&self.view)]));
        scene.rims.push(self.rim([Kind::Shirt, Kind::Neck], &neck, &trunk.collar(), trunk.collar_axis(), whole));
    }

    fn head(&self, scene: &mut Scene) {
        let head = Head { middle: self.joints.skeleton.head, frame: self.joints.head };
        let view = &self.view;
        let shells = vec![head.skull().seen(view), head.nose().seen(view)];
        let mut skull = Part::of(Kind::Skull, Tone::Skin, Ink::Body, shells);
        for mark in head.marks(view.toward) {
            let faces = mark.outward.dot(view.toward);
            let line = Line::open(mark.line.iter().map(|place| view.point(*place)).collect());
            match mark.kind {
                MarkKind::Eye if faces > 0.40 => skull.extra.push((line, Ink::Eye)),
                MarkKind::Line if faces > 0.10 => skull.extra.push((line, Ink::Face)),
                MarkKind::Eye | MarkKind::Line => {}
            }
        }
        scene.parts.push(skull);
        let hair = hair::seen(&head, self.hair, view);
        if !hair::covers_ears(self.hair) {
            for (flank, ear) in Flank::BOTH.into_iter().zip(head.ears()) {
                let ear = ear.seen(view);
                scene.parts.push(Part::of(Kind::Ear(flank), Tone::Skin, Ink::Hair, vec![ear]));
                scene.over.push((Kind::Ear(flank), Kind::Neck));
            }
        }
        if let Some(hair) = hair {
            if let Some(bun) = hair.bun {
                scene.parts.push(Part::of(Kind::Bun, Tone::Hair, Ink::Hair, vec![bun]));
            }
            scene.parts.push(Part::with_region(Kind::Hair, hair.tone, Ink::Hair, vec![hair.shell], hair.region));
            scene.over.push((Kind::Hair, Kind::Skull));
            if self.hair == Hair::Scarf {
                scene.over.push((Kind::Hair, Kind::Neck));
            }
        }
        scene.over.extend([(Kind::Skull, Kind::Neck), (Kind::Skull, Kind::Shirt)]);
        if head.frame.x().dot(view.toward) < -0.1 {
            let center = view.point(head.at(-0.02, -0.045, 0.0));
            let outer_wins = true;
            let nape = JointDisk { outer: Kind::Skull, inner: Kind::Neck, center, radius: disk::NAPE, outer_wins };
            scene.joints.push(nape);
        }
    }

    fn leg(&self, flank: Flank, scene: &mut Scene) {
        let skeleton = self.joints.skeleton;
        let (joints, foot) = match flank {
            Flank::Operated => (skeleton.operated_leg, self.joints.feet[0]),
            Flank::Other => (skeleton.mirrored().other_leg, self.joints.feet[1].mirrored()),
        };
        let aside = flank.rotation(self.joints.pose.posture.trunk(body::Angle::ZERO)).z();
        let leg = LegFrames { joints, foot, aside };
        let shape = self.shape;
        let thigh = leg.thigh(shape);
        let (hem, axis) = (leg.hem(shape), leg.hem_axis());
        scene.rims.push(self.rim([Kind::Shorts(flank), Kind::Thigh(flank)], &thigh, &hem, axis, flank));
        let pieces = [
            (Kind::Shoe(flank), Tone::Shoes, leg.shoe()),
            (Kind::Shank(flank), Tone::Skin, leg.shank(shape)),
            (Kind::Thigh(flank), Tone::Skin, thigh),
            (Kind::Shorts(flank), Tone::Shorts, leg.shorts(shape)),
        ];
        for (kind, tone, solid) in pieces {
            scene.parts.push(Part::of(kind, tone, Ink::Body, vec![self.seen(solid, flank)]));
        }
        let disk = |outer, inner, place, radius| JointDisk {
            outer,
            inner,
            center: self.point(place, flank),
            radius,
            outer_wins: false,
        };
        scene.joints.push(disk(Kind::Shank(flank), Kind::Thigh(flank), joints.knee, disk::KNEE));
        scene.joints.push(disk(Kind::Shorts(flank), Kind::Hips, joints.hip, disk::HIP));
        scene.over.push((Kind::Shoe(flank), Kind::Shank(flank)));
        // The shirt hangs over the hips of somebody who stands; in the lap of somebody who sits the thigh lies before it.
        if flank.place(axis).dot(-self.joints.skeleton.trunk.y()) > HANGS_OVER {
            scene.over.push((Kind::Shirt, Kind::Shorts(flank)));
        }
        // A thigh that points away is behind the hips it comes from.
        let points_away = flank.place(axis).dot(self.view.toward) < -0.3;
        let shorts = Kind::Shorts(flank);
        scene.over.push(if points_away { (Kind::Hips, shorts) } else { (shorts, Kind::Hips) });
    }

    fn arm(&self, flank: Flank, frames: &ArmFrames, hand: &Hand, scene: &mut Scene) {
        let tone = if flank == Flank::Operated { self.arm_tone } else { Tone::Skin };
        let shape = self.shape;
        let kinds = [
            (Kind::UpperArm(flank), Ink::Body, frames.upper_arm(shape)),
            (Kind::Forearm(flank), Ink::Body, frames.forearm(shape)),
            (Kind::Palm(flank), Ink::Hand, hand.palm()),
        ];
        let fingers = hand.fingers().into_iter().chain([hand.thumb()]).enumerate();
        let fingers = fingers.map(|(order, solid)| (Kind::Finger(flank, order), Ink::Hand, solid));
        let mut roots = hand.finger_roots().into_iter();
        for (kind, ink, solid) in kinds.into_iter().chain(fingers) {
            scene.parts.push(Part::of(kind, tone, ink, vec![self.seen(solid, flank)]));
            if matches!(kind, Kind::Finger(..)) {
                let root = roots.next().unwrap_or(frames.joints.wrist);
                let radius = if kind == Kind::Finger(flank, 4) { 1.6 * disk::FINGER } else { disk::FINGER };
                scene.joints.push(self.joint(kind, Kind::Palm(flank), root, radius, flank));
            }
        }
        let joints = frames.joints;
        let [shoulder, elbow, wrist] = [
            self.joint(Kind::UpperArm(flank), Kind::Shirt, joints.shoulder, disk::SHOULDER, flank),
            self.joint(Kind::Forearm(flank), Kind::UpperArm(flank), joints.elbow, disk::ELBOW, flank),
            self.joint(Kind::Palm(flank), Kind::Forearm(flank), joints.wrist, disk::WRIST, flank),
        ];
        let depth = |place: Vector| self.view.project(flank.place(place)).depth;
        let trunk_at = |place: Vector| {
            // The middle of the trunk at the same height.
            let along = self.joints.skeleton.trunk.y();
            depth_of(&self.view, along * along.dot(flank.place(place)))
        };
        let behind = |place: Vector| trunk_at(place) - depth(place);
        let outer_wins = behind(joints.shoulder) < ARMHOLE_BEHIND;
        scene.joints.extend([JointDisk { outer_wins, ..shoulder }, elbow, wrist]);
        let hangs_beside = behind(joints.elbow).abs() < BESIDE;
        if hangs_beside {
            scene.over.push((Kind::UpperArm(flank), Kind::Shirt));
        }
        // Not where the forearm goes behind the back.
        let keeps_beside = behind(joints.wrist) < behind(joints.shoulder).max(0.0) + BEHIND_THE_BACK;
        if hangs_beside && keeps_beside {
            let pieces = (0..5).map(|order| Kind::Finger(flank, order));
            for piece in [Kind::UpperArm(flank), Kind::Forearm(flank), Kind::Palm(flank)].into_iter().chain(pieces) {
                let legs = Flank::BOTH.into_iter().flat_map(|leg| [Kind::Shorts(leg), Kind::Thigh(leg)]);
                let below = [Kind::Shirt, Kind::Hips].into_iter().chain(legs);
                scene.over.extend(below.map(|under| (piece, under)));
            }
        }
    }

    fn joint(&self, outer: Kind, inner: Kind, place: Vector, radius: f64, flank: Flank) -> JointDisk {
        JointDisk { outer, inner, center: self.point(place, flank), radius, outer_wins: false }
    }
}

/// How far around a hollow the cloth is stretched.
const CLOTH: f64 = 0.022;
/// The cosine of how far a hip bends before the thigh comes out from under the shirt.
const HANGS_OVER: f64 = 0.60;
/// Cosines of the angle between the axis of an open end and the view from which one sees into it, and far into it.
const OPENS: f64 = 0.20;
const OPENS_WIDE: f64 = 0.34;
/// An elbow no farther than this from the middle of the trunk hangs beside it and is drawn over it.
const BESIDE: f64 = 0.070;
/// A wrist farther behind the shoulder than this is behind the back.
const BEHIND_THE_BACK: f64 = 0.022;
/// A shoulder farther behind the middle of the trunk than this is on its far side.
const FAR_SIDE: f64 = 0.060;
/// A shoulder no farther behind the middle of the trunk than this shows its armhole.
const ARMHOLE_BEHIND: f64 = 0.078;

fn depth_of(view: &Axes, place: Vector) -> f64 {
    view.project(place).depth
}
