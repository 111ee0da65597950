package dapple.demo;

import java.util.List;
import java.util.Optional;

/**
 * How far somebody is on the tour.
 *
 * @param number of the stop whose page is shown, from 1; 0 on every other page
 */
public record DemoTourPlace(List<DemoStop> stops, int number) {
    public Optional<DemoStop> here() {
        return numbered(number);
    }

    public Optional<DemoStop> next() {
        return numbered(number + 1);
    }

    private Optional<DemoStop> numbered(int wanted) {
        return wanted >= 1 && wanted <= stops.size() ? Optional.of(stops.get(wanted - 1)) : Optional.empty();
    }
}
