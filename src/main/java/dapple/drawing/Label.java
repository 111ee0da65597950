package dapple.drawing;

import dapple.light.judging.State;
import java.util.Optional;

/**
 * Words in a drawing.
 *
 * @param area what they take up
 * @param state whose mark stands after them
 * @param leader from what they name; empty where they stand on it
 */
public record Label(String words, Area area, Optional<State> state, Optional<String> leader) {
    /** The width of a letter over the height of the type, with room for wider fonts than ours. */
    private static final double LETTER = 0.62;

    private static final double PADDING = 0.4;
    private static final double LINE = 1.6;
    private static final double MARK = 1.1;

    /** The room that words take up, anywhere. */
    static Area size(String words, boolean hasMark, double type) {
        double marks = hasMark ? MARK + PADDING : 0;
        return new Area(0, 0, type * (words.length() * LETTER + 2 * PADDING + marks), type * LINE);
    }

    /** Words alone stand in the middle, words with a mark at the left. */
    public String anchor() {
        return state.isPresent() ? "start" : "middle";
    }

    public double textX() {
        return state.isPresent() ? area.left() + area.height() * PADDING / LINE : area.middleX();
    }

    /** Where the letters stand. */
    public double textY() {
        return area.middleY() + area.height() * 0.35 / LINE;
    }

    public double markSize() {
        return area.height() * MARK / LINE;
    }

    public double markX() {
        return area.right() - markSize() - area.height() * PADDING / LINE;
    }

    public double markY() {
        return area.middleY() - markSize() / 2;
    }
}
