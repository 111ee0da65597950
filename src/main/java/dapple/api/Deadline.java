package dapple.api;

import java.time.Duration;

/** The instant at which a request is given up. */
final class Deadline {
    private final Duration longest;
    private final long endNanos;

    private Deadline(Duration longest) {
        this.longest = longest;
        this.endNanos = System.nanoTime() + longest.toNanos();
    }

    static Deadline in(Duration longest) {
        return new Deadline(longest);
    }

    long nanosLeft() {
        return Math.max(0, endNanos - System.nanoTime());
    }

    void check() {
        if (nanosLeft() == 0) {
            throw passed();
        }
    }

    RefusedException passed() {
        return Problem.tooLong("This takes longer than " + longest.toSeconds()
                        + " s. Ask for fewer places or samples, or for less accuracy.")
                .refused();
    }
}
