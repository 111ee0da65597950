package dapple.animal;

/** How much pigment an animal has; with less of it the skin takes less ultraviolet. */
public enum Pigment {
    NORMAL,
    REDUCED,
    NONE;

    public boolean isLessThanNormal() {
        return this != NORMAL;
    }
}
