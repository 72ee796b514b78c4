//! Quantities in requests, answers and stored records are text in the grammar a person types, so a record,
//! a link and a backup have the same bounds as a person.

use super::kind::{Kind, Quantity, System};
use serde::{Deserialize, Deserializer, Serialize, Serializer, de::Error};
use std::borrow::Cow;

impl<K: Kind> Serialize for Quantity<K> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.serialize_str(&self.print(System::Metric))
    }
}

impl<'de, K: Kind> Deserialize<'de> for Quantity<K> {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        let text = Cow::<str>::deserialize(deserializer)?;
        Self::read(&text, None).map_err(D::Error::custom)
    }
}
