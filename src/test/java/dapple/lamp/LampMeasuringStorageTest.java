package dapple.lamp;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dapple.light.quantity.Quantity;
import dapple.people.Role;
import dapple.site.NotFoundException;
import dapple.site.SiteFacts;
import dapple.site.SourceMark;
import dapple.testing.StorageTest;
import dapple.testing.TestCollection;
import dapple.testing.Together;
import java.time.Instant;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

@StorageTest
class LampMeasuringStorageTest {
    private static final Instant MORNING = Instant.parse("2026-03-02T08:00:00Z");
    private static final Instant NOON = Instant.parse("2026-03-02T12:00:00Z");

    @Autowired
    private TestCollection collection;

    @Autowired
    private Lamps lamps;

    @Autowired
    private LampMeasuring measuring;

    private SiteFacts site;
    private LampFacts lamp;
    private long person;

    @BeforeEach
    void furnish() {
        site = collection.site();
        lamp = collection.lamp(site, collection.lampModel(site, LampClass.TUBE_T5));
        person = collection.person(site, Role.LIGHTING_LEAD).personId();
    }

    @Test
    void whatWasMeasuredStandsBeforeTheModels() {
        record(2.4, NOON);
        assertThat(lamps.get(site.id(), lamp.id()).outputs())
                .extracting(LampOutput::reading)
                .containsExactly(2.4);
    }

    @Test
    void theNewestStandsWhateverTheOrderOfEntry() {
        record(2.4, NOON);
        record(2.7, MORNING);
        assertThat(standing()).isEqualTo(2.4);
    }

    @Test
    void aLaterOneTakesItsPlace() {
        record(2.7, MORNING);
        record(2.4, NOON);
        assertThat(standing()).isEqualTo(2.4);
        assertThat(measuring.all(site.id(), lamp.id())).hasSize(2);
    }

    @Test
    void theSameSentTwiceIsStoredOnce() {
        LampMeasuring.Outcome first = record(2.4, NOON);
        assertThat(record(2.4, NOON)).isEqualTo(first);
        assertThat(measuring.all(site.id(), lamp.id())).hasSize(1);
    }

    @Test
    void anotherNumberOfTheSameMinuteIsAskedAbout() {
        record(2.4, NOON);
        assertThat(record(9.9, NOON)).isInstanceOf(LampMeasuring.Outcome.Contradicts.class);
    }

    @Test
    void withdrawnItGivesWayToTheOneBefore() {
        record(2.7, MORNING);
        record(24, NOON);
        measuring.withdraw(site.id(), lamp.id(), newest(), person, "a slip");
        assertThat(standing()).isEqualTo(2.7);
        assertThat(measuring.all(site.id(), lamp.id()).get(0).withdrawnReason()).contains("a slip");
    }

    @Test
    void withdrawnAloneItLeavesTheModels() {
        record(24, NOON);
        measuring.withdraw(site.id(), lamp.id(), newest(), person, "a slip");
        assertThat(lamps.get(site.id(), lamp.id()).outputs())
                .isEqualTo(lamp.model().outputs());
    }

    @Test
    void quantitiesStandBesideOneAnother() {
        record(2.4, NOON);
        measuring.record(site.id(), lamp.id(), output(Quantity.ILLUMINANCE, 8000), MORNING, person);
        assertThat(lamps.get(site.id(), lamp.id()).measured())
                .extracting(LampOutput::reading)
                .containsExactlyInAnyOrder(2.4, 8000.0);
    }

    @Test
    void ofTwoWhoMeasureAtOnceTheNewerStands() {
        assertThat(Together.run(() -> record(2.4, NOON), () -> record(2.7, MORNING)))
                .isEmpty();
        assertThat(standing()).isEqualTo(2.4);
    }

    @Test
    void nothingIsMeasuredOfAnotherSitesLamp() {
        long elsewhere = collection.site().id();
        LampOutput output = output(Quantity.UV_INDEX, 1);
        assertThatThrownBy(() -> measuring.record(elsewhere, lamp.id(), output, NOON, person))
                .isInstanceOf(NotFoundException.class);
    }

    private LampMeasuring.Outcome record(double uvIndex, Instant at) {
        return measuring.record(site.id(), lamp.id(), output(Quantity.UV_INDEX, uvIndex), at, person);
    }

    private static LampOutput output(Quantity quantity, double reading) {
        return new LampOutput(quantity, reading, 0.3, 0.1, SourceMark.MEASURED, "on a bench");
    }

    private double standing() {
        return lamps.byId(site.id())
                .values()
                .iterator()
                .next()
                .measured()
                .get(0)
                .reading();
    }

    private long newest() {
        return measuring.all(site.id(), lamp.id()).get(0).id();
    }
}
