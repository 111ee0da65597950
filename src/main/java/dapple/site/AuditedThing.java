package dapple.site;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * A recorded thing whose history is shown. That the site of the asking person owns it, the feature has checked before.
 *
 * @param entity its audited class
 * @param parts what belongs to it and is told with it
 * @param sets what it holds in tables of their own
 * @param names what is shown for the ids in a field, by field
 * @param words the prefix of the messages that say the words of a field, by field
 */
public record AuditedThing(
        Class<?> entity,
        long id,
        List<AuditedPart> parts,
        List<AuditedSet> sets,
        Map<String, Map<Long, String>> names,
        Map<String, String> words) {

    public static AuditedThing of(Class<?> entity, long id) {
        return new AuditedThing(entity, id, List.of(), List.of(), Map.of(), Map.of());
    }

    public AuditedThing with(AuditedPart part) {
        List<AuditedPart> more = Stream.concat(parts.stream(), Stream.of(part)).toList();
        return new AuditedThing(entity, id, more, sets, names, words);
    }

    public AuditedThing with(AuditedSet set) {
        List<AuditedSet> more = Stream.concat(sets.stream(), Stream.of(set)).toList();
        return new AuditedThing(entity, id, parts, more, names, words);
    }

    public AuditedThing naming(String field, Map<Long, String> namesById) {
        return new AuditedThing(entity, id, parts, sets, and(names, field, namesById), words);
    }

    public AuditedThing wording(String field, String prefix) {
        return new AuditedThing(entity, id, parts, sets, names, and(words, field, prefix));
    }

    private static <T> Map<String, T> and(Map<String, T> some, String field, T one) {
        Map<String, T> more = new HashMap<>(some);
        more.put(field, one);
        return Map.copyOf(more);
    }
}
