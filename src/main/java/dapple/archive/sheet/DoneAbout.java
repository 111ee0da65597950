package dapple.archive.sheet;

import dapple.review.DecisionFacts;
import dapple.rig.RigChangeTold;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.context.MessageSource;

/** What was decided and changed, by enclosure, in words. */
record DoneAbout(
        MessageSource words, Map<Long, List<DecisionFacts>> decisions, Map<Long, List<RigChangeTold>> changed) {
    String said(long enclosure) {
        List<DecisionFacts> decided = decisions.getOrDefault(enclosure, List.of());
        List<RigChangeTold> touched = changed.getOrDefault(enclosure, List.of());
        if (decided.isEmpty() && touched.isEmpty()) {
            return say("summary.off.nothing");
        }
        return Stream.concat(kinds(decided, touched), lastText(decided).stream())
                .collect(Collectors.joining("; "));
    }

    private static Optional<String> lastText(List<DecisionFacts> decided) {
        return decided.stream()
                .map(DecisionFacts::text)
                .filter(text -> !text.isBlank())
                .reduce((earlier, later) -> later);
    }

    private Stream<String> kinds(List<DecisionFacts> decided, List<RigChangeTold> touched) {
        return Stream.concat(
                        decided.stream().map(one -> say("decision.kind." + one.kind())),
                        touched.stream()
                                .map(one -> say("rig-change." + one.change().kind())))
                .collect(Collectors.groupingBy(kind -> kind, TreeMap::new, Collectors.counting()))
                .entrySet()
                .stream()
                .map(kind -> kind.getKey() + " × " + kind.getValue());
    }

    private String say(String key) {
        return words.getMessage(key, new Object[0], Locale.UK);
    }
}
