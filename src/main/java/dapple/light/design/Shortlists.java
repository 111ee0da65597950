package dapple.light.design;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** The best mixes by each merit; and the nearest ones, in all and where one demand alone is not met. */
final class Shortlists {
    private final Map<Merit, Shortlist> byMerit = new EnumMap<>(Merit.class);
    private final Shortlist nearest = new Shortlist();
    private final List<Shortlist> alone = new ArrayList<>();

    Shortlists(int demands) {
        for (Merit merit : Merit.values()) {
            byMerit.put(merit, new Shortlist());
        }
        for (int demand = 0; demand < demands; demand++) {
            alone.add(new Shortlist());
        }
    }

    void offer(Score score, int layering, int[] lamps, int size) {
        if (score.isMet()) {
            byMerit.forEach((merit, list) -> list.offer(merit.key(score), layering, lamps, size));
            return;
        }
        nearest.offer(score.violation(), layering, lamps, size);
        if (score.onlyUnmet() >= 0) {
            alone.get(score.onlyUnmet()).offer(score.violation(), layering, lamps, size);
        }
    }

    void addAll(Shortlists other) {
        byMerit.forEach((merit, list) -> list.addAll(other.list(merit)));
        nearest.addAll(other.nearest);
        for (int demand = 0; demand < alone.size(); demand++) {
            alone.get(demand).addAll(other.alone.get(demand));
        }
    }

    private Shortlist list(Merit merit) {
        Shortlist list = byMerit.get(merit);
        return list == null ? new Shortlist() : list;
    }

    List<Mix> best() {
        return mixes(byMerit.values().stream());
    }

    List<Mix> nearest() {
        return mixes(Stream.concat(Stream.of(nearest), alone.stream()));
    }

    private static List<Mix> mixes(Stream<Shortlist> lists) {
        return lists.flatMap(list -> list.mixes().stream()).distinct().sorted().toList();
    }
}
