package dapple.species;

/** How far two spellings are apart. */
final class Spelling {
    private Spelling() {}

    /** The letters to insert, leave out or replace to come from one to the other [levenshtein1966]. */
    static int distance(String one, String other) {
        int[] above = new int[other.length() + 1];
        for (int column = 0; column <= other.length(); column++) {
            above[column] = column;
        }
        for (int row = 1; row <= one.length(); row++) {
            above = next(above, row, one.charAt(row - 1), other);
        }
        return above[other.length()];
    }

    private static int[] next(int[] above, int row, char letter, String other) {
        int[] line = new int[above.length];
        line[0] = row;
        for (int column = 1; column < line.length; column++) {
            int replaced = above[column - 1] + (other.charAt(column - 1) == letter ? 0 : 1);
            line[column] = Math.min(replaced, 1 + Math.min(above[column], line[column - 1]));
        }
        return line;
    }
}
