package dapple.meter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dapple.light.quantity.Quantity;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.site.SiteFacts;
import dapple.testing.Asking;
import dapple.testing.PagesTest;
import dapple.testing.TestCollection;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;

/** Rows of the form: calibration, spectral mismatch, angle, position, temperature, repeats. */
@PagesTest
class BudgetPagesTest {
    /** Half a unit of the last digit of what was worked by hand. */
    private static final double LAST_DIGIT = 0.00005;

    @Autowired
    private TestCollection collection;

    @Autowired
    private Meters meters;

    @Autowired
    private MockMvc pages;

    private SiteFacts site;
    private Asking asking;
    private MeterFacts meter;
    private String page;

    @BeforeEach
    void furnish() {
        site = collection.site();
        SignedIn lead = collection.person(site, Role.LIGHTING_LEAD);
        asking = new Asking(pages, collection.as(lead));
        meter = collection.meter(site);
        page = "/meters/" + meter.id();
    }

    /**
     * By hand, JCGM 100, 5.1.2 and 4.3.7: 10/2 = 5, 17.32/√3 = 10.00, 3, 1.2, 1, 4; √(25 + 100 + 9 + 1.44 + 1 + 16) = 12.35;
     * twice that is 24.69 %.
     */
    @Test
    void thePartsCombineToWhatReadingsAreJudgedWith() throws Exception {
        asking.send(page + "/uncertainty", typical()).andExpect(redirectedUrl(page));
        assertThat(meters.get(site.id(), meter.id()).uncertainty().share()).isCloseTo(0.2469, within(LAST_DIGIT));
    }

    @Test
    void thePartsAreListedWithWhoSaysSo() throws Exception {
        asking.send(page + "/uncertainty", typical());
        asking.see(page)
                .andExpect(content()
                        .string(allOf(
                                containsString("± 10 %, expanded, k = 2"),
                                containsString("certificate C-1"),
                                containsString("Together ± 24.7 % of the reading, and never less than ± 0.06 UVI"))));
    }

    @Test
    void withoutPartsTheUsualHolds() throws Exception {
        asking.send(page + "/uncertainty", typical());
        String seen = seen();
        asking.send(page + "/uncertainty", Map.of("seen", seen)).andExpect(redirectedUrl(page));
        asking.see(page).andExpect(content().string(containsString("assumed: common practice, no source")));
    }

    @ParameterizedTest
    @CsvSource({
        "percents[0], much",
        "percents[0], 1e400",
        "percents[0], NaN",
        "percents[0], -5",
        "percents[0], 0",
        "percents[0], 100",
        "percents[0], 1.001",
        "kinds[0], ''",
        "kinds[0], GUESSED",
        "sources[0], ''"
    })
    void aWrongPartComesBackWithAMessageAtTheField(String field, String typed) throws Exception {
        asking.send(page + "/uncertainty", typical(), field, typed)
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("id=\"" + field + "-wrong\"")))
                .andExpect(content().string(containsString("value=\"17.32\"")));
    }

    @Test
    void aPercentageIsAskedForWhereSomebodySaysSo() throws Exception {
        asking.send(page + "/uncertainty", typical(), "percents[0]", "")
                .andExpect(content().string(containsString("id=\"percents[0]-wrong\"")));
    }

    @Test
    void partsAsLargeAsTheReadingAreAskedAbout() throws Exception {
        asking.send(page + "/uncertainty", typical(), "percents[5]", "60")
                .andExpect(content().string(containsString("Together this is as much as the reading itself")));
    }

    @Test
    void aStaleBudgetComesBackWithBoth() throws Exception {
        asking.send(page + "/uncertainty", typical());
        asking.send(page + "/uncertainty", typical(), "sources[0]", "somebody else")
                .andExpect(status().isConflict())
                .andExpect(content()
                        .string(allOf(
                                containsString("<td>certificate C-1</td>"),
                                containsString("value=\"somebody else\""))));
    }

    @Test
    void ofAThermometerNoShareIsStated() throws Exception {
        long thermometer = collection.meter(site, Quantity.AIR_TEMPERATURE).id();
        asking.see("/meters/" + thermometer + "/uncertainty").andExpect(status().isNotFound());
    }

    private String seen() throws Exception {
        String form =
                asking.see(page + "/uncertainty").andReturn().getResponse().getContentAsString();
        return form.replaceAll("(?s).*name=\"seen\" value=\"(\\d+)\".*", "$1");
    }

    private static Map<String, String> typical() {
        Map<String, String> form = new HashMap<>(Map.of("seen", "0"));
        String[][] rows = {
            {"10", "EXPANDED", "certificate C-1"},
            {"17.32", "HALF_WIDTH", "our own lamps"},
            {"3", "STANDARD", "the maker"},
            {"1,2", "STANDARD", "5 mm at 0.3 m"},
            {"1", "STANDARD", "the maker"},
            {"4", "STANDARD", "ten repeats"}
        };
        for (int row = 0; row < rows.length; row++) {
            form.put("percents[" + row + "]", rows[row][0]);
            form.put("kinds[" + row + "]", rows[row][1]);
            form.put("sources[" + row + "]", rows[row][2]);
        }
        return form;
    }
}
