//! The first chain of stops that closes round one end of a route alone.

use smallvec::SmallVec;

use super::joint::Joint;

/// A chain of stops that separates the two ends of a route.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Chain {
    /// Joints round the chain, as places in the list of joints; the first is the widest, the pinch.
    pub(super) joints: Vec<usize>,
    /// The stop before each joint, as one goes round.
    pub(super) stops: Vec<usize>,
}

/// Takes the joints (sorted by growing gap) one by one until a closed chain crosses the curve between the two ends an
/// odd number of times.
pub(super) fn first_odd(count: usize, joints: &[Joint]) -> Option<Chain> {
    let mut groups = Groups::new(count);
    let mut kept = Vec::with_capacity(count);
    for (place, joint) in joints.iter().enumerate() {
        let [first, second] = joint.between;
        match groups.join(first, second, joint.odd) {
            Joined::Apart => kept.push(place),
            Joined::Even => {}
            Joined::Odd => return Some(closed(&tree(count, joints, &kept), second, first, place)),
        }
    }
    None
}

/// Whether any chain of these joints closes round one end of the route alone; they may come in any order.
pub(super) fn has_odd(count: usize, joints: &[Joint]) -> bool {
    let mut groups = Groups::new(count);
    let is_odd = |joint: &Joint| matches!(groups.join(joint.between[0], joint.between[1], joint.odd), Joined::Odd);
    joints.iter().any(is_odd)
}

/// Few stops are joined to more.
type JoinedTo = SmallVec<[(usize, usize); 4]>;

/// For each stop the stops that it was joined to, and by which joint.
fn tree(count: usize, joints: &[Joint], kept: &[usize]) -> Vec<JoinedTo> {
    let mut tree = vec![JoinedTo::new(); count];
    for &place in kept {
        let [first, second] = joints[place].between;
        tree[first].push((second, place));
        tree[second].push((first, place));
    }
    tree
}

enum Joined {
    /// The two had nothing in common before.
    Apart,
    /// Closes a chain round neither end, or both.
    Even,
    /// Closes a chain round one end alone.
    Odd,
}

/// A union-find whose members know the parity of the path to their root.
struct Groups {
    parent: Vec<usize>,
    odd: Vec<bool>,
    size: Vec<usize>,
}

impl Groups {
    fn new(count: usize) -> Self {
        Self { parent: (0..count).collect(), odd: vec![false; count], size: vec![1; count] }
    }

    /// Root of a member, and the parity of the way there.
    fn root(&self, mut member: usize) -> (usize, bool) {
        let mut odd = false;
        while self.parent[member] != member {
            odd ^= self.odd[member];
            member = self.parent[member];
        }
        (member, odd)
    }

    fn join(&mut self, first: usize, second: usize, odd: bool) -> Joined {
        let ((a, odd_a), (b, odd_b)) = (self.root(first), self.root(second));
        let odd = odd ^ odd_a ^ odd_b;
        if a == b {
            return if odd { Joined::Odd } else { Joined::Even };
        }
        let (small, large) = if self.size[a] < self.size[b] { (a, b) } else { (b, a) };
        self.parent[small] = large;
        self.odd[small] = odd;
        self.size[large] += self.size[small];
        Joined::Apart
    }
}

/// The chain that the joint `last` closes: from `from` through the tree to `to`, and back over the joint.
fn closed(tree: &[JoinedTo], from: usize, to: usize, last: usize) -> Chain {
    let mut came: Vec<Option<(usize, usize)>> = vec![None; tree.len()];
    let mut open = vec![from];
    while let Some(stop) = open.pop() {
        for &(next, joint) in &tree[stop] {
            if next != from && came[next].is_none() {
                came[next] = Some((stop, joint));
                open.push(next);
            }
        }
    }
    let (mut joints, mut stops) = (Vec::new(), Vec::new());
    let mut stop = to;
    while let Some((earlier, joint)) = came[stop] {
        joints.push(joint);
        stops.push(stop);
        stop = earlier;
    }
    joints.push(last);
    stops.push(stop);
    joints.rotate_right(1);
    stops.rotate_right(1);
    Chain { joints, stops }
}
