package dapple.importing;

import com.fasterxml.jackson.annotation.JsonAutoDetect.Visibility;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** What is kept of an import as stored text: the records themselves, member for member. */
final class RunText {
    /** What was not yet kept when a text was stored is 0, false or none. */
    private static final JsonMapper JSON = JsonMapper.builder()
            .disable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
            .changeDefaultVisibility(all -> all.withGetterVisibility(Visibility.NONE)
                    .withIsGetterVisibility(Visibility.NONE)
                    .withFieldVisibility(Visibility.ANY))
            .build();

    private RunText() {}

    static String write(Object one) {
        return JSON.writeValueAsString(one);
    }

    static <T> T read(String text, Class<T> type) {
        return JSON.readValue(text, type);
    }
}
