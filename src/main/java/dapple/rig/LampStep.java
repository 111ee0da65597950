package dapple.rig;

import java.util.Optional;

/** What is done to the lamps of a rig. */
public sealed interface LampStep extends RigStep {
    /** A lamp comes. */
    record Fit(long lampId, Hanging hanging) implements LampStep {
        @Override
        public RigChangeKind kind() {
            return RigChangeKind.LAMP_FITTED;
        }
    }

    /**
     * Another lamp takes the place of one.
     *
     * @param gear empty: the same as before
     */
    record Swap(long fittingId, long lampId, Optional<Gear> gear) implements LampStep {
        /** On the same gear. */
        public Swap(long fittingId, long lampId) {
            this(fittingId, lampId, Optional.empty());
        }

        @Override
        public RigChangeKind kind() {
            return RigChangeKind.LAMP_SWAPPED;
        }
    }

    /** A lamp comes to hang otherwise: higher, elsewhere, with another aim. */
    record Move(long fittingId, String place, Optional<Mount> mount) implements LampStep {
        @Override
        public RigChangeKind kind() {
            return RigChangeKind.MOVED;
        }
    }

    /** A lamp burns at other times, or on another circuit. */
    record SetTimer(long fittingId, Optional<LampTimer> timer, Optional<Long> circuitId) implements LampStep {
        @Override
        public RigChangeKind kind() {
            return RigChangeKind.TIMER_CHANGED;
        }
    }

    /** A lamp comes to burn on another ballast, or is dimmed otherwise; or it is found out how it does. */
    record SetGear(long fittingId, Gear gear) implements LampStep {
        @Override
        public RigChangeKind kind() {
            return RigChangeKind.GEAR_CHANGED;
        }
    }

    /** A lamp goes. */
    record TakeOut(long fittingId) implements LampStep {
        @Override
        public RigChangeKind kind() {
            return RigChangeKind.LAMP_TAKEN_OUT;
        }
    }
}
