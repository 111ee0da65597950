package dapple.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Collections;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class SceneReaderTest {
    private static final String LINE = "{'shape':'line','length':0.8,'along':[1,0,0]}";
    private static final String PLANE = "'plane':{'point':[0,0,0.9],'normal':[0,0,1]}";
    private static final String LEANING = "'plane':{'point':[0,0,0.9],'normal':[0.5,0,1]}";
    private static final String BOX = "{'shape':'box','min':[0,0,0.4],'max':[1,1,0.5]}";

    static Stream<Arguments> faults() {
        return Stream.of(
                        Stream.of(
                                row("[]", ""),
                                row("{}", "/version"),
                                row("{'version':2,'lamps':[],'receivers':[]}", "/version"),
                                row("{'version':'1','lamps':[],'receivers':[]}", "/version"),
                                row("{'version':1,'receivers':[]}", "/lamps"),
                                row("{'version':1,'lamps':[]}", "/receivers"),
                                row("{'version':1,'lamps':{},'receivers':[]}", "/lamps"),
                                row("{'version':1,'lamps':[],'receivers':null}", "/receivers"),
                                row(document("'obstacle':[]"), "/obstacle"),
                                row(document("'a/b~c':1"), "/a~1b~0c"),
                                row(document("'accuracy':0.1"), "/accuracy"),
                                row(document("'accuracy':0.0000001"), "/accuracy"),
                                row(document("'accuracy':1e999"), "/accuracy"),
                                row(document("'accuracy':null"), "/accuracy")),
                        lamps(),
                        outputs(),
                        beams(),
                        filters(),
                        obstacles(),
                        receivers(),
                        grids(),
                        zones())
                .flatMap(rows -> rows);
    }

    private static Stream<Arguments> lamps() {
        return Stream.of(
                row(withLamp("'centre':[0,0,1],'aim':[0,0,-1],'source':" + LINE), "/lamps/0/id"),
                row(withLamp("'id':7"), "/lamps/0/id"),
                row(withLamp("'id':''"), "/lamps/0/id"),
                row(withLamp("'id':'a','centre':[0,0]"), "/lamps/0/centre"),
                row(withLamp("'id':'a','centre':[0,0,'x']"), "/lamps/0/centre/2"),
                row(withLamp("'id':'a','centre':[0,1e400,0]"), "/lamps/0/centre/1"),
                row(withLamp("'id':'a','centre':[0,0,2000]"), "/lamps/0/centre/2"),
                row(withLamp("'id':'a','colour':1"), "/lamps/0/colour"),
                row(withSource("{'shape':'cone'}"), "/lamps/0/source/shape"),
                row(withSource("{'shape':'line','length':0,'along':[1,0,0]}"), "/lamps/0/source/length"),
                row(withSource("{'shape':'line','length':-1,'along':[1,0,0]}"), "/lamps/0/source/length"),
                row(withSource("{'shape':'line','length':1,'along':[0,0,0]}"), "/lamps/0/source/along"),
                row(withSource("{'shape':'line','length':1,'along':[1,0,0],'spill':0.1}"), "/lamps/0/source/spill"),
                row(withSource("{'shape':'line','length':1,'along':[1,0,0],'radius':1}"), "/lamps/0/source/radius"),
                row(withSource("{'shape':'line','length':1,'along':[1,0,1],'lobe':1}"), "/lamps/0/aim"),
                row(withSource("{'shape':'rectangle','length':1,'along':[0,0,1],'width':1}"), "/lamps/0/aim"),
                row(withSource("{'shape':'rectangle','length':1,'along':[1,0,0],'width':0}"), "/lamps/0/source/width"),
                row(withSource("{'shape':'disc','radius':0}"), "/lamps/0/source/radius"),
                row(withSource("{'shape':'disc'}"), "/lamps/0/source/radius"),
                row(withSource("{'shape':'cylinder','length':1,'along':[1,0,0]}"), "/lamps/0/source/radius"),
                row(lampsDocument(lamp("a") + "," + lamp("a"), ""), "/lamps/1/id"));
    }

    private static Stream<Arguments> outputs() {
        return Stream.of(
                row(withOutput(""), "/lamps/0/output"),
                row(withOutput("{'quantity':'lux','reading':1,'distance':1}"), "/lamps/0/output/0/quantity"),
                row(
                        withOutput("{'quantity':'surfaceTemperature','reading':1,'distance':1}"),
                        "/lamps/0/output/0/quantity"),
                row(
                        withOutput("{'quantity':'SURFACE_TEMPERATURE','reading':1,'distance':1}"),
                        "/lamps/0/output/0/quantity"),
                row(withOutput("{'quantity':'uvb','reading':1,'distance':1}"), "/lamps/0/output/0/quantity"),
                row(withOutput("{'quantity':'uvi'}"), "/lamps/0/output/0"),
                row(withOutput("{'quantity':'uvi','reading':1}"), "/lamps/0/output/0"),
                row(withOutput("{'quantity':'uvi','reading':0,'distance':1}"), "/lamps/0/output/0/reading"),
                row(withOutput("{'quantity':'uvi','reading':-1,'distance':1}"), "/lamps/0/output/0/reading"),
                row(withOutput("{'quantity':'uvi','reading':1,'distance':0}"), "/lamps/0/output/0/distance"),
                row(withOutput("{'quantity':'uvi','reading':1,'at':[0,0,0]}"), "/lamps/0/output/0/facing"),
                row(
                        withOutput("{'quantity':'uvi','reading':1,'distance':1,'at':[0,0,0],'facing':[0,0,1]}"),
                        "/lamps/0/output/0/at"),
                row(
                        withOutput("{'quantity':'uvi','reading':1,'distance':1,'facing':[0,0,1]}"),
                        "/lamps/0/output/0/facing"),
                row(withOutput("{'quantity':'uvi','radiance':1}"), "/lamps/0/output/0/radiance"),
                row(withOutput("{'quantity':'uvi','reading':1,'distance':1,'factor':0}"), "/lamps/0/output/0/factor"),
                row(
                        withOutput("{'quantity':'uvi','reading':1,'distance':1,'intensityPerLength':1}"),
                        "/lamps/0/output/0/intensityPerLength"),
                row(
                        withOutput("{'quantity':'uvi','reading':1,'distance':1},"
                                + "{'quantity':'uvi','intensityPerLength':1}"),
                        "/lamps/0/output/1/quantity"),
                row(
                        withOutput("{'quantity':'uvi','intensityPerLength':1},{'quantity':'uvi','reading':1,"
                                + "'distance':1}"),
                        "/lamps/0/output/1/quantity"),
                row(
                        withOutput("{'quantity':'uvi','intensityPerLength':1},{'quantity':'uvi',"
                                + "'intensityPerLength':1}"),
                        "/lamps/0/output/1/quantity"));
    }

    private static Stream<Arguments> beams() {
        return Stream.of(
                row(withSource("{'shape':'beam'}"), "/lamps/0/source"),
                row(withSource("{'shape':'beam','exponent':1,'beamAngle':40}"), "/lamps/0/source/beamAngle"),
                row(withSource("{'shape':'beam','exponent':-1}"), "/lamps/0/source/exponent"),
                row(withSource("{'shape':'beam','beamAngle':180}"), "/lamps/0/source/beamAngle"),
                row(withSource("{'shape':'beam','ies':'text'}"), "/lamps/0/source/ies"),
                row(withSource("{'shape':'beam','exponent':1,'radius':0}"), "/lamps/0/source/radius"),
                row(withTable("[0,20,10]", "[1,0.5,0]"), "/lamps/0/source/table/theta/2"),
                row(withTable("[0,20,20]", "[1,0.5,0]"), "/lamps/0/source/table/theta/2"),
                row(withTable("[5,20]", "[1,0]"), "/lamps/0/source/table/theta/0"),
                row(withTable("[0,20]", "[0.9,0]"), "/lamps/0/source/table/relative/0"),
                row(withTable("[0,20]", "[1,-1]"), "/lamps/0/source/table/relative/1"),
                row(withTable("[0,20]", "[1,0.5,0]"), "/lamps/0/source/table/relative"),
                row(withTable("[0]", "[1]"), "/lamps/0/source/table/theta"));
    }

    private static Stream<Arguments> filters() {
        return Stream.of(
                row(withFilter("'kind':'net'," + PLANE), "/filters/0/kind"),
                row(withFilter("'kind':'mesh'," + PLANE), "/filters/0"),
                row(withFilter("'kind':'mesh'," + PLANE + ",'wire':0.001"), "/filters/0/pitch"),
                row(withFilter("'kind':'mesh'," + PLANE + ",'wire':0.002,'pitch':0.001"), "/filters/0/wire"),
                row(withFilter("'kind':'mesh'," + PLANE + ",'wire':0.001,'pitch':0.001"), "/filters/0/wire"),
                row(withFilter("'kind':'mesh'," + PLANE + ",'wire':0,'pitch':0.001"), "/filters/0/wire"),
                row(
                        withFilter("'kind':'mesh'," + PLANE + ",'wire':0.0001,'pitch':0.001,'layers':1.5"),
                        "/filters/0/layers"),
                row(
                        withFilter("'kind':'mesh'," + PLANE + ",'wire':0.0001,'pitch':0.001,'layers':0"),
                        "/filters/0/layers"),
                row(withFilter("'kind':'mesh'," + LEANING + ",'wire':0.0001,'pitch':0.001"), "/filters/0/along"),
                row(
                        withFilter("'kind':'mesh'," + LEANING + ",'wire':0.0001,'pitch':0.001,'along':[0.5,0,1]"),
                        "/filters/0/along"),
                row(
                        withFilter("'kind':'mesh'," + PLANE + ",'wire':0.0001,'pitch':0.001,'transmittance':{'uvi':1}"),
                        "/filters/0/transmittance"),
                row(withFilter("'kind':'sheet'," + PLANE), "/filters/0/transmittance"),
                row(withFilter("'kind':'sheet'," + PLANE + ",'transmittance':{}"), "/filters/0/transmittance/uvi"),
                row(
                        withFilter("'kind':'sheet'," + PLANE + ",'transmittance':{'uvi':1.1}"),
                        "/filters/0/transmittance/uvi"),
                row(
                        withFilter("'kind':'sheet'," + PLANE + ",'transmittance':{'uvi':1,'uvc':1}"),
                        "/filters/0/transmittance/uvc"),
                row(withFilter("'kind':'sheet','transmittance':{'uvi':1}"), "/filters/0/plane"),
                row(
                        withFilter("'kind':'sheet'," + LEANING + ",'over':[[0,0],[1,1]],'transmittance':{'uvi':1}"),
                        "/filters/0/over"),
                row(
                        withFilter("'kind':'sheet'," + PLANE + ",'over':[[0,0],[0,1]],'transmittance':{'uvi':1}"),
                        "/filters/0/over"),
                row(
                        withFilter("'kind':'pane'," + PLANE + ",'index':0.9,'thickness':0.004,'absorption':{'uvi':1}"),
                        "/filters/0/index"),
                row(
                        withFilter("'kind':'pane'," + PLANE + ",'index':1.5,'thickness':0,'absorption':{'uvi':1}"),
                        "/filters/0/thickness"),
                row(
                        withFilter("'kind':'pane'," + PLANE + ",'index':1.5,'thickness':0.004,'absorption':{}"),
                        "/filters/0/absorption/uvi"));
    }

    private static Stream<Arguments> obstacles() {
        return Stream.of(
                row(document("'obstacles':[{'shape':'ball'}]"), "/obstacles/0/shape"),
                row(document("'obstacles':[{'shape':'box','min':[0,0,0],'max':[1,0,1]}]"), "/obstacles/0/max"),
                row(
                        document("'obstacles':[{'shape':'capsule','from':[0,0,0],'to':[1,0,0],'radius':0}]"),
                        "/obstacles/0/radius"),
                row(
                        document("'obstacles':[{'shape':'cylinder','base':[0,0,0],'height':-1,'radius':1}]"),
                        "/obstacles/0/height"),
                row(
                        document("'obstacles':[{'shape':'box','min':[0.3,-1,0.9],'max':[0.31,1,1.1]}]"),
                        "/lamps/0/centre"));
    }

    private static Stream<Arguments> receivers() {
        return Stream.of(
                row(withReceivers("{'id':'r','at':[0,0,0]}"), "/receivers/0/facing"),
                row(withReceivers("{'id':'r','at':[0,0,0],'facing':'up'}"), "/receivers/0/facing"),
                row(withReceivers("{'id':'r','at':[0,0,0],'facing':7}"), "/receivers/0/facing"),
                row(withReceivers("{'id':'r','at':[0,0,0],'facing':[0,0,0]}"), "/receivers/0/facing"),
                row(withReceivers("{'id':'r','at':[0,0,0],'facing':'lamp:b'}"), "/receivers/0/facing"),
                row(withReceivers("{'id':'r','at':[0,0,1],'facing':'lamp:a'}"), "/receivers/0/at"),
                row(withReceivers("{'id':'r','at':[0.3,0,1],'facing':'all'}"), "/receivers/0/at"),
                row(
                        withReceivers("{'id':'r','at':[0,0,0],'facing':'all'},{'id':'r','at':[0,0,0],'facing':'all'}"),
                        "/receivers/1/id"),
                row(
                        "{'version':1,'lamps':[" + lamp("a") + "],'obstacles':[" + BOX
                                + "],'receivers':[{'id':'r','at':[0.5,0.5,0.45],'facing':'all'}]}",
                        "/receivers/0/at"));
    }

    private static Stream<Arguments> grids() {
        return Stream.of(
                row(document("'grid':{'from':[0,0,0],'to':[1,1,1],'step':0,'facing':'all'}"), "/grid/step"),
                row(document("'grid':{'from':[0,0,0],'to':[1,1,-1],'step':0.1,'facing':'all'}"), "/grid/to"),
                row(document("'grid':{'from':[0,0,0],'to':[1,1,1],'step':0.1}"), "/grid/facing"),
                row(document("'grid':{'from':[0,0,0],'to':[1,1,1],'step':0.001,'facing':'all'}"), "/grid"),
                row(document("'zones':{}"), "/grid"),
                row(document("'uncertainty':{'reading':0.1,'meter':0.1}"), "/uncertainty/position"),
                row(document("'uncertainty':{'reading':-0.1,'meter':0.1,'position':0}"), "/uncertainty/reading"),
                row(document("'uncertainty':{'reading':0.1,'meter':'5%','position':0}"), "/uncertainty/meter"),
                row(document("'uncertainty':{'reading':0.1,'meter':0.1,'position':11}"), "/uncertainty/position"),
                row(document("'uncertainty':{'meter':0.1,'position':0}"), "/uncertainty/reading"),
                row(document("'uncertainty':{'reading':1,'meter':1,'position':0,'k':2}"), "/uncertainty/k"),
                row(document("'uncertainty':0.1"), "/uncertainty"),
                row(withZones("'quantity':'uva'"), "/zones/quantity"),
                row(withZones("'quantity':'uvi','depth':1"), "/zones/depth"));
    }

    private static Stream<Arguments> zones() {
        String surface = "'point':[0.5,0.5,0],'normal':[0,0,1],'within':[[0,0],[1,1]]";
        return Stream.of(
                row(zones("'basking':[2,4],'shade':[0,0.3],'ceiling':7,'bodyLength':0.2"), "/zones/quantity"),
                row(zones("'quantity':'uvi','shade':[0,0.3],'ceiling':7,'bodyLength':0.2"), "/zones/basking"),
                row(zones("'quantity':'uvi','basking':[4,2],'shade':[0,0.3],'ceiling':7"), "/zones/basking"),
                row(zones("'quantity':'uvi','basking':[2],'shade':[0,0.3],'ceiling':7"), "/zones/basking"),
                row(zones("'quantity':'uvi','basking':[2,4],'shade':[0,3],'ceiling':7"), "/zones/shade"),
                row(zones("'quantity':'uvi','basking':[2,4],'shade':[-1,1],'ceiling':7"), "/zones/shade/0"),
                row(zones("'quantity':'uvi','basking':[2,4],'shade':[0,1],'ceiling':3"), "/zones/ceiling"),
                row(zones("'quantity':'uvi','basking':[2,4],'shade':[0,1],'ceiling':7"), "/zones/bodyLength"),
                row(
                        zones("'quantity':'uvi','basking':[2,4],'shade':[0,1],'ceiling':7,'bodyLength':0"),
                        "/zones/bodyLength"),
                row(withZones("'quantity':'uvi','reach':-1"), "/zones/reach"),
                row(withZones("'quantity':'uvi','evenness':2"), "/zones/evenness"),
                row(withZones("'quantity':'uvi','overlap':0.5"), "/zones/overlap"),
                row(withZones("'quantity':'uvi','also':[]"), "/zones/also"),
                row(withZones("'quantity':'uvi','surface':{}"), "/zones/surface/point"),
                row(withZones("'quantity':'uvi','surface':[]"), "/zones/surface"),
                row(withZones("'quantity':'uvi','surface':7"), "/zones/surface"),
                row(withZones("'quantity':'uvi','surface':{" + surface + ",'depth':1}"), "/zones/surface/depth"),
                row(withZones("'quantity':'uvi','surface':[{" + surface + "},{}]"), "/zones/surface/1/point"),
                row(
                        withZones("'quantity':'uvi','surface':{" + surface.replace("[0,0,1]", "[1,0,0]") + "}"),
                        "/zones/surface/normal"),
                row(
                        withZones("'quantity':'uvi','surface':{" + surface.replace("[1,1]", "[1,0.0001]") + "}"),
                        "/zones/surface/within"),
                row(
                        withZones("'quantity':'uvi','surface':["
                                + String.join(",", Collections.nCopies(11, "{" + surface + "}")) + "]"),
                        "/zones/surface"),
                row(
                        withZones("'quantity':'uvi','surface':{" + surface
                                + "},'also':[{'quantity':'uvi','basking':[1,2]}]"),
                        "/zones/also/0/quantity"),
                row(
                        withZones("'quantity':'uvi','surface':{" + surface
                                + "},'also':[{'quantity':'illuminance','basking':[1,2]}]"),
                        "/zones/also/0/quantity"),
                row(
                        withZones("'quantity':'uvi','surface':{" + surface + "},'also':[{'quantity':'uvi','low':1}]"),
                        "/zones/also/0/low"));
    }

    private static Arguments row(String document, String pointer) {
        return Arguments.of(document, pointer);
    }

    private static String lamp(String id) {
        return "{'id':'" + id + "','centre':[0,0,1],'aim':[0,0,-1],'source':" + LINE
                + ",'output':[{'quantity':'uvi','reading':1,'distance':0.5}]}";
    }

    private static String lampsDocument(String lamps, String more) {
        return "{'version':1,'lamps':[" + lamps + "],'receivers':[]" + more + "}";
    }

    private static String document(String more) {
        return lampsDocument(lamp("a"), "," + more);
    }

    private static String withLamp(String members) {
        return lampsDocument("{" + members + "}", "");
    }

    private static String withSource(String source) {
        return withLamp("'id':'a','centre':[0,0,1],'aim':[0,0,-1],'source':" + source
                + ",'output':[{'quantity':'uvi','reading':1,'distance':0.5}]");
    }

    private static String withTable(String theta, String relative) {
        return withSource("{'shape':'beam','table':{'theta':" + theta + ",'relative':" + relative + "}}");
    }

    private static String withOutput(String outputs) {
        return withLamp("'id':'a','centre':[0,0,1],'aim':[0,0,-1],'source':" + LINE + ",'output':[" + outputs + "]");
    }

    private static String withFilter(String members) {
        return document("'filters':[{" + members + "}]");
    }

    private static String withReceivers(String receivers) {
        return "{'version':1,'lamps':[" + lamp("a") + "],'receivers':[" + receivers + "]}";
    }

    private static String withZones(String members) {
        return zones(members + ",'basking':[2,4],'shade':[0,0.3],'ceiling':7,'bodyLength':0.2");
    }

    private static String zones(String members) {
        return document("'grid':{'from':[0,0,0],'to':[1,1,1],'step':0.5,'facing':'all'},'zones':{" + members + "}");
    }

    @ParameterizedTest
    @MethodSource("faults")
    void namesTheMemberAtFault(String document, String pointer) {
        RefusedException refused = catchThrowableOfType(RefusedException.class, () -> read(document));
        assertThat(refused).isNotNull();
        assertThat(refused.problem().pointer()).contains(pointer);
        assertThat(refused.problem().status()).isIn(400, 413);
    }

    @Test
    void readsAGoodDocument() {
        assertThat(read(document("'obstacles':[" + BOX + "]")).scene().solids()).hasSize(1);
    }

    @Test
    void aBareTubeNeedsNoAim() {
        assertThatCode(() -> read(withLamp("'id':'a','centre':[0,0,1],'source':" + LINE
                        + ",'output':[{'quantity':'uvi','intensityPerLength':1}]")))
                .doesNotThrowAnyException();
    }

    @Test
    void aBareTubeReadAtADistanceNeedsAnAim() {
        RefusedException refused = catchThrowableOfType(
                RefusedException.class,
                () -> read(withLamp("'id':'a','centre':[0,0,1],'source':" + LINE
                        + ",'output':[{'quantity':'uvi','reading':1,'distance':1}]")));
        assertThat(refused.problem().pointer()).contains("/lamps/0/aim");
    }

    @Test
    void moreLampsThanAllowedAreTooMuch() {
        String lamps = IntStream.rangeClosed(0, LampReader.MOST_LAMPS)
                .mapToObj(number -> lamp("a" + number))
                .collect(Collectors.joining(","));
        RefusedException refused = catchThrowableOfType(RefusedException.class, () -> read(lampsDocument(lamps, "")));
        assertThat(refused.problem().status()).isEqualTo(413);
    }

    @Test
    void aGridCountsItsStepsInSpiteOfDecimals() {
        Asked.Grid grid = read(document("'grid':{'from':[0,0,0.05],'to':[1.2,0.6,0.85],'step':0.02,'facing':'all'}"))
                .grid()
                .orElseThrow();
        assertThat(new int[] {grid.countX(), grid.countY(), grid.countZ()}).containsExactly(61, 31, 41);
    }

    private static Asked read(String document) {
        byte[] body = document.replace('\'', '"').getBytes(StandardCharsets.UTF_8);
        return SceneReader.read(BodyReader.parse(body), Deadline.in(Duration.ofMinutes(1)));
    }
}
