package dapple.importing;

import dapple.importing.sheet.BadCellException;
import dapple.importing.sheet.Field;
import dapple.importing.sheet.Subject;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.function.Consumer;

/** One thing that sheets speak of, whatever rows and sheets do: who it is, and what is said of it. */
final class Entry {
    private final Subject subject;
    private final String key;
    private final Origin origin;
    private final Map<Field, Object> facts = new EnumMap<>(Field.class);
    private String name;
    private OptionalLong id = OptionalLong.empty();
    private boolean known;
    private boolean leftOut;
    private Optional<BadCellException> whyLeftOut = Optional.empty();
    private Optional<Entry> same = Optional.empty();

    Entry(Subject subject, String key, String name, Origin origin) {
        this.subject = subject;
        this.key = key;
        this.name = name;
        this.origin = origin;
    }

    /** Adds a fact; sets grow, of anything else the first stands, and whoever listens hears of another. */
    void say(Field field, Object fact, Consumer<Field> contradicts) {
        Object before = facts.putIfAbsent(field, fact);
        if (before instanceof Set<?> some && fact instanceof Set<?> more) {
            Set<Object> both = new HashSet<>(some);
            both.addAll(more);
            facts.put(field, both);
        } else if (before != null && !before.equals(fact)) {
            contradicts.accept(field);
        }
    }

    void put(Field field, Object fact) {
        facts.put(field, fact);
    }

    <T> Optional<T> fact(Field field, Class<T> type) {
        return Optional.ofNullable(facts.get(field)).map(type::cast);
    }

    Optional<String> text(Field field) {
        return fact(field, String.class);
    }

    Optional<Double> number(Field field) {
        return fact(field, Double.class);
    }

    Set<?> all(Field field) {
        return facts.get(field) instanceof Set<?> some ? some : Set.of();
    }

    Map<Field, Object> facts() {
        return facts;
    }

    Subject subject() {
        return subject;
    }

    String key() {
        return key;
    }

    Origin origin() {
        return origin;
    }

    String name() {
        return name;
    }

    void rename(String other) {
        this.name = other;
    }

    boolean isKnown() {
        return known;
    }

    /** It is on record already. */
    void isOnRecordAs(long recordedId) {
        this.id = OptionalLong.of(recordedId);
        this.known = true;
    }

    void isStoredAs(long storedId) {
        this.id = OptionalLong.of(storedId);
    }

    /** The id that it has, if it is stored. */
    OptionalLong id() {
        return same.map(Entry::id).orElse(id);
    }

    /** It is another name for something else in the sheets. */
    void isSameAs(Entry other) {
        this.same = Optional.of(other);
    }

    boolean isNew() {
        return !known && !leftOut && same.isEmpty();
    }

    void leaveOut() {
        this.leftOut = true;
    }

    void leaveOut(BadCellException because) {
        leaveOut();
        this.whyLeftOut = Optional.of(because);
    }

    Optional<BadCellException> whyLeftOut() {
        return same.map(Entry::whyLeftOut).orElse(whyLeftOut);
    }

    boolean isLeftOut() {
        return same.map(Entry::isLeftOut).orElse(leftOut);
    }
}
