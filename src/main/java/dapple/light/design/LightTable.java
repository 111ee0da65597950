package dapple.light.design;

import dapple.light.design.Cells.Cell;
import dapple.light.field.Field;
import dapple.light.field.Light;
import dapple.light.field.Scene;
import dapple.light.geometry.Vec;
import dapple.light.source.Lamp;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * The light of every candidate by itself in every cell, under one way to lay the covers, as the engine says. Light adds up:
 * on a plane or from all round the amounts do. On the plane that has most the vectors do as far as all light lies in front
 * of it; what a table says there is never more than the truth, nor less than the largest of the parts.
 */
final class LightTable {
    private final ProposalTask task;
    private final Cells cells;
    private final List<Integer> layering;
    private final int[] starts;
    private final boolean[] vectors;
    private final double[][] light;
    private final double[][] own;

    /**
     * An empty table.
     *
     * @param rows one for each candidate, and the last for the lamps that stay
     */
    LightTable(ProposalTask task, Cells cells, List<Integer> layering, int rows) {
        this.task = task;
        this.cells = cells;
        this.layering = layering;
        this.starts = new int[cells.count()];
        this.vectors = new boolean[cells.count()];
        for (int cell = 0; cell < starts.length; cell++) {
            starts[cell] = cells.get(cell).start();
            vectors[cell] = cells.get(cell).isVector();
        }
        this.light = new double[rows][];
        this.own = new double[rows][];
    }

    List<Integer> layering() {
        return layering;
    }

    /** Fills a row with the light of a lamp, or of those that stay. */
    void fill(int row, List<Lamp> lamps) {
        double[] parts = new double[cells.width()];
        double[] amounts = new double[cells.count()];
        Scene scene = task.frame().scene(lamps, layering);
        Field field = Field.of(scene);
        List<Light> found = new ArrayList<>();
        cells.receivers().forEach(receiver -> found.add(field.at(receiver)));
        for (int index = 0; index < cells.count(); index++) {
            Cell cell = cells.get(index);
            put(cell, found.get(cell.receiver()), parts);
            amounts[index] = found.get(cell.receiver()).values().getOrDefault(cell.quantity(), 0.0);
        }
        light[row] = parts;
        own[row] = amounts;
    }

    private static void put(Cell cell, Light found, double[] parts) {
        double amount = found.values().getOrDefault(cell.quantity(), 0.0);
        if (!cell.isVector()) {
            parts[cell.start()] = amount;
            return;
        }
        Vec facing = found.facing().orElse(Map.of()).getOrDefault(cell.quantity(), Vec.UP);
        parts[cell.start()] = amount * facing.x();
        parts[cell.start() + 1] = amount * facing.y();
        parts[cell.start() + 2] = amount * facing.z();
    }

    /** Whether the engine could say everything of a candidate. */
    boolean isKnown(int row) {
        for (double amount : own[row]) {
            if (!Double.isFinite(amount)) {
                return false;
            }
        }
        return true;
    }

    double own(int row, int cell) {
        return own[row][cell];
    }

    /** What some candidates give together in a cell, those that stay included. */
    double amount(int[] mix, int size, int index) {
        int start = starts[index];
        double[] base = light[light.length - 1];
        double x = base[start];
        if (!vectors[index]) {
            for (int slot = 0; slot < size; slot++) {
                x += light[mix[slot]][start];
            }
            return x;
        }
        double y = base[start + 1];
        double z = base[start + 2];
        double most = own[light.length - 1][index];
        for (int slot = 0; slot < size; slot++) {
            double[] row = light[mix[slot]];
            x += row[start];
            y += row[start + 1];
            z += row[start + 2];
            most = Math.max(most, own[mix[slot]][index]);
        }
        return Math.max(most, Math.sqrt(x * x + y * y + z * z));
    }

    /** What they never exceed together in a cell. */
    double most(int[] mix, int size, int index) {
        double sum = own[light.length - 1][index];
        for (int slot = 0; slot < size; slot++) {
            sum += own[mix[slot]][index];
        }
        return sum;
    }
}
