package dapple.light.calibration;

import java.util.List;

/** What comes of a bench. */
public sealed interface BenchResult permits BenchResult.Undetermined, BenchResult.Unfinished, FittedLamp {
    /** The readings leave parameters open. */
    record Undetermined(List<Open> open) implements BenchResult {
        public Undetermined {
            open = List.copyOf(open);
        }

        public String reason() {
            return String.join("; ", open.stream().map(Open::reason).toList());
        }
    }

    /** One parameter that the readings leave open; hold it, or add the reading that is wanted. */
    record Open(Parameter parameter) {
        public String reason() {
            return parameter + " is not determined by these readings: it wants " + parameter.wanted();
        }
    }

    /** The fit came to no end within its limits. */
    record Unfinished(String reason) implements BenchResult {}
}
