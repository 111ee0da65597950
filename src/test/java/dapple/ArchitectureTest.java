package dapple;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noFields;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import jakarta.persistence.Entity;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.data.repository.Repository;
import org.springframework.stereotype.Controller;

class ArchitectureTest {
    /** Features in order of use: each line may use those above it, never its own line or those below. */
    private static final List<List<String>> ORDER = List.of(
            List.of("light"),
            List.of("drawing"),
            List.of("site"),
            List.of("people"),
            List.of("species"),
            List.of("evidence"),
            List.of("enclosure", "meter", "target", "lamp"),
            List.of("animal", "rig", "approval", "confirmation", "door", "practice"),
            List.of("order"),
            List.of("housing", "prediction", "season"),
            List.of("draft", "check"),
            List.of("reading", "copying"),
            List.of("expectation", "keeper", "round", "photo"),
            List.of("agreement", "comparison"),
            List.of("review", "exposure", "walk"),
            List.of("desk"),
            List.of("commissioning"),
            List.of("archive", "importing", "leaving"),
            List.of("overview"),
            List.of("api"),
            List.of("demo"));

    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("dapple");

    @Test
    void everyFeatureHasItsPlaceInTheOrder() {
        List<String> features = CLASSES.stream()
                .map(JavaClass::getPackageName)
                .filter(name -> name.startsWith("dapple."))
                .map(name -> name.replaceFirst("^dapple\\.([^.]+).*", "$1"))
                .distinct()
                .sorted()
                .toList();
        assertThat(ORDER.stream().flatMap(List::stream).sorted()).isEqualTo(features);
    }

    static Stream<Integer> lines() {
        return IntStream.range(0, ORDER.size()).boxed();
    }

    @ParameterizedTest
    @MethodSource("lines")
    void aFeatureUsesOnlyThoseAboveIt(int line) {
        for (String feature : ORDER.get(line)) {
            noClasses()
                    .that()
                    .resideInAPackage(inside(feature))
                    .should()
                    .dependOnClassesThat(resideInAPackage("dapple..").and(notAbove(line, feature)))
                    .check(CLASSES);
        }
    }

    private static DescribedPredicate<JavaClass> notAbove(int line, String feature) {
        List<String> allowed =
                ORDER.subList(0, line).stream().flatMap(List::stream).toList();
        return describe(
                "are not above " + feature,
                target -> Stream.concat(allowed.stream(), Stream.of(feature))
                        .noneMatch(name -> target.getPackageName().equals("dapple." + name)
                                || target.getPackageName().startsWith("dapple." + name + ".")));
    }

    @Test
    void theLightCoreKnowsNoFramework() {
        classes()
                .that()
                .resideInAPackage(inside("light"))
                .should()
                .onlyDependOnClassesThat()
                .resideInAnyPackage(inside("light"), "java..", "org.hipparchus..", "net.e175.klaus..", "org.jspecify..")
                .check(CLASSES);
    }

    @Test
    void theLightCoreTakesTimeAndChanceAsArguments() {
        noClasses()
                .that()
                .resideInAPackage(inside("light"))
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.io..", "java.nio..", "java.util.logging..")
                .orShould()
                .callMethod(System.class, "currentTimeMillis")
                .orShould()
                .callMethod(System.class, "nanoTime")
                .orShould()
                .callMethod(Math.class, "random")
                .check(CLASSES);
    }

    @Test
    void drawingsKnowNoFramework() {
        classes()
                .that()
                .resideInAPackage(inside("drawing"))
                .should()
                .onlyDependOnClassesThat()
                .resideInAnyPackage(inside("drawing"), inside("light"), "java..", "org.jspecify..")
                .check(CLASSES);
    }

    @Test
    void entitiesControllersRepositoriesAndFormsStayInTheirFeature() {
        classes()
                .that()
                .areAnnotatedWith(Entity.class)
                .or()
                .areAnnotatedWith(Controller.class)
                .or()
                .areAssignableTo(Repository.class)
                .or()
                .haveSimpleNameEndingWith("Form")
                .should()
                .bePackagePrivate()
                .check(CLASSES);
    }

    @Test
    void nothingIsInjectedIntoFields() {
        noFields().should().beAnnotatedWith(Autowired.class).check(CLASSES);
    }

    @Test
    void entitiesShowNoFields() {
        fields().that()
                .areDeclaredInClassesThat()
                .areAnnotatedWith(Entity.class)
                .and()
                .doNotHaveModifier(JavaModifier.STATIC)
                .should()
                .bePrivate()
                .check(CLASSES);
    }

    @Test
    void noClassIsNamedForNothing() {
        noClasses()
                .should()
                .haveSimpleNameEndingWith("Util")
                .orShould()
                .haveSimpleNameEndingWith("Utils")
                .orShould()
                .haveSimpleNameEndingWith("Helper")
                .orShould()
                .haveSimpleNameEndingWith("Manager")
                .orShould()
                .haveSimpleNameEndingWith("Impl")
                .check(CLASSES);
    }

    private static String inside(String feature) {
        return "dapple." + feature + "..";
    }
}
