package dapple.importing;

import dapple.importing.sheet.Field;
import dapple.importing.sheet.Subject;
import java.util.List;
import java.util.stream.Stream;

/** The columns of an empty sheet for one subject: its own, and those that say what it belongs to. */
final class Template {
    private Template() {}

    static List<Field> of(Subject subject) {
        return Stream.concat(belonging(subject), Field.of(subject).stream()).toList();
    }

    private static Stream<Field> belonging(Subject subject) {
        return switch (subject) {
            case ENCLOSURE -> Stream.of(Field.ROOM_NAME);
            case POINT, COVER -> Stream.of(Field.ENCLOSURE_CODE);
            case ANIMAL -> Stream.of(Field.SPECIES_NAME, Field.ENCLOSURE_CODE);
            case LAMP -> Stream.of(Field.MODEL_NAME, Field.LAMP_CLASS);
            case FITTING -> Stream.of(Field.LAMP_TAG, Field.ENCLOSURE_CODE);
            case READING -> Stream.of(Field.ENCLOSURE_CODE, Field.POINT_CODE, Field.METER_CODE);
            case ROOM, SPECIES, LAMP_MODEL, METER, PERSON -> Stream.of();
        };
    }
}
