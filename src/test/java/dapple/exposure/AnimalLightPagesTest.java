package dapple.exposure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dapple.animal.AnimalKeeping;
import dapple.animal.AnimalKind;
import dapple.animal.AnimalState;
import dapple.animal.Counting;
import dapple.animal.Happened;
import dapple.animal.Pigment;
import dapple.animal.Reach;
import dapple.animal.Sex;
import dapple.animal.Split;
import dapple.exposure.Fortnight.Kept;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.testing.PagesTest;
import dapple.testing.TestCollection;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.UUID;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;

@PagesTest
class AnimalLightPagesTest {
    @Autowired
    private Fortnight fortnight;

    @Autowired
    private TestCollection collection;

    @Autowired
    private AnimalKeeping keeping;

    @Autowired
    private Counting counting;

    @Autowired
    private MockMvc pages;

    /**
     * Worked by hand, with 1 UVI·h = 1 h · 1/40 W/m² [who2002] = 90 J/m², and 100 J/m² = 1 SED [isocie17166]; without a
     * gradient point the animal is taken to be 3 h at the basking place (assumed; common practice, no source), then at the
     * mean of basking and shade.
     *
     * <p>16 to 23 March, 10 h each: low 0.5 · 10 = 5, high 4 · 10 = 40, best 4 · 3 + 2.25 · 7 = 27.75 UVI·h. 24 March: lit
     * before the tube was changed, after which nothing is read until the 29th: unknown, as are 25 to 28 March. 29 March, 9 h
     * as the clocks leave one out: low 9, high 54, best 6 · 3 + 3.5 · 6 = 39 UVI·h. Sums: low 8 · 5 + 9 = 49, best 8 · 27.75
     * + 39 = 261, high 8 · 40 + 54 = 374 UVI·h; in SED times 0.9: 44.1, 234.9, 336.6; in J/m² times 90: 4,410, 23,490,
     * 33,660. A day of the nine known: 5.4, 29.0, 41.6.
     */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "235 SED",
                "44.1 to 337 SED",
                "23,490, 4,410 to 33,660 J/m²",
                "<td class=\"num\">5.4</td>",
                "<td class=\"num\">29.0</td>",
                "<td class=\"num\">41.6</td>",
                "3 of 14",
                "dose of 9, unknown 5",
                "3 measured at basking place and shade, 6 between two readings, 5 unknown, 0 planned off",
                "<strong>24 Mar to 28 Mar 2026</strong>",
                "5 days: the UV index at the basking place was not read",
                "4.0 between readings of 16 Mar and 23 Mar",
                "lamp swapped",
                "0.5 · not read · 4.0"
            })
    void saysWhatWasWorkedByHand(String said) throws Exception {
        Kept kept = fortnight.lived();
        assertThat(see(kept, Fortnight.ASKED)).contains(said);
    }

    @Test
    void theDayOnWhichTheClocksGoForwardHasAnHourLess() throws Exception {
        assertThat(row(see(fortnight.lived(), Fortnight.ASKED), "Sun 29 Mar"))
                .containsSubsequence(
                        "6.0 measured (1 reading)", "1.0 measured (1 reading)", "9.0 h", "9.0", "39.0", "54.0");
    }

    @Test
    void aGroupSaysHowManyItIsAndWas() throws Exception {
        Kept kept = fortnight.kept();
        Happened begin = how(kept, "2026-01-02T09:00");
        AnimalState state = new AnimalState(
                "2026-0001",
                "Group",
                kept.species().id(),
                Sex.UNKNOWN,
                Optional.empty(),
                Pigment.NORMAL,
                Reach.EVERYWHERE,
                "");
        long group = keeping.addGroup(kept.site().id(), state, 5, begin);
        counting.split(
                kept.site().id(),
                new Split(group, AnimalKind.INDIVIDUAL, "2026-0002", "Leaving", 1),
                how(kept, "2026-01-20T09:00"));
        String page = pages.perform(get("/animals/" + group).with(collection.as(kept.person())))
                .andReturn()
                .getResponse()
                .getContentAsString();
        assertThat(page)
                .contains("<strong>4 animals now</strong>", "4 animals from 20 Jan 2026", "5 animals from 2 Jan 2026");
    }

    private static Happened how(Kept kept, String at) {
        return new Happened(
                Fortnight.at(at), "for a test", UUID.randomUUID(), kept.person().personId());
    }

    @Test
    void anUnknownDayIsNeverZero() throws Exception {
        assertThat(row(see(fortnight.lived(), Fortnight.ASKED), "Wed 25 Mar"))
                .contains("10.0 h", "unknown")
                .doesNotContain("0.0<");
    }

    @Test
    void withoutALampOnRecordNothingIsKnown() throws Exception {
        Kept kept = fortnight.kept();
        fortnight.read(kept, "2026-03-16T09:00", 4.0, 0.5);
        assertThat(see(kept, Fortnight.ASKED))
                .contains(
                        "14 days: not known when ultraviolet lamps were on",
                        "The dose of none of these 14 days is known.");
    }

    @Test
    void aTimePlannedOffIsZeroAndNotMissing() throws Exception {
        Kept kept = fortnight.kept();
        fortnight.hang(kept);
        fortnight.planOff(kept, "2026-03-01T12:00", "2026-04-15T12:00");
        assertThat(see(kept, Fortnight.ASKED))
                .contains("0.0 SED", "14 planned off", "The dose of every day is known.", "none expected");
    }

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 4);
    }

    /** Facts in the order in which they happened, or any other that the record allows: rigs are changed in order. */
    @ParameterizedTest
    @MethodSource("seeds")
    void saysTheSameWhetherFactsComeInTimeOrLate(long seed) throws Exception {
        Kept inTime = fortnight.kept();
        facts(inTime).forEach(Runnable::run);
        Kept late = fortnight.kept();
        List<Runnable> shuffled = new ArrayList<>(facts(late));
        Collections.shuffle(shuffled, new Random(seed));
        shuffled.forEach(Runnable::run);
        assertThat(told(late)).isEqualTo(told(inTime)).contains("planned off: ");
    }

    private List<Runnable> facts(Kept kept) {
        return List.of(
                () -> {
                    fortnight.hang(kept);
                    fortnight.swap(kept);
                },
                () -> fortnight.planOff(kept, "2026-03-18T12:00", "2026-03-20T12:00"),
                () -> fortnight.read(kept, "2026-03-16T09:00", 4.0, 0.5),
                () -> fortnight.read(kept, "2026-03-23T09:00", 3.6, 0.4),
                () -> fortnight.read(kept, "2026-03-23T09:30", 3.4, 0.6),
                () -> fortnight.read(kept, "2026-03-26T09:00", 6.0, 1.0),
                () -> fortnight.read(kept, "2026-03-29T09:00", 5.0, 0.8));
    }

    /** The page without what names this collection alone. */
    private String told(Kept kept) throws Exception {
        String page = see(kept, Fortnight.ASKED);
        return page.substring(page.indexOf("<main"), page.indexOf("</main>"))
                .replaceAll("\\b" + kept.meter().code() + "\\b(?!\\.[0-9])", "meter")
                .replaceAll("/(animals|enclosures)/[0-9]+", "/$1")
                .replaceAll("\\b(E|L|Room )[0-9]+\\b", "$1")
                .replaceAll("animal=[0-9]+", "animal")
                .replaceAll("printed [^<]*", "");
    }

    @ParameterizedTest
    @CsvSource({
        "?from=letters&to=2026-03-29, from-wrong",
        "?from=1e400&to=2026-03-29, from-wrong",
        "?from=2026-03-30&to=2026-03-29, from-wrong",
        "?from=2020-03-30&to=2026-03-29, from-wrong",
        "?from=2026-03-30&to=2199-03-29, to-wrong"
    })
    void aWrongDayHasAMessageBesideIt(String asked, String message) throws Exception {
        assertThat(see(fortnight.kept(), asked)).contains("id=\"" + message + "\"");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"2025-0113", "Basil", "235 SED", "no target approved", "predicted is not measured", "Name of"})
    void theSheetSaysItToo(String said) throws Exception {
        Kept kept = fortnight.lived();
        assertThat(page(kept, kept.page() + "/sheet" + Fortnight.ASKED)).contains(said);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "/sheet"})
    void nothingOfAnotherSiteIsFound(String of) throws Exception {
        SignedIn stranger = collection.person(collection.site(), Role.VET);
        pages.perform(get(fortnight.kept().page() + of).with(collection.as(stranger)))
                .andExpect(status().isNotFound());
    }

    private String see(Kept kept, String asked) throws Exception {
        return page(kept, kept.page() + asked);
    }

    private String page(Kept kept, String path) throws Exception {
        return pages.perform(get(path).with(collection.as(kept.person())))
                .andExpect(status().isOk())
                .andReturn()
                .getResponse()
                .getContentAsString();
    }

    private static String row(String page, String day) {
        int begin = page.indexOf(">" + day + "<");
        return page.substring(begin, page.indexOf("</tr>", begin));
    }
}
