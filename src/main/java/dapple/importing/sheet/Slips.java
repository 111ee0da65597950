package dapple.importing.sheet;

/** How many slips of the hand lie between two spellings. */
public final class Slips {
    private Slips() {}

    /** Letters inserted, left out, replaced, or two neighbours exchanged, each place touched once [damerau1964]. */
    public static int between(String one, String other) {
        int[][] apart = new int[one.length() + 1][other.length() + 1];
        for (int row = 0; row <= one.length(); row++) {
            for (int column = 0; column <= other.length(); column++) {
                apart[row][column] = row == 0 || column == 0 ? row + column : least(apart, row, column, one, other);
            }
        }
        return apart[one.length()][other.length()];
    }

    private static int least(int[][] apart, int row, int column, String one, String other) {
        char mine = one.charAt(row - 1);
        char theirs = other.charAt(column - 1);
        int least = Math.min(
                apart[row - 1][column - 1] + (mine == theirs ? 0 : 1),
                1 + Math.min(apart[row - 1][column], apart[row][column - 1]));
        boolean isSwap = row > 1 && column > 1 && mine == other.charAt(column - 2) && theirs == one.charAt(row - 2);
        return isSwap ? Math.min(least, apart[row - 2][column - 2] + 1) : least;
    }
}
