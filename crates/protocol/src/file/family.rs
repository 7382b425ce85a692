//! Reading the file of a family.

use diagnostic::{Diagnostic, FileId, Sink};
use document::{Table, nearest};
use operative::{DIMENSIONS, dim, dimension};
use quantity::PostoperativeDay;

use super::evidence_of::{self, UseOf};
use super::rules::{condition_of, read_when, text_of};
use super::steps::day_number;
use super::{Condition, FamilyFile, FamilyQuestion, OnRequest, Select};

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
        span,
    })
}

fn read_select(mut table: Table<'_>, sink: &mut Sink) -> Option<Select> {
    let id = text_of(&mut table, "id", sink);
    let title = text_of(&mut table, "title", sink);
    let protocol = text_of(&mut table, "protocol", sink);
    let when = read_when(&mut table, sink);
    let evidence = evidence_of::read(&mut table, UseOf::Limit, sink);
    table.finish(sink);
    Some(Select { id: id?, title: title?, protocol: protocol?, when, evidence })
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
    let id = text_of(&mut table, "id", sink);
    let path = text_of(&mut table, "path", sink);
    let text = text_of(&mut table, "text", sink);
    let answered_by = table.require("answered_by", sink).and_then(|value| value.text(sink));
    let answered_by = answered_by.and_then(|name| {
        let found = dimension(&name.value);
        if found.is_none() {
            let mut fault =
                Diagnostic::error("unknown-fact", format!("`{}` is not a fact of a record", name.value)).at(name.span);
            if let Some(near) = nearest(&name.value, DIMENSIONS.iter().map(|dimension| dimension.name)) {
                fault = fault.help(format!("did you mean \"{near}\"?"));
            }
            sink.push(fault);
        }
        found
    });
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
    })
}
