//! The operative record.

use body::{Position, Side};
use evidence::ids;
use operative::{
    Activity, Approach, BeyondDelayed, Biceps, Labrum, OtherShoulder, Part, Procedure, Repair, Sex, StiffShoulder,
    Tendon, Tension, Thickness, Tissue,
};
use serde_json::{Value, json};

use super::shape::{angle, boolean, date, day, file, length, list, load, table, text, whole, words};

/// The schema of a record.
pub fn schema() -> Value {
    let whole_record = table(
        &["patient", "operation"],
        &[
            ("patient", patient()),
            ("operation", operation()),
            ("other_arm", table(&[], &[("shoulder", words(OtherShoulder::WORDS)), ("operated_on", date())])),
            ("risk", risk()),
            (
                "surgeon",
                table(
                    &[],
                    &[
                        ("slower", boolean()),
                        ("stiff_shoulder", words(StiffShoulder::WORDS)),
                        ("beyond_delayed", words(BeyondDelayed::WORDS)),
                        ("safe_arc_kept", boolean()),
                    ],
                ),
            ),
        ],
    );
    file(
        "Operative record",
        "What was found and done. What is not known is left out; unknown takes the safer rule.",
        whole_record,
    )
}

fn patient() -> Value {
    table(
        &["birth_date"],
        &[
            ("id", text()),
            ("birth_date", date()),
            ("sex", words(Sex::WORDS)),
            ("dominant_arm", words(Side::WORDS)),
            ("stature", length()),
            ("mass", load()),
        ],
    )
}

fn operation() -> Value {
    let goutallier = || whole(0, ids::GOUTALLIER_GRADE_HIGHEST.number() as i64);
    table(
        &["date", "side", "approach"],
        &[
            ("date", date()),
            ("side", words(Side::WORDS)),
            ("approach", words(Approach::WORDS)),
            ("procedure", words(Procedure::WORDS)),
            ("revision", boolean()),
            (
                "tear",
                table(
                    &[],
                    &[
                        ("anteroposterior", length()),
                        ("mediolateral", length()),
                        ("retraction", length()),
                        ("retraction_patte", whole(1, ids::PATTE_GRADE_HIGHEST.number() as i64)),
                        ("delamination", boolean()),
                    ],
                ),
            ),
            ("tendon", list(tendon())),
            (
                "fatty_infiltration",
                table(
                    &[],
                    &[
                        ("supraspinatus", goutallier()),
                        ("infraspinatus", goutallier()),
                        ("teres_minor", goutallier()),
                        ("subscapularis", goutallier()),
                    ],
                ),
            ),
            ("also", also()),
            ("safe_arc", list(safe_arc())),
        ],
    )
}

fn tendon() -> Value {
    table(
        &["name"],
        &[
            ("name", words(Tendon::WORDS)),
            ("thickness", words(Thickness::WORDS)),
            ("part", words(Part::WORDS)),
            ("repair", words(Repair::WORDS)),
            ("tissue", words(Tissue::WORDS)),
            ("tension", words(Tension::WORDS)),
        ],
    )
}

fn also() -> Value {
    table(
        &[],
        &[
            ("biceps", words(Biceps::WORDS)),
            ("labrum", words(Labrum::WORDS)),
            ("distal_clavicle_excision", boolean()),
            ("subacromial_decompression", boolean()),
            ("microfracture", boolean()),
            ("capsular_release", boolean()),
            ("other", list(text())),
        ],
    )
}

fn safe_arc() -> Value {
    // Which movements an arc may name is the reader's to judge.
    table(
        &["movement", "up_to"],
        &[
            ("movement", words(body::Movement::WORDS)),
            ("position", words(Position::WORDS)),
            ("up_to", angle()),
            ("until", day()),
        ],
    )
}

fn risk() -> Value {
    table(
        &[],
        &[
            ("diabetes", boolean()),
            ("smoking", boolean()),
            ("bone_density_t_score", json!({ "type": "number" })),
            ("preoperative_stiffness", boolean()),
            ("activity", words(Activity::WORDS)),
            ("pseudoparalysis", boolean()),
        ],
    )
}
