//! Today's limits as drawings: an arc for each main movement.

use exercise::{Demand, Kind};
use quantity::Degrees;

use crate::desk::Desk;
use crate::document::{Block, Captioned};
use crate::pictures::{self, Angle, Drawn};
use crate::texts::Texts;

/// The visit tests whose drawings show a limit.
const SHOWN: &[&str] = &[
    "forward-elevation-passive",
    "external-rotation-passive",
    "external-rotation-raised-passive",
    "internal-rotation-passive",
];

/// Room for one, in millimeters: four stand side by side.
const ROOM_MM: (f64, f64) = (42.0, 44.0);

/// An arc for each main movement that has a limit in degrees on the day of issue, the line that says stop at the limit.
pub(crate) fn arcs(desk: &Desk<'_>, texts: &Texts<'_>) -> Vec<Block> {
    let Some(today) = &desk.prescription.today else { return Vec::new() };
    let drawings: Vec<Captioned> = SHOWN
        .iter()
        .filter_map(|id| {
            let entry = desk.catalogue.get(id).filter(|entry| entry.kind == Kind::Test)?;
            let target = entry.target()?;
            // As far as the limit, or as the movement goes at all.
            let limit = pictures::limit_in_degrees(target.key, &today.limits)?.min(target.amount.greatest_angle()?);
            if limit <= Degrees::whole(0) {
                return None;
            }
            let reach = |demand: &Demand| {
                if demand.key == target.key { limit } else { prescription::reach(entry, demand, None, &today.limits) }
            };
            let (side, look) = (texts.side, desk.settings.paper.look);
            let drawn =
                Drawn { entry, reach: &reach, angle: Angle::Asked, limit: Some(limit), side, look, room_mm: ROOM_MM };
            let drawing = pictures::drawing(&drawn, texts.messages)?;
            let told = [("key", target.key.movement.name().into()), ("degrees", limit.to_string().into())];
            Some(Captioned { caption: texts.with("letter-arc", &told), drawing })
        })
        .collect();
    if drawings.is_empty() {
        return Vec::new();
    }
    vec![Block::Together { blocks: vec![texts.heading(2, "letter-arcs-title"), Block::Drawings { drawings }] }]
}
