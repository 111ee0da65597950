package dapple.archive;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;

/** Archives that are not as the program writes them. */
final class Tampered {
    private Tampered() {}

    /** With right sums, and a last row that names a site which is not there. */
    static Path withRowOfNobody(Path from, Path to) throws IOException {
        try (ArchiveFile archive = ArchiveFile.open(from)) {
            String name = "tables/room.csv";
            Map<String, byte[]> entries = entries(archive);
            byte[] rows = entries.getOrDefault(name, new byte[0]);
            ByteArrayOutputStream more = new ByteArrayOutputStream();
            more.writeBytes(rows);
            more.writeBytes("999999,999999,nowhere,1,0\r\n".getBytes(StandardCharsets.UTF_8));
            entries.put(name, more.toByteArray());
            write(archive.manifest(), entries, to);
        }
        return to;
    }

    private static Map<String, byte[]> entries(ArchiveFile archive) throws IOException {
        Map<String, byte[]> entries = new TreeMap<>();
        for (String name : archive.manifest().sha256().keySet()) {
            entries.put(name, archive.bytes(name));
        }
        return entries;
    }

    /** Writes entries with a manifest whose sums are theirs. */
    static void write(Manifest like, Map<String, byte[]> entries, Path to) throws IOException {
        try (OutputStream out = Files.newOutputStream(to)) {
            SummedZip zip = new SummedZip(out);
            for (Map.Entry<String, byte[]> entry : entries.entrySet()) {
                zip.entry(entry.getKey(), into -> into.write(entry.getValue()));
            }
            Manifest manifest = withSums(like, zip.sums());
            zip.entry(Manifest.ENTRY, into -> into.write(manifest.json()));
            zip.entry(Archives.SUMS, into -> into.write(new byte[0]));
            zip.finish();
        }
    }

    static Manifest withSums(Manifest like, Map<String, String> sums) {
        return new Manifest(
                like.program(),
                like.format(),
                like.schema(),
                like.kind(),
                like.sites(),
                like.from(),
                like.to(),
                like.madeAt(),
                like.madeBy(),
                like.writtenInMillis(),
                like.rows(),
                sums);
    }
}
