//! Putting lists in order. One sort, of places, serves lists of every type: the standard library's is compiled anew for
//! each type, and these lists are short beside what that weighs in the page.

use std::cmp::Ordering;

/// A list that can be put in order.
pub trait InOrder<T> {
    /// By a comparison; what is equal keeps its order. Cost as that of a merge sort.
    fn order_by(&mut self, compare: impl Fn(&T, &T) -> Ordering);

    /// By a key, the least first; what is equal keeps its order.
    fn order_by_key<K: Ord>(&mut self, key: impl Fn(&T) -> K) {
        self.order_by(|a, b| key(a).cmp(&key(b)));
    }
}

impl<T> InOrder<T> for [T] {
    fn order_by(&mut self, compare: impl Fn(&T, &T) -> Ordering) {
        let mut rank = ranks(self.len(), &|a, b| match (self.get(a), self.get(b)) {
            (Some(a), Some(b)) => compare(a, b),
            _ => Ordering::Equal,
        });
        // Each swap brings one to where it belongs.
        for here in 0..rank.len() {
            while let Some(&there) = rank.get(here).filter(|there| **there != here) {
                self.swap(here, there);
                rank.swap(here, there);
            }
        }
    }
}

/// The place of each in order, by its place in the list.
fn ranks(count: usize, compare: &dyn Fn(usize, usize) -> Ordering) -> Vec<usize> {
    let mut order: Vec<usize> = (0..count).collect();
    order.sort_by(|a, b| compare(*a, *b));
    let mut rank = vec![0; count];
    for (place, from) in order.into_iter().enumerate() {
        if let Some(rank) = rank.get_mut(from) {
            *rank = place;
        }
    }
    rank
}

#[cfg(test)]
mod tests {
    use super::InOrder;

    #[test]
    fn as_the_standard_library_has_it() {
        let mut state = 1_u64;
        for count in 0..200 {
            let mut ours: Vec<(u64, usize)> = (0..count)
                .map(|place| {
                    state = state.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1);
                    ((state >> 60), place)
                })
                .collect();
            let mut theirs = ours.clone();
            ours.order_by_key(|(key, _)| *key);
            theirs.sort_by_key(|(key, _)| *key);
            assert_eq!(ours, theirs);
        }
    }
}
