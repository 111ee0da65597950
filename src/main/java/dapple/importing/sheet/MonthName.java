package dapple.importing.sheet;

import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;

/** Months by name, or its beginning, in the languages of the columns. */
final class MonthName {
    private static final List<List<String>> NAMES = List.of(
            List.of("january", "januar", "janvier", "enero", "januari"),
            List.of("february", "februar", "fevrier", "febrero", "februari"),
            List.of("march", "marz", "maerz", "mars", "marzo", "maart", "mrz", "mrt"),
            List.of("april", "avril", "abril"),
            List.of("may", "mai", "mayo", "mei"),
            List.of("june", "juni", "juin", "junio"),
            List.of("july", "juli", "juillet", "julio"),
            List.of("august", "aout", "agosto", "augustus"),
            List.of("september", "septembre", "septiembre"),
            List.of("october", "oktober", "octobre", "octubre"),
            List.of("november", "novembre", "noviembre"),
            List.of("december", "dezember", "decembre", "diciembre"));
    private static final int SHORTEST = 3;

    private MonthName() {}

    /** 1 to 12; empty if the name is none, or may be two. */
    static Optional<Integer> number(String name) {
        String plain = Normalizer.normalize(name.toLowerCase(Locale.ROOT), Normalizer.Form.NFKD)
                .replaceAll("\\p{M}", "");
        List<Integer> months = IntStream.range(0, NAMES.size())
                .filter(month -> plain.length() >= SHORTEST
                        && NAMES.get(month).stream().anyMatch(full -> full.startsWith(plain)))
                .boxed()
                .toList();
        return months.size() == 1 ? Optional.of(months.get(0) + 1) : Optional.empty();
    }
}
