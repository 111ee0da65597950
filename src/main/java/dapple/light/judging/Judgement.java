package dapple.light.judging;

import java.util.Optional;

/**
 * What one reading is found to be under one set of limits.
 *
 * @param state empty where nothing is judged: a keeper's point, or a gradient point of a visit that has not read both
 *     basking and shade
 * @param mayExceed the interval reaches over the ceiling, the reading itself does not
 * @param finerThanMeter the band is finer than the meter, so that the value alone decided
 * @param noGradient the darkest point of a visit is not a third as bright as its brightest
 */
public record Judgement(Optional<State> state, boolean mayExceed, boolean finerThanMeter, boolean noGradient) {

    public static Judgement none() {
        return new Judgement(Optional.empty(), false, false, false);
    }

    public static Judgement of(State state) {
        return new Judgement(Optional.of(state), false, false, false);
    }

    /** The same while the lamps are off on purpose: nothing is a finding but harm. */
    public Judgement whilePlannedOff() {
        return state.filter(State.OVER_CEILING::equals).isPresent() ? this : of(State.PLANNED_OFF);
    }

    /** The same under a ceiling that the interval may reach over: never better than borderline. */
    Judgement withPossibleExcess() {
        State least =
                state.filter(found -> found.isGraverThan(State.BORDERLINE)).orElse(State.BORDERLINE);
        return new Judgement(Optional.of(least), true, finerThanMeter, noGradient);
    }

    /** The same in a visit without gradient: no shade, unless something graver. */
    Judgement withoutGradient() {
        State gravest =
                state.filter(found -> found.isGraverThan(State.NO_SHADE)).orElse(State.NO_SHADE);
        return new Judgement(Optional.of(gravest), mayExceed, finerThanMeter, true);
    }
}
