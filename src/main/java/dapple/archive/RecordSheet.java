package dapple.archive;

import java.io.IOException;
import java.io.OutputStream;

/**
 * A part of a year's record that people read without the program, such as a summary. A feature adds one by declaring a
 * bean of this type; it is written under {@code sheets/}, in the transaction in which the tables are read, in the
 * order of the beans.
 *
 * @param fileName under which it stands there, such as {@code summary.pdf}
 */
public record RecordSheet(String fileName, Content content) {
    /** Writes a sheet; what it writes to is not closed. */
    @FunctionalInterface
    public interface Content {
        void write(RecordMaking making, OutputStream to) throws IOException;
    }
}
