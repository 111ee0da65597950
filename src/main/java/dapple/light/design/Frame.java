package dapple.light.design;

import dapple.light.cover.Filter;
import dapple.light.field.Scene;
import dapple.light.geometry.Bounds;
import dapple.light.geometry.Solid;
import dapple.light.quantity.Check;
import dapple.light.source.Lamp;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a rig is made in.
 *
 * @param accuracy largest relative error of the integration, 1e-6 to 0.05
 * @param room within which a lamp must lie from end to end; empty: anywhere
 */
public record Frame(double accuracy, List<CoverChoice> covers, List<Solid> solids, Optional<Bounds> room) {
    /** More ways to lay the covers than this are not tried. */
    private static final int MOST_LAYERINGS = 64;

    public Frame {
        Check.within("accuracy", accuracy, 1e-6, 0.05, "");
        covers = List.copyOf(covers);
        solids = List.copyOf(solids);
        double ways =
                covers.stream().mapToDouble(cover -> cover.layers().size()).reduce(1, (one, more) -> one * more);
        Check.within("ways to lay the covers", ways, 1, MOST_LAYERINGS, "");
    }

    /** All ways to lay the covers: the layers of each. */
    List<List<Integer>> layerings() {
        List<List<Integer>> ways = List.of(List.of());
        for (CoverChoice cover : covers) {
            List<List<Integer>> longer = new ArrayList<>();
            for (List<Integer> way : ways) {
                for (int layers : cover.layers()) {
                    List<Integer> more = new ArrayList<>(way);
                    more.add(layers);
                    longer.add(more);
                }
            }
            ways = longer;
        }
        return ways;
    }

    Scene scene(List<Lamp> lamps, List<Integer> layering) {
        List<Filter> filters = new ArrayList<>();
        for (int cover = 0; cover < covers.size(); cover++) {
            CoverChoice.with(covers.get(cover).filter(), layering.get(cover)).ifPresent(filters::add);
        }
        return new Scene(accuracy, lamps, filters, solids);
    }

    /** How many covers lie otherwise than now. */
    int changes(List<Integer> layering) {
        int changes = 0;
        for (int cover = 0; cover < covers.size(); cover++) {
            changes += covers.get(cover).layersNow() == layering.get(cover) ? 0 : 1;
        }
        return changes;
    }
}
