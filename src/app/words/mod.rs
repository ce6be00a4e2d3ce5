//! What the page says, apart from how it is laid out.
