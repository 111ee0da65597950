package dapple.archive;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** Cells as RFC 4180 has them, and nothing told from an empty text. */
class TableRowsTest {
    @Test
    void tellsNothingFromAnEmptyText() throws IOException {
        assertThat(first("id,note,reason\r\n1,,\"\"\r\n")).containsExactly("1", TableRows.NOTHING, "");
    }

    /** RFC 4180, section 2, rules 6 and 7. */
    @Test
    void readsLineBreaksCommasAndDoubledQuotesInQuotes() throws IOException {
        assertThat(first("id,note,reason\r\n1,\"b \r\nbb\",\"a,\"\"b\"\"\"\r\n"))
                .containsExactly("1", "b \r\nbb", "a,\"b\"");
    }

    @Test
    void readsWhatIsNotAscii() throws IOException {
        assertThat(first("id,note,reason\n2,µ–é,\uD83E\uDD8E\n")).containsExactly("2", "µ–é", "\uD83E\uDD8E");
    }

    private static String[] first(String text) throws IOException {
        try (TableRows rows = new TableRows(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)))) {
            assertThat(rows.columns()).containsExactly("id", "note", "reason");
            return rows.next();
        }
    }
}
