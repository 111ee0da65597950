package dapple.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** The sheet of an animal is one page of A4, however much there is to say. */
@BrowserTest
class SheetIT {
    private static final Path FOLDER = Path.of("target/sheets");
    private static final Pattern PAGE = Pattern.compile("/Type\\s*/Page[^s]");

    /** As many stays, gaps and orders as a sheet shows, the reasons as long as it lets them be. */
    private static final String FILL = """
            const stays = document.querySelector('.doses tbody');
            while (stays.rows.length < 5) { stays.prepend(stays.rows[0].cloneNode(true)); }
            const gaps = document.querySelector('.sheet ul.ruled');
            while (gaps.children.length < 5) { gaps.prepend(gaps.children[0].cloneNode(true)); }
            const orders = document.querySelector('.sheet .cols .panel');
            for (let order = 0; order < 1; order++) {
              for (const words of [30, 110, 180]) {
                const line = document.createElement('p');
                line.textContent = 'eyes shut '.repeat(words / 10);
                orders.append(line);
              }
            }
            """;

    @Autowired
    private Browser browser;

    @Autowired
    private DemoIds ids;

    @BeforeEach
    void openTheSheet() {
        browser.at(1280, 800).scheme("day").signInAs("vet").open("/animals/" + ids.animal("Thistle") + "/sheet");
    }

    @Test
    void isOnePage() throws IOException {
        assertThat(pages("sheet")).isEqualTo(1);
    }

    @Test
    void isOnePageWhereThereIsMuchToSay() throws IOException {
        browser.run(FILL);
        assertThat(pages("full-sheet")).isEqualTo(1);
    }

    private long pages(String name) throws IOException {
        Map<String, Object> printed =
                browser.command("Page.printToPDF", Map.of("preferCSSPageSize", true, "printBackground", true));
        byte[] pdf = Base64.getDecoder().decode(String.valueOf(printed.get("data")));
        Files.createDirectories(FOLDER);
        Files.write(FOLDER.resolve(name + ".pdf"), pdf);
        return PAGE.matcher(new String(pdf, StandardCharsets.ISO_8859_1))
                .results()
                .count();
    }
}
