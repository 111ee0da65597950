package dapple.drawing;

/** How much room words take, roughly: widths of letters are not known here. */
final class Words {
    /** A mean letter at 17 units, as on paper; on screens words are at 15. */
    private static final double LETTER = 7.2;

    private static final String MORE = "…";

    private Words() {}

    static double width(String words) {
        return LETTER * words.length();
    }

    /** As many as have room; none where that is less than three letters. */
    static String cut(String words, double room) {
        int letters = (int) (room / LETTER);
        if (words.length() <= letters) {
            return words;
        }
        return letters < 4 ? "" : words.substring(0, letters - 1).stripTrailing() + MORE;
    }
}
