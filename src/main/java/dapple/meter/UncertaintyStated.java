package dapple.meter;

/** It was said anew how sure a meter is: of all that was ever read with it. */
public record UncertaintyStated(long siteId, long meterId) {}
