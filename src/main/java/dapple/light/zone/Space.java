package dapple.light.zone;

import java.util.function.IntPredicate;

/** Which places of a lattice an animal reaches, and between which neighbours something stands. */
public final class Space {
    private static final int REACHABLE = 8;

    private final Lattice lattice;

    /** Of each place 8 where it is reachable, and a bit for each axis along which something parts it from the next. */
    private final byte[] marks;

    private Space(Lattice lattice, byte[] marks) {
        this.lattice = lattice;
        this.marks = marks;
    }

    static Space unknown(Lattice lattice) {
        return new Space(lattice, new byte[lattice.size()]);
    }

    /** A space in which nothing stands between neighbours. */
    public static Space of(Lattice lattice, IntPredicate reachable) {
        Space space = unknown(lattice);
        for (int index = 0; index < lattice.size(); index++) {
            if (reachable.test(index)) {
                space.open(index);
            }
        }
        return space;
    }

    void open(int index) {
        marks[index] |= REACHABLE;
    }

    void part(int index, int axis) {
        marks[index] |= (byte) (1 << axis);
    }

    public Lattice lattice() {
        return lattice;
    }

    public boolean isReachable(int index) {
        return (marks[index] & REACHABLE) != 0;
    }

    /**
     * Whether something stands between a place and its next neighbour along an axis.
     *
     * @param axis 0 for x, 1 for y, 2 for z
     */
    boolean isParted(int index, int axis) {
        return (marks[index] & (1 << axis)) != 0;
    }
}
