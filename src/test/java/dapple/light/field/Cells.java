package dapple.light.field;

import java.util.function.Consumer;

/**
 * Integration over the unit square: a product of Gauss rules of four nodes on each cell, and the cell cut in four (in
 * two for a line) until that changes no more. A cell across which something jumps is cut to a depth of its own, even
 * when no node has seen the jump, as long as its corners have.
 */
final class Cells {
    static final double[] NODES = {
        0.5 - 0.8611363115940526 / 2,
        0.5 - 0.3399810435848563 / 2,
        0.5 + 0.3399810435848563 / 2,
        0.5 + 0.8611363115940526 / 2
    };
    static final double[] WEIGHTS = {
        0.34785484513745385 / 2, 0.6521451548625461 / 2, 0.6521451548625461 / 2, 0.34785484513745385 / 2
    };
    private static final int DEEPEST = 26;

    /** The bit of a state that tells of a bend, such as the horizon of the receiver. */
    static final int BEND = 1;

    private static final int BEND_DEPTH = 7;

    private final int dimensions;
    private final Integrand integrand;
    private final int startDepth;
    private final int jumpDepth;
    private final double tolerance;
    private final Consumer<double[]> settled;

    /**
     * Integration to a tolerance.
     *
     * @param startDepth how often the square is halved before an estimate is believed
     * @param jumpDepth how often it is halved where something jumps
     * @param tolerance of the first sum
     * @param settled receives the sums of each settled part
     */
    Cells(
            int dimensions,
            Integrand integrand,
            int startDepth,
            int jumpDepth,
            double tolerance,
            Consumer<double[]> settled) {
        this.dimensions = dimensions;
        this.integrand = integrand;
        this.startDepth = startDepth;
        this.jumpDepth = jumpDepth;
        this.tolerance = tolerance;
        this.settled = settled;
    }

    /** What is integrated. */
    interface Integrand {
        /** Adds an element with a weight to the sums, of which the first decides; gives back its state. */
        int add(double u, double v, double weight, double[] sums);

        /** Differs on both sides of a jump, and in the lowest bit on both sides of a bend. */
        int state(double u, double v);
    }

    void integrate() {
        if (dimensions == 0) {
            double[] sums = new double[BruteForce.SUMS];
            integrand.add(0.5, 0.5, 1, sums);
            settled.accept(sums);
        } else {
            settle(cell(0, dimensions == 1 ? 0.5 : 0, 0), 0);
        }
    }

    private void settle(Cell cell, int depth) {
        int across = dimensions == 1 ? 1 : 2;
        double half = size(depth + 1);
        Cell[] parts = new Cell[2 * across];
        double sum = 0;
        int mixed = cell.mixed;
        for (int part = 0; part < parts.length; part++) {
            int column = part % across;
            int row = part / across;
            double u = dimensions == 1 ? 0.5 : cell.u + column * half;
            parts[part] = cell(depth + 1, u, cell.v + row * half);
            sum += parts[part].sums[0];
            mixed |= parts[part].mixed | (parts[part].state ^ cell.state);
        }
        boolean isClose = Math.abs(sum - cell.sums[0]) <= tolerance * Math.pow(2, -depth * (dimensions - 1.0));
        boolean isDone = (mixed & ~BEND) != 0
                ? depth >= jumpDepth
                : isClose && (mixed == 0 || depth >= Math.min(BEND_DEPTH, jumpDepth));
        for (Cell part : parts) {
            if (depth >= startDepth && (isDone || depth >= DEEPEST)) {
                settled.accept(part.sums);
            } else {
                settle(part, depth + 1);
            }
        }
    }

    private static double size(int depth) {
        return Math.scalb(1.0, -depth);
    }

    private Cell cell(int depth, double u, double v) {
        double size = size(depth);
        Cell cell = new Cell(u, v, integrand.state(u, v));
        double[] acrossNodes = dimensions == 1 ? new double[] {0} : NODES;
        for (int column = 0; column < acrossNodes.length; column++) {
            for (int row = 0; row < NODES.length; row++) {
                double weight = dimensions == 1 ? size * WEIGHTS[row] : size * size * WEIGHTS[column] * WEIGHTS[row];
                int state = integrand.add(u + size * acrossNodes[column], v + size * NODES[row], weight, cell.sums);
                cell.mixed |= state ^ cell.state;
            }
        }
        double far = dimensions == 1 ? u : u + size;
        cell.mixed |= (integrand.state(far, v) ^ cell.state)
                | (integrand.state(u, v + size) ^ cell.state)
                | (integrand.state(far, v + size) ^ cell.state);
        return cell;
    }

    /** A part of the square, by its least corner, with what was found there. */
    private static final class Cell {
        private final double u;
        private final double v;
        private final int state;
        private final double[] sums = new double[BruteForce.SUMS];
        private int mixed;

        Cell(double u, double v, int state) {
            this.u = u;
            this.v = v;
            this.state = state;
        }
    }
}
