package dapple.light.design;

import dapple.light.quantity.Check;
import java.util.List;
import java.util.Optional;

/**
 * What a rig is looked for with.
 *
 * @param places where lamps may hang; a lamp that hangs may also stay where it is
 * @param way along which the light should fall evenly; empty: nobody asks
 * @param mostLamps 0 to 4, those that stay included
 * @param apartMetres the least distance between the middles of two lamps
 */
public record ProposalTask(
        Frame frame,
        List<LampOption> options,
        List<HangingPlace> places,
        List<Demand> demands,
        Optional<Way> way,
        int mostLamps,
        double apartMetres) {
    static final int MOST_LAMPS = 4;

    public ProposalTask {
        options = List.copyOf(options);
        places = List.copyOf(places);
        demands = List.copyOf(demands);
        Check.within("most lamps", mostLamps, 0, MOST_LAMPS, "");
        Check.within("distance apart", apartMetres, 0, 100, "m");
        if (options.stream().map(LampOption::id).distinct().count() < options.size()) {
            throw new IllegalArgumentException("each option must have an id of its own");
        }
        if (options.stream().filter(LampOption::mustHang).count() > mostLamps) {
            throw new IllegalArgumentException("more lamps must hang than " + mostLamps);
        }
    }
}
