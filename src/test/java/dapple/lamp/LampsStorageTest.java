package dapple.lamp;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dapple.light.quantity.Quantity;
import dapple.site.NotFoundException;
import dapple.site.SiteFacts;
import dapple.site.SourceMark;
import dapple.site.TakenException;
import dapple.testing.StorageTest;
import dapple.testing.TestCollection;
import dapple.testing.Together;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.orm.ObjectOptimisticLockingFailureException;

@StorageTest
class LampsStorageTest {
    private static final LampOutput BRIGHTER =
            new LampOutput(Quantity.UV_INDEX, 4.5, 0.3, 0.1, SourceMark.FROM_MEMORY, "for a test");

    @Autowired
    private TestCollection collection;

    @Autowired
    private Lamps lamps;

    @Autowired
    private LampModelArranging models;

    @Autowired
    private LampArranging arranging;

    @Autowired
    private JdbcClient database;

    private SiteFacts site;
    private LampModelFacts model;

    @BeforeEach
    void furnish() {
        site = collection.site();
        model = collection.lampModel(site, LampClass.TUBE_T5);
    }

    static List<LampShape> shapes() {
        return List.of(
                new LampShape.Line(0.55, Optional.of(1.5), 0.05),
                new LampShape.Line(1.15, Optional.empty(), 0),
                new LampShape.Cylinder(0.1, 0.02),
                new LampShape.Spot(30, Optional.empty()),
                new LampShape.Spot(60, Optional.of(0.06)),
                new LampShape.Disc(0.04),
                new LampShape.Panel(0.6, 0.05));
    }

    @ParameterizedTest
    @MethodSource("shapes")
    void aShapeIsKeptAsItIs(LampShape shape) {
        long id = lamps.addModel(
                site.id(), new LampModelChange("Other", LampClass.LED_BAR, Optional.empty(), Optional.of(shape)));
        assertThat(lamps.model(site.id(), id).shape()).contains(shape);
    }

    @Test
    void aModelWithoutShapeAndPowerSaysSo() {
        long id = lamps.addModel(
                site.id(), new LampModelChange("Other", LampClass.LED_BAR, Optional.empty(), Optional.empty()));
        assertThat(lamps.model(site.id(), id).shape()).isEmpty();
        assertThat(lamps.model(site.id(), id).watts()).isEmpty();
    }

    @Test
    void aLampComesWithItsModelAndWhatThatGives() {
        LampFacts lamp = collection.lamp(site, model);
        assertThat(lamps.get(site.id(), lamp.id()).model()).isEqualTo(model);
        assertThat(lamp.outputs()).extracting(LampOutput::reading).containsExactly(3.0);
    }

    @Test
    void allLampsAreTheSameAsEachAlone() {
        LampFacts one = collection.lamp(site, model);
        LampFacts other = collection.lamp(site, collection.lampModel(site, LampClass.METAL_HALIDE));
        assertThat(lamps.byId(site.id())).containsOnlyKeys(one.id(), other.id());
        assertThat(lamps.byId(site.id())).containsEntry(one.id(), lamps.get(site.id(), one.id()));
        assertThat(lamps.byId(site.id())).containsEntry(other.id(), lamps.get(site.id(), other.id()));
    }

    @Test
    void aStatedOutputTakesThePlaceOfTheOneBefore() {
        lamps.stateOutput(site.id(), model.id(), BRIGHTER);
        assertThat(lamps.model(site.id(), model.id()).outputs()).containsExactly(BRIGHTER);
    }

    @Test
    void theSecondOfTwoWhoStateAnOutputIsRefused() {
        models.stateOutput(site.id(), model.id(), 1, BRIGHTER);
        assertThatThrownBy(() -> models.stateOutput(site.id(), model.id(), 1, BRIGHTER))
                .isInstanceOf(ObjectOptimisticLockingFailureException.class);
    }

    @Test
    void anOutputTakenBackIsUnknown() {
        models.removeOutput(site.id(), model.id(), 1, Quantity.UV_INDEX);
        assertThat(lamps.model(site.id(), model.id()).outputs()).isEmpty();
    }

    @Test
    void theSecondOfTwoChangesToAModelIsRefused() {
        LampModelChange change = new LampModelChange("First", LampClass.TUBE_T5, Optional.empty(), Optional.empty());
        models.change(site.id(), model.id(), 0, change);
        assertThatThrownBy(() -> models.change(site.id(), model.id(), 0, change))
                .isInstanceOf(ObjectOptimisticLockingFailureException.class);
    }

    @Test
    void theSecondOfTwoChangesToALampIsRefused() {
        LampFacts lamp = collection.lamp(site, model);
        arranging.change(site.id(), lamp.id(), 0, lamp("A1"));
        assertThatThrownBy(() -> arranging.change(site.id(), lamp.id(), 0, lamp("A2")))
                .isInstanceOf(ObjectOptimisticLockingFailureException.class);
    }

    @Test
    void ofTwoWhoEnterOneTagAtOnceOneIsTold() {
        List<Throwable> thrown =
                Together.run(() -> lamps.add(site.id(), lamp("A1")), () -> lamps.add(site.id(), lamp("A1")));
        assertThat(thrown).singleElement().isInstanceOf(TakenException.class);
        assertThat(lamps.byId(site.id())).hasSize(1);
    }

    @Test
    void ofTwoWhoStateOneOutputAtOnceOneIsTold() {
        LampOutput lux = new LampOutput(Quantity.ILLUMINANCE, 9000, 0.3, 0.1, SourceMark.FROM_MEMORY, "for a test");
        List<Throwable> thrown = Together.run(
                () -> models.stateOutput(site.id(), model.id(), 0, lux),
                () -> models.stateOutput(site.id(), model.id(), 0, lux));
        assertThat(thrown).singleElement().isInstanceOf(ObjectOptimisticLockingFailureException.class);
    }

    @Test
    void tagsAreComparedWithoutCase() {
        lamps.add(site.id(), lamp("A1"));
        assertThatThrownBy(() -> lamps.add(site.id(), lamp("a1"))).isInstanceOf(TakenException.class);
    }

    @Test
    void aTagStaysTakenWhenItsLampIsOutOfUse() {
        long id = lamps.add(site.id(), lamp("A1"));
        arranging.retire(site.id(), id, RetiredFor.BROKEN);
        assertThatThrownBy(() -> lamps.add(site.id(), lamp("A1"))).isInstanceOf(TakenException.class);
    }

    @Test
    void anotherSiteMayUseTheSameTagsAndNames() {
        SiteFacts other = collection.site();
        lamps.add(site.id(), lamp("A1"));
        long foreign = lamps.addModel(
                other.id(), new LampModelChange(model.name(), LampClass.TUBE_T5, Optional.empty(), Optional.empty()));
        NewLamp same = new NewLamp("A1", foreign, Optional.of(0.0), Optional.empty(), "");
        assertThat(lamps.get(other.id(), lamps.add(other.id(), same)).tag()).isEqualTo("A1");
    }

    @Test
    void aLampIsNotMadeOfAnotherSitesModel() {
        long elsewhere = collection.site().id();
        assertThatThrownBy(() -> lamps.add(elsewhere, lamp("A1"))).isInstanceOf(NotFoundException.class);
    }

    @Test
    void aBrokenLampIsKeptButNotInUse() {
        LampFacts lamp = collection.lamp(site, model);
        arranging.retire(site.id(), lamp.id(), RetiredFor.BROKEN);
        assertThat(lamps.inUse(site.id())).isEmpty();
        assertThat(lamps.get(site.id(), lamp.id()).isInUse()).isFalse();
    }

    @Test
    void aLampThatComesBackIsInUse() {
        LampFacts lamp = collection.lamp(site, model);
        arranging.retire(site.id(), lamp.id(), RetiredFor.WORN_OUT);
        arranging.returnToUse(site.id(), lamp.id());
        assertThat(lamps.inUse(site.id())).extracting(LampFacts::id).containsExactly(lamp.id());
    }

    @Test
    void historyKeepsWhatALampWas() {
        LampFacts lamp = collection.lamp(site, model);
        arranging.change(site.id(), lamp.id(), 0, lamp("A1"));
        assertThat(database.sql("select tag from lamp_history where id = ? order by revision_id")
                        .param(lamp.id())
                        .query(String.class)
                        .list())
                .containsExactly(lamp.tag(), "A1");
    }

    @Test
    void historyKeepsWhatAModelGave() {
        lamps.stateOutput(site.id(), model.id(), BRIGHTER);
        assertThat(database.sql("select reading from lamp_model_output_history where lamp_model_id = ?"
                                + " order by revision_id")
                        .param(model.id())
                        .query(Double.class)
                        .list())
                .containsExactly(3.0, 4.5);
    }

    private NewLamp lamp(String tag) {
        return new NewLamp(tag, model.id(), Optional.of(120.0), Optional.of(LocalDate.of(2026, 3, 1)), "shelf 2");
    }
}
