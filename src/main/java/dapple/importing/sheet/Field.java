package dapple.importing.sheet;

import java.util.Arrays;
import java.util.List;

/** What a column can mean. */
public enum Field {
    ROOM_NAME(Subject.ROOM, 80),
    ENCLOSURE_CODE(Subject.ENCLOSURE, 20),
    ENCLOSURE_WIDTH(Subject.ENCLOSURE, Dimension.LENGTH),
    ENCLOSURE_DEPTH(Subject.ENCLOSURE, Dimension.LENGTH),
    ENCLOSURE_HEIGHT(Subject.ENCLOSURE, Dimension.LENGTH),
    STANDARD_POINTS(Subject.ENCLOSURE, Kind.WORD),
    POINT_CODE(Subject.POINT, 120),
    POINT_ROLE(Subject.POINT, Kind.WORD),
    POINT_X(Subject.POINT, Dimension.LENGTH),
    POINT_Y(Subject.POINT, Dimension.LENGTH),
    POINT_Z(Subject.POINT, Dimension.LENGTH),
    SPECIES_NAME(Subject.SPECIES, 120),
    SPECIES_COMMON(Subject.SPECIES, 120),
    ANIMAL_NAME(Subject.ANIMAL, 80),
    ACCESSION_NUMBER(Subject.ANIMAL, 40),
    ANIMAL_SEX(Subject.ANIMAL, Kind.WORD),
    ANIMAL_BORN(Subject.ANIMAL, 40),
    ANIMAL_COUNT(Subject.ANIMAL, Dimension.NUMBER),
    ANIMAL_SINCE(Subject.ANIMAL, Kind.DAY),
    METER_CODE(Subject.METER, 20),
    METER_DESCRIPTION(Subject.METER, 120),
    METER_QUANTITY(Subject.METER, Kind.WORD),
    METER_RESOLUTION(Subject.METER, Dimension.NUMBER),
    SIGN_IN_NAME(Subject.PERSON, 60),
    PERSON_NAME(Subject.PERSON, 120),
    PERSON_ROLE(Subject.PERSON, 120),
    MODEL_NAME(Subject.LAMP_MODEL, 80),
    LAMP_CLASS(Subject.LAMP_MODEL, Kind.WORD),
    MODEL_WATTS(Subject.LAMP_MODEL, Dimension.POWER),
    LAMP_TAG(Subject.LAMP, 20),
    BURN_HOURS(Subject.LAMP, Dimension.HOURS),
    BOUGHT_ON(Subject.LAMP, Kind.DAY),
    STORE_PLACE(Subject.LAMP, 120),
    FITTED_ON(Subject.FITTING, Kind.DAY),
    FITTING_PLACE(Subject.FITTING, 80),
    TIMER_ON(Subject.FITTING, Kind.TIME),
    TIMER_OFF(Subject.FITTING, Kind.TIME),
    COVER_NAME(Subject.COVER, 80),
    COVER_KIND(Subject.COVER, Kind.WORD),
    COVER_LAYERS(Subject.COVER, Dimension.NUMBER),
    COVER_FROM(Subject.COVER, Kind.DAY),
    READ_ON(Subject.READING, Kind.DAY),
    READ_AT(Subject.READING, Kind.TIME),
    READ_QUANTITY(Subject.READING, Kind.WORD),
    READ_AMOUNT(Subject.READING, Dimension.NUMBER),
    READ_BY(Subject.READING, 120);

    /** How what stands in the column is read. */
    public enum Kind {
        TEXT,
        NUMBER,
        DAY,
        TIME,
        /** One of some words of the trade. */
        WORD
    }

    private final Subject subject;
    private final Kind kind;
    private final Dimension dimension;
    private final int longest;

    Field(Subject subject, Kind kind, Dimension dimension, int longest) {
        this.subject = subject;
        this.kind = kind;
        this.dimension = dimension;
        this.longest = longest;
    }

    Field(Subject subject, int longest) {
        this(subject, Kind.TEXT, Dimension.NUMBER, longest);
    }

    Field(Subject subject, Dimension dimension) {
        this(subject, Kind.NUMBER, dimension, 60);
    }

    Field(Subject subject, Kind kind) {
        this(subject, kind, Dimension.NUMBER, 60);
    }

    public Subject subject() {
        return subject;
    }

    public Kind kind() {
        return kind;
    }

    Dimension dimension() {
        return dimension;
    }

    int longest() {
        return longest;
    }

    /** What can be said of a subject. */
    public static List<Field> of(Subject subject) {
        return Arrays.stream(values()).filter(field -> field.subject == subject).toList();
    }
}
