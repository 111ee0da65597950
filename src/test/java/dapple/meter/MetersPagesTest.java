package dapple.meter;

import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrlPattern;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dapple.light.quantity.Quantity;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.site.SiteFacts;
import dapple.testing.Asking;
import dapple.testing.PagesTest;
import dapple.testing.TestCollection;
import dapple.testing.TestCollection.Home;
import java.time.Clock;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;

@PagesTest
class MetersPagesTest {
    private static final Map<String, String> METER = Map.of(
            "version", "0", "code", "X7", "description", "lux meter", "quantity", "ILLUMINANCE", "resolution", "0.5");
    private static final Map<String, String> CALIBRATION = Map.of(
            "calibratedOn",
            "2026-03-01",
            "correction",
            "FACTOR",
            "factor",
            "1,04",
            "dueOn",
            "2027-03-01",
            "certificate",
            "C-0815");

    @Autowired
    private TestCollection collection;

    @Autowired
    private Calibrations calibrations;

    @Autowired
    private Clock clock;

    @Autowired
    private MockMvc pages;

    private SiteFacts site;
    private SignedIn lead;
    private Asking asking;
    private MeterFacts meter;
    private String page;

    @BeforeEach
    void furnish() {
        site = collection.site();
        lead = collection.person(site, Role.LIGHTING_LEAD);
        asking = new Asking(pages, collection.as(lead));
        meter = collection.meter(site);
        page = "/meters/" + meter.id();
    }

    @Test
    void anEmptyRegisterSaysSo() throws Exception {
        SignedIn other = collection.person(collection.site(), Role.KEEPER);
        pages.perform(get("/meters").with(collection.as(other)))
                .andExpect(content().string(containsString("No meter is registered at this site yet.")));
    }

    @Test
    void aNewMeterIsListedWithItsQuantityAndUnit() throws Exception {
        asking.send("/meters/new", METER).andExpect(redirectedUrlPattern("/meters/*"));
        asking.see("/meters")
                .andExpect(content().string(containsString("X7")))
                .andExpect(content().string(containsString("illuminance, lx")))
                .andExpect(content().string(containsString("never calibrated")));
    }

    @Test
    void aMeterPostedTwiceIsStoredOnce() throws Exception {
        asking.send("/meters/new", METER);
        asking.send("/meters/new", METER)
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("A meter, in use or not, has this code already.")));
    }

    @ParameterizedTest
    @CsvSource({
        "code, ''",
        "code, longer than twenty letters",
        "description, ''",
        "resolution, ''",
        "resolution, fine",
        "resolution, 1e400",
        "resolution, NaN",
        "resolution, 0",
        "resolution, -1",
        "resolution, 0.0000001",
        "rangeLow, low",
        "rangeHigh, 1000000",
        "statedPercent, 100",
        "statedPercent, -5",
        "statedPercent, 0",
        "borrowedUntil, 2026-02-30",
        "borrowedUntil, tomorrow"
    })
    void aWrongFieldComesBackAsTypedWithAMessage(String field, String typed) throws Exception {
        asking.send("/meters/new", METER, field, typed)
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("id=\"" + field + "-wrong\"")))
                .andExpect(content().string(containsString(typed)));
    }

    @ParameterizedTest
    @CsvSource({
        "rangeLow, 1, rangeHigh, 'Enter this too, or leave both empty.'",
        "rangeHigh, 1, rangeLow, 'Enter this too, or leave both empty.'",
        "statedPercent, 5, statedSource, 'Enter both, the percentage and who states it, or neither.'",
        "statedSource, maker, statedPercent, 'Enter both, the percentage and who states it, or neither.'",
        "borrowedUntil, 2027-01-01, lender, 'Enter whom it is borrowed from, or leave the day empty.'"
    })
    void whatBelongsTogetherIsAskedForTogether(String field, String typed, String asked, String message)
            throws Exception {
        asking.send("/meters/new", METER, field, typed)
                .andExpect(content().string(containsString("id=\"" + asked + "-wrong\"")))
                .andExpect(content().string(containsString(message)));
    }

    @Test
    void aRangeRises() throws Exception {
        Map<String, String> form = new HashMap<>(METER);
        form.put("rangeLow", "5");
        form.put("rangeHigh", "5");
        asking.send("/meters/new", form)
                .andExpect(content().string(containsString("Enter more than the lowest amount.")));
    }

    @Test
    void aStaleMeterComesBackWithBothStates() throws Exception {
        asking.send(page + "/edit", METER, "description", "as the first says").andExpect(redirectedUrl(page));
        asking.send(page + "/edit", METER, "description", "as the second says")
                .andExpect(status().isConflict())
                .andExpect(content().string(containsString("<dd>as the first says</dd>")))
                .andExpect(content().string(containsString("value=\"as the second says\"")))
                .andExpect(content().string(containsString("name=\"version\" value=\"1\"")));
    }

    @Test
    void aMeterKeepsItsQuantity() throws Exception {
        asking.send(page + "/edit", METER).andExpect(redirectedUrl(page));
        asking.see(page).andExpect(content().string(containsString("UV index, UVI")));
    }

    @Test
    void whatSomebodyStatesIsShownWithItsSource() throws Exception {
        Map<String, String> form = new HashMap<>(METER);
        form.put("statedPercent", "7");
        form.put("statedSource", "certificate C-1");
        asking.send(page + "/edit", form);
        asking.see(page)
                .andExpect(
                        content().string(containsString("7\u00a0% of the reading, 95 %; stated by certificate C-1")));
    }

    /** 20 %: common practice, no source; the page says so. */
    @Test
    void anUncertaintyOfOursIsMarkedAsAssumed() throws Exception {
        asking.see(page)
                .andExpect(content()
                        .string(containsString("20\u00a0% of the reading, 95 %; assumed: common practice, no source")));
    }

    /** 1 °C: common practice, no source; a share of degrees Celsius would mean nothing. */
    @Test
    void whatIsAssumedOfAThermometerIsInDegrees() throws Exception {
        asking.see("/meters/"
                        + collection.meter(site, Quantity.SURFACE_TEMPERATURE).id())
                .andExpect(content()
                        .string(allOf(
                                containsString("<dd>1\u00a0°C, 95 %; assumed of a hand-held thermometer"),
                                not(containsString("of the reading")))));
    }

    @Test
    void anOlderScaleIsSaidNeverToBeConverted() throws Exception {
        asking.see("/meters/" + collection.meter(site, Quantity.UVB_IRRADIANCE).id())
                .andExpect(content().string(containsString("never converted to UV index")));
    }

    @Test
    void aMeterLeavesUseAndComesBack() throws Exception {
        asking.send(page + "/retirement", Map.of()).andExpect(redirectedUrl(page));
        asking.see("/meters").andExpect(content().string(containsString("out of use since")));
        asking.send(page + "/return", Map.of()).andExpect(redirectedUrl(page));
        asking.see("/meters").andExpect(content().string(not(containsString("out of use since"))));
    }

    @Test
    void historyTellsWhichFieldsChanged() throws Exception {
        asking.send(page + "/edit", METER, "lender", "the university");
        asking.see(page + "/history")
                .andExpect(content().string(containsString(lead.fullName())))
                .andExpect(content().string(containsString("from " + meter.code() + " to X7")))
                .andExpect(content().string(containsString("<dd>the university</dd>")));
    }

    @Test
    void aCalibrationIsListedWithWhoEnteredIt() throws Exception {
        asking.send(page + "/calibrations/new", CALIBRATION).andExpect(redirectedUrl(page));
        asking.see(page)
                .andExpect(content().string(containsString("1 Mar 2026")))
                .andExpect(content().string(containsString("displayed value × 1.04")))
                .andExpect(content().string(containsString("C-0815")))
                .andExpect(content().string(containsString("by " + lead.fullName())));
    }

    @Test
    void aCalibrationPostedTwiceIsStoredOnce() throws Exception {
        asking.send(page + "/calibrations/new", CALIBRATION);
        asking.send(page + "/calibrations/new", CALIBRATION)
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("A calibration of this day is on record.")));
    }

    @ParameterizedTest
    @CsvSource({
        "calibratedOn, ''",
        "calibratedOn, soon",
        "calibratedOn, 2026-02-30",
        "calibratedOn, 2199-01-01",
        "calibratedOn, 1900-01-01",
        "factor, ''",
        "factor, much",
        "factor, 1e400",
        "factor, NaN",
        "factor, -1",
        "factor, 0",
        "factor, 1.00001",
        "dueOn, ''",
        "dueOn, 2026-03-01",
        "dueOn, 2025-01-01",
        "dueOn, 2200-01-01",
        "certificate, ''"
    })
    void aWrongCalibrationComesBackWithAMessageAtTheField(String field, String typed) throws Exception {
        asking.send(page + "/calibrations/new", CALIBRATION, field, typed)
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("id=\"" + field + "-wrong\"")))
                .andExpect(content().string(containsString(typed)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "MAYBE"})
    void whetherThereIsACorrectionMustBeChosen(String typed) throws Exception {
        asking.send(page + "/calibrations/new", CALIBRATION, "correction", typed)
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("id=\"correction-wrong\"")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "BRIGHTNESS"})
    void whatItMeasuresMustBeChosen(String typed) throws Exception {
        asking.send("/meters/new", METER, "quantity", typed)
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("id=\"quantity-wrong\"")));
    }

    @Test
    void aFactorBesideNoCorrectionIsAskedAbout() throws Exception {
        asking.send(page + "/calibrations/new", CALIBRATION, "correction", "NONE")
                .andExpect(content().string(containsString("Leave this empty, or choose one factor above.")));
    }

    @Test
    void noCorrectionIsSaidInWords() throws Exception {
        Map<String, String> form = new HashMap<>(CALIBRATION);
        form.put("correction", "NONE");
        form.remove("factor");
        asking.send(page + "/calibrations/new", form).andExpect(redirectedUrl(page));
        asking.see(page).andExpect(content().string(containsString("no correction")));
    }

    @Test
    void aWrongCalibrationIsWithdrawnAndStaysOnRecord() throws Exception {
        asking.send(page + "/calibrations/new", CALIBRATION);
        asking.send(withdrawal(), Map.of("reason", "of another meter")).andExpect(redirectedUrl(page));
        asking.see(page)
                .andExpect(content().string(containsString("C-0815")))
                .andExpect(content().string(containsString("of another meter")))
                .andExpect(content().string(containsString("never calibrated")));
        asking.send(page + "/calibrations/new", CALIBRATION).andExpect(redirectedUrl(page));
    }

    @Test
    void aWithdrawalWithoutAReasonComesBack() throws Exception {
        asking.send(page + "/calibrations/new", CALIBRATION);
        asking.send(withdrawal(), Map.of("reason", " "))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("id=\"reason-wrong\"")));
    }

    @Test
    void aWithdrawalPostedTwiceIsAConflict() throws Exception {
        asking.send(page + "/calibrations/new", CALIBRATION);
        String withdrawal = withdrawal();
        asking.send(withdrawal, Map.of("reason", "wrong"));
        asking.send(withdrawal, Map.of("reason", "wrong")).andExpect(status().isConflict());
        asking.see(withdrawal).andExpect(content().string(containsString("It is withdrawn already.")));
    }

    @ParameterizedTest
    @CsvSource({"-1, overdue since", "0, due soon:", "28, due soon:", "29, >due "})
    void theListSaysHowTheNextCalibrationStands(int days, String word) throws Exception {
        due(days);
        asking.see("/meters").andExpect(content().string(containsString(word)));
    }

    @Test
    void whoReadsIsToldThatTheCalibrationIsPastDue() throws Exception {
        String ask = ask();
        asking.see(ask).andExpect(content().string(not(containsString("calibration past due"))));
        due(-1);
        asking.see(ask)
                .andExpect(content().string(containsString(meter.code() + ", UV index meter: calibration past due")));
    }

    @Test
    void aReadingSaysThatItsMeterIsBorrowed() throws Exception {
        asking.send(page + "/edit", METER, "lender", "the university");
        String reply = pages.perform(post(ask())
                        .param("key", UUID.randomUUID().toString())
                        .param("meterId", String.valueOf(meter.id()))
                        .param("amount", "3.4")
                        .with(csrf())
                        .with(collection.as(lead)))
                .andReturn()
                .getResponse()
                .getRedirectedUrl();
        asking.see(String.valueOf(reply)).andExpect(content().string(containsString("meter X7, borrowed")));
    }

    @ParameterizedTest
    @EnumSource(
            value = Role.class,
            names = {"KEEPER", "VET", "INSPECTOR", "MAINTENANCE"})
    void whoDoesNotKeepMetersOnlyLooks(Role role) throws Exception {
        SignedIn person = collection.person(site, role);
        pages.perform(get("/meters").with(collection.as(person)))
                .andExpect(status().isOk())
                .andExpect(content().string(not(containsString("/meters/new"))));
        pages.perform(get(page).with(collection.as(person)))
                .andExpect(status().isOk())
                .andExpect(content().string(not(containsString("/calibrations/new"))))
                .andExpect(content().string(not(containsString("/retirement"))));
    }

    private String ask() {
        Home home = collection.home(site, lead, collection.species(site, "Pogona vitticeps " + UUID.randomUUID()));
        return "/enclosures/" + home.enclosureId() + "/visits/" + UUID.randomUUID() + "/points/"
                + home.basking().id();
    }

    private void due(int days) {
        LocalDate today = LocalDate.ofInstant(clock.instant(), site.timeZone());
        NewCalibration calibration = new NewCalibration(clock.instant(), 1, today.plusDays(days), "C-1");
        calibrations.enter(site.id(), meter.id(), calibration, lead.personId());
    }

    private String withdrawal() {
        return page + "/calibrations/"
                + calibrations.of(site.id(), meter.id()).get(0).id()
                + "/withdrawal";
    }
}
