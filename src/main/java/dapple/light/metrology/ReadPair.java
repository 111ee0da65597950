package dapple.light.metrology;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/** One point read by two meters, the first of which comes first in the order of keys. */
record ReadPair(Compared first, Compared second) {
    /** Each reading with the nearest earlier one of the same point by each other meter, if that is close. */
    static List<ReadPair> of(List<Compared> readings, Duration close) {
        List<ReadPair> pairs = new ArrayList<>();
        readings.stream()
                .sorted(Comparator.comparing(Compared::at))
                .collect(Collectors.groupingBy(Compared::point))
                .values()
                .forEach(ofPoint -> addPairs(pairs, ofPoint, close));
        pairs.sort(Comparator.comparing(ReadPair::at));
        return pairs;
    }

    private static void addPairs(List<ReadPair> pairs, List<Compared> ofPoint, Duration close) {
        for (int later = 0; later < ofPoint.size(); later++) {
            List<String> met = new ArrayList<>(List.of(ofPoint.get(later).meter()));
            for (int earlier = later - 1;
                    earlier >= 0 && areClose(ofPoint.get(earlier), ofPoint.get(later), close);
                    earlier--) {
                if (!met.contains(ofPoint.get(earlier).meter())) {
                    met.add(ofPoint.get(earlier).meter());
                    pairs.add(inOrder(ofPoint.get(earlier), ofPoint.get(later)));
                }
            }
        }
    }

    private static boolean areClose(Compared earlier, Compared later, Duration close) {
        return Duration.between(earlier.at(), later.at()).compareTo(close) <= 0
                && earlier.lamps().key().equals(later.lamps().key());
    }

    private static ReadPair inOrder(Compared one, Compared other) {
        return one.meter().compareTo(other.meter()) < 0 ? new ReadPair(one, other) : new ReadPair(other, one);
    }

    List<String> meters() {
        return List.of(first.meter(), second.meter());
    }

    Instant at() {
        return first.at().isAfter(second.at()) ? first.at() : second.at();
    }

    double lnRatio() {
        return first.lnAmount() - second.lnAmount();
    }

    /** Of the ratio, without what each meter's readings share, ln². */
    double variance() {
        return first.lnUncertainty() * first.lnUncertainty() + second.lnUncertainty() * second.lnUncertainty();
    }
}
