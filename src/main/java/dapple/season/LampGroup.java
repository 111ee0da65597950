package dapple.season;

import dapple.lamp.LampClass;
import java.util.function.Predicate;

/** What lamps are there for, as far as their class says. */
enum LampGroup {
    /** Light that is not hot. */
    BACKGROUND(lampClass -> lampClass.givesLight() && !lampClass.isHot()),
    BASKING(LampClass::isHot),
    ULTRAVIOLET(LampClass::emitsUltraviolet);

    private final Predicate<LampClass> members;

    LampGroup(Predicate<LampClass> members) {
        this.members = members;
    }

    boolean has(LampClass lampClass) {
        return members.test(lampClass);
    }
}
