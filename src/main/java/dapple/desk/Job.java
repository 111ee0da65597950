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

    /**
     * How a search stands at one moment.
     *
     * @param draftVersion the number of the state of the draft that is looked at
     * @param share of the work that is done, 0 to 1
     * @param found what was found; empty unless it is done
     * @param took how long it ran; zero before it has ended
     */
    public record Standing(long draftVersion, State state, double share, Optional<Proposed> found, Duration took) {
        public boolean isUnderWay() {
            return state == State.WAITING || state == State.RUNNING;
        }

        private Standing in(State next) {
            return new Standing(draftVersion, next, share, found, took);
        }

        private Standing at(double done) {
            return new Standing(draftVersion, state, Math.max(share, done), found, took);
        }
    }

    /** Thrown inside a search that is to be given up. */
    private static final class StoppedException extends RuntimeException {
        private static final long serialVersionUID = 1;
    }

    private Standing standing;

    Job(long draftVersion) {
        standing = new Standing(draftVersion, State.WAITING, 0, Optional.empty(), Duration.ZERO);
    }

    /** How it stands now; whoever tells several things of it asks once, so that they agree. */
    synchronized Standing standing() {
        return standing;
    }

    synchronized void stop() {
        if (standing.isUnderWay()) {
            standing = standing.in(State.STOPPED);
        }
    }

    private synchronized boolean begins() {
        if (standing.state() == State.WAITING) {
            standing = standing.in(State.RUNNING);
        }
        return standing.state() == State.RUNNING;
    }

    private synchronized void tell(double done) {
        standing = standing.at(done);
    }

    private synchronized void end(State how, Optional<Proposed> result, long nanos) {
        if (standing.state() == State.RUNNING) {
            standing = new Standing(standing.draftVersion(), how, standing.share(), result, Duration.ofNanos(nanos));
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
        if (standing().state() == State.STOPPED) {
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
