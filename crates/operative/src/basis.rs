//! What of the record led to a class: the answer to "why?".

use diagnostic::{Span, Spanned};

use crate::age::completed_years;
use crate::dimension::DimensionId;
use crate::dimensions::dim;
use crate::record::Record;
use crate::words::Tendon;

/// One key of the record that a class rests on.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Basis {
    /// The path from the top of the record.
    pub path: String,
    /// Where it is written; `None` where it is not.
    pub span: Option<Span>,
    /// What is written, or `not recorded`.
    pub shown: String,
}

/// What stands for a key that is not written.
pub(crate) const NOT_RECORDED: &str = "not recorded";

/// The basis of one optional key.
pub(crate) fn of<T: Copy>(path: impl Into<String>, value: Option<Spanned<T>>, shown: impl Fn(T) -> String) -> Basis {
    Basis {
        path: path.into(),
        span: value.map(|value| value.span),
        shown: value.map_or_else(|| NOT_RECORDED.to_owned(), |value| shown(value.value)),
    }
}

fn flag(path: &str, value: Option<Spanned<bool>>) -> Vec<Basis> {
    vec![of(path, value, |yes| if yes { "yes" } else { "no" }.to_owned())]
}

impl Record {
    /// What of the record led to the class of a dimension.
    ///
    /// # Method
    /// Every key that the class rests on, in the order of the record, each with
    /// its place. A key that is not written is there too, without a place.
    /// Empty only where the number is no dimension.
    pub fn basis(&self, of_dimension: DimensionId) -> Vec<Basis> {
        let operation = &self.operation;
        let (also, risk, tear) = (&operation.also, &self.risk, &operation.tear);
        match of_dimension {
            dim::PROCEDURE => {
                let mut basis = of("operation.procedure", operation.procedure, |p| p.name().to_owned());
                if operation.procedure.is_none() {
                    basis.shown = self.procedure().name().to_owned();
                }
                vec![basis]
            }
            dim::TEAR_SIZE => [
                ("operation.tear.anteroposterior", tear.anteroposterior),
                ("operation.tear.mediolateral", tear.mediolateral),
                ("operation.tear.retraction", tear.retraction),
            ]
            .map(|(path, size)| of(path, size, |size| format!("{size} mm")))
            .into(),
            dim::REPAIRED_TENDONS => self.basis_repairs(),
            dim::REPAIR_CONSTRUCT => self.basis_construct(),
            dim::INFRASPINATUS => self.basis_tendon(Tendon::Infraspinatus),
            dim::TERES_MINOR => self.basis_tendon(Tendon::TeresMinor),
            dim::SUBSCAPULARIS => self.basis_subscapularis(),
            dim::TISSUE => self.basis_of_each("tissue", |t| t.tissue.map(|v| v.map(|tissue| tissue.name()))),
            dim::TENSION => self.basis_of_each("tension", |t| t.tension.map(|v| v.map(|tension| tension.name()))),
            dim::REVISION => flag("operation.revision", operation.revision),
            dim::BICEPS => vec![of("operation.also.biceps", also.biceps, |b| b.name().to_owned())],
            dim::LABRUM => vec![of("operation.also.labrum", also.labrum, |l| l.name().to_owned())],
            dim::DISTAL_CLAVICLE_EXCISION => {
                flag("operation.also.distal_clavicle_excision", also.distal_clavicle_excision)
            }
            dim::CAPSULAR_RELEASE => match operation.procedure {
                Some(procedure) if also.capsular_release.is_none() => {
                    vec![of("operation.procedure", Some(procedure), |p| p.name().to_owned())]
                }
                _ => flag("operation.also.capsular_release", also.capsular_release),
            },
            dim::PREOPERATIVE_STIFFNESS => flag("risk.preoperative_stiffness", risk.preoperative_stiffness),
            dim::RETRACTION_GRADE => {
                vec![of("operation.tear.retraction_patte", tear.retraction_patte, |grade| {
                    format!("Patte grade {grade}")
                })]
            }
            dim::FATTY_INFILTRATION => self.basis_grades(),
            dim::PSEUDOPARALYSIS => flag("risk.pseudoparalysis", risk.pseudoparalysis),
            dim::DELAMINATION => flag("operation.tear.delamination", tear.delamination),
            dim::AGE_OVER_70 => {
                let years = completed_years(self.patient.birth_date.value, self.operation_date());
                vec![
                    of("patient.birth_date", Some(self.patient.birth_date), |_| {
                        format!("{years} completed years on the day of surgery")
                    }),
                    of("operation.date", Some(operation.date), |date| date.to_string()),
                ]
            }
            dim::SMOKING => flag("risk.smoking", risk.smoking),
            dim::DIABETES => flag("risk.diabetes", risk.diabetes),
            dim::OTHER_SHOULDER => {
                let other = &self.other_arm;
                let mut basis = vec![of("other_arm.shoulder", other.shoulder, |s| s.name().to_owned())];
                if other.operated_on.is_some() {
                    basis.push(of("other_arm.operated_on", other.operated_on, |date| date.to_string()));
                }
                basis
            }
            dim::OTHER_PROCEDURE => self.basis_other(),
            dim::SLOWER => flag("surgeon.slower", self.surgeon.slower),
            dim::STIFF_SHOULDER => {
                vec![of("surgeon.stiff_shoulder", self.surgeon.stiff_shoulder, |answer| answer.name().to_owned())]
            }
            dim::BEYOND_DELAYED => {
                vec![of("surgeon.beyond_delayed", self.surgeon.beyond_delayed, |answer| answer.name().to_owned())]
            }
            _ => Vec::new(),
        }
    }
}
