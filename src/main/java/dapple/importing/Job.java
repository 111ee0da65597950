package dapple.importing;

import dapple.importing.sheet.Fault;
import dapple.importing.sheet.UnreadableException;
import dapple.site.ConflictException;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.DoubleConsumer;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** A file that is tried or taken in behind the scenes, and how far that is. */
final class Job {
    private static final Logger LOG = LoggerFactory.getLogger(Job.class);

    private final Kind kind;
    private State state = State.WAITING;
    private double share;
    private Optional<Fault> fault = Optional.empty();

    /** What is done. */
    enum Kind {
        TRY,
        IMPORT
    }

    /** How it stands. */
    enum State {
        WAITING,
        RUNNING,
        DONE,
        STOPPED,
        /** Something changed meanwhile, so that it would no longer do what was told. */
        OVERTAKEN,
        FAILED
    }

    /** Thrown inside work that is to be given up; what it has stored so far is undone. */
    private static final class StoppedException extends RuntimeException {
        private static final long serialVersionUID = 1;
    }

    Job(Kind kind) {
        this.kind = kind;
    }

    public Kind kind() {
        return kind;
    }

    public synchronized State state() {
        return state;
    }

    /** The share of the work that is done, 0 to 1. */
    public synchronized double share() {
        return share;
    }

    /** Why the file could not be read. */
    public synchronized Optional<Fault> fault() {
        return fault;
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

    private synchronized void end(State how) {
        if (state == State.RUNNING) {
            state = how;
        }
    }

    private synchronized void tell(double done) {
        if (state == State.STOPPED) {
            throw new StoppedException();
        }
        share = Math.max(share, done);
    }

    /** Does the work, unless it was stopped before it began; whatever goes wrong is said on the page, and in the log if it is ours. */
    void run(Consumer<DoubleConsumer> work) {
        if (!begins()) {
            return;
        }
        try {
            work.accept(this::tell);
            end(State.DONE);
        } catch (StoppedException stopped) {
            end(State.STOPPED);
        } catch (UnreadableException unreadable) {
            unreadable(unreadable.fault());
        } catch (ConflictException overtaken) {
            end(State.OVERTAKEN);
        } catch (RuntimeException | Error ours) {
            end(State.FAILED);
            LOG.error("an import failed; nothing of it is stored", ours);
        }
    }

    private synchronized void unreadable(Fault why) {
        fault = Optional.of(why);
        end(State.FAILED);
    }
}
