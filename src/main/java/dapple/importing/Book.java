package dapple.importing;

import dapple.importing.sheet.Fault;
import dapple.importing.sheet.Field;
import dapple.importing.sheet.Subject;
import dapple.importing.sheet.UnreadableException;
import java.util.Collection;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** All things that the sheets of a file speak of; readings are not kept here, there may be a million. */
final class Book {
    private static final int MOST_THINGS = 50_000;

    private final Map<Subject, Map<String, Entry>> entries = new EnumMap<>(Subject.class);
    private final Outcome outcome;
    private int count;

    Book(Outcome outcome) {
        this.outcome = outcome;
    }

    void add(Said said, Origin origin) {
        Entry entry = entry(said.subject(), said.key(), said.name(), origin);
        said.facts()
                .forEach((field, fact) -> entry.say(
                        field,
                        fact,
                        other -> outcome.notice(Notice.Kind.CONTRADICTS, contradiction(entry, other), origin)));
    }

    private static String contradiction(Entry entry, Field field) {
        return entry.name() + "|" + field;
    }

    /** The thing of a key, entered now if it is not there. */
    Entry entry(Subject subject, String key, String name, Origin origin) {
        Map<String, Entry> ofSubject = entries.computeIfAbsent(subject, one -> new LinkedHashMap<>());
        Optional<Entry> before = Optional.ofNullable(ofSubject.get(key));
        if (before.isPresent()) {
            return before.get();
        }
        if (++count > MOST_THINGS) {
            throw new UnreadableException(Fault.TOO_MANY_THINGS);
        }
        Entry entry = new Entry(subject, key, name, origin);
        ofSubject.put(key, entry);
        return entry;
    }

    Optional<Entry> find(Subject subject, String key) {
        return Optional.ofNullable(entries.getOrDefault(subject, Map.of()).get(key));
    }

    Collection<Entry> all(Subject subject) {
        return List.copyOf(entries.getOrDefault(subject, Map.of()).values());
    }

    /** Those to be stored. */
    List<Entry> fresh(Subject subject) {
        return all(subject).stream().filter(Entry::isNew).toList();
    }
}
