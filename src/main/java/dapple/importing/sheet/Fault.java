package dapple.importing.sheet;

/** Why a file cannot be read at all. */
public enum Fault {
    EMPTY,
    /** Bytes that are no text. */
    NOT_TEXT,
    /** A file of a spreadsheet program itself, not of its text export. */
    SPREADSHEET,
    /** An archive that breaks off or contradicts itself. */
    DAMAGED,
    /** An archive inside the archive. */
    NESTED,
    TOO_MANY_SHEETS,
    /** More than is read, unpacked. */
    TOO_LARGE,
    /** Unpacks to far more than a sheet does. */
    TOO_DENSE,
    TOO_MANY_ROWS,
    TOO_MANY_COLUMNS,
    FIELD_TOO_LONG,
    /** A quotation mark that is not closed, or closed in the middle of a field. */
    QUOTES,
    /** No line that could name columns. */
    NO_HEADER,
    /** More things than one import takes. */
    TOO_MANY_THINGS,
    /** No longer on the disk. */
    GONE
}
