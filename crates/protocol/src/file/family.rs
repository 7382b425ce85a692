//! Reading the file of a family.

use diagnostic::{Diagnostic, FileId, Sink, Span, Spanned};
use document::{Table, nearest};
use operative::{DIMENSIONS, DimensionId, dim, dimension};
use quantity::PostoperativeDay;

use super::evidence_of::{self, UseOf};
use super::rules::{condition_of, read_when, text_of};
use super::steps::day_number;
use super::{Condition, FamilyFile, FamilyQuestion, NotRead, OnRequest, Select};

/// Reads a family file.
///
/// # Errors
/// `None` where the file is not TOML or lacks what a family needs; every fault is a diagnostic.
pub fn read(file: FileId, text: &str, sink: &mut Sink) -> Option<FamilyFile> {
    let mut table = document::read(file, text, sink)?;
    let span = table.span;
    let id = text_of(&mut table, "id", sink);
    let title = text_of(&mut table, "title", sink);
    let procedure = table.require("procedure", sink).and_then(|value| value.text(sink));
    let procedure = procedure.and_then(|text| {
        let mask = DIMENSIONS[usize::from(dim::PROCEDURE.0)].has(&text.value);
        if mask.is_none() {
            sink.push(Diagnostic::error("unknown-class", format!("`{}` is not a procedure", text.value)).at(text.span));
        }
        mask.map(|mask| Condition { dimension: dim::PROCEDURE, mask, span: text.span })
    });
    let default = text_of(&mut table, "default", sink);
    let safe_arc_until_stage = text_of(&mut table, "safe_arc_until_stage", sink);
    let protocols: Vec<_> = table.texts("protocols", sink).into_iter().map(|text| text.value).collect();
    let selects = table.tables("select", sink).into_iter().filter_map(|select| read_select(select, sink)).collect();
    let on_request =
        table.tables("on_request", sink).into_iter().filter_map(|request| read_on_request(request, sink)).collect();
    let questions =
        table.tables("question", sink).into_iter().filter_map(|question| read_question(question, sink)).collect();
    let not_read =
        table.tables("not_read", sink).into_iter().flat_map(|not_read| read_not_read(not_read, sink)).collect();
    table.finish(sink);
    Some(FamilyFile {
        id: id?,
        title: title?,
        procedure: procedure?,
        default: default?,
        protocols,
        safe_arc_until_stage: safe_arc_until_stage?,
        selects,
        on_request,
        questions,
        not_read,
        span,
    })
}

fn read_not_read(mut table: Table<'_>, sink: &mut Sink) -> Vec<NotRead> {
    let facts = table.texts("facts", sink);
    let because = text_of(&mut table, "because", sink);
    table.finish(sink);
    let Some(because) = because else { return Vec::new() };
    let read = |fact: &Spanned<String>| Some((fact_of(&fact.value, fact.span, sink)?, fact.span));
    let facts: Vec<_> = facts.iter().filter_map(read).collect();
    facts.into_iter().map(|(dimension, span)| NotRead { dimension, because: because.clone(), span }).collect()
}

/// The dimension of a name.
fn fact_of(name: &str, span: Span, sink: &mut Sink) -> Option<DimensionId> {
    let found = dimension(name);
    if found.is_none() {
        let mut fault = Diagnostic::error("unknown-fact", format!("`{name}` is not a fact of a record")).at(span);
        if let Some(near) = nearest(name, DIMENSIONS.iter().map(|dimension| dimension.name)) {
            fault = fault.help(format!("did you mean \"{near}\"?"));
        }
        sink.push(fault);
    }
    found
}

fn read_select(mut table: Table<'_>, sink: &mut Sink) -> Option<Select> {
    let span = table.span;
    let id = text_of(&mut table, "id", sink);
    let title = text_of(&mut table, "title", sink);
    let protocol = text_of(&mut table, "protocol", sink);
    let when = read_when(&mut table, sink);
    let evidence = evidence_of::read(&mut table, UseOf::Limit, sink);
    table.finish(sink);
    Some(Select { id: id?, title: title?, protocol: protocol?, when, evidence, span })
}

fn read_on_request(mut table: Table<'_>, sink: &mut Sink) -> Option<OnRequest> {
    let protocol = text_of(&mut table, "protocol", sink);
    let confirm_large = table.table("confirm_large", sink).and_then(|mut confirm| {
        let condition = condition_of(&mut confirm, sink);
        let says = text_of(&mut confirm, "says", sink);
        confirm.finish(sink);
        Some((condition?, says?))
    });
    evidence_of::read(&mut table, UseOf::Limit, sink);
    table.finish(sink);
    Some(OnRequest { protocol: protocol?, confirm_large })
}

fn read_question(mut table: Table<'_>, sink: &mut Sink) -> Option<FamilyQuestion> {
    let span = table.span;
    let id = text_of(&mut table, "id", sink);
    let path = text_of(&mut table, "path", sink);
    let text = text_of(&mut table, "text", sink);
    let answered_by = table.require("answered_by", sink).and_then(|value| value.text(sink));
    let answered_by = answered_by.and_then(|name| fact_of(&name.value, name.span, sink));
    let unless_capped_by = table.text("unless_capped_by", sink).map(|text| text.value);
    let offers = table.quantity("offers_passive_from", "day", "day 1", PostoperativeDay::parse, sink);
    let only_when_chosen = table.text("only_when_chosen", sink).map(|text| text.value);
    let when = read_when(&mut table, sink);
    let evidence = evidence_of::read(&mut table, UseOf::Goal, sink);
    if let Some(offers) = offers {
        evidence_of::demand(&[day_number(offers.value, offers.span)], &evidence, sink);
    }
    table.finish(sink);
    Some(FamilyQuestion {
        id: id?,
        path: path?,
        text: text?,
        answered_by: answered_by?,
        unless_capped_by,
        offers_passive_from: offers.map(|offers| offers.value),
        only_when_chosen,
        when,
        evidence,
        span,
    })
}
