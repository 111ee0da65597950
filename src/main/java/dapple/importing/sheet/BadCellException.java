package dapple.importing.sheet;

/** What stands in a cell cannot be taken. Many are met in one sheet, so it carries no stack. */
public class BadCellException extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final Reason reason;
    private final String text;
    private final String column;

    public BadCellException(Reason reason, String text) {
        this(reason, text, "");
    }

    public BadCellException(Reason reason, String text, String column) {
        super(reason + ": " + text, null, false, false);
        this.reason = reason;
        this.text = text;
        this.column = column;
    }

    BadCellException in(String name) {
        return new BadCellException(reason, text, name);
    }

    /** The name of the column; empty: it is the row as a whole. */
    public String column() {
        return column;
    }

    public Reason reason() {
        return reason;
    }

    /** What the reason speaks of. */
    public String text() {
        return text;
    }
}
