package dapple.importing.sheet;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/** A file that was sent: one sheet, or several packed. The names in it serve as labels alone. */
public final class SheetFile implements AutoCloseable {
    public static final int MOST_SHEETS = 50;
    private static final int MOST_ENTRIES = 1000;
    static final int LONGEST_NAME = 100;
    private static final int LONGEST_LABEL = 80;
    private static final int LOOKED_AT = 8 * 1024;

    /** What a sheet in an archive is called: with an ending of text, or with none. */
    private static final Pattern SHEETS = Pattern.compile("(?i).*\\.(csv|tsv|txt)|[^.]*");

    private final Optional<ZipFile> packed;
    private final List<Sheet> sheets = new ArrayList<>();
    private final List<String> leftOut = new ArrayList<>();

    private SheetFile(Optional<ZipFile> packed) {
        this.packed = packed;
    }

    /**
     * Opens a file; the caller closes it.
     *
     * @param name what it was called by whoever sent it
     * @throws UnreadableException if it holds nothing that can be a sheet
     */
    public static SheetFile open(Path path, String name) throws IOException {
        if (!Files.isRegularFile(path)) {
            throw new UnreadableException(Fault.GONE);
        }
        byte[] head = head(path);
        if (head.length == 0) {
            throw new UnreadableException(Fault.EMPTY);
        }
        return Magic.isZip(head) ? unpacking(path) : plain(path, label(name));
    }

    private static byte[] head(Path path) throws IOException {
        try (InputStream in = Files.newInputStream(path)) {
            return in.readNBytes(Magic.LENGTH);
        }
    }

    private static SheetFile plain(Path path, String label) {
        Allowance allowance = new Allowance(1);
        SheetFile file = new SheetFile(Optional.empty());
        file.sheets.add(new Sheet(
                label,
                () -> new CountedStream(
                        new BufferedInputStream(Files.newInputStream(path)),
                        bytes -> allowance.count(0, bytes, Allowance.MOST_BYTES))));
        return file;
    }

    private static SheetFile unpacking(Path path) throws IOException {
        try {
            SheetFile file = new SheetFile(Optional.of(new ZipFile(path.toFile())));
            try {
                file.list();
                return file;
            } catch (UnreadableException | IOException refused) {
                file.close();
                throw refused;
            }
        } catch (IOException | IllegalArgumentException damaged) {
            throw new UnreadableException(Fault.DAMAGED);
        }
    }

    private void list() throws IOException {
        ZipFile zip = packed.orElseThrow();
        Allowance allowance = new Allowance(MOST_SHEETS);
        Iterator<? extends ZipEntry> entries = zip.entries().asIterator();
        for (int seen = 0; entries.hasNext(); seen++) {
            ZipEntry entry = entries.next();
            String label = label(entry.getName());
            if (entry.getName().equals("[Content_Types].xml") || label.equals("content.xml")) {
                throw new UnreadableException(Fault.SPREADSHEET);
            }
            if (seen > MOST_ENTRIES) {
                throw new UnreadableException(Fault.TOO_MANY_SHEETS);
            }
            if (!entry.isDirectory() && !label.startsWith(".")) {
                add(zip, entry, label, allowance);
            }
        }
        if (sheets.isEmpty()) {
            throw leftOut.isEmpty()
                    ? new UnreadableException(Fault.EMPTY)
                    : new UnreadableException(Fault.NOT_TEXT, leftOut.get(0), 0);
        }
    }

    private void add(ZipFile zip, ZipEntry entry, String label, Allowance allowance) throws IOException {
        int number = sheets.size();
        try (InputStream in = zip.getInputStream(entry)) {
            byte[] head = in == null ? new byte[0] : in.readNBytes(LOOKED_AT);
            if (in == null || Magic.isZip(head)) {
                throw new UnreadableException(Fault.NESTED, label, 0);
            }
            if (!SHEETS.matcher(label).matches() || !Encoding.isText(head)) {
                leftOut.add(label);
                return;
            }
        }
        if (number == MOST_SHEETS) {
            throw new UnreadableException(Fault.TOO_MANY_SHEETS);
        }
        sheets.add(new Sheet(
                label,
                () -> new CountedStream(
                        new BufferedInputStream(zip.getInputStream(entry)),
                        bytes -> allowance.count(number, bytes, entry.getCompressedSize()))));
    }

    /** The last part of a name, without what no page should show. */
    public static String label(String name) {
        String last = name.replace('\\', '/').replaceFirst("/+$", "");
        last = last.substring(last.lastIndexOf('/') + 1)
                .replaceAll("(?U)[\\p{Cntrl}\\p{Cf}]", "")
                .strip();
        String shown = last.isEmpty() ? "sheet" : last;
        return shown.length() > LONGEST_LABEL ? shown.substring(0, LONGEST_LABEL) : shown;
    }

    /** The names of the files in an archive that are no sheets. */
    public List<String> leftOut() {
        return List.copyOf(leftOut);
    }

    public List<Sheet> sheets() {
        return List.copyOf(sheets);
    }

    @Override
    public void close() throws IOException {
        if (packed.isPresent()) {
            packed.get().close();
        }
    }
}
