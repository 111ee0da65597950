package dapple.importing.sheet;

import java.util.Locale;
import java.util.Set;

/** Cells as they are written. */
final class Cells {
    /** What people write where they have nothing to say. */
    private static final Set<String> NOTHING = Set.of("-", "–", "—", "n/a", "k. a.", "k.a.");

    private static final int LONGEST_NOTHING = 5;

    private Cells() {}

    /** Without surrounding space, also that which does not break; nothing where nothing is said. */
    static String plain(String cell) {
        int from = 0;
        int to = cell.length();
        while (from < to && isSpace(cell.charAt(from))) {
            from++;
        }
        while (to > from && isSpace(cell.charAt(to - 1))) {
            to--;
        }
        String said = cell.substring(from, to);
        return said.length() <= LONGEST_NOTHING && mayBeNothing(said) && NOTHING.contains(said.toLowerCase(Locale.ROOT))
                ? ""
                : said;
    }

    private static boolean mayBeNothing(String said) {
        return !said.isEmpty() && "-–—nNkK".indexOf(said.charAt(0)) >= 0;
    }

    private static boolean isSpace(char letter) {
        return letter <= ' ' || letter == '\u00a0' || letter == '\u202f' || letter == '\ufeff';
    }
}
