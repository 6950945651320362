//! As much of JSON Schema as the project's own schemas use; a keyword beyond that is an error, not a pass.

use serde_json::{Map, Value};

/// A schema document.
pub struct Schema(Value);

/// Keywords that say something to people and nothing about values.
const ANNOTATIONS: [&str; 7] =
    ["$schema", "$id", "$defs", "$comment", "title", "description", "examples"];

/// A part of a value that has its own schema: the step to it, that schema, and the part.
type Part<'a> = (String, &'a Value, &'a Value);

impl Schema {
    pub fn parse(text: &str) -> Self {
        Self(serde_json::from_str(text).expect("a schema is JSON"))
    }

    /// The value of the member `schema` in answers of this kind.
    pub fn name(&self) -> &str {
        let name = self.0.pointer("/properties/schema/const").and_then(Value::as_str);
        name.expect("a schema says which answers it is for")
    }

    /// Everything in `value` that the schema does not allow, each with its place.
    pub fn faults(&self, value: &Value) -> Vec<String> {
        let mut faults = Vec::new();
        self.check(&self.0, value, "", &mut faults);
        faults
    }

    fn check(&self, schema: &Value, value: &Value, at: &str, faults: &mut Vec<String>) {
        let Value::Object(keywords) = schema else {
            // The schema `true` allows everything, `false` nothing.
            if schema != &Value::Bool(true) {
                faults.push(format!("{at}: {value} should not be there"));
            }
            return;
        };
        for (keyword, rule) in keywords {
            if let Some(parts) = self.parts(keyword, keywords, value) {
                for (step, schema, part) in parts {
                    self.check(schema, part, &format!("{at}{step}"), faults);
                }
            } else if !ANNOTATIONS.contains(&keyword.as_str()) && !holds(keyword, rule, value) {
                faults.push(format!("{at}: {value} breaks {keyword} {rule}"));
            }
        }
    }

    /// The parts that a keyword sends on to schemas of their own, if it is one that does.
    fn parts<'a>(
        &'a self,
        keyword: &str,
        keywords: &'a Map<String, Value>,
        value: &'a Value,
    ) -> Option<Vec<Part<'a>>> {
        let rule = &keywords[keyword];
        let items = value.as_array().into_iter().flatten();
        let members = value.as_object().into_iter().flatten();
        let known = keywords.get("properties").and_then(Value::as_object);
        let schema_of = |name: &str| known.and_then(|known| known.get(name));
        Some(match keyword {
            "$ref" => vec![(String::new(), self.resolve(rule), value)],
            "items" => items.enumerate().map(|(k, item)| (format!("/{k}"), rule, item)).collect(),
            "properties" => members
                .filter_map(|(name, member)| Some((format!("/{name}"), schema_of(name)?, member)))
                .collect(),
            "additionalProperties" => members
                .filter(|(name, _)| schema_of(name).is_none())
                .map(|(name, member)| (format!("/{name}"), rule, member))
                .collect(),
            _ => return None,
        })
    }

    fn resolve(&self, reference: &Value) -> &Value {
        let pointer = reference.as_str().and_then(|reference| reference.strip_prefix('#'));
        let target = pointer.and_then(|pointer| self.0.pointer(pointer));
        target.unwrap_or_else(|| panic!("nothing at {reference}"))
    }
}

/// Whether a keyword that looks at nothing but the value itself holds.
fn holds(keyword: &str, rule: &Value, value: &Value) -> bool {
    let against = |size: Option<f64>, good: fn(f64, f64) -> bool| {
        size.is_none_or(|size| good(size, rule.as_f64().expect("a number")))
    };
    let number = value.as_f64();
    let items = value.as_array().map(|items| items.len() as f64);
    let letters = value.as_str().map(|text| text.chars().count() as f64);
    let rules = rule.as_array().into_iter().flatten();
    match keyword {
        "type" => is_of(rule, value),
        "const" => value == rule,
        "enum" => rules.into_iter().any(|allowed| allowed == value),
        "required" => rules.into_iter().all(|name| value.get(name.as_str().unwrap()).is_some()),
        "minimum" => against(number, |value, least| value >= least),
        "maximum" => against(number, |value, most| value <= most),
        "exclusiveMinimum" => against(number, |value, least| value > least),
        "exclusiveMaximum" => against(number, |value, most| value < most),
        "minItems" => against(items, |items, least| items >= least),
        "maxItems" => against(items, |items, most| items <= most),
        "minLength" => against(letters, |letters, least| letters >= least),
        "maxLength" => against(letters, |letters, most| letters <= most),
        _ => panic!("the keyword `{keyword}` is not known here"),
    }
}

fn is_of(kind: &Value, value: &Value) -> bool {
    match kind.as_str().expect("one type") {
        "object" => value.is_object(),
        "array" => value.is_array(),
        "string" => value.is_string(),
        "number" => value.is_number(),
        "integer" => value.as_f64().is_some_and(|number| number.fract() == 0.0),
        "boolean" => value.is_boolean(),
        kind => panic!("the type `{kind}` is not known here"),
    }
}

#[test]
fn a_wrong_answer_is_seen() {
    let schema = Schema::parse(
        r##"{"type":"object","required":["schema","bow"],"additionalProperties":false,
            "properties":{"schema":{"const":"a/1"},"bow":{"$ref":"#/$defs/pair"}},
            "$defs":{"pair":{"type":"array","items":{"type":"number","minimum":0},"maxItems":2}}}"##,
    );
    let faults = |text: &str| schema.faults(&serde_json::from_str(text).unwrap());
    assert_eq!(faults(r#"{"schema":"a/1","bow":[1,2.5]}"#), Vec::<String>::new());
    assert_eq!(faults(r#"{"schema":"a/1"}"#).len(), 1);
    assert_eq!(faults(r#"{"schema":"a/1","bow":[1,-2]}"#), ["/bow/1: -2 breaks minimum 0"]);
    assert_eq!(faults(r#"{"schema":"a/2","bow":[1,2,"3"],"rest":1}"#).len(), 4);
}
