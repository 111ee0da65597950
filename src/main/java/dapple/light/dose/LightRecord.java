package dapple.light.dose;

import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;

/**
 * All that is known of an animal's light.
 *
 * @param zone of the site, for days and timers
 * @param spells none may overlap; between them the animal is nowhere
 * @param readings in any order; one outside all spells says nothing
 */
public record LightRecord(ZoneId zone, List<Spell> spells, TimedLamps lamps, List<PointReading> readings) {
    public LightRecord {
        spells = inOrder(spells);
        readings = List.copyOf(readings);
    }

    List<PointReading> during(Spell spell) {
        return readings.stream()
                .filter(reading -> spell.during().contains(reading.at()))
                .toList();
    }

    private static List<Spell> inOrder(List<Spell> spells) {
        List<Spell> sorted = spells.stream()
                .sorted(Comparator.comparing(spell -> spell.during().from()))
                .toList();
        for (int i = 1; i < sorted.size(); i++) {
            if (sorted.get(i)
                    .during()
                    .from()
                    .isBefore(sorted.get(i - 1).during().to())) {
                throw new IllegalArgumentException("spells must not overlap, " + sorted.get(i) + " does");
            }
        }
        return sorted;
    }
}
