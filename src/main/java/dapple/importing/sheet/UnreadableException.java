package dapple.importing.sheet;

/** A file that cannot be read: why, and where as far as it is known. */
public class UnreadableException extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final Fault fault;
    private final String sheet;
    private final long line;

    public UnreadableException(Fault fault) {
        this(fault, "", 0);
    }

    UnreadableException(Fault fault, String sheet, long line) {
        super(fault + " in sheet '" + sheet + "' at line " + line);
        this.fault = fault;
        this.sheet = sheet;
        this.line = line;
    }

    UnreadableException in(String label, long atLine) {
        return sheet.isEmpty() ? new UnreadableException(fault, label, atLine) : this;
    }

    public Fault fault() {
        return fault;
    }

    /** The name of the sheet; empty: the file as a whole. */
    public String sheet() {
        return sheet;
    }

    /** The line, from 1; 0: none in particular. */
    public long line() {
        return line;
    }
}
