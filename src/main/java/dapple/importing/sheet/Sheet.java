package dapple.importing.sheet;

import java.io.IOException;
import java.io.InputStream;

/** One table in a file: what it is called, and its bytes as often as they are wanted. */
public final class Sheet {
    private final String label;
    private final Source source;

    /** Opens the bytes. */
    interface Source {
        InputStream open() throws IOException;
    }

    Sheet(String label, Source source) {
        this.label = label;
        this.source = source;
    }

    /** For what is made while it is read. */
    public static Sheet of(String label, InputStream once) {
        return new Sheet(label, () -> once);
    }

    public String label() {
        return label;
    }

    InputStream open() throws IOException {
        return source.open();
    }
}
