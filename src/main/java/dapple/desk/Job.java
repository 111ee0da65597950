package dapple.desk;

import dapple.light.survey.Crew;
import java.time.Duration;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.DoubleConsumer;
import java.util.function.Supplier;

/** One search in the background, and how far it is. */
public final class Job {
    /** How a search stands. */
    public enum State {
        WAITING,
        RUNNING,
        DONE,
        STOPPED,
        FAILED
    }

    private final long draftVersion;
    private State state = State.WAITING;
    private double share;
    private Optional<Proposed> found = Optional.empty();
    private Duration took = Duration.ZERO;

    Job(long draftVersion) {
        this.draftVersion = draftVersion;
    }

    /** Thrown inside a search that is to be given up. */
    private static final class StoppedException extends RuntimeException {
        private static final long serialVersionUID = 1;
    }

    /** The number of the state of the draft that is looked at. */
    public long draftVersion() {
        return draftVersion;
    }

    public synchronized State state() {
        return state;
    }

    /** The share of the work that is done, 0 to 1. */
    public synchronized double share() {
        return share;
    }

    public synchronized Optional<Proposed> found() {
        return found;
    }

    /** How long it ran. */
    public synchronized Duration took() {
        return took;
    }

    public synchronized boolean isUnderWay() {
        return state == State.WAITING || state == State.RUNNING;
    }

    synchronized void stop() {
        if (isUnderWay()) {
            state = State.STOPPED;
        }
    }

    private synchronized boolean begins() {
        if (state == State.WAITING) {
            state = State.RUNNING;
        }
        return state == State.RUNNING;
    }

    private synchronized void tell(double done) {
        share = Math.max(share, done);
    }

    private synchronized void end(State how, Optional<Proposed> result, long nanos) {
        if (state == State.RUNNING) {
            state = how;
            found = result;
            took = Duration.ofNanos(nanos);
        }
    }

    /**
     * Does the work, unless it was stopped before it began.
     *
     * @param crew does it; stopped between two places
     */
    void run(Crew crew, BiFunction<Crew, DoubleConsumer, Proposed> work) {
        if (!begins()) {
            return;
        }
        long from = System.nanoTime();
        try {
            Proposed result = work.apply(stoppable(crew), this::tell);
            end(State.DONE, Optional.of(result), System.nanoTime() - from);
        } catch (StoppedException stopped) {
            end(State.STOPPED, Optional.empty(), System.nanoTime() - from);
        } finally {
            end(State.FAILED, Optional.empty(), System.nanoTime() - from);
        }
    }

    private void check() {
        if (state() == State.STOPPED) {
            throw new StoppedException();
        }
    }

    private Crew stoppable(Crew crew) {
        return new Crew() {
            @Override
            public <T> void each(int count, Supplier<T> tools, Work<T> work) {
                crew.each(count, tools, (tool, index) -> {
                    check();
                    work.at(tool, index);
                });
            }

            @Override
            public <T> T alone(Supplier<T> work) {
                check();
                return crew.alone(work);
            }
        };
    }
}
