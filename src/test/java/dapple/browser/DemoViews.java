package dapple.browser;

import java.util.List;
import java.util.UUID;

/** Every page of the program, as the demo's people see it: the table to which a new page is added. */
final class DemoViews {
    private static final String NOBODY = "";
    private static final String TAKE_BACK_ROLES =
            "document.querySelectorAll('[name=roles]').forEach(box => box.checked = false);";
    private static final String MAKE_STALE = "document.querySelector('[name=version]').value = 99;";
    private static final String AIM_AT = "document.querySelector('form.panel').action = arguments[0];";

    private final DemoIds ids;

    DemoViews(DemoIds ids) {
        this.ids = ids;
    }

    /** One view at least of every route; each is named for its route. */
    List<View> routes() {
        String enclosure = "/enclosures/" + ids.enclosure("E07");
        String visit = enclosure + "/visits/" + ids.visit("E07", "P1");
        return List.of(
                View.of("/", "keeper", "/"),
                View.of("/account", "keeper", "/account"),
                View.of("/account/dose", "keeper", "/account/dose"),
                View.of("/account/keys", "keeper", "/account/keys"),
                View.of("/demo/reset", "supervisor", "/demo/reset"),
                View.of("/animals", "vet", "/animals"),
                View.of("/animals/moves/new", "vet", "/animals/moves/new?from=" + ids.enclosure("E07")),
                View.of("/animals/new", "vet", "/animals/new"),
                View.of("/animals/{animalId}/events", "vet", thistle() + "/events"),
                View.of("/animals/{animalId}/history", "inspector", thistle() + "/history"),
                View.of("/backups", "admin", "/backups"),
                View.of("/records", "inspector", "/records"),
                View.of("/tour", "keeper", "/tour"),
                View.of("/records/import", "supervisor", "/records/import"),
                View.of("/circuits", "supervisor", "/circuits"),
                View.of("/circuits/new", "supervisor", "/circuits/new"),
                View.of("/circuits/{circuitId}", "supervisor", circuit()),
                View.of("/circuits/{circuitId}/history", "inspector", circuit() + "/history"),
                View.of("/enclosures/{enclosureId}/audit", "inspector", enclosure + "/audit"),
                View.of("/lamp-models/{modelId}/history", "inspector", lampModel() + "/history"),
                View.of("/lamps/{lampId}/bench", "supervisor", lamp() + "/bench"),
                View.of("/lamps/{lampId}/history", "inspector", lamp() + "/history"),
                View.of("/targets/{speciesId}/history", "inspector", species() + "/history"),
                View.of("/animals/{animalId}/edit", "vet", thistle() + "/edit"),
                View.of("/animals/{animalId}/events/new", "vet", thistle() + "/events/new"),
                View.of("/animals/{animalId}/orders", "vet", thistle() + "/orders"),
                View.of("/animals/{animalId}/orders/new", "vet", thistle() + "/orders/new"),
                View.of("/animals/{animalId}/return", "supervisor", thistle() + "/return"),
                View.of("/animals/{animalId}/sheet", "vet", thistle() + "/sheet"),
                View.of("/animals/{animalId}/stays", "vet", thistle() + "/stays"),
                View.of(
                        "/animals/{animalId}/stays/{stayId}/correction",
                        "vet",
                        thistle() + "/stays/" + ids.stay("Thistle") + "/correction"),
                View.of("/animals/{animalId}", "vet", "/animals/" + ids.animal("Thistle")),
                View.of("/enclosures/{enclosureId}", "supervisor", enclosure),
                View.of("/enclosures/{enclosureId}/edit", "supervisor", enclosure + "/edit"),
                View.of("/enclosures/{enclosureId}/copy", "supervisor", enclosure + "/copy"),
                View.of("/enclosures/{enclosureId}/copies/{copyKey}", "supervisor", enclosure("E08") + "/copy")
                        .then(browser -> browser.type("codes", "E91").press("Make the copies")),
                View.of("/enclosures/{enclosureId}/history", "supervisor", enclosure + "/history"),
                View.of("/enclosures/{enclosureId}/off", "supervisor", enclosure + "/off"),
                View.of("/enclosures/{enclosureId}/readings", "inspector", enclosure + "/readings"),
                View.of("/enclosures/{enclosureId}/points/{pointId}/serves", "supervisor", point() + "/serves"),
                View.of("/readings/{readingId}/withdrawal", "keeper", reading("E07", "P1") + "/withdrawal"),
                View.of("/enclosures/{enclosureId}/points/new", "supervisor", enclosure + "/points/new"),
                View.of("/enclosures/{enclosureId}/points/{pointId}", "supervisor", point()),
                View.of("/enclosures/{enclosureId}/points/{pointId}/history", "supervisor", point() + "/history"),
                View.of("/enclosures/{enclosureId}/rig", "supervisor", enclosure + "/rig"),
                View.of("/enclosures/{enclosureId}/light", "supervisor", enclosure + "/light"),
                View.of("/enclosures/{enclosureId}/desk", "supervisor", enclosure + "/desk"),
                View.of("/enclosures/{enclosureId}/desk/{draftId}", "supervisor", draft()),
                View.of(
                        "/enclosures/{enclosureId}/desk/{draftId}/installation",
                        "supervisor",
                        draft() + "/installation"),
                View.of("/enclosures/{enclosureId}/desk/{draftId}/solving", "supervisor", draft() + "/solving"),
                View.of("/enclosures/{enclosureId}/desk/{draftId}/proposals", "supervisor", draft() + "/proposals"),
                View.of(
                        "/enclosures/{enclosureId}/desk/comparison",
                        "supervisor",
                        enclosure + "/desk/comparison?rig=installed&rig=" + ids.draft("E07")),
                View.of("/enclosures/{enclosureId}/commissioning", "supervisor", swapped() + "/commissioning"),
                View.of("/enclosures/{enclosureId}/commissioning/map", "supervisor", swapped() + "/commissioning/map"),
                View.of("/enclosures/{enclosureId}/commissioning/sheet", "keeper", swapped() + "/commissioning/sheet"),
                View.of("/enclosures/{enclosureId}/lamps", "supervisor", enclosure + "/lamps"),
                View.of("/enclosures/{enclosureId}/residents", "supervisor", enclosure + "/residents"),
                View.of("/enclosures/{enclosureId}/course", "supervisor", enclosure + "/course"),
                View.of("/enclosures/{enclosureId}/rig/cover/new", "supervisor", enclosure + "/rig/cover/new"),
                View.of("/enclosures/{enclosureId}/rig/furniture/new", "supervisor", enclosure + "/rig/furniture/new"),
                View.of("/enclosures/{enclosureId}/rig/lamps/new", "supervisor", enclosure + "/rig/lamps/new"),
                View.of(
                        "/enclosures/{enclosureId}/rig/cover/{coverId}/layers",
                        "supervisor",
                        part("cover", "cover_item") + "/layers"),
                View.of(
                        "/enclosures/{enclosureId}/rig/cover/{coverId}/removal",
                        "supervisor",
                        part("cover", "cover_item") + "/removal"),
                View.of(
                        "/enclosures/{enclosureId}/rig/cover/{coverId}/replacement",
                        "supervisor",
                        part("cover", "cover_item") + "/replacement"),
                View.of(
                        "/enclosures/{enclosureId}/rig/furniture/{furnitureId}/move",
                        "supervisor",
                        part("furniture", "furniture_item") + "/move"),
                View.of(
                        "/enclosures/{enclosureId}/rig/furniture/{furnitureId}/removal",
                        "supervisor",
                        part("furniture", "furniture_item") + "/removal"),
                View.of(
                        "/enclosures/{enclosureId}/rig/lamps/{fittingId}/move",
                        "supervisor",
                        part("lamps", "fitting") + "/move"),
                View.of(
                        "/enclosures/{enclosureId}/rig/lamps/{fittingId}/removal",
                        "supervisor",
                        part("lamps", "fitting") + "/removal"),
                View.of(
                        "/enclosures/{enclosureId}/rig/lamps/{fittingId}/swap",
                        "supervisor",
                        part("lamps", "fitting") + "/swap"),
                View.of(
                        "/enclosures/{enclosureId}/rig/lamps/{fittingId}/timer",
                        "supervisor",
                        part("lamps", "fitting") + "/timer"),
                View.of(
                        "/enclosures/{enclosureId}/rig/lamps/{fittingId}/gear",
                        "supervisor",
                        part("lamps", "fitting") + "/gear"),
                View.of("/enclosures/{enclosureId}/timers", "supervisor", enclosure + "/timers"),
                View.of("/enclosures/{enclosureId}/timers/sheet", "supervisor", enclosure + "/timers/sheet"),
                View.of("/enclosures/{enclosureId}/visit", "keeper", enclosure + "/visit"),
                View.of("/enclosures/{enclosureId}/visits/{visitKey}", "keeper", visit),
                View.of(
                        "/enclosures/{enclosureId}/visits/{visitKey}/points/{pointId}",
                        "keeper",
                        ask(UUID.randomUUID())),
                View.of("/doors", "supervisor", "/doors"),
                View.of("/doors/labels", "supervisor", "/doors/labels?all=true&sheet=A4_3_BY_7&first=1"),
                View.of("/d", "keeper", "/d?code=22222X"),
                View.of("/d/{doorCode}", "vet", "/d/" + ids.doorCode("E07")),
                View.of("/enclosures/{enclosureId}/door", "supervisor", enclosure + "/door"),
                View.of("/enclosures/{enclosureId}/visits/{visitKey}/photos", "keeper", visit + "/photos"),
                View.of("/photos/{photoId}/removal", "keeper", "/photos/" + ids.photo() + "/removal"),
                View.of("/meters", "supervisor", "/meters"),
                View.of("/meters/new", "supervisor", "/meters/new"),
                View.of("/meters/{meterId}", "supervisor", meter()),
                View.of("/meters/{meterId}/edit", "supervisor", meter() + "/edit"),
                View.of("/meters/{meterId}/history", "supervisor", meter() + "/history"),
                View.of("/meters/{meterId}/uncertainty", "supervisor", meter() + "/uncertainty"),
                View.of("/meters/agreement", "supervisor", "/meters/agreement"),
                View.of("/meters/agreement/{findingId}", "supervisor", finding()),
                View.of("/meters/{meterId}/agreement", "keeper", meter() + "/agreement"),
                View.of("/meters/{meterId}/practice", "keeper", meter() + "/practice"),
                View.of("/meters/{meterId}/events/new", "keeper", meter() + "/events/new"),
                View.of("/meters/{meterId}/dark-zero", "keeper", meter() + "/dark-zero"),
                View.of(
                        "/meters/{meterId}/events/{eventId}/withdrawal",
                        "keeper",
                        "/meters/" + ids.meter("M3") + "/events/" + ids.meterEvent("M3") + "/withdrawal"),
                View.of("/meters/comparisons", "supervisor", "/meters/comparisons"),
                View.of("/meters/comparisons/new", "supervisor", "/meters/comparisons/new?quantity=UV_INDEX"),
                View.of("/meters/comparisons/{comparisonId}", "keeper", "/meters/comparisons/" + ids.comparison()),
                View.of("/repeats", "supervisor", "/repeats"),
                View.of("/meters/{meterId}/lamp-check", "keeper", meter() + "/lamp-check"),
                View.of("/meters/{meterId}/reference-lamp", "supervisor", meter() + "/reference-lamp"),
                View.of(
                        "/meters/{meterId}/calibrations/{calibrationId}/file/new",
                        "supervisor",
                        meter() + "/calibrations/" + ids.calibration("M1") + "/file/new"),
                View.of("/meters/{meterId}/calibrations/new", "supervisor", meter() + "/calibrations/new"),
                View.of(
                        "/meters/{meterId}/calibrations/{calibrationId}/withdrawal",
                        "supervisor",
                        meter() + "/calibrations/" + ids.calibration("M1") + "/withdrawal"),
                View.of("/settings", "supervisor", "/settings"),
                View.of("/settings/history", "supervisor", "/settings/history"),
                View.of("/library", "keeper", "/library?name=pogona"),
                View.of("/targets", "keeper", "/targets"),
                View.of("/targets/confirmation", "supervisor", "/targets/confirmation"),
                View.of("/targets/new", "supervisor", "/targets/new?from=Laudakia+stellio"),
                View.of("/targets/{speciesId}", "keeper", species()),
                View.of("/targets/{speciesId}/evidence", "vet", species() + "/evidence"),
                View.of("/targets/{speciesId}/name", "supervisor", species() + "/name"),
                View.of("/targets/{speciesId}/next", "supervisor", species() + "/next"),
                View.of("/lamp-models", "keeper", "/lamp-models"),
                View.of("/lamp-models/new", "supervisor", "/lamp-models/new"),
                View.of("/lamp-models/{modelId}", "supervisor", lampModel()),
                View.of("/lamp-models/{modelId}/edit", "supervisor", lampModel() + "/edit"),
                View.of("/lamp-models/{modelId}/outputs/{quantity}", "supervisor", lampModel() + "/outputs/UV_INDEX"),
                View.of("/lamp-models/{modelId}/report", "supervisor", lampModel() + "/report"),
                View.of("/lamp-models/{modelId}/photometry", "supervisor", lampModel() + "/photometry"),
                View.of("/lamp-models/{modelId}/spectrum", "supervisor", lampModel() + "/spectrum"),
                View.of("/lamp-models/{modelId}/waiver", "supervisor", lampModel() + "/waiver"),
                View.of("/lamps", "keeper", "/lamps"),
                View.of("/lamps/new", "supervisor", "/lamps/new"),
                View.of("/lamps/{lampId}", "supervisor", lamp()),
                View.of("/lamps/{lampId}/edit", "supervisor", lamp() + "/edit"),
                View.of("/lamps/{lampId}/outputs/new", "supervisor", lamp() + "/outputs/new"),
                View.of(
                        "/lamps/{lampId}/outputs/{outputId}/withdrawal",
                        "supervisor",
                        lamp() + "/outputs/" + ids.lampOutput("L01") + "/withdrawal"),
                View.of("/more", "admin", "/more"),
                View.of("/people", "admin", "/people"),
                View.of("/people/new", "admin", "/people/new"),
                View.of("/people/{personId}", "admin", person("keeper")),
                View.of("/people/{personId}/erasure", "admin", person("keeper") + "/erasure"),
                View.of("/people/{personId}/history", "admin", person("keeper") + "/history"),
                View.of("/readings/{readingId}", "keeper", reading("E07", "P1")),
                View.of("/readings/{readingId}/correction", "keeper", reading("E07", "P1") + "/correction"),
                View.of("/reset", NOBODY, "/reset"),
                View.of("/review", "supervisor", "/review"),
                View.of("/review/{enclosureId}", "supervisor", "/review/" + ids.enclosure("E04")),
                View.of("/rooms", "supervisor", "/rooms"),
                View.of("/rounds", "keeper", "/rounds"),
                View.of("/rounds/new", "supervisor", "/rounds/new"),
                View.of("/rounds/{planId}", "supervisor", round("Warm corridor")),
                View.of("/rounds/{planId}/edit", "supervisor", round("Warm corridor") + "/edit"),
                View.of("/rounds/{planId}/history", "inspector", round("Warm corridor") + "/history"),
                View.of("/rounds/{planId}/walks/{dueOn}", "keeper", walk("Warm corridor")),
                View.of("/rounds/{planId}/walks/{dueOn}/on-phone", "keeper", walk("Warm corridor") + "/on-phone"),
                View.of("/enclosures/{enclosureId}/on-phone", "keeper", enclosure + "/on-phone"),
                View.of("/walk/without-signal", "keeper", "/walk/without-signal"),
                View.of("/rooms/new", "admin", "/rooms/new"),
                View.of("/rooms/{roomId}", "admin", room()),
                View.of("/rooms/{roomId}/history", "admin", room() + "/history"),
                View.of("/rooms/{roomId}/enclosures/new", "admin", room() + "/enclosures/new"),
                View.of("/sign-in", NOBODY, "/sign-in"));
    }

    /** The same routes when something is different: another state of things, a form that comes back, an error. */
    List<View> others() {
        return List.of(
                View.of("a reply over the ceiling", "keeper", reading("E05", "P1")),
                View.of("a reply on target", "keeper", reading("E01", "P1")),
                View.of("a reply without target", "keeper", reading("E08", "P1")),
                View.of(
                        "a visit not begun",
                        "keeper",
                        "/enclosures/" + ids.enclosure("E05") + "/visits/" + UUID.randomUUID()),
                View.of("an enclosure over the ceiling", "keeper", "/enclosures/" + ids.enclosure("E05")),
                View.of("an enclosure planned off", "keeper", "/enclosures/" + ids.enclosure("E12")),
                View.of("an enclosure for an administrator", "admin", "/enclosures/" + ids.enclosure("E08")),
                View.of(
                        "an enclosure that is lived in",
                        "supervisor",
                        "/enclosures/" + ids.enclosure("E07") + "/edit?lived"),
                View.of("a finding that is accepted", "supervisor", "/review/" + ids.enclosure("E02")),
                View.of("a finding over the ceiling", "supervisor", "/review/" + ids.enclosure("E05")),
                View.of("no finding", "vet", "/review/" + ids.enclosure("E03")),
                View.of("a borrowed meter", "keeper", "/meters/" + ids.meter("M5")),
                View.of("a dropped meter", "keeper", "/meters/" + ids.meter("M3") + "/practice"),
                View.of("a meter past due", "supervisor", "/meters/" + ids.meter("M2")),
                View.of("a meter that fell unnoticed", "keeper", "/meters/" + ids.meter("M7") + "/agreement"),
                View.of("what is said of it to a keeper", "keeper", finding()),
                View.of("a lamp model without spectrum", "supervisor", "/lamp-models/" + ids.lampModel("L31")),
                View.of("a hot lamp model", "keeper", "/lamp-models/" + ids.lampModel("L12")),
                View.of("two species together", "keeper", "/enclosures/" + ids.enclosure("E13")),
                View.of("a visit to two species", "keeper", "/enclosures/" + ids.enclosure("E13") + "/visit"),
                View.of("a reply for two species", "keeper", reading("E13", "P3")),
                View.of("a reading in lux", "keeper", reading("E05", "P1")),
                View.of("a reading of an older scale", "keeper", reading("E13", "P1")),
                View.of("readings of several quantities", "vet", "/enclosures/" + ids.enclosure("E05") + "/readings"),
                View.of("a group", "vet", "/animals/" + ids.animal("Hedge tortoises")),
                View.of("an animal under an order", "keeper", "/animals/" + ids.animal("Barley")),
                View.of("an order in force", "vet", "/animals/" + ids.animal("Barley") + "/orders"),
                View.of("no rig", "supervisor", "/enclosures/" + ids.enclosure("E08") + "/rig"),
                View.of("the rig of two species", "supervisor", "/enclosures/" + ids.enclosure("E13") + "/rig"),
                View.of("more for a keeper", "keeper", "/more"),
                View.of("a stop of the tour", "supervisor", "/review?tour=1"),
                View.of("rooms for a keeper", "keeper", "/rooms"),
                View.of("a walk without a meter", "keeper", walk("Snake room and annex")),
                View.of(
                        "an audit of a time that comes twice",
                        "supervisor",
                        "/enclosures/" + ids.enclosure("E07") + "/audit?at=2026-10-25T01:30"),
                View.of("an animal without target", "vet", "/animals/" + ids.animal("Fennel")),
                View.of("a second page of readings", "vet", "/animals/" + ids.animal("Thistle") + "?page=2"),
                View.of("a lamp for a keeper", "keeper", lamp()),
                View.of("a lamp model with its class", "supervisor", "/lamp-models/new?lampClass=TUBE_T5"),
                View.of("one's own person", "admin", person("admin")),
                View.of("sign in again", NOBODY, "/sign-in?again"),
                View.of("sign in later", NOBODY, "/sign-in?wait"),
                View.of("signed out", NOBODY, "/sign-in?out"),
                View.of("password changed", "keeper", "/account?changed"));
    }

    List<View> wrongForms() {
        return List.of(
                View.of("no number", "keeper", ask(UUID.randomUUID()))
                        .then(browser -> browser.type("amount", "much").press("Log much")),
                View.of("a number with a comma", "keeper", reading("E07", "P1") + "/correction")
                        .then(browser -> browser.type("amount", "3,4").press("Store the correction")),
                View.of("no correction", "keeper", reading("E07", "P1") + "/correction")
                        .then(browser -> browser.press("Store the correction")),
                View.of("no password", "keeper", "/account").then(browser -> browser.press("Change the password")),
                View.of("no name of a key", "keeper", "/account/keys").then(browser -> browser.press("Make a key")),
                View.of("no code", NOBODY, "/reset").then(browser -> browser.press("Set the password")),
                View.of("no new person", "admin", "/people/new").then(browser -> browser.press("Add")),
                View.of("no name of a room", "admin", "/rooms/new").then(browser -> browser.press("Add")),
                View.of("no code of an enclosure", "admin", room() + "/enclosures/new")
                        .then(browser -> browser.type("widthMetres", "wide").press("Add")),
                View.of("no code of a point", "admin", "/enclosures/" + ids.enclosure("E07") + "/points/new")
                        .then(browser -> browser.type("xMetres", "1").press("Add")),
                View.of("no cells of a target", "supervisor", species() + "/next")
                        .then(browser ->
                                browser.type("cell-UV_INDEX-BASKING-low", "9").press("Show what would change")),
                View.of("a name near the library's", "supervisor", "/targets/new")
                        .then(browser -> browser.type("scientificName", "Pogona viticeps")
                                .type("commonName", "dragon")
                                .press("Add")),
                View.of("nothing ticked", "supervisor", "/targets/confirmation")
                        .then(browser -> browser.press("Confirm those that are ticked")),
                View.of("no new animal", "vet", "/animals/new")
                        .then(browser -> browser.type("lengthMetres", "long").press("Add")),
                View.of("no move", "vet", "/animals/moves/new?from=" + ids.enclosure("E07"))
                        .then(browser -> browser.press("Move")),
                View.of("no death", "vet", thistle() + "/events/new").then(browser -> browser.press("Enter")),
                View.of("no order", "vet", thistle() + "/orders/new").then(browser -> browser.press("Order")),
                View.of("no tag of a lamp", "admin", "/lamps/new").then(browser -> browser.press("Add")),
                View.of("no name of a lamp model", "admin", "/lamp-models/new?lampClass=LED_BAR")
                        .then(browser -> browser.type("watts", "many").press("Add")),
                View.of("no reading of a lamp", "admin", lamp() + "/outputs/new")
                        .then(browser -> browser.type("reading", "much").press("Save")),
                View.of("no spectrum", "admin", lampModel() + "/spectrum").then(browser -> browser.press("Save")),
                View.of("no doors of a round", "supervisor", "/rounds/new")
                        .then(browser -> browser.type("everyDays", "often").press("Plan it")),
                View.of("no name of a circuit", "supervisor", "/circuits/new").then(browser -> browser.press("Add")),
                View.of("a circuit changed meanwhile", "supervisor", circuit())
                        .withStatus(409)
                        .then(browser -> {
                            browser.run(MAKE_STALE);
                            browser.press("Save");
                        }),
                View.of("no codes of copies", "supervisor", "/enclosures/" + ids.enclosure("E07") + "/copy")
                        .then(browser -> browser.press("Make the copies")),
                stale("a lamp changed meanwhile", lamp() + "/edit"),
                stale("a lamp model changed meanwhile", lampModel() + "/edit"),
                stale("a room changed meanwhile", room()),
                stale("an enclosure changed meanwhile", "/enclosures/" + ids.enclosure("E07") + "/edit"),
                stale("a point changed meanwhile", point()),
                stale("a meter changed meanwhile", meter() + "/edit"),
                stale("settings changed meanwhile", "/settings"),
                View.of("what a lower lamp will do", "supervisor", part("lamps", "fitting") + "/move")
                        .then(browser -> browser.type("zMetres", "0.4").press("Show what it will do")),
                View.of("no position of a lamp", "supervisor", part("lamps", "fitting") + "/move")
                        .then(browser -> browser.type("zMetres", "high").press("Show what it will do")),
                View.of("no cover", "supervisor", enclosure("E07") + "/rig/cover/new")
                        .then(browser -> browser.type("heightMetres", "high").press("Show what it will do")),
                View.of("no decision", "supervisor", "/review/" + ids.enclosure("E04"))
                        .then(browser -> browser.press("Store the decision")),
                View.of("no code of a meter", "admin", "/meters/new").then(browser -> browser.press("Add")),
                View.of("nothing happened", "keeper", meter() + "/events/new").then(browser -> browser.press("Keep")),
                View.of("no points to compare at", "supervisor", "/meters/comparisons/new?quantity=UVA")
                        .then(browser -> browser.press("Begin")),
                View.of("no calibration", "admin", meter() + "/calibrations/new")
                        .then(browser -> browser.press("Enter")),
                View.of("a person without roles", "admin", person("keeper")).then(browser -> {
                    browser.run(TAKE_BACK_ROLES);
                    browser.press("Save");
                }),
                View.of("a person changed meanwhile", "admin", person("keeper"))
                        .withStatus(409)
                        .then(browser -> {
                            browser.run(MAKE_STALE);
                            browser.press("Save");
                        }));
    }

    List<View> errors() {
        return List.of(
                View.of("400", "keeper", "/review?room=warm").withStatus(400),
                View.of("403", "keeper", "/people").withStatus(403),
                View.of("404", "keeper", "/nothing/here").withStatus(404),
                View.of("404 of another's animal", "vet", "/animals/999999").withStatus(404),
                View.of("409", "admin", person("admin")).withStatus(409).then(browser -> {
                    browser.run(AIM_AT, person("admin") + "/deactivation");
                    browser.press("Save");
                }));
    }

    private String enclosure(String code) {
        return "/enclosures/" + ids.enclosure(code);
    }

    /** Where a lamp was swapped. */
    private String swapped() {
        return "/enclosures/" + ids.enclosure("E11");
    }

    private String draft() {
        return enclosure("E07") + "/desk/" + ids.draft("E07");
    }

    private String part(String things, String table) {
        return "/enclosures/" + ids.enclosure("E07") + "/rig/" + things + "/" + ids.partOfRig(table, "E07");
    }

    private String ask(UUID visit) {
        return "/enclosures/" + ids.enclosure("E07") + "/visits/" + visit + "/points/" + ids.point("E07", "P1");
    }

    private String reading(String enclosure, String point) {
        return "/readings/" + ids.reading(enclosure, point);
    }

    private static View stale(String name, String path) {
        return View.of(name, "admin", path).withStatus(409).then(browser -> {
            browser.run(MAKE_STALE);
            browser.press("Save");
        });
    }

    private String point() {
        return "/enclosures/" + ids.enclosure("E07") + "/points/" + ids.point("E07", "P1");
    }

    private String round(String title) {
        return "/rounds/" + ids.round(title);
    }

    /** The newest walk of which something was said. */
    private String walk(String round) {
        return round(round) + "/walks/" + ids.walkDueOn(round);
    }

    private String circuit() {
        return "/circuits/" + ids.circuit("Dry room UV");
    }

    private String meter() {
        return "/meters/" + ids.meter("M1");
    }

    private String finding() {
        return "/meters/agreement/" + ids.meterFinding();
    }

    private String species() {
        return "/targets/" + ids.species("Pogona vitticeps");
    }

    private String thistle() {
        return "/animals/" + ids.animal("Thistle");
    }

    private String lamp() {
        return "/lamps/" + ids.lamp("L01");
    }

    private String lampModel() {
        return "/lamp-models/" + ids.lampModel("L01");
    }

    private String room() {
        return "/rooms/" + ids.room("E07");
    }

    private String person(String signInName) {
        return "/people/" + ids.person(signInName);
    }
}
