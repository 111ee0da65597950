package dapple.importing;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.importing.BadRows.Lines;
import dapple.importing.sheet.Reason;
import java.util.List;
import org.junit.jupiter.api.Test;

class BadRowsTest {
    private static BadRow row(long line, String column, String text) {
        return new BadRow("weeks.csv", line, column, Reason.NOT_A_NUMBER, text);
    }

    @Test
    void theSameIsToldOnceWithItsLines() {
        assertThat(BadRows.of(List.of(row(2, "UVI", "?"), row(3, "UVI", "?"), row(4, "UVI", "?"), row(7, "UVI", "?"))))
                .singleElement()
                .satisfies(one -> assertThat(one.lines()).containsExactly(new Lines(2, 4), new Lines(7, 7)));
    }

    @Test
    void otherColumnsAndWordsAreToldApart() {
        assertThat(BadRows.of(List.of(row(2, "UVI", "?"), row(3, "lux", "?"), row(4, "UVI", "much"))))
                .hasSize(3);
    }
}
