package dapple.light.design;

import dapple.light.field.Facing;
import dapple.light.field.Receiver;
import dapple.light.quantity.Quantity;
import java.util.ArrayList;
import java.util.List;

/** Every amount that is asked for: one quantity at one receiver, for one demand or for the way. */
final class Cells {
    /**
     * One amount.
     *
     * @param receiver index among the receivers
     * @param demand index of the demand, −1 for the way
     * @param start where its light begins in a row of the table
     * @param isVector whether that is a vector, because the receiver faces where most comes from
     */
    record Cell(int receiver, Quantity quantity, int demand, int start, boolean isVector) {}

    private final List<Receiver> receivers = new ArrayList<>();
    private final List<Cell> cells = new ArrayList<>();
    private int width;

    static Cells of(ProposalTask task) {
        Cells made = new Cells();
        for (int demand = 0; demand < task.demands().size(); demand++) {
            Demand wanted = task.demands().get(demand);
            for (Receiver receiver : wanted.receivers()) {
                made.add(receiver, wanted.quantity(), demand);
            }
        }
        task.way().ifPresent(way -> way.receivers().forEach(receiver -> made.add(receiver, way.quantity(), -1)));
        return made;
    }

    private void add(Receiver receiver, Quantity quantity, int demand) {
        if (!receivers.contains(receiver)) {
            receivers.add(receiver);
        }
        boolean isVector = receiver.facing() instanceof Facing.Maximum;
        cells.add(new Cell(receivers.indexOf(receiver), quantity, demand, width, isVector));
        width += isVector ? 3 : 1;
    }

    List<Receiver> receivers() {
        return receivers;
    }

    Cell get(int index) {
        return cells.get(index);
    }

    int count() {
        return cells.size();
    }

    /** How many numbers hold the light of one lamp in all cells. */
    int width() {
        return width;
    }

    /** The first cell of the way. */
    int wayStart() {
        return (int) cells.stream().filter(cell -> cell.demand() >= 0).count();
    }
}
