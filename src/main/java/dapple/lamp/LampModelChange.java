package dapple.lamp;

import java.util.Optional;

/** What is said of a lamp model when it is entered or changed. */
public record LampModelChange(String name, LampClass lampClass, Optional<Double> watts, Optional<LampShape> shape) {}
