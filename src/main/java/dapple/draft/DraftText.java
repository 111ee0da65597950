package dapple.draft;

import com.fasterxml.jackson.annotation.JsonAutoDetect.Visibility;
import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.annotation.JsonTypeInfo;
import dapple.rig.CoverMaterial;
import dapple.rig.DailyTimer;
import dapple.rig.FurnitureShape;
import dapple.rig.Gear;
import dapple.rig.HomeDayTimer;
import dapple.rig.LampTimer;
import dapple.rig.MonthlyTimer;
import java.util.Optional;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * Draft rigs as stored text: the records themselves, member for member. What is read passes their checks again; a member
 * more or less is refused.
 */
final class DraftText {
    private static final JsonMapper JSON = JsonMapper.builder()
            .changeDefaultVisibility(all -> all.withGetterVisibility(Visibility.NONE)
                    .withIsGetterVisibility(Visibility.NONE)
                    .withFieldVisibility(Visibility.ANY))
            .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
            .enable(DeserializationFeature.FAIL_ON_MISSING_CREATOR_PROPERTIES)
            .enable(DeserializationFeature.FAIL_ON_NULL_CREATOR_PROPERTIES)
            .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .addMixIn(LampPick.class, Picks.class)
            .addMixIn(LampTimer.class, Timers.class)
            .addMixIn(CoverMaterial.class, Materials.class)
            .addMixIn(FurnitureShape.class, Shapes.class)
            .build();

    private DraftText() {}

    static String write(DraftRig rig) {
        return JSON.writeValueAsString(rig);
    }

    /**
     * The draft rig of a text.
     *
     * @throws IllegalStateException if it is none
     */
    static DraftRig read(String text) {
        try {
            JsonNode parts = JSON.readTree(text);
            parts.path("lamps").forEach(DraftText::addGear);
            return Optional.ofNullable(JSON.treeToValue(parts, DraftRig.class))
                    .orElseThrow(() -> new IllegalStateException("a draft must have parts, had none"));
        } catch (JacksonException nonsense) {
            throw new IllegalStateException("the parts of a draft cannot be read", nonsense);
        }
    }

    /** The first drafts said nothing of what feeds a lamp. */
    private static void addGear(JsonNode lamp) {
        if (lamp.path("hanging") instanceof ObjectNode hanging && !hanging.has("gear")) {
            hanging.set("gear", JSON.valueToTree(Gear.UNKNOWN));
        }
    }

    /** Those of the first drafts were of one kind and did not name it. */
    @JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "kind", defaultImpl = DailyTimer.class)
    @JsonSubTypes({
        @JsonSubTypes.Type(value = DailyTimer.class, name = "daily"),
        @JsonSubTypes.Type(value = MonthlyTimer.class, name = "monthly"),
        @JsonSubTypes.Type(value = HomeDayTimer.class, name = "home-day")
    })
    private interface Timers {}

    @JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "kind")
    @JsonSubTypes({
        @JsonSubTypes.Type(value = LampPick.Stock.class, name = "stock"),
        @JsonSubTypes.Type(value = LampPick.Model.class, name = "model")
    })
    private interface Picks {}

    @JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "kind")
    @JsonSubTypes({
        @JsonSubTypes.Type(value = CoverMaterial.Weave.class, name = "weave"),
        @JsonSubTypes.Type(value = CoverMaterial.Passing.class, name = "passing")
    })
    private interface Materials {}

    @JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "kind")
    @JsonSubTypes({
        @JsonSubTypes.Type(value = FurnitureShape.Block.class, name = "box"),
        @JsonSubTypes.Type(value = FurnitureShape.Post.class, name = "cylinder"),
        @JsonSubTypes.Type(value = FurnitureShape.Branch.class, name = "capsule")
    })
    private interface Shapes {}
}
