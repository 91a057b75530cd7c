//! How firm the order is: weights, shares of first place, dominance, what would turn it.
