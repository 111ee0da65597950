package dapple.importing.sheet;

import dapple.light.judging.PointRole;
import dapple.light.quantity.Quantity;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/**
 * What the name of a column says of readings.
 *
 * @param others the words, normalised, that tell neither quantity nor role
 */
record Heading(String name, Optional<Quantity> quantity, Optional<PointRole> role, List<String> others) {
    private static final Pattern FILLERS =
            Pattern.compile("\\b(point|spot|place|reading|messwert|at|am|im|in|w m2|lx|uw cm2|c|max|value)\\b");
    private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{N}\\p{M}]+");

    /** E1, E-01, Viv 3, 12b. */
    private static final Pattern NUMBERED = Pattern.compile("(?:\\p{L}+[-. ]?)?\\p{N}+\\p{L}?");

    private static final List<Dimension> NOT_UV =
            List.of(Dimension.ILLUMINANCE, Dimension.IRRADIANCE, Dimension.TEMPERATURE);

    static Heading of(String name) {
        Taken quantity = Taken.first(Words.normalised(name), Words.all().words("quantity"));
        Taken role = Taken.first(quantity.rest(), Words.all().words("role"));
        List<String> others = Arrays.stream(
                        FILLERS.matcher(role.rest()).replaceAll("").strip().split(" ", -1))
                .filter(word -> !word.isEmpty())
                .toList();
        return new Heading(
                name, quantity.meaning().map(Quantity::valueOf), role.meaning().map(PointRole::valueOf), others);
    }

    /** Readings, where the name holds a quantity, a role, or a point of the site, and nothing besides. */
    Optional<Meaning> onRecord(Set<String> enclosures, Set<String> points) {
        List<String> besides = others.stream()
                .filter(word -> enclosures.contains(word) || points.contains(word) || !isUnit(word))
                .toList();
        Optional<String> enclosure =
                besides.stream().filter(enclosures::contains).findFirst();
        Optional<String> point = besides.stream()
                .filter(word -> points.contains(word) && !enclosure.equals(Optional.of(word)))
                .findFirst();
        boolean isPlace = role.isPresent() || point.isPresent();
        long known = enclosure.stream().count() + point.stream().count();
        return besides.size() == known && (quantity.isPresent() || isPlace)
                ? amount(point.flatMap(this::written), enclosure.flatMap(this::written))
                : Optional.empty();
    }

    /** Readings in an enclosure that nobody has entered: the words besides role and quantity are its code. */
    Optional<Meaning> unrecorded() {
        List<String> besides = others.stream().filter(word -> !isUnit(word)).toList();
        if (role.isPresent()) {
            return enclosureIn(besides).flatMap(code -> amount(Optional.empty(), Optional.of(code)));
        }
        int last = besides.size() - 1;
        return quantity.isEmpty() || last < 1
                ? Optional.empty()
                : numbered(besides.subList(last, last + 1))
                        .flatMap(point -> numbered(besides.subList(0, last))
                                .flatMap(code -> amount(Optional.of(point), Optional.of(code))));
    }

    /** Any words where the quantity is told as well; else a number must show that they are a code. */
    private Optional<String> enclosureIn(List<String> words) {
        return quantity.isPresent() ? written(words) : numbered(words);
    }

    private Optional<String> numbered(List<String> words) {
        return written(words).filter(code -> NUMBERED.matcher(code).matches());
    }

    private Optional<Meaning> amount(Optional<String> point, Optional<String> enclosure) {
        boolean isOtherUnit = NOT_UV.stream()
                .anyMatch(dimension -> Columns.unit(name, dimension).isPresent());
        return quantity.isEmpty() && isOtherUnit
                ? Optional.empty()
                : Optional.of(new Meaning.Amount(quantity.orElse(Quantity.UV_INDEX), role, point, enclosure));
    }

    private Optional<String> written(String word) {
        return written(List.of(word));
    }

    /** Words that stand together, as the name writes them, if they fit a code. */
    private Optional<String> written(List<String> words) {
        List<MatchResult> all = WORD.matcher(name).results().toList();
        int from = Collections.indexOfSubList(
                all.stream().map(word -> Words.normalised(word.group())).toList(), words);
        return words.isEmpty() || from < 0
                ? Optional.empty()
                : Optional.of(name.substring(
                                all.get(from).start(),
                                all.get(from + words.size() - 1).end()))
                        .filter(code -> code.length() <= Field.ENCLOSURE_CODE.longest() && code.indexOf('|') < 0);
    }

    private static boolean isUnit(String word) {
        return NOT_UV.stream().anyMatch(dimension -> dimension.unit(word).isPresent());
    }

    /**
     * The longest word of a table that stands in a text, and the text without it.
     *
     * @param meaning empty: none stands there
     */
    private record Taken(Optional<String> meaning, String rest) {
        static Taken first(String text, Map<String, String> words) {
            String padded = " " + text + " ";
            return words.entrySet().stream()
                    .filter(entry -> padded.contains(" " + entry.getKey() + " "))
                    .max(Comparator.comparingInt(entry -> entry.getKey().length()))
                    .map(entry -> new Taken(
                            Optional.of(entry.getValue()),
                            padded.replace(" " + entry.getKey() + " ", " ").strip()))
                    .orElse(new Taken(Optional.empty(), text));
        }
    }
}
