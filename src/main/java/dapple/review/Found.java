package dapple.review;

import java.util.Optional;

/** How one enclosure stands, with the finding about it, if it needs somebody. */
public record Found(Standing standing, Optional<Finding> finding) {}
