package dapple.importing.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Finds what stands between the cells of a sheet. */
final class Separator {
    private static final List<Character> CANDIDATES = List.of(';', '\t', ',');
    private static final int LINES = 30;

    private Separator() {}

    /** The candidate that stands outside quotes equally often on most of the first lines; a comma where none does. */
    static char of(String head) {
        char best = ',';
        long most = 0;
        for (char candidate : CANDIDATES) {
            long score = score(counts(head, candidate));
            if (score > most) {
                most = score;
                best = candidate;
            }
        }
        return best;
    }

    /** How many lines agree; of those that agree equally, the more columns. */
    private static long score(List<Integer> counts) {
        Map<Integer, Integer> lines = new HashMap<>();
        counts.stream().filter(count -> count > 0).forEach(count -> lines.merge(count, 1, Integer::sum));
        return lines.entrySet().stream()
                .mapToLong(entry -> entry.getValue() * 1000L + Math.min(entry.getKey(), 999))
                .max()
                .orElse(0);
    }

    private static List<Integer> counts(String head, char candidate) {
        List<Integer> counts = new ArrayList<>();
        boolean quoted = false;
        int count = 0;
        for (int at = 0; at < head.length() && counts.size() < LINES; at++) {
            char letter = head.charAt(at);
            if (letter == '"') {
                quoted = !quoted;
            } else if (letter == '\n' && !quoted) {
                counts.add(count);
                count = 0;
            } else if (letter == candidate && !quoted) {
                count++;
            }
        }
        counts.add(count);
        return counts;
    }
}
