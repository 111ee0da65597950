package dapple.importing.sheet;

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
        return Optional.ofNullable(chosen.get(plain))
                .or(() -> field(name))
                .or(() -> Heading.of(name).onRecord(enclosures, points));
    }

    /** Whether the site has said what it means. */
    boolean isChosen(String name) {
        return chosen.containsKey(Words.normalised(name));
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
}
