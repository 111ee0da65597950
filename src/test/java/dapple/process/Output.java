package dapple.process;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What a process has printed so far; whoever needs a line waits until it is printed. */
final class Output {
    private static final Duration PATIENCE = Duration.ofMinutes(2);

    private final List<String> lines = new ArrayList<>();
    private boolean complete;

    /** Reads until the process closes its output. */
    void readFrom(BufferedReader printed) {
        try (printed) {
            for (String line = printed.readLine(); line != null; line = printed.readLine()) {
                add(line);
            }
        } catch (IOException cause) {
            throw new UncheckedIOException(cause);
        } finally {
            end();
        }
    }

    private synchronized void add(String line) {
        lines.add(line);
        notifyAll();
    }

    private synchronized void end() {
        complete = true;
        notifyAll();
    }

    /** The first group of the pattern in the first line that has it. */
    synchronized String await(Pattern pattern) throws InterruptedException {
        long deadline = System.nanoTime() + PATIENCE.toNanos();
        Optional<String> found = find(pattern);
        while (found.isEmpty()) {
            long millis = Duration.ofNanos(deadline - System.nanoTime()).toMillis();
            if (complete || millis <= 0) {
                throw new AssertionError("the program did not print " + pattern + ":\n" + String.join("\n", lines));
            }
            wait(millis);
            found = find(pattern);
        }
        return found.get();
    }

    private Optional<String> find(Pattern pattern) {
        return lines.stream()
                .map(pattern::matcher)
                .filter(Matcher::find)
                .map(found -> found.group(1))
                .findFirst();
    }
}
