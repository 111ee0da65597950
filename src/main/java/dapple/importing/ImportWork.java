package dapple.importing;

import dapple.people.SignedIn;
import dapple.reading.ReadingIntake;
import dapple.reading.SheetsTaken;
import dapple.reading.Visitor;
import dapple.site.ConflictException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.function.DoubleConsumer;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** Takes a file in: all of it, or nothing. */
@Component
class ImportWork {
    private static final int CONFLICTS = 200;

    /** The share of the work that comes before the readings. */
    private static final double THINGS = 0.2;

    private final Runs runs;
    private final SheetGathering gathering;
    private final Storing storing;
    private final ReadingIntake intake;
    private final Clock clock;

    ImportWork(Runs runs, SheetGathering gathering, Storing storing, ReadingIntake intake, Clock clock) {
        this.runs = runs;
        this.gathering = gathering;
        this.storing = storing;
        this.intake = intake;
        this.clock = clock;
    }

    /**
     * Stores what the sheets say and is not on record.
     *
     * @param leaveOut whether bad rows are left out
     * @param progress hears the share that is done; what it throws undoes everything
     * @throws ConflictException if there are bad rows that are not to be left out, or it has been taken in meanwhile
     */
    @Transactional
    public void takeIn(SignedIn me, long runId, Path file, boolean leaveOut, DoubleConsumer progress) {
        Run run = runs.hold(me.siteId(), runId);
        if (!run.isOpen()) {
            throw new ConflictException("the import is done or given up");
        }
        double rows = Math.max(1, run.rows());
        try (Tables tables = Tables.open(file, run)) {
            Checking checking = gathering.gather(
                    me, tables, run.choices(), done -> progress.accept(Math.min(1, done / rows) * THINGS));
            refuseBadRows(checking, leaveOut);
            List<Tried.Created> created = Trying.created(checking.book());
            storing.store(checking);
            SheetsTaken taken = readings(
                    checking, tables, done -> progress.accept(THINGS + (1 - THINGS) * Math.min(1, done / rows)));
            refuseBadRows(checking, leaveOut);
            runs.done(run, done(checking, created, taken), clock.instant());
        }
    }

    private SheetsTaken readings(Checking checking, Tables tables, DoubleConsumer progress) {
        try (ReadingRows rows =
                new ReadingRows(checking, tables.all(), clock.instant(), checking.outcome()::bad, progress::accept)) {
            return intake.take(Visitor.of(checking.me()), rows);
        }
    }

    private static void refuseBadRows(Checking checking, boolean leaveOut) {
        if (checking.outcome().bad() > 0 && !leaveOut) {
            throw new ConflictException("there are bad rows by now");
        }
    }

    private static Done done(Checking checking, List<Tried.Created> created, SheetsTaken taken) {
        List<Done.Conflict> conflicts = taken.examples().stream()
                .limit(CONFLICTS)
                .map(one -> new Done.Conflict(
                        one.said().enclosureId(),
                        one.said().pointId(),
                        one.said().takenAt(),
                        one.said().amount(),
                        one.standing()))
                .toList();
        return new Done(
                created,
                taken.visits(),
                taken.stored(),
                taken.known(),
                taken.differing(),
                conflicts,
                checking.outcome().bad());
    }
}
