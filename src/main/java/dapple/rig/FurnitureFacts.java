package dapple.rig;

/** A piece of furniture over its time. */
public record FurnitureFacts(long id, long enclosureId, Furniture furniture, Span span) {}
