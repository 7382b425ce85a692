//! Protocol files: a family, its protocols, the part they share, and the rules of findings.

use std::collections::BTreeSet;

use body::{ALL_KEYS, Mode, Position};
use operative::DIMENSIONS;
use plan::{SlingPosition, Wear};
use serde_json::{Value, json};

use super::shape::{
    angle, any, boolean, count, day, defined, effort, evidence_ids, file, id, list, load, one_of, table, text,
    with_definitions, words,
};

/// The schema of a protocol, of a shared part, and of the rules of findings.
///
/// A protocol needs `id`, `edition`, `title`, `summary` and `horizon`; the others hold tables
/// only, so the schema requires none of them and the reader does.
pub fn protocol() -> Value {
    let keys = [
        vec![
            ("id", id()),
            ("edition", text()),
            ("title", text()),
            ("summary", text()),
            ("horizon", day()),
            ("evidence", evidence()),
            ("parts", list(id())),
            ("stage", list(stage())),
            ("sling", list(sling(true))),
            ("limit", list(limit())),
            ("passive_by", list(passive_by())),
            ("goal", list(goal())),
            ("exercise", list(exercise_use())),
            ("visit", list(visit())),
            ("return", list(back_to())),
            ("posture", list(posture())),
        ],
        vec![
            ("choice", list(choice())),
            ("rule", list(rule())),
            ("refusal", list(remark())),
            ("caution", list(remark())),
        ],
    ]
    .concat();
    definitions(file(
        "Protocol",
        "Stages, sling, limits, goals, exercises, visits and rules, in days from surgery. What no line allows is not allowed.",
        table(&[], &keys),
    ))
}

/// The schema of a family: which protocol is the default, and what is asked.
pub fn family() -> Value {
    let select = table(
        &["id", "title", "protocol"],
        &[
            ("id", id()),
            ("title", text()),
            ("protocol", id()),
            ("when", when()),
            ("when_any", when()),
            ("evidence", evidence()),
        ],
    );
    let mut large = condition();
    large["properties"]["says"] = text();
    large["required"] = json!(["fact", "says"]);
    let on_request = table(&["protocol"], &[("protocol", id()), ("confirm_large", large), ("evidence", evidence())]);
    let question = table(
        &["id", "path", "text", "answered_by"],
        &[
            ("id", id()),
            ("path", text()),
            ("text", text()),
            ("answered_by", facts()),
            ("unless_capped_by", id()),
            ("only_when_chosen", id()),
            ("offers_passive_from", day()),
            ("when", when()),
            ("when_any", when()),
            ("evidence", evidence()),
        ],
    );
    definitions(file(
        "Family of protocols",
        "Which protocol a record gets, and what has to be answered before anybody signs.",
        table(
            &["id", "title", "procedure", "default", "safe_arc_until_stage"],
            &[
                ("id", id()),
                ("title", text()),
                ("procedure", words(operative::Procedure::WORDS)),
                ("default", id()),
                ("safe_arc_until_stage", id()),
                ("protocols", list(id())),
                ("select", list(select)),
                ("on_request", list(on_request)),
                ("question", list(question)),
                ("not_read", list(table(&["facts", "because"], &[("facts", list(facts())), ("because", text())]))),
            ],
        ),
    ))
}

fn definitions(schema: Value) -> Value {
    with_definitions(schema, &[("condition", condition()), ("evidence", evidence_ids()), ("keys", keys())])
}

fn evidence() -> Value {
    list(defined("evidence"))
}

fn facts() -> Value {
    one_of(DIMENSIONS.iter().map(|dimension| dimension.name))
}

/// A condition names a fact and one of that fact's own classes.
fn condition() -> Value {
    let mut condition = table(&["fact"], &[("fact", facts()), ("has", text()), ("at_least", text())]);
    let per_fact: Vec<Value> = DIMENSIONS
        .iter()
        .map(|dimension| {
            let classes = one_of(dimension.classes.iter().map(|class| class.name));
            json!({
                "if": { "properties": { "fact": { "const": dimension.name } }, "required": ["fact"] },
                "then": { "properties": { "has": classes, "at_least": classes } },
            })
        })
        .collect();
    condition["allOf"] = json!(per_fact);
    condition["oneOf"] = json!([{ "required": ["has"] }, { "required": ["at_least"] }]);
    condition
}

fn when() -> Value {
    list(defined("condition"))
}

/// `joint/movement`, or `joint/*` for every movement of the joint.
fn keys() -> Value {
    let mut names = BTreeSet::new();
    for key in ALL_KEYS.iter() {
        names.insert(format!("{}/{}", key.joint.name(), key.movement.name()));
        names.insert(format!("{}/*", key.joint.name()));
    }
    one_of(names.iter().map(String::as_str))
}

fn modes() -> Value {
    any(&[json!({ "const": "all" }), list(words(Mode::WORDS))])
}

fn choice_is() -> Value {
    table(&["id", "is"], &[("id", id()), ("is", text())])
}

fn steps() -> Value {
    list(table(
        &["from"],
        &[
            ("from", day()),
            ("until", day()),
            ("allowed", one_of(["no", "free"].into_iter())),
            ("up_to", any(&[angle(), load(), effort()])),
        ],
    ))
}

fn sling(own_evidence: bool) -> Value {
    let mut keys = vec![
        ("from", day()),
        ("until", day()),
        ("wear", words(Wear::WORDS)),
        ("position", words(SlingPosition::WORDS)),
        ("except", list(text())),
        ("choice", choice_is()),
    ];
    if own_evidence {
        keys.push(("evidence", evidence()));
    }
    table(&["from", "wear"], &keys)
}

fn stage() -> Value {
    let criterion = table(
        &["id", "text"],
        &[("id", id()), ("text", text()), ("key", text()), ("at_least", angle()), ("evidence", evidence())],
    );
    table(
        &["id", "title", "gate"],
        &[("id", id()), ("title", text()), ("gate", day()), ("criteria", list(criterion)), ("evidence", evidence())],
    )
}

fn limit() -> Value {
    table(
        &["id", "title", "keys", "modes", "steps"],
        &[
            ("id", id()),
            ("title", text()),
            ("keys", list(defined("keys"))),
            ("position", words(Position::WORDS)),
            ("modes", modes()),
            ("steps", steps()),
            ("choice", choice_is()),
            ("opened_by_surgeon", boolean()),
            ("evidence", evidence()),
        ],
    )
}

fn passive_by() -> Value {
    table(&["keys", "day"], &[("keys", list(defined("keys"))), ("day", day()), ("evidence", evidence())])
}

fn goal() -> Value {
    table(
        &["id", "key", "from", "due"],
        &[
            ("id", id()),
            ("key", text()),
            ("from", angle()),
            ("to", angle()),
            ("due", day()),
            ("shown_from_stage", id()),
            ("or_other_shoulder", boolean()),
            ("evidence", evidence()),
        ],
    )
}

fn exercise_use() -> Value {
    table(
        &["id", "stage"],
        &[
            ("id", id()),
            ("stage", id()),
            ("until_stage", id()),
            ("only_without", text()),
            ("without_measurement", boolean()),
            (
                "dose",
                table(&["repetitions", "repetitions_to"], &[("repetitions", count()), ("repetitions_to", count())]),
            ),
            ("evidence", evidence()),
        ],
    )
}

fn visit() -> Value {
    table(
        &["purpose", "due", "latest"],
        &[("purpose", text()), ("due", day()), ("latest", day()), ("evidence", evidence())],
    )
}

fn back_to() -> Value {
    table(
        &["activity", "from"],
        &[
            ("activity", id()),
            ("from", day()),
            ("opened_by_surgeon", boolean()),
            ("note", text()),
            ("evidence", evidence()),
        ],
    )
}

fn posture() -> Value {
    table(
        &["id", "title", "modes", "until"],
        &[
            ("id", id()),
            ("title", text()),
            ("modes", modes()),
            ("only", one_of(["lying on the back"].into_iter())),
            ("until", day()),
            ("evidence", evidence()),
        ],
    )
}

fn choice() -> Value {
    table(
        &["id", "title", "options"],
        &[("id", id()), ("title", text()), ("options", list(text())), ("evidence", evidence())],
    )
}

fn rule() -> Value {
    let limits = table(
        &["keys", "modes", "steps"],
        &[
            ("keys", list(defined("keys"))),
            ("position", words(Position::WORDS)),
            ("modes", modes()),
            ("steps", steps()),
        ],
    );
    let gate = table(&["stage", "day"], &[("stage", id()), ("day", day())]);
    table(
        &["id", "title"],
        &[
            ("id", id()),
            ("title", text()),
            ("when", when()),
            ("when_any", when()),
            ("choice", choice_is()),
            ("limits", list(limits)),
            ("cap", id()),
            ("sling", list(sling(false))),
            ("gates", list(gate)),
            ("evidence", evidence()),
        ],
    )
}

fn remark() -> Value {
    table(
        &["id", "title"],
        &[
            ("id", id()),
            ("title", text()),
            ("when", when()),
            ("when_any", when()),
            ("invites", boolean()),
            ("evidence", evidence()),
        ],
    )
}
