package dapple.rig;

/**
 * A thing that stands in an enclosure and shades.
 *
 * @param isRestedOn whether animals rest on its top
 */
public record Furniture(String name, FurnitureShape shape, boolean isRestedOn) {}
