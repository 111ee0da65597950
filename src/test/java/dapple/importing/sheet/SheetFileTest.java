package dapple.importing.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What of an archive is a sheet. */
class SheetFileTest {
    private static final byte[] SHEET = "Enclosure,By\nE1,Jo\n".getBytes(StandardCharsets.UTF_8);
    private static final byte[] PHOTO = {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF, (byte) 0xE0, 0, 16, 'J', 'F'};

    private final Map<String, byte[]> content = new LinkedHashMap<>();

    @TempDir
    private Path folder;

    private SheetFile open() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            for (Map.Entry<String, byte[]> one : content.entrySet()) {
                zip.putNextEntry(new ZipEntry(one.getKey()));
                zip.write(one.getValue());
            }
        }
        return SheetFile.open(Files.write(folder.resolve("sent"), bytes.toByteArray()), "sent.zip");
    }

    @Test
    void whatIsNoSheetIsLeftOutAndNamed() throws IOException {
        content.put("basking.jpg", PHOTO);
        content.put("weeks.csv", SHEET);
        content.put("photo without an ending", PHOTO);
        content.put("photo.csv", PHOTO);
        content.put("notes.html", SHEET);
        content.put("README", SHEET);
        try (SheetFile file = open()) {
            assertThat(file.sheets()).extracting(Sheet::label).containsExactly("weeks.csv", "README");
            assertThat(file.leftOut())
                    .containsExactly("basking.jpg", "photo without an ending", "photo.csv", "notes.html");
        }
    }

    @Test
    void sheetsInUtf16AreSheets() throws IOException {
        content.put("weeks.csv", "Enclosure,By\nE1,Jo\n".getBytes(StandardCharsets.UTF_16));
        try (SheetFile file = open()) {
            assertThat(file.leftOut()).isEmpty();
        }
    }

    @Test
    void whatIsLeftOutIsNotCountedAmongTheSheets() throws IOException {
        for (int at = 0; at < SheetFile.MOST_SHEETS; at++) {
            content.put(at + ".csv", SHEET);
        }
        content.put("basking.jpg", PHOTO);
        try (SheetFile file = open()) {
            assertThat(file.sheets()).hasSize(SheetFile.MOST_SHEETS);
            assertThat(file.leftOut()).containsExactly("basking.jpg");
        }
    }

    @Test
    void withoutAnySheetItIsRefused() {
        content.put("basking.jpg", PHOTO);
        assertThatThrownBy(this::open)
                .isInstanceOfSatisfying(
                        UnreadableException.class,
                        refused -> assertThat(refused.fault()).isEqualTo(Fault.NOT_TEXT));
    }

    @Test
    void anArchiveInsideIsRefusedWhateverItIsCalled() {
        content.put("weeks.csv", SHEET);
        content.put("inner.jpg", new byte[] {'P', 'K', 3, 4, 0, 0});
        assertThatThrownBy(this::open)
                .isInstanceOfSatisfying(
                        UnreadableException.class,
                        refused -> assertThat(refused.fault()).isEqualTo(Fault.NESTED));
    }
}
