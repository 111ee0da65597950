package dapple.draft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dapple.light.geometry.Vec;
import dapple.light.quantity.Quantity;
import dapple.rig.Cover;
import dapple.rig.CoverMaterial;
import dapple.rig.CoverTransmittance;
import dapple.rig.DailyTimer;
import dapple.rig.Furniture;
import dapple.rig.FurnitureShape;
import dapple.rig.Gear;
import dapple.rig.Hanging;
import dapple.rig.HomeDayTimer;
import dapple.rig.LampTimer;
import dapple.rig.MonthlyTimer;
import dapple.rig.Mount;
import dapple.rig.Provenance;
import dapple.site.SourceMark;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class DraftTextTest {
    /** As stored by the first release that had drafts: it must be read for ever. */
    private static final String KEPT = """
            {"lamps":[{"fittingId":7,"lamp":{"kind":"stock","lampId":3},"hanging":{"place":"tube","mount":{"centre":\
            {"x":0.6,"y":0.3,"z":0.68},"aim":{"x":0.0,"y":0.0,"z":-1.0},"along":null},"timer":{"on":"08:00:00",\
            "off":"18:00:00"},"circuitId":null}},{"fittingId":null,"lamp":{"kind":"model","modelId":4},"hanging":\
            {"place":"spot","mount":null,"timer":null,"circuitId":5}}],"covers":[{"coverId":8,"cover":{"name":"mesh",\
            "heightMetres":0.66,"over":null,"material":{"kind":"weave","wireMetres":2.5E-4,"pitchMetres":0.0025,\
            "provenance":{"mark":"MEASURED","source":"rule"}},"layers":2}},{"coverId":null,"cover":{"name":"sheet",\
            "heightMetres":null,"over":null,"material":{"kind":"passing","isMesh":false,"byQuantity":{"UV_INDEX":\
            {"share":0.5,"provenance":{"mark":"MEASURED","source":"meter"}}}},"layers":1}}],"furniture":[\
            {"furnitureId":9,"furniture":{"name":"slab","shape":{"kind":"box","least":{"x":0.4,"y":0.1,"z":0.0},\
            "greatest":{"x":0.8,"y":0.5,"z":0.2},"yawDegrees":0.0},"isRestedOn":true}}]}""";

    @Test
    void whatWasStoredOnceIsReadForEver() {
        assertThat(DraftText.read(KEPT)).isEqualTo(rig());
    }

    @Test
    void whatIsWrittenIsReadAgain() {
        assertThat(DraftText.read(DraftText.write(rig()))).isEqualTo(rig());
    }

    @ParameterizedTest
    @MethodSource("timers")
    void aTimerOfAnyKindIsReadAgain(LampTimer timer) {
        Hanging hanging =
                new Hanging("tube", Optional.empty(), Optional.of(timer), Optional.empty(), Gear.dimmedTo(0.7));
        DraftRig rig = new DraftRig(
                List.of(new DraftLamp(Optional.empty(), new LampPick.Stock(3), hanging)), List.of(), List.of());
        assertThat(DraftText.read(DraftText.write(rig))).isEqualTo(rig);
    }

    static List<LampTimer> timers() {
        DailyTimer daily = new DailyTimer(LocalTime.of(8, 0), LocalTime.of(18, 0));
        return List.of(
                daily,
                new MonthlyTimer(Stream.iterate(0, month -> month < 12, month -> month + 1)
                        .map(month -> Optional.of(daily).filter(times -> month > 1))
                        .toList()),
                new HomeDayTimer(-23.5, true, LocalTime.of(13, 0), 20, 600, 840));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "null",
                "{}",
                "[]",
                "{\"lamps\":[],\"covers\":[]}",
                "{\"lamps\":[],\"covers\":[],\"furniture\":[],\"more\":1}",
                "{\"lamps\":[],\"covers\":[],\"furniture\":[]} again",
                "{\"lamps\":[{\"fittingId\":null,\"lamp\":{\"kind\":\"own\"},\"hanging\":null}],\"covers\":[],\"furniture\":[]}"
            })
    void whatIsNoDraftIsRefused(String text) {
        assertThatThrownBy(() -> DraftText.read(text)).isInstanceOf(IllegalStateException.class);
    }

    @Test
    void whatBreaksARuleIsRefused() {
        assertThatThrownBy(() -> DraftText.read(KEPT.replace("\"layers\":2", "\"layers\":0")))
                .isInstanceOf(IllegalStateException.class);
    }

    private static DraftRig rig() {
        Provenance rule = new Provenance(SourceMark.MEASURED, "rule");
        Provenance meter = new Provenance(SourceMark.MEASURED, "meter");
        Hanging tube = new Hanging(
                "tube",
                Optional.of(new Mount(new Vec(0.6, 0.3, 0.68), new Vec(0, 0, -1), Optional.empty())),
                Optional.of(new DailyTimer(LocalTime.of(8, 0), LocalTime.of(18, 0))),
                Optional.empty());
        Hanging spot = new Hanging("spot", Optional.empty(), Optional.empty(), Optional.of(5L));
        CoverMaterial weave = new CoverMaterial.Weave(2.5e-4, 0.0025, rule);
        CoverMaterial passing =
                new CoverMaterial.Passing(false, Map.of(Quantity.UV_INDEX, new CoverTransmittance(0.5, meter)));
        FurnitureShape block = new FurnitureShape.Block(new Vec(0.4, 0.1, 0), new Vec(0.8, 0.5, 0.2), 0);
        return new DraftRig(
                List.of(
                        new DraftLamp(Optional.of(7L), new LampPick.Stock(3), tube),
                        new DraftLamp(Optional.empty(), new LampPick.Model(4), spot)),
                List.of(
                        new DraftCover(
                                Optional.of(8L), new Cover("mesh", Optional.of(0.66), Optional.empty(), weave, 2)),
                        new DraftCover(
                                Optional.empty(), new Cover("sheet", Optional.empty(), Optional.empty(), passing, 1))),
                List.of(new DraftFurniture(Optional.of(9L), new Furniture("slab", block, true))));
    }
}
