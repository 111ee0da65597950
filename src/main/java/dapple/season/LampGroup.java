package dapple.season;

import dapple.lamp.LampClass;

/** What lamps are there for, as far as their class says; the widest line first, since they may lie on each other. */
enum LampGroup {
    BASKING,
    /** Light that is not hot. */
    BACKGROUND,
    ULTRAVIOLET;

    boolean has(LampClass lampClass) {
        return switch (this) {
            case BASKING -> lampClass.isHot();
            case BACKGROUND -> lampClass.givesLight() && !lampClass.isHot();
            case ULTRAVIOLET -> lampClass.emitsUltraviolet();
        };
    }
}
