package dapple.importing.sheet;

import dapple.light.judging.PointRole;
import dapple.light.quantity.Quantity;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Tells what columns mean by their names.
 *
 * @param chosen what the site has chosen before, by normalised name
 * @param enclosures the codes that the site has, normalised
 * @param points the codes of points that the site has, normalised
 */
public record Columns(Map<String, Meaning> chosen, Set<String> enclosures, Set<String> points) {
    private static final Pattern IN_BRACKETS = Pattern.compile("[(\\[]([^)\\]]{1,12})[)\\]]");
    private static final Pattern BEHIND = Pattern.compile("(?:\\bin\\s|[\\s/,])\\s*(\\S{1,8})$");

    public static final Columns OF_NOBODY = new Columns(Map.of(), Set.of(), Set.of());

    /** What a name means for sure. */
    public Optional<Meaning> find(String name) {
        String plain = Words.normalised(name);
        return Optional.ofNullable(chosen.get(plain)).or(() -> field(name)).or(() -> amount(plain));
    }

    /** What may be meant by a name that means nothing for sure, nearest first. */
    public List<Meaning> near(String name) {
        return Words.all().near("column", withoutUnit(name)).stream()
                .flatMap(code -> Meaning.of(code).stream())
                .limit(3)
                .toList();
    }

    private static Optional<Meaning> field(String name) {
        return Stream.of(name, withoutUnit(name))
                .flatMap(one -> Words.all().find("column", one).stream())
                .findFirst()
                .flatMap(Meaning::of);
    }

    private static String withoutUnit(String name) {
        String without = IN_BRACKETS.matcher(name).replaceAll(" ");
        Matcher behind = BEHIND.matcher(without.strip());
        return behind.find() && Dimension.LENGTH.unit(behind.group(1)).isPresent()
                ? without.strip().substring(0, behind.start())
                : without;
    }

    /** The unit that a name gives for numbers of a dimension. */
    static Optional<Dimension.Unit> unit(String name, Dimension dimension) {
        Matcher inBrackets = IN_BRACKETS.matcher(name);
        Matcher behind = BEHIND.matcher(name.strip());
        Optional<Dimension.Unit> bracketed = inBrackets.find() ? dimension.unit(inBrackets.group(1)) : Optional.empty();
        return bracketed.or(() -> behind.find() ? dimension.unit(behind.group(1)) : Optional.empty());
    }

    /** Readings, where a name holds a quantity, a role, or a point of the site, and nothing besides. */
    private Optional<Meaning> amount(String plain) {
        Taken quantity = Taken.first(plain, Words.all().words("quantity"));
        Taken role = Taken.first(quantity.rest(), Words.all().words("role"));
        List<String> others = Stream.of(Taken.withoutFillers(role.rest()).split(" ", -1))
                .filter(word -> !word.isEmpty() && !isOnlyAUnit(word))
                .toList();
        Optional<String> enclosure =
                others.stream().filter(enclosures::contains).findFirst();
        Optional<String> point = others.stream()
                .filter(word -> points.contains(word) && !enclosure.equals(Optional.of(word)))
                .findFirst();
        long known = enclosure.stream().count() + point.stream().count();
        boolean isPlace = role.meaning().isPresent() || point.isPresent();
        if (others.size() != known || (quantity.meaning().isEmpty() && !isPlace)) {
            return Optional.empty();
        }
        return Optional.of(new Meaning.Amount(
                quantity.meaning().map(Quantity::valueOf).orElse(Quantity.UV_INDEX),
                role.meaning().map(PointRole::valueOf),
                point,
                enclosure));
    }

    private boolean isOnlyAUnit(String word) {
        return !enclosures.contains(word)
                && !points.contains(word)
                && Stream.of(Dimension.ILLUMINANCE, Dimension.IRRADIANCE, Dimension.TEMPERATURE)
                        .anyMatch(dimension -> dimension.unit(word).isPresent());
    }

    /**
     * The longest word of a table that stands in a text, and the text without it.
     *
     * @param meaning empty: none stands there
     */
    private record Taken(Optional<String> meaning, String rest) {
        private static final Pattern FILLERS =
                Pattern.compile("\\b(point|spot|place|reading|messwert|at|am|im|in|w m2|lx|uw cm2|c|max|value)\\b");

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

        static String withoutFillers(String text) {
            return FILLERS.matcher(text).replaceAll("").strip();
        }
    }
}
