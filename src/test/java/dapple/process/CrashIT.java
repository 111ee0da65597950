package dapple.process;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/** What the program has acknowledged is in its file: it is killed twice while keepers read on. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class CrashIT {
    private static final int KILLS = 2;
    private static final int KEEPERS = 4;

    /** Of all keepers together, before a kill. A write that comes half a second late would lose many of them. */
    private static final int ACKNOWLEDGED_A_ROUND = 40;

    private static final int PATIENCE_SECONDS = 60;

    /** The exit value of a process that signal 9 has ended: 128 + 9. */
    private static final int KILLED = 137;

    private final List<ReadingKeeper> keepers = new ArrayList<>();
    private final List<Round> rounds = new ArrayList<>();
    private final List<Boolean> signedIn = new ArrayList<>();
    private final List<String> answeredOtherwise = new ArrayList<>();
    private LeftBehind atLast = new LeftBehind(List.of(), 0);

    @BeforeAll
    void killTheProgramWhileKeepersRead(@TempDir Path data, @TempDir Path scratch) throws Exception {
        for (int kill = 1; kill <= KILLS; kill++) {
            try (Program program = startAgain(data)) {
                Set<String> before = acknowledged();
                int exitValue = killAmidReadings(program);
                rounds.add(new Round(before, acknowledged(), exitValue, LeftBehind.in(data, scratch)));
            }
        }
        try (Program program = startAgain(data)) {
            program.stop();
            atLast = LeftBehind.in(data, scratch);
        }
        rounds.forEach(round -> System.out.println("CrashIT: killed after " + round.newlyAcknowledged()
                + " acknowledged readings, of which " + round.lost().size() + " are lost"));
    }

    /** On what the last kill has left; what was sent before it is sent once more. */
    private Program startAgain(Path data) throws IOException, InterruptedException {
        Program program = Program.start(data, "--spring.profiles.active=demo");
        if (keepers.isEmpty()) {
            signIn(program);
        }
        for (ReadingKeeper keeper : keepers) {
            keeper.moveTo(program.address());
            signedIn.add(keeper.isSignedIn());
            answeredOtherwise.addAll(keeper.sendAgain());
        }
        return program;
    }

    private void signIn(Program program) throws IOException, InterruptedException {
        for (int number = 0; number < KEEPERS; number++) {
            keepers.add(ReadingKeeper.signedIn(program.address(), number, KEEPERS));
        }
    }

    private int killAmidReadings(Program program) throws Exception {
        CountDownLatch enough = new CountDownLatch(ACKNOWLEDGED_A_ROUND);
        ExecutorService threads = Executors.newFixedThreadPool(KEEPERS);
        try {
            List<Future<Boolean>> reading = keepers.stream()
                    .map(keeper -> threads.submit(() -> keeper.readUntilTheProgramIsGone(enough::countDown)))
                    .toList();
            enough.await(PATIENCE_SECONDS, TimeUnit.SECONDS);
            int exitValue = program.kill();
            for (Future<Boolean> keeper : reading) {
                keeper.get(PATIENCE_SECONDS, TimeUnit.SECONDS);
            }
            return exitValue;
        } finally {
            threads.shutdownNow();
        }
    }

    private Set<String> acknowledged() {
        return keepers.stream()
                .flatMap(keeper -> keeper.acknowledged().stream())
                .collect(Collectors.toSet());
    }

    @Test
    void isEndedBySignalNine() {
        assertThat(rounds).hasSize(KILLS).allMatch(round -> round.exitValue() == KILLED);
    }

    @Test
    void acknowledgesEnoughBeforeEachKill() {
        assertThat(rounds).allMatch(round -> round.newlyAcknowledged() >= ACKNOWLEDGED_A_ROUND);
    }

    @Test
    void losesNoAcknowledgedReading() {
        assertThat(rounds).allSatisfy(round -> assertThat(round.lost()).isEmpty());
    }

    @Test
    void storesNoReadingTwice() {
        assertThat(rounds)
                .allSatisfy(round -> assertThat(round.left().entryKeys()).doesNotHaveDuplicates());
    }

    @Test
    void leavesNoReadingWithoutItsVerdict() {
        assertThat(rounds)
                .allSatisfy(round -> assertThat(round.left().unjudged()).isZero());
    }

    @Test
    void keepsPeopleSignedIn() {
        assertThat(signedIn).hasSize(KEEPERS * (KILLS + 1)).containsOnly(true);
    }

    @Test
    void answersAnEntrySentAgainWithTheReadingOfTheFirstTime() {
        assertThat(answeredOtherwise).isEmpty();
    }

    /** Nothing was sent after the last kill but what had been sent before it. */
    @Test
    void storesNothingNewForEntriesSentAgain() {
        Set<String> expected = new HashSet<>(rounds.get(KILLS - 1).left().entryKeys());
        expected.addAll(acknowledged());
        assertThat(atLast.entryKeys()).containsExactlyInAnyOrderElementsOf(expected);
    }

    /**
     * What a kill met.
     *
     * @param before keys that had been acknowledged when the program was started
     * @param acknowledged keys that had been acknowledged when it was killed
     */
    private record Round(Set<String> before, Set<String> acknowledged, int exitValue, LeftBehind left) {
        int newlyAcknowledged() {
            return acknowledged.size() - before.size();
        }

        Set<String> lost() {
            Set<String> lost = new HashSet<>(acknowledged);
            left.entryKeys().forEach(lost::remove);
            return lost;
        }
    }
}
